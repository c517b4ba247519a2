import type { AxisScale, Position } from "../../../shared/tracing/calibration.ts";
import { type TracedLine, withoutPoint, withPoint, withPointMoved } from "../../../shared/tracing/points.ts";
import {
  type AxisKey,
  TRACED_KEYS,
  type TracedKey,
  unitsOfAxis,
  usualUnit,
} from "../../../shared/tracing/traced-amounts.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { UnitSymbol } from "../../../src/basis/units.ts";

/** One of the two points of an axis: where it is, once placed, and the amount as typed. */
export interface AxisEnd {
  readonly at: Position | undefined;
  readonly text: string;
}

export interface DrawnAxis {
  /** The unit the picture is printed in. */
  readonly unit: UnitSymbol;
  readonly scale: AxisScale;
  readonly ends: readonly [AxisEnd, AxisEnd];
}

export type EndNumber = 0 | 1;

export const CURVE_FIELDS = ["pump", "speed", "diameter"] as const;
export type CurveField = (typeof CURVE_FIELDS)[number];

/** A pump curve being traced: its name plate as typed, and its lines. */
export interface DrawnCurve extends Readonly<Record<CurveField, string>> {
  readonly lines: Readonly<Record<TracedKey, TracedLine>>;
}

/** All that is set on a picture: what undo goes back over. */
export interface Drawing {
  readonly axes: Readonly<Record<AxisKey, DrawnAxis>>;
  readonly diameterUnit: UnitSymbol;
  readonly curves: readonly DrawnCurve[];
  /** The number of the next point. */
  readonly nextId: number;
}

/** What can be picked on the board: a point of the line in hand, or a point of an axis. */
export type Mark = { readonly kind: "point"; readonly id: number } | EndMark;

export interface EndMark {
  readonly kind: "end";
  readonly axis: AxisKey;
  readonly end: EndNumber;
}

/** Which curve and line are in hand. */
export interface InHand {
  readonly curve: number;
  readonly line: TracedKey;
}

const EMPTY_LINES: DrawnCurve["lines"] = { head: [], efficiency: [], npshRequired: [], power: [] };

export function emptyDrawing(units: UnitSetName): Drawing {
  const axis = (key: AxisKey): DrawnAxis => ({
    unit: usualUnit(key, units),
    scale: "linear",
    ends: [
      { at: undefined, text: "" },
      { at: undefined, text: "" },
    ],
  });
  return {
    axes: {
      flow: axis("flow"),
      head: axis("head"),
      efficiency: axis("efficiency"),
      npshRequired: axis("npshRequired"),
      power: axis("power"),
    },
    diameterUnit: usualUnit("diameter", units),
    curves: [{ pump: "", speed: "", diameter: "", lines: EMPTY_LINES }],
    nextId: 1,
  };
}

/** Whether anything would be lost with this drawing. */
export function isStarted({ axes, curves }: Drawing): boolean {
  return (
    Object.values(axes).some(({ ends }) => ends.some(({ at }) => at !== undefined)) ||
    curves.some(({ lines }) => TRACED_KEYS.some((key) => lines[key].length > 0))
  );
}

export function lineInHand({ curves }: Drawing, { curve, line }: InHand): TracedLine {
  return curves[curve]?.lines[line] ?? [];
}

/** The marks on the board in the order Tab goes through them. */
export function marksInHand(drawing: Drawing, inHand: InHand): readonly Mark[] {
  const ends = (["flow", inHand.line] as const).flatMap((axis) =>
    ([0, 1] as const).filter((end) => drawing.axes[axis].ends[end].at !== undefined).map((end) => ({ axis, end })),
  );
  return [
    ...ends.map((end): Mark => ({ kind: "end", ...end })),
    ...lineInHand(drawing, inHand).map(({ id }): Mark => ({ kind: "point", id })),
  ];
}

export function sameMark(one: Mark | undefined, other: Mark | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  if (one.kind === "point") return other.kind === "point" && one.id === other.id;
  return other.kind === "end" && one.axis === other.axis && one.end === other.end;
}

