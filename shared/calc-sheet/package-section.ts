import type { Duty } from "../duty/duty.ts";
import { FIELDS, type FieldKey } from "../duty/fields.ts";
import { PACKAGE_TITLES, type PackageId } from "./package-titles.ts";
import type { PlanItem } from "./plan.ts";

/** A section of the calc sheet that is a step of the pane too: declared once, placed by the plan, shown by the pane. */
export interface PackageSection {
  /** That of the step its boxes are declared for, whose title it has. */
  readonly id: PackageId;
  /** What it is called on the sheet of the duty, where that holds less than the step. */
  readonly heading?: string;
  /** Whether the duty states something that it answers: it is not printed otherwise. Always where left out. */
  readonly isAskedFor?: (duty: Duty) => boolean;
  /** What a duty without such a section has to state. */
  readonly missing: string;
  readonly caution: string;
  /** Where a figure that counts here is stated, if not in this step. */
  readonly elsewhere?: string;
  /** Boxes whose very value decides what is worked out here, not just what it comes to. */
  readonly decidedBy: readonly FieldKey[];
  /** The chosen pump decides it too. */
  readonly isOfPump: boolean;
  /** Nothing where this duty has no such section. */
  readonly items: (duty: Duty) => readonly PlanItem[];
}

/** The section with its heading; nothing where there is none, or where a box that decides it cannot be read. */
export function placed(section: PackageSection, duty: Duty): readonly PlanItem[] {
  const { id, heading: text = PACKAGE_TITLES[id], isAskedFor, items } = section;
  const inside = waitsFor(section, duty).length > 0 ? [] : items(duty);
  if (inside.length === 0) return [];
  const isUnprinted = isAskedFor?.(duty) === false;
  return [{ kind: "section", id, text, ...(isUnprinted && { isUnprinted }) }, ...inside];
}

/** What has to be readable before the section can say anything, by the labels of the pane. */
export function waitsFor(
  { decidedBy, isOfPump }: Pick<PackageSection, "decidedBy" | "isOfPump">,
  duty: Duty,
): readonly string[] {
  const { state, pumpState } = duty;
  return [
    ...[...decidedBy, ...(isOfPump ? (["pumpsRunning", "arrangement"] as const) : [])]
      .filter((key) => state[key] === "unreadable" || (state[key] === "blank" && FIELDS[key].required))
      .map((key) => FIELDS[key].label),
    ...(isOfPump && pumpState === "unreadable" ? ["the selected pump"] : []),
  ];
}
