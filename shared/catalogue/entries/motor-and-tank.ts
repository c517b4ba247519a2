import { andThen, succeed } from "../../../src/basis/result.ts";
import { engineOnSite, engineOnSiteMethod } from "../../../src/drive/engine-on-site.ts";
import type { FrameOfRating } from "../../../src/drive/frame-of-rating.ts";
import {
  tankFor,
  tankForMethod,
  tankTime,
  tankTimeMethod,
  USUAL_RESERVE,
  USUAL_USABLE_SHARE,
} from "../../../src/drive/fuel-tank.ts";
import { motorData, motorDataMethod } from "../../../src/drive/motor-data.ts";
import { RATED_AMBIENT } from "../../../src/drive/motor-derating.ts";
import { MOTOR_SERIES, type MotorRating } from "../../../src/drive/motor-rating.ts";
import { type DrivingMotor, TRANSMISSIONS } from "../../../src/drive/motor-speed.ts";
import { defineEntry } from "../entry.ts";
import { choice, quantity } from "../parameter.ts";
import { ENGINE_SITE } from "../parameters/engine-site.ts";
import { openChoice } from "../parameters/open-choice.ts";
import { LARGE, share } from "../parameters/share.ts";
import { supplyFrequency } from "../parameters/supply-frequency.ts";
import { zeroDoubted } from "../parameters/zero-doubted.ts";

const altitude = quantity("elevation", {
  about: "Height of the site above sea level; negative below it",
  range: "-500 m to 4000 m (-1640 ft to 13 123 ft)",
  whenLeftOut: { value: 0, shown: "0, sea level" },
});

const usableShare = share({
  ...LARGE,
  about: "Part of the tank that can be drawn",
  example: '90, or "90 %"',
  range: "10 to 100 %",
  whenLeftOut: { value: USUAL_USABLE_SHARE, shown: "90 %" },
});

const reserve = zeroDoubted(
  share({
    about: "Part of what can be drawn that stays in the tank",
    example: '10, or "10 %"',
    range: "0 to below 100 %",
    whenLeftOut: { value: USUAL_RESERVE, shown: "10 %" },
  }),
);

const fuelRate = quantity("fuelFlow", {
  about: "Fuel the engine burns, such as ENGINELOAD or FUELRATE answers",
  range: "above 0",
});

