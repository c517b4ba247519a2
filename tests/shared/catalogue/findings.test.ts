import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { FINDINGS } from "../../../shared/catalogue/entries/findings.ts";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";

// Expected lists follow from the notes given and from the order that the function states.

const NOTES = [
  ["where", "notes"],
  ["head", "Check: A.\nAssumed: B [a source]"],
  ["suction", ""],
  ["npsh", "Assumed: B [a source]\nLimit: C.\nCheck: A."],
  ["valve", "Safety: D"],
] as const;

function listed(...args: readonly Argument[]): readonly (readonly Cell[])[] {
  const outcome = call(FINDINGS, args);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return (outcome.value as readonly (readonly Cell[])[]).slice(1);
}

describe("FINDINGS", () => {
  it("gives each finding once with its places, people's danger first, what was assumed last", () => {
    expect(listed(NOTES)).toEqual([
      ["Safety", "D", "valve"],
      ["Limit", "C.", "npsh"],
      ["Check", "A.", "head; npsh"],
      ["Assumed", "B [a source]", "head; npsh"],
    ]);
  });

  it("parts what was assumed from what was found", () => {
    expect(listed(NOTES, "assumed").map(([kind]) => kind)).toEqual(["Assumed"]);
    expect(listed(NOTES, "found").map(([kind]) => kind)).toEqual(["Safety", "Limit", "Check"]);
  });

  it("fills just the rows asked for, and says in the last what it leaves out and of which kinds", () => {
    expect(listed(NOTES, "all", 6).slice(4)).toEqual([
      ["", "", ""],
      ["", "", ""],
    ]);
    expect(listed(NOTES, "all", 4)).toHaveLength(4);
    expect(listed(NOTES, "all", 3)).toEqual([
      ["Safety", "D", "valve"],
      ["Limit", "C.", "npsh"],
      ["Check, Assumed", "… and 2 more.", "head; npsh"],
    ]);
  });

  it("keeps a line without a kind with the one before it", () => {
    const rows = [
      ["where", "notes"],
      ["a", "Limit: first\n… and 2 more"],
    ] as const;
    expect(listed(rows)).toEqual([["Limit", "first … and 2 more", "a"]]);
  });

  it.each([
    [0, "must be at least 1"],
    [501, "must be at most 500"],
    [2.5, "must be a whole number"],
  ])("refuses %f rows", (rows, words) => {
    const outcome = call(FINDINGS, [NOTES, "all", rows]);
    expect(!outcome.ok && outcome.error.message).toContain(words);
  });
});
