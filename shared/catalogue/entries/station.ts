import { all, andThen, type Result, succeed } from "../../../src/basis/result.ts";
import { greatestOf } from "../../../src/numeric/extremes.ts";
import type { HeadCurve } from "../../../src/pump/head-curve.ts";
import type { PumpCurve } from "../../../src/pump/pump-curve.ts";
import { pumpCurveMethod } from "../../../src/pump/pump-curve-point.ts";
import { runningPump } from "../../../src/pump/running-pump.ts";
import { specificSpeed } from "../../../src/pump/specific-speed.ts";
import {
  operatingPointMethod,
  type PumpOperation,
  type StationOperation,
  type StationOperationInput,
  stationOperation,
} from "../../../src/station/operating-point.ts";
import { type PumpStop, pumpStops } from "../../../src/station/pump-stops.ts";
import { stationCurve, stationCurveMethod } from "../../../src/station/station-curve.ts";
import type { StationPump } from "../../../src/station/station-pump.ts";
import { defineEntry } from "../entry.ts";
import type { RangeParameter } from "../parameter.ts";
import { quantity } from "../parameter.ts";
import { arrangement, numberOfPumps, speedRatio, trimRatio } from "../parameters/running-pump.ts";
import { SG } from "../parameters/specific-gravity.ts";
import { type StatedPump, stationCurves } from "../parameters/station-curves.ts";
import { systemCurve } from "../parameters/system-curve.ts";
import { AFFINITY_METHOD } from "./pump.ts";

const ownLosses: RangeParameter<HeadCurve | null> & { readonly whenLeftOut: string } = {
  ...systemCurve,
  about:
    "Losses of each pump's own rows over its own flow, a range of flow and head such as SYSTEMCURVE spills for those rows with a static head of 0; the system curve then holds the common rows alone",
  whenLeftOut: "none",
  fallback: null,
};

const parameters = {
  curve: stationCurves,
  systemCurve,
  speedRatio,
  trimRatio,
  numberOfPumps,
  arrangement,
  SG: { ...SG, fallback: null },
  curveSpeed: quantity("speed", {
    about: "Curve speed: with it the region is that of the pump's specific speed",
    example: "1750",
    range: "above 0",
    whenLeftOut: { value: null, shown: "the region of specific speeds up to N_s 4500 (n_s 87)" },
  }),
  ownLosses,
};

interface StatedPumps {
  readonly curve: readonly StatedPump[];
  readonly speedRatio: number;
  readonly trimRatio: number;
  readonly numberOfPumps: number;
  readonly curveSpeed: number | null;
  readonly ownLosses: HeadCurve | null;
}

interface Stated extends StatedPumps {
  readonly systemCurve: HeadCurve;
  readonly arrangement: StationOperationInput["arrangement"];
  readonly SG: number | null;
}

/** By its best efficiency point, rpm, m³/s, m; nothing where that or the speed is not given. */
function specificSpeedOf({ bestEfficiency }: PumpCurve, speed: number | null): Result<number | undefined> {
  if (speed === null || bestEfficiency === undefined) return succeed(undefined);
  const { flow, head } = bestEfficiency;
  return specificSpeed({ speed, flow, head, convention: "SI" });
}

function pumpsOf(stated: StatedPumps): Result<readonly StationPump[]> {
  const pumps = stated.curve.map((of): Result<StationPump> => {
    const { name, curve, speedRatio = stated.speedRatio, trimRatio = stated.trimRatio } = of;
    return andThen(runningPump({ curve, speedRatio, trimRatio }), (pump) =>
      andThen(specificSpeedOf(curve, of.speed ?? stated.curveSpeed), (specific) =>
        succeed({
          name,
          pump,
          level: of.level ?? 0,
          hasCheckValve: of.checkValve ?? true,
          count: of.count ?? stated.numberOfPumps,
          ...(stated.ownLosses !== null && { ownLoss: stated.ownLosses }),
          ...(specific !== undefined && { specificSpeed: specific }),
        }),
      ),
    );
  });
  return all(pumps);
}

function stationOf(stated: Stated): Result<StationOperationInput> {
  const { systemCurve: system, arrangement, SG } = stated;
  return andThen(pumpsOf(stated), (pumps) =>
    succeed({ pumps, system, arrangement, ...(SG !== null && { specificGravity: SG }) }),
  );
}

/** "runs", "3 run", "1 of 2 runs, the other held shut". */
function doesText({ count, running, does }: Pick<PumpOperation, "count" | "running" | "does">): string {
  if (count === 1 || running === 0) return does;
  if (running === count) return does === "runs" ? `${count} run` : `${count}: ${does}`;
  const rest = count - running === 1 ? "the other" : `the other ${count - running}`;
  return `${running} of ${count} ${running === 1 ? "runs" : "run"}, ${rest} ${does}`;
}

