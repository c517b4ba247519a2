import type { FindingCode } from "../basis/finding-code.ts";
import { type Result, succeed } from "../basis/result.ts";
import type { LiquidState, Solids } from "../liquid/liquid.ts";
import { hazenWilliamsFriction } from "../pipework/hazen-williams.ts";
import { type PipeFriction, type PipeFrictionInputs, pipeFriction } from "../pipework/pipe-friction.ts";
import { slurryLine } from "./slurry-line.ts";
import { sinks } from "./solids.ts";

/** What a whole line has to say of one of its runs; SLURRYLINE says the rest. */
const SAID: ReadonlySet<FindingCode> = new Set(["bed-in-pipe", "fine-slurry-not-turbulent"]);

/**
 * Head lost to friction in a run of pipe, m of what is pumped: `pipeFriction`, and of a slurry whose d50 is known and
 * whose solids sink, the gradient of `slurryLine` over its length. Other slurries lose the head of their liquid. A pipe
 * that states its C goes by Hazen–Williams.
 * Fails: as `pipeFriction`, `slurryLine` and `hazenWilliamsFriction`.
 * Warns: as `pipeFriction` and `hazenWilliamsFriction`; bed-in-pipe and fine-slurry-not-turbulent (limits).
 * Source: as these.
 */
export function runFriction(inputs: PipeFrictionInputs): Result<PipeFriction> {
  const { hazenWilliams } = inputs.pipe;
  if (hazenWilliams !== undefined) return hazenWilliamsFriction(inputs, hazenWilliams);
  const clear = pipeFriction(inputs);
  const { solids } = inputs.liquid;
  if (!isSettling(solids) || !clear.ok || inputs.flow === 0) return clear;
  const run = slurryLine({
    flow: inputs.flow,
    pipe: inputs.pipe,
    particleSize: solids.medianSize,
    coarseSize: solids.coarseSize,
    solidsSG: solids.specificGravity,
    solidsByVolume: solids.byVolume,
    liquid: solids.carrier,
  });
  if (!run.ok) return run;
  const said = run.findings.filter(({ code }) => SAID.has(code));
  return succeed({ ...clear.value, head: run.value.slurryGradient * inputs.length }, [...clear.findings, ...said]);
}

/** Whether a liquid carries solids that a run loses head to as they sink, so that a slower flow may lose more. */
export function settles({ solids }: LiquidState): boolean {
  return isSettling(solids);
}

function isSettling(solids: Solids | undefined): solids is Solids & { readonly medianSize: number } {
  return solids !== undefined && solids.medianSize !== null && sinks(solids);
}
