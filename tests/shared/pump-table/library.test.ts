import { describe, expect, it } from "vitest";
import { curveFindings } from "../../../shared/pump-table/drawn-curves.ts";
import { joinedPumps } from "../../../shared/pump-table/joined-tables.ts";
import { inventedPumps } from "../../../shared/pump-table/library/library.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { valueAt } from "../../../src/numeric/pchip.ts";
import { pumpCurve } from "../../../src/pump/pump-curve.ts";
import { specificSpeed, suctionSpecificSpeed } from "../../../src/pump/specific-speed.ts";

const [GPM, FT, PSI] = [unitOf("US gpm").factor, unitOf("ft").factor, unitOf("psi").factor];
const { curves: table, list } = inventedPumps();
const { pumps } = joinedPumps([{ source: "the library", curves: table, list }]);

const DRAWN = pumps.flatMap(({ name, curves }) =>
  curves.map((curve, i) => {
    const { points, speed = 0 } = curve;
    const drawn = pumpCurve({ points, subject: name, labels: points.map((_, k) => `${name} ${k}`) });
    if (!drawn.ok || drawn.value.bestEfficiency === undefined) throw new Error(`${name} cannot be drawn`);
    return { id: `${name} curve ${i + 1}`, name, curve, speed, drawn: drawn.value, best: drawn.value.bestEfficiency };
  }),
);

describe("the invented library", () => {
  it("has 24 pumps or more of three families, each marked as invented, none a name of another", () => {
    expect(list.pumps.length).toBeGreaterThanOrEqual(24);
    expect(new Set(list.pumps.map(({ duty }) => duty)).size).toBe(3);
    expect(list.pumps.every(({ name, mark }) => / \(invented\)$/.test(name) && mark === "invented")).toBe(true);
    expect(new Set(list.pumps.map(({ name }) => name)).size).toBe(list.pumps.length);
    expect(pumps.map(({ name }) => name)).toEqual(list.pumps.map(({ name }) => name));
  });

  it("spans 50 to 6,000 gpm and 20 to 600 ft at best efficiency", () => {
    const flows = DRAWN.map(({ best }) => best.flow / GPM);
    const heads = DRAWN.map(({ best }) => best.head / FT);
    expect(Math.min(...flows)).toBeLessThanOrEqual(50);
    expect(Math.max(...flows)).toBeGreaterThanOrEqual(5999);
    expect(Math.min(...heads)).toBeLessThanOrEqual(22);
    expect(Math.max(...heads)).toBeGreaterThanOrEqual(599);
  });

  it("has several curves for some pumps, at other speeds and other impellers", () => {
    const counts = (key: "speed" | "diameter"): number =>
      pumps.filter(({ curves }) => new Set(curves.map((curve) => curve[key])).size > 1).length;
    expect(counts("speed")).toBeGreaterThan(5);
    expect(counts("diameter")).toBeGreaterThan(5);
  });

  it("has no two curves alike", () => {
    const bests = DRAWN.map(({ best, speed }) => `${best.flow.toPrecision(4)} ${best.head.toPrecision(4)} ${speed}`);
    expect(new Set(bests).size).toBe(bests.length);
  });

  it("gives nobody cause for a remark", () => {
    expect(table.pumps.flatMap(({ findings }) => findings)).toEqual([]);
    expect(curveFindings(table.pumps, { name: "library" })).toEqual([]);
  });
});

// Common practice, no source: the ranges a pump engineer expects of single-stage centrifugal pumps.
describe.each(DRAWN)("$id", ({ drawn, best, speed, name }) => {
  const { points } = drawn;

  it("has a specific speed of a centrifugal pump and a shutoff head that goes with it", () => {
    const ns = specificSpeed({ speed, flow: best.flow, head: best.head, convention: "US" });
    expect(ns.ok && ns.value).toBeGreaterThan(450);
    expect(ns.ok && ns.value).toBeLessThan(4500);
    const ratio = (points[0]?.head ?? 0) / best.head;
    expect(ratio).toBeGreaterThanOrEqual(1.1 - 0.005);
    expect(ratio).toBeLessThanOrEqual(1.35 + 0.005);
  });

  it("has a head that falls, an NPSHR that rises, and a power that rises", () => {
    for (let i = 1; i < points.length; i += 1) {
      const [before, point] = [points[i - 1], points[i]];
      expect(point?.head).toBeLessThan(before?.head ?? 0);
      expect(point?.npshRequired).toBeGreaterThanOrEqual(before?.npshRequired ?? 0);
      expect(point?.power).toBeGreaterThan(before?.power ?? 0);
    }
  });

  it("is between 45 % and 90 % efficient at its best, which lies within its curve", () => {
    expect(best.efficiency).toBeGreaterThan(0.45);
    expect(best.efficiency).toBeLessThan(0.9);
    expect(best.isAtEnd).toBe(false);
  });

  it("has a suction specific speed from 7,000 to 11,000", () => {
    if (drawn.npshRequired === undefined) throw new Error("no NPSHR");
    // The eye is the same at every trim, so it is that of the full impeller that counts.
    const listed = list.pumps.find((pump) => pump.name === name);
    const curve = DRAWN.find((one) => one.name === name && one.speed === speed);
    if (listed?.greatestImpeller === undefined || curve?.drawn.npshRequired === undefined) throw new Error("no pump");
    const npshRequired = valueAt(curve.drawn.npshRequired, curve.best.flow);
    const nss = suctionSpecificSpeed({ speed, flow: curve.best.flow, npshRequired, convention: "US" });
    expect(nss.ok && nss.value).toBeGreaterThanOrEqual(7000);
    expect(nss.ok && nss.value).toBeLessThanOrEqual(11_000);
  });

  it("stays within the pressure its casing is listed for, shut off on water", () => {
    const listed = list.pumps.find((pump) => pump.name === name);
    // 0.433 psi to the foot of water (common practice).
    expect(((points[0]?.head ?? 0) / FT) * 0.433).toBeLessThan((listed?.greatestPressure ?? 0) / PSI);
  });
});
