import { describe, expect, it } from "vitest";
import type { RuleSpec } from "../../../shared/ports/sheet-spec.ts";
import { joinedRules } from "../../../taskpane/excel/join-rules.ts";
import { joinedMerges, rowsByHeight } from "../../../taskpane/excel/row-areas.ts";

const RED = { color: "#B3261E", bold: true };
const GREEN = { color: "#1B6B3A", bold: true };

/** Expected values: joined by hand. */
describe("rules for Excel", () => {
  it.each<{ why: string; rules: readonly RuleSpec[]; joined: readonly RuleSpec[] }>([
    {
      why: "rows that ask the same of themselves are one range, rules in their order",
      rules: [14, 15, 16].flatMap((row) => [
        { ref: `C${row}`, when: `C${row}="✗ FAIL"`, style: RED },
        { ref: `C${row}`, when: `C${row}="✓ pass"`, style: GREEN },
      ]),
      joined: [
        { ref: "C14:C16", when: 'C14="✗ FAIL"', style: RED },
        { ref: "C14:C16", when: 'C14="✓ pass"', style: GREEN },
      ],
    },
    {
      why: "what colours a cell alike is one rule",
      rules: [
        { ref: "A3", when: 'LEFT(A3,5)="Error"', style: RED },
        { ref: "A3", when: 'LEFT(A3,5)="Limit"', style: RED },
        { ref: "A3", when: "A3=0", style: GREEN },
        { ref: "A3", when: "A3<0", style: RED },
      ],
      joined: [
        { ref: "A3", when: 'OR(LEFT(A3,5)="Error",LEFT(A3,5)="Limit")', style: RED },
        { ref: "A3", when: "A3=0", style: GREEN },
        { ref: "A3", when: "A3<0", style: RED },
      ],
    },
    {
      why: "another question, a gap, other columns and another colour part them",
      rules: [
        { ref: "A1", when: "A1<0", style: RED },
        { ref: "A2", when: "A1<0", style: RED },
        { ref: "A4", when: "A4<0", style: RED },
        { ref: "B5", when: "B5<0", style: RED },
        { ref: "A5", when: "A5<0", style: GREEN },
        { ref: "A6:B6", when: "A6<0", style: GREEN },
      ],
      joined: [
        { ref: "A1", when: "A1<0", style: RED },
        { ref: "A2", when: "A1<0", style: RED },
        { ref: "A4", when: "A4<0", style: RED },
        { ref: "B5", when: "B5<0", style: RED },
        { ref: "A5", when: "A5<0", style: GREEN },
        { ref: "A6:B6", when: "A6<0", style: GREEN },
      ],
    },
    {
      why: "a row that is held stays, and a text is no reference",
      rules: [
        { ref: "A1", when: 'AND(A1<B$9,C1="A1")', style: RED },
        { ref: "A2", when: 'AND(A2<B$9,C2="A1")', style: RED },
        { ref: "A3", when: 'AND(A3<B$9,C3="A3")', style: RED },
      ],
      joined: [
        { ref: "A1:A2", when: 'AND(A1<B$9,C1="A1")', style: RED },
        { ref: "A3", when: 'AND(A3<B$9,C3="A3")', style: RED },
      ],
    },
    {
      why: "ranges that overlap are left as they are, for their order counts",
      rules: [
        { ref: "A1:A2", when: "A1<0", style: RED },
        { ref: "A2:A3", when: "A2<9", style: GREEN },
        { ref: "A1:A2", when: "A1<1", style: RED },
      ],
      joined: [
        { ref: "A1:A2", when: "A1<0", style: RED },
        { ref: "A2:A3", when: "A2<9", style: GREEN },
        { ref: "A1:A2", when: "A1<1", style: RED },
      ],
    },
  ])("$why", ({ rules, joined }) => {
    expect(joinedRules(rules)).toEqual(joined);
  });
});

describe("rows for Excel", () => {
  it("of one height are set at once, runs of them as ranges", () => {
    expect(rowsByHeight({ 3: 15, 4: 15, 5: 24, 7: 15 })).toEqual([
      { height: 15, addresses: ["A3:A4,A7"] },
      { height: 24, addresses: ["A5"] },
    ]);
  });

  it("merged over the same columns one below another are merged at once, each by itself", () => {
    expect(joinedMerges(["B2:D2", "A1:F1", "B3:D3", "B5:D5", "B6:E6", "G1:H2", "G3:H3"])).toEqual([
      { ref: "A1:F1", byRow: false },
      { ref: "B2:D3", byRow: true },
      { ref: "B5:D5", byRow: false },
      { ref: "B6:E6", byRow: false },
      { ref: "G1:H2", byRow: false },
      { ref: "G3:H3", byRow: false },
    ]);
    // Columns that begin elsewhere part them as well as those that end elsewhere.
    expect(joinedMerges(["B5:D5", "C6:D6"])).toEqual([
      { ref: "B5:D5", byRow: false },
      { ref: "C6:D6", byRow: false },
    ]);
  });
});
