import { attributeOf, localName, nextTag } from "./xml-tags.ts";

/** Tells an attribute of an element. */
export type AttributeReader = (name: string) => string | undefined;

/** How many elements of a name a part has, whatever its prefix. */
export interface TagCounts {
  readonly of: (name: string, where?: (attribute: AttributeReader) => boolean) => number;
}

/** Texts and cells, which a sheet has by the thousand and nobody counts. */
const PASSED = new Set(["c", "v", "f", "t", "is", "si", "r"]);

export function countsOf(text: string): TagCounts {
  const tags = new Map<string, string[]>();
  for (let tag = nextTag(text, 0); tag !== undefined; tag = nextTag(text, tag.end)) {
    const name = localName(tag.name);
    if (tag.kind === "close" || PASSED.has(name)) continue;
    const same = tags.get(name);
    const written = text.slice(tag.start, tag.end);
    if (same === undefined) tags.set(name, [written]);
    else same.push(written);
  }
  return {
    of: (name, where = () => true) =>
      (tags.get(name) ?? []).filter((tag) => where((attribute) => attributeOf(tag, attribute))).length,
  };
}
