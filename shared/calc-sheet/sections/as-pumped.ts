import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { ASPUMPED } from "../../catalogue/entries/as-pumped.ts";
import type { Duty } from "../../duty/duty.ts";
import { hasSolids, isSizedSlurry, isSlurry, slurryFields } from "../../duty/slurry.ts";
import { callOf, constant, type Expression, type Handle, handles, join, part, spillOf } from "../expression.ts";
import { AS_PUMPED, FIELD, LIQUID } from "../field-handles.ts";
import { figure, type PlanItem, spill, statement } from "../plan.ts";

/** The one liquid that all figures are of, and what a pump keeps of its head and efficiency on water; of a slurry alone. */
export const PUMPED = handles({
  pumpedGravity: "ratio",
  clearGravity: "ratio",
  pumpedByWeight: "percent",
  pumpedByVolume: "percent",
  pumpedSolidsGravity: "ratio",
  headRatio: "ratio",
  efficiencyRatio: "ratio",
});

const RECORD = spillOf("asPumped", ASPUMPED);

type Field = ReturnType<typeof slurryFields>[number];

/** The words before and after a figure, as the liquid argument reads them; a size has its unit after it. */
const SAID: Readonly<Record<Field, readonly [before: string, after: string]>> = {
  solids: ["", " % by weight"],
  solidsByVolume: ["", " % by volume"],
  solidsGravity: ["SG ", ""],
  slurryGravity: ["slurry SG ", ""],
  medianSize: ["d50 ", ""],
  coarseSize: ["d85 ", ""],
  fines: ["fines ", " %"],
};

/** "water with solids 25 % by weight, SG 2.65, d50 0.4 mm"; the liquid alone where no composition is stated. */
export function liquidWords(duty: Duty, liquid: Handle): Expression {
  const fields = slurryFields(duty);
  if (fields.length === 0) return liquid;
  const figures = fields.flatMap((key, i) => {
    const [before, after] = SAID[key];
    const unit = FIELD[key].quantity === "size" ? ` ${UNIT_SETS[duty.unitSet as UnitSetName].size.symbol}` : after;
    return [constant(`${i === 0 ? "" : ", "}${before}`), FIELD[key], constant(unit)];
  });
  return join(liquid, constant(" with solids "), ...figures);
}

const WEIGHT_UNKNOWN = statement(
  "Solids are stated, but too little of them to work out the SG of the slurry: every figure of this sheet is that of the liquid WITHOUT solids, and power, pressure and head are higher. State two of solids by weight, solids by volume, SG of the solids and SG of the slurry.",
  "caution",
);

/** The liquid as pumped; of a slurry its composition and the pump's ratios too. */
export function asPumpedItems(duty: Duty): readonly PlanItem[] {
  const text = figure(
    AS_PUMPED,
    "Liquid as pumped",
    liquidWords(duty, FIELD.liquid),
    "Every figure of this sheet is of it, but where it says clear liquid.",
  );
  if (!isSlurry(duty)) return hasSolids(duty) ? [text, WEIGHT_UNKNOWN] : [text];
  const hasSize = isSizedSlurry(duty);
  return [
    text,
    spill(RECORD, "Liquid as pumped", callOf(ASPUMPED, LIQUID)),
    figure(
      PUMPED.pumpedGravity,
      "SG of the slurry, as worked out",
      part(RECORD, "gravity"),
      "Solids and liquid by mass and volume; relative to 998.2 kg/m³.",
      "main",
    ),
    figure(PUMPED.clearGravity, "SG of the clear liquid", part(RECORD, "carrierGravity"), "The liquid without solids."),
    figure(PUMPED.pumpedByWeight, "Solids by weight, as worked out", part(RECORD, "byWeight"), "C_w = C_v S_s/S_m."),
    figure(PUMPED.pumpedByVolume, "Solids by volume, as worked out", part(RECORD, "byVolume"), "C_v = C_w S_m/S_s."),
    figure(PUMPED.pumpedSolidsGravity, "SG of the solids, as worked out", part(RECORD, "solidsGravity"), "By mass."),
    figure(
      PUMPED.headRatio,
      "Head ratio, slurry over water",
      part(RECORD, "headRatio"),
      hasSize ? "By Cave, with relief for fines where stated; tests scatter by 0.1." : "1 ASSUMED: d50 is not stated.",
    ),
    figure(
      PUMPED.efficiencyRatio,
      "Efficiency ratio",
      part(RECORD, "efficiencyRatio"),
      hasSize ? "Taken equal to the head ratio." : "1 ASSUMED: d50 is not stated.",
    ),
  ];
}

/** A figure of the liquid as pumped brought to the pump's curve for water: over the head ratio. */
export function onWater(duty: Duty, of: Expression): Expression {
  return isSlurry(duty) ? { op: "ratio", of, by: PUMPED.headRatio } : of;
}

/** Solids by weight, stated or as the other figures of the slurry make them; 0 assumed where nothing is stated. */
export function byWeight(duty: Duty): Handle {
  return isSlurry(duty) && duty.state.solids !== "stated" ? PUMPED.pumpedByWeight : FIELD.solids;
}
