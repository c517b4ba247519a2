import { html, nothing, svg, type TemplateResult } from "lit";
import type { RouteLine, RoutePlace } from "../../../shared/package/route-line.ts";
import { figures } from "../../../shared/text/figure.ts";
import { amountText } from "../../../shared/text/words.ts";
import { printedUnit, UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { amount } from "../../../src/basis/result.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import { greatestOf, leastOf } from "../../../src/numeric/extremes.ts";
import { chartView } from "./chart/chart.ts";
import { straight } from "./chart/curve-values.ts";
import type { Drawn, Size } from "./chart/plot.ts";
import type { Readable, ReadCurve } from "./chart/readable.ts";
import { type Scale as LinearScale, linearScale, roundedOut, ticksOf } from "./scale.ts";

const HEIGHT_IN_PANE = 236;
const MARGIN = { top: 38, right: 10, bottom: 40, left: 46 } as const;
/** A rating so far above the line would flatten it: the words say it then. */
const MOST_RATING = 3;

/** A scale of the reader's unit, for amounts in the engine's. */
interface Scale {
  (amount: number): number;
  /** In the reader's unit, round. */
  readonly ticks: readonly { readonly at: number; readonly label: string }[];
  /** Of amounts in that unit. */
  readonly scale: LinearScale;
}

interface Scales {
  readonly x: Scale;
  readonly y: Scale;
}

/** Pipe and grade line along the chainage, the vacuum between them marked, with ratings where they are near. */
export function routeProfile(route: RouteLine, units: UnitSetName, width: number): TemplateResult {
  return chartView("Route and grade line", width, (size) => drawn(route, units, size));
}

function drawn(route: RouteLine, units: UnitSetName, { width, tall }: Size): Drawn {
  const { places } = route;
  const height = HEIGHT_IN_PANE * tall;
  const ratings = nearRatings(route);
  const scales = scalesOf(route, ratings, units, width, height);
  const { x, y } = scales;
  const path = (of: (place: RoutePlace) => number): string =>
    places.map((place, i) => `${i === 0 ? "M" : "L"}${x(place.chainage)} ${y(of(place))}`).join("");
  const low = places.filter(({ remark }) => remark !== "");
  const [summit] = places.filter(({ chainage }) => chainage === route.summit);
  const picture = html`<svg
      class="picture"
      viewBox="0 0 ${width} ${height}"
      width=${width}
      height=${height}
      role="img"
      aria-label="${routeProfileWords(route, units)}"
    >
      ${axes(scales, units, width, height)} ${vacuumAreas(places, scales)}
      ${ratings.map(({ from, to }) => svg`<path class="line running" d="M${x(from[0])} ${y(from[1])}L${x(to[0])} ${y(to[1])}" />`)}
      ${low.length === 0 ? nothing : svg`<path class="line aged" d="${path(({ vacuumLimit }) => vacuumLimit)}" />`}
      <path class="pipe" d="${path(({ level }) => level)}" />
      <path class="curve" d="${path(({ grade }) => grade)}" />
      ${low.map((place) => svg`<path class="short-mark" d="M${x(place.chainage) - 5} ${y(place.level) - 5}l5 -9l5 9Z" />`)}
      ${summit === undefined ? nothing : summitLabel(summit, scales, units, width)}
    </svg>`;
  return {
    svg: picture,
    readable: readableOf(route, units, scales),
    caption: html`Thick line: pipe. Thin line: grade line, running full.
      ${low.length === 0 ? nothing : "Hatched, with a triangle: vacuum. Long dashes: lowest grade a siphon may be counted on."}
      ${ratings.length === 0 ? nothing : "Line above: rating of the pipe as a grade."} ${verdictWords(route, units)}`,
  };
}

/** Levels, and the pressure in the pipe, along the line. */
function readableOf({ places }: RouteLine, units: UnitSetName, { x }: Scales): Readable {
  const read = (
    name: string,
    quantity: "elevation" | "gaugePressure",
    of: (place: RoutePlace) => number,
  ): ReadCurve => ({
    name,
    unit: printedUnit(quantity, units),
    valueAt: straight(
      places.map((place) => [
        fromEngine(place.chainage, UNIT_SETS[units].length),
        fromEngine(of(place), UNIT_SETS[units][quantity]),
      ]),
    ),
  });
  return {
    along: "Chainage",
    unit: printedUnit("length", units),
    x: x.scale,
    start: x.scale.ends[0],
    curves: [
      read("pipe", "elevation", ({ level }) => level),
      read("grade line", "elevation", ({ grade }) => grade),
      read("pressure", "gaugePressure", ({ pressure: at }) => at),
    ],
  };
}

function nearRatings({ places, ratings }: RouteLine): RouteLine["ratings"] {
  const heights = places.flatMap(({ level, grade }) => [level, grade]);
  const [least, most] = [leastOf(heights), greatestOf(heights)];
  return ratings.filter(({ from, to }) => Math.max(from[1], to[1]) - least <= MOST_RATING * (most - least));
}

function scalesOf(
  { places }: RouteLine,
  ratings: RouteLine["ratings"],
  units: UnitSetName,
  width: number,
  height: number,
): Scales {
  const hasVacuum = places.some(({ remark }) => remark !== "");
  const heights = [
    ...places.flatMap(({ level, grade, vacuumLimit }) => [level, grade, ...(hasVacuum ? [vacuumLimit] : [])]),
    ...ratings.flatMap(({ from, to }) => [from[1], to[1]]),
  ];
  const [first, last] = [places[0] as RoutePlace, places.at(-1) as RoutePlace];
  const { length, elevation } = UNIT_SETS[units];
  const ends = (of: readonly number[], unit: typeof length): readonly [number, number] => [
    fromEngine(leastOf(of), unit),
    fromEngine(greatestOf(of), unit),
  ];
  return {
    x: inUnit(
      linearScale(ends([first.chainage, Math.max(last.chainage, first.chainage + 1)], length), [
        MARGIN.left,
        width - MARGIN.right,
      ]),
      length,
    ),
    y: inUnit(linearScale(roundedOut(ends(heights, elevation), 4), [height - MARGIN.bottom, MARGIN.top]), elevation),
  };
}

function inUnit(scale: LinearScale, unit: Parameters<typeof fromEngine>[1]): Scale {
  const place = (amount: number): number => scale(fromEngine(amount, unit));
  const ticks = ticksOf(scale, 4).map((tick) => ({ at: scale(tick), label: figures(tick) }));
  return Object.assign(place, { ticks, scale });
}

/** Where the pipe lies over its grade line, hatched. */
function vacuumAreas(places: readonly RoutePlace[], { x, y }: Scales): readonly (TemplateResult | typeof nothing)[] {
  return places.slice(1).map((to, i) => {
    const from = places[i] as RoutePlace;
    const [a, b] = [from.level - from.grade, to.level - to.grade];
    if (a <= 0 && b <= 0) return nothing;
    const cut = a * b < 0 ? a / (a - b) : undefined;
    const at = (share: number): readonly [number, number, number] => [
      from.chainage + (to.chainage - from.chainage) * share,
      from.level + (to.level - from.level) * share,
      from.grade + (to.grade - from.grade) * share,
    ];
    const [start, end] = [a > 0 ? at(0) : at(cut ?? 0), b > 0 ? at(1) : at(cut ?? 1)];
    const hatch = Array.from({ length: 9 }, (_, k) => {
      const share = (k + 0.5) / 9;
      const [of, level, grade] = start.map((value, n) => value + ((end[n] as number) - value) * share) as [
        number,
        number,
        number,
      ];
      return `M${x(of)} ${y(level)}V${y(grade)}`;
    });
    return svg`<path class="guide" d="${hatch.join("")}" />`;
  });
}

function summitLabel(summit: RoutePlace, { x, y }: Scales, units: UnitSetName, width: number): TemplateResult {
  const at = x(summit.chainage);
  const anchor = at < width * 0.3 ? "start" : at > width * 0.7 ? "end" : "middle";
  return svg`<text class="total" x=${at} y=${Math.max(11, y(summit.level) - 17)} text-anchor=${anchor}>summit ${pressure(summit, units)}</text>`;
}

function axes({ x, y }: Scales, units: UnitSetName, width: number, height: number): TemplateResult {
  const base = height - MARGIN.bottom;
  return svg`<path class="axis" d="M${MARGIN.left} ${MARGIN.top - 8}V${base}H${width - MARGIN.right}" />
    ${y.ticks.map(
      ({ at, label }) => svg`<path class="grid" d="M${MARGIN.left} ${at}H${width - MARGIN.right}" />
        <text x=${MARGIN.left - 5} y=${at + 4} text-anchor="end">${label}</text>`,
    )}
    ${x.ticks.map(
      ({ at, label }) => svg`<path class="tick" d="M${at} ${base}v4" />
        <text x=${at} y=${base + 16} text-anchor="middle">${label}</text>`,
    )}
    <text x=${width - MARGIN.right} y=${height - 6} text-anchor="end">chainage, ${printedUnit("length", units)}</text>
    <text x="0" y=${height - 6}>level, ${printedUnit("elevation", units)}</text>`;
}

function pressure({ pressure: at }: RoutePlace, units: UnitSetName): string {
  return amountText(amount("gaugePressure", at), units);
}

function verdictWords({ siphon, fills, fillFlow }: RouteLine, units: UnitSetName): string {
  const flow = fillFlow === undefined ? "" : `: ${amountText(amount("flow", fillFlow), units)} over the summit`;
  return [
    ...(siphon === "" ? [] : [`Siphon credit ${siphon}.`]),
    ...(fills === "" ? [] : [`The line ${fills}${fills === "fills" ? flow : ""}.`]),
  ].join(" ");
}

/** The picture in words. */
export function routeProfileWords(route: RouteLine, units: UnitSetName): string {
  const said = route.places.map((place) => {
    const where = `${amountText(amount("length", place.chainage), units)} along`;
    const levels = `level ${amountText(amount("elevation", place.level), units)}, grade line ${amountText(amount("elevation", place.grade), units)}`;
    return `${where}: ${levels}, ${pressure(place, units)}${place.remark === "" ? "" : `, ${place.remark}`}`;
  });
  return `${vacuumText(route, units)} ${verdictWords(route, units)} The discharge line along its chainage: ${said.join("; ")}.`;
}

/** Where the line is under vacuum, the worst of it first said. */
function vacuumText({ places }: RouteLine, units: UnitSetName): string {
  const low = places.filter(({ pressure: at }) => at < 0);
  const worst = low.reduce<RoutePlace | undefined>(
    (so, place) => (so === undefined || place.pressure < so.pressure ? place : so),
    undefined,
  );
  if (worst === undefined) return "The line is under pressure over its whole length.";
  return `The line is under vacuum, ${amountText(amount("vacuum", -worst.pressure), units)} at ${amountText(amount("length", worst.chainage), units)}.`;
}
