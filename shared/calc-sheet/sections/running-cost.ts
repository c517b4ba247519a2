import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { ASSUMED_MOTOR_EFFICIENCY } from "../../../src/estimate/energy-cost.ts";
import { pricedVolume } from "../../catalogue/entries/price.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { constant, type Expression, ifNumber, product, ratio, value } from "../expression.ts";
import type { InputItem, PlanItem } from "../plan.ts";
import { money, withCurrency } from "./money.ts";
import { basisOf, stated, statedNumber } from "./stated-input.ts";

/** Cost of electricity or fuel in a year. */
export const RUNNING_COST = "runningCost";

export const NOT_WORKED_OUT = "not worked out";

/** Whether the sheet works out what energy or fuel costs in a year. */
export function hasRunningCost(duty: Duty): boolean {
  return powered(duty) !== undefined && (duty.driver === "motor" ? duty.tariff : duty.fuelPrice) !== undefined;
}

/** The pump, where its power in operation and the hours it runs are known. */
function powered({ pump, runningHours }: Duty): DutyPump | undefined {
  return runningHours !== undefined && pump?.curve.efficiency !== undefined ? pump : undefined;
}

const NO_POWER =
  "Energy and fuel are not worked out: they want a chosen pump whose curve gives efficiency, and the hours it runs in a year.";

/**
 * Energy or fuel of a year at the operating point, and its cost where a price is stated. Nothing without running hours. The
 * power and the fuel rate end chains of functions already, so these are plain arithmetic: that of ENERGYCOST and FUELCOST.
 */
export function runningCost(duty: Duty): readonly PlanItem[] {
  const { driver, runningHours, tariff, fuelPrice } = duty;
  const pump = powered(duty);
  if (pump === undefined) {
    const wanted = [runningHours, tariff, fuelPrice].some((given) => given !== undefined);
    return wanted ? [{ kind: "statement", text: NO_POWER }] : [];
  }
  return [...stated(duty, "runningHours"), ...(driver === "motor" ? electricity(duty, pump) : fuel(duty))];
}

const POWER = value("operatingPower");
const HOURS = value("runningHours");

function electricity(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const { tariff } = duty;
  const assumed = constant(ASSUMED_MOTOR_EFFICIENCY * 100);
  const ofMotor = value("motorEfficiency");
  return [
    ...stated(duty, "tariff").map((item) => ({ ...item, label: withCurrency(duty, "Price of a kWh") })),
    {
      kind: "result",
      key: "efficiencyTaken",
      label: "Motor efficiency taken",
      quantity: "percent",
      expression:
        pump.speed === undefined ? assumed : { op: "ifNumber", of: ofMotor, met: ofMotor, otherwise: assumed },
      how: `At full load, of the motor above where it is held; otherwise ${ASSUMED_MOTOR_EFFICIENCY * 100} %, assumed.`,
    },
    {
      kind: "result",
      key: "energyOfYear",
      label: "Electricity in a year",
      quantity: "energy",
      expression: ifNumber(
        POWER,
        ratio(
          product(POWER, HOURS, constant(kilowattsOf(duty.unitSet))),
          ratio(value("efficiencyTaken"), constant(100)),
        ),
        NOT_WORKED_OUT,
      ),
      how: "Shaft power of all pumps at the operating point × hours / motor efficiency; no frequency drive or belts.",
    },
    ...(tariff === undefined
      ? []
      : [
          money(
            duty,
            RUNNING_COST,
            "Electricity in a year",
            whereNumber("energyOfYear", product(value("energyOfYear"), value("tariff"))),
            "Times the price of a kWh.",
            true,
          ),
        ]),
  ];
}

function fuel(duty: Duty): readonly PlanItem[] {
  const { fuelPrice } = duty;
  const ofYear = [value("operatingFuelRate"), value("pumpCount"), HOURS];
  const { volume } = UNIT_SETS[duty.unitSet];
  const priced = unitOf(pricedVolume(duty.unitSet));
  return [
    ...priceOfFuel(duty, fuelPrice),
    {
      kind: "result",
      key: "fuelOfYear",
      label: "Fuel in a year",
      quantity: "volume",
      expression: whereNumber(
        "operatingFuelRate",
        product(...ofYear, ...(priced.factor === volume.factor ? [] : [constant(priced.factor / volume.factor)])),
      ),
      how: "Fuel of one engine in operation × pumps × hours.",
    },
    ...(fuelPrice === undefined
      ? []
      : [
          money(
            duty,
            RUNNING_COST,
            "Fuel in a year",
            whereNumber("operatingFuelRate", product(...ofYear, value("fuelPrice"))),
            "Times the price of the fuel.",
            true,
          ),
        ]),
  ];
}

/** For the volume of the unit set, whatever volume it was stated for. */
function priceOfFuel(duty: Duty, fuelPrice: number | undefined): readonly InputItem[] {
  if (fuelPrice === undefined) return [];
  const priced = pricedVolume(duty.unitSet);
  return [
    statedNumber(
      {
        key: "fuelPrice",
        label: `${withCurrency(duty, "Fuel price")} per ${priced}`,
        typed: duty.texts.fuelPrice,
        value: fuelPrice * unitOf(priced).factor,
        basis: basisOf(duty, "fuelPrice"),
      },
      duty,
    ),
  ];
}

export function whereNumber(key: string, met: Expression): Expression {
  return ifNumber(value(key), met, NOT_WORKED_OUT);
}

/** Kilowatts in a unit of power. */
function kilowattsOf(unitSet: UnitSetName): number {
  return Number((UNIT_SETS[unitSet].power.factor / unitOf("kW").factor).toPrecision(12));
}
