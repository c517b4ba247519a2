import { engineNetPowerMethod } from "../../../src/drive/engine-net-power.ts";
import { enginePowerMethod } from "../../../src/drive/engine-site-power.ts";
import { fuelRateMethod } from "../../../src/drive/fuel-rate.ts";
import { tankTimeMethod } from "../../../src/drive/fuel-tank.ts";
import { fullLoadCurrentMethod } from "../../../src/drive/motor-current.ts";
import { motorRatingMethod } from "../../../src/drive/motor-rating.ts";
import { amount, oneOf, percent } from "../field.ts";

export const OF_MOTOR = { field: "driver", is: "motor", otherwise: "the driver is an engine" };
export const OF_ENGINE = { field: "driver", is: "engine", otherwise: "the driver is a motor" };

export const drive = {
  driver: oneOf(["motor", "engine"], { label: "Driver", whenBlank: "motor", help: "motor or engine." }),
  serviceFactor: amount({
    label: "Service factor on power (1.1 = 10 % more)",
    quantity: "ratio",
    bounds: motorRatingMethod.inputs.serviceFactor,
    whenBlank: 1.1,
    help: "Multiplies the greatest shaft power before the next rating is taken.",
  }),
  airTemperature: amount({
    label: "Greatest air temperature",
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
  engineRating: amount({
    label: "Engine continuous rating",
    quantity: "power",
    bounds: enginePowerMethod.inputs.ratedPower,
    shownIf: OF_ENGINE,
    help: "Net continuous rating at running speed, from the engine maker's curve.",
  }),
  accessoryLosses: percent({
    label: "Fan and accessory losses",
    bounds: engineNetPowerMethod.inputs.lossShare,
    whenBlank: 0,
    shownIf: OF_ENGINE,
    help: "Taken off where the rating is gross: 3 % to 8 %. None where the rating is net.",
  }),
  aspiration: oneOf(["turbo", "natural"], {
    label: "Engine aspiration",
    whenBlank: "turbo",
    shownIf: OF_ENGINE,
    help: "natural or turbo.",
  }),
  specificConsumption: amount({
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
