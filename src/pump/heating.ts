import { SPECIFIC_GRAVITY_REFERENCE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import type { Liquid, LiquidState } from "../liquid/liquid.ts";
import { specificHeatOf } from "../liquid/specific-heat.ts";
import { brent } from "../numeric/brent.ts";
import { valueAt } from "../numeric/pchip.ts";
import { withPlacesBetween } from "../numeric/places-between.ts";
import { bestPointOf, headOf, shaftPowerAtFlow } from "./pump-reading.ts";
import type { RunningPump } from "./running-pump.ts";

/** Of cast iron, J/(kg·K); handbooks give 420 to 540. */
const IRON_SPECIFIC_HEAT = 460;
/** Rise allowed in one pass where nobody states another, K (15 °F). Common practice. */
export const USUAL_RISE = 8;

const SPECIFIC_HEAT = {
  name: "specific heat",
  symbol: "c_p",
  quantity: "specificHeat",
  above: 0,
  atMost: 20_000,
} as const;

export interface ThermalMinimumFlowInput {
  readonly pump: RunningPump;
  /** Rise allowed in one pass, K; 8 K where left out. */
  readonly allowedRise: number | null;
  readonly liquid: Liquid;
  /** K */
  readonly temperature: number;
  /** J/(kg·K); by `specificHeatOf` where left out. */
  readonly specificHeat: number | null;
  /** What there is at the pump, m, where NPSH is to limit the rise. */
  readonly npshAvailable: number | null;
}

export interface ThermalMinimumFlow {
  /** m³/s */
  readonly flow: number;
  /** Rise allowed there, K. */
  readonly allowedRise: number;
  readonly limitedBy: "rise" | "NPSH";
  /** At the best efficiency flow, K. */
  readonly riseAtBest: number;
}

export const thermalMinimumFlowMethod = {
  cites: [
    { source: "pump-handbook", at: "temperature rise and minimum flow" },
    { source: "practice", at: "a rise of 8 K (15 °F) in one pass" },
  ],
  inputs: {
    allowedRise: {
      name: "allowed rise",
      symbol: "ΔT",
      quantity: "temperatureDifference",
      above: 0,
      atMost: 100,
      usual: { atMost: 15 },
    },
    specificHeat: SPECIFIC_HEAT,
    npshAvailable: { name: "NPSH available", quantity: "head", atLeast: 0 },
  },
} as const satisfies Method<"allowedRise" | "specificHeat" | "npshAvailable">;

/**
 * Rise of the liquid in one pass of a pump at a flow above 0, K. All losses warm the liquid: by the power curve, which
 * stays finite at no flow, or by efficiency where the curve gives no power.
 * Formula: ΔT = (P − ρ g Q H)/(ρ Q c_p) = g H (1/η − 1)/c_p
 * Fails: as `shaftPowerAtFlow`.
 */
export function temperatureRise(pump: RunningPump, flow: number, specificHeat: number): Result<number> {
  const density = SPECIFIC_GRAVITY_REFERENCE;
  return andThen(shaftPowerAtFlow(pump, flow, density), (power) =>
    succeed((power / (density * flow) - STANDARD_GRAVITY * headOf(pump, flow)) / specificHeat),
  );
}

/**
 * Flow below which the liquid warms by more than allowed in the pump, m³/s; the curve's least where none does. Where NPSH
 * is stated, no warmer either than leaves NPSH available as much as required: that flow's NPSHR, or the first one given.
 * Formula: ΔT(Q) is the rise allowed, p_v(T + ΔT) − p_v(T) ≤ ρ g (NPSHA − NPSHR), by Brent
 * Fails: out-of-range inputs; curve-column-missing (efficiency); thermal-flow-not-found, too warm up to best efficiency; as
 * the liquid at its temperature.
 * Warns: rise-by-npsh-not-known, a liquid whose vapour pressure is one figure; as `specificHeatOf`.
 * Source: Karassik and others, Pump Handbook, temperature rise and minimum flow.
 */
export function thermalMinimumFlow(input: ThermalMinimumFlowInput): Result<ThermalMinimumFlow> {
  const state = input.liquid.at(input.temperature);
  return andThen(state, (liquid) => coolEnough(input, liquid));
}

function coolEnough(input: ThermalMinimumFlowInput, state: LiquidState): Result<ThermalMinimumFlow> {
  const { pump, npshAvailable, allowedRise } = input;
  const limit = allowedRise ?? USUAL_RISE;
  const { specificHeat, findings } = specificHeatOf(state, input.specificHeat);
  const checked = checkInputs(thermalMinimumFlowMethod, {
    allowedRise: limit,
    specificHeat,
    npshAvailable: npshAvailable ?? 0,
  });
  if (!checked.ok) return checked;
  return andThen(npshAvailable === null ? succeed(undefined) : riseByNpsh(input, state, npshAvailable), (byNpsh) =>
    andThen(bestPointOf(pump), (best) => {
      const allowedAt = (flow: number): number =>
        byNpsh === undefined ? limit : Math.min(limit, byNpsh(requiredNear(pump, flow)));
      const riseAt = (flow: number): number => {
        const rise = flow > 0 ? temperatureRise(pump, flow, specificHeat) : undefined;
        return rise?.ok ? rise.value : Number.MAX_VALUE;
      };
      const over = (flow: number): number => riseAt(flow) - allowedAt(flow);
      const riseAtBest = riseAt(best.flow);
      const said = [...checked.findings, ...findings];
      const flow = firstCool(pump, best.flow, over);
      if (flow === undefined) return fail([tooWarm(riseAtBest, allowedAt(best.flow))]);
      const allowedRise = allowedAt(flow);
      const limitedBy = allowedRise < limit ? "NPSH" : "rise";
      return succeed({ flow, allowedRise, limitedBy, riseAtBest }, said);
    }),
  );
}

const STEPS = 32;

/** The least flow up to best efficiency at which the liquid stays cool enough. */
function firstCool(pump: RunningPump, bestFlow: number, over: (flow: number) => number): number | undefined {
  if (over(pump.leastFlow) <= 0) return pump.leastFlow;
  const knots = pump.curve.points.map(({ flow }) => flow * pump.flowFactor).filter((flow) => flow < bestFlow);
  const places = withPlacesBetween([...knots, bestFlow], STEPS);
  const cool = places.findIndex((flow) => over(flow) <= 0);
  return cool < 1 ? undefined : brent(over, places[cool - 1] as number, places[cool] as number);
}

function tooWarm(rise: number, most: number): Finding {
  const found = amount("temperatureDifference", rise);
  const limit = { quantity: "temperatureDifference", value: most, side: "at most" } as const;
  return { code: "thermal-flow-not-found", kind: "error", subject: "allowed rise", found, limit };
}

/** NPSHR near a flow, m: that of the nearest flow it is given for. */
function requiredNear({ curve, speedRatio, npshRequiredFactor }: RunningPump, flow: number): number {
  const column = curve.npshRequired;
  if (column === undefined) return 0;
  const [first, last] = [column.x[0] as number, column.x.at(-1) as number];
  return npshRequiredFactor * valueAt(column, Math.min(Math.max(flow / speedRatio, first), last));
}

/** Steps of the rise are searched up to this, K. */
const WARMEST = 150;

/** Rise that NPSH allows over what the pump requires, m to K; undefined where the liquid does not say. */
function riseByNpsh(
  { liquid, temperature }: ThermalMinimumFlowInput,
  { density, vapourPressure }: LiquidState,
  npshAvailable: number,
): Result<((required: number) => number) | undefined> {
  const pressureAt = (rise: number): number | undefined => {
    const state = liquid.at(temperature + rise);
    return state.ok ? state.value.vapourPressure : undefined;
  };
  const warmer = pressureAt(1);
  if (vapourPressure === undefined || warmer === undefined || !(warmer > vapourPressure)) {
    return succeed(undefined, [{ code: "rise-by-npsh-not-known", kind: "check", subject: "liquid" }]);
  }
  return succeed((required) => {
    const most = vapourPressure + density * STANDARD_GRAVITY * (npshAvailable - required);
    if (most <= vapourPressure) return 0;
    return brent((rise) => (pressureAt(rise) ?? Number.MAX_VALUE) - most, 0, WARMEST, 1e-9) ?? WARMEST;
  });
}

export interface ShutoffHeatingInput {
  /** At zero flow, W. */
  readonly shaftPower: number;
  /** In the casing, m³. */
  readonly liquidVolume: number;
  /** Of the casing and impeller, kg. */
  readonly metalMass: number;
  /** J/(kg·K); by `specificHeatOf` where left out. */
  readonly specificHeat: number | null;
  readonly liquid: LiquidState;
}

export const shutoffHeatingMethod = {
  cites: [{ source: "energy-balance", at: "all the power of a pump shut in warms its liquid and its metal" }],
  inputs: {
    shaftPower: { name: "shaft power at shutoff", symbol: "P₀", quantity: "power", above: 0, atMost: 1e8 },
    liquidVolume: { name: "liquid volume", quantity: "volume", above: 0, atMost: 1000 },
    metalMass: { name: "metal mass", quantity: "mass", atLeast: 0, atMost: 1e6 },
    specificHeat: SPECIFIC_HEAT,
  },
} as const satisfies Method<Exclude<keyof ShutoffHeatingInput, "liquid">>;

const SHUT_IN_PRACTICE = {
  source: "practice",
  at: "a pump is not run against a closed valve: its liquid boils, and the casing may burst",
} as const;

/**
 * Rate at which a pump shut in warms, K/s.
 * Formula: dT/dt = P₀/(m_w c_w + m_metal c_metal)
 * Fails: out-of-range inputs.
 * Warns: shut-in-heats (safety); as `specificHeatOf`.
 * Source: conservation of energy; iron 460 J/(kg·K).
 */
export function shutoffHeating(input: ShutoffHeatingInput): Result<number> {
  const { shaftPower, liquidVolume, metalMass, liquid } = input;
  const { specificHeat, findings } = specificHeatOf(liquid, input.specificHeat);
  return andThen(checkInputs(shutoffHeatingMethod, { shaftPower, liquidVolume, metalMass, specificHeat }), () => {
    const rate = shaftPower / (liquidVolume * liquid.density * specificHeat + metalMass * IRON_SPECIFIC_HEAT);
    const found = amount("temperatureDifference", 60 * rate);
    return succeed(rate, [
      { code: "shut-in-heats", kind: "safety", subject: "pump", found, cites: SHUT_IN_PRACTICE },
      ...findings,
    ]);
  });
}
