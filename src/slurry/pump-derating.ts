import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { doNotSettle, PACKED, SOLIDS_SG, sizeDoubted, volumeRemarks } from "./solids.ts";

const CAVE: Citation = { source: "cave-1976", at: "head ratio for d50 from 0.02 to 10 mm", unverified: true };

export const pumpDeratingMethod = {
  cites: [
    CAVE,
    { source: "kazim-1997", at: "head ratio, for comparison", unverified: true },
    { source: "karassik-handbook", at: "slurry chapter: relief for fines, (1 − X)²" },
    { source: "house", at: "Cave is the answer, with the handbook's relief for fines; Kazim is shown beside it" },
  ],
  inputs: {
    impellerDiameter: {
      name: "impeller diameter",
      symbol: "D_2",
      quantity: "size",
      atLeast: 0.05,
      atMost: 5,
    },
    particleSize: {
      name: "d50",
      symbol: "d50",
      quantity: "size",
      above: 0,
      usual: { atMost: 0.01, cites: CAVE },
    },
    solidsSG: SOLIDS_SG,
    solidsByVolume: { name: "solids by volume", symbol: "C_v", quantity: "percent", atLeast: 0, below: PACKED },
    fines: { name: "fines", symbol: "X", quantity: "percent", atLeast: 0, below: 1 },
  },
} as const satisfies Method<"impellerDiameter" | "particleSize" | "solidsSG" | "solidsByVolume" | "fines">;

/** Where Cave's logarithm is zero: finer solids would seem to raise the head. m. */
export const FINEST = 2.27e-5;

/** Fines are particles below this size, m. */
const FINES_SIZE = 7.5e-5;

/** The ratio the methods were measured to; under it no figure is given. */
export const LEAST_RATIO = 0.5;

/** Above this impeller diameter efficiency falls less than head, m. */
const LARGE_IMPELLER = 0.4;

/** Above this volume fraction efficiency may fall more than head. */
const EFFICIENCY_LIMIT = 0.2;

/** Scatter of measured ratios about any of the fits. */
const SCATTER = 0.1;

export interface PumpDeratingInputs {
  /** m; null where no pump is chosen yet. */
  readonly impellerDiameter: number | null;
  /** d50, m. */
  readonly particleSize: number;
  readonly solidsSG: number;
  /** Volume fraction, in water. */
  readonly solidsByVolume: number;
  /** Mass fraction of the solids below 75 µm. */
  readonly fines: number;
}

export interface PumpDerating {
  /** H on slurry over H on water, each in metres of what is pumped. */
  readonly headRatio: number;
  /** η on slurry over η on water. */
  readonly efficiencyRatio: number;
  /** Head ratio by Kazim, without relief for fines. */
  readonly kazimHeadRatio: number;
}

/**
 * Share of its water head and efficiency a pump keeps on a settling slurry in water; ER = HR.
 * Formula: 1 − HR = 0.0385 (S − 1)(1 + 4/S) C_w ln(d50/0.0227 mm) (1 − X)²; Kazim 0.13 C_w √(S − 1) ln(d50/20 µm)
 * Fails: out-of-range; solids-do-not-settle; derating-too-fine; fines-contradict-size; derating-below-measured (0.5).
 * Warns: d50 above 10 mm. Cautions: derating-scatter (always), derating-fines-relief, npshr-rises (as 1/HR),
 * solids-dense, particle-size-doubted; as `efficiencyRemarks`.
 * Source: Cave 1976, Kazim 1997 (from memory); for fines Karassik and others, Pump Handbook, slurry chapter.
 */
export function pumpDerating(inputs: PumpDeratingInputs): Result<PumpDerating> {
  // Without an impeller there is nothing to hold: the largest that brings no remark stands in its place.
  const checked = checkInputs(pumpDeratingMethod, {
    ...inputs,
    impellerDiameter: inputs.impellerDiameter ?? LARGE_IMPELLER,
  });
  if (!checked.ok) return checked;
  const { impellerDiameter, particleSize, solidsSG, solidsByVolume, fines } = inputs;
  if (solidsSG <= 1) return fail([doNotSettle(solidsSG, 1)]);
  if (impellerDiameter !== null && particleSize >= impellerDiameter) {
    return fail([
      outOfRange("d50", "size", particleSize, "below", impellerDiameter),
      ...sizeDoubted("d50", particleSize),
    ]);
  }
  if (particleSize < FINEST) return fail([tooFine(particleSize)]);
  if (particleSize > FINES_SIZE && fines > 0.5) return fail([finesContradict(particleSize, fines)]);

  const solidsByWeight = (solidsByVolume * solidsSG) / (1 + solidsByVolume * (solidsSG - 1));
  const relief = (1 - fines) ** 2;
  const headRatio = 1 - caveReduction(particleSize, solidsSG, solidsByWeight) * relief;
  const kazimHeadRatio = 1 - kazimReduction(particleSize, solidsSG, solidsByWeight);
  if (headRatio < LEAST_RATIO) {
    return fail([belowMeasured(headRatio), ...sizeDoubted("d50", particleSize)]);
  }
  return succeed({ headRatio, efficiencyRatio: headRatio, kazimHeadRatio }, [
    ...checked.findings,
    ...volumeRemarks(solidsByVolume),
    ...sizeDoubted("d50", particleSize),
    scatter(headRatio, kazimHeadRatio),
    ...finesRemark(fines),
    ...efficiencyRemarks(inputs),
    ...npshRemark(headRatio),
  ]);
}

