import { describe, expect, it } from "vitest";
import { formulaProblem, sheetsNamedIn } from "../../../../shared/ports/check/formula.ts";

const x = (letters: number): string => "x".repeat(letters);

describe("the text of a formula", () => {
  // Each is a formula of Excel's own grammar (ISO/IEC 29500-1, 18.17.2, and later array and spill references).
  it.each([
    "1",
    "A1",
    "-A1%",
    "SUM(A1:B2,$C$3)",
    "SUM()",
    'IF(A1>1,"a ""b""",)',
    "IF(A1<>2,,3)",
    "'P-1 workings'!A1*2",
    "Data!A1+'It''s (2)'!B2",
    "{1,2;3,4}",
    "A1#",
    "SUM('P-1 workings'!A1#)",
    "@A1",
    "A1:INDEX(A1:A9,3)",
    "A1:A3 A2:B2",
    "(A1:A2,B3)",
    "1.5E-3+.5",
    "#N/A",
    "IFERROR(#REF!,1)",
    "DUTY.CURVE.FIT(A1:B9,2)",
    '"1"&A1&CHAR(10)',
    "$A:$A",
    "SUM(2:5)",
    "LAMBDA(x,x+1)(2)",
    "Table1[Head]+Table1[[#This Row],[Flow]]",
    "A1 = B1",
    `"${x(255)}"`,
    `${"ABS(".repeat(64)}1${")".repeat(64)}`,
  ])("%s is one", (formula) => {
    expect(formulaProblem(formula)).toBeUndefined();
  });

  it.each([
    ["", "complete"],
    ["SUM((", "not closed"],
    ["SUM(1,2))", "closes nothing"],
    ["A1+", "complete"],
    ["*3", "before “*”"],
    ["A1:B2*(", "not closed"],
    ["(1+)", "before “)”"],
    ["()", "before “)”"],
    ["1,2", "outside a bracket"],
    ["SUM(1;2)", "outside a bracket"],
    ['A1"x"', "side by side"],
    ['"a', "cannot be read"],
    ["'x!A1", "cannot be read"],
    ["{1,2)", "closes nothing"],
    ["A1 + ?", "cannot be read"],
    ["%", "before “%”"],
    ["Data!", "complete"],
    [`"${x(256)}"`, "at most 255"],
    [`${"1+".repeat(4096)}1`, "at most 8192"],
    [`${"ABS(".repeat(65)}1${")".repeat(65)}`, "64 deep"],
    [`SUM(${"1,".repeat(255)}1)`, "255 arguments"],
  ])("%s is none", (formula, why) => {
    expect(formulaProblem(formula)).toContain(why);
  });

  it("names the sheets it reads, and none from its texts", () => {
    expect(sheetsNamedIn(`'It''s'!A1+Data!B2&"'Other'!A1 Else!A2"`)).toEqual(["It's", "Data"]);
  });
});
