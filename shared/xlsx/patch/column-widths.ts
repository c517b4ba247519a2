import { COLUMN_MARGIN } from "../format-facts.ts";
import type { SheetMap } from "./sheet-map.ts";
import {
  attributeOf,
  childrenNamed,
  elementTree,
  localName,
  outerOf,
  prefixOf,
  type Splice,
  tagOf,
  withAttribute,
} from "./xml-tags.ts";

/** Sets widths, in characters by 0-based column. A run of columns is parted round one that gets another width. */
export function columnWidths(
  text: string,
  { sections, data }: SheetMap,
  widths: ReadonlyMap<number, number>,
): readonly Splice[] {
  if (widths.size === 0) return [];
  const prefix = prefixOf(data.name);
  const there = sections.find(({ name }) => localName(name) === "cols");
  const outer = there === undefined ? "" : outerOf(text, there);
  let runs: readonly Run[] =
    there === undefined ? [] : childrenNamed(elementTree(outer), "col").map((col) => runOf(tagOf(outer, col)));
  for (const [column, width] of widths) runs = withWidth(runs, column + 1, width, prefix);
  const tags = [...runs]
    .sort((a, b) => a.min - b.min)
    .map(({ min, max, tag }) => withAttribute(withAttribute(tag, "min", min), "max", max));
  const element = `<${prefix}cols>${tags.join("")}</${prefix}cols>`;
  return there === undefined
    ? [{ start: data.start, end: data.start, text: element }]
    : [{ start: there.start, end: there.end, text: element }];
}

interface Run {
  /** 1-based, both inside. */
  readonly min: number;
  readonly max: number;
  readonly tag: string;
}

function runOf(tag: string): Run {
  const bare = tag.replace(/>$/, (end) => (tag.endsWith("/>") ? end : "/>"));
  return { min: Number(attributeOf(tag, "min")), max: Number(attributeOf(tag, "max")), tag: bare };
}

function withWidth(runs: readonly Run[], column: number, width: number, prefix: string): readonly Run[] {
  const run = runs.find(({ min, max }) => min <= column && column <= max);
  const facts = { width: width + COLUMN_MARGIN, customWidth: 1, hidden: undefined, bestFit: undefined };
  let tag = run?.tag ?? `<${prefix}col min="${column}" max="${column}"/>`;
  for (const [name, value] of Object.entries(facts)) tag = withAttribute(tag, name, value);
  const own = { min: column, max: column, tag };
  if (run === undefined) return [...runs, own];
  return runs.flatMap((other) =>
    other === run
      ? [{ ...run, max: column - 1 }, own, { ...run, min: column + 1 }].filter(({ min, max }) => min <= max)
      : [other],
  );
}
