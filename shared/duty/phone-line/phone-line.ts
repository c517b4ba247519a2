import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { DutyText, LineKey, SegmentText } from "../duty-text.ts";
import type { FieldKey } from "../fields.ts";

/** A box that a part of the sentence fills, and what the box reads. */
export interface FilledBox {
  readonly label: string;
  readonly text: string;
  /** In words, in the reader's units. */
  readonly value: string;
}

/** A part of the sentence, letter for letter. */
export interface PhonePart {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** between: a sign or a word that only joins others. */
  readonly kind: "understood" | "not understood" | "between";
  readonly boxes: readonly FilledBox[];
  /** Why it was not understood, or what was assumed of what was. */
  readonly remarks: readonly string[];
  /** Texts that would do in its place. */
  readonly instead: readonly string[];
}

/** What a sentence proposes for the boxes of a duty. */
export interface PhoneProposal {
  /** Where the units of all its figures are of one set. */
  readonly unitSet?: UnitSetName;
  readonly fields: Readonly<Partial<Record<FieldKey, string>>>;
  /** All rows of a line, where runs of it are said. */
  readonly lines: Readonly<Partial<Record<LineKey, readonly SegmentText[]>>>;
}

/** A sentence taken apart. The texts of its parts, one behind the other, are the sentence. */
export interface PhoneLine {
  readonly text: string;
  readonly parts: readonly PhonePart[];
  readonly proposal: PhoneProposal;
}

/** A duty of the proposal's unit set with the proposal in its boxes. */
export function withProposal(duty: DutyText, { fields, lines }: PhoneProposal): DutyText {
  return { ...duty, ...lines, fields: { ...duty.fields, ...fields } };
}
