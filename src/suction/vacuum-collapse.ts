import { CELSIUS_ZERO } from "../basis/constants.ts";
import type { Amount } from "../basis/quantities.ts";
import { amount, type Finding } from "../basis/result.ts";
import { pipeCollapse, pipeCollapseMethod, VACUUM_FACTOR } from "../estimate/pipe-collapse.ts";
import type { Pipe } from "../pipework/pipe.ts";
import { USUAL_RATINGS } from "../pressure/usual-rating.ts";

/** A pipe and the vacuum in it, Pa below the air around it. */
export interface PipeUnderVacuum {
  readonly pipe: Pipe;
  readonly vacuum: number;
  readonly chainage?: Amount;
}

/** The temperature of the moduli, K: 23 °C (73 °F). */
const MODULUS_TEMPERATURE = CELSIUS_ZERO + 23;

/** The first hose under more vacuum than such hose stands; lay-flat hose is judged where it lies. Warns: hose-beyond-vacuum. */
function hoseRemark(subject: string, pipes: readonly PipeUnderVacuum[]): readonly Finding[] {
  const beyond = pipes.find(
    ({ pipe, vacuum }) => vacuum > (pipe.make?.standsVacuum ?? Number.POSITIVE_INFINITY) && !pipe.collapsible,
  );
  if (beyond === undefined) return [];
  const limit = {
    quantity: "vacuum",
    value: beyond.pipe.make?.standsVacuum ?? 0,
    side: "at most",
  } as const;
  const found = amount("vacuum", beyond.vacuum);
  const given = beyond.pipe.name;
  return [{ code: "hose-beyond-vacuum", kind: "check", subject, given, found, limit, cites: USUAL_RATINGS }];
}

/**
 * The pipe that comes nearest to buckling, where its vacuum is more than half of what it stands for 50 years at 23 °C: a
 * limit where it would buckle within half an hour as the stronger grade. Pipe of unknown wall is passed over; of hose the first
 * under more vacuum than such hose stands.
 * Warns: pipe-vacuum-collapses, hose-beyond-vacuum.
 * Source: as `pipeCollapse`; of hose common practice.
 */
export function vacuumRemarks(subject: string, pipes: readonly PipeUnderVacuum[]): readonly Finding[] {
  let worst: { readonly share: number; readonly finding: Finding } | undefined;
  for (const { pipe, vacuum, chainage } of pipes) {
    if (vacuum <= 0) continue;
    const facts = { duration: null, temperature: MODULUS_TEMPERATURE, outOfRound: null };
    const collapse = pipeCollapse({ pipe, ...facts });
    if (!collapse.ok) continue;
    const { pressure, atBest } = collapse.value;
    const share = vacuum / pressure;
    if (share * VACUUM_FACTOR <= 1 || (worst !== undefined && share <= worst.share)) continue;
    worst = {
      share,
      finding: {
        code: "pipe-vacuum-collapses",
        kind: vacuum > atBest ? "limit" : "check",
        subject,
        given: pipe.name,
        found: amount("vacuum", vacuum),
        limit: { quantity: "vacuum", value: pressure, side: "at most" },
        facts: { atBest: amount("vacuum", atBest), ...(chainage && { chainage }) },
        cites: pipeCollapseMethod.cites[0],
      },
    };
  }
  return [...(worst === undefined ? [] : [worst.finding]), ...hoseRemark(subject, pipes)];
}
