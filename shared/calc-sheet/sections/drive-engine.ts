import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { TANK_SPANS, USUAL_RESERVE, USUAL_USABLE_SHARE } from "../../../src/drive/fuel-tank.ts";
import { FUELRATE } from "../../catalogue/entries/drive.ts";
import { ENGINELOAD } from "../../catalogue/entries/motor-and-tank.ts";
import type { Duty } from "../../duty/duty.ts";
import {
  type Call,
  callOf,
  constant,
  type Expression,
  type Handle,
  handles,
  ifNumber,
  part,
  product,
  ratio,
  spillOf,
  verdict,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem, remark, spill, statement } from "../plan.ts";
import { POWER } from "./drive-power.ts";
import { stated } from "./stated-input.ts";

/** Worked cells of this section. */
export const DRIVE_ENGINE = handles({
  engineNetPower: "power",
  enginePower: "power",
  engineByRule: "power",
  engineVerdict: null,
  engineGreatestLoad: "percent",
  engineOperatingLoad: "percent",
  engineLoadVerdict: null,
  fuelRate: "fuelFlow",
  operatingFuelRate: "fuelFlow",
  tankHours: "hours",
  fuelNotes: null,
  engineNotes: null,
});

const NOT_WORKED_OUT = "not worked out";

/** The engine on its site, its load, its fuel and its tank. Without a rating, fuel alone. */
export function engine(duty: Duty): readonly PlanItem[] {
  const isRated = duty.state.engineRating !== "blank";
  return [
    ...(isRated ? rated(duty) : unrated(duty)),
    ...fuelTank(duty),
    isRated
      ? remark(DRIVE_ENGINE.engineNotes, "Engine at the operating point", loadAt(POWER.powerOfOne))
      : remark(DRIVE_ENGINE.fuelNotes, "Fuel", fuelAt(POWER.driverPower)),
  ];
}

function fuelAt(shaftPower: Expression): Call {
  return callOf(FUELRATE, { shaftPower, specificConsumption: FIELD.specificConsumption });
}

function unrated(duty: Duty): readonly PlanItem[] {
  return [
    statement("The engine's continuous rating is not stated, so it is not compared with the site."),
    ...stated(duty, "specificConsumption"),
    ...fuels(fuelAt(POWER.driverPower), fuelAt(POWER.powerOfOne)),
  ];
}

function fuels(greatest: Expression, operating: Expression): readonly PlanItem[] {
  const how = "Diesel, one engine.";
  return [
    figure(DRIVE_ENGINE.fuelRate, "Fuel at the greatest power", greatest, how),
    figure(DRIVE_ENGINE.operatingFuelRate, "Fuel at the operating point", inOperation(operating), how),
  ];
}

/** The curve may give no power at the operating point. */
function inOperation(met: Expression): Expression {
  return ifNumber(POWER.powerOfOne, met, NOT_WORKED_OUT);
}

function loadAt(shaftPower: Expression): Call {
  return callOf(ENGINELOAD, {
    shaftPower,
    ratedPower: FIELD.engineRating,
    accessoryLosses: FIELD.accessoryLosses,
    altitude: FIELD.altitude,
    airTemperature: FIELD.airTemperature,
    aspiration: FIELD.aspiration,
    specificConsumption: FIELD.specificConsumption,
  });
}

/** The two loads an engine is worked out at. */
const GREATEST = spillOf("engineAtGreatest", ENGINELOAD);
const OPERATING = spillOf("engineAtOperation", ENGINELOAD);

function rated(duty: Duty): readonly PlanItem[] {
  const whereKnown = (record: typeof GREATEST, of: "load" | "fuelRate"): Expression =>
    ifNumber(part(record, of), part(record, of), NOT_WORKED_OUT);
  const load = (of: Handle, label: string, expression: Expression): PlanItem =>
    figure(of, label, expression, "Shaft power over power on site.");
  const { engineOperatingLoad } = DRIVE_ENGINE;
  return [
    ...stated(duty, "engineRating", "accessoryLosses", "airTemperature", "aspiration", "specificConsumption"),
    spill(GREATEST, "Engine at the greatest power", loadAt(POWER.driverPower)),
    spill(OPERATING, "Engine at the operating point", loadAt(POWER.powerOfOne)),
    figure(
      DRIVE_ENGINE.engineNetPower,
      "Net power of the engine",
      part(GREATEST, "netPower"),
      "Rating less fan and accessory losses.",
    ),
    figure(
      DRIVE_ENGINE.enginePower,
      "Engine power on site",
      part(GREATEST, "sitePower"),
      "Net power adjusted for altitude and air temperature, ISO 3046-1.",
      "main",
    ),
    figure(
      DRIVE_ENGINE.engineByRule,
      "By the rule for fire-pump engines",
      part(GREATEST, "byQuickRule"),
      "A check alone: 3 % for each 1000 ft above 300 ft, 1 % for each 10 °F above 77 °F.",
    ),
    figure(
      DRIVE_ENGINE.engineVerdict,
      "Engine on site",
      verdict(DRIVE_ENGINE.enginePower, POWER.powerNeeded, "carries the power needed", "TOO SMALL"),
      "Against the power the driver must be rated for.",
    ),
    load(DRIVE_ENGINE.engineGreatestLoad, "Load at the greatest power", whereKnown(GREATEST, "load")),
    load(engineOperatingLoad, "Load at the operating point", inOperation(whereKnown(OPERATING, "load"))),
    figure(
      DRIVE_ENGINE.engineLoadVerdict,
      "Load in long running",
      ifNumber(
        engineOperatingLoad,
        verdict(engineOperatingLoad, constant(30), "high enough", "TOO LOW: WET STACKING"),
        "not judged",
      ),
      "Below 30 % carbon builds up in long running (wet stacking); common practice, no source.",
    ),
    ...fuels(whereKnown(GREATEST, "fuelRate"), whereKnown(OPERATING, "fuelRate")),
  ];
}

const DRAWN = USUAL_USABLE_SHARE * (1 - USUAL_RESERVE);

/**
 * Hours of the tank stated and tanks for a shift, a day and two days, at the operating point. The fuel rate ends a chain
 * of three functions already, so these are plain arithmetic: that of FUELTANKHOURS and FUELTANKSIZE.
 */
function fuelTank(duty: Duty): readonly PlanItem[] {
  const rate = DRIVE_ENGINE.operatingFuelRate;
  const whereFuel = (met: Expression): Expression => ifNumber(rate, met, NOT_WORKED_OUT);
  const hourly = volumeOfAnHour(duty.unitSet);
  return [
    ...(duty.state.tankVolume === "blank"
      ? []
      : [
          ...stated(duty, "tankVolume"),
          figure(
            DRIVE_ENGINE.tankHours,
            "The tank lasts",
            whereFuel(ratio(product(FIELD.tankVolume, constant(DRAWN / hourly)), rate)),
            "At the operating point: 90 % of the tank usable, 10 % of that kept in reserve; common practice.",
            "main",
          ),
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
