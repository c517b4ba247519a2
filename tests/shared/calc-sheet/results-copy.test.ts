import { describe, expect, it } from "vitest";
import { customerCopy } from "../../../shared/calc-sheet/duty-sheets.ts";
import { COLUMNS } from "../../../shared/calc-sheet/layout/columns.ts";
import { copyName } from "../../../shared/calc-sheet/layout/sheets.ts";
import { isInternal } from "../../../shared/calc-sheet/sections/estimate.ts";
import { type Cell, isCellError } from "../../../shared/cells/cell.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { FIELD_KEYS } from "../../../shared/duty/fields.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { boxOf } from "../../../shared/ports/a1.ts";
import { validSheetName } from "../../../shared/ports/sheet-name.ts";
import type { SheetSet } from "../../../shared/ports/sheet-set.ts";
import { bookOfSet } from "../../../shared/xlsx/book-of-set.ts";
import { readWorkbook } from "../../../shared/xlsx/read-workbook.ts";
import { dutyText, type Fields, QUARRY } from "../../support/duty-of.ts";
import { setOfDuty, sheetsOf } from "../../support/laid-out.ts";
import { partsOf } from "../xlsx/parts.ts";

const DATE = "2026-03-09";

/**
 * The cells of each row below the legend that says anything, in order: a heading repeated at the top of a page stands
 * elsewhere where a sheet has a row more, and so has what each of the two says of itself alone.
 */
function linesOf(
  cells: readonly (readonly [at: { readonly top: number; readonly left: number }, value: Cell])[],
): readonly (readonly string[])[] {
  const rows = new Map<number, string[]>();
  for (const [{ top, left }, value] of cells.toSorted(([a], [b]) => a.top - b.top || a.left - b.left)) {
    if (top < 2 || left >= COLUMNS.length || value === null || value === "") continue;
    rows.set(top, [...(rows.get(top) ?? []), `${left}: ${isCellError(value) ? value.error : value}`]);
  }
  const ofOneAlone = /, continued$|: Opens again|: Inputs as written/;
  return [...rows.values()].filter((texts) => !texts.some((text) => ofOneAlone.test(text)));
}

function copyOf(typed: DutyText): SheetSet {
  const set = customerCopy(typed, DATE);
  if (!set.ok) throw new Error(JSON.stringify(set.findings));
  return set.value;
}

const partsOfCopy = (typed: DutyText): Readonly<Record<string, string>> => partsOf(bookOfSet(copyOf(typed)).bytes);

const pointsIn = (chart = ""): readonly string[] => [...chart.matchAll(/<c:pt .*?<\/c:pt>/g)].map(([point]) => point);
const refsIn = (chart = ""): readonly string[] =>
  [...chart.matchAll(/<c:f>(.*?)<\/c:f>/g)].map(([, reference = ""]) => reference);
const chartsOf = (parts: Readonly<Record<string, string>>): readonly string[] =>
  Object.keys(parts)
    .filter((path) => path.startsWith("xl/charts/"))
    .map((path) => parts[path] ?? "");

describe.each(SAMPLE_DUTIES)("a copy of the results: $name", ({ duty }) => {
  const set = copyOf(duty);
  const { bytes, sheetNames } = bookOfSet(set);
  const parts = partsOf(bytes);
  const page = parts["xl/worksheets/sheet1.xml"] ?? "";

  it("is one sheet without a formula, a choice or a cell that may be changed, and is protected", () => {
    expect(Object.keys(parts).filter((path) => path.startsWith("xl/worksheets/sheet"))).toHaveLength(1);
    expect(page).not.toMatch(/<f[ >]/);
    expect(page).toMatch(/<\/sheetData><sheetProtection sheet="1" objects="1" scenarios="1"\/>/);
    expect(page).not.toContain("<dataValidation");
    expect(parts["xl/styles.xml"]).not.toContain('locked="0"');
    // The shading of inputs.
    expect(parts["xl/styles.xml"]).not.toContain("FFF7DC");
    for (const [, rule] of page.matchAll(/<formula>(.*?)<\/formula>/g)) expect(rule).not.toContain("!$");
    const names = [...(parts["xl/workbook.xml"] ?? "").matchAll(/<definedName name="([^"]*)"/g)].map(
      ([, name]) => name,
    );
    expect(names).toEqual(["_xlnm.Print_Area", "_xlnm.Print_Titles"]);
  });

  it("shows what the live sheet prints, cell by cell, and nothing that stands below", () => {
    const live = sheetsOf(duty).duty;
    const { bottom } = boxOf(live.print?.area ?? "A1");
    const printed = live.cells.filter(({ at }) => boxOf(at).top <= bottom);
    expect(printed.length).toBeLessThan(live.cells.length);
    const shown = linesOf(
      printed.map(({ at, v, f, cached }) => [boxOf(at), (f === undefined ? v : (cached as Cell)) ?? null] as const),
    );
    const outcome = readWorkbook(bytes);
    if (!outcome.ok) throw new Error(outcome.refusal.message);
    const [copied] = outcome.workbook.sheets;
    const read = linesOf(
      (copied?.rows ?? []).flatMap(({ cells }) =>
        cells.map(({ row, column, value }) => [{ top: row, left: column }, value] as const),
      ),
    );
    expect(read).toEqual(shown);
    expect(shown.flat().filter((text) => /: -?\d/.test(text)).length).toBeGreaterThan(80);
  });

  it("draws its charts of its own cells, point for point as the live sheet does", () => {
    const live = sheetsOf(duty);
    const all = bookOfSet({ wanted: live.all.map(({ name }) => name), sheets: () => live.all });
    const [was, is] = [chartsOf(partsOf(all.bytes)), chartsOf(parts)];
    expect(is.length).toBeGreaterThan(0);
    expect(is.map(pointsIn)).toEqual(was.map(pointsIn));
    for (const reference of is.flatMap(refsIn)) expect(reference).toMatch(new RegExp(`^'${sheetNames[0]}'!`));
  });

  it("is set up to print as the live sheet is", () => {
    const setUp = (sheet = ""): string => /<pageMargins.*<\/headerFooter>/.exec(sheet)?.[0] ?? "";
    // The sheet of the duty is the first of the live ones.
    const livePage = partsOf(bookOfSet(setOfDuty(duty)).bytes)["xl/worksheets/sheet1.xml"];
    expect(setUp(page)).toMatch(/<pageSetup paperSize="[19]" scale="\d+" orientation="portrait"\/>/);
    expect(setUp(page)).toMatch(/page &amp;P of &amp;N/i);
    expect(setUp(page)).toBe(setUp(livePage));
    expect(page).toContain("<rowBreaks");
  });

  it("says what it is, and is called by its tag and revision", () => {
    const revision = duty.fields.revision;
    const [sheet] = set.sheets(set.wanted);
    expect(sheet?.cells.find(({ at }) => at === "A2")?.v).toBe(
      `Copy of results, ${DATE}, revision ${revision}: nothing here recalculates.`,
    );
    expect(sheetNames).toEqual([`Duty ${duty.fields.item} copy ${revision}`]);
  });
});

