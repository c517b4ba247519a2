import { isAtMost } from "../basis/at-most.ts";
import { SPECIFIC_GRAVITY_REFERENCE } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import { brent } from "../numeric/brent.ts";
import { greatestOf, leastOf } from "../numeric/extremes.ts";
import { valueAt } from "../numeric/pchip.ts";
import type { AcceptanceGradeRow } from "../tables/acceptance-grades.ts";
import { type AcceptanceBands, acceptanceBands, acceptanceMethod, type Band, type Guarantee } from "./acceptance.ts";
import type { PumpCurve } from "./pump-curve.ts";
import { efficiencyAtFlow, shaftPowerAtFlow } from "./pump-reading.ts";
import { asGiven } from "./running-pump.ts";

export interface AcceptanceTestInput {
  /** Through the points as measured, carried to the rated speed. */
  readonly curve: PumpCurve;
  readonly grade: AcceptanceGradeRow;
  readonly guarantee: Guarantee & {
    /** W, where guaranteed. */
    readonly power?: number;
  };
}

const acceptanceTestMethod = {
  cites: acceptanceMethod.cites,
  inputs: {
    guaranteedEfficiency: { name: "guaranteed efficiency", symbol: "η_G", quantity: "percent", above: 0, atMost: 1 },
    guaranteedPower: { name: "guaranteed power", symbol: "P_G", quantity: "power", above: 0 },
  },
} as const satisfies Method<"guaranteedEfficiency" | "guaranteedPower">;

export type AcceptanceVerdict = "met" | "not met" | "cannot be judged";

/** Null where the curve does not reach, or nothing is guaranteed. */
export interface AcceptanceTest {
  readonly bands: AcceptanceBands;
  /** Measured head at the guaranteed flow, m. */
  readonly headAtFlow: number | null;
  /** Measured flow at the guaranteed head, m³/s: the one nearest the guarantee. */
  readonly flowAtHead: number | null;
  readonly flowAndHead: AcceptanceVerdict;
  /** Where the line from nothing through the guarantee meets the measured curve, 0 to 1. */
  readonly efficiency: number | null;
  /** There, W. */
  readonly power: number | null;
  readonly greatestPower: number | null;
  readonly verdict: AcceptanceVerdict;
}

/** Points a test of grade 1 takes at least; 3 of the others, which is what a curve is drawn through. From memory. */
const POINTS_OF_GRADE_1 = 5;
/** Flows over the guaranteed one between which points are to lie. Edition of 1999. */
const NEAR: Band = { least: 0.9, most: 1.1 };

/**
 * A measured curve held against a guarantee by a grade: met where it cuts or touches either bar of the cross, that of
 * head at the guaranteed flow or that of flow at the guaranteed head; efficiency and power where the line from the origin
 * through the guarantee meets it. A curve is not extended: a bar it ends before is not judged.
 * Fails: out-of-range figures of the guarantee.
 * Warns: acceptance-too-few-points; acceptance-no-point-near; acceptance-curve-ends.
 * Source: ISO 9906:2012, 4.4.3, which ANSI/HI 14.6 shares; factors of table 8 from memory.
 */
