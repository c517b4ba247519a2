import { describe, expect, it } from "vitest";
import { totalHead } from "../../../src/head/total-head.ts";
import { WATER } from "../../../src/liquid/water.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { askedOfEach, selectionSystem } from "../../../src/pump/selection-duty.ts";

const pipe = pipeNamed("10in HDPE DR17");
const water = WATER.at(293.15);
if (!pipe.ok || !water.ok) throw new Error("the test names what the product does not know");
const plain = {
  staticHead: 20,
  suctionLine: [],
  dischargeLine: [{ pipe: pipe.value, length: 500, fittings: [] }],
  liquid: water.value,
};

describe("the system curve pumps are chosen by", () => {
  // The claim of the docstring, against the energy equation worked out at each flow.
  it("keeps within 3e-6 of the head lost from the duty to twice its flow, and nearly from half of it", () => {
    const flow = 0.08;
    const system = selectionSystem({ ...plain, flow, pressureDifference: 0 });
    if (!system.ok) throw new Error("no system");
    for (let i = 50; i <= 200; i += 1) {
      const at = (flow * i) / 100;
      const exact = totalHead({ ...plain, flow: at, sourcePressure: 0, deliveryPressure: 0 });
      if (!exact.ok) throw new Error("no head");
      const lost = exact.value.total - plain.staticHead;
      const off = Math.abs(system.value.headAt(at) - exact.value.total);
      expect(off, `at ${i} % of the duty`).toBeLessThan((i < 100 ? 3e-4 : 3e-6) * lost);
    }
  });

  it("is exact at the duty and adds the pressures at the ends", () => {
    const [flow, deliveryPressure] = [0.08, 50_000];
    const exact = totalHead({ ...plain, flow, sourcePressure: 0, deliveryPressure });
    const system = selectionSystem({ ...plain, flow, pressureDifference: deliveryPressure });
    if (!system.ok || !exact.ok) throw new Error("no system");
    expect(system.value.headAt(flow)).toBeCloseTo(exact.value.total, 12);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("refuses a flow of %d", (flow) => {
    expect(selectionSystem({ ...plain, flow, pressureDifference: 0 }).ok).toBe(false);
  });
});

describe("what is asked of each of several pumps", () => {
  const system = selectionSystem({ ...plain, flow: 0.08, pressureDifference: 0 });
  if (!system.ok) throw new Error("no system");
  const duty = { flow: 0.08, system: system.value, density: 998, npshAvailable: (flow: number) => 10 - 50 * flow };

  it("is a share of the flow side by side, of the head in series", () => {
    const beside = askedOfEach(duty, 4, "parallel");
    expect([beside.flow, beside.system.mostFlow]).toEqual([0.02, duty.system.mostFlow / 4]);
    expect(beside.system.headAt(0.02)).toBe(duty.system.headAt(0.08));
    // 10 − 50 × 4 × 0.02
    expect(beside.npshAvailable?.(0.02)).toBeCloseTo(6, 12);
    const behind = askedOfEach(duty, 4, "series");
    expect([behind.flow, behind.npshAvailable?.(0.08)]).toEqual([0.08, 6]);
    expect(behind.system.headAt(0.08)).toBe(duty.system.headAt(0.08) / 4);
  });

  it("is the duty itself of one pump", () => {
    for (const arrangement of ["parallel", "series"] as const) {
      const one = askedOfEach(duty, 1, arrangement);
      expect([one.flow, one.system.headAt(0.05)]).toEqual([0.08, duty.system.headAt(0.05)]);
    }
  });
});
