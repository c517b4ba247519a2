import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { TANK_SPANS, USUAL_RESERVE, USUAL_USABLE_SHARE } from "../../../src/drive/fuel-tank.ts";
import type { Duty } from "../../duty/duty.ts";
import {
  type Call,
  callById,
  constant,
  type Expression,
  ifNumber,
  partAt,
  product,
  ratio,
  value,
  verdict,
} from "../expression.ts";
import type { PlanItem, ResultItem, SpillItem } from "../plan.ts";
import { remark } from "./package-inputs.ts";
import { stated } from "./stated-input.ts";

/** Columns of the record of ENGINELOAD, in its order. */
const COLUMNS = [
  { key: "netPower", quantity: "power" },
  { key: "sitePower", quantity: "power" },
  { key: "load", quantity: "percent" },
  { key: "spare", quantity: "power" },
  { key: "byQuickRule", quantity: "power" },
  { key: "fuelRate", quantity: "fuelFlow" },
] as const satisfies SpillItem["columns"];

/** The two loads an engine is worked out at. */
const GREATEST = "engineAtGreatest";
const OPERATING = "engineAtOperation";

function of(record: string, key: (typeof COLUMNS)[number]["key"]): Expression {
  return partAt(
    record,
    COLUMNS.findIndex((column) => column.key === key),
  );
}

const NOT_WORKED_OUT = "not worked out";

function whereKnown(record: string, key: (typeof COLUMNS)[number]["key"]): Expression {
  return ifNumber(of(record, key), of(record, key), NOT_WORKED_OUT);
}

/** The engine on its site, its load, its fuel and its tank. */
export function engine(duty: Duty): readonly PlanItem[] {
  const { engineRating, specificConsumption } = duty;
  return [
    ...(engineRating === undefined ? unrated(duty) : rated(duty)),
    ...fuelTank(duty),
    ...(engineRating === undefined
      ? [remark("fuelNotes", "Fuel", fuelCall(value("driverPower"), specificConsumption))]
      : [remark("engineNotes", "Engine at the operating point", loadCall(value("powerOfOne"), duty))]),
  ];
}

function fuelCall(power: Expression, specificConsumption: number | undefined): Call {
  return callById("FUELRATE", power, specificConsumption === undefined ? null : value("specificConsumption"));
}

/** Without a rating, fuel alone. */
function unrated(duty: Duty): readonly PlanItem[] {
  const { specificConsumption } = duty;
  return [
    { kind: "statement", text: "The engine's continuous rating is not stated, so it is not held against the site." },
    ...stated(duty, "specificConsumption"),
    fuel("fuelRate", "Fuel at the greatest power", fuelCall(value("driverPower"), specificConsumption)),
    fuel(
      "operatingFuelRate",
      "Fuel at the operating point",
      ifNumber(value("powerOfOne"), fuelCall(value("powerOfOne"), specificConsumption), NOT_WORKED_OUT),
    ),
  ];
}

function fuel(key: string, label: string, expression: Expression): ResultItem {
  return { kind: "result", key, label, quantity: "fuelFlow", expression, how: "Diesel, one engine." };
}

function loadCall(power: Expression, { specificConsumption }: Duty): Call {
  return callById(
    "ENGINELOAD",
    power,
    value("engineRating"),
    value("accessoryLosses"),
    value("altitude"),
    value("airTemperature"),
    value("aspiration"),
    specificConsumption === undefined ? null : value("specificConsumption"),
  );
}

