import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../../shared/cells/cell.ts";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";
import { expectAsPrinted } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";

type Rows = readonly (readonly Cell[])[];

const caseOf = (id: string) => {
  const found = publishedCases("6-shares").find((one) => one.id === id);
  if (found === undefined) throw new Error(`no case ${id}`);
  return found;
};

/** A column of a spilled answer by its heading. */
function column(rows: unknown, heading: RegExp): readonly number[] {
  const [head, ...body] = rows as readonly (readonly Cell[])[];
  const at = (head as readonly Cell[]).findIndex((name) => heading.test(String(name)));
  return body.map((row) => row[at] as number);
}

describe("PARALLELRUNS", () => {
  it("share-005: divides a flow between pipes of 4 and 8 cm", () => {
    const of = caseOf("share-005");
    const pipes = [
      ["ID 4 cm rough 0.045 mm", 36],
      ["ID 8 cm rough 0.045 mm", 36],
    ];
    const found = cell("PARALLELRUNS", "0.0300122005 m3/s", pipes, "998 kg/m3, 1.002 cP", null, "SI");
    const [small, large] = column(found, /^flow/) as [number, number];
    expectAsPrinted(small / 1000, "flow_4cm", of);
    expectAsPrinted(large / 1000, "flow_8cm", of);
    for (const head of column(found, /head/)) expectAsPrinted(head, "head_lost", of);
    expect(column(found, /share/)).toEqual([
      expect.closeTo(small / 30.0122005, 9),
      expect.closeTo(large / 30.0122005, 9),
    ]);
    // 0.00415138 m³/s through 4 cm and 0.0258608 through 8 cm, by hand.
    expect(column(found, /velocity/)).toEqual([expect.closeTo(3.3036, 3), expect.closeTo(5.1448, 3)]);
  });

  it("share-007: divides a flow by Hazen–Williams", () => {
    const pipes = [
      ["ID 300 mm C 120", 3000],
      ["ID 200 mm C 120", 1300],
      ["ID 250 mm C 120", 2600],
    ];
    const flows = column(cell("PARALLELRUNS", "0.22944 m3/s", pipes, "water", 15, "SI"), /^flow/);
    for (const [i, flow] of flows.entries()) expectAsPrinted(flow / 1000, `Q${i + 1}`, caseOf("share-007"));
  });

  it("gives twins what a row with share 1/2 counts on", () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 5000 }), fc.integer({ min: 2, max: 4 }), (flow, n) => {
        const hose = ["6in layflat", 500, "2 camlock"];
        const found = cell(
          "PARALLELRUNS",
          flow,
          Array.from({ length: n }, () => hose),
        );
        const shared = numberIn("LINEHEAD", flow, [[...hose, `1/${n}`]]);
        for (const head of column(found, /head/)) expect(Math.abs(head / shared - 1)).toBeLessThan(1e-9);
        for (const share of column(found, /share/)) expect(share).toBeCloseTo(1 / n, 9);
      }),
      { numRuns: 30 },
    );
  });

  it("has the head of each run as a line with its share", () => {
    const runs: Rows = [
      ["8in sch40", 500, "1 gate, 2 elbow 90 long"],
      ["6in sch40 C 120", 420, "1 gate"],
      ["10in HDPE DR17", 900, null],
    ];
    const found = cell("PARALLELRUNS", 2000, runs);
    const [shares, heads] = [column(found, /share/), column(found, /head/)];
    for (const [i, run] of runs.entries()) {
      expect(numberIn("LINEHEAD", 2000, [[...run, shares[i] as number]])).toBeCloseTo(heads[i] as number, 9);
    }
  });

  it("takes rows of one name for one run, and names it", () => {
    const found = cell("PARALLELRUNS", 1000, [
      ["run", "pipe", "length, ft", "fittings"],
      ["north", "8in sch40", 500, "1 gate"],
      ["south", "6in sch40", 450, null],
      ["North", "10in sch40", 100, null],
    ]) as Cell[][];
    expect(found.map(([name]) => name)).toEqual(["run", "north", "south"]);
    const north = numberIn("LINEHEAD", found[1]?.[1] as number, [
      ["8in sch40", 500, "1 gate"],
      ["10in sch40", 100, null],
    ]);
    expect(north).toBeCloseTo(found[1]?.[4] as number, 9);
  });

  it("is at rest without a flow, and refuses what it cannot divide", () => {
    const runs = [
      ["8in sch40", 500],
      ["6in sch40", 450],
    ];
    expect(column(cell("PARALLELRUNS", 0, runs), /^flow|share/)).toEqual([0, 0]);
    expect(refusal("PARALLELRUNS", -1, runs)).toContain("at least 0");
    expect(refusal("PARALLELRUNS", 100, [["8in sch40", 500]])).toContain("two rows or more");
    expect(
      refusal("PARALLELRUNS", 100, [
        ["8in sch40", 500],
        ["6in sch40", "0 ft"],
      ]),
    ).toContain("number 2 loses no head");
    expect(
      refusal("PARALLELRUNS", 100, [
        ["8in sch40", 500],
        ["6in sch40", null],
      ]),
    ).toContain("length");
    expect(
      refusal("PARALLELRUNS", 100, [
        ["8in sch40", 500],
        ["6in sch41", 5],
      ]),
    ).toContain("6in sch41");
    expect(refusal("PARALLELRUNS", 100, runs, "water with solids 25 %, SG 2.65, d50 0.4 mm")).toContain(
      "solids that sink",
    );
    expect(
      refusal(
        "PARALLELRUNS",
        100,
        [
          ["8in sch40 C 120", 500],
          ["6in sch40", 5],
        ],
        "water",
        "200 degF",
      ),
    ).toContain("cold water alone");
  });
});

