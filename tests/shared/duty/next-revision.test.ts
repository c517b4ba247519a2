import { describe, expect, it } from "vitest";
import { nextRevision } from "../../../shared/duty/next-revision.ts";

// Common practice, no source: letters, numbers, and numbers behind a letter, each counted up.
describe("the next revision", () => {
  it.each([
    ["", "A"],
    ["  ", "A"],
    ["A", "B"],
    ["Y", "Z"],
    ["Z", "AA"],
    ["AZ", "BA"],
    ["ZZ", "AAA"],
    ["a", "b"],
    ["z", "aa"],
    ["0", "1"],
    ["9", "10"],
    ["09", "10"],
    ["00", "01"],
    ["P1", "P2"],
    ["P09", "P10"],
    ["P99", "P100"],
    ["Rev 3", "Rev 4"],
    ["Rev A", "Rev B"],
    ["Rev. Z", "Rev. AA"],
    ["C-2", "C-3"],
    ["1.9", "1.10"],
    [" B ", "C"],
  ])("after “%s” is “%s”", (revision, next) => {
    expect(nextRevision(revision)).toBe(next);
  });

  it.each(["final", "As built", "Ab", "A/B", "2026-11-29", "2026", "1.2.3", "B (draft)", "Ä", "-", "AAA", "=A"])(
    "after “%s” is to be asked for",
    (revision) => {
      expect(nextRevision(revision)).toBeUndefined();
    },
  );
});
