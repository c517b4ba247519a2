import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { gaussLegendre } from "../numeric/gauss-legendre.ts";

/** Plan area of a sump over its levels. Made by `constantPlan` and `tabledPlan`. */
export interface SumpPlan {
  /** Levels it is known between, m; without end where the area is the same at all. */
  readonly least: number;
  readonly most: number;
  /** m², for a level in the range. */
  readonly areaAt: (level: number) => number;
  /** Levels between which the area is smooth. */
  readonly breaks: readonly number[];
}

/** A sump of upright walls, m². */
export function constantPlan(area: number): SumpPlan {
  return { least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY, areaAt: () => area, breaks: [] };
}

/**
 * What a sump measures at a level, m and m²: two sides that stand square to each other, whose product is the area.
 * A round one has its diameter twice and a factor of π/4; an area alone is one side, the other 1.
 */
export interface PlanRow {
  readonly level: number;
  readonly sides: readonly [number, number];
  readonly factor: number;
}

/**
 * A sump by what it measures at two levels or more, ascending, m. Between rows each side goes along a straight line: an
 * area alone is linear, sloping walls and cones have their true area.
 * Fails: sump-too-few-levels; sump-levels-not-ascending.
 */
export function tabledPlan(rows: readonly PlanRow[], subject: string, labels: readonly string[]): Result<SumpPlan> {
  if (rows.length < 2) return fail([{ code: "sump-too-few-levels", kind: "error", subject }]);
  const errors: Finding[] = [];
  for (const [i, { level }] of rows.entries()) {
    const before = rows[i - 1];
    if (before === undefined || level > before.level) continue;
    const found = amount("elevation", level);
    const facts = { before: amount("elevation", before.level) };
    errors.push({ code: "sump-levels-not-ascending", kind: "error", subject: labels[i] ?? subject, found, facts });
  }
  if (errors.length > 0) return fail(errors);
  const levels = rows.map(({ level }) => level);
  return succeed({
    least: levels[0] as number,
    most: levels.at(-1) as number,
    breaks: levels,
    areaAt: (level) => {
      const upper = Math.max(
        1,
        levels.findIndex((at) => level <= at),
      );
      const [below, above] = [rows[upper - 1] as PlanRow, rows[upper] as PlanRow];
      const part = (level - below.level) / (above.level - below.level);
      const side = (k: 0 | 1): number => below.sides[k] + (above.sides[k] - below.sides[k]) * part;
      return below.factor * side(0) * side(1);
    },
  });
}

/** The levels between two, ends included, ascending, at which something changes. */
export function piecesBetween(from: number, to: number, breaks: readonly number[]): readonly number[] {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const inner = breaks.filter((level) => level > low && level < high);
  return [...new Set([low, ...inner, high])].sort((one, other) => one - other);
}

/** Volume between two levels, m³; by the rule of the quadrature exact for every plan there is. */
export function volumeBetween({ areaAt, breaks }: SumpPlan, low: number, high: number): number {
  const levels = piecesBetween(low, high, breaks);
  let volume = 0;
  for (let i = 1; i < levels.length; i += 1) {
    volume += gaussLegendre(areaAt, levels[i - 1] as number, levels[i] as number);
  }
  return volume;
}

/**
 * Time in which a sump falls from one level to a lower one, s: ∫ A dz/Q, in √ of the height over the lower end of each
 * piece, so that an outflow that ends like a root of the height is met exactly. `netOutflowAt` in m³/s, above 0.
 */
export function timeToFall(
  { areaAt, breaks }: SumpPlan,
  from: number,
  to: number,
  netOutflowAt: (level: number) => number,
  moreBreaks: readonly number[] = [],
): number {
  const levels = piecesBetween(from, to, [...breaks, ...moreBreaks]);
  let time = 0;
  for (let i = 1; i < levels.length; i += 1) {
    const low = levels[i - 1] as number;
    const inRoot = (root: number): number => {
      const level = low + root * root;
      return (2 * root * areaAt(level)) / netOutflowAt(level);
    };
    time += gaussLegendre(inRoot, 0, Math.sqrt((levels[i] as number) - low));
  }
  return time;
}
