import { andThen, succeed } from "../../../src/basis/result.ts";
import { runningPump } from "../../../src/pump/running-pump.ts";
import { drawdown, drawdownMethod } from "../../../src/sump/drawdown.ts";
import { dropTestFlow, dropTestMethod, sumpLevelsMethod, sumpVolume } from "../../../src/sump/sump-levels.ts";
import { pumpCycle, pumpCycleMethod, workingVolumeMethod, workingVolumes } from "../../../src/sump/working-volume.ts";
import { readTable } from "../../tables/read-table.ts";
import { defineEntry } from "../entry.ts";
import { quantity, type RangeParameter } from "../parameter.ts";
import { curve } from "../parameters/curve.ts";
import { numberOfPumps, speedRatio, trimRatio } from "../parameters/running-pump.ts";
import { endLevel, startLevel, sump } from "../parameters/sump.ts";
import { systemCurve } from "../parameters/system-curve.ts";

const PLAN =
  "Between the rows of a table an area goes along a straight line; sides and diameters do so themselves, so that sloping walls and cones have their true area. Take off benching, pipes and other pumps that stand in the water.";
const inflowFacts = { about: "Flow into the sump", range: "0 or more" } as const;

export const SUMPVOLUME = defineEntry({
  id: "SUMPVOLUME",
  group: "System and suction",
  summary: "Volume that a sump holds between two levels",
  method: `The plan area over the height. ${PLAN}`,
  cites: sumpLevelsMethod.cites,
  parameters: { sump, startLevel, endLevel },
  answer: { kind: "quantity", name: "volume", quantity: "volume" },
  examples: [
    {
      args: ["25 ft diameter", 8, 0],
      answer: 29375.93,
      within: 0.01,
      source:
        "by hand: π/4 × 25² × 8 ft³ at 7.48052 US gal/ft³; operator certification page of Kentucky (2012), question 3",
    },
  ],
  run: (levels) => sumpVolume(levels),
});

export const DRAWDOWNTIME = defineEntry({
  id: "DRAWDOWNTIME",
  group: "System and suction",
  summary: "Time in which pumps draw a sump down from one level to another, with the flow falling as the level does",
  method: `∫ A dz/(Q − Q_in). The system curve is that with the sump at its start level; a fall of the level raises it by as much, and at each level the pumps are crossed with it as OPERATINGPOINT does. Sixteen-point Gauss–Legendre between the breaks of plan and curves. The time at the first flow throughout stands beside it and is too short. Where the flow comes down to the inflow, or the pumps reach no further, the answer is the level it never goes below. Add the time to prime and to fill the line. The end level must leave the bell its water (SUBMERGENCE) and the pump its NPSH (NPSHA): neither is judged here. ${PLAN}`,
  cites: drawdownMethod.cites,
  parameters: {
    sump,
    startLevel,
    endLevel,
    curve,
    systemCurve,
    inflow: quantity("flow", { ...inflowFacts, whenLeftOut: { value: 0, shown: "none" } }),
    numberOfPumps,
    speedRatio,
    trimRatio,
  },
  answer: {
    kind: "record",
    name: "drawdown",
    columns: {
      time: { name: "time", quantity: "duration" },
      hours: { name: "in hours", quantity: "hours" },
      volume: { name: "volume", quantity: "volume" },
      flowAtStart: { name: "flow at the start", quantity: "flow" },
      flowAtEnd: { name: "flow at the end", quantity: "flow" },
      timeAtFirstFlow: { name: "time at the first flow, too short", quantity: "duration" },
    },
  },
  examples: [
    {
      args: [
        "4 m x 3 m",
        0,
        -5,
        [["flow", "head"], ...Array.from({ length: 41 }, (_, i) => [2 * i, 30 - 0.004 * (2 * i) ** 2])],
        [["flow", "head"], ...Array.from({ length: 41 }, (_, i) => [2 * i, 12 + 0.002 * (2 * i) ** 2])],
        null,
        null,
        null,
        null,
        "SI",
      ],
      part: [1, 0],
      answer: 1184.37,
      within: 0.36,
      source:
        "closed form: 2 A √(a + k) (√(H₀ − z₀) − √(H₀ − z₁)), 30 − 0.004 Q² on 0.002 Q², 12 to 17 m of static head",
    },
  ],
  run: ({ curve, systemCurve, numberOfPumps: pumps, speedRatio, trimRatio, ...levels }) =>
    andThen(runningPump({ curve, speedRatio, trimRatio }), (pump) =>
      andThen(drawdown({ ...levels, pump, pumps, system: systemCurve }), (found) =>
        succeed({ ...found, hours: found.time }),
      ),
    ),
});

export const DROPTEST = defineEntry({
  id: "DROPTEST",
  group: "System and suction",
  summary: "Flow of a pump by the fall of its sump's level in a time",
  method: `Q = A Δz/t + Q_in. Stop the inflow, or measure it just before by the rise with the pump stopped. Good to some 3 % with a fall of half a metre or more (common practice). ${PLAN}`,
  cites: dropTestMethod.cites,
  parameters: {
    sump,
    startLevel,
    endLevel,
    time: quantity("duration", { about: "Time of the fall", example: '1800, or "30 min"', range: "above 0" }),
    inflow: quantity("flow", { ...inflowFacts, whenLeftOut: { value: null, shown: "stopped during the test" } }),
  },
  answer: { kind: "quantity", name: "flow", quantity: "flow" },
  examples: [
    {
      args: ["15 ft x 12 ft", 3, 0, "30 min"],
      answer: 134.64,
      within: 0.02,
      source: "operator arithmetic, question 3 of a public set: 15 ft by 12 ft, 3 ft in 30 min (7.48 gal/ft³)",
    },
  ],
  run: (test) => dropTestFlow(test),
});

