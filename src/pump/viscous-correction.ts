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

/** Curves are made with water, which is as thick as this at its freezing point, m²/s: no thinner liquid changes them. */
export const THIN_VISCOSITY = 1.8e-6;

/** Specific speed above which an impeller is not radial: 60 (N_s 3100 in US units). */
const MOST_SPECIFIC_SPEED = 60;
/** Least and greatest B of the correction. */
const NO_CORRECTION = 1;
const BEYOND_METHOD = 40;

/**
 * Performance parameter B: how much a liquid's viscosity tells in a pump. Always in these units; 26.6, printed for US
 * units, puts it 0.40 % lower.
 * Formula: B = 16.5 ν^0.5 H^0.0625/(Q^0.375 N^0.25), ν in cSt, H in m a stage, Q in m³/h, N in rpm
 * Source: ANSI/HI 9.6.7 (equations from memory).
 */
export function viscousParameter({ bestFlow, bestHead, speed, kinematicViscosity }: ViscousCorrectionInput): number {
  return (
    (16.5 * Math.sqrt(kinematicViscosity / centistokes) * bestHead ** 0.0625) /
    ((bestFlow / cubicMetrePerHour) ** 0.375 * (speed / rpm) ** 0.25)
  );
}

/**
 * Correction ratios, viscous over water, for a Newtonian liquid in a radial pump, by `viscousRatios` (2.71 as printed,
 * not e) of `viscousParameter`; 1 of a liquid no thicker than cold water (1.8 cSt), whatever its B in a small pump.
 * Fails: out-of-range inputs; as `viscousRatios`.
 * Warns: cautions outside-usual-range, viscosity-impeller-not-radial (n_s above 60); as `viscousRatios`.
 * Source: ANSI/HI 9.6.7 (equations from memory).
 */
export function viscousCorrection(input: ViscousCorrectionInput): Result<ViscousCorrection> {
  return andThen(checkInputs(viscousCorrectionMethod, input), () => {
    const parameter = viscousParameter(input);
    const ratios = input.kinematicViscosity > THIN_VISCOSITY ? viscousRatios(parameter) : unchanged(parameter);
    return andThen(ratios, ({ flow, efficiency }) =>
      succeed({ parameter, flow, bestHead: flow, efficiency }, impellerRemarks(input)),
    );
  });
}

/** Whether the curve has to be corrected, or what has to be known of the pump before anybody can say. */
export type ViscousNeed = "none" | "correction" | "speed" | "efficiency";

/** Below this curves for water serve where the pump's best point is not known, m²/s (10 cSt): common practice. */
const SERVES_WATER_CURVES = 10e-6;
/** Slowest that pumps of this kind turn, r/s (400 rpm, house choice): B falls with speed. */
const SLOWEST = 400 / 60;

/** Whether a liquid of this viscosity changes the curve of a pump; its best point and speed as far as they are known. */
export function viscousNeed(
  kinematicViscosity: number,
  best: { readonly flow: number; readonly head: number } | undefined,
  speed: number | undefined,
): ViscousNeed {
  if (kinematicViscosity <= THIN_VISCOSITY) return "none";
  if (best === undefined) return kinematicViscosity <= SERVES_WATER_CURVES ? "none" : "efficiency";
  const { flow: bestFlow, head: bestHead } = best;
  const parameter = viscousParameter({ bestFlow, bestHead, speed: speed ?? SLOWEST, kinematicViscosity });
  if (parameter <= NO_CORRECTION) return "none";
  return speed === undefined ? "speed" : "correction";
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
  if (parameter <= NO_CORRECTION) return unchanged(parameter);
  const flow = 2.71 ** (-0.165 * Math.log10(parameter) ** 3.15);
  return succeed({ flow, efficiency: parameter ** (-0.0547 * parameter ** 0.69) });
}

function unchanged(parameter: number): Result<{ readonly flow: number; readonly efficiency: number }> {
  const facts = { b: amount("ratio", parameter) };
  return succeed({ flow: 1, efficiency: 1 }, [
    { code: "viscosity-needs-no-correction", kind: "check", subject: "viscosity", facts },
  ]);
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

/** An eye that liquid enters sideways suffers most: the careful one of the 0.1 and 0.5 of the standard. */
const INLET_GEOMETRY = 0.5;

/**
 * NPSH required, viscous over water, at every flow of a pump; NPSH required at its best efficiency point with water in m.
 * Formula: 1 + A (1/C_BEP-H − 1) 274 000 NPSHR_BEP-W/(Q_BEP-W^0.667 N^1.33), A = 0.5, Q in m³/h, N in rpm
 * Source: ANSI/HI 9.6.7 (equation from memory).
 */
export function viscousNpshRatio(
  { bestHead }: ViscousCorrection,
  { bestFlow, speed }: Pick<ViscousCorrectionInput, "bestFlow" | "speed">,
  bestNpshRequired: number,
): number {
  const ofPump = bestNpshRequired / ((bestFlow / cubicMetrePerHour) ** 0.667 * (speed / rpm) ** 1.33);
  return 1 + INLET_GEOMETRY * (1 / bestHead - 1) * 274_000 * ofPump;
}
