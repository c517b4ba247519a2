import { html, nothing, svg, type TemplateResult } from "lit";
import { figureIn } from "../../../shared/text/figure.ts";
import { greatestOf, leastOf } from "../../../src/numeric/extremes.ts";
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
  upTo,
} from "./pump-curves-frame.ts";

/** A curve with its name, and the kind of line it is drawn in. */
export interface NamedCurve {
  readonly label: string;
  readonly points: readonly Point[];
  readonly kind:
    | "running"
    | "family"
    | "system"
    | "least"
    | "greatest"
    | "aged"
    | "greatest-aged"
    | "pump-1"
    | "pump-2"
    | "pump-3";
}

export interface NamedPoint {
  readonly label: string;
  readonly point: Point;
}

/** A pump on its duty, all in the units of the axes. */
export interface PumpCurvesShown {
  readonly running: NamedCurve;
  /** Unlike pumps, each by itself. */
  readonly pumps: readonly (NamedCurve & { readonly name: string })[];
  /** Whose efficiency and NPSH are drawn, over its own flow, where that is not the flow of all. */
  readonly ofOne: { readonly name: string; readonly flow: number | undefined } | undefined;
  readonly family: readonly NamedCurve[];
  readonly systems: readonly NamedCurve[];
  /** Flow asked for, and the head with its margin. */
  readonly duty: Point;
  /** On the duty as stated. */
  readonly operating: Point | undefined;
  /** What an acceptance test is judged by, and the grade. */
  readonly cross: { readonly grade: string; readonly stroke: readonly Point[] } | undefined;
  /** On site. */
  readonly measured: Point | undefined;
  /** At the ends of the range. */
  readonly ends: readonly NamedPoint[];
  /** Flows of the duty region, and the corners that bound it. */
  readonly region:
    | { readonly leastFlow: number; readonly greatestFlow: number; readonly corners: readonly Point[] }
    | undefined;
  /** Per cent. */
  readonly efficiency: readonly Point[];
  readonly npshRequired: readonly Point[];
  readonly npshAvailable: readonly Point[];
}

export interface PumpUnits {
  readonly flow: string;
  readonly head: string;
}

const HEADROOM = 1.06;
/** Over curves that have their names on them. */
const ROOM_FOR_NAMES = 1.3;

/** Head, efficiency and NPSH of a pump against flow, with the systems it runs on and the region between them. */
export function pumpCurvesPicture(shown: PumpCurvesShown, units: PumpUnits, width: number): TemplateResult {
  const frame = frameFor(shown, units, width);
  const [head, ...others] = frame.panels as [Panel, ...Panel[]];
  const efficiency = shown.efficiency.length > 0 ? others.shift() : undefined;
  const npsh = others.shift();
  const curves = [...shown.systems, ...shown.family, ...shown.pumps, shown.running];
  return html`<figure class="pump-curves">
    <svg
      class="picture"
      viewBox="0 0 ${width} ${frame.height}"
      width=${width}
      height=${frame.height}
      role="img"
      aria-label="${pumpCurvesWords(shown, units)}"
    >
      <defs>${frame.panels.map((panel, i) => clipOf(frame, panel, `duty-pump-clip-${i}`))}</defs>
      ${regionView(frame, shown)} ${frameView(frame, units.flow)}
      <g clip-path="url(#duty-pump-clip-0)">
        ${cornersView(frame, head, shown)}
        ${shown.cross === undefined ? nothing : svg`<path class="acceptance" d="${straight(frame, head, shown.cross.stroke)}" />`}
        ${curves.map(({ points, kind }) => svg`<path class="line ${kind}" d="${curveIn(frame, head, points)}" />`)}
      </g>
      ${shown.pumps.map(({ points, name }) => endNameView(frame, head, points, name))}
      ${efficiency === undefined ? nothing : efficiencyView(frame, efficiency, shown)}
      ${npsh === undefined ? nothing : npshView(frame, npsh, shown)} ${pointsView(frame, head, shown)}
    </svg>
    <figcaption>${legendView(shown, units)}</figcaption>
  </figure>`;
}

