import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { andThen, type Result, succeed } from "../../../src/basis/result.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { fuelCost, fuelCostMethod } from "../../../src/estimate/fuel-cost.ts";
import { fuelPriceNamed } from "../../../src/estimate/fuel-price.ts";
import { PROFIT_ON, priceMethod, priceRollUp } from "../../../src/estimate/price.ts";
import { rental, rentalMethod } from "../../../src/estimate/rental.ts";
import type { Cell } from "../../cells/cell.ts";
import { wrongKind } from "../../cells/refused-cell.ts";
import { defineEntry } from "../entry.ts";
import { choice, quantity, type Reading, type SingleParameter } from "../parameter.ts";
import { LARGE, share } from "../parameters/share.ts";
import { zeroDoubted } from "../parameters/zero-doubted.ts";

const money = (about: string, example: string) => quantity("ratio", { about, example, range: "0 or more" });

const moneyOrNone = (about: string, example: string) =>
  quantity("ratio", { about, example, range: "0 or more", whenLeftOut: { value: 0, shown: "0, none" } });

const daysOrNone = (about: string, example: string) =>
  quantity("ratio", { about, example, range: "0 to 36500", whenLeftOut: { value: 0, shown: "0, none" } });

/** The volume a price of fuel is for where it is a bare number. */
export function pricedVolume(unitSet: UnitSetName): "US gal" | "L" {
  return UNIT_SETS[unitSet].fuelFlow.symbol === "US gal/h" ? "US gal" : "L";
}

const fuelPrice: SingleParameter<number> = {
  takes: "cell",
  about: 'Price of the fuel: a bare number is for a US gallon in US units and for a litre otherwise; or "1.03 per L"',
  example: '3.90, "3.90 per US gal" or "1.03 per L"',
  range: "0 or more",
  read: (cell: Cell, { name, unitSet }: Reading): Result<number> => {
    if (typeof cell === "number") return succeed(cell / unitOf(pricedVolume(unitSet)).factor);
    if (typeof cell === "string") return fuelPriceNamed(cell, name);
    return wrongKind(name, cell, 'a number or a text such as "3.90 per US gal"');
  },
};

export const SELLINGPRICE = defineEntry({
  id: "SELLINGPRICE",
  group: "Estimate",
  summary: "Selling price of a direct cost, with every line of the way there",
  method:
    "Overhead on the direct cost; contingency on direct cost and overhead; profit on all of it, as a margin on the price, cost/(1 − M), or as a markup on the cost, cost × (1 + m); tax on the taxable share of the selling price, last. The order counts. A markup of 30 % is a margin of 23.1 %, so which is meant must be said. A margin of 100 % is refused. Contingency, common practice: 3 % to 5 % on a firm scope, 10 % to 20 % on a budget price, 30 % on a concept. No price is a standard: state the currency and the date beside it.",
  cites: priceMethod.cites,
  unitless: true,
  parameters: {
    directCost: zeroDoubted(
      money("Labour, materials, equipment, fuel and subcontracts together, in any money", "42000"),
    ),
    overhead: zeroDoubted(
      share({ about: "Overhead on the direct cost", example: '12, or "12 %"', range: "0 to 500 %" }),
    ),
    contingency: zeroDoubted(
      share({
        about: "Contingency on direct cost and overhead",
        example: '5, or "5 %"',
        range: "0 to 100 %",
      }),
    ),
    profit: zeroDoubted(
      share({
        about: "Profit: of the price where it is a margin, of the cost where it is a markup",
        example: '20, or "20 %"',
        range: "0 to below 100 % as a margin, to 1000 % as a markup",
      }),
    ),
    profitOn: choice(PROFIT_ON, { about: 'Whether the profit is a "margin" on the price or a "markup" on the cost' }),
    taxableShare: share({
      about: "Share of the selling price that is taxed",
      example: '60, or "60 %"',
      range: "0 to 100 %",
      whenLeftOut: { value: 1, shown: "100 %, all of it" },
    }),
    tax: share({
      about: "Rate of the tax",
      example: '8.25, or "8.25 %"',
      range: "0 to 100 %",
      whenLeftOut: { value: 0, shown: "0, tax is not counted" },
    }),
  },
  answer: {
    kind: "record",
    name: "price",
    columns: {
      directCost: { name: "direct cost" },
      overhead: { name: "overhead" },
      contingency: { name: "contingency" },
      cost: { name: "cost" },
      profit: { name: "profit" },
      sellingPrice: { name: "selling price" },
      tax: { name: "tax" },
      withTax: { name: "price with tax" },
      margin: { name: "profit margin", quantity: "percent" },
      markup: { name: "markup on cost", quantity: "percent" },
    },
  },
  examples: [
    {
      args: [1000, 0, 0, 30, "markup"],
      part: [1, 8],
      answer: 23.077,
      within: 0.001,
      source: "by hand: 30 % markup is 0.3/1.3 of the price",
    },
    {
      args: [10000, 10, 5, 20, "margin", 50, 8],
      part: [1, 7],
      answer: 15015,
      within: 0.001,
      source: "by hand: 10 000 + 1000 + 550 = 11 550; / 0.8 = 14 437.50; tax 0.5 × 0.08 × 14 437.50 = 577.50",
    },
  ],
  run: (inputs) =>
    andThen(priceRollUp(inputs), (price) =>
      succeed({
        directCost: inputs.directCost,
        overhead: price.overhead,
        contingency: price.contingency,
        cost: price.cost,
        profit: price.profit,
        sellingPrice: price.sellingPrice,
        tax: price.tax,
        withTax: price.priceWithTax,
        margin: price.margin,
        markup: price.markup,
      }),
    ),
});

