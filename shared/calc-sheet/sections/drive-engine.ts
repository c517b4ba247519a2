import { PART_LOAD, partLoadMethod } from "../../../src/drive/fuel-rate.ts";
import { ENGINESITEPOWER, FUELRATE } from "../../catalogue/entries/drive.ts";
import { ENGINELOAD } from "../../catalogue/entries/motor-and-tank.ts";
import type { Duty } from "../../duty/duty.ts";
import { fuelOfAnHour } from "../conversions.ts";
import {
  asShare,
  type Call,
  callOf,
  cell,
  constant,
  difference,
  type Expression,
  type Handle,
  handles,
  ifAtLeast,
  ifNumber,
  part,
  product,
  ratio,
  spillOf,
  sum,
  tableOf,
  under,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem, remark, spill, statement, working } from "../plan.ts";
import { POWER } from "./drive-power.ts";
import { stated } from "./stated-input.ts";
import { otherPowersOf } from "./station-states.ts";

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
  const isRated = isEngineRated(duty);
  return [
    ...(isRated
      ? engineOnSite(duty)
      : [statement("The engine's rating is not stated, so its power on site is not worked out.")]),
    ...stated(duty, "specificConsumption"),
    ...(isRated ? loads() : []),
    ...fuels(duty),
    ...fuelTank(duty),
  ];
}

/** What can be said of the engine without the power of the pump: its power on site, and its tank. */
export function engineAlone(duty: Duty): readonly PlanItem[] {
  return [...(isEngineRated(duty) ? engineOnSite(duty) : []), ...stated(duty, "tankVolume", "specificConsumption")];
}

export function isEngineRated({ state }: Duty): boolean {
  return state.engineRating !== "blank";
}

/** Nothing comes off a net rating, unless something is stated all the same. */
export function isNetRating({ state, engineRatingKind }: Duty): boolean {
  return engineRatingKind === "continuous net" && state.accessoryLosses === "blank";
}

const AT_RATING = spillOf("engineAtRating", ENGINELOAD);

/** What of its net power an engine gives at an altitude. */
export function powerAt(altitude: Handle): Call {
  return callOf(ENGINESITEPOWER, {
    ratedPower: DRIVE_ENGINE.engineNetPower,
    altitude,
    airTemperature: FIELD.airTemperature,
    aspiration: FIELD.aspiration,
  });
}

/** What the engine is rated for, where it stands and what it gives there. */
function engineOnSite(duty: Duty): readonly PlanItem[] {
  const isLossStated = duty.state.accessoryLosses !== "blank";
  const losses = isLossStated ? FIELD.accessoryLosses : FIELD.fanLossesUsual;
  // Asked for its whole rating, it answers whatever the pump takes.
  const atRating = callOf(ENGINELOAD, {
    shaftPower: FIELD.engineRating,
    ratedPower: FIELD.engineRating,
    accessoryLosses: isNetRating(duty) ? constant(0) : losses,
    altitude: FIELD.altitude,
    airTemperature: FIELD.airTemperature,
    aspiration: FIELD.aspiration,
  });
  return [
    ...stated(duty, "engineRating", "engineRatingKind", "accessoryLosses", "airTemperature", "aspiration"),
    spill(AT_RATING, "Engine at its rating", atRating),
    figure(
      DRIVE_ENGINE.engineNetPower,
      "Net power of the engine",
      part(AT_RATING, "netPower"),
      isNetRating(duty)
        ? "A net rating: nothing comes off it."
        : `Rating less ${isLossStated ? "" : "the usual "}fan and accessory losses${isLossStated ? "" : ", as in the settings"}.`,
    ),
    figure(
      DRIVE_ENGINE.enginePower,
      "Engine power on site",
      part(AT_RATING, "sitePower"),
      "Net power adjusted for altitude and air temperature, ISO 3046-1.",
      "main",
    ),
    figure(
      DRIVE_ENGINE.engineByRule,
      "Fire-pump rule, check only",
      part(AT_RATING, "byQuickRule"),
      "3 % per 1000 ft above 300 ft, 1 % per 10 °F above 77 °F.",
    ),
    remark(DRIVE_ENGINE.engineNotes, "Engine on site", powerAt(FIELD.altitude)),
  ];
}

