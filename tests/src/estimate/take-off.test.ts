import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { unitOf } from "../../../src/basis/units.ts";
import { fittingPart } from "../../../src/estimate/fitting-part.ts";
import { pipeMass } from "../../../src/estimate/pipe-mass.ts";
import { type TakeOffRow, takeOff } from "../../../src/estimate/take-off.ts";
import { fittingsNamed } from "../../../src/pipework/fitting-name.ts";
import { KNOWN_FITTINGS } from "../../../src/pipework/known-fittings.ts";
import type { LineSegment } from "../../../src/pipework/line.ts";
import type { Pipe } from "../../../src/pipework/pipe.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { flangeClassNamed } from "../../../src/pressure/flange-class.ts";

const FOOT = unitOf("ft").factor;
const POUND_A_FOOT = unitOf("lb").factor / FOOT;

function pipeOf(name: string): Pipe {
  const pipe = pipeNamed(name);
  if (!pipe.ok) throw new Error(name);
  return pipe.value;
}

function segment(pipe: string, feet: number, fittings = ""): LineSegment {
  const counted = fittings === "" ? { ok: true as const, value: [] } : fittingsNamed(fittings, "fittings");
  if (!counted.ok) throw new Error(fittings);
  return { pipe: pipeOf(pipe), length: feet * FOOT, fittings: counted.value };
}

function rowsOf(
  suctionLine: readonly LineSegment[],
  dischargeLine: readonly LineSegment[],
  named: string | null = "150",
): { readonly rows: readonly TakeOffRow[]; readonly codes: readonly string[] } {
  const read = named === null ? null : flangeClassNamed(named, "US", "class");
  if (read !== null && !read.ok) throw new Error(String(named));
  const flangeClass = read === null ? null : read.value;
  const found = takeOff({ suctionLine, dischargeLine, flangeClass, system: "US" });
  if (!found.ok) throw new Error("no bill");
  return { rows: found.value, codes: found.findings.map(({ code }) => code) };
}

/** Quantity of the rows of an item, and what is ordered. */
function totals(rows: readonly TakeOffRow[], item: string, size = ""): { quantity: number; order: number } {
  const of = rows.filter((row) => row.item === item && row.size.includes(size));
  return {
    quantity: of.reduce((sum, row) => sum + row.quantity, 0),
    order: of.reduce((sum, row) => sum + row.order, 0),
  };
}

describe("mass of pipe", () => {
  // ASME B36.10M, lb/ft of plain pipe and of the water in it, read in a reprint: 18.99 and 12.53, 49.61 and 49.03.
  it.each([
    { pipe: "6in sch40", empty: 18.99, water: 12.53 },
    { pipe: "12in STD", empty: 49.61, water: 49.03 },
  ])("is that of the standard: $pipe", ({ pipe, empty, water }) => {
    const mass = pipeMass(pipeOf(pipe));
    expect((mass.empty ?? 0) / POUND_A_FOOT / empty).toBeCloseTo(1, 2);
    // The standard's water is 62.4 lb/ft³ or so, ours 998.2 kg/m³: 0.2 % apart.
    expect(mass.water / POUND_A_FOOT / water).toBeCloseTo(1, 2);
  });

  it("is not guessed for hose", () => {
    expect(pipeMass(pipeOf("6in suction hose")).empty).toBeUndefined();
  });

  it("counts the lining of ductile iron", () => {
    const lined = pipeMass(pipeOf("6in ductile iron cl350")).empty ?? 0;
    const bare = pipeMass(pipeOf("6in ductile iron cl350 unlined")).empty ?? 0;
    // 1/16 in of mortar in 6.28 in of bore: π × 6.34 in × 0.0625 in × 2300 kg/m³ = 1.85 kg/m, by hand.
    expect(lined - bare).toBeGreaterThan(1.7);
    expect(lined - bare).toBeLessThan(2);
  });
});

