import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";

const inch = unitOf("in").factor;
const ROUNDING = 1e-9;

/** Inch studs come in steps of 1/4 in, metric ones in steps of 5 mm. Common practice, no source. */
export const STUD_STEPS = { inch: 0.25 * inch, metric: 5 * unitOf("mm").factor } as const;

export interface JointStudLengthInput {
  /** Thickness of each flange at the bolts, raised face included, m. */
  readonly thicknesses: readonly [number, number];
  readonly gasketThickness: number;
  /** Blinds, rings, wafer valves and spacers between the flanges, m. */
  readonly between: number;
  readonly boltDiameter: number;
  /** Of the thread, m. */
  readonly pitch: number;
  readonly tolerance: number;
  /** Step that such studs are sold in, m. */
  readonly step: number;
}

const JOINT_RULE: Citation = {
  source: "practice",
  at: "both flanges, gasket, what stands between, two nuts of a bolt diameter, two threads out at each end",
};

export const jointStudLengthMethod = {
  cites: [JOINT_RULE],
  inputs: {
    one: { name: "thickness of one flange", quantity: "size", above: 0 },
    other: { name: "thickness of the other flange", quantity: "size", above: 0 },
    gasketThickness: { name: "gasket thickness", quantity: "size", atLeast: 0 },
    between: { name: "thickness between the flanges", quantity: "size", atLeast: 0 },
    boltDiameter: { name: "bolt diameter", symbol: "d", quantity: "size", above: 0 },
    pitch: { name: "thread pitch", quantity: "size", above: 0 },
    tolerance: { name: "tolerance of length", quantity: "size", atLeast: 0 },
    step: { name: "step of length", quantity: "size", above: 0 },
  },
} as const satisfies Method<
  "one" | "other" | "gasketThickness" | "between" | "boltDiameter" | "pitch" | "tolerance" | "step"
>;

/**
 * Stud length from the parts of a joint that is no like pair (iron on steel, wafer valves, blinds, rings), m.
 * Formula: L = t₁ + t₂ + gasket + between + 2 d + 4 pitches + tolerance, rounded up to the step
 * Fails: inputs outside the method's bounds.
 * Warns: caution that the length is by parts.
 * Source: common practice.
 */
export function jointStudLength(input: JointStudLengthInput): Result<number> {
  const { thicknesses, ...rest } = input;
  const [one, other] = thicknesses;
  const { gasketThickness, between, boltDiameter, pitch, tolerance, step } = rest;
  const values = { one, other, ...rest };
  return andThen(checkInputs(jointStudLengthMethod, values), () => {
    const length = one + other + gasketThickness + between + 2 * boltDiameter + 4 * pitch + tolerance;
    return succeed(Math.ceil(length / step - ROUNDING) * step, [
      { code: "stud-length-by-parts", kind: "check", subject: "stud length", cites: JOINT_RULE },
    ]);
  });
}
