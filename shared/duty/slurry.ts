import { SPECIFIC_GRAVITY_REFERENCE } from "../../src/basis/constants.ts";
import { andThen, fail, type Result, succeed } from "../../src/basis/result.ts";
import type { Liquid, LiquidState } from "../../src/liquid/liquid.ts";
import { slurryLiquid } from "../../src/slurry/slurry-liquid.ts";
import { type Duty, isGiven } from "./duty.ts";
import type { FieldKey } from "./fields.ts";

/** What fixes the composition of a slurry: any two of them. */
export const COMPOSITION_FIELDS = ["solids", "solidsByVolume", "solidsGravity", "slurryGravity"] as const;

/** What says how the solids travel. */
const SIZE_FIELDS = ["medianSize", "coarseSize", "fines"] as const;

/** Boxes the liquid as pumped is made of; none where too little is stated to make one. */
export function slurryFields(duty: Duty): readonly (typeof COMPOSITION_FIELDS | typeof SIZE_FIELDS)[number][] {
  const composition = given(duty, COMPOSITION_FIELDS);
  return composition.length < 2 ? [] : [...composition, ...given(duty, SIZE_FIELDS)];
}

/** Whether the duty says that there are solids in its liquid, however little it says of them. */
export function hasSolids(duty: Duty): boolean {
  return given(duty, COMPOSITION_FIELDS).length > 0 && !isWithout(duty);
}

/** Whether enough is stated for the density of a slurry: two figures of its composition, none of them no solids. */
export function isSlurry(duty: Duty): boolean {
  return slurryFields(duty).length > 0 && !isWithout(duty);
}

/** Whether its settling, its friction and the pump's loss can be worked out too: with d50. */
export function isSizedSlurry(duty: Duty): boolean {
  return isSlurry(duty) && duty.state.medianSize !== "blank";
}

/** What is missing for that, by the boxes that would do. */
export function slurryMissing(duty: Duty): readonly FieldKey[] {
  if (!hasSolids(duty)) return [];
  const composition = given(duty, COMPOSITION_FIELDS);
  const other = composition.includes("solidsGravity") ? "solids" : "solidsGravity";
  return [
    ...(composition.length < 2 ? ([other] as const) : []),
    ...(duty.state.medianSize === "blank" ? (["medianSize"] as const) : []),
  ];
}

function isWithout({ solids, solidsByVolume, state }: Duty): boolean {
  return (state.solids === "stated" && solids === 0) || solidsByVolume === 0;
}

function given<K extends FieldKey>({ state }: Duty, keys: readonly K[]): readonly K[] {
  return keys.filter((key) => isGiven(state[key]));
}

/** The liquid as pumped, with its solids; fails without findings where a box it hangs on cannot be read. */
export function liquidAsPumped(duty: Duty): Result<Liquid> {
  const { liquid } = duty;
  const fields = slurryFields(duty);
  if (liquid === undefined || fields.some((key) => duty[key] === undefined)) return fail([]);
  if (fields.length === 0) return succeed(liquid);
  const stated = (key: (typeof fields)[number]) => (fields.includes(key) ? duty[key] : undefined);
  return slurryLiquid(liquid, `${liquid.name} with solids`, {
    composition: {
      ...figure("solidsByWeight", stated("solids")),
      ...figure("solidsByVolume", stated("solidsByVolume")),
      ...figure("solidsSG", stated("solidsGravity")),
      ...figure("mixtureSG", stated("slurryGravity")),
    },
    medianSize: stated("medianSize") ?? null,
    coarseSize: stated("coarseSize") ?? null,
    fines: stated("fines") ?? 0,
  });
}

function figure<K extends string>(key: K, value: number | undefined): { readonly [P in K]?: number } {
  return value === undefined ? {} : ({ [key]: value } as { readonly [P in K]?: number });
}

/** Its state at the temperature stated. */
export function stateAsPumped(duty: Duty): Result<LiquidState> {
  const { temperature } = duty;
  if (temperature === undefined) return fail([]);
  return andThen(liquidAsPumped(duty), (liquid) => liquid.at(temperature));
}

/** Mass fraction of solids, stated or following from what is; null where nobody knows it. */
export function solidsByWeight(duty: Duty): number | null {
  if (duty.state.solids === "stated") return duty.solids ?? null;
  const state = stateAsPumped(duty);
  if (!state.ok || slurryFields(duty).length === 0) return null;
  const { solids, density } = state.value;
  return solids === undefined ? 0 : (solids.byVolume * solids.specificGravity * SPECIFIC_GRAVITY_REFERENCE) / density;
}
