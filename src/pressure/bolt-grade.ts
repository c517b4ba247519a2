import { nearestNames } from "../basis/nearest.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { greatestOf } from "../numeric/extremes.ts";
import { BOLT_GRADES, type BoltGrade, type BoltGradeName } from "../tables/bolt-grades.ts";
import type { Bolt } from "./bolt-size.ts";

const ksi = 1000 * unitOf("psi").factor;
const megapascal = unitOf("MPa").factor;
const millimetre = unitOf("mm").factor;

export const BOLT_GRADE_NAMES = Object.keys(BOLT_GRADES) as readonly BoltGradeName[];

/** What the trade says beside the names themselves, as `tidy` leaves it. */
const ALSO: Readonly<Record<string, BoltGradeName>> = {
  b7: "A193 B7",
  l7: "A320 L7",
  l7m: "A320 L7M",
  b81: "A193 B8 class 1",
  b82: "A193 B8 class 2",
  b8m1: "A193 B8M class 1",
  b8m2: "A193 B8M class 2",
  sae5: "SAE grade 5",
  saej4295: "SAE grade 5",
  gr5: "SAE grade 5",
  grade5: "SAE grade 5",
  j4295: "SAE grade 5",
  a307: "A307 B",
  "4.6": "ISO 4.6",
  "8.8": "ISO 8.8",
  "10.9": "ISO 10.9",
  a250: "A2-50",
  a270: "A2-70",
  a470: "A4-70",
  a480: "A4-80",
};

/** Stainless studs named without their class: the solution-treated ones, which are a third as strong. */
const TAKEN_AS: Readonly<Record<string, BoltGradeName>> = {
  b8: "A193 B8 class 1",
  a193b8: "A193 B8 class 1",
  b8m: "A193 B8M class 1",
  a193b8m: "A193 B8M class 1",
};

function tidy(text: string): string {
  const bare = text.slice(0, 100).trim().toLowerCase();
  const whole = bare.replace(/\s+/g, "");
  // "Gr 5" and "grade 5" name the SAE grade; everywhere else the words name nothing.
  if (/^(?:gr\.?|grade)5$/.test(whole)) return "gr5";
  return bare
    .replace(/\b(?:astm|iso|898-1|3506-1|property|grade|gr\.?|class|cl\.?)(?![a-z])/g, " ")
    .replace(/[\s\-_/,]|\.(?!\d)|(?<!\d)\./g, "");
}

const byName = new Map<string, BoltGradeName>([
  ...Object.entries(ALSO),
  ...BOLT_GRADE_NAMES.map((name) => [tidy(name), name] as const),
]);

/**
 * The grade of bolting a text names: "A193 B7", "B7", "8.8", "SAE Gr 5", "B8M", "A4-70".
 * Fails: `name-unknown` with the nearest names.
 * Warns: the class that stainless studs named without one are taken as.
 */
export function boltGradeNamed(text: string, subject = "bolt grade"): Result<BoltGradeName> {
  const wanted = tidy(text);
  const found = byName.get(wanted);
  if (found !== undefined) return succeed(found);
  const taken = Object.hasOwn(TAKEN_AS, wanted) ? TAKEN_AS[wanted] : undefined;
  const given = text.trim();
  if (taken !== undefined) {
    return succeed(taken, [{ code: "bolt-grade-taken-as", kind: "check", subject, given, facts: { grade: taken } }]);
  }
  const near = nearestNames(text.slice(0, 100), BOLT_GRADE_NAMES);
  const suggestions = (near.length > 0 ? near : BOLT_GRADE_NAMES).map((name) => `"${name}"`);
  return fail([{ code: "name-unknown", kind: "error", subject, given, suggestions }]);
}

/** Strength of a grade in a bolt of a size, Pa. */
export interface StrengthOfBolt {
  readonly proof?: number;
  readonly yields: number;
  /** Stress the trade assembles to, least and greatest. */
  readonly least: number;
  readonly greatest: number;
}

/**
 * Strength of a grade in a bolt, by its size where it goes by size; nothing for a bolt too large for the grade. Inch
 * bolts read the figures printed in ksi where there are any, metric ones those in MPa.
 */
export function strengthOf(
  name: BoltGradeName,
  { diameter, isMetric }: Pick<Bolt, "diameter" | "isMetric">,
): StrengthOfBolt | undefined {
  const grade: BoltGrade = BOLT_GRADES[name];
  const found = grade.strengths.find(({ largest }) => diameter <= largest * millimetre * (1 + 1e-9));
  const printed = found && (isMetric ? (found.MPa ?? found.ksi) : (found.ksi ?? found.MPa));
  if (printed === undefined) return undefined;
  const unit = printed === found?.ksi ? ksi : megapascal;
  const by = (grade.of === "proof" ? (printed.proof ?? printed.yields) : printed.yields) * unit;
  return {
    ...(printed.proof !== null && { proof: printed.proof * unit }),
    yields: printed.yields * unit,
    least: grade.least * by,
    greatest: grade.greatest * by,
  };
}

/** Largest bolt that a grade is printed for, m. */
export function largestBolt(name: BoltGradeName): number {
  const { strengths }: BoltGrade = BOLT_GRADES[name];
  return greatestOf(strengths.map(({ largest }) => largest)) * millimetre;
}
