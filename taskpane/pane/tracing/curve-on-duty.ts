import { EMPTY_PUMP, type PumpText } from "../../../shared/duty/duty-text.ts";
import { type CurveToWrite, type RowUnits, rowsToPaste } from "../../../shared/tracing/curve-rows.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { pastedCurve, pastedRows } from "../pump/pasted-points.ts";

/** A traced curve as the pump of a duty, by the way that pasted rows go; nothing where a row has no head. */
export function pumpOfCurve(curve: CurveToWrite, units: RowUnits, unitSet: UnitSetName): PumpText | undefined {
  if (curve.rows.length === 0 || curve.rows.some(({ head }) => head === undefined)) return undefined;
  const rows = pastedRows(rowsToPaste([curve], units, "."));
  const read = rows === undefined ? undefined : pastedCurve(rows, unitSet);
  return read?.ok === true ? { ...EMPTY_PUMP, ...read.value.about, points: read.value.points } : undefined;
}
