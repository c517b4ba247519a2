/** A place in a picture, px. */
export type Place = readonly [x: number, y: number];

export interface LabelWanted {
  readonly key: string;
  readonly text: string;
  /** What it names, best places first: beside one of these. */
  readonly beside: readonly Place[];
}

export interface PlacedLabel {
  readonly key: string;
  readonly text: string;
  readonly x: number;
  /** Of the base line. */
  readonly y: number;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const LETTER = 6;
const HEIGHT = 11;
const CLEAR = 3;
/** Room between a label and what it names. */
const OFFSET = 5;

/**
 * Names beside what they name, where nothing is in the way: inside the bounds, over no other name, no curve and no mark.
 * Those wanted first are placed first; one without room is left out, and stands in the key of the picture.
 */
export function placeLabels(
  wanted: readonly LabelWanted[],
  bounds: Box,
  curves: readonly (readonly Place[])[],
): readonly PlacedLabel[] {
  const taken: Box[] = [];
  const placed: PlacedLabel[] = [];
  for (const { key, text, beside } of wanted) {
    const found = beside
      .flatMap(([x, y]) => boxesBeside(text, x, y))
      .find((box) => isInside(box, bounds) && !taken.some((other) => meet(box, other)) && !isCrossed(box, curves));
    if (found === undefined) continue;
    taken.push(found);
    placed.push({ key, text, x: found.left + CLEAR, y: found.bottom - CLEAR });
  }
  return placed;
}

/** Over and under a place, to its right and to its left. */
function boxesBeside(text: string, x: number, y: number): readonly Box[] {
  const width = text.length * LETTER;
  const box = (left: number, base: number): Box => ({
    left: left - CLEAR,
    right: left + width + CLEAR,
    top: base - HEIGHT,
    bottom: base + CLEAR,
  });
  const [over, under] = [y - OFFSET, y + OFFSET + HEIGHT - CLEAR];
  return [box(x + OFFSET, over), box(x - OFFSET - width, over), box(x + OFFSET, under), box(x - OFFSET - width, under)];
}

function isInside(box: Box, bounds: Box): boolean {
  return box.left >= bounds.left && box.right <= bounds.right && box.top >= bounds.top && box.bottom <= bounds.bottom;
}

function meet(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

/** Whether a line from point to point runs through a box. */
function isCrossed(box: Box, curves: readonly (readonly Place[])[]): boolean {
  return curves.some((places) =>
    places.some((to, i) => {
      const from = places[i - 1] ?? to;
      return runsThrough(box, from, to);
    }),
  );
}

/** Of the line between two places, the part over the width of the box lies in its height. */
function runsThrough({ left, right, top, bottom }: Box, [x1, y1]: Place, [x2, y2]: Place): boolean {
  const [from, to] = [Math.max(left, Math.min(x1, x2)), Math.min(right, Math.max(x1, x2))];
  if (from > to) return false;
  const heightAt = (x: number): number => (x2 === x1 ? y1 : y1 + ((y2 - y1) * (x - x1)) / (x2 - x1));
  const [one, other] = x2 === x1 ? [y1, y2] : [heightAt(from), heightAt(to)];
  return Math.min(one, other) < bottom && Math.max(one, other) > top;
}
