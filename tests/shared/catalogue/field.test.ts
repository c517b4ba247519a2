import { describe, expect, it } from "vitest";
import { cell, refusal, remarks } from "../../support/cells.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";

function figure(answer: unknown, name: string, row = 1): unknown {
  const rows = answer as readonly (readonly unknown[])[];
  const at = (rows[0] ?? []).findIndex((heading) => String(heading).startsWith(name));
  if (at < 0) throw new Error(`no ${name} in ${rows[0]?.join("; ")}`);
  return rows[row]?.[at];
}

function caseOf(id: string) {
  const found = publishedCases("8-field", "station").find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
}

const WATER = ["water", "60 degF"] as const;
/** 110 − 28 (Q/1550)² ft at 1750 rpm. */
const CURVE = [["flow", "head"], ...Array.from({ length: 32 }, (_, i) => [50 * i, 110 - 28 * ((50 * i) / 1550) ** 2])];

describe("a field check in cells", () => {
  const gauges = [
    1180,
    34.5,
    "6.2 inHg vac",
    4,
    1.5,
    "8 in sch40",
    "10 in sch40",
    null,
    null,
    null,
    ...WATER,
    "2 %",
    "0.5 psi",
    "±0.15 psi",
    0.1,
  ] as const;

  it("goes from gauges to efficiency and verdict as the case does", () => {
    const of = caseOf("s8-field-008");
    const head = cell("FIELDHEAD", ...gauges);
    expectPublished(figure(head, "head") as number, "head", of);
    expectPublished(figure(head, "may be off by") as number, "u_head", of);
    const [height, open] = [figure(head, "head") as number, figure(head, "may be off by") as number];
    const plant = cell("WIRETOWATER", 1180, height, "26.8 kW", "93.6 %", null, ...WATER, "2 %", open, "1.5 %");
    expectPublished((figure(plant, "wire-to-water") as number) / 100, "wire_to_water", of);
    expectPublished((figure(plant, "pump efficiency") as number) / 100, "pump_efficiency", of);
    expectPublished((figure(plant, "efficiencies may be off") as number) / 100, "u_wire_to_water_relative", of);
    const next = caseOf("s8-field-009");
    const points = [
      ["flow", "head", "speed"],
      [1180, height, 1735],
    ];
    const check = ["FIELDCHECK", points, CURVE, null, null, 1750, "2B", "2 %", open, null, "0 %", ...WATER] as const;
    expectPublished(figure(cell(...check), "head over curve") as number, "deviation", next);
    expect(figure(cell(...check), "verdict")).toBe("within");
    expect(remarks(...check)).toEqual(["check field-no-guarantee"]);
  });

  it("takes a bare bore for a pipe, and refuses what is none", () => {
    const bare = gauges.map((given) => (given === "8 in sch40" ? 7.981 : given === "10 in sch40" ? "10.02 in" : given));
    expect(figure(cell("FIELDHEAD", ...bare), "head")).toBeCloseTo(
      figure(cell("FIELDHEAD", ...gauges), "head") as number,
      9,
    );
    expect(refusal("FIELDHEAD", 1180, 34.5, 0, 0, 0, "a wide one")).toMatch(/discharge size/i);
    expect(refusal("FIELDHEAD", 1180, 34.5, 0, 0, 0, 0)).toMatch(/discharge size/i);
    expect(refusal("FIELDHEAD", 1180, 34.5, 0, 0, 0, 8, 8, null, null, null, null, null, null, "test gauge")).toMatch(
      /span/,
    );
  });

  it("says where a figure of a reading was taken for it", () => {
    expect(remarks("FIELDHEAD", 1180, 34.5)).toEqual(["check velocity-head-left-out", "assumed gauge-span-assumed"]);
    const check = ["FIELDCHECK", [[1180, 93]], CURVE] as const;
    expect(remarks(...check)).toEqual([
      "assumed instrument-assumed",
      "assumed instrument-assumed",
      "assumed band-of-house",
      "assumed field-speed-taken",
    ]);
    // 93.77 ft on the curve. Flow to 5 % through the slope 1.73 %, head 2 %, speed twice 1 %: 3.32 % of the ±5 % is open.
    expect(figure(cell(...check), "verdict")).toBe("within");
    expect(figure(cell("FIELDCHECK", [[1180, 91]], CURVE), "verdict")).toBe("cannot tell with these gauges");
    expect(figure(cell("FIELDCHECK", [[1180, 80]], CURVE), "verdict")).toBe("outside");
  });

  it("has a row for each setting of the valve, in the order of flow", () => {
    const rows = cell(
      "FIELDCHECK",
      [
        [1180, 80],
        [500, 107],
      ],
      CURVE,
    ) as readonly (readonly unknown[])[];
    expect(rows.slice(1).map(([flow]) => flow)).toEqual([500, 1180]);
  });

  it("lists reasons by the signs, and says that one reading leaves several open", () => {
    const reasons = (...args: Parameters<typeof cell> extends [string, ...infer A] ? A : never) =>
      (cell("FIELDREASONS", ...args) as readonly (readonly unknown[])[]).slice(1).map(([likely]) => String(likely));
    expect(reasons([[1180, 70]], CURVE)).toHaveLength(4);
    expect(remarks("FIELDREASONS", [[1180, 70]], CURVE)).toContain("check field-one-point");
    // Right at 200 gpm and a quarter low at 1180: no speed, no wear.
    const two = reasons(
      [
        [200, 109.5],
        [1180, 68],
      ],
      CURVE,
    );
    expect(two).toEqual([expect.stringMatching(/blocked impeller eye/), expect.stringMatching(/^cavitation/)]);
    expect(reasons([[1180, 93.8]], CURVE)).toEqual([expect.stringMatching(/^nothing/)]);
    const less = reasons([[800, 102.5]], CURVE, null, null, null, null, "1 %", "1 %", null, null, null, null, 1200);
    expect(less).toEqual([expect.stringMatching(/system resists more/)]);
  });

  it("refuses a measured speed without that of the curve", () => {
    const points = [
      ["flow", "head", "speed"],
      [1180, 90, 1735],
    ];
    expect(refusal("FIELDCHECK", points, CURVE)).toMatch(/curve speed is missing/i);
    expect(refusal("FIELDCHECK", [[1600, 70]], CURVE)).toMatch(/beyond the end of the curve/);
  });

  it("gives what an engine makes of its fuel, gas by the thousand cubic feet", () => {
    const of = caseOf("s8-field-004");
    // 3960 and 2.31 of the trade against exact units and water of 68 °F: within 0.1 %.
    const diesel = figure(cell("FUELTOWATER", 600, 208.6, 4), "whp") as number;
    expect(Math.abs(diesel / (of.expected["performance"]?.value ?? 0) - 1)).toBeLessThan(1e-3);
    const gas = cell("FUELTOWATER", 600, 208.6, "10 ft³/min", "natural gas");
    expect(figure(gas, "whp") as number).toBeCloseTo((diesel * 4) / 0.6, 6);
    expect(figure(gas, "fuel-to-water")).toBe("");
    expect(refusal("FUELTOWATER", 600, 208.6, 4, "propane", "225 g/kWh")).toMatch(/diesel alone/);
    expect(refusal("WIRETOWATER", 600, 208.6, "62 A, 460 V")).toMatch(/power factor/);
  });
});
