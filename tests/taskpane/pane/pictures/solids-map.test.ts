import { describe, expect, it } from "vitest";
import type { SolidsMap } from "../../../../shared/package/solids-map.ts";
import { solidsMapPicture, solidsMapWords } from "../../../../taskpane/pane/pictures/solids-map.ts";
import { ARM, LINE, type SolidsMapFrame, solidsMapFrame } from "../../../../taskpane/pane/pictures/solids-map-frame.ts";
import { markup } from "../../../support/markup.ts";

const CASE: SolidsMap = {
  pH: 7,
  solids: 0.03,
  first: "ductile iron",
  verdict: "suits",
  wearParts: undefined,
  agrees: true,
  leftTo: "the hardness of the particles",
  missing: [],
};

/** What a letter of 11.5 px takes at most on average, and the narrowest plot of a pane of 320 px. */
const LETTER = 6.2;
const NARROW = 296;

const textsIn = (drawn: string): readonly string[] =>
  [...drawn.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => (text as string).trim());

describe("the map of metals as drawn", () => {
  it("puts the case at its pH across and its solids up", () => {
    const { left, right, top, bottom, cross } = solidsMapFrame(CASE, NARROW);
    // Half way across from 0 to 14; on a square root, √(3/70) = 0.20702 of the way up.
    expect(cross?.x).toBeCloseTo((left + right) / 2, 9);
    expect(((cross?.y ?? 0) - bottom) / (top - bottom)).toBeCloseTo(0.20702, 5);
    expect(solidsMapFrame({ ...CASE, solids: null }, NARROW).cross).toBeNull();
  });

  it("sets few, some and many solids apart", () => {
    const { y } = solidsMapFrame(CASE, NARROW);
    expect(y(0) - y(0.05)).toBeGreaterThan(3 * LINE);
    expect(y(0.05) - y(0.2)).toBeGreaterThan(3 * LINE);
    expect(y(0.2) - y(0.7)).toBeGreaterThan(3 * LINE);
  });

  const labelBoxes = ({ labels }: SolidsMapFrame) =>
    labels.map(({ text, x, y }) => ({
      text,
      left: x - (text.length * LETTER) / 2,
      right: x + (text.length * LETTER) / 2,
      top: y - 9,
      bottom: y + 3,
    }));

  it.each([0, 0.003, 0.01, 0.03, 0.049, 0.05, 0.1, 0.2, 0.3, 0.69])(
    "keeps labels clear of the cross at %d",
    (solids) => {
      for (let pH = 0; pH <= 14; pH += 0.5) {
        const frame = solidsMapFrame({ ...CASE, pH, solids }, NARROW);
        const { cross, left, right, bottom } = frame;
        if (cross === null) throw new Error("no cross");
        for (const box of labelBoxes(frame)) {
          const apart =
            box.right <= cross.x - ARM ||
            box.left >= cross.x + ARM ||
            box.bottom <= cross.y - ARM ||
            box.top >= cross.y + ARM;
          expect(apart, `${box.text} at pH ${pH}`).toBe(true);
          expect(box.left).toBeGreaterThanOrEqual(left);
          expect(box.right).toBeLessThanOrEqual(right);
          expect(box.bottom).toBeLessThanOrEqual(bottom + 1);
        }
      }
    },
  );

  it("keeps labels apart from one another", () => {
    const boxes = labelBoxes(solidsMapFrame(CASE, NARROW));
    boxes.forEach((a, i) => {
      for (const b of boxes.slice(i + 1)) {
        const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
        expect(apart, `${a.text} and ${b.text}`).toBe(true);
      }
    });
  });

  it("names every region, the limits and the case in words", () => {
    const texts = textsIn(markup(solidsMapPicture(CASE, NARROW)));
    for (const text of ["ductile iron", "high-chrome", "hardness decides:", "liquid", "iron,", "pH"]) {
      expect(texts).toContain(text);
    }
    // Common practice, no source: the limits of pH and of solids by weight.
    for (const limit of ["4", "9", "11", "5.5", "12", "5 %", "20 %", "70 %"]) expect(texts).toContain(limit);
    expect(texts).toContain("this case: pH 7, 3 % by weight");
  });

  it("says that it is common practice, on which scale, and what ranks first", () => {
    const caption = (change: Partial<SolidsMap>): string =>
      /<figcaption>([\s\S]*)<\/figcaption>/.exec(markup(solidsMapPicture({ ...CASE, ...change }, NARROW)))?.[1] ?? "";
    expect(caption({})).toMatch(
      /ductile iron \(suits\) first, as the map does.*common practice, no source.*square-root/,
    );
    expect(caption({ first: "cast duplex CD4MCuN", agrees: false })).toMatch(
      /shifts the choice from the map: cast duplex CD4MCuN \(suits\) ranks first/,
    );
    expect(caption({ solids: null, agrees: undefined })).toContain("Solids by weight are not stated");
    expect(caption({ solids: 0.1, agrees: undefined })).toContain("leaves it to the hardness");
    expect(caption({ agrees: undefined, leftTo: "the liquid" })).toContain("leaves it to the liquid");
    const unnamed = caption({ first: undefined, missing: ["chlorides", "temperature"] });
    expect(unnamed).toContain("No material can be named: state chlorides, temperature.");
    expect(unnamed).not.toMatch(/316|duplex|first/);
    expect(caption({ wearParts: "high-chrome white iron" })).toContain("Wear parts: high-chrome white iron.");
  });

  it("is told whole to those who do not see it", () => {
    const words = solidsMapWords(CASE);
    expect(words).toContain("ductile iron if soft at pH 4 to 9 with 0 to 5 % solids");
    expect(words).toContain("high-chrome white iron at pH 5.5 to 12 with 20 to 70 % solids");
    expect(words).toContain("this case: pH 7, 3 % by weight");
    expect(markup(solidsMapPicture(CASE, NARROW))).toContain('role="img"');
  });
});
