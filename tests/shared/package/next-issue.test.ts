import { describe, expect, it } from "vitest";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { nextIssue } from "../../../shared/package/next-issue.ts";
import { dutyText, STRAIGHT_PUMP } from "../../support/duty-of.ts";
import { after, typed } from "../../support/opened-again.ts";

const A = dutyText(
  { item: "P-1", revision: "A", preparedBy: "ab", flow: "600", directCost: "46000", margin: "20" },
  { pump: STRAIGHT_PUMP, revisions: [{ revision: "A", date: "2026-01-01", by: "ab", change: "First issue." }] },
);
const withFields = (fields: Partial<DutyText["fields"]>): DutyText => ({ ...A, fields: { ...A.fields, ...fields } });

describe("the next issue of a duty", () => {
  it("is one revision up, and its history says what was edited and what came of it", () => {
    const issue = nextIssue(A, withFields({ flow: "700", deliveryLevel: "105 ft" }), "2026-11-29");
    expect(issue?.revision).toBe("B");
    expect(issue?.duty.fields).toEqual({
      ...A.fields,
      flow: "700",
      deliveryLevel: "105 ft",
      revision: "B",
      date: "2026-11-29",
    });
    expect(issue?.changes.slice(0, 2).map(({ label, before, after: now }) => [label, before, now])).toEqual([
      ["Flow", "600 US gpm", "700 US gpm"],
      ["Delivery level", "100 ft", "105 ft"],
    ]);
    // 5 ft more to lift, and more friction beside: by how much is the calculation's own affair.
    expect(issue?.changes.some(({ label }) => label === "Total dynamic head")).toBe(true);
    const [first, row] = issue?.duty.revisions ?? [];
    expect(first).toEqual(A.revisions?.[0]);
    expect(row).toMatchObject({ revision: "B", date: "2026-11-29", by: "ab" });
    expect(row?.change).toContain("Flow: 600 US gpm, now 700 US gpm; Delivery level: 100 ft, now 105 ft");
  });

  it("lists what was typed on the sheet of the revision before", () => {
    const edited = after(A, typed("flow", 650), typed("discharge_line", 900, 0, 1)).duty;
    const inputs = nextIssue(A, edited, "")?.changes.map(({ label }) => label);
    expect(inputs?.slice(0, 2)).toEqual(["Flow", "Discharge line, row 1: length"]);
  });

  it("says nothing of prices in the history, which is printed", () => {
    const issue = nextIssue(A, withFields({ directCost: "47123" }), "");
    expect(issue?.changes.some(({ after: now }) => now.includes("47123"))).toBe(true);
    expect(issue?.duty.revisions?.at(-1)?.change).toBe("Prices and costs only.");
  });

  it("is none where no input is otherwise", () => {
    expect(nextIssue(A, A, "2026-11-29")).toBeUndefined();
    expect(nextIssue(A, withFields({ checkedBy: "cd", date: "2026-02-02" }), "")).toBeUndefined();
  });

  it("keeps the revision that was typed for it", () => {
    expect(nextIssue(A, withFields({ flow: "700", revision: "P2" }), "")?.revision).toBe("P2");
  });

  it("asks for one that nobody can count up", () => {
    const final = withFields({ revision: "final" });
    const issue = nextIssue(final, { ...final, fields: { ...final.fields, flow: "700" } }, "");
    expect(issue?.revision).toBe("");
  });

  it("keeps the row of its history short", () => {
    const runs = Array.from({ length: 24 }, (_, i) => ({
      pipe: "8in sch40",
      length: `${i + 1} ft`,
      fittings: "1 gate",
    }));
    const issue = nextIssue(A, { ...A, dischargeLine: runs }, "");
    expect(issue?.duty.revisions?.at(-1)?.change.length).toBeLessThan(430);
    expect(issue?.duty.revisions?.at(-1)?.change).toMatch(/; and \d+ more$/);
  });
});
