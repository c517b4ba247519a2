import { describe, expect, it } from "vitest";
import {
  callsAddIn,
  decodeFormula,
  encodeFormula,
  rangeReckoner,
  sharedFormula,
} from "../../../shared/xlsx/formula-text.ts";

// The stored forms are those found in a workbook that Excel 16 saved with an add-in loaded (_xldudf_), and those of
// MS-XLSX "future functions" (_xlfn.).
describe("a formula and its form in a file", () => {
  it.each([
    { cell: 'DUTY.VELOCITY(B3,B4,"SI")', file: '_xldudf_DUTY_VELOCITY(B3,B4,"SI")' },
    { cell: "2*DUTY.BORE(A1)+DUTY.BORE(A2)", file: "2*_xldudf_DUTY_BORE(A1)+_xldudf_DUTY_BORE(A2)" },
    { cell: 'IF(A1="DUTY.BORE(A1)",1,0)', file: 'IF(A1="DUTY.BORE(A1)",1,0)' },
    { cell: '"say ""DUTY.X("" "&DUTY.BORE(A1)', file: '"say ""DUTY.X("" "&_xldudf_DUTY_BORE(A1)' },
    { cell: "'DUTY.BORE(1)'!A1*2", file: "'DUTY.BORE(1)'!A1*2" },
    { cell: "'It''s DUTY.BORE(x)'!A1", file: "'It''s DUTY.BORE(x)'!A1" },
    { cell: "MYDUTY.BORE(A1)", file: "MYDUTY.BORE(A1)" },
    { cell: 'TEXTJOIN(", ",TRUE,A1:A3)', file: '_xlfn.TEXTJOIN(", ",TRUE,A1:A3)' },
    { cell: "STDEV.S(A1:A3)", file: "_xlfn.STDEV.S(A1:A3)" },
    { cell: "SORT(FILTER(A1:A3,A1:A3>0))", file: "_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A3,A1:A3>0))" },
    { cell: "SUM(D4#)", file: "SUM(_xlfn.ANCHORARRAY(D4))" },
    { cell: "SUM('My sheet'!$D$4#)", file: "SUM(_xlfn.ANCHORARRAY('My sheet'!$D$4))" },
    { cell: "LET(_xlpm.x,A1,_xlpm.x+1)", file: "_xlfn.LET(_xlpm.x,A1,_xlpm.x+1)" },
    { cell: "SUM(A1:A3)", file: "SUM(A1:A3)" },
    { cell: "IFERROR(A1,#N/A)", file: "IFERROR(A1,#N/A)" },
  ])("$cell", ({ cell, file }) => {
    expect(encodeFormula(cell)).toBe(file);
    expect(decodeFormula(file)).toBe(cell);
  });

  it("writes the call in capitals whatever the user typed, and drops the equals sign", () => {
    expect(encodeFormula("=duty.bore(a1)")).toBe("_xldudf_DUTY_BORE(a1)");
  });

  it.each([
    { why: "another program lower-cased it", file: "_xldudf_duty_bore(A1)" },
    { why: "a missing add-in left a link number", file: "[2]!_xldudf_DUTY_BORE(A1)" },
    { why: "another add-in left its file name", file: "FUNCRES.XLAM!_xldudf_DUTY_BORE(A1)" },
    { why: "another add-in left its quoted path", file: "'C:\\Add ins\\FUNCRES.XLAM'!_xldudf_DUTY_BORE(A1)" },
  ])("repairs a call where $why", ({ file }) => {
    expect(decodeFormula(file)).toBe("DUTY.BORE(A1)");
  });

  it("leaves a stored call inside a text and that of another add-in alone", () => {
    const file = '"_xldudf_DUTY_BORE("&_xldudf_OTHER_FN(1)';
    expect(decodeFormula(file)).toBe(file);
  });

  it("refuses LET and LAMBDA without the marks a file puts on their names", () => {
    expect(() => encodeFormula("LET(x,1,x+1)")).toThrow("LET");
    expect(() => encodeFormula('"LET("&A1')).not.toThrow();
  });
});

it.each([
  ["DUTY.BORE(A1)", true],
  ["1+duty.bore(A1)", true],
  ['"DUTY.BORE(A1)"', false],
  ["'DUTY.BORE(1)'!A1", false],
  ["DUTY.BORE", false],
] as const)("%s calls the add-in: %s", (formula, calls) => {
  expect(callsAddIn(formula)).toBe(calls);
});

it.each([
  ["SUM(A1:A3*B1:B3)", true],
  ["SUM(2*'My sheet'!A1:A3)", true],
  ["SUM(flows*2)", true],
  ["MAX(IF(A1:A3>2,1,0))", true],
  ["SUM(A1:A3)", false],
  ["SUM(A1:A3)*2", false],
  ['"A1:A3*2"', false],
  ["overflows*2", false],
  ["INDEX(A1:C3,2,3)", false],
] as const)("%s reckons with whole ranges: %s", (formula, whole) => {
  expect(rangeReckoner(["flows"])(formula)).toBe(whole);
});

// By hand: two rows down, one column right.
it.each([
  ["A1+$A1+A$1+$A$1", "B3+$A3+B$1+$A$1"],
  ["SUM(Z9:AA10)", "SUM(AA11:AB12)"],
  ["LOG10(B5)+1E5", "LOG10(C7)+1E5"],
  ['"A1"&A1', '"A1"&B3'],
  ["'A1'!A1+T1!A1", "'A1'!B3+T1!B3"],
  ["DUTY.BORE(A1)", "DUTY.BORE(B3)"],
])("%s moves to %s", (formula, moved) => {
  expect(sharedFormula(formula)(2, 1)).toBe(moved);
});
