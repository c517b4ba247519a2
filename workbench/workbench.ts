import "./workbench.css";
import { mountPane } from "../taskpane/pane/pane.ts";
import { ask, wait } from "./ask.ts";
import { startDivider } from "./divider.ts";
import { fileOfWorkbook, openedSet, replaceWorkbook, sheetsOfFile } from "./files.ts";
import type { GridHost } from "./grid-host.ts";
import { pageGrid } from "./page-grid.ts";
import { SAMPLE_SHEETS } from "./sample-workbook.ts";
import { startStrip } from "./strip.ts";

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

await replaceWorkbook(grid, host, SAMPLE_SHEETS);
api.getActiveWorkbook()?.getActiveSheet().getRange("A1").activate();
mountPane(element("pane"), { host });
let unkeptEdits = 0;
api.addEvent(api.Event.CommandExecuted, ({ id, options }) => {
  const isResult = options?.["applyFormulaCalculationResult"] === true;
  if (id.startsWith("sheet.mutation.") && !isResult) unkeptEdits += 1;
});
window.dutybook = { host };

element("new").addEventListener("click", () => attempt("The new workbook could not be made", newWorkbook));
element("open").addEventListener("click", () => fileInput.click());
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
  const answer = await ask("Close this workbook and start an empty one? What was not downloaded is lost.", [
    { id: "new", label: "Start an empty workbook" },
  ]);
  if (answer === undefined) return;
  await replaceWorkbook(grid, host, []);
  fileName.value = "Workbook";
  unkeptEdits = 0;
}

async function open(file: File): Promise<void> {
  const opened = sheetsOfFile(new Uint8Array(await file.arrayBuffer()));
  if (!opened.ok) {
    strip.say(`${file.name} could not be opened. ${opened.why}`, "error");
    return;
  }
  const count = opened.sheets.length === 1 ? "one sheet" : `${opened.sheets.length} sheets`;
  const answer = await ask(`${file.name} has ${count}. Where should they go?`, [
    { id: "beside", label: "Beside the present sheets" },
    { id: "replace", label: "In place of this workbook" },
  ]);
  if (answer === "beside") await host.addSheets(openedSet(opened.sheets));
  if (answer === "replace") {
    await replaceWorkbook(grid, host, opened.sheets);
    fileName.value = file.name.replace(/\.xlsx$/i, "");
    unkeptEdits = 0;
  }
}

async function download(): Promise<void> {
  const bytes = await fileOfWorkbook(grid, host, wait);
  if (bytes === undefined) {
    strip.say("No file was written.");
    return;
  }
  const file = new Blob([bytes as Uint8Array<ArrayBuffer>], {
    type: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  });
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = `${fileName.value.trim().replace(/[\\/:*?"<>|]+/g, " ") || "Workbook"}.xlsx`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  unkeptEdits = 0;
}

function attempt(failure: string, action: () => Promise<void>): void {
  action().catch((fault: unknown) => {
    console.error(fault);
    strip.say(`${failure}: ${fault instanceof Error ? fault.message : String(fault)}`, "error");
  });
}
