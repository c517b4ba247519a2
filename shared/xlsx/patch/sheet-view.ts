import { addressOf } from "../../ports/a1.ts";
import { attributes } from "../xml-text.ts";
import type { SheetEdits } from "./sheet-edits.ts";
import type { SheetMap } from "./sheet-map.ts";
import {
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

/** What stands before the views of a sheet (ECMA-376 part 1, CT_Worksheet). */
const BEFORE_VIEWS = new Set(["sheetPr", "dimension"]);

/** Sets which rows stay in sight and whether grid lines show, in the first view of the sheet. Frozen columns stay. */
export function viewSplices(
  text: string,
  { sections, data }: SheetMap,
  { freezeRows, gridlines }: Pick<SheetEdits, "freezeRows" | "gridlines">,
): readonly Splice[] {
  if (freezeRows === undefined && gridlines === undefined) return [];
  const prefix = prefixOf(data.name);
  const there = sections.find(({ name }) => localName(name) === "sheetViews");
  const views =
    there === undefined
      ? withPrefix('<sheetViews><sheetView workbookViewId="0"/></sheetViews>', prefix)
      : outerOf(text, there);
  const changed = changedViews(views, prefix, freezeRows, gridlines);
  if (there !== undefined) return [{ start: there.start, end: there.end, text: changed }];
  const first = sections.find(({ name }) => !BEFORE_VIEWS.has(localName(name))) ?? data;
  return [{ start: first.start, end: first.start, text: changed }];
}

function changedViews(
  views: string,
  prefix: string,
  freezeRows: number | undefined,
  gridlines: boolean | undefined,
): string {
  const view = childNamed(elementTree(views), "sheetView");
  if (view === undefined) return views;
  let tag = tagOf(views, view);
  if (gridlines !== undefined) tag = withAttribute(tag, "showGridLines", gridlines ? undefined : 0);
  const panes = freezeRows === undefined ? undefined : withPrefix(panesOf(views, view, freezeRows), prefix);
  if (panes === undefined) return spliced(views, [{ start: view.start, end: view.openEnd, text: tag }]);
  const gone = [...childrenNamed(view, "pane"), ...childrenNamed(view, "selection")];
  if (view.isEmpty) {
    const whole = panes === "" ? tag : `${tag.replace(/\s*\/>$/, ">")}${panes}</${view.name}>`;
    return spliced(views, [{ start: view.start, end: view.end, text: whole }]);
  }
  return spliced(views, [
    { start: view.start, end: view.openEnd, text: tag + panes },
    ...gone.map(({ start, end }): Splice => ({ start, end, text: "" })),
  ]);
}

/** The frozen panes of a view, and the cell that is chosen in it, which goes to the pane that scrolls. */
function panesOf(views: string, view: Element, rows: number): string {
  const pane = childNamed(view, "pane");
  const was = pane === undefined ? "" : tagOf(views, pane);
  const isFrozen = /^frozen(Split)?$/.test(attributeOf(was, "state") ?? "");
  const columns = isFrozen ? Number(attributeOf(was, "xSplit") ?? 0) : 0;
  const scrolls = rows > 0 ? (columns > 0 ? "bottomRight" : "bottomLeft") : columns > 0 ? "topRight" : undefined;
  const frozen =
    scrolls === undefined
      ? ""
      : `<pane${attributes({
          xSplit: columns || undefined,
          ySplit: rows || undefined,
          topLeftCell: addressOf(rows, columns),
          activePane: scrolls,
          state: "frozen",
        })}/>`;
  const selections = childrenNamed(view, "selection").map((one) => tagOf(views, one));
  const active = attributeOf(was, "activePane") ?? "topLeft";
  const chosen =
    selections.find((one) => (attributeOf(one, "pane") ?? "topLeft") === active) ?? selections.at(-1) ?? "<selection/>";
  const cell = attributeOf(chosen, "activeCell");
  const selection = attributes({ pane: scrolls, activeCell: cell, sqref: attributeOf(chosen, "sqref") ?? cell });
  return selection === "" ? frozen : `${frozen}<selection${selection}/>`;
}
