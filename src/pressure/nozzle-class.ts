import { andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { FlangeClassName, RatingSystem } from "../tables/flange-rating-table.ts";
import { lowestFlangeClass } from "./flange-check.ts";
import type { FlangeClass } from "./flange-class.ts";
import { flangeRating } from "./flange-rating.ts";
import { flangeTestPressure } from "./hydrostatic-test.ts";
import type { NozzlePressure } from "./nozzle-pressure.ts";
import type { PressureMaterial } from "./pressure-material.ts";
import { exceeds } from "./trade-figure.ts";

/** A part under the pressure of a nozzle and what it may carry, Pa gauge: "casing", "shaft seal", "suction hose". */
export interface PressurePart {
  readonly name: string;
  readonly workingPressure: number;
}

export interface NozzleClassesInput {
  readonly nozzles: readonly NozzlePressure[];
  readonly material: PressureMaterial;
  /** Class the pumps are offered with. */
  readonly flangeClass: FlangeClass;
  /** K; null for ambient. */
  readonly temperature: number | null;
  readonly system: RatingSystem;
  /** Other parts by the name of the pump; a part of "" stands for every pump. */
  readonly parts?: Readonly<Record<string, readonly PressurePart[]>>;
}

export interface NozzleClass extends NozzlePressure {
  /** Part of the governing pressure left, (limit − pressure)/limit. Negative where the weakest part does not hold. */
  readonly margin: number;
  /** Name of the weakest part: "flange" or one of the parts. */
  readonly governedBy: string;
  /** What the weakest part may carry, Pa gauge. */
  readonly limit: number;
  /** Lowest class whose rating holds the pressure; missing where none covered does. */
  readonly classNeeded?: FlangeClassName;
  /** Whether the offered class falls short. */
  readonly needsNextClass: boolean;
}

export interface NozzleClasses {
  readonly nozzles: readonly NozzleClass[];
  /** First nozzle, in the order of flow, whose pressure is above the rating of the offered class. */
  readonly firstBeyond?: NozzleClass;
  /** Rating of the offered class, Pa gauge, and the hydrostatic test of its joints. */
  readonly rating: number;
  readonly testPressure: number;
}

/** The part that may carry least, the flange among them. The first named of equals. */
export function weakestPart(flangeRatingPressure: number, parts: readonly PressurePart[]): PressurePart {
  return parts.reduce((weakest, part) => (part.workingPressure < weakest.workingPressure ? part : weakest), {
    name: "flange",
    workingPressure: flangeRatingPressure,
  });
}

/**
 * The flange class each nozzle needs, the margin of the offered one, and the weakest part at each nozzle.
 *
 * Fails as `flangeRating` does. Cautions that the casing and the seal of a later pump stand under the discharge pressure
 * of the one before it.
 */
export function nozzleClasses(input: NozzleClassesInput): Result<NozzleClasses> {
  const { nozzles, material, flangeClass, temperature, system, parts = {} } = input;
  const bad = Object.values(parts)
    .flat()
    .find(({ workingPressure }) => !(workingPressure > 0 && Number.isFinite(workingPressure)));
  if (bad !== undefined) return fail([partWithoutPressure(bad)]);
  return andThen(flangeRating({ material, flangeClass, temperature, system }), (rating) => {
    const classes = nozzles.map((nozzle): NozzleClass => {
      const weakest = weakestPart(rating.pressure, [...(parts[""] ?? []), ...(parts[nozzle.pump] ?? [])]);
      const pressure = Math.max(nozzle.greatest, 0);
      const needed = lowestFlangeClass({ material, pressure, temperature, system });
      return {
        ...nozzle,
        margin: (weakest.workingPressure - pressure) / weakest.workingPressure,
        governedBy: weakest.name,
        limit: weakest.workingPressure,
        ...(needed.ok ? { classNeeded: needed.value.flangeClass } : {}),
        needsNextClass: exceeds(pressure, rating.pressure),
      };
    });
    const firstBeyond = classes.find(({ needsNextClass }) => needsNextClass);
    return succeed(
      {
        nozzles: classes,
        ...(firstBeyond === undefined ? {} : { firstBeyond }),
        rating: rating.pressure,
        testPressure: flangeTestPressure(rating),
      },
      laterStages(nozzles),
    );
  });
}

function partWithoutPressure({ name, workingPressure }: PressurePart): Finding {
  const subject = `${name}: working pressure`;
  if (!Number.isFinite(workingPressure)) return { code: "not-a-number", severity: "error", subject };
  const quantity = "gaugePressure";
  const found = { quantity, value: workingPressure } as const;
  return { code: "out-of-range", severity: "error", subject, found, limit: { quantity, value: 0, side: "above" } };
}

function laterStages(nozzles: readonly NozzlePressure[]): readonly Finding[] {
  const pumps = new Set(nozzles.map(({ pump }) => pump));
  return pumps.size > 1 ? [laterStageSuction("later pumps")] : [];
}

/** Caution for a pump that another one feeds: its seal and casing see the discharge pressure of that one. */
export function laterStageSuction(subject: string): Finding {
  return {
    code: "later-stage-suction",
    severity: "caution",
    subject,
    cites: { source: "practice", at: "pumps in series: seal, casing and hoses at the suction pressure" },
  };
}
