import { amount, andThen, fail, type Result, succeed } from "../basis/result.ts";
import { brent } from "../numeric/brent.ts";
import { greatestOf } from "../numeric/extremes.ts";
import { pchip, valueAt } from "../numeric/pchip.ts";
import { curveCrossing } from "./curve-crossing.ts";
import { equalPumps } from "./head-curve.ts";
import type { CurveOutline } from "./offered-pump.ts";
import type { PumpCurve } from "./pump-curve.ts";
import type { PumpCurvePoint } from "./pump-curve-point.ts";
import { bestPointOf, columnMissing, headOf } from "./pump-reading.ts";
import type { ReadyCurve } from "./ready-pump.ts";
import { asGiven, type RunningPump, runningPump } from "./running-pump.ts";
import { MOST_EXCESS, type SelectionDuty } from "./selection-duty.ts";
import { fartherMiss, inCaseOf, type Miss } from "./selection-miss.ts";
import { SIMILAR_TRIM, type TrimExponents, trimExponents } from "./trim-exponents.ts";
import { THIN_VISCOSITY, viscousNeed } from "./viscous-correction.ts";
import { viscousPumpCurve } from "./viscous-curve.ts";

/** A case with the head its system asks for at its flow, m. */
export interface AskedDuty extends SelectionDuty {
  readonly head: number;
}

/** A pump in one case: its curve in the liquid pumped, and the flow it runs at on the system. */
export interface CaseRun {
  readonly duty: AskedDuty;
  readonly pump: RunningPump;
  /** m³/s, the flow asked for or more. */
  readonly flow: number;
  /** m */
  readonly head: number;
  /** The pump crosses the system below this point too, or starts below its static head. */
  readonly isUnstable: boolean;
}

/** A curve of a pump at a speed and trim that meet every case. */
export interface Setting {
  readonly curve: ReadyCurve;
  /** In the order of the cases. */
  readonly runs: readonly CaseRun[];
  /** Each case runs at a speed of its own. */
  readonly isAtOwnSpeeds: boolean;
}

/** Settings that meet every case, or how near the curve comes to them. */
export interface Settings {
  readonly settings: readonly Setting[];
  readonly missed?: Miss;
}

/** One speed for all cases, or each case at the speed that gives its flow. */
export type SpeedControl = "fixed" | "variable";

/** Heads this near to each other, of the greater, are equal. */
const EQUAL_WITHIN = 1e-9;

/**
 * The ways in which one curve of a pump meets every case: as it is given; slowed, sped up or trimmed, within its range, to
 * go right through the case that asks most; or as far slowed or trimmed as allowed. At variable speed with the impeller of
 * the curve, each case at its own speed, down to the lowest stated or as far as a curve is carried.
 */
export function settingsOf(curve: ReadyCurve, duties: readonly AskedDuty[], control: SpeedControl): Settings {
  const ranged = control === "variable" ? slowedFreely(curve) : curve;
  let early: Miss | undefined;
  for (const duty of duties) {
    // The points are of water; with a thicker liquid the pump gives less.
    const missed = isThin(duty) ? missedOnPoints(ranged, duty) : undefined;
    if (missed !== undefined) early = fartherMiss(early, missed, duty);
  }
  if (early !== undefined) return { settings: [], missed: early };
  const drawn = curve.drawn();
  if (!drawn.ok) return { settings: [], missed: { code: "curve-not-usable", findings: drawn.findings } };
  const liquids = new Map<number, CurveInLiquid>();
  for (const duty of duties) {
    const viscosity = isThin(duty) ? 0 : (duty.kinematicViscosity as number);
    if (liquids.has(viscosity)) continue;
    const inLiquid = viscosity === 0 ? () => drawn : curveInLiquid(curve, drawn.value, viscosity);
    const asDrawn = inLiquid(1, 1);
    if (!asDrawn.ok) {
      return { settings: [], missed: inCaseOf({ code: "curve-not-usable", findings: asDrawn.findings }, duty) };
    }
    liquids.set(viscosity, inLiquid);
  }
  const cases = duties.map(
    (duty): Case => ({
      duty,
      inLiquid: liquids.get(isThin(duty) ? 0 : (duty.kinematicViscosity as number)) as CurveInLiquid,
    }),
  );
  return new Search(ranged, drawn.value, cases).settings(control);
}

function isThin({ kinematicViscosity = 0 }: SelectionDuty): boolean {
  return kinematicViscosity <= THIN_VISCOSITY;
}

/** A drive slows a pump past the next curve given. */
function slowedFreely(curve: ReadyCurve): ReadyCurve {
  return { ...curve, leastSpeedRatio: Math.min(curve.slowestSpeedRatio, curve.leastSpeedRatio) };
}

