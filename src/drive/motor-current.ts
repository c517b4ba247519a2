import { checkInputs, type Method } from "../basis/method.ts";
import { amount, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { MOTOR_CURRENTS_NEC, NEC_VOLTAGES } from "../tables/motor-currents-nec.ts";

export interface FullLoadCurrentInput {
  /** At the shaft, W. */
  readonly shaftPower: number;
  /** Between lines, V. */
  readonly voltage: number;
  /** 0 to 1. */
  readonly efficiency: number;
  readonly powerFactor: number;
}

export const fullLoadCurrentMethod = {
  cites: [
    { source: "practice", at: "I = P / (√3 V η cos φ)" },
    { source: "nfpa-70", at: "Table 430.250, full-load current, three-phase" },
  ],
  inputs: {
    shaftPower: { name: "shaft power", symbol: "P", quantity: "power", atLeast: 0, atMost: 1e8 },
    voltage: {
      name: "line voltage",
      symbol: "V",
      quantity: "voltage",
      above: 0,
      atMost: 50_000,
      // Three-phase supplies of motors, from 115 V to 13.8 kV.
      usual: { atLeast: 110, atMost: 14_000 },
    },
    efficiency: { name: "motor efficiency", symbol: "η", quantity: "ratio", above: 0, atMost: 1 },
    powerFactor: { name: "power factor", symbol: "cos φ", quantity: "ratio", above: 0, atMost: 1 },
  },
} as const satisfies Method<keyof FullLoadCurrentInput>;

/**
 * Line current of a three-phase motor, A.
 * Formula: I = P / (√3 V η cos φ)
 * Fails: inputs outside the method's bounds.
 * Source: common practice.
 */
export function fullLoadCurrent(input: FullLoadCurrentInput): Result<number> {
  const { shaftPower, voltage, efficiency, powerFactor } = input;
  const checked = checkInputs(fullLoadCurrentMethod, { shaftPower, voltage, efficiency, powerFactor });
  if (!checked.ok) return checked;
  return succeed(shaftPower / (Math.sqrt(3) * voltage * efficiency * powerFactor));
}

const HORSEPOWER = unitOf("hp").factor;

/** Supplies that a column of the table serves beside its own voltage, V: the note to NEC Table 430.250 (from memory). */
const NEC_SUPPLIES = [
  [110, 120, 115],
  [220, 240, 230],
  [440, 480, 460],
  [550, 600, 575],
] as const;

/** The column of NEC Table 430.250 that serves a supply, V: 460 for 480. A supply of no band is its own column. */
export function necColumn(supply: number): number {
  return NEC_SUPPLIES.find(([least, most]) => supply >= least && supply <= most)?.[2] ?? supply;
}

/**
 * Full-load current that conductors and protection are sized by, A; the nameplate wins for everything else.
 * Fails: a rating or voltage the table does not list.
 * Source: NEC (NFPA 70), Table 430.250.
 */
export function necFullLoadCurrent(rating: number, voltage: number): Result<number> {
  const column = (NEC_VOLTAGES as readonly number[]).indexOf(voltage);
  const row = MOTOR_CURRENTS_NEC.find(([hp]) => Math.abs(hp * HORSEPOWER - rating) <= 1e-9 * rating);
  const current = column < 0 ? undefined : row?.[1 + column];
  if (typeof current === "number") return succeed(current);
  return fail([
    {
      code: "motor-current-not-tabulated",
      kind: "error",
      subject: "rated power",
      found: amount("power", rating),
      facts: { voltage, voltages: NEC_VOLTAGES.join(", ") },
    },
  ]);
}

/**
 * Starting current over full-load current, least and most. Common practice, no source. A star-delta start has a third of
 * the torque too.
 */
export const STARTING_CURRENT = {
  "direct on line": [6, 8],
  "star-delta": [2, 8 / 3],
  "soft starter": [2.5, 4],
  "variable frequency drive": [1, 1.5],
} as const satisfies Record<string, readonly [number, number]>;
