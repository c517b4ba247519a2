import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { VERSION } from "../../../shared/ports/version.ts";
import { dutyText, QUARRY } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";

/** "255 characters in a header or footer": Microsoft, "Excel specifications and limits". */
const LONGEST = 255;

const ISSUE = { project: "Dewatering A & B", item: "P-101", revision: "C", date: "9 March 2026", directCost: "1" };

describe("the head and foot of a printed page", () => {
  it("say project, item, revision, date, page and version on every sheet", () => {
    const { all } = sheetsOf(dutyText(ISSUE, QUARRY));
    expect(all).toHaveLength(3);
    for (const { print } of all) {
      expect(print?.header).toBe("&LDewatering A && B, P-101&RRev. C, 9 March 2026");
      expect(print?.footer).toMatch(
        new RegExp(`^&L&A, Dutybook ${VERSION.replaceAll(".", "\\.")}&C.*&RPage &P of &N$`),
      );
    }
  });

  it("keep the sentence on codes and practice where the sheet is sent, and mark the estimate", () => {
    const { duty, estimate, workings } = sheetsOf(dutyText(ISSUE, QUARRY));
    for (const { print } of [duty, workings]) {
      expect(print?.footer).toContain("&CAn aid to estimating: local codes and licensed practice govern&R");
    }
    expect(estimate?.print?.footer).toContain("&CInternal: not for issue&R");
  });

  it("say nothing where nothing was stated", () => {
    const { duty } = sheetsOf(dutyText({ project: "", item: "", revision: "", date: "" }, QUARRY));
    expect(duty.print?.header).toBe("&L&R");
  });

  it("hold in Excel's length whatever is typed, no mark of ours and no letter cut apart", () => {
    const text = fc.string({ unit: fc.constantFrom("&", "a", "\n", "💧", "9", " "), maxLength: 400 });
    fc.assert(
      fc.property(text, text, text, text, (project, item, revision, date) => {
        const { header = "" } = sheetsOf(dutyText({ project, item, revision, date }, SMALL)).duty.print ?? {};
        expect(header.length).toBeLessThanOrEqual(LONGEST);
        expect(header).not.toMatch(/\p{Cs}|\n/u);
        expect(header.replaceAll("&&", "").match(/&./gu)).toEqual(["&L", "&R"]);
      }),
      { numRuns: 40 },
    );
  });

  it("say the version of the package", () => {
    expect(VERSION).toBe((JSON.parse(readFileSync("package.json", "utf8")) as { version: string }).version);
  });
});

/** A duty of head and suction alone, quickly worked out. */
const { pump: _, ...SMALL } = QUARRY;
