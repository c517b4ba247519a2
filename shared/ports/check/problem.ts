import { HostFault } from "../host-fault.ts";

/** What keeps a sheet from being written. */
export interface SheetProblem {
  readonly sheet: string;
  /** The cell, or the range. */
  readonly at?: string;
  /** A sentence without its end. */
  readonly what: string;
  /** What would do, a sentence. */
  readonly remedy: string;
}

/** Says what is wrong at a place of the sheet in hand. */
export type Say = (at: string | undefined, what: string, remedy: string) => void;

/** For what is a fault of ours, not of what was typed. */
export const OUR_FAULT = "This is a fault of Dutybook: keep the saved duty and report it.";

const SHOWN = 3;

/** Throws what was found, as words that name the sheet, the cell and what would do. */
export function refuse(problems: readonly SheetProblem[]): void {
  if (problems.length === 0) return;
  const shown = problems.slice(0, SHOWN).map(({ sheet, at, what }) => {
    const place = at === undefined ? "" : `, ${at}`;
    return `“${sheet}”${place}: ${what}.`;
  });
  const more = problems.length - shown.length;
  const remedies = [...new Set(problems.slice(0, SHOWN).map(({ remedy }) => remedy))];
  throw new HostFault(
    `The sheet cannot be written. ${shown.join(" ")}${more > 0 ? ` And ${more} more.` : ""}`,
    remedies.join(" "),
  );
}
