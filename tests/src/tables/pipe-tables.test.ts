import { describe, expect, it } from "vitest";
import { inchesOf } from "../../../src/pipework/nominal-size.ts";
import { COPPER_TUBE_B88 } from "../../../src/tables/copper-tube-b88.ts";
import {
  DUCTILE_IRON_C151,
  DUCTILE_IRON_PRESSURE_CLASSES,
  DUCTILE_IRON_THICKNESS_CLASSES,
} from "../../../src/tables/ductile-iron-pipe-c151.ts";
import { HOSE_INCHES, HOSE_MILLIMETRES } from "../../../src/tables/hose-sizes.ts";
import { NOMINAL_DIAMETERS } from "../../../src/tables/nominal-diameter.ts";
import {
  POLYETHYLENE_DIMENSION_RATIOS,
  POLYETHYLENE_DIPS,
  POLYETHYLENE_IPS,
} from "../../../src/tables/polyethylene-pipe.ts";
import { PVC_PIPE_D1785 } from "../../../src/tables/pvc-pipe-d1785.ts";
import { SURFACES, type Surface } from "../../../src/tables/roughness.ts";
import { STAINLESS_PIPE_B36_19M } from "../../../src/tables/stainless-pipe-b36-19m.ts";
import { STEEL_PIPE_B36_10M } from "../../../src/tables/steel-pipe-b36-10m.ts";
import { EN_10220_WALLS, STEEL_PIPE_EN_10220 } from "../../../src/tables/steel-pipe-en-10220.ts";

function expectRising(values: readonly number[]): void {
  expect(values).toEqual([...new Set(values)].toSorted((a, b) => a - b));
}

describe("ASME B36.10M", () => {
  it("has each wall of each size once, thinnest first, sizes rising", () => {
    expect(STEEL_PIPE_B36_10M).toHaveLength(239);
    const sizes = [...new Set(STEEL_PIPE_B36_10M.map(([nps]) => nps))];
    expect(sizes).toHaveLength(36);
    expectRising(sizes.map(inchesOf));
    for (const size of sizes) {
      expectRising(STEEL_PIPE_B36_10M.filter(([nps]) => nps === size).map(([, , wall]) => wall));
    }
  });

  it("has one outside diameter a size: the nominal size itself from NPS 14 up", () => {
    for (const [nps, outsideDiameter] of STEEL_PIPE_B36_10M) {
      if (inchesOf(nps) >= 14) expect(outsideDiameter).toBe(inchesOf(nps));
      expect(STEEL_PIPE_B36_10M.find(([other]) => other === nps)?.[1]).toBe(outsideDiameter);
    }
  });

  // Number of sizes a schedule has, as printed in the standard (counted in the fluids tables too, tests/slow).
  it.each([
    ["5", 22],
    ["10", 30],
    ["20", 15],
    ["30", 27],
    ["40", 26],
    ["STD", 36],
    ["60", 9],
    ["80", 24],
    ["XS", 36],
    ["100", 9],
    ["120", 12],
    ["140", 9],
    ["160", 20],
    ["XXS", 14],
  ])("schedule %s has %d sizes", (schedule, count) => {
    expect(STEEL_PIPE_B36_10M.filter(([, , , names]) => names.split(" ").includes(schedule))).toHaveLength(count);
  });

  // Source: ASME B36.10M, rows of the dimension table (from memory; also in every pipe handbook).
  it.each([
    ["6", 6.625, 0.28, "STD 40"],
    ["12", 12.75, 0.406, "40"],
    ["8", 8.625, 0.875, "XXS"],
    ["24", 24, 2.344, "160"],
  ])("prints NPS %s, %f in, wall %f in as %s", (...row) => {
    expect(STEEL_PIPE_B36_10M).toContainEqual(row);
  });
});

