import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Result, succeed } from "../basis/result.ts";

/** Share of the gross power that fan, alternator, compressor and charge pump take where nothing is known. */
export const USUAL_LOSS = 0.05;

/** Share of its power on site below which an engine carbons up in long running. */
export const LEAST_ENGINE_LOAD = 0.3;

export interface EngineNetPowerInput {
  /** W */
  readonly grossPower: number;
  /** Share of the gross power that fan and accessories take; 5 % where left out. */
  readonly lossShare?: number;
}

export const engineNetPowerMethod = {
  cites: [{ source: "practice", at: "fan and accessories take 3 % to 8 % of the gross power" }],
  inputs: {
    grossPower: { name: "gross power", symbol: "P", quantity: "power", above: 0, atMost: 1e8 },
    lossShare: {
      name: "fan and accessory loss",
      quantity: "percent",
      atLeast: 0,
      below: 0.5,
      usual: { atLeast: 0.03, atMost: 0.08 },
    },
  },
} as const satisfies Method<keyof EngineNetPowerInput>;

/**
 * Net power of an engine, W: gross less what fan and accessories take.
 * Fails: inputs outside the method's bounds.
 * Warns: caution on a loss outside 3 % to 8 %.
 * Source: common practice.
 */
export function engineNetPower({ grossPower, lossShare = USUAL_LOSS }: EngineNetPowerInput): Result<number> {
  const checked = checkInputs(engineNetPowerMethod, { grossPower, lossShare });
  return checked.ok ? succeed(grossPower * (1 - lossShare), checked.findings) : checked;
}

const SIZE_RULE: Citation = {
  source: "practice",
  at: "the continuous net power on site covers the maximum power the pump takes",
};

export const engineLoadMethod = {
  cites: [{ source: "practice", at: "no long running below 30 % load (wet stacking)" }],
  inputs: {
    shaftPower: { name: "shaft power", symbol: "P", quantity: "power", atLeast: 0, atMost: 1e8 },
    sitePower: { name: "engine power on site", symbol: "P x", quantity: "power", above: 0, atMost: 1e8 },
  },
} as const satisfies Method<"shaftPower" | "sitePower">;

/**
 * Share of an engine's power on site that the pump takes.
 * Fails: inputs outside the method's bounds.
 * Warns: engine too small, above 1. Cautions: load below 0.3.
 * Source: common practice.
 */
export function engineLoad(input: { readonly shaftPower: number; readonly sitePower: number }): Result<number> {
  const { shaftPower, sitePower } = input;
  const checked = checkInputs(engineLoadMethod, { shaftPower, sitePower });
  if (!checked.ok) return checked;
  const load = shaftPower / sitePower;
  if (load > 1) {
    const limit = { quantity: "power", value: sitePower, side: "at most" } as const;
    const found = amount("power", shaftPower);
    const cites = SIZE_RULE;
    return succeed(load, [{ code: "engine-too-small", kind: "limit", subject: "shaft power", found, limit, cites }]);
  }
  if (load >= LEAST_ENGINE_LOAD) return succeed(load);
  const limit = { quantity: "percent", value: LEAST_ENGINE_LOAD, side: "at least" } as const;
  const found = amount("percent", load);
  const cites = engineLoadMethod.cites[0];
  return succeed(load, [
    { code: "engine-load-low", kind: "check", subject: "load on the engine", found, limit, cites },
  ]);
}
