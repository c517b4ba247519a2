import type { Result } from "../basis/result.ts";
import type { Liquid, LiquidState } from "./liquid.ts";

/** A liquid that works out its state once for a run of calls at one temperature, as down a column. */
export function rememberedLiquid(name: string, at: (temperature: number) => Result<LiquidState>): Liquid {
  let last: { readonly temperature: number; readonly state: Result<LiquidState> } | undefined;
  return {
    name,
    at: (temperature) => {
      if (last?.temperature !== temperature) last = { temperature, state: at(temperature) };
      return last.state;
    },
  };
}
