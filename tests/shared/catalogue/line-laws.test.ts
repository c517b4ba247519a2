import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../../shared/cells/cell.ts";
import { cell, numberIn, remarks } from "../../support/cells.ts";

type Row = readonly Cell[];
type Rows = readonly Row[];

const PIPES = [
  "8in sch40",
  "10in HDPE DR17",
  "6in rubber suction hose",
  "8in sch40 C 120",
  "ID 154.1 mm rough 0.045 mm",
] as const;

/** Runs as typed: pipe, length, elbows and exits, share. */
const run = fc.record({
  pipe: fc.constantFrom(...PIPES),
  length: fc.integer({ min: 10, max: 3000 }),
  elbows: fc.integer({ min: 0, max: 6 }),
  share: fc.constantFrom("", "all", 1, "1/2", "1/3", 0.5, "2/3"),
});
const lineOf = fc.array(run, { minLength: 1, maxLength: 4 });
const flow = fc.integer({ min: 50, max: 3000 });

type Run = { readonly pipe: string; readonly length: number; readonly elbows: number; readonly share: Cell };

const rowOf = ({ pipe, length, elbows, share }: Run): Row => [pipe, length, `${elbows} elbow 90 long`, share];

/** The same line with each run cut at a part of its length, its fittings in the second piece. */
function cut(runs: readonly Run[], at: number): Rows {
  return runs.flatMap(({ pipe, length, elbows, share }) => [
    [pipe, length * at, null, share],
    [pipe, length * (1 - at), `${elbows} elbow 90 long`, share],
  ]);
}

const SUCTION: Rows = [["10in sch40", 20, "1 entrance flush"]];
const EXIT: Row = ["8in sch40", 1, "1 exit"];

/** What functions make of a line: the last grade of its route too. */
const ANSWERS: Readonly<Record<string, (flow: number, line: Rows) => readonly number[]>> = {
  LINEHEAD: (q, line) => [numberIn("LINEHEAD", q, line)],
  TDH: (q, line) => [numberIn("TDH", q, 40, SUCTION, [...line, EXIT])],
  NPSHA: (q, line) => [numberIn("NPSHA", q, 5, line)],
  SYSTEMCURVE: (q, line) =>
    (cell("SYSTEMCURVE", 40, line, [EXIT], q, 4) as number[][]).slice(1).map((row) => row[1] as number),
};

function expectSame(found: readonly number[], due: readonly number[]): void {
  expect(found.length).toBe(due.length);
  for (const [i, value] of found.entries()) {
    expect(Math.abs(value - (due[i] as number))).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(due[i] as number)));
  }
}

describe("a line", () => {
  it.each(Object.keys(ANSWERS))("cut into more rows leaves the answer of %s", (name) => {
    const answer = ANSWERS[name] as (flow: number, line: Rows) => readonly number[];
    fc.assert(
      fc.property(flow, lineOf, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (q, runs, at) => {
        expectSame(answer(q, cut(runs, at)), answer(q, runs.map(rowOf)));
      }),
      { numRuns: 25 },
    );
  });

  it.each(Object.keys(ANSWERS))("carries all with a blank, a 1 and “all” alike in %s", (name) => {
    const answer = ANSWERS[name] as (flow: number, line: Rows) => readonly number[];
    fc.assert(
      fc.property(flow, lineOf, (q, runs) => {
        const with_ = (share: Cell): Rows => runs.map((one) => rowOf({ ...one, share }));
        for (const share of [null, 1, "all", "100 %"]) expectSame(answer(q, with_(share)), answer(q, with_("")));
      }),
      { numRuns: 15 },
    );
  });

  it.each(["LINEHEAD", "TDH", "NPSHA", "SYSTEMCURVE"])(
    "has the same answer of %s whatever levels lie between",
    (name) => {
      const answer = ANSWERS[name] as (flow: number, line: Rows) => readonly number[];
      fc.assert(
        fc.property(
          flow,
          lineOf,
          fc.array(fc.integer({ min: -4, max: 4 }), { minLength: 4, maxLength: 4 }),
          (q, runs, levels) => {
            const plain = runs.map(rowOf);
            expectSame(
              answer(
                q,
                plain.map((row, i) => [...row, levels[i] as number]),
              ),
              answer(q, plain),
            );
          },
        ),
        { numRuns: 25 },
      );
    },
  );

  it("cut into more rows leaves its grade line, at the places of before", () => {
    fc.assert(
      fc.property(flow, lineOf, fc.double({ min: 0.2, max: 0.8, noNaN: true }), (q, runs, at) => {
        const levels = runs.map((_, i) => 10 + 3 * i);
        const whole = runs.map((one, i) => [...rowOf(one), levels[i] as number]);
        const pieces = runs.flatMap((one, i) => {
          const [first, second] = cut([one], at) as [Row, Row];
          const before = i === 0 ? 8 : (levels[i - 1] as number);
          return [
            [...first, before + at * ((levels[i] as number) - before)],
            [...second, levels[i] as number],
          ];
        });
        const ask = (line: Rows): readonly (readonly Cell[])[] =>
          (cell("GRADELINE", q, line, null, "water", null, 8, 20) as Cell[][]).slice(1);
        const [one, two] = [ask(whole), ask(pieces)];
        expect(two.length).toBe(2 * one.length - 1);
        for (const [i, row] of one.entries()) {
          expectSame(
            (two[2 * i] as Cell[]).filter((value) => typeof value === "number"),
            row.filter((value) => typeof value === "number"),
          );
        }
      }),
      { numRuns: 20 },
    );
  });
});

