import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import type { Duty, DutyPump, DutySegment } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import {
  type Call,
  callById,
  constant,
  difference,
  type Expression,
  product,
  rangeAt,
  ratio,
  sum,
  tableCell,
  value,
} from "../expression.ts";
import type { PlanItem, SpillItem, WorkingItem } from "../plan.ts";
import { SYSTEM_REACH } from "./drawn-curves.ts";
import { type DutyCasePlan, dutyCases, growsRougher, recordKey, systemKey } from "./duty-cases.ts";
import { LIQUID_TAIL } from "./liquid.ts";

const POINTS = 25;

/** The systems the duty may be, the pump's curve at the ends of its tolerance, and where they meet: working columns. */
export function systemCases(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const cases = dutyCases(duty);
  const hasAged = cases.some(({ pipe }) => pipe === "aged");
  const systems = new Map(cases.map((one) => [systemKey(one), one]));
  const aged = hasAged ? [agedLine(duty, "suctionLine"), agedLine(duty, "dischargeLine")] : [];
  return [
    ...aged,
    ...[...systems].map(([key, one]) => systemOf(key, one)),
    ...(cases.some(({ curve }) => curve === "high") ? [withinTolerance(pump, "high")] : []),
    ...(cases.some(({ curve }) => curve === "low") ? [withinTolerance(pump, "low")] : []),
    ...cases.map(recordOf),
  ];
}

/** The call that finds the operating point of a case. */
export function operatingPointOf(one: DutyCasePlan): Call {
  return callById(
    "OPERATINGPOINT",
    rangeAt({ drawn: "pumpCurve", high: "highCurve", low: "lowCurve" }[one.curve]),
    value(systemKey(one)),
    value("speedRatio"),
    value("trimRatio"),
    value("pumpCount"),
    value("arrangement"),
  );
}

function recordOf(one: DutyCasePlan): SpillItem {
  return {
    kind: "spill",
    key: recordKey(one),
    label: `Operating point: ${one.label.toLowerCase()}`,
    expression: operatingPointOf(one),
    rows: 2,
    columns: [
      { key: "flow", quantity: "flow" },
      { key: "head", quantity: "head" },
      { key: "efficiency", quantity: "ratio" },
      { key: "shaftPower", quantity: "power" },
      { key: "npshRequired", quantity: "head" },
      { key: "bestFlowPercent", quantity: "percent" },
    ],
  };
}

const SYSTEM_LABELS = {
  staticHead: "as stated",
  leastStaticHead: "least static head",
  greatestStaticHead: "greatest static head",
} as const;

/** "System, greatest static head, aged pipe" */
export function systemLabel({ staticHead, pipe }: Pick<DutyCasePlan, "staticHead" | "pipe">): string {
  const head = SYSTEM_LABELS[staticHead];
  if (pipe === "new") return `System, ${head}`;
  return staticHead === "staticHead" ? "System, aged pipe" : `System, ${head}, aged pipe`;
}

function systemOf(key: string, one: DutyCasePlan): SpillItem {
  const isAged = one.pipe === "aged";
  return {
    kind: "spill",
    key,
    label: systemLabel(one),
    expression: callById(
      "SYSTEMCURVE",
      value(one.staticHead),
      rangeAt(isAged ? AGED_KEYS.suctionLine : "suctionLine"),
      rangeAt(isAged ? AGED_KEYS.dischargeLine : "dischargeLine"),
      SYSTEM_REACH,
      constant(POINTS),
      difference(value("deliveryPressure"), value("sourcePressure")),
      ...LIQUID_TAIL,
    ),
    rows: POINTS + 1,
    columns: [
      { key: "flow", quantity: "flow" },
      { key: "head", quantity: "head" },
    ],
  };
}

const AGED_KEYS = { suctionLine: "agedSuctionLine", dischargeLine: "agedDischargeLine" } as const;

/** A line with its pipes as rough as stated for old age; those that do not age stand as they are. */
function agedLine(duty: Duty, line: LineKey): WorkingItem {
  const segments = duty[line];
  const cell = (row: number, of: string): Expression => value(tableCell(line, row, of));
  return {
    kind: "working",
    key: AGED_KEYS[line],
    label: line === "suctionLine" ? "Suction line, aged" : "Discharge line, aged",
    rows: segments.length,
    columns: [
      {
        key: "pipe",
        label: "pipe",
        cells: (row) => agedPipe(cell(row, "pipe"), segments[row] as DutySegment, duty),
      },
      { key: "length", label: "length", quantity: "length", cells: (row) => cell(row, "length") },
      { key: "fittings", label: "fittings", cells: (row) => cell(row, "fittings") },
    ],
  };
}

/** "6in sch40" becomes "6in sch40 rough 0.05 in", and so does "6in sch40 rough 0.002 in". */
function agedPipe(cell: Expression, { segment }: DutySegment, duty: Duty): Expression {
  const { agedRoughness, unitSet } = duty;
  if (agedRoughness === undefined || segment === undefined || !growsRougher(segment.pipe, agedRoughness)) return cell;
  const unit = UNIT_SETS[unitSet].size.symbol;
  const before: Expression = { op: "before", text: cell, mark: roughnessMark(segment.pipe) };
  return { op: "join", terms: [before, constant(" rough "), value("agedRoughness"), constant(` ${unit}`)] };
}

/** What the roughness of a pipe's name begins with: " rough ", or the surface of a measured one, " steel". */
function roughnessMark({ name, family }: { readonly name: string; readonly family: string }): string {
  const surface = family === "measured" ? /^.*\d \S+( .+)$/.exec(name)?.[1] : undefined;
  return surface === undefined || surface.startsWith(" rough") ? " rough " : surface;
}

/** The curve of a pump whose head came out at an end of its tolerance. */
function withinTolerance({ curve: { points } }: DutyPump, end: "high" | "low"): WorkingItem {
  const tolerance = value(end === "high" ? "headToleranceUpper" : "headToleranceLower");
  const factor = sum(constant(1), ratio(tolerance, constant(100)));
  const given = (row: number, of: string): Expression => value(tableCell("pumpCurve", row, of));
  const has = (of: "efficiency" | "npshRequired"): boolean => points.some((point) => point[of] !== undefined);
  const copied =
    (of: "efficiency" | "npshRequired") =>
    (row: number): Expression | null =>
      points[row]?.[of] === undefined ? null : given(row, of);
  return {
    kind: "working",
    key: `${end}Curve`,
    label: `Curve of one pump at its ${end === "high" ? "upper" : "lower"} head tolerance`,
    rows: points.length,
    columns: [
      { key: "flow", label: "flow", quantity: "flow", cells: (row) => given(row, "flow") },
      { key: "head", label: "head", quantity: "head", cells: (row) => product(given(row, "head"), factor) },
      ...(has("efficiency")
        ? [{ key: "efficiency", label: "efficiency", quantity: "percent", cells: copied("efficiency") } as const]
        : []),
      ...(has("npshRequired")
        ? [{ key: "npshRequired", label: "NPSHR", quantity: "head", cells: copied("npshRequired") } as const]
        : []),
    ],
  };
}
