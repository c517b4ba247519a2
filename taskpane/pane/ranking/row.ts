import { html, nothing, type TemplateResult } from "lit";
import type { RankingRow } from "../../../shared/pump-table/ranking-table.ts";
import { reasonText } from "../../../shared/pump-table/reason-text.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { sparkline } from "../pictures/sparkline.ts";
import { stateView } from "../views/verdict-strip.ts";
import { FIRST_FIGURE, figureText, LAST_FIGURE, NOT_KNOWN, RANKING_COLUMNS } from "./columns.ts";
import type { RowCurve } from "./row-curve.ts";

/** A row of the ranking as it is to be drawn. */
export interface ShownRow {
  readonly row: RankingRow;
  /** Its place among the rows of the grid for a reader, the heading counted. */
  readonly rowIndex: number;
  readonly isOpen: boolean;
  readonly isMarked: boolean;
  readonly choice: "not chosen" | "as ranked" | "set otherwise";
  /** The cell the keyboard is on, if it is one of this row. */
  readonly active: number | undefined;
  readonly units: UnitSetName;
  readonly curve: RowCurve;
  /** From the top of the first row, px. */
  readonly top: number;
}

/** Nine cells; of a pump that is left out the reason in place of its figures. */
export function rowView(shown: ShownRow): TemplateResult {
  const { row, rowIndex, isOpen, isMarked, choice, units, curve, top } = shown;
  const { name } = row.pump;
  const isSelected = choice !== "not chosen";
  return html`<div
    role="row"
    class="ranking-row ${isOpen ? "open" : ""} ${isSelected ? "selected" : ""}"
    aria-rowindex=${rowIndex}
    aria-selected=${isMarked}
    aria-current=${isSelected ? "true" : nothing}
    data-row=${name}
    .style=${`transform: translateY(${top}px)`}
  >
    ${cell(
      shown,
      0,
      "in-rank",
      html`<span class="tick-box" aria-hidden="true">${isMarked ? "✓" : ""}</span>
        <span>${row.ranked?.rank ?? NOT_KNOWN}</span>`,
    )}
    <div
      role="gridcell"
      class="in-name"
      aria-colindex="2"
      aria-expanded=${isOpen}
      data-column="1"
      tabindex=${tabindex(shown, 1)}
      title=${name}
    >
      <span class="pump-name">${name}</span>
      ${isSelected ? html`<span class="mark chosen">${choice === "as ranked" ? "selected" : "selected, set otherwise"}</span>` : nothing}
    </div>
    ${cell(shown, 2, "in-curve", html`${sparkline(curve.path)}<span class="unseen">${curve.words}</span>`)}
    ${
      row.leftOut === undefined
        ? RANKING_COLUMNS.slice(FIRST_FIGURE, LAST_FIGURE + 1).map(({ key }, i) =>
            cell(shown, FIRST_FIGURE + i, `number in-${key}`, html`${figureText(row, key, units)}`),
          )
        : html`<div
            role="gridcell"
            class="reason"
            aria-colindex=${FIRST_FIGURE + 1}
            aria-colspan=${LAST_FIGURE - FIRST_FIGURE + 1}
            data-column=${FIRST_FIGURE}
            tabindex=${tabindex(shown, FIRST_FIGURE)}
            title=${reasonText(row.leftOut, units)}
          >
            ${reasonText(row.leftOut, units)}
          </div>`
    }
    ${cell(shown, LAST_FIGURE + 1, `in-verdict ${row.verdict}`, stateView(row.verdict))}
  </div>`;
}

function cell(shown: ShownRow, column: number, kind: string, content: TemplateResult): TemplateResult {
  return html`<div
    role="gridcell"
    class=${kind}
    aria-colindex=${column + 1}
    data-column=${column}
    tabindex=${tabindex(shown, column)}
  >${content}</div>`;
}

function tabindex({ active }: ShownRow, column: number): string {
  return active === column ? "0" : "-1";
}
