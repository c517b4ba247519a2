import { readFileSync } from "node:fs";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { allPipes, pipeNamed } from "../../../src/pipework/pipe-name.ts";

const inch = 0.0254;

/** Rows of a published table; lines that begin with # are its source. */
function rowsOf(file: string): readonly Readonly<Record<string, string>>[] {
  const text = readFileSync(new URL(`../../published/${file}`, import.meta.url), "utf8");
  return Papa.parse<Record<string, string>>(text, {
    header: true,
    delimiter: ",",
    comments: "#",
    skipEmptyLines: true,
  }).data;
}

const schedules = rowsOf("pipe-schedules.csv");

// Source: head of tests/published/pipe-schedules.csv (Hydraulic Institute Engineering Data Book tables).
describe("steel and stainless pipe", () => {
  it("is compared with 100 published rows", () => expect(schedules).toHaveLength(100));

  it.each(schedules)("NPS $nps schedule $schedule has the published dimensions", (row) => {
    const column = (name: string): number => Number(row[name]);
    const named = /^\d+$/.test(row["schedule"] as string) ? `sch${row["schedule"]}` : row["schedule"];
    const pipe = pipeNamed(`${row["nps"]}in ${named}`);
    if (!pipe.ok) throw new Error(`${row["nps"]} ${named}`);
    const { bore, outsideDiameter = 0, wall = 0 } = pipe.value;
    expect(outsideDiameter / inch).toBeCloseTo(column("od_in"), 9);
    expect(wall / inch).toBeCloseTo(column("wall_in"), 9);
    expect(bore / inch).toBeCloseTo(column("id_in"), 9);
    // The millimetre columns are rounded to 0.1 mm (outside diameter) and 0.01 mm.
    expect(Math.abs(outsideDiameter * 1e3 - column("od_mm"))).toBeLessThan(0.051);
    expect(Math.abs(wall * 1e3 - column("wall_mm"))).toBeLessThan(0.0051);
    expect(Math.abs(bore * 1e3 - column("id_mm"))).toBeLessThan(0.0051);
    // lb/ft of carbon steel, 10.69 (D − t) t with D and t in inches; printed to two decimals.
    const mass = (10.69 * (outsideDiameter - wall) * wall) / inch ** 2;
    expect(Math.abs(mass - column("mass_lb_ft"))).toBeLessThan(0.006 + 0.001 * mass);
    const byDn = pipeNamed(`DN${row["dn"]} ${named}`);
    expect(byDn.ok && byDn.value.bore).toBe(bore);
  });
});

const ratios = rowsOf("hdpe-dr.csv");

// Source: head of tests/published/hdpe-dr.csv (ASTM F714, AWWA C906).
describe("polyethylene pipe", () => {
  it("is compared with 8 published ratios", () => expect(ratios).toHaveLength(8));

  it.each(ratios)("DR $dr has the published inside per outside diameter", (row) => {
    const family = new RegExp(`^HDPE( DIPS)? DR${row["dr"]}$`);
    const pipes = allPipes().filter((pipe) => family.test(pipe.family));
    expect(pipes.length).toBeGreaterThan(25);
    for (const { bore, outsideDiameter = 0, name } of pipes) {
      expect(Math.abs(bore / outsideDiameter - Number(row["id_over_od"])), name).toBeLessThan(0.000051);
    }
  });

  // Source: average inside diameters, in, in the industry's published size tables (from memory).
  it.each([
    ["6in HDPE DR11", 5.349],
    ["8in HDPE DR17", 7.55],
    ["10in HDPE DR17", 9.41],
    ["12in HDPE DR17", 11.16],
    ["24in HDPE DR17", 21.007],
    ["12in HDPE DIPS DR17", 11.554],
  ])("%s is %f in inside", (name, inside) => {
    const pipe = pipeNamed(name);
    expect(pipe.ok && Math.abs(pipe.value.bore / inch - inside)).toBeLessThan(0.0015);
  });
});

// Source: average inside diameters, in, in the trade's tables of ASTM D1785 pipe (from memory).
describe("PVC pipe", () => {
  it.each([
    ["2in PVC sch80", 1.913],
    ["4in PVC sch40", 3.998],
    ["4in PVC sch80", 3.786],
    ["6in PVC sch40", 6.031],
    ["6in PVC sch80", 5.709],
    ["12in PVC sch40", 11.889],
  ])("%s is %f in inside", (name, inside) => {
    const pipe = pipeNamed(name);
    expect(pipe.ok && Math.abs(pipe.value.bore / inch - inside)).toBeLessThan(0.0006);
  });
});
