import { html, nothing, svg, type TemplateResult } from "lit";
import type { SettlingRun } from "../../../shared/package/settling.ts";
import { bareFigure } from "../../../shared/text/words.ts";
import { printedUnit, type UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import { greatestOf } from "../../../src/numeric/extremes.ts";
import { linearScale } from "./scale.ts";

const NAME_ROW = 15;
const BAR = 11;
/** The marks stand out of the bar by so much. */
const OVER = 3;
const NOTE_ROW = 15;
const GAP = 8;
const RUN = NAME_ROW + BAR + NOTE_ROW + GAP;
/** A note stands right of its sign. */
const NOTE_LEFT = 15;

/** Velocity in each run of pipe as a bar, with its deposition velocity and design minimum across it. */
export function settlingBars(runs: readonly SettlingRun[], units: UnitSetName, width: number): TemplateResult {
  const most = greatestOf(runs.flatMap(({ velocity, design }) => [velocity, design]));
  const x = linearScale([0, most], [1, width - 2]);
  const height = RUN * runs.length;
  return html`<figure>
    <svg
      class="picture"
      viewBox="0 0 ${width} ${height}"
      width=${width}
      height=${height}
      role="img"
      aria-label="${settlingBarsWords(runs, units)}"
    >
      ${runs.map((run, i) => {
        const top = RUN * i + NAME_ROW;
        const note = top + BAR + NOTE_ROW - 2;
        const mark = (velocity: number): string => `M${x(velocity)} ${top - OVER}v${BAR + 2 * OVER}`;
        const isShort = run.velocity < run.design;
        return svg`<text class="total" x="0" y=${top - 5}>${run.label}</text>
          <text x=${width} y=${top - 5} text-anchor="end">${shown(run.velocity, units)} ${printedUnit("velocity", units)}</text>
          <rect class="bar ${isShort ? "short" : ""}" x=${x(0)} y=${top} width=${x(run.velocity) - x(0)} height=${BAR} />
          <path class="line running" d="${mark(run.limiting)}" />
          <path class="line aged" d="${mark(run.design)}" />
          ${isShort ? svg`<path class="short-mark" d="M1 ${note}l5 -9l5 9Z" />` : nothing}
          <text class=${isShort ? "short" : ""} x=${isShort ? NOTE_LEFT : 0} y=${note}>${noteOf(run, units)}</text>`;
      })}
    </svg>
    <figcaption>
      Velocity at the flow stated. Solid mark: deposition, solids settle below it. Dashed mark: design minimum, to be
      kept at the least flow.
    </figcaption>
  </figure>`;
}

/** What becomes of the solids, in few words. */
function noteOf({ velocity, limiting, design, regime }: SettlingRun, units: UnitSetName): string {
  if (velocity < limiting)
    return `settles: deposition ${shown(limiting, units)}, design minimum ${shown(design, units)}`;
  if (velocity < design) return `slow: design minimum ${shown(design, units)}, deposition ${shown(limiting, units)}`;
  const sliding = regime === "sliding bed" ? "may slide; " : "";
  return `${sliding}deposition ${shown(limiting, units)}, design minimum ${shown(design, units)}`;
}

function shown(velocity: number, units: UnitSetName): string {
  return bareFigure(amount("velocity", velocity), units);
}

/** All that the picture shows, in words. */
export function settlingBarsWords(runs: readonly SettlingRun[], units: UnitSetName): string {
  const unit = printedUnit("velocity", units);
  const said = runs.map((run) => `${run.label} ${shown(run.velocity, units)} ${unit}, ${noteOf(run, units)}`);
  return `Velocity in each run against the settling of solids: ${said.join("; ")}.`;
}
