import { runInNewContext } from "node:vm";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readAmount } from "../../../../shared/duty/read-amount.ts";
import { sumTree } from "../../../../shared/duty/sums/sum-parser.ts";
import { workOutSum } from "../../../../shared/duty/sums/work-out-sum.ts";
import { asTyped, sumIn, withAnswer } from "../../../../shared/duty/sums/written-sum.ts";
import { findingText } from "../../../../shared/text/finding-text.ts";
import type { Quantity, UnitSetName } from "../../../../src/basis/quantities.ts";

function said(sum: string, quantity: Quantity = "length", unitSet: UnitSetName = "US"): string {
  const found = workOutSum(sum, { quantity, unitSet, subject: "length" }, sumTree);
  return found.ok ? found.value : `refused: ${found.findings.map((each) => findingText(each, unitSet)).join(" ")}`;
}

describe("a sum in a box", () => {
  // Worked out by hand; a foot is 12 in and 0.3048 m.
  it.each([
    ["3*40 + 12'6\"", "length", "US", "132.5 ft"],
    ["2*1.5 m", "length", "US", "3 m"],
    ["=120+35", "length", "US", "155"],
    ["120+35+20", "length", "US", "175"],
    ["(98+12)/2 ft", "length", "US", "55 ft"],
    ["(98+12)/2 ft", "length", "METRIC", "55 ft"],
    ["(98+12) ft", "length", "METRIC", "110 ft"],
    ["120 ft + 35 m", "length", "SI", "234.829396325 ft"],
    ["1 m + 1 ft", "length", "SI", "1.3048 m"],
    ["1,200 + 300", "flow", "US", "1500"],
    ["2*1,500 gpm", "flow", "METRIC", "3000 US gpm"],
    ["3 x 250 gpm", "flow", "US", "750 US gpm"],
    ["63 l/s + 3.6 m3/h", "flow", "SI", "64 L/s"],
    ["120 × 2 ÷ 3", "length", "US", "80"],
    ["-(3+4)", "elevation", "US", "-7"],
    ["10 - 3 - 2", "elevation", "US", "5"],
    ["2^3", "ratio", "US", "8"],
    ["-3^2", "elevation", "US", "-9"],
    ["2 + 3*4", "length", "SI", "14"],
    ["10'-6\" + 1'6\"", "length", "US", "12 ft"],
    ["(60+8)/2 F", "temperature", "SI", "34 °F"],
    ["2-1/2 + 3", "length", "US", "5.5"],
    ["2 1/2 in + 3 in", "size", "US", "5.5 in"],
    ["2 - 1/2", "length", "US", "1.5"],
    ["1/2", "length", "US", "0.5"],
    ["0.1 + 0.2", "length", "SI", "0.3"],
    ["30 psi + 1 bar", "gaugePressure", "US", "44.503773773 psi"],
  ] as const)("%s as %s in %s comes to %s", (sum, quantity, unitSet, answer) => {
    expect(said(sum, quantity, unitSet)).toBe(answer);
    // What it comes to is read by the box that shows it.
    expect(readAmount(withAnswer(sum, answer), quantity, unitSet, "length").ok).toBe(true);
  });

  it.each([
    ["3/0", "divides by zero"],
    ["3/(2-2)", "divides by zero"],
    ["0^-1", "divides by zero"],
    ["9^9^9^9", "powers up to 6"],
    ["2^7", "powers up to 6"],
    ["1e9*(9^6)^6^6", "cannot be worked out|powers up to 6"],
    ["sqrt(4)", "“sqrt” cannot be worked out"],
    ["pi*2", "“pi” cannot be worked out"],
    ["a0 + 1", "“a0” cannot be worked out"],
    ["3 4", "cannot be worked out"],
    ["(3)(4)", "cannot be worked out"],
    ["3 + ", "cannot be worked out"],
    ["2 == 3", "cannot be worked out"],
    ["x=3", "cannot be worked out"],
    ["[1,2]*3", "cannot be worked out"],
    ["3 ft * 2 ft", "units of the sum"],
    ["10 ft / 2 ft", "units of the sum"],
    ["120 + 3 psi", "another kind"],
    ["3*40 widgets", "“widgets” cannot be worked out"],
    ["1+".repeat(120), "200 letters"],
    ["", "cannot be worked out"],
  ])("%s is refused in words", (sum, words) => {
    expect(said(sum)).toMatch(new RegExp(`^refused: .*(?:${words})`));
  });

  it("asks for the unit of a bare figure beside others in a unit that is not the box's", () => {
    expect(said("120 + 35 ft", "length", "METRIC")).toContain("write “120 ft” or “120 m”");
    expect(said("120 + 35 ft", "length", "US")).toBe("155 ft");
  });

  it("comes to what JavaScript makes of figures, signs and brackets", () => {
    const figure = fc.integer({ min: 1, max: 99 }).map(String);
    const { sum } = fc.letrec<{ sum: string }>((tie) => ({
      sum: fc.oneof(
        { depthSize: "small" },
        figure,
        fc.tuple(tie("sum"), fc.constantFrom("+", "-", "*"), tie("sum")).map(([a, sign, b]) => `${a} ${sign} ${b}`),
        tie("sum").map((inside) => `(${inside})`),
      ),
    }));
    fc.assert(
      fc.property(sum, (text) => {
        fc.pre(text.length <= 200);
        const expected = Number(Number(runInNewContext(text)).toPrecision(12));
        fc.pre(Number.isSafeInteger(expected));
        expect(Number(said(text, "ratio"))).toBe(expected);
      }),
    );
  });

  it("ends for any text, with an answer a box reads or with words", () => {
    const letters = fc.string({ unit: fc.constantFrom(..."0123456789.,'\"+-*/^()= xftminpsi°²½e"), maxLength: 40 });
    fc.assert(
      fc.property(fc.oneof(letters, fc.string()), (text) => {
        const found = workOutSum(text, { quantity: "length", unitSet: "US", subject: "length" }, sumTree);
        if (!found.ok) expect(found.findings[0]?.kind).toBe("error");
        else expect(readAmount(found.value, "length", "US", "length").ok).toBe(true);
      }),
    );
  });
});

