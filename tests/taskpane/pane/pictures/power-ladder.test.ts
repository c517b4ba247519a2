import { describe, expect, it } from "vitest";
import type { PowerLadder } from "../../../../shared/package/power-ladder.ts";
import { powerLadderPicture, powerLadderWords } from "../../../../taskpane/pane/pictures/power-ladder.ts";
import { barsOf, markup } from "../../../support/markup.ts";

// Amounts made up for the test; sums by hand.
const MOTOR: PowerLadder = {
  driver: "motor",
  unit: "hp",
  inOperation: 40,
  greatest: 50,
  needed: 55,
  rated: 75,
  onSite: 60,
};

describe("the ladder of powers in words", () => {
  it("says every power and the margin", () => {
    expect(powerLadderWords(MOTOR)).toBe(
      "At operating point 40 hp, Maximum on curve 50 hp, Required power 55 hp, Motor, rated 75 hp, Motor on site 60 hp. On site the motor gives 5 hp more than required.",
    );
  });

  it("says by how much an engine falls short", () => {
    const { inOperation: _, ...rest } = MOTOR;
    const words = powerLadderWords({ ...rest, driver: "engine", unit: "kW", onSite: 52.5 });
    expect(words).toMatch(
      /^Maximum on curve 50 kW, .*Engine on site 52\.5 kW\. Too small: on site the engine falls 2\.5 kW short\.$/,
    );
  });

  it("counts what meets the need to a rounding as enough", () => {
    expect(powerLadderWords({ ...MOTOR, onSite: 55 * (1 - 1e-12) })).toContain(
      "the motor gives just the required power.",
    );
    expect(powerLadderWords({ ...MOTOR, onSite: 54.99 })).toContain("Too small");
  });
});

describe.each([296, 450])("the ladder of powers drawn %d px wide", (width) => {
  it("has all bars on one scale from zero, inside the picture and clear of the words", () => {
    const bars = barsOf(markup(powerLadderPicture(MOTOR, width)));
    expect(bars).toHaveLength(5);
    const [first] = bars;
    const powers = [40, 50, 55, 75, 60];
    bars.forEach(({ x, width: wide }, i) => {
      expect(x).toBe(first?.x);
      expect(wide / (first?.width ?? 0)).toBeCloseTo((powers[i] as number) / 40, 9);
      expect(x + wide).toBeLessThanOrEqual(width - 60);
    });
  });

  it("marks a driver that is too small by more than colour", () => {
    const small = markup(powerLadderPicture({ ...MOTOR, onSite: 50 }, width));
    expect(barsOf(small).at(-1)?.kind).toBe("short");
    expect(small).toContain("Too small: on site the motor falls 5 hp short.");
    expect(barsOf(markup(powerLadderPicture(MOTOR, width))).at(-1)?.kind).toBe("total");
  });

  it("is one picture with its story in words", () => {
    const text = markup(powerLadderPicture(MOTOR, width));
    expect(text).toContain('role="img"');
    expect(text).toContain(`aria-label="${powerLadderWords(MOTOR)}"`);
  });
});
