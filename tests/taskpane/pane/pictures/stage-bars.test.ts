// @vitest-environment jsdom
import { render } from "lit";
import { describe, expect, it } from "vitest";
import type { StageNozzle, StagePressures } from "../../../../shared/package/stage-pressures.ts";
import { stageBars, stageBarsWords } from "../../../../taskpane/pane/pictures/stage-bars.ts";

const PSI = 6894.757293168361;

function nozzle(label: string, psi: number, change: Partial<StageNozzle> = {}): StageNozzle {
  return {
    label,
    greatest: psi * PSI,
    governs: "closed valve",
    classNeeded: "Class 150",
    isFirst: false,
    offered: "Class 150",
    rating: 250 * PSI,
    above: [],
    ...change,
  };
}

const fails = (part: string) => ({ part, state: "fail" }) as const;

const PRESSURES: StagePressures = {
  nozzles: [
    nozzle("Stage 1 suction", 40, { governs: "pumps stopped" }),
    nozzle("Stage 1 discharge", 200, { above: [fails("hose")] }),
    nozzle("Stage 2 discharge", 300, {
      classNeeded: "Class 300",
      isFirst: true,
      above: [fails("flange")],
    }),
    nozzle("Stage 3 discharge", 500, {
      classNeeded: "Class 300",
      above: [fails("flange"), fails("casing"), fails("hose")],
    }),
  ],
  lines: [
    { name: "Class 150", pressure: 250 * PSI, kind: "offered" },
    { name: "Class 300", pressure: 640 * PSI, kind: "class" },
    { name: "trade figure, Class 150", pressure: 260 * PSI, kind: "trade" },
    { name: "casing", pressure: 400 * PSI, kind: "part" },
  ],
  classOffered: "Class 150",
};

function drawn(pressures: StagePressures, width: number): HTMLElement {
  const place = document.createElement("div");
  render(stageBars(pressures, "US", width), place);
  return place;
}

const numberOf = (element: Element | undefined, name: string): number => Number(element?.getAttribute(name));

describe.each([300, 430])("the bars of the nozzles at %d px", (width) => {
  const place = drawn(PRESSURES, width);
  const bars = [...place.querySelectorAll("rect")];
  const texts = [...place.querySelectorAll("text")].map((text) => ({
    text: text.textContent?.trim() ?? "",
    x: numberOf(text, "x"),
    y: numberOf(text, "y"),
    isEnd: text.getAttribute("text-anchor") === "end",
  }));

  it("are as long as their pressures, on one scale with the lines", () => {
    const start = numberOf(bars[0], "x");
    const aPsi = numberOf(bars[1], "width") / 200;
    expect(bars.map((bar) => numberOf(bar, "width") / aPsi)).toEqual(
      [40, 200, 300, 500].map((psi) => expect.closeTo(psi, 6)),
    );
    const at = [...place.querySelectorAll("path.line, path.guide")].map((line) =>
      Number(/^M([\d.]+)/.exec(line.getAttribute("d") ?? "")?.[1]),
    );
    expect(at.map((x) => (x - start) / aPsi)).toEqual([640, 400, 260, 250].map((psi) => expect.closeTo(psi, 6)));
  });

  it("mark in words and by shape what does not hold, and only that", () => {
    const said = texts.map(({ text }) => text).join("; ");
    expect(said).toContain("first above Class 150: needs Class 300");
    expect(said).toMatch(/(?<!first )above Class 150: needs Class 300/);
    expect(said).toContain("above the casing and the hose");
    expect(bars.map((bar) => bar.classList.contains("short"))).toEqual([false, true, true, true]);
    expect(place.querySelectorAll("path.short-mark").length).toBe(place.querySelectorAll("text.short").length);
  });

  it("keep every text inside the picture, and no two on each other", () => {
    // 6.2 px a letter is a little more than Chromium takes on average at 11.5 px.
    const spans = texts.map(({ text, x, y, isEnd }) => {
      const wide = 6.2 * text.length;
      return { text, y, from: isEnd ? x - wide : x, to: isEnd ? x : x + wide };
    });
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

  it("say it all in words", () => {
    const words = place.querySelector("svg")?.getAttribute("aria-label") ?? "";
    expect(words).toBe(stageBarsWords(PRESSURES, "US"));
    for (const piece of [
      "Stage 1 suction 40 psig, static column, pumps stopped",
      "Stage 2 discharge 300 psig, first above Class 150: needs Class 300",
      "Class 300 640 psig",
      "trade figure, Class 150 260 psig",
      "casing 400 psig",
    ])
      expect(words).toContain(piece);
    expect(place.querySelector("figcaption")?.textContent).toContain("thick for the class offered");
  });
});

describe("a bar that is to check", () => {
  it("is told from one that fails, in words and by its class, with the rating of its own flange", () => {
    const doubted: StagePressures = {
      ...PRESSURES,
      nozzles: [
        nozzle("Suction", 169, {
          governs: "check valve failed",
          rating: 150 * PSI,
          above: [{ part: "flange", state: "check" }],
          classNeeded: "Class 250",
        }),
      ],
    };
    const place = drawn(doubted, 430);
    expect(place.querySelector("rect")?.getAttribute("class")).toContain("near");
    expect(place.textContent).toContain("to check: above Class 150: needs Class 250");
    expect(place.textContent).toContain("static column, check valve failed");
    expect(place.querySelectorAll(".short-mark")).toHaveLength(0);
    // 150 of the 640 psi that the scale reaches to.
    const x = (from: string): number => Number(/^M([\d.]+)/.exec(from)?.[1]);
    const ticks = [...place.querySelectorAll("path.running")].map((path) => x(path.getAttribute("d") ?? ""));
    const start = numberOf(place.querySelector("rect") ?? undefined, "x");
    const aPsi = numberOf(place.querySelector("rect") ?? undefined, "width") / 169;
    expect(ticks.map((at) => Math.round((at - start) / aPsi))).toContain(150);
  });
});

describe("the bars without a class offered", () => {
  const none: StagePressures = {
    ...PRESSURES,
    nozzles: [nozzle("Suction", 5), nozzle("Discharge", 700, { classNeeded: "beyond Class 300", isFirst: true })],
    lines: [{ name: "Class 300", pressure: 640 * PSI, kind: "class" }],
    classOffered: undefined,
  };

  it("name the class needed and no other part", () => {
    const place = drawn(none, 300);
    expect(place.textContent).toContain("first to need a class beyond Class 300");
    expect(place.querySelectorAll(".short-mark")).toHaveLength(0);
    const caption = place.querySelector("figcaption")?.textContent ?? "";
    expect(caption).not.toMatch(/thick|dashes/);
  });
});
