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
  const asked =
    sheets === 1 ? `${file} has one sheet. Where should it go?` : `${file} has ${sheets} sheets. Where should they go?`;
  const kept =
    "In place of this workbook, the file stays as it is, fonts and page set-up too: a download changes the cells you change and adds new sheets. Beside the present sheets come copies of the cells";
  return {
    text: asked,
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

/** Formulas on which the grid and the opened file are not at one. */
export interface Doubts {
  /** The grid has only an error. */
  readonly unanswered: readonly string[];
  /** The grid has another answer. */
  readonly otherwise: readonly string[];
}

/** After opening. */
export function openedWords({ unanswered, otherwise }: Doubts): string | undefined {
  return joined(
    unanswered.length === 0
      ? undefined
      : `${counted(unanswered)} shown here as an error: the workbench does not know the formula. The answer in the file is kept.`,
    otherwise.length === 0
      ? undefined
      : `${named(otherwise)}: the answer shown here is not that of the file, and so it may be with what follows from it.`,
  );
}

/** After a download: answers that may be old or other ones by now. */
export function downloadedWords({ unanswered, otherwise }: Doubts): string | undefined {
  const doubted = [...unanswered, ...otherwise];
  return doubted.length === 0
    ? undefined
    : `${named(doubted)} may be answered otherwise by your spreadsheet program, and what follows from them too. Recalculate the file there (in Excel Ctrl+Alt+F9) before you rely on it.`;
}

function joined(...sentences: readonly (string | undefined)[]): string | undefined {
  const said = sentences.filter((each) => each !== undefined);
  return said.length === 0 ? undefined : said.join(" ");
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
