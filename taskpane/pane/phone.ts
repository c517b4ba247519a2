import type { Change } from "../../shared/duty/change.ts";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import { type PhoneLine, withProposal } from "../../shared/duty/phone-line/phone-line.ts";
import { readPhoneLine } from "../../shared/duty/phone-line/read-phone-line.ts";
import { dutyChanges } from "../../shared/duty/revision.ts";
import type { UnitSetName } from "../../src/basis/quantities.ts";
import { convertNumbers } from "./convert-numbers.ts";

/** The phone line: the sentence, and whether what it says is laid out. */
export interface Phone {
  readonly text: string;
  readonly isRead: boolean;
}

export const NO_PHONE: Phone = { text: "", isRead: false };

export type PhoneEvent =
  | { readonly type: "phone-typed"; readonly text: string }
  | { readonly type: "phone-read"; readonly text: string }
  | { readonly type: "phone-accepted" }
  | { readonly type: "phone-left" };

/** The phone line after an event; once accepted it is empty again. */
export function nextPhone(phone: Phone, event: PhoneEvent): Phone {
  switch (event.type) {
    case "phone-typed":
      return { text: event.text, isRead: false };
    case "phone-read":
      return { text: event.text, isRead: event.text.trim() !== "" };
    case "phone-accepted":
      return NO_PHONE;
    case "phone-left":
      return { ...phone, isRead: false };
  }
}

/** What the sentence says, read in the unit set of the duty. The same again is not read again. */
export function phoneSaid({ text }: Phone, { unitSet }: DutyText): PhoneLine {
  if (last?.line.text !== text || last.unitSet !== unitSet) last = { unitSet, line: readPhoneLine(text, unitSet) };
  return last.line;
}

let last: { readonly unitSet: UnitSetName; readonly line: PhoneLine } | undefined;

/** The duty with what was said in its boxes; in another unit set its plain numbers are converted first. */
export function filledDuty(duty: DutyText, { proposal }: PhoneLine): DutyText {
  const { unitSet = duty.unitSet } = proposal;
  return withProposal(unitSet === duty.unitSet ? duty : convertNumbers(duty, unitSet), proposal);
}

/** What accepting would change that is not blank now. */
export function overwritten(duty: DutyText, line: PhoneLine): readonly Change[] {
  return dutyChanges(duty, filledDuty(duty, line)).filter(({ before }) => before !== "");
}
