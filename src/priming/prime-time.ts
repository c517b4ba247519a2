import type { Citation } from "../basis/citation.ts";
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { simpson } from "../numeric/simpson.ts";
import { type AirDraw, type AirPump, airDraw } from "./air-pump.ts";
import type { PrimingRun } from "./vertical-first.ts";

export interface PrimeTimeInput {
  /** The suction line from the liquid surface to the casing. */
  readonly runs: readonly PrimingRun[];
  /** Air in the pump casing and the priming chamber, m³. */
  readonly casingVolume: number;
  readonly airPump: AirPump;
  /** Absolute pressure of the air on site, Pa. */
  readonly atmosphericPressure: number;
  /** kg/m³ */
  readonly density: number;
  /** Absolute vapour pressure of the liquid, Pa; 0 where not known. */
  readonly vapourPressure: number;
}

export interface PrimeTime {
  /** Air in the line and the casing at the start, m³. */
  readonly airVolume: number;
  /** Until the front has gained the lift, s. */
  readonly riseTime: number;
  /** From there until the casing is full, s. */
  readonly fillTime: number;
  /** s */
  readonly total: number;
  /** Greatest speed of the front along the pipe, at the ends of the runs, m/s. */
  readonly frontSpeed: number;
}

export const primeTimeMethod = {
  cites: [
    { source: "boyle-mariotte", at: "isothermal expansion of the air over a quasi-static water front" },
    { source: "practice", at: "capacity of an air pump falls in a straight line over the vacuum to its blank-off" },
  ],
  inputs: {
    casingVolume: { name: "casing volume", symbol: "V_c", quantity: "volume", atLeast: 0 },
    freeAir: { name: "air pump capacity", symbol: "F₀", quantity: "freeAirFlow", above: 0 },
    blankOff: {
      name: "blank-off pressure",
      symbol: "p_l",
      quantity: "absolutePressure",
      atLeast: 0,
      below: STANDARD_ATMOSPHERE,
    },
    leak: { name: "leak", symbol: "L", quantity: "freeAirFlow", atLeast: 0 },
    atmosphericPressure: { name: "atmospheric pressure", symbol: "p_a", quantity: "absolutePressure", above: 0 },
    density: { name: "density", symbol: "ρ", quantity: "density", above: 0 },
    vapourPressure: { name: "vapour pressure", symbol: "p_v", quantity: "absolutePressure", atLeast: 0 },
  },
} as const satisfies Method<
  "casingVolume" | "freeAir" | "blankOff" | "leak" | "atmosphericPressure" | "density" | "vapourPressure"
>;

/**
 * Vapour pressure up to which a liquid is cold, Pa: water a little above 20 °C. In the seconds a priming takes the air
 * over cold water does not fill with vapour, so it is taken as dry; over warmer liquid it is taken as saturated.
 */
export const COLD_VAPOUR_PRESSURE = 2400;

/** Slope under which a run is level: a nanometre a metre, below which the integral over the rise loses its figures. */
const LEVEL_SLOPE = 1e-9;

/** Speed of the front beyond which it is no longer quasi-static, m/s. */
const FASTEST_FRONT = 2;
const FRONT_PRACTICE: Citation = { source: "practice", at: "priming front up to about 2 m/s (6.6 ft/s)" };

/** A leg of the way of the water front: a run of the suction line, and the casing last. */
export interface FrontLeg {
  /** Height over the liquid surface where it starts, m. */
  readonly start: number;
  /** m; 0 on the level and in the casing. */
  readonly rise: number;
  /** Air it holds before the front comes, m³. */
  readonly volume: number;
  /** Time in which the front moves from one share of the leg to another, s; shares from 0 to 1. */
  readonly timeBetween: (from: number, to: number) => number;
}

export interface WaterFront {
  /** In the order in which the front meets them. */
  readonly legs: readonly FrontLeg[];
  /** Height gained over them all, m. */
  readonly lift: number;
  /** Air in them all, m³. */
  readonly airVolume: number;
  /** Greatest speed of the front along the pipe, at the ends of the runs, m/s. */
  readonly frontSpeed: number;
}

