import type { FactsOf } from "../basis/finding-code.ts";
import { amount, type Finding } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { greatestOf, leastOf } from "../numeric/extremes.ts";
import type { LineSegment } from "./line.ts";
import { lineLoss } from "./line-loss.ts";
import { parallelRuns } from "./parallel-runs.ts";

type RowsSideBySide = FactsOf["rows-side-by-side"];

/** A row of a line, and what its text says besides. */
export interface SharingRow {
  readonly segment: LineSegment;
  /** A piece of header, or a row that each pump has of its own: one that follows another by its very words. */
  readonly isOnPath: boolean;
}

/** A flow through a line, m³/s. */
export interface Through {
  readonly flow: number;
  readonly liquid: LiquidState;
}

/** Shares are typed to two places, each so far off at most. */
const TYPED = 0.005;
/** Equal shares are twins where their lengths are as near, since twins lead from one place to another. House choice. */
const AS_LONG = 0.1;
/** Runs side by side lose the same head; farther apart than this, the shares typed are wrong. House choice. */
const SAME_HEAD = 0.02;

/** How fast the flow is taken to be where it is not known, m/s: the shares of turbulent flow hardly change with it. House choice. */
const USUAL_VELOCITY = 2;

/** What is asked of the shares of a line, at the row that would answer it. */
interface ShareDoubt {
  readonly row: number;
  readonly finding: Finding;
}

/**
 * Rows that follow one another in a line and yet look as if they stood side by side: together their shares are the
 * whole flow. Of equal shares, which several pumps may have one behind the other, as long rows alone are meant; rows
 * that end at unlike levels follow one another. With the shares they would take side by side; where the flow is known,
 * with the heads that the shares typed would give, if they are apart. Rows of another share than 1/2, 1/3 and so on that
 * nothing beside them makes up to the whole leave open where the rest flows.
 * Warns: rows-side-by-side, share-leaves-a-rest (check).
 */
export function doubtedShares(
  rows: readonly SharingRow[],
  subject: string,
  numberOf: (row: number) => number,
  through?: Through,
): readonly ShareDoubt[] {
  return blocksOf(rows).flatMap((block) => {
    const segments = block.map((row) => (rows[row] as SharingRow).segment);
    if (!looksParallel(segments)) return restLeft(block, segments, subject, numberOf);
    const facts = {
      rows: listed(block.map((row) => String(numberOf(row)))),
      typed: listed(segments.map(shareOf).map(percent)),
      ...divided(segments, through),
    };
    const finding = { code: "rows-side-by-side", kind: "check", subject, facts } as const;
    return [{ row: block.at(-1) as number, finding }];
  });
}

/** Of rows that follow one another, those that are neither one of equal runs nor said to be header. */
function restLeft(
  block: readonly number[],
  segments: readonly LineSegment[],
  subject: string,
  numberOf: (row: number) => number,
): readonly ShareDoubt[] {
  const odd = block.filter((_, i) => (segments[i] as LineSegment).runs === undefined);
  const shares = segments.filter(({ runs }) => runs === undefined).map(shareOf);
  const row = odd.at(-1);
  if (row === undefined) return [];
  const facts = {
    rows: listed(odd.map((one) => String(numberOf(one)))),
    count: odd.length,
    typed: listed([...new Set(shares.map(percent))]),
    rest: listed([...new Set(shares.map((share) => percent(1 - share)))]),
  };
  return [{ row, finding: { code: "share-leaves-a-rest", kind: "check", subject, facts } }];
}

/** Places of rows one after the other that take a part of the flow. */
function blocksOf(rows: readonly SharingRow[]): readonly (readonly number[])[] {
  const blocks: number[][] = [];
  for (const [i, { segment, isOnPath }] of rows.entries()) {
    if (isOnPath || shareOf(segment) === 1) continue;
    const last = blocks.at(-1);
    if (last?.at(-1) === i - 1) last.push(i);
    else blocks.push([i]);
  }
  return blocks;
}

function looksParallel(segments: readonly LineSegment[]): boolean {
  if (segments.length < 2) return false;
  const shares = segments.map(shareOf);
  if (Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1) > TYPED * shares.length) return false;
  const levels = segments.flatMap(({ endLevel }) => endLevel ?? []);
  if (greatestOf(levels) > leastOf(levels)) return false;
  const lengths = segments.map(({ length }) => length);
  const areAlike = greatestOf(shares) - leastOf(shares) <= TYPED;
  return !areAlike || greatestOf(lengths) <= leastOf(lengths) * (1 + AS_LONG);
}

function shareOf({ share = 1 }: LineSegment): number {
  return share;
}

/** Water at 15 °C, IAPWS. */
const COLD_WATER: LiquidState = { density: 999.1, dynamicViscosity: 1.1375e-3 };

/** How the flow divides between the rows side by side, and the heads that it does not, where both can be told. */
function divided(segments: readonly LineSegment[], through: Through | undefined): Partial<RowsSideBySide> {
  const runs = segments.map(({ pipe, length, fittings }) => [{ pipe, length, fittings }]);
  const { flow, liquid } = through ?? usualFlow(segments);
  const divides = parallelRuns({ flow, runs, liquid });
  if (!divides.ok || flow === 0) return {};
  const right = listed(divides.value.runs.map(({ share }) => percent(share as number)));
  const heads = segments.flatMap((segment) => {
    const loss = lineLoss({ flow, line: [segment], liquid });
    return loss.ok ? [loss.value.total] : [];
  });
  const [least, most] = [leastOf(heads), greatestOf(heads)];
  if (through === undefined || most <= least * (1 + SAME_HEAD)) return { right };
  return { right, least: amount("head", least), most: amount("head", most) };
}

function usualFlow(segments: readonly LineSegment[]): Through {
  const areas = segments.map(({ pipe }) => (Math.PI / 4) * pipe.bore ** 2);
  return { flow: USUAL_VELOCITY * areas.reduce((sum, area) => sum + area, 0), liquid: COLD_WATER };
}

/** "62 %" */
function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

/** "1, 2 and 3" */
function listed(words: readonly string[]): string {
  if (words.length === 1) return words[0] as string;
  return [words.slice(0, -1).join(", "), words.at(-1)].join(" and ");
}
