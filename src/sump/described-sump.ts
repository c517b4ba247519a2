import { readQuantity, splitAmount } from "../basis/quantity-text.ts";
import { all, andThen, fail, type Result, succeed } from "../basis/result.ts";
import { constantPlan, type SumpPlan } from "./sump-plan.ts";

export const SUMP_EXAMPLES = ["“180 ft²”", "“15 ft x 12 ft”", "“10 ft diameter”", "“dia 3 m”"] as const;

const SIDES = /^(.+?)\s*(?:x|×|by)\s*(\S.*)$/i;
const ROUND = /^(?:dia(?:m(?:eter)?)?\.?|ø)\s*(\S.*)$|^(\S.*?)\s*(?:dia(?:m(?:eter)?)?\.?|ø|round|circular)$/i;

/**
 * A sump of upright walls by its plan: an area, two sides or a diameter, each with its unit; the first side may leave its
 * unit to the second.
 * Fails: as `readQuantity`; sump-unreadable for a plan of nothing.
 */
export function sumpNamed(given: string, subject: string): Result<SumpPlan> {
  const text = given.trim();
  const round = ROUND.exec(text);
  const sides = SIDES.exec(text);
  const area =
    round !== null
      ? andThen(readQuantity((round[1] ?? round[2]) as string, "length", subject), (across) =>
          succeed((Math.PI / 4) * across * across),
        )
      : sides !== null
        ? sidesOf(sides[1] as string, sides[2] as string, subject)
        : readQuantity(text, "planArea", subject);
  return andThen(area, (found) =>
    found > 0
      ? succeed(constantPlan(found))
      : fail([{ code: "sump-unreadable", kind: "error", subject, given, suggestions: SUMP_EXAMPLES }]),
  );
}

function sidesOf(first: string, second: string, subject: string): Result<number> {
  const unit = splitAmount(second)?.unit ?? "";
  const whole = splitAmount(first)?.unit === "" ? `${first} ${unit}` : first;
  return andThen(all([whole, second].map((side) => readQuantity(side, "length", subject))), ([a = 0, b = 0]) =>
    succeed(a > 0 && b > 0 ? a * b : 0),
  );
}
