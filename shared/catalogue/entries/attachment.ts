import { andThen, type Result, succeed } from "../../../src/basis/result.ts";
import { beltDrive, beltDriveMethod } from "../../../src/drive/belt-drive.ts";
import {
  type Flywheel,
  flywheel,
  flywheelHousing,
  flywheelPairing,
  housingChoiceMethod,
  housingMatch,
} from "../../../src/drive/flywheel-housing.ts";
import { defineEntry } from "../entry.ts";
import { quantity, type SingleParameter, text } from "../parameter.ts";

const housing = (about: string): SingleParameter<string> =>
  text<string>({ about, example: '"3", "SAE 1" or "No. 1/2"' }, (given) => succeed(given));

export const BELTDRIVE = defineEntry({
  id: "BELTDRIVE",
  group: "Drive",
  summary: "Pump speed, belt speed, driver power and side pull of a V-belt drive",
  method:
    "Pump speed = driver speed × driver sheave ÷ pump sheave, less 1.5 % slip. Belt speed = π × driver sheave × driver speed: refused above 35 m/s (115 ft/s), balanced sheaves above 25 m/s (82 ft/s). Driver power = shaft power ÷ 0.95. Side pull on the driver's shaft = 1.5 times the pull of the torque, 2T/d, at normal tension; 1.3 to 1.7 is usual. Sheaves by pitch diameter. Hold the minimum sheave and the side pull against the motor's bearing and the pump frame; TS motors take no belts, and belts above 185 kW (250 hp) are seldom used. Guard belts and sheaves all round.",
  cites: beltDriveMethod.cites,
  parameters: {
    shaftPower: quantity("power", { about: "Maximum power the pump takes", range: "above 0" }),
    driverSpeed: quantity("speed", { about: "Speed of the driver", range: "above 0" }),
    driverSheave: quantity("size", { about: "Pitch diameter of the driver's sheave", range: "above 0" }),
    pumpSheave: quantity("size", { about: "Pitch diameter of the pump's sheave", range: "above 0" }),
    centreDistance: quantity("length", {
      about: "Distance between the two shafts",
      range: "more than half of both sheaves together",
    }),
    minimumDriverSheave: quantity("size", {
      about: "Minimum pitch diameter the motor allows, from its maker or NEMA MG 1",
      whenLeftOut: { value: null, shown: "not known, with a caution" },
    }),
  },
  answer: {
    kind: "record",
    name: "belt drive",
    columns: {
      pumpSpeed: { name: "pump speed", quantity: "speed" },
      beltSpeed: { name: "belt speed", quantity: "velocity" },
      driverPower: { name: "driver power", quantity: "power" },
      sidePull: { name: "side pull", quantity: "force" },
      leastSidePull: { name: "minimum side pull", quantity: "force" },
      greatestSidePull: { name: "maximum side pull", quantity: "force" },
    },
  },
  examples: [
    {
      args: [30, 1460, 200, 250, 0.8, 150, "SI"],
      part: [1, 0],
      answer: 1150.5,
      within: 0.1,
      source: "hand calculation: 1460 × 200/250 × 0.985",
    },
    {
      args: [30, 1460, 200, 250, 0.8, 150, "SI"],
      part: [1, 3],
      answer: 3098,
      within: 2,
      source: "hand calculation: 30/0.95 = 31.58 kW, T = 9549 × 31.58/1460 = 206.5 N·m, 1.5 × 2 × 206.5/0.2",
    },
  ],
  run: ({ minimumDriverSheave: leastDriverSheave, ...belts }) =>
    andThen(
      beltDrive({ ...belts, ...(leastDriverSheave !== null && { leastDriverSheave }) }),
      ({ pumpSpeed, beltSpeed, driverPower, shaftPull, shaftPullRange: [least, most] }) =>
        succeed({
          pumpSpeed,
          beltSpeed,
          driverPower,
          sidePull: shaftPull,
          leastSidePull: least,
          greatestSidePull: most,
        }),
    ),
});

export const HOUSINGMATCH = defineEntry({
  id: "HOUSINGMATCH",
  group: "Drive",
  summary: "Whether a pump adapter bolts to an engine's flywheel housing, with the dimensions they share",
  method:
    "Housings of SAE J617 by number: two of the same number bolt together; two that differ are refused, with both bolt circles. With a flywheel of SAE J620, its bolt circle and recess, and whether it is usually seen in that housing; an adapter may serve where it is not. Write No. 1/2 as text, for a spreadsheet reads 1/2 as a date. Measure pilot and face run-out before the pump is hung on, and have the engine maker agree to the overhung moment.",
  cites: housingChoiceMethod.cites,
  parameters: {
    engineHousing: housing("Number of the engine's flywheel housing"),
    pumpHousing: housing("Number the pump's adapter is made for"),
    flywheel: text<string | null>(
      {
        about: "Size of the flywheel",
        example: '"11.5", "11 1/2" or "SAE 14"',
        whenLeftOut: { value: null, shown: "not judged" },
      },
      (given) => succeed(given),
    ),
  },
  answer: {
    kind: "record",
    name: "housing match",
    columns: {
      pilot: { name: "pilot", quantity: "size" },
      boltCircle: { name: "bolt circle", quantity: "size" },
      holes: { name: "holes" },
      flywheelBoltCircle: { name: "flywheel bolt circle", quantity: "size" },
      flywheelRecess: { name: "flywheel recess", quantity: "size" },
      pairing: { name: "flywheel in this housing" },
    },
  },
  examples: [
    {
      args: ["3", "SAE 3", "11.5", "SI"],
      part: [1, 1],
      answer: 428.62,
      within: 1e-6,
      source: "SAE J617, No. 3: bolt circle 16-7/8 in, 428.62 mm; also a clutch maker's manual of 2012, p. 148",
    },
    {
      args: ["1", "1", "11.5", "SI"],
      part: [1, 4],
      answer: 39.6,
      within: 1e-6,
      source: "SAE J620, size 11.5: recess 39.6 mm, read in an extract of the standard",
    },
  ],
  run: ({ engineHousing, pumpHousing, flywheel: size }) =>
    andThen(flywheelHousing(engineHousing), (engine) =>
      andThen(flywheelHousing(pumpHousing), (pump) =>
        andThen(housingMatch(engine, pump), (boltCircle) => {
          const found: Result<Flywheel | null> = size === null ? succeed(null) : flywheel(size);
          return andThen(found, (wheel) => {
            const usual: Result<boolean | null> = wheel === null ? succeed(null) : flywheelPairing(engine, wheel);
            return andThen(usual, (isUsual) =>
              succeed({
                pilot: engine.pilot,
                boltCircle,
                holes: engine.holes,
                flywheelBoltCircle: wheel?.boltCircle,
                flywheelRecess: wheel?.recess,
                pairing: isUsual === null ? "not judged" : isUsual ? "usual" : "unusual",
              }),
            );
          });
        }),
      ),
    ),
});
