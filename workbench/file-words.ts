import type { Unseen } from "../shared/xlsx/patch/unseen.ts";
import type { Question } from "./ask.ts";
import type { FileState } from "./opened-file.ts";

/** Ending of the name that a file gets which is no longer the one opened. */
export const OTHER_NAME = " (from workbench)";

/** What an opened file has that a new file, written from the grid, has not. */
export interface Losses {
  readonly unseen: readonly Unseen[];
  /** Formulas the grid has no answer for. */
  readonly unanswered: readonly string[];
}

/** A line each sheet. */
function unseenLines(unseen: readonly Unseen[]): readonly string[] {
  return unseen.map(({ sheet, things }) => `${sheet ?? "The whole workbook"}: ${things.join(", ")}`);
}

function lossLines({ unseen, unanswered }: Losses): readonly string[] {
  return [
    ...unseenLines(unseen),
    ...(unanswered.length === 0 ? [] : [`The answers of ${named(unanswered)}: an error stands there`]),
    "Fonts, underlining, rotation, rich text, document properties",
  ];
}

export function openQuestion(file: string, sheets: number, unseen: readonly Unseen[]): Question {
  const count = sheets === 1 ? "one sheet" : `${sheets} sheets`;
  const kept =
    "In place of this workbook, the file stays as it is, fonts and page set-up too: a download changes the cells you change and adds new sheets. Beside the present sheets come copies of the cells";
  return {
    text: `${file} has ${count}. Where should they go?`,
    ...(unseen.length === 0
      ? { remark: `${kept}.` }
      : {
          heading: "Kept in the file, not shown here:",
          lines: unseenLines(unseen),
          remark: `${kept}, without what is listed.`,
        }),
  };
}

/** Before something that no patch can follow, or at the latest when the file is asked for. */
export function breakQuestion(file: string, done: readonly string[], losses: Losses): Question {
  const what = done.length === 0 ? "After this step" : `Since ${file} was opened: ${done.join("; ")}. So`;
  return {
    text: `${what} the file cannot be kept as it is. The download will be a new file, “${otherName(file)}”, written from the cells shown here.`,
    heading: "It will be without:",
    lines: lossLines(losses),
    remark: "The file you opened stays as it is on your disk. Undo takes the step back.",
  };
}

/** Where some of the changes are not among those that are spliced into a file. */
export function beyondQuestion(file: string, { beyond }: FileState, losses: Losses): Question {
  return {
    text: `${file} can be kept as it is with the changed cells, but not with these: ${beyond.join("; ")}. Or the download is a new file, “${otherName(file)}”, with all changes.`,
    heading: "The new file will be without:",
    lines: lossLines(losses),
  };
}

/** After opening: formulas for which the grid has only an error. */
export function unansweredWords(cells: readonly string[]): string | undefined {
  return cells.length === 0
    ? undefined
    : `${counted(cells)} shown here as an error: the workbench does not know the formula. The answer in the file is kept.`;
}

/** After a download: the same formulas, whose answers may be old by now. */
export function staleWords(cells: readonly string[]): string | undefined {
  return cells.length === 0
    ? undefined
    : `${counted(cells)} not worked out here and still as opened. Work the file out anew in your spreadsheet program (in Excel Ctrl+Alt+F9) before you rely on it.`;
}

/** "Data.xlsx" as "Data (from workbench).xlsx"; once is enough. */
export function otherName(file: string): string {
  const stem = file.replace(/\.[^.]*$/, "");
  return `${stem.endsWith(OTHER_NAME) ? stem : `${stem}${OTHER_NAME}`}.xlsx`;
}

const NAMED = 5;

function named(cells: readonly string[]): string {
  return cells.slice(0, NAMED).join(", ") + (cells.length > NAMED ? ` and ${cells.length - NAMED} more` : "");
}

function counted(cells: readonly string[]): string {
  return `${named(cells)} ${cells.length === 1 ? "is" : "are"}`;
}
