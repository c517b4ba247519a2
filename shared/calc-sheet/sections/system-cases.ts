import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { OPERATINGPOINT } from "../../catalogue/entries/pump.ts";
import type { Duty, DutyPump, DutySegment } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import {
  type Call,
  callOf,
  cell,
  constant,
  type Expression,
  type Handle,
  join,
  product,
  range,
  ratio,
  sum,
  type TableOf,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type ColumnFacts, type PlanItem, spill, type WorkingItem, working } from "../plan.ts";
import { PUMPED } from "./as-pumped.ts";
import { SPECIFIC_GRAVITY, SYSTEM_REACH } from "./drawn-curves.ts";
import { type DutyCasePlan, dutyCases, growsRougher, liquidOf, recordOf, systemOf } from "./duty-cases.ts";
import { HEAD } from "./head.ts";
import { LINES } from "./lines.ts";
import { PUMP, PUMP_CURVE } from "./pump.ts";
import { curveAsPumped, curveOnCarrier } from "./slurry-curve.ts";
import { systemCurveOf } from "./system-curve.ts";

const POINTS = 25;

const CURVES = {
  high: { ...PUMP_CURVE, key: "highCurve" },
  low: { ...PUMP_CURVE, key: "lowCurve" },
} as const satisfies Record<Exclude<DutyCasePlan["curve"], "drawn">, typeof PUMP_CURVE>;

const CLEAR_HIGH: typeof PUMP_CURVE = { ...PUMP_CURVE, key: "clearHighCurve" };

/** The curve of one pump in a case: on clear liquid as stated, else on what is pumped. */
function curveOf({ curve, liquid }: DutyCasePlan, duty: Duty): TableOf {
  const isClear = liquid === "clear";
  if (curve !== "drawn") return isClear ? CLEAR_HIGH : CURVES[curve];
  return isClear ? curveOnCarrier(duty) : curveAsPumped(duty);
}

/** The cell of the static head of each kind of state. */
export const STATIC_HEADS = {
  staticHead: HEAD.staticHead,
  leastStaticHead: FIELD.leastStaticHead,
  greatestStaticHead: FIELD.greatestStaticHead,
} as const satisfies Record<DutyCasePlan["staticHead"], Handle>;

/** The systems the duty may be, the pump's curve at the ends of its tolerance, and where they meet: working columns. */
export function systemCases(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const cases = dutyCases(duty);
  const systems = new Map(cases.map((one) => [systemOf(one).key, one]));
  const ends = (["high", "low"] as const).filter((end) => cases.some(({ curve }) => curve === end));
  return [
    ...(cases.some(({ pipe }) => pipe === "aged")
      ? [agedLine(duty, "suctionLine"), agedLine(duty, "dischargeLine")]
      : []),
    ...[...systems.values()].map((one) => spill(systemOf(one), systemLabel(one), systemCallOf(one), POINTS + 1)),
    ...ends.map((end) => withinTolerance(pump, end, curveAsPumped(duty), CURVES[end])),
    ...(cases.some(({ liquid, curve }) => liquid === "clear" && curve === "high")
      ? [withinTolerance(pump, "high", curveOnCarrier(duty), CLEAR_HIGH)]
      : []),
    ...cases.map((one) =>
      spill(recordOf(one), `Operating point: ${one.label.toLowerCase()}`, operatingPointOf(one, duty, pump)),
    ),
  ];
}

/** The call that finds the operating point of a case. */
export function operatingPointOf(one: DutyCasePlan, duty: Duty, { speed }: DutyPump): Call {
  return callOf(OPERATINGPOINT, {
    curve: range(curveOf(one, duty)),
    systemCurve: range(systemOf(one)),
    speedRatio: PUMP.speedRatio,
    trimRatio: PUMP.trimRatio,
    numberOfPumps: one.pumps === "one" ? constant(1) : PUMP.pumpCount,
    arrangement: PUMP.arrangement,
    SG: one.liquid === "clear" ? PUMPED.clearGravity : SPECIFIC_GRAVITY,
    ...(speed !== undefined && { curveSpeed: PUMP.curveSpeed }),
  });
}

