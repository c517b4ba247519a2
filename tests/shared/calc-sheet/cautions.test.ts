import { describe, expect, it } from "vitest";
import { cautionTexts } from "../../../shared/calc-sheet/sections/cautions.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import { dutyOf, type Fields, QUARRY } from "../../support/duty-of.ts";

const dutyWith = (fields: Fields): Duty => dutyOf(fields, QUARRY);

/** Triggers of the usual cautions: common practice, no source. */
describe("cautions of a duty", () => {
  it.each([
    { why: "the driver is an engine", fields: { driver: "engine" }, words: /carbon monoxide/ },
    { why: "the driver is a motor", fields: { driver: "motor" }, words: /electrician/ },
    { why: "the liquid is hotter than 45 °C", fields: { temperature: "46 degC" }, words: /burns skin/ },
    { why: "the liquid is a strong acid", fields: { pH: "3.9" }, words: /burns skin/ },
    { why: "the liquid is caustic", fields: { pH: "10.1" }, words: /burns skin/ },
    { why: "it holds hydrogen sulphide", fields: { makeUp: "oil, H2S" }, words: /breathing apparatus/ },
    { why: "the pump lifts", fields: {}, words: /under vacuum/ },
    { why: "a pump is chosen", fields: {}, words: /shut valve/ },
    { why: "whatever the duty", fields: {}, words: /local codes/ },
  ])("say so where $why", ({ fields, words }) => {
    expect(cautionTexts(dutyWith(fields)).some((text) => words.test(text))).toBe(true);
  });

  it.each([
    { why: "the driver is a motor", fields: { driver: "motor" }, words: /carbon monoxide/ },
    { why: "the driver is an engine", fields: { driver: "engine" }, words: /electrician/ },
    { why: "the liquid is at 45 °C and neutral", fields: { temperature: "45 degC", pH: "7" }, words: /burns skin/ },
    { why: "the liquid is at pH 4", fields: { pH: "4" }, words: /burns skin/ },
    { why: "the liquid is at pH 10", fields: { pH: "10" }, words: /burns skin/ },
    { why: "the suction is flooded", fields: { pumpLevel: "98", sourceLevel: "98" }, words: /under vacuum/ },
    { why: "it holds nothing else", fields: { makeUp: "nothing else" }, words: /breathing apparatus/ },
  ])("do not where $why", ({ fields, words }) => {
    expect(cautionTexts(dutyWith(fields)).some((text) => words.test(text))).toBe(false);
  });

  it("stand for themselves before there is a duty", () => {
    expect(cautionTexts(undefined).length).toBeGreaterThan(3);
  });
});