export const MOTORDATA = defineEntry({
  id: "MOTORDATA",
  group: "Drive",
  summary: "Standard motor that carries the pump on its site, with speed, slip, frame, efficiency, current and torque",
  method:
    "The smallest rating of which enough is left: rating × output factor × speed factor at or above shaft power × power margin, or the rating of the motor there is. The output factor is 1 to 1000 m (3300 ft) and 40 °C (104 °F); beyond, by bands as makers publish them, the lower figure for the whole band: to 1500 m 0.97, 2000 m 0.94, 2500 m 0.90, 3000 m 0.86, 3500 m 0.82, 4000 m 0.77; to 45 °C 0.96, 50 °C 0.92, 55 °C 0.87, 60 °C 0.82; multiplied, no credit for cool air. The motor is of the supply's frequency: stated, else that of a voltage met at one frequency alone (400 V 50 Hz, 480 V 60 Hz), else 60 Hz for NEMA and 50 Hz for IEC. A line-start motor runs within 5 % below its synchronous speed, 120 f/poles. At any other speed a variable-frequency drive (VFD) slows the next faster motor, whose rating falls with its speed (speed factor = speed / synchronous speed), or raises one by at most 10 %, which gives no more than its rating; slip stays empty then. Through belts the motor keeps its own speed, taken with four poles, and its rating, and the belts take 5 %. Frames: MG 1 Part 13 or EN 50347 by rating and poles, of the supply of the series; TS frames are for direct coupling alone. NEMA: enclosed NEMA Premium motors at 60 Hz, and the current of NEC Table 430.250 wherever it has one (a supply of 480 V reads the 460 V column). IEC: ratings of the primary series, IE3 at 50 Hz. Any other current is P/(√3 V η 0.85): the power factor is common practice, the nameplate wins. The maximum starting current is 8 times that, direct on line. Torque is that of the rating at the pump's speed. Give the maximum speed the pump runs at and its power there. Without a list named, NEMA in US units and IEC in SI and METRIC.",
  cites: motorDataMethod.cites,
  parameters: {
    shaftPower: quantity("power", {
      about: "Maximum power the pump takes anywhere on its curve, with the heaviest liquid",
      range: "above 0",
    }),
    speed: quantity("speed", { about: "Speed of the pump", range: "above 0" }),
    serviceFactor: quantity("ratio", {
      about: "What the shaft power is multiplied by; not the factor on the motor's nameplate",
      example: "1.15",
      range: "1 to 3",
      whenLeftOut: { value: 1, shown: "1" },
    }),
    motorStandard: openChoice(MOTOR_SERIES, "The list of ratings", '"NEMA" in US units, "IEC" in SI and METRIC'),
    voltage: quantity("voltage", {
      about: "Supply between lines, three-phase",
      example: '460, or "400 V"',
      range: "above 0, at most 50 kV",
      whenLeftOut: { value: null, shown: "no current is worked out" },
    }),
    altitude,
    ambientTemperature: zeroDoubted(
      quantity("temperature", {
        about: "Maximum temperature of the air about the motor",
        range: "-40 °C to 60 °C",
        whenLeftOut: { value: RATED_AMBIENT, shown: "104 °F (40 °C)" },
      }),
    ),
    supplyFrequency,
    fittedRating: quantity("power", {
      about: "Rating of the motor there is, to be judged",
      range: "above 0",
      whenLeftOut: { value: null, shown: "the smallest rating that does" },
    }),
    transmission: choice(TRANSMISSIONS, {
      about: "How the motor drives the pump: a coupling at the pump's speed, or belts",
      whenLeftOut: "coupling",
    }),
  },
  answer: {
    kind: "record",
    name: "motor data",
    columns: {
      rating: { name: "rating", quantity: "power" },
      frame: { name: "usual frame" },
      poles: { name: "poles" },
      frequency: { name: "supply frequency, Hz" },
      synchronousSpeed: { name: "synchronous speed", quantity: "speed" },
      slip: { name: "slip", quantity: "percent" },
      outputFactor: { name: "output factor on site", quantity: "ratio" },
      siteOutput: { name: "output on site", quantity: "power" },
      efficiency: { name: "full-load efficiency", quantity: "percent" },
      current: { name: "full-load current", quantity: "current" },
      startingCurrent: { name: "maximum starting current", quantity: "current" },
      torque: { name: "full-load torque", quantity: "torque" },
      spare: { name: "power left on site", quantity: "power" },
      couplingFrame: { name: "frame for direct coupling" },
      openFrame: { name: "open frame" },
      speedFactor: { name: "output factor by speed", quantity: "ratio" },
      drivenBy: { name: "driven by" },
      motor: { name: "motor" },
    },
  },
  examples: [
    {
      args: [45, 1770, 1.1, "NEMA", 460],
      part: [1, 9],
      answer: 65,
      within: 1e-9,
      source: "NEC Table 430.250: 50 hp, 460 V; 45 hp × 1.1 = 49.5 hp",
    },
    {
      args: [45, 1770, 1.1, "NEMA", 460],
      part: [1, 8],
      answer: 94.5,
      within: 1e-9,
      source: "10 CFR 431.25 Table 5, enclosed, 50 hp, 4 poles",
    },
    {
      args: [50, 1480, null, "IEC", null, 2000, 50, null, null, null, "SI"],
      part: [1, 0],
      answer: 75,
      within: 1e-9,
      source: "hand calculation: 0.94 × 0.92 leaves 47.6 kW of a 55 kW motor and 64.9 kW of 75 kW",
    },
    {
      args: [34.9, 1487, 1, "NEMA"],
      part: [1, 0],
      answer: 50,
      within: 1e-9,
      source: "hand calculation: a 60 Hz motor of 4 poles slowed to 1487 rpm leaves 40 × 1487/1800 = 33.0 hp of 40 hp",
    },
  ],
  run: (
    { motorStandard, ambientTemperature: airTemperature, supplyFrequency: frequency, fittedRating: fitted, ...input },
    { unitSet },
  ) => {
    const series = motorStandard ?? (unitSet === "US" ? "NEMA" : "IEC");
    return andThen(
      motorData({ ...input, airTemperature, frequency, fitted, series }),
      ({ rating, frame, openFrame, motor, ...data }) =>
        succeed({
          rating: rating.power,
          frame: frame?.frame,
          poles: motor.poles,
          frequency: motor.frequency,
          synchronousSpeed: motor.synchronous,
          slip: data.slip,
          outputFactor: data.outputFactor,
          siteOutput: data.siteOutput,
          efficiency: data.efficiency,
          current: data.current,
          startingCurrent: data.startingCurrent,
          torque: data.torque,
          spare: data.spare,
          couplingFrame: frame?.couplingFrame,
          openFrame: openFrame?.couplingFrame ?? openFrame?.frame,
          speedFactor: motor.speedFactor,
          drivenBy: DRIVEN_BY[motor.way],
          motor: motorName(rating, motor, frame, openFrame),
        }),
    );
  },
});