function frameFor(shown: PumpCurvesShown, units: PumpUnits, width: number): Frame {
  const pumpCurves = [shown.running, ...shown.pumps, ...shown.family];
  const flows = [shown.duty.flow, ...pumpCurves.map(({ points }) => points.at(-1)?.flow ?? 0)];
  const heads = [
    shown.duty.value,
    ...pumpCurves.flatMap(({ points }) => points.map(({ value }) => value)),
    ...shown.systems.map(({ points }) => points[0]?.value ?? 0),
  ];
  const npsh = [...shown.npshRequired, ...reachOf(shown)].map(({ value }) => value);
  const wanted: PanelWanted[] = [
    {
      title: `Head, ${units.head}`,
      least: Math.min(0, leastOf(heads)),
      most: HEADROOM * greatestOf(heads),
      height: 196,
      ticks: 5,
    },
  ];
  if (shown.efficiency.length > 0) {
    const most = greatestOf(shown.efficiency.map(({ value }) => value));
    wanted.push({ title: `Efficiency${ofOne(shown)}, %`, least: 0, most: HEADROOM * most, height: 72, ticks: 3 });
  }
  if (npsh.length > 0) {
    const [least, most] = [Math.min(0, leastOf(npsh)), ROOM_FOR_NAMES * greatestOf(npsh)];
    wanted.push({ title: `NPSH${ofOne(shown)}, ${units.head}`, least, most, height: 84, ticks: 3 });
  }
  return frameOf(greatestOf(flows), wanted, width);
}

function ofOne({ ofOne: one }: PumpCurvesShown): string {
  return one === undefined ? "" : ` of ${one.name}, over its own flow`;
}

/** The flow that figures of one pump are read at. */
function readAt({ ofOne: one, operating }: PumpCurvesShown): number | undefined {
  return one === undefined ? operating?.flow : one.flow;
}

/** NPSH available as far as the pump reaches. */
function reachOf({ running, npshAvailable }: PumpCurvesShown): readonly Point[] {
  return upTo(npshAvailable, running.points.at(-1)?.flow ?? 0);
}

/** The flows of the duty region as a band through every panel. */
function regionView({ x, panels }: Frame, { region }: PumpCurvesShown): TemplateResult | typeof nothing {
  if (region === undefined || !(region.greatestFlow > region.leastFlow)) return nothing;
  const [from, to] = [x(region.leastFlow), x(region.greatestFlow)];
  return svg`${panels.map(
    ({ top, bottom }) => svg`<rect class="region" x=${from} y=${top} width=${to - from} height=${bottom - top} />
      <path class="region-edge" d="M${from} ${top}V${bottom}M${to} ${top}V${bottom}" />`,
  )}`;
}

/** The operating points that bound the region, joined round the outside. */
function cornersView({ x }: Frame, { y }: Panel, { region }: PumpCurvesShown): TemplateResult | typeof nothing {
  const around = hullOf((region?.corners ?? []).map(({ flow, value }) => [x(flow), y(value)] as const));
  if (around.length < 3) return nothing;
  return svg`<path class="corners" d="M${around.map(([at, up]) => `${at} ${up}`).join("L")}Z" />`;
}

function efficiencyView(frame: Frame, panel: Panel, shown: PumpCurvesShown): TemplateResult {
  return svg`<path class="line running" d="${curveIn(frame, panel, shown.efficiency)}" />
    ${dropView(frame, panel, readAt(shown))}`;
}

function npshView(frame: Frame, panel: Panel, shown: PumpCurvesShown): TemplateResult {
  const available = reachOf(shown);
  return svg`<path class="line running" d="${curveIn(frame, panel, shown.npshRequired)}" />
    <path class="line system" d="${curveIn(frame, panel, available)}" />
    ${dropView(frame, panel, readAt(shown))}
    ${nameView(frame, panel, available, "available")} ${nameView(frame, panel, shown.npshRequired, "required")}`;
}