export const RENTAL = defineEntry({
  id: "RENTAL",
  group: "Estimate",
  summary: "Charge for equipment on hire by day, week and month",
  method:
    "Months of 28 days, weeks of 7, the rest by the day; loose days never cost more than a week, weeks and days never more than a month, as the trade bills. Standby is charged as use, and the minimum term where that is longer; a part of a day counts as a day. Rates are for one shift: common practice takes 1.5 times for two and twice for three. Rates of day, week and month stand at about 1 to 3 to 9. Mobilisation and demobilisation are added. Fuel, labour, freight, permits, waiver, cleaning and tax are separate lines. Common practice, no source.",
  cites: rentalMethod.cites,
  unitless: true,
  parameters: {
    days: quantity("ratio", { about: "Days on hire", example: "45", range: "above 0, at most 36500" }),
    dayRate: zeroDoubted(money("Charge for a day, in any money", "150")),
    weekRate: zeroDoubted(money("Charge for a week of 7 days", "450")),
    monthRate: zeroDoubted(money("Charge for a month of 28 days", "1350")),
    standbyDays: daysOrNone("Further days idle on site, charged alike", "3"),
    minimumDays: daysOrNone("Minimum term that is charged", "7"),
    mobilisation: moneyOrNone("Charge for bringing it", "600"),
    demobilisation: moneyOrNone("Charge for taking it back", "600"),
  },
  answer: {
    kind: "record",
    name: "rental",
    columns: {
      chargedDays: { name: "days charged" },
      months: { name: "months" },
      weeks: { name: "weeks" },
      days: { name: "days" },
      rental: { name: "rental" },
      mobilisation: { name: "mobilisation" },
      demobilisation: { name: "demobilisation" },
      total: { name: "total" },
    },
  },
  examples: [
    {
      args: [45, 150, 450, 1350, null, null, 600, 600],
      part: [1, 7],
      answer: 3900,
      within: 0.001,
      source: "by hand: 45 days are a month, 2 weeks and 3 days, 1350 + 900 + 450; with 2 × 600",
    },
    {
      args: [5, 150, 450, 1350],
      part: [1, 4],
      answer: 450,
      within: 0.001,
      source: "by hand: 5 × 150 = 750 is above the week's 450",
    },
  ],
  run: (inputs) =>
    andThen(rental(inputs), (hire) =>
      succeed({
        chargedDays: hire.chargedDays,
        months: hire.months,
        weeks: hire.weeks,
        days: hire.days,
        rental: hire.rental,
        mobilisation: inputs.mobilisation,
        demobilisation: inputs.demobilisation,
        total: hire.total,
      }),
    ),
});

export const FUELCOST = defineEntry({
  id: "FUELCOST",
  group: "Estimate",
  summary: "Diesel fuel an engine burns over its running hours, and what it costs",
  method:
    "Shaft power × load factor × specific consumption × hours ÷ density of the fuel, 840 kg/m³ (7.01 lb/US gal), times its price. Give the power while the pump runs and the hours it runs. Where no consumption is given the usual one near full load stands in, with a caution; below half load an engine takes more for each kWh. A bare price is for a US gallon in US units and for a litre otherwise; a text says its volume itself: “1.03 per L”. Fuel alone: urea solution is 3 % to 6 % of the diesel, oil and filters 1 % to 2 % of its cost (common practice). Prices move; ask again at a price 20 % up and down.",
  cites: fuelCostMethod.cites,
  parameters: {
    shaftPower: quantity("power", { about: "Power the engine gives while running", range: "above 0" }),
    hours: zeroDoubted(quantity("hours", { about: "Running time", example: "2000", range: "0 or more" })),
    fuelPrice: zeroDoubted(fuelPrice),
    specificConsumption: quantity("specificConsumption", {
      about: "Fuel for each unit of energy delivered near full load",
      example: '"215 g/kWh" or "0.36 lb/hp-h"',
      range: "180 to 400 g/kWh (0.296 to 0.658 lb/hp-h)",
      whenLeftOut: { value: null, shown: "usual for an engine of this power" },
    }),
    loadFactor: share({
      ...LARGE,
      about: "Mean power while running over the power given",
      example: '80, or "80 %"',
      range: "above 0, at most 100 %",
      whenLeftOut: { value: 1, shown: "100 %" },
    }),
  },
  answer: {
    kind: "record",
    name: "fuel and its cost",
    columns: {
      rate: { name: "fuel rate", quantity: "fuelFlow" },
      volume: { name: "fuel", quantity: "volume" },
      cost: { name: "cost of fuel" },
    },
  },
  examples: [
    {
      args: [100, 1000, 1.2, 210, 80, "SI"],
      part: [1, 2],
      answer: 24000,
      within: 0.5,
      source: "by hand: 80 kW × 210 g/kWh / 840 g/L = 20 L/h; 1000 h × 20 L/h × 1.2",
    },
    {
      args: [100, 100, 4, "0.38 lb/hp-h"],
      part: [1, 2],
      answer: 2168,
      within: 3,
      source: "by hand: 38 lb/h ÷ 7.01 lb/US gal = 5.42 US gal/h; × 100 h × 4",
    },
  ],
  run: (inputs) => andThen(fuelCost(inputs), ({ rate, volume, cost }) => succeed({ rate, volume, cost })),
});
