import { type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { inchesOf } from "../pipework/nominal-size.ts";
import { FLANGES_CLASS_150 } from "../tables/flange-dimensions-class-150.ts";
import type { RatingSystem } from "../tables/flange-rating-table.ts";

/** A nominal size of flange, by inches and by DN. */
export interface FlangeSize {
  readonly inches: number;
  readonly dn: number;
  /** As the table of sizes in inches has it; nothing where a standard has the DN alone. */
  readonly nps?: string;
}

/** Every size that a flange standard held here has: NPS 1/2 to 24, which are DN15 to 600, and two of AS 4087 in DN alone. */
const SIZES: readonly FlangeSize[] = [
  ...FLANGES_CLASS_150.map(({ nps, dn }) => ({ inches: inchesOf(nps), dn, nps })),
  ...[225, 375].map((dn) => ({ inches: dn / 25, dn })),
];

/** How each is named, those by inches first. */
export const FLANGE_SIZE_NAMES: readonly string[] = [
  ...SIZES.flatMap(({ nps }) => (nps === undefined ? [] : [`NPS ${nps}`])),
  ...SIZES.map(({ dn }) => dn)
    .sort((a, b) => a - b)
    .map((dn) => `DN${dn}`),
];

const MIXED = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/;

/** Fractions with a sign of their own, as they are pasted. */
const FRACTION_SIGNS: Readonly<Record<string, string>> = { "¼": "1/4", "½": "1/2", "¾": "3/4" };

/** Which of the two a text means, and the number or mixed number that it says. */
function written(given: string, system: RatingSystem): { readonly named: "NPS" | "DN"; readonly number: string } {
  const text = given
    .slice(0, 100)
    .toLowerCase()
    .replace(/[”″]/g, '"')
    .replace(/[¼½¾]/g, (sign) => ` ${FRACTION_SIGNS[sign]}`)
    .replace(/\s+/g, " ")
    .trim();
  const nps = /^nps ?(.+)$/.exec(text)?.[1] ?? /^(.+?) ?(?:in\.?|inch|inches|")$/.exec(text)?.[1];
  if (nps !== undefined) return { named: "NPS", number: nps };
  const dn = /^dn ?(.+)$/.exec(text)?.[1] ?? /^(.+?) ?mm$/.exec(text)?.[1];
  if (dn !== undefined) return { named: "DN", number: dn };
  return { named: system === "US" || MIXED.test(text) ? "NPS" : "DN", number: text };
}

/**
 * The flange size a text names: "NPS 6", "6in", "2-1/2", "DN150". A bare number is inches where the reader thinks in
 * inches, and DN otherwise. Nothing where no flange standard held here has the size.
 */
export function flangeSizeNamed(text: string, system: RatingSystem): FlangeSize | undefined {
  const { named, number } = written(text, system);
  const value = numberOf(number);
  if (value === undefined) return undefined;
  return named === "DN"
    ? SIZES.find(({ dn }) => dn === value)
    : SIZES.find(({ inches, nps }) => inches === value && nps !== undefined);
}

function numberOf(text: string): number | undefined {
  const mixed = MIXED.exec(text);
  if (mixed !== null) return Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]);
  return /^\d+(?:\.\d+)?$/.test(text) ? Number(text) : undefined;
}

/**
 * The flange size a text names, in inches and DN: the one reader of sizes for the duty, every table and every function.
 * Fails: `flange-size-unknown` with the sizes there are.
 */
export function flangeSizeRead(text: string, system: RatingSystem, subject: string): Result<FlangeSize> {
  const size = flangeSizeNamed(text, system);
  if (size !== undefined) return succeed(size);
  return fail([flangeSizeUnknown({ given: text, system, subject, sizes: SIZES })]);
}

/** That a standard has no flange of a size, with those it has, as the reader names them. */
export function flangeSizeUnknown(of: {
  readonly given: string;
  readonly system: RatingSystem;
  readonly subject: string;
  readonly sizes: readonly Pick<FlangeSize, "dn" | "nps">[];
  /** Where it is one standard that lacks the size. */
  readonly standard?: string;
}): Finding {
  const { given, system, subject, sizes, standard } = of;
  const { named, number } = written(given, system);
  const text = numberOf(number) === undefined ? given.trim() : `${named} ${number}`;
  const said = sizes.flatMap(({ dn, nps }) => (named === "DN" ? String(dn) : (nps ?? [])));
  return {
    code: "flange-size-unknown",
    kind: "error",
    subject,
    given: text,
    facts: { named, sizes: said.join(", "), ...(standard !== undefined && { standard }) },
  };
}

/**
 * A size as the reader of the other system would write it: "8" of NPS is "200" of DN, and back. A text that says which it
 * is, or is no size, stays; a size without a pair gets its own name.
 */
export function flangeSizeFor(text: string, from: RatingSystem, to: RatingSystem): string {
  if (from === to || flangeSizeNamed(text, from) === flangeSizeNamed(text, to)) return text;
  const size = flangeSizeNamed(text, from);
  if (size === undefined) return text;
  return to === "US" ? (size.nps ?? `DN${size.dn}`) : String(size.dn);
}
