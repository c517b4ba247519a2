import type { Duty } from "../../shared/duty/duty.ts";
import type { StepId } from "../../shared/duty/fields.ts";
import { type ShownSection, shownSection } from "../../shared/package/shown-section.ts";
import { noteText } from "../../shared/text/finding-text.ts";

/** What a section says beside its figures: its findings as lines of notes, and its statements. */
export function remarksOf({ findings, statements }: ShownSection, units: Duty["unitSet"] = "US"): string {
  return [...findings.map((finding) => noteText(finding, units)), ...statements].join("\n");
}

/** The same of a duty's section; nothing where it has none. */
export function remarksIn(duty: Duty, id: StepId): string {
  const shown = shownSection(duty, id);
  return shown === undefined ? "" : remarksOf(shown, duty.unitSet);
}
