import { describe, expect, it } from "vitest";
import { backWords, notBackWords, timeWords, unkeptWords } from "../../../workbench/keep/keep-words.ts";

const at = new Date(2026, 10, 29, 18, 12).getTime();

describe("what is said of kept work", () => {
  it("names the time, with the day where that is another", () => {
    expect(timeWords(at, new Date(2026, 10, 29, 23, 59).getTime())).toBe("18:12");
    expect(timeWords(at, new Date(2026, 10, 30, 0, 1).getTime())).toBe("29 Nov 18:12");
  });

  it("says what more there is", () => {
    expect(backWords(at, 0)).toMatch(/^Restored your workbook of [^.]*18:12\.$/);
    expect(backWords(at, 1)).toMatch(/ 1 other is kept: open the workbench in another tab for it\.$/);
    expect(backWords(at, 3)).toMatch(/ 3 others are kept: open the workbench in another tab for the next\.$/);
    expect(notBackWords(at, "the data is damaged.")).toMatch(
      /could not be restored: the data is damaged\. It is still/,
    );
  });

  it("tells a full storage from one that refuses", () => {
    expect(unkeptWords(new DOMException("", "QuotaExceededError"))).toContain("its storage is full.");
    expect(unkeptWords(new DOMException("", "SecurityError"))).toContain("switched off, or does not answer.");
    expect(unkeptWords("x")).toContain("Download it before you close or reload this page.");
  });
});
