import { describe, expect, it } from "vitest";
import type { Cell } from "../../../shared/cells/cell.ts";
import { cell, numberIn } from "../../support/cells.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { LEVEE } from "../../support/levee.ts";
import { publishedCases } from "../../support/published-cases.ts";

const CASES = new Map(
  [...publishedCases("3-route", "station"), ...publishedCases("4-envelope", "station")].map((c) => [c.id, c]),
);

function of(id: string) {
  const found = CASES.get(id);
  if (found === undefined) throw new Error(`no case ${id}`);
  return found;
}

function rows(name: string, ...args: readonly (Cell | readonly (readonly Cell[])[])[]) {
  return cell(name, ...args) as readonly (readonly Cell[])[];
}

function figure(table: readonly (readonly Cell[])[], row: number, column: number): number {
  return table[row]?.[column] as number;
}

const { sourceLevel, pumpLevel, suction, discharge, curve, altitude, temperature } = LEVEE;

function fillHead(flow: number, line = discharge()): number {
  return numberIn("FILLHEAD", flow, sourceLevel, suction, line, pumpLevel, null, null, "water", temperature);
}

/** The bypass of two pumps against a curve of so many flows. */
function pair(system: (flow: number) => number) {
  const flows = Array.from({ length: 41 }, (_, i) => i * 100);
  const points: readonly (readonly Cell[])[] = [["flow", "head"], ...flows.map((flow) => [flow, system(flow)])];
  return rows("OPERATINGPOINT", curve, points, null, null, 2);
}

/** A route of 300 mm pipe: 100 m rising 10 m, then 200 m falling to 2 m. */
const HILL: readonly (readonly Cell[])[] = [
  ["ID 300 mm rough 0.05 mm", Math.hypot(100, 10), null, null, 10],
  ["ID 300 mm rough 0.05 mm", Math.hypot(200, 8), "1 exit", null, 2],
];
const hillGrade = (startHead: Cell) => rows("GRADELINE", 20, HILL, startHead, "water", null, 0, null, null, null, "SI");

/** A hill of 12 m with a drowned outlet at 6 m, 60 L/s. */
const siphonOver = (falling: string, valve: Cell = "release only", outlet: Cell = "submerged") =>
  rows(
    "SIPHONCREDIT",
    60,
    0,
    [["ID 2 m rough 0 mm", 0.001]],
    [
      ["ID 200 mm rough 0.02 mm", 400, null, null, 12],
      [falling, 100, "1 exit", null, 6],
    ],
    0,
    valve,
    outlet,
    null,
    null,
    null,
    200,
    "water",
    null,
    "SI",
  )[1] as readonly Cell[];

const LEGS: readonly (readonly Cell[])[] = [
  ["18in HDPE DR17", Math.hypot(1000, 14), null, null, 615],
  ["18in HDPE DR17", Math.hypot(1000, 25), null, null, 640],
  ["18in HDPE DR17", Math.hypot(1000, 18), null, null, 622],
  ["18in HDPE DR17", Math.hypot(1200, 10), null, null, 612],
];

