import { checkInputs, type Method } from "../basis/method.ts";
import { type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { SAE_FLYWHEELS } from "../tables/sae-flywheels.ts";
import { SAE_HOUSING_PAIRS } from "../tables/sae-housing-pairs.ts";
import { SAE_HOUSINGS } from "../tables/sae-housings.ts";

const MILLIMETRE = unitOf("mm").factor;
const KILOWATT = unitOf("kW").factor;

/** The flange of an engine's flywheel housing. Lengths in m. */
export interface FlywheelHousing {
  readonly number: string;
  readonly pilot: number;
  readonly boltCircle: number;
  readonly flangeDiameter: number;
  readonly holes: number;
  readonly inchThread: string;
  readonly metricThread: string;
  readonly crankFaceToHousingFace: number;
  /** As the standard prints it: "428.62 mm (16.875 in)". */
  readonly boltCirclePrinted: string;
}

/** The drive ring of an industrial flywheel. Lengths in m. */
export interface Flywheel {
  readonly size: number;
  readonly pilot: number;
  readonly boltCircle: number;
  readonly holes: number;
  readonly thread: string;
  /** Coupling face of the flywheel to the face of the housing. */
  readonly recess: number;
}

/** Run-out of pilot and face, total indicator movement, in both systems: No. 6 and No. 00 of SAE J617 (J1033). */
export const HOUSING_RUN_OUT = { smallest: "0.18 mm (0.007 in)", largest: "0.48 mm (0.019 in)" } as const;

/** Factor on the mean torque that a coupling is chosen for, by driver: least and most. Common practice, no source. */
export const COUPLING_FACTORS = { engine: [1.5, 2.5], motor: [1, 1.5] } as const;

export const FLYWHEEL_HOUSINGS: readonly FlywheelHousing[] = SAE_HOUSINGS.map(
  ({ number, pilot, boltCircle, boltCircleInches, flange, holes, inchThread, metricThread, depth }) => ({
    number,
    pilot: pilot * MILLIMETRE,
    boltCircle: boltCircle * MILLIMETRE,
    flangeDiameter: flange * MILLIMETRE,
    holes,
    inchThread,
    metricThread,
    crankFaceToHousingFace: depth * MILLIMETRE,
    boltCirclePrinted: `${boltCircle.toFixed(2)} mm (${boltCircleInches} in)`,
  }),
);

export const FLYWHEELS: readonly Flywheel[] = SAE_FLYWHEELS.map(
  ({ size, pilot, boltCircle, holes, thread, recess }) => ({
    size,
    pilot: pilot * MILLIMETRE,
    boltCircle: boltCircle * MILLIMETRE,
    holes,
    thread,
    recess: recess * MILLIMETRE,
  }),
);

function bare(name: string): string {
  return (
    name
      .trim()
      .toLowerCase()
      .replace(/^(sae|no\.?|number|#|\s)+/, "")
      // "11.5 in", 11.5"
      .replace(/ *(in\.?|inch|inches|")$/, "")
      .trim()
  );
}

function unknown(subject: string, given: string, names: readonly string[]): Result<never> {
  return fail([{ code: "name-unknown", kind: "error", subject, given, suggestions: names }]);
}

/** A housing by its number: "1", "SAE 1", "No. 1/2" (or 0.5), "00". Fails: a number SAE J617 does not have. */
export function flywheelHousing(name: string): Result<FlywheelHousing> {
  const given = bare(name);
  const wanted = given === "0.5" || given === "½" ? "1/2" : given;
  const found = FLYWHEEL_HOUSINGS.find(({ number }) => number === wanted);
  if (found !== undefined) return succeed(found);
  return unknown(
    "flywheel housing",
    name,
    FLYWHEEL_HOUSINGS.map(({ number }) => number),
  );
}

/** A flywheel by its size: "11.5", "11 1/2", "11.5 in", "SAE 14". Fails: a size SAE J620 does not have. */
export function flywheel(name: string): Result<Flywheel> {
  const wanted = bare(name).replace(/([ -]1\/2|½)$/, ".5");
  const found = FLYWHEELS.find(({ size }) => String(size) === wanted);
  if (found !== undefined) return succeed(found);
  return unknown(
    "flywheel",
    name,
    FLYWHEELS.map(({ size }) => String(size)),
  );
}

/**
 * The common bolt circle of engine and pump, m.
 * Fails: `housing-mismatch` where the housings differ, with both bolt circles.
 * Source: SAE J617, bolt circles.
 */
export function housingMatch(engine: FlywheelHousing, pump: FlywheelHousing): Result<number> {
  if (engine.number === pump.number) return succeed(engine.boltCircle);
  return fail([
    {
      code: "housing-mismatch",
      kind: "error",
      subject: "pump adapter",
      facts: {
        engine: engine.number,
        engineCircle: engine.boltCirclePrinted,
        pump: pump.number,
        pumpCircle: pump.boltCirclePrinted,
      },
      cites: { source: "sae-j617", at: "bolt circles" },
    },
  ]);
}

/** Whether flywheel and housing are usually paired. Warns: caution where not, since adapters exist. Common practice. */
export function flywheelPairing(housing: FlywheelHousing, { size }: Flywheel): Result<boolean> {
  const usual = SAE_HOUSING_PAIRS.find(([number]) => number === housing.number)?.[1] ?? [];
  if (usual.includes(size)) return succeed(true);
  const finding: Finding = {
    code: "flywheel-unusual-for-housing",
    kind: "check",
    subject: "flywheel",
    facts: { size: String(size), housing: housing.number, usual: usual.join(", ") },
    cites: { source: "practice", at: "flywheels seen with each housing" },
  };
  return succeed(false, [finding]);
}

export interface HousingChoice {
  readonly housing: FlywheelHousing;
  readonly flywheels: readonly number[];
}

export const housingChoiceMethod = {
  cites: [
    { source: "sae-j617", at: "housing flanges" },
    { source: "sae-j620", at: "flywheels" },
    { source: "practice", at: "torque and power seen with each housing; the maker's torque decides" },
  ],
  inputs: {
    torque: { name: "torque", symbol: "T", quantity: "torque", atLeast: 0 },
    shaftPower: { name: "shaft power", symbol: "P", quantity: "power", atLeast: 0 },
  },
} as const satisfies Method<"torque" | "shaftPower">;

/**
 * Housings seen with at least this torque (N·m) and power (W), smallest first, with their flywheels; none beyond No.
 * 00.
 * Fails: inputs outside the method's bounds.
 * Source: SAE J617, J620; torque and power by common practice.
 */
export function housingsThatCarry(torque: number, shaftPower: number): Result<readonly HousingChoice[]> {
  const checked = checkInputs(housingChoiceMethod, { torque, shaftPower });
  if (!checked.ok) return checked;
  const choices: HousingChoice[] = [];
  for (const [number, flywheels, , powerTo, torqueTo] of SAE_HOUSING_PAIRS) {
    const housing = FLYWHEEL_HOUSINGS.find((listed) => listed.number === number);
    const carries = (torqueTo === null || torque <= torqueTo) && shaftPower <= powerTo * KILOWATT;
    if (housing !== undefined && carries) choices.unshift({ housing, flywheels });
  }
  return succeed(choices);
}
