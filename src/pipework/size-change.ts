import type { Citation } from "../basis/citation.ts";
import { amount, fail, type Result, succeed } from "../basis/result.ts";
import type { Fitting } from "./fitting.ts";
import type { Pipe } from "./pipe.ts";

/** A change of bore where a pipe meets another, with flow towards or from the other bore. */
export interface SizeChange {
  /** As written; the fitting's name. */
  readonly name: string;
  readonly kind: "widening" | "narrowing";
  readonly direction: "to" | "from";
  /** Bore at the other end, m. */
  readonly otherBore: number;
  /** Full angle of the cone, rad; π for a sudden change. */
  readonly angle: number;
}

export const GRADUAL_CHANGE: Citation = { source: "tp-410", at: "gradual and sudden enlargement and contraction" };
export const SUDDEN_WIDENING: Citation = { source: "borda-carnot", at: "sudden expansion, K = (1 − β²)²" };

/**
 * A change of size as a fitting of one of its two pipes; K on the velocity head in that pipe.
 * Formula: K of the narrow bore by `wideningLoss` or `narrowingLoss`; in the wide bore K_a = K_b (D_a/D_b)⁴
 * Fails: size-change-wrong-way (the coefficient), as of a reducer to something wider.
 * Source: Technical Paper 410, gradual and sudden changes; Borda–Carnot where it widens suddenly.
 */
export function sizeChange(change: SizeChange): Fitting {
  const { name, kind, direction, otherBore, angle } = change;
  const pipeIsNarrow = (kind === "widening") === (direction === "to");
  return {
    name,
    isExit: false,
    cites: kind === "widening" && angle === Math.PI ? SUDDEN_WIDENING : GRADUAL_CHANGE,
    lossCoefficient: (pipe: Pipe): Result<number> => {
      const narrow = pipeIsNarrow ? pipe.bore : otherBore;
      const wide = pipeIsNarrow ? otherBore : pipe.bore;
      if (narrow > wide) {
        return fail([
          {
            code: "size-change-wrong-way",
            kind: "error",
            subject: `${name} in ${pipe.name}`,
            found: amount("size", otherBore),
            limit: { quantity: "size", value: pipe.bore, side: pipeIsNarrow ? "at least" : "at most" },
          },
        ]);
      }
      const areaRatio = (narrow / wide) ** 2;
      const inNarrow = kind === "widening" ? wideningLoss(areaRatio, angle) : narrowingLoss(areaRatio, angle);
      return succeed(pipeIsNarrow ? inNarrow : inNarrow * (pipe.bore / otherBore) ** 4);
    },
  };
}

const HALF_RIGHT_ANGLE = Math.PI / 4;

/**
 * Loss coefficient of a widening on the narrow bore [-], β² = narrow area / wide area.
 * Formula: K = 2.6 sin(θ/2) (1 − β²)² up to θ = 45°; (1 − β²)² beyond
 * Source: Technical Paper 410, gradual and sudden enlargement.
 */
export function wideningLoss(areaRatio: number, angle: number): number {
  const sudden = (1 - areaRatio) ** 2;
  return angle <= HALF_RIGHT_ANGLE ? 2.6 * Math.sin(angle / 2) * sudden : sudden;
}

/**
 * Loss coefficient of a narrowing on the narrow bore [-], β² = narrow area / wide area.
 * Formula: K = 0.8 sin(θ/2) (1 − β²) up to θ = 45°; 0.5 (1 − β²) √sin(θ/2) beyond
 * Source: Technical Paper 410, gradual and sudden contraction.
 */
export function narrowingLoss(areaRatio: number, angle: number): number {
  const half = Math.sin(angle / 2);
  return (angle <= HALF_RIGHT_ANGLE ? 0.8 * half : 0.5 * Math.sqrt(half)) * (1 - areaRatio);
}

/**
 * A hose coupling whose tail-piece is narrower than the hose, as a fitting of the hose.
 * Formula: K = [0.5 (1 − β²) + (1 − β²)²]/β⁴ on the hose's velocity head, β = tail-piece / hose bore
 * Fails: size-change-wrong-way (the coefficient), for a wider tail-piece.
 * Source: Technical Paper 410, sudden contraction; Borda–Carnot, sudden expansion.
 */
export function reducedCoupling(name: string, tailBore: number): Fitting {
  return throughNarrow({ name, bore: tailBore, angle: Math.PI, own: 0, cites: SUDDEN_WIDENING });
}

interface Narrow {
  readonly name: string;
  readonly bore: number;
  readonly angle: number;
  /** K of the part itself, on its own bore. */
  readonly own: number;
  readonly cites: Citation;
}

/** Into a narrower bore, through it and out again, on the velocity head of the pipe. */
function throughNarrow({ name, bore, angle, own, cites }: Narrow): Fitting {
  const into = sizeChange({ name, direction: "to", otherBore: bore, angle, kind: "narrowing" });
  return {
    name,
    isExit: false,
    cites,
    lossCoefficient: (pipe) => {
      const narrowing = into.lossCoefficient(pipe);
      if (!narrowing.ok) return narrowing;
      const widening = wideningLoss((bore / pipe.bore) ** 2, angle) + own;
      return succeed(narrowing.value + widening * (pipe.bore / bore) ** 4);
    },
  };
}

/** Full angle of the reducers that a meter one size down stands between: 8° to the axis. */
const METER_CONE = (16 * Math.PI) / 180;
/** K of the open sleeve of a pinch valve on its own bore. Common practice. */
const OPEN_SLEEVE = 0.2;

/**
 * A flow meter narrower than its line, between gradual reducers, as a fitting of the line.
 * Formula: K = [0.8 sin(θ/2)(1 − β²) + 2.6 sin(θ/2)(1 − β²)²]/β⁴, θ = 16°
 * Fails: size-change-wrong-way (the coefficient), for a wider meter.
 * Source: Technical Paper 410, gradual changes.
 */
export function reducedMeter(name: string, bore: number): Fitting {
  return throughNarrow({ name, bore, angle: METER_CONE, own: 0, cites: GRADUAL_CHANGE });
}

/**
 * A pinch valve with a sleeve narrower than its pipe: abrupt, the upper bound.
 * Formula: K = [0.5 (1 − β²) + (1 − β²)² + 0.2]/β⁴
 * Fails: size-change-wrong-way (the coefficient), for a wider sleeve.
 * Source: Technical Paper 410; Borda–Carnot; 0.2 by common practice.
 */
export function reducedPinchValve(name: string, bore: number): Fitting {
  return throughNarrow({ name, bore, angle: Math.PI, own: OPEN_SLEEVE, cites: SUDDEN_WIDENING });
}
