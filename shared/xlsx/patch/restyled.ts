import type { BorderSide, StyleSpec } from "../../ports/sheet-spec.ts";
import { USUAL_SIZE } from "../format-facts.ts";
import { alignmentFacts, borderSide, fileColor, fill, type GatheredStyles } from "../write/styles.ts";
import type { StyleChange } from "./changes.ts";
import { attributeOf, childNamed, elementTree, spliced, tagOf, withAttribute } from "./xml-tags.ts";

/** Elements of a styles part by their number, without a prefix. */
export interface StyleElements {
  readonly fonts: readonly string[];
  readonly borders: readonly string[];
  readonly cellXfs: readonly string[];
}

const PLAIN = '<xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>';

/** The number of the format that cells of this number get: changed where the look changed, as it was in all else. */
export function restyled(
  now: number,
  { before, after }: StyleChange,
  elements: StyleElements,
  { numberOf }: GatheredStyles,
): number {
  const changed = (...keys: readonly (keyof StyleSpec)[]): boolean =>
    keys.some((key) => JSON.stringify(before[key]) !== JSON.stringify(after[key]));
  let xf = elements.cellXfs[now] ?? PLAIN;
  const set = (fact: string, value: number, apply: string): void => {
    xf = onTag(xf, (tag) => withAttribute(withAttribute(tag, fact, value), apply, 1));
  };
  const idOf = (fact: string): number => Number(attributeOf(tagOf(xf, elementTree(xf)), fact) ?? 0);

  if (changed("bold", "italic", "size", "color")) {
    const font = elements.fonts[idOf("fontId")] ?? "<font/>";
    set("fontId", numberOf.font(changedFont(font, before, after)), "applyFont");
  }
  if (changed("fill")) set("fillId", after.fill === undefined ? 0 : numberOf.fill(fill(after.fill)), "applyFill");
  if (changed("border")) {
    const border = elements.borders[idOf("borderId")] ?? "<border><left/><right/><top/><bottom/><diagonal/></border>";
    set("borderId", numberOf.border(changedBorder(border, before, after)), "applyBorder");
  }
  if (changed("numFmt")) set("numFmtId", numberOf.numFmt(after.numFmt ?? "General"), "applyNumberFormat");
  if (changed("align", "valign", "wrap", "indent")) xf = changedAlignment(xf, before, after);
  return numberOf.cellXf(xf);
}

function changedFont(font: string, before: StyleSpec, after: StyleSpec): string {
  let changed = font;
  // The order of the elements is that in which the format lists them.
  if (before.size !== after.size)
    changed = withChild(changed, "sz", `<sz val="${after.size ?? USUAL_SIZE}"/>`, ["name"]);
  if (before.color !== after.color) {
    const color = after.color === undefined ? "" : `<color rgb="FF${fileColor(after.color)}"/>`;
    changed = withChild(changed, "color", color, ["name", "family", "charset", "scheme"]);
  }
  if (before.italic !== after.italic)
    changed = withChild(changed, "i", after.italic === true ? "<i/>" : "", [
      "strike",
      "condense",
      "extend",
      "outline",
      "shadow",
      "u",
      "vertAlign",
      "sz",
      "color",
      "name",
    ]);
  if (before.bold !== after.bold) changed = withChild(changed, "b", after.bold === true ? "<b/>" : "", []);
  return changed;
}

function changedBorder(border: string, before: StyleSpec, after: StyleSpec): string {
  let changed = border;
  for (const side of ["left", "right", "top", "bottom"] as const satisfies readonly BorderSide[])
    if (before.border?.[side] !== after.border?.[side])
      changed = withChild(changed, side, borderSide(side, after.border?.[side]), ["diagonal"]);
  return changed;
}

function changedAlignment(xf: string, before: StyleSpec, after: StyleSpec): string {
  const [was, is] = [alignmentFacts(before), alignmentFacts(after)];
  const element = elementTree(xf);
  const there = childNamed(element, "alignment");
  let tag = there === undefined ? "<alignment/>" : tagOf(xf, there);
  for (const key of ["horizontal", "vertical", "wrapText", "indent"] as const)
    if (was[key] !== is[key]) tag = withAttribute(tag, key, is[key]);
  const applied = onTag(withChild(xf, "alignment", tag, ["protection", "extLst"]), (open) =>
    withAttribute(open, "applyAlignment", 1),
  );
  return applied;
}

function onTag(element: string, change: (tag: string) => string): string {
  const { openEnd } = elementTree(element);
  return change(element.slice(0, openEnd)) + element.slice(openEnd);
}

/** The element with a child set, before the first of those named (or first of all), or without it. */
function withChild(element: string, name: string, child: string, before: readonly string[]): string {
  const tree = elementTree(element);
  const there = childNamed(tree, name);
  if (there !== undefined) return spliced(element, [{ start: there.start, end: there.end, text: child }]);
  if (child === "") return element;
  if (tree.isEmpty) return `${element.replace(/\s*\/>$/, ">")}${child}</${tree.name}>`;
  const next = before.length === 0 ? tree.children[0] : tree.children.find((each) => before.includes(each.name));
  const at = next?.start ?? tree.closeStart;
  return spliced(element, [{ start: at, end: at, text: child }]);
}
