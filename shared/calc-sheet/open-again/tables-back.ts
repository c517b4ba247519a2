import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { isAbsent } from "../../cells/cell.ts";
import { blankRow, rowsIn, textIn, withRowsIn, withTextIn } from "../../duty/boxes.ts";
import type { DutyText } from "../../duty/duty-text.ts";
import { pairedRows } from "../../duty/paired-rows.ts";
import { addressOf, boxOf } from "../../ports/a1.ts";
import type { CellNow, SheetNow } from "../../ports/sheet-record.ts";
import type { BroughtBack, Remark, TakenOver } from "./brought-back.ts";
import { isAsWritten, textOfCell } from "./cell-text.ts";
import type { InputSheet, WrittenCell, WrittenTable } from "./written-inputs.ts";

/** A table as it stands, blank rows left out; nothing where its range is gone. */
interface TableNow extends WrittenTable {
  readonly now: readonly (readonly CellNow[])[];
}

/** The tables of a duty with the rows that stand on its sheets now. */
export function tablesBack(
  saved: DutyText,
  tables: readonly WrittenTable[],
  sheetOf: (sheet: InputSheet) => SheetNow,
): BroughtBack {
  const remarks: Remark[] = [];
  const read = tables.flatMap((table): readonly TableNow[] => {
    const now = rowsNow(sheetOf(table.sheet), table);
    if (now !== undefined) {
      const beside = besideIt(sheetOf(table.sheet), table);
      remarks.push(...besideRemarks(table, beside));
      return [{ ...table, now: [...beside.above, ...now, ...beside.below] }];
    }
    remarks.push({ kind: "gone", text: `${table.label}: its cells were deleted; what was written stays.` });
    return [];
  });
  let duty = saved;
  const taken: TakenOver[] = [];
  for (const of of new Set(read.map((table) => table.of))) {
    const back = tableBack(duty, joined(read.filter((table) => table.of === of)));
    duty = back.duty;
    taken.push(...back.taken);
    remarks.push(...back.remarks);
  }
  return { duty, taken, remarks };
}

function rowsNow(sheet: SheetNow, { name, headings, columns }: WrittenTable): TableNow["now"] | undefined {
  const range = sheet.names[name];
  if (range === undefined) return undefined;
  const { top, left, bottom } = boxOf(range);
  const rows = Array.from({ length: Math.max(0, bottom - top + 1 - headings) }, (_, i) =>
    columns.map((_, j) => sheet.at(top + headings + i, left + j)),
  );
  return rows.filter((row) => row.some(({ value, isFormula }) => !isFormula && !isAbsent(value)));
}

/** Rows of a line that stand outside its range: right above it, and right below. */
interface Beside {
  readonly above: TableNow["now"];
  readonly below: TableNow["now"];
}

/**
 * Runs that were put above the first or below the last row of a line, where its range does not reach: a pipe that can be
 * read and a length beside it, no formula, in rows that have no name.
 */
function besideIt({ names, at }: SheetNow, { name, columns }: WrittenTable): Beside {
  const length = columns.findIndex(({ quantity }) => quantity === "length");
  const range = names[name];
  if (range === undefined || length < 0) return { above: [], below: [] };
  const { top, left, bottom } = boxOf(range);
  const named = new Set(Object.values(names));
  const runsFrom = (first: number, step: -1 | 1): TableNow["now"] => {
    const found: (readonly CellNow[])[] = [];
    for (let row = first; row >= 0 && !named.has(addressOf(row, left + length)); row += step) {
      const cells = columns.map((_, j) => at(row, left + j));
      const [pipe, run] = [cells[0] ?? NOTHING, cells[length] ?? NOTHING];
      const isRun = typeof run.value === "number" && !run.isFormula && pipeNamed(String(pipe.value ?? "")).ok;
      if (!isRun) break;
      found.push(cells);
    }
    return found;
  };
  return { above: runsFrom(top - 1, -1).toReversed(), below: runsFrom(bottom + 1, 1) };
}

/** That they are runs of the duty now, although the sheet does not count them. */
function besideRemarks({ label }: WrittenTable, { above, below }: Beside): readonly Remark[] {
  return [...above, ...below].map(([pipe, run]) => {
    const words = [pipe, run].map((cell) => textOfCell(cell?.value ?? null, "", undefined)).join(", ");
    const text = `${label}: the row “${words}” stands outside the cells that the sheet counts. It was taken over, but no figure of the sheet holds it: write the sheet again.`;
    return { kind: "outside", text };
  });
}

/** Tables that stand under one another with the same rows as one; by the first column, where a row was added to one alone. */
function joined(tables: readonly TableNow[]): TableNow {
  const [first, ...others] = tables as [TableNow, ...TableNow[]];
  return others.reduce(beside, first);
}

