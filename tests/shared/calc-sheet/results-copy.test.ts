import { describe, expect, it } from "vitest";
import { dutySheets } from "../../../shared/calc-sheet/duty-sheets.ts";
import { type ResultsCopy, resultsCopy } from "../../../shared/calc-sheet/results-copy.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { writeWorkbook } from "../../../shared/xlsx/write-workbook.ts";
import { dutyText, QUARRY } from "../../support/duty-of.ts";
import { partsOf } from "../xlsx/parts.ts";

function copyOf(typed: DutyText, revision = "B"): ResultsCopy {
  const set = dutySheets(typed);
  if (!set.ok) throw new Error(JSON.stringify(set.findings));
  return resultsCopy(set.value, { date: "2026-03-09", revision });
}

function fileOf(typed: DutyText): Readonly<Record<string, string>> {
  const copy = copyOf(typed);
  return partsOf(writeWorkbook({ sheets: copy.sheets(copy.wanted), form: "values", shown: copy.shown }));
}

describe("a copy of the results", () => {
  it.each(SAMPLE_DUTIES)("holds no formula and no cell that may be changed: $name", ({ duty }) => {
    const parts = fileOf(duty);
    const sheets = Object.entries(parts).filter(([path]) => path.startsWith("xl/worksheets/sheet"));
    expect(sheets.length).toBeGreaterThanOrEqual(2);
    for (const [path, text] of sheets) {
      expect(text, path).not.toMatch(/<f[ >]/);
      expect(text, path).toMatch(/<\/sheetData><sheetProtection sheet="1" objects="1" scenarios="1"\/>/);
      expect(text, path).not.toContain("<dataValidation");
    }
    expect(parts["xl/styles.xml"]).not.toContain('locked="0"');
    // The shading of inputs.
    expect(parts["xl/styles.xml"]).not.toContain("FFF7DC");
    expect(Object.keys(parts)).not.toContain("xl/metadata.xml");
  });

  it("shows what the live sheet shows, its spilled tables too", () => {
    const live = dutySheets(QUARRY);
    if (!live.ok) throw new Error("the sample is not complete");
    const form = { sheets: live.value.sheets(live.value.wanted) };
    // Cells without a type are numbers.
    const numbers = (text = ""): readonly string[] =>
      [...text.matchAll(/<c r="([A-Z]+\d+)"(?: s="\d+")?(?: cm="1")?>(?:<f[^>]*>[^<]*<\/f>)?<v>([^<]*)<\/v>/g)].map(
        ([, at, value]) => `${at} ${value}`,
      );
    const kept = partsOf(writeWorkbook({ ...form, form: "add-in" }));
    const copied = fileOf(QUARRY);
    expect(numbers(kept["xl/worksheets/sheet1.xml"]).length).toBeGreaterThan(300);
    expect(numbers(copied["xl/worksheets/sheet1.xml"])).toEqual(numbers(kept["xl/worksheets/sheet1.xml"]));
    // The workings stand third among the live sheets.
    expect(numbers(copied["xl/worksheets/sheet2.xml"])).toEqual(numbers(kept["xl/worksheets/sheet3.xml"]));
  });

  it("carries nothing of the estimate", () => {
    const text = Object.values(fileOf(dutyText({ directCost: "46001", margin: "21.5731" }, QUARRY))).join("\n");
    for (const words of ["46001", "21.5731", "Selling price", "Profit", "estimate</", "Internal"]) {
      expect(text, words).not.toContain(words);
    }
  });

  it("says what it is, and hides what is there for its charts alone", () => {
    const copy = copyOf(QUARRY);
    expect(copy.wanted).toEqual(["Duty P-101", "P-101 workings"]);
    expect(copy.shown).toBe(1);
    for (const { cells } of copy.sheets(copy.wanted)) {
      expect(cells.find(({ at }) => at === "A2")?.v).toBe(
        "Copy of results, 2026-03-09, revision B: nothing here recalculates.",
      );
    }
    const unsaid = copyOf(QUARRY, " ");
    expect(unsaid.sheets(unsaid.wanted)[0]?.cells.find(({ at }) => at === "A2")?.v).toBe(
      "Copy of results, 2026-03-09: nothing here recalculates.",
    );
    const parts = fileOf(QUARRY);
    expect(parts["xl/workbook.xml"]).toContain('<sheet name="P-101 workings" sheetId="2" state="hidden"');
    const charts = Object.entries(parts).filter(([path]) => path.startsWith("xl/charts/"));
    expect(charts.length).toBeGreaterThan(3);
    for (const [path, text] of charts) {
      expect(text, path).toContain("<c:pt idx=");
      expect(text, path).toContain('<c:plotVisOnly val="0"/>');
    }
  });
});
