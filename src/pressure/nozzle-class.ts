import type { Citation } from "../basis/citation.ts";
import { all, amount, andThen, type Finding, fail, type Result, succeed, withoutRepeats } from "../basis/result.ts";
import type { FlangeClassName, RatingSystem } from "../tables/flange-rating-table.ts";
import type { PressureMaterial } from "../tables/pressure-materials.ts";
import { CASING_RULE, lowestFlangeClass, nearlyUsed } from "./flange-check.ts";
import type { FlangeClass } from "./flange-class.ts";
import { classesOf, type FlangeRating, flangeRating, materialNotRated } from "./flange-rating.ts";
import { flangeTestPressure } from "./hydrostatic-test.ts";
import type { NozzlePressure, PressurePart } from "./nozzle-pressure.ts";
import { isRated } from "./pressure-material.ts";
import { exceeds, type TradeVerdict, tradeFigureRemarks, tradeVerdict } from "./trade-figure.ts";

export interface NozzleClassesInput {
  /** In the order of flow. */
  readonly nozzles: readonly NozzlePressure[];
  readonly material: PressureMaterial;
  /** Class the pumps are offered with; left out where none is yet. */
  readonly flangeClass?: FlangeClass;
  /** K; null for ambient. */
  readonly temperature: number | null;
  readonly system: RatingSystem;
}

/** What the trade figure of a class makes of a nozzle. */
export interface TradeCheck {
  readonly verdict: TradeVerdict;
  readonly flangeClass: FlangeClassName;
}

export interface NozzleClass extends NozzlePressure {
  /** Lowest class whose rating holds the pressure; missing where none covered does. */
  readonly classNeeded?: FlangeClassName;
  /** Highest class that is covered; missing where no standard held here rates the material. */
  readonly highestClass?: FlangeClassName;
  readonly material: PressureMaterial;
  readonly flangeClass?: FlangeClass;
  /** Rating of the offered class, Pa gauge, that of cold metal, and the greatest test that its standard allows the joint. */
  readonly rating?: number;
  readonly coldRating?: number;
  readonly testPressure?: number;
  /** The weakest part, "flange" or one of the others, and what it may carry, Pa gauge; missing where nothing is known. */
  readonly weakest?: PressurePart;
  /** Part of that limit left, (limit − pressure)/limit. Negative where the weakest part does not hold. */
  readonly margin?: number;
  /** The first nozzle in the order of flow that needs a class above all before it and above the one offered. */
  readonly isFirstToNeed: boolean;
  /** Missing where the trade has no figure for the class. */
  readonly trade?: TradeCheck;
}

/** The part that may carry least; the first named of equals. Nothing where there is none. */
export function weakestPart(parts: readonly PressurePart[]): PressurePart | undefined {
  return parts.reduce<PressurePart | undefined>(
    (weakest, part) => (weakest === undefined || part.workingPressure < weakest.workingPressure ? part : weakest),
    undefined,
  );
}

/** A nozzle with all that is looked up for it. */
interface RatedNozzle {
  readonly nozzle: NozzlePressure;
  readonly pressure: number;
  readonly material: PressureMaterial;
  readonly flangeClass: FlangeClass | undefined;
  readonly offered: FlangeRating | undefined;
  /** Every class of the series with its rating, lowest first. */
  readonly ladder: readonly FlangeRating[];
  readonly needed: FlangeRating | undefined;
}

/**
 * Flange class each nozzle needs, margin of the offered one, weakest part, and the first nozzle to need the next class.
 * A material that no standard held here rates has no class and no rating: the casing alone decides, with a caution.
 * Fails: as `flangeRating`; a size beside the class unlike the pump's own.
 * Warns: first nozzle above the offered class and above each other part; where the trade figure would have passed one.
 * Cautions: trade figure, above 95 % of a rating, test pressure, later stages' suction, as `flangeRating`.
 * Source: as `flangeRating`.
 */
export function nozzleClasses(input: NozzleClassesInput): Result<readonly NozzleClass[]> {
  return andThen(all(input.nozzles.map((nozzle) => ratedNozzle(nozzle, input))), (rated) => {
    const isFirst = firstsToNeed(rated);
    const classes = rated.map((one, i) => nozzleClass(one, isFirst[i] === true));
    const firsts = rated.filter((_, i) => isFirst[i]);
    return succeed(
      classes,
      withoutRepeats([
        ...firsts.map(firstToNeed),
        ...partsExceeded(classes),
        ...nearlyUsedFirst(rated),
        ...tradeRemarks(rated),
        ...testPressures(rated),
        ...laterStages(input.nozzles),
      ]),
    );
  });
}

