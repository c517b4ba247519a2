import { unitOf } from "../basis/units.ts";
import { BOLTS } from "./bolt-size.ts";
import { STUD_STEPS } from "./stud-length.ts";

/** Diameters closer than this are the same bolt, m: no inch and metric bolt of the tables lie as near. */
const SAME = 0.05 * unitOf("mm").factor;

/** What the thread of a bolt adds to its length, m. */
export interface BoltThread {
  readonly pitch: number;
  /** Step that such studs are sold in. */
  readonly step: number;
}

/** The coarse thread of the tables by nominal diameter in m; nothing for a diameter they do not hold. */
export function boltThread(diameter: number): BoltThread | undefined {
  const bolt = BOLTS.find((one) => Math.abs(one.diameter - diameter) < SAME);
  return bolt && { pitch: bolt.pitch, step: bolt.isMetric ? STUD_STEPS.metric : STUD_STEPS.inch };
}
