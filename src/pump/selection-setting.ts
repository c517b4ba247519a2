import { amount, andThen, fail, type Result, succeed } from "../basis/result.ts";
import { brent } from "../numeric/brent.ts";
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
import type { LeftOutCode, Reason } from "./selection-reason.ts";
import { SIMILAR_TRIM, type TrimExponents, trimExponents } from "./trim-exponents.ts";
import { THIN_VISCOSITY, viscousNeed } from "./viscous-correction.ts";
import { viscousPumpCurve } from "./viscous-curve.ts";

/** A curve of a pump at a speed and trim that meet the duty, and the flow it runs at on the system. */
export interface Setting {
  readonly curve: ReadyCurve;
  /** In the liquid pumped. */
  readonly pump: RunningPump;
  /** m³/s, the flow asked for or more. */
  readonly flow: number;
  /** m */
  readonly head: number;
  /** The pump crosses the system below this point too, or starts below its static head. */
  readonly isUnstable: boolean;
}

/** Settings that meet the duty, or how near the curve comes to it. */
export interface Settings {
  readonly settings: readonly Setting[];
  readonly missed?: Reason<LeftOutCode>;
}

/** Heads this near to each other, of the greater, are equal. */
const EQUAL_WITHIN = 1e-9;

/**
 * The ways in which one curve of a pump meets a duty: as it is given; slowed, sped up or trimmed, within its range, to
 * go right through the duty; or as far slowed or trimmed as allowed.
 */
