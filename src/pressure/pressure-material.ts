import { nearestNames } from "../basis/nearest.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import { inBritish } from "../basis/spelling.ts";
import { PRESSURE_MATERIALS, type PressureMaterial } from "../tables/pressure-materials.ts";

/** Whether a flange standard held here rates the material in any class or PN. */
export function isRated({ groups }: PressureMaterial): boolean {
  return Object.keys(groups).length > 0;
}

/** Names a drop-down offers, and the lists suggest. */
export const PRESSURE_MATERIAL_NAMES: readonly string[] = PRESSURE_MATERIALS.map(({ name }) => name);

/** One way of writing: no case, spaces, hyphens or points, nor the words for a standards body or a grade. */
function tidy(text: string): string {
  return inBritish(text.toLowerCase())
    .replace(/\b(?:astm|asme|aisi|uns|grade|gr\.?|type|class|cl\.?|ss)\b/g, " ")
    .replace(/[\s._\-,/()]/g, "")
    .replace(/^sa(?=\d{3})/, "a")
    .replace(/^ss(?=3\d\d)|(?<=^3\d\dl?)ss$/, "");
}

const byName = new Map(
  PRESSURE_MATERIALS.flatMap((row) =>
    `${tidy(row.name)} ${row.also}`
      .trim()
      .split(" ")
      .map((name) => [name, row] as const),
  ),
);

/**
 * The material a text names: "ductile iron", "A536", "WCB", "CF8M".
 * Fails: `name-unknown` with the nearest names.
 */
export function pressureMaterialNamed(text: string, subject = "material"): Result<PressureMaterial> {
  // A group of the standard is 2.2 with its point; a bare 22 is no material.
  const isStray = /^\s*\d\s?\d?\s*$/.test(text);
  const found = isStray ? undefined : byName.get(tidy(text.slice(0, 100)));
  if (found !== undefined) return succeed(found);
  const near = nearestNames(text.slice(0, 100), PRESSURE_MATERIAL_NAMES);
  const suggestions = near.map((name) => `"${name}"`);
  const given = text.trim();
  if (near.length > 0) return fail([{ code: "name-unknown", kind: "error", subject, given, suggestions }]);
  return fail([{ code: "name-unknown", kind: "error", subject, given, otherwise: RATED }]);
}

/** Of what has no name near it, the ratings that there are. */
const RATED =
  'metals with a flange rating are "ductile iron", "grey iron", "carbon steel", "316", "duplex" and others that FLANGERATINGS lists';
