/** A call of a host that failed, in words for the reader. */
export class HostFault extends Error {
  /** What would do, a sentence. */
  readonly remedy: string;
  /** Whether the workbook is as it was before the call. */
  readonly isUndone: boolean;

  /** @param what happened, a sentence */
  constructor(what: string, remedy: string, { isUndone = true, cause }: { isUndone?: boolean; cause?: unknown } = {}) {
    super(what, { cause });
    this.remedy = remedy;
    this.isUndone = isUndone;
  }
}

/** What was thrown, as a sentence. */
export function faultSentence(fault: unknown): string {
  const text = (fault instanceof Error ? fault.message : String(fault)).trim();
  return /[.!?]$/.test(text) ? text : `${text}.`;
}

const TRY_AGAIN = "Try it once more; if it fails again, save the workbook, open it again and try there.";

/** What happened, whether anything is left of it in the workbook, and what would do. */
export function failureText(fault: unknown): string {
  const [isUndone, remedy] = fault instanceof HostFault ? [fault.isUndone, fault.remedy] : [true, TRY_AGAIN];
  return [faultSentence(fault), ...(isUndone ? ["Nothing was changed in the workbook."] : []), remedy].join(" ");
}

/** Where what was begun could not be taken back again. */
export function leftBehind(fault: unknown, what: "sheets" | "cells" = "sheets"): HostFault {
  const reason = faultSentence(fault).replace(/\.$/, "");
  return new HostFault(
    `The ${what} could not be finished (${reason}), and what was begun could not be ${what === "sheets" ? "removed again" : "put back"}.`,
    what === "sheets"
      ? "Delete the newest sheets by hand before you go on."
      : "Look at the cells and put right what is wrong before you go on.",
    { isUndone: false, cause: fault },
  );
}
