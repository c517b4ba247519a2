import { describe, expect, it } from "vitest";
import type { HeadCurve } from "../../../src/pump/head-curve.ts";
import { operatingPoint } from "../../../src/station/operating-point.ts";
import { curveOf, FALLING, running, systemByFormula } from "../../support/pumps.ts";

const GPM = 3.785411784e-3 / 60;
const FOOT = 0.3048;

/** A curve that rises to 100 gpm: 30 ft at shutoff, 35 at its top. */
const DROOPS = running(
  curveOf(
    [
      [0, 30],
      [50, 34],
      [100, 35],
      [150, 30],
      [200, 20],
    ].map(([flow = 0, head = 0]) => ({ flow: flow * GPM, head: head * FOOT })),
  ),
);

/** A system through this point, gpm and ft, above this static head. */
function through(flow: number, head: number, staticHead: number): HeadCurve {
  const at = (q: number): number => staticHead + (head - staticHead) * (q / flow) ** 2;
  return systemByFormula((q) => at(q / GPM) * FOOT);
}

function parallel(system: HeadCurve, pumps = 2) {
  return operatingPoint({ pump: DROOPS, system, pumps, arrangement: "parallel" });
}

describe("equal pumps in parallel on a drooping curve", () => {
  // Each on the falling part from 100 gpm on. System of 10 ft static through 202 gpm at the head of the curve at 101 gpm.
  it("hold a point from the flow of their maximum head on", () => {
    const found = parallel(through(202, 34.99, 10));
    if (!found.ok) throw new Error(JSON.stringify(found.findings));
    expect(found.value.pumpFlow / GPM).toBeGreaterThan(100);
  });

  // 198 gpm at 34.99 ft would be 99 gpm each, left of the top: with two on, the line asks for more than either gives. One
  // alone holds less than the 30 ft of the other at zero flow, which so opens and cannot stay.
  it("hunt just left of it", () => {
    const found = parallel(through(198, 34.99, 10));
    if (!found.ok) throw new Error(JSON.stringify(found.findings));
    expect(found.value.running).toBe(1);
    expect(found.findings.map(({ code, kind }) => `${kind} ${code}`)).toContain("limit pump-cannot-share");
  });

  it("are not answered on the rising part: 67.7 gpm each", () => {
    const found = parallel(through(135.4, 34.5, 15));
    if (!found.ok) throw new Error(JSON.stringify(found.findings));
    expect(found.value.running).toBe(1);
    expect(found.value.pumpFlow / GPM).toBeGreaterThan(100);
    expect(found.findings.map(({ code, kind }) => `${kind} ${code}`)).toContain("limit pump-held-closed");
  });

  it("are judged alike alone and in series, where nothing is shared", () => {
    expect(parallel(through(67.7, 34.5, 15), 1).ok).toBe(true);
    const series = { pump: DROOPS, system: through(67.7, 69, 15), pumps: 2, arrangement: "series" } as const;
    expect(operatingPoint(series).ok).toBe(true);
  });

  // On 29.5 ft static through 220 gpm at 34.3 ft one alone meets 31.4 ft near 140 gpm: the second gives 30 ft at shutoff. On 26 ft
  // through 240 gpm at 34 ft it meets 29.3 ft.
  it("say that the second cannot open its check valve against the first", () => {
    const found = parallel(through(220, 34.3, 29.5));
    if (!found.ok) throw new Error(JSON.stringify(found.findings));
    const said = found.findings.find(({ code }) => code === "pump-near-shut" || code === "pump-held-closed");
    expect(said?.kind).toBe("limit");
    expect(Math.abs((said?.limit?.value ?? 0) / FOOT - 31.4)).toBeLessThanOrEqual(0.1);
    expect(found.value.running).toBe(1);
    expect(Math.abs(found.value.flow / GPM - 140)).toBeLessThanOrEqual(1);
    const other = parallel(through(240, 34, 26));
    expect(other.ok && other.value.running).toBe(2);
    expect(other.findings.map(({ code }) => code)).not.toContain("pump-held-closed");
  });

  it("open beside the others on a curve that falls throughout", () => {
    const falling = { pump: running(FALLING), pumps: 3, arrangement: "parallel" } as const;
    const found = operatingPoint({ ...falling, system: systemByFormula((q) => 20 + 1200 * q * q) });
    if (!found.ok) throw new Error(JSON.stringify(found.findings));
    expect(found.value.running).toBe(3);
  });
});
