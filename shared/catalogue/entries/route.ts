import { andThen, type Result, succeed } from "../../../src/basis/result.ts";
import { airValves, airValvesMethod } from "../../../src/route/air-valves.ts";
import { drainDown, drainDownMethod } from "../../../src/route/drain-down.ts";
import { fillTime, fillTimeMethod } from "../../../src/route/fill-time.ts";
import { headToFill, headToFillMethod } from "../../../src/route/filling.ts";
import { type Route, type RouteVertex, routeOfLine } from "../../../src/route/route.ts";
import { OUTLETS, SUMMIT_VALVES, siphonCredit, siphonMethod } from "../../../src/route/siphon.ts";
import { defineEntry } from "../entry.ts";
import { choice, quantity } from "../parameter.ts";
import { curveOfAll } from "../parameters/curve-of-all.ts";
import { lineOrNothing } from "../parameters/line-or-nothing.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { ROUTE_PLACE } from "../parameters/route-place.ts";
import { SIPHON_LIMITS } from "../parameters/siphon-limits.ts";

const { dischargeLine, startLevel, outletLevel, sourceLevel, sourcePressure, outletPressure, altitude } = ROUTE_PLACE;
const suctionLine = lineOrNothing("The suction line, from the liquid to the pump");
const flow = quantity("flow", { about: "Flow through the line", range: "0 or more" });
const summitValve = choice(SUMMIT_VALVES, {
  about:
    "What stands at the summits: an air valve, which lets air in; a release valve that shuts under vacuum; a vacuum primer; nothing",
  also: {
    "air/vacuum valve": "air valve",
    "combination valve": "air valve",
    "vacuum breaker": "air valve",
    "air release": "release only",
    "release valve": "release only",
    primer: "vacuum primer",
    nothing: "none",
  },
  whenLeftOut: "none",
});

/** The line of a function as a route. */
function routed(
  place: {
    readonly dischargeLine: Parameters<typeof routeOfLine>[0]["line"];
    readonly startLevel: number;
    readonly outletLevel: number | null;
  },
  altitude: number | null = null,
): Result<Route> {
  return routeOfLine({ line: place.dischargeLine, ...place, altitude });
}

const LEVELS =
  "Levels are over one datum and count along the line: the end of each row at its level, one not stated on the slope between its neighbours; the outlet at the last. Fittings are spread along their row.";

export const FILLHEAD = defineEntry({
  id: "FILLHEAD",
  group: "System and suction",
  summary: "Head that carries a flow over the highest place of a line that is not yet full",
  method: `The maximum over the line of level less source level, plus what suction line and line lose up to there: often not at the highest summit. Held to the centreline of the pipe, without velocity head. A pump that is weaker at shutoff does not fill the line; until the fall beyond a summit runs full, it is the head the pump sees. ${LEVELS}`,
  cites: headToFillMethod.cites,
  parameters: {
    flow,
    sourceLevel,
    suctionLine,
    dischargeLine,
    startLevel,
    outletLevel,
    sourcePressure,
    liquid,
    temperature,
  },
  answer: { kind: "quantity", name: "head to fill", quantity: "head" },
  examples: [
    {
      args: [
        20,
        0,
        [["ID 2 m rough 0 mm", 0.001]],
        [
          ["ID 300 mm rough 0.05 mm", 100.498756211, null, null, 10],
          ["ID 300 mm rough 0.05 mm", 200.159936051, "1 exit", null, 2],
        ],
        0,
        null,
        null,
        "water",
        null,
        "SI",
      ],
      answer: 10.02654736,
      within: 0.001,
      source: "level and Colebrook friction to the summit in Python, apart from this product",
    },
  ],
  run: ({ liquid, temperature, ...of }) =>
    andThen(liquid.at(temperature), (state) =>
      andThen(routed(of), (route) => andThen(headToFill({ ...of, route, liquid: state }), ({ head }) => succeed(head))),
    ),
});

