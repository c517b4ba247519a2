import { nearestNames } from "../basis/nearest.ts";
import { type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { FlangeClassName, RatingSystem } from "../tables/flange-rating-table.ts";
import type { ClassSeries } from "../tables/pressure-materials.ts";
import { type FlangeSize, flangeSizeFor, flangeSizeNamed, flangeSizeRead } from "./flange-size.ts";

/** What the gasket lies on: a raised face, or a face flat out to the rim. */
export type Facing = "raised" | "flat";

export interface FlangeClass {
  readonly name: FlangeClassName;
  readonly series: ClassSeries;
  /** Where the text states one. Grey iron is rated by size. */
  readonly size?: FlangeSize;
  /** Where the text states one: RF or FF. */
  readonly facing?: Facing;
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
  /^(?:asme |ansi |asa )?(?:class|cl\.?|#)? ?(\d{1,5})(?:\.0+)? ?(#|lbs?\.?(?![a-z])|pounds?(?![a-z]))? ?(rf|ff)?(?:[ ,;]+(\S.*))?$/;
const PN = /^pn ?(\d{1,5})(?:\.0+)? ?(rf|ff)?(?:[ ,;]+(\S.*))?$/;
const POUND_MARK = /^#/;
const FACINGS: Readonly<Record<string, Facing>> = { rf: "raised", ff: "flat" };

const NOT_COVERED = "look to the standards for classes above Class 300 and PN40, which are not covered here";

/**
 * The flange class a text names: "150", "Class 150", "150 RF", "ASA 150", "PN16", with a size where one is
 * stated: "125 NPS 16".
 * Fails: `name-unknown` with the known classes or sizes.
 * Warns: cautions on "150 lb" and "150#" (a designation) and on PN20 and PN50 (older metric names).
 */
export function flangeClassNamed(text: string, system: RatingSystem, subject = "class"): Result<FlangeClass> {
  const written = text.slice(0, 100).trim().toLowerCase().replace(/\s+/g, " ");
  const byPn = PN.exec(written);
  const byClass = byPn === null ? CLASS.exec(written) : null;
  const [digits, pounds, face, sizeText] =
    byPn === null ? (byClass?.slice(1) ?? []) : [byPn[1], undefined, byPn[2], byPn[3]];
  if (digits === undefined) return unknown(text, subject);
  const wanted = byPn === null ? `Class ${Number(digits)}` : `PN${Number(digits)}`;
  const metric = METRIC_NAMES[wanted];
  const name = metric ?? FLANGE_CLASS_NAMES.find((known) => known === wanted);
  if (name === undefined) return unknown(text, subject);
  const sized = sizeText === undefined ? succeed(undefined) : flangeSizeRead(sizeText, system, `size of ${subject}`);
  if (!sized.ok) return sized;
  const { value: size } = sized;
  const series: ClassSeries = name.startsWith("PN") ? "PN" : "class";
  const findings: Finding[] = [];
  const given = text.trim();
  const facts = { name };
  if (pounds !== undefined || POUND_MARK.test(written)) {
    findings.push({ code: "class-is-a-designation", kind: "check", subject, given, facts });
  }
  if (metric !== undefined) findings.push({ code: "class-by-metric-name", kind: "check", subject, given, facts });
  const facing = FACINGS[face ?? ""];
  return succeed({ name, series, ...(size && { size }), ...(facing && { facing }) }, findings);
}

/** A class as the reader of the other system would write it: the size beside it is NPS for the one and DN for the other. */
export function flangeClassFor(text: string, from: RatingSystem, to: RatingSystem): string {
  const read = flangeClassNamed(text, from);
  if (!read.ok || read.value.size === undefined) return text;
  const sized = /^(.*[ ,;])(\S+)$/.exec(text.trim());
  if (sized === null || /(?:nps|dn) *$/i.test(sized[1] as string)) return text;
  if (flangeSizeNamed(sized[2] as string, from) !== read.value.size) return text;
  return `${sized[1]}${flangeSizeFor(sized[2] as string, from, to)}`;
}

function unknown(text: string, subject: string): Result<never> {
  const near = nearestNames(text.slice(0, 100), FLANGE_CLASS_NAMES);
  const suggestions = (near.length > 0 ? near : FLANGE_CLASS_NAMES).map((name) => `"${name}"`);
  return fail([
    { code: "name-unknown", kind: "error", subject, given: text.trim(), suggestions, otherwise: NOT_COVERED },
  ]);
}
