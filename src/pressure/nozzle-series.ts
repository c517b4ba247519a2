import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, gravestFirst, type Result, succeed, withoutRepeats } from "../basis/result.ts";
import { SPECIFIC_GRAVITY } from "../pump/shaft-power.ts";
import { type DefaultTolerance, defaultTolerance, toleranceAssumed, type UngradedPump } from "./default-tolerance.ts";
import { notTheCasing } from "./flange-check.ts";
import { flangeRatingCites } from "./flange-rating.ts";
import { greatestHeadMethod } from "./greatest-head.ts";
import { type NozzleClass, type NozzleClassesInput, nozzleClasses } from "./nozzle-class.ts";
import { type NozzlePressuresInput, nozzlePressures, nozzlePressuresMethod } from "./nozzle-pressure.ts";
import { type PackageTest, packageTest, packageTestRemark } from "./package-test.ts";
import { withoutSurge } from "./stage-pressure.ts";

export interface NozzleSeriesInput
  extends Omit<NozzlePressuresInput, "density">,
    Omit<NozzleClassesInput, "nozzles">,
    UngradedPump {
  readonly specificGravity: number;
  /** How far the heads may come out above those given, a fraction; null where nobody states it: the default of service and power. */
  readonly headTolerance: number | null;
}

export const nozzleSeriesMethod = {
  cites: [nozzlePressuresMethod.cites[0], greatestHeadMethod.cites[1], ...flangeRatingCites],
  inputs: { specificGravity: SPECIFIC_GRAVITY, headTolerance: greatestHeadMethod.inputs.headTolerance },
} as const satisfies Method<"specificGravity" | "headTolerance">;

export interface NozzleSeries {
  readonly nozzles: readonly NozzleClass[];
  readonly packageTest: PackageTest;
  /** Added to the heads, a fraction, and the default grade it is of where nobody stated one. */
  readonly tolerance: Partial<DefaultTolerance> & Pick<DefaultTolerance, "tolerance">;
}

/**
 * Greatest pressure at each nozzle of pumps in series, Pa gauge, the flange class each needs, and a test pressure.
 * Formula: P_d,i = P_s,i + ρ g H_i (1 + τ),  ρ = SG × 998.2 kg/m³
 * Fails: SG or tolerance out of range; as `nozzlePressures` and `nozzleClasses`.
 * Warns: as those two. Cautions: unstated tolerance, the flange is not the casing, surge is left out.
 * Source: ANSI/HI 14.3, pumps in series; ISO 9906, table 8; ANSI/HI 14.6, default grades; flange standards as `flangeRating`.
 */
export function nozzleSeries(input: NozzleSeriesInput): Result<NozzleSeries> {
  const { specificGravity } = input;
  const tolerance = input.headTolerance === null ? defaultTolerance(input) : { tolerance: input.headTolerance };
  const headTolerance = tolerance.tolerance;
  return andThen(checkInputs(nozzleSeriesMethod, { specificGravity, headTolerance }), () => {
    const pumps = input.pumps.map((pump) => ({ ...pump, head: pump.head * (1 + headTolerance) }));
    const density = specificGravity * SPECIFIC_GRAVITY_REFERENCE;
    const classes = andThen(nozzlePressures({ ...input, pumps, density }), (nozzles) =>
      nozzleClasses({ ...input, nozzles }),
    );
    if (!classes.ok) return classes;
    const test = packageTest(classes.value);
    const findings = withoutRepeats([
      ...classes.findings,
      packageTestRemark(test),
      ...(input.headTolerance === null ? [toleranceAssumed(input)] : []),
      notTheCasing(),
      withoutSurge(),
    ]);
    return succeed({ nozzles: classes.value, packageTest: test, tolerance }, gravestFirst(findings));
  });
}
