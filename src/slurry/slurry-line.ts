import type { Citation } from "../basis/citation.ts";
import type { Method } from "../basis/method.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import { pipeFriction } from "../pipework/pipe-friction.ts";
import {
  type DepositionVelocity,
  depositionVelocity,
  depositionVelocityMethod,
  FINE_SIZE,
  STRATIFIED_RATIO,
} from "./deposition-velocity.ts";
import { fineSlurry, fineSlurryMethod } from "./fine-slurry.ts";
import {
  bedLies,
  gradingExponent,
  type SlurryFrictionInputs,
  slow,
  slurryFriction,
  slurryFrictionMethod,
} from "./slurry-friction.ts";

const REGIME_CITE: Citation = {
  source: "house",
  at: "below 0.1 mm one liquid; a sliding bed above 0.018 of the bore; else solids carried above the deposition velocity",
};

export const slurryLineMethod = {
  cites: [...depositionVelocityMethod.cites, ...slurryFrictionMethod.cites, ...fineSlurryMethod.cites, REGIME_CITE],
  inputs: {},
} as const satisfies Method<never>;

/** How the solids travel. Only of the first two is the friction known here. */
export type SlurryRegime = "carried" | "one liquid" | "sliding bed" | "bed at rest";

export type SlurryVerdict = "keeps moving" | "below the velocity to design for" | "SETTLES";

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
  /** m of slurry per m; null where a bed lies or slides. */
  readonly slurryGradient: number | null;
}

/** Below this Reynolds number the flow of a pipe is not turbulent for sure. */
const TURBULENT = 4000;

/**
 * Velocity of a slurry in one run of pipe against that under which solids rest, m/s, and its friction: Wilson's where
 * they are carried, Darcy–Weisbach with the mixture below a d50 of 0.1 mm; none where a bed lies or slides.
 * Fails: as `gradingExponent`, `depositionVelocity`, `pipeFriction`, `fineSlurry` and `slurryFriction`.
 * Warns: bed-in-pipe, fine-slurry-not-turbulent (Re under 4000). Cautions: below-design-velocity; as its parts.
 * Source: as its parts; the bounds of the regimes are a house choice.
 */
export function slurryLine(inputs: SlurryFrictionInputs): Result<SlurryLine> {
  const { flow, pipe, particleSize, coarseSize, liquid } = inputs;
  const { bore } = pipe;
  const grading = gradingExponent(particleSize, coarseSize);
  if (!grading.ok) return grading;
  return andThen(depositionVelocity({ ...inputs, bore }), (deposition) =>
    andThen(pipeFriction({ flow, pipe, length: 1, liquid }), ({ velocity, head }) => {
      const { limiting, design } = deposition;
      const facts = {
        velocity,
        limiting,
        ratio: velocity / limiting,
        design,
        verdict: verdictOf(velocity, deposition),
        liquidGradient: head,
      };
      const told = (regime: SlurryRegime, slurryGradient: number | null): SlurryLine => ({
        ...facts,
        regime,
        slurryGradient,
      });
      if (velocity < limiting) return succeed(told("bed at rest", null), [bedWarned(velocity, limiting)]);
      // The remark on it comes with the limiting velocity.
      if (particleSize / bore > STRATIFIED_RATIO) return succeed(told("sliding bed", null));
      return particleSize < FINE_SIZE
        ? andThen(asOneLiquid(inputs), ({ gradient, findings }) =>
            succeed(told("one liquid", gradient), [...findings, ...slowRemark(velocity, deposition)]),
          )
        : andThen(slurryFriction(inputs), ({ slurryGradient }) => succeed(told("carried", slurryGradient)));
    }),
  );
}

function verdictOf(velocity: number, { limiting, design }: DepositionVelocity): SlurryVerdict {
  if (velocity < limiting) return "SETTLES";
  return velocity < design ? "below the velocity to design for" : "keeps moving";
}

function slowRemark(velocity: number, { design }: DepositionVelocity): readonly Finding[] {
  return velocity < design ? [slow(velocity, design)] : [];
}

function bedWarned(velocity: number, limiting: number): Finding {
  return { ...bedLies(velocity, limiting), kind: "limit", cites: depositionVelocityMethod.cites[0] };
}

function asOneLiquid({ liquid, solidsSG, solidsByVolume, flow, pipe }: SlurryFrictionInputs): Result<{
  readonly gradient: number;
  readonly findings: readonly Finding[];
}> {
  return andThen(fineSlurry({ liquid, solidsSG, solidsByVolume }), (mixture) =>
    andThen(pipeFriction({ flow, pipe, length: 1, liquid: mixture }), ({ head, reynolds }) =>
      succeed({ gradient: head, findings: reynolds < TURBULENT ? [notTurbulent(reynolds)] : [] }),
    ),
  );
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
