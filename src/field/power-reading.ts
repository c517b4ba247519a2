import { checkInputs, type Method } from "../basis/method.ts";
import { readNumber, readQuantity, splitAmount } from "../basis/quantity-text.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitNamed } from "../basis/units.ts";

export const powerReadingMethod = {
  cites: [
    { source: "practice", at: "three-phase power √3 V I cos φ; a disc meter's constant is its watt-hours a turn" },
  ],
  inputs: {
    voltage: { name: "line voltage", symbol: "V", quantity: "voltage", above: 0, atMost: 50_000 },
    current: { name: "line current", symbol: "I", quantity: "current", above: 0, atMost: 1e5 },
    powerFactor: { name: "power factor", symbol: "cos φ", quantity: "ratio", above: 0, atMost: 1 },
    meterConstant: { name: "watt-hours a turn", quantity: "ratio", above: 0, atMost: 1e5 },
    turns: { name: "turns of the disc", quantity: "ratio", above: 0, atMost: 1e6 },
    time: { name: "time of the turns", quantity: "duration", above: 0, atMost: 1e6 },
    meterRatio: { name: "ratio of the transformers", quantity: "ratio", above: 0, atMost: 1e6 },
  },
} as const satisfies Method<string>;

const ONE = { voltage: 1, current: 1, powerFactor: 1, meterConstant: 1, turns: 1, time: 1, meterRatio: 1 };

/**
 * Power of a three-phase supply, W.
 * Formula: P = √3 V I cos φ
 * Fails: out-of-range inputs.
 */
export function threePhasePower(reading: {
  readonly voltage: number;
  readonly current: number;
  readonly powerFactor: number;
}): Result<number> {
  return andThen(checkInputs(powerReadingMethod, { ...ONE, ...reading }), () =>
    succeed(Math.sqrt(3) * reading.voltage * reading.current * reading.powerFactor),
  );
}

/**
 * Power by the turns of a disc meter, W: its constant is watt-hours a turn.
 * Formula: P = 3600 K_h n/t × ratio of the transformers
 * Fails: out-of-range inputs.
 */
export function discMeterPower(reading: {
  readonly meterConstant: number;
  readonly turns: number;
  readonly time: number;
  readonly meterRatio: number;
}): Result<number> {
  return andThen(checkInputs(powerReadingMethod, { ...ONE, ...reading }), () =>
    succeed((3600 * reading.meterConstant * reading.turns * reading.meterRatio) / reading.time),
  );
}

export const POWER_EXAMPLES = ["“26.8 kW”", "“62 A, 460 V, pf 0.86”", "“Kh 3.6, 10 turns in 42 s, ratio 40”"] as const;

const FACTOR = /^(?:pf|power factor|cos\s*(?:φ|phi))\s*[=:]?\s*(\S+)$/i;
const CONSTANT = /^(?:kh|meter constant)\s*[=:]?\s*(\S+)$/i;
const TURNS = /^(\S+)\s*(?:turns?|revs?|revolutions?)\s*(?:in|per|\/)\s*(\S.*)$/i;
const RATIO = /^(?:ratio|ct|multiplier)\s*[=:]?\s*(\S+)$/i;

/**
 * Electric power as it is read on site, W: an amount, "62 A, 460 V, pf 0.86" of three phases, or the turns of a disc meter.
 * Fails: power-factor-missing, amps that no power factor goes with; power-reading-unreadable; as the two methods and
 * `readQuantity`.
 */
export function powerReadingNamed(given: string, subject: string): Result<number> {
  const parts = given.split(/[;]|,(?!\d)/).map((part) => part.trim());
  if (parts.length === 1 && CONSTANT.exec(given) === null) return readQuantity(given, "electricPower", subject);
  const read: Partial<Record<keyof typeof ONE, number>> = {};
  const findings: Finding[] = [];
  const take = (key: keyof typeof ONE, number: Result<number>): void => {
    findings.push(...number.findings);
    if (number.ok) read[key] = number.value;
  };
  for (const part of parts) {
    const [factor, constant, turns, ratio] = [FACTOR, CONSTANT, TURNS, RATIO].map((form) => form.exec(part));
    const dimension = unitNamed(splitAmount(part)?.unit ?? "")?.dimension;
    if (factor) take("powerFactor", readNumber(factor[1] as string, subject));
    else if (constant) take("meterConstant", readNumber(constant[1] as string, subject));
    else if (ratio) take("meterRatio", readNumber(ratio[1] as string, subject));
    else if (turns) {
      take("turns", readNumber(turns[1] as string, subject));
      take("time", readQuantity(turns[2] as string, "duration", subject));
    } else if (dimension === "current") take("current", readQuantity(part, "current", subject));
    else if (dimension === "voltage") take("voltage", readQuantity(part, "voltage", subject));
    else findings.push(unreadable(given, subject));
  }
  if (findings.some(({ kind }) => kind === "error")) return fail(findings.slice(0, 1));
  const { voltage, current, powerFactor, meterConstant, turns, time, meterRatio = 1 } = read;
  if (meterConstant !== undefined && turns !== undefined && time !== undefined) {
    return discMeterPower({ meterConstant, turns, time, meterRatio });
  }
  if (voltage === undefined || current === undefined) return fail([unreadable(given, subject)]);
  if (powerFactor === undefined) return fail([{ code: "power-factor-missing", kind: "error", subject, given }]);
  return threePhasePower({ voltage, current, powerFactor });
}

function unreadable(given: string, subject: string): Finding {
  return { code: "power-reading-unreadable", kind: "error", subject, given, suggestions: POWER_EXAMPLES };
}
