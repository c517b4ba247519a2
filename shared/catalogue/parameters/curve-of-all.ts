import type { HeadCurve } from "../../../src/pump/head-curve.ts";
import type { RangeParameter } from "../parameter.ts";
import { systemCurve } from "./system-curve.ts";

/** Head against flow of all pumps that run, as they stand: of one pump, its curve. That it falls is as it should be. */
export const curveOfAll: RangeParameter<HeadCurve> = {
  takes: "range",
  about:
    "Head of all pumps that run against their flow together, a range of flow and head with or without a header row",
  example: "a range of rows, such as flow | head, then 0 | 72, then 1440 | 62, then 2880 | 43",
  read: (cells, reading) => {
    const read = systemCurve.read(cells, reading);
    return { ...read, findings: read.findings.filter(({ code }) => code !== "system-curve-falls") };
  },
};
