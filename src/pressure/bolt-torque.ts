import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { REFERENCE_TORQUES } from "../tables/bolts.ts";

const ksi = 1000 * unitOf("psi").factor;
const footPound = unitOf("lbf·ft").factor;

/** Root stress of the reference torques, Pa. */
export const REFERENCE_STRESS = 50 * ksi;

export interface BoltTorqueInput {
  /** K; about 0.16 to 0.20 lubricated, 0.20 to 0.25 as received. */
  readonly nutFactor: number;
  /** Nominal, m. */
  readonly diameter: number;
  /** Of one bolt, N. */
  readonly load: number;
}

export const boltTorqueMethod = {
  cites: [{ source: "asme-pcc-1", at: "torque T = K D F" }],
  inputs: {
    nutFactor: { name: "nut factor", symbol: "K", quantity: "ratio", atLeast: 0.08, atMost: 0.4 },
    diameter: { name: "bolt diameter", symbol: "D", quantity: "size", above: 0 },
    load: { name: "bolt load", symbol: "F", quantity: "force", atLeast: 0 },
  },
} as const satisfies Method<keyof BoltTorqueInput>;

/**
 * Torque of one bolt, N·m; a torque wrench scatters the load by some 30 % either way.
 * Formula: T = K D F
 * Fails: inputs outside the method's bounds (K 0.08 to 0.40).
 * Source: ASME PCC-1.
 */
export function boltTorque(input: BoltTorqueInput): Result<number> {
  return andThen(checkInputs(boltTorqueMethod, input), () => succeed(input.nutFactor * input.diameter * input.load));
}

/** Torque of the reference table at a root stress in Pa, N·m; nothing for a size it does not list. */
export function referenceTorque(size: string, rootStress: number, stud: "plain" | "coated"): number | undefined {
  const row = REFERENCE_TORQUES.find(([name]) => name === size);
  if (row === undefined) return undefined;
  return (stud === "plain" ? row[1] : row[2]) * footPound * (rootStress / REFERENCE_STRESS);
}
