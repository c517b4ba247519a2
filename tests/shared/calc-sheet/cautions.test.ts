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
    { why: "the liquid is hotter than 45 °C", fields: { temperature: "46 degC" }, words: /burn skin/ },
    { why: "the liquid is a strong acid", fields: { pH: "3.9" }, words: /burn skin/ },
    { why: "the liquid is caustic", fields: { pH: "10.1" }, words: /burn skin/ },
    { why: "it holds hydrogen sulphide", fields: { makeUp: "oil, H2S" }, words: /breathing apparatus/ },
    { why: "an acid is named at a middling pH", fields: { pH: "6", makeUp: "phosphoric acid" }, words: /burn skin/ },
    {
      why: "sewage with hydrogen sulphide is named",
      fields: { makeUp: "sewage with H2S" },
      words: /breathing apparatus/,
    },
    { why: "sewage is named", fields: { makeUp: "raw sewage" }, words: /disease/ },
    { why: "the service is bypass", fields: { service: "bypass" }, words: /disease/ },
    {
      why: "an oxidiser is named at neutral pH",
      fields: { pH: "7", makeUp: "permanganate" },
      words: /oxidiser solutions: oxidiser\. Have its safety data sheet/,
    },
    { why: "diesel is named", fields: { makeUp: "diesel-contaminated water" }, words: /flammable vapour/ },
    { why: "it holds an oxidiser", fields: { oxidiser: "1" }, words: /data sheet at hand/ },
    { why: "air drives an eductor", fields: { eductorNozzle: "0.25" }, words: /whip checks/ },
    { why: "the source is open", fields: {}, words: /sump drown/ },
    { why: "the line rises", fields: {}, words: /stands full/ },
    { why: "a pump is to be lifted and tested", fields: {}, words: /written plan/ },
    { why: "a pump is tested", fields: {}, words: /limited by the weakest part that is tested together: pipe, hose/ },
    { why: "the pump lifts", fields: {}, words: /under vacuum/ },
    { why: "a pump is chosen", fields: {}, words: /shut valve/ },
    { why: "whatever the duty", fields: {}, words: /local codes/ },
  ])("say so where $why", ({ fields, words }) => {
    expect(cautionTexts(dutyWith(fields)).some((text) => words.test(text))).toBe(true);
  });

  it.each([
    { why: "the driver is a motor", fields: { driver: "motor" }, words: /carbon monoxide/ },
    { why: "the driver is an engine", fields: { driver: "engine" }, words: /electrician/ },
    { why: "the liquid is at 45 °C and neutral", fields: { temperature: "45 degC", pH: "7" }, words: /burn skin/ },
    { why: "the liquid is at pH 4", fields: { pH: "4" }, words: /burn skin/ },
    { why: "the liquid is at pH 10", fields: { pH: "10" }, words: /burn skin/ },
    { why: "the suction is flooded", fields: { pumpLevel: "98", sourceLevel: "98" }, words: /under vacuum/ },
    { why: "the source is closed and under pressure", fields: { sourcePressure: "20" }, words: /sump drown/ },
    {
      why: "the line falls",
      fields: { deliveryLevel: "50", leastStaticHead: "", greatestStaticHead: "" },
      words: /stands full/,
    },
    { why: "no air drives an eductor", fields: {}, words: /whip checks/ },
    { why: "clean water is pumped", fields: { makeUp: "nothing else" }, words: /disease|data sheet at hand/ },
    { why: "it holds nothing else", fields: { makeUp: "nothing else" }, words: /breathing apparatus/ },
  ])("do not where $why", ({ fields, words }) => {
    expect(cautionTexts(dutyWith(fields)).some((text) => words.test(text))).toBe(false);
  });

  it("stand for themselves before there is a duty", () => {
    expect(cautionTexts(undefined).length).toBeGreaterThan(3);
  });
});
