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
    { why: "the liquid is hotter than 45 °C", fields: { temperature: "46 degC" }, words: /can burn skin/ },
    { why: "the liquid is a strong acid", fields: { pH: "3.9" }, words: /can burn skin/ },
    { why: "the liquid is caustic", fields: { pH: "10.1" }, words: /can burn skin/ },
    { why: "it holds hydrogen sulphide", fields: { makeUp: "oil, H2S" }, words: /breathing apparatus/ },
    { why: "anything is named in it", fields: { makeUp: "raw sewage" }, words: /safety data sheet at hand/ },
    { why: "it holds an oxidiser", fields: { oxidiser: "1" }, words: /safety data sheet at hand/ },
    {
      why: "compressed air primes it",
      fields: { eductorNozzle: "0.25 in", motivePressure: "90 psi" },
      words: /whip checks/,
    },
    { why: "the pump lifts", fields: {}, words: /under vacuum/ },
    { why: "a pump is chosen", fields: {}, words: /shut valve/ },
    { why: "whatever the duty", fields: {}, words: /local codes/ },
  ])("say so where $why", ({ fields, words }) => {
    expect(cautionTexts(dutyWith(fields)).some((text) => words.test(text))).toBe(true);
  });

  it.each([
    { why: "the driver is a motor", fields: { driver: "motor" }, words: /carbon monoxide/ },
    { why: "the driver is an engine", fields: { driver: "engine" }, words: /electrician/ },
    { why: "the liquid is at 45 °C and neutral", fields: { temperature: "45 degC", pH: "7" }, words: /can burn skin/ },
    { why: "the liquid is at pH 4", fields: { pH: "4" }, words: /can burn skin/ },
    { why: "the liquid is at pH 10", fields: { pH: "10" }, words: /can burn skin/ },
    { why: "the suction is flooded", fields: { pumpLevel: "98", sourceLevel: "98" }, words: /under vacuum/ },
    { why: "nothing is named in it", fields: { makeUp: "nothing else", oxidiser: "0" }, words: /data sheet at hand/ },
    { why: "no compressed air primes it", fields: {}, words: /whip checks/ },
    { why: "it holds nothing else", fields: { makeUp: "nothing else" }, words: /breathing apparatus/ },
  ])("do not where $why", ({ fields, words }) => {
    expect(cautionTexts(dutyWith(fields)).some((text) => words.test(text))).toBe(false);
  });

  // Confined-space rules ask for both, such as 29 CFR 1910.146: a permit never stands for entering alone.
  it("never read as leave to enter alone", () => {
    const entering = cautionTexts(undefined).filter((text) => /\benter\b/.test(text));
    expect(entering).toHaveLength(1);
    expect(entering[0]).toContain("never enter without a permit and an attendant outside");
    expect(entering[0]).not.toMatch(/\balone\b/);
  });

  it("stand for themselves before there is a duty", () => {
    expect(cautionTexts(undefined).length).toBeGreaterThan(3);
  });
});