describe("ASME B36.19M", () => {
  it("has 25 sizes, rising", () => {
    expect(STAINLESS_PIPE_B36_19M).toHaveLength(25);
    expectRising(STAINLESS_PIPE_B36_19M.map(([nps]) => inchesOf(nps)));
  });

  // Source: ASME B36.19M, dimension table (from memory).
  it.each([
    ["1/2", 0.84, 0.065, 0.083, 0.109, 0.147],
    ["6", 6.625, 0.109, 0.134, 0.28, 0.432],
    ["14", 14, 0.156, 0.188, 0.375, 0.5],
    ["22", 22, 0.188, 0.218, null, null],
  ])("prints NPS %s", (...row) => {
    expect(STAINLESS_PIPE_B36_19M).toContainEqual(row);
  });
});

describe("ASTM D1785", () => {
  it("has 23 sizes, rising", () => {
    expect(PVC_PIPE_D1785).toHaveLength(23);
    expectRising(PVC_PIPE_D1785.map(([nps]) => inchesOf(nps)));
  });

  // Source: ASTM D1785, tables of outside diameter and wall (from memory). Unlike steel, 10 in schedule 80 is 0.593.
  it.each([
    ["2", 2.375, 0.154, 0.218, 0.25],
    ["6", 6.625, 0.28, 0.432, 0.562],
    ["10", 10.75, 0.365, 0.593, 0.843],
    ["24", 24, 0.687, 1.218, null],
  ])("prints NPS %s", (...row) => {
    expect(PVC_PIPE_D1785).toContainEqual(row);
  });
});

describe("polyethylene", () => {
  it("has 32 IPS and 15 DIPS diameters and 12 ratios, rising", () => {
    expect(POLYETHYLENE_IPS).toHaveLength(32);
    expect(POLYETHYLENE_DIPS).toHaveLength(15);
    expect(POLYETHYLENE_DIMENSION_RATIOS).toHaveLength(12);
    expectRising(POLYETHYLENE_IPS.map(([, outsideDiameter]) => outsideDiameter));
    expectRising(POLYETHYLENE_DIPS.map(([, outsideDiameter]) => outsideDiameter));
    expectRising(POLYETHYLENE_DIMENSION_RATIOS);
  });

  it("has the outside diameters of steel in IPS sizes and of ductile iron in DIPS sizes", () => {
    const ips = POLYETHYLENE_IPS.filter(([size]) => STEEL_PIPE_B36_10M.some(([nps]) => nps === size));
    expect(ips.length).toBe(27);
    for (const [size, outsideDiameter] of ips) {
      expect(STEEL_PIPE_B36_10M.find(([nps]) => nps === size)?.[1], size).toBe(outsideDiameter);
    }
    for (const [size, outsideDiameter] of POLYETHYLENE_DIPS) {
      expect(DUCTILE_IRON_C151.find(([other]) => other === size)?.[1], size).toBe(outsideDiameter);
    }
  });
});

