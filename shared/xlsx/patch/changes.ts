import { type Cell, isCellError, type Scalar } from "../../cells/cell.ts";
import { addressOf, boxOf } from "../../ports/a1.ts";
import type { CellSpec, SheetSpec, StyleSpec } from "../../ports/sheet-spec.ts";

/** What of a style changed; both sides without what a host's grid cannot show. */
export interface StyleChange {
  readonly before: StyleSpec;
  readonly after: StyleSpec;
}

/** A cell that is not as it was. */
export interface CellChange {
  /** 0-based. */
  readonly row: number;
  readonly column: number;
  /** Left out where only its look changed. */
  readonly content?:
    | { readonly kind: "constant"; readonly value: Scalar }
    /** A user's text of the formula, and the range it fills. */
    | { readonly kind: "formula"; readonly formula: string; readonly spill?: string; readonly value: Cell }
    /** The formula is the same, or that of the cell that fills this one; its answer is another. */
    | { readonly kind: "answer"; readonly value: Cell; readonly spill?: string };
  readonly style?: StyleChange;
}

/** What changed on a sheet between two states of it. */
export interface SheetChanges {
  readonly cells: readonly CellChange[];
  /** Whether a cell got a formula, another one, or lost its own. */
  readonly formulas: boolean;
  readonly widths: ReadonlyMap<number, number>;
  readonly heights: ReadonlyMap<number, number | undefined>;
  /** All merged ranges, where they changed. */
  readonly merges?: readonly string[];
  /** Rows that stay in sight, and whether grid lines show, where that changed. */
  readonly freezeRows?: number;
  readonly gridlines?: boolean;
  /** In words, what changed and a patch of the file does not carry: "drop-downs". */
  readonly beyond: readonly string[];
}

/** @param usualWidth characters of a column nobody has set */
export function sheetChanges(before: SheetSpec, after: SheetSpec, usualWidth: number): SheetChanges {
  const merges = same([...(before.merges ?? [])].sort(), [...(after.merges ?? [])].sort()) ? undefined : after.merges;
  const others: readonly (readonly [string, unknown, unknown])[] = [
    ["drop-downs", before.lists ?? [], after.lists ?? []],
    ["conditional formats", before.rules ?? [], after.rules ?? []],
  ];
  const [freezeRows, gridlines] = [after.freezeRows ?? 0, after.gridlines ?? true];
  return {
    ...cellChanges(before, after),
    widths: changedWidths(before.columns, after.columns, usualWidth),
    heights: changedHeights(before.rowHeights ?? {}, after.rowHeights ?? {}),
    ...(merges === undefined ? {} : { merges }),
    ...(freezeRows === (before.freezeRows ?? 0) ? {} : { freezeRows }),
    ...(gridlines === (before.gridlines ?? true) ? {} : { gridlines }),
    beyond: others.flatMap(([words, was, is]) => (same(was, is) ? [] : [words])),
  };
}

export function isUnchanged(changes: SheetChanges): boolean {
  const { cells, widths, heights, merges, freezeRows, gridlines, beyond } = changes;
  const others = [merges, freezeRows, gridlines];
  return cells.length + widths.size + heights.size + beyond.length === 0 && others.every((one) => one === undefined);
}

/** A cell as it shows: what it was given, or what the formula of another cell laid into it. */
interface Shown {
  readonly v?: Scalar;
  readonly f?: string;
  readonly spill?: string;
  readonly answer?: Cell;
  readonly style: StyleSpec;
}

const NO_STYLE: StyleSpec = {};
const BLANK: Shown = { style: NO_STYLE };

function cellChanges(before: SheetSpec, after: SheetSpec): Pick<SheetChanges, "cells" | "formulas"> {
  const [was, is] = [shownCells(before), shownCells(after)];
  const changes: CellChange[] = [];
  let formulas = false;
  const texts = new Map<StyleSpec, string>();
  const textOf = (style: StyleSpec): string => {
    const known = texts.get(style) ?? ordered(seen(style));
    texts.set(style, known);
    return known;
  };
  for (const at of new Set([...was.keys(), ...is.keys()])) {
    const [old, now] = [was.get(at) ?? BLANK, is.get(at) ?? BLANK];
    if (old.f !== now.f) formulas = true;
    const content = contentChange(at, old, now);
    const style =
      textOf(old.style) === textOf(now.style) ? undefined : { before: seen(old.style), after: seen(now.style) };
    if (content === undefined && style === undefined) continue;
    const { top, left } = boxOf(at);
    changes.push({
      row: top,
      column: left,
      ...(content === undefined ? {} : { content }),
      ...(style === undefined ? {} : { style }),
    });
  }
  return { cells: changes, formulas };
}

