import { fail, type Result, succeed } from "../basis/result.ts";
import { nominalDiameter, nominalInches } from "../pipework/nominal-size.ts";
import type { RatingSystem } from "../tables/flange-rating-table.ts";

/** A nominal size of pipe, by inches and by DN. */
export interface FlangeSize {
  readonly inches: number;
  /** Nothing where the size has no DN. */
  readonly dn?: number;
}

const MIXED = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/;

/**
 * The nominal size a text names: "NPS 6", "6in", "2-1/2", "DN150". A bare number is inches where the reader thinks in
 * inches, and DN otherwise. Nothing where it is no size.
 */
export function flangeSizeNamed(text: string, system: RatingSystem): FlangeSize | undefined {
  const written = text.trim().toLowerCase().replace(/[”″]/g, '"').replace(/\s+/g, " ");
  const nps = /^nps ?(.+)$/.exec(written)?.[1] ?? /^(.+?) ?(?:in\.?|inch|inches|")$/.exec(written)?.[1];
  if (nps !== undefined) return ofInches(nps);
  const dn = /^dn ?(.+)$/.exec(written)?.[1] ?? /^(.+?) ?mm$/.exec(written)?.[1];
  if (dn !== undefined) return ofDn(dn);
  return system === "US" || MIXED.test(written) ? ofInches(written) : ofDn(written);
}

function ofInches(text: string): FlangeSize | undefined {
  const mixed = MIXED.exec(text);
  const inches = mixed === null ? plainNumber(text) : Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]);
  if (inches === undefined || !(inches > 0 && inches < 1000)) return undefined;
  const dn = nominalDiameter(inches);
  return dn === undefined ? { inches } : { inches, dn };
}

function ofDn(text: string): FlangeSize | undefined {
  const dn = plainNumber(text);
  const inches = dn === undefined ? undefined : nominalInches(dn);
  return dn === undefined || inches === undefined ? undefined : { inches, dn };
}

function plainNumber(text: string): number | undefined {
  return /^\d+(?:\.\d+)?$/.test(text) ? Number(text) : undefined;
}

/**
 * The nominal size a text names, in inches and DN.
 * Fails: `name-unknown` with what would do.
 */
export function flangeSizeRead(text: string, system: RatingSystem, subject: string): Result<FlangeSize> {
  const size = flangeSizeNamed(text, system);
  if (size !== undefined) return succeed(size);
  const suggestions = ["NPS 6", "6in", "DN150"];
  return fail([{ code: "name-unknown", kind: "error", subject, given: text, suggestions }]);
}
