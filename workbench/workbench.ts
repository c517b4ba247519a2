import "./workbench.css";
import { type Unseen, unseenIn } from "../shared/xlsx/patch/unseen.ts";
import { handOver, WORKBOOK_TYPE } from "../taskpane/pane/hand-over.ts";
import { mountPane } from "../taskpane/pane/pane.ts";
import { ask, wait } from "./ask.ts";
import { startDivider } from "./divider.ts";
import {
  beyondQuestion,
  breakQuestion,
  downloadedWords,
  type Losses,
  openedWords,
  openQuestion,
  otherName,
} from "./file-words.ts";
import { type Choose, fileOfWorkbook, openedSet, replaceWorkbook, sheetsOfFile } from "./files.ts";
import type { GridHost } from "./grid-host.ts";
import { type OpenedFile, openedFile } from "./opened-file.ts";
import { pageGrid } from "./page-grid.ts";
import { startPrinting } from "./print/printing.ts";
import { SAMPLE_SHEETS } from "./sample-workbook.ts";
import { startStrip } from "./strip.ts";
import { guardStructure } from "./structure-guard.ts";

declare global {
  interface Window {
    /** For tests and scripts in the browser's console: the open workbook through the sheet host port. */
    dutybook?: { readonly host: GridHost };
  }
}

const element = <T extends HTMLElement = HTMLElement>(id: string): T => {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no element ${id}`);
  return found as T;
};

startDivider(element("divider"), element("workbench"));
element("loading").remove();
const grid = pageGrid(element("grid"));
const { api, host } = grid;
const strip = startStrip(element("strip"), grid);
const fileName = element<HTMLInputElement>("file-name");
const fileInput = element<HTMLInputElement>("file");

await replaceWorkbook(grid, host, { sheets: SAMPLE_SHEETS });
api.getActiveWorkbook()?.getActiveSheet().getRange("A1").activate();
mountPane(element("pane"), { host });
const printing = startPrinting(element("print"), grid, { wait, say: strip.say, fileName: () => fileName.value.trim() });
let unkeptEdits = 0;

/** The file that was opened in place of the workbook, as long as one was. */
interface Behind {
  readonly name: string;
  readonly unseen: readonly Unseen[];
  readonly file: OpenedFile;
  /** The user has agreed that the download will be another file. */
  isGivenUp: boolean;
}
let behind: Behind | undefined;
const ENDING = /\.(xlsx|xlsm|xltx|xltm)$/i;

guardStructure(
  api,
  (sheet) => behind?.isGivenUp === false && behind.file.has(sheet),
  async () => {
    const from = behind;
    if (from === undefined) return true;
    const answer = await ask(breakQuestion(from.name, [], lossesOf(from)), [{ id: "go", label: "Go on" }]);
    from.isGivenUp = answer === "go";
    return from.isGivenUp;
  },
);
api.addEvent(api.Event.CommandExecuted, ({ id, options }) => {
  const isResult = options?.["applyFormulaCalculationResult"] === true;
  if (id.startsWith("sheet.mutation.") && !isResult) unkeptEdits += 1;
});
window.dutybook = { host };

element("new").addEventListener("click", () => attempt("The new workbook could not be made", newWorkbook));
element("open").addEventListener("click", () => fileInput.click());
element("print-sheet").addEventListener("click", () => attempt("The sheet could not be printed", printing.print));
element("download").addEventListener("click", () => attempt("The file could not be written", download));
fileInput.addEventListener("change", () => {
  const file = fileInput.files?.[0];
  if (file !== undefined) attempt(`${file.name} could not be opened`, () => open(file));
  fileInput.value = "";
});
window.addEventListener("beforeunload", (event) => {
  if (unkeptEdits > 0) event.preventDefault();
});

async function newWorkbook(): Promise<void> {
  const question = { text: "Close this workbook and start an empty one? What was not downloaded is lost." };
  const answer = await ask(question, [{ id: "new", label: "Start an empty workbook" }]);
  if (answer === undefined) return;
  await replaceWorkbook(grid, host, { sheets: [] });
  forget();
  fileName.value = "Workbook";
  unkeptEdits = 0;
}

async function open(file: File): Promise<void> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const content = sheetsOfFile(bytes);
  if (!content.ok) {
    strip.say(`${file.name} could not be opened. ${content.why}`, "error");
    return;
  }
  const unseen = unseenIn(bytes);
  const answer = await ask(openQuestion(file.name, content.sheets.length, unseen), [
    { id: "beside", label: "Beside the present sheets" },
    { id: "replace", label: "In place of this workbook" },
  ]);
  if (answer === "beside") await host.addSheets(openedSet(content));
  if (answer === "replace") {
    await replaceWorkbook(grid, host, content);
    forget();
    behind = { name: file.name, unseen, isGivenUp: false, file: openedFile(grid, host, bytes, content.sheets) };
    fileName.value = file.name.replace(ENDING, "");
    unkeptEdits = 0;
    const doubts = openedWords(behind.file);
    if (doubts !== undefined) strip.say(doubts);
  }
}

function lossesOf({ unseen, file }: Behind): Losses {
  return { unseen, unanswered: file.unanswered };
}

/** The workbook in the grid is no longer that of a file. */
function forget(): void {
  behind?.file.close();
  behind = undefined;
}

async function download(): Promise<void> {
  const from = behind;
  const choose: Choose = async (state) => {
    if (from === undefined || from.isGivenUp) return "new";
    if (state.broken.length > 0)
      return ask(breakQuestion(from.name, [...state.broken, ...state.beyond], lossesOf(from)), [
        { id: "new", label: "Download the new file" },
      ]);
    return ask(beyondQuestion(from.name, state, lossesOf(from)), [
      { id: "patched", label: "Keep the file" },
      { id: "new", label: "Download the new file" },
    ]);
  };
  const made = await fileOfWorkbook(grid, host, wait, from === undefined ? undefined : { file: from.file, choose });
  if (made === undefined) {
    strip.say("No file was written.");
    return;
  }
  const stem = fileName.value.trim().replace(/[\\/:*?"<>|]+/g, " ") || "Workbook";
  const ending = from === undefined ? ".xlsx" : (ENDING.exec(from.name)?.[0] ?? ".xlsx");
  const name = from === undefined || made.isPatched ? `${stem}${ending}` : otherName(`${stem}.xlsx`);
  handOver(name, made.bytes as Uint8Array<ArrayBuffer>, WORKBOOK_TYPE);
  const doubts = from !== undefined && made.isPatched && made.isChanged ? downloadedWords(from.file) : undefined;
  if (doubts !== undefined) strip.say(doubts);
  unkeptEdits = 0;
}

function attempt(failure: string, action: () => Promise<void>): void {
  action().catch((fault: unknown) => {
    console.error(fault);
    strip.say(`${failure}: ${fault instanceof Error ? fault.message : String(fault)}`, "error");
  });
}
