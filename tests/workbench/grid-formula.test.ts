import { describe, expect, it } from "vitest";
import { changedFormula } from "../../workbench/grid-formula.ts";

const names = new Map([
  ["flow", "$B$3"],
  ["table", "$A$1:$B$9"],
]);
const namesOn = new Map([["data", new Map([["flow", "$C$7"]])]]);
const spills = new Map([["B9", "$B$9:$C$10"]]);
const sheets = new Map([["data", "Data (2)"]]);

describe("formulas changed for the grid", () => {
  it.each([
    { why: "a name in any case", formula: "Flow*2+FLOW", changed: "$B$3*2+$B$3" },
    { why: "not in a text", formula: '"flow is "&flow', changed: '"flow is "&$B$3' },
    { why: "not a call of that name", formula: "flow(flow)", changed: "flow($B$3)" },
    { why: "not part of a longer name", formula: "flow_rate+myflow+flow.x", changed: "flow_rate+myflow+flow.x" },
    { why: "not an add-in call", formula: 'DUTY.VELOCITY(flow,"flow")', changed: 'DUTY.VELOCITY($B$3,"flow")' },
    { why: "a spill mark", formula: "SUM(B9#)+SUM($B$9#)", changed: "SUM($B$9:$C$10)+SUM($B$9:$C$10)" },
    { why: "no mark, no change", formula: "B9+B90#", changed: "B9+B90#" },
    { why: "a sheet that got another name", formula: "Data!B9+'data'!A1", changed: "'Data (2)'!B9+'Data (2)'!A1" },
    { why: "a name of another sheet", formula: "flow+'data'!Flow", changed: "$B$3+'Data (2)'!$C$7" },
    { why: "a name no other sheet has", formula: "Data!table+Other!flow", changed: "'Data (2)'!table+Other!flow" },
    { why: "another sheet stays", formula: "'My Data'!A1+Data1!A1", changed: "'My Data'!A1+Data1!A1" },
    { why: "a range over two cells", formula: "Data!A1:A9", changed: "'Data (2)'!A1:A9" },
    { why: "whole columns", formula: "SUM(A:A)+Data!B:B", changed: "SUM(A:A)+'Data (2)'!B:B" },
    { why: "quotes in a text", formula: '"say ""flow"""&flow', changed: '"say ""flow"""&$B$3' },
    { why: "an apostrophe in a sheet name", formula: "'It''s'!A1+flow", changed: "'It''s'!A1+$B$3" },
    { why: "numbers with exponents", formula: "1E5+flow", changed: "1E5+$B$3" },
  ])("$why", ({ formula, changed }) => {
    expect(changedFormula(formula, { names, namesOn, spills, sheets })).toBe(changed);
  });

  it("leaves all as it is when nothing is to change", () => {
    const formula = 'IF(flow>1,Data!A1#,"a")';
    expect(changedFormula(formula, {})).toBe(formula);
  });
});
