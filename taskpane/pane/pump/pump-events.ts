import { isBlankPoint } from "../../../shared/duty/decode-pump.ts";
import { type CurvePointText, EMPTY_CURVE_POINT, EMPTY_PUMP, type PumpText } from "../../../shared/duty/duty-text.ts";
import { type PastedCurve, withBlock } from "./pasted-points.ts";

/** What can happen to the pump of the duty beside typing into its boxes. Each can be undone. */
export type PumpEvent =
  | { readonly type: "pump-chosen"; readonly pump: PumpText; readonly notice: string }
  | { readonly type: "pump-begun" }
  | { readonly type: "pump-dropped" }
  | { readonly type: "point-added" }
  | { readonly type: "point-removed"; readonly row: number }
  | { readonly type: "curve-pasted"; readonly pasted: PastedCurve }
  | {
      readonly type: "block-pasted";
      readonly rows: readonly (readonly string[])[];
      readonly row: number;
      readonly column: keyof CurvePointText;
    };

/** The pump after an event, and the words for what lies between. */
export interface PumpChange {
  readonly pump: PumpText | undefined;
  readonly what: string;
  /** Said at the foot of the pane, with a way back. */
  readonly notice?: string;
}

/** The change an event makes; nothing where it makes none. */
export function pumpChange(pump: PumpText | undefined, event: PumpEvent): PumpChange | undefined {
  if (event.type === "pump-chosen") {
    return { pump: event.pump, what: `choosing ${event.pump.name}`, notice: event.notice };
  }
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
      return { pump: { ...pump, points }, what, notice: `Curve: point ${event.row + 1} removed.` };
    }
    case "curve-pasted": {
      const { points, about, curves } = event.pasted;
      const first = curves > 1 ? ` The rows hold ${curves} curves; this is the first.` : "";
      const notice = `Curve pasted: ${counted(points)} in place of those before.${first}`;
      return { pump: { ...pump, ...about, points: pointsOrOne(points) }, what: "pasting a curve", notice };
    }
    case "block-pasted": {
      const points = withBlock(pump.points, event.rows, event.row, event.column);
      const notice = `Pasted from point ${event.row + 1} on, figures as they are.`;
      return { pump: { ...pump, points }, what: "pasting figures", notice };
    }
  }
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
