import { andThen, type Result, succeed } from "../basis/result.ts";
import { OTHER_DRILLINGS, type OtherDrilling } from "../tables/flange-drillings.ts";
import type { RatingSystem } from "../tables/flange-rating-table.ts";
import { FLANGE_CLASS_NAMES, type FlangeClass, flangeClassNamed } from "./flange-class.ts";

/** What a flange is drilled to: a class that ratings are held for, or a table of drilling alone. */
export type FlangeDrilling = FlangeClass | { readonly name: OtherDrilling; readonly series: "drilling" };

export const FLANGE_DRILLING_NAMES: readonly string[] = [...FLANGE_CLASS_NAMES, ...OTHER_DRILLINGS];

/** The texts of the tables of drilling, without spaces, strokes and points. */
const SPELLINGS: readonly (readonly [RegExp, OtherDrilling])[] = [
  [/^(?:as2129)?(?:table)?d$/, "AS 2129 Table D"],
  [/^(?:as2129)?(?:table)?e$/, "AS 2129 Table E"],
  [/^as(?:nzs)?4087(?:pn)?16$/, "AS 4087 PN16"],
  [/^(?:jisb?)?(?:2220)?10k$/, "JIS 10K"],
];

/**
 * The drilling a text names: a class, as `flangeClassNamed`, or "AS 2129 Table E", "AS 4087 PN16", "JIS 10K".
 * Fails: as `flangeClassNamed`.
 */
export function flangeDrillingNamed(text: string, system: RatingSystem, subject = "class"): Result<FlangeDrilling> {
  const bare = text
    .slice(0, 100)
    .toLowerCase()
    .replace(/[\s/.-]/g, "");
  const other = SPELLINGS.find(([spelling]) => spelling.test(bare));
  if (other !== undefined) return succeed({ name: other[1], series: "drilling" });
  return andThen<FlangeClass, FlangeDrilling>(flangeClassNamed(text, system, subject), (read) => succeed(read));
}
