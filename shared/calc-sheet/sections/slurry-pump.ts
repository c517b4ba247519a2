import { PUMPEFFICIENCY } from "../../catalogue/entries/pump.ts";
import { SLURRYCLASS, SLURRYDUTY } from "../../catalogue/entries/slurry-duty.ts";
import type { Duty } from "../../duty/duty.ts";
import {
  callOf,
  difference,
  type Expression,
  handles,
  ifNumber,
  orElse,
  part,
  product,
  range,
  ratio,
  spillOf,
  verdict,
} from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import { figure, type PlanItem, remark, spill } from "../plan.ts";
import { IN_SERIES, SIDE_BY_SIDE, SPECIFIC_GRAVITY } from "./drawn-curves.ts";
import { marginVerdict } from "./npsh.ts";
import { NOT_GIVEN, POINT } from "./operating-point.ts";
import { PUMP, PUMP_CURVE } from "./pump.ts";
import { SLURRY_HEAD } from "./slurry-head.ts";
import { SLURRY } from "./slurry-mixture.ts";

const SLURRY_PUMP = handles({
  slurryWaterEfficiency: "ratio",
  headRatio: "ratio",
  efficiencyRatio: "ratio",
  clearWaterHead: "head",
  powerOverWater: "ratio",
  slurryPower: "power",
  slurryGreatestPower: "power",
  slurryNpshRequired: "head",
  slurryNpshVerdict: null,
  slurryHeadVerdict: null,
  slurryDutyNotes: null,
  slurryServiceNotes: null,
});

const RECORD = spillOf("slurryDuty", SLURRYDUTY);

/** What the slurry asks of a pump on its curves for water; of the chosen one where there is one. */
export function slurryOnThePump(duty: Duty): readonly PlanItem[] {
  const { pump, state } = duty;
  const hasEfficiency = pump?.curve.efficiency !== undefined;
  const hasImpeller = pump?.impellerDiameter !== undefined;
  const call = callOf(SLURRYDUTY, {
    flow: FIELD.flow,
    // The ratios stand without a head, so where it is not known the call goes on with none.
    slurryHead: ifNumber(SLURRY_HEAD.slurryHead, SLURRY_HEAD.slurryHead, 0),
    d50: FIELD.medianSize,
    solidsSG: FIELD.solidsGravity,
    solidsByVolume: SLURRY.solidsByVolume,
    fines: FIELD.fines,
    ...(hasImpeller && { impellerDiameter: PUMP.runningDiameter }),
    // A flow beyond the curve has no efficiency; the head to choose by stands all the same.
    ...(hasEfficiency && { waterEfficiency: orElse(SLURRY_PUMP.slurryWaterEfficiency, FIELD.flow, "") }),
    ...LIQUID,
  });
  return [
    ...(hasEfficiency ? [WATER_EFFICIENCY] : []),
    spill(RECORD, "Slurry on the pump", call),
    ...RATIOS,
    ...(hasEfficiency ? POWERS : []),
    ...(state.npshRequired === "blank" ? [] : NPSH_ON_SLURRY),
    ...(pump === undefined ? [] : [againstThePump(hasImpeller)]),
    remark(SLURRY_PUMP.slurryDutyNotes, "Head and power on slurry", call),
    ...(pump?.speed !== undefined && hasImpeller ? SERVICE_CLASSES : []),
  ];
}

/** A figure that needs the head of the slurry, which a bed in a run leaves open. */
function whereKnown(then: Expression): Expression {
  return ifNumber(SLURRY_HEAD.slurryHead, then, NOT_GIVEN);
}

const WATER_EFFICIENCY = figure(
  SLURRY_PUMP.slurryWaterEfficiency,
  "Efficiency on water at the duty flow",
  callOf(PUMPEFFICIENCY, {
    curve: range(PUMP_CURVE),
    flow: ratio(FIELD.flow, SIDE_BY_SIDE),
    speedRatio: PUMP.speedRatio,
    trimRatio: PUMP.trimRatio,
  }),
  "Of each pump, read off its curve at the flow stated.",
);

