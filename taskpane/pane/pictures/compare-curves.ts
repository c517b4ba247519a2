import { html, nothing, svg, type TemplateResult } from "lit";
import { figureIn } from "../../../shared/text/figure.ts";
import { greatestOf, leastOf } from "../../../src/numeric/extremes.ts";
import type { PumpUnits } from "./pump-curves.ts";
import {
  clipOf,
  curveIn,
  endsText,
  type Frame,
  frameOf,
  frameView,
  type Panel,
  type PanelWanted,
  type Point,
} from "./pump-curves-frame.ts";

type CompareUnits = Pick<PumpUnits, "flow" | "head">;

/** A pump to be laid beside others, in the units of the axes. */
export interface ComparedCurves {
  readonly name: string;
  /** As it would run. */
  readonly head: readonly Point[];
  /** Per cent; empty where its table gives none. */
  readonly efficiency: readonly Point[];
  readonly operating: Point;
  /** Efficiency there, per cent. */
  readonly efficiencyThere: number | undefined;
}

export interface CompareShown {
  readonly pumps: readonly ComparedCurves[];
  readonly system: readonly Point[];
  readonly duty: Point;
}

const HEADROOM = 1.06;
/** Each pump has its letter, its dashes and its mark; colour only helps. */
export const LETTERS = ["A", "B", "C", "D"] as const;
const MARKS = [
  svg`<circle r="4.5" />`,
  svg`<rect x="-4" y="-4" width="8" height="8" />`,
  svg`<path d="M0 -5.5L5 4H-5Z" />`,
  svg`<path d="M0 -5.5L5.5 0L0 5.5L-5.5 0Z" />`,
] as const;

/** Head and efficiency of up to four pumps on one duty. */
export function comparePicture(shown: CompareShown, units: CompareUnits, width: number): TemplateResult {
  const frame = frameFor(shown, units, width);
  const [head, efficiency] = frame.panels as [Panel, Panel | undefined];
  return html`<figure class="pump-curves">
    <svg
      class="picture"
      viewBox="0 0 ${width} ${frame.height}"
      width=${width}
      height=${frame.height}
      role="img"
      aria-label="${compareWords(shown, units)}"
    >
      <defs>${clipOf(frame, head, "duty-compare-clip")}</defs>
      ${frameView(frame, units.flow)}
      <g clip-path="url(#duty-compare-clip)">
        <path class="line system" d="${curveIn(frame, head, shown.system)}" />
        ${shown.pumps.map(
          ({ head: points }, i) => svg`<path class="line pump-${i}" d="${curveIn(frame, head, points)}" />`,
        )}
      </g>
      ${
        efficiency === undefined
          ? nothing
          : shown.pumps.map(
              ({ efficiency: points }, i) =>
                svg`<path class="line pump-${i}" d="${curveIn(frame, efficiency, points)}" />`,
            )
      }
      ${shown.pumps.map(({ operating }, i) => markAt(frame, head, operating, i))}
      ${shown.pumps.map((pump, i) =>
        efficiency === undefined ? nothing : efficiencyMark(pump).map((at) => markAt(frame, efficiency, at, i)),
      )}
      ${lettersView(
        frame,
        head,
        shown.pumps.map((pump) => pump.head),
        shown.pumps.map(({ operating }) => operating),
      )}
      ${
        efficiency === undefined
          ? nothing
          : lettersView(
              frame,
              efficiency,
              shown.pumps.map((pump) => pump.efficiency),
              shown.pumps.flatMap(efficiencyMark),
            )
      }
      ${crossAt(frame, head, shown.duty)}
    </svg>
    <figcaption>
      <ul class="legend">
        ${shown.pumps.map(({ name }, i) => html`<li>${pumpSwatch(i)}<span>${LETTERS[i]}: ${name}</span></li>`)}
        <li>${swatch(svg`<path class="line system" d="M1 7H29" />`)}<span>System, with margin</span></li>
        <li>${swatch(svg`<path class="duty-cross" d="M10 2l10 10M10 12l10 -10" />`)}<span>Duty asked</span></li>
      </ul>
    </figcaption>
  </figure>`;
}

