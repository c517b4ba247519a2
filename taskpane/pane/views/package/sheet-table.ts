import { html, nothing, type TemplateResult } from "lit";
import type { ShownTable } from "../../../../shared/package/shown-section.ts";

/**
 * A printed table of the sheet, narrow enough for the pane: where it has more columns than rows it is turned, so that
 * the few stand side by side.
 */
export function sheetTableView({ heading, columns, rows, faults }: ShownTable): TemplateResult {
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
              ${across.map((_, place) => html`<td>${at(line, place)}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
    ${faults.length === 0 ? nothing : faults.map((fault) => html`<p class="fault">${fault}</p>`)}`;
}
