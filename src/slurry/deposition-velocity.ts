import type { Citation } from "../basis/citation.ts";
import { SPECIFIC_GRAVITY_REFERENCE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { beyondComputation } from "../pipework/pipe-friction.ts";
import { doNotSettle, PACKED, SOLIDS_SG, sizeDoubted, volumeRemarks } from "./solids.ts";

export const depositionVelocityMethod = {
  cites: [
    { source: "durand-1953", at: "limit velocity, F_L √(2 g D (S − 1))" },
    { source: "schiller-herbich-1991", at: "F_L of Durand's chart as a formula" },
    { source: "wasp-1977", at: "limit velocity, for comparison" },
    { source: "oroskar-turian-1980", at: "critical velocity, for comparison; x = 1" },
    { source: "thomas-1979", at: "fine grains, 9.0 (g ν (S − 1))^0.37 (D/ν)^0.11, as a pump handbook prints it" },
    { source: "house", at: "Durand with the Schiller–Herbich factor, or Thomas where greater, is the answer" },
    { source: "house", at: "velocity to design for by the most careful of the fits, up to 1.2 times Durand with 1.34" },
  ],
  inputs: {
    bore: { name: "bore of the pipe", symbol: "D", quantity: "size", above: 0 },
    particleSize: { name: "d50", symbol: "d50", quantity: "size", above: 0 },
    solidsSG: SOLIDS_SG,
    solidsByVolume: {
      name: "solids by volume",
      symbol: "C_v",
      quantity: "percent",
      above: 0,
      below: PACKED,
      // The curves of Durand's chart, from memory.
      usual: { atLeast: 0.02, atMost: 0.15 },
    },
  },
} as const satisfies Method<"bore" | "particleSize" | "solidsSG" | "solidsByVolume">;

/** F_L that Durand's chart comes to for narrowly graded particles above 2 mm. */
const COARSE_FACTOR = 1.34;
const COARSE_SIZE = 0.002;

/** Finer than this a slurry may run as one liquid, and laminar flow deposits it before this velocity does. m. */
export const FINE_SIZE = 1e-4;

/** Finer than this a slurry may have a yield stress, and none of the fits holds. m; house choice. */
export const RHEOLOGY_SIZE = 2e-5;

/** C_v^0.1536 (1 − C_v)^0.3564 has its top at 0.1536/(0.1536 + 0.3564): held there, more solids never pass more easily. */
const DENSEST_OROSKAR = 0.1536 / (0.1536 + 0.3564);

/** Particle over bore above which solids travel as a sliding bed. */
export const STRATIFIED_RATIO = 0.018;

export const DESIGN_CITE = {
  source: "house",
  at: "design velocity at least 1.2 V_L, V_L + 0.3 m/s (1 ft/s) and the most careful fit",
} as const satisfies Citation;

export interface DepositionVelocityInputs {
  /** m */
  readonly bore: number;
  /** m */
  readonly particleSize: number;
  readonly solidsSG: number;
  /** Volume fraction. */
  readonly solidsByVolume: number;
  /** The carrier. */
  readonly liquid: LiquidState;
}

/** Velocities in m/s. */
export interface DepositionVelocity {
  /** F_L of Schiller and Herbich. */
  readonly factor: number;
  /** Solids come to rest below it: the greater of the next two. */
  readonly limiting: number;
  /** Durand with that factor. */
  readonly durand: number;
  /** Thomas, for grains within the sublayer. */
  readonly fine: number;
  /** Durand with F_L = 1.34. */
  readonly coarse: number;
  readonly wasp: number;
  readonly oroskarTurian: number;
  /** Least velocity to design for: the same rule at every size, so that no size falls between two methods. */
  readonly design: number;
}

/**
 * Velocity under which solids come to rest in a level pipe, m/s, and the least to design for; S = S_s/S_l.
 * Formula: V_L the greater of F_L √(2 g D (S − 1)), F_L = 1.3 C_v^0.125 (1 − exp(−6.9 d50/mm)), and Thomas
 *          9.0 (g ν (S − 1))^0.37 (D/ν)^0.11; Wasp 3.116 C_v^0.186 (d50/D)^(1/6) √(2 g D (S − 1))
 *          Oroskar, Turian u 1.85 C_v^0.1536 (1 − C_v)^0.3564 (d50/D)^−0.378 (D u/ν)^0.09, u = √(g d50 (S − 1)), with
 *          C_v held at 0.301, where its factor is greatest
 *          design the greatest of 1.2 V_L, V_L + 0.3 and the greater of the last two, that no more than 1.2 × 1.34 √(2 g D (S − 1))
 * Fails: out-of-range inputs, a d50 of the bore too; solids-do-not-settle; beyond-computation.
 * Warns: deposition-estimates (always), outside-usual-range (C_v), solids-dense, particle-fine, slurry-not-newtonian
 * (d50 under 0.02 mm), particle-coarse, flow-stratified, particle-size-doubted.
 * Source: Durand 1953; Schiller and Herbich 1991; Thomas 1979; Wasp 1977; Oroskar and Turian 1980.
 */
export function depositionVelocity(inputs: DepositionVelocityInputs): Result<DepositionVelocity> {
  const { bore, particleSize, solidsSG, solidsByVolume, liquid } = inputs;
  const checked = checkInputs(depositionVelocityMethod, { bore, particleSize, solidsSG, solidsByVolume });
  if (!checked.ok) return checked;
  const liquidSG = liquid.density / SPECIFIC_GRAVITY_REFERENCE;
  if (solidsSG <= liquidSG) return fail([doNotSettle(solidsSG, liquidSG)]);
  if (particleSize >= bore) {
    return fail([outOfRange("d50", "size", particleSize, "below", bore), ...sizeDoubted("d50", particleSize)]);
  }

  const weight = STANDARD_GRAVITY * (solidsSG / liquidSG - 1);
  const ratio = particleSize / bore;
  const root = Math.sqrt(2 * weight * bore);
  const viscosity = liquid.dynamicViscosity / liquid.density;
  const factor = 1.3 * solidsByVolume ** 0.125 * -Math.expm1(-6.9 * particleSize * 1e3);
  const durand = factor * root;
  const fine = 9 * (weight * viscosity) ** 0.37 * (bore / viscosity) ** 0.11;
  const limiting = Math.max(durand, fine);
  const coarse = COARSE_FACTOR * root;
  const wasp = 3.116 * solidsByVolume ** 0.186 * root * ratio ** (1 / 6);
  const u = Math.sqrt(weight * particleSize);
  const dense = Math.min(solidsByVolume, DENSEST_OROSKAR);
  const oroskarTurian =
    u * 1.85 * dense ** 0.1536 * (1 - dense) ** 0.3564 * ratio ** -0.378 * ((bore * u) / viscosity) ** 0.09;
  const design = Math.max(1.2 * limiting, limiting + 0.3, Math.min(Math.max(wasp, oroskarTurian), 1.2 * coarse));
  const velocity: DepositionVelocity = { factor, limiting, durand, fine, coarse, wasp, oroskarTurian, design };
  if (!Object.values(velocity).every(Number.isFinite)) return fail([beyondComputation("the limiting velocity")]);
  return succeed(velocity, [
    ...checked.findings,
    ...volumeRemarks(solidsByVolume),
    ...sizeRemarks(particleSize, bore, velocity),
    spread(velocity),
  ]);
}

function sizeRemarks(size: number, bore: number, { coarse }: DepositionVelocity): readonly Finding[] {
  const subject = "d50";
  const found = amount("size", size);
  const findings: Finding[] = [...sizeDoubted(subject, size)];
  if (size < FINE_SIZE) {
    const limit = { quantity: "size", value: FINE_SIZE, side: "at least" } as const;
    findings.push({ code: "particle-fine", kind: "check", subject, found, limit });
  }
  if (size < RHEOLOGY_SIZE) {
    const limit = { quantity: "size", value: RHEOLOGY_SIZE, side: "at least" } as const;
    const cites = { source: "house", at: "a Newtonian liquid with solids of 0.02 mm and more" } as const;
    findings.push({ code: "slurry-not-newtonian", kind: "check", subject, found, limit, cites });
  }
  if (size > COARSE_SIZE) {
    const limit = { quantity: "size", value: COARSE_SIZE, side: "at most" } as const;
    const facts = { coarse: amount("velocity", coarse), factor: COARSE_FACTOR };
    const cites = { source: "durand-1953", at: "asymptote of the chart, 1.34" } as const;
    findings.push({ code: "particle-coarse", kind: "check", subject, found, limit, facts, cites });
  }
  if (size / bore > STRATIFIED_RATIO) findings.push(stratified(size, bore));
  return findings;
}

/** Particles so large against the bore that they slide along the bottom. */
export function stratified(size: number, bore: number): Finding {
  return {
    code: "flow-stratified",
    kind: "check",
    subject: "d50",
    found: amount("ratio", size / bore),
    limit: { quantity: "ratio", value: STRATIFIED_RATIO, side: "at most" },
    cites: { source: "wilson-slurry", at: "fully stratified flow of narrowly graded particles above d/D = 0.018" },
  };
}

function spread({ limiting, durand, fine, coarse, wasp, oroskarTurian, design }: DepositionVelocity): Finding {
  return {
    code: "deposition-estimates",
    kind: "check",
    subject: "deposition velocity",
    found: amount("velocity", limiting),
    facts: {
      durand: amount("velocity", durand),
      fine: amount("velocity", fine),
      wasp: amount("velocity", wasp),
      oroskarTurian: amount("velocity", oroskarTurian),
      coarse: amount("velocity", coarse),
      design: amount("velocity", design),
    },
    cites: DESIGN_CITE,
  };
}
