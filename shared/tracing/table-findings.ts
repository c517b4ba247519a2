import { UNIT_SETS } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { readCurveTable } from "../pump-table/curve-table.ts";
import { curveFindings } from "../pump-table/drawn-curves.ts";
import { type CurveToWrite, type RowUnits, rowCells, rowHeadings } from "./curve-rows.ts";

/** What the table of pump curves says of traced rows, by the cells they fill on a sheet of their own. */
export function curveTableFindings(curves: readonly CurveToWrite[], units: RowUnits): readonly Finding[] {
  const place = { name: "Traced rows", corner: { row: 0, column: 0 } };
  // Every heading states its unit, so no unit set is asked.
  const table = readCurveTable([rowHeadings(units), ...rowCells(curves)], { place, units: UNIT_SETS.SI });
  if (!table.ok) return table.findings;
  const { pumps } = table.value;
  return [...pumps.flatMap(({ findings }) => findings), ...curveFindings(pumps, place)];
}
