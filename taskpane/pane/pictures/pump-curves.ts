import { html, nothing, svg, type TemplateResult } from "lit";
import { figureIn } from "../../../shared/text/figure.ts";
import { greatestOf, leastOf } from "../../../src/numeric/extremes.ts";
import { chartView } from "./chart/chart.ts";
import { smoothly } from "./chart/curve-values.ts";
import { type Place, type PlacedLabel, placeLabels } from "./chart/place-labels.ts";
import type { Drawn, Size } from "./chart/plot.ts";
import type { Readable, ReadCurve } from "./chart/readable.ts";
import {
  clipOf,
  curveIn,
  type Frame,
  frameOf,
  frameView,
  type Panel,
  type PanelWanted,
  type Point,
  upTo,
} from "./pump-curves-frame.ts";
import { npshMargins, npshShort, pumpCurvesWords, pumpFinding } from "./pump-curves-words.ts";

/** A curve with its name, and the kind of line it is drawn in. */
export interface NamedCurve {
  readonly label: string;
  /** On the curve itself. */
  readonly name: string;
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
  readonly pumps: readonly NamedCurve[];
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
  /** Whether the verdict on the head passes. */
  readonly meets: boolean;
  /** Operating flow over best efficiency flow, per cent. */
  readonly ofBest: number | undefined;
  /** Flows of the preferred operating region. */
  readonly preferred: { readonly leastFlow: number; readonly greatestFlow: number } | undefined;
  /** Flows of the duty region, and the corners that bound it. */
  readonly region:
    | { readonly leastFlow: number; readonly greatestFlow: number; readonly corners: readonly Point[] }
    | undefined;
  /** Per cent. */
  readonly efficiency: readonly Point[];
  readonly shaftPower: readonly Point[];
  readonly npshRequired: readonly Point[];
  readonly npshAvailable: readonly Point[];
}

export interface PumpUnits {
  readonly flow: string;
  readonly head: string;
  readonly power: string;
}

const HEADROOM = 1.06;
/** Over curves that have their names on them. */
const ROOM_FOR_NAMES = 1.3;

/** Head, efficiency, power and NPSH of a pump against flow, with the systems it runs on and the regions between them. */
export function pumpCurvesPicture(shown: PumpCurvesShown, units: PumpUnits, width: number): TemplateResult {
  return chartView("Pump and system curves", width, (size) => drawn(shown, units, size));
}

function drawn(shown: PumpCurvesShown, units: PumpUnits, { width, tall }: Size): Drawn {
  const frame = frameFor(shown, units, width, tall);
  const [head, ...others] = frame.panels as [Panel, ...Panel[]];
  const next = (points: readonly Point[]): Panel | undefined => (points.length > 0 ? others.shift() : undefined);
  const efficiency = next(shown.efficiency);
  const power = next(shown.shaftPower);
  const npsh = others.shift();
  const curves = [...shown.systems, ...shown.family, ...shown.pumps, shown.running];
  // The same picture may stand on the page twice.
  const clip = (panel: number): string => `duty-pump-clip-${panel}-${Math.round(width)}`;
  const names = namesOn(frame, head, shown);
  const svgView = html`<svg
    class="picture"
    viewBox="0 0 ${width} ${frame.height}"
    width=${width}
    height=${frame.height}
    role="img"
    aria-label="${pumpCurvesWords(shown, units)}"
  >
    <defs>${frame.panels.map((panel, i) => clipOf(frame, panel, clip(i)))}</defs>
    ${preferredView(frame, head, shown)} ${regionView(frame, shown)} ${frameView(frame, units.flow)}
    <g clip-path="url(#${clip(0)})">
      ${cornersView(frame, head, shown)}
      ${shown.cross === undefined ? nothing : svg`<path class="acceptance" d="${straightLine(frame, head, shown.cross.stroke)}" />`}
      ${curves.map(({ points, kind }) => svg`<path class="line ${kind}" d="${curveIn(frame, head, points)}" />`)}
    </g>
    ${efficiency === undefined ? nothing : curveView(frame, efficiency, shown.efficiency, shown)}
    ${power === undefined ? nothing : curveView(frame, power, shown.shaftPower, shown)}
    ${npsh === undefined ? nothing : npshView(frame, npsh, shown)} ${pointsView(frame, head, shown)}
    ${preferredName(frame, head, shown)}
    ${names.map(({ text, x, y }) => svg`<text class="curve-name" x=${x} y=${y}>${text}</text>`)}
  </svg>`;
  const named = new Set(names.map(({ key }) => key));
  return {
    svg: svgView,
    readable: readableOf(shown, units, frame),
    caption: html`<p class="chart-finding">${pumpFinding(shown, units)}</p>
      ${legendView(shown, units, named)}`,
  };
}

