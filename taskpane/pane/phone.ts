import type { Change } from "../../shared/duty/change.ts";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import { type PhoneLine, withProposal } from "../../shared/duty/phone-line/phone-line.ts";
import { dutyChanges } from "../../shared/duty/revision.ts";
import type { UnitSetName } from "../../src/basis/quantities.ts";
import { convertNumbers } from "./convert-numbers.ts";

/** A sentence read in the unit set of a duty. */
export interface PhoneRead {
  readonly line: PhoneLine;
  readonly unitSet: UnitSetName;
}

/** The phone line: the sentence, and what was read in it. */
export interface Phone {
  readonly text: string;
  readonly read?: PhoneRead;
}

export const NO_PHONE: Phone = { text: "" };

export type PhoneEvent =
  | { readonly type: "phone-typed"; readonly text: string }
  /** `of`: the text that stood there when reading began. */
  | { readonly type: "phone-read"; readonly of: string; readonly read: PhoneRead }
  | { readonly type: "phone-accepted" }
  | { readonly type: "phone-left" };

/** The phone line after an event; once accepted it is empty again. */
export function nextPhone(phone: Phone, event: PhoneEvent): Phone {
  switch (event.type) {
    case "phone-typed":
      return { text: event.text };
    case "phone-read":
      return event.of === phone.text ? { text: event.read.line.text, read: event.read } : phone;
    case "phone-accepted":
      return NO_PHONE;
    case "phone-left":
      return { text: phone.text };
  }
}

/** What the sentence says; nothing until it is read, and where the duty has another unit set since. */
export function phoneSaid({ read }: Phone, { unitSet }: DutyText): PhoneLine | undefined {
  return read?.unitSet === unitSet ? read.line : undefined;
}

/** Reads a sentence; the reader is a part of the program that is loaded when it is first needed. */
export async function readPhone(text: string, unitSet: UnitSetName): Promise<PhoneRead> {
  const { readPhoneLine } = await import("../../shared/duty/phone-line/read-phone-line.ts");
  return { line: readPhoneLine(text, unitSet), unitSet };
}

/** The duty with what was said in its boxes; in another unit set its plain numbers are converted first. */
export function filledDuty(duty: DutyText, { proposal }: PhoneLine): DutyText {
  const { unitSet = duty.unitSet } = proposal;
  return withProposal(unitSet === duty.unitSet ? duty : convertNumbers(duty, unitSet), proposal);
}

/** What accepting would change that is not blank now. */
export function overwritten(duty: DutyText, line: PhoneLine): readonly Change[] {
  return dutyChanges(duty, filledDuty(duty, line)).filter(({ before }) => before !== "");
}
