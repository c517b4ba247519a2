import { html, nothing, render, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { firstSort, type RankingRow, type RankingSort } from "../../../shared/pump-table/ranking-table.ts";
import type { PaneContext } from "../context.ts";
import { MOST_COMPARED } from "../pump/offers.ts";
import { choiceOf } from "../pump/pump-text.ts";
import type { Ranking } from "../pump/ranking.ts";
import { RANKING_COLUMNS, type RankingColumn } from "./columns.ts";
import { type Move, moved, type Place } from "./places.ts";
import { rowView } from "./row.ts";
import { rowCurve } from "./row-curve.ts";
import { rowDetail } from "./row-detail.ts";
import { heightOf, type RowLayout, rowsInSight, scrolledTo, topOf } from "./rows-in-sight.ts";

export interface GridShown {
  readonly context: PaneContext;
  readonly ranking: Ranking;
  /** In the order they are shown. */
  readonly rows: readonly RankingRow[];
}

/** Until it is measured, px. */
const ROW_HEIGHT = 44;
const WINDOW = 600;

const PUMP_COLUMN = RANKING_COLUMNS.findIndex(({ key }) => key === "name");

const KEYS: Readonly<Record<string, Move>> = {
  ArrowUp: "up",
  ArrowDown: "down",
  ArrowLeft: "left",
  ArrowRight: "right",
  Home: "row-start",
  End: "row-end",
  PageUp: "page-up",
  PageDown: "page-down",
};

/**
 * The rows of the ranking as a grid with one tab stop. Only rows in sight are in the page, and the one the keyboard is
 * on; scrolling draws the grid alone, everything else goes through the state of the pane.
 */
export class RankingGrid {
  readonly #element: HTMLElement;
  #shown: GridShown;
  #places: ReadonlyMap<string, number> = new Map();
  /** Where the keyboard is: row 0 is the heading. */
  #at: Place = { row: 1, column: 0 };
  #rowHeight = ROW_HEIGHT;
  #detailHeight = 0;
  #drawn: readonly [number, number] = [0, 0];

  constructor(element: HTMLElement, shown: GridShown) {
    this.#element = element;
    this.#shown = shown;
    element.addEventListener("scroll", () => this.#scrolled(), { passive: true });
    element.addEventListener("keydown", (event) => this.#keyDown(event));
    element.addEventListener("click", (event) => this.#clicked(event));
    this.update(shown);
    new ResizeObserver(() => this.#draw()).observe(element);
  }

  update(shown: GridShown): void {
    const { rows } = this.#shown;
    const active = rows[this.#at.row - 1]?.pump.name;
    this.#shown = shown;
    if (shown.rows !== rows || this.#places.size === 0) {
      this.#places = new Map(shown.rows.map(({ pump }, i) => [pump.name, i]));
      this.#element.scrollTop = 0;
      const kept = active === undefined ? undefined : this.#places.get(active);
      const isBeside = this.#element.contains(document.activeElement);
      if (this.#at.row > 0) this.#at = { ...this.#at, row: isBeside && kept !== undefined ? kept + 1 : 1 };
      if (shown.rows.length === 0) this.#at = { ...this.#at, row: 0 };
    }
    this.#draw();
  }

  #layout(): RowLayout {
    const { rows, context } = this.#shown;
    const open = this.#places.get(context.state.offers.openRow ?? "");
    return {
      count: rows.length,
      rowHeight: this.#rowHeight,
      ...(open !== undefined && { open: { row: open, height: this.#detailHeight } }),
    };
  }

  /** Height of the window under the heading. */
  #window(): number {
    const { clientHeight } = this.#element;
    const head = this.#element.querySelector<HTMLElement>(".ranking-head")?.offsetHeight ?? 0;
    return clientHeight === 0 ? WINDOW : clientHeight - head;
  }

  #scrolled(): void {
    const [from, to] = rowsInSight(this.#layout(), this.#element.scrollTop, this.#window());
    if (from !== this.#drawn[0] || to !== this.#drawn[1]) this.#render();
  }

  /** Draws, and once more where a row turns out to be of another height. */
  #draw(): void {
    this.#render();
    if (this.#measured()) this.#render();
  }

  #measured(): boolean {
    const row = this.#element.querySelector<HTMLElement>(".ranking-row")?.offsetHeight || this.#rowHeight;
    const detail = this.#element.querySelector<HTMLElement>(".ranking-detail")?.offsetHeight ?? 0;
    const isAsBefore = row === this.#rowHeight && detail === this.#detailHeight;
    this.#rowHeight = row;
    this.#detailHeight = detail;
    return !isAsBefore;
  }

  #render(): void {
    const { rows } = this.#shown;
    const layout = this.#layout();
    this.#drawn = rowsInSight(layout, this.#element.scrollTop, this.#window());
    render(
      html`<div role="rowgroup" class="ranking-head">
          <div role="row" class="ranking-heads" aria-rowindex="1">
            ${RANKING_COLUMNS.map((column, i) => this.#headView(column, i))}
          </div>
        </div>
        <div role="rowgroup" class="ranking-body" .style=${`height: ${heightOf(layout)}px`}>
          ${repeat(
            this.#rowsDrawn(),
            (i) => rows[i]?.pump.name,
            (i) => this.#rowView(rows[i] as RankingRow, i, layout),
          )}
        </div>`,
      this.#element,
    );
    this.#element.setAttribute("aria-rowcount", String(rows.length + (layout.open === undefined ? 1 : 2)));
  }

  /** Those in sight and the one the keyboard is on, in their order. */
  #rowsDrawn(): readonly number[] {
    const [from, to] = this.#drawn;
    const sight = Array.from({ length: to - from }, (_, i) => from + i);
    const active = this.#at.row - 1;
    if (active < 0 || active >= this.#shown.rows.length || (active >= from && active < to)) return sight;
    return active < from ? [active, ...sight] : [...sight, active];
  }

  #headView({ key, label, head }: RankingColumn, column: number): TemplateResult {
    const { state } = this.#shown.context;
    const { sort } = state.offers.view;
    const units = state.duty.unitSet;
    const isSorted = sort.by === key;
    return html`<div
      role="columnheader"
      class="head in-${key} ${isSorted ? "sorted" : ""}"
      aria-colindex=${column + 1}
      aria-label=${label(units)}
      aria-sort=${key === "curve" ? nothing : isSorted ? (sort.isDescending ? "descending" : "ascending") : "none"}
      data-column=${column}
      data-sort=${key === "curve" ? nothing : key}
      tabindex=${this.#at.row === 0 && this.#at.column === column ? "0" : "-1"}
      title=${label(units)}
    >
      ${head(units)}${isSorted ? html`<span class="way" aria-hidden="true">${sort.isDescending ? "▼" : "▲"}</span>` : nothing}
    </div>`;
  }

  #rowView(row: RankingRow, i: number, layout: RowLayout): TemplateResult {
    const { context, ranking } = this.#shown;
    const { duty, offers } = context.state;
    const { name } = row.pump;
    const open = layout.open?.row;
    const top = topOf(layout, i);
    const rowIndex = i + 2 + (open !== undefined && i > open ? 1 : 0);
    const isOpen = i === open;
    const view = rowView({
      row,
      rowIndex,
      isOpen,
      isMarked: offers.compared.includes(name),
      choice: choiceIn(row, duty),
      active: this.#at.row === i + 1 ? this.#at.column : undefined,
      units: duty.unitSet,
      curve: rowCurve(row, ranking.asked),
      top,
    });
    if (!isOpen) return view;
    return html`${view}
      <div role="row" class="ranking-detail" aria-rowindex=${rowIndex + 1} .style=${`transform: translateY(${top + layout.rowHeight}px)`}>
        <div role="gridcell" aria-colindex="1" aria-colspan=${RANKING_COLUMNS.length}>${rowDetail(context, ranking, row)}</div>
      </div>`;
  }

  #clicked({ target }: Event): void {
    const at = this.#placeOf(target);
    if (at === undefined) return;
    this.#at = at;
    if (at.row === 0) this.#sort(at.column);
    else if (at.column === 0) this.#mark();
    else this.#open();
  }

  #keyDown(event: KeyboardEvent): void {
    if (event.key === "Escape" && this.#close()) return;
    const at = this.#placeOf(event.target);
    if (at === undefined || event.altKey) return;
    this.#at = at;
    const move = KEYS[event.key];
    if (move !== undefined) this.#go(event.ctrlKey || event.metaKey ? toEnds(move) : move);
    else if (event.key === " ") at.row === 0 ? this.#sort(at.column) : this.#mark();
    else if (event.key === "Enter") at.row === 0 ? this.#sort(at.column) : this.#open();
    else return;
    event.preventDefault();
  }

  /** The cell that was pressed, or the row between two of its cells: what a row opens to has buttons of its own. */
  #placeOf(target: EventTarget | null): Place | undefined {
    const within = (which: string): HTMLElement | null =>
      target instanceof Element ? target.closest<HTMLElement>(which) : null;
    const column = Number(within("[data-column]")?.dataset["column"] ?? PUMP_COLUMN);
    const row = within("[data-row]")?.dataset["row"];
    if (row === undefined) return within("[data-column]") === null ? undefined : { row: 0, column };
    const place = this.#places.get(row);
    return place === undefined ? undefined : { row: place + 1, column };
  }

  #go(move: Move): void {
    const { rows } = this.#shown;
    const page = Math.max(1, Math.floor(this.#window() / this.#rowHeight) - 1);
    this.#at = moved(this.#at, move, {
      rows: rows.length,
      page,
      isLeftOut: (row) => rows[row - 1]?.leftOut !== undefined,
    });
    this.#show();
  }

  /** Scrolls the row of the keyboard into the window, draws it and puts the focus on its cell. */
  #show(): void {
    const layout = this.#layout();
    const row = this.#at.row - 1;
    if (row >= 0) {
      const isOpen = layout.open?.row === row;
      const bottom = topOf(layout, row) + this.#rowHeight + (isOpen ? this.#detailHeight : 0);
      this.#element.scrollTop = scrolledTo(topOf(layout, row), bottom, this.#element.scrollTop, this.#window());
    }
    this.#draw();
    const within = row < 0 ? this.#element.querySelector(".ranking-heads") : this.#rowElement(row);
    within?.querySelector<HTMLElement>(`[data-column="${this.#at.column}"]`)?.focus({ preventScroll: true });
  }

  #rowElement(row: number): Element | undefined {
    const name = this.#shown.rows[row]?.pump.name;
    return [...this.#element.querySelectorAll<HTMLElement>("[data-row]")].find(
      ({ dataset }) => dataset["row"] === name,
    );
  }

  #sort(column: number): void {
    const { state, send } = this.#shown.context;
    const key = RANKING_COLUMNS[column]?.key;
    if (key === undefined || key === "curve") return;
    const { sort } = state.offers.view;
    const next: RankingSort = sort.by === key ? { by: key, isDescending: !sort.isDescending } : firstSort(key);
    send({ type: "ranking-viewed", view: { sort: next } });
    this.#show();
  }

  #mark(): void {
    const { state, send } = this.#shown.context;
    const row = this.#shown.rows[this.#at.row - 1];
    if (row === undefined) return;
    const { name } = row.pump;
    const { compared } = state.offers;
    const isCompared = !compared.includes(name);
    if (row.ranked === undefined) refuse(`“${name}” does not meet the duty, so it is not compared.`);
    else if (isCompared && compared.length >= MOST_COMPARED) refuse(FULL);
    else send({ type: "compared", name, isCompared });
    this.#show();

    function refuse(text: string): void {
      send({ type: "noticed", notice: { kind: "failed", text } });
    }
  }

  #open(): void {
    const { state, send } = this.#shown.context;
    const name = this.#shown.rows[this.#at.row - 1]?.pump.name;
    send({ type: "ranking-row-opened", name: state.offers.openRow === name ? undefined : name });
    this.#show();
  }

  /** Closes the row that is open, with the focus back on it; nothing where the focus is elsewhere. */
  #close(): boolean {
    const open = this.#layout().open;
    if (open === undefined) return false;
    this.#shown.context.send({ type: "ranking-row-opened", name: undefined });
    this.#at = { row: open.row + 1, column: 1 };
    this.#show();
    return true;
  }
}

/** A pump that is selected and does not meet the duty has no setting to be compared with. */
function choiceIn({ pump, ranked }: RankingRow, duty: DutyText): ReturnType<typeof choiceOf> {
  if (ranked !== undefined) return choiceOf(duty.pump, ranked, duty.unitSet);
  return duty.pump?.name.trim().toLowerCase() === pump.name.toLowerCase() ? "as ranked" : "not chosen";
}

const FULL = `As many as ${MOST_COMPARED} pumps are compared; unmark one of them first.`;

/** With Ctrl held: the ends of the table. */
function toEnds(move: Move): Move {
  if (move === "row-start") return "first";
  return move === "row-end" ? "last" : move;
}
