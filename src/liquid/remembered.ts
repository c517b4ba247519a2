import type { Result } from "../basis/result.ts";
import type { Liquid, LiquidState } from "./liquid.ts";

/** As many temperatures are kept as the cases of a duty commonly have. */
const MOST = 8;

/** A liquid that works out its state once for a run of calls at a few temperatures, as down a column or over cases. */
export function rememberedLiquid(name: string, at: (temperature: number) => Result<LiquidState>): Liquid {
  const known: { readonly temperature: number; readonly state: Result<LiquidState> }[] = [];
  return {
    name,
    at: (temperature) => {
      for (const one of known) if (one.temperature === temperature) return one.state;
      const state = at(temperature);
      if (known.length === MOST) known.shift();
      known.push({ temperature, state });
      return state;
    },
  };
}
