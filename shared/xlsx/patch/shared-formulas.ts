import { type SharedFormula, sharedFormula } from "../formula-text.ts";
import { xmlText } from "../xml-text.ts";
import type { CellEdit } from "./sheet-edits.ts";
import { cellsOf, type Placed, type SheetMap } from "./sheet-map.ts";
import {
  attributeOf,
  childNamed,
  elementTree,
  nextTag,
  outerOf,
  prefixOf,
  resolved,
  type Splice,
  tagOf,
} from "./xml-tags.ts";

/** Formulas that are no longer filled from a cell which gets another content. */
export interface FormerlyShared {
  /** The formula element a cell gets of its own. */
  readonly formulaOf: (edit: Pick<CellEdit, "row" | "column">) => string | undefined;
  /** Of cells that are not edited otherwise. */
  readonly splices: readonly Splice[];
}

interface First {
  readonly row: number;
  readonly column: number;
  readonly formula: SharedFormula;
}

/**
 * A filled-down formula stands once, in the first cell of its group; the others name the group. Where that cell gets
 * another content, each of the others gets the formula written out.
 */
export function sharedFormulas(
  text: string,
  map: SheetMap,
  edits: readonly CellEdit[],
  cells: ReadonlyMap<number, readonly Placed[]>,
): FormerlyShared {
  const firsts = new Map<string, First>();
  for (const { row, column, content } of edits) {
    const cell = content === undefined ? undefined : cells.get(row)?.find(({ number }) => number === column);
    if (cell === undefined || content?.kind === "answer") continue;
    const outer = outerOf(text, cell);
    const f = childNamed(elementTree(outer), "f");
    if (f === undefined || attributeOf(tagOf(outer, f), "t") !== "shared") continue;
    const formula = resolved(outer.slice(f.openEnd, f.closeStart));
    const group = attributeOf(tagOf(outer, f), "si");
    if (formula !== "" && group !== undefined) firsts.set(group, { row, column, formula: sharedFormula(formula) });
  }
  if (firsts.size === 0) return { formulaOf: () => undefined, splices: [] };

  const edited = new Set(edits.map(({ row, column }) => `${row},${column}`));
  const formulas = new Map<string, string>();
  const splices: Splice[] = [];
  const prefix = prefixOf(map.data.name);
  for (const row of map.rows)
    for (const cell of cellsOf(text, row)) {
      const f = nextTag(text, cell.openEnd);
      if (f === undefined || f.start >= cell.end || f.name !== `${prefix}f`) continue;
      const tag = text.slice(f.start, f.end);
      const first = attributeOf(tag, "t") === "shared" ? firsts.get(attributeOf(tag, "si") ?? "") : undefined;
      if (first === undefined || (first.row === row.number && first.column === cell.number)) continue;
      const moved = first.formula(row.number - first.row, cell.number - first.column);
      const element = `<${prefix}f>${xmlText(moved)}</${prefix}f>`;
      const key = `${row.number},${cell.number}`;
      formulas.set(key, element);
      const end = f.kind === "empty" ? f.end : (nextTag(text, f.end)?.end ?? f.end);
      if (!edited.has(key)) splices.push({ start: f.start, end, text: element });
    }
  return { formulaOf: ({ row, column }) => formulas.get(`${row},${column}`), splices };
}
