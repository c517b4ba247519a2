import { CURVE_COLUMNS } from "../../../shared/pump-table/columns.ts";
import { figures } from "../../../shared/text/figure.ts";
import { inWords } from "../../../shared/text/words.ts";
import {
  type Axis,
  amountsAt,
  type Calibration,
  calibrate,
  type FlowAmount,
  spanOf,
  withoutRemainder,
  worthOfPixel,
} from "../../../shared/tracing/calibration.ts";
import {
  type CurveRow,
  type CurveToWrite,
  type RowUnits,
  rowsAsTraced,
  rowsAtHeadFlows,
  type TracedAmounts,
} from "../../../shared/tracing/curve-rows.ts";
import { curveTableFindings } from "../../../shared/tracing/table-findings.ts";
import { type AxisKey, axisName, TRACED_KEYS, type TracedKey } from "../../../shared/tracing/traced-amounts.ts";
import { append } from "../../../src/basis/append.ts";
import { outOfRange } from "../../../src/basis/method.ts";
import { readNumber } from "../../../src/basis/quantity-text.ts";
import type { Finding, Result } from "../../../src/basis/result.ts";
import { toEngine, unitOf } from "../../../src/basis/units.ts";
import type { CurveField, Drawing, DrawnCurve, EndNumber } from "./drawing.ts";
import type { RowsKind, TracingState } from "./state.ts";

/** Everything that follows from a drawing. */
export interface TracingWorked {
  /** Of the line in hand; nothing until both its axes are complete. */
  readonly calibration: Result<Calibration> | undefined;
  readonly calibrations: Readonly<Record<TracedKey, Result<Calibration> | undefined>>;
  /** What is wrong with the amount typed for an axis point. */
  readonly atEnd: (axis: AxisKey, end: EndNumber) => readonly Finding[];
  /** What is wrong with the text of a curve's name plate. */
  readonly atField: (curve: number, field: CurveField) => readonly Finding[];
  /** Rows by curve, curves without points included. */
  readonly rows: readonly (readonly CurveRow[])[];
  readonly units: RowUnits;
  /** What stands against the rows of any curve. */
  readonly findings: readonly Finding[];
  /** What the table of pump curves would say of them. */
  readonly tableFindings: readonly Finding[];
  /** The rows to hand out; nothing while there are none or an error stands against them. */
  readonly toWrite: readonly CurveToWrite[] | undefined;
}

/** Flows nearer than this part of the span of the flow axis are one flow. */
const SAME_FLOW = 1e-9;
/** The greatest efficiency on an axis that can hardly be meant in per cent. */
const LIKELY_FRACTION = 1.5;
/** An even axis below 0 by no more than this part of its span is 0 to within a click. */
const CLICK = 0.002;
/** How far beyond its axis points a line may go unremarked, as part of the distance between them. */
const FAR = 0.5;

let last: { drawing: Drawing; rows: RowsKind; line: TracedKey; worked: TracingWorked } | undefined;

/** Worked out once for each drawing: a moving pointer changes nothing. */
export function tracingWorked({ drawing, rows, line }: TracingState): TracingWorked {
  if (last?.drawing !== drawing || last.rows !== rows || last.line !== line) {
    last = { drawing, rows, line, worked: workOut(drawing, rows, line) };
  }
  return last.worked;
}

