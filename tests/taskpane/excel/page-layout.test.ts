import { describe, expect, it } from "vitest";
import { marginParts } from "../../../taskpane/excel/page-layout.ts";

describe("a header or footer", () => {
  it.each([
    ["Page &P", { left: "", center: "Page &P", right: "" }],
    ["&LDuty&CRev 0&R&D", { left: "Duty", center: "Rev 0", right: "&D" }],
    ["&LA&&L&RB", { left: "A&&L", center: "", right: "B" }],
    ["", { left: "", center: "", right: "" }],
    ["R&", { left: "", center: "R&", right: "" }],
  ])("%s is taken apart by its marks", (text, parts) => {
    expect(marginParts(text)).toEqual(parts);
  });
});
