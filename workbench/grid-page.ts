import type { Unseen } from "../shared/xlsx/patch/unseen.ts";
import { handOver, WORKBOOK_TYPE } from "../taskpane/pane/hand-over.ts";
import { tooLarge } from "../taskpane/pane/reading/read-in-worker.ts";
import { ask, wait } from "./ask.ts";
import { found, handedOverKept, notices, paneDuty, slots, tellUnkept } from "./before-grid.ts";
import { element } from "./element.ts";
import {
  beyondQuestion,
  breakQuestion,
  downloadedWords,
  type Losses,
  openedWords,
  openQuestion,
  otherName,
} from "./file-words.ts";
import { type Choose, type FileContent, fileOfWorkbook, openedSet, replaceWorkbook, sheetsOf } from "./files.ts";
import type { GridHost } from "./grid-host.ts";
import { startFormulaHints } from "./hints/formula-hints.ts";
import { takeBack, tryAgain } from "./keep/bring-back.ts";
import { freshSlot } from "./keep/find-kept.ts";
import { backWords, FRESH, GONE, handedWords, notBackWords } from "./keep/keep-words.ts";
import { startKeeper } from "./keep/keeper.ts";
import { savedMark } from "./keep/saved-mark.ts";
import type { Slot } from "./keep/slots.ts";
import { putBack, workbookCopy } from "./keep/workbook-copy.ts";
import { followedFile, type OpenedFile, openedFile } from "./opened-file.ts";
import { pageGrid } from "./page-grid.ts";
import { startPrinting } from "./print/printing.ts";
import { readBook } from "./read-file.ts";
import { SAMPLE_SHEETS } from "./sample-workbook.ts";
import { startStrip } from "./strip.ts";
import { guardStructure } from "./structure-guard.ts";
import { holdFocus } from "./zones.ts";

declare global {
  interface Window {
    /** For tests and scripts in the browser's console: the open workbook through the sheet host port. */
    dutybook?: { readonly host: GridHost };
  }
}

element("loading").remove();
const letFocus = holdFocus(element("workbench"), element("grid"));
const grid = await pageGrid(element("grid"));
const { api } = grid;
export const { host } = grid;
const strip = startStrip(element("strip"), grid);
startFormulaHints(grid, () => document.querySelector('#grid canvas[id*="sheet-main-canvas"]'), paneDuty.unitSet);
const fileName = element<HTMLInputElement>("file-name");
const fileInput = element<HTMLInputElement>("file");

/** Of the sheets, and of the duty in the pane. */
const work = savedMark();
const dutyWork = paneDuty.mark;
/** A workbook is just coming into the grid. */
let isComing = false;
let behind: Behind | undefined;
const id = await bringBack();
const keeper = startKeeper({
  slots,
  id,
  slot: slotNow,
  isUnsaved: () => work.isUnsaved() || dutyWork.isUnsaved(),
  isWhole: () => !isComing,
  isSettled: host.isSettled,
  told: tellUnkept,
});
paneDuty.follow(keeper.changed);
const printing = startPrinting(element("print"), grid, { wait, say: strip.say, fileName: () => fileName.value.trim() });

/** The file that was opened in place of the workbook, as long as one was. */
interface Behind {
  readonly name: string;
  readonly unseen: readonly Unseen[];
  readonly file: OpenedFile;
  /** The user has agreed that the download will be another file. */
  isGivenUp: boolean;
}
const ENDING = /\.(xlsx|xlsm|xltx|xltm)$/i;

guardStructure(
  api,
  (sheet) => behind?.isGivenUp === false && behind.file.has(sheet),
  async () => {
    const from = behind;
    if (from === undefined) return true;
    const answer = await ask(breakQuestion(from.name, [], lossesOf(from)), [{ id: "go", label: "Go on" }]);
    from.isGivenUp = answer === "go";
    if (from.isGivenUp) keeper.changed();
    return from.isGivenUp;
  },
);
api.addEvent(api.Event.CommandExecuted, ({ id, options }) => {
  const isResult = options?.["applyFormulaCalculationResult"] === true;
  if (!id.startsWith("sheet.mutation.") || isResult) return;
  work.edited();
  keeper.changed();
});
window.dutybook = { host };
letFocus();

for (const button of document.querySelectorAll<HTMLButtonElement>("#file-buttons button")) button.disabled = false;
element("new").addEventListener("click", () => attempt("The new workbook could not be made", newWorkbook));
element("open").addEventListener("click", () => fileInput.click());
element("print-sheet").addEventListener("click", () => attempt("The sheet could not be printed", printing.print));
element("download").addEventListener("click", () => attempt("The file could not be written", download));
fileInput.addEventListener("change", () => {
  const file = fileInput.files?.[0];
  if (file !== undefined) attempt(`${file.name} could not be opened`, () => open(file));
  fileInput.value = "";
});
fileName.addEventListener("input", keeper.changed);
window.addEventListener("beforeunload", (event) => {
  if (work.isUnsaved()) event.preventDefault();
});

async function newWorkbook(): Promise<void> {
  const question = { text: "Close this workbook and start an empty one? What was not downloaded is lost." };
  const answer = await ask(question, [{ id: "new", label: "Start an empty workbook" }]);
  if (answer === undefined) return;
  await put({ sheets: [] });
  fileName.value = "Workbook";
}