export const FILLTIME = defineEntry({
  id: "FILLTIME",
  group: "System and suction",
  summary: "Time in which pumps fill a line to its summit and to its outlet",
  method: `At each place of the front the pumps give the flow at which their head is that to the highest place passed so far; volume over flow is integrated reach by reach. While the line is nearly empty the pumps would run off their curve: they are taken as throttled to its end, and a note says so. A falling leg counts whole, so that the time to the outlet is the latest. Time to run full is not promised: a fall may keep its air. ${LEVELS}`,
  cites: fillTimeMethod.cites,
  parameters: {
    curve: curveOfAll,
    sourceLevel,
    suctionLine,
    dischargeLine,
    startLevel,
    outletLevel,
    sourcePressure,
    liquid,
    temperature,
  },
  answer: {
    kind: "record",
    name: "filling",
    columns: {
      volume: { name: "volume of the line", quantity: "volume" },
      summit: { name: "summit at", quantity: "length" },
      flow: { name: "flow over it", quantity: "flow" },
      head: { name: "head there", quantity: "head" },
      toSummit: { name: "time to the summit", quantity: "duration" },
      toOutlet: { name: "time to the outlet", quantity: "duration" },
    },
  },
  examples: [
    {
      args: [
        [
          ["flow", "head"],
          [0, 20],
          [20, 16],
          [40, 4],
          [44.72135955, 0],
        ],
        0,
        [["ID 2 m rough 0 mm", 0.001]],
        [["ID 1 m rough 0 mm", 10, null, null, 10]],
        0,
        null,
        null,
        "water",
        null,
        "SI",
      ],
      part: [1, 5],
      answer: 205.752,
      within: 0.02,
      source:
        "by hand: 20 − 0.01 Q² fills a riser of 1 m bore in ∫ A dz/√(100 (20 − z)), 0 to 10 m, L/s; friction is 0.1 mm",
    },
  ],
  run: ({ curve: pumps, liquid, temperature, ...of }) =>
    andThen(liquid.at(temperature), (state) =>
      andThen(routed(of), (route) => fillTime({ ...of, pumps, route, liquid: state })),
    ),
});

export const SIPHONCREDIT = defineEntry({
  id: "SIPHONCREDIT",
  group: "System and suction",
  summary: "Whether a line may count on the fall beyond its summit, and the head to select by",
  method: `Credit is the head held to the governing summit (FILLHEAD) less that through the full line to the outlet. It is earned only where the flow sweeps air out of every falling leg beyond, V/√(gD) at least the greater of 0.825 + 0.25 √sin θ and 0.56 √sin θ + 0.61, or a vacuum primer draws it off; where no valve at the summit lets air in; where the outlet is submerged; and where the vacuum stays above siphon pressure and within siphon height less its loss with altitude, in no lay-flat hose. Ask at the least flow. Whether the pipe stands the vacuum COLLAPSEPRESSURE says, and the pumps must still fill the line. Runs full says whether that is counted on; may run full, whether a siphon may come by itself: not where a valve lets air in, the column would separate, lay-flat hose would collapse or the Froude number is below 0.3. ${LEVELS}`,
  cites: siphonMethod.cites,
  parameters: {
    flow,
    sourceLevel,
    suctionLine,
    dischargeLine,
    startLevel,
    summitValve,
    outlet: choice(OUTLETS, {
      about: "Whether the outlet ends in the open or at least one bore under the liquid",
      also: { open: "free", drowned: "submerged" },
      whenLeftOut: "free",
    }),
    outletLevel,
    sourcePressure,
    outletPressure,
    altitude,
    liquid,
    temperature,
    ...SIPHON_LIMITS,
  },
  unitsBefore: "siphonHeight",
  answer: {
    kind: "record",
    name: "siphon credit",
    columns: {
      credit: { name: "siphon credit" },
      why: { name: "why" },
      creditHead: { name: "credit", quantity: "head" },
      headHeld: { name: "head to fill", quantity: "head" },
      headThrough: { name: "head running full", quantity: "head" },
      headToSelect: { name: "head to select", quantity: "head" },
      summit: { name: "summit at", quantity: "length" },
      level: { name: "its level", quantity: "elevation" },
      pressure: { name: "pressure there, running full", quantity: "gaugePressure" },
      froude: { name: "Froude number of the fall", quantity: "ratio" },
      clearing: { name: "that clears it of air", quantity: "ratio" },
      runsFull: { name: "runs full" },
      mayRunFull: { name: "may run full" },
    },
  },
  examples: [
    {
      args: [
        60,
        0,
        [["ID 2 m rough 0 mm", 0.001]],
        [
          ["ID 200 mm rough 0.02 mm", 400, null, null, 12],
          ["ID 200 mm rough 0.02 mm", 100, "1 exit", null, 6],
        ],
        0,
        "release only",
        "submerged",
        null,
        null,
        null,
        200,
        "water",
        null,
        "SI",
      ],
      part: [1, 2],
      answer: 4.425434983,
      within: 0.002,
      source: "energy equation with Colebrook friction in Python, apart from this product",
    },
  ],
  run: ({ liquid, temperature, altitude, outletPressure: deliveryPressure, ...of }) =>
    andThen(liquid.at(temperature), (state) =>
      andThen(routed(of, altitude), (route) =>
        andThen(siphonCredit({ ...of, deliveryPressure, route, liquid: state, limits: of }), (found) =>
          succeed({
            ...found,
            credit: found.isAsked ? (found.isEarned ? "earned" : "not earned") : "not needed",
            why: found.refused.join(", "),
            runsFull: found.isEarned ? "yes" : "no",
            mayRunFull: found.mayRunFull ? "yes" : "no",
            creditHead: found.credit,
            summit: found.summit.chainage,
            level: found.summit.elevation,
            pressure: found.summit.pressure,
          }),
        ),
      ),
    ),
});

