import { describe, expect, it } from "vitest";
import { callAtCaret } from "../../../workbench/hints/call-at-caret.ts";

/** The caret stands at the bar. */
function at(marked: string): string {
  const caret = marked.indexOf("|");
  const call = callAtCaret(marked.replace("|", ""), caret);
  return call === undefined ? "nothing" : `${call.name} ${call.argument}`;
}

describe("the call at the caret", () => {
  it.each([
    ["=DUTY.TDH(|", "DUTY.TDH 0"],
    ["=DUTY.TDH(1200,|", "DUTY.TDH 1"],
    ["=DUTY.TDH(12|00, 5)", "DUTY.TDH 0"],
    ["=duty.tdh(1, , |)", "DUTY.TDH 2"],
    ["=SUM(DUTY.TDH(1, 2), |)", "SUM 1"],
    ["=SUM(DUTY.TDH(1, |2), 3)", "DUTY.TDH 1"],
    ['=DUTY.BORE("6in, sch(40", |)', "DUTY.BORE 1"],
    ['=DUTY.BORE("6in ""x"", y|', "DUTY.BORE 0"],
    ["=DUTY.LINEHEAD(1, {1,2;3,4}, |", "DUTY.LINEHEAD 2"],
    ["=DUTY.LINEHEAD(1, {1,|2", "DUTY.LINEHEAD 1"],
    ["=SUM('a, (b'!A1, |", "SUM 1"],
    ["=SUM((1+2)*|", "SUM 0"],
    ["=SUM((1, |2))", "SUM 0"],
    ["=SUM (1, |", "SUM 1"],
    ["=(1, |2)", "nothing"],
    ["=DUTY.TDH(1)|", "nothing"],
    ["=DUTY.TDH|(1)", "nothing"],
    ["DUTY.TDH(1, |", "nothing"],
    ["=|", "nothing"],
    ["=)))(|", "nothing"],
  ])("%s is %s", (marked, expected) => {
    expect(at(marked)).toBe(expected);
  });
});
