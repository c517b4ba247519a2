import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import type { Duty, DutySegment } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import { bareNumber } from "../../duty/read-amount.ts";
import { callById, value } from "../expression.ts";
import type { LineTableItem, PlanItem, WorkedColumn } from "../plan.ts";
import { LIQUID_TAIL } from "./liquid.ts";

const flow = value("flow");

const WORKED: readonly WorkedColumn[] = [
  { key: "bore", label: "bore", quantity: "size", expression: (cell) => callById("BORE", cell("pipe")) },
  {
    key: "velocity",
    label: "velocity",
    quantity: "velocity",
    expression: (cell) => callById("VELOCITY", flow, cell("pipe")),
  },
  {
    key: "reynolds",
    label: "Reynolds number",
    expression: (cell) => callById("REYNOLDS", flow, cell("pipe"), ...LIQUID_TAIL),
  },
  {
    key: "pipeHead",
    label: "pipe friction",
    quantity: "head",
    expression: (cell) => callById("FRICTIONHEAD", flow, cell("pipe"), cell("length"), ...LIQUID_TAIL),
  },
  {
    key: "fittingHead",
    label: "fittings",
    quantity: "head",
    expression: (cell) => callById("FITTINGHEAD", flow, cell("pipe"), cell("fittings"), ...LIQUID_TAIL),
  },
];

/** A line as a table: what was stated of each run, and what it does at the stated flow. */
export function lineTable(duty: Duty, key: LineKey, label: string): readonly PlanItem[] {
  const table: LineTableItem = {
    kind: "line",
    key,
    label,
    rows: duty[key].map((segment) => rowOf(segment, duty)),
    worked: WORKED,
  };
  return [{ kind: "section", id: key, text: label }, table];
}

/** A run without fittings says so: a blank cell would reach the functions as 0 or as nothing, by platform. */
const NO_FITTINGS = "none";

function rowOf({ typed, segment }: DutySegment, duty: Duty): LineTableItem["rows"][number] {
  const unit = UNIT_SETS[duty.unitSet].length;
  const plain = bareNumber(typed.length);
  return {
    // What cannot be read stands as it was typed, and the functions say what is wrong with it.
    pipe: segment?.pipe.name ?? typed.pipe.trim(),
    length:
      plain ?? (segment === undefined ? typed.length.trim() : Number(fromEngine(segment.length, unit).toPrecision(15))),
    fittings: typed.fittings.trim() === "" ? NO_FITTINGS : typed.fittings.trim(),
  };
}
