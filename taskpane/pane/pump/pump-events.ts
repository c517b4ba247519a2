import { isBlankPoint } from "../../../shared/duty/decode-pump.ts";
import {
  type CurvePointText,
  EMPTY_CURVE_POINT,
  EMPTY_OTHER_PUMP,
  EMPTY_PUMP,
  type OtherPumpText,
  type PumpText,
} from "../../../shared/duty/duty-text.ts";
import { type PastedCurve, withBlock } from "./pasted-points.ts";

/** What can happen to the curve of a pump; to that of a further one where `other` says which. */
type CurveEvent = { readonly other?: number | undefined } & (
  | { readonly type: "point-added" }
  | { readonly type: "point-removed"; readonly row: number }
  | { readonly type: "curve-pasted"; readonly pasted: PastedCurve }
  | {
      readonly type: "block-pasted";
      readonly rows: readonly (readonly string[])[];
      readonly row: number;
      readonly column: keyof CurvePointText;
    }
);

/** What can happen to the pumps of the duty beside typing into their boxes. Each can be undone. */
export type PumpEvent =
  | CurveEvent
  | { readonly type: "other-pump-added"; readonly pump?: PumpText }
  | { readonly type: "other-pump-removed"; readonly other: number }
  | { readonly type: "pump-chosen"; readonly pump: PumpText; readonly notice: string }
  | { readonly type: "pump-set"; readonly pump: PumpText; readonly what: string; readonly notice: string }
  | { readonly type: "pump-begun" }
  | { readonly type: "pump-dropped" };

/** The further pumps after one is added or removed, and the words for what lies between. */
export interface OtherPumpsChange {
  readonly otherPumps: readonly OtherPumpText[];
  readonly what: string;
  readonly notice: string;
}

export function otherPumpsChange(
  pumps: readonly OtherPumpText[],
  event: Extract<PumpEvent, { readonly type: "other-pump-added" | "other-pump-removed" }>,
): OtherPumpsChange {
  if (event.type === "other-pump-added") {
    const added = { ...EMPTY_OTHER_PUMP, ...event.pump };
    const notice = `${nameOf(added)} stands beside the selected pump.`;
    return { otherPumps: [...pumps, added], what: "adding a further pump", notice };
  }
  const removed = pumps[event.other];
  const notice = `${removed === undefined ? "The pump" : nameOf(removed)} removed from the station.`;
  return { otherPumps: pumps.toSpliced(event.other, 1), what: "removing a further pump", notice };
}

/** The pump after an event, and the words for what lies between. */
export interface PumpChange {
  readonly pump: PumpText | undefined;
  readonly what: string;
  /** Said at the foot of the pane, with a way back. */
  readonly notice?: string;
}

/** The change an event makes; nothing where it makes none. */
export function pumpChange(
  pump: PumpText | undefined,
  event: Exclude<PumpEvent, { readonly type: "other-pump-added" | "other-pump-removed" }>,
): PumpChange | undefined {
  if (event.type === "pump-chosen") {
    return { pump: event.pump, what: `choosing ${event.pump.name}`, notice: event.notice };
  }
  if (event.type === "pump-set") return { pump: event.pump, what: event.what, notice: event.notice };
  if (event.type === "pump-begun") return { pump: EMPTY_PUMP, what: "entering a pump by hand" };
  if (pump === undefined) return undefined;
  switch (event.type) {
    case "pump-dropped":
      return { pump: undefined, what: "removing the pump", notice: `${nameOf(pump)} removed from the duty.` };
    case "point-added":
      return { pump: { ...pump, points: [...pump.points, EMPTY_CURVE_POINT] }, what: "adding a point" };
    case "point-removed": {
      const left = pump.points.filter((_, row) => row !== event.row);
      const points = left.length === 0 ? [EMPTY_CURVE_POINT] : left;
      const what = `removing point ${event.row + 1}`;
      return { pump: { ...asTyped(pump), points }, what, notice: `Curve: point ${event.row + 1} removed.` };
    }
    case "curve-pasted": {
      const { points, about, curves } = event.pasted;
      const first = curves > 1 ? ` The rows hold ${curves} curves; this is the first.` : "";
      const notice = `Curve pasted: ${counted(points)} in place of those before.${first}`;
      return { pump: { ...asTyped(pump), ...about, points: pointsOrOne(points) }, what: "pasting a curve", notice };
    }
    case "block-pasted": {
      const points = withBlock(pump.points, event.rows, event.row, event.column);
      const notice = `Pasted from point ${event.row + 1} on, figures as they are.`;
      return { pump: { ...asTyped(pump), points }, what: "pasting figures", notice };
    }
  }
}

/** With another curve it is no more the pump that was selected. */
function asTyped({ selectedFor: _, ...pump }: PumpText): PumpText {
  return pump;
}

export function nameOf({ name }: PumpText): string {
  return name.trim() === "" ? "The pump" : `“${name.trim()}”`;
}

function pointsOrOne(points: readonly CurvePointText[]): readonly CurvePointText[] {
  return points.length === 0 ? [EMPTY_CURVE_POINT] : points;
}

function counted(points: readonly CurvePointText[]): string {
  const count = points.filter((point) => !isBlankPoint(point)).length;
  return count === 1 ? "1 point" : `${count} points`;
}