describe("BRANCHFLOWS", () => {
  it("share-011: finds the reservoir that a junction draws on", () => {
    const of = caseOf("share-011");
    const branches = [
      ["ID 900 mm C 110", 1410, null, 282],
      ["ID 600 mm C 90", 1022, null, 257],
    ];
    const found = cell("BRANCHFLOWS", branches, 605, "water", 15, "SI");
    const [first, third] = column(found, /^flow/) as [number, number];
    expectAsPrinted(-first / 1000, "Q1", of);
    expectAsPrinted(third / 1000, "Q3", of);
    const [grade] = column(found, /grade/) as [number];
    const second = numberIn("LINEHEAD", 605, [["ID 750 mm C 100", 988]], "water", 15, "SI");
    expectAsPrinted(grade + second, "E2", of);
    expect((found as Cell[][]).map((row) => row[2])).toEqual(["direction", "from its end", "to its end"]);
  });

  it("share-012: gives the flow at which a fall alone suffices", () => {
    // A pipe that loses 25 ft at 5000 gpm, half of it on each side of the junction.
    const length = 2500 / numberIn("LINEHEAD", 5000, [["20in sch40 C 120", 100]]);
    const rows = [50, 0].map((level) => ["20in sch40 C 120", length / 2, null, level]);
    const [, flow] = column(cell("BRANCHFLOWS", rows), /^flow/) as [number, number];
    expectAsPrinted(flow, "flow", caseOf("share-012"));
    expect(numberIn("TDH", flow, -50, [[null, null, null]], [["20in sch40 C 120", length]])).toBeCloseTo(0, 9);
  });

  it("asks for the level of each end and two branches at least", () => {
    const pair: Rows = [
      ["8in sch40", 500, "1 exit", 20],
      ["6in sch40", 450, "1 swing check, 1 exit", 40],
    ];
    expect(refusal("BRANCHFLOWS", [["8in sch40", 500, null, null], pair[1] as Cell[]])).toContain("level");
    expect(refusal("BRANCHFLOWS", pair.slice(1))).toContain("two rows or more");
    expect(remarks("BRANCHFLOWS", pair)).toContain("check branch-against-check-valve");
    expect(remarks("BRANCHFLOWS", pair, 5000)).not.toContain("check branch-against-check-valve");
  });

  it("draws off what is asked below 0", () => {
    const pair: Rows = [
      ["8in sch40", 500, null, 20],
      ["8in sch40", 500, null, 20],
    ];
    expect(column(cell("BRANCHFLOWS", pair, -800), /^flow/)).toEqual([
      expect.closeTo(-400, 6),
      expect.closeTo(-400, 6),
    ]);
  });

  it("takes rows of one name for one branch, level at its end", () => {
    const found = cell(
      "BRANCHFLOWS",
      [
        ["branch", "pipe", "length", "fittings", "level"],
        ["hill", "8in sch40", 500, null, null],
        ["hill", "6in sch40", 100, "1 exit", 60],
        ["river", "8in sch40", 300, "1 exit", 10],
      ],
      3000,
    ) as Cell[][];
    expect(found.map(([name]) => name)).toEqual(["branch", "hill", "river"]);
    const grade = 10 + numberIn("LINEHEAD", found[2]?.[1] as number, [["8in sch40", 300, "1 exit"]]);
    expect(found[1]?.[5]).toBeCloseTo(grade, 6);
  });
});
