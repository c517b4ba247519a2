import { checkInputs, type Method } from "../basis/method.ts";
import { nearestNames } from "../basis/nearest.ts";
import { amount, andThen, fail, type Result, succeed } from "../basis/result.ts";
import { ACCEPTANCE_GRADES, type AcceptanceGradeRow, SMALL_PUMP_TOLERANCES } from "../tables/acceptance-grades.ts";

/** What the maker guarantees. */
export interface Guarantee {
  /** m³/s */
  readonly flow: number;
  /** m */
  readonly head: number;
  /** 0 to 1, where guaranteed. */
  readonly efficiency?: number;
}

export interface Band {
  readonly least: number;
  readonly most: number;
}

/** What an acceptance test must show: flow m³/s, head m, efficiency 0 to 1. */
export interface AcceptanceBands {
  readonly flow: Band;
  readonly head: Band;
  readonly leastEfficiency?: number;
}

export const acceptanceMethod = {
  cites: [
    { source: "iso-9906", at: "table 8, tolerance factors; 4.4.3, evaluation of flow and head", unverified: true },
  ],
  inputs: {
    flow: { name: "guaranteed flow", symbol: "Q_G", quantity: "flow", above: 0 },
    head: { name: "guaranteed head", symbol: "H_G", quantity: "head", above: 0 },
  },
} as const satisfies Method<"flow" | "head">;

/**
 * The grade of a name such as "2B".
 * Fails: name-unknown, with the nearest names.
 * Source: ISO 9906, table 8 (from memory).
 */
export function acceptanceGradeNamed(given: string): Result<AcceptanceGradeRow> {
  const wanted = given
    .trim()
    .toUpperCase()
    .replace(/^GRADE\s*/, "");
  const found = ACCEPTANCE_GRADES.find(({ grade }) => grade.toUpperCase() === wanted);
  if (found !== undefined) return succeed(found);
  const names = ACCEPTANCE_GRADES.map(({ grade }) => grade);
  const near = nearestNames(given, names);
  const suggestions = near.length > 0 ? near : names;
  return fail([{ code: "name-unknown", kind: "error", subject: "acceptance grade", given, suggestions }]);
}

/**
 * Bands of a grade around a guarantee, m³/s, m, 0 to 1. A tolerance multiplies the figure, efficiency too.
 * Fails: out-of-range flow or head.
 * Source: ISO 9906, table 8 (from memory).
 */
export function acceptanceBands(grade: AcceptanceGradeRow, guarantee: Guarantee): Result<AcceptanceBands> {
  const { flow, head, efficiency } = guarantee;
  return andThen(checkInputs(acceptanceMethod, { flow, head }), () =>
    succeed(bandsOf(guarantee, grade.flow, grade.head, efficiency === undefined ? undefined : grade.efficiency)),
  );
}

/**
 * Wider bands of pumps with a guaranteed shaft power from 1 to 10 kW, whatever their grade; m³/s, m, 0 to 1.
 * Formula: τ_Q ±10 %, τ_H ±8 %, τ_η −[10 (1 − P/10 kW) + 7] %
 * Fails: acceptance-power-too-small, for a power outside 1 to 10 kW; out-of-range flow or head.
 * Source: ISO 9906, 4.4.2 (from memory).
 */
export function smallPumpBands(guarantee: Guarantee, shaftPower: number): Result<AcceptanceBands> {
  const { flow, head, leastPower, mostPower } = SMALL_PUMP_TOLERANCES;
  if (!(shaftPower >= leastPower && shaftPower <= mostPower)) {
    const facts = { least: amount("power", leastPower), most: amount("power", mostPower) };
    const found = amount("power", shaftPower);
    return fail([{ code: "acceptance-power-too-small", kind: "error", subject: "shaft power", found, facts }]);
  }
  return andThen(checkInputs(acceptanceMethod, { flow: guarantee.flow, head: guarantee.head }), () =>
    succeed(bandsOf(guarantee, [-flow, flow], [-head, head], -(10 * (1 - shaftPower / mostPower) + 7))),
  );
}

function bandsOf(
  { flow, head, efficiency }: Guarantee,
  flowPercent: readonly [number, number],
  headPercent: readonly [number, number],
  efficiencyPercent: number | undefined,
): AcceptanceBands {
  const bands = { flow: bandAround(flow, flowPercent), head: bandAround(head, headPercent) };
  if (efficiency === undefined || efficiencyPercent === undefined) return bands;
  return { ...bands, leastEfficiency: efficiency * (1 + efficiencyPercent / 100) };
}

function bandAround(value: number, [lower, upper]: readonly [number, number]): Band {
  return { least: value * (1 + lower / 100), most: value * (1 + upper / 100) };
}