/** "200 hp motor, 4 poles, 447TS (open 445TS)" */
function motorName(
  { printed, series }: MotorRating,
  { poles, way }: DrivingMotor,
  frame: FrameOfRating | undefined,
  openFrame: FrameOfRating | undefined,
): string {
  const coupled = (of: FrameOfRating): string => (way === "belts" ? of.frame : (of.couplingFrame ?? of.frame));
  const size = `${Number(printed.toPrecision(4))} ${series === "NEMA" ? "hp" : "kW"} motor, ${poles} poles`;
  if (frame === undefined) return `${size}, frame by the maker`;
  const open = openFrame === undefined || coupled(openFrame) === coupled(frame) ? "" : ` (open ${coupled(openFrame)})`;
  return `${size}, ${coupled(frame)}${open}`;
}

const DRIVEN_BY = {
  line: "line start",
  slowed: "VFD, slowed",
  raised: "VFD, above base speed",
  belts: "belts",
} as const;

export const ENGINELOAD = defineEntry({
  id: "ENGINELOAD",
  group: "Drive",
  summary: "Net power of an engine, what it gives on site, how far the pump loads it, and the fuel it then burns",
  method:
    "Net power is the rated power less what fan and accessories take: 3 % to 8 % of a gross rating, 0 of a net one. Power on site is the net power adjusted by ISO 3046-1 as ENGINESITEPOWER does. Load is shaft power over power on site: above 100 % the engine is too small; below 30 % long running carbons it up (wet stacking). Beside it, as a check alone, the net power by the rule of thumb for fire-pump engines: 3 % less for each 1000 ft above 300 ft and 1 % for each 10 °F above 77 °F. Fuel is shaft power × specific consumption ÷ 840 kg/m³, at part load times 1 from half load up, 1.1 at 40 %, 1.3 at 25 %, straight lines between; below 25 % and above 110 % it stays empty. Without a specific consumption the usual one for an engine of that rating stands in, as in FUELRATE. The maker's curves decide.",
  cites: engineOnSiteMethod.cites,
  parameters: {
    shaftPower: quantity("power", { about: "Power the pump takes", range: "above 0" }),
    ratedPower: quantity("power", { about: "Continuous rating at run speed", range: "above 0" }),
    accessoryLosses: share({
      about: "What fan and accessories take of the rating; 0 where the rating is net",
      example: '5, or "5 %"',
      range: "0 to below 50 %",
      whenLeftOut: { value: null, shown: "5 %, with a caution" },
    }),
    ...ENGINE_SITE,
    specificConsumption: quantity("specificConsumption", {
      about: "Fuel for each unit of energy delivered near full load",
      example: '"215 g/kWh" or "0.36 lb/hp-h"',
      range: "180 to 400 g/kWh (0.296 to 0.658 lb/hp-h)",
      whenLeftOut: { value: null, shown: "usual for an engine of this rating" },
    }),
  },
  answer: {
    kind: "record",
    name: "engine load",
    columns: {
      netPower: { name: "net power", quantity: "power" },
      sitePower: { name: "power on site", quantity: "power" },
      load: { name: "load", quantity: "percent" },
      spare: { name: "power left", quantity: "power" },
      byQuickRule: { name: "by rule of thumb", quantity: "power" },
      fuelRate: { name: "fuel rate", quantity: "fuelFlow" },
    },
  },
  examples: [
    {
      args: [60, 100, 5, 1500, 40, "turbo", 215, "SI"],
      part: [1, 1],
      answer: 72.46,
      within: 0.1,
      source: "hand calculation: ISO 3046-1 leaves 0.7627 of 95 kW net (the example of ENGINESITEPOWER)",
    },
    {
      args: [40, 100, 0, 0, 25, "turbo", 215, "SI"],
      part: [1, 5],
      answer: 11.26,
      within: 0.01,
      source: "hand calculation: 40 kW × 215 g/kWh × 1.1 at 40 % load ÷ 840 g/L",
    },
  ],
  run: (input) =>
    andThen(engineOnSite(input), ({ netPower, sitePower, load, spare, byQuickRule, fuelRate }) =>
      succeed({ netPower, sitePower, load, spare, byQuickRule, fuelRate }),
    ),
});

