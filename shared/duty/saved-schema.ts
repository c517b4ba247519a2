import * as v from "valibot";
import { UNIT_SET_NAMES } from "../../src/basis/quantities.ts";

export const FORMAT = "dutybook-duty";
export const VERSION = 2;

/** What every saved duty begins with, whatever its version. */
export const savedHead = v.object({
  format: v.literal(FORMAT),
  version: v.pipe(v.number(), v.integer(), v.minValue(1)),
});

// What is not known is kept: see not-known.ts.
const segment = v.looseObject({
  pipe: v.string(),
  length: v.string(),
  fittings: v.string(),
  share: v.exactOptional(v.string()),
  level: v.exactOptional(v.string()),
});

const curvePoint = v.looseObject({
  flow: v.string(),
  head: v.string(),
  efficiency: v.string(),
  npshRequired: v.string(),
});

const selectedFor = v.looseObject({
  flow: v.string(),
  head: v.string(),
  minimumSpeed: v.exactOptional(v.string()),
  maximumSpeed: v.exactOptional(v.string()),
  maximumPressure: v.exactOptional(v.string()),
});

const pump = v.looseObject({
  name: v.string(),
  speed: v.string(),
  impellerDiameter: v.string(),
  points: v.array(curvePoint),
  speedRatio: v.string(),
  trimRatio: v.string(),
  selectedFor: v.exactOptional(selectedFor),
});

const otherPump = v.looseObject({
  ...pump.entries,
  level: v.string(),
  checkValve: v.string(),
  suctionSize: v.string(),
  dischargeSize: v.string(),
  flangeClass: v.string(),
});
const dutyCase = v.looseObject({ name: v.string(), hours: v.string(), fields: v.record(v.string(), v.string()) });
const revision = v.looseObject({ revision: v.string(), date: v.string(), by: v.string(), change: v.string() });

export const savedDuty = v.looseObject({
  unitSet: v.picklist(UNIT_SET_NAMES),
  fields: v.record(v.string(), v.string()),
  basis: v.optional(v.record(v.string(), v.string()), {}),
  suctionLine: v.array(segment),
  dischargeLine: v.array(segment),
  pump: v.exactOptional(pump),
  otherPumps: v.exactOptional(v.array(otherPump)),
  cases: v.exactOptional(v.array(dutyCase)),
  logo: v.exactOptional(v.string()),
  revisions: v.exactOptional(v.array(revision)),
});

/** Of version 1 the number of pumps belonged to the chosen pump. */
export const savedDuty1 = v.looseObject({
  ...savedDuty.entries,
  pump: v.exactOptional(
    v.looseObject({ ...pump.entries, count: v.string(), arrangement: v.picklist(["parallel", "series"]) }),
  ),
});

export type SavedDuty = v.InferOutput<typeof savedDuty>;
export type SavedDuty1 = v.InferOutput<typeof savedDuty1>;
