import { checkInputs, type Method } from "../basis/method.ts";
import { type Finding, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";

/** Which units the flow and the head of a specific speed are in; the speed is in rpm in both. */
export type SpecificSpeedConvention = "US" | "SI";

export interface SpecificSpeedInput {
  /** r/s */
  readonly speed: number;
  /** At best efficiency, m³/s. */
  readonly flow: number;
  /** At best efficiency, of one stage, m. */
  readonly head: number;
  readonly convention: SpecificSpeedConvention;
}

export const specificSpeedMethod = {
  cites: [{ source: "ansi-hi-14.1-14.2", at: "specific speed" }],
  inputs: {
    speed: { name: "speed", symbol: "n", quantity: "speed", above: 0 },
    flow: { name: "flow", symbol: "Q", quantity: "flow", above: 0 },
    head: { name: "head", symbol: "H", quantity: "head", above: 0 },
  },
} as const satisfies Method<"speed" | "flow" | "head">;

/**
 * Specific speed at best efficiency, one stage, largest diameter; the whole flow, of a double-suction impeller too.
 * Formula: n √Q/H^0.75, n in rpm, Q and H in US gpm and ft (N_s) or m³/s and m (n_s); N_s = 51.645 n_s
 * Fails: out-of-range inputs as the method bounds them.
 * Source: ANSI/HI 14.1-14.2.
 */
export function specificSpeed({ convention, ...duty }: SpecificSpeedInput): Result<number> {
  const checked = checkInputs(specificSpeedMethod, duty);
  return checked.ok ? succeed(inConvention(duty.speed, duty.flow, duty.head, convention)) : checked;
}

export interface SuctionSpecificSpeedInput {
  /** r/s */
  readonly speed: number;
  /** At best efficiency through one eye of the impeller, m³/s. */
  readonly flow: number;
  /** NPSH required at best efficiency, 3 % head drop, m. */
  readonly npshRequired: number;
  readonly convention: SpecificSpeedConvention;
}

export const suctionSpecificSpeedMethod = {
  cites: [{ source: "ansi-hi-9.6.1", at: "suction specific speed" }],
  inputs: {
    speed: specificSpeedMethod.inputs.speed,
    flow: specificSpeedMethod.inputs.flow,
    npshRequired: { name: "NPSHR", symbol: "NPSH3", quantity: "head", above: 0 },
  },
} as const satisfies Method<"speed" | "flow" | "npshRequired">;

/** Above this the range of stable flow is narrow (US units). */
export const HIGH_SUCTION_SPECIFIC_SPEED = 11_000;

/**
 * Suction specific speed at best efficiency: as `specificSpeed`, with NPSHR for the head and the flow through one eye.
 * Fails: out-of-range inputs as the method bounds them.
 * Warns: caution suction-specific-speed-high above 11 000 in US units (213 in SI), common practice.
 * Source: ANSI/HI 9.6.1.
 */
export function suctionSpecificSpeed({ convention, ...duty }: SuctionSpecificSpeedInput): Result<number> {
  const checked = checkInputs(suctionSpecificSpeedMethod, duty);
  if (!checked.ok) return checked;
  const { speed, flow, npshRequired } = duty;
  const value = inConvention(speed, flow, npshRequired, convention);
  const most = HIGH_SUCTION_SPECIFIC_SPEED / (convention === "US" ? 1 : US_PER_SI);
  return succeed(value, value > most ? [high(value, most)] : []);
}

const gallonsPerMinute = unitOf("US gpm").factor;
const foot = unitOf("ft").factor;
const rpm = unitOf("rpm").factor;
/** Specific speed in US units over the same in SI: 51.645. */
export const US_PER_SI = foot ** 0.75 / Math.sqrt(gallonsPerMinute);

function inConvention(speed: number, flow: number, head: number, convention: SpecificSpeedConvention): number {
  const [flowUnit, headUnit] = convention === "US" ? [gallonsPerMinute, foot] : [1, 1];
  return ((speed / rpm) * Math.sqrt(flow / flowUnit)) / (head / headUnit) ** 0.75;
}

function high(value: number, most: number): Finding {
  return {
    code: "suction-specific-speed-high",
    kind: "check",
    subject: "suction specific speed",
    facts: { value: Math.round(value), most: Math.round(most) },
    cites: { source: "practice", at: "suction specific speed above 11 000 (US) narrows the range of stable flow" },
  };
}
