import { describe, expect, it } from "vitest";
import type { Filling } from "../../../src/pump/selection-duty.ts";
import { type StationCase, stationAsked } from "../../../src/station/station-ranking.ts";
import { COLD_WATER, fittingOf, pipeOf, segmentOf } from "../../support/pipes.ts";

// By hand: 300 mm bore, π/4 · 0.3² = 0.0706858 m²; at 1 ft/s (0.3048 m/s) 0.0215450 m³/s and V²/2g = 0.3048² / 19.6133 =
// 0.00473676 m. All losses are of fittings, K 100 before the pump and K 300 from it to the summit: 400 · 0.00473676 =
// 1.89470 m. The summit lies 31 m over the source. The runs are a millimetre long.
const PIPE = pipeOf(0.3);
const run = (coefficient: number, endLevel: number) => ({
  ...segmentOf(PIPE, 0.001, fittingOf(coefficient)),
  endLevel,
});
const CASE: StationCase = {
  flow: 0.07,
  staticHead: 20,
  suctionLine: [segmentOf(PIPE, 0.001, fittingOf(100))],
  dischargeLine: [run(300, 131), run(0, 120)],
  liquid: COLD_WATER,
  sourcePressure: 0,
  deliveryPressure: 0,
  frictionMargin: 0,
  sourceLevel: 100,
  pumps: 1,
  arrangement: "parallel",
  atmosphericPressure: 101_325,
};

function fillOf(change: Partial<StationCase> = {}): Filling | undefined {
  const asked = stationAsked([{ ...CASE, ...change }]);
  if (!asked.ok) throw new Error(JSON.stringify(asked.findings));
  return asked.value.cases[0].duty.fill;
}

describe("what a pump of a station is held to while the line fills over its summit", () => {
  it("is the head there at 1 ft/s in the largest bore", () => {
    expect(fillOf()?.flow).toBeCloseTo(0.021545, 7);
    expect(fillOf()?.head).toBeCloseTo(31 + 1.8947, 4);
  });

  it("has the margin on the losses to the summit, not on the rise: 31 m and 1.2 · 1.89470 m", () => {
    expect(fillOf({ frictionMargin: 0.2 })?.head).toBeCloseTo(31 + 2.27364, 4);
  });

  it("is less by the pressure over the source: 5 m of this water are 998.2 · 9.80665 · 5 = 48 945 Pa", () => {
    expect(fillOf({ sourcePressure: 48_945 })?.head).toBeCloseTo(26 + 1.8947, 4);
  });

  it("is at the flow asked for where that is less: 10 L/s, 0.141471 m/s, 400 · 0.00102045 m", () => {
    expect(fillOf({ flow: 0.01 })?.flow).toBe(0.01);
    expect(fillOf({ flow: 0.01 })?.head).toBeCloseTo(31 + 0.40818, 4);
  });

  it("does not count the outlet as a place to fill over, however high: that is the duty itself", () => {
    const raised = { staticHead: 40, dischargeLine: [run(300, 131), run(500, 140)] };
    expect(fillOf(raised)?.head).toBeCloseTo(31 + 1.8947, 4);
    expect(fillOf({ dischargeLine: [run(300, 120)] })).toBeUndefined();
  });

  it("is a share of the flow for pumps side by side, and of the head for pumps in series", () => {
    expect(fillOf({ pumps: 2 })?.flow).toBeCloseTo(0.021545 / 2, 7);
    expect(fillOf({ pumps: 2 })?.head).toBeCloseTo(32.8947, 4);
    expect(fillOf({ pumps: 2, arrangement: "series" })?.head).toBeCloseTo(32.8947 / 2, 4);
  });
});
