import { JSDOM } from "jsdom";
import { describe, expect, it } from "vitest";
import { figure } from "../../../shared/help/methods/figure.ts";
import { equation } from "../../../shared/help/methods/mathml.ts";
import { METHOD_PAGES } from "../../../shared/help/methods/methods.ts";

const math = (text: string) => new JSDOM(equation(text)).window.document.querySelector("math")?.innerHTML;

describe("a method page", () => {
  it.each(METHOD_PAGES)("$title has an equation, a range, a source and a figure without a hole", ({ main }) => {
    const { document } = new JSDOM(main).window;
    const headings = [...document.querySelectorAll("h2")].map(({ textContent }) => textContent);
    expect(headings).toEqual(["Equation", "Where", "Range", "Figure", "Functions", "Sources"]);
    expect(document.querySelectorAll("math").length).toBeGreaterThan(0);
    const paths = [...document.querySelectorAll("svg path")].map((path) => path.getAttribute("d") ?? "");
    expect(paths.length).toBeGreaterThan(1);
    for (const path of paths) {
      expect(path).not.toMatch(/NaN|undefined|Infinity/);
      expect(path.split("L").length).toBeGreaterThan(5);
      for (const [, x, y] of path.matchAll(/([\d.-]+) ([\d.-]+)/g)) {
        expect(Number(x)).toBeGreaterThanOrEqual(0);
        expect(Number(x)).toBeLessThanOrEqual(560);
        expect(Number(y)).toBeGreaterThanOrEqual(0);
        expect(Number(y)).toBeLessThanOrEqual(320);
      }
    }
    expect(document.querySelectorAll("section:last-of-type li").length).toBeGreaterThan(0);
  });
});

describe("an equation", () => {
  it("becomes MathML", () => {
    expect(math("h_f = f frac{L}{D} V^2")).toBe(
      "<mrow><msub><mi>h</mi><mi>f</mi></msub><mo>=</mo><mi>f</mi><mfrac><mrow><mi>L</mi></mrow><mrow><mi>D</mi></mrow></mfrac><msup><mi>V</mi><mn>2</mn></msup></mrow>",
    );
    expect(math('"Re" - x_{10}^{-2}')).toBe(
      "<mrow><mtext>Re</mtext><mo>−</mo><msubsup><mi>x</mi><mrow><mn>10</mn></mrow><mrow><mo>−</mo><mn>2</mn></mrow></msubsup></mrow>",
    );
  });

  it("is not made of braces that do not close", () => {
    expect(() => equation("frac{a}{b")).toThrow("a brace is not closed");
    expect(() => equation("sqrt a")).toThrow("a brace is missing");
  });
});

describe("a figure", () => {
  it("puts points where its scales have them", () => {
    const html = figure({
      caption: "c",
      x: { label: "x", from: 0 },
      y: { label: "y", isLog: true },
      lines: [
        {
          name: "a",
          points: [
            [0, 1],
            [5, 10],
            [10, 100],
          ],
        },
      ],
    });
    // By hand: 384 wide from 58, 264 high from 276 upwards; half way across and half way up the two decades.
    expect(html).toContain('d="M58.0 276.0L250.0 144.0L442.0 12.0"');
  });
});
