import { describe, expect, it } from "vitest";
import { type FunctionHost, registerFunctions } from "../../functions/register.ts";
import { MOST_ROWS } from "../../functions/whole-columns.ts";
import { SAMPLES } from "../support/sample-entries.ts";

type Answer = (...raw: unknown[]) => unknown;

const answers = new Map<string, Answer>();
const host: FunctionHost = { associate: (id, answer) => answers.set(id, answer) };
registerFunctions(host, SAMPLES);

const sum = answers.get("SUMOFHEADS") as Answer;

/** Of a sheet of Excel. */
const SHEET_ROWS = 1_048_576;

function column(rows: number, cellAt: (row: number) => unknown): readonly (readonly unknown[])[] {
  return Array.from({ length: rows }, (_, row) => [cellAt(row)]);
}

function answerTo(...raw: unknown[]): readonly (readonly unknown[])[] {
  return sum(...raw) as readonly (readonly unknown[])[];
}

describe("a whole column", () => {
  it.each([
    { as: "null", blank: null },
    { as: "an empty text", blank: "" },
    { as: "a data type", blank: { type: "Empty", basicValue: "" } },
  ])("is answered as far as it is filled, blanks handed over as $as", ({ blank }) => {
    const flows = column(SHEET_ROWS, (row) => (row < 3 ? row + 1 : blank));
    const rows = answerTo(flows, 10, null);
    expect(rows).toHaveLength(3);
    for (const [row, [cell]] of rows.entries()) expect(cell).toBeCloseTo(row + 11, 9);
  });

  it("is answered as far as the longest of several is filled", () => {
    const three = column(SHEET_ROWS, (row) => (row < 3 ? 1 : null));
    const two = column(SHEET_ROWS, (row) => (row < 2 ? 10 : null));
    const rows = answerTo(three, two, null);
    expect(rows).toHaveLength(3);
    expect(rows[1]?.[0]).toBeCloseTo(11, 9);
    expect(String(rows[2]?.[0])).toContain("Second head");
  });

  it("without a single figure is an argument left out", () => {
    const blank = column(SHEET_ROWS, () => null);
    expect(() => answerTo(blank, 2, null)).toThrow("First head");
  });

  it("is refused in words where Excel on the desktop hands its blank cells over as 0", () => {
    const flows = column(SHEET_ROWS, (row) => (row < 3 ? 1 : 0));
    expect(() => answerTo(flows, 2, null)).toThrow(
      "First head has 1,048,576 rows; a call takes at most 100,000. Give the filled rows alone, such as A2:A500 in place of A:A.",
    );
  });
});

describe("a long column", () => {
  it("is answered up to the rows stated, and refused from one more, by its own name", () => {
    expect(
      answerTo(
        column(MOST_ROWS, () => 1),
        2,
        null,
      ),
    ).toHaveLength(100_000);
    expect(() =>
      answerTo(
        2,
        column(MOST_ROWS + 1, () => 1),
        null,
      ),
    ).toThrow("Second head has 100,001 rows");
  });

  it("keeps its blank rows at the end, each told in its own row, as long as it is no whole column", () => {
    const rows = answerTo([[1], [null], [null]], 2, null);
    expect(rows).toHaveLength(3);
    expect(String(rows[2]?.[0])).toContain("First head");
  });
});
