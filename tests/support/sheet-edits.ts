import { textIn, withTextIn } from "../../shared/duty/boxes.ts";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import { addressOf, boxOf } from "../../shared/ports/a1.ts";
import { setOfDuty } from "./laid-out.ts";
import { type Edit, typed } from "./opened-again.ts";

/** What a user does in one input cell, and what has to come of it. */
export interface CellEdit {
  readonly edit: Edit;
  readonly place: string;
  /** The label in a list of changes. */
  readonly label: string;
  readonly before: string;
  readonly after: string;
}

/** An edit of a few input cells of every kind that the sheets of this duty have, each to something else than it holds. */
export function editsOf(duty: DutyText): readonly CellEdit[] {
  const cellAt = cellsOf(duty);
  const line = duty.dischargeLine.findIndex(({ pipe }) => pipe !== "");
  // A little more, so that it stays within what the duty says of its range.
  const number = (name: string, down = 0, across = 0): number => {
    const held = cellAt(name, down, across);
    if (typeof held !== "number") throw new Error(`${name} holds ${JSON.stringify(held)}`);
    return Number((held + 0.25).toPrecision(8));
  };
  const edit = (
    place: string,
    label: string,
    [name, down = 0, across = 0]: readonly [string, number?, number?],
    is: string | number,
  ): CellEdit => ({
    edit: typed(name, is, down, across),
    place,
    label,
    before: textIn(duty, place),
    after: String(is),
  });
  return [
    edit("project", "Project", ["project"], "Edited & <kept>, “für Ü”"),
    edit("flow", "Flow", ["flow"], number("flow")),
    edit("deliveryLevel", "Delivery level", ["delivery_level"], number("delivery_level")),
    edit(
      `dischargeLine.${line}.length`,
      `Discharge line, row ${line + 1}: length`,
      ["discharge_line", 0, 1],
      number("discharge_line", 0, 1),
    ),
    ...(duty.pump === undefined ? [] : [edit("pump.name", "Pump: Name", ["pump_name"], "another (invented)")]),
    ...(duty.cases === undefined ? [] : [edit("cases.0.name", "Case 1: Name", ["cases"], "renamed")]),
    ...(duty.otherPumps === undefined
      ? []
      : [edit("otherPumps.0.name", "Further pump 1: Name", ["other_pump1_name"], "also another")]),
  ];
}

/** The duty with the edits in its boxes. */
export function withEdits(duty: DutyText, edits: readonly CellEdit[]): DutyText {
  return edits.reduce((all, { place, after }) => withTextIn(all, place, after), duty);
}

function cellsOf(duty: DutyText): (name: string, down: number, across: number) => unknown {
  const set = setOfDuty(duty);
  const [sheet] = set.sheets(set.wanted);
  const held = new Map(sheet?.cells.map(({ at, v }) => [at, v]));
  return (name, down, across) => {
    const { top, left } = boxOf(sheet?.names?.[name] ?? "");
    return held.get(addressOf(top + down, left + across));
  };
}
