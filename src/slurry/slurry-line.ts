import type { Citation } from "../basis/citation.ts";
import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import type { Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { needsRoughness } from "../pipework/hazen-williams.ts";
import { type PipeFriction, pipeFriction } from "../pipework/pipe-friction.ts";
import {
  DESIGN_CITE,
  type DepositionVelocity,
  depositionVelocity,
  depositionVelocityMethod,
  FINE_SIZE,
  STRATIFIED_RATIO,
  stratified,
} from "./deposition-velocity.ts";
import { fineSlurry, fineSlurryMethod } from "./fine-slurry.ts";
import {
  SLIDING_FRICTION,
  type SlurryFrictionInputs,
  slurryFriction,
  slurryFrictionMethod,
} from "./slurry-friction.ts";

const REGIME_CITE: Citation = {
  source: "house",
  at: "a bed at rest below the deposition velocity; a sliding bed above 0.018 of the bore; below 0.1 mm one liquid where that loses more; else suspended",
};

export const slurryLineMethod = {
  cites: [...depositionVelocityMethod.cites, ...slurryFrictionMethod.cites, ...fineSlurryMethod.cites, REGIME_CITE],
  inputs: {},
} as const satisfies Method<never>;

/** How the solids travel. */
export type SlurryRegime = "suspended" | "one liquid" | "sliding bed" | "bed at rest";

export type SlurryVerdict = "keeps moving" | "below the design minimum" | "SETTLES";

export interface SlurryLine {
  /** m/s */
  readonly velocity: number;
  readonly limiting: number;
  /** V/V_L */
  readonly ratio: number;
  /** Least to design for, m/s. */
  readonly design: number;
  readonly verdict: SlurryVerdict;
  readonly regime: SlurryRegime;
  /** Of the liquid alone, m of it per m. */
  readonly liquidGradient: number;
  /** m of slurry per m. */
  readonly slurryGradient: number;
}

/** Below this Reynolds number the flow of a pipe is not turbulent for sure. */
const TURBULENT = 4000;

/** Particle over bore from which stratified flow has been seen. */
const STRATIFIED_FROM = 0.015;

/**
 * Velocity of a slurry in one run of pipe against that under which solids rest, m/s, and its friction. That never falls
 * below what the liquid alone loses, in m of each, nor, where a bed lies, below that at the deposition velocity: so
 * neither more solids nor a bed ever seem to lose less.
 * Formula: suspended: `slurryFriction`; d50 under 0.1 mm: Darcy–Weisbach with the mixture where that is more; a sliding
 *          bed, above 0.018 of the bore: i_m = i_l + 0.44 (S_m − S_l), all solids on the bottom
 * Fails: pipe-c-not-roughness; as `depositionVelocity`, `slurryFriction`, `pipeFriction` and `fineSlurry`.
 * Warns: bed-in-pipe and fine-slurry-not-turbulent, Re under 4000 (limits); below-design-velocity; flow-stratified from
 * 0.015 of the bore; as its parts.
 * Source: as its parts; the bounds of the regimes and the least loss are a house choice.
 */
export function slurryLine(inputs: SlurryFrictionInputs): Result<SlurryLine> {
  const { flow, pipe, liquid } = inputs;
  const statesC = needsRoughness(pipe);
  if (statesC !== undefined) return fail([statesC]);
  return andThen(depositionVelocity({ ...inputs, bore: pipe.bore }), (deposition) =>
    andThen(pipeFriction({ flow, pipe, length: 1, liquid }), ({ velocity, head }) => {
      const { limiting, design } = deposition;
      const rests = velocity < limiting;
      // The same pipe at the velocity that just carries the solids.
      const moving = rests ? { ...inputs, flow: (limiting * Math.PI * pipe.bore ** 2) / 4 } : inputs;
      return andThen(movingFriction(moving), ({ gradient, regime }) =>
        succeed(
          {
            velocity,
            limiting,
            ratio: velocity / limiting,
            design,
            verdict: verdictOf(velocity, deposition),
            regime: rests ? "bed at rest" : regime,
            liquidGradient: head,
            slurryGradient: gradient,
          },
          [...velocityRemarks(velocity, deposition), ...sizeRemarks(inputs), ...turbulenceRemarks(inputs)],
        ),
      );
    }),
  );
}

interface Moving {
  /** m of slurry per m. */
  readonly gradient: number;
  readonly regime: SlurryRegime;
}

function movingFriction(inputs: SlurryFrictionInputs): Result<Moving> {
  const { particleSize, pipe, liquid, solidsSG, solidsByVolume } = inputs;
  return andThen(slurryFriction(inputs), ({ carrierGradient, slurryGradient }) => {
    const liquidSG = liquid.density / SPECIFIC_GRAVITY_REFERENCE;
    const clear = carrierGradient / liquidSG;
    if (particleSize / pipe.bore > STRATIFIED_RATIO) {
      const submerged = solidsByVolume * (solidsSG - liquidSG);
      const sliding = (carrierGradient + SLIDING_FRICTION * submerged) / (liquidSG + submerged);
      return succeed<Moving>({ gradient: Math.max(clear, sliding), regime: "sliding bed" });
    }
    const suspended = Math.max(clear, slurryGradient);
    if (particleSize >= FINE_SIZE) return succeed<Moving>({ gradient: suspended, regime: "suspended" });
    return andThen(asOneLiquid(inputs), ({ head }) =>
      succeed<Moving>({ gradient: Math.max(suspended, head), regime: "one liquid" }),
    );
  });
}

function verdictOf(velocity: number, { limiting, design }: DepositionVelocity): SlurryVerdict {
  if (velocity < limiting) return "SETTLES";
  return velocity < design ? "below the design minimum" : "keeps moving";
}

function velocityRemarks(velocity: number, { limiting, design }: DepositionVelocity): readonly Finding[] {
  if (velocity >= design) return [];
  const slow = { subject: "velocity", found: amount("velocity", velocity) } as const;
  if (velocity >= limiting) {
    const limit = { quantity: "velocity", value: design, side: "at least" } as const;
    return [{ ...slow, code: "below-design-velocity", kind: "check", limit, cites: DESIGN_CITE }];
  }
  const limit = { quantity: "velocity", value: limiting, side: "at least" } as const;
  return [{ ...slow, code: "bed-in-pipe", kind: "limit", limit, cites: depositionVelocityMethod.cites[0] }];
}

/** Above 0.018 of the bore the deposition velocity says it. */
function sizeRemarks({ particleSize, pipe: { bore } }: SlurryFrictionInputs): readonly Finding[] {
  const ratio = particleSize / bore;
  if (ratio <= STRATIFIED_FROM || ratio > STRATIFIED_RATIO) return [];
  const limit = { quantity: "ratio", value: STRATIFIED_FROM, side: "at most" } as const;
  return [{ ...stratified(particleSize, bore), limit }];
}

function asOneLiquid({ liquid, solidsSG, solidsByVolume, flow, pipe }: SlurryFrictionInputs): Result<PipeFriction> {
  return andThen(fineSlurry({ liquid, solidsSG, solidsByVolume }), (mixture) =>
    pipeFriction({ flow, pipe, length: 1, liquid: mixture }),
  );
}

/** Whether a fine slurry stays turbulent at the flow it has, which keeps it from settling out slowly. */
function turbulenceRemarks(inputs: SlurryFrictionInputs): readonly Finding[] {
  if (inputs.particleSize >= FINE_SIZE) return [];
  const run = asOneLiquid(inputs);
  return run.ok && run.value.reynolds < TURBULENT ? [notTurbulent(run.value.reynolds)] : [];
}

function notTurbulent(reynolds: number): Finding {
  return {
    code: "fine-slurry-not-turbulent",
    kind: "limit",
    subject: "Reynolds number of the slurry",
    found: amount("ratio", reynolds),
    limit: { quantity: "ratio", value: TURBULENT, side: "at least" },
    cites: { source: "house", at: "fine slurry kept turbulent, Re of at least 4000, so that it does not settle" },
  };
}
