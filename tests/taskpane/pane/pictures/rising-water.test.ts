import { describe, expect, it } from "vitest";
import type { RisingWater } from "../../../../shared/package/rising-water.ts";
import { durationText, risingWaterWords } from "../../../../taskpane/pane/pictures/rising-water.ts";
import { risingWaterFrame } from "../../../../taskpane/pane/pictures/rising-water-frame.ts";

/** Seventeen steps; the times are invented. */
function course(lift: number, riseTime: number, total: number): RisingWater["course"] {
  const rising = Array.from({ length: 17 }, (_, i) => ({ time: (riseTime * i) / 16, height: (lift * i) / 16 }));
  return { rising, riseTime, total };
}

const WATER: RisingWater = {
  lift: 5,
  byBlankOff: 9.33,
  byPractice: 7.6,
  byNpsh: undefined,
  greatest: 7.6,
  course: course(5, 10, 18),
};

describe("where the rising water is drawn", () => {
  it("puts each lift above the liquid by its height, to scale where that can be read", () => {
    const { lines, y, toScale } = risingWaterFrame(WATER);
    expect(toScale).toBe(true);
    expect(lines.map(({ names }) => names)).toEqual([["suction lift"], ["in practice"], ["by blank-off"]]);
    const rise = (height: number): number => y(0) - y(height);
    expect(rise(5) / rise(9.33)).toBeCloseTo(5 / 9.33, 9);
    expect(rise(2.5)).toBeCloseTo(rise(5) / 2, 9);
    for (const line of lines) expect(line.y).toBeCloseTo(y(line.height), 9);
  });

  it.each([
    ["close lifts", { byNpsh: 7.7, lift: 7.5 }],
    ["a small lift", { lift: 0.1 }],
    ["a lift beyond them all", { lift: 9.4, course: undefined }],
    ["four lifts", { byNpsh: 5.1 }],
  ])("keeps labels apart for %s", (_, change) => {
    const { lines } = risingWaterFrame({ ...WATER, ...change });
    const places = lines.map(({ y }) => y).sort((a, b) => a - b);
    places.slice(1).forEach((y, i) => {
      expect(y - (places[i] as number)).toBeGreaterThanOrEqual(25);
    });
  });

  it("gives lifts that are the same one line", () => {
    const { lines } = risingWaterFrame({ ...WATER, lift: 7.6, course: course(7.6, 30, 40) });
    expect(lines.map(({ names }) => names)).toEqual([["suction lift", "in practice"], ["by blank-off"]]);
    expect(lines[0]?.isDuty).toBe(true);
  });

  it("leaves out a lift that lies below the liquid", () => {
    const { lines } = risingWaterFrame({ ...WATER, byNpsh: -2, greatest: -2 });
    expect(lines.flatMap(({ names }) => names)).not.toContain("by NPSH");
  });

  it.each([
    ["quarters where there is room", 5, [2.5, 5, 7.5, 10]],
    ["the whole where there is little", 0.5, [10]],
  ])("shows %s, and always the lift", (_, lift, times) => {
    const { marks, y } = risingWaterFrame({ ...WATER, lift, course: course(lift, 10, 18) });
    expect(marks.map(({ time }) => time)).toEqual(times);
    expect(marks.at(-1)?.height).toBe(lift);
    const places = [0, ...marks.map(({ height }) => height)].map(y);
    places.slice(1).forEach((place, i) => {
      expect((places[i] as number) - place).toBeGreaterThanOrEqual(16);
    });
  });

  it("shows no time where it never primes", () => {
    expect(risingWaterFrame({ ...WATER, course: undefined }).marks).toEqual([]);
  });
});

describe("the picture in words", () => {
  it("says lifts, times and verdict", () => {
    // 5 m = 16.40 ft, 7.6 m = 24.9 ft, 9.33 m = 30.6 ft.
    expect(risingWaterWords(WATER, "US")).toBe(
      "Suction line from the side. The water gains the suction lift of 16.4 ft in 10 s; line and casing are full after 18 s. The lift is within the largest of 24.9 ft. The water stands at 4.1 ft after 2.5 s, 8.2 ft after 5 s, 12.3 ft after 7.5 s, 16.4 ft after 10 s. Maximum lifts: by practice 24.9 ft, by blank-off of the air pump 30.6 ft.",
    );
  });

  it("says that it never primes, that the lift is beyond, and that no lift is left", () => {
    const never = { ...WATER, lift: 9.5, course: undefined };
    expect(risingWaterWords(never, "SI")).toContain("No time to prime at a suction lift of 9.5 m.");
    expect(risingWaterWords(never, "SI")).toContain("The lift is beyond the largest of 7.6 m.");
    expect(risingWaterWords({ ...WATER, byNpsh: -2, greatest: -2 }, "SI")).toContain(
      "No lift is left: the pump must stand 2 m below the liquid.",
    );
    expect(risingWaterWords({ ...WATER, lift: 7.6, course: course(7.6, 30, 40) }, "SI")).toContain("within");
  });

  it.each([
    [0, "0 s"],
    [1.234, "1.2 s"],
    [9.94, "9.9 s"],
    [9.96, "10 s"],
    [119.4, "119 s"],
    [119.6, "2 min"],
    [190, "3 min 10 s"],
    [599.4, "9 min 59 s"],
    [599.6, "10 min"],
    [4000, "67 min"],
  ])("%d s is %s", (seconds, words) => {
    expect(durationText(seconds)).toBe(words);
  });
});
