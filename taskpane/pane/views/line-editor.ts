import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { type LineKey, type Place, placeKey, type SegmentText } from "../../../shared/duty/duty-text.ts";
import { inOneLine } from "../../../shared/duty/sums/amount-list.ts";
import { asTyped } from "../../../shared/duty/sums/written-sum.ts";
import { amountText } from "../../../shared/text/words.ts";
import { printedUnit, type Quantity, type UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import { boxId, type PaneContext } from "../context.ts";
import { pieceAt, withFitting, withPiece } from "../fitting-piece.ts";
import { FITTINGS, isFittingName, pipesFor } from "../known-names.ts";
import { matching } from "../names.ts";
import { LINE_TITLES, type OpenList } from "../state.ts";
import type { RowWorked } from "../worked.ts";
import { comboboxView } from "./combobox.ts";
import { findingsAt, findingsView } from "./findings.ts";
import { listQuestionView, sumLineOf, sumLineView } from "./sum-line.ts";

type Column = keyof SegmentText;

const COLUMN_LABELS: Readonly<Record<Column, string>> = {
  pipe: "Pipe",
  length: "Length",
  fittings: "Fittings",
  share: "Share",
  level: "Level",
};

const COLUMN_HELP: Readonly<Record<Column, string>> = {
  pipe: "Choose a known pipe by typing, or give the bore: “ID 154.1 mm rough 0.045 mm”.",
  length: "Developed length of this run.",
  fittings: "Counts and names, such as “2 elbow 90 long, 1 gate”. “K 3.2” adds a known coefficient.",
  share:
    "What one run of it carries: each (pump’s), all, or a part such as 1/2 for twin hoses. Blank: each on suction, all on discharge. “header” beside the pipe makes it one run.",
  level:
    "Of the pipe, above the datum of the levels: at summits and low places. Blank: on the slope between its neighbours.",
};

/** Boxes of one line without a list to choose from, and what their figures are measured in. */
const PLAIN: Readonly<Partial<Record<Column, Quantity | null>>> = { length: "length", share: null, level: "elevation" };

/** The rows of a line in the direction of flow, each with its own bore. */
export function lineEditorView(context: PaneContext, line: LineKey): TemplateResult {
  const { state, send, goTo } = context;
  const rows = state.duty[line];
  return html`<p class="hint">
      One row for each run of equal pipe with its fittings, in the direction of flow.
    </p>
    <ol class="rows">
      ${rows.map((_, row) => html`<li>${rowView(context, line, row)}</li>`)}
    </ol>
    ${(Object.keys(COLUMN_HELP) as Column[]).map(
      (column) => html`<p class="unseen" id=${helpId(line, column)}>${COLUMN_HELP[column]}</p>`,
    )}
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

function rowView(context: PaneContext, line: LineKey, row: number): TemplateResult {
  const { state, worked } = context;
  const segment = worked.segmentAt(line, row);
  const units = state.duty.unitSet;
  return html`<div class="row" role="group" aria-label="${LINE_TITLES[line]}, row ${row + 1}">
    <div class="row-head">
      <span class="row-number" aria-hidden="true">${row + 1}</span>
      <span class="row-result">
        ${segment === undefined ? nothing : rowResultText(segment, units)}
      </span>
      ${rowButtons(context, line, row)}
    </div>
    ${cellView(context, { line, row, column: "pipe" })} ${cellView(context, { line, row, column: "length" })}
    ${cellView(context, { line, row, column: "fittings" })} ${cellView(context, { line, row, column: "share" })}
    ${cellView(context, { line, row, column: "level" })}
    ${segment === undefined || segment.findings.length === 0 ? nothing : findingsView(segment.findings, units)}
  </div>`;
}

/** "8.15 ft/s, 3.21 ft lost". */
function rowResultText({ velocity, pipeHead, fittingHead }: RowWorked, units: UnitSetName): string {
  if (typeof velocity !== "number" || typeof pipeHead !== "number" || typeof fittingHead !== "number") return "";
  const lost = amountText(amount("head", pipeHead + fittingHead), units);
  return `${amountText(amount("velocity", velocity), units)}, ${lost} lost`;
}

function rowButtons({ state, send, goTo }: PaneContext, line: LineKey, row: number): TemplateResult {
  const last = state.duty[line].length - 1;
  const buttonId = (at: number, name: string): string => `duty-${line}-${at}-${name}`;
  const move = (by: -1 | 1): void => {
    const to = row + by;
    send({ type: "row-moved", line, row, by });
    const atEnd = to === 0 ? "down" : to === last ? "up" : undefined;
    goTo(buttonId(to, atEnd ?? (by === 1 ? "down" : "up")));
  };
  const name = `row ${row + 1}`;
  return html`<span class="row-buttons">
    <button
      id=${buttonId(row, "up")}
      type="button"
      aria-label="Move ${name} up"
      title="Move up"
      ?disabled=${row === 0}
      @click=${() => move(-1)}
    >
      ↑
    </button>
    <button
      id=${buttonId(row, "down")}
      type="button"
      aria-label="Move ${name} down"
      title="Move down"
      ?disabled=${row === last}
      @click=${() => move(1)}
    >
      ↓
    </button>
    <button
      type="button"
      aria-label="Remove ${name}"
      title="Remove"
      @click=${() => {
        send({ type: "row-removed", line, row });
        goTo(boxId(placeKey({ line, row: Math.max(0, Math.min(row, last - 1)), column: "pipe" })));
      }}
    >
      ×
    </button>
  </span>`;
}

type CellPlace = Extract<Place, { readonly line: LineKey }> & { readonly column: Column };

function cellView(context: PaneContext, place: CellPlace): TemplateResult {
  const { state } = context;
  const key = placeKey(place);
  const id = boxId(key);
  const units = state.duty.unitSet;
  const findings = findingsAt(context, key);
  const quantity = PLAIN[place.column];
  const hasUnit = typeof quantity === "string";
  const describedBy = [
    ...(hasUnit ? [`${id}-unit`, ...sumLineOf(context, place)] : []),
    ...(findings.length === 0 ? [] : [`${id}-findings`]),
    helpId(place.line, place.column),
  ].join(" ");
  return html`<div class="cell ${place.column}">
    <label for=${id}>${COLUMN_LABELS[place.column]}</label>
    <div class="entry">
      ${boxView(context, place, describedBy)}
      ${hasUnit ? html`<span class="unit" id="${id}-unit">${printedUnit(quantity, units)}</span>` : nothing}
    </div>
    ${hasUnit ? sumLineView(context, place, quantity) : nothing}
    ${findings.length === 0 ? nothing : findingsView(findings, units, `${id}-findings`)}
    ${place.column === "length" ? listQuestionView(context, place) : nothing}
  </div>`;
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
    matches: (list) => matching(FITTINGS, addsOne(text, list) ? "" : pieceAt(text, list.caret).name),
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

function helpId(line: LineKey, column: Column): string {
  return `duty-${line}-${column}-help`;
}
