import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type TotalHeadInput, totalHead } from "../../../src/head/total-head.ts";
import { COLD_WATER, fittingOf, pipeOf, segmentOf } from "../../support/pipes.ts";

const pipe = pipeOf(0.3, 1e-5);
const exit = fittingOf(1, true);
const base: TotalHeadInput = {
  flow: 0.15,
  staticHead: 14,
  sourcePressure: 0,
  deliveryPressure: 0,
  suctionLine: [segmentOf(pipe, 15, fittingOf(2.1))],
  dischargeLine: [segmentOf(pipe, 1600, fittingOf(8), exit)],
  liquid: COLD_WATER,
};

function totalOf(change: Partial<TotalHeadInput>): number {
  const head = totalHead({ ...base, ...change });
  if (!head.ok) throw new Error(JSON.stringify(head.findings));
  return head.value.total;
}

function codesOf(change: Partial<TotalHeadInput>): readonly string[] {
  return totalHead({ ...base, ...change }).findings.map(({ code, kind }) => `${kind} ${code}`);
}

describe("total head", () => {
  // Energy equation by hand: V = 0.15 / (π 0.3² / 4) = 2.122066 m/s, V²/2g = 0.2295975 m; fittings 2.1 + 8 + 1 = 11.1.
  it("is static head and fittings where the pipes have no length", () => {
    const lines = {
      suctionLine: [segmentOf(pipe, 0, fittingOf(2.1))],
      dischargeLine: [segmentOf(pipe, 0, fittingOf(8), exit)],
    };
    expect(totalOf(lines)).toBeCloseTo(14 + 11.1 * 0.2295975, 5);
  });

  // By hand: 100 kPa / (998.2 × 9.80665) = 10.21555 m.
  it.each([
    { why: "pressure at the destination adds", change: { deliveryPressure: 1e5 }, head: 10.21555 },
    { why: "pressure at the source takes off", change: { sourcePressure: 1e5 }, head: -10.21555 },
    { why: "equal pressures cancel", change: { sourcePressure: 3e5, deliveryPressure: 3e5 }, head: 0 },
  ])("$why", ({ change, head }) => {
    expect(totalOf(change) - totalOf({})).toBeCloseTo(head, 5);
  });

  it("is static and pressure head at no flow", () => {
    expect(totalOf({ flow: 0, deliveryPressure: 5e4, sourcePressure: -2e4 })).toBeCloseTo(14 + 0.7 * 10.21555, 5);
  });

  it("rises with the flow", () => {
    const flow = fc.double({ min: 1e-9, max: 2, noNaN: true });
    fc.assert(
      fc.property(flow, fc.double({ min: 1e-6, max: 1, noNaN: true }), (less, more) => {
        expect(totalOf({ flow: less + more })).toBeGreaterThan(totalOf({ flow: less }));
      }),
    );
  });

  it("moves one for one with the static head", () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 500, noNaN: true }), (staticHead) => {
        expect(totalOf({ staticHead }) - totalOf({ staticHead: 0 })).toBeCloseTo(staticHead, 9);
      }),
    );
  });

  it("counts the exit once, whatever the bore before it", () => {
    const wide = pipeOf(0.6, 1e-5);
    const without = totalOf({ dischargeLine: [segmentOf(pipe, 100), segmentOf(wide, 10)] });
    const counted = totalOf({ dischargeLine: [segmentOf(pipe, 100), segmentOf(wide, 10, exit)] });
    // V = 0.15 / (π 0.6² / 4) = 0.530516 m/s, V²/2g = 0.0143498 m.
    expect(counted - without).toBeCloseTo(0.0143498, 6);
  });

  it("says nothing of an ordinary system", () => {
    expect(codesOf({})).toEqual([]);
  });

  const layFlat = pipeOf(0.3, 1e-5, { collapsible: true });
  it.each([
    ["no exit", { dischargeLine: [segmentOf(pipe, 10)] }, "check exit-not-counted"],
    ["two exits", { dischargeLine: [segmentOf(pipe, 10, exit), segmentOf(pipe, 1, exit)] }, "check exit-counted-twice"],
    ["an exit in the suction line", { suctionLine: [segmentOf(pipe, 15, exit)] }, "check exit-in-suction"],
    ["no suction pipe", { suctionLine: [] }, "check line-lossless"],
    ["no discharge pipe", { dischargeLine: [] }, "check line-lossless"],
    ["lay-flat suction hose", { suctionLine: [segmentOf(layFlat, 15)] }, "limit lay-flat-in-suction"],
    ["gravity enough", { staticHead: -500 }, "check total-head-not-positive"],
    // Of the losses a thousandth of a metre is paid by the fall.
    [
      "a fall that pays part of the losses",
      { staticHead: -0.001, deliveryPressure: 0, sourcePressure: 0 },
      "check head-leans-on-fall",
    ],
    // 2.4 m/s in 0.3 m is 0.16965 m³/s.
    ["suction above 2.4 m/s", { flow: 0.1697 }, "check velocity-high"],
  ] as const)("remarks on %s", (_, change, code) => {
    expect(codesOf(change)).toEqual([code]);
  });

  it("doubts no head where nothing flows, and doubts one of just nothing where it does", () => {
    const still = { staticHead: 0, suctionLine: [segmentOf(pipe, 0)], dischargeLine: [segmentOf(pipe, 0, exit)] };
    expect(codesOf({ ...still, flow: 0 })).not.toContain("check total-head-not-positive");
    expect(codesOf({ ...still, dischargeLine: [], suctionLine: [] })).toContain("check total-head-not-positive");
  });

  it.each([
    ["suction at 2.4 m/s", 0.1696, []],
    // 6 m/s in 0.3 m is 0.42412 m³/s.
    ["discharge just below 6 m/s", 0.4241, ["suction line"]],
    ["discharge just above 6 m/s", 0.4242, ["suction line", "discharge line"]],
  ] as const)("holds the usual velocities: %s", (_, flow, subjects) => {
    const { findings } = totalHead({ ...base, flow });
    expect(findings.filter(({ code }) => code === "velocity-high").map(({ subject }) => subject)).toEqual(subjects);
  });

  it("counts exits by their number", () => {
    const two = { ...exit, count: 2 };
    expect(codesOf({ dischargeLine: [segmentOf(pipe, 10, two)] })).toEqual(["check exit-counted-twice"]);
  });

  it.each([
    ["a negative flow", { flow: -1e-9 }, "flow"],
    ["more vacuum than there is at the source", { sourcePressure: -101_326 }, "source pressure"],
    ["more vacuum than there is at the destination", { deliveryPressure: -101_326 }, "delivery pressure"],
    ["no number", { staticHead: Number.NaN }, "static head"],
  ])("refuses %s", (_, change, subject) => {
    const head = totalHead({ ...base, ...change });
    expect(head.ok).toBe(false);
    expect(head.findings[0]?.subject).toBe(subject);
  });

  it("takes a full vacuum of one atmosphere", () => {
    expect(totalHead({ ...base, sourcePressure: -101_325 }).ok).toBe(true);
  });
});
