import { unitOf } from "../../../src/basis/units.ts";
import { pricedVolume } from "../../catalogue/entries/price.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { fuelOfAnHour, kilowatts } from "../conversions.ts";
import {
  asShare,
  cell,
  constant,
  type Expression,
  type Handle,
  handles,
  ifNumber,
  product,
  ratio,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type InputItem, type PlanItem, statement } from "../plan.ts";
import {
  CASE_ENERGY,
  CASE_FUEL,
  caseElectricity,
  caseFuel,
  energyRow,
  enginesIn,
  hasCaseHours,
} from "./case-energy.ts";
import { DRIVE_ENGINE } from "./drive-engine.ts";
import { DRIVE_MOTOR, isOnDrive } from "./drive-motor.ts";
import { asStated } from "./duty-cases.ts";
import { money, withCurrency } from "./money.ts";
import { POINT } from "./operating-point.ts";
import { basisOf, stated, statedNumber } from "./stated-input.ts";

/** Energy or fuel of a year, and what it costs. */
export const RUNNING = handles({
  efficiencyTaken: "percent",
  driveEfficiencyTaken: "percent",
  energyOfYear: "energy",
  fuelOfYear: "volume",
  runningCost: null,
});

export const NOT_WORKED_OUT = "not worked out";

/** Whether the sheet works out what energy or fuel costs in a year. */
export function hasRunningCost(duty: Duty): boolean {
  return powered(duty) !== undefined && isPriced(duty);
}

function isPriced({ driver, state }: Duty): boolean {
  return state[driver === "motor" ? "tariff" : "fuelPrice"] !== "blank";
}

/** The pump, where its power in operation and the hours it runs are known. */
function powered(duty: Duty): DutyPump | undefined {
  const { pump, state } = duty;
  const hasHours = state.runningHours !== "blank" || hasCaseHours(duty);
  return hasHours && pump?.curve.efficiency !== undefined ? pump : undefined;
}

const NO_POWER = statement(
  "Energy and fuel are not worked out: they need a selected pump whose curve gives efficiency, and the hours it runs in a year.",
);

/**
 * Energy or fuel of a year at the operating point. Nothing without running hours. The power and the fuel rate end chains of
 * functions already, so this is plain arithmetic, and so is the cost of it: that of ENERGYCOST and FUELCOST.
 */
export function energyOfYear(duty: Duty): readonly PlanItem[] {
  const { driver, state } = duty;
  if (powered(duty) !== undefined) {
    return [
      ...(hasCaseHours(duty) ? [] : stated(duty, "runningHours")),
      ...(driver === "motor" ? electricity(duty) : fuel(duty)),
    ];
  }
  const isWanted =
    hasCaseHours(duty) || (["runningHours", "tariff", "fuelPrice"] as const).some((key) => state[key] !== "blank");
  return isWanted ? [NO_POWER] : [];
}

/** The price of energy or fuel and the cost of a year of it, where it is worked out and priced. */
export function costOfEnergy(duty: Duty): readonly PlanItem[] {
  if (powered(duty) === undefined) return [];
  return duty.driver === "motor" ? costOfElectricity(duty) : costOfFuel(duty);
}

function electricity(duty: Duty): readonly PlanItem[] {
  const pump = powered(duty);
  const power = POINT.operatingPower;
  const efficiencies = product(
    ratio(RUNNING.efficiencyTaken, constant(100)),
    ratio(RUNNING.driveEfficiencyTaken, constant(100)),
  );
  return [
    figure(
      RUNNING.efficiencyTaken,
      "Motor efficiency taken",
      pump?.speed === undefined
        ? FIELD.motorEfficiencyUsual
        : ifNumber(DRIVE_MOTOR.motorEfficiency, DRIVE_MOTOR.motorEfficiency, FIELD.motorEfficiencyUsual),
      "At full load, of the motor above where it is held; otherwise the usual one.",
    ),
    ...driveEfficiency(duty),
    ...(hasCaseHours(duty) ? caseElectricity(duty, efficiencies) : []),
    hasCaseHours(duty)
      ? figure(
          RUNNING.energyOfYear,
          "Electricity in a year",
          cell(CASE_ENERGY, energyRow(duty), "energy"),
          "Of all cases: hours × shaft power of all pumps / (efficiency of motor × efficiency of drive).",
        )
      : figure(
          RUNNING.energyOfYear,
          "Electricity in a year",
          whereNumber(power, ratio(kilowatts(product(power, FIELD.runningHours), duty.unitSet), efficiencies)),
          "Shaft power of all pumps at the operating point × hours / (efficiency of motor × efficiency of drive).",
        ),
  ];
}

