import { isAtMost } from "../basis/at-most.ts";
import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { all, amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import { brent } from "../numeric/brent.ts";
import { slopeAt } from "../numeric/pchip.ts";
import { acceptanceMethod } from "../pump/acceptance.ts";
import type { PumpCurve } from "../pump/pump-curve.ts";
import { efficiencyAtFlow, headAtFlow, headOf, shaftPowerAtFlow } from "../pump/pump-reading.ts";
import { type RunningPump, runningPump, runningPumpMethod } from "../pump/running-pump.ts";
import type { AcceptanceGradeRow } from "../tables/acceptance-grades.ts";
import { rootSumSquare, type Uncertainty, uncertaintyOf } from "./uncertainty.ts";

/** What was measured at one setting of the valve. */
export interface FieldPoint {
  /** m³/s */
  readonly flow: number;
  /** m */
  readonly head: number;
  /** W, with the liquid as pumped; null where it was not measured. */
  readonly shaftPower: number | null;
  /** Speed over that of the curve. */
  readonly speedRatio: number;
}

/** Of each reading, at two standard deviations. */
export interface FieldUncertainties {
  readonly flow: Uncertainty | null;
  readonly head: Uncertainty | null;
  readonly power: Uncertainty | null;
  readonly speed: Uncertainty | null;
}

export interface FieldCheckInput {
  readonly curve: PumpCurve;
  readonly trimRatio: number;
  readonly points: readonly FieldPoint[];
  readonly uncertainties: FieldUncertainties;
  /** The grade the pump was bought with. */
  readonly grade: AcceptanceGradeRow | null;
  /** kg/m³ */
  readonly density: number;
}

/** A measured figure over that of the curve less 1, and how far that may be off at two standard deviations. */
export interface Deviation {
  readonly value: number;
  readonly uncertainty: number;
}

export type FieldVerdict = "within" | "cannot tell with these gauges" | "outside";

/** Null where the point has no such figure, or the curve none there. */
export interface FieldCheck extends FieldPoint {
  /** At the measured flow and speed: m, 0 to 1, W. */
  readonly curveHead: number;
  readonly curveEfficiency: number | null;
  readonly curvePower: number | null;
  readonly efficiency: number | null;
  readonly headDeviation: Deviation;
  /** Of the flow at the measured head. */
  readonly flowDeviation: Deviation | null;
  readonly efficiencyDeviation: Deviation | null;
  readonly powerDeviation: Deviation | null;
  /** Of the power, at the flow where the curve has the measured head. */
  readonly powerDeviationAtHead: Deviation | null;
  /** d ln P/d ln Q of the curve: above 0 where its power rises with flow. */
  readonly powerSteepness: number | null;
  readonly verdict: FieldVerdict;
}

const HOUSE_BAND = { source: "house", at: "a band of ±5 % of head where no grade of acceptance is stated" } as const;

export const fieldCheckMethod = {
  cites: [
    ...acceptanceMethod.cites,
    { source: "jcgm-100", at: "5.1, combined uncertainty of independent readings" },
    ...runningPumpMethod.cites,
    HOUSE_BAND,
  ],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 },
    head: { name: "head", symbol: "H", quantity: "head", above: 0 },
    shaftPower: { name: "shaft power", symbol: "P", quantity: "power", above: 0 },
    density: { name: "density", symbol: "ρ", quantity: "density", above: 0 },
  },
} as const satisfies Method<"flow" | "head" | "shaftPower" | "density">;

/** Of head, where no grade is stated. House choice. */
const BAND_WITHOUT_GRADE: readonly [lower: number, upper: number] = [-0.05, 0.05];

/**
 * Measured points held against the curve of their pump, carried to the speed of each: deviations of head, flow,
 * efficiency and power, their uncertainty, and whether each point lies within the band.
 * Formula: H_c = r² H(Q/r), P_c with r³; δ = measured/curve − 1; u_δH² = (u_H/H)² + (Q/H dH/dQ u_Q/Q)² + (2 u_n/n)²;
 * within: δ ± u inside the band; outside: δ ± u beyond it; else nobody can tell with these gauges
 * Fails: as `runningPump` and `headAtFlow`; out-of-range points.
 * Warns: band-of-house; field-no-guarantee; instrument-assumed; what `runningPump` says of the speed.
 * Source: ISO 9906 for the band (factors from memory); JCGM 100, 5.1.
 */
