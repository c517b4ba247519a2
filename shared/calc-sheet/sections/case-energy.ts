import { FUELRATE } from "../../catalogue/entries/drive.ts";
import { ENGINELOAD } from "../../catalogue/entries/motor-and-tank.ts";
import type { Duty } from "../../duty/duty.ts";
import { fuelOfAnHour, kilowatts, volumeInBulk } from "../conversions.ts";
import {
  callOf,
  cell,
  constant,
  type Expression,
  type Handle,
  ifAtLeast,
  part,
  product,
  ratio,
  spillOf,
  sum,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type PlanItem, spill, statement } from "../plan.ts";
import { lossesOf } from "./drive-engine.ts";
import { DRIVE_MOTOR } from "./drive-motor.ts";
import { asStated, caseStatesOf, type DutyState, isStation, ofOnePump, ofStationPump, recordOf } from "./duty-cases.ts";
import { HELD_TO_SUMMIT, hasRoute } from "./route-cells.ts";

/** Electricity of each case that states its hours, and of all of them in the last row. */
export const CASE_ENERGY = tableOf("caseEnergy", {
  hours: "hours",
  load: "percent",
  power: "electricPower",
  energy: "energy",
  volume: null,
  perVolume: null,
});

/** Fuel of the same. */
export const CASE_FUEL = tableOf("caseFuel", {
  hours: "hours",
  rate: "fuelFlow",
  fuel: "volume",
  volume: null,
  perVolume: null,
});

const NOT_WORKED_OUT = "not worked out";

type StateOfHours = DutyState & { readonly hours: Handle };

/** The cases that say how long they last in a year. */
export function casesOfHours(duty: Duty): readonly StateOfHours[] {
  return caseStatesOf(duty).filter((one): one is StateOfHours => one.hours !== undefined);
}

/** The hours that count are those of the cases, where any is stated. */
export function hasCaseHours({ cases }: Duty): boolean {
  return cases.some(({ hoursState }) => hoursState !== "blank");
}

/** The row of a case in the table of energy or fuel, by its key; that of all without one. */
export function energyRow(duty: Duty, key?: string): number {
  const states = casesOfHours(duty);
  return key === undefined ? states.length : states.findIndex((one) => one.key === key);
}

const VOLUMES = {
  US: { unit: "million US gal", of: "million gal" },
  SI: { unit: "1000 m³", of: "1000 m³" },
  METRIC: { unit: "1000 m³", of: "1000 m³" },
} as const;

/** Electricity of each case by its hours, with what motor and drive lose. */
export function caseElectricity(duty: Duty, efficiency: Expression): readonly PlanItem[] {
  const states = casesOfHours(duty);
  const shaft = (one: DutyState): Expression => withinSpeed(one, duty, part(recordOf(one), "shaftPower"));
  const { of, unit } = VOLUMES[duty.unitSet];
  const load = (one: DutyState): Expression => {
    const power = ofOnePump(one, duty, "shaftPower");
    return ifNumberAll([power, DRIVE_MOTOR.motorRating], product(ratio(power, DRIVE_MOTOR.motorRating), constant(100)));
  };
  return [
    {
      kind: "table",
      key: CASE_ENERGY.key,
      heading: "electricity of each case in a year",
      columns: [
        { key: "hours", label: "hours", quantity: "hours" },
        { key: "load", label: "load of the motor", quantity: "percent" },
        { key: "power", label: "power drawn", quantity: "electricPower" },
        { key: "energy", label: "electricity", quantity: "energy" },
        { key: "volume", label: unit },
        { key: "perVolume", label: `kWh per ${of}` },
      ],
      rows: [
        ...states.map((one, row) => ({
          label: one.label,
          cells: [
            one.hours,
            load(one),
            ifNumberAll([shaft(one)], ratio(kilowatts(shaft(one), duty.unitSet), efficiency)),
            ifNumberAll([cell(CASE_ENERGY, row, "power")], product(cell(CASE_ENERGY, row, "power"), one.hours)),
            volumeOf(one, duty),
            over(cell(CASE_ENERGY, row, "energy"), cell(CASE_ENERGY, row, "volume")),
          ],
        })),
        {
          label: "All cases",
          cells: [
            totalOf(states.map(({ hours }) => hours)),
            constant(""),
            constant(""),
            totalOf(states.map((_, row) => cell(CASE_ENERGY, row, "energy"))),
            totalOf(states.map((_, row) => cell(CASE_ENERGY, row, "volume"))),
            over(cell(CASE_ENERGY, states.length, "energy"), cell(CASE_ENERGY, states.length, "volume")),
          ],
        },
      ],
    },
    ...aboutHours(duty),
    statement("Below half its load a motor is less efficient than taken here: ask its maker for the efficiency there."),
  ];
}