export function acceptanceTest({ curve, grade, guarantee }: AcceptanceTestInput): Result<AcceptanceTest> {
  const { efficiency: guaranteedEfficiency = 1, power: guaranteedPower = 1 } = guarantee;
  const checked = checkInputs(acceptanceTestMethod, { guaranteedEfficiency, guaranteedPower });
  if (!checked.ok) return checked;
  return andThen(acceptanceBands(grade, guarantee), (bands) => {
    const least = /^1[BEU]$|class 1$/.test(grade.grade) ? POINTS_OF_GRADE_1 : 3;
    const given = curve.points.length;
    const findings: Finding[] = [];
    if (given < least) {
      const [cites] = acceptanceMethod.cites;
      findings.push({
        code: "acceptance-too-few-points",
        kind: "check",
        subject: "points",
        facts: { given, least },
        cites,
      });
    }
    const isNear = ({ flow }: { readonly flow: number }): boolean =>
      flow >= NEAR.least * guarantee.flow && flow <= NEAR.most * guarantee.flow;
    if (!curve.points.some(isNear)) {
      findings.push({ code: "acceptance-no-point-near", kind: "check", subject: "points" });
    }
    const either = [headMeets(curve, guarantee, bands), flowMeets(curve, guarantee, bands)];
    const flowAndHead = eitherOf(either);
    if (flowAndHead === "cannot be judged") {
      const limit = { quantity: "flow", value: curve.mostFlow, side: "at most" } as const;
      findings.push({ code: "acceptance-curve-ends", kind: "check", subject: "curve", limit });
    }
    const onRay = rayFlow(curve, guarantee);
    const read = onRay === undefined ? undefined : efficiencyAtFlow(asGiven(curve), onRay);
    const taken = onRay === undefined ? undefined : shaftPowerAtFlow(asGiven(curve), onRay, SPECIFIC_GRAVITY_REFERENCE);
    const efficiency = read?.ok ? read.value : null;
    const power = taken?.ok ? taken.value : null;
    const greatestPower =
      guarantee.power === undefined || grade.power === null ? null : guarantee.power * (1 + grade.power / 100);
    const judged: AcceptanceVerdict[] = [flowAndHead];
    if (bands.leastEfficiency !== undefined) judged.push(atMost(bands.leastEfficiency, efficiency));
    if (greatestPower !== null) judged.push(atMost(power, greatestPower));
    if (given < least) judged.push("cannot be judged");
    return succeed(
      {
        bands,
        headAtFlow: covers(curve, guarantee.flow) ? valueAt(curve.head, guarantee.flow) : null,
        flowAtHead: flowNearest(curve, guarantee),
        flowAndHead,
        efficiency,
        power,
        greatestPower,
        verdict: worstOf(judged),
      },
      findings,
    );
  });
}

/** One that is met is enough; broken where both are. */
function eitherOf(verdicts: readonly AcceptanceVerdict[]): AcceptanceVerdict {
  if (verdicts.includes("met")) return "met";
  return verdicts.includes("cannot be judged") ? "cannot be judged" : "not met";
}

/** What is broken goes before what is open. */
function worstOf(verdicts: readonly AcceptanceVerdict[]): AcceptanceVerdict {
  if (verdicts.includes("not met")) return "not met";
  return verdicts.includes("cannot be judged") ? "cannot be judged" : "met";
}

function atMost(found: number | null, limit: number | null): AcceptanceVerdict {
  if (found === null || limit === null) return "cannot be judged";
  return isAtMost(found, limit) ? "met" : "not met";
}

function covers({ leastFlow, mostFlow }: PumpCurve, flow: number): boolean {
  return flow >= leastFlow && flow <= mostFlow;
}

function headMeets(curve: PumpCurve, { flow }: Guarantee, { head }: AcceptanceBands): AcceptanceVerdict {
  if (!covers(curve, flow)) return "cannot be judged";
  const measured = valueAt(curve.head, flow);
  return isAtMost(head.least, measured) && isAtMost(measured, head.most) ? "met" : "not met";
}

/** The bar of flow is cut where the measured head passes through the guaranteed one between the ends of the bar. */
function flowMeets(curve: PumpCurve, { head }: Guarantee, { flow }: AcceptanceBands): AcceptanceVerdict {
  const from = Math.max(flow.least, curve.leastFlow);
  const to = Math.min(flow.most, curve.mostFlow);
  if (from > to) return "cannot be judged";
  const heads = [from, ...curve.head.x.filter((x) => x > from && x < to), to].map((place) =>
    valueAt(curve.head, place),
  );
  if (isAtMost(leastOf(heads), head) && isAtMost(head, greatestOf(heads))) return "met";
  const isDecided = covers(curve, flow.least) && (covers(curve, flow.most) || (heads.at(-1) as number) < head);
  return isDecided ? "not met" : "cannot be judged";
}

/** Flow at which the line from nothing through the guarantee meets the measured curve, m³/s. */
function rayFlow(curve: PumpCurve, { flow, head }: Guarantee): number | undefined {
  return brent((tried) => valueAt(curve.head, tried) * flow - head * tried, curve.leastFlow, curve.mostFlow);
}

function flowNearest({ head: measured }: PumpCurve, { flow, head }: Guarantee): number | null {
  const roots = measured.x.flatMap((to, i) => {
    const from = measured.x[i - 1];
    return from === undefined ? [] : (brent((tried) => valueAt(measured, tried) - head, from, to) ?? []);
  });
  return roots.length === 0
    ? null
    : roots.reduce((best, root) => (Math.abs(root - flow) < Math.abs(best - flow) ? root : best));
}
