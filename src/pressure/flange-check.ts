import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { RatingSystem } from "../tables/flange-rating-table.ts";
import type { ClassSeries, PressureMaterial } from "../tables/pressure-materials.ts";
import {
  classesOf,
  type FlangeRating,
  type FlangeRatingInput,
  flangeRating,
  flangeRatingCites,
  materialNotRated,
} from "./flange-rating.ts";
import type { FlangeSize } from "./flange-size.ts";
import { flangeTestPressure } from "./hydrostatic-test.ts";
import { isRated } from "./pressure-material.ts";
import { exceeds, tradeFigureRemarks } from "./trade-figure.ts";

export const flangeCheckMethod = {
  cites: flangeRatingCites,
  inputs: { pressure: { name: "pressure", symbol: "P", quantity: "gaugePressure", atLeast: 0 } },
} as const satisfies Method<"pressure">;

/** Share of the rating in use above which the little that is left is pointed out. A house choice. */
export const NEARLY_USED = 0.95;
const NEARLY_USED_RULE: Citation = { source: "house", at: "caution above 95 % of a rating" };
export const CASING_RULE: Citation = {
  source: "practice",
  at: "the lowest of flange rating, casing working pressure, shaft seal, coupling, hose and pipe governs",
};

export interface FlangeCheck {
  readonly holds: boolean;
  /** Pa gauge */
  readonly rating: number;
  /** Part of the rating left over the pressure, (rating − pressure)/rating. Negative where the flange does not hold. */
  readonly margin: number;
  /** Pa gauge */
  readonly testPressure: number;
}

/**
 * Whether a flange holds a working pressure at a temperature, its margin (a share), hydrostatic test pressure, Pa gauge.
 * Formula: margin = (rating − P)/rating
 * Fails: a negative pressure; as `flangeRating`.
 * Warns: pressure above the rating, or passed by the trade figure alone. Cautions: above 95 % of the rating, the trade
 * figure, the flange is not the casing, as `flangeRating`.
 * Source: as `flangeRating`.
 */
export function flangeCheck(input: FlangeRatingInput & { readonly pressure: number }): Result<FlangeCheck> {
  const { pressure } = input;
  return andThen(checkInputs(flangeCheckMethod, { pressure }), () =>
    andThen(flangeRating(input), (rating) =>
      succeed(
        {
          holds: !exceeds(pressure, rating.pressure),
          rating: rating.pressure,
          margin: (rating.pressure - pressure) / rating.pressure,
          testPressure: flangeTestPressure(rating),
        },
        [...verdictRemarks(pressure, rating), ...tradeFigureRemarks(pressure, rating), notTheCasing()],
      ),
    ),
  );
}

export interface FlangeClassChoiceInput {
  readonly material: PressureMaterial;
  /** Pa gauge */
  readonly pressure: number;
  readonly temperature: number | null;
  readonly system: RatingSystem;
  /** Whether by class or by PN; where left out, by class for a material that has one. */
  readonly series?: ClassSeries;
  /** Of the flange, for a material rated by size. */
  readonly size?: FlangeSize;
}

/**
 * Lowest class of the material's standard whose rating is not below the pressure, with that rating, Pa gauge.
 * Fails: a negative pressure; none up to Class 300 or PN40 is enough; as `flangeRating` where no class can be rated.
 * Warns: where the trade figure would have passed a class below. Cautions: as `flangeCheck`.
 * Source: as `flangeRating`.
 */
export function lowestFlangeClass(input: FlangeClassChoiceInput): Result<FlangeRating> {
  const { material, pressure, temperature, system, series, size } = input;
  const checked = checkInputs(flangeCheckMethod, { pressure });
  if (!checked.ok) return checked;
  if (!isRated(material)) return fail([materialNotRated(material, "error")]);
  let refused: Result<never> | undefined;
  let highest: FlangeRating | undefined;
  const passedOver: Finding[] = [];
  for (const known of classesOf(material, series)) {
    const flangeClass = size === undefined ? known : { ...known, size };
    const rated = flangeRating({ material, flangeClass, temperature, system });
    if (!rated.ok) {
      refused ??= fail(rated.findings);
      continue;
    }
    highest = rated.value;
    if (exceeds(pressure, rated.value.pressure)) {
      const wouldPass = tradeFigureRemarks(pressure, rated.value).filter(
        ({ code }) => code === "trade-figure-would-pass",
      );
      const bySize = rated.findings.filter(({ code }) => code === "rating-by-size");
      passedOver.push(...wouldPass, ...bySize);
      continue;
    }
    return succeed(rated.value, [
      ...passedOver,
      ...rated.findings,
      ...nearlyUsed(pressure, rated.value),
      ...tradeFigureRemarks(pressure, rated.value),
      notTheCasing(),
    ]);
  }
  if (highest === undefined) return refused as Result<never>;
  return fail([beyondHighest(pressure, highest)]);
}

function beyondHighest(pressure: number, { pressure: rating, flangeClass, standard, cites }: FlangeRating): Finding {
  return {
    code: "beyond-highest-class",
    kind: "error",
    subject: "pressure",
    found: amount("gaugePressure", pressure),
    limit: { quantity: "gaugePressure", value: rating, side: "at most" },
    facts: { flangeClass, standard },
    cites,
  };
}

function verdictRemarks(pressure: number, rating: FlangeRating): readonly Finding[] {
  if (!exceeds(pressure, rating.pressure)) return nearlyUsed(pressure, rating);
  return [
    {
      code: "pressure-above-rating",
      kind: "limit",
      subject: "pressure",
      found: amount("gaugePressure", pressure),
      limit: { quantity: "gaugePressure", value: rating.pressure, side: "at most" },
      facts: { flangeClass: rating.flangeClass, standard: rating.standard },
      cites: rating.cites,
    },
  ];
}

/** Caution for a pressure that leaves less than a twentieth of the rating. */
export function nearlyUsed(pressure: number, rating: FlangeRating): readonly Finding[] {
  if (!exceeds(pressure, NEARLY_USED * rating.pressure)) return [];
  return [
    {
      code: "rating-nearly-used",
      kind: "check",
      subject: "pressure",
      found: amount("gaugePressure", pressure),
      limit: { quantity: "gaugePressure", value: rating.pressure, side: "at most" },
      facts: { used: amount("percent", pressure / rating.pressure) },
      cites: NEARLY_USED_RULE,
    },
  ];
}

/** Caution that the flange is not the weakest part for certain. */
export function notTheCasing(): Finding {
  return { code: "flange-is-not-casing", kind: "check", subject: "flange rating", cites: CASING_RULE };
}
