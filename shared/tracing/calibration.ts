import type { Citation } from "../../src/basis/citation.ts";
import type { TracingFindings } from "../../src/basis/finding-code.ts";
import { type Draft, type Finding, fail, type Result, succeed } from "../../src/basis/result.ts";
import { figures } from "../text/figure.ts";

/** A place in a picture, in its own pixels: x to the right, y downwards, from its top left corner. */
export interface Position {
  readonly x: number;
  readonly y: number;
}

export type AxisScale = "linear" | "log";

/** A place on an axis and the amount printed there, in the unit of the axis. */
export interface AxisPoint {
  readonly at: Position;
  readonly value: number;
}

/** An axis as its reader knows it. Both points lie on the axis itself, or on one grid line along it. */
export interface Axis {
  /** "flow axis" */
  readonly name: string;
  /** As printed, for messages: "m³/h". */
  readonly unit: string;
  readonly scale: AxisScale;
  readonly points: readonly [AxisPoint, AxisPoint];
}

export interface Axes {
  readonly flow: Axis;
  /** Of what is traced against the flow. */
  readonly amount: Axis;
}

/** A point of a traced line, in the units of its axes. */
export interface FlowAmount {
  readonly flow: number;
  readonly amount: number;
}

/** How positions in a picture and amounts belong together. Made by `calibrate`. */
export interface Calibration {
  readonly axes: Axes;
  /** The step from the first to the second point of each axis, pixels. */
  readonly flowStep: Position;
  readonly amountStep: Position;
  /** From the first point of the amount axis to that of the flow axis, in flow steps and amount steps. */
  readonly between: Steps;
}

/** A way across the picture, in whole steps of the two axes. */
interface Steps {
  readonly flow: number;
  readonly amount: number;
}

/** Nearer than this no two axis points can be told apart, pixels. */
const SAME_PLACE = 1;
/** Axis points nearer than this carry the error of a click far, pixels. */
const CLOSE = 40;
/** Axes that meet at less than this, degrees, do not span the picture. */
const LEAST_ANGLE = 20;
/** A flat scan is square to well within this, degrees. */
const MOST_SKEW = 3;
/** An amount that is this part of the span of its axis is a rounding remainder of zero. */
const REMAINDER = 1e-12;

const HOUSE: Citation = { source: "house", at: "curve tracing" };

/**
 * The affine map between picture and amounts through two points on each axis. It takes up any shift, rotation,
 * stretch and skew, so a scan need not lie straight; a photograph taken at a slant is not affine and is not mended.
 *
 * Fails where the two points of an axis share a place or a value, where a log axis states a value of 0 or less, and
 * where the axes are nearly parallel (under 20°). Cautions where the axes are more than 3° out of square and where
 * axis points are nearer than 40 pixels.
 */
export function calibrate(axes: Axes): Result<Calibration> {
  const { flow, amount } = axes;
  const errors = [...axisErrors(flow), ...axisErrors(amount)];
  if (errors.length > 0) return fail(errors);
  const flowStep = stepOf(flow);
  const amountStep = stepOf(amount);
  const area = cross(flowStep, amountStep);
  const sine = Math.abs(area) / (Math.hypot(flowStep.x, flowStep.y) * Math.hypot(amountStep.x, amountStep.y));
  const angle = (Math.asin(Math.min(1, sine)) * 180) / Math.PI;
  if (angle < LEAST_ANGLE) {
    const facts = { other: amount.name, angle: figures(angle) };
    return fail([{ code: "tracing-axes-parallel", kind: "error", subject: flow.name, facts, cites: HOUSE }]);
  }
  const start = difference(flow.points[0].at, amount.points[0].at);
  const between = stepsAlong(start, flowStep, amountStep);
  const findings = [...closeness(flow), ...closeness(amount), ...skew(axes, 90 - angle)];
  return succeed({ axes, flowStep, amountStep, between }, findings);
}

/** The amounts at a place; nothing where a log axis runs out of double precision, far off the picture. */
export function amountsAt({ axes, flowStep, amountStep }: Calibration, at: Position): FlowAmount | undefined {
  const along = stepsAlong(difference(at, axes.flow.points[0].at), flowStep, amountStep).flow;
  const up = stepsAlong(difference(at, axes.amount.points[0].at), flowStep, amountStep).amount;
  const flow = valueAlong(axes.flow, along);
  const amount = valueAlong(axes.amount, up);
  return Number.isFinite(flow) && Number.isFinite(amount) ? { flow, amount } : undefined;
}

