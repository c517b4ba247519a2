import { describe, expect, it } from "vitest";
import { liquidNamed } from "../../../src/liquid/liquid-name.ts";
import { pumpCurve } from "../../../src/pump/pump-curve.ts";
import { pumpRatios } from "../../../src/slurry/as-pumped.ts";
import { curveOn } from "../../../src/slurry/curve-as-pumped.ts";
import { pumpedLiquidNamed } from "../../../src/slurry/slurry-liquid-name.ts";
import { numberIn, refusal, remarks } from "../../support/cells.ts";

const CARRIER = "SG 1, 1.0034 cSt, pv 2.3 kPa";

function stateOf(text: string) {
  const liquid = pumpedLiquidNamed(text);
  if (!liquid.ok) throw new Error(JSON.stringify(liquid.findings));
  const state = liquid.value.at(293.15);
  if (!state.ok) throw new Error(JSON.stringify(state.findings));
  return state.value;
}

function codesOf(text: string): readonly string[] {
  const liquid = pumpedLiquidNamed(text);
  return (liquid.ok ? liquid.value.at(293.15) : liquid).findings.map(({ code }) => code);
}

describe("a liquid with its solids in its own words", () => {
  it("weighs what both do together, and keeps the viscosity and vapour pressure of the liquid", () => {
    // By hand: 1/(0.25/2.65 + 0.75) = 1.18436 of 998.2 kg/m³; 0.25/2.65 of it 11.1732 % by volume.
    const state = stateOf(`${CARRIER} with solids 25 %, SG 2.65, d50 0.4 mm, d85 1 mm, fines 8 %`);
    expect(state.density / 998.2).toBeCloseTo(1.1843575, 7);
    expect(state.dynamicViscosity).toBeCloseTo(1.0034e-6 * 998.2, 12);
    expect(state.vapourPressure).toBe(2300);
    expect(state.solids).toMatchObject({ specificGravity: 2.65, fines: 0.08 });
    expect(state.solids?.byVolume).toBeCloseTo(0.111731843, 8);
    expect(state.solids?.medianSize).toBeCloseTo(4e-4, 12);
    expect(state.solids?.coarseSize).toBeCloseTo(1e-3, 12);
  });

  it.each([
    "25 % by weight, SG 2.65",
    "11.1731843575 % by volume, SG 2.65",
    "25 %, slurry SG 1.18435754",
    "slurry SG 1.18435754; SG 2.65",
    "25 %; 11.1731843575 % by volume",
  ])("is the same from any two figures: %s", (solids) => {
    const state = stateOf(`${CARRIER} with solids ${solids}`);
    expect(state.density / 998.2).toBeCloseTo(1.18435754, 6);
    expect(state.solids?.medianSize).toBeNull();
  });

  it("is the liquid itself, to the last digit, without solids", () => {
    const water = liquidNamed("water");
    expect(water.ok && stateOf("water with solids 0 %, SG 2.65, d50 0.4 mm")).toEqual(water.ok && stateOf("water"));
    expect(stateOf("water").solids).toBeUndefined();
  });

  it.each([
    ["one figure alone", "25 %", "slurry-figures-too-few"],
    ["figures that contradict", "25 %, SG 2.65, slurry SG 1.3", "slurry-figures-contradict"],
    ["more than packs", "85 %, SG 2.65", "slurry-impossible"],
    ["a share without its sign", "25, SG 2.65", "liquid-part-unread"],
    ["a figure given twice", "25 %, 20 %, SG 2.65", "liquid-stated-twice"],
    ["words", "25 %, SG 2.65, mud", "liquid-part-unread"],
    ["d85 below d50", "25 %, SG 2.65, d50 1 mm, d85 0.9 mm", "out-of-range"],
    ["a size of nothing", "25 %, SG 2.65, d50 0 mm", "out-of-range"],
    ["fines of all", "25 %, SG 2.65, fines 100 %", "out-of-range"],
  ])("refuses %s", (_, solids, code) => {
    expect(codesOf(`${CARRIER} with solids ${solids}`)).toEqual([code]);
  });

  it("is refused where the solids have arguments of their own", () => {
    expect(refusal("SLURRYLINE", 1000, "8in sch40", 0.02, 2.65, 15, null, "water with solids 5 %, SG 2")).toMatch(
      /liquid/i,
    );
  });
});

