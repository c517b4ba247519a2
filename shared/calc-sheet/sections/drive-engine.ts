import { USUAL_LOSS } from "../../../src/drive/engine-net-power.ts";
import { ENGINESITEPOWER, FUELRATE } from "../../catalogue/entries/drive.ts";
import { ENGINELOAD } from "../../catalogue/entries/motor-and-tank.ts";
import type { Duty } from "../../duty/duty.ts";
import { fuelOfAnHour } from "../conversions.ts";
import {
  asShare,
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
  under,
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
  engineGreatestLoad: "percent",
  engineOperatingLoad: "percent",
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
      ? remark(DRIVE_ENGINE.engineNotes, "Engine at the operating point", loadAt(duty, POWER.powerOfOne))
      : remark(DRIVE_ENGINE.fuelNotes, "Fuel", fuelAt(POWER.driverPower)),
  ];
}

function fuelAt(shaftPower: Expression): Call {
  return callOf(FUELRATE, { shaftPower, specificConsumption: FIELD.specificConsumption });
}

function unrated(duty: Duty): readonly PlanItem[] {
  return [
    statement("The engine's rating is not stated, so its power on site is not worked out."),
    ...stated(duty, "specificConsumption"),
    ...fuels(fuelAt(POWER.driverPower), fuelAt(POWER.powerOfOne)),
  ];
}

function fuels(greatest: Expression, operating: Expression): readonly PlanItem[] {
  const how = "Diesel, one engine.";
  return [
    figure(DRIVE_ENGINE.fuelRate, "Fuel at the maximum power", greatest, how),
    figure(DRIVE_ENGINE.operatingFuelRate, "Fuel at the operating point", inOperation(operating), how),
  ];
}

/** The curve may give no power at the operating point. */
function inOperation(met: Expression): Expression {
  return ifNumber(POWER.powerOfOne, met, NOT_WORKED_OUT);
}

/** Nothing comes off a net rating, unless something is stated all the same. */
export function isNetRating({ state, engineRatingKind }: Duty): boolean {
  return engineRatingKind === "continuous net" && state.accessoryLosses === "blank";
}

/** What comes off the rating, as an argument. */
export function lossesOf(duty: Duty): { readonly accessoryLosses: Expression } {
  return { accessoryLosses: isNetRating(duty) ? constant(0) : FIELD.accessoryLosses };
}

function loadAt(duty: Duty, shaftPower: Expression): Call {
  return callOf(ENGINELOAD, {
    shaftPower,
    ratedPower: FIELD.engineRating,
    ...lossesOf(duty),
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
    ...engineInputs(duty),
    ...stated(duty, "specificConsumption"),
    spill(GREATEST, "Engine at the maximum power", loadAt(duty, POWER.driverPower)),
    spill(OPERATING, "Engine at the operating point", loadAt(duty, POWER.powerOfOne)),
    figure(
      DRIVE_ENGINE.engineNetPower,
      "Net power of the engine",
      part(GREATEST, "netPower"),
      "Rating less fan and accessory losses.",
    ),
    figure(DRIVE_ENGINE.enginePower, "Engine power on site", part(GREATEST, "sitePower"), ON_SITE, "main"),
    figure(
      DRIVE_ENGINE.engineByRule,
      "Fire-pump rule, check only",
      part(GREATEST, "byQuickRule"),
      "3 % per 1000 ft above 300 ft, 1 % per 10 °F above 77 °F.",
    ),
    load(DRIVE_ENGINE.engineGreatestLoad, "Load at the maximum power", whereKnown(GREATEST, "load")),
    load(engineOperatingLoad, "Load at the operating point", inOperation(whereKnown(OPERATING, "load"))),
    ...fuels(whereKnown(GREATEST, "fuelRate"), whereKnown(OPERATING, "fuelRate")),
  ];
}

/** What the engine is rated for and where it stands. */
function engineInputs(duty: Duty): readonly PlanItem[] {
  return stated(duty, "engineRating", "engineRatingKind", "accessoryLosses", "airTemperature", "aspiration");
}

/** What can be said of the engine without the power of the pump: its power on site, and its tank. */
export function engineAlone(duty: Duty): readonly PlanItem[] {
  const losses = isNetRating(duty)
    ? constant(0)
    : duty.state.accessoryLosses === "blank"
      ? constant(100 * USUAL_LOSS)
      : FIELD.accessoryLosses;
  const { engineNetPower, enginePower } = DRIVE_ENGINE;
  const isRated = duty.state.engineRating !== "blank";
  const call = callOf(ENGINESITEPOWER, {
    ratedPower: engineNetPower,
    altitude: FIELD.altitude,
    airTemperature: FIELD.airTemperature,
    aspiration: FIELD.aspiration,
  });
  return [
    ...(isRated
      ? [
          ...engineInputs(duty),
          figure(
            engineNetPower,
            "Net power of the engine",
            product(FIELD.engineRating, under(losses)),
            "Rating less fan and accessory losses.",
          ),
          figure(enginePower, "Engine power on site", call, ON_SITE, "main"),
          remark(DRIVE_ENGINE.engineNotes, "Engine on site", call),
        ]
      : []),
    ...stated(duty, "tankVolume", "specificConsumption"),
  ];
}

const ON_SITE = "Net power adjusted for altitude and air temperature, ISO 3046-1.";

/** What of a full tank is burnt. */
const DRAWN = product(asShare(FIELD.tankUsable), under(FIELD.tankReserve));

/**
 * Hours of the tank stated and tanks for a shift, a day and two days, at the operating point. The fuel rate ends a chain
 * of three functions already, so these are plain arithmetic: that of FUELTANKHOURS and FUELTANKSIZE.
 */
function fuelTank(duty: Duty): readonly PlanItem[] {
  const rate = DRIVE_ENGINE.operatingFuelRate;
  const whereFuel = (met: Expression): Expression => ifNumber(rate, met, NOT_WORKED_OUT);
  return [
    ...(duty.state.tankVolume === "blank"
      ? []
      : [
          ...stated(duty, "tankVolume"),
          figure(
            DRIVE_ENGINE.tankHours,
            "Tank endurance",
            whereFuel(ratio(product(FIELD.tankVolume, DRAWN), fuelOfAnHour(rate, duty.unitSet))),
            "Tank × usable share × (1 − reserve) / fuel rate.",
            "main",
          ),
        ]),
    {
      kind: "table",
      key: "tankFor",
      heading: "tank volume needed",
      columns: [
        { key: "span", label: "time", quantity: "hours" },
        { key: "tank", label: "volume", quantity: "volume" },
      ],
      rows: SPANS.map(([label, span]) => ({
        label,
        cells: [span, whereFuel(ratio(product(fuelOfAnHour(rate, duty.unitSet), span), DRAWN))],
      })),
    },
  ];
}

const SPANS = [
  ["Short span", FIELD.tankShort],
  ["Medium span", FIELD.tankMedium],
  ["Long span", FIELD.tankLong],
] as const;