describe("a bill of quantities", () => {
  const suction = [segment("8in suction hose", 30, "1 strainer, 2 hose bend")];
  const discharge = [
    segment("8in sch40", 20, "1 swing check, 1 gate, 2 elbow 90 long"),
    segment("10in HDPE DR17", 1800, "4 elbow 45, 1 exit"),
  ];
  const { rows, codes } = rowsOf(suction, discharge);

  // Counted by hand on the drawing of that line. NPS 8 joints: suction nozzle 1, strainer 1, discharge nozzle 1, check 2,
  // gate 2, change of pipe 1 = 8; NPS 10: change of pipe 1. ASME B16.5: 8 bolts of 3/4 in each, and 12 of 7/8 in.
  it.each([
    { item: "flanged joint", size: "NPS 8", quantity: 8, order: 8 },
    { item: "flanged joint", size: "NPS 10", quantity: 1, order: 1 },
    { item: "stud", size: "3/4 in", quantity: 64, order: 71 },
    { item: "stud", size: "7/8 in", quantity: 12, order: 14 },
    { item: "nut", size: "3/4 in", quantity: 128, order: 142 },
    { item: "gasket", size: "NPS 8", quantity: 8, order: 10 },
    { item: "gasket", size: "NPS 10", quantity: 1, order: 2 },
    { item: "swing check", size: "8in", quantity: 1, order: 1 },
    { item: "elbow 90 long", size: "8in", quantity: 2, order: 2 },
    { item: "reducer", size: "8in sch40 to 10in HDPE DR17", quantity: 1, order: 1 },
    // 30 ft in hoses of 20 ft: 2, with one pair of couplings and a flanged end at each end.
    { item: "hose coupling pair", size: "8in", quantity: 1, order: 1 },
    { item: "flanged end for hose", size: "8in", quantity: 2, order: 2 },
    // 1800 ft in pieces of 40 ft: 45 pieces and 44 joints between them.
    { item: "butt fusion", size: "10in", quantity: 44, order: 44 },
  ])("counts $item $size", ({ item, size, quantity, order }) => {
    expect(totals(rows, item, size)).toEqual({ quantity, order });
  });

  it("orders pipe with its allowance and hose by the piece", () => {
    expect(totals(rows, "pipe", "10in").order / FOOT).toBeCloseTo(1854, 9);
    expect(totals(rows, "hose").order / FOOT).toBeCloseTo(40, 9);
  });

  it("buys no part for the end of a pipe or for hose laid in a bend", () => {
    expect(rows.some(({ item }) => /^(exit|hose bend)$/.test(item))).toBe(false);
  });

  it("says what it leaves out, and of which pipe the mass is not known", () => {
    expect(codes).toEqual(["take-off-leaves-out", "pipe-mass-not-known"]);
  });

  it("counts joints without bolting where no class is given", () => {
    const without = rowsOf(suction, discharge, null);
    expect(totals(without.rows, "flanged joint").quantity).toBe(9);
    expect(without.rows.some(({ item }) => item === "stud")).toBe(false);
    expect(without.codes).toContain("take-off-without-class");
  });

  it.each([
    { why: "a size beyond NPS 24", pipe: "30in STD", named: "150" },
    { why: "a measured bore", pipe: "ID 154.1 mm rough 0.045 mm", named: "150" },
  ])("counts joints without bolting and says so for $why", ({ pipe, named }) => {
    const of = rowsOf([segment(pipe, 10)], [segment(pipe, 10)], named);
    expect(totals(of.rows, "flanged joint").quantity).toBe(2);
    expect(of.rows.some(({ item }) => item === "stud")).toBe(false);
    expect(of.codes).toContain("bolting-not-held");
  });

  // EN 1092-1, PN 16 DN 200: twelve M20 (three tables); type 11 of 24 mm: 2 × 24 + 2 + 2 × 20 + 4 × 2.5 + 1.5 = 101.5 mm.
  it("orders metric studs for a PN, in steps of 5 mm", () => {
    const { rows } = rowsOf([segment("8in sch40", 10)], [segment("8in sch40", 10)], "PN16");
    expect(totals(rows, "stud").quantity).toBe(24);
    expect(rows.find(({ item }) => item === "stud")?.size).toBe("M20 × 105 mm");
    expect(rows.find(({ item }) => item === "nut")?.size).toBe("M20");
  });

  it("lists no second reducer where the line has one", () => {
    const from = segment("8in sch40", 20, "1 reducer to 6in sch40");
    expect(rowsOf([from, segment("6in sch40", 5)], discharge).rows.filter(({ line }) => line === "suction")).toSatisfy(
      (of: readonly TakeOffRow[]) => of.filter(({ item }) => item === "reducer").length === 0,
    );
  });

  it("needs no joint between pieces for a run of one piece", () => {
    expect(totals(rowsOf([segment("6in sch40", 20)], []).rows, "butt weld").quantity).toBe(0);
    expect(totals(rowsOf([segment("6in sch40", 20.1)], []).rows, "butt weld").quantity).toBe(1);
  });

  it("never takes less for a longer line", () => {
    const feet = fc.double({ min: 0.1, max: 5000, noNaN: true });
    fc.assert(
      fc.property(feet, feet, (one, more) => {
        const short = rowsOf([segment("6in sch40", one)], []).rows;
        const long = rowsOf([segment("6in sch40", one + more)], []).rows;
        for (const item of ["pipe", "butt weld"]) {
          expect(totals(long, item).order).toBeGreaterThanOrEqual(totals(short, item).order);
        }
        expect(long[0]?.mass ?? 0).toBeGreaterThan(short[0]?.mass ?? 0);
      }),
    );
  });
});

describe("a fitting to its buyer", () => {
  // How such parts are joined: common practice, no source.
  it.each([
    ["gate", true, "flanged", 2],
    ["butterfly", true, "flanged", 2],
    ["foot valve", true, "flanged", 1],
    ["strainer", true, "flanged", 1],
    ["strainer 30 % blocked", true, "flanged", 1],
    ["entrance bell", true, "flanged", 1],
    ["entrance square", false, "as the pipe", 0],
    ["exit", false, "as the pipe", 0],
    ["hose bend", false, "as the pipe", 0],
    ["hose coupling", true, "coupling", 0],
    ["elbow 90 long", true, "as the pipe", 2],
    ["return bend", true, "as the pipe", 2],
    ["mitre 45", true, "as the pipe", 2],
    ["tee branch", true, "as the pipe", 3],
    ["3K tee branch flanged", true, "flanged", 3],
    ["3K elbow 90 flanged", true, "flanged", 2],
    ["3K gate", true, "flanged", 2],
    ["flexible connector", true, "flanged", 2],
    ["K 3.2", true, "as the pipe", 0],
  ] as const)("%s", (name, isPart, joined, joints) => {
    expect(fittingPart(name)).toEqual({ isPart, joined, joints });
  });

  it("is a pipe end for the entrances and the exit alone, and hose in a bend", () => {
    const none = KNOWN_FITTINGS.map(({ fitting }) => fitting.name).filter((name) => !fittingPart(name).isPart);
    expect(none.every((name) => /^(entrance|exit|hose bend|HDPE weld bead)/.test(name))).toBe(true);
  });
});