function contentChange(at: string, old: Shown, now: Shown): CellChange["content"] {
  const answer = now.answer ?? null;
  if (now.f !== undefined) {
    const spill = now.spill === undefined ? {} : { spill: now.spill };
    if (now.f !== old.f) return { kind: "formula", formula: now.f, value: answer, ...spill };
    if (sameAnswer(old.answer, now.answer) && old.spill === now.spill) return undefined;
    // What filled a range and no longer does fills its own cell.
    const fills = now.spill ?? (old.spill === undefined ? undefined : at);
    return { kind: "answer", value: answer, ...(fills === undefined ? {} : { spill: fills }) };
  }
  if (now.answer !== undefined)
    return old.f === undefined && old.v === undefined && sameAnswer(old.answer, now.answer)
      ? undefined
      : { kind: "answer", value: answer };
  if (old.f === undefined && old.answer === undefined && (old.v ?? null) === (now.v ?? null)) return undefined;
  return { kind: "constant", value: now.v ?? null };
}

function shownCells(spec: SheetSpec): ReadonlyMap<string, Shown> {
  const cells = new Map<string, Shown>();
  const styleOf = ({ style }: CellSpec): StyleSpec =>
    style === undefined ? NO_STYLE : (spec.styles[style] ?? NO_STYLE);
  for (const cell of spec.cells) {
    const { at, v, f, spill } = cell;
    cells.set(at, {
      style: styleOf(cell),
      ...(v === undefined || v === null ? {} : { v }),
      ...(f === undefined ? {} : { f, answer: cornerOf(cell.cached) }),
      ...(spill === undefined ? {} : { spill }),
    });
  }
  for (const { at, spill, cached } of spec.cells) {
    if (spill === undefined || !isRows(cached)) continue;
    const { top, left } = boxOf(at);
    for (const [i, line] of cached.entries())
      for (const [j, answer] of line.entries()) {
        if (i === 0 && j === 0) continue;
        const address = addressOf(top + i, left + j);
        cells.set(address, { style: cells.get(address)?.style ?? NO_STYLE, answer });
      }
  }
  return cells;
}

function cornerOf(cached: CellSpec["cached"]): Cell {
  return (isRows(cached) ? cached[0]?.[0] : cached) ?? null;
}

function isRows(cached: CellSpec["cached"]): cached is readonly (readonly Cell[])[] {
  return Array.isArray(cached);
}

function sameAnswer(a: Cell | undefined, b: Cell | undefined): boolean {
  const code = (cell: Cell | undefined): unknown => (isCellError(cell) ? cell.error : (cell ?? null));
  return isCellError(a) === isCellError(b) && code(a) === code(b);
}

/** Whether a cell may be edited on a protected sheet shows in no grid. */
function seen({ unlocked: _, ...style }: StyleSpec): StyleSpec {
  return style;
}

function changedWidths(
  before: readonly number[],
  after: readonly number[],
  usual: number,
): ReadonlyMap<number, number> {
  const widths = new Map<number, number>();
  for (const [i, width] of after.entries()) if (width !== (before[i] ?? usual)) widths.set(i, width);
  return widths;
}

function changedHeights(
  before: Readonly<Record<number, number>>,
  after: Readonly<Record<number, number>>,
): ReadonlyMap<number, number | undefined> {
  const heights = new Map<number, number | undefined>();
  for (const row of new Set([...Object.keys(before), ...Object.keys(after)].map(Number)))
    if (before[row] !== after[row]) heights.set(row - 1, after[row]);
  return heights;
}

/** Data alike, in whatever order their keys stand. */
function same(a: unknown, b: unknown): boolean {
  return ordered(a) === ordered(b);
}

function ordered(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) =>
    typeof part === "object" && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}