export const FUELTANKHOURS = defineEntry({
  id: "FUELTANKHOURS",
  group: "Drive",
  summary: "Hours an engine runs on a fuel tank",
  method:
    "Tank volume × usable share × (1 − reserve) ÷ fuel rate. 90 % to 95 % of a tank can usually be drawn; 10 % of that is kept in reserve unless stated otherwise. Give the fuel rate at the load the engine runs at.",
  cites: tankTimeMethod.cites,
  parameters: {
    tankVolume: quantity("volume", { about: "Volume of the tank", range: "above 0" }),
    fuelRate,
    usableShare,
    reserve,
  },
  answer: { kind: "quantity", name: "running time", quantity: "hours" },
  examples: [
    {
      args: [400, 25.6, 90, 0, "SI"],
      answer: 14.06,
      within: 0.01,
      source: "hand calculation: 400 L × 0.90 ÷ 25.6 L/h",
    },
    {
      args: [100, 2.5],
      answer: 32.4,
      within: 1e-9,
      source: "hand calculation: 100 US gal × 0.9 × 0.9 ÷ 2.5 US gal/h",
    },
  ],
  run: tankTime,
});

export const FUELTANKSIZE = defineEntry({
  id: "FUELTANKSIZE",
  group: "Drive",
  summary: "Volume of the fuel tank that an engine needs to run so many hours",
  method:
    "Hours × fuel rate ÷ (usable share × (1 − reserve)). 90 % of the tank is taken as usable and 10 % of that kept in reserve unless stated otherwise. Day tanks hold a shift of 8 hours, a day or two days. A tank of this size may fall under local rules for the storage of fuel.",
  cites: tankForMethod.cites,
  parameters: {
    hours: quantity("hours", { about: "Running time", example: "24", range: "above 0" }),
    fuelRate,
    usableShare,
    reserve,
  },
  answer: { kind: "quantity", name: "tank volume", quantity: "volume" },
  examples: [
    {
      args: [24, 25.6, 90, 10, "SI"],
      answer: 758.5,
      within: 0.1,
      source: "hand calculation: 24 h × 25.6 L/h ÷ (0.90 × 0.90)",
    },
  ],
  run: ({ hours, ...tank }) => tankFor({ time: hours, ...tank }),
});
