import type { Duty } from "../../duty/duty.ts";
import { fuelOfAnHour, kilowatts, volumeInBulk } from "../conversions.ts";
import {
  type ColumnOf,
  cell,
  constant,
  type Expression,
  type Handle,
  ifAtLeast,
  ifNumber,
  part,
  product,
  ratio,
  sum,
  tableOf,
} from "../expression.ts";
import { type PlanItem, statement, type TableColumn, working } from "../plan.ts";
import {
  consumptionOf,
  DRIVE_ENGINE,
  engineLoad,
  fuelBurnt,
  isEngineRated,
  partLoad,
  powerAt,
} from "./drive-engine.ts";
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
  load: "percent",
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
  const isRated = isEngineRated(duty);
  const power = (one: DutyState): Expression => withinSpeed(one, duty, ofOnePump(one, duty, "shaftPower"));
  const { of, unit } = VOLUMES[duty.unitSet];
  const rateCell = (row: number): Handle => cell(CASE_FUEL, row, "rate");
  const powerOf = (row: number): Handle => cell(ENGINE_LOADS, row, "power");
  const loadOf = (row: number): Expression => engineLoad(powerOf(row), powerOnSite(states[row] as DutyState, duty));
  const loads = [
    ["load", "load", (row: number) => ifNumberAll([powerOf(row)], loadOf(row))],
    ["factor", "fuel over that at full load", (row: number) => partLoad(cell(ENGINE_LOADS, row, "load"))],
  ] as const;
  const last = states.length;
  const columns: readonly (readonly [
    is: boolean,
    column: TableColumn<ColumnOf<typeof CASE_FUEL>>,
    each: (one: StateOfHours, row: number) => Expression,
    all: Expression,
  ])[] = [
    [
      true,
      { key: "hours", label: "hours", quantity: "hours" },
      (one) => one.hours,
      totalOf(states.map(({ hours }) => hours)),
    ],
    [
      isRated,
      { key: "load", label: "load of the engine", quantity: "percent" },
      (_, row) => cell(ENGINE_LOADS, row, "load"),
      constant(""),
    ],
    [
      true,
      { key: "rate", label: "one engine", quantity: "fuelFlow" },
      (_, row) => fuelBurnt(powerOf(row), ...(isRated ? [cell(ENGINE_LOADS, row, "factor")] : [])),
      constant(""),
    ],
    [
      true,
      { key: "fuel", label: "fuel", quantity: "volume" },
      (one, row) =>
        ifNumberAll(
          [rateCell(row), part(recordOf(one), "shaftPower")],
          fuelOfAnHour(product(rateCell(row), enginesIn(one, duty), one.hours), duty.unitSet),
        ),
      totalOf(states.map((_, row) => cell(CASE_FUEL, row, "fuel"))),
    ],
    [
      true,
      { key: "volume", label: unit },
      (one) => volumeOf(one, duty),
      totalOf(states.map((_, row) => cell(CASE_FUEL, row, "volume"))),
    ],
    [
      true,
      { key: "perVolume", label: `fuel per ${of}` },
      (_, row) => over(cell(CASE_FUEL, row, "fuel"), cell(CASE_FUEL, row, "volume")),
      over(cell(CASE_FUEL, last, "fuel"), cell(CASE_FUEL, last, "volume")),
    ],
  ];
  const shown = columns.filter(([is]) => is);
  return [
    working(ENGINE_LOADS, "Engine of the selected pump in each case", states.length, [
      ["power", "shaft power", (row) => power(states[row] as DutyState)],
      ...(isRated ? loads : []),
    ]),
    {
      kind: "table",
      key: CASE_FUEL.key,
      heading: "fuel of each case in a year",
      columns: shown.map(([, column]) => column),
      rows: [
        ...states.map((one, row) => ({ label: one.label, cells: shown.map(([, , each]) => each(one, row)) })),
        { label: "All cases", cells: shown.map(([, , , all]) => all) },
      ],
    },
    ...aboutHours(duty),
  ];
}

/** What one engine gives in each case that states its hours, and how far that loads it where it is rated. */
const ENGINE_LOADS = tableOf("caseEngines", { power: "power", load: "percent", factor: "ratio" });

function powerOnSite({ altitude }: DutyState, duty: Duty): Expression {
  return altitude.key === asStated(duty).altitude.key ? DRIVE_ENGINE.enginePower : powerAt(altitude);
}

/** A figure of a case, unless it would need more speed than there is. */
function withinSpeed(one: DutyState, duty: Duty, of: Expression): Expression {
  if (!one.isAtOwnSpeed) return of;
  return ifAtLeast(asStated(duty).speedRatio, one.speedRatio, of, constant(NOT_WORKED_OUT));
}

/**
 * The fuel of all engines over that of the chosen pump's, each by the power its own pump takes and what an engine of its size
 * burns. All are taken as loaded as the chosen one, and what is held shut as stopped.
 */
export function enginesIn(one: DutyState, duty: Duty): Expression {
  if (!isStation(one, duty)) return one.pumps;
  const chosen = product(ofStationPump(one, "shaftPower", 0), consumptionOf(0));
  const others = duty.otherPumps.map((_, i): Expression => {
    const power = ofStationPump(one, "shaftPower", i + 1);
    return ifNumber(power, ratio(product(power, consumptionOf(i + 1)), chosen), 0);
  });
  return sum(constant(1), ...others);
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
