import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Finding, type Result, succeed } from "../basis/result.ts";

export interface RentalInputs {
  /** On hire; a part of a day counts as a day. */
  readonly days: number;
  /** Money a day, a week of 7 days and a month of 28. */
  readonly dayRate: number;
  readonly weekRate: number;
  readonly monthRate: number;
  /** Idle on site, at the same rates; a part of a day counts as a day. */
  readonly standbyDays: number;
  /** Least term charged. */
  readonly minimumDays: number;
  /** Money for the way there and back. */
  readonly mobilisation: number;
  readonly demobilisation: number;
}

const days = { quantity: "ratio", atLeast: 0, atMost: 36_500 } as const;
const money = { quantity: "ratio", atLeast: 0 } as const;

export const rentalMethod = {
  cites: [{ source: "practice", at: "week of 7 days, month of 28 days; no term costs more than the next longer one" }],
  inputs: {
    days: { ...days, name: "days", above: 0 },
    dayRate: { ...money, name: "day rate" },
    weekRate: { ...money, name: "week rate" },
    monthRate: { ...money, name: "month rate" },
    standbyDays: { ...days, name: "standby days" },
    minimumDays: { ...days, name: "minimum days" },
    mobilisation: { ...money, name: "mobilisation" },
    demobilisation: { ...money, name: "demobilisation" },
  },
} as const satisfies Method<keyof RentalInputs>;

const WEEK = 7;
/** Four weeks, not a calendar month: common practice. */
export const RENTAL_MONTH = 28;
/** A sum of days that is whole but for rounding is whole. */
const ROUNDING = 1e-9;

/** What is charged: whole terms, and money. */
export interface Rental {
  readonly chargedDays: number;
  readonly months: number;
  readonly weeks: number;
  readonly days: number;
  readonly rental: number;
  readonly total: number;
}

/**
 * Charge for equipment on hire, in the money of its rates, at one shift a day: months of 28 days, weeks of 7, then
 * days; days never above a week's rate, weeks and days never above a month's. Standby counts as days, a least term too.
 * Fails: out-of-range inputs as the method bounds them.
 * Warns: caution rental-rate-above-shorter: a week above seven days, or a month above four weeks.
 * Source: common practice.
 */
export function rental(inputs: RentalInputs): Result<Rental> {
  const checked = checkInputs(rentalMethod, { ...inputs });
  if (!checked.ok) return checked;
  const { dayRate, weekRate, monthRate, mobilisation, demobilisation } = inputs;
  const chargedDays = Math.max(wholeDays(inputs.days + inputs.standbyDays), wholeDays(inputs.minimumDays));
  const left = chargedDays % RENTAL_MONTH;
  const single = left % WEEK;
  const daysCapped = single * dayRate >= weekRate && single > 0;
  const weeks = (left - single) / WEEK + (daysCapped ? 1 : 0);
  const loose = daysCapped ? 0 : single;
  const weeksCapped = left > 0 && weeks * weekRate + loose * dayRate >= monthRate;
  const terms = {
    months: (chargedDays - left) / RENTAL_MONTH + (weeksCapped ? 1 : 0),
    weeks: weeksCapped ? 0 : weeks,
    days: weeksCapped ? 0 : loose,
  };
  const charge = terms.months * monthRate + terms.weeks * weekRate + terms.days * dayRate;
  return succeed({ chargedDays, ...terms, rental: charge, total: charge + mobilisation + demobilisation }, [
    ...crossing("week rate", weekRate, WEEK * dayRate, "seven days"),
    ...crossing("month rate", monthRate, (RENTAL_MONTH / WEEK) * weekRate, "four weeks"),
  ]);
}

function wholeDays(days: number): number {
  return Math.ceil(days * (1 - ROUNDING));
}

function crossing(subject: string, rate: number, shorter: number, terms: string): readonly Finding[] {
  if (rate <= shorter * (1 + ROUNDING)) return [];
  const limit = { ...amount("ratio", shorter), side: "at most" } as const;
  return [
    {
      code: "rental-rate-above-shorter",
      kind: "check",
      subject,
      found: amount("ratio", rate),
      limit,
      facts: { terms },
      cites: rentalMethod.cites[0],
    },
  ];
}