const SYSTEM_LABELS = {
  staticHead: "as stated",
  leastStaticHead: "least static head",
  greatestStaticHead: "greatest static head",
} as const;

/** "System, greatest static head, aged pipe" */
export function systemLabel({
  staticHead,
  pipe,
  liquid,
}: Pick<DutyCasePlan, "staticHead" | "pipe" | "liquid">): string {
  const head = SYSTEM_LABELS[staticHead];
  if (liquid === "clear") return `System, ${head}, clear liquid`;
  if (pipe === "new") return `System, ${head}`;
  return staticHead === "staticHead" ? "System, aged pipe" : `System, ${head}, aged pipe`;
}

/** The two lines of a state, their pipes new or aged. */
export function linesOf({ pipe }: Pick<DutyCasePlan, "pipe">): Readonly<Record<LineKey, TableOf>> {
  return pipe === "aged" ? AGED : LINES;
}

function systemCallOf(one: DutyCasePlan): Call {
  return systemCurveOf({
    staticHead: STATIC_HEADS[one.staticHead],
    lines: linesOf(one),
    upTo: SYSTEM_REACH,
    points: POINTS,
    liquid: liquidOf(one),
  });
}

const AGED = {
  suctionLine: tableOf("agedSuctionLine", { pipe: null, length: "length", fittings: null }),
  dischargeLine: tableOf("agedDischargeLine", { pipe: null, length: "length", fittings: null }),
};

/** A line with its pipes as rough as stated for old age; those that do not age stand as they are. */
function agedLine(duty: Duty, line: LineKey): WorkingItem {
  const segments = duty[line];
  const label = line === "suctionLine" ? "Suction line, aged" : "Discharge line, aged";
  return working(AGED[line], label, segments.length, [
    ["pipe", "pipe", (row) => agedPipe(cell(LINES[line], row, "pipe"), segments[row] as DutySegment, duty)],
    ["length", "length", (row) => cell(LINES[line], row, "length")],
    ["fittings", "fittings", (row) => cell(LINES[line], row, "fittings")],
  ]);
}

/** "6in sch40" becomes "6in sch40 rough 0.05 in", and so does "6in sch40 rough 0.002 in". */
function agedPipe(name: Expression, { segment }: DutySegment, duty: Duty): Expression {
  const { agedRoughness, unitSet } = duty;
  if (segment === undefined) return name;
  const { pipe } = segment;
  if (agedRoughness !== undefined && !growsRougher(pipe, agedRoughness)) return name;
  const unit = UNIT_SETS[unitSet].size.symbol;
  const before: Expression = { op: "before", text: name, mark: roughnessMark(pipe) };
  return join(before, constant(" rough "), FIELD.agedRoughness, constant(` ${unit}`));
}

/** What the roughness of a pipe's name begins with: " rough ", or the surface of a measured one, " steel". */
function roughnessMark({ name, family }: { readonly name: string; readonly family: string }): string {
  const surface = family === "measured" ? /^.*\d \S+( .+)$/.exec(name)?.[1] : undefined;
  return surface === undefined || surface.startsWith(" rough") ? " rough " : surface;
}

/** The curve of a pump whose head came out at an end of its tolerance. */
function withinTolerance(
  { curve: { points } }: DutyPump,
  end: "high" | "low",
  from: typeof PUMP_CURVE,
  to: typeof PUMP_CURVE,
): WorkingItem {
  const tolerance = end === "high" ? PUMP.headToleranceUpper : PUMP.headToleranceLower;
  const factor = sum(constant(1), ratio(tolerance, constant(100)));
  const copied = (of: "efficiency" | "npshRequired", label: string): readonly ColumnFacts<typeof of>[] =>
    points.every((point) => point[of] === undefined)
      ? []
      : [[of, label, (row) => (points[row]?.[of] === undefined ? null : cell(from, row, of))]];
  const label = `Curve of one pump at its ${end === "high" ? "upper" : "lower"} head tolerance`;
  return working(to, label, points.length, [
    ["flow", "flow", (row) => cell(from, row, "flow")],
    ["head", "head", (row) => product(cell(from, row, "head"), factor)],
    ...copied("efficiency", "efficiency"),
    ...copied("npshRequired", "NPSHR"),
  ]);
}
