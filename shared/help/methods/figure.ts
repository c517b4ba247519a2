import { greatestOf, leastOf } from "../../../src/numeric/extremes.ts";
import { figures } from "../../text/figure.ts";
import { escaped, type Html } from "../html.ts";

type Point = readonly [x: number, y: number];

export interface Axis {
  readonly label: string;
  readonly isLog?: boolean;
  readonly from?: number;
}

export interface Figure {
  readonly caption: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly lines: readonly { readonly name: string; readonly points: readonly Point[] }[];
}

const WIDTH = 560;
const HEIGHT = 320;
const LEFT = 58;
const RIGHT = 118;
const TOP = 12;
const BOTTOM = 44;

const SUPERSCRIPTS: Readonly<Record<string, string>> = Object.fromEntries(
  [..."⁰¹²³⁴⁵⁶⁷⁸⁹"].map((sign, i) => [String(i), sign]),
);

/** A drawing of some lines, each with its name at its end. */
export function figure({ caption, x, y, lines }: Figure): Html {
  const points = lines.flatMap((line) => line.points);
  const across = scale(
    x,
    points.map(([one]) => one),
    LEFT,
    WIDTH - RIGHT,
  );
  const up = scale(
    y,
    points.map(([, one]) => one),
    HEIGHT - BOTTOM,
    TOP,
  );
  const ticks = [
    ...across.ticks.map(
      (tick) =>
        `<line class="grid" x1="${at(across.of(tick))}" y1="${TOP}" x2="${at(across.of(tick))}" y2="${HEIGHT - BOTTOM}"/><text x="${at(across.of(tick))}" y="${HEIGHT - BOTTOM + 16}" text-anchor="middle">${tickText(x, tick)}</text>`,
    ),
    ...up.ticks.map(
      (tick) =>
        `<line class="grid" x1="${LEFT}" y1="${at(up.of(tick))}" x2="${WIDTH - RIGHT}" y2="${at(up.of(tick))}"/><text x="${LEFT - 6}" y="${at(up.of(tick) + 4)}" text-anchor="end">${tickText(y, tick)}</text>`,
    ),
  ];
  const heights = apart(lines.map((line) => up.of((line.points.at(-1) as Point)[1])));
  const drawn = lines.map(({ name, points: own }, i) => {
    const path = own.map(([a, b], j) => `${j === 0 ? "M" : "L"}${at(across.of(a))} ${at(up.of(b))}`).join("");
    return `<path class="curve curve-${i}" d="${path}"/><text class="name-${i}" x="${WIDTH - RIGHT + 6}" y="${at((heights[i] as number) + 4)}">${escaped(name)}</text>`;
  });
  return `<figure>
<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escaped(caption)}">
${ticks.join("\n")}
<text x="${(LEFT + WIDTH - RIGHT) / 2}" y="${HEIGHT - 8}" text-anchor="middle">${escaped(x.label)}</text>
<text transform="translate(14 ${(TOP + HEIGHT - BOTTOM) / 2}) rotate(-90)" text-anchor="middle">${escaped(y.label)}</text>
${drawn.join("\n")}
</svg>
<figcaption>${escaped(caption)}</figcaption>
</figure>`;
}

function tickText({ isLog = false }: Axis, tick: number): string {
  if (!isLog) return figures(tick);
  return `10${[...String(Math.round(Math.log10(tick)))].map((digit) => SUPERSCRIPTS[digit] ?? "").join("")}`;
}

interface Scale {
  readonly of: (value: number) => number;
  readonly ticks: readonly number[];
}

function scale({ isLog = false, from }: Axis, values: readonly number[], start: number, end: number): Scale {
  const least = from ?? leastOf(values);
  const greatest = greatestOf(values);
  if (isLog) {
    const [low, high] = [Math.floor(Math.log10(least)), Math.ceil(Math.log10(greatest))];
    const of = (value: number) => start + ((Math.log10(value) - low) / (high - low)) * (end - start);
    return { of, ticks: Array.from({ length: high - low + 1 }, (_, i) => 10 ** (low + i)) };
  }
  const step = niceStep((greatest - least) / 5);
  const [low, high] = [Math.floor(least / step), Math.ceil(greatest / step)];
  const of = (value: number) => start + ((value / step - low) / (high - low)) * (end - start);
  return { of, ticks: Array.from({ length: high - low + 1 }, (_, i) => (low + i) * step) };
}

/** 1, 2 or 5 times a power of ten. */
function niceStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  return ([1, 2, 5, 10].find((factor) => factor * power >= rough) ?? 10) * power;
}

/** Names that would cover one another are moved down. */
function apart(heights: readonly number[]): readonly number[] {
  const order = heights.map((_, i) => i).sort((one, other) => (heights[one] as number) - (heights[other] as number));
  const moved = [...heights];
  order.forEach((place, i) => {
    const before = order[i - 1];
    if (before !== undefined) moved[place] = Math.max(moved[place] as number, (moved[before] as number) + 15);
  });
  return moved;
}

function at(value: number): string {
  return value.toFixed(1);
}