describe("a row that carries another part of the flow than one of equal runs", () => {
  const asked = (...rows: Rows): boolean => {
    const whole = rows.map((row) => Array.from({ length: 5 }, (_, i) => row[i] ?? null));
    return remarks("LINEHEAD", 1000, whole).includes("check share-leaves-a-rest");
  };
  const lone = (share: Cell, pipe = "8in sch40", fittings = ""): boolean => asked([pipe, 500, fittings, share]);

  it("is asked about where nothing beside it makes up the whole", () => {
    for (const share of ["62 %", 0.62, "2/3", "33 %", "99 %"]) expect(lone(share), String(share)).toBe(true);
    for (const share of ["", "all", "1/2", "50 %", "1/3", "33.3 %", 0.25])
      expect(lone(share), String(share)).toBe(false);
    expect(asked(["8in sch40", 500, "", 0.62], ["10in sch40", 10], ["6in sch40", 500, "", 0.38])).toBe(true);
    expect(asked(["8in sch40", 40, "", 0.62], ["8in HDPE DR17", 500, "", 0.62])).toBe(true);
  });

  it("is not where it is header, or the row behind it makes up the whole and is asked about so", () => {
    expect(lone("62 %", "8in sch40 header")).toBe(false);
    expect(lone("62 %", "8in sch40", "header, 1 gate")).toBe(false);
    expect(asked(["8in sch40", 500, "", "62 %"], ["6in sch40", 300, "", "38 %"])).toBe(false);
  });

  it("is asked in words, once for the rows that follow one another", () => {
    const note = (...rows: Rows): string => String(cell("NOTES", "LINEHEAD", 1000, [...rows.map((row) => [...row])]));
    expect(note(["10in sch40", 20, "", ""], ["8in sch40", 500, "", "62 %"])).toContain(
      "row 2 carries 62 % of the flow: does the rest, 38 %, flow in another run beside it?",
    );
    expect(note(["8in sch40", 40, "", "62 %"], ["8in HDPE DR17", 500, "", "62 %"])).toContain(
      "rows 1 and 2 carry 62 % of the flow: does the rest, 38 %,",
    );
  });
});

describe("rows that look as if they stood side by side", () => {
  const said = (...rows: Rows): boolean => {
    const whole = rows.map((row) => Array.from({ length: 5 }, (_, i) => row[i] ?? null));
    return remarks("LINEHEAD", 1000, whole).includes("check rows-side-by-side");
  };

  it("are doubted where unlike shares make up the whole", () => {
    expect(said(["8in sch40", 500, "", "62 %"], ["6in sch40", 300, "", "38 %"])).toBe(true);
    expect(said(["8in sch40", 500, "", 0.5], ["6in sch40", 300, "", 0.3], ["4in sch40", 400, "", 0.2])).toBe(true);
    expect(said(["10in sch40", 20], ["8in sch40", 500, "", 0.7], ["6in sch40", 900, "", 0.3], ["10in sch40", 20])).toBe(
      true,
    );
    for (const other of [0.371, 0.389]) {
      expect(said(["8in sch40", 500, "", 0.62], ["6in sch40", 500, "", other]), String(other)).toBe(true);
    }
    for (const other of [0.369, 0.391]) {
      expect(said(["8in sch40", 500, "", 0.62], ["6in sch40", 500, "", other]), String(other)).toBe(false);
    }
  });

  it("are doubted where halves are as long as one another, a tenth apart at most", () => {
    const halves = (length: number, pipe = "10in HDPE DR17"): boolean =>
      said(["8in sch40", 500, "", "1/2"], [pipe, length, "", "1/2"]);
    expect([halves(500), halves(500, "8in sch40"), halves(550), halves(455)]).toEqual([true, true, true, true]);
    expect([halves(551), halves(450), halves(40)]).toEqual([false, false, false]);
    const third = (length: number): Row => ["8in sch40", length, "", "1/3"];
    expect([said(third(50), third(50), third(50)), said(third(50), third(50))]).toEqual([true, false]);
  });

  it("are not where the whole flow lies between, a header is named, or their levels tell that they follow", () => {
    expect(said(["8in sch40", 500, "", 0.62], ["10in sch40", 10], ["6in sch40", 500, "", 0.38])).toBe(false);
    expect(said(["8in sch40", 50, "", "1/3"], ["12in sch40 header", 50, "", "2/3"])).toBe(false);
    expect(said(["8in sch40", 50, "", "1/3"], ["12in sch40", 50, "", "2/3"])).toBe(true);
    expect(said(["8in sch40", 500, "", "1/2", 10], ["8in sch40", 500, "", "1/2", 20])).toBe(false);
    expect(said(["8in sch40", 500, "", "1/2", 20], ["6in sch40", 500, "", "1/2", 20])).toBe(true);
  });

  it("are told with the shares that PARALLELRUNS finds", () => {
    const rows: Rows = [
      ["8in sch40", 500],
      ["6in sch40", 300],
    ];
    const found = cell("PARALLELRUNS", 1100, rows) as number[][];
    const shares = found.slice(1).map((row) => `${Math.round((row[2] as number) * 100)} %`);
    const [first, second] = rows as [Row, Row];
    const notes = cell("NOTES", "LINEHEAD", 1100, [
      [...first, "", 0.55],
      [...second, "", 0.45],
    ]);
    expect(JSON.stringify(notes)).toContain(`(about ${shares.join(" and ")}`);
    expect(JSON.stringify(notes)).toContain("A line is one path");
  });
});
