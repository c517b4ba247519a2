import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { publishedCases } from "../../support/published-cases.ts";

type Rows = readonly (readonly Cell[])[];

const cases = publishedCases("6-shares");

function caseOf(id: string) {
  const found = cases.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no case ${id}`);
  return found;
}

/** f_T of clean steel at a bore in inches, as the case states it: 0.25/log10(ε/3.7 d)², ε 0.00015 ft. */
function fullyRough(inches: number): number {
  return 0.25 / Math.log10(0.00015 / (3.7 * (inches / 12))) ** 2;
}

const MAIN_BORE = 18 - (2.12 * 18) / 17;
const HOSE = "ID 12 in rough 0.03 mm";
const MAIN = `ID ${MAIN_BORE} in rough 0.02 mm`;

/** The two-pump bypass: hose and branch each pump's own, the main common. */
function bypass(share: Cell): { readonly suction: Rows; readonly branch: Rows; readonly main: Rows } {
  return {
    suction: [[HOSE, 40, "K 0.04, 2 K 0.3", share]],
    branch: [["ID 10.02 in rough 0.045 mm", 10, `K ${122 * fullyRough(10.02)}`, share]],
    main: [[MAIN, 4200, `8 K ${16 * fullyRough(MAIN_BORE)}, 1 exit`, ""]],
  };
}

describe("a two-pump bypass in cells", () => {
  const one = caseOf("share-001");
  const { suction, branch, main } = bypass("1/2");

  it("loses in each run what that run carries", () => {
    const loss = (line: Rows): number => numberIn("LINEHEAD", 3000, line, "water", "70 degF");
    expectPublished(loss(suction), "suction_loss", one);
    expectPublished(loss(branch), "branch_loss", one);
    expectPublished(loss(main), "main_loss", one);
  });

  it("has the head and the NPSH of one pump's path", () => {
    expectPublished(
      numberIn("TDH", 3000, 24, suction, [...branch, ...main], null, null, "water", "70 degF"),
      "TDH",
      one,
    );
    expectPublished(numberIn("NPSHA", 3000, 12, suction, 600, null, "water", "70 degF"), "NPSHA", one);
    const all = bypass("all");
    expectPublished(
      numberIn("TDH", 3000, 24, all.suction, [...all.branch, ...main], null, null, "water", "70 degF"),
      "TDH_if_all_flow_in_each_run (wrong)",
      one,
    );
    expectPublished(
      numberIn("NPSHA", 3000, 12, all.suction, 600, null, "water", "70 degF"),
      "NPSHA_if_all_flow_in_one_hose (wrong)",
      one,
    );
  });

  it("doubts the velocity of the run, not of the station", () => {
    // 4.26 ft/s in each of two hoses, 8.51 ft/s if one carried it all; 2.4 m/s (7.87 ft/s) is usual in suction.
    const said = (line: Rows): readonly string[] => remarks("NPSHA", 3000, 12, line, 600, null, "water", "70 degF");
    expect(said(suction)).not.toContain("check velocity-high");
    expect(said(bypass(null).suction)).toContain("check velocity-high");
  });

  it("meets the pumps at the flow worked out by hand", () => {
    const two = caseOf("share-002");
    const { flow_gpm, head_ft } = two.inputs["pump_curve"] as unknown as Record<string, readonly number[]>;
    const pump = (flow_gpm as readonly number[]).map((flow, i) => [flow, head_ft?.[i] as number]);
    const system = cell("SYSTEMCURVE", 24, suction, [...branch, ...main], 4030, 200, null, "water", "70 degF") as Rows;
    const [, [flow, head]] = cell("OPERATINGPOINT", pump, system, null, null, 2, "parallel") as [
      Cell[],
      [number, number],
    ];
    expectPublished(flow, "flow_total", two);
    expectPublished(head, "head", two);
  });

  it("holds, fills and buys the runs there are", () => {
    const of = caseOf("share-014");
    const gallons = (bore: number, feet: number): number => (Math.PI / 4) * (bore / 12) ** 2 * feet * (1728 / 231);
    // Pumps that are throttled to the flow of the case until the line is full.
    const filling = (line: Rows): readonly number[] =>
      (
        cell(
          "FILLTIME",
          [
            [0, 200],
            [2607.9023, 199],
          ],
          588,
          suction,
          line,
          600,
          612,
        ) as number[][]
      )[1] as number[];
    const withLevel = (rows: Rows, level: number): Rows => rows.map((row) => [...row, level]);
    const alone = filling(withLevel(main, 612));
    expectPublished(alone[0] as number, "main_volume", of);
    expectPublished((alone.at(-1) as number) / 60, "fill_time_main_at_constant_flow", of);
    const both = filling([...withLevel(branch, 600), ...withLevel(main, 612)]);
    expectPublished((both[0] as number) - (alone[0] as number), "branches_2", of);
    const bought = cell("TAKEOFF", [["12in suction hose", 40, "", "1/3"]], main) as Rows;
    const length = bought.find(([line, item]) => line === "suction" && item === "hose")?.[3] as number;
    expectPublished(gallons(12, length), "suction_volume_installed_3", of);
    expectPublished(gallons(12, length / 3), "prime_volume_each_pump", of);
    expectPublished((both[0] as number) + 2 * gallons(12, 40), "fill_volume_running_2", of);
  });

  it("has its maximum lift by the hose of one pump", () => {
    const twice = numberIn("MAXLIFT", 3000, suction, 10, null, 600, "water", "70 degF");
    expect(twice).toBeCloseTo(numberIn("MAXLIFT", 1500, bypass(null).suction, 10, null, 600, "water", "70 degF"), 12);
  });
});

describe("a run beside its like", () => {
  it("loses what one hose loses at half the flow", () => {
    const twin = [["ID 8 in rough 0.1 mm", 500, null, "1/2"]];
    const found = numberIn("LINEHEAD", 1600, twin, "water", "60 degF");
    expectPublished(found, "head_lost", caseOf("share-003"));
    const alone = [["ID 8 in rough 0.1 mm", 500]];
    expectPublished(numberIn("LINEHEAD", 1600, alone, "water", "60 degF"), "head_if_one_hose", caseOf("share-003"));
    expect(found).toBe(numberIn("LINEHEAD", 800, alone, "water", "60 degF"));
    expectPublished(numberIn("VELOCITY", 1600 / 2, "ID 8 in rough 0.1 mm"), "velocity", caseOf("share-003"));
    // Filled at 1600 gpm, which a flat curve of pumps on a flat line gives to its end.
    const [, [volume, , flow]] = cell(
      "FILLTIME",
      [
        [0, 90],
        [1600, 89],
      ],
      0,
      [[null, null, null]],
      [[...(twin[0] as Cell[]), 0]],
      0,
    ) as [Cell[], number[]];
    expectPublished(volume as number, "volume_of_both", caseOf("share-003"));
    expect(flow).toBeCloseTo(1600, 6);
  });

  it("is as good as the same flow in one, whatever the share", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 5000, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (flow, share) => {
          const shared = numberIn("LINEHEAD", flow, [["8in sch40", 100, "1 gate, 1 exit", share]]);
          const alone = numberIn("LINEHEAD", flow * share, [["8in sch40", 100, "1 gate, 1 exit"]]);
          expect(shared).toBeCloseTo(alone, 9);
        },
      ),
      { numRuns: 50 },
    );
  });

  it("may be cut in two without another answer", () => {
    const fittings = (elbows: number): string => `${elbows} K ${16 * fullyRough(MAIN_BORE)}`;
    const whole = [[MAIN, 4200, `${fittings(8)}, 1 exit`]];
    const cut = [
      [MAIN, 1700, fittings(3)],
      [MAIN, 2500, `${fittings(5)}, 1 exit`],
    ];
    const [one, two] = [whole, cut].map((line) => numberIn("LINEHEAD", 3000, line, "water", "70 degF"));
    expect(Math.abs((one as number) / (two as number) - 1)).toBeLessThan(1e-9);
    expectPublished(one as number, "one_run", caseOf("share-013"));
    expectPublished(two as number, "two_runs", caseOf("share-013"));
  });

  it("surges with its own velocity", () => {
    const worst = (flow: number, share: Cell): number =>
      (cell("LINESURGE", flow, [["8in sch40", 1000, null, share]]) as number[][])[1]?.[1] as number;
    expect(worst(1600, "1/2")).toBe(worst(800, ""));
  });
});

describe("the share of a row", () => {
  const head = (share: Cell): number => numberIn("LINEHEAD", 1000, [["8in sch40", 100, "1 gate", share]]);
  const refused = (share: Cell): string => refusal("LINEHEAD", 1000, [["8in sch40", 100, "1 gate", share]]);

  it("may be written in several ways", () => {
    for (const half of ["1/2", "½", " 1 / 2 ", 0.5, "0.5", "0,5", "50 %", "50%", "50 per cent"]) {
      expect(head(half), String(half)).toBe(head(0.5));
    }
    for (const all of ["", null, 1, "1", "all", "100 %", "ALL"]) expect(head(all), String(all)).toBe(head(1));
    expect(head("2/3")).toBe(head(2 / 3));
  });

  it("is doubted as 0, which a blank cell may arrive as", () => {
    expect(head(0)).toBe(head(1));
    expect(remarks("LINEHEAD", 1000, [["8in sch40", 100, "1 gate", 0]])).toEqual(["check zero-may-be-blank"]);
  });

  it("is refused at 0 as a text, below 0 and above 1", () => {
    for (const wrong of ["0", "0 %", -0.5, "-1 %"]) expect(refused(wrong), String(wrong)).toContain("must be above 0");
    for (const wrong of ["3/2", "101 %"]) expect(refused(wrong), String(wrong)).toContain("must be at most 1");
    expect(refused(2)).toContain("more than the whole flow of the line; write “1/2” or “2 %”");
    expect(refused(50)).toContain("write “50 %”");
    expect(refused("half")).toContain("“half” is not one of the choices");
    expect(refused(true)).toContain("#VALUE!");
  });

  it("is told apart from the date a spreadsheet makes of it", () => {
    // 2 January 2026, as 1/2 becomes in the United States, and 1 February 2026, as elsewhere; by the calendar.
    expect(refused(46_024)).toContain('has become a date in the sheet (46024); write ="1/2"');
    expect(refused(46_054)).toContain('="1/2"');
    // 3 January 2026: a third.
    expect(refused(46_025)).toContain('="1/3"');
    for (const text of ["2-Jan", "Jan 2", "1/2/2026"]) expect(refused(text), text).toContain("become a date");
  });

  it("asks for the number of pumps where it says each", () => {
    expect(refused("each")).toContain("“1/2” for two pumps side by side");
    expect(refused("each pump")).toContain("RANKPUMPS and NPSHLIMITFLOW alone");
    const line = [["8in sch40", 100, "1 gate", "each"]];
    expect(refusal("TDH", 1000, 10, line, line)).toContain("write “1/2”");
    expect(refusal("NPSHA", 1000, 10, line)).toContain("write “1/2”");
  });

  it("says each where the function is told how many pumps run", () => {
    const curve = [
      ["flow", "head", "NPSHR"],
      [0, 120, 6],
      [500, 110, 9],
      [1000, 80, 20],
    ];
    const limit = (line: Cell, pumps: Cell): unknown =>
      cell(
        "NPSHLIMITFLOW",
        curve,
        10,
        [["8in sch40", 60, "1 gate", line]],
        0,
        null,
        null,
        null,
        null,
        null,
        null,
        pumps,
      );
    expect(limit("each", 2)).toEqual(limit("1/2", 2));
    expect(limit("each", 2)).not.toEqual(limit("", 2));
  });

  it("stands under its heading in any order", () => {
    const headed = [
      ["level", "share of flow", "pipe", "length, ft", "fittings"],
      [612, "1/2", "8in sch40", 100, "1 gate"],
    ];
    expect(numberIn("LINEHEAD", 1000, headed)).toBe(head("1/2"));
  });

  it("is read in the units of the sheet or of the level's heading", () => {
    const steep = (level: Argument): Rows => [
      ["pipe", "length, m", "level, m"],
      ["8in sch40", 100, 0],
      ["8in sch40", 10, level as Cell],
    ];
    expect(refusal("LINEHEAD", 100, steep(12), null, null, "SI")).toContain(
      "a run of 10 m cannot rise or fall by 12 m",
    );
    expect(numberIn("LINEHEAD", 100, steep(10), null, null, "SI")).toBeGreaterThan(0);
    expect(refusal("LINEHEAD", 100, steep(-12), null, null, "SI")).toContain("Line row 3");
  });
});

describe("levels", () => {
  it("change no head, and a blank one between two is passed over", () => {
    const line = (...levels: readonly Cell[]): Rows => levels.map((level) => ["8in sch40", 50, "", "", level]);
    const bare = numberIn("LINEHEAD", 1000, line("", "", ""));
    expect(numberIn("LINEHEAD", 1000, line(100, 140, 100))).toBe(bare);
    expect(numberIn("LINEHEAD", 1000, line(100, "", 190))).toBe(bare);
    expect(refusal("LINEHEAD", 1000, line(100, "", 201))).toContain("a run of 100 ft cannot rise or fall by 101 ft");
  });
});

describe("a bill of quantities", () => {
  const bill = (share: Cell, more = ""): Rows =>
    cell("TAKEOFF", [["8in sch40", 30, `2 elbow 90 long${more}`, share]], [["8in sch40", 100, "1 exit"]]) as Rows;
  const quantity = (rows: Rows, item: string, line = "suction"): Cell | undefined =>
    rows.find((row) => row[0] === line && row[1] === item)?.[3];

  it("counts the runs side by side with their fittings", () => {
    // Two runs of 30 ft: four elbows, and 30 ft is one joint between two lengths of 20 ft in each.
    const two = bill("1/2");
    expect(quantity(two, "pipe")).toBe(60);
    expect(quantity(two, "elbow 90 long")).toBe(4);
    expect(quantity(bill(""), "elbow 90 long")).toBe(2);
    expect(remarks("TAKEOFF", [["8in sch40", 30, "", "1/2"]], [["8in sch40", 100, "1 exit"]])).toContain(
      "check share-counted-as-runs",
    );
  });

  it("counts a piece of header once", () => {
    for (const rows of [bill("1/2", ", header"), bill("2/3")]) expect(quantity(rows, "elbow 90 long")).toBe(2);
    const named = cell("TAKEOFF", [["8in sch40 header", 30, "1 elbow 90", "1/2"]], [["8in sch40", 100]]) as Rows;
    expect(quantity(named, "elbow 90")).toBe(1);
  });
});

describe("priming", () => {
  const SHARED = (share: Cell): Rows => [["6in sch40", 40, "", share]];
  const time = (share: Cell, pumps: Cell = null): number =>
    numberIn("PRIMETIME", SHARED(share), 15, 50, 20, null, null, null, pumps);
  const said = (share: Cell, pumps: Cell = null): readonly string[] =>
    remarks("PRIMETIME", SHARED(share), 15, 50, 20, null, null, null, pumps);

  it("draws through one run, the pump's own, where nobody says how many pumps there are", () => {
    expect(time("1/2")).toBe(time(""));
    expect(said("1/2")).toContain("check priming-one-run");
    expect(said("1/2", 2)).not.toContain("check priming-one-run");
  });

  it("draws through all runs of a pump, as through one of their area", () => {
    // Two bores of 6.065 in have the area of one of 6.065 √2 in, 8.57721 in.
    const wide = numberIn("PRIMETIME", [["ID 8.5772052 in rough 0.045 mm", 40]], 15, 50, 20);
    expect(Math.abs(time("1/2", 1) / wide - 1)).toBeLessThan(1e-6);
    expect(time("1/4", 2)).toBe(time("1/2", 1));
    expect(time("1/2", 2)).toBe(time(""));
    // Three pumps that draw through two hoses in common: the first of them draws both.
    expect(time("1/2", 3)).toBe(time("1/2", 1));
    const course = cell("PRIMECURVE", SHARED("1/2"), 15, 50, 20, null, null, null, 1) as number[][];
    expect(course.at(-1)?.[0]).toBeCloseTo(time("1/2", 1), 9);
    const methods = (pumps: Cell): unknown =>
      (cell("PRIMINGMETHODS", 15, SHARED("1/2"), 5, null, null, null, 50, 20, null, pumps) as Cell[][])[1]?.[3];
    expect(methods(1)).toBeCloseTo(time("1/2", 1), 9);
    expect(methods(2)).toBeCloseTo(time(""), 9);
  });

  it("refuses less than one pump, and a part of one", () => {
    for (const name of ["PRIMETIME", "PRIMECURVE"]) {
      const ask = (pumps: Cell): string => refusal(name, SHARED(""), 15, 50, 20, null, null, null, pumps);
      expect(ask(0)).toContain("at least 1");
      expect(ask(1.5)).toContain("whole number");
    }
    expect(refusal("PRIMINGMETHODS", 15, SHARED(""), 5, null, null, null, 50, 20, null, 0)).toContain("at least 1");
  });
});
