import { describe, expect, it } from "vitest";
import { decodeDuty } from "../../../../shared/duty/decode.ts";
import { pumpOfCurve } from "../../../../taskpane/pane/tracing/curve-on-duty.ts";
import { dutyText } from "../../../support/duty-of.ts";

const UNITS = { flow: "m³/h", head: "m", efficiency: "%", npshRequired: "m", power: "kW", diameter: "mm" } as const;
const ROWS = [
  { flow: 0, head: 30 },
  { flow: 50, head: 27, efficiency: 60, npshRequired: 2 },
  { flow: 75, head: 24, efficiency: 68, npshRequired: 2.5 },
  { flow: 100, head: 20, efficiency: 70, npshRequired: 3 },
];
const CURVE = { pump: "TEST-1", speed: 1450, diameter: 250, rows: ROWS };

describe("a traced curve on the duty", () => {
  it("is that curve, in whatever units the duty is", () => {
    for (const unitSet of ["US", "SI", "METRIC"] as const) {
      const pump = pumpOfCurve(CURVE, UNITS, unitSet);
      const { duty } = decodeDuty({ ...dutyText(), unitSet, ...(pump && { pump }) });
      expect(duty.pump?.name).toBe("TEST-1");
      expect((duty.pump?.speed ?? 0) * 60).toBeCloseTo(1450, 6);
      expect(duty.pump?.impellerDiameter).toBeCloseTo(0.25, 9);
      expect(duty.pump?.curve.points.map(({ flow, head }) => [flow * 3600, head])).toEqual(
        ROWS.map(({ flow, head }) => [expect.closeTo(flow, 6), expect.closeTo(head, 6)]),
      );
      expect(duty.pump?.curve.points[3]?.efficiency).toBeCloseTo(0.7, 9);
      expect(duty.pump?.curve.points[3]?.npshRequired).toBeCloseTo(3, 9);
    }
  });

  it("is none where a row has no head, or there is none", () => {
    expect(pumpOfCurve({ ...CURVE, rows: [...ROWS, { flow: 120, efficiency: 65 }] }, UNITS, "US")).toBe(undefined);
    expect(pumpOfCurve({ ...CURVE, rows: [] }, UNITS, "US")).toBe(undefined);
  });
});
