import { greatestOf, leastOf } from "../../../src/numeric/extremes.ts";
import { boxOf, rangeOf } from "../../ports/a1.ts";
import { attributes } from "../xml-text.ts";
import { columnWidths } from "./column-widths.ts";
import { type EditTables, editedCell, newCell, standingCell } from "./edited-cell.ts";
import { sharedFormulas } from "./shared-formulas.ts";
import type { CellEdit, SheetEdits } from "./sheet-edits.ts";
import { cellsOf, type Placed, type SheetMap, sheetMap, styleOf } from "./sheet-map.ts";
import { viewSplices } from "./sheet-view.ts";
import {
  appendedTo,
  attributeOf,
  childrenNamed,
  type Element,
  elementTree,
  localName,
  outerOf,
  prefixOf,
  type Splice,
  spliced,
  tagOf,
  withAttribute,
  withPrefix,
} from "./xml-tags.ts";

/** The text of a sheet part with the edits made in it and all else as it was. */
export function editedSheet(text: string, edits: SheetEdits, tables: EditTables): string {
  const map = sheetMap(text);
  return spliced(text, [
    ...dimension(text, map, edits.cells),
    ...viewSplices(text, map, edits),
    ...(edits.widths === undefined ? [] : columnWidths(text, map, edits.widths)),
    ...cellSplices(text, map, edits, tables),
    ...(edits.merges === undefined ? [] : mergeSplices(map, edits.merges)),
  ]);
}

function cellSplices(text: string, map: SheetMap, edits: SheetEdits, tables: EditTables): readonly Splice[] {
  const prefix = prefixOf(map.data.name);
  const byRow = new Map<number, CellEdit[]>();
  for (const edit of edits.cells) {
    const row = byRow.get(edit.row);
    if (row === undefined) byRow.set(edit.row, [edit]);
    else row.push(edit);
  }
  for (const row of edits.heights?.keys() ?? []) if (!byRow.has(row)) byRow.set(row, []);
  const rows = new Map(map.rows.map((row) => [row.number, row]));
  const cells = new Map(
    [...byRow.keys()].map((number) => {
      const row = rows.get(number);
      return [number, row === undefined ? [] : cellsOf(text, row)] as const;
    }),
  );
  const shared = sharedFormulas(text, map, edits.cells, cells);
  const columnStyle = columnStyles(text, map);
  const splices: Splice[] = [...shared.splices];
  const inserted: { readonly row: number; readonly text: string }[] = [];

  for (const [number, inRow] of byRow) {
    const row = rows.get(number);
    const height = edits.heights?.has(number) === true ? { points: edits.heights.get(number) } : undefined;
    const rowTag = row === undefined ? `<${prefix}row r="${number + 1}"/>` : tagOf(text, row);
    const rowStyle =
      attributeOf(rowTag, "customFormat") === "1" ? Number(attributeOf(rowTag, "s") ?? Number.NaN) : Number.NaN;
    const standing = cells.get(number) ?? [];
    const there = new Map(standing.map((cell) => [cell.number, cell]));
    const fresh: { readonly column: number; readonly text: string }[] = [];
    for (const edit of inRow) {
      const cell = there.get(edit.column);
      if (cell === undefined) {
        const usual = Number.isNaN(rowStyle) ? columnStyle(edit.column) : rowStyle;
        const element = newElement(edit, usual, prefix, tables);
        if (element !== undefined) fresh.push({ column: edit.column, text: element });
      } else splices.push(changed(text, cell, edit, shared.formulaOf(edit), prefix, tables));
    }
    fresh.sort((a, b) => a.column - b.column);
    const tag = withHeight(withSpans(rowTag, fresh), height);
    if (row === undefined) {
      const inside = fresh.map((cell) => cell.text).join("");
      if (inside !== "") inserted.push({ row: number, text: `${tag.replace(/\/>$/, ">")}${inside}</${prefix}row>` });
      else if (tag !== rowTag) inserted.push({ row: number, text: tag });
      continue;
    }
    const last = fresh.filter(({ column }) => !standing.some((cell) => cell.number > column));
    splices.push(
      ...(last.length > 0
        ? appendedTo(text, row, last.map((cell) => cell.text).join(""), tag)
        : [{ start: row.start, end: row.openEnd, text: tag }]),
    );
    for (const each of fresh) {
      const next = standing.find((cell) => cell.number > each.column);
      if (next !== undefined) splices.push({ start: next.start, end: next.start, text: each.text });
    }
  }
  return [...splices, ...insertedRows(text, map, inserted)];
}

function changed(
  text: string,
  cell: Placed,
  { content, style }: CellEdit,
  formula: string | undefined,
  prefix: string,
  tables: EditTables,
): Splice {
  const { start, end, openEnd } = cell;
  const now = styleOf(text, cell);
  const number = style === undefined ? now : style(now);
  if (content === undefined)
    return { start, end: openEnd, text: withAttribute(tagOf(text, cell), "s", number || undefined) };
  const standing = standingCell(text, cell);
  const kept = formula === undefined ? standing : { ...standing, formula };
  return { start, end, text: editedCell(kept, content, number, prefix, tables) };
}

