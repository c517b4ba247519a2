/**
 * Grades of flange bolting, by size where strength goes by size. Largest bolt in mm, then proof and yield strength as
 * printed for inch bolts (ksi) and for metric ones (MPa), two tables of the standard and not one converted; a grade that
 * is printed in one of them keeps it in the other's bolts. Proof is null where the standard has none; of stainless steel
 * yield is the 0.2 % stress. `of`, `least`, `greatest`: the strength the trade assembles by, and the part of it: A193 B7 and
 * stainless 40 to 60 % of yield, SAE grade 5 and ISO 8.8 60 to 70 % of proof, A307 B 20 to 25 ksi of a nominal yield of 36.
 *
 * ASTM A193/A193M (2017), A320 (2018), A307, SAE J429, ISO 898-1 (2013), ISO 3506-1 (2009).
 * Verified: A193, ISO 898-1 and ISO 3506-1 strengths read in data sheets of steels and fasteners; A320, A307, SAE grade 5
 * and ISO 4.6 from memory. Parts of the strength are common practice.
 */
export interface BoltStrength {
  /** Nominal diameter, mm; the strength holds up to it. Infinity where the standard has no end that flanges meet. */
  readonly largest: number;
  readonly ksi?: { readonly proof: number | null; readonly yields: number };
  readonly MPa?: { readonly proof: number | null; readonly yields: number };
}

export interface BoltGrade {
  readonly of: "proof" | "yields";
  readonly least: number;
  readonly greatest: number;
  /** Low strength as the piping codes mean it: what grey iron with a ring gasket takes, with soft gaskets alone. */
  readonly isLowStrength?: true;
  readonly isMetric?: true;
  /** Smallest first. */
  readonly strengths: readonly [BoltStrength, ...BoltStrength[]];
}

const ANY = Number.POSITIVE_INFINITY;
const TO_2_1_2_IN = 64;

const byYield = { of: "yields", least: 0.4, greatest: 0.6 } as const;
const byProof = { of: "proof", least: 0.6, greatest: 0.7 } as const;

/** Strength printed in ksi and in MPa. */
function both(largest: number, ksi: number, MPa: number): BoltStrength {
  return { largest, ksi: { proof: null, yields: ksi }, MPa: { proof: null, yields: MPa } };
}

function metric(largest: number, proof: number | null, yields: number): BoltStrength {
  return { largest, MPa: { proof, yields } };
}

export const BOLT_GRADES = {
  "A193 B7": { ...byYield, strengths: [both(TO_2_1_2_IN, 105, 720)] },
  "A320 L7": { ...byYield, strengths: [both(TO_2_1_2_IN, 105, 725)] },
  "A320 L7M": { ...byYield, strengths: [both(TO_2_1_2_IN, 80, 550)] },
  "A193 B8 class 1": { ...byYield, isLowStrength: true, strengths: [both(ANY, 30, 205)] },
  "A193 B8M class 1": { ...byYield, isLowStrength: true, strengths: [both(ANY, 30, 205)] },
  "A193 B8 class 2": {
    ...byYield,
    strengths: [both(20, 100, 690), both(25.4, 80, 550), both(31.75, 65, 450), both(38.1, 50, 345)],
  },
  "A193 B8M class 2": {
    ...byYield,
    strengths: [both(20, 95, 655), both(25.4, 80, 550), both(31.75, 65, 450), both(38.1, 50, 345)],
  },
  "SAE grade 5": { ...byProof, strengths: [{ largest: 25.4, ksi: { proof: 85, yields: 92 } }] },
  "A307 B": {
    of: "yields",
    least: 20 / 36,
    greatest: 25 / 36,
    isLowStrength: true,
    strengths: [{ largest: ANY, ksi: { proof: null, yields: 36 } }],
  },
  "ISO 4.6": { ...byProof, isMetric: true, isLowStrength: true, strengths: [metric(39, 225, 240)] },
  "ISO 8.8": { ...byProof, isMetric: true, strengths: [metric(16, 580, 640), metric(39, 600, 660)] },
  "ISO 10.9": { ...byProof, isMetric: true, strengths: [metric(39, 830, 940)] },
  "A2-50": { ...byYield, isMetric: true, strengths: [metric(39, null, 210)] },
  "A2-70": { ...byYield, isMetric: true, strengths: [metric(24, null, 450)] },
  "A4-70": { ...byYield, isMetric: true, strengths: [metric(24, null, 450)] },
  "A4-80": { ...byYield, isMetric: true, strengths: [metric(24, null, 600)] },
} as const satisfies Readonly<Record<string, BoltGrade>>;

export type BoltGradeName = keyof typeof BOLT_GRADES;