function workOut(drawing: Drawing, kind: RowsKind, line: TracedKey): TracingWorked {
  const axes = Object.fromEntries(
    (["flow", ...TRACED_KEYS] as const).map((key) => [key, readAxis(drawing, key)]),
  ) as Record<AxisKey, ReadAxis>;
  const calibrations = Object.fromEntries(
    TRACED_KEYS.map((key) => {
      const flow = axes.flow.axis;
      const amount = axes[key].axis;
      return [key, flow === undefined || amount === undefined ? undefined : calibrate({ flow, amount })];
    }),
  ) as TracingWorked["calibrations"];
  const sameFlow = axes.flow.axis === undefined ? 0 : SAME_FLOW * spanOf(axes.flow.axis);
  const curves = drawing.curves.map((curve, index) =>
    readCurve(curve, index, drawing, calibrations, { kind, sameFlow }),
  );
  const inUse = curves.filter(({ isEmpty }) => !isEmpty);
  const findings = [
    ...efficiencyScale(axes.efficiency.axis),
    ...inUse.flatMap((curve) => [...curve.missingName, ...curve.findings]),
    ...unlikeCurves(inUse),
  ];
  const units: RowUnits = {
    flow: drawing.axes.flow.unit,
    head: drawing.axes.head.unit,
    efficiency: drawing.axes.efficiency.unit,
    npshRequired: drawing.axes.npshRequired.unit,
    power: drawing.axes.power.unit,
    diameter: drawing.diameterUnit,
  };
  const isWrong = [...findings, ...inUse.flatMap(({ plate }) => Object.values(plate).flat())].some(
    ({ kind }) => kind === "error",
  );
  const toWrite = isWrong || inUse.length === 0 ? undefined : inUse.map(({ written }) => written);
  const wouldRepeat = findings.some(
    ({ code }) => code === "tracing-rows-without-head" || code === "tracing-below-zero",
  );
  return {
    calibration: calibrations[line],
    calibrations,
    atEnd: (axis, end) => axes[axis].ends[end],
    atField: (curve, field) => curves[curve]?.plate[field] ?? [],
    rows: curves.map(({ written }) => written.rows),
    units,
    findings,
    tableFindings: toWrite === undefined || wouldRepeat ? [] : curveTableFindings(toWrite, units),
    toWrite,
  };
}

interface ReadAxis {
  /** Once both points are placed and state a number. */
  readonly axis: Axis | undefined;
  readonly ends: readonly [readonly Finding[], readonly Finding[]];
}

function readAxis({ axes }: Drawing, key: AxisKey): ReadAxis {
  const { unit, scale, ends } = axes[key];
  const name = axisName(key);
  const [first, second] = ends.map(({ text }) => (text.trim() === "" ? undefined : readNumber(text, name)));
  const faults = (read: Result<number> | undefined): readonly Finding[] => (read?.ok === false ? read.findings : []);
  const places = [ends[0].at, ends[1].at] as const;
  const isWhole = first?.ok === true && second?.ok === true && places[0] !== undefined && places[1] !== undefined;
  return {
    axis: isWhole
      ? {
          name,
          unit,
          scale,
          points: [
            { at: places[0], value: first.value },
            { at: places[1], value: second.value },
          ],
        }
      : undefined,
    ends: [faults(first), faults(second)],
  };
}

interface ReadCurve {
  readonly written: CurveToWrite;
  readonly isEmpty: boolean;
  readonly index: number;
  readonly plate: Readonly<Record<CurveField, readonly Finding[]>>;
  readonly missingName: readonly Finding[];
  readonly findings: readonly Finding[];
}

interface RowsWanted {
  readonly kind: RowsKind;
  readonly sameFlow: number;
}

function readCurve(
  curve: DrawnCurve,
  index: number,
  { diameterUnit }: Drawing,
  calibrations: TracingWorked["calibrations"],
  { kind, sameFlow }: RowsWanted,
): ReadCurve {
  const speed = readPlate(curve.speed, "speed", "rpm");
  const diameter = readPlate(curve.diameter, "diameter", diameterUnit);
  const pump = curve.pump.trim().replace(/\s+/g, " ");
  const findings: Finding[] = [];
  const lines = Object.fromEntries(
    TRACED_KEYS.map((key) => {
      const read = readLine(curve, key, calibrations[key], sameFlow);
      append(findings, read.findings);
      return [key, read.amounts];
    }),
  ) as TracedAmounts;
  const isEmpty = TRACED_KEYS.every((key) => curve.lines[key].length === 0);
  // Two amounts at one flow have no curve between them.
  const isAtHeadFlows = kind === "head-flows" && !findings.some(({ code }) => code === "tracing-flow-repeated");
  const rows = isAtHeadFlows ? atHeadFlows(lines, sameFlow, pump, findings) : rowsAsTraced(lines, sameFlow);
  const headless = rows.filter(({ head }) => head === undefined).length;
  if (headless > 0 || (rows.length === 0 && TRACED_KEYS.some((key) => lines[key].length > 0))) {
    const facts = { rows: counted(headless, "row stands", "rows stand") };
    findings.push({ code: "tracing-rows-without-head", kind: "check", subject: "head", given: pump, facts });
  }
  return {
    written: { pump, speed: speed.value, diameter: diameter.value, rows },
    isEmpty,
    index,
    plate: { pump: [], speed: speed.findings, diameter: diameter.findings },
    missingName:
      pump === ""
        ? [{ code: "left-out", kind: "error", subject: "pump name", suggestions: ["the name of the pump"] }]
        : [],
    findings,
  };
}

