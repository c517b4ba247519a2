import { html, svg, type TemplateResult } from "lit";
import type { PowerLadder } from "../../../shared/package/power-ladder.ts";
import { figureIn, figureSaid } from "../../../shared/text/figure.ts";
import { greatestOf } from "../../../src/numeric/extremes.ts";
import { linearScale } from "./scale.ts";

interface Rung {
  readonly name: string;
  readonly value: number;
  readonly kind: "part" | "total" | "short";
}

const ROW = 22;
const BAR = 12;
const LABELS = 130;
const FIGURES = 62;
/** A rating that conversion leaves a rounding short of the need still meets it. */
const ROUNDING = 1e-9;

/** What the pump takes, what its driver must be rated for and what it gives, as bars from one zero. */
export function powerLadderPicture(ladder: PowerLadder, width: number): TemplateResult {
  const rungs = rungsOf(ladder);
  const x = linearScale([0, greatestOf(rungs.map(({ value }) => value))], [LABELS, width - FIGURES]);
  const height = ROW * rungs.length + 6;
  const need = x(ladder.needed);
  return html`<figure>
    <svg
      class="picture"
      viewBox="0 0 ${width} ${height}"
      width=${width}
      height=${height}
      role="img"
      aria-label="${powerLadderWords(ladder)}"
    >
      <path class="axis" d="M${x(0)} 0V${height}" />
      ${rungs.map(({ name, value, kind }, i) => {
        const middle = ROW * i + ROW / 2 + 3;
        const wide = Math.max(1, x(value) - x(0));
        return svg`<text class=${kind} x="0" y=${middle + 4}>${name}</text>
          <rect class="bar ${kind}" x=${x(0)} y=${middle - BAR / 2} width=${wide} height=${BAR} />
          <text class=${kind} x=${width} y=${middle + 4} text-anchor="end">${figureIn(ladder.unit, value)} ${ladder.unit}</text>`;
      })}
      <path class="guide" d="M${need} 0V${height}" />
    </svg>
    <figcaption>${marginWords(ladder)} The dashed line is the required driver power.</figcaption>
  </figure>`;
}

/** The picture in words. */
export function powerLadderWords(ladder: PowerLadder): string {
  const said = rungsOf(ladder).map(({ name, value }) => `${name} ${figureSaid(ladder.unit, value)} ${ladder.unit}`);
  return `${said.join(", ")}. ${marginWords(ladder)}`;
}

function rungsOf({ driver, inOperation, greatest, needed, rated, onSite }: PowerLadder): readonly Rung[] {
  const name = driver === "motor" ? "Motor" : "Engine";
  const last = isEnough({ onSite, needed }) ? "total" : "short";
  return [
    ...(inOperation === undefined ? [] : [{ name: "At operating point", value: inOperation, kind: "part" } as const]),
    { name: "Maximum on curve", value: greatest, kind: "part" },
    { name: "Required power", value: needed, kind: "part" },
    { name: `${name}, rated`, value: rated, kind: "part" },
    { name: `${name} on site`, value: onSite, kind: last },
  ];
}

function isEnough({ onSite, needed }: Pick<PowerLadder, "onSite" | "needed">): boolean {
  return onSite >= needed * (1 - ROUNDING);
}

function marginWords(ladder: PowerLadder): string {
  const { driver, unit, needed, onSite } = ladder;
  const spare = onSite - needed;
  if (Math.abs(spare) <= needed * ROUNDING) return `On site the ${driver} gives just the required power.`;
  const by = `${figureSaid(unit, Math.abs(spare))} ${unit}`;
  return isEnough(ladder)
    ? `On site the ${driver} gives ${by} more than required.`
    : `Too small: on site the ${driver} falls ${by} short.`;
}
