import { PUMPEFFICIENCY, PUMPHEAD, PUMPNPSHR, PUMPPOWER } from "../../catalogue/entries/pump.ts";
import { PUMPMAXPOWER } from "../../catalogue/entries/pump-max-power.ts";
import type { Duty, DutyOtherPump, DutyPump } from "../../duty/duty.ts";
import type { CurvePointText } from "../../duty/duty-text.ts";
import { isSlurry } from "../../duty/slurry.ts";
import { densityOfWater } from "../conversions.ts";
import {
  type Call,
  callOf,
  cell,
  column,
  constant,
  difference,
  type Expression,
  extreme,
  greatest,
  least,
  product,
  ratio,
  spillOf,
  sum,
  type TableOf,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type ColumnFacts, type PlanItem, spill, type WorkingItem, working } from "../plan.ts";
import { PUMPED } from "./as-pumped.ts";
import type { DutyState } from "./duty-cases.ts";
import { LIQUID_FIGURES } from "./liquid.ts";
import { npshAvailableAt } from "./npsh.ts";
import { liquidOfDuty, otherAsPumped, otherCurves, otherLastFlow } from "./other-curves.ts";
import { otherCells } from "./other-pump-inputs.ts";
import { PUMP, PUMP_CURVE } from "./pump.ts";
import { curveAsPumped, onWater, readCurve, slurryCurve } from "./slurry-curve.ts";
import { byArrangement, pumpsOfAll } from "./station.ts";
import { type CHOSEN, viscousCurve } from "./viscous-curve.ts";

/** Rows of each curve. */
export const CURVE_ROWS = 25;

/** System curves reach this far past the end of the pumps' curve, with room for the tolerance of the bought pump. */
const REACH = 1.2;

/** How far a system curve goes for pumps whose curve ends at this flow. */
export function reachOf(curveEnd: Expression): Expression {
  return product(constant(REACH), curveEnd);
}

const HOW_IT_RUNS = tableOf("howItRuns", {
  sideBySide: null,
  inSeries: null,
  specificGravity: "ratio",
  curveEnd: "flow",
  reach: "flow",
});
/** How many pumps share the flow, how many add their heads, and the specific gravity of the liquid as pumped. */
export const SIDE_BY_SIDE = cell(HOW_IT_RUNS, 0, "sideBySide");
export const IN_SERIES = cell(HOW_IT_RUNS, 0, "inSeries");
export const SPECIFIC_GRAVITY = cell(HOW_IT_RUNS, 0, "specificGravity");
/** The last flow of the pumps' curve, all together. */
export const CURVE_END = cell(HOW_IT_RUNS, 0, "curveEnd");
/** The greatest flow of the system curves the pumps are held against. */
export const SYSTEM_REACH = cell(HOW_IT_RUNS, 0, "reach");

const FLOWS = { each: "flow", together: "flow" } as const;
export const HEAD_CURVE = tableOf("headCurve", { ...FLOWS, head: "head", headTogether: "head" });
export const POWER_CURVE = tableOf("powerCurve", {
  ...FLOWS,
  efficiency: "ratio",
  power: "power",
  percent: "percent",
  powerTogether: "power",
});
export const NPSH_CURVE = tableOf("npshCurve", { ...FLOWS, required: "head", available: "head" });

/**
 * Greatest power of one pump over its curve as it runs, with the weight of water: the SG of what is pumped multiplies it
 * outside, so that motor and attachment do not wait for the liquid's density too.
 */
export const MAX_POWER = spillOf("maxPower", PUMPMAXPOWER);

/** The call of it; up to a flow where one is given. */
export function maxPowerOf(duty: Duty, reachedFlow?: Expression): Call {
  return callOf(PUMPMAXPOWER, { ...onWater(duty), ...(reachedFlow && { reachedFlow }) });
}

