import { citationText } from "../../../src/basis/citation.ts";
import { FINDINGS } from "../../catalogue/entries/findings.ts";
import type { Duty } from "../../duty/duty.ts";
import { placeKey } from "../../duty/duty-text.ts";
import { FIELD_KEYS, FIELDS, type FieldKey } from "../../duty/fields.ts";
import { lineQuestions } from "../../duty/line-questions.ts";
import { placeLabel } from "../../duty/place-label.ts";
import { noteText } from "../../text/finding-text.ts";
import { callOf, constant, type Expression, handle, ifError, range, spillOf, tableOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type BlockRow, byPrint, type FindingItem, type PlanItem, spill, statement, working } from "../plan.ts";
import { citedBy } from "./references.ts";

const NOTES = tableOf("notes", { where: null, notes: null });
const FOUND = spillOf("found", FINDINGS);
const GRAVE = spillOf("graveFindings", FINDINGS);
const ASSUMED = spillOf("assumed", FINDINGS);

/** Rows kept for each list in the workings. */
const MOST_FOUND = 80;
const MOST_ASSUMED = 40;
const MOST_GRAVE = 20;

/** Under the heading of the findings, what all calls of the printed sheet remark: to act on and to check, the gravest first, each once with the rows it concerns. */
export function foundList(duty: Duty, items: readonly PlanItem[]): readonly PlanItem[] {
  const remarks = byPrint(items).printed.filter(
    (item): item is FindingItem => item.kind === "finding" && item.expression.op === "notes",
  );
  const rows = [
    ...remarks.map((item) => ({ where: item.label, notes: notesIn(item) })),
    ...lineQuestions(duty).map(({ place, finding }) => ({
      where: placeLabel(placeKey(place)),
      notes: { op: "stated", value: noteText(finding, duty.unitSet) } as const,
    })),
  ];
  return [
    working(NOTES, "What the calls remark", rows.length, [
      ["where", "where", (row) => constant(rows[row]?.where ?? "")],
      ["notes", "notes", (row) => rows[row]?.notes ?? constant("")],
    ]),
    spill(FOUND, "Warnings and checks", listOf("found", MOST_FOUND), MOST_FOUND + 1),
    spill(GRAVE, "To act on", listOf("grave", MOST_GRAVE), MOST_GRAVE + 1),
    spill(ASSUMED, "Assumed because nothing was stated", listOf("assumed", MOST_ASSUMED), MOST_ASSUMED + 1),
    { kind: "foundList", of: FOUND, rows: MOST_FOUND, ifNone: "Nothing to remark." },
  ];
}

function notesIn({ key }: FindingItem): Expression {
  return ifError(handle(key, null), "");
}

function listOf(kinds: "found" | "grave" | "assumed", rows: number) {
  return callOf(FINDINGS, { notes: range(NOTES), kinds: constant(kinds), rows: constant(rows) });
}

/** What somebody must act on, in short, with the place it comes from. */
export function graveList(): readonly PlanItem[] {
  return [
    { kind: "section", id: "toActOn", text: "To act on: safety and limits", summary: "second" },
    {
      kind: "foundList",
      of: GRAVE,
      rows: MOST_GRAVE,
      ifNone: "No limit is broken or near, no danger found by the calls.",
    },
  ];
}

/** Columns of boxes left blank. */
const COLUMNS_OF_BOXES = 3;

/** What rests on nobody's word yet: boxes left blank, and what calls took for granted. */
export function toConfirm(duty: Duty, items: readonly PlanItem[]): readonly PlanItem[] {
  const taken = assumedFields(duty, items).map(
    (key): BlockRow => ({
      key: `confirm${key.charAt(0).toUpperCase()}${key.slice(1)}`,
      label: FIELDS[key].label,
      ...(FIELDS[key].quantity && { quantity: FIELDS[key].quantity }),
      expression: FIELD[key],
    }),
  );
  const each = Math.ceil(taken.length / COLUMNS_OF_BOXES);
  const blocks = Array.from({ length: COLUMNS_OF_BOXES }, (_, i) => ({ rows: taken.slice(i * each, (i + 1) * each) }));
  return [
    { kind: "section", id: "toConfirm", text: "To confirm with the customer", summary: "second" },
    ...(taken.length === 0
      ? []
      : [
          statement("Nothing was stated for these: the figures beside them were taken."),
          { kind: "blocks", blocks } as const,
        ]),
    { kind: "foundList", of: ASSUMED, rows: MOST_ASSUMED, ifNone: "No call took anything for granted." },
  ];
}

/** Figures that nobody has yet held against the work they are of, each work once: sentences. */
export function unverifiedWorks(items: readonly PlanItem[], duty: Duty): readonly string[] {
  const unverified = citedBy(items, duty).filter((cites) => cites.unverified);
  return [...new Set(unverified.map((cites) => `${citationText(cites)}.`))].sort();
}

/** The same as a list; on paper the references say so. Nothing where there are none. */
export function toVerify(items: readonly PlanItem[], duty: Duty): readonly PlanItem[] {
  const works = unverifiedWorks(items, duty);
  if (works.length === 0) return [];
  return [
    { kind: "section", id: "toVerify", text: "To verify by the estimator", isUnprinted: true },
    ...works.map((text) => ({ ...statement(text), isTitle: true }) as const),
  ];
}

/** How far a curve is drawn is nobody's to confirm; nor is one pump, where nobody speaks of more. */
const OF_NO_MATTER: readonly FieldKey[] = ["curveFlow", "pumpsRunning"];

/** Boxes left blank whose default the sheet rests on. */
export function assumedFields({ state }: Duty, items: readonly PlanItem[]): readonly FieldKey[] {
  const stands = new Set(items.flatMap((item) => (item.kind === "input" ? [item.of ?? item.key] : [])));
  return FIELD_KEYS.filter(
    (key) =>
      state[key] === "assumed" &&
      stands.has(key) &&
      !OF_NO_MATTER.includes(key) &&
      // What is usual, and said beside it.
      FIELDS[key].usual === undefined,
  );
}
