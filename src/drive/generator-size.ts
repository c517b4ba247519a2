import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { CODE_LETTERS, USUAL_CODE_LETTERS } from "../tables/motor-code-letters.ts";
import type { MotorSeries } from "./motor-rating.ts";

/** How a motor is started. */
export const STARTERS = ["direct on line", "star-delta", "soft starter", "VFD", "low-harmonic VFD"] as const;
export type Starter = (typeof STARTERS)[number];

export interface GeneratorSizeInput {
  /** Rating of the motor, W. */
  readonly motorRating: number;
  /** 0 to 1. */
  readonly efficiency: number;
  /** 0 to 1. */
  readonly powerFactor: number;
  readonly series: MotorSeries;
  /** Of a NEMA motor; the usual one of its rating where left out. */
  readonly codeLetter: string | null;
  readonly starter: Starter;
}

/** Electric power in W, apparent power in VA. */
export interface GeneratorSize {
  readonly runningPower: number;
  readonly runningApparent: number;
  /** At the start; through a VFD that of running. */
  readonly startingApparent: number;
  /** Of the alternator, by running and by start, whichever is more. */
  readonly alternator: number;
  /** Of the set's engine, electric. */
  readonly enginePower: number;
}

/** Starting apparent power that an alternator gives for 30 % dip, over its rating. */
const DIP = 2.5;
/** Share of the direct start that a starter leaves; a soft starter at 3 times full-load current. */
const OF_DIRECT = { "direct on line": 1, "star-delta": 1 / 3, "soft starter": 0.5 } as const;
/** Alternator over the input of a drive, for its harmonics: 6 pulses; 12 or 18 pulses or an active front end. */
const OVER_INPUT = { VFD: 2, "low-harmonic VFD": 1.4 } as const;
/** Loss and displacement of a drive: its input kW over its input kVA. */
const DRIVE_FACTOR = 0.95;
/** Engine over running load, and the least load of one that runs long. */
const ENGINE_OVER_RUNNING = 1.25;
/** Locked-rotor over full-load apparent power of an IEC motor. */
const IEC_LOCKED_ROTOR = 7;
const HORSEPOWER = unitOf("hp").factor;

const SIZING: Citation = {
  source: "practice",
  at: "alternator kVA = starting kVA / 2.5 (30 % dip); a drive of 6 pulses 2.0 × its input, 12 or 18 pulses or active front end 1.4 ×; engine 1.25 × running kW",
};

export const generatorSizeMethod = {
  cites: [SIZING, { source: "nema-mg1", at: "MG 1-10.37.2, code letters", unverified: true }],
  inputs: {
    motorRating: { name: "motor rating", symbol: "P N", quantity: "power", above: 0, atMost: 1e7 },
    efficiency: { name: "motor efficiency", symbol: "η", quantity: "percent", above: 0.3, atMost: 1 },
    powerFactor: { name: "power factor", symbol: "cos φ", quantity: "ratio", above: 0.3, atMost: 1 },
  },
} as const satisfies Method<"motorRating" | "efficiency" | "powerFactor">;

/**
 * What a generator set must give for one motor at its rating: running kW and kVA, kVA at the start, and by them the
 * alternator and the engine. A sizing figure, to be confirmed with the set's maker.
 * Formula: kVA = P/(η cos φ); start = hp × code letter (IEC: 7 × running), × 1/3 star-delta, × 1/2 soft starter at 3 ×
 * current; alternator = max(running, start/2.5), or 2.0 or 1.4 × input kVA of a drive, P/(0.95 η); engine 1.25 P/η
 * Fails: inputs outside the method's bounds; code-letter-unknown; code-letter-open.
 * Warns: generator-sizing-figure; code-letter-assumed.
 * Source: common practice; NEMA MG 1-10.37.2.
 */
export function generatorSize(input: GeneratorSizeInput): Result<GeneratorSize> {
  const { motorRating, efficiency, powerFactor, starter } = input;
  return andThen(checkInputs(generatorSizeMethod, { motorRating, efficiency, powerFactor }), () => {
    const runningPower = motorRating / efficiency;
    const enginePower = ENGINE_OVER_RUNNING * runningPower;
    const remark: Finding = { code: "generator-sizing-figure", kind: "check", subject: "generator set", cites: SIZING };
    if (starter === "VFD" || starter === "low-harmonic VFD") {
      const drawn = runningPower / DRIVE_FACTOR;
      const alternator = OVER_INPUT[starter] * drawn;
      const running = { runningPower, runningApparent: drawn, startingApparent: drawn };
      return succeed({ ...running, alternator, enginePower }, [remark]);
    }
    const runningApparent = runningPower / powerFactor;
    return andThen(lockedRotor(input, runningApparent), (direct) => {
      const startingApparent = direct * OF_DIRECT[starter];
      const alternator = Math.max(runningApparent, startingApparent / DIP);
      return succeed({ runningPower, runningApparent, startingApparent, alternator, enginePower }, [remark]);
    });
  });
}

/** Apparent power with the rotor still, VA. */
function lockedRotor({ motorRating, series, codeLetter }: GeneratorSizeInput, running: number): Result<number> {
  const subject = "code letter";
  if (series === "IEC" && codeLetter === null) {
    const cites = {
      source: "practice",
      at: "IEC motors draw 6 to 8 times full-load current at the start; 7 taken",
    } as const;
    return succeed(IEC_LOCKED_ROTOR * running, [{ code: "locked-rotor-assumed", kind: "assumed", subject, cites }]);
  }
  const horsepower = motorRating / HORSEPOWER;
  const usual = USUAL_CODE_LETTERS.find(([from]) => horsepower >= from * (1 - 1e-9))?.[1] ?? "L";
  const letter = (codeLetter ?? usual).trim().toUpperCase();
  const row = CODE_LETTERS.find(([of]) => of === letter);
  if (row === undefined) {
    const suggestions = CODE_LETTERS.map(([of]) => of);
    return fail([{ code: "name-unknown", kind: "error", subject, given: codeLetter ?? "", suggestions }]);
  }
  const [, , to] = row;
  if (to === null) return fail([{ code: "code-letter-open", kind: "error", subject, given: letter }]);
  const facts = { letter };
  const assumed: readonly Finding[] =
    codeLetter === null ? [{ code: "code-letter-assumed", kind: "assumed", subject, facts }] : [];
  return succeed(to * 1000 * horsepower, assumed);
}
