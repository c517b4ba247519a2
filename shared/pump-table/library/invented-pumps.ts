import type { Cell } from "../../cells/cell.ts";
import library from "./invented-pumps.json" with { type: "json" };

/** Rows under a heading, as they would stand in a sheet. Invented: nobody makes these pumps. */
export const INVENTED_PUMP_ROWS: readonly (readonly Cell[])[] = library.pumps;
export const INVENTED_CURVE_ROWS: readonly (readonly Cell[])[] = library.curves;
