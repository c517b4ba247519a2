import { andThen } from "../../../src/basis/result.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { energyCostMethod } from "../../../src/estimate/energy-cost.ts";
import { fuelCostMethod } from "../../../src/estimate/fuel-cost.ts";
import { fuelPriceNamed } from "../../../src/estimate/fuel-price.ts";
import { lifeCycleCostMethod } from "../../../src/estimate/life-cycle-cost.ts";
import { priceMethod } from "../../../src/estimate/price.ts";
import { amount, meant, percent, text, within } from "../field.ts";
import { MONEY } from "./bounds.ts";
import { OF_ENGINE, OF_MOTOR } from "./drive.ts";

const LEAP_YEAR = 366 * 24 * unitOf("h").factor;

/** Money is in the currency, whatever that is; none is assumed. */
export const costs = {
  currency: text({
    label: "Currency",
    help: "Printed beside every amount of money, such as USD; nothing is converted. Say in the basis of a price when it was asked.",
  }),
  runningHours: amount({
    label: "Operating hours per year",
    quantity: "hours",
    bounds: { above: 0, atMost: LEAP_YEAR },
    help: "Hours the pumps run at the operating point, not those they stand ready.",
  }),
  driveEfficiency: percent({
    isSeldom: true,
    label: "Efficiency of the drive",
    bounds: energyCostMethod.inputs.driveEfficiency,
    shownIf: OF_MOTOR,
    help: "Of belts and variable-frequency drive together, in percent, without the motor. Where left blank, 95 % for belts and 96 % for the drive, as far as there are any.",
  }),
  tariff: amount({
    label: "Electricity price per kWh",
    quantity: "ratio",
    bounds: MONEY,
    shownIf: OF_MOTOR,
    help: "Money for a kilowatt-hour, without charges for demand.",
  }),
  /** A number with words after it, which no unit set converts; money a cubic metre. */
  fuelPrice: {
    ...meant(
      (price, subject) =>
        andThen(fuelPriceNamed(price, subject), (value) =>
          within(fuelCostMethod.inputs.fuelPrice, "ratio", value, subject),
        ),
      {
        label: "Fuel price (per US gal or per L)",
        shownIf: OF_ENGINE,
        help: "Money for a volume of diesel, with the volume: 3.90 per US gal, or 1.03 per L.",
      },
    ),
    kind: "amount" as const,
    bounds: fuelCostMethod.inputs.fuelPrice,
  },
  directCost: amount({
    label: "Direct cost",
    quantity: "ratio",
    bounds: priceMethod.inputs.directCost,
    help: "Your own labour, materials, equipment and subcontracts for the package, before overhead.",
  }),
  overhead: percent({
    isSeldom: true,
    label: "Overhead",
    bounds: priceMethod.inputs.overhead,
    help: "On the direct cost, in percent: 12 for 12 %. None is added where left blank.",
  }),
  contingency: percent({
    isSeldom: true,
    label: "Contingency",
    bounds: priceMethod.inputs.contingency,
    help: "On direct cost and overhead. Common practice: 3 % to 5 % on a firm scope, 10 % to 20 % on a budget price, 30 % on a concept. None is added where left blank.",
  }),
  margin: percent({
    label: "Profit margin, % of price",
    bounds: priceMethod.inputs.margin,
    help: "Profit in percent of the selling price, not of the cost: a markup of 30 % on cost is a margin of 23.1 %.",
  }),
  firstCost: amount({
    label: "Initial cost to the buyer",
    quantity: "ratio",
    bounds: MONEY,
    help: "Purchase, installation and commissioning. The selling price is taken where left blank and there is one.",
  }),
  yearlyUpkeep: amount({
    label: "Annual upkeep, without energy",
    quantity: "ratio",
    bounds: MONEY,
    help: "Operation, maintenance, downtime and environment, at today's prices, without energy and fuel.",
  }),
  years: amount({
    label: "Service life, years",
    quantity: "ratio",
    bounds: lifeCycleCostMethod.inputs.years,
    help: "For the life-cycle cost.",
  }),
  discountRate: percent({
    label: "Real discount rate",
    bounds: lifeCycleCostMethod.inputs.discountRate,
    help: "Interest of money in a year less inflation, in percent: (1 + interest)/(1 + inflation) − 1.",
  }),
  priceSwing: percent({
    isSeldom: true,
    label: "Price of energy moves by",
    bounds: { above: 0, atMost: 1 },
    whenBlank: 0.2,
    help: "Present value is worked out again with energy so much cheaper and dearer.",
    usual: "Common practice, no source.",
  }),
};
