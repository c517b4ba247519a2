import type { Duty } from "../../../duty/duty.ts";
import { FIELDS, type FieldKey } from "../../../duty/fields.ts";
import type { JobText, PlanItem, TitleBlockItem } from "../../plan.ts";

/** As many revisions as page 1 has room for; those before them stand on page 2. House choice. */
const REVISIONS_SHOWN = 3;

/** Left and right of each other. */
const FACTS = [
  ["project", "revision"],
  ["customer", "date"],
  ["item", "status"],
  ["reference", undefined],
] as const satisfies readonly (readonly [FieldKey, FieldKey | undefined])[];

const SIGNED = [
  ["Prepared", "preparedBy", "preparedInitials", "preparedOn"],
  ["Checked", "checkedBy", "checkedInitials", "checkedOn"],
  ["Approved", "approvedBy", "approvedInitials", "approvedOn"],
] as const satisfies readonly (readonly [string, FieldKey, FieldKey, FieldKey])[];

/** Who, what and when. What is blank stands there to be filled in on paper. */
export function titleBlock(duty: Duty): TitleBlockItem {
  const { logo } = duty;
  const box = (key: FieldKey): JobText => textOf(duty, key);
  return {
    kind: "titleBlock",
    firm: duty.texts.firm.trim() === "" ? undefined : box("firm"),
    logo,
    facts: FACTS.map(([left, right]) => [box(left), right && box(right)]),
    signed: SIGNED.map(([label, ...boxes]) => ({ label, boxes: boxes.map(box) })),
    revisions: lines(duty).slice(0, REVISIONS_SHOWN),
  };
}

function textOf({ texts }: Duty, key: FieldKey): JobText {
  return { key, label: FIELDS[key].label, text: texts[key] };
}

/** The latest first. */
function lines({ revisions }: Duty): readonly string[] {
  return revisions.toReversed().map(({ revision, date, by, change }) => {
    const who = [revision, date, by].map((text) => text.trim()).filter((text) => text !== "");
    return [who.join(", "), change.trim()].filter((text) => text !== "").join(": ");
  });
}

/** The revisions that page 1 has no room for; nothing where there are none. */
export function earlierRevisions(duty: Duty): readonly PlanItem[] {
  const earlier = lines(duty).slice(REVISIONS_SHOWN);
  if (earlier.length === 0) return [];
  return [
    { kind: "section", id: "earlierRevisions", text: "Earlier revisions", summary: "second" },
    ...earlier.map((text): PlanItem => ({ kind: "statement", text })),
  ];
}

/** What the package does not hold, in the estimator's words; nothing where nothing is said. */
export function excluded(duty: Duty): readonly PlanItem[] {
  const { label, text } = textOf(duty, "exclusions");
  if (text.trim() === "") return [];
  return [
    { kind: "section", id: "excluded", text: label, summary: "second" },
    { kind: "text", key: "exclusions", label: "Not in the package", text },
  ];
}
