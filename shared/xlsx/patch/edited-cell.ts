import type { Cell } from "../../cells/cell.ts";
import { addressOf } from "../../ports/a1.ts";
import { answerContent, type CellTexts } from "../write/cell-elements.ts";
import { attributes, xmlText } from "../xml-text.ts";
import type { CellContent } from "./sheet-edits.ts";
import {
  attributeOf,
  childNamed,
  type Element,
  elementTree,
  outerOf,
  tagOf,
  withAttribute,
  withPrefix,
} from "./xml-tags.ts";

/** What the cells of an opened file are written with. */
export interface EditTables {
  readonly texts: CellTexts;
  /** The number in the file's metadata by which a cell says that its formula may fill further cells. */
  readonly spillMark: () => number;
  /** A number as the file counts it in a cell of that format: some count days from 1904. */
  readonly storedNumber: (value: number, style: number) => number;
}

/** A cell as it stands in a file, with the formula it holds. */
export interface StandingCell {
  readonly tag: string;
  readonly style: number;
  readonly formula: string | undefined;
  readonly after: string;
}

export function standingCell(text: string, cell: Element): StandingCell {
  const outer = outerOf(text, cell);
  const element = elementTree(outer);
  const [formula, after] = ["f", "extLst"].map((name) => childNamed(element, name));
  const tag = tagOf(outer, element);
  return {
    tag: cell.isEmpty ? tag : tag.replace(/>$/, "/>"),
    style: Number(attributeOf(tag, "s") ?? 0),
    formula: formula === undefined ? undefined : outerOf(outer, formula),
    after: after === undefined ? "" : outerOf(outer, after),
  };
}

/** A place without a cell yet. */
export function newCell(row: number, column: number, style: number, prefix: string): StandingCell {
  const facts = attributes({ r: addressOf(row, column), s: style || undefined });
  return { tag: `<${prefix}c${facts}/>`, style, formula: undefined, after: "" };
}

/** The cell's element with other content, in another format. Nothing is left of its old answer or text. */
export function editedCell(
  standing: StandingCell,
  content: CellContent,
  style: number,
  prefix: string,
  tables: EditTables,
): string {
  const formula = formulaOf(standing, content, prefix);
  // A formula that answers with nothing shows an empty text.
  const value = content.value ?? (formula === "" ? null : "");
  const { type, content: held } = heldAs(value, content.kind, style, tables);
  const facts = { s: style || undefined, t: type, cm: markOf(standing, content, tables), vm: undefined };
  let tag = standing.tag;
  for (const [name, fact] of Object.entries(facts)) tag = withAttribute(tag, name, fact);
  const inside = formula + withPrefix(held, prefix) + standing.after;
  return inside === "" ? tag : `${tag.replace(/\s*\/>$/, ">")}${inside}</${prefix}c>`;
}

function formulaOf({ tag, formula = "" }: StandingCell, content: CellContent, prefix: string): string {
  if (content.kind === "constant") return "";
  if (content.kind === "formula") {
    const range = content.fills === undefined ? {} : { t: "array", ref: content.fills };
    return withPrefix(`<f${attributes(range)}>${xmlText(content.formula)}</f>`, prefix);
  }
  // An array formula of the old kind keeps the range it was entered over, unless something stands in its way there.
  const { fills } = content;
  const isFree = attributeOf(tag, "cm") !== undefined || fills?.includes(":") === false;
  return fills !== undefined && isFree
    ? formula.replace(/^<[^>]*>/, (open) => withAttribute(open, "ref", fills))
    : formula;
}

function markOf({ tag }: StandingCell, content: CellContent, tables: EditTables): string | number | undefined {
  if (content.kind === "answer") return attributeOf(tag, "cm");
  return content.kind === "formula" && content.fills !== undefined ? tables.spillMark() : undefined;
}

function heldAs(value: Cell, kind: CellContent["kind"], style: number, tables: EditTables) {
  if (typeof value === "number") return answerContent(tables.storedNumber(value, style));
  if (kind !== "constant" || typeof value !== "string") return answerContent(value);
  return value === "" ? answerContent(null) : tables.texts(value);
}
