import { andThen, type Finding, fail, type Result, type Success, succeed } from "../basis/result.ts";
import type { LiquidState } from "../liquid/liquid.ts";
import { runFriction } from "../slurry/run-friction.ts";
import { flowIn, type Line, type LineSegment } from "./line.ts";
import type { Pipe } from "./pipe.ts";
import { beyondComputation, headOver, type PipeFriction, wrongOver } from "./pipe-friction.ts";

export interface LineLossInputs {
  /** Of the whole line, m³/s. */
  readonly flow: number;
  readonly line: Line;
  readonly liquid: LiquidState;
}

/** One segment of a line at a flow: the figures of its pipe, and those of its fittings. */
export interface SegmentLoss {
  readonly segment: LineSegment;
  /** What no length comes into: one object for all segments of one pipe at one flow. */
  readonly friction: Omit<PipeFriction, "head">;
  /** Head lost in the pipe alone, m. */
  readonly head: number;
  /** ΣK of the segment's fittings, on its own velocity head. */
  readonly fittingCoefficient: number;
  /** Head lost in the segment's fittings, m. */
  readonly fittingHead: number;
  /** How many of its fittings are exits, and the part of fittingHead lost in them. */
  readonly exits: number;
  readonly exitHead: number;
}

/** What a line loses at a flow, all segments together, m of the liquid. */
export interface LossInAll {
  readonly frictionHead: number;
  /** Fittings, exits among them. */
  readonly fittingHead: number;
  /** frictionHead + fittingHead. */
  readonly total: number;
  /** How many exits the line lists. One is right where the liquid leaves into a vessel or the open. */
  readonly exits: number;
  /** The part of fittingHead lost at exits. */
  readonly exitHead: number;
}

/** The same, segment by segment too. */
export interface LineLoss extends LossInAll {
  readonly segments: readonly SegmentLoss[];
}

/**
 * Head lost in a line [m of the liquid]; a line without segments loses nothing. The velocity head counts where an exit
 * is listed, once an exit; how many is told, not judged, since only the caller knows where the line ends. A segment
 * carries its share of the flow; runs side by side are one segment of the path, never added in series.
 * Formula: h_L = Σ (f L/D + ΣK) V²/(2g) over the segments
 * Fails: as `runFriction`; size-change-wrong-way; beyond-computation.
 * Warns: as `runFriction`; fitting-size-outside-table, fitting-assumed, valve-not-held-open, fitting-methods-mixed.
 * Source: Darcy–Weisbach equation; each fitting cites its own.
 */
export function lineLoss(inputs: LineLossInputs): Result<LineLoss> {
  const segments: SegmentLoss[] = [];
  const lost = lossInAll(inputs, (segment, friction, passed) => segments.push({ segment, friction, ...passed }));
  return andThen(lost, (inAll) => succeed({ segments, ...inAll }));
}

/** The figures of a segment while it is passed: one object for the whole line, for a curve passes thousands of them. */
type Passed = { -readonly [K in Exclude<keyof SegmentLoss, "segment" | "friction">]: SegmentLoss[K] };

/** As `lineLoss`, for callers that ask for no segment, or look at each as it is passed: `passed` holds the next one soon. */
export function lossInAll(
  { flow, line, liquid }: LineLossInputs,
  pass?: (segment: LineSegment, friction: SegmentLoss["friction"], passed: Readonly<Passed>) => void,
): Result<LossInAll> {
  const findings: Finding[] = [];
  let refused = false;
  let frictionHead = 0;
  let fittingHead = 0;
  let exits = 0;
  let exitHead = 0;
  const known: KnownFriction[] = [];
  const passed: Passed = { head: 0, fittingCoefficient: 0, fittingHead: 0, exits: 0, exitHead: 0 };
  for (const segment of line) {
    const friction = frictionIn(segment, flowIn(segment, flow), liquid, known);
    if (!passes(segment, friction, liquid, findings, passed)) {
      refused = true;
      continue;
    }
    frictionHead += passed.head;
    fittingHead += passed.fittingHead;
    exits += passed.exits;
    exitHead += passed.exitHead;
    pass?.(segment, friction.value, passed);
  }
  if (refused) return fail(findings);
  const total = frictionHead + fittingHead;
  if (!Number.isFinite(total)) return fail([beyondComputation("head lost in the line")]);
  if (mixesMethods(line)) findings.push({ code: "fitting-methods-mixed", kind: "check", subject: "fittings" });
  return succeed({ frictionHead, fittingHead, total, exits, exitHead }, findings);
}

