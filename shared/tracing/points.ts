import { distance, type Position } from "./calibration.ts";

/** A point of a traced line. Its number is its own while it lives, whatever is added or removed around it. */
export interface TracedPoint {
  readonly id: number;
  readonly at: Position;
}

/** The points of a line, from left to right in the picture. */
export type TracedLine = readonly TracedPoint[];

export function withPoint(line: TracedLine, id: number, at: Position): TracedLine {
  return leftToRight([...line, { id, at }]);
}

export function withPointMoved(line: TracedLine, id: number, at: Position): TracedLine {
  return leftToRight(line.map((point) => (point.id === id ? { id, at } : point)));
}

export function withoutPoint(line: TracedLine, id: number): TracedLine {
  return line.filter((point) => point.id !== id);
}

/** The point nearest to a place, no farther than `within` pixels. */
export function pointNear(line: TracedLine, at: Position, within: number): TracedPoint | undefined {
  const near = line
    .map((point) => ({ point, away: distance(point.at, at) }))
    .filter(({ away }) => away <= within)
    .sort((one, other) => one.away - other.away);
  return near[0]?.point;
}

function leftToRight(points: readonly TracedPoint[]): TracedLine {
  return [...points].sort((one, other) => one.at.x - other.at.x || one.id - other.id);
}