/** The place of amounts; nothing where a log axis cannot show them. */
export function positionOf(calibration: Calibration, { flow, amount }: FlowAmount): Position | undefined {
  const { axes, flowStep, amountStep, between } = calibration;
  const along = stepTo(axes.flow, flow);
  const up = stepTo(axes.amount, amount) - between.amount;
  const { x, y } = axes.flow.points[0].at;
  const at = { x: x + along * flowStep.x + up * amountStep.x, y: y + along * flowStep.y + up * amountStep.y };
  return Number.isFinite(at.x) && Number.isFinite(at.y) ? at : undefined;
}

/** What one pixel is worth where the reader stands: how finely the picture can be read. Absolute values. */
export function worthOfPixel(calibration: Calibration, at: Position): FlowAmount | undefined {
  const here = amountsAt(calibration, at);
  const right = amountsAt(calibration, onward(at, calibration.flowStep));
  const above = amountsAt(calibration, onward(at, calibration.amountStep));
  if (here === undefined || right === undefined || above === undefined) return undefined;
  return { flow: Math.abs(right.flow - here.flow), amount: Math.abs(above.amount - here.amount) };
}

/** The difference of the values at the two points of an axis. */
export function spanOf({ points: [first, second] }: Axis): number {
  return Math.abs(second.value - first.value);
}

/** The amount, and 0 for a rounding remainder under 1e-12 of the span, which no picture shows. */
export function withoutRemainder(value: number, axis: Axis): number {
  return axis.scale === "linear" && Math.abs(value) < REMAINDER * spanOf(axis) ? 0 : value;
}

/** Exact at both points of the axis. */
function valueAlong({ scale, points: [first, second] }: Axis, steps: number): number {
  if (scale === "log") return first.value ** (1 - steps) * second.value ** steps;
  return first.value * (1 - steps) + second.value * steps;
}

function stepTo({ scale, points: [first, second] }: Axis, value: number): number {
  if (scale === "linear") return (value - first.value) / (second.value - first.value);
  return value > 0 ? Math.log(value / first.value) / Math.log(second.value / first.value) : Number.NaN;
}

/** Cramer's rule: a way in pixels as so many flow steps and so many amount steps. */
function stepsAlong(way: Position, flowStep: Position, amountStep: Position): Steps {
  const area = cross(flowStep, amountStep);
  return { flow: cross(way, amountStep) / area, amount: cross(flowStep, way) / area };
}

function axisErrors({ name, unit, scale, points: [first, second] }: Axis): readonly Finding[] {
  const problem = (draft: Draft<keyof TracingFindings>): Finding => ({ ...draft, kind: "error", subject: name });
  const stated = (value: number) => ({ value: `${figures(value)} ${unit}` });
  const errors: Finding[] = [];
  if (distance(first.at, second.at) < SAME_PLACE) errors.push(problem({ code: "tracing-axis-points-together" }));
  if (first.value === second.value)
    errors.push(problem({ code: "tracing-axis-values-equal", facts: stated(first.value) }));
  const notPositive = [first.value, second.value].find((value) => value <= 0);
  if (scale === "log" && notPositive !== undefined)
    errors.push(problem({ code: "tracing-log-not-positive", facts: stated(notPositive) }));
  return errors;
}

function closeness(axis: Axis): readonly Finding[] {
  const apart = distance(axis.points[0].at, axis.points[1].at);
  if (apart >= CLOSE) return [];
  const facts = { pixels: figures(apart) };
  return [{ code: "tracing-axis-points-close", kind: "check", subject: axis.name, facts, cites: HOUSE }];
}

function skew({ flow, amount }: Axes, degrees: number): readonly Finding[] {
  if (degrees <= MOST_SKEW) return [];
  const facts = { other: amount.name, angle: figures(degrees) };
  return [{ code: "tracing-axes-skewed", kind: "check", subject: flow.name, facts, cites: HOUSE }];
}

function stepOf({ points: [first, second] }: Axis): Position {
  return difference(second.at, first.at);
}

function onward(from: Position, step: Position): Position {
  const length = Math.hypot(step.x, step.y);
  return { x: from.x + step.x / length, y: from.y + step.y / length };
}

function difference(to: Position, from: Position): Position {
  return { x: to.x - from.x, y: to.y - from.y };
}

function cross(one: Position, other: Position): number {
  return one.x * other.y - one.y * other.x;
}

export function distance(one: Position, other: Position): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}
