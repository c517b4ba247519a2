import { describe, expect, it } from "vitest";
import { readWrittenNumber } from "../../../src/basis/written-number.ts";

// Common practice, no source: how people and programs write numbers round the world.
describe("a written number", () => {
  it.each([
    ["1200", 1200, undefined],
    ["12.5", 12.5, "."],
    ["12,5", 12.5, ","],
    ["0,125", 0.125, ","],
    ["0.125", 0.125, "."],
    ["1234,567", 1234.567, ","],
    ["1,2345", 1.2345, ","],
    ["1.234,5", 1234.5, ","],
    ["1,234.5", 1234.5, "."],
    ["1.234.567", 1_234_567, ","],
    ["1,234,567", 1_234_567, "."],
    ["1.234.567,25", 1_234_567.25, ","],
    ["1 234,5", 1234.5, ","],
    ["1\u00a0234", 1234, undefined],
    ["1\u202f234\u202f567.5", 1_234_567.5, "."],
    ["1'234.5", 1234.5, "."],
    ["-4,5", -4.5, ","],
    ["−4.5", -4.5, "."],
    ["+7", 7, undefined],
    [" 42 ", 42, undefined],
    [".5", 0.5, "."],
    [",5", 0.5, ","],
    ["1,5e3", 1500, ","],
    ["5.", 5, "."],
  ])("%s is %d", (text, value, sign) => {
    expect(readWrittenNumber(text)).toEqual({ kind: "number", value, ...(sign === undefined ? {} : { sign }) });
  });

  it.each([
    ["1.234", 1.234, 1234],
    ["1,234", 1234, 1.234],
    ["-12,500", -12_500, -12.5],
  ])("%s can be read in two ways", (text, point, comma) => {
    expect(readWrittenNumber(text)).toEqual({ kind: "ambiguous", values: { ".": point, ",": comma } });
  });

  it.each([
    "",
    "-",
    ".",
    "abc",
    "12 gpm",
    "1.2.3",
    "12,34,56",
    "1.23.456",
    "1,234.5,6",
    "1 23",
    "12 3456",
    "1'23",
    "0x10",
    "1e",
    "--1",
    "1,2 345",
    "=1+1",
    "1/2",
  ])("“%s” is none", (text) => {
    expect(readWrittenNumber(text)).toEqual({ kind: "text" });
  });
});
