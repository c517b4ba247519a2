import type { BroughtBack } from "../../shared/calc-sheet/open-again/brought-back.ts";
import type { FoundDuty } from "../../shared/calc-sheet/open-again/duties-in.ts";
import { dutiesIn } from "../../shared/calc-sheet/open-again/duties-in.ts";
import type { Cell, Scalar } from "../../shared/cells/cell.ts";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import { addressOf, boxOf, rangeOf } from "../../shared/ports/a1.ts";
import { freeSheetNames } from "../../shared/ports/sheet-name.ts";
import { RECORD_NAME, type SheetNow } from "../../shared/ports/sheet-record.ts";
import type { CellSpec, SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { readWorkbook } from "../../shared/xlsx/read-workbook.ts";
import { recordedSheets } from "../../shared/xlsx/recorded-sheets.ts";
import { writeWorkbook } from "../../shared/xlsx/write-workbook.ts";
import { setOfDuty } from "./laid-out.ts";

/** What a user does to sheets before they are saved. */
export type Edit = (sheets: readonly SheetSpec[]) => readonly SheetSpec[];

const written = new WeakMap<DutyText, { readonly sheets: readonly SheetSpec[]; readonly records: readonly string[] }>();

function sheetsOf(duty: DutyText) {
  const known = written.get(duty);
  if (known !== undefined) return known;
  const set = setOfDuty(duty);
  const sheets = set.sheets(freeSheetNames(set.wanted, []));
  const made = { sheets, records: set.records ?? [] };
  written.set(duty, made);
  return made;
}

/** The file of a duty's sheets, edited; the duty with them. */
export function fileOf(duty: DutyText, ...edits: readonly Edit[]): Uint8Array {
  const { sheets, records } = sheetsOf(duty);
  return writeWorkbook({ sheets: edits.reduce((all, edit) => edit(all), sheets), records });
}

/** The duties in the bytes of a file. */
export function dutiesInFile(bytes: Uint8Array): readonly FoundDuty[] {
  const outcome = readWorkbook(bytes);
  if (!outcome.ok) throw new Error(outcome.refusal.message);
  const { duties, lost } = dutiesIn(recordedSheets(outcome.workbook));
  if (lost.length > 0) throw new Error(JSON.stringify(lost));
  return duties;
}

/** The one duty of a file. */
export function openedAgain(bytes: Uint8Array): FoundDuty {
  return onlyOne(dutiesInFile(bytes));
}

/** The duties on a duty's sheets, edited, as they stand. */
export function dutiesAfter(duty: DutyText, ...edits: readonly Edit[]): readonly FoundDuty[] {
  const { sheets, records } = sheetsOf(duty);
  const now = edits.reduce((all, edit) => edit(all), sheets);
  const { duties, lost } = dutiesIn({
    records,
    sheets: now.filter(({ names = {} }) => RECORD_NAME in names).map(sheetNow),
  });
  if (lost.length > 0) throw new Error(JSON.stringify(lost));
  return duties;
}

export function after(duty: DutyText, ...edits: readonly Edit[]): BroughtBack {
  return onlyOne(dutiesAfter(duty, ...edits)).back;
}

/** A sheet as its host would read it. */
export function sheetNow({ name, names = {}, cells }: SheetSpec): SheetNow {
  const at = new Map(cells.map((cell) => [cell.at, cell]));
  return {
    name,
    names,
    at: (row, column) => {
      const { v = null, f, cached = null } = at.get(addressOf(row, column)) ?? {};
      return { value: f === undefined ? v : (cached as Cell), isFormula: f !== undefined };
    },
  };
}

function onlyOne([found, ...others]: readonly FoundDuty[]): FoundDuty {
  if (found === undefined || others.length > 0) throw new Error(`${others.length + 1} duties`);
  return found;
}

/** Puts a constant, or nothing, into the cell so many rows and columns into a named range, on the sheet that has the name. */
export function typed(
  name: string,
  content: Scalar | { readonly f: string; readonly is: Scalar },
  down = 0,
  across = 0,
): Edit {
  return (sheets) =>
    sheets.map((sheet) => {
      const range = sheet.names?.[name];
      if (range === undefined) return sheet;
      const { top, left } = boxOf(range);
      const at = addressOf(top + down, left + across);
      const was = sheet.cells.find((cell) => cell.at === at);
      const style = was?.style === undefined ? {} : { style: was.style };
      const now: CellSpec =
        typeof content === "object" && content !== null
          ? { at, f: content.f, cached: content.is, ...style }
          : { at, v: content, ...style };
      return { ...sheet, cells: [...sheet.cells.filter((cell) => cell.at !== at), now] };
    });
}

/** Takes a row out of a named range, or puts one with these cells into it, before the row so many down; all below moves. */
export function rowAt(name: string, down: number, cells: "out" | readonly Scalar[]): Edit {
  return (sheets) =>
    sheets.map((sheet) => {
      const range = sheet.names?.[name];
      if (range === undefined) return sheet;
      const { top, left } = boxOf(range);
      const row = top + down;
      const by = cells === "out" ? -1 : 1;
      const moved = (reference: string): string | undefined => {
        const box = boxOf(reference);
        if (cells === "out" && box.top === row && box.bottom === row) return undefined;
        const last = cells === "out" ? row : row - 1;
        return rangeOf({
          ...box,
          top: box.top > last ? box.top + by : box.top,
          bottom: box.bottom > last || (cells === "out" && box.bottom === row) ? box.bottom + by : box.bottom,
        });
      };
      const movedAll = (references: readonly string[] = []): readonly string[] =>
        references.flatMap((one) => moved(one) ?? []);
      const put = cells === "out" ? [] : cells.map((v, i): CellSpec => ({ at: addressOf(row, left + i), v }));
      return {
        ...sheet,
        cells: [
          ...sheet.cells.flatMap(({ spill: _, ...cell }) => {
            const at = moved(cell.at);
            return at === undefined ? [] : [{ ...cell, at }];
          }),
          ...put,
        ],
        merges: movedAll(sheet.merges),
        names: Object.fromEntries(
          Object.entries(sheet.names ?? {}).flatMap(([key, ref]) => {
            const now = moved(ref);
            return now === undefined ? [] : [[key, now] as const];
          }),
        ),
        rules: [],
        charts: [],
      };
    });
}

/** Renames the sheets. */
export function renamed(to: (name: string) => string): Edit {
  return (sheets) => sheets.map((sheet) => ({ ...sheet, name: to(sheet.name) }));
}
