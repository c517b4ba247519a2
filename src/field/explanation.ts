import type { Deviation, FieldCheck } from "./field-check.ts";

/** What may make a pump differ from its curve. */
export type Explanation =
  | "speed or impeller less"
  | "suction obstructed"
  | "wear or leakage"
  | "flow meter reads low"
  | "flow meter reads high"
  | "cavitation or air"
  | "rubbing, viscosity or density"
  | "system resists more"
  | "system resists less"
  | "speed or impeller more"
  | "motor, drive or power reading"
  | "turns backwards"
  | "scatter";

export interface ExplanationInput {
  /** By flow, the least first. */
  readonly checks: readonly FieldCheck[];
  /** Flow the system was to give with this pump, m³/s; null where nobody says. */
  readonly expectedFlow: number | null;
  /** Of the flow, a part of it. */
  readonly flowUncertainty: number;
  /** The power was read at a meter before motor or drive. */
  readonly isElectric: boolean;
}

type Sign = -1 | 0 | 1;

/** Beyond its uncertainty, and which way; null where it was not measured. */
function signOf(deviation: Deviation | null): Sign | null {
  if (deviation === null) return null;
  const { value, uncertainty } = deviation;
  return Math.abs(value) <= uncertainty ? 0 : value < 0 ? -1 : 1;
}

interface Signs {
  readonly head: Sign;
  readonly efficiency: Sign | null;
  readonly power: Sign | null;
}

/** Of the head of the curve, what a pump that turns backwards gives. Common practice. */
const BACKWARDS = { least: 0.5, most: 0.6 } as const;

/**
 * What could explain the differences of measured points from their curve: what has the signs found, beyond their uncertainty,
 * at every point, and in the order the causes are met. One point leaves several open. None where nothing differs.
 * Source: common practice.
 */
export function explanationsOf(input: ExplanationInput): readonly Explanation[] {
  const { checks } = input;
  const all = checks.map(({ headDeviation, efficiencyDeviation, powerDeviation }) => ({
    head: signOf(headDeviation) as Sign,
    efficiency: signOf(efficiencyDeviation),
    power: signOf(powerDeviation),
  }));
  const [first, last] = [all[0], all.at(-1)];
  if (first === undefined || last === undefined) return [];
  const isOne = all.length === 1;
  const every = (test: (signs: Signs) => boolean): boolean => all.every(test);
  const isAlike = differsBy(checks[0] as FieldCheck, checks.at(-1) as FieldCheck) === 0;
  const fallsAway = isOne || (differsBy(checks[0] as FieldCheck, checks.at(-1) as FieldCheck) < 0 && last.head < 0);
  const matches: readonly (readonly [Explanation, boolean])[] = [
    ["turns backwards", checks.every(isBackwards)],
    ["speed or impeller less", every(({ head, power }) => head < 0 && isOf(power, -1)) && isAlike],
    ["suction obstructed", last.head < 0 && isOf(last.power, -1, 0) && fallsAway && (isOne || first.head === 0)],
    ["wear or leakage", every(({ head, efficiency }) => head < 0 && isOf(efficiency, -1)) && checks.every(isLeaking)],
    ["flow meter reads low", isShiftOfFlow(checks, -1)],
    ["flow meter reads high", isShiftOfFlow(checks, 1)],
    ["cavitation or air", last.head < 0 && isOf(last.power, -1) && fallsAway],
    [
      "rubbing, viscosity or density",
      every(({ head }) => head === 0) && isSeen(all, ({ efficiency, power }) => isOf(efficiency, -1) && isOf(power, 1)),
    ],
    [
      "motor, drive or power reading",
      input.isElectric &&
        every(({ head }) => head === 0) &&
        isSeen(all, ({ efficiency, power }) => isOf(efficiency, -1) && isOf(power, 1)),
    ],
    ["speed or impeller more", every(({ head }) => head > 0)],
    ["system resists more", isOnCurve(all) && flowAgainstExpected(input) < 0],
    ["system resists less", isOnCurve(all) && flowAgainstExpected(input) > 0],
    ["scatter", all.some(({ head }) => head < 0) && all.some(({ head }) => head > 0)],
  ];
  return matches.filter(([, isMet]) => isMet).map(([explanation]) => explanation);
}

/**
 * Power unchanged, or moved as it is by more flow through the impeller than is delivered: higher where the power of the
 * curve rises with flow, lower where it falls.
 */
function isLeaking({ powerDeviation, powerSteepness }: FieldCheck): boolean {
  return isOf(signOf(powerDeviation), 0, Math.sign(powerSteepness ?? 0) as Sign);
}

/**
 * One factor on the flow puts head and power of every point on the curve: the meter reads low (−1) or high (1). At no
 * flow a meter explains nothing, so nothing may differ there.
 */
function isShiftOfFlow(checks: readonly FieldCheck[], side: Sign): boolean {
  const atFlow = checks.filter(({ flow }) => flow > 0);
  const shifts = atFlow.flatMap(({ flowDeviation }) => flowDeviation ?? []);
  const isAlike = shifts.every((one) => shifts.every((other) => areAlike(one, other)));
  return (
    shifts.length > 0 &&
    shifts.length === atFlow.length &&
    isAlike &&
    shifts.every((shift) => signOf(shift) === side) &&
    atFlow.every(
      ({ headDeviation, powerDeviationAtHead }) => signOf(headDeviation) !== 0 && isOf(signOf(powerDeviationAtHead), 0),
    ) &&
    checks.every(
      ({ flow, headDeviation, powerDeviation }) =>
        flow > 0 || (signOf(headDeviation) === 0 && isOf(signOf(powerDeviation), 0)),
    )
  );
}

/** What was not measured rules nothing out. */
function isOf(sign: Sign | null, ...wanted: readonly Sign[]): boolean {
  return sign === null || wanted.includes(sign);
}

/** At every point, and measured at one at least. */
function isSeen(all: readonly Signs[], test: (signs: Signs) => boolean): boolean {
  return all.every(test) && all.some(({ efficiency, power }) => efficiency !== null || power !== null);
}

function isOnCurve(all: readonly Signs[]): boolean {
  return all.every(({ head, efficiency, power }) => head === 0 && efficiency !== -1 && power !== 1);
}

/** Below 0 where the deviation of head falls from one point to the other beyond what the readings leave open, above where it rises. */
function differsBy(one: FieldCheck, other: FieldCheck): number {
  return areAlike(one.headDeviation, other.headDeviation) ? 0 : other.headDeviation.value - one.headDeviation.value;
}

/** Whether what their readings leave open covers the difference of two deviations. */
function areAlike(one: Deviation, other: Deviation): boolean {
  return Math.abs(other.value - one.value) <= Math.hypot(one.uncertainty, other.uncertainty);
}

function isBackwards({ headDeviation: { value, uncertainty } }: FieldCheck): boolean {
  return 1 + value + uncertainty >= BACKWARDS.least && 1 + value - uncertainty <= BACKWARDS.most && value < 0;
}

/** Of the greatest flow measured: the valve is open there. */
function flowAgainstExpected({ checks, expectedFlow, flowUncertainty }: ExplanationInput): number {
  const found = checks.at(-1)?.flow;
  if (expectedFlow === null || found === undefined) return 0;
  return Math.abs(found / expectedFlow - 1) <= flowUncertainty ? 0 : found - expectedFlow;
}