function readPlate(
  text: string,
  key: "speed" | "diameter",
  unit: "rpm" | Drawing["diameterUnit"],
): { readonly value: number | undefined; readonly findings: readonly Finding[] } {
  if (text.trim() === "") return { value: undefined, findings: [] };
  const { name, quantity } = CURVE_COLUMNS[key];
  const read = readNumber(text, name);
  if (!read.ok) return { value: undefined, findings: read.findings };
  if (read.value > 0) return { value: read.value, findings: [] };
  const value = toEngine(read.value, unitOf(unit));
  return { value: undefined, findings: [outOfRange(name, quantity, value, "above", 0)] };
}

function readLine(
  curve: DrawnCurve,
  key: TracedKey,
  calibration: Result<Calibration> | undefined,
  sameFlow: number,
): { readonly amounts: readonly FlowAmount[]; readonly findings: readonly Finding[] } {
  const points = curve.lines[key];
  if (points.length === 0) return { amounts: [], findings: [] };
  const { name } = CURVE_COLUMNS[key];
  const read = calibration?.ok === true ? points.map(({ at }) => amountsAt(calibration.value, at)) : [];
  const known = read.filter((amounts) => amounts !== undefined);
  if (calibration?.ok !== true || known.length < points.length) {
    const facts = { points: counted(points.length, "point"), axes: `flow axis and the ${name} axis` };
    return { amounts: [], findings: [{ code: "tracing-line-without-axis", kind: "error", subject: name, facts }] };
  }
  const { flow: flowAxis, amount: amountAxis } = calibration.value.axes;
  const exact = known.map(({ flow, amount }) => ({
    flow: withoutRemainder(flow, flowAxis),
    amount: withoutRemainder(amount, amountAxis),
  }));
  const amounts = exact
    .map(({ flow, amount }) => ({ flow: notJustBelow(flow, flowAxis), amount: notJustBelow(amount, amountAxis) }))
    .sort((one, other) => one.flow - other.flow);
  const findings = [
    ...takenAsZero(exact, name, flowAxis, amountAxis),
    ...belowZero(amounts, name, flowAxis, amountAxis),
    ...repeatedFlow(amounts, name, flowAxis, sameFlow),
    ...farOut(amounts, name, flowAxis, amountAxis),
  ];
  return { amounts, findings };
}

function notJustBelow(value: number, axis: Axis): number {
  return axis.scale === "linear" && value < 0 && value >= -CLICK * spanOf(axis) ? 0 : value;
}

function takenAsZero(exact: readonly FlowAmount[], name: string, flowAxis: Axis, amountAxis: Axis): readonly Finding[] {
  const taken = (values: readonly number[], axis: Axis, subject: string): readonly Finding[] =>
    values
      .filter((value) => value !== notJustBelow(value, axis))
      .map((value) => {
        const facts = { value: `${figures(value)} ${axis.unit}` };
        const cites = { source: "house", at: "curve tracing" } as const;
        return { code: "tracing-taken-as-zero", kind: "check", subject, facts, cites };
      });
  return [
    ...taken(
      exact.map(({ flow }) => flow),
      flowAxis,
      `the flow of a point of ${name}`,
    ),
    ...taken(
      exact.map(({ amount }) => amount),
      amountAxis,
      `a point of ${name}`,
    ),
  ];
}

function belowZero(amounts: readonly FlowAmount[], name: string, flowAxis: Axis, amountAxis: Axis): readonly Finding[] {
  const low = (value: number | undefined, subject: string, unit: string): readonly Finding[] => {
    if (value === undefined || value >= 0) return [];
    const facts = { value: `${figures(value)} ${unit}` };
    return [{ code: "tracing-below-zero", kind: "check", subject, facts }];
  };
  const lowest = [...amounts].sort((one, other) => one.amount - other.amount)[0];
  return [
    ...low(amounts[0]?.flow, `the flow of a point of ${name}`, flowAxis.unit),
    ...low(lowest?.amount, `a point of ${name}`, amountAxis.unit),
  ];
}

function repeatedFlow(
  amounts: readonly FlowAmount[],
  subject: string,
  { unit }: Axis,
  sameFlow: number,
): readonly Finding[] {
  const again = amounts.find(({ flow }, i) => i > 0 && flow - (amounts[i - 1] as FlowAmount).flow <= sameFlow);
  if (again === undefined) return [];
  const facts = { flow: `${figures(again.flow)} ${unit}` };
  return [{ code: "tracing-flow-repeated", kind: "error", subject, facts }];
}

