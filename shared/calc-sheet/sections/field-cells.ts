import { FIELDCHECK, FIELDREASONS } from "../../catalogue/entries/field-check.ts";
import { FIELDHEAD } from "../../catalogue/entries/field-head.ts";
import { FUELTOWATER, WIRETOWATER } from "../../catalogue/entries/field-power.ts";
import { type Duty, pumpsInSeries, pumpsSideBySide } from "../../duty/duty.ts";
import type { FieldKey } from "../../duty/fields.ts";
import { fieldsOf } from "../../duty/fields.ts";
import { handles, spillOf } from "../expression.ts";

/** Worked cells of the field check. */
export const MEASURED = handles({
  fieldSuctionLoss: "head",
  fieldHead: "head",
  fieldHeadOff: "head",
  fieldPressurePart: "head",
  fieldHeightPart: "head",
  fieldVelocityPart: "head",
  fieldWaterPower: "power",
  fieldPlantEfficiency: "percent",
  fieldOfCriterion: "percent",
  fieldShaftPower: "power",
  fieldPumpEfficiency: "percent",
  fieldPumpEfficiencyOff: "percent",
  fieldCurveHead: "head",
  fieldHeadDeviation: "percent",
  fieldHeadOpen: "percent",
  fieldFlowDeviation: "percent",
  fieldEfficiencyDeviation: "percent",
  fieldEfficiencyOpen: "percent",
  fieldPowerDeviation: "percent",
  fieldPowerOpen: "percent",
  fieldVerdict: null,
  fieldHeadNotes: null,
  fieldPlantNotes: null,
  fieldCheckNotes: null,
  fieldReasonNotes: null,
});

export const FIELD_HEAD = spillOf("fieldHeadRecord", FIELDHEAD);
export const ELECTRIC = spillOf("fieldElectric", WIRETOWATER);
export const ENGINE = spillOf("fieldEngine", FUELTOWATER);
export const CHECK = spillOf("fieldCheckRows", FIELDCHECK);
export const REASONS = spillOf("fieldReasons", FIELDREASONS);

const given = ({ state }: Duty, ...keys: readonly FieldKey[]): boolean => keys.every((key) => state[key] !== "blank");

/** Whether anything was measured. */
export function isMeasured(duty: Duty): boolean {
  return fieldsOf("field").some((key) => duty.state[key] === "stated" || duty.state[key] === "unreadable");
}

/** Whether enough was measured for the head of the pump. */
export function hasFieldHead(duty: Duty): boolean {
  return given(duty, "fieldFlow", "dischargeReading");
}

export function hasSuctionGauge(duty: Duty): boolean {
  return given(duty, "suctionReading");
}

/** By what the power was measured, where it was. */
export function powerMeasured(duty: Duty): "electric meter" | "fuel" | undefined {
  if (duty.driver === "engine") return given(duty, "fieldFuel") ? "fuel" : undefined;
  return given(duty, "fieldPower") ? "electric meter" : undefined;
}

/** Whether the shaft power follows from it. */
export function hasShaftPower(duty: Duty): boolean {
  const from = powerMeasured(duty);
  if (from === "fuel") return given(duty, "specificConsumption");
  return from !== undefined && given(duty, "fieldMotorEfficiency");
}

/** Whether the measured speed can be held against that of the curve. */
export function hasMeasuredSpeed(duty: Duty): boolean {
  return given(duty, "fieldSpeed") && duty.pump?.speed !== undefined;
}

/** Whether there is a curve of one pump that the measured point lies beside, in a chart of all that run. */
export function isOneOfOne(duty: Duty): boolean {
  return hasFieldHead(duty) && pumpsSideBySide(duty) * pumpsInSeries(duty) === 1;
}