function preferredName(
  { x }: Frame,
  { bottom }: Panel,
  { preferred }: PumpCurvesShown,
): TemplateResult | typeof nothing {
  if (preferred === undefined || preferred.leastFlow >= x.ends[1]) return nothing;
  return svg`<text class="preferred-name" x=${x(preferred.leastFlow) + 4} y=${bottom - 4}>preferred</text>`;
}

/** What is read at a flow: every curve that is drawn over it. */
function readableOf(shown: PumpCurvesShown, units: PumpUnits, { x }: Frame): Readable {
  const curve = (name: string, unit: string, points: readonly Point[]): ReadCurve => ({
    name,
    unit,
    valueAt: smoothly(points.map(({ flow, value }) => [flow, value])),
  });
  return {
    along: "Flow",
    unit: units.flow,
    x,
    start: shown.duty.flow,
    curves: [
      ...[shown.running, ...shown.pumps, ...shown.family, ...shown.systems].map(({ name, points }) =>
        curve(name, units.head, points),
      ),
      curve("efficiency", "%", shown.efficiency),
      curve("shaft power", units.power, shown.shaftPower),
      curve("NPSH available", units.head, reachOf(shown)),
      curve("NPSH required", units.head, shown.npshRequired),
    ],
  };
}

/** Names on the curves and marks of the head panel, as far as there is room. */
function namesOn(frame: Frame, panel: Panel, shown: PumpCurvesShown): readonly PlacedLabel[] {
  const { x } = frame;
  const { y, top, bottom } = panel;
  const place = ({ flow, value }: Point): Place => [x(flow), y(value)];
  const isSeen = ([, up]: Place): boolean => up >= top && up <= bottom;
  const curves = [shown.running, ...shown.pumps, ...shown.systems, ...shown.family].map((curve) => ({
    ...curve,
    places: curve.points.map(place).filter(isSeen),
  }));
  const along = (places: readonly Place[]): readonly Place[] =>
    [0.92, 0.75, 0.6, 0.45, 0.3, 0.12].flatMap((part) => placeAlong(places, part));
  const marks = [
    { key: "duty", text: "duty", point: shown.duty },
    { key: "operating", text: "operating point", point: shown.operating },
  ].flatMap(({ key, text, point }) => (point === undefined ? [] : [{ key, text, beside: [place(point)] }]));
  const [left, right] = x.places;
  return placeLabels(
    [...marks, ...curves.map(({ label, name, places }) => ({ key: label, text: name, beside: along(places) }))],
    { left, right, top, bottom },
    [...curves.map(({ places }) => places), ...marks.map(({ beside }) => beside)],
  );
}

/** A place on the way along a line, none of a line without length. */
function placeAlong(places: readonly Place[], part: number): readonly Place[] {
  const at = part * (places.length - 1);
  const [from, to] = [places[Math.floor(at)], places[Math.ceil(at)]];
  if (from === undefined || to === undefined) return [];
  const share = at % 1;
  return [[from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])]];
}