function efficiencyMark({ operating, efficiencyThere }: ComparedCurves): readonly Point[] {
  return efficiencyThere === undefined ? [] : [{ flow: operating.flow, value: efficiencyThere }];
}

function frameFor({ pumps, system, duty }: CompareShown, units: CompareUnits, width: number): Frame {
  const flows = [duty.flow, ...pumps.map(({ head }) => head.at(-1)?.flow ?? 0)];
  const heads = [duty.value, ...pumps.flatMap(({ head }) => head.map(({ value }) => value)), system[0]?.value ?? 0];
  const efficiencies = pumps.flatMap(({ efficiency }) => efficiency.map(({ value }) => value));
  const wanted: PanelWanted[] = [
    {
      title: `Head, ${units.head}`,
      least: Math.min(0, leastOf(heads)),
      most: HEADROOM * greatestOf(heads),
      height: 190,
      ticks: 5,
    },
  ];
  if (efficiencies.length > 0) {
    wanted.push({
      title: "Efficiency, %",
      least: 0,
      most: HEADROOM * greatestOf(efficiencies),
      height: 96,
      ticks: 4,
    });
  }
  return frameOf(greatestOf(flows), wanted, width);
}

/** Letters and marks nearer to one another than this would run together, px. */
const APART = 12;

/** The letter of each pump at the end of its curve, over whatever stands there already. */
function lettersView(
  { x }: Frame,
  { y }: Panel,
  curves: readonly (readonly Point[])[],
  marks: readonly Point[],
): TemplateResult {
  const taken = marks.map(({ flow, value }) => ({ at: x(flow), up: y(value) }));
  return svg`${curves.map((points, i) => {
    const last = points.at(-1);
    if (last === undefined) return nothing;
    const at = x(last.flow) - 7;
    let up = y(last.value) - 10;
    while (taken.some((other) => Math.abs(other.at - at) < APART && Math.abs(other.up - up) < APART)) up -= APART / 2;
    taken.push({ at, up });
    return svg`<text class="curve-letter" x=${at} y=${up + 4} text-anchor="middle">${LETTERS[i]}</text>`;
  })}`;
}

function markAt({ x }: Frame, { y }: Panel, { flow, value }: Point, i: number): TemplateResult {
  return svg`<g class="pump-mark-${i}" transform="translate(${x(flow)} ${y(value)})">${MARKS[i]}</g>`;
}

function crossAt({ x }: Frame, { y }: Panel, { flow, value }: Point): TemplateResult {
  return svg`<path class="duty-cross" d="M${x(flow) - 5} ${y(value) - 5}l10 10M${x(flow) - 5} ${y(value) + 5}l10 -10" />`;
}

function pumpSwatch(i: number): TemplateResult {
  return swatch(
    svg`<path class="line pump-${i}" d="M1 7H29" /><g class="pump-mark-${i}" transform="translate(15 7)">${MARKS[i]}</g>`,
  );
}

function swatch(content: TemplateResult): TemplateResult {
  return html`<svg class="picture swatch" viewBox="0 0 30 14" width="30" height="14" aria-hidden="true">${content}</svg>`;
}

/** The picture in words. */
export function compareWords({ pumps, system, duty }: CompareShown, units: CompareUnits): string {
  const head = { flow: units.flow, value: units.head };
  const at = ({ flow, value }: Point): string =>
    `${figureIn(units.head, value)} ${units.head} at ${figureIn(units.flow, flow)} ${units.flow}`;
  return [
    `Duty asked: ${at(duty)}. System: ${endsText(system, head)}.`,
    ...pumps.map(
      ({ name, head: points, operating }, i) =>
        `${LETTERS[i]}, ${name}: head ${endsText(points, head)}, operating point ${at(operating)}.`,
    ),
  ].join(" ");
}
