import type { Citation } from "../basis/citation.ts";
import { outOfRange } from "../basis/method.ts";
import { amount, andThen, fail, type Result, succeed } from "../basis/result.ts";
import type { Fitting } from "./fitting.ts";

export const BRANCHES: Citation = { source: "tp-410", at: "2009 on, tees and wyes, joining and dividing flow" };

export interface Branch {
  /** Between branch and run, degrees. */
  readonly angle: 30 | 45 | 60 | 90;
  readonly way: "joining" | "dividing";
  /** The leg whose loss is meant; the run of a dividing flow is not held. */
  readonly leg: "branch" | "run";
  /** Flow of the branch over that of the combined leg, above 0 to 1. */
  readonly share: number;
  /** Area of the branch over that of the header, above 0 to 1. */
  readonly areaRatio: number;
}

/** F of the joining branch, E = 2 and D = 1; the run takes it with E = 1 and D = 0. */
const JOINING: Readonly<Record<Branch["angle"], number>> = { 30: 1.74, 45: 1.41, 60: 1, 90: 0 };

/**
 * Loss coefficient of a leg of a tee or wye on the velocity head of the combined leg [-]; below 0 where the other stream drives it.
 * Formula: joining branch C [1 + (q/a)² − 2 (1 − q)² − F q²/a], run 1 − (1 − q)² − F q²/a, at 90° 1.55 q − q²;
 *          dividing branch G [1 + H (q/a)² − J (q/a) cos θ]; q the share of flow, a that of area
 * Source: Technical Paper 410 (2009).
 */
export function branchLoss({ angle, way, leg, share: q, areaRatio: a }: Branch): number {
  if (way === "joining") {
    const f = (JOINING[angle] * q ** 2) / a;
    if (leg === "run") return angle === 90 ? 1.55 * q - q ** 2 : 1 - (1 - q) ** 2 - f;
    const c = a <= 0.35 ? 1 : q <= 0.4 ? 0.9 * (1 - q) : 0.55;
    return c * (1 + (q / a) ** 2 - 2 * (1 - q) ** 2 - f);
  }
  if (angle === 90) return dividedSquare(q, a);
  const g = a <= 0.35 ? (q <= 0.4 ? 1.1 - 0.7 * q : 0.85) : q <= 0.6 ? 1 - 0.6 * q : 0.6;
  return g * (1 + (q / a) ** 2 - 2 * (q / a) * Math.cos((angle * Math.PI) / 180));
}

/** Diameters of branch and header up to which the one rule for 90° holds; the other is for equal ones. */
const NARROW = (2 / 3) ** 2;

/** Between the two rules the greater of both. */
function dividedSquare(q: number, a: number): number {
  const narrow = 1 + (q / a) ** 2;
  const equal = (1 + 0.3 * q ** 2) * (1 + 0.3 * (q / a) ** 2);
  if (a <= NARROW) return narrow;
  return a === 1 ? equal : Math.max(narrow, equal);
}

const SQUARE = 90;
const WRITTEN =
  /^(tee|wye|lateral|manifold)(?: (30|45|60|90)(?: ?°| ?deg(?:rees?)?)?)? (joining|dividing|inlet|take-?off)(?: (branch|run))? (?:(\d+)\/(\d+)|(\d+(?:\.\d+)?) ?%)(?: of (?:the )?flow)?(?: (.+))?$/i;

/**
 * A leg of a tee or wye with its share of the flow: "tee joining branch 25 %", "wye 45 dividing branch 1/2", "manifold take-off 33 %
 * ID 150 mm". Of the header, whose velocity head it takes; a bore after the share is that of the branch. Nothing for another text.
 * Fails: out-of-range for a share above 1 or a branch wider than the pipe; fitting-which for the run of a dividing flow; as `bore`.
 */
export function branchFitting(given: string, bore: (text: string) => Result<number>): Result<Fitting> | undefined {
  const match = WRITTEN.exec(given);
  if (match === null) return undefined;
  const [, body = "", degrees, manner = "", leg, over, under, percent, narrower] = match;
  const isSquare = /tee|manifold/i.test(body);
  const angle = Number(degrees ?? (isSquare ? SQUARE : 45)) as Branch["angle"];
  const way = /joining|inlet/i.test(manner) ? "joining" : "dividing";
  const isRun = leg?.toLowerCase() === "run";
  if (isRun && way === "dividing") {
    const suggestions = ["tee run", "tee dividing branch 50 %"];
    return fail([{ code: "fitting-which", kind: "error", subject: given, suggestions }]);
  }
  const share = percent === undefined ? Number(over) / Number(under) : Number(percent) / 100;
  if (!(share > 0)) return fail([outOfRange(`share of ${given}`, "ratio", share, "above", 0)]);
  if (share > 1) return fail([outOfRange(`share of ${given}`, "ratio", share, "at most", 1)]);
  const of = narrower === undefined ? succeed(undefined) : bore(narrower);
  return andThen<number | undefined, Fitting>(of, (branchBore) =>
    succeed({
      name: given,
      isExit: false,
      cites: BRANCHES,
      lossCoefficient: (pipe) => {
        const areaRatio = branchBore === undefined ? 1 : (branchBore / pipe.bore) ** 2;
        if (areaRatio > 1) {
          const limit = { quantity: "size", value: pipe.bore, side: "at most" } as const;
          const found = amount("size", branchBore ?? 0);
          const subject = `${given} in ${pipe.name}`;
          return fail([{ code: "size-change-wrong-way", kind: "error", subject, found, limit }]);
        }
        return succeed(branchLoss({ angle, way, leg: isRun ? "run" : "branch", share, areaRatio }));
      },
    }),
  );
}
