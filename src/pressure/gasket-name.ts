import { nearestNames } from "../basis/nearest.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import { inBritish } from "../basis/spelling.ts";
import { GASKETS, type GasketName } from "../tables/gaskets.ts";

export const GASKET_NAMES = Object.keys(GASKETS) as readonly GasketName[];

/** Words of the trade; a hardness stands beside those of rubber. */
const RUBBER = /^(?:.*\b)?(?:rubber|epdm|nbr|nitrile|neoprene|cr|sbr|elastomer)(?:\b.*)?$/;
const FIBRE = /^(?:.*\b)?(?:fibre|cnaf|caf|non-asbestos|compressed sheet)(?:\b.*)?$/;
const SPIRAL = /^(?:.*\b)?(?:spiral|spiral[- ]wound|swg)(?:\b.*)?$/;
const HARDNESS = /\b([4-9]\d) ?(?:a|shore(?: a)?|°?sh)?\b/;
const HARD = 75;

/**
 * The gasket a text names: its own name, or "EPDM", "NBR 60 A", "fibre", "spiral wound". Rubber without a hardness is
 * taken as the harder one, which asks for more load.
 * Fails: `name-unknown` with the names.
 * Warns: what a name of the trade is taken as.
 */
export function gasketNamed(text: string, subject = "gasket"): Result<GasketName> {
  const given = text.trim();
  const words = inBritish(given.slice(0, 100).toLowerCase()).replace(/\s+/g, " ");
  const own = GASKET_NAMES.find((name) => name.toLowerCase() === words);
  if (own !== undefined) return succeed(own);
  const taken = takenAs(words);
  if (taken !== undefined) {
    return succeed(taken, [{ code: "gasket-taken-as", kind: "check", subject, given, facts: { gasket: taken } }]);
  }
  const near = nearestNames(words, GASKET_NAMES);
  const suggestions = (near.length > 0 ? near : GASKET_NAMES).map((name) => `"${name}"`);
  return fail([{ code: "name-unknown", kind: "error", subject, given, suggestions }]);
}

function takenAs(words: string): GasketName | undefined {
  if (SPIRAL.test(words)) return "spiral wound";
  // A steel core carries what plain rubber does not.
  if (/\bsteel|\bmetal/.test(words)) return undefined;
  if (FIBRE.test(words)) return "fibre 1/16 in";
  if (!RUBBER.test(words)) return undefined;
  const hardness = HARDNESS.exec(words)?.[1];
  return hardness !== undefined && Number(hardness) < HARD ? "rubber below 75 A" : "rubber 75 A or harder";
}
