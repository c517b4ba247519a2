import { outOfRange } from "../../../src/basis/method.ts";
import { andThen, fail, succeed } from "../../../src/basis/result.ts";
import { SPEED_RATIO_RANGE } from "../../../src/pump/running-pump.ts";
import { type SpeedAtFlow, speedTable, speedTableMethod } from "../../../src/station/speed-table.ts";
import { readTable } from "../../tables/read-table.ts";
import { defineEntry } from "../entry.ts";
import { quantity, type RangeParameter } from "../parameter.ts";
import { curve } from "../parameters/curve.ts";
import { numberOfPumps } from "../parameters/running-pump.ts";
import { SG } from "../parameters/specific-gravity.ts";
import { systemCurve } from "../parameters/system-curve.ts";
import { AFFINITY_METHOD } from "./pump.ts";

const flow: RangeParameter<readonly number[]> = {
  takes: "range",
  about: "Flows of all pumps together, one to a row; one cell for one flow",
  quantity: "flow",
  example: "600, or a column 600, then 1100, then 1500",
  read: (cells, { name, units }) => {
    const read = readTable(
      cells.flat().map((cell) => [cell]),
      { flow: { name: "flow", also: [], quantity: "flow", needed: true } },
      { place: { name }, units, order: ["flow"] },
    );
    // A row of 0 alone is passed over as blank.
    const isZero = read.findings.some(({ code }) => code === "table-no-rows") && cells.flat().includes(0);
    if (isZero) return fail([outOfRange(name, "flow", 0, "above", 0)]);
    return andThen(read, ({ rows }) => succeed(rows.map(({ values }) => values.flow)));
  },
};

const CURVE = [["flow", "head"], ...Array.from({ length: 41 }, (_, i) => [40 * i, 72 - 18 * ((40 * i) / 1550) ** 2])];
const SYSTEM = [["flow", "head"], ...Array.from({ length: 17 }, (_, i) => [100 * i, 20 + 27 * (i / 15) ** 2])];

function rowOf({ bestFlowRatio, ...one }: SpeedAtFlow) {
  return { ...one, percentOfBestFlow: bestFlowRatio === null ? null : 100 * bestFlowRatio };
}

export const SPEEDTABLE = defineEntry({
  id: "SPEEDTABLE",
  group: "Pump",
  summary: "Speed at which variable-speed pumps give each of several flows, and how they run there",
  method: `For each flow the ratio r for which r² H(Q/(N r)) is the head of the system at that flow, as SPEEDRATIO finds it; against a static head the flow does not go with the speed. N equal pumps side by side run at one speed. Fixed pumps of the same curve beside them give what their curve has at the head of the system, and the others the rest. Efficiency is that of the curve at Q/r; power goes with r³ and NPSHR by the rule for other speeds. % of BEP flow is of the best efficiency flow at that speed. Response is the percent of flow for one percent of speed, (dQ/dr)(r/Q). The verdict is the gravest that holds: above the maximum speed, the flow is not reached; below the minimum, throttle, or run on and off; below 30 % of BEP flow at its speed; pinned by the static head, where the response is above 20 or the speed does not rise with the flow, so that a control hunts. The curve covers no flow past its last point at any speed. ${AFFINITY_METHOD}`,
  cites: speedTableMethod.cites,
  parameters: {
    flow,
    curve,
    systemCurve,
    numberOfPumps,
    fixedPumps: quantity("ratio", {
      about: "How many of the same curve run beside them at its speed",
      example: "1",
      range: "a whole number from 0 to 100",
      whenLeftOut: { value: 0, shown: "none" },
    }),
    minimumSpeedRatio: quantity("ratio", {
      about: "Minimum speed there is, over that of the curve",
      example: "0.5",
      range: "0.2 to 2.5",
      whenLeftOut: { value: SPEED_RATIO_RANGE.least, shown: "0.2" },
    }),
    maximumSpeedRatio: quantity("ratio", {
      about: "Maximum speed there is, over that of the curve",
      example: "1",
      range: "0.2 to 2.5; no less than the minimum",
      whenLeftOut: { value: 1, shown: "1, the speed of the curve" },
    }),
    SG,
  },
  answer: {
    kind: "table",
    name: "speed table",
    columns: {
      flow: { name: "flow", quantity: "flow" },
      head: { name: "head", quantity: "head" },
      ratio: { name: "speed ratio" },
      flowOfEach: { name: "flow of each", quantity: "flow" },
      flowOfFixed: { name: "flow of each fixed pump", quantity: "flow" },
      efficiency: { name: "efficiency", quantity: "ratio" },
      shaftPower: { name: "shaft power of each", quantity: "power" },
      npshRequired: { name: "NPSHR", quantity: "head" },
      percentOfBestFlow: { name: "% of BEP flow" },
      pressure: { name: "head as pressure", quantity: "pressureDifference" },
      response: { name: "response, %/%" },
      verdict: { name: "verdict" },
    },
  },
  examples: [
    {
      args: [600, CURVE, SYSTEM],
      part: [1, 2],
      answer: 0.6125673481,
      within: 1.3e-4,
      source: "closed form: r = √((H + 18 (Q/1550)²)/72) with H = 20 + 27 (600/1500)² = 24.32 ft",
    },
    {
      args: [1500, CURVE, SYSTEM],
      part: [1, 2],
      answer: 0.9417584038,
      within: 1.9e-4,
      source: "the same at 1,500 US gal/min and 47 ft",
    },
  ],
  run: ({ flow: flows, systemCurve: system, numberOfPumps: variable, fixedPumps: fixed, ...rest }) =>
    andThen(
      speedTable({
        flows,
        system,
        variable,
        fixed,
        curve: rest.curve,
        leastRatio: rest.minimumSpeedRatio,
        mostRatio: rest.maximumSpeedRatio,
        specificGravity: rest.SG,
      }),
      (rows) => succeed(rows.map(rowOf)),
    ),
});