function rated(duty: Duty): readonly PlanItem[] {
  const record = (key: string, label: string, power: Expression): SpillItem => ({
    kind: "spill",
    key,
    label,
    expression: loadCall(power, duty),
    rows: 2,
    columns: COLUMNS,
  });
  return [
    ...stated(duty, "engineRating", "accessoryLosses", "airTemperature", "aspiration", "specificConsumption"),
    record(GREATEST, "Engine at the greatest power", value("driverPower")),
    record(OPERATING, "Engine at the operating point", value("powerOfOne")),
    {
      kind: "result",
      key: "engineNetPower",
      label: "Net power of the engine",
      quantity: "power",
      expression: of(GREATEST, "netPower"),
      how: "Rating less fan and accessory losses.",
    },
    {
      kind: "result",
      key: "enginePower",
      label: "Engine power on site",
      quantity: "power",
      expression: of(GREATEST, "sitePower"),
      how: "Net power adjusted for altitude and air temperature, ISO 3046-1.",
      main: true,
    },
    {
      kind: "result",
      key: "engineByRule",
      label: "By the rule for fire-pump engines",
      quantity: "power",
      expression: of(GREATEST, "byQuickRule"),
      how: "A check alone: 3 % for each 1000 ft above 300 ft, 1 % for each 10 °F above 77 °F.",
    },
    {
      kind: "result",
      key: "engineVerdict",
      label: "Engine on site",
      expression: verdict(value("enginePower"), value("powerNeeded"), "carries the power needed", "TOO SMALL"),
      how: "Against the power the driver must be rated for.",
    },
    load("engineGreatestLoad", "Load at the greatest power", GREATEST),
    load("engineOperatingLoad", "Load at the operating point", OPERATING),
    {
      kind: "result",
      key: "engineLoadVerdict",
      label: "Load in long running",
      expression: ifNumber(
        value("engineOperatingLoad"),
        verdict(value("engineOperatingLoad"), constant(30), "high enough", "TOO LOW: WET STACKING"),
        "not judged",
      ),
      how: "Below 30 % an engine carbons up; common practice, no source.",
    },
    fuel("fuelRate", "Fuel at the greatest power", whereKnown(GREATEST, "fuelRate")),
    fuel("operatingFuelRate", "Fuel at the operating point", whereKnown(OPERATING, "fuelRate")),
  ];
}

function load(key: string, label: string, record: string): ResultItem {
  return {
    kind: "result",
    key,
    label,
    quantity: "percent",
    expression: whereKnown(record, "load"),
    how: "Shaft power over power on site.",
  };
}

const DRAWN = USUAL_USABLE_SHARE * (1 - USUAL_RESERVE);

/**
 * Hours of the tank stated and tanks for a shift, a day and two days, at the operating point. The fuel rate ends a chain
 * of three functions already, so these are plain arithmetic: that of FUELTANKHOURS and FUELTANKSIZE.
 */
function fuelTank(duty: Duty): readonly PlanItem[] {
  const { tankVolume } = duty;
  const rate = value("operatingFuelRate");
  const whereFuel = (met: Expression): Expression => ifNumber(rate, met, NOT_WORKED_OUT);
  const hourly = volumeOfAnHour(duty.unitSet);
  return [
    ...(tankVolume === undefined
      ? []
      : [
          ...stated(duty, "tankVolume"),
          {
            kind: "result",
            key: "tankHours",
            label: "The tank lasts",
            quantity: "hours",
            expression: whereFuel(ratio(product(value("tankVolume"), constant(DRAWN / hourly)), rate)),
            how: "At the operating point: 90 % of the tank usable, 10 % of that kept in reserve; common practice.",
            main: true,
          } as const,
        ]),
    {
      kind: "table",
      key: "tankFor",
      heading: "fuel tank at the operating point",
      columns: [{ key: "tank", label: "volume", quantity: "volume" }],
      rows: TANK_SPANS.map((span) => ({
        label: `For ${span / 3600} h`,
        cells: [whereFuel(product(rate, constant(((span / 3600) * hourly) / DRAWN)))],
      })),
    },
  ];
}

/** What flows in an hour at one unit of fuel rate, in units of volume: 1 but in METRIC, where tanks are in m³. */
function volumeOfAnHour(units: UnitSetName): number {
  const { volume, fuelFlow, hours } = UNIT_SETS[units];
  return Number(((fuelFlow.factor * hours.factor) / volume.factor).toPrecision(12));
}