function ratedNozzle(nozzle: NozzlePressure, input: NozzleClassesInput): Result<RatedNozzle> {
  const { temperature, system } = input;
  const { material = input.material, flangeClass = input.flangeClass } = nozzle;
  const beside = flangeClass?.size;
  const size = nozzle.size ?? beside;
  if (size !== undefined && beside !== undefined && size.inches !== beside.inches) {
    return fail([sizesDiffer(nozzle, `NPS ${size.inches}`, `NPS ${beside.inches}`)]);
  }
  const sized = size === undefined ? {} : { size };
  const pressure = Math.max(nozzle.greatest, 0);
  if (!isRated(material)) {
    const unrated = { nozzle, pressure, material, flangeClass, offered: undefined, ladder: [], needed: undefined };
    return succeed(unrated, [materialNotRated(material, "check")]);
  }
  const offered =
    flangeClass === undefined
      ? succeed(undefined)
      : flangeRating({ material, flangeClass: { ...flangeClass, ...sized }, temperature, system });
  return andThen<FlangeRating | undefined, RatedNozzle>(offered, (rating) => {
    const series = flangeClass?.series;
    const ladder = classesOf(material, series).flatMap((known) => {
      const rated = flangeRating({ material, flangeClass: { ...known, ...sized }, temperature, system });
      return rated.ok ? [rated.value] : [];
    });
    const lowest = lowestFlangeClass({ material, pressure, temperature, system, ...(series && { series }), ...sized });
    if (!lowest.ok && lowest.findings[0]?.code !== "beyond-highest-class") return lowest;
    const needed = lowest.ok ? lowest.value : undefined;
    return succeed(
      { nozzle, pressure, material, flangeClass, offered: rating, ladder, needed },
      lowest.ok ? ratingRemarks(lowest.findings) : [],
    );
  });
}

/** Remarks of one nozzle's rating that hold for all alike; the others are said with the nozzle they belong to. */
function ratingRemarks(findings: readonly Finding[]): readonly Finding[] {
  return findings.filter(({ code }) => code !== "rating-nearly-used" && !code.startsWith("trade-figure"));
}

function sizesDiffer({ pump, side }: NozzlePressure, given: string, other: string): Finding {
  const subject = `${side} flange of ${pump}`;
  return { code: "flange-size-twice", kind: "error", subject, given, facts: { other } };
}

/** Place of a class among those of its series; beyond all of them where none holds. */
function rankOf({ ladder }: RatedNozzle, name: FlangeClassName | undefined): number {
  const at = ladder.findIndex(({ flangeClass }) => flangeClass === name);
  return at < 0 ? Number.POSITIVE_INFINITY : at;
}

function firstsToNeed(rated: readonly RatedNozzle[]): readonly boolean[] {
  let reached = 0;
  return rated.map((one) => {
    if (one.ladder.length === 0) return false;
    const { offered } = one;
    const rank = rankOf(one, one.needed?.flangeClass);
    if (rank <= Math.max(reached, offered === undefined ? 0 : rankOf(one, offered.flangeClass))) return false;
    reached = rank;
    return true;
  });
}

function nozzleClass(rated: RatedNozzle, isFirstToNeed: boolean): NozzleClass {
  const { nozzle, pressure, material, flangeClass, offered, ladder, needed } = rated;
  const flange = offered && { name: "flange", workingPressure: offered.pressure };
  const weakest = weakestPart(flange === undefined ? nozzle.parts : [flange, ...nozzle.parts]);
  const trade = tradeCheck(pressure, judged({ ladder, offered, needed }));
  const highest = ladder.at(-1);
  return {
    ...nozzle,
    material,
    ...(flangeClass && { flangeClass }),
    ...(needed && { classNeeded: needed.flangeClass }),
    ...(highest && { highestClass: highest.flangeClass }),
    ...(offered && {
      rating: offered.pressure,
      coldRating: offered.coldPressure,
      testPressure: flangeTestPressure(offered),
    }),
    ...(weakest && { weakest, margin: (weakest.workingPressure - pressure) / weakest.workingPressure }),
    isFirstToNeed,
    ...(trade && { trade }),
  };
}

/** The classes a trade figure is asked of: the offered one, otherwise each up to the one needed. */
function judged({
  ladder,
  offered,
  needed,
}: Pick<RatedNozzle, "ladder" | "offered" | "needed">): readonly FlangeRating[] {
  if (offered !== undefined) return [offered];
  if (needed === undefined) return ladder;
  return ladder.slice(0, ladder.findIndex(({ flangeClass }) => flangeClass === needed.flangeClass) + 1);
}

