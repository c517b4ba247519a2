import { html, svg, type TemplateResult } from "lit";
import type { CostParts } from "../../../shared/package/cost-parts.ts";
import { moneyFigure } from "../../../shared/text/figure.ts";
import { greatestOf } from "../../../src/numeric/extremes.ts";
import { runningSums } from "./running-sums.ts";
import { linearScale } from "./scale.ts";

const ROW = 22;
const BAR = 12;
const LABELS = 78;
/** Width of a letter of the pictures' bold type, px, and what keeps figures off the bars. */
const LETTER = 7.1;
const GAP = 8;

/** What a pump costs over its years, as bars that carry on where the last one ended; the whole from zero. */
export function costBars(costs: CostParts, width: number): TemplateResult {
  const { parts, whole } = costs;
  const starts = runningSums(parts.map(({ cost }) => cost));
  const bars = [
    ...parts.map(({ name, cost }, i) => ({ name, cost, from: starts[i] as number, to: starts[i + 1] as number })),
    { name: "Life cycle", cost: whole, from: 0, to: whole },
  ];
  const texts = bars.map(({ cost }) => `${moneyFigure(cost)} · ${percent(cost, whole)} %`);
  const figures = LETTER * greatestOf(texts.map(({ length }) => length)) + GAP;
  const x = linearScale([0, greatestOf(bars.map(({ to }) => to))], [LABELS, width - figures]);
  const height = ROW * bars.length + 4;
  return html`<figure>
    <svg
      class="picture"
      viewBox="0 0 ${width} ${height}"
      width=${width}
      height=${height}
      role="img"
      aria-label="${costBarsWords(costs)}"
    >
      <path class="axis" d="M${x(0)} 0V${height}" />
      ${bars.map(({ name, from, to }, i) => {
        const middle = ROW * i + ROW / 2 + 2;
        const kind = i === parts.length ? "total" : "part";
        return svg`<text class=${kind} x="0" y=${middle + 4}>${name}</text>
          <rect class="bar ${kind}" x=${x(from)} y=${middle - BAR / 2} width=${Math.max(1, x(to) - x(from))} height=${BAR} />
          <text class=${kind} x=${width} y=${middle + 4} text-anchor="end">${texts[i]}</text>`;
      })}
    </svg>
    <figcaption>Present value of what the pump costs over its years${inCurrency(costs)}.</figcaption>
  </figure>`;
}

/** The picture in words. */
export function costBarsWords(costs: CostParts): string {
  const { parts, whole } = costs;
  const said = parts.map(({ name, cost }) => `${name} ${moneyFigure(cost)}, ${percent(cost, whole)} %`);
  return `Life-cycle cost ${moneyFigure(whole)}${inCurrency(costs)}: ${said.join("; ")}.`;
}

function inCurrency({ currency }: CostParts): string {
  return currency === "" ? "" : `, in ${currency}`;
}

function percent(cost: number, whole: number): number {
  return whole === 0 ? 0 : Math.round((100 * cost) / whole);
}
