import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { pipeCollapse } from "../../../src/estimate/pipe-collapse.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { POLYETHYLENE_DIMENSION_RATIOS } from "../../../src/tables/polyethylene-pipe.ts";

const PSI = unitOf("psi").factor;

function collapseOf(name: string) {
  const pipe = pipeNamed(name);
  if (!pipe.ok) throw new Error(name);
  return pipeCollapse(pipe.value);
}

function figuresOf(name: string) {
  const found = collapseOf(name);
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value;
}

describe("collapse of polyethylene pipe under vacuum", () => {
  // By hand: 2 E/(1 − 0.45²) × 0.95/(DR − 1)³ psi with E 28 000 and 110 000 psi, from memory of a handbook.
  it.each([
    { ratio: "11", hours: 262.1, years: 66.7, holds: true },
    { ratio: "13.5", hours: 134.2, years: 34.2, holds: true },
    { ratio: "17", hours: 64, years: 16.3, holds: false },
    { ratio: "21", hours: 32.8, years: 8.3, holds: false },
  ])("DR $ratio", ({ ratio, hours, years, holds }) => {
    const found = figuresOf(`10in HDPE DR${ratio}`);
    expect(found.dimensionRatio).toBeCloseTo(Number(ratio), 9);
    expect(found.shortTerm / PSI).toBeCloseTo(hours, 0);
    expect(found.longTerm / PSI).toBeCloseTo(years, 1);
    // 14.696 psi is a full vacuum at sea level, twice that 29.4 psi.
    expect(found.factor).toBeCloseTo(years / 14.696, 1);
    expect(found.holds).toBe(holds);
  });

  it("falls as the wall thins, whatever the size", () => {
    const found = POLYETHYLENE_DIMENSION_RATIOS.map((ratio) => figuresOf(`8in HDPE DR${ratio}`).longTerm);
    expect(found).toEqual(found.toSorted((a, b) => b - a));
    expect(new Set(found).size).toBe(found.length);
    expect(figuresOf("24in HDPE DR17").longTerm / figuresOf("8in HDPE DR17").longTerm).toBeCloseTo(1, 9);
  });

  it("says what it rests on", () => {
    expect(collapseOf("8in HDPE DR11").findings).toMatchObject([{ code: "collapse-rests-on", kind: "check" }]);
  });

  it.each(["6in suction hose", "6in sch40", "6in PVC sch40", "ID 150 mm rough 0.0015 mm"])("refuses %s", (name) => {
    const refused = collapseOf(name);
    expect(refused.ok).toBe(false);
    expect(refused.findings.map(({ code }) => code)).toEqual(["collapse-not-held"]);
  });
});
