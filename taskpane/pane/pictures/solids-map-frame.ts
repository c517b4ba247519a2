import {
  MAP_REGIONS,
  type MapRegion,
  MOST_PH,
  MOST_SOLIDS,
  type SolidsMap,
} from "../../../shared/package/solids-map.ts";
import { linearScale, rootScale, type Scale } from "./scale.ts";

export const LINE = 13;
/** Half the width of the cross. */
export const ARM = 5;
const TOP = 40;
const PLOT = 244;
const BELOW = 38;
const LEFT = 38;
const RIGHT = 8;

export interface MapLabel {
  readonly text: string;
  /** Middle of its baseline. */
  readonly x: number;
  readonly y: number;
}

/** Where everything of the map of metals is drawn. */
export interface SolidsMapFrame {
  readonly x: Scale;
  readonly y: Scale;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly labels: readonly MapLabel[];
  /** The case; null where its solids are not stated. */
  readonly cross: { readonly x: number; readonly y: number } | null;
}

/** pH across, solids by weight up: on a square root, so that few, some and many solids each have room. */
export function solidsMapFrame(shown: SolidsMap, width: number): SolidsMapFrame {
  const [left, right, top, bottom] = [LEFT, width - RIGHT, TOP, TOP + PLOT];
  const x = linearScale([0, MOST_PH], [left, right]);
  const y = rootScale([0, MOST_SOLIDS], [bottom, top]);
  const cross = shown.solids === null ? null : { x: x(shown.pH), y: y(shown.solids) };
  const labels = MAP_REGIONS.flatMap((region) => labelsOf(region, x, y, cross));
  return { x, y, height: bottom + BELOW, left, right, top, bottom, labels, cross };
}

/** In the middle of its box, or in the half of it that the cross leaves free. */
function labelsOf(
  { lines, labelled }: MapRegion,
  x: Scale,
  y: Scale,
  cross: SolidsMapFrame["cross"],
): readonly MapLabel[] {
  const [from, to] = [x(labelled.pH[0]), x(labelled.pH[1])];
  const [low, high] = [y(labelled.solids[0]), y(labelled.solids[1])];
  const middle = (low + high) / 2;
  const isHere = cross !== null && cross.x >= from && cross.x <= to && cross.y <= low && cross.y >= high;
  const first = !isHere ? middle - 2 : cross.y < middle ? low - LINE - 4 : high + LINE - 2;
  return lines.map((text, i) => ({ text, x: (from + to) / 2, y: first + LINE * i }));
}
