import type { Cell } from "../../../shared/cells/cell.ts";
import { type CurvePointText, EMPTY_CURVE_POINT, type PumpText } from "../../../shared/duty/duty-text.ts";
import { CURVE_POINT, POINT_COLUMNS } from "../../../shared/duty/fields/pump.ts";
import { CURVE_COLUMNS, type CurveColumn } from "../../../shared/pump-table/columns.ts";
import { headingOf } from "../../../shared/tables/heading.ts";
import { type Quantity, UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { readNumber, splitAmount } from "../../../src/basis/quantity-text.ts";
import { type Result, succeed } from "../../../src/basis/result.ts";
import type { Unit } from "../../../src/basis/units.ts";

/** A pasted curve may leave its pump unnamed. */
const COLUMNS = { ...CURVE_COLUMNS, pump: { ...CURVE_COLUMNS.pump, needed: false } } as const;

/** What was pasted: a block of cells, or a whole curve under a heading with what the rows say of its pump. */
export interface PastedCurve {
  readonly points: readonly CurvePointText[];
  readonly about: Partial<Pick<PumpText, "name" | "speed" | "impellerDiameter">>;
  /** Curves the rows hold; the points are those of the first. */
  readonly curves: number;
}

/** The cells of a text from a spreadsheet: tabs between cells, lines between rows; nothing where it is one cell. */
export function pastedRows(text: string): readonly (readonly string[])[] | undefined {
  const lines = text.replace(/\r\n?/g, "\n").replace(/\n+$/, "").split("\n");
  const rows = lines.map((line) => line.split("\t").map((cell) => cell.trim()));
  return rows.length > 1 || (rows[0]?.length ?? 0) > 1 ? rows : undefined;
}

/**
 * A curve from pasted rows that have a heading; nothing where they have none. Figures stay the text they are; where
 * the heading states another unit than the unit set's, the unit is written behind each. Efficiencies that are all
 * fractions stay fractions whatever their heading says, since cells shown as per cent hold them so. Of several curves
 * the first is taken. Fails on a heading that cannot be read.
 */
export function pastedCurve(rows: readonly (readonly string[])[], units: UnitSetName): Result<PastedCurve> | undefined {
  const cells: readonly (readonly Cell[])[] = rows;
  const heading = headingOf<CurveColumn>(cells, COLUMNS, { name: "the pasted rows" });
  if (heading === undefined || !heading.ok) return heading;
  const { at, units: stated, firstRow } = heading.value;
  const textAt = (row: readonly string[], column: CurveColumn): string => {
    const place = at[column];
    return place === undefined ? "" : (row[place] ?? "");
  };
  const filled = rows.slice(firstRow).filter((row) => row.some((text) => text !== ""));
  const curves: { readonly key: string; readonly rows: (readonly string[])[] }[] = [];
  let key = "";
  for (const row of filled) {
    // A blank pump, speed or impeller means the one above.
    const parts = key.split("\t");
    key = (["pump", "speed", "diameter"] as const)
      .map((column, i) => textAt(row, column) || (parts[i] ?? ""))
      .join("\t");
    const last = curves.at(-1);
    if (last?.key === key) last.rows.push(row);
    else curves.push({ key, rows: [row] });
  }
  const first = curves[0];
  const [name = "", speed = "", diameter = ""] = first?.key.split("\t") ?? [];
  const withUnit = (text: string, column: CurveColumn, quantity: Quantity): string =>
    inUnit(text, stated[column], UNIT_SETS[units][quantity]);
  const points = (first?.rows ?? []).map(
    (row) =>
      Object.fromEntries(
        POINT_COLUMNS.map((column) => {
          const text = textAt(row, column);
          return [column, column === "efficiency" ? text : withUnit(text, column, CURVE_POINT[column].quantity)];
        }),
      ) as unknown as CurvePointText,
  );
  return succeed({
    points: areFractions(points) ? points : points.map((point) => withPercent(point, stated.efficiency)),
    about: {
      ...(name === "" ? {} : { name }),
      ...(speed === "" ? {} : { speed: withUnit(speed, "speed", "speed") }),
      ...(diameter === "" ? {} : { impellerDiameter: withUnit(diameter, "diameter", "size") }),
    },
    curves: curves.length,
  });
}

/** Points with a block of cells laid over them, its first cell on the box it was pasted into; rows are added. */
export function withBlock(
  points: readonly CurvePointText[],
  rows: readonly (readonly string[])[],
  row: number,
  column: keyof CurvePointText,
): readonly CurvePointText[] {
  const left = POINT_COLUMNS.indexOf(column);
  const laid = [...points];
  for (const [i, texts] of rows.entries()) {
    while (laid.length <= row + i) laid.push(EMPTY_CURVE_POINT);
    const over = POINT_COLUMNS.slice(left).flatMap((key, j) =>
      texts[j] === undefined ? [] : [[key, texts[j]] as const],
    );
    laid[row + i] = { ...(laid[row + i] as CurvePointText), ...Object.fromEntries(over) };
  }
  return laid;
}

function inUnit(text: string, stated: Unit | undefined, expected: Unit): string {
  if (stated === undefined || stated === expected || text === "") return text;
  return splitAmount(text)?.unit === "" ? `${text} ${stated.symbol}` : text;
}

/** No efficiency that is a plain number is more than this where a column holds fractions. */
const MOST_FRACTION = 1;

function areFractions(points: readonly CurvePointText[]): boolean {
  return points.every(({ efficiency }) => {
    const read = readNumber(efficiency, "efficiency");
    return !read.ok || read.value <= MOST_FRACTION;
  });
}

function withPercent(point: CurvePointText, stated: Unit | undefined): CurvePointText {
  return { ...point, efficiency: inUnit(point.efficiency, stated, UNIT_SETS.SI.ratio) };
}