function farOut(amounts: readonly FlowAmount[], subject: string, flowAxis: Axis, amountAxis: Axis): readonly Finding[] {
  const far = amounts.filter(({ flow, amount }) => isFar(flow, flowAxis) || isFar(amount, amountAxis));
  if (far.length === 0) return [];
  const facts = { points: counted(far.length, "point lies", "points lie") };
  const cites = { source: "house", at: "curve tracing" } as const;
  return [{ code: "tracing-beyond-axis-points", kind: "check", subject, facts, cites }];
}

function isFar(value: number, { scale, points: [first, second] }: Axis): boolean {
  const along = (amount: number): number => (scale === "log" ? Math.log(amount) : amount);
  const part = (along(value) - along(first.value)) / (along(second.value) - along(first.value));
  return part < -FAR || part > 1 + FAR;
}

function atHeadFlows(lines: TracedAmounts, sameFlow: number, given: string, findings: Finding[]): readonly CurveRow[] {
  const { rows, beyond } = rowsAtHeadFlows(lines, sameFlow);
  const between = TRACED_KEYS.filter((key) => key !== "head" && rows.some((row) => row[key] !== undefined));
  if (between.length > 0) {
    const subject = inWords(between.map((key) => CURVE_COLUMNS[key].name)).replace(/ or /, " and ");
    const cites = { source: "fritsch-butland-1984", at: "monotone piecewise cubic interpolant" } as const;
    findings.push({ code: "tracing-read-between", kind: "check", subject, given, cites });
  }
  for (const key of TRACED_KEYS) {
    if (beyond[key] === 0) continue;
    const facts = { flows: counted(beyond[key], "flow") };
    const subject = CURVE_COLUMNS[key].name;
    findings.push({ code: "tracing-beyond-line", kind: "check", subject, given, facts });
  }
  return rows;
}

function efficiencyScale(axis: Axis | undefined): readonly Finding[] {
  if (axis === undefined) return [];
  const greatest = Math.max(axis.points[0].value, axis.points[1].value);
  if (greatest > LIKELY_FRACTION) return [];
  const facts = { value: `${figures(greatest)} ${axis.unit}` };
  return [{ code: "tracing-efficiency-as-fraction", kind: "check", subject: axis.name, facts }];
}

/** Curves of one pump that a table could not tell apart, or would read a blank of as the figure above it. */
function unlikeCurves(curves: readonly ReadCurve[]): readonly Finding[] {
  return curves.flatMap(({ index, written }, at) => {
    const sameName = curves.filter((other) => other.written.pump.toLowerCase() === written.pump.toLowerCase());
    const findings: Finding[] = [];
    for (const key of ["speed", "diameter"] as const) {
      if (written[key] !== undefined || sameName.every((other) => other.written[key] === undefined)) continue;
      const facts = { curve: index + 1 };
      const subject = CURVE_COLUMNS[key].name;
      findings.push({ code: "tracing-curve-unlike", kind: "error", subject, given: written.pump, facts });
    }
    const twin = curves
      .slice(0, at)
      .find(
        (other) =>
          sameName.includes(other) &&
          other.written.speed === written.speed &&
          other.written.diameter === written.diameter,
      );
    if (twin !== undefined && written.pump !== "") {
      const facts = { first: twin.index + 1, second: index + 1 };
      findings.push({
        code: "tracing-curve-repeated",
        kind: "error",
        subject: "curve",
        given: written.pump,
        facts,
      });
    }
    return findings;
  });
}

function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** A figure with as many decimals as a pixel of the picture is worth; four figures on a log axis. */
export function shownAmount(value: number, axis: Axis, worth: number): string {
  // A remainder below 0 that no digit shows is not "-0.0".
  return axis.scale === "log" ? figures(value) : value.toFixed(decimalsWorth(worth)).replace(/^-(?=[0.]+$)/, "");
}

/** Decimals of a linear axis that a pixel can bear. */
export function decimalsWorth(worth: number): number {
  return worth > 0 ? Math.min(6, Math.max(0, -Math.floor(Math.log10(worth)))) : 0;
}

/** What a pixel of the picture is worth at the first points of the axes. */
export function worthAtStart(calibration: Calibration): FlowAmount {
  return worthOfPixel(calibration, calibration.axes.flow.points[0].at) ?? { flow: 0, amount: 0 };
}
