import { type Cell, isCellError } from "../shared/cells/cell.ts";
import { quotedSheetName } from "../shared/ports/sheet-name.ts";
import type { CellSpec, SheetSpec } from "../shared/ports/sheet-spec.ts";
import { isUnchanged, sheetChanges } from "../shared/xlsx/patch/changes.ts";
import type { PatchedSheet } from "../shared/xlsx/patch/patch-workbook.ts";
import type { Grid, GridHost } from "./grid-host.ts";
import { columnCharacters } from "./grid-sheet.ts";
import { DEFAULT_COLUMN_PIXELS, gridSnapshot } from "./grid-snapshot.ts";
import { type Steps, type StructureLog, structureLog } from "./structure-log.ts";

/** The file that stands behind the workbook in the grid, and how far the two have come apart since it was opened. */
export interface OpenedFile extends Opening {
  /** This much of it as plain data, which does not change. */
  readonly opening: Opening;
  /** What was done since to the order of its cells. */
  readonly steps: () => Steps;
  /** Whether a sheet of the grid is one of the file's, by the grid's id. */
  readonly has: (sheet: string) => boolean;
  readonly state: () => FileState;
  readonly close: () => void;
}

/** A file as it was opened. */
export interface Opening {
  readonly bytes: Uint8Array;
  /** Its sheets by the grid's id: the name in the file, and what the grid made of it. */
  readonly opened: readonly (readonly [id: string, sheet: { readonly name: string; readonly was: SheetSpec }])[];
  /** Formulas the grid has only an error for, where the file had an answer: "Data!B4". */
  readonly unanswered: readonly string[];
  /** Formulas the grid answers otherwise than the file did: what follows from them may be otherwise too. */
  readonly otherwise: readonly string[];
}

export interface FileState {
  /** The sheets of the grid in their order, for a patch of the file. */
  readonly sheets: readonly PatchedSheet[];
  /** In words, what was done that no patch can follow: the file has to be written anew. */
  readonly broken: readonly string[];
  /** In words, what was changed that a patch would leave as it was in the file. */
  readonly beyond: readonly string[];
  readonly isChanged: boolean;
}

const USUAL_WIDTH = columnCharacters(DEFAULT_COLUMN_PIXELS);

/** @param inFile the sheets that the file was opened with and the grid now shows, in their order */
export function openedFile(grid: Grid, host: GridHost, bytes: Uint8Array, inFile: readonly SheetSpec[]): OpenedFile {
  const first = gridSnapshot(grid, host);
  return followedFile(grid, host, {
    bytes,
    opened: sheetIds(grid).map((id, i) => [id, { name: inFile[i]?.name ?? "", was: first[i] as SheetSpec }]),
    unanswered: formulasOf(inFile, first, (was, is) => isCellError(is) && !isCellError(was)),
    otherwise: formulasOf(inFile, first, isOtherwise),
  });
}

/** A file that was opened, on an earlier start of the page too, from here on. */
export function followedFile(grid: Grid, host: GridHost, opening: Opening, steps?: Steps): OpenedFile {
  const opened = new Map(opening.opened);
  const log: StructureLog = structureLog(grid.api, steps);

  const state = (): FileState => {
    const broken: string[] = [];
    const beyond: string[] = [];
    const gone = new Set(opened.keys());
    const now = gridSnapshot(grid, host);
    const sheets = sheetIds(grid).map((id, i): PatchedSheet => {
      const spec = now[i] as SheetSpec;
      const original = opened.get(id);
      gone.delete(id);
      if (original === undefined) return { kind: "added", spec };
      const { name, was } = original;
      if (spec.name !== name) broken.push(`the sheet ${name} renamed`);
      for (const words of log.of(id)) broken.push(`${words} on ${spec.name}`);
      const changes = sheetChanges(was, spec, USUAL_WIDTH);
      for (const words of changes.beyond) beyond.push(`${words} changed on ${spec.name}`);
      return { kind: "opened", name, now: spec, changes };
    });
    for (const id of gone) broken.push(`the sheet ${opened.get(id)?.name} deleted`);
    const isChanged = sheets.some((sheet) => sheet.kind === "added" || !isUnchanged(sheet.changes));
    return { sheets, broken, beyond, isChanged };
  };

  return {
    ...opening,
    opening,
    steps: log.steps,
    has: (sheet) => opened.has(sheet),
    state,
    close: log.stop,
  };
}

function sheetIds({ api }: Grid): readonly string[] {
  return (api.getActiveWorkbook()?.getSheets() ?? []).map((sheet) => sheet.getSheetId());
}

/** The formulas for whose two answers, in the file and in the grid, that holds. */
function formulasOf(
  inFile: readonly SheetSpec[],
  inGrid: readonly SheetSpec[],
  isMeant: (inFile: Cell, inGrid: Cell) => boolean,
): readonly string[] {
  return inFile.flatMap((sheet, i) => {
    const shown = new Map(inGrid[i]?.cells.map((cell) => [cell.at, cell]));
    return sheet.cells.flatMap((cell) => {
      const known = cell.f !== undefined && !ANEW.test(cell.f) && isMeant(cornerOf(cell), cornerOf(shown.get(cell.at)));
      return known ? [`${quotedSheetName(sheet.name)}!${cell.at}`] : [];
    });
  });
}

/** Functions that answer otherwise each time. */
const ANEW = /\b(NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY)\(/i;
/** Programs add and round in their own order. */
const ROUNDING = 1e-9;

/** A file may have no answer, where a program wrote it that does not calculate. */
function isOtherwise(inFile: Cell, inGrid: Cell): boolean {
  if (inFile === null || inFile === "" || isCellError(inGrid)) return false;
  if (typeof inFile === "number" && typeof inGrid === "number")
    return Math.abs(inFile - inGrid) > ROUNDING * Math.max(1, Math.abs(inFile), Math.abs(inGrid));
  return inFile !== (inGrid ?? "");
}

function cornerOf(cell: CellSpec | undefined): Cell {
  const cached = cell?.cached;
  return (isRows(cached) ? cached[0]?.[0] : cached) ?? null;
}

function isRows(cached: CellSpec["cached"]): cached is readonly (readonly Cell[])[] {
  return Array.isArray(cached);
}
