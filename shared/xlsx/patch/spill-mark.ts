import { SPILL_FUTURE, SPILL_MARK, SPILL_NAME, SPILL_TEXT, SPILL_TYPE } from "../write/fixed-parts.ts";
import {
  appendedTo,
  attributeOf,
  childNamed,
  type Element,
  elementTree,
  localName,
  prefixOf,
  type Splice,
  spliced,
  tagOf,
  withAttribute,
  withPrefix,
} from "./xml-tags.ts";

/** A metadata part that says what cells of spilling formulas point to, and the number they point with. */
export interface MarkedMetadata {
  readonly text: string;
  readonly mark: number;
}

/** The part with that entry, which other entries keep their numbers beside. Without a part, one of its own. */
export function withSpillMark(text: string | undefined): MarkedMetadata {
  if (text === undefined) return { text: SPILL_TEXT, mark: SPILL_MARK };
  const root = elementTree(text);
  const prefix = prefixOf(root.name);
  const types = childNamed(root, "metadataTypes");
  const cells = childNamed(root, "cellMetadata");
  const names = (types?.children ?? []).map((type) => attributeOf(tagOf(text, type), "name"));
  const known = names.indexOf(SPILL_NAME) + 1;
  const entry = known === 0 ? -1 : (cells?.children ?? []).findIndex((each) => pointsTo(text, each, known));
  if (entry >= 0) return { text, mark: entry + 1 };

  const type = known === 0 ? names.length + 1 : known;
  const mark = (cells?.children.length ?? 0) + 1;
  const after = (before: readonly string[]): number =>
    root.children.filter(({ name }) => before.includes(localName(name))).at(-1)?.end ?? root.openEnd;
  const grown = (name: string, item: string, count: number): readonly Splice[] => {
    const inside = withPrefix(item, prefix);
    const list = childNamed(root, name);
    if (list !== undefined) return appendedTo(text, list, inside, withAttribute(tagOf(text, list), "count", count));
    const at = after(ORDER.slice(0, ORDER.indexOf(name)));
    return [{ start: at, end: at, text: `<${prefix}${name} count="${count}">${inside}</${prefix}${name}>` }];
  };
  const future = after(ORDER.slice(0, ORDER.indexOf("cellMetadata")));
  return {
    text: spliced(text, [
      ...(known > 0
        ? []
        : [
            ...grown("metadataTypes", SPILL_TYPE, type),
            { start: future, end: future, text: withPrefix(SPILL_FUTURE, prefix) },
          ]),
      ...grown("cellMetadata", `<bk><rc t="${type}" v="0"/></bk>`, mark),
    ]),
    mark,
  };
}

/** The order of the lists in the part (ECMA-376 part 1, CT_Metadata). */
const ORDER = ["metadataTypes", "metadataStrings", "mdxMetadata", "futureMetadata", "cellMetadata", "valueMetadata"];

function pointsTo(text: string, entry: Element, type: number): boolean {
  return entry.children.some((rc) => {
    const tag = tagOf(text, rc);
    return Number(attributeOf(tag, "t")) === type && attributeOf(tag, "v") === "0";
  });
}
