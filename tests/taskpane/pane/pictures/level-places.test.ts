import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { levelPlaces } from "../../../../taskpane/pane/pictures/level-places.ts";

const HEIGHT = 112;
const GAP = 30;

describe("levels in the elevation picture", () => {
  it("are to scale where that can be read", () => {
    expect(levelPlaces([0, 50, 100], 100, 30)).toEqual({ places: [100, 50, 0], toScale: true });
  });

  it("are kept apart where one is far from the others, and say so", () => {
    expect(levelPlaces([0, 3, 203], 100, 30)).toEqual({ places: [100, 70, 0], toScale: false });
  });

  it("share a place where they are equal", () => {
    expect(levelPlaces([5, 5, 5], 100, 30)).toEqual({ places: [50, 50, 50], toScale: true });
    expect(levelPlaces([5, 5, 6], 100, 30)).toEqual({ places: [100, 100, 0], toScale: true });
  });

  it("keep their order, the height and the minimum gap, for any levels", () => {
    const level = fc.double({ min: -1e5, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(level, level, level, (a, b, c) => {
        const levels = [a, b, c];
        const { places } = levelPlaces(levels, HEIGHT, GAP);
        for (const place of places) {
          expect(place).toBeGreaterThanOrEqual(-1e-9);
          expect(place).toBeLessThanOrEqual(HEIGHT + 1e-9);
        }
        for (let i = 0; i < 3; i += 1) {
          for (let j = 0; j < 3; j += 1) {
            const apart = (places[j] as number) - (places[i] as number);
            if ((levels[i] as number) > (levels[j] as number)) expect(apart).toBeGreaterThanOrEqual(0);
            if (apart !== 0) expect(Math.abs(apart)).toBeGreaterThanOrEqual(GAP - 1e-9);
          }
        }
      }),
    );
  });
});
