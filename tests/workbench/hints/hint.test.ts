import { describe, expect, it } from "vitest";
import { type GridFunctionFacts, hintOf } from "../../../workbench/hints/hint.ts";
import { hintPlace, ROWS_KEPT_CLEAR } from "../../../workbench/hints/hint-place.ts";

const SUM: GridFunctionFacts = {
  about: "Adds up",
  parameters: [{ name: "number1", about: "The first number", isOptional: false }],
  repeats: true,
};
const factsOf = (name: string): GridFunctionFacts | undefined => (name === "SUM" ? SUM : undefined);
const hint = (name: string, argument: number, set: "US" | "SI" | "METRIC" = "US") =>
  hintOf({ name, argument }, set, factsOf);

describe("a hint while a call is typed", () => {
  it("names the arguments, those that may be left out in brackets, and the one at the caret", () => {
    const found = hint("DUTY.FRICTIONHEAD", 2);
    expect(found?.parameters.slice(0, 4)).toEqual(["flow", "pipe", "length", "[liquid]"]);
    expect(found?.at).toBe(2);
    expect(found?.about).toMatch(/In ft$/);
    expect(hint("DUTY.FRICTIONHEAD", 3)?.about).toMatch(/Left out: "?water"?$/);
    expect(hint("DUTY.FRICTIONHEAD", 1)?.about).toMatch(/Such as "/);
  });

  it("says units and example in the reader's unit set", () => {
    const found = hint("DUTY.FRICTIONHEAD", 0, "SI");
    expect(found?.about).toMatch(/In L\/s where units is "SI"$/);
    expect(found?.example).toBe('=DUTY.FRICTIONHEAD(60, "DN200 sch40", 400, , , "SI")');
    expect(hint("DUTY.FRICTIONHEAD", 0)?.example).toBe('=DUTY.FRICTIONHEAD(1200, "10in HDPE DR17", 1800)');
  });

  it("says what the ranges of an example hold", () => {
    expect(hint("DUTY.LINEHEAD", 1)?.example).toMatch(
      /^=DUTY\.LINEHEAD\(1200, A1:C2.*, A1:C2 from 8in sch40 \| 20 \| /,
    );
  });

  it("emphasises nothing beyond the last argument, and the last one of a function that repeats it", () => {
    expect(hint("DUTY.VELOCITY", 9)?.at).toBeUndefined();
    expect(hint("SUM", 4)?.at).toBe(0);
    expect(hint("SUM", 0)?.parameters).toEqual(["number1", "…"]);
  });

  it("is none of a function that nobody knows", () => {
    expect(hint("VELOCITY", 0)).toBeUndefined();
  });
});

describe("the place of a hint", () => {
  const area = { left: 0, top: 100, right: 900, bottom: 700 };
  const cell = (top: number) => ({ left: 50, top, right: 150, bottom: top + 24 });
  const next = (top: number): number => top + 24 + ROWS_KEPT_CLEAR * 24;

  it("is at the foot of the cells, at their head for a cell that stands low", () => {
    expect(hintPlace(cell(150), area, 80)).toEqual({ top: 620, maxHeight: 80 });
    expect(hintPlace(cell(600), area, 80)).toEqual({ top: 100, maxHeight: 80 });
  });

  it("covers neither the cell nor the rows under it, and stays within the cells, wherever the cell stands", () => {
    for (let top = 100; top < 676; top += 7) {
      for (const height of [40, 80, 240, 500]) {
        const place = hintPlace(cell(top), area, height);
        if (place === undefined) continue;
        const bottom = place.top + place.maxHeight;
        expect(place.top >= next(top) || bottom <= top, `${top} ${height}`).toBe(true);
        expect(place.top >= area.top && bottom <= area.bottom, `${top} ${height}`).toBe(true);
      }
    }
  });

  it("is nowhere where there is no room for a line", () => {
    expect(hintPlace(cell(110), { ...area, bottom: 260 }, 80)).toBeUndefined();
  });
});