/** Nothing for a place that is to hold nothing and has no format of its own. */
function newElement(
  { row, column, content, style }: CellEdit,
  usual: number,
  prefix: string,
  tables: EditTables,
): string | undefined {
  const number = style === undefined ? usual : style(usual);
  if (content === undefined || (content.kind !== "formula" && content.value === null))
    return number === usual ? undefined : newCell(row, column, number, prefix).tag;
  return editedCell(newCell(row, column, number, prefix), content, number, prefix, tables);
}

function insertedRows(
  text: string,
  { data, rows }: SheetMap,
  inserted: readonly { readonly row: number; readonly text: string }[],
): readonly Splice[] {
  if (inserted.length === 0) return [];
  const ordered = [...inserted].sort((a, b) => a.row - b.row);
  const lastRow = rows.reduce((most, { number }) => Math.max(most, number), -1);
  const before = ordered.map((each) => ({
    each,
    next: each.row > lastRow ? undefined : rows.find(({ number }) => number > each.row),
  }));
  const last = before.filter(({ next }) => next === undefined).map(({ each }) => each.text);
  return [
    ...before.flatMap(({ each, next }) =>
      next === undefined ? [] : [{ start: next.start, end: next.start, text: each.text }],
    ),
    ...(last.length === 0 ? [] : appendedTo(text, data, last.join(""))),
  ];
}

/** Where a row says from which to which column it has cells, the new ones are among them. */
function withSpans(tag: string, fresh: readonly { readonly column: number }[]): string {
  const [from, to] = (attributeOf(tag, "spans") ?? "").split(":").map(Number);
  if (from === undefined || to === undefined || fresh.length === 0) return tag;
  const columns = fresh.map(({ column }) => column + 1);
  const spans = `${Math.min(from, leastOf(columns))}:${Math.max(to, greatestOf(columns))}`;
  return withAttribute(tag, "spans", spans);
}

function withHeight(tag: string, height: { readonly points: number | undefined } | undefined): string {
  if (height === undefined) return tag;
  const sized = withAttribute(tag, "ht", height.points);
  return withAttribute(sized, "customHeight", height.points === undefined ? undefined : 1);
}

function columnStyles(text: string, { sections }: SheetMap): (column: number) => number {
  const cols = sections.find(({ name }) => localName(name) === "cols");
  if (cols === undefined) return () => 0;
  const outer = outerOf(text, cols);
  const runs = childrenNamed(elementTree(outer), "col").map((col) => {
    const number = (name: string): number => Number(attributeOf(tagOf(outer, col), name) ?? 0);
    return { min: number("min"), max: number("max"), style: number("style") };
  });
  return (column) => runs.find(({ min, max }) => min <= column + 1 && column + 1 <= max)?.style ?? 0;
}

/** The used range grows with the cells that are written. */
function dimension(text: string, { sections }: SheetMap, cells: readonly CellEdit[]): readonly Splice[] {
  const element = sections.find(({ name }) => localName(name) === "dimension");
  const written = cells.filter(({ content }) => content !== undefined && content.value !== null);
  const ref = element === undefined ? undefined : attributeOf(tagOf(text, element), "ref");
  if (element === undefined || ref === undefined || written.length === 0) return [];
  let { top, left, bottom, right } = boxOf(ref);
  for (const { row, column } of written) {
    top = Math.min(top, row);
    left = Math.min(left, column);
    bottom = Math.max(bottom, row);
    right = Math.max(right, column);
  }
  const grown = rangeOf({ top, left, bottom, right });
  if (grown === rangeOf(boxOf(ref))) return [];
  return [{ start: element.start, end: element.openEnd, text: withAttribute(tagOf(text, element), "ref", grown) }];
}

/** What may stand between the cells and the merged ranges (ECMA-376 part 1, CT_Worksheet). */
const BEFORE_MERGES = new Set([
  "sheetData",
  "sheetCalcPr",
  "sheetProtection",
  "protectedRanges",
  "scenarios",
  "autoFilter",
  "sortState",
  "dataConsolidate",
  "customSheetViews",
]);

function mergeSplices({ sections, data }: SheetMap, merges: readonly string[]): readonly Splice[] {
  const there: Element | undefined = sections.find(({ name }) => localName(name) === "mergeCells");
  const lines = merges.map((ref) => `<mergeCell${attributes({ ref })}/>`).join("");
  const element =
    merges.length === 0
      ? ""
      : withPrefix(`<mergeCells count="${merges.length}">${lines}</mergeCells>`, prefixOf(data.name));
  if (there !== undefined) return [{ start: there.start, end: there.end, text: element }];
  const at = sections.filter(({ name }) => BEFORE_MERGES.has(localName(name))).at(-1)?.end ?? data.end;
  return [{ start: at, end: at, text: element }];
}
