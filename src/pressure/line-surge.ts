import { checkInputs, type Method } from "../basis/method.ts";
import { remembered } from "../basis/remembered.ts";
import { type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { flowIn, type Line } from "../pipework/line.ts";
import type { Pipe } from "../pipework/pipe.ts";
import { meanVelocity } from "../pipework/pipe-velocity.ts";
import { type Surge, screen, surge, surgeMethod } from "./surge.ts";

export interface LineSurgeInput {
  /** Flow that stops, m³/s. */
  readonly flow: number;
  readonly line: Line;
  readonly liquid: LiquidState;
  /** Of the liquid, Pa. */
  readonly bulkModulus: number;
}

/** Surge of a run with its own wave speed, or of the line by its mean. */
export interface RunSurge {
  /** m/s */
  readonly velocity: number;
  readonly waveSpeed: number;
  /** Pa */
  readonly pressureChange: number;
  /** Time a wave takes to its end and back, s. */
  readonly returnTime: number;
}

export interface LineSurge {
  readonly runs: readonly (RunSurge & { readonly counts: boolean })[];
  /** By the length-weighted mean of wave speed and velocity. */
  readonly line: RunSurge;
  /** Place of the run with the highest surge among those that count; undefined where the line speaks for all of them. */
  readonly worst: number | undefined;
}

/** A run whose wave returns within this share of the line's time raises the pressure through the line alone. House choice. */
const SHORT = 0.1;

export const lineSurgeMethod = {
  cites: [
    ...surgeMethod.cites,
    { source: "house", at: "a run whose return time is below a tenth of the line's counts through the line alone" },
  ],
  inputs: { flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 } },
} as const satisfies Method<"flow">;

/**
 * Surge of each run of a line where its flow stops at once, Pa, and of the whole line by its mean wave speed.
 * Formula: Δp_i = ρ a_i V_i;  line: a = ΣL/Σ(L/a), V = Σ(L V)/ΣL, Δp = ρ a V;  a run counts from 2 L/a of a tenth of Σ 2 L/a
 * Fails: line-without-length; inputs outside the method's bounds; as `surge`.
 * Warns: as `surge`, each remark once.
 * Source: Joukowsky 1898; Wylie and Streeter, pipes in series.
 */
export function lineSurge({ flow, line, liquid, bulkModulus }: LineSurgeInput): Result<LineSurge> {
  return surgeOf(line, flow, liquid, bulkModulus);
}

/** Another shutoff level of the pumps leaves the surge of the line as it was. */
const surgeOf = remembered(suddenStop);

function suddenStop(line: Line, flow: number, liquid: LiquidState, bulkModulus: number): Result<LineSurge> {
  const checked = checkInputs(lineSurgeMethod, { flow });
  if (!checked.ok) return checked;
  const length = line.reduce((sum, run) => sum + run.length, 0);
  if (length <= 0) return fail([{ code: "line-without-length", kind: "error", subject: "line" }]);
  const findings: Finding[] = [];
  const runs: RunSurge[] = [];
  // Of runs of one pipe at one velocity, found once.
  const known: { readonly pipe: Pipe; readonly velocity: number; readonly of: Surge }[] = [];
  for (const run of line) {
    const velocity = meanVelocity(flowIn(run, flow), run.pipe.bore);
    let of = known.find((one) => one.pipe === run.pipe && one.velocity === velocity)?.of;
    if (of === undefined) {
      const found = surge({ velocityChange: velocity, pipe: run.pipe, liquid, bulkModulus });
      if (!found.ok) return found;
      findings.push(...found.findings.filter(({ code }) => !ONE_PIPE.has(code)));
      of = found.value;
      known.push({ pipe: run.pipe, velocity, of });
    }
    runs.push({ velocity, ...of, returnTime: (2 * run.length) / of.waveSpeed });
  }
  const returnTime = runs.reduce((sum, run) => sum + run.returnTime, 0);
  const waveSpeed = (2 * length) / returnTime;
  const velocity = runs.reduce((sum, run, i) => sum + run.velocity * (line[i]?.length ?? 0), 0) / length;
  const whole = { velocity, waveSpeed, pressureChange: liquid.density * waveSpeed * velocity, returnTime };
  const counted = runs.map((run) => ({ ...run, counts: run.returnTime >= SHORT * returnTime }));
  const worst = counted.reduce<number | undefined>(
    (best, run, i) =>
      run.counts && (best === undefined || run.pressureChange > (counted[best]?.pressureChange ?? 0)) ? i : best,
    undefined,
  );
  return succeed({ runs: counted, line: whole, worst }, [...once(findings), screen(waveSpeed)]);
}

function once(findings: readonly Finding[]): readonly Finding[] {
  return [...new Map(findings.map((finding) => [JSON.stringify(finding), finding])).values()];
}

/** Said of one pipe; of the line the screen is said once. */
const ONE_PIPE: ReadonlySet<string> = new Set(["surge-anchored-higher", "surge-is-a-screen"]);