function rowOf(one: PumpOperation) {
  const { flow, head, efficiency, shaftPower, npshRequired, bestFlowRatio, running, name } = one;
  return {
    flow,
    head,
    efficiency,
    shaftPower,
    npshRequired,
    percentOfBestFlow: bestFlowRatio === null ? null : 100 * bestFlowRatio,
    running,
    does: doesText(one),
    pump: name,
  };
}

/** The station first; several curves a row each after it. */
function rowsOf({ flow, head, efficiency, shaftPower, running, pumps }: StationOperation) {
  const count = pumps.reduce((sum, one) => sum + one.count, 0);
  const [only] = pumps;
  if (pumps.length === 1 && only !== undefined) return [{ ...rowOf(only), flow, head, shaftPower }];
  const does = running === count ? `${count} run` : `${running} of ${count} ${running === 1 ? "runs" : "run"}`;
  const station = { flow, head, efficiency, shaftPower, npshRequired: null, percentOfBestFlow: null, running, does };
  return [{ ...station, pump: "all" }, ...pumps.map(rowOf)];
}

export const OPERATINGPOINT = defineEntry({
  id: "OPERATINGPOINT",
  group: "Pump",
  summary:
    "Flow and head at which one or more pumps, alike or not, meet a system curve, and what each of them does there",
  method: `One curve is crossed with the system curve over the flows both are given for; every crossing is found and refined by Brent's method to double precision, and the stable one of largest flow is the answer. Several pumps side by side, alike or not, are each reduced to the head they can hold at the common header: level of the source and head, less the losses of their own rows; the header where the flows add up to what the common system requires is found by Brent's method, each curve read on its falling part alone. Unlike pumps have unlike heads there. A pump whose shutoff head at the header lies below it is held shut by its check valve, and hunts where that is by no more than 3 % of its head; drooping curves are started one after the other in the order given, and other orders, and a point that starting so does not reach, are said in the notes. A pump without a check valve lets liquid back, by a screen. In series heads add over the flows that all curves cover, and levels do not count. Refused where the pumps cannot reach the system, one runs off the end of its curve, or the system curve ends first. The system curve is interpolated over the square of the flow. In a range of several, level is that of a pump's source over the common one, what it has less to lift; check valve is yes where left out; count how many alike; arguments hold for pumps that state nothing of their own. One curve answers in one row: flow, head and shaft power of all pumps together, efficiency, NPSHR and % of BEP flow of each that runs. Several answer in a row for all, with the efficiency of all, and a row for each curve, flow, head and power being those of one pump. Power is that with a liquid of the SG given; without one it is for water, and the notes say so. With the speed of the curve the region is judged by the specific speed of the pump at best efficiency, the head being of one stage. The best efficiency flow is that of the highest efficiency given. ${AFFINITY_METHOD}`,
  cites: [...operatingPointMethod.cites, ...pumpCurveMethod.cites],
  parameters,
  answer: {
    kind: "table",
    name: "operating point",
    columns: {
      flow: { name: "flow", quantity: "flow" },
      head: { name: "head", quantity: "head" },
      efficiency: { name: "efficiency", quantity: "ratio" },
      shaftPower: { name: "shaft power", quantity: "power" },
      npshRequired: { name: "NPSHR", quantity: "head" },
      percentOfBestFlow: { name: "% of BEP flow" },
      running: { name: "pumps running" },
      does: { name: "what it does" },
      pump: { name: "pump" },
    },
  },
  examples: [
    {
      args: [
        [
          ["flow", "head"],
          [0, 50],
          [20, 46],
          [44.72135955, 30],
          [60, 14],
        ],
        [
          ["flow", "head"],
          [0, 20],
          [30, 24.5],
          [60, 38],
        ],
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        "SI",
      ],
      part: [1, 0],
      answer: 44.72135955,
      within: 1e-6,
      source: "by hand: 50 − 0.01 Q² meets 20 + 0.005 Q² at Q = √2000 L/s",
    },
    {
      args: [
        [
          ["pump", "flow", "head"],
          ["old", 0, 25],
          [null, 30, 24.1],
          [null, 70.71067812, 20],
          [null, 100, 15],
          ["new", 0, 40],
          [null, 30, 38.2],
          [null, 70.71067812, 30],
          [null, 100, 20],
        ],
        [
          ["flow", "head"],
          [0, 30],
          [50, 40],
          [100, 70],
        ],
        null,
        null,
        null,
        "series",
        null,
        null,
        null,
        "SI",
      ],
      part: [1, 0],
      answer: 70.71067812,
      within: 1e-6,
      source: "by hand: 40 − 0.002 Q² and 25 − 0.001 Q² in series meet 30 + 0.004 Q² at Q = √5000 L/s",
    },
  ],
  run: (stated) =>
    andThen(stationOf(stated), (station) =>
      andThen(stationOperation(station), (operation) => succeed(rowsOf(operation))),
    ),
});

