import { html, nothing, type TemplateResult } from "lit";
import type { ShownTable } from "../../../../shared/package/shown-section.ts";

/** Columns that a pane holds beside labels, and columns of a turned table. */
const MOST_COLUMNS = 4;
const MOST_TURNED = 3;

/**
 * A printed table of the sheet, narrow enough for the pane: where it has more columns than rows it is turned, so that
 * the few stand side by side; where both are many, its labels stand above their figures.
 */
export function sheetTableView(table: ShownTable): TemplateResult {
  const { columns, rows } = table;
  const isStacked = columns.length > MOST_COLUMNS && rows.length > MOST_TURNED;
  return html`<div class="sheet-table-place">${isStacked ? stackedView(table) : gridView(table)}</div>`;
}

/** The broad second column of the sheet holds a text, which stands with the label. */
const BROAD = 1;

function stackedView({ heading, columns, rows, faults }: ShownTable): TemplateResult {
  const narrow = columns.map((_, place) => place).filter((place) => place !== BROAD);
  return html`<table class="sheet-table stacked">
      <caption>
        ${heading}
      </caption>
      <thead>
        <tr>
          ${narrow.map((place) => html`<th scope="col">${columns[place]}</th>`)}
        </tr>
      </thead>
      ${rows.map(
        ({ label, cells }) =>
          html`<tbody>
            <tr>
              <th scope="rowgroup" colspan=${narrow.length}>${label}: ${cells[BROAD]}</th>
            </tr>
            <tr>
              ${narrow.map((place) => html`<td data-head=${columns[place] ?? ""}>${cells[place]}</td>`)}
            </tr>
          </tbody>`,
      )}
    </table>
    ${faultsView(faults)}`;
}

function gridView({ heading, columns, rows, faults }: ShownTable): TemplateResult {
  const turned = rows.length < columns.length;
  const labels = rows.map(({ label }) => label);
  const across = turned ? labels : columns;
  const down = turned ? columns : labels;
  const at = (line: number, place: number): string | undefined =>
    turned ? rows[place]?.cells[line] : rows[line]?.cells[place];
  return html`<table class="sheet-table">
      <caption>
        ${heading}
      </caption>
      <thead>
        <tr>
          <td></td>
          ${across.map((name) => html`<th scope="col">${name}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${down.map(
          (name, line) =>
            html`<tr>
              <th scope="row">${name}</th>
              ${across.map((head, place) => html`<td data-head=${head}>${at(line, place)}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
    ${faultsView(faults)}`;
}

function faultsView(faults: readonly string[]): TemplateResult | typeof nothing {
  return faults.length === 0 ? nothing : html`${faults.map((fault) => html`<p class="fault">${fault}</p>`)}`;
}