/** The operating flow carried down through a panel. */
function dropView({ x }: Frame, { top, bottom }: Panel, flow: number | undefined): TemplateResult | typeof nothing {
  return flow === undefined ? nothing : svg`<path class="guide" d="M${x(flow)} ${top}V${bottom}" />`;
}

/** The name of a curve over its left end, where the two lie furthest apart. */
function nameView({ x }: Frame, { y }: Panel, points: readonly Point[], name: string): TemplateResult | typeof nothing {
  const first = points[0];
  if (first === undefined) return nothing;
  return svg`<text class="curve-name" x=${x(first.flow) + 4} y=${y(first.value) - 5}>${name}</text>`;
}

/** The name of a pump at the end of its curve. */
function endNameView(
  { x }: Frame,
  { y }: Panel,
  points: readonly Point[],
  name: string,
): TemplateResult | typeof nothing {
  const last = points.at(-1);
  if (last === undefined) return nothing;
  return svg`<text class="curve-name" text-anchor="end" x=${x(last.flow) - 2} y=${y(last.value) + 14}>${name}</text>`;
}

function pointsView({ x }: Frame, { y, bottom }: Panel, shown: PumpCurvesShown): TemplateResult {
  const { duty, operating, ends, measured } = shown;
  const [xDuty, yDuty] = [x(duty.flow), y(duty.value)];
  return svg`${ends.map(({ point }) => svg`<circle class="end-point" cx=${x(point.flow)} cy=${y(point.value)} r="3.5" />`)}
    ${
      operating === undefined
        ? nothing
        : svg`<path class="guide" d="M${x(operating.flow)} ${y(operating.value)}V${bottom}" />
            <circle class="operating-point" cx=${x(operating.flow)} cy=${y(operating.value)} r="4.5" />`
    }
    ${measured === undefined ? nothing : svg`<path class="measured" d="${diamond(x(measured.flow), y(measured.value))}" />`}
    <path class="duty-cross" d="M${xDuty - 5} ${yDuty - 5}l10 10M${xDuty - 5} ${yDuty + 5}l10 -10" />`;
}

/** A straight line through points. */
function straight({ x }: Frame, { y }: Panel, points: readonly Point[]): string {
  return points.map(({ flow, value }, i) => `${i === 0 ? "M" : "L"}${x(flow)} ${y(value)}`).join("");
}

function diamond(x: number, y: number): string {
  return `M${x} ${y - 5}L${x + 5} ${y}L${x} ${y + 5}L${x - 5} ${y}Z`;
}

/** Every kind of line and mark with its name and figures. */
function legendView(shown: PumpCurvesShown, units: PumpUnits): TemplateResult {
  const at = ({ flow, value }: Point): string =>
    `${figureIn(units.flow, flow)} ${units.flow}, ${figureIn(units.head, value)} ${units.head}`;
  const { region } = shown;
  return html`<ul class="legend">
    ${[shown.running, ...shown.pumps, ...shown.family, ...shown.systems].map(
      ({ label, kind }) => html`<li>${lineSwatch(kind)}<span>${label}</span></li>`,
    )}
    <li>${swatch(svg`<path class="duty-cross" d="M10 2l10 10M10 12l10 -10" />`)}<span>Duty asked: ${at(shown.duty)}</span></li>
    ${
      shown.operating === undefined
        ? nothing
        : html`<li>
            ${swatch(svg`<circle class="operating-point" cx="15" cy="7" r="4.5" />`)}
            <span>Operating point: ${at(shown.operating)}</span>
          </li>`
    }
    ${
      shown.measured === undefined
        ? nothing
        : html`<li>
            ${swatch(svg`<path class="measured" d="${diamond(15, 7)}" />`)}
            <span>Measured: ${at(shown.measured)}</span>
          </li>`
    }
    ${
      shown.cross === undefined
        ? nothing
        : html`<li>
            ${swatch(svg`<path class="acceptance" d="M3 7H27M15 1V13" />`)}
            <span>Acceptance, grade ${shown.cross.grade}, round the guaranteed duty</span>
          </li>`
    }
    ${
      shown.ends.length === 0
        ? nothing
        : html`<li>
            ${swatch(svg`<circle class="end-point" cx="15" cy="7" r="3.5" />`)}
            <span>Operating points at the ends of the range</span>
          </li>`
    }
    ${
      region === undefined || !(region.greatestFlow > region.leastFlow)
        ? nothing
        : html`<li>
            ${swatch(svg`<rect class="region" x="3" y="1" width="24" height="12" /><path class="region-edge" d="M3 1V13M27 1V13" />`)}
            <span>
              Operating range: ${figureIn(units.flow, region.leastFlow)} to ${figureIn(units.flow, region.greatestFlow)} ${units.flow}
            </span>
          </li>`
    }
  </ul>`;
}