export const STATIONCURVE = defineEntry({
  id: "STATIONCURVE",
  group: "Pump",
  summary: "Head that several pumps hold together against their flow, alike or not, as a table",
  method: `The pumps of OPERATINGPOINT without a system. Side by side each is reduced to the head it holds at the common header: level of the source and head, less the losses of its own rows; their flows add up at one head, each curve read on its falling part, and a weaker pump gives nothing until the head is down to what it holds. In series heads add at one flow, over the flows that all curves cover. The table ends where the first pump is at the end of its curve; its flows are evenly spaced, but for those at which another pump comes in. The third column is what own rows would lose with the flow shared alike: with it the head is that of the pumps as a total head counts it. ${AFFINITY_METHOD}`,
  cites: [...stationCurveMethod.cites, ...pumpCurveMethod.cites],
  parameters: {
    curve: parameters.curve,
    speedRatio,
    trimRatio,
    numberOfPumps,
    arrangement: parameters.arrangement,
    ownLosses,
    numberOfPoints: quantity("ratio", {
      about: "How many rows, zero and the maximum flow among them",
      example: "25",
      range: "a whole number from 2 to 200",
      whenLeftOut: { value: 25, shown: "25" },
    }),
  },
  answer: {
    kind: "table",
    name: "station curve",
    columns: {
      flow: { name: "flow", quantity: "flow" },
      head: { name: "head", quantity: "head" },
      ownLost: { name: "lost in own rows at equal shares", quantity: "head" },
    },
  },
  examples: [
    {
      args: [
        [
          ["pump", "flow", "head"],
          ["strong", 0, 60],
          [null, 25, 53.75],
          [null, 50, 35],
          [null, 60, 24],
          ["weak", 0, 40],
          [null, 31.6227766, 35],
          [null, 60, 22],
        ],
        null,
        null,
        null,
        null,
        null,
        2,
        "SI",
      ],
      part: [2, 1],
      answer: 24,
      within: 1e-9,
      source: "by hand: the strong pump is at the end of its curve at 60 L/s and 24 m, where the weak one still runs",
    },
    {
      args: [
        [
          ["pump", "flow", "head"],
          ["old", 0, 25],
          [null, 30, 24.1],
          [null, 100, 15],
          ["new", 0, 40],
          [null, 30, 38.2],
          [null, 100, 20],
        ],
        null,
        null,
        null,
        "series",
        null,
        2,
        "SI",
      ],
      part: [2, 1],
      answer: 35,
      within: 1e-12,
      source: "by hand: 15 m and 20 m at 100 L/s, where both curves end",
    },
  ],
  run: ({ numberOfPoints: points, arrangement, ...stated }) =>
    andThen(pumpsOf({ ...stated, curveSpeed: null }), (pumps) =>
      andThen(stationCurve({ pumps, arrangement, points }), (curve) => {
        const abreast = arrangement === "series" ? 1 : pumps.reduce((sum, { count }) => sum + count, 0);
        const lostAt = (flow: number): number => stated.ownLosses?.headAt(flow / abreast) ?? 0;
        return succeed(curve.map(({ flow, head }) => ({ flow, head, ownLost: lostAt(flow) })));
      }),
    ),
});

/** "A and 2 of B", of those that stop or run; "1 of 3" where the pumps have no name. */
function namesOf(pumps: readonly StationPump[], counts: readonly number[]): string {
  const parts = pumps.flatMap(({ name, count }, i): readonly string[] => {
    const many = counts[i] as number;
    if (many === 0) return [];
    if (count === 1) return [name === "" ? "1" : name];
    return [`${many} of ${count}${name === "" ? "" : ` ${name}`}`];
  });
  return parts.length < 2 ? (parts[0] ?? "none") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}

/** Where the flow back through the stopped pump is not known, neither is what the rest does. */
export const STOP_NOT_KNOWN = "not known: no check valve, flow back not known";

