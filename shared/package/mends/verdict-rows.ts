import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { toEngine } from "../../../src/basis/units.ts";
import type { Criterion } from "../../catalogue/parameters/criteria.ts";
import type { Duty } from "../../duty/duty.ts";

export function isBroken({ state }: Criterion): boolean {
  return state === "fail" || state === "check";
}

/** A figure of a row in the engine's unit. */
export function inEngine(figure: number, quantity: "head" | "gaugePressure", { unitSet }: Duty): number {
  return toEngine(figure, UNIT_SETS[unitSet][quantity]);
}
