import { type CurveTable, readCurveTable } from "../../pump-table/curve-table.ts";
import type { RangeParameter } from "../parameter.ts";

/** Pumps by their curves: one row a point, headed in any order. */
export const pumpTable: RangeParameter<CurveTable> = {
  takes: "range",
  about:
    "The pumps, one row a point of a curve, under a heading: pump, speed, impeller diameter, flow, head, efficiency, NPSHR, power; optional besides: lowest speed, highest speed, minimum impeller, maximum impeller",
  example: "a range headed pump | speed | impeller diameter | flow | head | efficiency | NPSHR",
  read: (cells, { name, units }) => readCurveTable(cells, { place: { name }, units }),
};
