import { describe, expect, it } from "vitest";
import { linesIn, textWidth } from "../../../shared/ports/text-width.ts";

// Adobe core 14 font metrics, Helvetica and Helvetica-Bold: WX of each letter, added up by hand.
describe("the width of a text", () => {
  it.each([
    // H 722, e 556, a 556, d 556
    ["Head", {}, 23.9],
    // H 722, e 556, a 556, d 611
    ["Head", { bold: true }, 24.45],
    // i 222, l 222, space 278, W 944, at 9 points
    ["il W", { size: 9 }, 14.994],
    // 10 digits of 556
    ["0123456789", {}, 55.6],
    // endash 556, quotedblleft and right 333 and 500 in bold, minus 584: the wider of the two weights is taken.
    ["–", {}, 5.56],
    ["“”", { bold: true }, 10],
    ["−", {}, 5.84],
    ["", {}, 0],
  ])("%s", (text, font, points) => {
    expect(textWidth(text, font)).toBeCloseTo(points, 6);
  });

  it("gives a letter that is not in the table room enough", () => {
    // Metrics of the same fonts: mu 576 (Symbol), eacute 556, Adieresis 667 at most a little more.
    expect(textWidth("é", {})).toBeGreaterThanOrEqual(5.56);
    expect(textWidth("漢", {})).toBe(10);
  });
});

describe("the lines of a text", () => {
  // Five digits are 27.8 points, a space 2.78.
  it.each([
    ["12345 12345", 58.5, 1],
    ["12345 12345", 58.3, 2],
    ["12345 12345 12345", 58.5, 2],
    ["1234567890", 28, 2],
    ["12345\n12345", 100, 2],
    ["", 100, 1],
    // A long word does not fill up the line before it.
    ["1 1234567890", 28, 3],
  ])("%s in %d points", (text, points, lines) => {
    expect(linesIn(text, points, {})).toBe(lines);
  });
});
