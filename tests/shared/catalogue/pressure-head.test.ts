import { describe, expect, it } from "vitest";
import { numberIn, refusal } from "../../support/cells.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";

describe("pressure and head of the liquid", () => {
  const [water, heavy] = publishedCases("6-psi-head", "station");

  it("agrees with the cases worked apart from this product", () => {
    if (water === undefined || heavy === undefined) throw new Error("two cases are needed");
    expectPublished(numberIn("PRESSUREHEAD", 60, "water", 68), "head", water);
    expectPublished(numberIn("HEADPRESSURE", 100, "SG 1.12"), "pressure", heavy);
  });

  it("takes each other back", () => {
    for (const liquid of ["water", "sea water", "SG 1.4, 2 cP"]) {
      for (const pressure of [-14, 0, 3, 250]) {
        expect(numberIn("HEADPRESSURE", numberIn("PRESSUREHEAD", pressure, liquid), liquid)).toBeCloseTo(pressure, 9);
      }
    }
  });

  // NIST SP 811: one atmosphere is 14.69595 psi; of 68 °F water 33.96 ft.
  it.each([
    ["PRESSUREHEAD", -14.6959, -14.697],
    ["HEADPRESSURE", -33.95, -33.97],
  ])("%s refuses a vacuum deeper than the atmosphere", (name, stands, refused) => {
    expect(numberIn(name, stands, "water", 68)).toBeLessThan(0);
    expect(refusal(name, refused, "water", 68)).toMatch(
      name === "HEADPRESSURE" ? /Head must be at least/ : /pressure/i,
    );
  });
});
