import type { DutyText } from "../../duty/duty-text.ts";

/** Something typed on the sheet that is now in a box, in words; a blank text where nothing stood or stands. */
export interface TakenOver {
  /** The key of its place, or of its row where all of it is new; left out for a row that is gone. */
  readonly place?: string;
  readonly label: string;
  readonly before: string;
  readonly after: string;
}

/** Something on the sheet that is otherwise than written and wants to be known. */
export interface Remark {
  /**
   * formula: an input is now worked out by a formula of the user's, whose value was taken. gone: its cell was deleted.
   * no box: nothing in the duty takes it. outside: a run that the sheet does not count. overwritten: a result is now a
   * constant. unread: it is in its box, which cannot be read so.
   */
  readonly kind: "formula" | "gone" | "no box" | "outside" | "overwritten" | "unread";
  /** A sentence. */
  readonly text: string;
}

/** A duty as its sheets now state it. */
export interface BroughtBack {
  readonly duty: DutyText;
  readonly taken: readonly TakenOver[];
  readonly remarks: readonly Remark[];
}
