import { describe, expect, it } from "vitest";
import { linearScale, rootScale, roundedOut, ticksOf } from "../../../../taskpane/pane/pictures/scale.ts";

// By hand: places go with amounts, or with their roots; steps are 1, 2 or 5 of a power of ten.
describe("a scale of a picture", () => {
  it("places amounts in proportion, beyond its ends too", () => {
    const x = linearScale([100, 300], [10, 50]);
    expect([x(100), x(150), x(300), x(400)]).toEqual([10, 20, 50, 70]);
    expect(x.places).toEqual([10, 50]);
    const upwards = linearScale([-20, 80], [200, 0]);
    expect([upwards(-20), upwards(30), upwards(80)]).toEqual([200, 100, 0]);
  });

  it("places amounts by their roots", () => {
    const y = rootScale([0, 100], [80, 0]);
    expect([y(0), y(25), y(100)]).toEqual([80, 40, 0]);
  });

  it("has all amounts in the middle where it has no length", () => {
    const flat = linearScale([7, 7], [0, 40]);
    expect(flat(7)).toBe(20);
    expect(ticksOf(flat, 5)).toEqual([]);
    expect(roundedOut([7, 7], 5)).toEqual([7, 7]);
  });

  it.each<[ends: [number, number], about: number, ticks: readonly number[]]>([
    [[0, 1900], 5, [0, 500, 1000, 1500]],
    [[0, 1000], 5, [0, 200, 400, 600, 800, 1000]],
    [[-13, 27], 4, [-10, 0, 10, 20]],
    [[0, 0.72], 5, [0, 0.2, 0.4, 0.6]],
    [[0.1, 0.35], 5, [0.1, 0.15, 0.2, 0.25, 0.3, 0.35]],
    [[0, 36], 3, [0, 10, 20, 30]],
  ])("has round ticks from %o, about %i", (ends, about, ticks) => {
    expect(ticksOf({ ends }, about)).toEqual(ticks);
  });

  it.each<[ends: [number, number], about: number, wider: readonly [number, number]]>([
    [[0, 1230], 5, [0, 1400]],
    // Steps of 200 come to 1600, which takes steps of 500.
    [[0, 1430], 5, [0, 2000]],
    [[-3, 97], 5, [-20, 100]],
    [[588, 641], 4, [580, 660]],
    [[0, 0.61], 5, [0, 0.7]],
    [[0, 1000], 5, [0, 1000]],
  ])("takes %o outwards to round ends, about %i steps", (ends, about, wider) => {
    expect(roundedOut(ends, about)).toEqual(wider);
  });
});