/** The friction of a pipe at a flow, over one of its lengths. */
interface KnownFriction {
  readonly pipe: Pipe;
  readonly flow: number;
  readonly friction: Result<PipeFriction>;
}

/** Solids, and a C, give the gradient another way than the factor. */
function isByFactor({ hazenWilliams }: Pipe, { solids }: LiquidState): boolean {
  return hazenWilliams === undefined && solids === undefined;
}

/**
 * Friction in a segment; of runs of one pipe at one flow, of the same factor, found once for the line: all of it but the
 * head, which goes by the length.
 */
function frictionIn(
  { pipe, length }: LineSegment,
  flow: number,
  liquid: LiquidState,
  known: KnownFriction[],
): Result<PipeFriction> {
  for (const one of known) if (one.pipe === pipe && one.flow === flow) return one.friction;
  const friction = runFriction({ flow, pipe, length, liquid });
  if (friction.ok && isByFactor(pipe, liquid)) known.push({ pipe, flow, friction });
  return friction;
}

function headIn({ pipe, length }: LineSegment, friction: PipeFriction, liquid: LiquidState): number {
  return isByFactor(pipe, liquid) ? headOver(friction, pipe, length) : friction.head;
}

/** The loss of one segment, its findings added to those of the line; false where there is an error among them. */
function passes(
  segment: LineSegment,
  friction: Result<PipeFriction>,
  liquid: LiquidState,
  findings: Finding[],
  passed: Passed,
): friction is Success<PipeFriction> {
  const { pipe, fittings, length } = segment;
  const head = friction.ok ? headIn(segment, friction.value, liquid) : 0;
  const wrong = wrongOver(length, head);
  const said = friction.ok && wrong !== undefined ? [wrong] : friction.findings;
  if (said.length > 0) {
    findings.push(...said.map((finding) => ({ ...finding, subject: `${finding.subject} in ${pipe.name}` })));
  }
  if (!friction.ok || wrong !== undefined) return false;
  const { velocity, velocityHead, reynolds } = friction.value;
  let refused = false;
  let fittingCoefficient = 0;
  let exits = 0;
  let exitCoefficient = 0;
  for (const { fitting, count } of fittings) {
    if (count === 0) continue;
    const coefficient = fitting.lossCoefficient(pipe, reynolds);
    if (coefficient.findings.length > 0) findings.push(...coefficient.findings);
    if (!coefficient.ok) {
      refused = true;
      continue;
    }
    fittingCoefficient += count * coefficient.value;
    if (fitting.isExit) {
      exits += count;
      exitCoefficient += count * coefficient.value;
    }
    const heldOpenFrom = (fitting.heldOpenFrom ?? 0) / Math.sqrt(liquid.density);
    if (velocity > 0 && velocity < heldOpenFrom) {
      findings.push({
        code: "valve-not-held-open",
        kind: "check",
        subject: `${fitting.name} in ${pipe.name}`,
        found: { quantity: "velocity", value: velocity },
        limit: { quantity: "velocity", value: heldOpenFrom, side: "at least" },
        cites: fitting.cites,
      });
    }
  }
  if (refused) return false;
  passed.head = head;
  passed.fittingCoefficient = fittingCoefficient;
  passed.fittingHead = fittingCoefficient * velocityHead;
  passed.exits = exits;
  passed.exitHead = exitCoefficient * velocityHead;
  return true;
}

/** Coefficients of the two methods differ by a third for the same fitting, so a line keeps to one. */
function mixesMethods(line: Line): boolean {
  let method: string | undefined;
  for (const { fittings } of line) {
    for (const { fitting, count } of fittings) {
      if (count === 0 || fitting.method === undefined) continue;
      if (method !== undefined && method !== fitting.method) return true;
      method = fitting.method;
    }
  }
  return false;
}
