import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { type CurveTable, readCurveTable } from "../curve-table.ts";
import { type PumpList, readPumpList } from "../pump-list.ts";
import { INVENTED_CURVE_ROWS, INVENTED_PUMP_ROWS } from "./invented-pumps.ts";

/** The invented pumps read as any table is; throws where our own file is at fault. */
export function inventedPumps(): { readonly curves: CurveTable; readonly list: PumpList } {
  const units = UNIT_SETS.US;
  const curves = readCurveTable(INVENTED_CURVE_ROWS, { place: { name: "invented pump curves" }, units });
  const list = readPumpList(INVENTED_PUMP_ROWS, { place: { name: "invented pumps" }, units });
  if (!curves.ok || !list.ok) throw new Error("the library of invented pumps cannot be read");
  return { curves: curves.value, list: list.value };
}