/** What the rest does, in words, and the head left where one runs off its curve. */
function verdictOf({ rest }: PumpStop): { readonly verdict: string; readonly headLeft: number | null } {
  if (!rest.ok) {
    const off = rest.findings.find(({ code }) => code === "operating-point-beyond-curve");
    const isBack = rest.findings.some(({ code }) => code === "reverse-flow-unknown");
    if (isBack) return { verdict: STOP_NOT_KNOWN, headLeft: null };
    if (off === undefined) return { verdict: "no operating point", headLeft: null };
    return { verdict: named(off.of ?? "", "runs off its curve"), headLeft: off.found?.value ?? null };
  }
  const outside = new Set(
    rest.findings.flatMap(({ code, of }) => (code === "outside-preferred-region" ? [of ?? ""] : [])),
  );
  const words = rest.value.pumps.flatMap((one): readonly string[] => {
    if (one.does !== "runs") return [named(one.name, doesText(one))];
    return outside.has(one.name) ? [named(one.name, "outside preferred region")] : [];
  });
  const all = rest.value.flow > 0 ? words : ["nothing goes on: all flows back", ...words];
  return { verdict: all.length === 0 ? "runs" : all.join("; "), headLeft: null };
}

function named(name: string, does: string): string {
  return name === "" ? does : `${name}: ${does}`;
}

function greatestKnown(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null);
  return known.length === 0 ? null : greatestOf(known);
}

export const PUMPSTOPS = defineEntry({
  id: "PUMPSTOPS",
  group: "Pump",
  summary: "What the other pumps of a station do when one stops, and what each does alone",
  method:
    "The station of OPERATINGPOINT, worked out again with one pump of each curve stopped, and, of up to four pumps, with each alone. The rest runs, lies outside its preferred region, runs off the end of its curve, with the head left there and no flow beyond it, or is held shut. NPSHR and % of BEP flow are the largest of those that run. The stopped pump is shut off by its check valve; where the range says that it has none, verdict and flow are those with what flows back through it; in series it is by-passed. The last two columns say what happens side by side without any check valve: the stopped pump passes liquid back to its source as a resistance of its rated head over the square of its rated flow, a screen that the maker's four-quadrant figures replace; a radial pump so driven may turn backwards at 1.1 to 1.3 times its speed, and must not be started then. Without the efficiency of the curve that is not known, and the notes say so.",
  cites: [...operatingPointMethod.cites, ...pumpCurveMethod.cites],
  parameters,
  answer: {
    kind: "table",
    name: "pump stops",
    columns: {
      stopped: { name: "stopped" },
      running: { name: "left running" },
      verdict: { name: "what the rest does" },
      flow: { name: "flow", quantity: "flow" },
      head: { name: "head", quantity: "head" },
      percentOfBestFlow: { name: "maximum % of BEP flow" },
      npshRequired: { name: "maximum NPSHR", quantity: "head" },
      headLeft: { name: "head left at the end of the curve", quantity: "head" },
      flowBack: { name: "flow back without check valve", quantity: "flow" },
      flowWithout: { name: "flow without check valve", quantity: "flow" },
    },
  },
  examples: [
    {
      args: [
        [
          ["pump", "flow", "head"],
          ["first", 0, 60],
          [null, 30, 56.4],
          [null, 63.2455532, 44],
          [null, 100, 20],
          ["second", 0, 38],
          [null, 30, 35.3],
          [null, 100, 8],
        ],
        [
          ["flow", "head"],
          [0, 30],
          [50, 38.75],
          [100, 65],
        ],
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        "SI",
      ],
      part: [2, 3],
      answer: 63.2455532,
      within: 1e-6,
      source: "by hand: with the second stopped 60 − 0.004 Q² meets 30 + 0.0035 Q² at Q = √4000 L/s",
    },
  ],
  run: (stated) =>
    andThen(stationOf(stated), (station) =>
      andThen(pumpStops(station), (stops) =>
        succeed(
          stops.map((stop) => {
            const { running, stopped, rest, leak } = stop;
            const ratios = rest.ok ? rest.value.pumps.map(({ bestFlowRatio }) => bestFlowRatio) : [];
            const greatest = greatestKnown(ratios);
            return {
              stopped: namesOf(station.pumps, stopped),
              running: namesOf(station.pumps, running),
              ...verdictOf(stop),
              flow: rest.ok ? rest.value.flow : null,
              head: rest.ok ? rest.value.head : null,
              percentOfBestFlow: greatest === null ? null : 100 * greatest,
              npshRequired: rest.ok ? greatestKnown(rest.value.pumps.map(({ npshRequired }) => npshRequired)) : null,
              flowBack: leak?.back ?? null,
              flowWithout: leak?.forward ?? null,
            };
          }),
        ),
      ),
    ),
});
