import { unitOf } from "../basis/units.ts";
import { INCH_BOLTS, METRIC_BOLTS } from "../tables/bolts.ts";

const inch = unitOf("in").factor;
const millimetre = unitOf("mm").factor;

/** A bolt of the tables: nominal diameter and pitch in m, areas in m². */
export interface Bolt {
  /** As the tables name it: "3/4" of an inch, "M20". */
  readonly size: string;
  readonly isMetric: boolean;
  readonly diameter: number;
  readonly pitch: number;
  readonly tensileArea: number;
  readonly rootArea: number;
}

export const BOLTS: readonly Bolt[] = [
  ...INCH_BOLTS.map(([size, , diameter, threads, tensile, root]) => ({
    size,
    isMetric: false,
    diameter: diameter * inch,
    pitch: inch / threads,
    tensileArea: tensile * inch ** 2,
    rootArea: root * inch ** 2,
  })),
  ...METRIC_BOLTS.map(([size, , diameter, pitch, tensile, root]) => ({
    size,
    isMetric: true,
    diameter: diameter * millimetre,
    pitch: pitch * millimetre,
    tensileArea: tensile * millimetre ** 2,
    rootArea: root * millimetre ** 2,
  })),
];

const bySize = new Map(BOLTS.map((bolt) => [bolt.size, bolt]));

export function boltOf(size: string): Bolt | undefined {
  return bySize.get(size);
}

/** "3/4 in", "M20": as it is printed and ordered. */
export function boltSizeText(size: string): string {
  return boltOf(size)?.isMetric === true ? size : `${size} in`;
}
