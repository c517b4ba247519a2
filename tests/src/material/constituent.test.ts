import { describe, expect, it } from "vitest";
import { constituentsNamed } from "../../../src/material/constituent.ts";
import { CONSTITUENTS } from "../../../src/material/wetted-duty.ts";

// Names of the chemicals in general use; the formulas are those of any chemistry book.
describe("what else is in a liquid", () => {
  it.each([
    ["nothing else", []],
    [" Nothing  Else ", []],
    ["caustic, ammonia", ["caustic", "ammonia"]],
    ["ammonia; CAUSTIC", ["ammonia", "caustic"]],
    ["oil and hydrogen sulphide", ["oil", "hydrogen sulphide"]],
    ["caustic soda, NaOH, sodium hydroxide", ["caustic"]],
    ["H2S", ["hydrogen sulphide"]],
    ["sulfuric acid", ["sulphuric acid"]],
    ["H2SO4, HCl, HNO3, HF", ["sulphuric acid", "hydrochloric acid", "nitric acid", "hydrofluoric acid"]],
    ["diesel,", ["oil"]],
  ])("reads “%s”", (text, expected) => {
    expect(constituentsNamed(text, "make-up")).toEqual({ ok: true, value: expected, findings: [] });
  });

  it("knows each of its own names, alone and all together", () => {
    for (const name of CONSTITUENTS) expect(constituentsNamed(name, "make-up")).toMatchObject({ value: [name] });
    expect(constituentsNamed(CONSTITUENTS.join(", "), "make-up")).toMatchObject({ value: CONSTITUENTS });
  });

  it.each([
    ["caustic, moonlight", "name-unknown", "moonlight"],
    ["sand", "name-unknown", "sand"],
    ["constructor", "name-unknown", "constructor"],
    ["", "name-unknown", ""],
    [" , ;", "name-unknown", ", ;"],
    ["nothing else, oil", "make-up-contradicts", "nothing else, oil"],
  ])("refuses “%s”", (text, code, given) => {
    const { ok, findings } = constituentsNamed(text, "make-up");
    expect(ok).toBe(false);
    expect(findings).toMatchObject([{ code, given, kind: "error", subject: "make-up" }]);
  });

  it("offers the nearest names, or all of them where none is near", () => {
    expect(constituentsNamed("sulphuric", "make-up").findings[0]?.suggestions?.[0]).toBe("sulphuric acid");
    expect(constituentsNamed("moonlight", "make-up").findings[0]?.suggestions).toEqual([
      "nothing else",
      ...CONSTITUENTS,
    ]);
  });
});
