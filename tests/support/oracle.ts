import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";

/**
 * What oracle.py answers: density at [K, Pa]; viscosity at [K, kg/m³]; friction at [Reynolds number, ε/D]; 3-K at
 * [row, inches, Reynolds number]; the rest at one figure or [K, kg/kg].
 */
export type OracleKind =
  | "density"
  | "viscosity"
  | "saturation"
  | "boiling point"
  | "sea water density"
  | "air pressure"
  | "air temperature"
  | "air density"
  | "friction"
  | "friction to 40 digits"
  | "3-K coefficient";

export interface Question {
  readonly kind: OracleKind;
  readonly points: readonly (readonly number[])[];
}

/** The answers of open Python libraries (iapws, fluids), one list a question, from one Python process. */
export function askOracle(questions: readonly Question[]): readonly (readonly number[])[] {
  const answers = JSON.parse(runPython(JSON.stringify(questions))) as readonly (readonly number[])[];
  for (const [i, { kind, points }] of questions.entries()) {
    if (answers[i]?.length !== points.length) throw new Error(`the oracle left out points of ${kind}`);
  }
  return answers;
}

/** Whichever Python there is has to have the libraries; the system's own often does where the first found does not. */
function runPython(input: string): string {
  const script = fileURLToPath(new URL("oracle.py", import.meta.url));
  let problem: unknown;
  for (const python of ["python3", "/usr/bin/python3"]) {
    try {
      return execFileSync(python, [script], { input, encoding: "utf8", stdio: "pipe", maxBuffer: 64 * 1024 * 1024 });
    } catch (error) {
      problem = error;
    }
  }
  throw problem;
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
