import { andThen, succeed } from "../../../src/basis/result.ts";
import {
  ALSO_DRIVERS,
  DRIVERS,
  driveArrangementMethod,
  driveArrangements,
} from "../../../src/drive/drive-arrangement.ts";
import { enginePowerMethod, engineSitePower } from "../../../src/drive/engine-site-power.ts";
import { fuelRate, fuelRateMethod } from "../../../src/drive/fuel-rate.ts";
import { MOTOR_SERIES, motorRating, motorRatingMethod } from "../../../src/drive/motor-rating.ts";
import { driveRemarkText } from "../../text/drive-remark-text.ts";
import { defineEntry } from "../entry.ts";
import { choice, quantity, text } from "../parameter.ts";
import { ENGINE_SITE } from "../parameters/engine-site.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { openChoice } from "../parameters/open-choice.ts";
import { solidsByWeight } from "../parameters/solids.ts";
import { supplyFrequency } from "../parameters/supply-frequency.ts";

const greatestPower = quantity("power", {
  about: "Maximum power the pump takes anywhere on its curve, with the heaviest liquid",
  range: "above 0",
});

export const MOTORSIZE = defineEntry({
  id: "MOTORSIZE",
  group: "Drive",
  summary: "Next standard motor rating that carries the shaft power",
  method:
    "The smallest listed rating at or above shaft power × service factor. Give the maximum power anywhere on the curve with the heaviest liquid, not the power at the duty, and the motor cannot be overloaded. The service factor here multiplies what the pump takes (1.15 requires 15 % more motor). The service factor on a motor's nameplate is for short overload and is never used to make a smaller motor do: leave it out. NEMA: horsepower list of MG 1 Table 10-4; IEC: rated outputs of the primary series of IEC 60072-1. In US units the NEMA list is used, in SI and METRIC the IEC list, unless the list is named. A caution says where less than 5 % is left over the shaft power. Ratings hold to 1000 m (3300 ft) and 40 °C (104 °F).",
  cites: motorRatingMethod.cites,
  parameters: {
    shaftPower: greatestPower,
    serviceFactor: quantity("ratio", {
      about: "What the shaft power is multiplied by; not the factor on the motor's nameplate",
      example: "1.15",
      range: "1 to 3",
      whenLeftOut: { value: 1, shown: "1" },
    }),
    motorStandard: openChoice(MOTOR_SERIES, "The list of ratings", '"NEMA" in US units, "IEC" in SI and METRIC'),
  },
  answer: { kind: "quantity", name: "motor rating", quantity: "power" },
  examples: [
    {
      args: [71.5],
      answer: 75,
      within: 1e-9,
      source: "NEMA MG 1 Table 10-4: 60 hp, 75 hp; the maximum power on the curve decides",
    },
    {
      args: [29.1],
      answer: 30,
      within: 1e-9,
      source: "application manual for NEMA motors, example 1 (25 hp at a reduction factor of 0.86)",
    },
    {
      args: [50, 1.15, "IEC", "SI"],
      answer: 75,
      within: 1e-9,
      source: "IEC 60072-1 series: 55 kW, 75 kW; 50 kW × 1.15 = 57.5 kW",
    },
  ],
  run: ({ motorStandard: series, ...sized }, { unitSet }) =>
    andThen(motorRating({ ...sized, series: series ?? (unitSet === "US" ? "NEMA" : "IEC") }), ({ power }) =>
      succeed(power),
    ),
});

