import { greatestOf } from "../../../src/numeric/extremes.ts";
import { attributes } from "../xml-text.ts";
import {
  appendedTo,
  attributeOf,
  childNamed,
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

/** A sheet as the workbook part lists it. */
export interface ListedSheet {
  readonly name: string;
  /** By which the workbook points to its part. */
  readonly relation: string;
  /** "visible", "hidden" or "veryHidden". */
  readonly state: string;
}

export interface AddedSheet {
  readonly name: string;
  readonly relation: string;
  readonly hidden?: boolean;
}

export function listedSheets(text: string): readonly ListedSheet[] {
  return sheetElements(text).map((element) => {
    const tag = tagOf(text, element);
    return {
      name: attributeOf(tag, "name") ?? "",
      relation: attributeOf(tag, idName(tag)) ?? "",
      state: attributeOf(tag, "state") ?? "visible",
    };
  });
}

/** Whether days are counted from 1904. */
export function countsFrom1904(text: string): boolean {
  const element = childNamed(elementTree(text), "workbookPr");
  const value = element === undefined ? undefined : attributeOf(tagOf(text, element), "date1904");
  return value === "1" || value === "true";
}

/** A place in the new order of sheets: one that is there, by its present place, or one that is added. */
export type SheetPlace = number | AddedSheet;

/**
 * The workbook part with its sheets in another order and more of them, and names added. What goes by the place of a
 * sheet (names of one sheet, the sheet in front) goes along.
 *
 * @param names elements of names, for places in the new order
 */
export function workbookText(text: string, order: readonly SheetPlace[], names: readonly string[]): string {
  const root = elementTree(text);
  const prefix = prefixOf(root.name);
  const listed = sheetElements(text);
  const idAttribute = idName(tagOf(text, listed[0] as Element));
  // Some programs declare the prefix of the relation on each sheet alone.
  const declaration = `xmlns:${idAttribute.split(":")[0]}`;
  const local = attributeOf(tagOf(text, listed[0] as Element), declaration);
  const declared = local === undefined ? {} : { [declaration]: local };
  let id = Math.max(0, greatestOf(listed.map((element) => Number(attributeOf(tagOf(text, element), "sheetId") ?? 0))));
  const written = order.map((place) => {
    if (typeof place === "number") return outerOf(text, listed[place] as Element);
    id += 1;
    const facts = {
      name: place.name,
      sheetId: id,
      state: place.hidden === true ? "hidden" : undefined,
      ...declared,
      [idAttribute]: place.relation,
    };
    return `<${prefix}sheet${attributes(facts)}/>`;
  });
  const moved = (was: number): number => order.indexOf(was);
  const first = listed[0] as Element;
  const last = listed.at(-1) as Element;
  return spliced(text, [
    { start: first.start, end: last.end, text: written.join("") },
    ...viewSplices(text, root, moved),
    ...nameSplices(text, root, moved, names),
  ]);
}

function sheetElements(text: string): readonly Element[] {
  const sheets = childNamed(elementTree(text), "sheets");
  return sheets === undefined ? [] : childrenNamed(sheets, "sheet");
}

/** The attribute that holds the relation, with whatever prefix the part has for it. */
function idName(tag: string): string {
  return /\s([\w.-]+:id)\s*=/.exec(tag.replace(/"[^"]*"|'[^']*'/g, '""'))?.[1] ?? "r:id";
}

function viewSplices(text: string, root: Element, moved: (was: number) => number): readonly Splice[] {
  const views = childNamed(root, "bookViews");
  return (views === undefined ? [] : childrenNamed(views, "workbookView")).flatMap((view) => {
    let tag = tagOf(text, view);
    for (const name of ["firstSheet", "activeTab"]) {
      const value = attributeOf(tag, name);
      const now = value === undefined ? -1 : moved(Number(value));
      if (now >= 0 && now !== Number(value)) tag = withAttribute(tag, name, now);
    }
    return tag === tagOf(text, view) ? [] : [{ start: view.start, end: view.openEnd, text: tag }];
  });
}

/** What stands before the names (ECMA-376 part 1, CT_Workbook). */
const BEFORE_NAMES = ["sheets", "functionGroups", "externalReferences"];

function nameSplices(
  text: string,
  root: Element,
  moved: (was: number) => number,
  names: readonly string[],
): readonly Splice[] {
  const there = childNamed(root, "definedNames");
  const relocated = (there?.children ?? []).flatMap((name): readonly Splice[] => {
    const tag = tagOf(text, name);
    const place = attributeOf(tag, "localSheetId");
    const now = place === undefined ? -1 : moved(Number(place));
    if (now < 0 || now === Number(place)) return [];
    return [{ start: name.start, end: name.openEnd, text: withAttribute(tag, "localSheetId", now) }];
  });
  if (names.length === 0) return relocated;
  const prefix = prefixOf(root.name);
  const inside = withPrefix(names.join(""), prefix);
  if (there !== undefined) return [...relocated, ...appendedTo(text, there, inside)];
  const before = root.children.filter(({ name }) => BEFORE_NAMES.includes(localName(name))).at(-1);
  const at = before?.end ?? root.closeStart;
  return [{ start: at, end: at, text: `<${prefix}definedNames>${inside}</${prefix}definedNames>` }];
}
