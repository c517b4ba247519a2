import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { type LineKey, type Place, placeKey } from "../../../shared/duty/duty-text.ts";
import { inOneLine } from "../../../shared/duty/sums/amount-list.ts";
import { asTyped } from "../../../shared/duty/sums/written-sum.ts";
import { amountText } from "../../../shared/text/words.ts";
import { printedUnit, type Quantity, type UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import { boxId, type PaneContext } from "../context.ts";
import { pieceAt, withFitting, withPiece } from "../fitting-piece.ts";
import type { RowWorked } from "../head-worked.ts";
import { fittingsFor, isFittingName, pipesFor } from "../known-names.ts";
import { LINE_COLUMNS, type LineColumn, pastedCells } from "../line-paste.ts";
import { matching } from "../names.ts";
import { LINE_TITLES, type OpenList } from "../state.ts";
import { comboboxView } from "./combobox.ts";
import { boxFindingsView, findingsAt, findingsView, mendingOf } from "./findings.ts";
import { listQuestionView, sumLineOf, sumLineView } from "./sum-line.ts";

const COLUMN_LABELS: Readonly<Record<LineColumn, string>> = {
  pipe: "Pipe",
  length: "Length",
  fittings: "Fittings",
  share: "Share",
  level: "Level",
};

const COLUMN_HELP: Readonly<Record<LineColumn, string>> = {
  pipe: "One row for each run of equal pipe with its fittings, in the direction of flow. Choose a known pipe by typing, or give the bore: “ID 154.1 mm rough 0.045 mm”. Cells copied from a sheet can be pasted in.",
  length: "Developed length of this run.",
  fittings: "Counts and names, such as “2 elbow 90 long, 1 gate”. “K 3.2” adds a known coefficient.",
  share:
    "What one run of it carries: each (pump’s), all, or a part such as 1/2 for twin hoses. Blank: each on suction, all on discharge. “header” beside the pipe makes it one run.",
  level:
    "Of the pipe, above the datum of the levels: at summits and low places. Blank: on the slope between the rows beside it.",
};

/** Boxes of one line without a list to choose from, and what their figures are measured in. */
const PLAIN: Readonly<Partial<Record<LineColumn, Quantity | null>>> = {
  length: "length",
  share: null,
  level: "elevation",
};

/** The rows of a line in the direction of flow, each with its own bore, as a grid that takes cells pasted into it. */
export function lineEditorView(context: PaneContext, line: LineKey): TemplateResult {
  const { state, send, goTo } = context;
  const rows = state.duty[line];
  return html`<div class="line-grid">
      <div class="line-row heads" aria-hidden="true">
        ${LINE_COLUMNS.map((column) => html`<span class=${column}>${COLUMN_LABELS[column]}${unitAside(column, state.duty.unitSet)}</span>`)}
      </div>
      ${rows.map((_, row) => rowView(context, line, row))}
    </div>
    ${LINE_COLUMNS.map((column) => html`<p class="unseen" id=${helpId(line, column)}>${COLUMN_HELP[column]}</p>`)}
    <button
      class="add"
      type="button"
      @click=${() => {
        send({ type: "row-added", line });
        goTo(boxId(placeKey({ line, row: rows.length, column: "pipe" })));
      }}
    >
      Add a row
    </button>`;
}

function unitAside(column: LineColumn, units: UnitSetName): string {
  const quantity = PLAIN[column];
  return typeof quantity === "string" ? `, ${printedUnit(quantity, units)}` : "";
}

function rowView(context: PaneContext, line: LineKey, row: number): TemplateResult {
  const { state, worked } = context;
  const segment = worked.segmentAt(line, row);
  const units = state.duty.unitSet;
  const cells = LINE_COLUMNS.map((column): CellPlace => ({ line, row, column }));
  return html`<div
    class="line-row"
    role="group"
    aria-label="${LINE_TITLES[line]}, row ${row + 1}"
    aria-keyshortcuts="Alt+ArrowUp Alt+ArrowDown Alt+Delete"
    @keydown=${(event: KeyboardEvent) => onKey(context, line, row, event)}
  >
    ${cells.map((place) => cellView(context, place))}
    <div class="row-foot">
      <span class="row-result">
        ${segment === undefined ? nothing : rowResultText(segment, units)}
      </span>
      ${rowButtons(context, line, row)}
    </div>
    ${cells.map((place) => belowView(context, place))}
    ${segment === undefined || segment.findings.length === 0 ? nothing : findingsView(segment.findings, units, undefined, mendingOf(context))}
  </div>`;
}

/** "8.15 ft/s, 3.21 ft lost". */
function rowResultText({ velocity, pipeHead, fittingHead }: RowWorked, units: UnitSetName): string {
  if (typeof velocity !== "number" || typeof pipeHead !== "number" || typeof fittingHead !== "number") return "";
  const lost = amountText(amount("head", pipeHead + fittingHead), units);
  return `${amountText(amount("velocity", velocity), units)}, ${lost} lost`;
}

/** Alt with an arrow moves the row, Alt with Delete removes it; the focus stays in its column. */
function onKey(context: PaneContext, line: LineKey, row: number, event: KeyboardEvent): void {
  const column = LINE_COLUMNS.find((each) => (event.target as HTMLElement).id.endsWith(`-${each}`)) ?? "pipe";
  const by = event.altKey ? ({ ArrowUp: -1, ArrowDown: 1 } as const)[event.key] : undefined;
  if (by !== undefined) {
    event.preventDefault();
    if (row + by >= 0 && row + by < context.state.duty[line].length) move(context, { line, row, column }, by);
  } else if (event.altKey && event.key === "Delete") {
    event.preventDefault();
    remove(context, { line, row, column });
  }
}

function move({ send, goTo }: PaneContext, { line, row, column }: CellPlace, by: -1 | 1): void {
  send({ type: "row-moved", line, row, by });
  goTo(boxId(placeKey({ line, row: row + by, column })));
}

function remove({ state, send, goTo }: PaneContext, { line, row, column }: CellPlace): void {
  const last = state.duty[line].length - 1;
  send({ type: "row-removed", line, row });
  goTo(boxId(placeKey({ line, row: Math.max(0, Math.min(row, last - 1)), column })));
}

/** For the pointer; the keyboard has its keys in the boxes. */
function rowButtons(context: PaneContext, line: LineKey, row: number): TemplateResult {
  const last = context.state.duty[line].length - 1;
  const place: CellPlace = { line, row, column: "pipe" };
  const button = (words: string, keys: string, sign: string, isOff: boolean, act: () => void): TemplateResult =>
    html`<button type="button" tabindex="-1" aria-label="${words} row ${row + 1}" title="${words} (${keys})" ?disabled=${isOff} @click=${act}>
      ${sign}
    </button>`;
  return html`<span class="row-buttons">
    ${button("Move up", "Alt+↑", "↑", row === 0, () => move(context, place, -1))}
    ${button("Move down", "Alt+↓", "↓", row === last, () => move(context, place, 1))}
    ${button("Remove", "Alt+Delete", "×", false, () => remove(context, place))}
  </span>`;
}

type CellPlace = Extract<Place, { readonly line: LineKey }> & { readonly column: LineColumn };

function cellView(context: PaneContext, place: CellPlace): TemplateResult {
  const { send } = context;
  const id = boxId(placeKey(place));
  const isAmount = typeof PLAIN[place.column] === "string";
  const describedBy = [
    ...(isAmount ? sumLineOf(context, place) : []),
    ...(findingsAt(context, placeKey(place)).length > 0 ? [`${id}-findings`] : []),
    helpId(place.line, place.column),
  ].join(" ");
  const onPaste = (event: ClipboardEvent): void => {
    const cells = pastedCells(event.clipboardData?.getData("text/plain") ?? "", place.column);
    if (cells === undefined || cells.length === 0) return;
    event.preventDefault();
    send({ type: "rows-pasted", at: place, cells });
  };
  return html`<div class="cell ${place.column}" @paste=${onPaste}>
    <label class="unseen" for=${id}>${COLUMN_LABELS[place.column]}</label>
    ${boxView(context, place, describedBy)}
  </div>`;
}

/** What belongs to the boxes of a row, below them. */
function belowView(context: PaneContext, place: CellPlace): TemplateResult {
  const quantity = PLAIN[place.column];
  return html`${typeof quantity === "string" ? sumLineView(context, place, quantity) : nothing}
  ${boxFindingsView(context, placeKey(place))}
  ${place.column === "length" ? listQuestionView(context, place) : nothing}`;
}

function boxView(context: PaneContext, place: CellPlace, describedBy: string): TemplateResult {
  const { state, send } = context;
  const text = state.duty[place.line][place.row]?.[place.column] ?? "";
  const invalid = findingsAt(context, placeKey(place)).some(({ kind }) => kind === "error");
  if (place.column in PLAIN) {
    return html`<input
      id=${boxId(placeKey(place))}
      type="text"
      autocomplete="off"
      spellcheck="false"
      aria-describedby=${describedBy}
      aria-invalid=${invalid}
      aria-required=${place.column === "length"}
      placeholder=${place.column === "share" ? (place.line === "suctionLine" ? "each" : "all") : ""}
      .value=${live(place.column === "share" ? text : asTyped(text))}
      @input=${(event: InputEvent) => send({ type: "typed", place, text: (event.target as HTMLInputElement).value })}
      @paste=${(event: ClipboardEvent) => pasteList(context, place, event)}
    />`;
  }
  if (place.column === "pipe") {
    return comboboxView(context, {
      place,
      describedBy,
      invalid,
      required: true,
      placeholder: "type to choose, or ID 154.1 mm",
      matches: () => matching(pipesFor(state.duty.unitSet), text),
      chosen: (_, name) => name,
    });
  }
  return comboboxView(context, {
    place,
    describedBy,
    invalid,
    required: false,
    placeholder: "2 elbow 90 long, 1 gate",
    matches: (list) =>
      matching(fittingsFor(context.state.duty.unitSet), addsOne(text, list) ? "" : pieceAt(text, list.caret).name),
    chosen: (list, name) => (addsOne(text, list) ? withFitting(text, name) : withPiece(text, list.caret, name)),
  });
}

/** A box of one line would run the lines of a list together. */
function pasteList({ send }: PaneContext, place: CellPlace, event: ClipboardEvent): void {
  const input = event.target as HTMLInputElement;
  const list = place.column === "length" ? inOneLine(event.clipboardData?.getData("text/plain") ?? "") : undefined;
  if (list === undefined) return;
  event.preventDefault();
  const { value, selectionStart, selectionEnd } = input;
  const text = `${value.slice(0, selectionStart ?? value.length)}${list}${value.slice(selectionEnd ?? value.length)}`;
  send({ type: "typed", place, text });
}

/** Asked for after a whole name rather than while typing one, the list adds a further fitting. */
function addsOne(text: string, list: OpenList): boolean {
  return !list.typed && isFittingName(pieceAt(text, list.caret).name);
}

function helpId(line: LineKey, column: LineColumn): string {
  return `duty-${line}-${column}-help`;
}
