import { STANDARD_ATMOSPHERE } from "../basis/constants.ts";
import type { PlainCode } from "../basis/finding-code.ts";
import { readQuantity, readWrittenAmount } from "../basis/quantity-text.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import { toEngine } from "../basis/units.ts";

/** An air pump as its user states it; null where the text does not say. Free air in m³/s, blank-off in Pa absolute. */
export interface StatedAirPump {
  readonly freeAir: number;
  readonly blankOff: number | null;
  readonly leak: number | null;
}

export const AIR_PUMP_EXAMPLE = "50 cfm, blank-off 26 inHg, leak 2 cfm";

const BLANK_OFF = /^blank[- ]?off\s*[=:]?\s*(.+)$/i;
const LEAK = /^(?:air )?leak(?:age)?\s*[=:]?\s*(.+)$/i;
const VACUUM = /\s*(?:of )?vac(?:uum)?\.?$/i;

/**
 * Reads "50 cfm", "24 L/s, blank-off 10 kPa(a)" or "50 cfm, blank-off 26 inHg, leak 2 cfm": m³/s, Pa absolute. The
 * blank-off is that at sea level: an absolute pressure, or a vacuum below the standard atmosphere, which inches of
 * mercury are unless they say absolute, and other units where "vacuum" follows.
 * Fails: as `readQuantity`; air-pump-part-unread; unit-wrong-kind; blank-off-ambiguous for a pressure of neither kind.
 */
export function describedAirPump(text: string, subject: string): Result<StatedAirPump> {
  const [first = "", ...others] = text.split(/[;,](?!\d)/).map((part) => part.trim());
  const capacity = readQuantity(first, "freeAirFlow", subject);
  if (!capacity.ok) return capacity;
  let blankOff: number | null = null;
  let leak: number | null = null;
  for (const part of others.filter((other) => other !== "")) {
    const pressure = BLANK_OFF.exec(part)?.[1];
    const leaks = LEAK.exec(part)?.[1];
    if (pressure !== undefined && blankOff === null) {
      const read = readBlankOff(pressure, `${subject} blank-off`);
      if (!read.ok) return read;
      blankOff = read.value;
    } else if (leaks !== undefined && leak === null) {
      const read = readQuantity(leaks, "freeAirFlow", `${subject} leak`);
      if (!read.ok) return read;
      leak = read.value;
    } else {
      return refuse("air-pump-part-unread", subject, part, [AIR_PUMP_EXAMPLE]);
    }
  }
  return succeed({ freeAir: capacity.value, blankOff, leak });
}

function readBlankOff(text: string, subject: string): Result<number> {
  const isVacuum = VACUUM.test(text);
  const read = readWrittenAmount(text.replace(VACUUM, ""), subject, "26 inHg or 10 kPa(a)");
  if (!read.ok) return read;
  const { value, unit } = read.value;
  if (unit.dimension !== "pressure") return refuse("unit-wrong-kind", subject, text, ["inHg, kPa(a) or psia"]);
  const pressure = toEngine(value, unit);
  if (isVacuum && unit.zero !== "absolute") return succeed(STANDARD_ATMOSPHERE - pressure);
  if (!isVacuum && unit.zero === "absolute") return succeed(pressure);
  if (unit.symbol === "inHg") return succeed(STANDARD_ATMOSPHERE - pressure);
  return refuse("blank-off-ambiguous", subject, text, ["26 inHg", "10 kPa(a)", "91 kPa vacuum"]);
}

function refuse(
  code: PlainCode,
  subject: string,
  given: string,
  suggestions: readonly string[],
): ReturnType<typeof fail> {
  return fail([{ code, kind: "error", subject, given, suggestions }]);
}