function costOfElectricity(duty: Duty): readonly PlanItem[] {
  return [
    ...stated(duty, "tariff").map((item) => ({
      ...item,
      label: withCurrency(duty, "Price of a kWh"),
      money: "rate" as const,
    })),
    ...costOf(
      duty,
      whereNumber(RUNNING.energyOfYear, product(RUNNING.energyOfYear, FIELD.tariff)),
      "Electricity in a year × the price of a kWh.",
    ),
  ];
}

/** Of what stands between mains and pump beside the motor. */
function driveEfficiency(duty: Duty): readonly PlanItem[] {
  const isStated = duty.state.driveEfficiency !== "blank";
  const isConverted = isOnDrive(duty) || (duty.cases.length > 0 && duty.speedControl === "variable");
  const parts = [
    ...(isConverted ? [["variable-frequency drive", FIELD.converterEfficiency] as const] : []),
    ...(duty.transmission === "belts" ? [["belts", FIELD.beltEfficiency] as const] : []),
  ];
  const [one = constant(100), ...others]: readonly Expression[] = parts.map(([, efficiency]) => efficiency);
  const words =
    parts.length === 0
      ? "Coupled, and from the mains: nothing lost."
      : `${parts.map(([of]) => of).join(", ")}: the usual efficiency of each.`;
  return [
    ...stated(duty, "driveEfficiency"),
    figure(
      RUNNING.driveEfficiencyTaken,
      "Efficiency of the drive taken",
      isStated ? FIELD.driveEfficiency : product(one, ...others.map(asShare)),
      isStated ? "As stated." : `${words.charAt(0).toUpperCase()}${words.slice(1)}`,
    ),
  ];
}

function fuel(duty: Duty): readonly PlanItem[] {
  if (hasCaseHours(duty)) {
    return [
      ...caseFuel(duty),
      figure(
        RUNNING.fuelOfYear,
        "Fuel in a year",
        cell(CASE_FUEL, energyRow(duty), "fuel"),
        duty.otherPumps.length > 0
          ? "Of all cases: fuel of all engines, each by the power of its own pump, × hours."
          : "Of all cases: fuel of one engine × pumps × hours.",
      ),
    ];
  }
  const rate = DRIVE_ENGINE.operatingFuelRate;
  const isUnlike = duty.otherPumps.length > 0;
  const engines = isUnlike ? enginesIn(asStated(duty), duty) : FIELD.pumpsRunning;
  // A further pump whose curve gives no efficiency leaves the power of all unknown.
  const whereKnown = (met: Expression): Expression =>
    whereNumber(rate, isUnlike ? whereNumber(POINT.operatingPower, met) : met);
  return [
    figure(
      RUNNING.fuelOfYear,
      "Fuel in a year",
      whereKnown(fuelOfAnHour(product(rate, engines, FIELD.runningHours), duty.unitSet)),
      isUnlike
        ? "Fuel of the engine of the selected pump, and of the others by the power of their own pumps, × hours: each at the consumption stated or usual of its size, and loaded as the selected one."
        : "Fuel of one engine in operation × pumps × hours.",
    ),
  ];
}

function costOfFuel(duty: Duty): readonly PlanItem[] {
  // In METRIC fuel is priced by the litre.
  const perVolume = duty.unitSet === "METRIC" ? [constant(1000)] : [];
  const ofYear = product(RUNNING.fuelOfYear, FIELD.fuelPrice, ...perVolume);
  return [
    ...priceOfFuel(duty),
    ...costOf(duty, whereNumber(RUNNING.fuelOfYear, ofYear), "Fuel in a year × the price of the fuel."),
  ];
}

function costOf(duty: Duty, cost: Expression, how: string): readonly PlanItem[] {
  return isPriced(duty) ? [money(duty, RUNNING.runningCost, `${energyName(duty)} in a year`, cost, how, "main")] : [];
}

export function energyName({ driver }: Duty): string {
  return driver === "motor" ? "Electricity" : "Fuel";
}

/** For the volume of the unit set, whatever volume it was stated for. */
function priceOfFuel(duty: Duty): readonly InputItem[] {
  const { fuelPrice, texts, unitSet } = duty;
  const priced = pricedVolume(unitSet);
  const label = `${withCurrency(duty, "Fuel price")} per ${priced}`;
  if (fuelPrice === undefined) return stated(duty, "fuelPrice").map((item) => ({ ...item, label }));
  const value = fuelPrice * unitOf(priced).factor;
  const facts = { key: "fuelPrice", label, typed: texts.fuelPrice, value, basis: basisOf(duty, "fuelPrice") };
  return [{ ...statedNumber(facts, duty), money: "rate" }];
}

export function whereNumber(of: Handle, met: Expression): Expression {
  return ifNumber(of, met, NOT_WORKED_OUT);
}
