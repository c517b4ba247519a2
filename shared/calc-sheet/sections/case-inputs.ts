import type { Quantity } from "../../../src/basis/quantities.ts";
import type { Duty, DutyCase } from "../../duty/duty.ts";
import { CASE_BASE_KEYS, type CaseFieldKey } from "../../duty/duty-text.ts";
import { CASE_FIELDS, CASE_HOURS, CASE_KEYS } from "../../duty/fields/cases.ts";
import { bareNumber } from "../../duty/read-amount.ts";
import { cell, constant, type Expression, type Handle, type TableOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type PlanItem, statement, type TableItem } from "../plan.ts";
import { PUMP } from "./pump.ts";
import { inUnitSet, stated, waitingFor } from "./stated-input.ts";

type CaseColumn = CaseFieldKey | "hours";

/** Columns that stand beside the names of the cases on a page. */
const AT_ONCE = 7;

const BOXES = { ...CASE_FIELDS, hours: CASE_HOURS };

/** What any case states anew, in the order of its boxes: a column each. */
function columnsOf({ cases, pump }: Duty): readonly CaseColumn[] {
  const all: readonly CaseColumn[] = [...CASE_KEYS, "hours"];
  return all.filter((key) => {
    if (key === "hours") return cases.some(({ hoursState }) => hoursState !== "blank");
    return cases.some(({ given }) => given.includes(key)) && (key !== "speedRatio" || pump !== undefined);
  });
}

function tablesOf(duty: Duty): readonly TableOf<CaseColumn>[] {
  const columns = columnsOf(duty).map((key) => ({ key, quantity: quantityOf(key) }));
  return Array.from({ length: Math.ceil(columns.length / AT_ONCE) }, (_, i) => ({
    key: `cases${i === 0 ? "" : i + 1}`,
    columns: columns
      .slice(i * AT_ONCE, (i + 1) * AT_ONCE)
      .map(({ key, quantity }) => ({ key, ...(quantity && { quantity }) })),
  }));
}

function quantityOf(key: CaseColumn): Quantity | undefined {
  return BOXES[key].quantity;
}

/** The cell of what a case states; nothing where it states nothing there. */
export function caseCell(duty: Duty, one: DutyCase, key: CaseColumn): Handle | undefined {
  const isGiven = key === "hours" ? one.hoursState !== "blank" : one.given.includes(key);
  if (!isGiven) return undefined;
  const table = tablesOf(duty).find(({ columns }) => columns.some((column) => column.key === key));
  return table && cell(table, duty.cases.indexOf(one), key);
}

/** What the cases state, as inputs, beside what they take over from the duty. */
export function caseInputs(duty: Duty): readonly PlanItem[] {
  if (duty.cases.length === 0) return [];
  const tables = tablesOf(duty);
  return [
    { kind: "section", id: "cases", text: "Cases" },
    ...(duty.state.speedControl === "assumed" || duty.pump === undefined ? [] : stated(duty, "speedControl")),
    ...tables.map(
      ({ key, columns }): TableItem<CaseColumn> => ({
        kind: "table",
        key,
        heading: "case",
        columns: columns.map((column) => ({ ...column, label: labelOf(column.key) })),
        rows: duty.cases.map((one) => ({
          label: one.name,
          cells: columns.map((column) => inCase(duty, one, column.key)),
        })),
        typed: { of: "cases", rows: duty.cases.map(({ row }) => row) },
      }),
    ),
    statement(
      tables.length === 0
        ? `${duty.cases.map(({ name }) => name).join(", ")}: as the duty is stated.`
        : "Shaded cells are what a case states; the others are those of the duty itself. Each case is worked out whole.",
    ),
  ];
}

function labelOf(key: CaseColumn): string {
  const { label } = BOXES[key];
  return `${label.charAt(0).toLowerCase()}${label.slice(1)}`;
}

/** Its own figure, or the cell of the duty that holds for it. */
function inCase(duty: Duty, one: DutyCase, key: CaseColumn): Expression {
  if (key === "hours") return one.hoursState === "blank" ? constant("") : { op: "stated", value: hoursOf(duty, one) };
  if (one.given.includes(key)) return { op: "stated", value: statedIn(duty, one, key) };
  if (key === "pipe") return constant("new");
  return key === "speedRatio" ? PUMP.speedRatio : FIELD[key];
}

function hoursOf(duty: Duty, { name, hours, typed }: DutyCase) {
  if (hours === undefined) return waitingFor(`${name}: ${CASE_HOURS.label}`);
  return bareNumber(typed.hours) ?? inUnitSet(hours, "hours", duty);
}

function statedIn(duty: Duty, one: DutyCase, key: CaseFieldKey) {
  const base = CASE_BASE_KEYS.find((of) => of === key);
  const value = base === undefined ? one.own[key] : one.duty[base];
  const { label, quantity } = CASE_FIELDS[key];
  if (value === undefined) return waitingFor(`${one.name}: ${label}`);
  if (typeof value === "number") {
    return bareNumber(one.typed.fields[key] ?? "") ?? inUnitSet(value, quantity ?? "ratio", duty);
  }
  return typeof value === "object" && value !== null && "name" in value ? String(value.name) : String(value);
}