/** A power on water brought to the liquid as pumped: with its SG, and of a slurry with the pump's two ratios. */
export function asPumpedPower(duty: Duty, onWater: Expression): Expression {
  const withWeight = product(onWater, SPECIFIC_GRAVITY);
  return isSlurry(duty) ? ratio(product(withWeight, PUMPED.headRatio), PUMPED.efficiencyRatio) : withWeight;
}

const RATIOS = [PUMP.speedRatio, PUMP.trimRatio] as const;

/** The last flow of the curve as the pump runs. */
export function lastFlow(duty: Duty): Expression {
  return product(extreme("columnGreatest", curveAsPumped(duty), "flow", ""), ...RATIOS);
}

/** The same of its curve as stated. */
export function lastFlowOnWater(speedRatio: Expression = PUMP.speedRatio): Expression {
  return product(extreme("columnGreatest", PUMP_CURVE, "flow", ""), speedRatio, PUMP.trimRatio);
}

/** The curve of a further pump as stated. */
export function onWaterOf(pump: DutyOtherPump): (typeof CHOSEN)["curve"] {
  return otherCells(pump).curve;
}

/** What the pump section rests on, and the curves of the pump as it runs, in the workings. */
export function drawnCurves(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const { curve } = pump;
  return [
    ...viscousCurve(duty, pump),
    ...slurryCurve(duty, pump),
    ...otherCurves(liquidOfDuty(duty)),
    howItRuns(duty),
    headCurve(duty),
    ...(curve.efficiency === undefined
      ? []
      : [powerCurve(duty, pump), spill(MAX_POWER, "Maximum power of one pump, as on water", maxPowerOf(duty))]),
    ...(curve.npshRequired === undefined ? [] : [npshCurve(duty, pump)]),
  ];
}

/** The last flow of all pumps together, of which one of the chosen kind reaches so far: their sum side by side, the least in series. */
export function lastFlowOfAll(
  duty: Duty,
  ofChosen: Expression,
  one: Pick<DutyState, "pumps" | "sideBySide" | "otherCurve">,
): Expression {
  const others = duty.otherPumps.map((pump) => otherLastFlow(pump, one.otherCurve(pump)));
  if (others.length === 0) return product(ofChosen, one.sideBySide);
  return byArrangement(duty, least(ofChosen, ...others), sum(product(ofChosen, one.pumps), ...others));
}

function howItRuns(duty: Duty): WorkingItem {
  const arranged = (series: Expression, parallel: Expression): Expression => byArrangement(duty, series, parallel);
  const water = densityOfWater(duty.unitSet);
  return working(HOW_IT_RUNS, "How the pumps run", 1, [
    ["sideBySide", "sharing the flow", () => arranged(constant(1), pumpsOfAll(duty))],
    ["inSeries", "adding heads", () => arranged(FIELD.pumpsRunning, constant(1))],
    ["specificGravity", "SG", () => ratio(LIQUID_FIGURES.density, water)],
    [
      "curveEnd",
      "curve of all ends at",
      () =>
        lastFlowOfAll(duty, lastFlow(duty), {
          pumps: FIELD.pumpsRunning,
          sideBySide: SIDE_BY_SIDE,
          otherCurve: (pump) => otherAsPumped(pump, liquidOfDuty(duty)),
        }),
    ],
    [
      "reach",
      "system curves up to",
      // By the curves with water, which no liquid makes longer, so that no system waits for a corrected one.
      () =>
        reachOf(
          lastFlowOfAll(duty, lastFlowOnWater(), {
            pumps: FIELD.pumpsRunning,
            sideBySide: SIDE_BY_SIDE,
            otherCurve: onWaterOf,
          }),
        ),
    ],
  ]);
}

type Curve = typeof HEAD_CURVE | typeof POWER_CURVE | typeof NPSH_CURVE;

/** Flows of each pump from the first to the last. */
function flowsOfEach(from: Expression, to: Expression): ColumnFacts<"each"> {
  return [
    "each",
    "flow of each",
    (row) => {
      // The ends as they stand: a step added up might pass the end of the curve by a rounding.
      if (row === 0) return from;
      if (row === CURVE_ROWS - 1) return to;
      return sum(from, product(difference(to, from), ratio(constant(row), constant(CURVE_ROWS - 1))));
    },
  ];
}

