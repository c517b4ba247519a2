import { checkInputs, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";

const method = {
  cites: [
    { source: "practice", at: "short form of the Saybolt Universal conversion; ASTM D2161 where it must be exact" },
  ],
  inputs: {
    seconds: { name: "Saybolt viscosity", symbol: "t", quantity: "duration", atLeast: 32 },
  },
} as const satisfies Method<"seconds">;

/**
 * Kinematic viscosity from Saybolt Universal seconds, SSU [m²/s]; a short form within 2 % of ASTM D2161.
 * Formula: ν = 0.226 t − 195/t up to 100 s, 0.220 t − 135/t above, in mm²/s
 * Fails: out-of-range inputs as the method bounds them.
 * Warns: viscosity-from-saybolt.
 * Source: common practice.
 */
export function fromSaybolt(seconds: number): Result<number> {
  const checked = checkInputs(method, { seconds });
  if (!checked.ok) return checked;
  const kinematic = seconds <= 100 ? 0.226 * seconds - 195 / seconds : 0.22 * seconds - 135 / seconds;
  return succeed(kinematic * 1e-6, [
    {
      code: "viscosity-from-saybolt",
      kind: "check",
      subject: "viscosity",
      facts: { seconds },
      cites: method.cites[0],
    },
  ]);
}
