import { type DutyText, EMPTY_CASE, EMPTY_CURVE_POINT, EMPTY_SEGMENT, withoutOldSelection } from "./duty-text.ts";
import { FIELDS, type FieldKey } from "./fields.ts";

/** The place of what was said of a field's origin, as a key beside that of the field. */
export function basisPlace(field: FieldKey): string {
  return `${field}.basis`;
}

/** The text in a box by the key of its place; blank where there is none. */
export function textIn(duty: DutyText, place: string): string {
  let inside: unknown = duty;
  for (const step of pathOf(place)) inside = (inside as Readonly<Record<string, unknown>> | undefined)?.[step];
  return typeof inside === "string" ? inside : "";
}

/** The duty with a text in the box of that place, which the duty has. */
export function withTextIn(duty: DutyText, place: string, text: string): DutyText {
  return withoutOldSelection(withAt(duty, pathOf(place), text) as DutyText, place);
}

/** A table of boxes by what the keys of its places begin with: "suctionLine", "pump.points", "otherPumps.0.points", "cases". */
export function rowsIn(duty: DutyText, table: string): readonly unknown[] {
  let inside: unknown = duty;
  for (const step of table.split(".")) inside = (inside as Readonly<Record<string, unknown>> | undefined)?.[step];
  return Array.isArray(inside) ? inside : [];
}

/** The duty with these rows, each one of the table as it was or a blank one. */
export function withRowsIn(duty: DutyText, table: string, rows: readonly unknown[]): DutyText {
  if (table === "cases" && rows.length === 0) {
    const { cases: _, ...without } = duty;
    return without;
  }
  const isLine = table === "suctionLine" || table === "dischargeLine";
  const changed = withAt(duty, table.split("."), isLine && rows.length === 0 ? [EMPTY_SEGMENT] : rows) as DutyText;
  return withoutOldSelection(changed, table);
}

/** A row of the table with nothing in it. */
export function blankRow(table: string): unknown {
  if (table === "cases") return EMPTY_CASE;
  return table.endsWith("points") ? EMPTY_CURVE_POINT : EMPTY_SEGMENT;
}

/** Where a box stands in a duty. */
function pathOf(place: string): readonly string[] {
  const steps = place.split(".");
  const [first = "", second = "", third = ""] = steps;
  if (Object.hasOwn(FIELDS, first)) return second === "basis" ? ["basis", first] : ["fields", first];
  if (first === "cases" && third !== "name" && third !== "hours") return [first, second, "fields", third];
  return steps;
}

function withAt(inside: unknown, [step, ...further]: readonly string[], value: unknown): unknown {
  if (step === undefined) return value;
  if (Array.isArray(inside)) {
    const copy: unknown[] = [...inside];
    copy[Number(step)] = withAt(copy[Number(step)], further, value);
    return copy;
  }
  const record = inside as Readonly<Record<string, unknown>> | undefined;
  return { ...record, [step]: withAt(record?.[step], further, value) };
}
