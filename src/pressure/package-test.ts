import type { Citation } from "../basis/citation.ts";
import { amount, type Finding } from "../basis/result.ts";
import { greatestOf, leastOf } from "../numeric/extremes.ts";
import type { NozzleClass } from "./nozzle-class.ts";
import { exceeds } from "./trade-figure.ts";

/** Test over working pressure. */
const TEST_RATIO = 1.5;
/** A test that is not this much above the greatest working pressure proves too little. ANSI/HI 14.6 at shutoff. */
const LEAST_OVER_WORKING = 1.25;

const TEST_RULE: Citation = {
  source: "iso-5199",
  at: "hydrostatic test at 1.5 times the maximum allowable working pressure",
  unverified: true,
};

/** Hydrostatic test pressure of a package, Pa gauge, or why there is none. */
export type PackageTest = { readonly pressure: number } | { readonly none: string };

/**
 * Hydrostatic test pressure of a package, Pa gauge: 1.5 times the lowest working pressure, cold, of all that is tested
 * together; a hose or coupling is isolated. None where something does not hold its working pressure, where a casing or
 * class is not stated, or where the test would be less than 1.25 times the greatest working pressure.
 * Source: ISO 5199 and ASME B73.1, 1.5 times the working pressure; ANSI/HI 14.6, 1.25 times the pressure at shutoff.
 */
export function packageTest(nozzles: readonly NozzleClass[]): PackageTest {
  const failing = nozzles.find(({ margin = 0, greatest, weakest }) => {
    return margin < 0 && weakest !== undefined && exceeds(greatest, weakest.workingPressure);
  });
  if (failing !== undefined) {
    const { side, pump, weakest } = failing;
    return { none: `the ${weakest?.name} does not hold the ${side} of ${pump}` };
  }
  const tested: number[] = [];
  for (const { pump, parts, coldRating } of nozzles) {
    if (coldRating === undefined) return { none: "no flange rating is known for every nozzle" };
    if (!parts.some(({ name }) => name === "casing"))
      return { none: `no casing working pressure is stated for ${pump}` };
    const together = parts.filter(({ isIsolatedForTest }) => isIsolatedForTest !== true);
    tested.push(coldRating, ...together.map(({ workingPressure }) => workingPressure));
  }
  const pressure = TEST_RATIO * leastOf(tested);
  const working = greatestOf(nozzles.map(({ greatest }) => greatest));
  if (exceeds(LEAST_OVER_WORKING * working, pressure)) {
    return {
      none: "1.5 times the weakest part is less than 1.25 times the maximum working pressure: test the stages, or what sees the suction pressure alone, apart",
    };
  }
  return { pressure };
}

/** What is to be said of it. */
export function packageTestRemark(test: PackageTest): Finding {
  const base = { kind: "check", cites: TEST_RULE } as const;
  return "none" in test
    ? { ...base, code: "no-package-test", subject: "package test pressure", facts: { why: test.none } }
    : {
        ...base,
        code: "package-test-pressure",
        subject: "package",
        found: amount("gaugePressure", test.pressure),
      };
}
