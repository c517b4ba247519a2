import type { Citation } from "../basis/citation.ts";
import { CLEAN_STRAINER } from "../tables/fittings-fixed.ts";
import { BASKET_STRAINER } from "../tables/fittings-trade.ts";
import { BRANCHES } from "./branch-fitting.ts";
import { FLOW_COEFFICIENT_DEFINITION } from "./flow-coefficient.ts";
import { GRADUAL_CHANGE, SUDDEN_WIDENING } from "./size-change.ts";

/** A form of text that carries its own figure or size, with what a list of fittings shows of it. */
export interface FittingForm {
  readonly example: string;
  readonly also: string;
  readonly basis: "K" | "Cv" | "Kv";
  readonly value: string;
  readonly cites: Citation;
}

export const GIVEN: Citation = { source: "practice", at: "coefficient given by the writer" };

export const FITTING_FORMS: readonly FittingForm[] = [
  form("K 3.2", "K = 3.2", "K", "as given", GIVEN),
  form("Cv 1000", "US gpm at 1 psi", "Cv", "2 Δp A² / (ρ Cv²)", FLOW_COEFFICIENT_DEFINITION),
  form("Kv 865", "m³/h at 1 bar", "Kv", "2 Δp A² / (ρ Kv²)", FLOW_COEFFICIENT_DEFINITION),
  form("strainer 50 % blocked", "any share below 100 %", "K", "K clean / (1 − b)²", CLEAN_STRAINER.cites),
  form("basket strainer 50 % blocked", "any share below 100 %", "K", "K clean / (1 − b)²", BASKET_STRAINER.cites),
  form("pinch valve ID 80 mm", "sleeve below the bore", "K", "[0.5 (1 − β²) + (1 − β²)² + 0.2] / β⁴", SUDDEN_WIDENING),
  form(
    "magmeter ID 150 mm",
    "flow meter one size down, with its reducers",
    "K",
    "sin 8° (1 − β²) [0.8 + 2.6 (1 − β²)] / β⁴",
    GRADUAL_CHANGE,
  ),
  form("hose coupling ID 140 mm", "hose shank, narrow tail-piece", "K", "0.5 (1 − β²) + (1 − β²)²", SUDDEN_WIDENING),
  form("sudden expansion to 8in sch40", "sudden enlargement, from or to", "K", "(1 − β²)²", SUDDEN_WIDENING),
  form("sudden contraction from 8in sch40", "from or to", "K", "0.5 (1 − β²)", GRADUAL_CHANGE),
  form(
    "reducer 8x6",
    "two nominal sizes, in the pipe of either; increaser 6x8",
    "K",
    "as a cone of 30°",
    GRADUAL_CHANGE,
  ),
  form(
    "tee joining branch 50 %",
    "manifold inlet; wye 45 joining; run; share of the flow",
    "K",
    "TP-410, joining",
    BRANCHES,
  ),
  form("tee dividing branch 50 %", "manifold take-off; wye 45 dividing", "K", "TP-410, dividing", BRANCHES),
  form("manifold take-off 33 % ID 150 mm", "bore of the branch", "K", "1 + (V branch / V header)²", BRANCHES),
  form("expander to 8in sch40 30 deg", "gradual expansion, increaser", "K", "2.6 sin(θ/2) (1 − β²)²", GRADUAL_CHANGE),
  form("reducer from 8in sch40 30 deg", "gradual contraction", "K", "0.8 sin(θ/2) (1 − β²)", GRADUAL_CHANGE),
];

function form(example: string, also: string, basis: FittingForm["basis"], value: string, cites: Citation): FittingForm {
  return { example, also, basis, value, cites };
}
