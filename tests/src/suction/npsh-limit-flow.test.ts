import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { WATER } from "../../../src/liquid/water.ts";
import { fittingsNamed } from "../../../src/pipework/fitting-name.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { standardAtmosphere } from "../../../src/site/atmosphere.ts";
import { type NpshLimitFlowInput, npshLimitFlow } from "../../../src/suction/npsh-limit-flow.ts";
import { suctionState } from "../../../src/suction/suction-state.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";
import { curveOf, FALLING, running } from "../../support/pumps.ts";

const [GPM, FOOT] = [unitOf("US gpm").factor, unitOf("ft").factor];

function good<T>(
  read: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly findings: unknown },
): T {
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value;
}

const [at20, at12] = publishedCases("6-npsh-flow", "station");
if (at20 === undefined || at12 === undefined) throw new Error("two cases are needed");
const required = at20.inputs["npshr_gpm_ft"] as unknown as readonly (readonly [number, number])[];
const pump = running(
  curveOf(required.map(([flow, npsh], i) => ({ flow: flow * GPM, head: 50 - i, npshRequired: npsh * FOOT }))),
);
/** 90 °F, 5,500 ft, 40 ft of 8 in suction hose of 0.03 mm with a strainer of K 1.5 and two bends of 0.3. */
const SITE: Omit<NpshLimitFlowInput, "suctionLift"> = {
  pump,
  pumps: 1,
  npshMargin: 0,
  suctionLine: [
    {
      pipe: good(pipeNamed("ID 8 in rough 0.03 mm", "pipe")),
      length: 40 * FOOT,
      fittings: good(fittingsNamed("K 1.5, K 0.3, K 0.3", "fittings")),
    },
  ],
  atmosphericPressure: good(standardAtmosphere(5500 * FOOT)),
  surfacePressure: 0,
  liquid: good(WATER.at(305.372222222)),
};
const limit = (lift: number, more: Partial<NpshLimitFlowInput> = {}) =>
  npshLimitFlow({ ...SITE, suctionLift: lift * FOOT, ...more });
const available = (lift: number, flow: number) =>
  good(suctionState({ ...SITE, suctionLift: lift * FOOT, flow: flow * GPM })).npshAvailable / FOOT;

describe("the flow at which NPSH runs out", () => {
  it("agrees with the cases worked apart from this product", () => {
    const low = good(limit(20));
    expectPublished((low.most ?? 0) / GPM, "flow_where_NPSHA_meets_NPSHR", at20);
    expectPublished(available(20, 1200), "NPSHA_at_1200", at20);
    expectPublished(available(20, 0), "NPSHA_at_0", at20);
    const high = good(limit(12));
    expectPublished((high.most ?? 0) / GPM, "flow_where_NPSHA_meets_NPSHR", at12);
    expectPublished((high.npshAvailable ?? 0) / FOOT, "NPSH_there", at12);
    expectPublished(available(12, 1200), "NPSHA_at_1200", at12);
  });

  it("leaves the margin it was given, or that of a lift", () => {
    const margin = 0.8;
    const { most, npshAvailable } = good(limit(10, { npshMargin: margin }));
    // NPSHR between rows by the same curve: what is left is the margin, by definition.
    const column = required.findIndex(([flow]) => flow * GPM >= (most ?? 0));
    expect(column).toBeGreaterThan(0);
    const bare = good(limit(10 + margin / FOOT));
    expect(most).toBeCloseTo(bare.most ?? 0, 9);
    expect(npshAvailable).toBeCloseTo((bare.npshAvailable ?? 0) + margin, 9);
    expect(limit(10, { npshMargin: null }).findings.map(({ code }) => code)).toContain("npsh-margin-assumed");
  });

  it("says where the curve ends first, and where NPSH suffices nowhere", () => {
    expect(good(limit(-10))).toMatchObject({
      endsBy: "end of the curve",
      least: 0,
      most: expect.closeTo(1200 * GPM, 9),
    });
    const none = limit(28);
    expect(good(none)).toEqual({ endsBy: "NPSH at every flow", least: null, most: null, npshAvailable: null });
    expect(none.findings.map(({ kind, code }) => `${kind} ${code}`)).toEqual(["limit npsh-flow-none"]);
  });

  it("gives the window where NPSHR rises again at small flows", () => {
    const rising = running(
      curveOf([4, 3, 2.5, 3, 5].map((npshRequired, i) => ({ flow: 0.01 * i, head: 40 - i, npshRequired }))),
    );
    const bore = good(pipeNamed("ID 500 mm rough 0 mm", "pipe"));
    const line = [{ pipe: bore, length: 0.001, fittings: [] }];
    const site = { ...SITE, pump: rising, suctionLine: line, atmosphericPressure: 101_325 };
    const weight = SITE.liquid.density * 9.80665;
    const lift = (101_325 - (SITE.liquid.vapourPressure ?? 0)) / weight - 3;
    const found = good(npshLimitFlow({ ...site, suctionLift: lift }));
    // NPSHA is 3 m: NPSHR is that at the second and the fourth point.
    expect(found.least).toBeCloseTo(0.01, 4);
    expect(found.most).toBeCloseTo(0.03, 4);
  });

  it("is each pump's own flow where each has its own line", () => {
    const [segment] = SITE.suctionLine;
    if (segment === undefined) throw new Error("no line");
    const shared = [{ ...segment, share: 0.5 }];
    const one = good(limit(12)).most as number;
    expect(good(limit(12, { pumps: 2, suctionLine: shared })).most).toBeCloseTo(2 * one, 9);
    // One hose for both loses more.
    expect(good(limit(12, { pumps: 2 })).most).toBeLessThan(2 * one);
  });

  it("refuses a curve without NPSHR, and half a pump", () => {
    const bare = running(curveOf(FALLING.points.map(({ flow, head }) => ({ flow, head }))));
    expect(limit(12, { pump: bare }).findings.map(({ code }) => code)).toEqual(["curve-column-missing"]);
    expect(limit(12, { pumps: 1.5 }).findings.map(({ code }) => code)).toEqual(["not-a-whole-number"]);
  });
});