describe("AWWA C151", () => {
  it("has 18 sizes, rising, with a wall a class", () => {
    expect(DUCTILE_IRON_C151).toHaveLength(18);
    expectRising(DUCTILE_IRON_C151.map(([size]) => inchesOf(size)));
    for (const [, , pressure, thickness] of DUCTILE_IRON_C151) {
      expect(pressure).toHaveLength(DUCTILE_IRON_PRESSURE_CLASSES.length);
      expect(thickness).toHaveLength(DUCTILE_IRON_THICKNESS_CLASSES.length);
    }
  });

  // Source: AWWA C150, thickness for internal pressure (from memory): t = 2 (Pw + 100 psi) D / (2 × 42 000 psi),
  // plus 0.08 in service allowance and the casting allowance, at least 0.25 in, printed to 0.01 in.
  it("follows the thickness rule of AWWA C150 in every pressure class", () => {
    const castingAllowance = (size: number): number =>
      size <= 8 ? 0.05 : size <= 12 ? 0.06 : size <= 42 ? 0.07 : size === 48 ? 0.08 : 0.09;
    let held = 0;
    for (const [size, outsideDiameter, walls] of DUCTILE_IRON_C151) {
      DUCTILE_IRON_PRESSURE_CLASSES.forEach((pressure, i) => {
        const wall = walls[i] ?? null;
        if (wall === null) return;
        const net = (2 * (pressure + 100) * outsideDiameter) / (2 * 42_000);
        const total = Math.max(0.25, net + 0.08 + castingAllowance(inchesOf(size)));
        expect(Math.abs(wall - total), `${size} in class ${pressure}`).toBeLessThan(0.0055);
        held += 1;
      });
    }
    expect(held).toBe(57);
  });

  // Source: AWWA C151, special thickness classes: even steps from class to class (from memory).
  it("rises in even steps through the special thickness classes", () => {
    const stepOf = (size: number): number =>
      size <= 24 ? 0.03 : size === 30 ? 0.04 : size === 36 ? 0.05 : size === 42 ? 0.06 : size === 48 ? 0.07 : 0.08;
    for (const [size, , , walls] of DUCTILE_IRON_C151) {
      const known = walls.filter((wall) => wall !== null);
      for (let i = 1; i < known.length; i += 1) {
        expect((known[i] as number) - (known[i - 1] as number), `${size} in`).toBeCloseTo(stepOf(inchesOf(size)), 9);
      }
    }
  });

  // Source: AWWA C104, standard lining 1/16 in for 3–12 in, 3/32 in for 14–24 in, 1/8 in for 30–64 in (from memory).
  it("is lined as C104 prints", () => {
    expect(DUCTILE_IRON_C151.filter((row) => row[4] === 1 / 16).map(([size]) => size)).toEqual([
      "3",
      "4",
      "6",
      "8",
      "10",
      "12",
    ]);
    expect(DUCTILE_IRON_C151.filter((row) => row[4] === 3 / 32).map(([size]) => size)).toEqual([
      "14",
      "16",
      "18",
      "20",
      "24",
    ]);
    expect(DUCTILE_IRON_C151.filter((row) => row[4] === 1 / 8)).toHaveLength(7);
  });
});

describe("ASTM B88", () => {
  it("has 18 sizes, rising, 1/8 in larger than their name", () => {
    expect(COPPER_TUBE_B88).toHaveLength(18);
    expectRising(COPPER_TUBE_B88.map(([size]) => inchesOf(size)));
    for (const [size, outsideDiameter] of COPPER_TUBE_B88) expect(outsideDiameter).toBe(inchesOf(size) + 0.125);
  });

  // Source: ASTM B88, theoretical weight, lb/ft, types K, L, M (from memory). Density of copper 0.323 lb/in³.
  const printed: Readonly<Record<string, readonly (number | null)[]>> = {
    "1/4": [0.145, 0.126, null],
    "3/8": [0.269, 0.198, 0.145],
    "1/2": [0.344, 0.285, 0.204],
    "5/8": [0.418, 0.362, null],
    "3/4": [0.641, 0.455, 0.328],
    "1": [0.839, 0.655, 0.465],
    "1-1/4": [1.04, 0.884, 0.682],
    "1-1/2": [1.36, 1.14, 0.94],
    "2": [2.06, 1.75, 1.46],
    "2-1/2": [2.93, 2.48, 2.03],
    "3": [4, 3.33, 2.68],
    "3-1/2": [5.12, 4.29, 3.58],
    "4": [6.51, 5.38, 4.66],
    "5": [9.67, 7.61, 6.66],
    "6": [13.9, 10.2, 8.92],
    "8": [25.9, 19.3, 16.5],
    "10": [40.3, 30.1, 25.6],
    "12": [57.8, 40.4, 36.7],
  };
  it.each(COPPER_TUBE_B88)("weighs what the standard prints at size %s", (size, outsideDiameter, ...walls) => {
    for (const [i, wall] of walls.entries()) {
      const weight = printed[size]?.[i] ?? null;
      const computed = wall === null ? null : Math.PI * (outsideDiameter - wall) * wall * 0.323 * 12;
      expect(computed === null, `type ${"KLM"[i]}`).toBe(weight === null);
      if (computed !== null && weight !== null) expect(Math.abs(computed / weight - 1)).toBeLessThan(0.006);
    }
  });
});

