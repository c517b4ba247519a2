import { checkInputs, type Input, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";

/** Share of a tank that can be drawn where none is stated: the lower end of what is usual. */
export const USUAL_USABLE_SHARE = 0.9;

const USABLE: Input = {
  name: "usable share of the tank",
  quantity: "percent",
  // House choice: less is a slip.
  atLeast: 0.1,
  atMost: 1,
  usual: { atLeast: 0.9, atMost: 0.95 },
};
const FUEL_RATE: Input = { name: "fuel rate", quantity: "fuelFlow", above: 0, atMost: 1 };
const RESERVE: Input = { name: "reserve", quantity: "percent", atLeast: 0, below: 1 };

/** Spans a tank is listed for, s: a day tank's shift of 8 h, a day, two days. */
export const TANK_SPANS = [8 * 3600, 24 * 3600, 48 * 3600] as const;

export const tankTimeMethod = {
  cites: [{ source: "practice", at: "90 % to 95 % of a tank is usable; keep 10 % in reserve" }],
  inputs: {
    tankVolume: { name: "tank volume", symbol: "V", quantity: "volume", above: 0, atMost: 1e6 },
    usableShare: USABLE,
    fuelRate: FUEL_RATE,
    reserve: RESERVE,
  },
} as const satisfies Method<"tankVolume" | "usableShare" | "fuelRate" | "reserve">;

export interface TankTimeInput {
  /** m³ */
  readonly tankVolume: number;
  /** Share of the tank that can be drawn, 0 to 1. */
  readonly usableShare: number;
  /** m³/s */
  readonly fuelRate: number;
  /** Share of the usable volume left in the tank; none where left out. */
  readonly reserve?: number;
}

/**
 * Time an engine runs on a tank, s.
 * Formula: t = V u (1 − r) / V̇
 * Fails: inputs outside the method's bounds.
 * Warns: caution on a usable share outside 90 % to 95 %.
 */
export function tankTime({ reserve = 0, ...tank }: TankTimeInput): Result<number> {
  const { tankVolume, usableShare, fuelRate } = tank;
  const checked = checkInputs(tankTimeMethod, { tankVolume, usableShare, fuelRate, reserve });
  if (!checked.ok) return checked;
  return succeed((tankVolume * usableShare * (1 - reserve)) / fuelRate, checked.findings);
}

/** Reserve kept where none is stated. */
export const USUAL_RESERVE = 0.1;

export const tankForMethod = {
  cites: tankTimeMethod.cites,
  inputs: {
    time: { name: "running time", symbol: "t", quantity: "hours", above: 0, atMost: 1e8 },
    usableShare: USABLE,
    fuelRate: FUEL_RATE,
    reserve: RESERVE,
  },
} as const satisfies Method<"time" | "usableShare" | "fuelRate" | "reserve">;

/**
 * Volume of the tank an engine needs for a running time, m³; 10 % in reserve unless stated otherwise.
 * Formula: V = V̇ t / (u (1 − r))
 * Fails: inputs outside the method's bounds.
 * Warns: caution on a usable share outside 90 % to 95 %.
 */
export function tankFor(input: {
  /** s */
  readonly time: number;
  readonly usableShare: number;
  /** m³/s */
  readonly fuelRate: number;
  readonly reserve?: number;
}): Result<number> {
  const { time, usableShare, fuelRate, reserve = USUAL_RESERVE } = input;
  const checked = checkInputs(tankForMethod, { time, usableShare, fuelRate, reserve });
  return checked.ok ? succeed((fuelRate * time) / (usableShare * (1 - reserve)), checked.findings) : checked;
}
