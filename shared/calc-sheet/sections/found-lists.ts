import { type Citation, citationText } from "../../../src/basis/citation.ts";
import { FINDINGS } from "../../catalogue/entries/findings.ts";
import type { Duty } from "../../duty/duty.ts";
import { placeKey } from "../../duty/duty-text.ts";
import { FIELD_KEYS, FIELDS, type FieldKey } from "../../duty/fields.ts";
import { lineQuestions } from "../../duty/line-questions.ts";
import { placeLabel } from "../../duty/place-label.ts";
import { noteText } from "../../text/finding-text.ts";
import { callOf, constant, type Expression, handle, ifError, range, spillOf, tableOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type FindingItem, figure, type PlanItem, spill, statement, working } from "../plan.ts";

const NOTES = tableOf("notes", { where: null, notes: null });
const FOUND = spillOf("found", FINDINGS);
const ASSUMED = spillOf("assumed", FINDINGS);

/** Rows kept for each list in the workings. */
const MOST_FOUND = 80;
const MOST_ASSUMED = 40;

/** Under the heading of the findings, what all calls of the sheet remark: to act on and to check, the gravest first, each once with the rows it concerns. */
export function foundList(duty: Duty, items: readonly PlanItem[]): readonly PlanItem[] {
  const remarks = items.filter(
    (item): item is FindingItem => item.kind === "finding" && item.expression.op === "notes",
  );
  const rows = [
    ...remarks.map((item) => ({ where: item.label, notes: notesIn(item) })),
    ...lineQuestions(duty).map(({ place, finding }) => ({
      where: placeLabel(placeKey(place)),
      notes: constant(noteText(finding, duty.unitSet)),
    })),
  ];
  return [
    working(NOTES, "What the calls remark", rows.length, [
      ["where", "where", (row) => constant(rows[row]?.where ?? "")],
      ["notes", "notes", (row) => rows[row]?.notes ?? constant("")],
    ]),
    spill(FOUND, "To act on and to check", listOf("found", MOST_FOUND), MOST_FOUND + 1),
    { kind: "foundList", of: FOUND, rows: MOST_FOUND, ifNone: "Nothing to remark." },
  ];
}

function notesIn({ key }: FindingItem): Expression {
  return ifError(handle(key, null), "");
}

function listOf(kinds: "found" | "assumed", rows: number) {
  return callOf(FINDINGS, { notes: range(NOTES), kinds: constant(kinds), rows: constant(rows) });
}

/** What rests on nobody's word yet: boxes left blank, what calls took for granted, figures not held against their work. */
export function toConfirm(duty: Duty, items: readonly PlanItem[], cited: readonly Citation[]): readonly PlanItem[] {
  const unverified = new Set(cited.filter((cites) => cites.unverified).map((cites) => citationText(cites)));
  return [
    { kind: "section", id: "toConfirm", text: "To confirm with the customer" },
    ...assumedFields(duty, items).map((key) =>
      figure(
        handle(`confirm${key.charAt(0).toUpperCase()}${key.slice(1)}`, FIELDS[key].quantity ?? null),
        FIELDS[key].label,
        FIELD[key],
        "Nothing was stated: this was taken.",
      ),
    ),
    spill(ASSUMED, "Taken because nothing was stated", listOf("assumed", MOST_ASSUMED), MOST_ASSUMED + 1),
    { kind: "foundList", of: ASSUMED, rows: MOST_ASSUMED, ifNone: "No call took anything for granted." },
    ...[...unverified].sort().map((text) => statement(`For the estimator: ${text}.`)),
  ];
}

/** How far a curve is drawn is nobody's to confirm; nor is one pump, where nobody speaks of more. */
const OF_NO_MATTER: readonly FieldKey[] = ["curveFlow", "pumpsRunning"];

/** Boxes left blank whose default the sheet rests on. */
export function assumedFields({ state }: Duty, items: readonly PlanItem[]): readonly FieldKey[] {
  const stands = new Set(items.flatMap((item) => (item.kind === "input" ? [item.of ?? item.key] : [])));
  return FIELD_KEYS.filter((key) => state[key] === "assumed" && stands.has(key) && !OF_NO_MATTER.includes(key));
}
