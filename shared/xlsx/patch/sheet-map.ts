import { boxOf } from "../../ports/a1.ts";
import { refuse } from "../read/refusal.ts";
import { attributeOf, type Element, localName, nextTag, type Tag, tagOf } from "./xml-tags.ts";

/** A row or cell of a sheet part with its places in the text; cells have no children here. */
export interface Placed extends Element {
  /** 0-based row or column. */
  readonly number: number;
}

export interface SheetMap {
  /** The children of the worksheet element in order. */
  readonly sections: readonly Element[];
  readonly data: Element;
  readonly rows: readonly Placed[];
}

/** Where the sections and rows of a sheet part stand. */
export function sheetMap(text: string): SheetMap {
  const sections: Element[] = [];
  const rows: Placed[] = [];
  let root: Tag | undefined;
  let depth = 0;
  let row = -1;
  for (let tag = nextTag(text, 0); tag !== undefined; tag = nextTag(text, tag.end)) {
    if (tag.kind === "close") {
      depth -= 1;
      if (depth === 1) closeLast(sections, tag);
      else if (depth === 2) closeLast(rows, tag);
      continue;
    }
    if (depth === 0) root = tag;
    else if (depth === 1) sections.push(elementAt(tag));
    else if (depth === 2 && localName(tag.name) === "row" && inData(sections)) {
      const r = attributeOf(text.slice(tag.start, tag.end), "r");
      row = r === undefined ? row + 1 : Number(r) - 1;
      rows.push({ ...elementAt(tag), number: row });
    }
    if (tag.kind === "open") depth += 1;
  }
  const data = sections.find(({ name }) => localName(name) === "sheetData");
  if (root === undefined || data === undefined) return refuse("damaged", "A sheet of the file has no cells at all.");
  return { sections, data, rows };
}

/** The cells of a row, whatever stands in them. */
export function cellsOf(text: string, row: Placed): readonly Placed[] {
  const cells: Placed[] = [];
  let column = -1;
  let depth = 0;
  for (let at = row.openEnd; at < row.closeStart; ) {
    const tag = nextTag(text, at);
    if (tag === undefined || tag.start >= row.closeStart) break;
    at = tag.end;
    if (tag.kind === "close") {
      depth -= 1;
      if (depth === 0) closeLast(cells, tag);
      continue;
    }
    if (depth === 0 && localName(tag.name) === "c") {
      const r = attributeOf(text.slice(tag.start, tag.end), "r");
      column = r === undefined ? column + 1 : boxOf(r).left;
      cells.push({ ...elementAt(tag), number: column });
    }
    if (tag.kind === "open") depth += 1;
  }
  return cells;
}

/** The number of the format of a row's or cell's tag. */
export function styleOf(text: string, element: Element): number {
  return Number(attributeOf(tagOf(text, element), "s") ?? 0);
}

function inData(sections: readonly Element[]): boolean {
  return localName(sections.at(-1)?.name ?? "") === "sheetData";
}

function elementAt({ name, start, end, kind }: Tag): Element {
  return { name, start, openEnd: end, closeStart: end, end, isEmpty: kind === "empty", children: [] };
}

function closeLast(elements: readonly Element[], { start, end }: Tag): void {
  const last = elements.at(-1);
  if (last !== undefined && !last.isEmpty && last.end === last.openEnd) Object.assign(last, { closeStart: start, end });
}
