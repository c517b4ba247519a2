import { describe, expect, it } from "vitest";
import type { HeadCurve } from "../../../src/pump/head-curve.ts";
import { operatingPoint } from "../../../src/pump/operating-point.ts";
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
  it("hold a point from the flow of their greatest head on", () => {
    const found = parallel(through(202, 34.99, 10));
    if (!found.ok) throw new Error(JSON.stringify(found.findings));
    expect(found.value.pumpFlow / GPM).toBeGreaterThan(100);
  });

  it.each([
    ["just left of it", through(198, 34.99, 10)],
    ["67.7 gpm each", through(135.4, 34.5, 15)],
  ])("are refused %s", (_, system) => {
    const found = parallel(system);
    expect(found.findings.map(({ code, kind }) => `${kind} ${code}`)).toEqual(["error parallel-point-not-held"]);
    expect((found.findings[0]?.limit?.value ?? 0) / GPM).toBeCloseTo(100, 9);
  });

  it("are judged alike alone and in series, where nothing is shared", () => {
    expect(parallel(through(67.7, 34.5, 15), 1).ok).toBe(true);
    const series = { pump: DROOPS, system: through(67.7, 69, 15), pumps: 2, arrangement: "series" } as const;
    expect(operatingPoint(series).ok).toBe(true);
  });

  // On 29.5 ft static through 220 gpm at 34.3 ft one alone meets 31.4 ft near 141 gpm: the second gives 30 ft at shutoff. On 26 ft
  // through 240 gpm at 34 ft it meets 29.3 ft.
  it("say that the second cannot open its check valve against the first", () => {
    const found = parallel(through(220, 34.3, 29.5));
    if (!found.ok) throw new Error(JSON.stringify(found.findings));
    const said = found.findings.find(({ code }) => code === "parallel-pump-not-joining");
    expect(said?.kind).toBe("limit");
    expect((said?.limit?.value ?? 0) / FOOT).toBeCloseTo(31.4, 0.5);
    expect(found.value.joins).toBe(false);
    const other = parallel(through(240, 34, 26));
    expect(other.ok && other.value.joins).toBe(true);
    expect(other.findings.map(({ code }) => code)).not.toContain("parallel-pump-not-joining");
  });

  it("open beside the others on a curve that falls throughout", () => {
    const falling = { pump: running(FALLING), pumps: 3, arrangement: "parallel" } as const;
    const found = operatingPoint({ ...falling, system: systemByFormula((q) => 20 + 1200 * q * q) });
    if (!found.ok) throw new Error(JSON.stringify(found.findings));
    expect(found.value.joins).toBe(true);
  });
});
