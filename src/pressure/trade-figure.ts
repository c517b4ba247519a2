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

/** What the trade figure of a class says of a pressure beside what the standard says of it. */
export type TradeVerdict = "agrees" | "would pass" | "would not pass";

/**
 * What the trade figure says of a pressure (Pa gauge) beside the standard; nothing where the trade has none for the
 * class.
 */
export function tradeVerdict(
  pressure: number,
  { flangeClass, pressure: rating }: Pick<FlangeRating, "flangeClass" | "pressure">,
): TradeVerdict | undefined {
  const figure = TRADE_FIGURES[flangeClass];
  if (figure === undefined) return undefined;
  const passesStandard = !exceeds(pressure, rating);
  const passesTrade = !exceeds(pressure, figure.pressure);
  if (passesStandard === passesTrade) return "agrees";
  return passesTrade ? "would pass" : "would not pass";
}

type TradeFinding = Finding<"trade-figure-compared" | "trade-figure-would-pass" | "trade-figure-passed">;

/**
 * The trade figure as a check line, and what it would have said of this pressure. It decides nothing. `nozzle` names
 * where the pressure stands, such as "discharge of stage 2".
 */
export function tradeFigureRemarks(pressure: number, rating: FlangeRating, nozzle = ""): readonly TradeFinding[] {
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
    ...(nozzle === "" ? {} : { nozzle }),
  };
  const way = Math.abs(above) < 5e-4 ? "equal" : above > 0 ? "above" : "below";
  const compared = { ...facts, way, difference: amount("percent", Math.abs(above)) } as const;
  const findings: TradeFinding[] = [
    { code: "trade-figure-compared", kind: "check", subject, facts: compared, cites: RULE },
  ];
  const found = amount("gaugePressure", pressure);
  const verdict = tradeVerdict(pressure, rating);
  if (verdict === "would pass") {
    const { cites } = rating;
    findings.push({ code: "trade-figure-would-pass", kind: "limit", subject, found, facts, cites });
  }
  if (verdict === "would not pass") {
    findings.push({ code: "trade-figure-passed", kind: "check", subject, found, facts, cites: RULE });
  }
  return findings;
}

/** Whether a pressure is above a limit by more than rounding. */
export function exceeds(pressure: number, limit: number): boolean {
  return pressure > limit * (1 + PRESSURE_ROUNDING);
}