interface Case {
  readonly duty: AskedDuty;
  readonly inLiquid: CurveInLiquid;
}

/** The curve in the liquid pumped, at its own speed and impeller, for a pump that runs at these ratios of them. */
type CurveInLiquid = (speedRatio: number, trimRatio: number) => Result<PumpCurve>;

function curveInLiquid({ offered }: ReadyCurve, water: PumpCurve, kinematicViscosity: number): CurveInLiquid {
  const { speed } = offered;
  switch (viscousNeed(kinematicViscosity, water.bestEfficiency, speed)) {
    case "none":
      return () => succeed(water);
    case "efficiency":
      return () => fail([columnMissing("efficiency")]);
    case "speed":
      return () => fail([{ code: "viscosity-needs-speed", kind: "error", subject: "speed" }]);
    case "correction":
      return (speedRatio, trimRatio) =>
        viscousPumpCurve({ curve: water, speed: speed as number, speedRatio, trimRatio, kinematicViscosity });
  }
}

/** What the bare points already rule out, so that no curve need be drawn for it. */
function missedOnPoints(curve: ReadyCurve, duty: AskedDuty): Miss | undefined {
  const { flow, system, head: dutyHead } = duty;
  const { offered, mostSpeedRatio, leastSpeedRatio, leastTrimRatio, mostTrimRatio } = curve;
  if (leastSpeedRatio > mostSpeedRatio || leastTrimRatio > mostTrimRatio) return { code: "outside-its-limits" };
  const outline = offered.outline ?? outlineOf(offered.points);
  const { from, to } = outline;
  const most = (outline.flow[to] as number) * mostSpeedRatio;
  if (flow > most) return { code: "curve-ends-before", found: amount("flow", most), limit: amount("flow", flow) };
  const first = outline.flow[from] as number;
  const least = first * Math.min(leastSpeedRatio, leastTrimRatio);
  if (flow < least) return { code: "curve-begins-after", found: amount("flow", least), limit: amount("flow", flow) };
  if (mostSpeedRatio !== 1 || flow < first) return undefined;
  // The curve never leaves the range of the two points it stands between.
  const after = placeOf(outline, flow);
  const top = Math.max(outline.head[after - 1] as number, outline.head[after] as number);
  if (top < dutyHead * (1 - EQUAL_WITHIN)) {
    return { code: "head-too-low", found: amount("head", headOn(outline, flow)), limit: amount("head", dutyHead) };
  }
  if (leastSpeedRatio < 1 || leastTrimRatio < 1) return undefined;
  const end = Math.min(outline.flow[to] as number, flow * MOST_EXCESS);
  const beyond = placeOf(outline, end);
  const bottom = Math.min(outline.head[beyond - 1] as number, outline.head[beyond] as number);
  return bottom > system.headAt(end) * (1 + EQUAL_WITHIN) ? stillAbove(end, flow) : undefined;
}

/** Of the two points a flow stands between, the place of the second; the flow lies on the curve. */
function placeOf({ flow, from }: CurveOutline, at: number): number {
  let after = from + 1;
  while ((flow[after] as number) < at) after += 1;
  return after;
}

/** A pump that still gives more head than the system asks at its last flow, or at the greatest that is looked at. */
function stillAbove(at: number, flow: number): Miss {
  const code = at < flow * MOST_EXCESS ? "point-beyond-curve" : "far-too-large";
  return { code, found: amount("flow", at) };
}

function outlineOf(points: readonly PumpCurvePoint[]): CurveOutline {
  const [flow, head] = [points.map((point) => point.flow), points.map((point) => point.head)];
  return { flow, head, from: 0, to: points.length - 1 };
}

function headOn({ flow, head, from, to }: CurveOutline, at: number): number {
  const part = (figures: ArrayLike<number>): readonly number[] => Array.prototype.slice.call(figures, from, to + 1);
  return valueAt(pchip(part(flow), part(head)), at);
}

class Search {
  readonly #curve: ReadyCurve;
  /** With water. */
  readonly #drawn: PumpCurve;
  readonly #cases: readonly Case[];
  readonly #found: Setting[] = [];
  #missed: Miss | undefined;

  constructor(curve: ReadyCurve, drawn: PumpCurve, cases: readonly Case[]) {
    this.#curve = curve;
    this.#drawn = drawn;
    this.#cases = cases;
  }