async function open(file: File): Promise<void> {
  const cannot = (why: string): void => strip.say(`${file.name} could not be opened. ${why}`, "error");
  const large = tooLarge([file]);
  if (large !== undefined) return cannot(large);
  const bytes = new Uint8Array(await file.arrayBuffer());
  const read = await readBook(file.name, bytes);
  if (read === undefined) return;
  const content = sheetsOf(read.outcome);
  if (!content.ok) return cannot(content.why);
  const { unseen } = read;
  const answer = await ask(openQuestion(file.name, content.sheets.length, unseen), [
    { id: "beside", label: "Beside the present sheets" },
    { id: "replace", label: "In place of this workbook" },
  ]);
  if (answer === "beside") await host.addSheets(openedSet(content));
  if (answer === "replace") {
    await put(content);
    behind = { name: file.name, unseen, isGivenUp: false, file: openedFile(grid, host, bytes, content.sheets) };
    fileName.value = file.name.replace(ENDING, "");
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
  handedOver(name);
}

/** A browser does not say whether a file it was handed is on the disk; the user sees it. */
function handedOver(name: string): void {
  if (!work.isUnsaved() && !dutyWork.isUnsaved()) return;
  for (const mark of [work, dutyWork]) mark.handedOver();
  const arrived = (): void => {
    for (const mark of [work, dutyWork]) mark.arrived();
    notices.drop("handed");
    keeper.changed();
  };
  notices.show("handed", { text: handedWords(name), actions: [{ label: "Yes, it is saved", act: arrived }] });
}

/** Puts other sheets in the place of the workbook, which are saved as they are. */
async function put(content: FileContent): Promise<void> {
  isComing = true;
  try {
    await replaceWorkbook(grid, host, content);
  } finally {
    isComing = false;
  }
  forget();
  for (const key of ["back", "fresh", "handed", "gone"]) notices.drop(key);
  for (const mark of [work, dutyWork]) mark.restart(false);
  keeper.changed();
}

/** The sample in place of the restored workbook, which one click more brings back. */
async function startFresh(): Promise<void> {
  // The grid's own data is of the workbook that goes.
  const [before, isUnsaved] = [structuredClone(slotNow()), work.isUnsaved()];
  await put({ sheets: SAMPLE_SHEETS });
  fileName.value = fileName.defaultValue;
  await keeper.drop();
  const actions = [
    {
      label: "Bring it back",
      act: () => attempt("The workbook could not be brought back", () => bringAgain(before, isUnsaved)),
    },
  ];
  notices.show("fresh", { text: FRESH, actions });
}

async function bringAgain(before: Slot, isUnsaved: boolean): Promise<void> {
  forget();
  isComing = true;
  try {
    await putBack(grid, host, before.copy);
    follow(before);
  } finally {
    isComing = false;
  }
  notices.drop("fresh");
  work.restart(isUnsaved);
  keeper.changed();
}

/** Puts the workbook that was kept into the grid, or else the sample. Answers with where this tab's is kept from now on. */
async function bringBack(): Promise<string> {
  const head = found?.head;
  if (found?.isGone) notices.show("gone", { text: GONE });
  const kept = handedOverKept();
  const outcome = head && kept && (await takeBack(slots, head, kept, take));
  if (found !== undefined && head !== undefined && outcome?.ok) {
    const actions = [{ label: "Start fresh", act: () => attempt("The sample could not be shown", startFresh) }];
    notices.show("back", { text: backWords(head.at, found.others), actions });
    work.restart(head.isUnsaved);
    return found.id;
  }
  await replaceWorkbook(grid, host, { sheets: SAMPLE_SHEETS });
  api.getActiveWorkbook()?.getActiveSheet().getRange("A1").activate();
  if (head === undefined || outcome?.ok !== false) return found?.id ?? freshSlot();
  const again = (): void => attempt("The page could not be loaded again", () => tryAgain(slots, head));
  const actions = [{ label: "Try again", act: again }];
  notices.show("not back", { kind: "error", text: notBackWords(head.at, outcome.why), actions });
  return freshSlot();
}

async function take(slot: Slot): Promise<void> {
  if (slot.behind !== undefined && slot.opening === undefined)
    throw new Error(`the file ${slot.behind.name} is not there.`);
  await putBack(grid, host, slot.copy);
  follow(slot);
}

/** The name of the workbook now in the grid, and the file behind it where it came from one. */
function follow({ fileName: name, behind: followed, opening }: Slot): void {
  fileName.value = name;
  if (followed === undefined || opening === undefined) return;
  const { steps, ...others } = followed;
  behind = { ...others, file: followedFile(grid, host, opening, steps) };
}

function slotNow(): Slot {
  const duty = paneDuty.now();
  return {
    fileName: fileName.value,
    copy: workbookCopy(grid, host),
    ...(duty === undefined ? {} : { duty }),
    ...(behind === undefined ? {} : followedNow(behind)),
  };
}

function followedNow({ file, ...others }: Behind): Pick<Slot, "behind" | "opening"> {
  return { behind: { ...others, steps: file.steps() }, opening: file.opening };
}

function attempt(failure: string, action: () => Promise<void>): void {
  action().catch((fault: unknown) => {
    console.error(fault);
    strip.say(`${failure}: ${fault instanceof Error ? fault.message : String(fault)}`, "error");
  });
}
