import type { UnitSymbol } from "../../src/basis/units.ts";
import { covers, pchip, valueAt } from "../../src/numeric/pchip.ts";
import { CURVE_COLUMNS, USUAL_CURVE_ORDER } from "../pump-table/columns.ts";
import type { FlowAmount } from "./calibration.ts";
import { type AxisKey, TRACED_KEYS, type TracedKey } from "./traced-amounts.ts";

/** The lines traced of one pump curve, in the units of their axes. */
export type TracedAmounts = Readonly<Record<TracedKey, readonly FlowAmount[]>>;

/** A row of the table: what no line gives at its flow is left out. */
export interface CurveRow extends Readonly<Partial<Record<TracedKey, number>>> {
  readonly flow: number;
}

export interface RowsAtHeadFlows {
  readonly rows: readonly CurveRow[];
  /** Flows of the head line beyond an end of another line, where that stays blank. */
  readonly beyond: Readonly<Record<TracedKey, number>>;
}

/** A pump curve with all that its rows say of it. */
export interface CurveToWrite {
  readonly pump: string;
  readonly speed: number | undefined;
  readonly diameter: number | undefined;
  readonly rows: readonly CurveRow[];
}

export type RowUnits = Readonly<Record<AxisKey | "diameter", UnitSymbol>>;

/**
 * One row a flow, ascending, each figure as traced: where a line has no point at a flow the row stays blank.
 * Points of different lines share a row where their flows differ by no more than `sameFlow`.
 */
export function rowsAsTraced(lines: TracedAmounts, sameFlow: number): readonly CurveRow[] {
  const points = TRACED_KEYS.flatMap((key) => lines[key].map(({ flow, amount }) => ({ key, flow, amount })));
  points.sort((one, other) => one.flow - other.flow);
  const rows: { flow: number; [key: string]: number }[] = [];
  for (const { key, flow, amount } of points) {
    const last = rows.at(-1);
    if (last !== undefined && flow - last.flow <= sameFlow && last[key] === undefined) last[key] = amount;
    else rows.push({ flow, [key]: amount });
  }
  return rows;
}

/**
 * One row a point of the head line; the other lines are read at its flows between their own points, by the monotone
 * piecewise cubic of Fritsch and Butland. Beyond its own points a line gives nothing, and neither does one with fewer
 * than two. Flows within a line are ascending.
 */
export function rowsAtHeadFlows(lines: TracedAmounts, sameFlow: number): RowsAtHeadFlows {
  const beyond = { head: 0, efficiency: 0, npshRequired: 0, power: 0 };
  const readers = TRACED_KEYS.map((key) => [key, readerOf(lines[key], sameFlow)] as const);
  const rows = lines.head.map(({ flow, amount }) => {
    const row: { flow: number; [key: string]: number } = { flow, head: amount };
    for (const [key, read] of readers) {
      if (key === "head") continue;
      const value = read(flow);
      if (value !== undefined) row[key] = value;
      else if (lines[key].length > 0) beyond[key] += 1;
    }
    return row;
  });
  return { rows, beyond };
}

function readerOf(line: readonly FlowAmount[], sameFlow: number): (flow: number) => number | undefined {
  const own = (flow: number): number | undefined =>
    line.find((point) => Math.abs(point.flow - flow) <= sameFlow)?.amount;
  if (line.length < 2) return own;
  const curve = pchip(
    line.map(({ flow }) => flow),
    line.map(({ amount }) => amount),
  );
  return (flow) => own(flow) ?? (covers(curve, flow) ? valueAt(curve, flow) : undefined);
}

/** "flow, m³/h": the heading of each column, as the table of pump curves reads it. */
export function rowHeadings(units: RowUnits): readonly string[] {
  return USUAL_CURVE_ORDER.map((key) => {
    const { name } = CURVE_COLUMNS[key];
    if (key === "pump") return name;
    return `${name}, ${key === "speed" ? "rpm" : units[key]}`;
  });
}

/** The cells of the rows under their headings, every digit kept; null where nothing is known. */
export function rowCells(curves: readonly CurveToWrite[]): readonly (readonly (string | number | null)[])[] {
  return curves.flatMap(({ pump, speed, diameter, rows }) =>
    rows.map((row) =>
      USUAL_CURVE_ORDER.map((key) => {
        if (key === "pump") return pump;
        if (key === "speed") return speed ?? null;
        if (key === "diameter") return diameter ?? null;
        return row[key] ?? null;
      }),
    ),
  );
}

/** Rows to paste into cells: parted by tabs, with the decimal sign that the spreadsheet reads. */
export function rowsToPaste(curves: readonly CurveToWrite[], units: RowUnits, decimalSign: "." | ","): string {
  const lines = rowCells(curves).map((cells) =>
    cells.map((cell) => {
      if (cell === null) return "";
      return typeof cell === "number" ? String(cell).replace(".", decimalSign) : cell.replace(/\s+/g, " ");
    }),
  );
  return [rowHeadings(units), ...lines].map((cells) => `${cells.join("\t")}\r\n`).join("");
}
