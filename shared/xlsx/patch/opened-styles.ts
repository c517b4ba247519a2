import { isDateFormat } from "../read/styles-part.ts";
import { type GatheredStyles, gatheredStyles, type StyleLists } from "../write/styles.ts";
import type { StyleChange } from "./changes.ts";
import { restyled } from "./restyled.ts";
import {
  appendedTo,
  attributeOf,
  childNamed,
  childTexts,
  type Element,
  elementTree,
  localName,
  prefixOf,
  type Splice,
  spliced,
  tagOf,
  withAttribute,
  withoutPrefix,
  withPrefix,
} from "./xml-tags.ts";

/** The styles of an opened file, to which more are added. What is there keeps its place and number. */
export interface OpenedStyles extends GatheredStyles {
  /** Whether numbers in a cell of that format are dates or times of day. */
  readonly isDate: (style: number) => boolean;
  readonly restyled: (now: number, change: StyleChange) => number;
  /** The part with what was added, or nothing where nothing was. */
  readonly text: () => string | undefined;
}

/** The order of the lists in the part (ECMA-376 part 1, CT_Stylesheet). */
const ORDER = ["numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs", "cellStyles", "dxfs"];

export function openedStyles(text: string): OpenedStyles {
  const root = elementTree(text);
  const prefix = prefixOf(root.name);
  const items = (name: string): readonly string[] => {
    const section = childNamed(root, name);
    return section === undefined ? [] : childTexts(text, section).map((item) => withoutPrefix(item, prefix));
  };
  const elements = { fonts: items("fonts"), borders: items("borders"), cellXfs: items("cellXfs") };
  const gathered = gatheredStyles({
    fonts: elements.fonts.length,
    fills: items("fills").length,
    borders: elements.borders.length,
    cellXfs: elements.cellXfs.length,
    dxfs: items("dxfs").length,
    numFmts: new Map(
      items("numFmts").map((item) => [attributeOf(item, "formatCode") ?? "", Number(attributeOf(item, "numFmtId"))]),
    ),
  });
  // Without a list of formats, cells have the one that the first of a new list would be.
  if (elements.cellXfs.length === 0) gathered.ofCell({}, false);
  const isDate = (style: number): boolean => {
    const xf = elements.cellXfs[style] ?? gathered.added().cellXfs[style - elements.cellXfs.length] ?? "";
    const formats = [...items("numFmts"), ...gathered.added().numFmts];
    const codes = formats.map(
      (item) => [Number(attributeOf(item, "numFmtId")), attributeOf(item, "formatCode") ?? ""] as const,
    );
    return isDateFormat(Number(attributeOf(xf, "numFmtId") ?? 0), new Map(codes));
  };
  return {
    ...gathered,
    isDate,
    restyled: (now, change) => restyled(now, change, elements, gathered),
    text: () => {
      const added = gathered.added();
      const names = (Object.keys(added) as (keyof StyleLists)[]).filter((name) => added[name].length > 0);
      if (names.length === 0) return undefined;
      return spliced(
        text,
        names.flatMap((name) => listSplices(text, root, name, added[name], prefix)),
      );
    },
  };
}

function listSplices(
  text: string,
  root: Element,
  name: string,
  added: readonly string[],
  prefix: string,
): readonly Splice[] {
  const inside = withPrefix(added.join(""), prefix);
  const there = childNamed(root, name);
  if (there !== undefined) {
    const count = there.children.length + added.length;
    return appendedTo(text, there, inside, withAttribute(tagOf(text, there), "count", count));
  }
  const before = ORDER.slice(0, ORDER.indexOf(name));
  const last = root.children.filter((child) => before.includes(localName(child.name))).at(-1);
  const at = last?.end ?? root.openEnd;
  return [{ start: at, end: at, text: `<${prefix}${name} count="${added.length}">${inside}</${prefix}${name}>` }];
}
