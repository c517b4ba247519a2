import type { Finding } from "../../src/basis/result.ts";
import type { OfferedPump } from "../../src/pump/offered-pump.ts";
import { pumpCurve } from "../../src/pump/pump-curve.ts";

/** What comes to light when every curve is drawn: figures out of bounds, and efficiency against power. */
export function curveFindings(pumps: readonly OfferedPump[], tableName: string): readonly Finding[] {
  return pumps.flatMap(({ name, curves }) =>
    curves.flatMap(({ points }, i) => {
      const subject = `${tableName}, “${name}” curve ${i + 1}`;
      const labels = points.map((_, point) => `${subject} point ${point + 1}`);
      return pumpCurve({ points, subject, labels }).findings;
    }),
  );
}
