import { fail, type Result, succeed } from "../basis/result.ts";
import { FREQUENCIES, type Frequency } from "./motor-speed.ts";

/** How the two are written. */
export const FREQUENCY_NAMES = FREQUENCIES.map((frequency) => `${frequency} Hz`);

/** A frequency of the mains: "60", "60 Hz", "50hz". Fails: choice-unknown for any other. */
export function frequencyNamed(given: string, subject: string): Result<Frequency> {
  const wanted = given.trim().replace(/ *hz$/i, "");
  const found = FREQUENCIES.find((frequency) => String(frequency) === wanted);
  if (found !== undefined) return succeed(found);
  return fail([{ code: "choice-unknown", kind: "error", subject, given, suggestions: FREQUENCY_NAMES }]);
}

/** Line voltages met at one frequency alone, V, least and most. Common practice, as IEC 60038 and ANSI C84.1 have them. */
const OF_ONE_FREQUENCY: readonly (readonly [least: number, most: number, frequency: Frequency])[] = [
  [395, 420, 50],
  [655, 700, 50],
  [205, 212, 60],
  [438, 490, 60],
  [545, 610, 60],
];

/** The frequency that a line voltage says; nothing where it is met at both, such as 230 V or 380 V. */
export function frequencyOfVoltage(volts: number): Frequency | undefined {
  return OF_ONE_FREQUENCY.find(([least, most]) => volts >= least && volts <= most)?.[2];
}