function loads(): readonly PlanItem[] {
  const { engineGreatestLoad, engineOperatingLoad, enginePower } = DRIVE_ENGINE;
  const load = (of: Handle, label: string, power: Handle): PlanItem =>
    figure(
      of,
      label,
      ifNumber(power, engineLoad(power, enginePower), NOT_WORKED_OUT),
      "Shaft power over power on site.",
    );
  return [
    load(engineGreatestLoad, "Load at the maximum power", POWER.driverPower),
    load(engineOperatingLoad, "Load at the operating point", POWER.powerOfOne),
  ];
}

/** In per cent of what the engine gives. */
export function engineLoad(power: Expression, onSite: Expression): Expression {
  return product(ratio(power, onSite), constant(100));
}

/**
 * What an engine burns at full load, by its size: its rating, or the maximum power of its pump where none is stated. One row
 * for the chosen pump and one for each further one, whose engine is of its own power.
 */
const FULL_LOAD = tableOf("fuelAtFullLoad", { size: "power", rate: "fuelFlow" });

/** What it burns at a load over that at full load; a text where the rule for part load does not reach. */
const PART_LOAD_FACTOR = tableOf("partLoadFactor", { factor: "ratio" });

function fuels(duty: Duty): readonly PlanItem[] {
  const { fuelRate, operatingFuelRate, engineGreatestLoad, engineOperatingLoad } = DRIVE_ENGINE;
  const isRated = isEngineRated(duty);
  const sizes = [isRated ? FIELD.engineRating : POWER.driverPower, ...otherPowersOf(duty)];
  const rate = (row: number): Call =>
    callOf(FUELRATE, { shaftPower: cell(FULL_LOAD, row, "size"), specificConsumption: FIELD.specificConsumption });
  const loadsHeld = [engineGreatestLoad, engineOperatingLoad];
  const factor = (row: number): readonly Handle[] => (isRated ? [cell(PART_LOAD_FACTOR, row, "factor")] : []);
  const how = `Diesel, one engine${isRated ? "; part load as in the settings" : ""}.`;
  const fuelAt = (of: Handle, label: string, power: Handle, row: number): PlanItem =>
    figure(of, label, fuelBurnt(power, ...factor(row)), how);
  return [
    working(FULL_LOAD, "Fuel of each engine at full load, by its size", sizes.length, [
      ["size", "rating, or maximum power of its pump", (row) => sizes[row] ?? null],
      ["rate", "fuel", (row) => (sizes[row] === undefined ? null : rate(row))],
    ]),
    ...(isRated
      ? [
          working(PART_LOAD_FACTOR, "Fuel at part load, at the maximum power and in operation", loadsHeld.length, [
            ["factor", "over that at full load", (row) => partLoad(loadsHeld[row] as Handle)],
          ]),
        ]
      : []),
    fuelAt(fuelRate, "Fuel at the maximum power", POWER.driverPower, 0),
    fuelAt(operatingFuelRate, "Fuel at the operating point", POWER.powerOfOne, 1),
    remark(DRIVE_ENGINE.fuelNotes, "Fuel", rate(0)),
  ];
}

/** Fuel of a pump of the station at full load, over its power; the chosen one first. */
export function consumptionOf(pump: number): Expression {
  return ratio(cell(FULL_LOAD, pump, "rate"), cell(FULL_LOAD, pump, "size"));
}

/** Fuel of the chosen pump's engine at a power, and with its factor at part load where it is rated. */
export function fuelBurnt(power: Handle, ...factor: readonly Handle[]): Expression {
  return ifNumber(factor[0] ?? power, product(consumptionOf(0), power, ...factor), NOT_WORKED_OUT);
}

/** Straight lines between the loads of the settings, 1 from half load up. */
export function partLoad(load: Handle): Expression {
  const [[quarter], [low], [half]] = PART_LOAD;
  const percent = (share: number): Expression => constant(Math.round(100 * share));
  const line = (from: number, to: number, atFrom: Expression, atTo: Expression): Expression =>
    sum(
      atTo,
      product(difference(atFrom, atTo), ratio(difference(percent(to), load), difference(percent(to), percent(from)))),
    );
  const below = line(quarter, low, FIELD.fuelAtQuarterLoad, FIELD.fuelAtLowLoad);
  const above = line(low, half, FIELD.fuelAtLowLoad, constant(1));
  const inside = ifAtLeast(load, percent(half), constant(1), ifAtLeast(load, percent(low), above, below));
  const none = constant(NOT_WORKED_OUT);
  const most = percent(partLoadMethod.inputs.load.atMost);
  return ifNumber(load, ifAtLeast(load, percent(quarter), ifAtLeast(most, load, inside, none), none), NOT_WORKED_OUT);
}

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
