import type { Quantity } from "../basis/quantities.ts";
import { readNumber, readQuantity } from "../basis/quantity-text.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { Liquid } from "../liquid/liquid.ts";
import { liquidNamed } from "../liquid/liquid-name.ts";
import { slurryLiquid } from "./slurry-liquid.ts";

export const SLURRY_EXAMPLE = "water with solids 25 %, SG 2.65, d50 0.4 mm";

type Figure = "solidsByWeight" | "solidsByVolume" | "solidsSG" | "mixtureSG" | "medianSize" | "coarseSize" | "fines";

interface Reading {
  readonly figure: Figure;
  readonly pattern: RegExp;
  readonly quantity: Quantity;
  readonly name: string;
}

/** What may be said of the solids, the narrower words first. */
const READINGS: readonly Reading[] = [
  { figure: "solidsByVolume", pattern: /^(\S.*?%) by volume$/i, quantity: "percent", name: "solids by volume" },
  { figure: "solidsByWeight", pattern: /^(\S.*?%)(?: by weight)?$/i, quantity: "percent", name: "solids by weight" },
  { figure: "mixtureSG", pattern: /^slurry SG (\S+)$/i, quantity: "ratio", name: "slurry SG" },
  { figure: "solidsSG", pattern: /^SG (\S+)$/i, quantity: "ratio", name: "solids SG" },
  { figure: "medianSize", pattern: /^d50 (\S.*)$/i, quantity: "size", name: "d50" },
  { figure: "coarseSize", pattern: /^d85 (\S.*)$/i, quantity: "size", name: "d85" },
];
const FINES: Reading = { figure: "fines", pattern: /^fines (\S.*%)$/i, quantity: "percent", name: "fines" };

const WITH_SOLIDS = /^(.*?)\s+with solids:?\s+(\S.*)$/i;

/**
 * The liquid as pumped that a text names: one of `liquidNamed`, or such a one “with solids” and what is known of them,
 * with commas between: "water with solids 25 %, SG 2.65, d50 0.4 mm". The share is by weight unless it says by volume;
 * "slurry SG 1.2" may stand for one of the two others, "d85" and "fines" may follow.
 * Fails: liquid-part-unread, liquid-stated-twice; as `liquidNamed`, `readQuantity` and `slurryLiquid`.
 * Warns: as these.
 */
export function pumpedLiquidNamed(text: string, subject = "liquid"): Result<Liquid> {
  const parts = WITH_SOLIDS.exec(text.trim().replace(/\s+/g, " "));
  if (parts === null) return liquidNamed(text, subject);
  const [name, carrier, solids] = parts as unknown as readonly [string, string, string];
  return andThen(liquidNamed(carrier, subject), (liquid) =>
    andThen(readSolids(solids, subject), ({ medianSize, coarseSize, fines, ...composition }) =>
      slurryLiquid(liquid, name, {
        composition,
        medianSize: medianSize ?? null,
        coarseSize: coarseSize ?? null,
        fines: fines ?? 0,
      }),
    ),
  );
}

function readSolids(text: string, subject: string): Result<{ readonly [F in Figure]?: number }> {
  const figures: { [F in Figure]?: number } = {};
  const findings: Finding[] = [];
  // A comma between digits is a decimal sign.
  for (const part of text.split(/;|,(?!\d)/).map((one) => one.trim())) {
    const reading = [FINES, ...READINGS].find(({ pattern }) => pattern.test(part));
    if (reading === undefined) {
      const suggestions = [SLURRY_EXAMPLE];
      return fail([{ code: "liquid-part-unread", kind: "error", subject, given: part, suggestions }]);
    }
    const { figure, pattern, quantity, name } = reading;
    if (figures[figure] !== undefined) {
      const facts = { what: name };
      return fail([{ code: "liquid-stated-twice", kind: "error", subject, given: text, facts, suggestions: [] }]);
    }
    const written = (pattern.exec(part) as unknown as readonly string[])[1] as string;
    const read = quantity === "ratio" ? readNumber(written, name) : readQuantity(written, quantity, name);
    if (!read.ok) return read;
    findings.push(...read.findings);
    figures[figure] = read.value;
  }
  return succeed(figures, findings);
}
