import { describe, expect, it } from "vitest";
import { changedFormula, namedFormula } from "../../workbench/grid-formula.ts";

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

const ranges = new Map([
  [
    "duty",
    new Map([
      ["$B$3", "flow"],
      ["$A$1:$B$9", "line"],
    ]),
  ],
  ["it's data", new Map([["$C$7", "loss"]])],
]);

describe("formulas with their names again", () => {
  it.each([
    { why: "a cell and a range", formula: "$B$3*SUM($A$1:$B$9)", named: "flow*SUM(line)" },
    { why: "small letters", formula: "$b$3+1", named: "flow+1" },
    { why: "no part of a range", formula: "SUM($B$3:$B$9)+SUM($A$3:$B$3)", named: "SUM($B$3:$B$9)+SUM($A$3:$B$3)" },
    { why: "no part of a longer address", formula: "$B$30+$AB$3", named: "$B$30+$AB$3" },
    { why: "none that moves with its cell", formula: "B3+$B3+B$3", named: "B3+$B3+B$3" },
    { why: "not in a text", formula: '"at $B$3 "&$B$3', named: '"at $B$3 "&flow' },
    { why: "of another sheet", formula: "'It''s data'!$C$7+Other!$B$3", named: "'It''s data'!loss+Other!$B$3" },
    { why: "of its own sheet by its name", formula: "Duty!$B$3", named: "Duty!flow" },
    { why: "not what another sheet has there", formula: "$C$7+'It''s data'!$B$3", named: "$C$7+'It''s data'!$B$3" },
    { why: "beside operators", formula: "-$B$3^2/$B$3%", named: "-flow^2/flow%" },
    { why: "no spill mark", formula: "SUM($B$3#)", named: "SUM($B$3#)" },
  ])("$why", ({ formula, named }) => {
    expect(namedFormula(formula, ranges, "duty")).toBe(named);
  });
});
