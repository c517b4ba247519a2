import type { Citation } from "../basis/citation.ts";
import { amount, type Finding } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import type { FlangeClassName } from "../tables/flange-rating-table.ts";
import type { FlangeRating } from "./flange-rating.ts";

const psi = unitOf("psi").factor;

/** What the trade says a class holds, cold or not and whatever it is made of, and the class it says it of. */
export const TRADE_FIGURES: Readonly<
  Partial<Record<FlangeClassName, { readonly pressure: number; readonly of: FlangeClassName }>>
> = {
  "Class 125": { pressure: 260 * psi, of: "Class 150" },
  "Class 150": { pressure: 260 * psi, of: "Class 150" },
  PN16: { pressure: 260 * psi, of: "Class 150" },
  "Class 250": { pressure: 680 * psi, of: "Class 300" },
  "Class 300": { pressure: 680 * psi, of: "Class 300" },
  PN40: { pressure: 680 * psi, of: "Class 300" },
};

const RULE: Citation = {
  source: "practice",
  at: "260 psi for Class 150 and 680 psi for Class 300, which are the ratings of carbon steel at 200 °F (93 °C)",
};

/** A pressure equal to a limit but for rounding has not passed it. */
export const PRESSURE_ROUNDING = 1e-9;

/** The trade figure as a check line, and what it would have said of this pressure. It decides nothing. */
export function tradeFigureRemarks(pressure: number, rating: FlangeRating): readonly Finding[] {
  const figure = TRADE_FIGURES[rating.flangeClass];
  if (figure === undefined) return [];
  const subject = "trade figure";
  const above = figure.pressure / rating.pressure - 1;
  const facts = {
    figure: amount("gaugePressure", figure.pressure),
    of: figure.of,
    standard: rating.standard,
    flangeClass: rating.flangeClass,
    rating: amount("gaugePressure", rating.pressure),
    difference: amount("percent", Math.abs(above)),
    way: Math.abs(above) < 5e-4 ? "equal" : above > 0 ? "above" : "below",
  };
  const findings: Finding[] = [{ code: "trade-figure-compared", severity: "caution", subject, facts, cites: RULE }];
  const found = amount("gaugePressure", pressure);
  if (exceeds(pressure, rating.pressure) && !exceeds(pressure, figure.pressure)) {
    findings.push({
      code: "trade-figure-would-pass",
      severity: "warning",
      subject,
      found,
      facts,
      cites: rating.cites,
    });
  }
  if (!exceeds(pressure, rating.pressure) && exceeds(pressure, figure.pressure)) {
    findings.push({ code: "trade-figure-passed", severity: "caution", subject, found, facts, cites: RULE });
  }
  return findings;
}

/** Whether a pressure is above a limit by more than rounding. */
export function exceeds(pressure: number, limit: number): boolean {
  return pressure > limit * (1 + PRESSURE_ROUNDING);
}