describe("EN 10220", () => {
  it("has 23 diameters and 25 walls, rising", () => {
    expect(STEEL_PIPE_EN_10220).toHaveLength(23);
    expect(EN_10220_WALLS).toHaveLength(25);
    expectRising(STEEL_PIPE_EN_10220.map(([dn]) => dn));
    expectRising(STEEL_PIPE_EN_10220.map(([, outsideDiameter]) => outsideDiameter));
    expectRising(EN_10220_WALLS);
  });

  it("names only preferred walls", () => {
    const walls: readonly number[] = EN_10220_WALLS;
    for (const [dn, , ...named] of STEEL_PIPE_EN_10220) {
      for (const wall of named) if (wall !== null) expect(walls, `DN${dn}`).toContain(wall);
    }
  });

  // Source: EN 10220, mass per metre, kg/m (from memory). Steel 0.0246615 (D − t) t.
  it.each([
    [15, 2, 0.952],
    [25, 2.6, 1.99],
    [50, 2.9, 4.11],
    [65, 2.9, 5.24],
    [80, 3.2, 6.76],
    [100, 3.6, 9.83],
    [125, 4, 13.4],
    [150, 4.5, 18.2],
    [200, 6.3, 33.1],
    [250, 6.3, 41.4],
    [300, 7.1, 55.5],
    [350, 8, 68.6],
    [400, 8.8, 86.3],
    [450, 10, 110],
    [500, 11, 135],
    [600, 12.5, 184],
  ])("weighs at DN%d, wall %f mm, what the standard prints: %f kg/m", (dn, wall, mass) => {
    const outsideDiameter = STEEL_PIPE_EN_10220.find((row) => row[0] === dn)?.[1] as number;
    expect(Math.abs((0.0246615 * (outsideDiameter - wall) * wall) / mass - 1)).toBeLessThan(0.005);
    expect(STEEL_PIPE_EN_10220.find((row) => row[0] === dn)?.[4]).toBe(wall);
  });
});

describe("nominal sizes", () => {
  it("pairs 39 NPS with their DN, rising", () => {
    expect(NOMINAL_DIAMETERS).toHaveLength(39);
    expectRising(NOMINAL_DIAMETERS.map(([nps]) => inchesOf(nps)));
    expectRising(NOMINAL_DIAMETERS.map(([, dn]) => dn));
  });

  it("makes DN 25 times NPS from NPS 4 up (ASME B36.10M)", () => {
    for (const [nps, dn] of NOMINAL_DIAMETERS) if (inchesOf(nps) >= 4) expect(dn).toBe(25 * inchesOf(nps));
  });

  it("has hose in rising sizes", () => {
    expectRising(HOSE_INCHES.map(inchesOf));
    expectRising(HOSE_MILLIMETRES);
    expect([HOSE_INCHES.length, HOSE_MILLIMETRES.length]).toEqual([15, 17]);
  });
});

describe("roughness", () => {
  it.each(Object.entries<Surface>(SURFACES))("takes %s within the range that is found", (_, surface) => {
    expect(surface.design).toBeGreaterThanOrEqual(surface.least);
    expect(surface.design).toBeLessThanOrEqual(surface.greatest);
  });

  // Source: Moody 1944, roughness in ft printed on the chart; 1 ft = 304.8 mm. Rounded to two figures in use.
  it.each([
    ["drawn tube", 0.000005],
    ["steel", 0.00015],
    ["asphalted iron", 0.0004],
    ["galvanised steel", 0.0005],
    ["cast iron", 0.00085],
  ] as const)("takes %s from the chart", (name, feet) => {
    expect(Math.abs(SURFACES[name].design / (feet * 304.8) - 1)).toBeLessThan(0.02);
  });
});
