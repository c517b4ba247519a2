import { amount, type Finding } from "../basis/result.ts";
import type { Liquid } from "./liquid.ts";

/** K, by which two may differ that say the same: half a degree Fahrenheit. */
const SAME = 0.3;

/** What is wrong where a temperature [K] is given beside another in the liquid's own name; nothing where they agree. */
export function temperatureOfName(
  subject: string,
  { statedTemperature }: Partial<Liquid>,
  given: number,
): Finding | undefined {
  if (statedTemperature === undefined || Math.abs(given - statedTemperature) <= SAME) return undefined;
  const facts = { named: amount("temperature", statedTemperature) };
  const found = amount("temperature", given);
  return { code: "liquid-temperature-contradicts", kind: "error", subject, found, facts };
}
