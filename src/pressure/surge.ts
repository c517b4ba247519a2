import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import type { Pipe } from "../pipework/pipe.ts";
import { wallOf } from "./pipe-wall.ts";
import { waveSpeed, waveSpeedMethod } from "./wave-speed.ts";

export interface SurgeInput {
  /** Change of mean velocity, m/s: the whole of it where flow stops, more where it turns round. */
  readonly velocityChange: number;
  readonly pipe: Pipe;
  readonly liquid: LiquidState;
  /** Of the liquid, Pa. */
  readonly bulkModulus: number;
}

export interface Surge {
  /** Pa, above or below the pressure before. */
  readonly pressureChange: number;
  /** m/s */
  readonly waveSpeed: number;
}

export const surgeMethod = {
  cites: [
    { source: "joukowsky-1898", at: "Δp = ρ a ΔV" },
    waveSpeedMethod.cites[0],
    { source: "wylie-streeter", at: "restraint of the pipe; thick walls", unverified: true },
  ],
  inputs: {
    velocityChange: { name: "velocity change", symbol: "ΔV", quantity: "velocity", atLeast: 0, atMost: 100 },
  },
} as const satisfies Method<"velocityChange">;

const SCREEN_RULE: Citation = {
  source: "practice",
  at: "a surge screen replaces no transient study; flange ratings are without shock",
};

/**
 * Pressure change, Pa, where velocity changes faster than a wave runs to the end of the line and back; wave speed,
 * m/s.
 * Formula: Δp = ρ a ΔV, with a of a line free to lengthen (c = 1); an unknown wall is taken as rigid, the upper bound
 * Fails: inputs outside the bounds of the method or of `waveSpeed`.
 * Warns: cautions on the modulus taken or a rigid wall, the anchored figure, unusual wave speed, a screen.
 * Source: Joukowsky 1898; wave speed of Korteweg 1878, restraint of Wylie and Streeter (from memory).
 */
export function surge({ velocityChange, pipe, liquid, bulkModulus }: SurgeInput): Result<Surge> {
  const { density } = liquid;
  return andThen(checkInputs(surgeMethod, { velocityChange }), () =>
    andThen(wallOf(pipe), (wall) =>
      andThen(waveSpeed({ density, bulkModulus, ...(wall && { wall }), restraint: "expansion joints" }), (speed) => {
        const anchored = waveSpeed({ density, bulkModulus, ...(wall && { wall }), restraint: "anchored throughout" });
        const pressureChange = density * speed * velocityChange;
        return succeed({ pressureChange, waveSpeed: speed }, [
          ...(wall !== undefined && anchored.ok ? [anchoredHigher(density * anchored.value * velocityChange)] : []),
          screen(speed),
        ]);
      }),
    ),
  );
}

function anchoredHigher(pressure: number): Finding {
  const found = amount("pressureDifference", pressure);
  return {
    code: "surge-anchored-higher",
    kind: "check",
    subject: "surge",
    found,
    cites: waveSpeedMethod.cites[1],
  };
}

export function screen(speed: number): Finding {
  const found = amount("velocity", speed);
  return { code: "surge-is-a-screen", kind: "check", subject: "surge", found, cites: SCREEN_RULE };
}

export interface LineStopInput {
  /** Length of the line, m. */
  readonly length: number;
  /** m/s */
  readonly waveSpeed: number;
  readonly velocityChange: number;
  /** Time the flow takes to change, s. */
  readonly stopTime: number;
  /** kg/m³ */
  readonly density: number;
}

export interface LineStop {
  /** Time a wave takes to the end of the line and back, s. */
  readonly returnTime: number;
  /** Whether the whole of ρ a ΔV arises. */
  readonly isSudden: boolean;
  /** Pressure change of a rigid column stopped evenly, Pa; holds for a stop of more than 10 L/a. */
  readonly slowPressureChange: number;
}

export const lineStopMethod = {
  cites: [{ source: "wylie-streeter", at: "return time of a line; rigid column" }],
  inputs: {
    length: { name: "line length", symbol: "L", quantity: "length", above: 0 },
    waveSpeed: { name: "wave speed", symbol: "a", quantity: "velocity", above: 0 },
    velocityChange: surgeMethod.inputs.velocityChange,
    stopTime: { name: "stop time", symbol: "t", quantity: "duration", above: 0 },
    density: waveSpeedMethod.inputs.density,
  },
} as const satisfies Method<keyof LineStopInput>;

/**
 * Whether a stop is sudden, the return time (s), and the pressure change of a rigid column stopped evenly (Pa).
 * Formula: sudden where t ≤ 2 L/a;  Δp = ρ L ΔV/t
 * Fails: inputs outside the method's bounds.
 * Source: Wylie and Streeter.
 */
export function lineStop(input: LineStopInput): Result<LineStop> {
  return andThen(checkInputs(lineStopMethod, input), () => {
    const { length, waveSpeed: speed, velocityChange, stopTime, density } = input;
    const returnTime = (2 * length) / speed;
    return succeed({
      returnTime,
      isSudden: stopTime <= returnTime,
      slowPressureChange: (density * length * velocityChange) / stopTime,
    });
  });
}