function beside(all: TableNow, next: TableNow): TableNow {
  const [, ...columns] = next.columns;
  const partner = (row: readonly CellNow[], i: number): readonly CellNow[] | undefined =>
    next.now.length === all.now.length ? next.now[i] : next.now.find(([name]) => name?.value === row[0]?.value);
  return {
    ...all,
    columns: [...all.columns, ...columns],
    rows: all.rows.map(({ row, cells }, i) => ({ row, cells: [...cells, ...(next.rows[i]?.cells ?? []).slice(1)] })),
    now: all.now.map((row, i) => {
      const further = partner(row, i)?.slice(1) ?? columns.map((): CellNow => ({ value: null, isFormula: true }));
      return [...row, ...further];
    }),
  };
}

function tableBack(saved: DutyText, table: TableNow): BroughtBack {
  const { of, label, rows, now, columns } = table;
  const isSame = (i: number, j: number): boolean =>
    columns.every((_, c) => isSameCell(rows[i]?.cells[c], now[j]?.[c] ?? NOTHING));
  const pairs = pairedRows(rows.length, now.length, isSame);
  const areSameRows = pairs.every(({ before, after }) => before !== undefined && after !== undefined);
  const taken: TakenOver[] = [];
  const remarks: Remark[] = [];
  // Rows added or gone: blank rows of the duty, which say nothing, go too.
  const kept = pairs.filter(({ after }) => after !== undefined);
  const typed = (before: number | undefined): number => rows[before ?? -1]?.row ?? -1;
  const all = rowsIn(saved, of);
  let duty = areSameRows
    ? saved
    : withRowsIn(
        saved,
        of,
        kept.map(({ before }) => all[typed(before)] ?? blankRow(of)),
      );
  for (const { before, after } of pairs) {
    if (after !== undefined) continue;
    taken.push({
      label: `${label}, row ${(before ?? 0) + 1}`,
      before: wordsOf(saved, table, typed(before)),
      after: "",
    });
  }
  const places = kept.map(({ before, after }, i) => ({
    before,
    after: after ?? 0,
    row: areSameRows ? typed(before) : i,
  }));
  for (const { before, after, row } of places) {
    const written = before === undefined ? undefined : rows[before]?.cells;
    const back = rowBack(duty, table, { written, now: now[after] ?? [], row, number: after + 1 });
    duty = back.duty;
    taken.push(...back.taken);
    remarks.push(...back.remarks);
  }
  // A column of efficiencies is typed in one way, per cent or fractions; the sheet has them in per cent.
  const efficiency = columns.findIndex(({ key }) => of.endsWith("points") && key === "efficiency");
  if (efficiency >= 0 && taken.some(({ place }) => place?.endsWith(".efficiency") || !areSameRows)) {
    for (const { after, row } of places) {
      const cell = now[after]?.[efficiency] ?? NOTHING;
      duty = withTextIn(duty, `${of}.${row}.efficiency`, textOfCell(cell.value, "", undefined));
    }
  }
  return { duty, taken, remarks };
}

const NOTHING: CellNow = { value: null, isFormula: false };

interface RowNow {
  /** Nothing where the row was added. */
  readonly written: readonly WrittenCell[] | undefined;
  readonly now: readonly CellNow[];
  /** Of the duty. */
  readonly row: number;
  /** On the sheet, from 1. */
  readonly number: number;
}

function rowBack(saved: DutyText, table: TableNow, { written, now, row, number }: RowNow): BroughtBack {
  const { of, label, columns, rows } = table;
  const taken: TakenOver[] = [];
  const remarks: Remark[] = [];
  let duty = saved;
  columns.forEach(({ key, label: heading, quantity }, c) => {
    const cell = now[c] ?? NOTHING;
    const was = written?.[c];
    const where = `${label}, row ${number}: ${heading}`;
    const isOwn = was === undefined ? rows.some(({ cells }) => "f" in (cells[c] ?? {})) : "f" in was;
    // A formula of ours stands for a box that nothing was typed in.
    if (isOwn && cell.isFormula) return;
    const isKept = was !== undefined && isSameCell(was, cell);
    if (cell.isFormula) {
      const words = textOfCell(cell.value, "", quantity);
      remarks.push({
        kind: "formula",
        text: `${where} is worked out on the sheet by a formula; its value, ${words}, was taken.`,
      });
    }
    if (isKept) return;
    const place = `${of}.${row}.${key}`;
    const [before, after] = [textIn(duty, place), textOfCell(cell.value, place, quantity)];
    if (before === after) return;
    duty = withTextIn(duty, place, after);
    if (was !== undefined) taken.push({ place, label: where, before, after });
  });
  if (written === undefined) {
    taken.push({
      place: `${of}.${row}`,
      label: `${label}, row ${number}`,
      before: "",
      after: wordsOf(duty, table, row),
    });
  }
  return { duty, taken, remarks };
}

function isSameCell(written: WrittenCell | undefined, now: CellNow): boolean {
  if (written === undefined) return false;
  return "f" in written ? now.isFormula : isAsWritten(written.v, now.value);
}

/** "8in sch40, length 20, fittings 1 gate": what the first column says speaks for itself. */
function wordsOf(duty: DutyText, { of, columns }: TableNow, row: number): string {
  const said = columns.map(({ key, label }, i) => {
    const text = textIn(duty, `${of}.${row}.${key}`).trim();
    return text === "" || i === 0 ? text : `${label} ${text}`;
  });
  return said.filter((text) => text !== "").join(", ");
}
