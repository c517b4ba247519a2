import { andThen, succeed } from "../../../src/basis/result.ts";
import { generatorSize, generatorSizeMethod, STARTERS } from "../../../src/drive/generator-size.ts";
import { leastSpeed, leastSpeedMethod } from "../../../src/drive/least-speed.ts";
import { ASSUMED_POWER_FACTOR } from "../../../src/drive/motor-data.ts";
import { MOTOR_SERIES } from "../../../src/drive/motor-rating.ts";
import { defineEntry } from "../entry.ts";
import { choice, quantity, text } from "../parameter.ts";
import { openChoice } from "../parameters/open-choice.ts";
import { LARGE, share } from "../parameters/share.ts";
import { supplyFrequency } from "../parameters/supply-frequency.ts";

export const MINSPEED = defineEntry({
  id: "MINSPEED",
  group: "Drive",
  summary: "Minimum speed at which a variable-speed pump delivers against a static head",
  method:
    "At the minimum speed the shutoff head, which goes with the square of the speed, just holds the static head: n √(static head / shutoff head). A stable flow needs some 2 % more, and the pump its minimum flow. Below half speed the affinity laws are doubtful; fan-cooled motors on a variable-frequency drive (VFD) are made for 10:1 in variable torque, guides stop at 20 % to 30 % of speed. The frequency is that of the drive at the least speed, with the supply's frequency at the speed stated.",
  cites: leastSpeedMethod.cites,
  parameters: {
    staticHead: quantity("head", {
      about: "Level at the destination less level at the source: liquid surfaces, or the centreline of a free outlet",
      range: "the maximum the pump lifts against",
    }),
    shutoffHead: quantity("head", { about: "Head of the pump at zero flow and this speed", range: "above 0" }),
    speed: quantity("speed", { about: "Speed of the pump", example: "1750", range: "above 0" }),
    supplyFrequency,
  },
  answer: {
    kind: "record",
    name: "minimum speed",
    columns: {
      ratio: { name: "of the speed stated", quantity: "percent" },
      speed: { name: "minimum speed", quantity: "speed" },
      stableSpeed: { name: "for a stable flow", quantity: "speed" },
      frequency: { name: "frequency there, Hz" },
    },
  },
  examples: [
    {
      args: [22, 95, 1750, 60],
      part: [1, 3],
      answer: 28.87,
      within: 0.01,
      source: "hand calculation: √(22/95) = 0.48123, × 60 Hz",
    },
  ],
  run: ({ supplyFrequency: frequency, ...input }) =>
    andThen(leastSpeed({ ...input, frequency }), ({ ratio, speed, stableSpeed, frequency: there }) =>
      succeed({ ratio, speed, stableSpeed, frequency: there }),
    ),
});

export const GENERATORSIZE = defineEntry({
  id: "GENERATORSIZE",
  group: "Drive",
  summary: "What a generator set must give to start and run one motor: sizing figures, to be confirmed with its maker",
  method:
    "Running kW = rating / efficiency, running kVA = that / power factor. Started direct on line a NEMA motor draws horsepower × its code letter (greater figure; G 6.29, F 5.59 kVA/hp; without a letter the usual one: F from 15 hp, G from 7.5, H from 5, J from 3, K from 1.5, L below), an IEC motor 7 times its running kVA; star-delta a third of that, a soft starter at 3 times full-load current a half. The alternator carries the running kVA and starting kVA / 2.5, for a dip of 30 %. A drive (VFD) of 6 pulses takes 2.0 × its input kVA, a low-harmonic one (12 or 18 pulses, active front end) 1.4 ×; its input is running kW / 0.95. The engine gives 1.25 × the running kW; keep its load above 30 %. One motor alone; altitude and hot air take from the set's engine (ENGINESITEPOWER). Common practice: the set's maker decides.",
  cites: generatorSizeMethod.cites,
  parameters: {
    motorRating: quantity("power", { about: "Rating of the motor, such as MOTORDATA answers", range: "above 0" }),
    motorEfficiency: share({
      ...LARGE,
      about: "Efficiency of the motor at that load",
      example: '95.4, or "95.4 %"',
      range: "above 30, at most 100 %",
    }),
    powerFactor: quantity("ratio", {
      about: "Its power factor at full load",
      example: "0.86",
      range: "above 0.3, at most 1",
      whenLeftOut: { value: ASSUMED_POWER_FACTOR, shown: "0.85" },
    }),
    start: choice(STARTERS, {
      about: "How it is started: VFD with 6 pulses, low-harmonic with 12 or 18 pulses or an active front end",
      whenLeftOut: "direct on line",
    }),
    codeLetter: text<string | null>(
      {
        about: "Code letter on the nameplate of a NEMA motor, A to U",
        example: '"G"',
        whenLeftOut: { value: null, shown: "the usual one of its rating; 7 × running kVA for IEC" },
      },
      (given) => succeed(given),
    ),
    motorStandard: openChoice(MOTOR_SERIES, "The list of ratings", '"NEMA" in US units, "IEC" in SI and METRIC'),
  },
  answer: {
    kind: "record",
    name: "generator size",
    columns: {
      runningPower: { name: "running", quantity: "electricPower" },
      runningApparent: { name: "running kVA", quantity: "apparentPower" },
      startingApparent: { name: "starting kVA", quantity: "apparentPower" },
      alternator: { name: "alternator", quantity: "apparentPower" },
      enginePower: { name: "engine of the set", quantity: "electricPower" },
    },
  },
  examples: [
    {
      args: [100, 95.4, 0.86, null, "G"],
      part: [1, 3],
      answer: 251.6,
      within: 0.05,
      source: "hand calculation: 100 hp × 6.29 kVA/hp ÷ 2.5; NEMA code letter G",
    },
    {
      args: [100, 95.4, 0.86, "VFD"],
      part: [1, 3],
      answer: 164.6,
      within: 0.1,
      source: "hand calculation: 74.57 kW ÷ 0.954 ÷ 0.95 × 2.0",
    },
  ],
  run: ({ start: starter, motorStandard, motorEfficiency: efficiency, ...motor }, { unitSet }) =>
    generatorSize({ ...motor, efficiency, starter, series: motorStandard ?? (unitSet === "US" ? "NEMA" : "IEC") }),
});
