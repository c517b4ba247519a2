import { checkInputs, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";

export const pumpsOnLineMethod = {
  cites: [{ source: "mass-balance", at: "air of all runs that one pump draws through" }],
  inputs: {
    pumps: { name: "number of pumps", symbol: "N", quantity: "ratio", atLeast: 1, isWhole: true },
  },
} as const satisfies Method<"pumps">;

/** Holds the number of pumps that a suction line serves against its bounds, where it is stated. */
export function checkPumps(pumps: number | null): Result<null> {
  return pumps === null ? succeed(null) : checkInputs(pumpsOnLineMethod, { pumps });
}
