import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";

/** Mass fractions of the alloy. */
export interface Composition {
  readonly chromium: number;
  readonly molybdenum: number;
  readonly nitrogen: number;
  readonly tungsten: number;
}

const part = (name: string, symbol: string) => ({ name, symbol, quantity: "percent", atLeast: 0, atMost: 1 }) as const;

export const pittingResistanceMethod = {
  cites: [{ source: "practice", at: "PREN = %Cr + 3.3 (%Mo + 0.5 %W) + 16 %N, as the duplex specifications use it" }],
  inputs: {
    chromium: part("chromium", "Cr"),
    molybdenum: part("molybdenum", "Mo"),
    nitrogen: part("nitrogen", "N"),
    tungsten: part("tungsten", "W"),
  },
} as const satisfies Method<keyof Composition>;

/**
 * Pitting resistance equivalent number of a stainless steel; copper and nickel do not enter.
 * Formula: PREN = %Cr + 3.3 %Mo + 1.65 %W + 16 %N
 * Fails: shares outside 0 to 1.
 * Source: common practice, as the duplex specifications use it.
 */
export function pittingResistance(composition: Composition): Result<number> {
  return andThen(checkInputs(pittingResistanceMethod, composition), () => {
    const { chromium, molybdenum, nitrogen, tungsten } = composition;
    return succeed(100 * (chromium + 3.3 * molybdenum + 1.65 * tungsten + 16 * nitrogen));
  });
}

const ELEMENT = /^(cr|mo|n|w)\s*[=:]?\s*(\d+(?:\.\d+)?)\s*%?$/i;

/** Reads "Cr 25.5, Mo 2.0, N 0.17" in percent; nothing for any other text. Chromium must be among them. */
export function compositionIn(text: string): Composition | undefined {
  const parts = text
    .replace(/(?<=[\d%])\s+(?=[a-z])/gi, ",")
    .split(/[,;]/)
    .map((one) => ELEMENT.exec(one.trim()));
  const shares: Record<string, number> = {};
  for (const match of parts) {
    const element = match?.[1]?.toLowerCase();
    if (element === undefined || element in shares) return undefined;
    shares[element] = Number(match?.[2]) / 100;
  }
  const { cr, mo = 0, n = 0, w = 0 } = shares;
  return cr === undefined ? undefined : { chromium: cr, molybdenum: mo, nitrogen: n, tungsten: w };
}
