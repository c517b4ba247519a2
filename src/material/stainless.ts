import { isAtMost } from "../basis/at-most.ts";
import { CELSIUS_ZERO } from "../basis/constants.ts";
import { amount } from "../basis/result.ts";
import { chlorideLimit, HOTTEST_WITH_CHLORIDE, SCREENED_FROM, SCREENED_TO, type Stainless } from "./chloride-limit.ts";
import { type Judgement, judge } from "./judgement.ts";
import type { Exact } from "./standing.ts";

const celsius = (reading: number): number => reading + CELSIUS_ZERO;

const CRACKING = celsius(60);
/** Chloride to which duplex of PREN about 32 is borne with care, cold; and that of sea water, kg/m³. */
const BRACKISH_MOST = 10;
const SEA_WATER_MOST = 25;
const COLD = celsius(25);
/** Sea water asks for this, flowing, and flushed when idle. */
const COLD_SEA_WATER = celsius(20);

/**
 * What the chloride of a liquid means for stainless steel. Below pH 4 the limits of neutral water say nothing: what breaks
 * them rules a metal out all the same.
 */
export function stainlessScreen(metal: Stainless, at: Exact): readonly Judgement[] {
  const { chlorides, temperature, pH, isStanding } = at;
  if (chlorides === 0) return [];
  const isBelow = pH < SCREENED_FROM;
  const value = chlorideLimit(metal, temperature, isBelow ? undefined : pH, isStanding);
  const found = amount("concentration", chlorides);
  const limit = { quantity: "concentration", value, side: "at most" } as const;
  const facts = { temperature: amount("temperature", temperature), pH: Number(pH.toPrecision(3)) };
  const isWithin = isAtMost(chlorides, value);
  if (isBelow || pH > SCREENED_TO) {
    return isWithin ? [] : beyond(metal, at, judge("out", { code: "chlorides-beyond", found, limit, facts }));
  }
  const within = isWithin
    ? [judge("fine", { code: "chlorides-within", found, limit, facts })]
    : beyond(metal, at, judge("out", { code: "chlorides-beyond", found, limit, facts }));
  return [...within, ...hotRules(metal, temperature)];
}

function hotRules(metal: Stainless, temperature: number): readonly Judgement[] {
  const found = amount("temperature", temperature);
  const most = (value: number) => ({ quantity: "temperature", value, side: "at most" }) as const;
  const hottest = HOTTEST_WITH_CHLORIDE[metal];
  if (!isAtMost(temperature, hottest)) {
    return [judge("unknown", { code: "stainless-too-hot", found, limit: most(hottest) })];
  }
  if (isAtMost(temperature, CRACKING)) return [];
  return [judge("limited", { code: "stress-cracking", found, limit: most(CRACKING) })];
}

/** Above its limit 316 is out; duplex serves with care in cold brackish water, and in sea water only to 20 °C, flowing. */
function beyond(
  metal: Stainless,
  { chlorides, temperature, pH, isStanding }: Exact,
  out: Judgement,
): readonly Judgement[] {
  if (metal !== "duplex" || isStanding || pH < SCREENED_FROM) return [out];
  const isSea = !isAtMost(chlorides, BRACKISH_MOST);
  const most = isSea ? COLD_SEA_WATER : COLD;
  if (!isAtMost(temperature, most) || !isAtMost(chlorides, SEA_WATER_MOST)) return [out];
  const limit = { quantity: "temperature", value: most, side: "at most" } as const;
  const found = amount("concentration", chlorides);
  return [judge("limited", { code: isSea ? "duplex-sea-water-cold" : "duplex-brackish-cold", found, limit })];
}