/** The preferred operating region; its name stands at its foot, over what else is drawn there. */
function preferredView(
  { x }: Frame,
  { top, bottom }: Panel,
  { preferred }: PumpCurvesShown,
): TemplateResult | typeof nothing {
  if (preferred === undefined) return nothing;
  const [from, to] = [x(preferred.leastFlow), Math.min(x.places[1], x(preferred.greatestFlow))];
  if (!(to > from)) return nothing;
  return svg`<rect class="preferred" x=${from} y=${top} width=${to - from} height=${bottom - top} />
    <path class="preferred-edge" d="M${from} ${top}V${bottom}M${to} ${top}V${bottom}" />`;
}

function frameFor(shown: PumpCurvesShown, units: PumpUnits, width: number, tall: number): Frame {
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
      height: 196 * tall,
      ticks: 5,
    },
  ];
  if (shown.efficiency.length > 0) {
    const most = greatestOf(shown.efficiency.map(({ value }) => value));
    wanted.push({
      title: `Efficiency${ofOne(shown)}, %`,
      least: 0,
      most: HEADROOM * most,
      height: 72 * tall,
      ticks: 3,
    });
  }
  if (shown.shaftPower.length > 0) {
    const most = HEADROOM * greatestOf(shown.shaftPower.map(({ value }) => value));
    wanted.push({ title: `Shaft power${ofOne(shown)}, ${units.power}`, least: 0, most, height: 60 * tall, ticks: 3 });
  }
  if (npsh.length > 0) {
    const [least, most] = [Math.min(0, leastOf(npsh)), ROOM_FOR_NAMES * greatestOf(npsh)];
    wanted.push({ title: `NPSH${ofOne(shown)}, ${units.head}`, least, most, height: 84 * tall, ticks: 3 });
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

function curveView(frame: Frame, panel: Panel, points: readonly Point[], shown: PumpCurvesShown): TemplateResult {
  return svg`<path class="line running" d="${curveIn(frame, panel, points)}" />
    ${dropView(frame, panel, readAt(shown))}`;
}

/** NPSH available over required: the margin between them filled, and hatched where it is none. */
function npshView(frame: Frame, panel: Panel, shown: PumpCurvesShown): TemplateResult {
  const available = reachOf(shown);
  return svg`${marginViews(frame, panel, shown)}
    <path class="line running" d="${curveIn(frame, panel, shown.npshRequired)}" />
    <path class="line system" d="${curveIn(frame, panel, available)}" />
    ${dropView(frame, panel, readAt(shown))}
    ${nameView(frame, panel, available, "available")} ${nameView(frame, panel, shown.npshRequired, "required")}`;
}

function marginViews({ x }: Frame, { y, top, bottom }: Panel, shown: PumpCurvesShown): TemplateResult | typeof nothing {
  const margins = npshMargins(shown);
  const above = npshShort(shown);
  const requiredAt = smoothly(shown.npshRequired.map(({ flow, value }) => [flow, value]));
  const area = (points: readonly Point[]): string => {
    const along = points.flatMap(({ flow, value }) => {
      const required = requiredAt(flow);
      return required === undefined ? [] : [{ at: x(flow), low: y(required), high: y(required + value) }];
    });
    const back = along.toReversed().map(({ at, low }) => `L${at} ${low}`);
    return `M${along.map(({ at, high }) => `${at} ${high}`).join("L")}${back.join("")}Z`;
  };
  const crossing = above?.above;
  const at = { flow: crossing ?? 0, value: 0 };
  const kept = margins.filter(({ value }) => value >= 0);
  const short = margins.filter(({ value }) => value < 0);
  const joined = crossing === undefined ? [] : [at];
  return svg`${kept.length + joined.length < 2 ? nothing : svg`<path class="npsh-margin" d="${area([...kept, ...joined])}" />`}
    ${
      short.length === 0
        ? nothing
        : svg`<path class="npsh-short" d="${area([...joined, ...short])}" />
            <path class="npsh-hatch" d="${short
              .map(({ flow, value }) => [x(flow), requiredAt(flow) ?? 0, value] as const)
              .map(([place, required, value]) => `M${place} ${y(required)}V${y(required + value)}`)
              .join("")}" />`
    }
    ${
      crossing === undefined
        ? nothing
        : svg`<path class="npsh-crossing" d="M${x(crossing)} ${top}V${bottom}" />
            <path class="short-mark" d="M${x(crossing) - 5} ${y(requiredAt(crossing) ?? 0) - 4}l5 -9l5 9Z" />`
    }`;
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
function straightLine({ x }: Frame, { y }: Panel, points: readonly Point[]): string {
  return points.map(({ flow, value }, i) => `${i === 0 ? "M" : "L"}${x(flow)} ${y(value)}`).join("");
}

function diamond(x: number, y: number): string {
  return `M${x} ${y - 5}L${x + 5} ${y}L${x} ${y + 5}L${x - 5} ${y}Z`;
}

/** The lines and marks that no name stands beside. */
function legendView(
  shown: PumpCurvesShown,
  units: PumpUnits,
  named: ReadonlySet<string>,
): TemplateResult | typeof nothing {
  const { region } = shown;
  const short = npshShort(shown);
  const rows = [
    ...[shown.running, ...shown.pumps, ...shown.family, ...shown.systems]
      .filter(({ label }) => !named.has(label))
      .map(({ label, kind }) => ({ sign: lineSwatch(kind), text: label })),
    ...(named.has("duty")
      ? []
      : [{ sign: swatch(svg`<path class="duty-cross" d="M10 2l10 10M10 12l10 -10" />`), text: "Duty" }]),
    ...(named.has("operating") || shown.operating === undefined
      ? []
      : [{ sign: swatch(svg`<circle class="operating-point" cx="15" cy="7" r="4.5" />`), text: "Operating point" }]),
    ...(shown.measured === undefined
      ? []
      : [
          {
            sign: swatch(svg`<path class="measured" d="${diamond(15, 7)}" />`),
            text: `Measured: ${figureIn(units.flow, shown.measured.flow)} ${units.flow}, ${figureIn(units.head, shown.measured.value)} ${units.head}`,
          },
        ]),
    ...(shown.cross === undefined
      ? []
      : [
          {
            sign: swatch(svg`<path class="acceptance" d="M3 7H27M15 1V13" />`),
            text: `Acceptance, grade ${shown.cross.grade}, round the guaranteed duty`,
          },
        ]),
    ...(shown.ends.length === 0
      ? []
      : [
          {
            sign: swatch(svg`<circle class="end-point" cx="15" cy="7" r="3.5" />`),
            text: "Operating points at the ends of the range",
          },
        ]),
    ...(region === undefined || !(region.greatestFlow > region.leastFlow)
      ? []
      : [
          {
            sign: swatch(
              svg`<rect class="region" x="3" y="1" width="24" height="12" /><path class="region-edge" d="M3 1V13M27 1V13" />`,
            ),
            text: `Operating range: ${figureIn(units.flow, region.leastFlow)} to ${figureIn(units.flow, region.greatestFlow)} ${units.flow}`,
          },
        ]),
    ...(short === undefined
      ? []
      : [
          {
            sign: swatch(svg`<path class="npsh-hatch" d="M5 1V13M10 1V13M15 1V13M20 1V13M25 1V13" />`),
            text: "NPSH short",
          },
        ]),
  ];
  if (rows.length === 0) return nothing;
  return html`<ul class="legend">
    ${rows.map(({ sign, text }) => html`<li>${sign}<span>${text}</span></li>`)}
  </ul>`;
}

function lineSwatch(kind: NamedCurve["kind"]): TemplateResult {
  return swatch(svg`<path class="line ${kind}" d="M1 7H29" />`);
}

function swatch(content: TemplateResult): TemplateResult {
  return html`<svg class="picture swatch" viewBox="0 0 30 14" width="30" height="14" aria-hidden="true">${content}</svg>`;
}

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
