import { nearestNames } from "../basis/nearest.ts";
import { type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { inchesOf } from "../pipework/nominal-size.ts";
import { FLANGES_CLASS_150 } from "../tables/flange-dimensions-class-150.ts";
import type { FlangeClassName, RatingSystem } from "../tables/flange-rating-table.ts";
import type { ClassSeries } from "../tables/pressure-materials.ts";
import { type FlangeSize, flangeSizeNamed } from "./flange-size.ts";

export interface FlangeClass {
  readonly name: FlangeClassName;
  readonly series: ClassSeries;
  /** Where the text states one. Grey iron is rated by size. */
  readonly size?: FlangeSize;
}

/** Lowest first in each series. */
export const FLANGE_CLASS_NAMES: readonly FlangeClassName[] = [
  "Class 125",
  "Class 150",
  "Class 250",
  "Class 300",
  "PN6",
  "PN10",
  "PN16",
  "PN25",
  "PN40",
];

/** Metric names that older editions gave the ASME classes. */
const METRIC_NAMES: Readonly<Record<string, FlangeClassName>> = { PN20: "Class 150", PN50: "Class 300" };

const CLASS =
  /^(?:asme |ansi )?(?:class|cl\.?|#)? ?(\d{1,5}) ?(#|lbs?\.?(?![a-z])|pounds?(?![a-z]))?(?:[ ,;]+(\S.*))?$/;
const PN = /^pn ?(\d{1,5})(?:[ ,;]+(\S.*))?$/;
const POUND_MARK = /^#/;

const NOT_COVERED = "look to the standards for classes above Class 300 and PN40, which are not covered here";

/**
 * The flange class a text names: "150", "Class 150", "PN16", with a size where one is stated: "125 NPS 16".
 * Fails: `name-unknown` with the known classes or sizes.
 * Warns: cautions on "150 lb" and "150#" (a designation) and on PN20 and PN50 (older metric names).
 */
export function flangeClassNamed(text: string, system: RatingSystem, subject = "class"): Result<FlangeClass> {
  const written = text.slice(0, 100).trim().toLowerCase().replace(/\s+/g, " ");
  const byPn = PN.exec(written);
  const byClass = byPn === null ? CLASS.exec(written) : null;
  const [digits, pounds, sizeText] =
    byPn === null ? [byClass?.[1], byClass?.[2], byClass?.[3]] : [byPn[1], undefined, byPn[2]];
  if (digits === undefined) return unknown(text, subject);
  const wanted = byPn === null ? `Class ${Number(digits)}` : `PN${Number(digits)}`;
  const metric = METRIC_NAMES[wanted];
  const name = metric ?? FLANGE_CLASS_NAMES.find((known) => known === wanted);
  if (name === undefined) return unknown(text, subject);
  const size = sizeText === undefined ? undefined : flangeSizeNamed(sizeText, system);
  if (sizeText !== undefined && size === undefined) return unknown(text, subject);
  if (size !== undefined && !STANDARD_SIZES.has(size.inches)) return notStandard(sizeText as string, subject);
  const series: ClassSeries = name.startsWith("PN") ? "PN" : "class";
  const findings: Finding[] = [];
  const given = text.trim();
  const facts = { name };
  if (pounds !== undefined || POUND_MARK.test(written)) {
    findings.push({ code: "class-is-a-designation", kind: "check", subject, given, facts });
  }
  if (metric !== undefined) findings.push({ code: "class-by-metric-name", kind: "check", subject, given, facts });
  return succeed({ name, series, ...(size === undefined ? {} : { size }) }, findings);
}

/** Sizes of ASME B16.5, NPS 1/2 to 24, which those of the iron flanges are among. */
const STANDARD_SIZES = new Set(FLANGES_CLASS_150.map(({ nps }) => inchesOf(nps)));

function notStandard(given: string, subject: string): Result<never> {
  const suggestions = FLANGES_CLASS_150.map(({ nps }) => `NPS ${nps}`);
  return fail([{ code: "name-unknown", kind: "error", subject: `size of ${subject}`, given, suggestions }]);
}

function unknown(text: string, subject: string): Result<never> {
  const near = nearestNames(text.slice(0, 100), FLANGE_CLASS_NAMES);
  const suggestions = (near.length > 0 ? near : FLANGE_CLASS_NAMES).map((name) => `"${name}"`);
  return fail([
    { code: "name-unknown", kind: "error", subject, given: text.trim(), suggestions, otherwise: NOT_COVERED },
  ]);
}
