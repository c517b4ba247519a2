import type { RisingWater, WaterCourse, WaterMark } from "../../../shared/package/rising-water.ts";
import { runningSums } from "./running-sums.ts";
import { linearScale } from "./scale.ts";

const TOP = 26;
const HEIGHT = 170;
/** Room for a label that stands clear of the pump. */
const LEAST_GAP = 26;
const LEAST_MARK_GAP = 16;

/** A level drawn across the picture; lifts that are the same share one. */
export interface LiftLine {
  readonly names: readonly string[];
  readonly height: number;
  readonly y: number;
  readonly isDuty: boolean;
}

export interface RisingWaterFrame {
  /** From the lowest up. */
  readonly lines: readonly LiftLine[];
  /** y of any height over the liquid surface. */
  readonly y: (height: number) => number;
  /** False where close levels are drawn further apart than they are. */
  readonly toScale: boolean;
  /** Times shown beside the riser, the lowest first; the last is at the lift. */
  readonly marks: readonly WaterMark[];
}

const DUTY = "suction lift";
/** Levels closer than this part of the highest count as one. */
const SAME = 1e-3;

/** Where everything stands: lifts at their levels, and as many times beside the riser as there is room for. */
export function risingWaterFrame({ lift, byBlankOff, byPractice, byNpsh, course }: RisingWater): RisingWaterFrame {
  const named: readonly (readonly [name: string, height: number])[] = [
    [DUTY, lift],
    ["in practice", byPractice],
    ["by NPSH", byNpsh ?? 0],
    ["by blank-off", byBlankOff],
  ];
  // A lift of nothing or less has no place over the liquid; the words say it.
  const shown = named.filter(([, height]) => height > 0).sort(([, a], [, b]) => a - b);
  const highest = shown.at(-1)?.[1] ?? 0;
  const groups: { names: string[]; height: number }[] = [];
  for (const [name, height] of shown) {
    const below = groups.at(-1);
    if (below !== undefined && height - below.height < SAME * highest) below.names.push(name);
    else groups.push({ names: [name], height });
  }
  // A line shared with the duty's lift stands at the duty's lift, for the water is drawn to it.
  const levels = groups.map(({ names, height }) => ({ names, height: names.includes(DUTY) ? lift : height }));
  const heights = [0, ...levels.map(({ height }) => height)];
  const gaps = heights.slice(1).map((height, i) => ((height - (heights[i] as number)) / highest) * HEIGHT);
  const drawn = keptApart(gaps);
  const places = runningSums(drawn).map((above) => TOP + HEIGHT - above);
  const y = (height: number): number => {
    const above = Math.max(
      1,
      heights.findIndex((level, i) => i > 0 && (height <= level || i === heights.length - 1)),
    );
    const between = (of: readonly number[]) => [of[above - 1] ?? 0, of[above] ?? of[above - 1] ?? 0] as const;
    return linearScale(between(heights), between(places))(height);
  };
  return {
    lines: levels.map(({ names, height }) => ({ names, height, y: y(height), isDuty: names.includes(DUTY) })),
    y,
    toScale: drawn === gaps,
    marks: marksOf(course, y(0) - y(lift)),
  };
}

/** The gaps themselves where each can be read; otherwise small ones raised to the least and the rest shrunk to fit. */
function keptApart(gaps: readonly number[]): readonly number[] {
  const raised = new Set<number>();
  let drawn = gaps;
  for (;;) {
    const small = drawn.findIndex((gap, i) => !raised.has(i) && gap < LEAST_GAP);
    if (small < 0) return drawn;
    raised.add(small);
    const rest = gaps.reduce((sum, gap, i) => (raised.has(i) ? sum : sum + gap), 0);
    const share = (HEIGHT - raised.size * LEAST_GAP) / rest;
    drawn = gaps.map((gap, i) => (raised.has(i) ? LEAST_GAP : gap * share));
  }
}

/** Quarters of the lift, halves, or the whole, by the room between liquid and lift. */
function marksOf(course: WaterCourse | undefined, room: number): readonly WaterMark[] {
  if (course === undefined) return [];
  const { rising } = course;
  const steps = rising.length - 1;
  const parts = [4, 2].find((count) => room / count >= LEAST_MARK_GAP) ?? 1;
  return Array.from({ length: parts }, (_, i) => rising[(steps * (i + 1)) / parts] as WaterMark);
}
