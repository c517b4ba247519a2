import { STYLES } from "../calc-sheet/styles.ts";
import { addressOf } from "../ports/a1.ts";
import { rowHeight } from "../ports/column-room.ts";
import type { CellSpec, SheetSpec, StyleSpec } from "../ports/sheet-spec.ts";
import { USUAL_CURVE_ORDER } from "../pump-table/columns.ts";
import { type CurveToWrite, type RowUnits, rowCells, rowHeadings } from "./curve-rows.ts";
import type { AxisKey } from "./traced-amounts.ts";

interface TracedSheet {
  readonly curves: readonly CurveToWrite[];
  readonly units: RowUnits;
  /** Decimals shown of each traced column; the cells hold every digit. */
  readonly decimals: Readonly<Partial<Record<AxisKey, number>>>;
  /** Where the figures come from, line by line. */
  readonly notes: readonly string[];
}

const WIDTHS = [22, 9, 11, 11, 11, 11, 11, 11, 3, 90] as const;
/** Beside the table, so that its range is free of them. */
const NOTES = WIDTHS.length - 1;

/** Traced rows as a sheet: the heading in its first row, so that the whole table is one range from A1. */
export function curveSheet({ curves, units, decimals, notes }: TracedSheet): SheetSpec {
  const styles: Record<string, StyleSpec> = {
    head: STYLES.tableHead,
    headText: STYLES.tableHeadText,
    text: STYLES.inputText,
    note: { ...STYLES.finding, wrap: false },
    plain: STYLES.inputNumber,
  };
  for (const [key, places] of Object.entries(decimals)) {
    const numFmt = places === 0 ? "#,##0" : `#,##0.${"0".repeat(places)}`;
    styles[key] = { ...STYLES.inputNumber, numFmt };
  }
  const texts = rowHeadings(units);
  const headings = texts.map(
    (v, column): CellSpec => ({ at: addressOf(0, column), v, style: column === 0 ? "headText" : "head" }),
  );
  const rows = rowCells(curves);
  const cells = rows.flatMap((row, index) =>
    row.map((v, column): CellSpec => {
      const key = USUAL_CURVE_ORDER[column] ?? "pump";
      const style = key === "pump" ? "text" : key in decimals ? key : "plain";
      return { at: addressOf(index + 1, column), ...(v === null ? {} : { v }), style };
    }),
  );
  const remarks = notes.map((v, index): CellSpec => ({ at: addressOf(index + 1, NOTES), v, style: "note" }));
  return {
    name: `Curves ${curves[0]?.pump ?? ""}`,
    columns: WIDTHS,
    rowHeights: { 1: rowHeight(texts, WIDTHS, STYLES.tableHead) },
    styles,
    cells: [...headings, ...cells, ...remarks],
    freezeRows: 1,
    print: {
      area: `A1:${addressOf(Math.max(rows.length, notes.length), NOTES)}`,
      orientation: "landscape",
      titleRows: "1:1",
    },
  };
}
