import { type DutyText, EMPTY_REVISION, MOST_REVISIONS, type RevisionText } from "../../shared/duty/duty-text.ts";

/** What can happen to logo and revision history beside typing into their boxes. Each can be undone. */
export type JobEvent =
  | { readonly type: "logo-chosen"; readonly base64: string; readonly name: string }
  | { readonly type: "logo-removed" }
  | { readonly type: "revision-added"; readonly revision: Partial<RevisionText> }
  | { readonly type: "revision-removed"; readonly row: number };

/** The duty after an event, and the words for what lies between. */
export interface JobChange {
  readonly duty: DutyText;
  readonly what: string;
  /** Said at the foot of the pane, with a way back. */
  readonly notice?: string;
}

/** The change an event makes; nothing where it makes none. */
export function jobChange(duty: DutyText, event: JobEvent): JobChange | undefined {
  const { logo, ...others } = duty;
  const rows = duty.revisions ?? [];
  switch (event.type) {
    case "logo-chosen": {
      const notice = `“${event.name}” is the logo now.`;
      return { duty: { ...others, logo: event.base64 }, what: "choosing a logo", notice };
    }
    case "logo-removed":
      if (logo === undefined) return undefined;
      return { duty: others, what: "removing the logo", notice: "Logo removed." };
    case "revision-added":
      if (rows.length >= MOST_REVISIONS) return undefined;
      return {
        duty: withRevisions(duty, [...rows, { ...EMPTY_REVISION, ...event.revision }]),
        what: "adding a revision",
      };
    case "revision-removed":
      return {
        duty: withRevisions(duty, rows.toSpliced(event.row, 1)),
        what: "removing a revision",
        notice: `Revision history: row ${event.row + 1} removed.`,
      };
  }
}

/** A duty without a history says nothing of it. */
export function withRevisions({ revisions: _, ...duty }: DutyText, rows: readonly RevisionText[]): DutyText {
  return rows.length === 0 ? duty : { ...duty, revisions: rows };
}
