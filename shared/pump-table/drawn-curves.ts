import type { Finding } from "../../src/basis/result.ts";
import { pumpCurve } from "../../src/pump/pump-curve.ts";
import { rowPlace, type TablePlace } from "../tables/place.ts";
import type { TablePump } from "./curve-table.ts";

/** What comes to light when every curve is drawn: figures out of bounds, and efficiency against power. */
export function curveFindings(pumps: readonly TablePump[], place: TablePlace): readonly Finding[] {
  return pumps.flatMap(({ name, curves }) =>
    curves.flatMap(({ points }) => {
      const labels = points.map(({ row }) => rowPlace(place, row));
      return pumpCurve({ points, subject: `${labels[0]}: the curve of “${name}”`, labels }).findings;
    }),
  );
}