/**
 * The way of the water front from the liquid to the full casing, with the time it takes over each leg, s.
 * Formula: d(p_air V)/dt = −p_a F_net(p), p = p_a − ρ g h, p_air = p − p_v; dt = p_air dV/(p_a F_net) on the level,
 *          dt = [ρ g V + (A/sin slope) p_air]/[p_a F_net(p)] dh rising, over x = ln[(h_e − h₁)/(h_e − h)] (to 1e-11)
 * Fails: out-of-range; priming-line-falls; priming-no-air; lift-above-atmosphere or -vapour; leak-exceeds-air-pump;
 * never-primes.
 * Warns: caution priming-front-fast above 2 m/s.
 * Source: Boyle–Mariotte law; capacity of the air pump by common practice.
 */
export function waterFront(input: PrimeTimeInput): Result<WaterFront> {
  const { casingVolume, airPump, atmosphericPressure, density } = input;
  const runs = input.runs.filter(({ length, rise }) => length !== 0 || rise !== 0);
  const checked = checkInputs(primeTimeMethod, { ...input, ...airPump });
  if (!checked.ok) return checked;
  if (runs.some(({ rise, length }) => !(rise >= 0 && rise <= length * (1 + 1e-9)))) {
    return fail([{ code: "priming-line-falls", kind: "error", subject: "suction line" }]);
  }
  const airVolume = runs.reduce((sum, { area, length }) => sum + area * length, casingVolume);
  if (!(airVolume > 0)) return fail([{ code: "priming-no-air", kind: "error", subject: "suction line" }]);
  const draw = airDraw(airPump, atmosphericPressure, vapourShare(input.vapourPressure));
  const lift = runs.reduce((sum, { rise }) => sum + rise, 0);
  const refusal = neverPrimes(input, draw, lift);
  if (refusal !== undefined) return fail([refusal]);

  const weight = density * STANDARD_GRAVITY;
  const legs: FrontLeg[] = [];
  let height = 0;
  let air = airVolume;
  let frontSpeed = 0;
  for (const run of runs) {
    const isRising = run.rise > LEVEL_SLOPE * run.length;
    const volume = run.area * run.length;
    const timeBetween = isRising ? risingTime(run, height, air, weight, draw) : levelTime(volume, height);
    legs.push({ start: height, rise: run.rise, volume, timeBetween });
    frontSpeed = Math.max(frontSpeed, speedIn(run, height, air));
    height += run.rise;
    air -= volume;
    frontSpeed = Math.max(frontSpeed, speedIn(run, height, air));
  }
  legs.push({ start: height, rise: 0, volume: casingVolume, timeBetween: levelTime(casingVolume, height) });
  return succeed({ legs, lift, airVolume, frontSpeed }, fastFront(frontSpeed));

  function pressureAt(level: number): number {
    return atmosphericPressure - weight * level;
  }

  function levelTime(volume: number, level: number): FrontLeg["timeBetween"] {
    const pressure = pressureAt(level);
    const whole = (volume * (pressure - draw.vapourPressure)) / (atmosphericPressure * draw.netFreeAir(pressure));
    return (from, to) => whole * (to - from);
  }

  function speedIn({ area, length, rise }: PrimingRun, level: number, left: number): number {
    const pressure = pressureAt(level);
    const perLength = (weight * Math.max(0, left) * rise) / length + area * (pressure - draw.vapourPressure);
    return (atmosphericPressure * draw.netFreeAir(pressure)) / perLength;
  }
}

/**
 * Time until line and casing are full, s.
 * Fails: as `waterFront`; beyond-computation.
 * Warns: as `waterFront`.
 * Source: as `waterFront`.
 */