export const ENGINESITEPOWER = defineEntry({
  id: "ENGINESITEPOWER",
  group: "Drive",
  summary: "Power an engine gives at the altitude and air temperature of the site",
  method:
    "ISO 3046-1: P = α P_r, α = k − 0.7 (1 − k)(1/η_m − 1), with η_m 0.80, reference 100 kPa, 25 °C, 30 % humidity and the pressure of the standard atmosphere; never more than rated. Naturally aspirated: the lesser of the limits by excess air (exponents m 1, n 0.75, on dry air) and by heat (m 1, n 1). Turbocharged: with charge-air cooling (m 0.7, n 1.2, q 1), its coolant as warm as the air. The rated power is the continuous net rating at run speed. NOTES gives the quick rule of 3 % for each 1000 ft above 500 ft beside it. The maker's curve decides: turbocharged engines often keep full power to 1500 m or more.",
  cites: enginePowerMethod.cites,
  parameters: {
    ratedPower: quantity("power", { about: "Continuous net rating at run speed", range: "above 0" }),
    ...ENGINE_SITE,
  },
  answer: { kind: "quantity", name: "engine power", quantity: "power" },
  examples: [
    {
      args: [300, 0, 25, "turbo", "SI"],
      answer: 300,
      within: 1e-9,
      source: "ISO 3046-1: at or better than reference conditions the engine gives its rated power",
    },
    {
      args: [100, 1500, 40, "turbo", "SI"],
      answer: 76.27,
      within: 0.1,
      source: "hand calculation: (84.56/100)^0.7 (298/313)^2.2 = 0.7981, less 0.7 × 0.2019 × 0.25",
    },
  ],
  run: engineSitePower,
});

export const DRIVEARRANGEMENT = defineEntry({
  id: "DRIVEARRANGEMENT",
  group: "Drive",
  summary: "Ways to attach the driver to the pump, best first, with reasons",
  method:
    "Each arrangement for the driver named gets a verdict: suits, with care or not advised. Not advised: on the motor's shaft or flange with liquid above 100 °C (212 °F), more than 75 kW (100 hp) or more than 8 bar (116 psi) at the suction; on the motor or a flywheel housing with more than 2 % solids by weight; belts above 185 kW (250 hp) or on a TS shaft; a flywheel housing beyond what SAE housings carry. With care: close-coupled above 55 kW (74 hp) or below 900 rpm; solids to 2 % on motor or flywheel housing; a speed that the driver does not run at by itself (a line-start motor of the supply within 5 % below synchronous; an engine from 1000 to 2400 rpm); clutches; belts unless they give a motor its speed or trim a slurry pump. The order is a choice of this product: verdict first, then close-coupled, lantern, bearing frame, belts, or flywheel housing, bearing frame, clutch, belts. SAE housings are listed that carry the torque and power in common practice; the maker's torque decides. The motor chosen (MOTORDATA) is named as given; what is not stated of solids and suction pressure, the checks say.",
  cites: driveArrangementMethod.cites,
  parameters: {
    driver: choice(DRIVERS, { about: "What drives the pump", also: ALSO_DRIVERS }),
    shaftPower: greatestPower,
    speed: quantity("speed", { about: "Speed of the pump", range: "above 0" }),
    liquid,
    temperature,
    solidsByWeight: { ...solidsByWeight, fallback: null, whenLeftOut: "not stated, and the checks say so" },
    suctionPressure: quantity("gaugePressure", {
      about: "Maximum pressure at the first suction nozzle",
      whenLeftOut: { value: null, shown: "not stated, and the checks say so" },
    }),
    motorRating: quantity("power", {
      about: "Rating of the motor, such as MOTORDATA answers",
      range: "above 0",
      whenLeftOut: { value: null, shown: "no motor is named" },
    }),
    motorPoles: quantity("ratio", {
      about: "Its number of poles",
      example: "4",
      whenLeftOut: { value: null, shown: "not named" },
    }),
    motorFrame: text<string | null>(
      { about: "Its frame", example: '"447TS"', whenLeftOut: { value: null, shown: "not named" } },
      (given) => succeed(given.trim() === "" ? null : given.trim()),
    ),
    supplyFrequency,
  },
  answer: {
    kind: "table",
    name: "drive arrangements",
    columns: {
      rank: { name: "rank" },
      arrangement: { name: "arrangement" },
      verdict: { name: "verdict" },
      for: { name: "for" },
      against: { name: "against" },
      checks: { name: "checks" },
    },
  },
  examples: [
    {
      args: ["motor", 200, 1780],
      part: [1, 1],
      answer: "bearing frame and flexible coupling on a base",
      source: "common practice: close-coupled pumps end at about 100 hp",
    },
    {
      args: ["motor", 200, 1785, null, null, 0, 30, 200, 4, "447TS"],
      part: [1, 5],
      answer:
        "shaft torque 588 lbf·ft; coupling good for 588 lbf·ft to 883 lbf·ft, by its maker's factor; offset at most 0.05 mm (0.002 in), hot; pipes move the coupling at most 0.05 mm (0.002 in); again after road moves; guard over every turning part (29 CFR 1910.219, ISO 14120); motor 200 hp, 4 poles, frame 447TS",
      source: "hand calculation: torque 5252.1 × 200/1785, a coupling for 1 to 1.5 times that; common practice",
    },
    {
      args: ["engine", 150, 1800, null, null, null, null, null, null, null, null, "SI"],
      part: [1, 1],
      answer: "flywheel housing",
      source: "common practice for engine-driven sets",
    },
  ],
  run: (
    {
      liquid,
      temperature,
      solidsByWeight: solids,
      motorRating: rating,
      motorPoles,
      motorFrame,
      supplyFrequency,
      ...drive
    },
    { unitSet },
  ) =>
    andThen(liquid.at(temperature), ({ dynamicViscosity, density }) =>
      andThen(
        driveArrangements({
          ...drive,
          temperature,
          viscosity: dynamicViscosity / density,
          solids,
          frequency: supplyFrequency ?? (unitSet === "US" ? 60 : 50),
          motor: rating === null ? null : { rating, poles: motorPoles, frame: motorFrame },
        }),
        (arrangements) =>
          succeed(
            arrangements.map(({ name, verdict, for: reasons, against, checks }, i) => ({
              rank: i + 1,
              arrangement: name,
              verdict,
              for: driveRemarkText(reasons, unitSet),
              against: driveRemarkText(against, unitSet),
              checks: driveRemarkText(checks, unitSet),
            })),
          ),
      ),
    ),
});