export function settingsOf(curve: ReadyCurve, duty: SelectionDuty, dutyHead: number): Settings {
  const { kinematicViscosity = 0 } = duty;
  const isThin = kinematicViscosity <= THIN_VISCOSITY;
  // The points are of water; with a thicker liquid the pump gives less.
  const early = isThin ? missedOnPoints(curve, duty, dutyHead) : undefined;
  if (early !== undefined) return { settings: [], missed: early };
  const drawn = curve.drawn();
  if (!drawn.ok) return { settings: [], missed: { code: "curve-not-usable", findings: drawn.findings } };
  const inLiquid = isThin ? () => drawn : curveInLiquid(curve, drawn.value, kinematicViscosity);
  const asDrawn = inLiquid(1, 1);
  if (!asDrawn.ok) return { settings: [], missed: { code: "curve-not-usable", findings: asDrawn.findings } };
  return new Search(curve, drawn.value, asDrawn.value, inLiquid, duty, dutyHead).settings();
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
function missedOnPoints(curve: ReadyCurve, duty: SelectionDuty, dutyHead: number): Reason<LeftOutCode> | undefined {
  const { flow, system } = duty;
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
function stillAbove(at: number, flow: number): Reason<LeftOutCode> {
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
  /** In the liquid pumped, run as drawn; as it runs else. */
  readonly #asDrawn: PumpCurve;
  readonly #inLiquid: CurveInLiquid;
  readonly #duty: SelectionDuty;
  readonly #dutyHead: number;
  readonly #found: Setting[] = [];
  #missed: Reason<LeftOutCode> | undefined;

  constructor(
    curve: ReadyCurve,
    drawn: PumpCurve,
    asDrawn: PumpCurve,
    inLiquid: CurveInLiquid,
    duty: SelectionDuty,
    dutyHead: number,
  ) {
    this.#curve = curve;
    this.#drawn = drawn;
    this.#asDrawn = asDrawn;
    this.#inLiquid = inLiquid;
    this.#duty = duty;
    this.#dutyHead = dutyHead;
  }

  settings(): Settings {
    const { leastSpeedRatio, mostSpeedRatio, leastTrimRatio, mostTrimRatio } = this.#curve;
    if (mostSpeedRatio >= 1 && leastSpeedRatio <= 1 && mostTrimRatio === 1) this.#try(asGiven(this.#asDrawn));
    if (mostTrimRatio === 1 && leastSpeedRatio < mostSpeedRatio)
      this.#between("speed", leastSpeedRatio, mostSpeedRatio);
    if (leastSpeedRatio <= 1 && mostSpeedRatio >= 1 && leastTrimRatio < 1) {
      this.#between("trim", leastTrimRatio, mostTrimRatio);
    }
    const missed = this.#missed;
    return { settings: this.#found, ...(missed === undefined || this.#found.length > 0 ? {} : { missed }) };
  }

  /** Speeds or trims that go through the duty, or the least of the range where that still gives more. */
  #between(by: "speed" | "trim", least: number, most: number): void {
    const exponents = by === "speed" ? SIMILAR_TRIM : this.#trimExponents();
    const { flow } = this.#duty;
    const { curve, head } = { curve: this.#asDrawn, head: this.#dutyHead };
    // Within these the flow carried back stands on the curve.
    const low = Math.max(least, (flow / curve.mostFlow) ** (1 / exponents.flow));
    const high = curve.leastFlow > 0 ? Math.min(most, (flow / curve.leastFlow) ** (1 / exponents.flow)) : most;
    if (!(low <= high)) {
      this.#miss({
        code: "curve-ends-before",
        found: amount("flow", curve.mostFlow * most),
        limit: amount("flow", flow),
      });
      return;
    }
    const at = (ratio: number): RunningPump | undefined => {
      const [speedRatio, trimRatio] = by === "speed" ? [ratio, 1] : [1, ratio];
      const pump = andThen(this.#inLiquid(speedRatio, trimRatio), (inLiquid) =>
        runningPump({ curve: inLiquid, speedRatio, trimRatio, trimExponents: exponents }),
      );
      return pump.ok ? pump.value : undefined;
    };
    const surplus = (ratio: number): number => {
      const pump = at(ratio);
      if (pump === undefined) return Number.NaN;
      return headOf(pump, Math.min(Math.max(flow, pump.leastFlow), pump.mostFlow)) - head;
    };
    const [atLow, atHigh] = [surplus(low), surplus(high)];
    if (atHigh < 0) {
      this.#miss({ code: "head-too-low", found: amount("head", atHigh + head), limit: amount("head", head) });
      return;
    }
    const ratio = atLow >= 0 ? low : brent(surplus, low, high);
    const pump = ratio === undefined ? undefined : at(ratio);
    if (pump !== undefined) this.#try(pump);
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

  #miss(reason: Reason<LeftOutCode>): void {
    this.#missed ??= reason;
  }

  /** Takes the pump at its speed and trim where it gives the flow asked for, with the flow it runs at. */
  #try(pump: RunningPump): void {
    const { flow, system } = this.#duty;
    const head = this.#dutyHead;
    if (flow > pump.mostFlow * (1 + EQUAL_WITHIN)) {
      this.#miss({ code: "curve-ends-before", found: amount("flow", pump.mostFlow), limit: amount("flow", flow) });
      return;
    }
    if (flow < pump.leastFlow * (1 - EQUAL_WITHIN)) {
      this.#miss({ code: "curve-begins-after", found: amount("flow", pump.leastFlow), limit: amount("flow", flow) });
      return;
    }
    const onCurve = Math.min(Math.max(flow, pump.leastFlow), pump.mostFlow);
    const given = headOf(pump, onCurve);
    if (given < head * (1 - EQUAL_WITHIN)) {
      this.#miss({ code: "head-too-low", found: amount("head", given), limit: amount("head", head) });
      return;
    }
    const isUnstable = this.#startsBelowSystem(pump);
    const most = Math.min(pump.mostFlow, flow * MOST_EXCESS);
    const surplus = (at: number): number => headOf(pump, at) - system.headAt(at);
    if (given <= head * (1 + EQUAL_WITHIN)) {
      this.#found.push({ curve: this.#curve, pump, flow, head, isUnstable });
      return;
    }
    if (surplus(most) > 0) {
      this.#miss(stillAbove(most, flow));
      return;
    }
    const runsAt = this.#falls(pump, onCurve) ? brent(surplus, onCurve, most) : this.#crossing(pump);
    if (runsAt === undefined) return;
    this.#found.push({ curve: this.#curve, pump, flow: runsAt, head: system.headAt(runsAt), isUnstable });
  }

  /** Whether the points fall from the flow on, so that the pump meets a rising system once. */
  #falls({ curve, flowFactor }: RunningPump, flow: number): boolean {
    const { points } = curve;
    const base = flow / flowFactor;
    for (let i = 1; i < points.length; i += 1) {
      const [before, point] = [points[i - 1] as PumpCurvePoint, points[i] as PumpCurvePoint];
      if (point.flow > base && point.head > before.head) return false;
    }
    return true;
  }

  /** The stable crossing of greatest flow of a curve that rises somewhere. */
  #crossing(pump: RunningPump): number | undefined {
    const crossing = curveCrossing({ pump: equalPumps(pump, 1, "parallel"), system: this.#duty.system });
    return crossing.ok ? crossing.value.flow : undefined;
  }

  #startsBelowSystem(pump: RunningPump): boolean {
    return pump.leastFlow === 0 && headOf(pump, 0) < this.#duty.system.headAt(0);
  }
}
