/** Why a file is not read. */
export type RefusalCode =
  | "empty"
  | "too-large"
  | "old-or-locked"
  | "not-xlsx"
  | "cut-short"
  | "damaged"
  | "locked"
  | "not-allowed";

export interface Refusal {
  readonly code: RefusalCode;
  /** One sentence for the user: what is wrong, and what would do where something would. */
  readonly message: string;
}

/** Carries a refusal out of the XML and inflate callbacks; readWorkbook turns it into an answer. */
export class FileRefused extends Error {
  readonly refusal: Refusal;

  constructor(code: RefusalCode, message: string) {
    super(message);
    this.refusal = { code, message };
  }
}

export function refuse(code: RefusalCode, message: string): never {
  throw new FileRefused(code, message);
}
