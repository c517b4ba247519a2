import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";

/** What oracle.py answers: density at [K, Pa]; viscosity at [K, kg/m³]; the rest at one figure or [K, kg/kg]. */
export type OracleKind =
  | "density"
  | "viscosity"
  | "saturation"
  | "boiling point"
  | "sea water density"
  | "air pressure"
  | "air temperature"
  | "air density";

export interface Question {
  readonly kind: OracleKind;
  readonly points: readonly (readonly number[])[];
}

/** The answers of open Python libraries (iapws, fluids), one list a question, from one Python process. */
export function askOracle(questions: readonly Question[]): readonly (readonly number[])[] {
  const script = fileURLToPath(new URL("oracle.py", import.meta.url));
  const python = process.env["PYTHON"] ?? "/usr/bin/python3";
  const out = execFileSync(python, [script], {
    input: JSON.stringify(questions),
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
  });
  const answers = JSON.parse(out) as readonly (readonly number[])[];
  for (const [i, { kind, points }] of questions.entries()) {
    if (answers[i]?.length !== points.length) throw new Error(`the oracle left out points of ${kind}`);
  }
  return answers;
}

/** Numbers in [0, 1) that are the same at every run (a linear congruential sequence, Park and Miller). */
export function repeatableNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/** Greatest relative difference of two lists, and where. */
export function worstDifference(
  ours: readonly number[],
  theirs: readonly number[],
): { readonly difference: number; readonly at: number } {
  let worst = { difference: 0, at: 0 };
  for (const [at, value] of ours.entries()) {
    const difference = Math.abs(value / (theirs[at] as number) - 1);
    // A figure that is no number must count as the worst of all.
    if (!(difference <= worst.difference)) worst = { difference, at };
    if (Number.isNaN(difference)) return { difference: Number.POSITIVE_INFINITY, at };
  }
  return worst;
}
