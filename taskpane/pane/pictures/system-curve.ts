import { curveMonotoneX, line } from "d3-shape";
import { html, nothing, svg, type TemplateResult } from "lit";
import { figureIn, figures } from "../../../shared/text/figure.ts";
import { greatestOf, leastOf } from "../../../src/numeric/extremes.ts";
import { chartView } from "./chart/chart.ts";
import { smoothly } from "./chart/curve-values.ts";
import type { Drawn, Size } from "./chart/plot.ts";
import { linearScale, roundedOut, type Scale, ticksOf } from "./scale.ts";

/** A point of the curve, in the units of the axes. */
export interface CurvePoint {
  readonly flow: number;
  readonly head: number;
}

export interface CurveUnits {
  readonly flow: string;
  readonly head: string;
}

const HEIGHT_IN_PANE = 210;
const LABEL_WIDTH = 96;
const MARGIN = { top: 12, right: 12, bottom: 40, left: 46 } as const;

/** Total head the system asks for against flow, with the duty marked on it, and the minimum flow of a slurry. */
export function systemCurvePicture(
  points: readonly CurvePoint[],
  duty: CurvePoint,
  minimum: CurvePoint | undefined,
  units: CurveUnits,
  width: number,
): TemplateResult {
  return chartView("System curve", width, (size) => drawn(points, duty, minimum, units, size));
}

function drawn(
  points: readonly CurvePoint[],
  duty: CurvePoint,
  minimum: CurvePoint | undefined,
  units: CurveUnits,
  { width, tall }: Size,
): Drawn {
  const height = HEIGHT_IN_PANE * tall;
  const all = [...points, duty, ...(minimum === undefined ? [] : [minimum])];
  const heads = all.map(({ head }) => head);
  const x = linearScale(roundedOut([0, greatestOf(all.map(({ flow }) => flow))], 5), [
    MARGIN.left,
    width - MARGIN.right,
  ]);
  const y = linearScale(roundedOut([Math.min(0, leastOf(heads)), Math.max(0, greatestOf(heads)) * 1.05], 5), [
    height - MARGIN.bottom,
    MARGIN.top,
  ]);
  const curve = line<CurvePoint>(
    (point) => x(point.flow),
    (point) => y(point.head),
  ).curve(curveMonotoneX);
  const xDuty = x(duty.flow);
  const yDuty = y(duty.head);
  // Above the curve on its left; below it on its right where the duty lies too far left for that.
  const onRight = xDuty - MARGIN.left < LABEL_WIDTH;
  const xLabel = xDuty + (onRight ? 9 : -9);
  const yLabel = onRight ? yDuty + 16 : Math.max(MARGIN.top + 9, yDuty - 22);
  const picture = html`<svg
    class="picture"
    viewBox="0 0 ${width} ${height}"
    width=${width}
    height=${height}
    role="img"
    aria-label="${curveWords(points, duty, minimum, units)}"
  >
    ${flowAxis(x, units.flow, width, height)} ${headAxis(y, units.head, width, height)}
    <path class="guide" d="M${xDuty} ${y.places[0]}V${yDuty}H${MARGIN.left}" />
    <path class="curve" d="${curve(points) ?? ""}" />
    ${minimum === undefined ? nothing : minimumMark(x(minimum.flow), y(minimum.head), y.places[0])}
    <circle class="duty-point" cx=${xDuty} cy=${yDuty} r="4.5" />
    ${[`${figureIn(units.flow, duty.flow)} ${units.flow}`, `${figureIn(units.head, duty.head)} ${units.head}`].map(
      (text, i) => svg`<text
        class="duty-label"
        x=${xLabel}
        y=${yLabel + 14 * i}
        text-anchor=${onRight ? "start" : "end"}
      >${text}</text>`,
    )}
  </svg>`;
  return {
    svg: picture,
    readable: {
      along: "Flow",
      unit: units.flow,
      x,
      start: duty.flow,
      curves: [{ name: "head", unit: units.head, valueAt: smoothly(points.map(({ flow, head }) => [flow, head])) }],
    },
    caption: nothing,
  };
}

/** The least flow that keeps solids moving: a dashed line with its name along it. */
function minimumMark(x: number, top: number, base: number): TemplateResult {
  return svg`<path class="line aged" d="M${x} ${base}V${MARGIN.top}" />
    <circle class="duty-point" cx=${x} cy=${top} r="3" />
    <text x=${x - 4} y=${base - 6} text-anchor="start" transform="rotate(-90 ${x - 4} ${base - 6})">minimum flow</text>`;
}

/** The picture in words. */
export function curveWords(
  points: readonly CurvePoint[],
  duty: CurvePoint,
  minimum: CurvePoint | undefined,
  units: CurveUnits,
): string {
  const at = ({ flow, head }: CurvePoint): string =>
    `${figureIn(units.head, head)} ${units.head} at ${figureIn(units.flow, flow)} ${units.flow}`;
  const ends = [points[0], points.at(-1)].filter((point) => point !== undefined).map(at);
  const least = minimum === undefined ? "" : ` Minimum flow that keeps solids moving: ${at(minimum)}.`;
  return `The system takes ${at(duty)}, the duty. System curve: ${ends.join(" rising to ")}.${least}`;
}

function flowAxis(x: Scale, unit: string, width: number, height: number): TemplateResult {
  const base = height - MARGIN.bottom;
  return svg`<path class="axis" d="M${MARGIN.left} ${base}H${width - MARGIN.right}" />
    ${ticksOf(x, 5).map(
      (tick) => svg`<path class="tick" d="M${x(tick)} ${base}v4" />
        <text x=${x(tick)} y=${base + 16} text-anchor="middle">${figures(tick)}</text>`,
    )}
    <text x=${(MARGIN.left + width - MARGIN.right) / 2} y=${height - 6} text-anchor="middle">Flow, ${unit}</text>`;
}

function headAxis(y: Scale, unit: string, width: number, height: number): TemplateResult {
  const middle = (MARGIN.top + height - MARGIN.bottom) / 2;
  return svg`${ticksOf(y, 5).map(
    (tick) => svg`<path class="grid" d="M${MARGIN.left} ${y(tick)}H${width - MARGIN.right}" />
      <text x=${MARGIN.left - 6} y=${y(tick) + 4} text-anchor="end">${figures(tick)}</text>`,
  )}
    <text x="11" y=${middle} text-anchor="middle" transform="rotate(-90 11 ${middle})">Head, ${unit}</text>`;
}
