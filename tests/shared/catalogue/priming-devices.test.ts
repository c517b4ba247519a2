import { describe, expect, it } from "vitest";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";

type Rows = readonly (readonly unknown[])[];
const rows = (name: string, ...args: Parameters<typeof cell> extends [string, ...infer A] ? A : never): Rows =>
  cell(name, ...args) as Rows;

const LINE = [["ID 152.4 mm rough 0.045 mm", 11]];

describe("PRIMINGLIFT", () => {
  it("says names over lifts, and which rules", () => {
    const [names, values] = rows("PRIMINGLIFT", "50 cfm, blank-off 27 inHg", 12, null, "water", 68);
    expect(names).toEqual(["by blank-off, ft", "by practice, ft", "by NPSH, ft", "maximum lift, ft", "ruled by"]);
    // By hand: 27 inHg × 3386.389 Pa / (998.2 × 9.80665) = 9.340 m = 30.64 ft; 7.62 m = 25.00 ft.
    expect(values?.[0]).toBeCloseTo(30.64, 1);
    expect(values?.[1]).toBeCloseTo(25, 2);
    expect(values?.slice(2)).toEqual([12, 12, "NPSH"]);
  });

  // By hand: ISA 1500 m 84.556 kPa; blank-off 10 kPa × 84.556/101.325 = 8.345; 76.211 kPa / 9.789 = 7.785 m; practice
  // 7.62 − 16.769/9.789 = 5.907 m.
  it("takes altitude off every lift", () => {
    const [, values] = rows("PRIMINGLIFT", "20 L/s, blank-off 10 kPa(a)", null, 1500, "water", 20, "SI");
    expect(values?.[0]).toBeCloseTo(7.785, 2);
    expect(values?.[1]).toBeCloseTo(5.907, 2);
    expect(values?.slice(2)).toEqual(["not judged", values?.[1], "practice"]);
  });

  it("keeps a negative lift by NPSH, and says so", () => {
    const [, values] = rows("PRIMINGLIFT", 50, -3);
    expect(values?.[3]).toBeCloseTo(-3, 12);
    expect(remarks("PRIMINGLIFT", 50, -3)).toEqual([
      "assumed priming-lift-blank-off-assumed",
      "check priming-lift-negative",
    ]);
  });

  it("doubts a lift of 0, and says what was not judged", () => {
    expect(remarks("PRIMINGLIFT", "50 cfm, blank-off 26 inHg", 0)).toEqual(["check zero-may-be-blank"]);
    expect(remarks("PRIMINGLIFT", "50 cfm, blank-off 26 inHg")).toEqual(["check priming-npsh-not-judged"]);
  });

  it.each([
    ["no air pump", [0], /Air pump capacity must be above 0/],
    ["a leak as great as the capacity", ["50 cfm, leak 50 cfm"], /never primes: the leak/],
    ["a liquid without vapour pressure", [50, null, null, "SG 1, 1 cP"], /vapor pressure/],
    ["a site above all tables", [50, null, 300_000], /#VALUE!/],
  ])("refuses %s", (_, args, words) => {
    expect(refusal("PRIMINGLIFT", ...args)).toMatch(words);
  });
});

describe("PRIMECURVE", () => {
  it("goes from nothing to the time of PRIMETIME in 21 rows", () => {
    const args = [LINE, 5, "23.6 L/s, blank-off 10 kPa(a)", 60, null, null, null, null, "SI"] as const;
    const [names, ...course] = rows("PRIMECURVE", ...args);
    expect(names).toEqual(["time, s", "height of water, m", "vacuum, kPa", "air left, L", "stage"]);
    expect(course).toHaveLength(21);
    expect(course[0]?.slice(0, 3)).toEqual([0, 0, 0]);
    // By hand: 0.2007 m³ of line and 60 L of casing; 5 m of water at 20 °C hold 48.94 kPa.
    expect(course[0]?.[3]).toBeCloseTo(260.7, 1);
    expect(course[16]?.[1]).toBeCloseTo(5, 12);
    expect(course[16]?.[2]).toBeCloseTo(48.94, 1);
    const last = course.at(-1)?.[0] as number;
    expect(Math.abs(last / numberIn("PRIMETIME", ...args) - 1)).toBeLessThan(1e-9);
    expect(course.at(-1)?.slice(3)).toEqual([0, "primed"]);
  });

  it("remarks and refuses as PRIMETIME", () => {
    expect(remarks("PRIMECURVE", LINE, 15, 50)).toEqual(remarks("PRIMETIME", LINE, 15, 50));
    for (const lift of [-3, 36, 200]) {
      expect(refusal("PRIMECURVE", LINE, lift, 50)).toBe(refusal("PRIMETIME", LINE, lift, 50));
    }
  });
});

describe("EDUCTORAIR", () => {
  it("says motive air, compressor, air drawn and vacuum in the reader's units", () => {
    const [names, us] = rows("EDUCTORAIR", 0.25, 100, 60);
    expect(names).toEqual([
      "motive air, ft³/min",
      "compressor power, minimum, hp",
      "compressor power, most, hp",
      "air drawn, minimum, ft³/min",
      "air drawn, most, ft³/min",
      "vacuum reached, minimum, psi",
      "vacuum reached, most, psi",
    ]);
    // Trade table, from memory: 104 ft³/min. Common practice: 4 to 5 ft³/min a horsepower, 0.2 to 0.5 of it drawn.
    expect(Math.abs((us?.[0] as number) - 104)).toBeLessThan(1.5);
    expect(us?.[1]).toBeCloseTo((us?.[0] as number) / 5, 9);
    expect(us?.[2]).toBeCloseTo((us?.[0] as number) / 4, 9);
    expect(us?.[3]).toBeCloseTo((us?.[0] as number) * 0.2, 9);
    expect(us?.[4]).toBeCloseTo((us?.[0] as number) * 0.5, 9);
    // 25 and 27 inHg at 0.491154 psi.
    expect(us?.[5]).toBeCloseTo(12.279, 3);
    expect(us?.[6]).toBeCloseTo(13.261, 3);
    const [, si] = rows("EDUCTORAIR", "0.25 in", "100 psi", "60 degF", null, "SI");
    expect(si?.[0]).toBeCloseTo((us?.[0] as number) * 0.471947443, 6);
  });

  it("says what its figures rest on", () => {
    expect(remarks("EDUCTORAIR", 0.25, 100)).toEqual(["check eductor-by-practice"]);
    expect(remarks("EDUCTORAIR", 0.25, 60)).toEqual(["check eductor-by-practice", "check eductor-power-rough"]);
    expect(remarks("EDUCTORAIR", 0.25, 100, 0)).toContain("check zero-may-be-blank");
  });

  it.each([
    ["no bore", [0, 100], /Nozzle bore must be above 0/],
    ["a pressure that does not choke the nozzle", [0.25, 10], /Motive pressure must be at least/],
    ["an absolute pressure", [0.25, "115 psia"], /#VALUE!/],
  ])("refuses %s", (_, args, words) => {
    expect(refusal("EDUCTORAIR", ...args)).toMatch(words);
  });
});
