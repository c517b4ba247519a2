import { ALSO_DRIVERS, DRIVERS } from "../../../src/drive/drive-arrangement.ts";
import { engineNetPowerMethod } from "../../../src/drive/engine-net-power.ts";
import { ALSO_ASPIRATION, ASPIRATIONS, enginePowerMethod } from "../../../src/drive/engine-site-power.ts";
import { fuelRateMethod } from "../../../src/drive/fuel-rate.ts";
import { tankTimeMethod } from "../../../src/drive/fuel-tank.ts";
import { STARTERS } from "../../../src/drive/generator-size.ts";
import { fullLoadCurrentMethod } from "../../../src/drive/motor-current.ts";
import { motorDataMethod } from "../../../src/drive/motor-data.ts";
import { motorRatingMethod } from "../../../src/drive/motor-rating.ts";
import { TRANSMISSIONS } from "../../../src/drive/motor-speed.ts";
import { FREQUENCY_NAMES, frequencyNamed } from "../../../src/drive/supply.ts";
import { CODE_LETTERS } from "../../../src/tables/motor-code-letters.ts";
import { amount, named, oneOf, percent } from "../field.ts";
import { SPEED } from "./bounds.ts";

export const OF_MOTOR = { field: "driver", is: "motor", otherwise: "the driver is an engine" };
export const OF_ENGINE = { field: "driver", is: "engine", otherwise: "the driver is a motor" };
const OF_GENERATOR = { field: "supply", is: "generator", otherwise: "the supply is the mains" };

/** What the rating of an engine is. Only the first may be held against a pump as it is. */
export const ENGINE_RATING_KINDS = ["continuous net", "continuous gross", "standby"] as const;

export const drive = {
  driver: oneOf(DRIVERS, {
    label: "Driver",
    whenBlank: "motor",
    also: ALSO_DRIVERS,
    help: "motor or engine (diesel).",
  }),
  serviceFactor: amount({
    label: "Power margin factor (× shaft power)",
    quantity: "ratio",
    bounds: motorRatingMethod.inputs.serviceFactor,
    whenBlank: 1.1,
    help: "1.1 is 10 % more than the maximum shaft power, before a rating is taken. Stated, it is a limit of the order.",
  }),
  leastSpeed: amount({
    isSeldom: true,
    label: "Minimum speed of the pump",
    quantity: "speed",
    bounds: SPEED,
    help: "Slowest that a variable-speed drive or an engine runs it; blank where the speed does not vary.",
  }),
  airTemperature: amount({
    isSeldom: true,
    label: "Maximum air temperature",
    quantity: "temperature",
    bounds: enginePowerMethod.inputs.airTemperature,
    whenBlank: 313.15,
    help: "Hottest air the driver works in.",
  }),
  supplyVoltage: amount({
    label: "Supply voltage",
    quantity: "voltage",
    bounds: fullLoadCurrentMethod.inputs.voltage,
    shownIf: OF_MOTOR,
    help: "Between lines, three-phase; for the full-load current.",
  }),
  supplyFrequency: named(frequencyNamed, {
    label: "Supply frequency",
    choices: FREQUENCY_NAMES,
    shownIf: OF_MOTOR,
    help: "50 Hz or 60 Hz; blank: that of the voltage where it says one, else 60 Hz in US units and 50 Hz in others.",
  }),
  fittedMotor: amount({
    isSeldom: true,
    label: "Motor rating, where there is one",
    quantity: "power",
    bounds: motorDataMethod.inputs.fitted,
    shownIf: OF_MOTOR,
    help: "Nameplate rating of the motor offered or on hand, to be judged; blank: the next standard rating is chosen.",
  }),
  transmission: oneOf(TRANSMISSIONS, {
    isSeldom: true,
    label: "Motor drives through",
    whenBlank: "coupling",
    shownIf: OF_MOTOR,
    help: "coupling: at the pump's speed; belts: the motor keeps its own speed.",
  }),
  motorStart: oneOf(STARTERS, {
    isSeldom: true,
    label: "Motor start",
    whenBlank: "direct on line",
    shownIf: OF_MOTOR,
    help: "How it is started; VFD is a variable-frequency drive of 6 pulses, low-harmonic one of 12 or 18 or an active front end.",
  }),
  supply: oneOf(["mains", "generator"], {
    isSeldom: true,
    label: "Power comes from",
    whenBlank: "mains",
    shownIf: OF_MOTOR,
    help: "mains, or a generator set, which is then sized.",
  }),
  codeLetter: oneOf(
    CODE_LETTERS.map(([letter]) => letter),
    {
      label: "Code letter of the motor",
      shownIf: OF_GENERATOR,
      help: "NEMA code letter on the nameplate, for the start; the usual one of its rating where left blank.",
    },
  ),
  generatorApparent: amount({
    isSeldom: true,
    label: "Generator set, alternator",
    quantity: "apparentPower",
    bounds: { above: 0, atMost: 1e8 },
    shownIf: OF_GENERATOR,
    help: "Rated kVA of the set, to be compared with the motor's start.",
  }),
  generatorPower: amount({
    isSeldom: true,
    label: "Generator set, electric power",
    quantity: "electricPower",
    bounds: { above: 0, atMost: 1e8 },
    shownIf: OF_GENERATOR,
    help: "Continuous kW of the set on site.",
  }),
  engineRating: amount({
    label: "Engine rating at running speed",
    quantity: "power",
    bounds: enginePowerMethod.inputs.ratedPower,
    shownIf: OF_ENGINE,
    help: "From the engine maker's curve at running speed: the continuous net rating where it is known.",
  }),
  engineRatingKind: oneOf(ENGINE_RATING_KINDS, {
    label: "Kind of engine rating",
    shownIf: OF_ENGINE,
    help: "continuous net, continuous gross (fan and accessories still to come off) or standby. Blank counts as gross.",
  }),
  accessoryLosses: percent({
    isSeldom: true,
    label: "Fan and accessory losses",
    bounds: engineNetPowerMethod.inputs.lossShare,
    shownIf: OF_ENGINE,
    help: "Come off the rating: 3 % to 8 % of a gross one, 5 % where left blank; nothing off a net one.",
  }),
  aspiration: oneOf(ASPIRATIONS, {
    label: "Engine aspiration",
    whenBlank: "natural",
    also: ALSO_ASPIRATION,
    shownIf: OF_ENGINE,
    help: "natural or turbo; naturally aspirated loses most with altitude.",
  }),
  specificConsumption: amount({
    isSeldom: true,
    label: "Specific fuel consumption",
    quantity: "specificConsumption",
    bounds: fuelRateMethod.inputs.specificConsumption,
    shownIf: OF_ENGINE,
    help: "From the engine maker; a usual figure by size is taken where left blank.",
  }),
  tankVolume: amount({
    label: "Fuel tank",
    quantity: "volume",
    bounds: tankTimeMethod.inputs.tankVolume,
    shownIf: OF_ENGINE,
    help: "Volume of the fuel tank, for the hours it lasts.",
  }),
};
