import { meantFunctions, meantWords, respelt } from "../shared/catalogue/meant-function.ts";
import { isCellError } from "../shared/cells/cell.ts";
import { addressOf } from "../shared/ports/a1.ts";
import { quotedSheetName } from "../shared/ports/sheet-name.ts";
import type { PageGrid } from "./page-grid.ts";

/** The strip under the grid: what the selected cell's error means and what its functions remark. */
export interface Strip {
  /** Says something of the workbook; stands until another cell is selected. */
  readonly say: (text: string, kind?: "plain" | "error") => void;
}

interface Line {
  readonly kind: "plain" | "error" | "note";
  readonly text: string;
  /** What the reader may have done about it, by a click or by `ACT_KEY`. */
  readonly action?: { readonly label: string; readonly act: () => Promise<unknown> };
}

/** Does what a message offers. Free in browsers and in the grid. */
export const ACT_KEY = "F8";

const ELSEWHERE = "The error comes from a cell this formula reads, or from a function of the grid itself.";

export function startStrip(strip: HTMLElement, { api, inside, messages, host }: PageGrid): Strip {
  let shown = "";
  let selected = "";
  let said = false;
  let offered: Line["action"];
  const act = (): void => {
    const action = offered;
    offered = undefined;
    action?.act().catch((fault) => console.error(fault));
  };
  const show = (address: string, lines: readonly Line[]): void => {
    const state = JSON.stringify([address, lines]);
    if (state === shown) return;
    shown = state;
    offered = lines.find(({ action }) => action !== undefined)?.action;
    const cell = document.createElement("b");
    cell.textContent = address;
    const list = document.createElement("ul");
    for (const { kind, text, action } of lines) {
      const item = document.createElement("li");
      item.className = kind;
      item.textContent = text;
      if (action !== undefined) item.append(" ", buttonOf(action.label, act));
      list.append(item);
    }
    strip.replaceChildren(cell, list);
  };

  const update = async (): Promise<void> => {
    const workbook = api.getActiveWorkbook();
    const cell = workbook?.getActiveCell();
    if (workbook === null || cell === null || cell === undefined) return;
    const sheet = workbook.getActiveSheet();
    const [row, column] = [cell.getRow(), cell.getColumn()];
    const address = addressOf(row, column);
    const place = { sheet: sheet.getSheetId(), row, column };
    const where = `${workbook.getId()} ${place.sheet} ${address}`;
    if (where === selected && said) return;
    selected = where;
    said = false;
    const reference = `${quotedSheetName(sheet.getSheetName())}!${address}`;
    const [[[value] = []] = []] = await host.read([reference]);
    // Another cell may have been selected, or something said, while this one was read.
    if (where !== selected || said) return;
    const lines: Line[] = [];
    const formula = inside.formulaOf(workbook.getId(), place.sheet, row, column);
    const meant = meantFunctions(formula ?? "", inside.isFunction);
    if (isCellError(value)) {
      const asks = value.error === "#NAME?" && meant.length > 0;
      const text = `${value.error}  ${value.message ?? (asks ? meantWords(meant) : ELSEWHERE)}`;
      const write = (): Promise<boolean> => host.selection.enter(reference, respelt(formula ?? "", meant), true);
      lines.push({
        kind: "error",
        text,
        ...(asks ? { action: { label: `Write it so (${ACT_KEY})`, act: write } } : {}),
      });
    }
    if (formula !== undefined && formula !== "") {
      for (const text of messages.notesAt(place)) lines.push({ kind: "note", text });
      if (lines.length === 0 && typeof value === "number") lines.push({ kind: "plain", text: `= ${value}` });
    }
    show(address, lines);
  };
  const refresh = (): void => {
    update().catch((fault) => console.error(fault));
  };
  // The grid's own selection events pass over some clicks.
  api.addEvent(api.Event.CommandExecuted, ({ id }) => {
    if (id === "sheet.operation.set-selections") refresh();
  });
  api.addEvent(api.Event.ActiveSheetChanged, refresh);
  host.onCalculated(refresh);
  window.addEventListener("keydown", (event) => {
    const isElsewhere = (event.target as Element).closest("#pane, dialog") !== null;
    if (event.key !== ACT_KEY || offered === undefined || isElsewhere) return;
    if (api.getActiveWorkbook()?.isCellEditing() === true) return;
    event.preventDefault();
    act();
  });

  return {
    say: (text, kind = "plain") => {
      said = true;
      show("", [{ kind, text }]);
    },
  };
}

function buttonOf(label: string, act: () => void): HTMLButtonElement {
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = label;
  button.addEventListener("click", act);
  return button;
}