function lineSwatch(kind: NamedCurve["kind"]): TemplateResult {
  return swatch(svg`<path class="line ${kind}" d="M1 7H29" />`);
}

function swatch(content: TemplateResult): TemplateResult {
  return html`<svg class="picture swatch" viewBox="0 0 30 14" width="30" height="14" aria-hidden="true">${content}</svg>`;
}

/** The picture in words. */
export function pumpCurvesWords(shown: PumpCurvesShown, units: PumpUnits): string {
  const head = { flow: units.flow, value: units.head };
  const at = ({ flow, value }: Point): string =>
    `${figureIn(units.head, value)} ${units.head} at ${figureIn(units.flow, flow)} ${units.flow}`;
  const { region, operating } = shown;
  const best = shown.efficiency.reduce<Point | undefined>(
    (top, point) => (top === undefined || point.value > top.value ? point : top),
    undefined,
  );
  return [
    ...[shown.running, ...shown.pumps, ...shown.family, ...shown.systems].map(
      ({ label, points }) => `${label}: ${endsText(points, head)}.`,
    ),
    `Duty asked: ${at(shown.duty)}.`,
    operating === undefined ? "There is no operating point." : `Operating point: ${at(operating)}.`,
    ...shown.ends.map(({ label, point }) => `${label}: ${at(point)}.`),
    ...(region === undefined || !(region.greatestFlow > region.leastFlow)
      ? []
      : [
          `Operating range: ${figureIn(units.flow, region.leastFlow)} to ${figureIn(units.flow, region.greatestFlow)} ${units.flow}.`,
        ]),
    ...(best === undefined
      ? []
      : [`Efficiency: ${figureIn("%", best.value)} % at best, at ${figureIn(units.flow, best.flow)} ${units.flow}.`]),
    ...(shown.npshRequired.length === 0 ? [] : [`NPSH required: ${endsText(shown.npshRequired, head)}.`]),
    ...(shown.npshAvailable.length === 0 ? [] : [`NPSH available: ${endsText(reachOf(shown), head)}.`]),
  ].join(" ");
}

type Place = readonly [x: number, y: number];

/** The outermost of some places, in order round them. */
export function hullOf(places: readonly Place[]): readonly Place[] {
  const sorted = places.toSorted(([ax, ay], [bx, by]) => ax - bx || ay - by);
  const half = (from: readonly Place[]): readonly Place[] => {
    const kept: Place[] = [];
    for (const place of from) {
      while (kept.length > 1 && !turnsLeft(kept.at(-2) as Place, kept.at(-1) as Place, place)) kept.pop();
      kept.push(place);
    }
    return kept.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

function turnsLeft([ax, ay]: Place, [bx, by]: Place, [cx, cy]: Place): boolean {
  return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax) > 0;
}