describe("a sum as written", () => {
  it("is shown without what it comes to", () => {
    expect(asTyped("3*40 + 12'6\" = 132.5 ft")).toBe("3*40 + 12'6\"");
    expect(asTyped("=120+35 = 155")).toBe("=120+35");
    for (const text of ["12 ft", "1/2", "", "  120", "=", "= 5"]) expect(asTyped(text)).toBe(text);
  });

  it("keeps every letter typed, blanks at its ends too", () => {
    for (const typed of ["3*40 ", "  3*40", "3*40 +", "3*40  + 2 ", "=120+35 "]) {
      expect(asTyped(withAnswer(typed, "120 ft"))).toBe(typed);
    }
  });

  it("is none where a box reads a figure or a name", () => {
    for (const text of ["12 ft", "-5", "abc", "abc = 5", "DN 200"]) expect(sumIn(text), text).toBeUndefined();
  });

  it("is read by what it comes to, and before that by nothing", () => {
    expect(readAmount("3*40 = 120", "length", "US", "length")).toEqual(readAmount("120", "length", "US", "length"));
    expect(readAmount("3*40", "length", "US", "length")).toMatchObject({
      ok: false,
      findings: [{ code: "sum-pending" }],
    });
  });

  it.each([
    ["120+35", "“=120+35” or “12035 ft”"],
    ["1+200", "“=1+200” or “1200 m”"],
    ["12-6", "“=12-6” or “12'6\"”"],
    ["1000-1200", "“=1000-1200” or one figure"],
  ])("asks what %s means, which the trade reads otherwise too", (text, words) => {
    const read = readAmount(text, "length", "US", "length");
    expect(read.findings.map((each) => findingText(each, "US")).join(" ")).toContain(words);
  });
});
