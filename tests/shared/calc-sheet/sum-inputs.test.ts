import { expect, it } from "vitest";
import { dutyText } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";

const { cells } = sheetsOf(
  dutyText(
    { deliveryLevel: "=120+35 = 155", pumpLevel: "-(1 + 0.5 m) = -1.5 m" },
    { dischargeLine: [{ pipe: "8in sch40", length: "3*40 + 12'6\" = 132.5 ft", fittings: "1 exit" }] },
  ),
).duty;
const inputs = cells.filter(({ style }) => /^input/.test(style ?? "")).map(({ v }) => v);

it("puts what a sum comes to into its input cell, in the unit of the cell", () => {
  // By hand: 120 + 35; 3 x 40 ft + 12.5 ft; 1.5 m / 0.3048 m a ft.
  expect(inputs).toContain(155);
  expect(inputs.some((v) => typeof v === "number" && Math.abs(v - 132.5) < 1e-9)).toBe(true);
  expect(inputs.some((v) => typeof v === "number" && Math.abs(v + 4.921259843) < 1e-8)).toBe(true);
});

it("says beside it what was typed", () => {
  const texts = cells.flatMap(({ v }) => (typeof v === "string" ? [v] : []));
  expect(texts).toContain("stated; given as =120+35 = 155");
});