describe("functions with a liquid that carries solids", () => {
  const PIPE = "ID 200 mm rough 0.045 mm";
  const FLOW = "0.125663706143592 m3/s";
  const SLURRY = "SG 1, 1.0034 cSt, pv 2.3 kPa with solids 15 % by volume, SG 2.65, d50 0.4 mm";

  it("lose the published friction, in head of slurry", () => {
    // 9-slurry-velocity-007: 0.0923887138141 m of water per m, over 1.2475.
    const head = (0.0923887138141 / 1.2475) * 100;
    expect(numberIn("FRICTIONHEAD", FLOW, PIPE, 100, SLURRY, null, "SI")).toBeCloseTo(head, 6);
    expect(numberIn("TDH", FLOW, 20, [[PIPE, 40, ""]], [[PIPE, 60, ""]], 0, 0, SLURRY, null, "SI")).toBeCloseTo(
      20 + head,
      6,
    );
  });

  it("have NPSH in head of slurry", () => {
    // By hand: (101.325 − 2.3) kPa over 998.2 × 1.2475 × 9.80665, less 3 m of lift and the friction of 10 m.
    const npsh = 99_025 / (998.2 * 1.2475 * 9.80665) - 3 - (0.0923887138141 / 1.2475) * 10;
    expect(numberIn("NPSHA", FLOW, 3, [[PIPE, 10, ""]], 0, 0, SLURRY, null, "SI")).toBeCloseTo(npsh, 5);
  });

  it("have the Reynolds number of the liquid between the solids", () => {
    // By hand: 4 m/s × 0.2 m over 1.0034e-6 m²/s.
    expect(numberIn("REYNOLDS", FLOW, PIPE, SLURRY, null, "SI")).toBeCloseTo(0.8 / 1.0034e-6, 0);
  });

  it("say which run settles, and answer all the same", () => {
    const slow = ["0.03 m3/s", 20, [[PIPE, 40, ""]], [["ID 100 mm rough 0.045 mm", 60, ""]], 0, 0, SLURRY, null, "SI"];
    expect(numberIn("TDH", ...(slow as never[]))).toBeGreaterThan(20);
    expect(remarks("TDH", ...(slow as never[]))).toContain("limit bed-in-pipe");
  });

  it("treat solids whose size nobody knows, or that float, as part of the liquid", () => {
    const clear = numberIn("FRICTIONHEAD", FLOW, PIPE, 100, CARRIER, null, "SI");
    const unsized = `${CARRIER} with solids 15 % by volume, SG 2.65`;
    expect(numberIn("FRICTIONHEAD", FLOW, PIPE, 100, unsized, null, "SI")).toBe(clear);
    const floating = `${CARRIER} with solids 15 % by volume, SG 0.9, d50 0.4 mm`;
    expect(numberIn("FRICTIONHEAD", FLOW, PIPE, 100, floating, null, "SI")).toBe(clear);
  });
});

describe("a pump on a liquid with solids", () => {
  const HEAD_RATIO = 1 - 0.0385 * 1.65 * (1 + 4 / 2.65) * 0.25 * Math.log(1.5 / 0.0227);

  it("keeps Cave's share of its head, 1 where nothing is lost", () => {
    // Cave (1976) at 25 % by weight, SG 2.65, 1.5 mm: 0.832982.
    expect(HEAD_RATIO).toBeCloseTo(0.832982, 6);
    const ratioOf = (solids: string): number => {
      const found = pumpRatios(stateOf(`${CARRIER} with solids ${solids}`), null);
      return found.ok ? found.value.headRatio : Number.NaN;
    };
    expect(ratioOf("25 %, SG 2.65, d50 1.5 mm")).toBeCloseTo(HEAD_RATIO, 9);
    expect(ratioOf("25 %, SG 2.65, d50 0.0227 mm")).toBe(1);
    expect(ratioOf("25 %, SG 2.65, d50 0.02271 mm")).toBeLessThan(1);
    expect(ratioOf("25 %, SG 2.65, d50 0.0227 mm")).toBeCloseTo(ratioOf("25 %, SG 2.65, d50 0.02271 mm"), 4);
    expect(ratioOf("25 %, SG 0.9, d50 1.5 mm")).toBe(1);
    expect(ratioOf("25 %, SG 2.65")).toBe(1);
  });

  it("says that 1 is assumed where d50 is not stated", () => {
    expect(remarks("ASPUMPED", `${CARRIER} with solids 25 %, SG 2.65`)).toContain("assumed derating-size-unknown");
    expect(remarks("ASPUMPED", `${CARRIER} with solids 25 %, SG 2.65, d50 1.5 mm`)).not.toContain(
      "assumed derating-size-unknown",
    );
    expect(remarks("ASPUMPED", CARRIER)).toEqual([]);
  });

  it("has its curve brought to the slurry point by point", () => {
    const points = [
      { flow: 0, head: 50, npshRequired: 2 },
      { flow: 0.05, head: 46, efficiency: 0.6, npshRequired: 2.5 },
      { flow: 0.1, head: 38, efficiency: 0.7, npshRequired: 3 },
      { flow: 0.12, head: 30, efficiency: 0.65, npshRequired: 4 },
    ];
    const curve = pumpCurve({ points, subject: "curve", labels: ["1", "2", "3", "4"] });
    if (!curve.ok) throw new Error(JSON.stringify(curve.findings));
    const slurry = curveOn(stateOf(`${CARRIER} with solids 25 %, SG 2.65, d50 1.5 mm`), curve.value);
    if (!slurry.ok) throw new Error(JSON.stringify(slurry.findings));
    for (const [i, { flow, head, efficiency, npshRequired }] of slurry.value.points.entries()) {
      expect(flow).toBe(points[i]?.flow);
      expect(head).toBeCloseTo((points[i]?.head ?? 0) * HEAD_RATIO, 9);
      if (efficiency !== undefined) expect(efficiency).toBeCloseTo((points[i]?.efficiency ?? 0) * HEAD_RATIO, 9);
      expect(npshRequired).toBeCloseTo((points[i]?.npshRequired ?? 0) / HEAD_RATIO, 9);
    }
    const clear = curveOn(stateOf(CARRIER), curve.value);
    expect(clear.ok && clear.value).toBe(curve.value);
  });
});
