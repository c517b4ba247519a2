import { curveMonotoneX, line } from "d3-shape";
import { svg, type TemplateResult } from "lit";
import { figureIn, figures } from "../../../shared/text/figure.ts";
import { linearScale, type Scale, ticksOf } from "./scale.ts";

/** A point of a curve, in the units of the axes. */
export interface Point {
  readonly flow: number;
  readonly value: number;
}

/** One of several pictures above one another that share the flow axis. */
export interface PanelWanted {
  /** Above it, with the unit: "Head, ft". */
  readonly title: string;
  readonly least: number;
  readonly most: number;
  /** Of the plot alone, px. */
  readonly height: number;
  /** Of the upright axis. */
  readonly ticks: number;
}

export interface Panel {
  readonly title: string;
  readonly y: Scale;
  readonly top: number;
  readonly bottom: number;
  readonly ticks: number;
}

export interface Frame {
  readonly x: Scale;
  readonly panels: readonly Panel[];
  readonly width: number;
  readonly height: number;
}

/** The flow axis goes on a little past the last point. */
const FLOW_BEYOND = 1.03;
const LEFT = 42;
const RIGHT = 12;
const TITLE = 20;
const GAP = 8;
const BELOW = 36;

/** Panels under one another with one flow axis below the last. */
export function frameOf(mostFlow: number, wanted: readonly PanelWanted[], width: number): Frame {
  const x = linearScale([0, mostFlow * FLOW_BEYOND], [LEFT, width - RIGHT]);
  let at = 0;
  const panels = wanted.map(({ title, least, most, height, ticks }) => {
    const top = at + TITLE;
    const bottom = top + height;
    at = bottom + GAP;
    const y = linearScale([least, most], [bottom, top]);
    return { title, y, top, bottom, ticks };
  });
  return { x, panels, width, height: at - GAP + BELOW };
}

/** Grid, figures and names of the axes; the figures of the flow under the last panel. */
export function frameView({ x, panels, height }: Frame, flowUnit: string): TemplateResult {
  const [left, right] = x.places;
  const last = panels.at(-1);
  return svg`${panels.map(
    ({ title, y, top, bottom, ticks }) => svg`
      <text class="panel-title" x="2" y=${top - 7}>${title}</text>
      ${ticksOf(y, ticks).map(
        (tick) => svg`<path class="grid" d="M${left} ${y(tick)}H${right}" />
          <text x=${left - 5} y=${y(tick) + 4} text-anchor="end">${figures(tick)}</text>`,
      )}
      ${ticksOf(x, 5).map((tick) => svg`<path class="grid" d="M${x(tick)} ${top}V${bottom}" />`)}
      <path class="axis" d="M${left} ${bottom}H${right}" />`,
  )}
    ${ticksOf(x, 5).map(
      (tick) => svg`<path class="tick" d="M${x(tick)} ${last?.bottom ?? 0}v4" />
        <text x=${x(tick)} y=${(last?.bottom ?? 0) + 16} text-anchor="middle">${figures(tick)}</text>`,
    )}
    <text x=${(left + right) / 2} y=${height - 4} text-anchor="middle">Flow, ${flowUnit}</text>`;
}

/** The d of a curve in a panel. */
export function curveIn({ x }: Frame, { y }: Panel, points: readonly Point[]): string {
  const drawn = line<Point>(
    (point) => x(point.flow),
    (point) => y(point.value),
  ).curve(curveMonotoneX);
  return drawn(points) ?? "";
}

/** A rectangle that nothing of a panel is drawn outside of, and the attribute that keeps it so. */
export function clipOf({ x }: Frame, { top, bottom }: Panel, id: string): TemplateResult {
  const [left, right] = x.places;
  return svg`<clipPath id=${id}><rect x=${left} y=${top - 2} width=${right - left + 2} height=${bottom - top + 2} /></clipPath>`;
}

/** The points in the units of the axes. */
export function shownPoints(
  points: readonly { readonly flow: number; readonly value: number }[],
  flow: (value: number) => number,
  value: (value: number) => number,
): readonly Point[] {
  return points.map((point) => ({ flow: flow(point.flow), value: value(point.value) }));
}

/** The part of a curve up to a flow, with the point it leaves at. */
export function upTo(points: readonly Point[], most: number): readonly Point[] {
  const after = points.findIndex(({ flow }) => flow > most);
  if (after <= 0) return after === 0 ? [] : points;
  const [before, next] = [points[after - 1] as Point, points[after] as Point];
  const part = (most - before.flow) / (next.flow - before.flow);
  return [...points.slice(0, after), { flow: most, value: before.value + part * (next.value - before.value) }];
}

/** "42 at 10 to 30 at 60", for curves told in words. */
export function endsText(points: readonly Point[], units: { readonly flow: string; readonly value: string }): string {
  const at = ({ flow, value }: Point): string =>
    `${figureIn(units.value, value)} ${units.value} at ${figureIn(units.flow, flow)} ${units.flow}`;
  return [points[0], points.at(-1)]
    .filter((point) => point !== undefined)
    .map(at)
    .join(" to ");
}
