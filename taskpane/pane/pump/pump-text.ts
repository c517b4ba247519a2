import { type CurvePointText, EMPTY_PUMP, type PumpText } from "../../../shared/duty/duty-text.ts";
import { bareNumber } from "../../../shared/duty/read-amount.ts";
import { printedUnit, type Quantity, UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { fromEngine, toEngine } from "../../../src/basis/units.ts";
import { efficiencyFromPower } from "../../../src/pump/best-efficiency.ts";
import type { PumpCurvePoint } from "../../../src/pump/pump-curve-point.ts";
import { efficiencyAtFlow, npshRequiredAtFlow } from "../../../src/pump/pump-reading.ts";
import type { RunningPump } from "../../../src/pump/running-pump.ts";
import type { RankedPump } from "../../../src/pump/selection.ts";

/** Figures a number is written down with: enough that what is worked out from it keeps five. */
const FIGURES = 7;
/** What a figure is off by once it was read and converted. */
const DUST = 1e-12;
/** Factors that differ by less are those of similar trimming. */
const SAME = 1e-9;

/**
 * A ranked pump as texts of a duty, in its unit set: its curve as its table has it, with the speed and trim ratio at
 * which it was ranked.
 *
 * A trim drawn between two measured impellers follows no plain ratio. Its curve is then written down as it runs, at its
 * own speed and diameter, and has no ratios.
 */
export function pumpTextOf(ranked: RankedPump, units: UnitSetName): PumpText {
  const { onWater: running, running: ofFirst, pump, speed, diameter } = ranked;
  const isByRatios = isSimilar(running);
  const { points, speedRatio, trimRatio } = isByRatios
    ? { points: running.curve.points, speedRatio: running.speedRatio, trimRatio: running.trimRatio }
    : { points: pointsAsItRuns(running), speedRatio: 1, trimRatio: 1 };
  return {
    ...EMPTY_PUMP,
    name: pump.name,
    speed: speed === undefined ? "" : written(speed / (isByRatios ? ofFirst.speedRatio : 1), "speed", units),
    impellerDiameter: diameter === undefined ? "" : written(diameter / trimRatio, "size", units),
    points: points.map((point) => pointText(atLeast(point, units), units)),
    speedRatio: ratioText(speedRatio),
    trimRatio: ratioText(trimRatio),
  };
}

/** Ratios closer than this are the same setting: a tenth of a turn in two hundred. */
export const SAME_SETTING = 5e-4;

/**
 * Whether a ranked pump is the one in the duty, as it would be taken now, or set for another duty: its name is the same
 * and the speed or trim ratio is not.
 */
export function choiceOf(
  chosen: PumpText | undefined,
  ranked: RankedPump,
  units: UnitSetName,
): "not chosen" | "as ranked" | "set otherwise" {
  if (chosen?.name.trim().toLowerCase() !== ranked.pump.name.toLowerCase()) return "not chosen";
  const taken = pumpTextOf(ranked, units);
  const isSame = (["speedRatio", "trimRatio"] as const).every(
    (key) => Math.abs(ratioOf(chosen[key]) / ratioOf(taken[key]) - 1) < SAME_SETTING,
  );
  return isSame ? "as ranked" : "set otherwise";
}

/** A blank ratio stands for 1; one that is no plain number equals none. */
function ratioOf(typed: string): number {
  return typed.trim() === "" ? 1 : (bareNumber(typed) ?? Number.NaN);
}

/** Whether the trim of a ranked pump is written as a ratio; else its curve is. */
export function isSimilar({ speedRatio, trimRatio, flowFactor, headFactor }: RunningPump): boolean {
  const flow = speedRatio * trimRatio;
  return Math.abs(flowFactor / flow - 1) < SAME && Math.abs(headFactor / (flow * flow) - 1) < SAME;
}

/** The points of a pump at the flows those of its curve come to. */
export function pointsAsItRuns(running: RunningPump): readonly PumpCurvePoint[] {
  return running.curve.points.map((point) => {
    const flow = point.flow * running.flowFactor;
    const efficiency = efficiencyAtFlow(running, flow);
    const npshRequired = npshRequiredAtFlow(running, flow);
    return {
      flow,
      head: point.head * running.headFactor,
      ...(efficiency.ok ? { efficiency: efficiency.value } : {}),
      ...(npshRequired.ok ? { npshRequired: npshRequired.value } : {}),
    };
  });
}

/** A point whose flow and head are not rounded down when they are written: see `ratioText`. */
function atLeast(point: PumpCurvePoint, units: UnitSetName): PumpCurvePoint {
  const up = (value: number, quantity: Quantity): number => {
    const unit = UNIT_SETS[units][quantity];
    return toEngine(roundedUp(fromEngine(value, unit)), unit);
  };
  return { ...point, flow: up(point.flow, "flow"), head: up(point.head, "head") };
}

function pointText(point: PumpCurvePoint, units: UnitSetName): CurvePointText {
  const { flow, head, npshRequired } = point;
  const efficiency = efficiencyOf(point);
  return {
    flow: written(flow, "flow", units),
    head: written(head, "head", units),
    // With its sign, so that nobody takes it for a fraction.
    efficiency: isGiven(efficiency) || flow === 0 ? `${written(efficiency ?? 0, "percent", units)}%` : "",
    npshRequired: isGiven(npshRequired) ? written(npshRequired, "head", units) : "",
  };
}

/** The efficiency given, or that of the power given. */
function efficiencyOf({ flow, head, efficiency, power }: PumpCurvePoint): number | undefined {
  if (isGiven(efficiency)) return efficiency;
  return isGiven(power) ? efficiencyFromPower(flow, head, power) : undefined;
}

/** In tables a figure of 0 for efficiency, NPSHR or power stands for a blank. */
function isGiven(value: number | undefined): value is number {
  return value !== undefined && value > 0;
}

/** "1000 US gpm": read back the same in any unit set. */
export function writtenWithUnit(value: number, quantity: Quantity, units: UnitSetName): string {
  return `${written(value, quantity, units)} ${printedUnit(quantity, units)}`;
}

function written(value: number, quantity: Quantity, units: UnitSetName): string {
  return plain(fromEngine(value, UNIT_SETS[units][quantity]));
}

/** A ratio as its box takes it, blank for 1. Rounded up: a pump set to meet a duty must not fall short of it by rounding. */
export function ratioText(ratio: number): string {
  return ratio === 1 ? "" : plain(roundedUp(ratio));
}

function roundedUp(value: number): number {
  if (value === 0) return 0;
  const step = 10 ** (FIGURES - 1 - Math.floor(Math.log10(Math.abs(value))));
  return Math.ceil(value * step * (1 - DUST)) / step;
}

function plain(value: number): string {
  return String(Number(value.toPrecision(FIGURES)));
}
