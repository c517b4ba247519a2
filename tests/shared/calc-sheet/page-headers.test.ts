import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { textWidth } from "../../../shared/ports/text-width.ts";
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
      expect(print?.header).toBe("&L&8 Dewatering A && B, P-101&R&8 Rev. C, 9 March 2026");
      expect(print?.footer).toMatch(
        new RegExp(`^&L&8 &A&C&8 .*&R&8 Dutybook ${VERSION.replaceAll(".", "\\.")}, page &P of &N$`),
      );
    }
  });

  it("keep the sentence on codes and practice where the sheet is sent, and mark the estimate", () => {
    const { duty, estimate, workings } = sheetsOf(dutyText(ISSUE, QUARRY));
    for (const { print } of [duty, workings]) {
      expect(print?.footer).toContain("&C&8 An aid to estimating: local codes and licensed practice govern&R");
    }
    expect(estimate?.print?.footer).toContain("&C&8 Internal: not for issue&R");
  });

  it("say nothing where nothing was stated", () => {
    const { duty } = sheetsOf(dutyText({ project: "", item: "", revision: "", date: "" }, QUARRY));
    expect(duty.print?.header).toBe("&L&8 &R&8 ");
  });

  it("hold in Excel's length whatever is typed, no mark of ours and no letter cut apart", () => {
    const text = fc.string({ unit: fc.constantFrom("&", "a", "\n", "💧", "9", " "), maxLength: 400 });
    fc.assert(
      fc.property(text, text, text, text, (project, item, revision, date) => {
        const { header = "" } = sheetsOf(dutyText({ project, item, revision, date }, SMALL)).duty.print ?? {};
        expect(header.length).toBeLessThanOrEqual(LONGEST);
        expect(header).not.toMatch(/\p{Cs}|\n/u);
        expect(header.replaceAll("&&", "").match(/&./gu)).toEqual(["&L", "&8", "&R", "&8"]);
      }),
      { numRuns: 40 },
    );
  });

  it("cut a long project, and neither item, revision nor date, where they would run into one another", () => {
    const project =
      "Temporary dewatering and process water relocation for the northern extension of the quarry, phase 2";
    const rest = { item: "P-101A/B and spare P-101C", revision: "P3", date: "29 November 2026" };
    const { header = "" } = sheetsOf(dutyText({ project, ...rest, paper: "A4" }, SMALL)).duty.print ?? {};
    expect(header).toMatch(
      /^&L&8 Temporary dewatering and .*…, P-101A\/B and spare P-101C&R&8 Rev. P3, 29 November 2026$/,
    );
    const [left = "", right = ""] = header.split("&R").map((text) => text.replace(/^(?:&L)?&8 /, ""));
    // A4 less 0.4 in at either side: 595.3 − 57.6 pt.
    expect(textWidth(left, { size: 8 }) + textWidth(right, { size: 8 })).toBeLessThan(537.7 - 10);
    expect(textWidth(left, { size: 8 }) + textWidth(right, { size: 8 })).toBeGreaterThan(537.7 - 30);
  });

  it("leave room between the name of a sheet, the sentence in the middle, and the number of the page", () => {
    const { all } = sheetsOf(dutyText({ item: "P-101A/B and spare P-101C of the north", paper: "A4" }, SMALL));
    for (const { name, print } of all) {
      const [left, middle, right] = (print?.footer ?? "")
        .replace("&A", name)
        .replace("&P of &N", "16 of 16")
        .split(/&[LCR]&8 /)
        .slice(1)
        .map((text) => textWidth(text, { size: 8 })) as [number, number, number];
      expect(Math.max(left, right)).toBeLessThan((523 - middle) / 2 - 6);
    }
  });

  it("say the version of the package", () => {
    expect(VERSION).toBe((JSON.parse(readFileSync("package.json", "utf8")) as { version: string }).version);
  });
});

/** A duty of head and suction alone, quickly worked out. */
const { pump: _, ...SMALL } = QUARRY;
