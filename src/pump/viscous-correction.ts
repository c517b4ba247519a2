import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { specificSpeed } from "./specific-speed.ts";

/** The pump with water at its best efficiency point, and the liquid. */
export interface ViscousCorrectionInput {
  /** Best efficiency flow with water, m³/s. */
  readonly bestFlow: number;
  /** Head of one stage there with water, m. */
  readonly bestHead: number;
  /** r/s */
  readonly speed: number;
  /** m²/s */
  readonly kinematicViscosity: number;
}

/** What a viscous liquid does to a pump: every ratio is viscous over water. */
export interface ViscousCorrection {
  /** Performance parameter B of the standard. */
  readonly parameter: number;
  readonly flow: number;
  /** At best efficiency flow; elsewhere `viscousHeadRatio`. */
  readonly bestHead: number;
  readonly efficiency: number;
}

export const viscousCorrectionMethod = {
  cites: [{ source: "ansi-hi-9.6.7", at: "performance correction for viscous liquids, equations", unverified: true }],
  inputs: {
    bestFlow: {
      name: "best efficiency flow",
      symbol: "Q_BEP-W",
      quantity: "flow",
      above: 0,
      usual: { atLeast: 3 / 3600, atMost: 260 / 3600 },
    },
    bestHead: {
      name: "head at best efficiency",
      symbol: "H_BEP-W",
      quantity: "head",
      above: 0,
      usual: { atLeast: 6, atMost: 130 },
    },
    speed: { name: "speed", symbol: "N", quantity: "speed", above: 0 },
    kinematicViscosity: {
      name: "viscosity",
      symbol: "ν",
      quantity: "kinematicViscosity",
      above: 0,
      usual: { atLeast: 1e-6, atMost: 4e-3 },
    },
  },
} as const satisfies Method<keyof ViscousCorrectionInput>;

const cubicMetrePerHour = unitOf("m³/h").factor;
const centistokes = unitOf("cSt").factor;
const rpm = unitOf("rpm").factor;

/** Specific speed above which an impeller is not radial: 60 (N_s 3100 in US units). */
const MOST_SPECIFIC_SPEED = 60;
/** Least and greatest B of the correction. */
const NO_CORRECTION = 1;
const BEYOND_METHOD = 40;

/**
 * Correction ratios, viscous over water, for a Newtonian liquid in a radial pump, by `viscousRatios` (2.71 as printed,
 * not e). B is always in these units; 26.6, printed for US units, puts it 0.40 % lower.
 * Formula: B = 16.5 ν^0.5 H^0.0625/(Q^0.375 N^0.25), ν in cSt, H in m a stage, Q in m³/h, N in rpm
 * Fails: out-of-range inputs; as `viscousRatios`.
 * Warns: cautions outside-usual-range, viscosity-impeller-not-radial (n_s above 60); as `viscousRatios`.
 * Source: ANSI/HI 9.6.7 (equations from memory).
 */
export function viscousCorrection(input: ViscousCorrectionInput): Result<ViscousCorrection> {
  return andThen(checkInputs(viscousCorrectionMethod, input), () => {
    const { bestFlow, bestHead, speed, kinematicViscosity } = input;
    const parameter =
      (16.5 * Math.sqrt(kinematicViscosity / centistokes) * bestHead ** 0.0625) /
      ((bestFlow / cubicMetrePerHour) ** 0.375 * (speed / rpm) ** 0.25);
    return andThen(viscousRatios(parameter), (ratios) =>
      succeed(
        { parameter, flow: ratios.flow, bestHead: ratios.flow, efficiency: ratios.efficiency },
        impellerRemarks(input),
      ),
    );
  });
}

/**
 * Flow (and head at best efficiency) and efficiency, viscous over water, by the parameter B.
 * Formula: C_Q = C_H = 2.71^(−0.165 (log₁₀ B)^3.15), C_η = B^(−0.0547 B^0.69)
 * Fails: viscosity-beyond-method at B of 40 and more.
 * Warns: caution viscosity-needs-no-correction at B up to 1.
 * Source: ANSI/HI 9.6.7 (equations from memory).
 */
export function viscousRatios(parameter: number): Result<{ readonly flow: number; readonly efficiency: number }> {
  const subject = "viscosity";
  const facts = { b: amount("ratio", parameter) };
  if (!(parameter < BEYOND_METHOD)) return fail([{ code: "viscosity-beyond-method", kind: "error", subject, facts }]);
  if (parameter <= NO_CORRECTION) {
    return succeed({ flow: 1, efficiency: 1 }, [
      { code: "viscosity-needs-no-correction", kind: "check", subject, facts },
    ]);
  }
  const flow = 2.71 ** (-0.165 * Math.log10(parameter) ** 3.15);
  return succeed({ flow, efficiency: parameter ** (-0.0547 * parameter ** 0.69) });
}

const RADIAL: Citation = { source: "ansi-hi-9.6.7", at: "specific speed up to 60 (3100 in US units)" };

function impellerRemarks({ bestFlow, bestHead, speed }: ViscousCorrectionInput): readonly Finding[] {
  const read = specificSpeed({ speed, flow: bestFlow, head: bestHead, convention: "SI" });
  if (!read.ok || read.value <= MOST_SPECIFIC_SPEED) return [];
  const facts = { value: Number(read.value.toPrecision(3)), most: MOST_SPECIFIC_SPEED };
  return [{ code: "viscosity-impeller-not-radial", kind: "check", subject: "speed", facts, cites: RADIAL }];
}

/**
 * Head, viscous over water, at a flow with water over the best efficiency flow with water.
 * Formula: C_H = 1 − (1 − C_BEP-H) (Q_W/Q_BEP-W)^0.75
 * Source: ANSI/HI 9.6.7 (from memory).
 */
export function viscousHeadRatio({ bestHead }: ViscousCorrection, flowRatio: number): number {
  return 1 - (1 - bestHead) * flowRatio ** 0.75;
}
