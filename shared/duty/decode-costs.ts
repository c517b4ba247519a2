import { checkInputs, type Input } from "../../src/basis/method.ts";
import { readNumber, splitAmount } from "../../src/basis/quantity-text.ts";
import { andThen, fail, type Result, succeed } from "../../src/basis/result.ts";
import { unitOf } from "../../src/basis/units.ts";
import { fuelCostMethod } from "../../src/estimate/fuel-cost.ts";
import { fuelPriceNamed } from "../../src/estimate/fuel-price.ts";
import { lifeCycleCostMethod } from "../../src/estimate/life-cycle-cost.ts";
import { priceMethod } from "../../src/estimate/price.ts";
import { fractionDoubted } from "../catalogue/parameters/percent-not-fraction.ts";
import type { DutyText, FieldKey } from "./duty-text.ts";
import { FIELDS } from "./fields.ts";

/** What the estimator states of hours, prices and shares. Money is in the currency, whatever that is; nothing is assumed. */
export interface DutyCosts {
  /** As typed. */
  readonly currency: string | undefined;
  /** In a year, s. */
  readonly runningHours: number | undefined;
  /** Money a kilowatt-hour. */
  readonly tariff: number | undefined;
  /** Money a cubic metre. */
  readonly fuelPrice: number | undefined;
  readonly directCost: number | undefined;
  /** Fractions. */
  readonly overhead: number | undefined;
  readonly contingency: number | undefined;
  readonly margin: number | undefined;
  readonly firstCost: number | undefined;
  readonly yearlyUpkeep: number | undefined;
  readonly years: number | undefined;
  /** Real, a fraction. */
  readonly discountRate: number | undefined;
}

const MONEY: Input = { name: "money", quantity: "ratio", atLeast: 0 };
const LEAP_YEAR = 366 * 24 * unitOf("h").factor;

/** Bounds of the methods the figures go into. */
const BOUNDS = {
  runningHours: { name: "hours", quantity: "hours", above: 0, atMost: LEAP_YEAR },
  tariff: MONEY,
  fuelPrice: fuelCostMethod.inputs.fuelPrice,
  directCost: priceMethod.inputs.directCost,
  overhead: priceMethod.inputs.overhead,
  contingency: priceMethod.inputs.contingency,
  margin: priceMethod.inputs.margin,
  firstCost: MONEY,
  yearlyUpkeep: MONEY,
  years: lifeCycleCostMethod.inputs.years,
  discountRate: { ...lifeCycleCostMethod.inputs.discountRate, quantity: "percent" },
} as const satisfies Partial<Record<FieldKey, Input>>;

type CostKey = keyof typeof BOUNDS;

interface Reading {
  readonly typed: DutyText;
  readonly amountOf: (key: FieldKey) => number | undefined;
  readonly keep: <T>(key: FieldKey, result: Result<T>) => T | undefined;
}

/** Reads the figures of cost, each by itself and within its bounds. */
export function decodeCosts({ typed, amountOf, keep }: Reading): DutyCosts {
  const within = (key: CostKey, value: number): Result<number> => {
    const input: Input = { ...BOUNDS[key], name: FIELDS[key].label };
    const { title, cites } = priceMethod;
    return andThen(checkInputs({ title, cites, inputs: { value: input } }, { value }), () => succeed(value));
  };
  const amount = (key: CostKey): number | undefined => {
    const value = amountOf(key);
    return value === undefined ? undefined : keep(key, within(key, value));
  };
  // Money hangs on it: a bare 0.3 may stand for 30 % or for 0.3 %.
  const percent = (key: CostKey): number | undefined => {
    const bare = bareNumber(typed.fields[key]);
    const doubt = bare === undefined ? undefined : fractionDoubted(bare, FIELDS[key].label);
    return doubt === undefined ? amount(key) : keep(key, fail([doubt]));
  };
  const fuelPrice = typed.fields.fuelPrice.trim();
  const currency = typed.fields.currency.trim();
  return {
    currency: currency === "" ? undefined : currency,
    runningHours: amount("runningHours"),
    tariff: amount("tariff"),
    fuelPrice:
      fuelPrice === ""
        ? undefined
        : keep(
            "fuelPrice",
            andThen(fuelPriceNamed(fuelPrice, FIELDS.fuelPrice.label), (value) => within("fuelPrice", value)),
          ),
    directCost: amount("directCost"),
    overhead: percent("overhead"),
    contingency: percent("contingency"),
    margin: percent("margin"),
    firstCost: amount("firstCost"),
    yearlyUpkeep: amount("yearlyUpkeep"),
    years: amount("years"),
    discountRate: percent("discountRate"),
  };
}

function bareNumber(text: string): number | undefined {
  const parts = splitAmount(text);
  if (parts?.unit !== "") return undefined;
  const read = readNumber(parts.number, "number");
  return read.ok ? read.value : undefined;
}
