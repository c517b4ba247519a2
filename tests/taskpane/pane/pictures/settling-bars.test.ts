// @vitest-environment jsdom
import { render } from "lit";
import { describe, expect, it } from "vitest";
import type { SettlingRun } from "../../../../shared/package/settling.ts";
import type { UnitSetName } from "../../../../src/basis/quantities.ts";
import { settlingBars, settlingBarsWords } from "../../../../taskpane/pane/pictures/settling-bars.ts";

const RUNS: readonly SettlingRun[] = [
  { label: "Suction 1", velocity: 2.4, limiting: 1.8, design: 2.1, regime: "suspended" },
  { label: "Discharge 1", velocity: 2, limiting: 1.8, design: 2.1, regime: "suspended" },
  { label: "Discharge 2", velocity: 1.2, limiting: 2, design: 2.5, regime: "bed at rest" },
  { label: "Discharge 3", velocity: 3, limiting: 2, design: 2.5, regime: "sliding bed" },
];

function drawn(runs: readonly SettlingRun[], units: UnitSetName, width: number): HTMLElement {
  const place = document.createElement("div");
  render(settlingBars(runs, units, width), place);
  return place;
}

const numberOf = (element: Element | undefined, name: string): number => Number(element?.getAttribute(name));

describe.each([
  ["SI", 296],
  ["US", 296],
  ["METRIC", 430],
] as const)("velocities in %s at %d px", (units, width) => {
  const place = drawn(RUNS, units, width);
  const bars = [...place.querySelectorAll("rect")];

  it("are as long as they are, on one scale with their marks", () => {
    const start = numberOf(bars[0], "x");
    const scale = numberOf(bars[3], "width") / 3;
    expect(bars.map((bar) => numberOf(bar, "width") / scale)).toEqual(
      [2.4, 2, 1.2, 3].map((v) => expect.closeTo(v, 6)),
    );
    const at = (kind: string): readonly number[] =>
      [...place.querySelectorAll(`path.${kind}`)].map(
        (mark) => (Number(/^M([\d.]+)/.exec(mark.getAttribute("d") ?? "")?.[1]) - start) / scale,
      );
    expect(at("running")).toEqual([1.8, 1.8, 2, 2].map((v) => expect.closeTo(v, 6)));
    expect(at("aged")).toEqual([2.1, 2.1, 2.5, 2.5].map((v) => expect.closeTo(v, 6)));
  });

  it("mark what is too slow by shape and in words, and only that", () => {
    expect(bars.map((bar) => bar.classList.contains("short"))).toEqual([false, true, true, false]);
    expect(place.querySelectorAll("path.short-mark")).toHaveLength(2);
    expect([...place.querySelectorAll("text.short")].map((text) => text.textContent?.split(":")[0])).toEqual([
      "slow",
      "settles",
    ]);
    expect(place.textContent).toContain("may slide; deposition");
  });

  it("keep every text inside the picture, and no two on each other", () => {
    // 6.2 px a letter is a little more than Chromium takes on average at 11.5 px.
    const spans = [...place.querySelectorAll("text")].map((element) => {
      const text = element.textContent?.trim() ?? "";
      const wide = 6.2 * text.length;
      const x = numberOf(element, "x");
      const isEnd = element.getAttribute("text-anchor") === "end";
      return { text, y: numberOf(element, "y"), from: isEnd ? x - wide : x, to: isEnd ? x : x + wide };
    });
    expect(spans).toHaveLength(12);
    for (const { text, from, to } of spans) {
      expect(from, text).toBeGreaterThanOrEqual(-2);
      expect(to, text).toBeLessThanOrEqual(width + 2);
    }
    for (const [i, one] of spans.entries()) {
      for (const other of spans.slice(i + 1)) {
        const apart = Math.abs(one.y - other.y) >= 11 || one.to <= other.from || other.to <= one.from;
        expect(apart, `${one.text} / ${other.text}`).toBe(true);
      }
    }
  });
});

it("says all of it in words", () => {
  const place = drawn(RUNS, "US", 300);
  const words = place.querySelector("svg")?.getAttribute("aria-label") ?? "";
  expect(words).toBe(settlingBarsWords(RUNS, "US"));
  // By hand: 2.4/0.3048 = 7.87, 1.8/0.3048 = 5.91, 2.1/0.3048 = 6.89, 1.2/0.3048 = 3.94, 2/0.3048 = 6.56, 2.5/0.3048 = 8.20.
  for (const piece of [
    "Suction 1 7.9 ft/s, deposition 5.9, design minimum 6.9",
    "Discharge 2 3.9 ft/s, settles: deposition 6.6, design minimum 8.2",
  ]) {
    expect(words).toContain(piece);
  }
});
