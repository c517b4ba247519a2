import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { RULES_OF_THUMB } from "./judgement.ts";
import type { MakeUp } from "./make-up.ts";
import type { Particle } from "./particle.ts";

/** What the wetted parts meet. Null where it is not known: nothing is guessed for it. */
export interface WettedDuty {
  readonly pH: number | null;
  /** K */
  readonly temperature: number | null;
  /** Chloride ion, kg/m³. */
  readonly chlorides: number | null;
  /** Mass of solids per mass of slurry. */
  readonly solids: number | null;
  readonly particle: Particle | null;
  /** Largest particles, m. */
  readonly particleSize: number | null;
  /** Smallest passage of the impeller, m. */
  readonly passage: number | null;
  /** Free chlorine, chlorine dioxide or permanganate, kg/m³. */
  readonly oxidiser: number | null;
  /** What the liquid is, or what else is in it. */
  readonly makeUp: MakeUp | null;
}

export const wettedDutyMethod = {
  cites: [RULES_OF_THUMB],
  inputs: {
    pH: { name: "pH", quantity: "ratio", atLeast: 0, atMost: 14 },
    temperature: { name: "maximum temperature", quantity: "temperature", atLeast: 243.15, atMost: 573.15 },
    chlorides: { name: "chlorides", quantity: "concentration", atLeast: 0, atMost: 400 },
    solids: { name: "solids by weight", quantity: "percent", atLeast: 0, below: 0.7 },
    particleSize: { name: "maximum particle size", quantity: "size", above: 0 },
    passage: { name: "impeller passage", quantity: "size", above: 0 },
    oxidiser: { name: "oxidiser", quantity: "concentration", atLeast: 0 },
  },
} as const satisfies Method<"pH" | "temperature" | "chlorides" | "solids" | "particleSize" | "passage" | "oxidiser">;

/**
 * Holds what is known of a duty against the bounds; the rules speak of liquids from −30 °C to 300 °C (house choice).
 * Fails: inputs outside the method's bounds; particles that do not pass the impeller.
 * Warns: cautions on a doubtful percentage and on particles above a third of the passage unless soft.
 * Source: common practice.
 */
export function checkWettedDuty(duty: WettedDuty): Result<null> {
  const { particleSize, passage } = duty;
  // What is not known is held against the bounds as a value that lies within them.
  const checked = checkInputs(wettedDutyMethod, {
    pH: duty.pH ?? 7,
    temperature: duty.temperature ?? 293.15,
    chlorides: duty.chlorides ?? 0,
    solids: duty.solids ?? 0,
    particleSize: particleSize ?? 1,
    passage: passage ?? 1,
    oxidiser: duty.oxidiser ?? 0,
  });
  if (!checked.ok) return checked;
  const findings: Finding[] = [...checked.findings];
  if (particleSize !== null && passage !== null) {
    const found = amount("size", particleSize);
    const limit = { quantity: "size", value: passage, side: "at most" } as const;
    const facts = { passage: amount("size", passage) };
    if (particleSize > passage) {
      return fail([{ code: "particle-beyond-passage", kind: "error", subject: "maximum particle size", found, limit }]);
    }
    if (particleSize > passage / 3 && duty.particle?.isHard !== false) {
      findings.push({
        code: "particle-near-passage",
        kind: "check",
        subject: "maximum particle size",
        found,
        facts,
        cites: RULES_OF_THUMB,
      });
    }
  }
  return succeed(null, findings);
}

/** What is missing of a duty, in words an estimator asks the customer with. */
export function missingOf(duty: WettedDuty): readonly MissingDatum[] {
  return [
    ...(duty.pH === null ? (["pH"] as const) : []),
    ...(duty.temperature === null ? (["temperature"] as const) : []),
    ...(duty.chlorides === null ? (["chlorides"] as const) : []),
    ...(duty.solids === null ? (["solids by weight"] as const) : []),
    ...(duty.particle === null && duty.solids !== 0 ? (["hardness of the particles"] as const) : []),
    ...(duty.particleSize === null && duty.solids !== 0 ? (["size of the largest particles"] as const) : []),
    ...(duty.particleSize !== null && duty.passage === null
      ? (["free passage of the impeller, from the pump maker"] as const)
      : []),
    ...(duty.makeUp === null ? (["exact make-up and concentration of the liquid"] as const) : []),
    ...(duty.oxidiser === null ? (["dose of any chlorine or other oxidiser"] as const) : []),
  ];
}

export type MissingDatum =
  | "pH"
  | "temperature"
  | "chlorides"
  | "solids by weight"
  | "hardness of the particles"
  | "size of the largest particles"
  | "free passage of the impeller, from the pump maker"
  | "exact make-up and concentration of the liquid"
  | "dose of any chlorine or other oxidiser";
