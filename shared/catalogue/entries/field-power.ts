import { andThen, type Result, succeed } from "../../../src/basis/result.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { electricPlant, enginePlant, plantEfficiencyMethod } from "../../../src/field/plant-efficiency.ts";
import { powerReadingMethod, powerReadingNamed } from "../../../src/field/power-reading.ts";
import { uncertaintyOf } from "../../../src/field/uncertainty.ts";
import type { Liquid } from "../../../src/liquid/liquid.ts";
import { PLANT_CRITERIA } from "../../../src/tables/pumping-plant-criteria.ts";
import { amountOf } from "../../cells/amount-cell.ts";
import { defineEntry } from "../entry.ts";
import { choice, quantity, type SingleParameter } from "../parameter.ts";
import { headUncertainty, instrument } from "../parameters/field-readings.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { LARGE, share } from "../parameters/share.ts";

const water = {
  flow: quantity("flow", { about: "Flow measured", range: "above 0" }),
  head: quantity("head", { about: "Head measured, as FIELDHEAD gives it", range: "above 0" }),
};

const driveEfficiency = share({
  ...LARGE,
  about: "Efficiency of belts, gear and variable-frequency drive together",
  example: '0.96, or "96 %"',
  range: "above 0, at most 100 %",
  whenLeftOut: { value: 1, shown: "100 %, direct coupled" },
});
const flowMeter = instrument(
  "flow",
  "What measured the flow, or how far it may be off",
  "good to 5 %, a clamp-on meter (house choice)",
);

function densityOf(named: Liquid, at: number): Result<number> {
  return andThen(named.at(at), ({ density }) => succeed(density));
}

const electricPower: SingleParameter<number> = {
  takes: "cell",
  about:
    "Electric power at the meter: an amount, “62 A, 460 V, pf 0.86” of three phases, or the turns of a disc meter “Kh 3.6, 10 turns in 42 s, ratio 40”",
  quantity: "electricPower",
  range: "above 0",
  example: '26.8, or "62 A, 460 V, pf 0.86"',
  read: (cell, { name, units }) =>
    typeof cell === "string" && /[,;]|kh/i.test(cell)
      ? powerReadingNamed(cell, name)
      : amountOf(cell, "electricPower", units.electricPower, name),
};

export const WIRETOWATER = defineEntry({
  id: "WIRETOWATER",
  group: "Pump",
  summary: "Efficiency of a running pump from its electric meter to the water, and its own where the motor's is known",
  method:
    "Water power ρ g Q H over the power at the meter; over that of the motor's shaft (× motor × drive) it is the pump's own. Amps need voltage and power factor, √3 V I cos φ: those of a nameplate are no power. A disc meter: its constant in watt-hours a turn, 3.6 kW for each of it and turn a second, times the ratio of the transformers. Uncertainty is the root of the sum of squares of flow, head and power. Beside it stands the share of the Nebraska criterion, 0.885 whp·h/kWh, that of a good pump of 75 % on a motor of 88 %. Readings of power are taken by those who may open the cabinet.",
  cites: [...plantEfficiencyMethod.cites, ...powerReadingMethod.cites],
  parameters: {
    ...water,
    power: electricPower,
    motorEfficiency: share({
      ...LARGE,
      about: "Efficiency of the motor at that load",
      example: '0.936, or "93.6 %"',
      range: "above 0, at most 100 %",
      whenLeftOut: { value: null, shown: "not known: the pump's own efficiency stays open" },
    }),
    driveEfficiency,
    liquid,
    temperature,
    flowMeter,
    headUncertainty,
    powerMeter: instrument(
      "power",
      "What measured the power, or how far it may be off",
      "good to 2 %, a utility meter",
    ),
  },
  answer: {
    kind: "record",
    name: "wire to water",
    columns: {
      waterPower: { name: "water power", quantity: "power" },
      wireToWater: { name: "wire-to-water efficiency", quantity: "percent" },
      shaftPower: { name: "shaft power", quantity: "power" },
      pumpEfficiency: { name: "pump efficiency", quantity: "percent" },
      efficiencyUncertainty: { name: "efficiencies may be off by, of themselves", quantity: "percent" },
      powerUncertainty: { name: "power may be off by, of itself", quantity: "percent" },
      ofCriterion: { name: "of the criterion", quantity: "percent" },
    },
  },
  examples: [
    {
      args: [1180, 89.72097, 26.8, 0.936, null, "water", 60, "2 %", 1.209626, "1.5 %"],
      part: [1, 1],
      answer: 74.4236,
      within: 0.01,
      source: "worked in Python apart from this product: ρ g Q H of 19.95 kW over 26.8 kW",
    },
  ],
  run: ({ liquid, temperature, power, headUncertainty, flowMeter, powerMeter, ...given }) =>
    andThen(densityOf(liquid, temperature), (density) =>
      andThen(uncertaintyOf(given.head, headUncertainty, "head"), (ofHead) =>
        electricPlant({
          ...given,
          power,
          density,
          flowInstrument: flowMeter,
          headUncertainty: ofHead,
          powerInstrument: powerMeter,
        }),
      ),
    ),
});

