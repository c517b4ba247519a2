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

/** ν = a t − b/t in mm²/s, up to so many seconds by the first pair and beyond by the second. */
const SHORT = 100;
const LOW = [0.226, 195] as const;
const HIGH = [0.22, 135] as const;

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
  const [a, b] = seconds <= SHORT ? LOW : HIGH;
  const kinematic = a * seconds - b / seconds;
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

/** "150 SSU" or "150 SUS". */
const SSU = /^(\S+)\s*(?:ssu|sus|saybolt(?: universal)?(?: seconds)?)$/i;

/** The seconds of a text that states a viscosity in SSU; nothing for any other text. */
export function sayboltSeconds(text: string): string | undefined {
  return SSU.exec(text.trim())?.[1];
}

/** Saybolt Universal seconds of a kinematic viscosity [m²/s], the inverse of `fromSaybolt`; nothing below 32 s. */
export function toSaybolt(kinematic: number): number | undefined {
  const viscosity = kinematic * 1e6;
  const secondsBy = ([a, b]: readonly [number, number]): number =>
    (viscosity + Math.sqrt(viscosity ** 2 + 4 * a * b)) / (2 * a);
  const short = secondsBy(LOW);
  const seconds = short <= SHORT ? short : secondsBy(HIGH);
  return seconds >= method.inputs.seconds.atLeast ? seconds : undefined;
}
