import { numfmt } from "@univerjs/core";
import { describe, expect, it } from "vitest";
import { isNumberFormat } from "../../../../shared/ports/check/number-format.ts";

/** Each verdict also that of a general-purpose library. */
describe("a number format", () => {
  it.each([
    "General",
    "@",
    "0",
    "0.00",
    "#,##0.0",
    '#,##0.0" m"',
    "0.0E+0",
    "0%",
    "yyyy-mm-dd",
    "h:mm AM/PM",
    "[Red]0;-0;0;@",
    "[>5]0;0",
    "0\\ \\m",
    "#,##0_)",
    "# ?/?",
  ])("%s is one", (code) => {
    expect([isNumberFormat(code), numfmt.isValidFormat(code)]).toEqual([true, true]);
  });

  it.each(["nonsense", "0;0;0;0;0", '0.00 "x', "[Red"])("%s is none", (code) => {
    expect([isNumberFormat(code), numfmt.isValidFormat(code)]).toEqual([false, false]);
  });

  it.each(["", "0.0 q", `"${"x".repeat(254)}"`])("“%s” is none", (code) => {
    expect(isNumberFormat(code)).toBe(false);
  });
});