const FUELS = PLANT_CRITERIA.map(({ fuel }) => fuel);
const ALSO = Object.fromEntries(PLANT_CRITERIA.flatMap(({ fuel, also }) => also.map((word) => [word, fuel])));
const HORSEPOWER_HOUR = unitOf("hp").factor * unitOf("h").factor;

export const FUELTOWATER = defineEntry({
  id: "FUELTOWATER",
  group: "Pump",
  summary:
    "What a running pump on an engine makes of its fuel, and its own efficiency where the engine's consumption is known",
  method:
    "Water power ρ g Q H over the flow of fuel: water horsepower-hours from a US gallon (of gas, from 1000 ft³), and their share of the Nebraska criterion, that of a good pump of 75 % on an engine in good order: diesel 12.5, gasoline 8.6, propane 6.89 a gallon, natural gas 61.7. Of a diesel the share of its lower heating value, 138,700 Btu/US gal (from memory), and where the specific consumption is stated the shaft power, fuel of 840 kg/m³ over it, and the pump's own efficiency; a consumption that is not that engine's is good to 8 % (common practice). Measure fuel by volume over half an hour or more.",
  cites: plantEfficiencyMethod.cites,
  parameters: {
    ...water,
    fuelFlow: quantity("fuelFlow", { about: "Fuel burnt an hour", range: "above 0" }),
    fuel: choice(FUELS, { about: "The fuel", also: ALSO, whenLeftOut: "diesel" }),
    specificConsumption: quantity("specificConsumption", {
      about: "Fuel for each unit of energy delivered near full load",
      example: '0.37, or "225 g/kWh"',
      range: "180 to 400 g/kWh (0.296 to 0.658 lb/hp-h)",
      whenLeftOut: { value: null, shown: "not known: the pump's own efficiency stays open" },
    }),
    driveEfficiency,
    liquid,
    temperature,
    flowMeter,
    headUncertainty,
    fuelMeter: instrument("power", "What measured the fuel, or how far it may be off", "good to 3 %, by volume"),
  },
  answer: {
    kind: "record",
    name: "fuel to water",
    columns: {
      waterPower: { name: "water power", quantity: "power" },
      waterHours: { name: "whp·h a US gal, or 1000 ft³ of gas" },
      ofCriterion: { name: "of the criterion", quantity: "percent" },
      fuelToWater: { name: "fuel-to-water efficiency", quantity: "percent" },
      shaftPower: { name: "shaft power", quantity: "power" },
      pumpEfficiency: { name: "pump efficiency", quantity: "percent" },
      plantUncertainty: { name: "plant may be off by, of itself", quantity: "percent" },
      efficiencyUncertainty: { name: "pump efficiency may be off by, of itself", quantity: "percent" },
      powerUncertainty: { name: "shaft power may be off by, of itself", quantity: "percent" },
    },
  },
  examples: [
    {
      args: [600, 208.6, 4],
      part: [1, 2],
      answer: 63.2,
      within: 0.2,
      source:
        "Harrison & Tyson, Irrigation Pumping Plant Performance (University of Georgia): 600 gpm, 70 ft and 60 psi, 4.0 gal/h against 12.5 whp·h/gal; by hand 31.6 whp/4.0 = 7.90",
    },
  ],
  run: ({ liquid, temperature, fuel: named, fuelFlow, headUncertainty, flowMeter, fuelMeter, ...given }) => {
    const fuel =
      PLANT_CRITERIA.find((row) => row.fuel === named) ?? (PLANT_CRITERIA[0] as (typeof PLANT_CRITERIA)[number]);
    const volume = fuel.fuel === "natural gas" ? 1000 * unitOf("ft³").factor : unitOf("US gal").factor;
    return andThen(densityOf(liquid, temperature), (density) =>
      andThen(uncertaintyOf(given.head, headUncertainty, "head"), (ofHead) =>
        andThen(
          enginePlant({
            ...given,
            fuel,
            fuelFlow,
            density,
            flowInstrument: flowMeter,
            headUncertainty: ofHead,
            fuelInstrument: fuelMeter,
          }),
          (found) => succeed({ ...found, waterHours: (found.waterEnergy * volume) / HORSEPOWER_HOUR }),
        ),
      ),
    );
  },
});
