import { html, svg, type TemplateResult } from "lit";
import { figureIn } from "../../../shared/text/figure.ts";
import { greatestOf, leastOf } from "../../../src/numeric/extremes.ts";
import { runningSums } from "./running-sums.ts";
import { linearScale } from "./scale.ts";

/** A part of the total head, in the unit named beside the picture. May be negative. */
export interface HeadPart {
  readonly name: string;
  readonly value: number;
}

const ROW = 22;
const BAR = 12;
const LABELS = 126;
const FIGURES = 58;

/** What the total head is made of, as bars that carry on where the last one ended; the total from zero. */
export function headBars(
  parts: readonly HeadPart[],
  totalName: string,
  total: number,
  unit: string,
  width: number,
): TemplateResult {
  const starts = runningSums(parts.map(({ value }) => value));
  const bars = [
    ...parts.map((part, i) => ({ ...part, from: starts[i] as number, to: starts[i + 1] as number, kind: "part" })),
    { name: totalName, value: total, from: 0, to: total, kind: "total" },
  ];
  const ends = bars.flatMap(({ from, to }) => [from, to]);
  const x = linearScale([Math.min(0, leastOf(ends)), Math.max(0, greatestOf(ends))], [LABELS, width - FIGURES]);
  const height = ROW * bars.length + 4;
  const words = bars.map(({ name, value }) => `${name} ${figureIn(unit, value)} ${unit}`).join(", ");
  return html`<svg
    class="picture"
    viewBox="0 0 ${width} ${height}"
    width=${width}
    height=${height}
    role="img"
    aria-label="${words}"
  >
    <path class="axis" d="M${x(0)} 0V${height}" />
    ${bars.map(({ name, value, from, to, kind }, i) => {
      const middle = ROW * i + ROW / 2 + 2;
      const left = Math.min(x(from), x(to));
      const wide = Math.max(1, Math.abs(x(to) - x(from)));
      return svg`<text class=${kind} x="0" y=${middle + 4}>${name}</text>
        <rect class="bar ${kind}" x=${left} y=${middle - BAR / 2} width=${wide} height=${BAR} />
        <text class=${kind} x=${width} y=${middle + 4} text-anchor="end">${figureIn(unit, value)} ${unit}</text>`;
    })}
  </svg>`;
}