const RATIOS: readonly PlanItem[] = [
  figure(
    SLURRY_PUMP.headRatio,
    "Head ratio, slurry over water",
    part(RECORD, "headRatio"),
    "By Cave, with relief for fines where stated; tests scatter by 0.1.",
  ),
  figure(
    SLURRY_PUMP.efficiencyRatio,
    "Efficiency ratio",
    part(RECORD, "efficiencyRatio"),
    "Taken equal to the head ratio.",
  ),
  figure(
    SLURRY_PUMP.clearWaterHead,
    "Head to choose the pump by",
    whereKnown(part(RECORD, "waterHead")),
    "Total head of the slurry over the head ratio: the head of its curve for water.",
    "main",
  ),
  figure(
    SLURRY_PUMP.powerOverWater,
    "Power over that on water",
    part(RECORD, "powerOverWater"),
    "Of the same pump at the same flow on water of SG 1: SG × head ratio / efficiency ratio.",
  ),
];

const POWERS: readonly PlanItem[] = [
  figure(
    SLURRY_PUMP.slurryPower,
    "Shaft power on slurry",
    whereKnown(ifNumber(SLURRY_PUMP.slurryWaterEfficiency, part(RECORD, "shaftPower"), NOT_GIVEN)),
    "ρ_m g Q H_m/(η ER), all pumps, at the flow and head of the slurry stated; not the greatest on the curve.",
    "main",
  ),
  figure(
    SLURRY_PUMP.slurryGreatestPower,
    "Greatest shaft power on slurry",
    ifNumber(
      POINT.greatestPower,
      product(ratio(POINT.greatestPower, SPECIFIC_GRAVITY), part(RECORD, "powerOverWater")),
      NOT_GIVEN,
    ),
    "Greatest on the curve on water times power over water, all pumps: size the driver by it.",
  ),
];

const NPSH_ON_SLURRY: readonly PlanItem[] = [
  figure(
    SLURRY_PUMP.slurryNpshRequired,
    "NPSH required on slurry",
    ratio(FIELD.npshRequired, SLURRY_PUMP.headRatio),
    "The figure stated over the head ratio: a caution of this product, no source.",
  ),
  figure(
    SLURRY_PUMP.slurryNpshVerdict,
    "NPSH margin, slurry",
    ifNumber(
      SLURRY_HEAD.slurryNpshAvailable,
      marginVerdict(difference(SLURRY_HEAD.slurryNpshAvailable, SLURRY_PUMP.slurryNpshRequired)),
      NOT_GIVEN,
    ),
    "NPSH available on slurry less required, held against the margin wanted.",
  ),
];

function againstThePump(hasImpeller: boolean): PlanItem {
  return figure(
    SLURRY_PUMP.slurryHeadVerdict,
    "Chosen pump on the slurry",
    ifNumber(
      SLURRY_PUMP.clearWaterHead,
      verdict(POINT.headAtDuty, SLURRY_PUMP.clearWaterHead, "meets the slurry duty", "BELOW THE SLURRY DUTY"),
      NOT_GIVEN,
    ),
    `Its head at the duty flow on water against the head to choose by.${hasImpeller ? "" : " State its impeller: large ones lose less efficiency."}`,
  );
}

const SERVICE = spillOf("slurryService", SLURRYCLASS);

const SERVED = callOf(SLURRYCLASS, {
  headPerStage: ratio(POINT.headAtDuty, IN_SERIES),
  impellerDiameter: PUMP.runningDiameter,
  speed: PUMP.runningSpeed,
});

const CLASSES = ["1, light", "2, medium", "3, heavy", "4, very heavy"] as const;

const CLASS_COLUMNS = [
  { key: "tipSpeed", label: "tip speed", quantity: "velocity" },
  { key: "verdict", label: "this pump at the duty flow" },
  { key: "head", label: "greatest head", quantity: "head" },
  { key: "metal", label: "tip speed, metal", quantity: "velocity" },
  { key: "elastomer", label: "elastomer", quantity: "velocity" },
] as const;

const SERVICE_CLASSES: readonly PlanItem[] = [
  spill(SERVICE, "Slurry service classes", SERVED, CLASSES.length + 1),
  {
    kind: "table",
    key: "serviceClasses",
    heading: "service class",
    columns: CLASS_COLUMNS,
    rows: CLASSES.map((label, row) => ({ label, cells: CLASS_COLUMNS.map(({ key }) => part(SERVICE, key, row)) })),
  },
  remark(SLURRY_PUMP.slurryServiceNotes, "Service class", SERVED),
];
