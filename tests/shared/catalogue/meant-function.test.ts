import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import { meantFunctions, meantWords, respelt } from "../../../shared/catalogue/meant-function.ts";

const ours = new Set(CATALOGUE.map(({ id }) => `DUTY.${id}`));
const engine = createRequire(import.meta.url)("@univerjs/engine-formula") as Readonly<
  Record<string, Readonly<Record<string, string>>>
>;
/** The functions of a general spreadsheet, by the names the grid's engine lists. */
const BUILT_IN = new Set(
  Object.entries(engine)
    .filter(([key]) => key.startsWith("FUNCTION_NAMES_"))
    .flatMap(([, names]) => Object.values(names)),
);
const isKnown = (name: string): boolean => ours.has(name) || BUILT_IN.has(name);

function mended(formula: string): string {
  return respelt(formula, meantFunctions(formula, isKnown));
}

describe("a name that no function has", () => {
  // Each formula as it is typed by mistake, and as it was meant.
  it.each([
    ["=FRICTIONHEAD(1200, A1, 300)", "=DUTY.FRICTIONHEAD(1200, A1, 300)"],
    ["=frictionhead (1200)", "=DUTY.FRICTIONHEAD (1200)"],
    ["=DUTY.FRICTONHEAD(1200)", "=DUTY.FRICTIONHEAD(1200)"],
    ["=DUTYFRICTIONHEAD(1200)", "=DUTY.FRICTIONHEAD(1200)"],
    ["=duty_npsha(1)", "=DUTY.NPSHA(1)"],
    ["=DUTY.NSPHA(1)", "=DUTY.NPSHA(1)"],
    ["=SUM(VELOCTY(1), VELOCITY(2))", "=SUM(DUTY.VELOCITY(1), DUTY.VELOCITY(2))"],
    ["=-TDH(1)+DUTY.TDH(2)", "=-DUTY.TDH(1)+DUTY.TDH(2)"],
  ])("is taken for the one that was meant: %s", (typed, meant) => {
    expect(mended(typed)).toBe(meant);
  });

  it.each([
    "=PRICE(1)+RATE(2)+MATERIAL",
    "=SUM(A1:A3)",
    '="FRICTIONHEAD(1)"&"a ""TDH(1)"" b"',
    "='FRICTIONHEAD(1)'!A1",
    "=Book!FRICTIONHEAD(1)",
    "=QUITEOTHERWISE(1)",
    "=THD(1)",
    "=DUTY.QUITEOTHERWISE(1)",
    "=FRICTIONHEAD",
  ])("is left alone where nothing of ours was meant: %s", (typed) => {
    expect(mended(typed)).toBe(typed);
  });

  it("is asked about in words", () => {
    const calls = meantFunctions("=FRICTIONHEAD(1)/DUTY.TDHH(2)", isKnown);
    expect(meantWords(calls)).toBe(
      "There is no function “FRICTIONHEAD” or “DUTY.TDHH”. DUTY.FRICTIONHEAD and DUTY.TDH?",
    );
  });
});

describe("a function of the spreadsheet", () => {
  it("has the name of none of ours, so that ours is never written in its place", () => {
    expect(BUILT_IN.size).toBeGreaterThan(400);
    for (const name of ["SUM", "PRICE", "RATE", "PMT"]) expect(BUILT_IN, name).toContain(name);
    expect(CATALOGUE.map(({ id }) => id).filter((id) => BUILT_IN.has(id))).toEqual([]);
  });
});
