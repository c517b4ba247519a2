import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Rental, type RentalInputs, rental } from "../../../src/estimate/rental.ts";

// Rates of day, week and month at 1 : 3 : 9, common practice, no source.
const base: RentalInputs = {
  days: 1,
  dayRate: 100,
  weekRate: 300,
  monthRate: 900,
  standbyDays: 0,
  minimumDays: 0,
  mobilisation: 0,
  demobilisation: 0,
};

function hireOf(change: Partial<RentalInputs> = {}): Rental {
  const hire = rental({ ...base, ...change });
  if (!hire.ok) throw new Error(JSON.stringify(hire.findings));
  return hire.value;
}

describe("rental", () => {
  // All by hand: whole months of 28 days, whole weeks, then days; days at most a week, weeks and days at most a month.
  it.each([
    { why: "a day", days: 1, months: 0, weeks: 0, loose: 1, charge: 100 },
    { why: "two days", days: 2, months: 0, weeks: 0, loose: 2, charge: 200 },
    { why: "four days, above a week's rate", days: 4, months: 0, weeks: 1, loose: 0, charge: 300 },
    { why: "a week", days: 7, months: 0, weeks: 1, loose: 0, charge: 300 },
    { why: "nine days", days: 9, months: 0, weeks: 1, loose: 2, charge: 500 },
    { why: "twelve days, capped to two weeks", days: 12, months: 0, weeks: 2, loose: 0, charge: 600 },
    { why: "16 days", days: 16, months: 0, weeks: 2, loose: 2, charge: 800 },
    { why: "three weeks, no dearer than a month", days: 21, months: 1, weeks: 0, loose: 0, charge: 900 },
    { why: "a month of 28 days", days: 28, months: 1, weeks: 0, loose: 0, charge: 900 },
    { why: "a calendar month of 30", days: 30, months: 1, weeks: 0, loose: 2, charge: 1100 },
    { why: "a year of 364 days", days: 364, months: 13, weeks: 0, loose: 0, charge: 11_700 },
  ])("$why", ({ days, months, weeks, loose, charge }) => {
    expect(hireOf({ days })).toMatchObject({ chargedDays: days, months, weeks, days: loose, rental: charge });
  });

  it("charges begun days, standby and the minimum term", () => {
    expect(hireOf({ days: 8.2 }).chargedDays).toBe(9);
    expect(hireOf({ days: 2, standbyDays: 3 }).chargedDays).toBe(5);
    expect(hireOf({ days: 2, minimumDays: 7 })).toMatchObject({ chargedDays: 7, rental: 300 });
    expect(hireOf({ days: 9, minimumDays: 7 }).chargedDays).toBe(9);
    // 0.1 + 0.2 is a rounding above 0.3; ten times it is three days.
    expect(hireOf({ days: 10 * (0.1 + 0.2) }).chargedDays).toBe(3);
  });

  it("adds the way there and back", () => {
    expect(hireOf({ mobilisation: 400, demobilisation: 350 })).toMatchObject({ rental: 100, total: 850 });
  });

  const rate = fc.integer({ min: 1, max: 2000 });
  const term = fc.integer({ min: 1, max: 200 });

  it("never costs less for more days, nor more than the next whole month, whatever the rates", () => {
    fc.assert(
      fc.property(rate, rate, rate, term, (dayRate, weekRate, monthRate, days) => {
        const rates = { dayRate, weekRate, monthRate };
        const { rental: charge } = hireOf({ ...rates, days });
        expect(hireOf({ ...rates, days: days + 1 }).rental).toBeGreaterThanOrEqual(charge);
        expect(charge).toBeLessThanOrEqual(Math.ceil(days / 28) * monthRate);
      }),
    );
  });

  it("never costs more than by the shorter term, where the longer is no dearer", () => {
    fc.assert(
      fc.property(rate, rate, rate, term, (dayRate, week, month, days) => {
        const weekRate = Math.min(week, 7 * dayRate);
        const monthRate = Math.min(month, 4 * weekRate);
        const { rental: charge } = hireOf({ dayRate, weekRate, monthRate, days });
        expect(charge).toBeLessThanOrEqual(days * dayRate);
        expect(charge).toBeLessThanOrEqual(Math.ceil(days / 7) * weekRate);
      }),
    );
  });

  it("doubts a week dearer than seven days and a month dearer than four weeks", () => {
    const codesOf = (change: Partial<RentalInputs>) => rental({ ...base, ...change }).findings.map((f) => f.subject);
    expect(codesOf({ weekRate: 700, monthRate: 2800 })).toEqual([]);
    expect(codesOf({ weekRate: 701, monthRate: 2800 })).toEqual(["week rate"]);
    expect(codesOf({ monthRate: 1201 })).toEqual(["month rate"]);
  });

  it.each([
    ["days", 0],
    ["days", -1],
    ["days", 36_501],
    ["dayRate", -1],
    ["weekRate", -1],
    ["monthRate", -1],
    ["standbyDays", -1],
    ["minimumDays", -1],
    ["mobilisation", -1],
    ["demobilisation", -1],
  ] as const)("refuses %s of %d", (input, value) => {
    const refused = rental({ ...base, [input]: value });
    expect(refused.ok).toBe(false);
    expect(refused.findings[0]?.code).toBe("out-of-range");
  });
});