/** Fuel of each case by its hours: of all engines, by the load of one. */
export function caseFuel(duty: Duty): readonly PlanItem[] {
  const states = casesOfHours(duty);
  const isRated = duty.state.engineRating !== "blank";
  const load = (one: DutyState) => spillOf(`${one.key}Engine`, ENGINELOAD);
  const power = (one: DutyState): Expression => withinSpeed(one, duty, ofOnePump(one, duty, "shaftPower"));
  const rate = (one: DutyState): Expression =>
    isRated
      ? part(load(one), "fuelRate")
      : callOf(FUELRATE, { shaftPower: power(one), specificConsumption: FIELD.specificConsumption });
  const { of, unit } = VOLUMES[duty.unitSet];
  const rateCell = (row: number): Handle => cell(CASE_FUEL, row, "rate");
  const last = states.length;
  return [
    ...(isRated
      ? states.map((one) =>
          spill(
            load(one),
            `Engine in ${one.words}`,
            callOf(ENGINELOAD, {
              shaftPower: power(one),
              ratedPower: FIELD.engineRating,
              ...lossesOf(duty),
              altitude: one.altitude,
              airTemperature: FIELD.airTemperature,
              aspiration: FIELD.aspiration,
              specificConsumption: FIELD.specificConsumption,
            }),
          ),
        )
      : []),
    {
      kind: "table",
      key: CASE_FUEL.key,
      heading: "fuel of each case in a year",
      columns: [
        { key: "hours", label: "hours", quantity: "hours" },
        { key: "rate", label: "one engine", quantity: "fuelFlow" },
        { key: "fuel", label: "fuel", quantity: "volume" },
        { key: "volume", label: unit },
        { key: "perVolume", label: `fuel per ${of}` },
      ],
      rows: [
        ...states.map((one, row) => ({
          label: one.label,
          cells: [
            one.hours,
            ifNumberAll([power(one)], ifNumberAll([rate(one)], rate(one))),
            ifNumberAll(
              [rateCell(row), part(recordOf(one), "shaftPower")],
              fuelOfAnHour(product(rateCell(row), enginesIn(one, duty), one.hours), duty.unitSet),
            ),
            volumeOf(one, duty),
            over(cell(CASE_FUEL, row, "fuel"), cell(CASE_FUEL, row, "volume")),
          ],
        })),
        {
          label: "All cases",
          cells: [
            totalOf(states.map((one) => one.hours)),
            constant(""),
            totalOf(states.map((_, row) => cell(CASE_FUEL, row, "fuel"))),
            totalOf(states.map((_, row) => cell(CASE_FUEL, row, "volume"))),
            over(cell(CASE_FUEL, last, "fuel"), cell(CASE_FUEL, last, "volume")),
          ],
        },
      ],
    },
    ...aboutHours(duty),
  ];
}

/** A figure of a case, unless it would need more speed than there is. */
function withinSpeed(one: DutyState, duty: Duty, of: Expression): Expression {
  if (!one.isAtOwnSpeed) return of;
  return ifAtLeast(asStated(duty).speedRatio, one.speedRatio, of, constant(NOT_WORKED_OUT));
}

/**
 * The fuel of all engines over that of the chosen pump's, each by the power its own pump takes. A consumption stated goes for all;
 * without one each has what is usual of its power. All are taken as loaded as the chosen one, and what is held shut as stopped.
 */
export function enginesIn(one: DutyState, duty: Duty): Expression {
  if (!isStation(one, duty)) return one.pumps;
  const chosen = ofStationPump(one, "shaftPower", 0);
  if (duty.state.specificConsumption !== "blank") return ratio(part(recordOf(one), "shaftPower"), chosen);
  const usual = (shaftPower: Expression): Expression => callOf(FUELRATE, { shaftPower });
  const others = duty.otherPumps.map((_, i) => ofStationPump(one, "shaftPower", i + 1));
  return sum(
    constant(1),
    ...others.map(
      (power): Expression => ({
        op: "ifNumber",
        of: power,
        met: ratio(usual(power), usual(chosen)),
        otherwise: constant(0),
      }),
    ),
  );
}

function volumeOf(one: StateOfHours, { unitSet }: Duty): Expression {
  const of = part(recordOf(one), "flow");
  return ifNumberAll([of], volumeInBulk(of, one.hours, unitSet));
}

/** Of all, where each has one. */
function totalOf(of: readonly Expression[]): Expression {
  return ifNumberAll(of, of.length === 1 ? (of[0] as Expression) : sum(...of));
}

function ifNumberAll(of: readonly Expression[], met: Expression): Expression {
  return of.reduceRight<Expression>(
    (then, one) => ({ op: "ifNumber", of: one, met: then, otherwise: constant(NOT_WORKED_OUT) }),
    met,
  );
}

/** Nothing pumped has nothing to be divided by. */
function over(of: Expression, volume: Expression): Expression {
  return ifNumberAll([of, volume], ifAtLeast(constant(0), volume, constant("–"), ratio(of, volume)));
}

function aboutHours(duty: Duty): readonly PlanItem[] {
  const silent = duty.cases.filter(({ hoursState }) => hoursState === "blank").map(({ name }) => name);
  return [
    statement(
      `Hours that do not add up to a year are not filled up.${silent.length === 0 ? "" : ` Without hours, and not counted: ${silent.join(", ")}.`}`,
    ),
    ...(hasRoute(duty) ? [statement(HELD_TO_SUMMIT)] : []),
  ];
}
