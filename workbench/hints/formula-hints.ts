import { type MeantFunction, meantFunctions, meantWords, respelt } from "../../shared/catalogue/meant-function.ts";
import type { UnitSetName } from "../../src/basis/quantities.ts";
import type { PageGrid } from "../page-grid.ts";
import { ACT_KEY } from "../strip.ts";
import { callAtCaret } from "./call-at-caret.ts";
import { type Hint, hintOf } from "./hint.ts";
import { type Edges, hintPlace } from "./hint-place.ts";

/** The list of names that the grid itself shows while one is typed. */
const NAME_LIST = 'ul[data-u-comp="sheets-formula-editor"]';
const WIDEST = 640;
/** Height of the list of names before it scrolls, px. */
const TALLEST_LIST = 240;

/**
 * Tells what a call takes while it is typed into a cell, at the foot of the cells or at their head, where it covers
 * neither the cell nor the rows under it; the grid's list of names is moved there too. Nothing in it takes the focus
 * or a click. Esc puts it away for this cell.
 *
 * @param area the element that holds the cells
 */
export function startFormulaHints(
  { editing, inside }: Pick<PageGrid, "editing" | "inside">,
  area: () => Element | null,
  unitSet: () => UnitSetName,
): void {
  const box = document.createElement("div");
  box.id = "formula-hint";
  box.hidden = true;
  document.body.append(box);
  let putAway = "";
  let drawn = "";
  let meant: readonly MeantFunction[] = [];

  const update = (): void => {
    const edit = editing.now();
    if (edit === undefined) putAway = "";
    const edges = area()?.getBoundingClientRect();
    const list = document.querySelector(NAME_LIST);
    const isWanted = edit !== undefined && edges !== undefined && edit.cell !== putAway;
    if (isWanted && list !== null) placeList(list, edit.edges, edges);
    const call = isWanted && list === null ? callAtCaret(edit.text, edit.caret) : undefined;
    const hint = call === undefined ? undefined : hintOf(call, unitSet(), editing.functionFacts);
    meant = isWanted && list === null && edit.text.startsWith("=") ? meantFunctions(edit.text, inside.isFunction) : [];
    box.hidden = hint === undefined && meant.length === 0;
    if (box.hidden || edit === undefined || edges === undefined) return;
    const text = JSON.stringify([hint, meant]);
    if (text !== drawn) box.replaceChildren(...question(meant), ...(hint === undefined ? [] : lines(hint)), away());
    drawn = text;
    place(edit.edges, edges);
  };

  const place = (cell: Edges, edges: Edges): void => {
    box.style.maxHeight = "";
    box.style.width = `${Math.min(WIDEST, edges.right - edges.left - 24)}px`;
    const found = hintPlace(cell, edges, box.offsetHeight);
    box.hidden = found === undefined;
    if (found === undefined) return;
    box.style.left = `${edges.left + 8}px`;
    box.style.top = `${found.top}px`;
    box.style.maxHeight = `${found.maxHeight}px`;
  };

  const placeList = (list: Element, cell: Edges, edges: Edges): void => {
    const found = hintPlace(cell, edges, Math.min(TALLEST_LIST, list.scrollHeight + 2));
    const { style } = document.documentElement;
    style.setProperty("--names-left", `${edges.left + 8}px`);
    style.setProperty("--names-top", `${found?.top ?? edges.bottom}px`);
    style.setProperty("--names-height", `${found?.maxHeight ?? 0}px`);
  };

  let asked = 0;
  const soon = (): void => {
    cancelAnimationFrame(asked);
    asked = requestAnimationFrame(update);
  };
  editing.onChange(soon);
  window.addEventListener("resize", soon);
  new MutationObserver(soon).observe(document.body, { childList: true, subtree: true });
  // The first Esc is for the hint alone; the next leaves the cell as it was.
  editing.onKey(
    "Escape",
    () => !box.hidden,
    () => {
      putAway = editing.now()?.cell ?? "";
      box.hidden = true;
    },
  );
  editing.onKey(
    ACT_KEY,
    () => !box.hidden && meant.length > 0,
    () => {
      const edit = editing.now();
      if (edit === undefined) return;
      const text = respelt(edit.text, meant);
      editing.replace(text, edit.caret + text.length - edit.text.length);
    },
  );
}

function question(meant: readonly MeantFunction[]): readonly HTMLElement[] {
  return meant.length === 0 ? [] : [paragraph("call", `${meantWords(meant)} ${ACT_KEY} writes it so.`)];
}

function away(): HTMLElement {
  return paragraph("away", "Esc hides this.");
}

function lines({ name, parameters, at, about, example }: Hint): readonly HTMLElement[] {
  const head = document.createElement("p");
  head.className = "call";
  head.append(`${name}(`);
  for (const [i, parameter] of parameters.entries()) {
    const part = document.createElement(i === at ? "strong" : "span");
    part.textContent = parameter;
    head.append(...(i === 0 ? [] : [", "]), part);
  }
  head.append(")");
  return [
    head,
    paragraph("about", about === "" ? "" : `${about}.`),
    ...(example === undefined ? [] : [paragraph("example", `Example: ${example}`)]),
  ];
}

function paragraph(kind: string, text: string): HTMLElement {
  const made = document.createElement("p");
  made.className = kind;
  made.textContent = text;
  return made;
}
