import { readNumber, splitAmount } from "../basis/quantity-text.ts";
import { andThen, fail, type Result, succeed } from "../basis/result.ts";
import { unitNamed } from "../basis/units.ts";

const EXAMPLES = ["“3.90 per US gal”", "“1.03 per L”"] as const;

/**
 * A price of fuel as it is written, in money a cubic metre: "3.90 per US gal", "1.03/L". Money has no unit here; the
 * volume must be named, for a price moved from gallons to litres unseen is nearly four times too high.
 * Fails: not-a-number; number-ambiguous; unit-missing; unit-unknown for what is no volume.
 */
export function fuelPriceNamed(text: string, subject: string): Result<number> {
  const given = text.trim();
  const parts = splitAmount(given);
  if (parts === undefined) return fail([{ code: "not-a-number", kind: "error", subject, given }]);
  return andThen(readNumber(parts.number, subject), (price) => {
    const volume = parts.unit.replace(/^(?:per\s+|\/\s*|an?\s+)/i, "");
    if (volume === "") {
      return fail([{ code: "unit-missing", kind: "error", subject, given, suggestions: EXAMPLES }]);
    }
    const unit = unitNamed(volume);
    if (unit?.dimension !== "volume") {
      return fail([{ code: "unit-unknown", kind: "error", subject, given: volume, suggestions: EXAMPLES }]);
    }
    return succeed(price / unit.factor);
  });
}