export function fieldCheck(input: FieldCheckInput): Result<readonly FieldCheck[]> {
  return andThen(all(input.points.map((point) => checkPoint(input, point))), (checks) => {
    const said: Finding[] = [input.grade === null ? BAND_TAKEN : noGuarantee(input.grade)];
    return succeed(checks, said);
  });
}

const BAND_TAKEN: Finding = {
  code: "band-of-house",
  kind: "assumed",
  subject: "band",
  found: amount("percent", BAND_WITHOUT_GRADE[1]),
  cites: HOUSE_BAND,
};

function noGuarantee({ grade }: AcceptanceGradeRow): Finding {
  const [cites] = acceptanceMethod.cites;
  return { code: "field-no-guarantee", kind: "check", subject: "band", given: grade, cites };
}

function checkPoint(input: FieldCheckInput, point: FieldPoint): Result<FieldCheck> {
  const { curve, trimRatio, density, uncertainties } = input;
  const { flow, head, shaftPower, speedRatio } = point;
  const checked = checkInputs(fieldCheckMethod, { flow, head, shaftPower: shaftPower ?? 1, density });
  if (!checked.ok) return checked;
  return andThen(runningPump({ curve, speedRatio, trimRatio }), (pump) =>
    andThen(headAtFlow(pump, flow), (curveHead) =>
      andThen(relativesOf(point, uncertainties), (of) => {
        const slope = headSlope(pump, flow);
        const ofHead = rootSumSquare(of.head, ((slope * flow) / head) * of.flow, 2 * of.speed);
        const headDeviation = { value: head / curveHead - 1, uncertainty: ofHead };
        const curveEfficiency = given(efficiencyAtFlow(pump, flow));
        const powerAt = (at: number): number | null => given(shaftPowerAtFlow(pump, at, density));
        const curvePower = powerAt(flow);
        const powerSteepness = curvePower === null ? null : steepness(flow, powerAt);
        const waterPower = density * STANDARD_GRAVITY * flow * head;
        const efficiency = shaftPower === null || flow === 0 ? null : waterPower / shaftPower;
        const measured: Omit<FieldCheck, "verdict"> = {
          ...point,
          curveHead,
          curveEfficiency,
          curvePower,
          efficiency,
          headDeviation,
          flowDeviation: flowDeviation(pump, point, of),
          efficiencyDeviation: deviation(
            efficiency,
            curveEfficiency,
            of.flow,
            of.head,
            of.power,
            steepness(flow, (at) => given(efficiencyAtFlow(pump, at))) * of.flow,
          ),
          powerDeviation: deviation(shaftPower, curvePower, of.power, (powerSteepness ?? 0) * of.flow, 3 * of.speed),
          powerDeviationAtHead: powerDeviationAtHead(pump, point, of, powerAt),
          powerSteepness,
        };
        return succeed({ ...measured, verdict: verdictOf(measured, input.grade) });
      }),
    ),
  );
}

interface Relatives {
  readonly flow: number;
  readonly head: number;
  readonly power: number;
  readonly speed: number;
}

/** Uncertainties of the readings, each over its reading. */
function relativesOf({ flow, head, shaftPower }: FieldPoint, stated: FieldUncertainties): Result<Relatives> {
  const none = succeed(0);
  return andThen(flow === 0 ? none : uncertaintyOf(flow, stated.flow, "flow"), (ofFlow) =>
    andThen(uncertaintyOf(head, stated.head, "head"), (ofHead) =>
      andThen(shaftPower === null ? none : uncertaintyOf(shaftPower, stated.power, "power"), (ofPower) =>
        andThen(uncertaintyOf(1, stated.speed, "speed"), (ofSpeed) =>
          succeed({
            flow: flow === 0 ? 0 : ofFlow / flow,
            head: ofHead / head,
            power: shaftPower === null ? 0 : ofPower / shaftPower,
            speed: ofSpeed,
          }),
        ),
      ),
    ),
  );
}

function given(read: Result<number>): number | null {
  return read.ok ? read.value : null;
}

/** dH/dQ of the running pump, m over m³/s. */
function headSlope({ curve, flowFactor, headFactor }: RunningPump, flow: number): number {
  return (
    (headFactor / flowFactor) *
    slopeAt(curve.head, Math.min(Math.max(flow / flowFactor, curve.leastFlow), curve.mostFlow))
  );
}