/** The first class whose trade figure disagrees; the last where none does. */
function tradeCheck(pressure: number, ratings: readonly FlangeRating[]): TradeCheck | undefined {
  const checks = ratings.flatMap((rating) => {
    const verdict = tradeVerdict(pressure, rating);
    return verdict === undefined ? [] : [{ verdict, flangeClass: rating.flangeClass }];
  });
  return checks.find(({ verdict }) => verdict !== "agrees") ?? checks.at(-1);
}

/** "discharge of stage 2" */
function placeOf({ pump, side }: NozzlePressure): string {
  return `${side} of ${pump}`;
}

/** A warning where the class offered does not hold; a caution where none is offered and the classes merely part here. */
function firstToNeed({ nozzle, pressure, offered, ladder, needed }: RatedNozzle): Finding {
  const highest = ladder.at(-1) as FlangeRating;
  const facts = {
    needed: needed?.flangeClass ?? `a class beyond ${highest.flangeClass}, the highest covered`,
    ...(offered && { offered: offered.flangeClass }),
    standard: highest.standard,
    case: nozzle.governs,
  };
  const found = amount("gaugePressure", pressure);
  const base = { code: "first-nozzle-beyond", subject: placeOf(nozzle), found, facts, cites: highest.cites } as const;
  if (offered === undefined) return { ...base, kind: needed === undefined ? "limit" : "check" };
  const limit = { quantity: "gaugePressure", value: offered.pressure, side: "at most" } as const;
  // With its check valves tight it would hold.
  const isByFailure = !exceeds(normalPressure(nozzle), offered.pressure);
  return { ...base, kind: isByFailure ? "check" : "limit", limit };
}

/** Running or standing, whichever is the greater, Pa gauge: with its check valves as they should be. */
export function normalPressure({ running, standing = running }: NozzlePressure): number {
  return Math.max(running, standing);
}

/** The first nozzle above the working pressure of each part besides the flange. */
function partsExceeded(nozzles: readonly NozzleClass[]): readonly Finding[] {
  const seen = new Set<string>();
  return nozzles.flatMap((nozzle) =>
    nozzle.parts.flatMap(({ name, workingPressure }): readonly Finding[] => {
      if (!exceeds(nozzle.greatest, workingPressure) || seen.has(name)) return [];
      seen.add(name);
      return [
        {
          code: "part-pressure-exceeded",
          kind: exceeds(normalPressure(nozzle), workingPressure) ? "limit" : "check",
          subject: placeOf(nozzle),
          found: amount("gaugePressure", nozzle.greatest),
          limit: { quantity: "gaugePressure", value: workingPressure, side: "at most" },
          facts: { part: name, case: nozzle.governs },
          cites: CASING_RULE,
        },
      ];
    }),
  );
}

/** The first nozzle that uses nearly all of the rating it is held against. */
function nearlyUsedFirst(rated: readonly RatedNozzle[]): readonly Finding[] {
  for (const { nozzle, pressure, offered, needed } of rated) {
    const held = offered ?? needed;
    if (held === undefined || exceeds(pressure, held.pressure)) continue;
    const [found] = nearlyUsed(pressure, held);
    if (found !== undefined) return [{ ...found, subject: `pressure at the ${placeOf(nozzle)}` }];
  }
  return [];
}

/** Each trade figure once beside its standard, and the first nozzle where the two part. */
function tradeRemarks(rated: readonly RatedNozzle[]): readonly Finding[] {
  const seen = new Set<string>();
  const remarks = rated.flatMap((one) =>
    judged(one).flatMap((rating) => tradeFigureRemarks(one.pressure, rating, placeOf(one.nozzle))),
  );
  return remarks.filter((remark) => {
    const isEqual = remark.code === "trade-figure-compared" && remark.facts.way === "equal";
    const key = `${remark.code} ${remark.facts.flangeClass}`;
    if (isEqual || seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

const TEST_RULE: Citation = { source: "asme-b16.5", at: "2.6, hydrostatic test", unverified: true };

function testPressures(rated: readonly RatedNozzle[]): readonly Finding[] {
  return rated.flatMap(({ offered }): readonly Finding[] => {
    if (offered === undefined) return [];
    const found = amount("gaugePressure", flangeTestPressure(offered));
    const facts = { flangeClass: offered.flangeClass };
    return [{ code: "flange-test-pressure", kind: "check", subject: "flanged joint", found, facts, cites: TEST_RULE }];
  });
}

function laterStages(nozzles: readonly NozzlePressure[]): readonly Finding[] {
  return nozzles.length > 2 ? [laterStageSuction("later pumps")] : [];
}

/** Caution for a pump that another one feeds: its seal and casing see the discharge pressure of that one. */
export function laterStageSuction(subject: string): Finding {
  return {
    code: "later-stage-suction",
    kind: "check",
    subject,
    cites: { source: "practice", at: "pumps in series: seal, casing and hoses at the suction pressure" },
  };
}