function flowsTogether(of: Curve): ColumnFacts<"together"> {
  return ["together", "flow of all", (row) => product(cell<"each">(of as TableOf<"each">, row, "each"), SIDE_BY_SIDE)];
}

function headCurve(duty: Duty): WorkingItem {
  return working(HEAD_CURVE, "Head of the pumps as they run", CURVE_ROWS, [
    flowsOfEach(atRunning(0, duty), lastFlow(duty)),
    ["head", "head of each", { spill: callOf(PUMPHEAD, readAt(HEAD_CURVE, duty)) }],
    flowsTogether(HEAD_CURVE),
    ["headTogether", "head of all", (row) => product(cell(HEAD_CURVE, row, "head"), IN_SERIES)],
  ]);
}

function powerCurve(duty: Duty, { curve: { points } }: DutyPump): WorkingItem {
  const [first, last] = givenRows(points, "efficiency");
  return working(POWER_CURVE, "Efficiency and shaft power as they run, with the liquid pumped", CURVE_ROWS, [
    flowsOfEach(atRunning(first, duty), insideOf(last, points.length, duty)),
    ["efficiency", "efficiency", { spill: callOf(PUMPEFFICIENCY, readAt(POWER_CURVE, duty)) }],
    ["power", "power of each", { spill: callOf(PUMPPOWER, { ...readAt(POWER_CURVE, duty), SG: SPECIFIC_GRAVITY }) }],
    flowsTogether(POWER_CURVE),
    ["percent", "efficiency", (row) => product(cell(POWER_CURVE, row, "efficiency"), constant(100))],
    ["powerTogether", "power of all", (row) => product(cell(POWER_CURVE, row, "power"), FIELD.pumpsRunning)],
  ]);
}

/** NPSH required goes with the speed alone, so its flows end with its own column or with the curve as trimmed. */
function npshCurve(duty: Duty, { curve: { points } }: DutyPump): WorkingItem {
  const [first, last] = givenRows(points, "npshRequired");
  const bySpeed = (row: number): Expression => product(cell(curveAsPumped(duty), row, "flow"), PUMP.speedRatio);
  return working(NPSH_CURVE, "NPSH as they run, the source at the level stated", CURVE_ROWS, [
    flowsOfEach(greatest(bySpeed(first), atRunning(0, duty)), least(bySpeed(last), lastFlow(duty))),
    ["required", "NPSHR", { spill: callOf(PUMPNPSHR, readAt(NPSH_CURVE, duty)) }],
    flowsTogether(NPSH_CURVE),
    ["available", "NPSHA", { spill: npshAvailableAt(column(NPSH_CURVE, "together")) }],
  ]);
}

/** The curve of one pump at the flows of each, as it runs. */
function readAt(of: Curve, duty: Duty): ReturnType<typeof readCurve> & { readonly flow: Expression } {
  return { ...readCurve(duty), flow: column(of as TableOf<"each">, "each") };
}

/** Flow of a row of the curve at the running speed and trim. */
function atRunning(row: number, duty: Duty): Expression {
  return product(cell(curveAsPumped(duty), row, "flow"), ...RATIOS);
}

/** The last flow of a column. One that ends before the curve is kept inside by more than the rounding of its flow. */
function insideOf(row: number, rows: number, duty: Duty): Expression {
  return row === rows - 1 ? lastFlow(duty) : product(atRunning(row, duty), difference(constant(1), constant(1e-9)));
}

/** The first and last row that give a figure above 0 in a column: 0 counts as not given. */
function givenRows(
  points: readonly Readonly<Partial<Record<keyof CurvePointText, number>>>[],
  of: keyof CurvePointText,
): readonly [number, number] {
  const given = (point: (typeof points)[number]): boolean => (point[of] ?? 0) > 0;
  return [points.findIndex(given), points.findLastIndex(given)];
}
