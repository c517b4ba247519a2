import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LINE_COLUMNS, pastedCells } from "../../../taskpane/pane/line-paste.ts";

describe("cells for a line", () => {
  it("are rows and columns as a spreadsheet copies them, without a row of headings", () => {
    const text = "Pipe\tLength, ft\tFittings\r\n8in sch40\t20\t1 gate\r\n10in HDPE DR17\t1800\t\r\n";
    expect(pastedCells(text, "pipe")).toEqual([
      ["8in sch40", "20", "1 gate"],
      ["10in HDPE DR17", "1800", ""],
    ]);
  });

  it("are none where one cell is pasted, which its box takes as any text", () => {
    expect(pastedCells("8in sch40", "pipe")).toBeUndefined();
    expect(pastedCells("8in sch40\n", "pipe")).toBeUndefined();
  });

  it("are none where they reach beyond the last box", () => {
    expect(pastedCells("1\t2", "level")).toBeUndefined();
    expect(pastedCells("each\t12", "share")).toEqual([["each", "12"]]);
  });

  it("lose no letter but blanks at their ends, whatever is copied", () => {
    const cell = fc.stringMatching(/^[a-z0-9 ,"']{0,8}x$/);
    const rows = fc.array(fc.array(cell, { minLength: 2, maxLength: LINE_COLUMNS.length }), {
      minLength: 1,
      maxLength: 5,
    });
    fc.assert(
      fc.property(rows, (cells) => {
        const text = cells.map((row) => row.join("\t")).join("\n");
        expect(pastedCells(text, "pipe")).toEqual(cells.map((row) => row.map((each) => each.trim())));
      }),
    );
  });
});
