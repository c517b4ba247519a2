import { describe, expect, it } from "vitest";
import { defaultTolerance } from "../../../src/pressure/default-tolerance.ts";
import type { ServiceName } from "../../../src/tables/services.ts";

const KW = 1000;

/*
 * ANSI/HI 14.6-2011, default acceptance grades, as a pump maker's article of 2015 prints them; head tolerances of
 * ISO 9906, table 8: 1B 3 %, 2B 5 %, 3B 7 %; to 10 kW 8 % (4.4.2).
 */
const ROWS: readonly (readonly [service: ServiceName | null, at50: number, at150: number])[] = [
  ["water and wastewater", 5, 3],
  ["building services", 5, 3],
  ["electric power", 3, 3],
  ["oil and gas", 3, 3],
  ["pipeline", 3, 3],
  // "n/a" to 100 kW: as not listed.
  ["water injection", 7, 3],
  ["chemical", 5, 5],
  ["cooling tower", 5, 5],
  ["pulp and paper", 5, 5],
  ["slurry", 7, 7],
  ["general industry", 7, 5],
  ["dewatering", 7, 5],
  ["drainage", 7, 5],
  ["irrigation", 7, 5],
  ["rental", 7, 5],
  ["bypass", 7, 5],
  ["trash", 7, 5],
  [null, 7, 5],
];

describe("the head tolerance where no grade is stated", () => {
  it.each(ROWS)("of %s: %d % at 50 kW, %d % at 150 kW, 8 % at 8 kW", (service, at50, at150) => {
    const percent = (power: number): number =>
      Math.round(100 * defaultTolerance({ service, shaftPower: power * KW }).tolerance);
    expect([8, 50, 150].map(percent)).toEqual([8, at50, at150]);
  });

  it("changes above 10 and above 100 kW, and is the widest where the power is not known", () => {
    const grade = (shaftPower: number | null): string => defaultTolerance({ service: "dewatering", shaftPower }).grade;
    expect([10 * KW, 10.01 * KW, 100 * KW, 100.01 * KW, null].map(grade)).toEqual([
      "a pump to 10 kW",
      "grade 3B",
      "grade 3B",
      "grade 2B",
      "a pump to 10 kW",
    ]);
  });
});
