import { ASSUMED_MOTOR_EFFICIENCY, energyCost, energyCostMethod } from "../../../src/estimate/energy-cost.ts";
import { lifeCycleCost, lifeCycleCostMethod } from "../../../src/estimate/life-cycle-cost.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { LARGE, RATE, share } from "../parameters/share.ts";
import { zeroDoubted } from "../parameters/zero-doubted.ts";

export const ENERGYCOST = defineEntry({
  id: "ENERGYCOST",
  group: "Estimate",
  summary: "Cost of the electricity a pump takes",
  method:
    "Shaft power times running hours times tariff, over the efficiencies of motor and drive. Give the shaft power at the load the pump runs at and the hours it runs, not the hours it stands ready. Energy alone: charges for demand, taxes and standing charges are separate lines. Prices move; ask again at a tariff 20 % up and down.",
  cites: energyCostMethod.cites,
  parameters: {
    shaftPower: zeroDoubted(quantity("power", { about: "Pump shaft power while it runs", range: "0 or more" })),
    hours: zeroDoubted(quantity("hours", { about: "Running time", example: "5000", range: "0 or more" })),
    tariff: zeroDoubted(
      quantity("ratio", {
        about: "Price of a kilowatt-hour, in any money",
        example: "0.12",
        range: "0 or more",
      }),
    ),
    motorEfficiency: share({
      ...LARGE,
      about: "Efficiency of the motor at that load",
      example: '0.94, or "94 %"',
      range: "above 0, at most 100 %",
      whenLeftOut: { value: null, shown: `${ASSUMED_MOTOR_EFFICIENCY * 100} %, with a caution` },
    }),
    driveEfficiency: share({
      ...LARGE,
      about: "Efficiency of belts, gear and variable-frequency drive together",
      example: '0.96, or "96 %"',
      range: "above 0, at most 100 %",
      whenLeftOut: { value: 1, shown: "100 %, direct coupled" },
    }),
  },
  answer: { kind: "number", name: "cost of electricity" },
  examples: [
    {
      args: ["48 kW", 5000, 0.12, 0.94],
      answer: 30638.298,
      within: 0.001,
      source: "by hand: 60 kW at 0.8 load, 48 × 5000 × 0.12 / 0.94",
    },
    {
      args: ["100 hp", 2000, 0.1, "95 %", 0.96],
      answer: 16353.5,
      within: 0.5,
      source: "by hand: 74.57 kW × 2000 h × 0.1 / (0.95 × 0.96)",
    },
  ],
  run: energyCost,
});

export const LIFECYCLECOST = defineEntry({
  id: "LIFECYCLECOST",
  group: "Estimate",
  summary: "Present value of a first cost and of what each year costs",
  method:
    "First cost plus yearly cost times (1 − (1 + i)^−n)/i, each year's cost at its end. i is the real rate, (1 + discount rate)/(1 + inflation) − 1; without inflation the discount rate is taken as real. The first cost holds purchase, installation and commissioning; the yearly cost energy, operation, maintenance, downtime and the environment, at today's prices. A cost at the end, such as disposal, goes into the first cost at its present value, cost/(1 + i)^n.",
  cites: lifeCycleCostMethod.cites,
  unitless: true,
  parameters: {
    firstCost: quantity("ratio", { about: "Money spent at the start", example: "48000", range: "0 or more" }),
    yearlyCost: quantity("ratio", {
      about: "Money spent each year, at today's prices",
      example: "31000",
      range: "0 or more",
    }),
    years: quantity("ratio", { about: "Service life, years", example: "15", range: "above 0, at most 200" }),
    discountRate: zeroDoubted(
      share({
        ...RATE,
        about: "Interest of money a year",
        example: '0.05, or "5 %"',
        range: "above −100 %, at most 100 %",
      }),
    ),
    inflation: share({
      ...RATE,
      about: "Yearly rise of the yearly cost",
      example: '0.02, or "2 %"',
      range: "above −100 %, at most 100 %",
      whenLeftOut: { value: 0, shown: "0, the discount rate is real" },
    }),
  },
  answer: { kind: "number", name: "present value" },
  examples: [
    {
      // 40 000 + 8000 + 1500 at the start; 1000 of disposal after 15 years is 481.02 today.
      args: [49981.02, 31000, 15, 0.05],
      answer: 371751,
      within: 1,
      source: "present-value factor 10.3797 of interest tables at 5 % over 15 years",
    },
  ],
  run: lifeCycleCost,
});
