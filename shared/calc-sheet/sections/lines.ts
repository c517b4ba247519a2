import { FITTINGHEAD, FRICTIONHEAD, REYNOLDS, VELOCITY } from "../../catalogue/entries/pipe-and-friction.ts";
import { BORE } from "../../catalogue/entries/pipe-list.ts";
import type { Duty, DutySegment } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import { bareNumber } from "../../duty/read-amount.ts";
import { callOf, type TableOf } from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import type { LineTableItem, PlanItem, WorkedColumn } from "../plan.ts";
import { inUnitSet } from "./stated-input.ts";

const { flow } = FIELD;

type WorkedKey = "bore" | "velocity" | "reynolds" | "pipeHead" | "fittingHead";

const WORKED: readonly WorkedColumn<WorkedKey>[] = [
  { key: "bore", label: "bore", quantity: "size", expression: (cell) => callOf(BORE, { pipe: cell("pipe") }) },
  {
    key: "velocity",
    label: "velocity",
    quantity: "velocity",
    expression: (cell) => callOf(VELOCITY, { flow, pipe: cell("pipe") }),
  },
  {
    key: "reynolds",
    label: "Reynolds number",
    expression: (cell) => callOf(REYNOLDS, { flow, pipe: cell("pipe"), ...LIQUID }),
  },
  {
    key: "pipeHead",
    label: "pipe friction",
    quantity: "head",
    expression: (cell) => callOf(FRICTIONHEAD, { flow, pipe: cell("pipe"), length: cell("length"), ...LIQUID }),
  },
  {
    key: "fittingHead",
    label: "fittings",
    quantity: "head",
    expression: (cell) => callOf(FITTINGHEAD, { flow, pipe: cell("pipe"), fittings: cell("fittings"), ...LIQUID }),
  },
];

const COLUMNS = [{ key: "pipe" }, { key: "length", quantity: "length" }, { key: "fittings" }, ...WORKED] as const;

/** The two lines of the duty as tables: as ranges they hold what is stated alone. */
export const LINES = {
  suctionLine: { key: "suctionLine", columns: COLUMNS },
  dischargeLine: { key: "dischargeLine", columns: COLUMNS },
} as const satisfies Record<LineKey, TableOf>;

const TITLES: Readonly<Record<LineKey, string>> = { suctionLine: "Suction line", dischargeLine: "Discharge line" };

/** A line as a table: what was stated of each run, and what it does at the stated flow. */
export function lineTable(duty: Duty, key: LineKey): readonly PlanItem[] {
  const label = TITLES[key];
  const table: LineTableItem<WorkedKey> = {
    kind: "line",
    key,
    label,
    // A line still to be stated has one row, which says so.
    rows:
      duty[key].length === 0
        ? [{ pipe: "", length: "", fittings: NO_FITTINGS }]
        : duty[key].map((segment) => rowOf(segment, duty)),
    worked: WORKED,
  };
  return [{ kind: "section", id: key, text: label }, table];
}

/** A run without fittings says so: a blank cell would reach the functions as 0 or as nothing, by platform. */
const NO_FITTINGS = "none";

function rowOf({ typed, segment }: DutySegment, duty: Duty): LineTableItem["rows"][number] {
  const plain = bareNumber(typed.length);
  return {
    // What cannot be read stands as it was typed, and the functions say what is wrong with it.
    pipe: segment?.pipe.name ?? typed.pipe.trim(),
    length: plain ?? (segment === undefined ? typed.length.trim() : inUnitSet(segment.length, "length", duty)),
    fittings: typed.fittings.trim() === "" ? NO_FITTINGS : typed.fittings.trim(),
  };
}
