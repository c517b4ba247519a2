import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import {
  EFFICIENCY_COEFFICIENTS,
  EFFICIENCY_COEFFICIENTS_SMALL,
  type EfficiencyCoefficients,
} from "../tables/motor-efficiency-iec.ts";
import { NEMA_PREMIUM_ENCLOSED, NEMA_PREMIUM_OPEN, type NemaEfficiencyRow } from "../tables/motor-efficiency-nema.ts";
import { POLES, type Poles } from "./motor-speed.ts";

export const IEC_CLASSES = ["IE2", "IE3", "IE4"] as const;
export type IecClass = (typeof IEC_CLASSES)[number];

export const motorEfficiencyMethod = {
  cites: [
    { source: "iec-60034-30-1", at: "50 Hz classes IE2 to IE4" },
    { source: "si-2021-745", at: "Schedule 16, Tables 27 and 28" },
    { source: "cfr-10-431", at: "§ 431.25, Tables 1 and 5 (= NEMA MG 1 Table 12-12)" },
  ],
  inputs: {
    rating: { name: "rated power", symbol: "P", quantity: "power", atLeast: 120, atMost: 1e6 },
  },
} as const satisfies Method<"rating">;

const KILOWATT = unitOf("kW").factor;
const HORSEPOWER = unitOf("hp").factor;

/**
 * Least full-load efficiency of a 50 Hz motor of an IE class, 0 to 1; above 200 kW that of 200 kW holds.
 * Formula: η = A x³ + B x² + C x + D percent,  x = log₁₀(P / kW),  rounded to 0.1
 * Fails: below 0.12 kW, above 1000 kW, and between 0.55 and 0.75 kW, where no coefficients hold.
 * Source: IEC 60034-30-1; SI 2021/745, Schedule 16, Tables 27 and 28.
 */
export function iecEfficiency(rating: number, efficiencyClass: IecClass, poles: Poles): Result<number> {
  const checked = checkInputs(motorEfficiencyMethod, { rating });
  if (!checked.ok) return checked;
  const kilowatts = Math.min(rating / KILOWATT, 200);
  if (kilowatts > 0.55 && kilowatts < 0.75) return fail([notTabulated(rating)]);
  const of = (kilowatts < 0.75 ? EFFICIENCY_COEFFICIENTS_SMALL : EFFICIENCY_COEFFICIENTS)[efficiencyClass];
  const [A, B, C, D] = of[POLES.indexOf(poles)] as EfficiencyCoefficients;
  const x = Math.log10(kilowatts);
  return succeed(Math.round((((A * x + B) * x + C) * x + D) * 10) / 1000);
}

/**
 * Nominal full-load efficiency of a 60 Hz NEMA Premium motor, 0 to 1; a rating not listed takes the higher neighbour
 * at or above their midpoint, the lower one below it.
 * Fails: a rating outside the table; no figure for that many poles.
 * Source: 10 CFR 431.25, Tables 1 and 5 (= NEMA MG 1, Table 12-12).
 */
export function nemaPremiumEfficiency(rating: number, poles: Poles, enclosure: "enclosed" | "open"): Result<number> {
  const rows = enclosure === "open" ? NEMA_PREMIUM_OPEN : NEMA_PREMIUM_ENCLOSED;
  const first = (rows[0] as NemaEfficiencyRow)[0];
  const last = (rows.at(-1) as NemaEfficiencyRow)[0];
  const horsepower = rating / HORSEPOWER;
  if (!Number.isFinite(horsepower)) return fail([{ code: "not-a-number", kind: "error", subject: "rated power" }]);
  if (horsepower < first * (1 - 1e-9) || horsepower > last * (1 + 1e-9)) {
    const isBelow = horsepower < first;
    const limit = (isBelow ? first : last) * HORSEPOWER;
    return fail([outOfRange("rated power", "power", rating, isBelow ? "at least" : "at most", limit)]);
  }
  const percent = deemedRow(rows, horsepower)[1 + POLES.indexOf(poles)];
  return typeof percent === "number" ? succeed(percent / 100) : fail([notTabulated(rating)]);
}

function deemedRow(rows: readonly NemaEfficiencyRow[], horsepower: number): NemaEfficiencyRow {
  const above = rows.findIndex(([listed]) => listed * (1 + 1e-9) >= horsepower);
  const higher = rows[above] as NemaEfficiencyRow;
  const lower = rows[Math.max(0, above - 1)] as NemaEfficiencyRow;
  return horsepower * (1 + 1e-9) >= (lower[0] + higher[0]) / 2 ? higher : lower;
}

function notTabulated(rating: number): Finding {
  return {
    code: "motor-efficiency-not-tabulated",
    kind: "error",
    subject: "rated power",
    found: amount("power", rating),
  };
}