export const DRAINDOWN = defineEntry({
  id: "DRAINDOWN",
  group: "System and suction",
  summary: "What a line holds, and what leaves it after the pumps stop",
  method: `Air let in at the summits, the part of a fall that lies above everything between it and the outlet runs out; without a check valve the rise to the highest place runs back to the source; low places stay full. With the check valve shut the pump stands under the highest place of the line, not under the outlet. An outlet below the source goes on running by gravity: a note says so. ${LEVELS}`,
  cites: drainDownMethod.cites,
  parameters: { sourceLevel, dischargeLine, startLevel, outletLevel },
  answer: {
    kind: "record",
    name: "drain-down",
    columns: {
      volume: { name: "volume of the line", quantity: "volume" },
      runsOut: { name: "runs out at the outlet", quantity: "volume" },
      runsBack: { name: "runs back without a check valve", quantity: "volume" },
      summit: { name: "highest place at", quantity: "length" },
      standingHead: { name: "standing head at the start", quantity: "head" },
    },
  },
  examples: [
    {
      args: [
        588,
        [
          ["ID 15.7552941176 in rough 0 in", 2000, null, null, 640],
          ["ID 15.7552941176 in rough 0 in", 1000, null, null, 622],
          ["ID 15.7552941176 in rough 0 in", 1200, null, null, 612],
        ],
        601,
      ],
      part: [1, 2],
      answer: 20255.46,
      within: 0.01,
      source: "by hand: π/4 D² × the 2000 ft of the rising leg, a summit at 640 ft",
    },
  ],
  run: ({ sourceLevel, ...of }) =>
    andThen(routed(of), (route) =>
      andThen(drainDown(route, sourceLevel), ({ whole, highest, standing, ...drained }) =>
        succeed({
          ...drained,
          volume: whole,
          summit: (route.vertices[highest] as RouteVertex).chainage,
          standingHead: (standing[0] as number) - of.startLevel,
        }),
      ),
    ),
});

export const AIRVALVES = defineEntry({
  id: "AIRVALVES",
  group: "System and suction",
  summary: "Where a line requires air and vacuum valves, as a table",
  method: `A valve at every summit, where a fall steepens and where a rise flattens by 0.005 or more, and on every stretch of more than 760 m (2500 ft) without one; behind the pump where it lifts. Places nearer than 50 m are one. The inflow is what the steepest leg beside carries away by gravity, Darcy–Weisbach at its slope; the orifice lets it in at 5 psi below the air, or at 2 psi for pipe that stands no more (C_d 0.7, sea level). Of runs side by side each has its own valve, and air and orifice are those of one. A list to quote from: the maker sizes the valve. ${LEVELS}`,
  cites: airValvesMethod.cites,
  parameters: {
    dischargeLine,
    startLevel,
    outletLevel,
    summitValve,
    lifted: choice(["yes", "no"], { about: "Whether the pump lifts its suction", whenLeftOut: "no" }),
    liquid,
    temperature,
  },
  answer: {
    kind: "table",
    name: "air valves",
    columns: {
      chainage: { name: "chainage", quantity: "length" },
      elevation: { name: "level", quantity: "elevation" },
      place: { name: "place" },
      valve: { name: "valve" },
      inflow: { name: "air in", quantity: "flow" },
      orifice: { name: "orifice at 5 psi", quantity: "size" },
      orificeOfThinPipe: { name: "orifice at 2 psi", quantity: "size" },
    },
  },
  examples: [
    {
      args: [
        [
          ["ID 15.7552941176 in rough 0.02 mm", "1000.09799520 ft", null, null, 615],
          ["ID 15.7552941176 in rough 0.02 mm", "1000.31245118 ft", null, null, 640],
          ["ID 15.7552941176 in rough 0.02 mm", "1000.16198688 ft", null, null, 622],
          ["ID 15.7552941176 in rough 0.02 mm", "1200.04166594 ft", null, null, 612],
        ],
        601,
      ],
      part: [1, 0],
      answer: 2000,
      within: 0.001,
      source: "by the rules of AWWA M51 as read here: one summit, a rise that steepens and a fall that flattens",
    },
  ],
  run: ({ liquid, temperature, summitValve, lifted, ...of }) =>
    andThen(liquid.at(temperature), (state) =>
      andThen(routed(of), (route) => airValves(route, state, { summitValve, isLifted: lifted === "yes" })),
    ),
});