export function primeTime(input: PrimeTimeInput): Result<PrimeTime> {
  return andThen(waterFront(input), ({ legs, airVolume, frontSpeed }) => {
    let total = 0;
    let riseTime = 0;
    for (const { rise, timeBetween } of legs) {
      total += timeBetween(0, 1);
      if (rise > 0) riseTime = total;
    }
    if (!Number.isFinite(total)) return fail([timeBeyondComputation()]);
    return succeed({ airVolume, riseTime, fillTime: total - riseTime, total, frontSpeed });
  });
}

/** The error of a time to prime that is no finite number. */
export function timeBeyondComputation(): Finding {
  return { code: "beyond-computation", kind: "error", subject: "time to prime" };
}

/** Vapour in the air drawn, as a pressure, Pa: that of the liquid once it is warm. */
export function vapourShare(vapourPressure: number): number {
  return vapourPressure > COLD_VAPOUR_PRESSURE ? vapourPressure : 0;
}

/** Height a front can be held at by an air pump, m. Negative where the leak is more than it draws. */
export function blankOffLift(draw: AirDraw, density: number): number {
  return (draw.atmosphericPressure - draw.limit) / (density * STANDARD_GRAVITY);
}

function risingTime(
  run: PrimingRun,
  start: number,
  volume: number,
  weight: number,
  draw: AirDraw,
): FrontLeg["timeBetween"] {
  const { atmosphericPressure, vapourPressure, limit, otherRoot, slope } = draw;
  const room = (atmosphericPressure - limit) / weight - start;
  const span = -Math.log1p(-run.rise / room);
  const runVolume = run.area * run.length;
  // (h_e − h)/F_net with the vanishing factor p − p_e = ρ g (h_e − h) cancelled.
  const integrand = (x: number): number => {
    const share = Math.expm1(-span * x) / Math.expm1(-span);
    const pressure = atmosphericPressure - weight * (start + run.rise * share);
    const air = weight * (volume - runVolume * share) * run.rise + runVolume * (pressure - vapourPressure);
    return (air * pressure) / (atmosphericPressure * slope * weight * (pressure - otherRoot));
  };
  // Where a share of the run lies on x, which goes from 0 to 1 over it.
  const placeOf = (share: number): number => (share === 1 ? 1 : -Math.log1p(share * Math.expm1(-span)) / span);
  return (from, to) => (span / run.rise) * simpson(integrand, placeOf(from), placeOf(to));
}

function neverPrimes(input: PrimeTimeInput, draw: AirDraw, lift: number): Finding | undefined {
  const { atmosphericPressure, density, vapourPressure, airPump } = input;
  const weight = density * STANDARD_GRAVITY;
  const found = amount("head", lift);
  const refuse = (code: "lift-above-atmosphere" | "lift-above-vapour" | "never-primes", head: number): Finding => ({
    code,
    kind: "error",
    subject: "suction lift",
    found,
    limit: { quantity: "head", value: head, side: "below" },
  });
  const barometric = atmosphericPressure / weight;
  if (lift >= barometric) return refuse("lift-above-atmosphere", barometric);
  const boiling = (atmosphericPressure - vapourPressure) / weight;
  if (lift >= boiling) return refuse("lift-above-vapour", boiling);
  const held = blankOffLift(draw, density);
  if (held <= 0) return leakExceedsAirPump(airPump);
  return lift < held ? undefined : refuse("never-primes", held);
}

/** The error of a leak that lets in all that the air pump draws. */
export function leakExceedsAirPump({ freeAir, leak }: AirPump): Finding {
  return {
    code: "leak-exceeds-air-pump",
    kind: "error",
    subject: "leak",
    found: amount("freeAirFlow", leak),
    facts: { capacity: amount("freeAirFlow", freeAir) },
  };
}

function fastFront(speed: number): readonly Finding[] {
  if (!(speed > FASTEST_FRONT)) return [];
  return [
    {
      code: "priming-front-fast",
      kind: "check",
      subject: "suction line",
      found: amount("velocity", speed),
      limit: { quantity: "velocity", value: FASTEST_FRONT, side: "at most" },
      cites: FRONT_PRACTICE,
    },
  ];
}