describe("what is for nobody outside", () => {
  const PRICED: Fields = {
    currency: "ZZD",
    tariff: "0.13579",
    fuelPrice: "3.9137 per US gal",
    directCost: "46001.37",
    overhead: "11.357",
    contingency: "4.1357",
    margin: "21.5731",
    firstCost: "71357.9",
    yearlyUpkeep: "1357.91",
    years: "13",
    discountRate: "4.7913",
  };
  const priced = dutyText(PRICED, QUARRY);
  const told = Object.fromEntries(FIELD_KEYS.filter(isInternal).map((key) => [key, "told by nobody outside"]));
  const basis = { ...QUARRY.basis, ...told };

  it("leaves no trace: with other prices the copy is the same to the byte", () => {
    const changed = FIELD_KEYS.filter(isInternal).map((key) => [key, key === "fuelPrice" ? "2.2 per US gal" : "7"]);
    const other: Fields = { ...PRICED, ...Object.fromEntries(changed), currency: "QQD" };
    const [one, two] = [bookOfSet(copyOf(priced)), bookOfSet(copyOf({ ...dutyText(other, QUARRY), basis }))];
    expect(partsOf(one.bytes)).toEqual(partsOf(two.bytes));
    expect(one.bytes).toEqual(two.bytes);
  });

  it("is in no part of the file: no price, no figure of the estimate, no word of it, no record", () => {
    const parts = partsOfCopy({ ...priced, basis });
    const text = Object.values(parts).join("\n");
    for (const typed of Object.values(PRICED)) if (typed.length > 3) expect(text, typed).not.toContain(typed);
    for (const words of ["ZZD", "Selling price", "rofit", "stimate</", "Internal", "told by nobody", "record "])
      expect(text, words).not.toContain(words);
    expect(Object.keys(parts).filter((path) => /customXml|comments|externalLink|metadata|sheet2/.test(path))).toEqual(
      [],
    );
    const figures = (sheetsOf(priced).estimate?.cells ?? []).flatMap(({ cached }) => [cached].flat(2));
    const telling = figures.filter((one): one is number => typeof one === "number" && !Number.isInteger(one * 100));
    expect(telling.length).toBeGreaterThan(20);
    const held = new Set([...text.matchAll(/<v>([^<]*)<\/v>/g)].map(([, value]) => value));
    const live = new Set(sheetsOf(QUARRY).duty.cells.map(({ cached }) => cached));
    for (const figure of telling) if (!live.has(figure)) expect(held.has(String(figure)), String(figure)).toBe(false);
  });
});

describe("the name of a copy", () => {
  it.each([
    ["P-101", "B", "Duty P-101 copy B"],
    ["P-101", " ", "Duty P-101 copy"],
    ["", "", "Duty copy"],
    ["P-101A/B", "0/1", "Duty P-101A B copy 0 1"],
    ["Dewatering pump set number 4", "B", "Duty Dewatering pump copy B"],
    ["'", "as issued to site", "Duty copy as issue"],
  ])("of “%s”, revision “%s”", (tag, revision, name) => {
    expect(copyName({ tag, issue: { revision } })).toBe(name);
    expect(validSheetName(name)).toBe(name);
  });
});
