import { SLURRYMIXTURE } from "../../catalogue/entries/slurry-duty.ts";
import type { Duty } from "../../duty/duty.ts";
import { callOf, handles, part, spillOf } from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import { figure, type PlanItem, spill } from "../plan.ts";

/** What the slurry is. */
export const SLURRY = handles({
  slurryGravity: "ratio",
  solidsByVolume: "percent",
  drySolids: "massFlow",
  slurryAsLiquid: null,
});

/** Whether enough is stated to work the solids out: how many, how heavy, how large. */
export function isSlurry({ solids, state }: Duty): boolean {
  return solids !== 0 && (["solids", "solidsGravity", "medianSize"] as const).every((key) => state[key] !== "blank");
}

export const MIXTURE = callOf(SLURRYMIXTURE, {
  solidsSG: FIELD.solidsGravity,
  solidsByWeight: FIELD.solids,
  flow: FIELD.flow,
  ...LIQUID,
});

const RECORD = spillOf("slurryMixture", SLURRYMIXTURE);

export const COMPOSITION: readonly PlanItem[] = [
  spill(RECORD, "Composition of the slurry", MIXTURE),
  figure(
    SLURRY.slurryGravity,
    "SG of the slurry",
    part(RECORD, "gravity"),
    "Solids and the liquid stated, by mass and volume; relative to 998.2 kg/m³.",
    "main",
  ),
  figure(SLURRY.solidsByVolume, "Solids by volume", part(RECORD, "byVolume"), "C_v = C_w S_m/S_s."),
  figure(
    SLURRY.drySolids,
    "Dry solids carried",
    part(RECORD, "drySolids"),
    "C_v ρ_s × flow; the flow stated is of the slurry.",
  ),
  figure(
    SLURRY.slurryAsLiquid,
    "The slurry as one liquid",
    part(RECORD, "asOneLiquid"),
    "With viscosity and vapour pressure of the liquid alone; see below.",
  ),
];
