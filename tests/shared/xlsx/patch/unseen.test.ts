import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { unseenIn } from "../../../../shared/xlsx/patch/unseen.ts";

const listed = (name: string): Readonly<Record<string, readonly string[]>> => {
  const path = fileURLToPath(new URL(`../workbooks/${name}.xlsx`, import.meta.url));
  const unseen = unseenIn(new Uint8Array(readFileSync(path)));
  return Object.fromEntries(unseen.map(({ sheet = "all", things }) => [sheet, things]));
};

// What the programs were told to write into each workbook.
describe("what a file holds and a grid of cells does not show", () => {
  it("is counted sheet by sheet: charts, pictures, texts, notes, links, sparklines, a sheet of a chart alone", () => {
    expect(listed("xlsxwriter-drawings")).toEqual({
      Data: ["3 charts", "1 picture", "1 shape or text box", "2 comments", "2 links", "1 sparkline"],
      "Chart alone": ["the sheet itself: it has no cells"],
    });
  });

  it("takes in rules, tables, protection and filters, but neither lists nor formats with a formula", () => {
    expect(listed("xlsxwriter-rules")).toEqual({
      Rules: [
        "1 table",
        "protection",
        "filter",
        "6 input rules that are no lists",
        "7 conditional formats without a formula",
      ],
    });
  });

  it("takes in pivot tables, other workbooks, hidden sheets and protection of a single sheet", () => {
    expect(listed("libreoffice-pivot")).toEqual({
      Data: ["1 chart", "1 comment", "1 hidden row", "outline", "tab colour", "page set-up"],
      Pivot: ["1 pivot table", "protection", "page set-up"],
      Secret: ["the sheet itself, hidden", "page set-up"],
      all: ["1 link to another workbook"],
    });
  });

  it("takes in names of the workbook, hidden rows and columns, outline and frozen columns", () => {
    expect(listed("xlsxwriter-set-up")).toEqual({
      Main: ["1 hidden row", "hidden columns", "outline", "frozen columns", "tab colour", "page set-up"],
      Hidden: ["the sheet itself, hidden"],
      Deep: ["the sheet itself, hidden"],
      all: ["3 workbook names"],
    });
  });

  it("is nothing where all of it shows", () => {
    expect(listed("xlsxwriter-1904")).toEqual({});
  });
});