export const FUELRATE = defineEntry({
  id: "FUELRATE",
  group: "Drive",
  summary: "Diesel fuel an engine burns in an hour",
  method:
    "Shaft power × specific consumption ÷ density of the fuel, 840 kg/m³ (7.01 lb/US gal, EN 590). Where no consumption is given, the usual one near full load stands in, with a caution: 265 g/kWh (0.436 lb/hp-h) to 30 kW, 228 (0.375) at 110 kW, 205 (0.337) from 400 kW, between them by the logarithm of power. At 40 % load an engine takes some 10 % more for each kWh, at 25 % some 30 % more. The answer is in US gal/h or L/h.",
  cites: fuelRateMethod.cites,
  parameters: {
    shaftPower: quantity("power", { about: "Power the engine gives while running", range: "above 0" }),
    specificConsumption: quantity("specificConsumption", {
      about: "Fuel for each unit of energy delivered near full load",
      example: '"215 g/kWh" or "0.36 lb/hp-h"',
      range: "180 to 400 g/kWh (0.296 to 0.658 lb/hp-h)",
      whenLeftOut: { value: null, shown: "usual for an engine of this power" },
    }),
  },
  answer: { kind: "quantity", name: "fuel rate", quantity: "fuelFlow" },
  examples: [
    {
      args: [100, 215, "SI"],
      answer: 25.6,
      within: 0.05,
      source: "hand calculation: 100 kW × 215 g/kWh ÷ 840 g/L",
    },
    {
      args: [100, "0.38 lb/hp-h"],
      answer: 5.42,
      within: 0.01,
      source: "hand calculation: 38 lb/h ÷ 7.01 lb/US gal",
    },
  ],
  run: fuelRate,
});