describe("published cases of the route", () => {
  it("fills a line over a summit with the flow the pumps give there", () => {
    const point = pair(fillHead);
    expectPublished(figure(point, 1, 0), "flow_over_summit_while_filling", of("s3-route-001"));
    expectPublished(figure(point, 1, 1), "head_while_filling", of("s3-route-001"));
    expectPublished(fillHead(0), "static_to_summit", of("s3-route-001"));
  });

  it("gives the running line its vacuum at the summit, and no siphon credit below its clearing Froude number", () => {
    const [, values] = rows(
      "SIPHONCREDIT",
      3000,
      sourceLevel,
      suction,
      discharge(),
      pumpLevel,
      "none",
      "submerged",
      null,
      null,
      null,
      altitude,
      "water",
      temperature,
    ) as [unknown, readonly Cell[]];
    const case2 = of("s3-route-002");
    expect(values?.[0]).toBe("not earned");
    expect(values?.[1]).toContain("air may stay in the leg");
    expectPublished(values?.[8] as number, "gauge_pressure", case2);
    expectPublished(values?.[9] as number, "froude_of_falling_leg", case2);
    const grade = rows("GRADELINE", 3000, discharge(), null, "water", temperature, pumpLevel, null, null, altitude);
    // The hydraulic grade over the level of the summit.
    expectPublished(figure(grade, 3, 2) - 640, "pressure_head_at_summit", case2);
  });

  it("marches the start head back from a free outlet", () => {
    const case8 = of("s3-route-008");
    const back = hillGrade(null);
    expectPublished(figure(back, 2, 3), "summit_gauge_pressure", case8);
    // At the start the energy line is a velocity head over the hydraulic grade: 20 L/s in 300 mm, 0.0040817 m.
    expectPublished(figure(back, 1, 2) + 0.0040817, "start_energy_grade", case8);
    const held = rows(
      "SIPHONCREDIT",
      20,
      0,
      [["ID 2 m rough 0 mm", 0.001]],
      HILL,
      0,
      "none",
      "free",
      null,
      null,
      null,
      null,
      "water",
      null,
      "SI",
    );
    expectPublished(figure(held, 1, 3), "head_to_fill", case8);
    expectPublished(figure(held, 1, 9), "froude_of_falling_leg", case8);
    expect(held[1]?.[1]).toBe("air comes out of solution, outlet not sealed, leg runs part full");
    // A start head of 14 m hides the vacuum: 11.9 m is left over the outlet.
    expect(figure(hillGrade(14), 3, 2)).toBeCloseTo(2 + 11.9, 1);
  });

  it("earns a siphon that is swept clear, sealed, and within the limits of vacuum", () => {
    const case22 = of("s3-route-022");
    const [credit, why, creditHead, held, through, select, , , , froude, clearing] =
      siphonOver("ID 200 mm rough 0.02 mm");
    expect([credit, why]).toEqual(["earned", ""]);
    expectPublished(creditHead as number, "credit", case22);
    expectPublished(held as number, "head_to_hold_summit_at_this_flow", case22);
    expectPublished(through as number, "head_running", case22);
    expect(select).toBe(through);
    expectPublished(froude as number, "Froude", case22);
    expectPublished(clearing as number, "clearing_Froude (0.825 + 0.25 sqrt(sin th))", case22);
  });

  it("refuses a siphon through lay-flat hose", () => {
    const [credit, why, , , , select] = siphonOver("8in layflat");
    expect(credit).toBe("not earned");
    expect(why).toContain("lay-flat hose");
    expectPublished(select as number, "head_to_select", of("s3-route-024"));
  });

  it("a summit below the grade line changes nothing", () => {
    expect(fillHead(3000, discharge(612))).toBeLessThan(42.66);
    const running = pair((flow) =>
      numberIn("TDH", flow, 24, suction, discharge(612), null, null, "water", temperature),
    );
    const case17 = of("s3-route-017");
    expectPublished(figure(running, 1, 0), "flow_total", case17);
  });

  it("drains what lies above what is beyond it", () => {
    // The case takes its lengths as those of the pipe.
    const legs = LEGS.map(([, length, , , level], i) => [
      "ID 15.7552941176 in rough 0 in",
      i === 3 ? 1200 : Math.floor(length as number),
      null,
      null,
      level as Cell,
    ]);
    const [, values] = rows("DRAINDOWN", 588, legs, 601) as [unknown, readonly Cell[]];
    const case14 = of("s3-route-014");
    expectPublished(
      values?.[2] as number,
      "without check valve: runs back from rising leg (start lies above the source)",
      case14,
    );
    expectPublished(values?.[1] as number, "runs out of falling leg", case14);
    // To the pump at 600 ft the case counts 40 ft, to the start of the line at 601 ft 39 ft.
    expect(values?.[4]).toBeCloseTo(39, 9);
  });

  // Case s3-route-019: the summit at 2000 ft alone; 1000 ft steepens a rise, 3000 ft flattens a fall.
  it("places air valves by the change of slope", () => {
    const table = rows("AIRVALVES", LEGS, 601);
    expect(table.slice(1).map(([chainage, , place, valve]) => [Math.round(chainage as number), place, valve])).toEqual([
      [2000, "summit", "combination"],
    ]);
    // The steepest leg beside the summit rises 25 ft in 1000 ft; the falling one at 0.018 alone would let in 15.11 ft³/s.
    const flat = [
      LEGS[0] as readonly Cell[],
      ["18in HDPE DR17", 1000, null, null, 615],
      ["ID 15.755 in rough 0.02 mm", Math.hypot(1000, 18), null, null, 597],
    ];
    const inflow = figure(rows("AIRVALVES", flat.slice(1), 615, null, null, null, "water", 70, null), 1, 4);
    expectPublished(inflow / 448.831, "by_Darcy_roughness_0.02_mm", of("s3-route-021"));
  });

  it("holds each run against the shut valve and standing", () => {
    const table = rows("LINEPRESSURES", 0, LEGS, 601, null, 660, null, null, null, 600, "water", 70);
    const case3 = of("s4-envelope-003");
    expectPublished(figure(table, 1, 5), "gauge_at_0", case3);
    expectPublished(figure(table, 2, 5), "gauge_at_1000", case3);
    expectPublished(figure(table, 3, 5), "gauge_at_3000", case3);
    expectPublished(figure(table, 4, 5), "gauge_at_4200", case3);
    expectPublished(figure(table, 1, 6), "standing_at_start", of("s4-envelope-004"));
    const sag = [
      ["18in HDPE DR17", 1000, null, null, 595],
      ["18in HDPE DR17", 1000, null, null, 640],
      ["18in HDPE DR17", 1000, null, null, 612],
    ];
    expectPublished(
      figure(rows("LINEPRESSURES", 0, sag, 601, null, null, null, null, null, 600, "water", 70), 1, 6),
      "standing_at_low_point",
      of("s4-envelope-004"),
    );
  });

  it("rates polyethylene with the surge of every stop and a rare one", () => {
    const rated = rows("PIPERATING", "18in HDPE DR17 PE4710", 73);
    const names = rated[0] as readonly string[];
    const at = (name: RegExp) =>
      figure(
        rated,
        1,
        names.findIndex((each) => name.test(each)),
      );
    expectPublished(at(/with surge/i), "allowed_recurring_1.5_PC", of("s4-envelope-006"));
    expectPublished(at(/rare surge/i), "allowed_occasional_2.0_PC", of("s4-envelope-006"));
  });

  // Worked examples that print a friction factor of 0.02: as rough as gives it, 1/√f = −2 lg(ε/3.7 D), without viscosity.
  const rough = (bore: number) => `ID ${bore} mm rough ${bore * 3.7 * 10 ** (-1 / (2 * Math.sqrt(0.02)))} mm`;
  const THIN = "998.2 kg/m3, 1e-9 cP";
  const WEIGHT = (998.2 * 9.80665) / 1000;

  it("gives a textbook siphon its pressure at the summit", () => {
    const case5 = of("s3-route-005");
    const flow = (case5.expected["flow"]?.value as number) * 1000;
    const line = [
      [rough(200), 100, null, null, 23],
      [rough(200), 400, null, null, 0],
    ];
    const grade = rows("GRADELINE", flow, line, 20, THIN, null, 20, null, null, null, "SI");
    // The book takes g as 9.81: 0.04 % of the head lost.
    expect(figure(grade, 2, 3) / WEIGHT / (case5.expected["pressure_head_at_summit"]?.value as number)).toBeCloseTo(
      1,
      3,
    );
    // Nothing of the 20 m is left over but for the velocity head, 0.4 m.
    expect(figure(grade, 3, 2)).toBeCloseTo(-0.4, 1);
  });

  it("puts the summit of a long siphon where its pressure is the minimum allowed", () => {
    const case4 = of("s3-route-004");
    const line = [
      [rough(100), 2000, null, null, case4.expected["summit_above_upper_level"]?.value as number],
      [rough(100), 3000, null, null, -5],
    ];
    const flow = (case4.expected["flow"]?.value as number) * 1000;
    const grade = rows("GRADELINE", flow, line, 0, THIN, null, 0, null, null, null, "SI");
    // 2.5 m absolute under an atmosphere of 10.3 m.
    expect(figure(grade, 2, 3) / WEIGHT).toBeCloseTo(2.5 - 10.3, 2);
  });

  it("holds hose at its low end against the shut valve", () => {
    const line = [
      ["6in layflat", 30, null, null, -20],
      ["8in HDPE DR17", 100, null, null, 30],
    ];
    const table = rows("LINEPRESSURES", 0, line, 0, null, 210, null, null, null, null, "SG 1, 1 cP");
    // The trade's 2.31 ft a psi against exact ρ g: 0.15 %.
    const expected = of("s4-envelope-008").expected["layflat_shutoff"]?.value as number;
    expect(Math.abs(figure(table, 1, 5) / expected - 1)).toBeLessThan(0.0015);
  });
});
