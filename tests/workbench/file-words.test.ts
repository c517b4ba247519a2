import { describe, expect, it } from "vitest";
import { breakQuestion, downloadedWords, openedWords, openQuestion, otherName } from "../../workbench/file-words.ts";

const UNSEEN = [{ sheet: "Data", things: ["2 charts", "protection"] }, { things: ["3 workbook names"] }];

describe("what is said of an opened file", () => {
  it("lists what stays in it unseen, sheet by sheet", () => {
    const question = openQuestion("Bill.xlsx", 1, UNSEEN);
    expect(question.text).toBe("Bill.xlsx has one sheet. Where should it go?");
    expect(question.lines).toEqual(["Data: 2 charts, protection", "The whole workbook: 3 workbook names"]);
    expect(question.remark).toContain("copies of the cells, without what is listed.");
    expect(openQuestion("Bill.xlsx", 2, [])).toMatchObject({ text: "Bill.xlsx has 2 sheets. Where should they go?" });
    expect(openQuestion("Bill.xlsx", 2, []).lines).toBeUndefined();
  });

  it("says before a step, and after one, what a new file will be without, and its name", () => {
    const losses = { unseen: UNSEEN, unanswered: ["Data!B4"] };
    expect(breakQuestion("Bill.xlsx", [], losses).text).toMatch(/^After this step .*“Bill \(from workbench\)\.xlsx”/);
    const after = breakQuestion("Bill.xlsx", ["rows inserted on Data"], losses);
    expect(after.text).toMatch(/^Since Bill\.xlsx was opened: rows inserted on Data\. So the file cannot be kept/);
    expect(after.lines?.[2]).toBe("The answers of Data!B4: an error stands there");
  });

  it("names five of the formulas in doubt and counts the rest", () => {
    const cells = ["A!A1", "A!A2", "A!A3", "A!A4", "A!A5", "A!A6", "A!A7"];
    expect(openedWords({ unanswered: cells, otherwise: [] })).toMatch(/^A!A1, A!A2, A!A3, A!A4, A!A5 and 2 more are /);
    expect(openedWords({ unanswered: ["A!A1"], otherwise: ["A!A2"] })).toMatch(/^A!A1 is shown .* A!A2: the answer /);
    expect(openedWords({ unanswered: [], otherwise: [] })).toBeUndefined();
    expect(downloadedWords({ unanswered: ["A!A1"], otherwise: ["A!A2"] })).toMatch(/^A!A1, A!A2 may be answered/);
  });

  it("gives another name once", () => {
    expect(otherName("Bill.xlsm")).toBe("Bill (from workbench).xlsx");
    expect(otherName("Bill (from workbench).xlsx")).toBe("Bill (from workbench).xlsx");
  });
});
