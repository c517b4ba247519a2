import { LOGO_PLACE } from "./duty-text.ts";
import { FIELDS, type FieldKey } from "./fields.ts";

const TABLES: Readonly<Record<string, string>> = {
  suctionLine: "Suction line",
  dischargeLine: "Discharge line",
  pump: "Pump curve",
};

/** "Flow", "Suction line, row 1", "Case 2": what a box is called. */
export function placeLabel(place: string): string {
  const [table = "", row] = place.replace("pump.points", "pump").split(".");
  if (place === LOGO_PLACE) return "Logo";
  if (table === "cases") return `Case ${Number(row) + 1}`;
  const label = TABLES[table];
  if (label === undefined) return FIELDS[place as FieldKey]?.label ?? place;
  return row === undefined || !/^\d+$/.test(row) ? label : `${label}, row ${Number(row) + 1}`;
}
