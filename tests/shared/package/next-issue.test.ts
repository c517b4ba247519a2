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

describe("signatures under the next issue", () => {
  const signed = {
    ...A,
    fields: {
      ...A.fields,
      preparedBy: "A. Estimator",
      preparedInitials: "AE",
      preparedOn: "2026-01-01",
      checkedBy: "C. Checker",
      checkedInitials: "CC",
      checkedOn: "2026-01-02",
      approvedBy: "B. Boss",
      approvedInitials: "BB",
      approvedOn: "2026-01-03",
    },
  };

  it("are blank, the names of who is to sign stay, and the history has the initials", () => {
    const issue = nextIssue(signed, { ...signed, fields: { ...signed.fields, flow: "700" } }, "2026-11-29");
    expect(issue?.duty.fields).toMatchObject({
      preparedBy: "A. Estimator",
      preparedInitials: "",
      preparedOn: "",
      checkedBy: "C. Checker",
      checkedInitials: "",
      checkedOn: "",
      approvedBy: "B. Boss",
      approvedInitials: "",
      approvedOn: "",
    });
    expect(issue?.duty.revisions?.at(-1)?.by).toBe("AE");
  });

  it("that were set again stay", () => {
    const fields = { ...signed.fields, flow: "700", checkedInitials: "DD", checkedOn: "2026-11-28" };
    expect(nextIssue(signed, { ...signed, fields }, "")?.duty.fields).toMatchObject({
      checkedInitials: "DD",
      checkedOn: "2026-11-28",
      approvedOn: "",
    });
  });
});

describe("a history that is full", () => {
  const row = (i: number) => ({
    revision: `P${i}`,
    date: `2026-01-${i}`,
    by: i % 2 === 0 ? "ab" : "cd",
    change: `change ${i}`,
  });
  const full = { ...withFields({ revision: "P20" }), revisions: Array.from({ length: 20 }, (_, i) => row(i + 1)) };
  const flow = (duty: DutyText, is: string): DutyText => ({ ...duty, fields: { ...duty.fields, flow: is } });

  it("has its two oldest rows in one, which says both, and the new one at its end", () => {
    const rows = nextIssue(full, flow(full, "700"), "2026-11-29")?.duty.revisions ?? [];
    expect(rows).toHaveLength(20);
    expect(rows[0]).toEqual({
      revision: "P1 to P2",
      date: "2026-01-2",
      by: "cd, ab",
      change: "P1 (2026-01-1) change 1; P2 (2026-01-2) change 2",
    });
    expect(rows.slice(1, 19)).toEqual(full.revisions.slice(2));
    expect(rows.at(-1)?.revision).toBe("P21");
  });

  it("goes on so, revision after revision", () => {
    const once = nextIssue(full, flow(full, "700"), "2026-11-29")?.duty ?? full;
    const rows = nextIssue(once, flow(once, "800"), "2026-11-30")?.duty.revisions ?? [];
    expect(rows).toHaveLength(20);
    expect(rows[0]?.revision).toBe("P1 to P3");
    expect(rows[0]?.change).toBe("P1 (2026-01-1) change 1; P2 (2026-01-2) change 2; P3 (2026-01-3) change 3");
    expect(rows.at(-1)?.revision).toBe("P22");
  });
});

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
    expect(issue?.duty.revisions?.at(-1)?.change).toBe("Issued again; nothing on this sheet has changed.");
    expect(issue?.duty.revisions?.at(-1)?.change).not.toMatch(/price|cost|margin/i);
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
