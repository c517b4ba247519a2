import { type MakeUp, makeUpNamed } from "../../src/material/make-up.ts";
import { type Particle, particleNamed } from "../../src/material/particle.ts";
import type { WettedDuty } from "../../src/material/wetted-duty.ts";

/** What a text of the estimator's names; throws where it cannot be read. */
export function makeUpOf(text: string): MakeUp {
  const read = makeUpNamed(text, "make-up");
  if (!read.ok) throw new Error(`${text}: ${JSON.stringify(read.findings)}`);
  return read.value;
}

export function particleOf(text: string): Particle {
  const read = particleNamed(text, "hardness");
  if (!read.ok) throw new Error(text);
  return read.value;
}

/** Clean neutral water at 20 °C with 50 mg/L of chloride and nothing else in it, with what a case changes. */
export function wettedDuty(change: Partial<WettedDuty> = {}): WettedDuty {
  return {
    pH: 7,
    temperature: 293.15,
    chlorides: 0.05,
    solids: 0,
    particle: null,
    particleSize: null,
    passage: null,
    oxidiser: 0,
    makeUp: makeUpOf("nothing else"),
    ...change,
  };
}
