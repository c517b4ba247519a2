import { describe, expect, it } from "vitest";
import { marginLine, marginParts } from "../../../shared/ports/margin-text.ts";

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

  const facts = { page: 3, pages: 14, sheet: "Duty P-101", file: "Book.xlsx", date: "2026-03-09", time: "10:15" };
  // ISO/IEC 29500-1, 18.3.1.39 (evenHeader and the rest): the marks of a header.
  it.each([
    ["page &P of &N", { text: "page 3 of 14" }],
    ["&8&A, &F", { text: "Duty P-101, Book.xlsx", size: 8 }],
    ["&8 12 ft", { text: "12 ft", size: 8 }],
    ["A&&P &&&P", { text: "A&P &3" }],
    ['&"Arial,Bold"&B&12&K00FF00&D &T', { text: "2026-03-09 10:15", size: 12 }],
  ])("%s reads", (part, line) => {
    expect(marginLine(part, facts)).toEqual(line);
  });
});