  settings(control: SpeedControl): Settings {
    const { leastSpeedRatio, mostSpeedRatio, leastTrimRatio, mostTrimRatio } = this.#curve;
    if (control === "variable") {
      if (mostTrimRatio === 1) this.#between("speed", leastSpeedRatio, mostSpeedRatio, true);
      else this.#miss({ code: "outside-its-limits" });
    } else {
      if (mostSpeedRatio >= 1 && leastSpeedRatio <= 1 && mostTrimRatio === 1) this.#take(this.#at("speed", [1]));
      if (mostTrimRatio === 1 && leastSpeedRatio < mostSpeedRatio)
        this.#between("speed", leastSpeedRatio, mostSpeedRatio);
      if (leastSpeedRatio <= 1 && mostSpeedRatio >= 1 && leastTrimRatio < 1) {
        this.#between("trim", leastTrimRatio, mostTrimRatio);
      }
    }
    const missed = this.#missed;
    return { settings: this.#found, ...(missed === undefined || this.#found.length > 0 ? {} : { missed }) };
  }

  /** Speeds or trims that go through each case, or the least of the range where that still gives more. */
  #between(by: "speed" | "trim", least: number, most: number, isAtOwnSpeeds = false): void {
    const exponents = by === "speed" ? SIMILAR_TRIM : this.#trimExponents();
    const ratios: number[] = [];
    let missed: Miss | undefined;
    for (const one of this.#cases) {
      const found = ratioThrough(one, by, least, most, exponents);
      if (typeof found === "number") ratios.push(found);
      else if (found !== undefined) missed = fartherMiss(missed, found, one.duty);
    }
    if (missed !== undefined) this.#miss(missed);
    if (ratios.length < this.#cases.length) return;
    this.#take(this.#at(by, isAtOwnSpeeds ? ratios : [greatestOf(ratios)], exponents), isAtOwnSpeeds);
  }

  /** The pump of each case at the ratio of all, or each at its own; nothing where a curve is not carried so far. */
  #at(by: "speed" | "trim", ratios: readonly number[], exponents?: TrimExponents): readonly RunningPump[] | undefined {
    const pumps: RunningPump[] = [];
    for (const [i, { inLiquid }] of this.#cases.entries()) {
      const [before, last] = [this.#cases[i - 1], pumps.at(-1)];
      const isSame = ratios.length === 1 && before?.inLiquid === inLiquid;
      const pump = isSame ? last : running(inLiquid, by, ratios[i] ?? (ratios[0] as number), exponents);
      if (pump === undefined) return undefined;
      pumps.push(pump);
    }
    return pumps;
  }

  /** Those of the two measured impellers; the working rule where only one is known, or has no best point. */
  #trimExponents(): TrimExponents {
    const { offered, smaller } = this.#curve;
    const below = smaller?.drawn();
    if (below === undefined || !below.ok) return SIMILAR_TRIM;
    const [large, small] = [bestPointOf(asGiven(this.#drawn)), bestPointOf(asGiven(below.value))];
    const smallDiameter = smaller?.offered.diameter;
    if (!large.ok || !small.ok || offered.diameter === undefined || smallDiameter === undefined) return SIMILAR_TRIM;
    const measured = trimExponents({
      largeDiameter: offered.diameter,
      smallDiameter,
      largeFlow: large.value.flow,
      smallFlow: small.value.flow,
      largeHead: large.value.head,
      smallHead: small.value.head,
    });
    // Flows that do not fall with the diameter are no measure of a trim.
    return measured.ok && measured.value.flow > 0 && measured.value.head > 0 ? measured.value : SIMILAR_TRIM;
  }

  #miss(reason: Miss): void {
    this.#missed ??= reason;
  }

  /** Takes the pump at its speeds and trim where it gives the flow asked for in every case, with the flows it runs at. */
  #take(pumps: readonly RunningPump[] | undefined, isAtOwnSpeeds = false): void {
    if (pumps === undefined) return;
    let missed: Miss | undefined;
    for (const [i, { duty }] of this.#cases.entries()) {
      const miss = missOf(pumps[i] as RunningPump, duty);
      if (miss !== undefined) missed = fartherMiss(missed, miss, duty);
    }
    if (missed !== undefined) {
      this.#miss(missed);
      return;
    }
    const runs: CaseRun[] = [];
    for (const [i, { duty }] of this.#cases.entries()) {
      const run = runOf(pumps[i] as RunningPump, duty);
      if (run === undefined) return;
      runs.push(run);
    }
    this.#found.push({ curve: this.#curve, runs, isAtOwnSpeeds });
  }
}

function running(
  inLiquid: CurveInLiquid,
  by: "speed" | "trim",
  ratio: number,
  exponents?: TrimExponents,
): RunningPump | undefined {
  const [speedRatio, trimRatio] = by === "speed" ? [ratio, 1] : [1, ratio];
  const pump = andThen(inLiquid(speedRatio, trimRatio), (curve) =>
    ratio === 1
      ? succeed(asGiven(curve))
      : runningPump({ curve, speedRatio, trimRatio, ...(exponents && { trimExponents: exponents }) }),
  );
  return pump.ok ? pump.value : undefined;
}

/** The ratio at which the curve goes through a case, or the least one where that gives more still. */
function ratioThrough(
  { duty, inLiquid }: Case,
  by: "speed" | "trim",
  least: number,
  most: number,
  exponents: TrimExponents,
): number | Miss | undefined {
  const { flow, head } = duty;
  const asDrawn = inLiquid(1, 1);
  if (!asDrawn.ok) return undefined;
  const { leastFlow, mostFlow } = asDrawn.value;
  // Within these the flow carried back stands on the curve.
  const low = Math.max(least, (flow / mostFlow) ** (1 / exponents.flow));
  const high = leastFlow > 0 ? Math.min(most, (flow / leastFlow) ** (1 / exponents.flow)) : most;
  if (!(low <= high)) {
    return { code: "curve-ends-before", found: amount("flow", mostFlow * most), limit: amount("flow", flow) };
  }
  const surplus = (ratio: number): number => {
    if (isThin(duty)) {
      // One curve at every ratio, so that no pump need be made of it to be read.
      const base = flow / ratio ** exponents.flow;
      return (
        ratio ** exponents.head * valueAt(asDrawn.value.head, Math.min(Math.max(base, leastFlow), mostFlow)) - head
      );
    }
    const pump = running(inLiquid, by, ratio, exponents);
    if (pump === undefined) return Number.NaN;
    return headOf(pump, onCurve(pump, flow)) - head;
  };
  const [atLow, atHigh] = [surplus(low), surplus(high)];
  if (atHigh < 0) {
    return { code: "head-too-low", found: amount("head", atHigh + head), limit: amount("head", head) };
  }
  return atLow >= 0 ? low : brent(surplus, low, high);
}

/** Why a pump at its speed and trim does not give the flow of a case, as far as two readings of its curve tell. */
function missOf(pump: RunningPump, { flow, head, system }: AskedDuty): Miss | undefined {
  if (flow > pump.mostFlow * (1 + EQUAL_WITHIN)) {
    return { code: "curve-ends-before", found: amount("flow", pump.mostFlow), limit: amount("flow", flow) };
  }
  if (flow < pump.leastFlow * (1 - EQUAL_WITHIN)) {
    return { code: "curve-begins-after", found: amount("flow", pump.leastFlow), limit: amount("flow", flow) };
  }
  const given = headOf(pump, onCurve(pump, flow));
  if (given < head * (1 - EQUAL_WITHIN)) {
    return { code: "head-too-low", found: amount("head", given), limit: amount("head", head) };
  }
  if (given <= head * (1 + EQUAL_WITHIN)) return undefined;
  const most = Math.min(pump.mostFlow, flow * MOST_EXCESS);
  return headOf(pump, most) > system.headAt(most) ? stillAbove(most, flow) : undefined;
}

function onCurve({ leastFlow, mostFlow }: RunningPump, flow: number): number {
  return Math.min(Math.max(flow, leastFlow), mostFlow);
}

/** Where a pump that meets a case runs in it. */
function runOf(pump: RunningPump, duty: AskedDuty): CaseRun | undefined {
  const { flow, head, system } = duty;
  const isUnstable = pump.leastFlow === 0 && headOf(pump, 0) < system.headAt(0);
  const from = onCurve(pump, flow);
  if (headOf(pump, from) <= head * (1 + EQUAL_WITHIN)) return { duty, pump, flow, head, isUnstable };
  const most = Math.min(pump.mostFlow, flow * MOST_EXCESS);
  const surplus = (at: number): number => headOf(pump, at) - system.headAt(at);
  const runsAt = falls(pump, from) ? brent(surplus, from, most) : crossing(pump, duty);
  return runsAt === undefined ? undefined : { duty, pump, flow: runsAt, head: system.headAt(runsAt), isUnstable };
}

/** Whether the points fall from the flow on, so that the pump meets a rising system once. */
function falls({ curve, flowFactor }: RunningPump, flow: number): boolean {
  const { points } = curve;
  const base = flow / flowFactor;
  for (let i = 1; i < points.length; i += 1) {
    const [before, point] = [points[i - 1] as PumpCurvePoint, points[i] as PumpCurvePoint];
    if (point.flow > base && point.head > before.head) return false;
  }
  return true;
}

/** The stable crossing of greatest flow of a curve that rises somewhere. */
function crossing(pump: RunningPump, { system }: SelectionDuty): number | undefined {
  const found = curveCrossing({ pump: equalPumps(pump, 1, "parallel"), system });
  return found.ok ? found.value.flow : undefined;
}
