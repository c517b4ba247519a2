import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { MOTOR_RATINGS_IEC } from "../tables/motor-ratings-iec.ts";
import { FIRST_LARGE_MACHINE, MOTOR_RATINGS_NEMA } from "../tables/motor-ratings-nema.ts";

export const MOTOR_SERIES = ["NEMA", "IEC"] as const;
export type MotorSeries = (typeof MOTOR_SERIES)[number];

export interface MotorRating {
  /** W */
  readonly power: number;
  readonly series: MotorSeries;
  /** As the series prints it: horsepower for NEMA, kilowatts for IEC. */
  readonly printed: number;
  /** Not of the first choice of its series. */
  readonly note?: "secondary series" | "large machine";
}

export interface MotorRatingInput {
  /** Greatest power the pump takes anywhere on its curve with the heaviest liquid, W. */
  readonly shaftPower: number;
  /** What the shaft power is multiplied by before a rating is looked for. */
  readonly serviceFactor: number;
  readonly series: MotorSeries;
  /** Share of its rating that a motor gives on site; 1 where left out. */
  readonly outputFactor?: number;
}

export const motorRatingMethod = {
  cites: [
    { source: "nema-mg1", at: "Table 10-4 (horsepower)" },
    { source: "iec-60072-1", at: "rated-output series, primary" },
  ],
  inputs: {
    shaftPower: { name: "shaft power", symbol: "P", quantity: "power", above: 0, atMost: 1e9 },
    serviceFactor: { name: "service factor", quantity: "ratio", atLeast: 1, atMost: 3 },
    outputFactor: { name: "output factor on site", quantity: "ratio", above: 0, atMost: 1 },
  },
} as const satisfies Method<"shaftPower" | "serviceFactor" | "outputFactor">;

const HORSEPOWER = unitOf("hp").factor;
const KILOWATT = unitOf("kW").factor;

/** Every rating of a series, smallest first. */
export const MOTOR_RATINGS: Readonly<Record<MotorSeries, readonly MotorRating[]>> = {
  NEMA: MOTOR_RATINGS_NEMA.map((printed) => ({
    power: printed * HORSEPOWER,
    series: "NEMA",
    printed,
    ...(printed >= FIRST_LARGE_MACHINE && { note: "large machine" as const }),
  })),
  IEC: MOTOR_RATINGS_IEC.map(([printed, series]) => ({
    power: printed * KILOWATT,
    series: "IEC",
    printed,
    ...(series === "secondary" && { note: "secondary series" as const }),
  })),
};

/** A power this near a rating is that rating: conversion leaves rounding of some 1e-16. */
const ROUNDING = 1e-9;

/** The rating of a series with this power, W; nothing where the series has none. */
export function ratingOf(power: number, series: MotorSeries): MotorRating | undefined {
  return MOTOR_RATINGS[series].find((rating) => Math.abs(rating.power - power) <= ROUNDING * power);
}

/** Share of its rating a motor is not loaded beyond without a caution: the test tolerance of the pump eats the rest. */
const LEAST_MARGIN = 1.05;

const MARGIN_RULE: Citation = {
  source: "practice",
  at: "5 % over the maximum power for a pump tested to ISO 9906 grade 2 or 3, whose power tolerance is 8 % to 9 %",
};

/**
 * Smallest standard rating, W, with rating × output factor ≥ shaft power × service factor; of the IEC ratings those of
 * the primary series. The service factor is on
 * what the pump takes, as for a coupling; the nameplate's (1.15) is for short overload and never makes a smaller motor
 * do.
 * Fails: inputs outside the method's bounds; the greatest rating of the series is too small.
 * Warns: less than 5 % over the shaft power, a large machine.
 * Source: NEMA MG 1, Table 10-4; IEC 60072-1, rated-output series; margin by common practice.
 */
export function motorRating(input: MotorRatingInput): Result<MotorRating> {
  const { shaftPower, serviceFactor, series, outputFactor = 1 } = input;
  const checked = checkInputs(motorRatingMethod, { shaftPower, serviceFactor, outputFactor });
  if (!checked.ok) return checked;
  const required = shaftPower * serviceFactor;
  const ratings = MOTOR_RATINGS[series].filter(({ note }) => note !== "secondary series");
  const found = ratings.find(({ power }) => power * outputFactor * (1 + ROUNDING) >= required);
  if (found === undefined) return fail([beyondRatings(required, series, ratings, outputFactor)]);
  const output = found.power * outputFactor;
  const small: readonly Finding[] =
    output >= shaftPower * LEAST_MARGIN * (1 - ROUNDING)
      ? []
      : [
          {
            code: "motor-margin-small",
            kind: "check",
            subject: "motor rating",
            found: amount("percent", Math.max(0, output / shaftPower - 1)),
            cites: MARGIN_RULE,
          },
        ];
  return succeed(found, [...small, ...ratingRemarks(found)]);
}

/** What a rating is not of: the first choice of its series. */
export function ratingRemarks(found: MotorRating): readonly Finding[] {
  const findings: Finding[] = [];
  const subject = "motor rating";
  if (found.note === "secondary series") {
    // The series ends in a primary rating.
    const next = MOTOR_RATINGS[found.series].find(
      ({ power, note }) => power > found.power && note === undefined,
    ) as MotorRating;
    findings.push({
      code: "motor-rating-secondary",
      kind: "check",
      subject,
      found: amount("power", found.power),
      facts: { next: amount("power", next.power) },
      cites: motorRatingMethod.cites[1],
    });
  }
  if (found.note === "large machine") {
    findings.push({
      code: "motor-is-large-machine",
      kind: "check",
      subject,
      found: amount("power", found.power),
    });
  }
  return findings;
}

function beyondRatings(
  required: number,
  series: MotorSeries,
  ratings: readonly MotorRating[],
  outputFactor: number,
): Finding {
  const most = ratings.at(-1) as MotorRating;
  return {
    code: "motor-power-beyond-ratings",
    kind: "error",
    subject: "shaft power",
    given: series,
    found: amount("power", required),
    limit: { quantity: "power", value: most.power * outputFactor, side: "at most" },
    facts: { isOnSite: outputFactor < 1 },
  };
}