/** d ln f/d ln Q by a small step to each side, to one side at an end; 0 where the curve gives nothing. */
function steepness(flow: number, read: (flow: number) => number | null): number {
  const here = read(flow);
  if (here === null || here === 0 || flow === 0) return 0;
  const step = 1e-4 * flow;
  const [before, after] = [read(flow - step), read(flow + step)];
  if (before !== null && after !== null) return ((after - before) / (2 * step)) * (flow / here);
  const rise = before === null ? (after === null ? 0 : after - here) : here - before;
  return (rise / step) * (flow / here);
}

function deviation(measured: number | null, of: number | null, ...parts: readonly number[]): Deviation | null {
  if (measured === null || of === null || of === 0) return null;
  return { value: measured / of - 1, uncertainty: rootSumSquare(...parts) };
}

/** Where the curve has the measured head, the nearest place there is: its flow, and d ln Q/d ln H there. */
function placeAtHead(pump: RunningPump, { flow, head }: FieldPoint): { flow: number; perHead: number } | null {
  const knots = pump.curve.head.x.map((x) => x * pump.flowFactor);
  const roots = knots.flatMap((to, i) => {
    const from = knots[i - 1];
    return from === undefined ? [] : (brent((at) => headOf(pump, at) - head, from, to) ?? []);
  });
  if (roots.length === 0 || flow === 0) return null;
  const nearest = roots.reduce((best, root) => (Math.abs(root - flow) < Math.abs(best - flow) ? root : best));
  const steep = headSlope(pump, nearest) * nearest;
  return nearest === 0 || steep === 0 ? null : { flow: nearest, perHead: head / steep };
}

/** Measured flow over that of the curve at the measured head. */
function flowDeviation(pump: RunningPump, point: FieldPoint, of: Relatives): Deviation | null {
  const there = placeAtHead(pump, point);
  if (there === null) return null;
  const { perHead } = there;
  return {
    value: point.flow / there.flow - 1,
    uncertainty: rootSumSquare(of.flow, perHead * of.head, (2 * perHead - 1) * of.speed),
  };
}

/** Measured power over that of the curve at the measured head: what a wrong flow meter does not touch. */
function powerDeviationAtHead(
  pump: RunningPump,
  point: FieldPoint,
  of: Relatives,
  powerAt: (flow: number) => number | null,
): Deviation | null {
  const there = placeAtHead(pump, point);
  if (there === null) return null;
  const perHead = steepness(there.flow, powerAt) * there.perHead;
  return deviation(point.shaftPower, powerAt(there.flow), of.power, perHead * of.head, (3 - 2 * perHead) * of.speed);
}

/**
 * Flow and head as an acceptance test has them: either within its band is enough. Efficiency and power are held against a
 * grade alone, which sets them a bound on one side.
 */
function verdictOf(
  { headDeviation, flowDeviation, efficiencyDeviation, powerDeviation }: Omit<FieldCheck, "verdict">,
  grade: AcceptanceGradeRow | null,
): FieldVerdict {
  if (grade === null) return inBand(headDeviation, ...BAND_WITHOUT_GRADE);
  const percent = ([lower, upper]: readonly [number, number]): [number, number] => [lower / 100, upper / 100];
  const byHead = inBand(headDeviation, ...percent(grade.head));
  const byFlow = flowDeviation === null ? byHead : inBand(flowDeviation, ...percent(grade.flow));
  const { power } = grade;
  return worst([
    best(byHead, byFlow),
    ...(efficiencyDeviation === null
      ? []
      : [inBand(efficiencyDeviation, grade.efficiency / 100, Number.POSITIVE_INFINITY)]),
    ...(powerDeviation === null || power === null
      ? []
      : [inBand(powerDeviation, Number.NEGATIVE_INFINITY, power / 100)]),
  ]);
}

/** A deviation against its band: what its uncertainty leaves no doubt of, either way. */
export function inBand({ value, uncertainty }: Deviation, lower: number, upper: number): FieldVerdict {
  if (isAtMost(lower, value - uncertainty) && isAtMost(value + uncertainty, upper)) return "within";
  const isOutside = !isAtMost(lower, value + uncertainty) || !isAtMost(value - uncertainty, upper);
  return isOutside ? "outside" : "cannot tell with these gauges";
}

const GRAVITY: readonly FieldVerdict[] = ["within", "cannot tell with these gauges", "outside"];

function best(...verdicts: readonly FieldVerdict[]): FieldVerdict {
  return GRAVITY.find((one) => verdicts.includes(one)) as FieldVerdict;
}

function worst(verdicts: readonly FieldVerdict[]): FieldVerdict {
  return GRAVITY.findLast((one) => verdicts.includes(one)) as FieldVerdict;
}
