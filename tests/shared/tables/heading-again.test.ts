import { describe, expect, it } from "vitest";
import { curve } from "../../../shared/catalogue/parameters/curve.ts";
import { line } from "../../../shared/catalogue/parameters/line.ts";
import type { Cell } from "../../../shared/cells/cell.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { UNIT_SETS } from "../../../src/basis/quantities.ts";

type Rows = readonly (readonly Cell[])[];

const read = (rows: Rows, of: "US" | "SI" = "US") =>
  line("").read(rows, { name: "line", unitSet: of, units: UNIT_SETS[of] });
const lengths = (rows: Rows, of: "US" | "SI" = "US") => {
  const found = read(rows, of);
  return found.ok ? found.value.map(({ length }) => Number((length / UNIT_SETS[of].length.factor).toFixed(9))) : found;
};
const words = (rows: Rows) => read(rows).findings.map((finding) => findingText(finding, "US"));

const RUNS: Rows = [
  ["6in sch40", 100, "1 gate"],
  ["4in sch40", 50, null],
  ["4in sch40", 20, "1 exit"],
  ["6in sch40", 7, null],
];
const HEADS = ["pipe", "length, ft", "fittings"];

// The grammar of headings is a choice of this product; common practice, no source.
describe("a line without a heading, its columns named before the rows of a further page", () => {
  it("is read through", () => {
    const rows = [...RUNS.slice(0, 3), [null, null, null], HEADS, ...RUNS.slice(3)];
    expect(lengths(rows)).toEqual([100, 50, 20, 7]);
    expect(words(rows)).toEqual([]);
  });

  it("is read through however far down they are named, and as often as they are", () => {
    const many = Array.from({ length: 40 }, (_, i) => ["6in sch40", i + 1, null]);
    const rows = [...many, HEADS, ...many, HEADS, ...many];
    expect(lengths(rows)).toEqual([1, 2, 3].flatMap(() => many.map(([, length]) => length)));
  });

  it("says a run that cannot be read, above and below", () => {
    expect(
      words([RUNS[0] as Rows[number], ["6in sch40", null, null], ...RUNS.slice(1, 3), HEADS, ...RUNS.slice(3)]),
    ).toEqual([expect.stringMatching(/^Line row 2: length/)]);
    expect(words([...RUNS.slice(0, 3), HEADS, ["6in sch40", "far", null]])).toEqual([
      expect.stringMatching(/^Line row 5: length/),
    ]);
  });

  it("is refused where they say another unit or stand in another order", () => {
    for (const heads of [
      ["pipe", "length, m", "fittings"],
      ["fittings", "length, ft", "pipe"],
    ]) {
      const found = read([...Array.from({ length: 31 }, () => RUNS[0] as Rows[number]), heads, ...RUNS.slice(3)]);
      expect(found.ok).toBe(false);
    }
  });

  it("takes one row above a heading for a slip, as before", () => {
    expect(lengths([RUNS[0] as Rows[number], HEADS, ...RUNS.slice(1)])).toEqual([50, 20, 7]);
    expect(words([RUNS[0] as Rows[number], HEADS, ...RUNS.slice(1)])).toEqual([
      expect.stringContaining("row 1 stands above the heading and is not read"),
    ]);
  });

  it("reads its own units in SI", () => {
    const rows = [
      ["DN150 sch40", 3, null],
      ["DN150 sch40", 4, null],
      ["DN150 sch40", 5, null],
      ["pipe", "length, m", "fittings"],
      ["DN150 sch40", 6, null],
    ];
    expect(lengths(rows, "SI")).toEqual([3, 4, 5, 6]);
  });
});

describe("a heading that is said again below itself", () => {
  it("is passed over in a line", () => {
    expect(lengths([HEADS, ...RUNS.slice(0, 2), [null, null, null], HEADS, ...RUNS.slice(2)])).toEqual([
      100, 50, 20, 7,
    ]);
  });

  it("is passed over in the curve of a pump", () => {
    const heads = ["flow, gpm", "head, ft"];
    const points = (rows: Rows) => {
      const found = curve.read(rows, { name: "curve", unitSet: "US", units: UNIT_SETS.US });
      return found.ok ? found.value : found.findings;
    };
    const once = points([heads, [0, 100], [500, 80], [900, 40]]);
    expect(points([heads, [0, 100], [500, 80], heads, [900, 40]])).toEqual(once);
    expect(JSON.stringify(once)).not.toContain("error");
  });
});