function caveReduction(size: number, solidsSG: number, solidsByWeight: number): number {
  return 0.0385 * (solidsSG - 1) * (1 + 4 / solidsSG) * solidsByWeight * Math.log(size / FINEST);
}

function kazimReduction(size: number, solidsSG: number, solidsByWeight: number): number {
  return 0.13 * solidsByWeight * Math.sqrt(solidsSG - 1) * Math.log(size / 2e-5);
}

function tooFine(size: number): Finding {
  return {
    code: "derating-too-fine",
    kind: "error",
    subject: "d50",
    found: amount("size", size),
    limit: { quantity: "size", value: FINEST, side: "at least" },
  };
}

function finesContradict(size: number, fines: number): Finding {
  return {
    code: "fines-contradict-size",
    kind: "error",
    subject: "fines",
    found: amount("percent", fines),
    facts: { size: amount("size", size), fine: amount("size", FINES_SIZE) },
  };
}

/** The refusal of a ratio that no test bears out. */
export function belowMeasured(ratio: number): Finding {
  return {
    code: "derating-below-measured",
    kind: "error",
    subject: "head ratio",
    found: amount("ratio", ratio),
    limit: { quantity: "ratio", value: LEAST_RATIO, side: "at least" },
  };
}

function scatter(ratio: number, kazim: number): Finding {
  return {
    code: "derating-scatter",
    kind: "check",
    subject: "head ratio",
    found: amount("ratio", ratio),
    facts: { scatter: SCATTER, kazim: amount("ratio", kazim) },
    cites: { source: "house", at: "head and efficiency ratio by Cave; tests or the maker's figure go before it" },
  };
}

function finesRemark(fines: number): readonly Finding[] {
  if (fines === 0) return [];
  const cites: Citation = { source: "house", at: "the handbook's relief for fines, (1 − X)², applied to Cave's loss" };
  return [{ code: "derating-fines-relief", kind: "check", subject: "fines", found: amount("percent", fines), cites }];
}

/** Where efficiency goes another way than head. Warns: cautions derating-large-impeller, derating-efficiency-lower. */
export function efficiencyRemarks({
  impellerDiameter,
  solidsByVolume,
}: Pick<PumpDeratingInputs, "impellerDiameter" | "solidsByVolume">): readonly Finding[] {
  const findings: Finding[] = [];
  if (impellerDiameter !== null && impellerDiameter > LARGE_IMPELLER) {
    findings.push({
      code: "derating-large-impeller",
      kind: "check",
      subject: "impeller diameter",
      found: amount("size", impellerDiameter),
      limit: { quantity: "size", value: LARGE_IMPELLER, side: "at most" },
    });
  }
  if (solidsByVolume > EFFICIENCY_LIMIT) {
    findings.push({
      code: "derating-efficiency-lower",
      kind: "check",
      subject: "solids by volume",
      found: amount("percent", solidsByVolume),
      limit: { quantity: "percent", value: EFFICIENCY_LIMIT, side: "at most" },
    });
  }
  return findings;
}

/** NPSHR on slurry, over the head ratio (house choice). Warns: caution npshr-rises. */
export function npshRemark(headRatio: number): readonly Finding[] {
  if (headRatio >= 1) return [];
  const cites: Citation = { source: "house", at: "NPSHR on slurry taken as that on water over the head ratio" };
  return [
    {
      code: "npshr-rises",
      kind: "check",
      subject: "NPSHR",
      facts: { factor: amount("ratio", 1 / headRatio) },
      cites,
    },
  ];
}

/** The fits are for solids in water; outside this SG the liquid is another. */
const NEAR_WATER = { atLeast: 0.95, atMost: 1.05 };

/** Warns: caution derating-not-in-water. */
export function carrierRemark(liquidSG: number): readonly Finding[] {
  if (liquidSG >= NEAR_WATER.atLeast && liquidSG <= NEAR_WATER.atMost) return [];
  return [
    {
      code: "derating-not-in-water",
      kind: "check",
      subject: "liquid SG",
      found: amount("ratio", liquidSG),
      cites: { source: "house", at: "derating fits taken as they stand up to 5 % from SG 1" },
    },
  ];
}
