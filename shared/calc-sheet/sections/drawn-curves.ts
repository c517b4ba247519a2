import { SPECIFIC_GRAVITY_REFERENCE } from "../../../src/basis/constants.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import type { CurvePointText } from "../../duty/duty-text.ts";
import {
  callById,
  columnAt,
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
import type { PlanItem, WorkingColumn, WorkingItem } from "../plan.ts";
import { npshAvailableAt } from "./npsh.ts";
import { inUnitSet } from "./stated-input.ts";

const ROWS = 25;

/** System curves reach this far past the end of the pumps' curve, with room for the tolerance of the bought pump. */
const REACH = 1.2;

const common = (of: string): Expression => value(tableCell("howItRuns", 0, of));
/** How many pumps share the flow, how many add their heads, and the liquid's specific gravity. */
export const SIDE_BY_SIDE = common("sideBySide");
export const IN_SERIES = common("inSeries");
export const SPECIFIC_GRAVITY = common("specificGravity");
/** The greatest flow of the system curves the pumps are held against. */
export const SYSTEM_REACH = common("reach");

const RUNNING = [value("speedRatio"), value("trimRatio")] as const;
const EACH = "each";
const TOGETHER = "together";

/** What the pump section rests on, and the curves of the pump as it runs, in the working columns. */
export function drawnCurves(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const { curve } = pump;
  return [
    howItRuns(duty),
    headCurve,
    ...(curve.efficiency === undefined ? [] : [powerCurve(pump)]),
    ...(curve.npshRequired === undefined ? [] : [npshCurve(pump)]),
  ];
}

function howItRuns(duty: Duty): WorkingItem {
  const one = (key: string, label: string, expression: Expression): WorkingColumn => ({
    key,
    label,
    cells: () => expression,
  });
  const arranged = (series: Expression, parallel: Expression): Expression => ({
    op: "ifText",
    of: value("arrangement"),
    is: "series",
    met: series,
    otherwise: parallel,
  });
  const count = value("pumpCount");
  const water = constant(inUnitSet(SPECIFIC_GRAVITY_REFERENCE, "density", duty));
  return {
    kind: "working",
    key: "howItRuns",
    label: "How the pumps run",
    rows: 1,
    columns: [
      one("sideBySide", "sharing the flow", arranged(constant(1), count)),
      one("inSeries", "adding heads", arranged(count, constant(1))),
      { ...one("specificGravity", "SG", ratio(value("density"), water)), quantity: "ratio" },
      {
        ...one(
          "reach",
          "curves up to",
          product(
            constant(REACH),
            { op: "columnGreatest", key: "pumpCurve", column: "flow", otherwise: "" },
            ...RUNNING,
            SIDE_BY_SIDE,
          ),
        ),
        quantity: "flow",
      },
    ],
  };
}

const headCurve: WorkingItem = {
  kind: "working",
  key: "headCurve",
  label: "Head of the pumps as they run",
  rows: ROWS,
  columns: [
    flowsOfEach(atRunning(0), lastFlow()),
    { key: "head", label: "head of each", quantity: "head", cells: { spill: reading("PUMPHEAD", "headCurve") } },
    flowsTogether("headCurve"),
    {
      key: "headTogether",
      label: "head of all",
      quantity: "head",
      cells: (row) => product(value(tableCell("headCurve", row, "head")), IN_SERIES),
    },
  ],
};

function powerCurve({ curve }: DutyPump): WorkingItem {
  const key = "powerCurve";
  const [first, last] = givenRows(curve.points, "efficiency");
  const cell = (row: number, of: string): Expression => value(tableCell(key, row, of));
  return {
    kind: "working",
    key,
    label: "Efficiency and shaft power as they run, with the liquid pumped",
    rows: ROWS,
    columns: [
      flowsOfEach(atRunning(first), insideOf(last, curve.points.length)),
      { key: "efficiency", label: "efficiency", quantity: "ratio", cells: { spill: reading("PUMPEFFICIENCY", key) } },
      {
        key: "power",
        label: "power of each",
        quantity: "power",
        cells: {
          spill: callById("PUMPPOWER", rangeAt("pumpCurve"), columnAt(key, EACH), ...RUNNING, SPECIFIC_GRAVITY),
        },
      },
      flowsTogether(key),
      {
        key: "percent",
        label: "efficiency",
        quantity: "percent",
        cells: (row) => product(cell(row, "efficiency"), constant(100)),
      },
      {
        key: "powerTogether",
        label: "power of all",
        quantity: "power",
        cells: (row) => product(cell(row, "power"), value("pumpCount")),
      },
    ],
  };
}

/** NPSH required goes with the speed alone, so its flows end with its own column or with the curve as trimmed. */
function npshCurve({ curve }: DutyPump): WorkingItem {
  const key = "npshCurve";
  const [first, last] = givenRows(curve.points, "npshRequired");
  const bySpeed = (row: number): Expression => product(curveFlow(row), value("speedRatio"));
  return {
    kind: "working",
    key,
    label: "NPSH as they run, the source at the level stated",
    rows: ROWS,
    columns: [
      flowsOfEach(
        { op: "greatest", terms: [bySpeed(first), atRunning(0)] },
        { op: "least", terms: [bySpeed(last), lastFlow()] },
      ),
      { key: "required", label: "NPSHR", quantity: "head", cells: { spill: reading("PUMPNPSHR", key) } },
      flowsTogether(key),
      {
        key: "available",
        label: "NPSHA",
        quantity: "head",
        cells: { spill: npshAvailableAt(columnAt(key, TOGETHER)) },
      },
    ],
  };
}

function reading(id: string, key: string): Expression {
  return callById(id, rangeAt("pumpCurve"), columnAt(key, EACH), ...RUNNING);
}

function flowsOfEach(from: Expression, to: Expression): WorkingColumn {
  return {
    key: EACH,
    label: "flow of each",
    quantity: "flow",
    cells: (row) => {
      // The ends as they stand: a step added up might pass the end of the curve by a rounding.
      if (row === 0) return from;
      if (row === ROWS - 1) return to;
      return sum(from, product(difference(to, from), ratio(constant(row), constant(ROWS - 1))));
    },
  };
}

function flowsTogether(key: string): WorkingColumn {
  return {
    key: TOGETHER,
    label: "flow of all",
    quantity: "flow",
    cells: (row) => product(value(tableCell(key, row, EACH)), SIDE_BY_SIDE),
  };
}

function curveFlow(row: number): Expression {
  return value(tableCell("pumpCurve", row, "flow"));
}

/** Flow of a row of the curve at the running speed and trim. */
function atRunning(row: number): Expression {
  return product(curveFlow(row), ...RUNNING);
}

function lastFlow(): Expression {
  return product({ op: "columnGreatest", key: "pumpCurve", column: "flow", otherwise: "" }, ...RUNNING);
}

/** The last flow of a column. One that ends before the curve is kept inside by more than the rounding of its flow. */
function insideOf(row: number, rows: number): Expression {
  return row === rows - 1 ? lastFlow() : product(atRunning(row), constant(1 - 1e-9));
}

/** The first and last row that give a figure above 0 in a column: 0 counts as not given. */
function givenRows(
  points: readonly Readonly<Partial<Record<keyof CurvePointText, number>>>[],
  of: keyof CurvePointText,
): readonly [number, number] {
  const given = (point: (typeof points)[number]): boolean => (point[of] ?? 0) > 0;
  return [points.findIndex(given), points.findLastIndex(given)];
}