const groupFlows: RangeParameter<readonly number[]> = {
  takes: "range",
  about: "Flow of the group with one pump, below it with two and so on; one cell for one pump",
  quantity: "flow",
  example: "1000, or a column 800, then 1300",
  read: (cells, { name, units }) =>
    andThen(
      readTable(
        cells.flat().map((cell) => [cell]),
        { flow: { name: "flow", also: ["group flow"], quantity: "flow", needed: true } },
        { place: { name }, units, order: ["flow"] },
      ),
      ({ rows }) => succeed(rows.map(({ values }) => values.flow)),
    ),
};

const alternating = quantity("ratio", {
  about: "How many pumps take turns to lead",
  example: "2",
  range: "a whole number from 1 to 100",
  whenLeftOut: { value: 1, shown: "1, the same pump throughout" },
});

export const WORKINGVOLUME = defineEntry({
  id: "WORKINGVOLUME",
  group: "System and suction",
  summary: "Minimum volume of a sump between start and stop levels by the starts per hour that a pump stands",
  method:
    "V = T q/4, T the time between starts: a cycle is shortest where the inflow is half of what the pump adds. A second pump that joins the first has a volume of its own by what it adds to the group, not by its own flow; the volumes stand one over the other. Pumps that take turns need a part each. The motor maker's starts go first; usual times between starts are 10 to 15 min below 15 kW, 15 to 20 to 75 kW, 20 to 30 to 185 kW (EI 11C201, table 7-1), submersible and soft-started motors 10 to 15 starts an hour, engines 1 or 2 (common practice). For sewage keep the volume below what flows in within 30 min.",
  cites: workingVolumeMethod.cites,
  parameters: {
    groupFlows,
    startsPerHour: quantity("ratio", {
      about: "Starts that one pump stands in an hour",
      example: "6",
      range: "above 0, at most 60",
    }),
    alternating,
  },
  answer: {
    kind: "table",
    name: "working volumes",
    columns: {
      pump: { name: "pump" },
      groupFlow: { name: "group flow", quantity: "flow" },
      addedFlow: { name: "added flow", quantity: "flow" },
      volume: { name: "volume", quantity: "volume" },
      worstInflow: { name: "worst inflow", quantity: "flow" },
    },
  },
  examples: [
    {
      args: [1000, 6],
      part: [1, 3],
      answer: 2500,
      within: 1e-6,
      source: "MIL-HDBK-1005/9A, equation 2: 10 min × 1000 gpm/4",
    },
    {
      args: [[[800], [1300]], 6],
      part: [2, 3],
      answer: 1250,
      within: 1e-6,
      source: "EI 11C201, para. 7: 10 min × (1300 − 800) gpm/4",
    },
  ],
  run: ({ groupFlows, startsPerHour, alternating }) =>
    andThen(workingVolumes({ groupFlows, starts: startsPerHour / 3600, alternating }), (steps) =>
      succeed(steps.map((step, i) => ({ pump: i + 1, ...step }))),
    ),
});

export const PUMPCYCLE = defineEntry({
  id: "PUMPCYCLE",
  group: "System and suction",
  summary: "Running and filling time of a pump that empties a sump against its inflow, and its starts per hour",
  method:
    "Running V/(Q_p − Q_in), filling (V − drain-back)/Q_in. Starts are most frequent at an inflow of half the pump's flow. Refused where the inflow keeps the pump running, and where what runs back from the line fills the volume at once.",
  cites: pumpCycleMethod.cites,
  parameters: {
    volume: quantity("volume", {
      about: "Volume of the sump between the levels that start and stop the pump",
      range: "above 0",
    }),
    flow: quantity("flow", { about: "Flow of the pump while it runs", range: "above 0" }),
    inflow: quantity("flow", { ...inflowFacts, range: "above 0, below the pump's" }),
    drainBack: quantity("volume", {
      about: "What runs back from the line when the pump stops",
      range: "0 or more, below the volume",
      whenLeftOut: { value: 0, shown: "nothing: a check valve holds the line" },
    }),
    alternating,
  },
  answer: {
    kind: "record",
    name: "cycle",
    columns: {
      running: { name: "running", quantity: "duration" },
      filling: { name: "filling", quantity: "duration" },
      cycle: { name: "cycle", quantity: "duration" },
      startsPerHour: { name: "starts per hour of each pump" },
    },
  },
  examples: [
    {
      args: [2500, 1000, 250],
      part: [1, 2],
      answer: 800,
      within: 1e-6,
      source: "MIL-HDBK-1005/9A, equation 1: 2500 gal at 1000 gpm against 250 gpm, 13.33 min",
    },
  ],
  run: (stated) =>
    andThen(pumpCycle(stated), ({ starts, ...times }) => succeed({ ...times, startsPerHour: 3600 * starts })),
});
