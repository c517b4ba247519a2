import { unitOf } from "../basis/units.ts";
import { INCH_BOLTS, METRIC_BOLTS } from "../tables/bolts.ts";
import { STUD_STEPS } from "./stud-length.ts";

const inch = unitOf("in").factor;
const millimetre = unitOf("mm").factor;

/** Diameters closer than this are the same bolt, m: no inch and metric bolt of the tables lie as near. */
const SAME = 0.05 * millimetre;

/** What the thread of a bolt adds to its length, m. */
export interface BoltThread {
  readonly pitch: number;
  /** Step that such studs are sold in. */
  readonly step: number;
}

/** The coarse thread of the tables by nominal diameter in m; nothing for a diameter they do not hold. */
export function boltThread(diameter: number): BoltThread | undefined {
  const ofInches = INCH_BOLTS.find(([, , nominal]) => Math.abs(nominal * inch - diameter) < SAME);
  if (ofInches !== undefined) return { pitch: inch / ofInches[3], step: STUD_STEPS.inch };
  const metric = METRIC_BOLTS.find(([, , nominal]) => Math.abs(nominal * millimetre - diameter) < SAME);
  return metric === undefined ? undefined : { pitch: metric[3] * millimetre, step: STUD_STEPS.metric };
}