export function placeOf(drawing: Drawing, inHand: InHand, mark: Mark): Position | undefined {
  if (mark.kind === "end") return drawing.axes[mark.axis].ends[mark.end].at;
  return lineInHand(drawing, inHand).find(({ id }) => id === mark.id)?.at;
}

/** The next axis point that a line needs and that is not on the picture yet. */
export function nextEnd({ axes }: Drawing, line: TracedKey): Extract<Mark, { kind: "end" }> | undefined {
  for (const axis of ["flow", line] as const)
    for (const end of [0, 1] as const) if (axes[axis].ends[end].at === undefined) return { kind: "end", axis, end };
  return undefined;
}

export function withAxis(drawing: Drawing, key: AxisKey, change: Partial<DrawnAxis>): Drawing {
  return { ...drawing, axes: { ...drawing.axes, [key]: { ...drawing.axes[key], ...change } } };
}

export function withEnd(drawing: Drawing, key: AxisKey, end: EndNumber, change: Partial<AxisEnd>): Drawing {
  const [first, second] = drawing.axes[key].ends;
  const ends: DrawnAxis["ends"] = end === 0 ? [{ ...first, ...change }, second] : [first, { ...second, ...change }];
  return withAxis(drawing, key, { ends });
}

/** The points of another axis, and its values and unit where both measure the same. */
export function withAxisTaken(drawing: Drawing, key: TracedKey, from: TracedKey): Drawing {
  const axis = drawing.axes[from];
  if (unitsOfAxis(key) === unitsOfAxis(from)) return withAxis(drawing, key, axis);
  const [first, second] = drawing.axes[key].ends;
  const [firstFrom, secondFrom] = axis.ends;
  const ends: DrawnAxis["ends"] = [
    { ...first, at: firstFrom.at },
    { ...second, at: secondFrom.at },
  ];
  return withAxis(drawing, key, { ends });
}

export function withMarkAdded(drawing: Drawing, inHand: InHand, at: Position): Drawing {
  const { nextId } = drawing;
  return { ...withLine(drawing, inHand, (line) => withPoint(line, nextId, at)), nextId: nextId + 1 };
}

export function withMarkMoved(drawing: Drawing, inHand: InHand, mark: Mark, at: Position): Drawing {
  if (mark.kind === "end") return withEnd(drawing, mark.axis, mark.end, { at });
  return withLine(drawing, inHand, (line) => withPointMoved(line, mark.id, at));
}

export function withoutMark(drawing: Drawing, inHand: InHand, mark: Mark): Drawing {
  if (mark.kind === "end") return withEnd(drawing, mark.axis, mark.end, { at: undefined });
  return withLine(drawing, inHand, (line) => withoutPoint(line, mark.id));
}

/** A further curve of the same pump at the same speed: another impeller, as most pictures show. */
export function withCurveAdded(drawing: Drawing): Drawing {
  const last = drawing.curves.at(-1);
  const added: DrawnCurve = { pump: last?.pump ?? "", speed: last?.speed ?? "", diameter: "", lines: EMPTY_LINES };
  return { ...drawing, curves: [...drawing.curves, added] };
}

/** One curve always stays, if only an empty one. */
export function withoutCurve(drawing: Drawing, curve: number): Drawing {
  const curves = drawing.curves.filter((_, index) => index !== curve);
  const [gone] = drawing.curves;
  const emptied = { pump: gone?.pump ?? "", speed: gone?.speed ?? "", diameter: "", lines: EMPTY_LINES };
  return { ...drawing, curves: curves.length === 0 ? [emptied] : curves };
}

export function withCurveText(drawing: Drawing, curve: number, field: CurveField, text: string): Drawing {
  return withCurve(drawing, curve, (one) => ({ ...one, [field]: text }));
}

function withLine(drawing: Drawing, { curve, line }: InHand, change: (line: TracedLine) => TracedLine): Drawing {
  return withCurve(drawing, curve, (one) => ({ ...one, lines: { ...one.lines, [line]: change(one.lines[line]) } }));
}

function withCurve(drawing: Drawing, curve: number, change: (curve: DrawnCurve) => DrawnCurve): Drawing {
  return { ...drawing, curves: drawing.curves.map((one, index) => (index === curve ? change(one) : one)) };
}
