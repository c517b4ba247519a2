import type { Citation } from "../../../src/basis/citation.ts";
import { particleNamed } from "../../../src/material/particle.ts";
import { DESIGN_CITE, depositionVelocityMethod, STRATIFIED_RATIO } from "../../../src/slurry/deposition-velocity.ts";
import { particleSettlingMethod } from "../../../src/slurry/particle-settling.ts";
import type { Duty } from "../../duty/duty.ts";
import { hasSolids, isSizedSlurry, slurryMissing } from "../../duty/slurry.ts";
import { cell, constant, type Expression, join, least, part, product, ratio } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { LINES } from "../sections/lines.ts";
import { hasRiser, RISER, runsOf, SLURRY_LINES, type SlurryRun, slopeFactor } from "../sections/slurry-lines.ts";
import { type Criterion, limitOf, openPoint } from "./criterion.ts";
import { sewageCriteria } from "./sewage.ts";

/** Whether solids are kept moving at the least flow of the duty, and pass the pump; nothing where none are stated. */
export function solidsCriteria(duty: Duty): readonly Criterion[] {
  return [...deposition(duty), ...passage(duty), ...sewageCriteria(duty)];
}

function deposition(duty: Duty): readonly Criterion[] {
  if (!hasSolids(duty)) return [];
  if (!isSizedSlurry(duty)) {
    return [openPoint({ of: "solids", what: "velocity that keeps them moving", missing: slurryMissing(duty) })];
  }
  const runs = runsOf(duty);
  return [...runs.flatMap((run) => keptMoving(run, duty)), ...sliding(runs), rheology(), ...riser(duty, runs)];
}

const AT_LEAST_FLOW = "minimum flow of the duty";

/** Velocity in a run at the least flow of the duty. */
function velocityIn({ record }: SlurryRun): Expression {
  return product(part(record, "velocity"), ratio(SLURRY_LINES.leastFlowOfDuty, FIELD.flow));
}

/** Above the deposition velocity, or it settles; above the design minimum, or it is near that. */
function keptMoving(run: SlurryRun, duty: Duty): readonly Criterion[] {
  const { label, pipe, record } = run;
  const factor = slopeFactor(duty);
  const facts = { of: "solids", quantity: "velocity", mustBe: "at least", when: AT_LEAST_FLOW } as const;
  const place = `${label.toLowerCase()} (${pipe})`;
  return [
    limitOf({
      ...facts,
      what: `${place} against deposition`,
      found: velocityIn(run),
      limit: product(part(record, "limiting"), factor),
      broken: "fail",
      cites: depositionVelocityMethod.cites[0],
    }),
    limitOf({
      ...facts,
      what: `${place} against the design minimum`,
      found: velocityIn(run),
      limit: product(part(record, "design"), factor),
      broken: "check",
      cites: DESIGN_CITE,
    }),
  ];
}

/** Particles so large against the bore that they slide along the bottom, where no fit is sure. */
function sliding(runs: readonly SlurryRun[]): readonly Criterion[] {
  return [
    limitOf({
      of: "solids",
      what: "d50 over the narrowest bore, above which a bed slides",
      found: ratio(FIELD.medianSize, least(...runs.map(({ line, row }) => cell(LINES[line], row, "bore")))),
      limit: constant(STRATIFIED_RATIO),
      mustBe: "at most",
      broken: "check",
      cites: { source: "wilson-slurry", at: "fully stratified flow of narrowly graded particles above d/D = 0.018" },
    }),
  ];
}

/** Solids so fine may make a liquid with a yield stress, for which no fit holds. */
function rheology(): Criterion {
  return limitOf({
    of: "solids",
    what: "d50, below which the slurry may not be Newtonian: ask for its rheology",
    found: FIELD.medianSize,
    limit: FIELD.rheologySize,
    quantity: "size",
    mustBe: "at least",
    broken: "check",
    cites: { source: "house", at: "a Newtonian liquid with solids that are not too fine" },
  });
}

const RISER_PRACTICE: Citation = {
  source: "practice",
  at: "risers above the settling velocity of the largest particles",
};

/** A riser lifts its largest particles, with as much again in hand. */
function riser(duty: Duty, runs: readonly SlurryRun[]): readonly Criterion[] {
  if (!hasRiser(duty)) return [];
  if (duty.state.particleSize === "blank") {
    return [openPoint({ of: "solids", what: "riser", missing: ["particleSize"] })];
  }
  const settling = part(RISER, "alone");
  const slowest = least(...runs.filter(({ line }) => line === "dischargeLine").map(velocityIn));
  const facts = {
    of: "solids",
    found: slowest,
    quantity: "velocity",
    mustBe: "at least",
    when: AT_LEAST_FLOW,
  } as const;
  return [
    limitOf({
      ...facts,
      what: "riser against the settling of its largest particles",
      limit: settling,
      broken: "fail",
      cites: particleSettlingMethod.cites[0],
    }),
    limitOf({
      ...facts,
      what: join(
        constant("riser against "),
        FIELD.riserFactor,
        constant(" times the settling of its largest particles"),
      ),
      limit: product(FIELD.riserFactor, settling),
      broken: "check",
      cites: RISER_PRACTICE,
    }),
  ];
}

/** The largest particles against the free passage of the impeller; hard ones against a third of it. */
function passage({ state, solidsHardness }: Duty): readonly Criterion[] {
  if (state.particleSize === "blank" || state.freePassage === "blank") return [];
  const particle = particleNamed(solidsHardness ?? "", "");
  const facts = { of: "solids", found: FIELD.particleSize, quantity: "size", mustBe: "at most" } as const;
  return [
    limitOf({
      ...facts,
      what: "largest particles against the free passage of the impeller",
      limit: FIELD.freePassage,
      broken: "fail",
    }),
    ...(particle.ok && particle.value.isHard
      ? [
          limitOf({
            ...facts,
            what: "largest hard particles against a share of the free passage",
            limit: ratio(FIELD.freePassage, FIELD.passageFactor),
            broken: "check",
            cites: { source: "practice", at: "hard particles up to a share of the free passage" },
          }),
        ]
      : []),
  ];
}
