import { freeSheetName } from "../shared/ports/sheet-name.ts";
import type { SheetSet } from "../shared/ports/sheet-set.ts";
import type { SheetSpec } from "../shared/ports/sheet-spec.ts";
import { patchedWorkbook } from "../shared/xlsx/patch/patch-workbook.ts";
import type { ReadWorkbook } from "../shared/xlsx/read/workbook-content.ts";
import { type ReadOutcome, readWorkbook } from "../shared/xlsx/read-workbook.ts";
import { toSheetSpec } from "../shared/xlsx/to-sheet-spec.ts";
import { writeWorkbook } from "../shared/xlsx/write-workbook.ts";
import { breath } from "./breath.ts";
import { changedFormula } from "./grid-formula.ts";
import type { Grid, GridHost } from "./grid-host.ts";
import { gridSnapshot } from "./grid-snapshot.ts";
import { emptyWorkbook } from "./grid-workbook.ts";
import type { FileState, OpenedFile } from "./opened-file.ts";
import { startMark } from "./start-mark.ts";

/** What a file holds, as the grid takes it. */
export interface FileContent {
  readonly sheets: readonly SheetSpec[];
  /** Names of sheets that are not shown. */
  readonly hidden?: readonly string[];
  /** What travels with them unseen. */
  readonly records?: readonly string[];
}

export type Opened = ({ readonly ok: true } & FileContent) | { readonly ok: false; readonly why: string };

/** The sheets of an .xlsx file, or one sentence on why it cannot be read. */
export function sheetsOfFile(bytes: Uint8Array): Opened {
  return sheetsOf(readWorkbook(bytes));
}

/** The same of a file that was read. */
export function sheetsOf(outcome: ReadOutcome): Opened {
  if (!outcome.ok) return { ok: false, why: outcome.refusal.message };
  const { workbook } = outcome;
  return {
    ok: true,
    sheets: workbook.sheets.map((sheet) => withoutWorkbookNames(toSheetSpec(sheet), workbook)),
    hidden: workbook.sheets.filter(({ hidden }) => hidden).map(({ name }) => name),
    records: workbook.records,
  };
}

/** The sheets of a file as they are added together: what they say of one another follows the names they get. */
export function openedSet({ sheets, records = [] }: FileContent): SheetSet {
  return {
    wanted: sheets.map(({ name }) => name),
    records,
    isFromFile: true,
    sheets: (names) => {
      const renamed = new Map(sheets.map(({ name }, i) => [name.toLowerCase(), names[i] ?? name]));
      const changed = (formula: string): string => changedFormula(formula, { sheets: renamed });
      return sheets.map((spec, i) => ({
        ...spec,
        name: names[i] ?? spec.name,
        cells: spec.cells.map((cell) => (cell.f === undefined ? cell : { ...cell, f: changed(cell.f) })),
        rules: (spec.rules ?? []).map((rule) => ({ ...rule, when: changed(rule.when) })),
      }));
    },
  };
}

/** The grid knows names of one sheet only; in formulas, names of the workbook become what they stand for. */
function withoutWorkbookNames(spec: SheetSpec, { names }: ReadWorkbook): SheetSpec {
  const own = new Set(Object.keys(spec.names ?? {}).map((name) => name.toLowerCase()));
  const general = new Map(
    names
      .filter(({ name, sheet }) => sheet === undefined && !own.has(name.toLowerCase()))
      .map(({ name, refersTo }) => [name.toLowerCase(), refersTo.replace(/^=/, "")]),
  );
  if (general.size === 0) return spec;
  return {
    ...spec,
    cells: spec.cells.map((cell) =>
      cell.f === undefined ? cell : { ...cell, f: changedFormula(cell.f, { names: general }) },
    ),
  };
}

/** Says what is waited for; answers with false when the user would rather not wait. */
export type Wait = (words: string, until: Promise<void>) => Promise<boolean>;

/** What a download is to be. */
export interface Download {
  readonly bytes: Uint8Array;
  /** The opened file with what changed in it; otherwise a new file from the grid. */
  readonly isPatched: boolean;
  /** Whether anything was changed since the file was opened. */
  readonly isChanged: boolean;
}

/** Asks whether a new file is to be written, or the opened one without some of the changes. */
export type Choose = (state: FileState) => Promise<"new" | "patched" | undefined>;

/**
 * The grid's workbook as an .xlsx file with add-in formulas and their answers: the opened file, patched, or a new one.
 * Cells hold old answers until an edit is calculated, hence the wait; nothing comes of it where the user breaks it
 * off, or chooses neither.
 */
export async function fileOfWorkbook(
  grid: Grid,
  host: GridHost,
  wait: Wait,
  opened?: { readonly file: OpenedFile; readonly choose: Choose },
): Promise<Download | undefined> {
  while (!host.isSettled()) if (!(await wait("Waiting for the calculation to end …", host.settled()))) return undefined;
  if (opened !== undefined) {
    const state = opened.file.state();
    const isWhole = state.broken.length + state.beyond.length === 0;
    const choice = isWhole ? "patched" : await opened.choose(state);
    if (choice === undefined) return undefined;
    if (choice === "patched")
      return {
        bytes: patchedWorkbook(opened.file.bytes, state.sheets, host.records()),
        isPatched: true,
        isChanged: state.isChanged,
      };
  }
  return {
    bytes: writeWorkbook({ sheets: gridSnapshot(grid, host), records: host.records() }),
    isPatched: false,
    isChanged: true,
  };
}

let workbooks = 1;

/** Puts another workbook in the place of the present one; if that fails, the present one comes back. */
export async function replaceWorkbook({ api, inside }: Grid, host: GridHost, content: FileContent): Promise<void> {
  const { sheets, hidden = [] } = content;
  const present = api.getActiveWorkbook();
  const saved = present?.save();
  if (present !== null) api.disposeUnit(present.getId());
  workbooks += 1;
  const id = `workbook-${startMark()}-${workbooks}`;
  const meanwhile = freeSheetName(
    "Opening",
    sheets.map(({ name }) => name),
  );
  api.createWorkbook(emptyWorkbook(id, sheets.length === 0 ? "Sheet1" : meanwhile));
  if (sheets.length === 0) return;
  try {
    await breath();
    await host.addSheets(openedSet(content));
    const workbook = api.getActiveWorkbook();
    workbook?.deleteSheet("first");
    const shown = workbook?.getSheets().filter((sheet) => !hidden.includes(sheet.getSheetName())) ?? [];
    shown[0]?.activate();
    for (const name of hidden) if (shown.length > 0) workbook?.getSheetByName(name)?.hideSheet();
    inside.clearUndo(id);
  } catch (fault) {
    api.disposeUnit(id);
    if (saved !== undefined) api.createWorkbook(saved);
    throw fault;
  }
}
