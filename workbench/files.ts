import type { SheetSet } from "../shared/ports/sheet-set.ts";
import type { SheetSpec } from "../shared/ports/sheet-spec.ts";
import type { ReadWorkbook } from "../shared/xlsx/read/workbook-content.ts";
import { readWorkbook } from "../shared/xlsx/read-workbook.ts";
import { toSheetSpec } from "../shared/xlsx/to-sheet-spec.ts";
import { writeWorkbook } from "../shared/xlsx/write-workbook.ts";
import { changedFormula } from "./grid-formula.ts";
import type { Grid, GridHost } from "./grid-host.ts";
import { gridSnapshot } from "./grid-snapshot.ts";
import { emptyWorkbook } from "./grid-workbook.ts";

export type Opened =
  | { readonly ok: true; readonly sheets: readonly SheetSpec[] }
  | { readonly ok: false; readonly why: string };

/** The sheets of an .xlsx file, or one sentence on why it cannot be read. */
export function sheetsOfFile(bytes: Uint8Array): Opened {
  const outcome = readWorkbook(bytes);
  if (!outcome.ok) return { ok: false, why: outcome.refusal.message };
  const { workbook } = outcome;
  return { ok: true, sheets: workbook.sheets.map((sheet) => withoutWorkbookNames(toSheetSpec(sheet), workbook)) };
}

/** The sheets of a file as they are added together: what they say of one another follows the names they get. */
export function openedSet(sheets: readonly SheetSpec[]): SheetSet {
  return {
    wanted: sheets.map(({ name }) => name),
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

/**
 * The grid's workbook as the bytes of an .xlsx file with add-in formulas and their answers. Cells hold old answers
 * until an edit is calculated, hence the wait; nothing comes of it where the user breaks it off.
 */
export async function fileOfWorkbook(grid: Grid, host: GridHost, wait: Wait): Promise<Uint8Array | undefined> {
  while (!host.isSettled()) if (!(await wait("Waiting for the calculation to end …", host.settled()))) return undefined;
  return writeWorkbook({ sheets: gridSnapshot(grid, host), form: "add-in" });
}

let workbooks = 1;

/** Puts another workbook in the place of the present one; if that fails, the present one comes back. */
export async function replaceWorkbook({ api }: Grid, host: GridHost, sheets: readonly SheetSpec[]): Promise<void> {
  const present = api.getActiveWorkbook();
  const saved = present?.save();
  if (present !== null) api.disposeUnit(present.getId());
  workbooks += 1;
  const id = `workbook-${workbooks}`;
  api.createWorkbook(emptyWorkbook(id, sheets.length === 0 ? "Sheet1" : "Opening"));
  if (sheets.length === 0) return;
  try {
    await host.addSheets(openedSet(sheets));
    const workbook = api.getActiveWorkbook();
    workbook?.deleteSheet("first");
    workbook?.getSheets()[0]?.activate();
  } catch (fault) {
    api.disposeUnit(id);
    if (saved !== undefined) api.createWorkbook(saved);
    throw fault;
  }
}
