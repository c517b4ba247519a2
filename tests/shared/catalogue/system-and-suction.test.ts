import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { call, type Outcome } from "../../../shared/catalogue/call.ts";
import { entryNamed } from "../../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";
import { unitOf } from "../../../src/basis/units.ts";

const FOOT = unitOf("ft").factor;
const GPM = unitOf("US gpm").factor;

const SUCTION = [["6in sch40", 20, "1 foot valve, 1 elbow 90 long"]];
const DISCHARGE = [
  ["6in sch40", 300, "1 swing check, 1 gate, 3 elbow 90 long"],
  ["8in HDPE DR17", 1200, "1 exit"],
];
const ROUTE = [
  [0, 100, "6in sch40", "1 gate"],
  [500, 160],
  [1500, 110, "", "1 exit"],
];

function run(id: string, ...args: readonly Argument[]): Outcome {
  return call(entryNamed(id) as Entry, args);
}

function number(id: string, ...args: readonly Argument[]): number {
  const outcome = run(id, ...args);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value as number;
}

function table(id: string, ...args: readonly Argument[]): readonly (readonly Cell[])[] {
  const outcome = run(id, ...args);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value as readonly (readonly Cell[])[];
}

function codes(outcome: Outcome): readonly string[] {
  return outcome.findings.map(({ code }) => code);
}

function message(outcome: Outcome): string {
  if (outcome.ok) throw new Error(`answered ${JSON.stringify(outcome.value)}`);
  return `${outcome.error.error} ${outcome.error.message}`;
}

/** The same lengths, in feet and in metres. */
function inMetres(rows: readonly (readonly Cell[])[], columns: readonly number[]): readonly (readonly Cell[])[] {
  return rows.map((row) =>
    row.map((cell, j) => (columns.includes(j) && typeof cell === "number" ? cell * FOOT : cell)),
  );
}

/** Liquid, temperature, levels, outlet pressure and altitude of a grade line, left out. */
const NO_PLACE = [null, null, null, null, null, null];

describe("laws of the cell functions", () => {
  const flow = fc.double({ min: 1, max: 3000, noNaN: true });
  const head = fc.double({ min: -20, max: 20, noNaN: true });
  const suctionSi = inMetres(SUCTION, [1]);
  const dischargeSi = inMetres(DISCHARGE, [1]);

  it("gives the same head in US and SI units", () => {
    fc.assert(
      fc.property(flow, fc.double({ min: 1, max: 500, noNaN: true }), (q, z) => {
        const us = number("TDH", q, z, SUCTION, DISCHARGE);
        const args = [q * GPM * 1e3, z * FOOT, suctionSi, dischargeSi, null, null, null, null, "SI"];
        expect(number("TDH", ...args) / FOOT / us).toBeCloseTo(1, 12);
      }),
      { numRuns: 40 },
    );
  });

  it("gives the same NPSH available in US, SI and metric units", () => {
    fc.assert(
      fc.property(flow, head, (q, lift) => {
        const us = number("NPSHA", q, lift, SUCTION, 3000, 10);
        const si = [q * GPM * 1e3, lift * FOOT, suctionSi, 3000 * FOOT, "10 psi", null, null, "SI"];
        const metric = [q * GPM * 3600, lift * FOOT, suctionSi, 3000 * FOOT, "10 psi", null, null, "METRIC"];
        // NPSHA may cross zero, so the difference is held against the pressure head of some 40 ft.
        expect(Math.abs(number("NPSHA", ...si) / FOOT - us)).toBeLessThan(1e-12 * (40 + Math.abs(us)) * 4);
        expect(Math.abs(number("NPSHA", ...metric) / FOOT - us)).toBeLessThan(1e-12 * (40 + Math.abs(us)) * 4);
      }),
      { numRuns: 40 },
    );
  });

  it("gives the same grade line in US and SI units", () => {
    const us = table("GRADELINE", 700, ROUTE, 200);
    const si = table("GRADELINE", 700 * GPM * 1e3, inMetres(ROUTE, [0, 1]), 200 * FOOT, ...NO_PLACE, "SI");
    for (const i of [1, 2, 3]) expect((si[i]?.[2] as number) / FOOT / (us[i]?.[2] as number)).toBeCloseTo(1, 12);
  });

  it("moves NPSH available one for one with the level", () => {
    fc.assert(
      fc.property(flow, head, head, (q, lift, rise) => {
        const gain = number("NPSHA", q, lift - rise, SUCTION) - number("NPSHA", q, lift, SUCTION);
        expect(gain).toBeCloseTo(rise, 9);
      }),
      { numRuns: 40 },
    );
  });

  it("lowers NPSH available and the maximum lift with altitude", () => {
    const altitude = fc.double({ min: 0, max: 14_000, noNaN: true });
    fc.assert(
      fc.property(altitude, fc.double({ min: 1, max: 10_000, noNaN: true }), (z, more) => {
        expect(number("NPSHA", 500, 10, SUCTION, z + more)).toBeLessThan(number("NPSHA", 500, 10, SUCTION, z));
        expect(number("MAXLIFT", 500, SUCTION, 8, 2, z + more)).toBeLessThan(number("MAXLIFT", 500, SUCTION, 8, 2, z));
      }),
      { numRuns: 40 },
    );
  });

  it("requires more head at more flow, and for static and pressure head alone at none", () => {
    fc.assert(
      fc.property(flow, fc.double({ min: 1e-3, max: 100, noNaN: true }), (q, more) => {
        expect(number("TDH", q + more, 50, SUCTION, DISCHARGE)).toBeGreaterThan(
          number("TDH", q, 50, SUCTION, DISCHARGE),
        );
      }),
      { numRuns: 40 },
    );
    expect(number("TDH", 0, 50, SUCTION, DISCHARGE)).toBeCloseTo(50, 12);
    // 10 psi of conventional water of SG 1 (998.2 kg/m³): 144 / 62.3156 × 10 = 23.1082 ft.
    expect(number("TDH", 0, 50, SUCTION, DISCHARGE, 5, 15, "SG 1, 1 cP")).toBeCloseTo(73.1082, 3);
  });

  it("draws a system curve through the total head", () => {
    const curve = table("SYSTEMCURVE", 50, SUCTION, DISCHARGE, 1500, 7);
    expect(curve).toHaveLength(8);
    for (const [q, h] of curve.slice(1)) {
      expect(h).toBeCloseTo(number("TDH", q as number, 50, SUCTION, DISCHARGE), 9);
    }
    expect(table("SYSTEMCURVE", 50, SUCTION, DISCHARGE, 1500)).toHaveLength(12);
  });

  it("spills total heads and NPSH over a column of flows", () => {
    const flows = [[100], [0], [900]];
    const heads = run("TDH", flows, 50, SUCTION, DISCHARGE);
    expect(heads.ok && heads.value).toEqual(flows.map(([q]) => [number("TDH", q as number, 50, SUCTION, DISCHARGE)]));
    const left = run("NPSHA", 500, [[5, 10, 15]], SUCTION);
    expect(left.ok && (left.value as readonly (readonly number[])[])[0]).toHaveLength(3);
  });
});

describe("what the cells refuse and remark on", () => {
  it("takes a range without filled rows as a lossless line, with a caution", () => {
    const blank = [
      [null, null, ""],
      ["", 0, null],
    ];
    const outcome = run("TDH", 500, 50, blank, DISCHARGE);
    expect(codes(outcome)).toContain("line-lossless");
    expect(number("TDH", 500, 50, blank, blank)).toBeCloseTo(50, 12);
    expect(codes(run("NPSHA", 500, 5, blank))).toContain("line-lossless");
  });

  it("refuses a line left out, and one half filled", () => {
    expect(message(run("TDH", 500, 50, null, DISCHARGE))).toMatch(/^#VALUE! Suction line is left out/);
    expect(message(run("TDH", 500, 50, [["6in sch40", null, ""]], DISCHARGE))).toMatch(/^#VALUE! Suction line row 1/);
    expect(message(run("TDH", 500, 50, [["6in sch4O0", 10, ""]], DISCHARGE))).toMatch(/^#N\/A /);
  });

  // By hand: an absolute pressure is that less the air of the site: 14.696 psia at sea level is open to the air; 12 psia is 2.696 psi
  // of vacuum, 6.23 ft of water at 68 °F.
  it("takes an absolute pressure on the source by a text, from the air of the site", () => {
    const open = number("NPSHA", 500, 5, SUCTION);
    expect(number("NPSHA", 500, 5, SUCTION, 0, "101.325 kPa(a)")).toBeCloseTo(open, 6);
    expect(open - number("NPSHA", 500, 5, SUCTION, 0, "12 psia")).toBeCloseTo(6.23, 1);
    // At 5000 ft the vessel is the same, the air is not: NPSHA by absolute pressure does not change.
    expect(number("NPSHA", 500, 5, SUCTION, 5000, "12 psia")).toBeCloseTo(
      number("NPSHA", 500, 5, SUCTION, 0, "12 psia"),
      9,
    );
    expect(number("NPSHA", 100, 1, SUCTION, 0, "0.83 bar(a)", "water", null, "METRIC")).toBeGreaterThan(0);
    expect(codes(run("NPSHA", 500, 5, SUCTION, 0, "14.7 psia"))).not.toContain("surface-pressure-atmospheric");
  });

  it.each([14.7, "14.7 psi", "1.013 bar", "101.3 kPa", 14.26, 15.13])(
    "doubts %s of gauge pressure on the source",
    (pressure) => {
      expect(codes(run("NPSHA", 1200, 15, SUCTION, 0, pressure))).toContain("surface-pressure-atmospheric");
    },
  );

  it.each([0, 14.2, 15.2, 10, "12 psia"])("does not doubt %s", (pressure) => {
    expect(codes(run("NPSHA", 1200, 15, SUCTION, 0, pressure))).not.toContain("surface-pressure-atmospheric");
  });

  it("says where a grade line ends above its outlet", () => {
    expect(codes(run("GRADELINE", 700, ROUTE, 300))).toContain("start-head-too-high");
  });

  it("refuses lay-flat hose under vacuum and warns of it in a total head", () => {
    const layFlat = [["6in layflat", 20, ""]];
    expect(codes(run("TDH", 500, 50, layFlat, DISCHARGE))).toContain("lay-flat-in-suction");
    expect(message(run("NPSHA", 500, 5, layFlat))).toMatch(/^#VALUE! .*6in layflat/);
    expect(message(run("MAXLIFT", 500, layFlat, 8))).toMatch(/^#VALUE! .*6in layflat/);
    expect(run("NPSHA", 500, -30, layFlat).ok).toBe(true);
  });

  it.each([
    [
      "a liquid without vapour pressure, for NPSH",
      run("NPSHA", 500, 5, SUCTION, null, null, "SG 1, 1 cP"),
      /vapor pressure/,
    ],
    ["the same, for the maximum lift", run("MAXLIFT", 500, SUCTION, 8, null, null, "SG 1, 1 cP"), /vapor pressure/],
    ["a surface below absolute zero", run("NPSHA", 500, 5, SUCTION, 0, -14.7), /source pressure must be at least/i],
    ["the same, at altitude", run("NPSHA", 500, 5, SUCTION, 5000, -12.5), /source pressure must be at least -12\.2/i],
    ["a negative flow", run("TDH", -1, 5, SUCTION, DISCHARGE), /^#VALUE! Flow must be at least 0/],
    ["one point", run("SYSTEMCURVE", 5, SUCTION, DISCHARGE, 100, 1), /points must be at least 2/i],
    ["half a point", run("SYSTEMCURVE", 5, SUCTION, DISCHARGE, 100, 2.5), /points must be a whole number/i],
    ["201 points", run("SYSTEMCURVE", 5, SUCTION, DISCHARGE, 100, 201), /points must be at most 200/i],
    ["a maximum flow of nothing", run("SYSTEMCURVE", 5, SUCTION, DISCHARGE, 0), /maximum flow must be above 0/i],
    ["an absolute pressure for a gauge", run("TDH", 5, 5, SUCTION, DISCHARGE, "20 psia"), /source pressure/i],
    ["a route of one row", run("GRADELINE", 5, [[0, 1, "6in sch40"]], 5), /at least two rows/],
    [
      "a route without a pipe",
      run(
        "GRADELINE",
        5,
        [
          [0, 1],
          [5, 1, "6in sch40"],
        ],
        5,
      ),
      /no pipe in its first row/,
    ],
    [
      "a route that turns back",
      run(
        "GRADELINE",
        5,
        [
          [0, 1, "6in sch40"],
          [0, 1],
        ],
        5,
      ),
      /chainages must increase/,
    ],
    [
      "an unknown pipe in a route",
      run(
        "GRADELINE",
        5,
        [
          [0, 1, "6in zink"],
          [5, 1],
        ],
        5,
      ),
      /^#N\/A /,
    ],
    [
      "a missing elevation",
      run(
        "GRADELINE",
        5,
        [
          [0, 1, "6in sch40"],
          [5, null],
        ],
        5,
      ),
      /Route row 2: elevation is left out/,
    ],
    [
      "a text for an elevation",
      run(
        "GRADELINE",
        5,
        [
          [0, 1, "6in sch40"],
          [5, "high"],
        ],
        5,
      ),
      /Route row 2: elevation/,
    ],
    [
      "a fifth column without a heading",
      run(
        "GRADELINE",
        5,
        [
          [0, 1, "6in sch40", "", 7],
          [5, 1],
        ],
        5,
      ),
      /Route row 1 was given as 7; give chainage, elevation, pipe, fittings, or a header row/,
    ],
  ])("refuses %s", (_, outcome, words) => {
    expect(message(outcome)).toMatch(words);
  });

  it("cautions on a margin it assumes and says the practical lift", () => {
    const outcome = run("MAXLIFT", 50, SUCTION, 2);
    expect(codes(outcome)).toEqual(
      expect.arrayContaining(["npsh-margin-assumed", "lift-beyond-practice", "inlet-pressure-low"]),
    );
  });
});

describe("a route as it is typed", () => {
  const plain = table("GRADELINE", 700, ROUTE, 200);

  it("answers with a row a vertex under its header", () => {
    expect(plain[0]).toEqual(["chainage, ft", "elevation, ft", "hydraulic grade, ft", "pressure, psig", "remark"]);
    expect(plain.slice(1).map(([chainage]) => chainage)).toEqual([0, 500, 1500]);
  });

  it("reads a heading in any order, passes over blank rows and other columns", () => {
    const typed = [
      ["note", "pipe", "elevation", "chainage", "fittings"],
      ["pump", "6in sch40", 100, 0, "1 gate"],
      [null, null, null, null, null],
      ["summit", "", 160, 500, null],
      ["outlet", null, 110, 1500, "1 exit"],
      ["", "", "", "", ""],
    ];
    expect(table("GRADELINE", 700, typed, 200)).toEqual(plain);
  });

  it("takes the units of its heading, and of texts", () => {
    const metres = [["chainage, m", "elevation (m)", "pipe", "fittings"], ...inMetres(ROUTE, [0, 1])];
    const texts = ROUTE.map(([x, z, ...rest]) => [`${Number(x) * FOOT} m`, `${Number(z) * FOOT} m`, ...rest]);
    for (const route of [metres, texts]) {
      const answer = table("GRADELINE", 700, route, 200);
      for (const i of [1, 2, 3]) expect(answer[i]?.[2]).toBeCloseTo(plain[i]?.[2] as number, 9);
    }
  });

  it("takes feet from a heading in a call in SI units", () => {
    const feet = [["chainage (ft)", "elevation, ft", "pipe", "fittings"], ...ROUTE];
    const answer = table("GRADELINE", "700 gpm", feet, "200 ft", ...NO_PLACE, "SI");
    for (const i of [1, 2, 3]) {
      expect(answer[i]?.[0]).toBeCloseTo((plain[i]?.[0] as number) * FOOT, 9);
      expect(answer[i]?.[2]).toBeCloseTo((plain[i]?.[2] as number) * FOOT, 9);
    }
  });

  it("refuses a heading whose unit it does not know or whose columns are missing", () => {
    const heading = (...cells: readonly Cell[]) => run("GRADELINE", 700, [cells, ...ROUTE], 200);
    expect(message(heading("chainage, furlong", "elevation", "pipe", "fittings"))).toMatch(/furlong/);
    expect(message(heading("chainage", "height", "pipe", "fittings"))).toMatch(/elevation/);
  });

  it("goes on with a pipe until another is named, from that row on", () => {
    const two = (third: string) => [
      [0, 100, "6in sch40"],
      [500, 100, third],
      [1000, 100],
    ];
    const [, , same] = table("GRADELINE", 700, two(""), 300);
    const [, , change, end] = table("GRADELINE", 700, two("4in sch40"), 300);
    expect(change?.[2]).toBe(same?.[2]);
    const [, , , sameEnd] = table("GRADELINE", 700, two(""), 300);
    expect(end?.[2] as number).toBeLessThan(sameEnd?.[2] as number);
  });

  it("cautions on another pipe in the last row", () => {
    const last = [...ROUTE.slice(0, 2), [1500, 110, "8in sch40"]];
    expect(codes(run("GRADELINE", 700, last, 200))).toContain("route-last-pipe-unused");
    expect(codes(run("GRADELINE", 700, [...ROUTE.slice(0, 2), [1500, 110, "6in sch40"]], 200))).not.toContain(
      "route-last-pipe-unused",
    );
  });

  it("judges vacuum by the elevation where the heading says it is above sea level", () => {
    const summit = (word: string) => [
      ["chainage", word, "pipe"],
      [0, 5999, "6in sch40"],
      [500, 6030],
      [1500, 5999],
    ];
    // A still line with its grade line at 6000 ft stands 30 ft above it: at sea level 3.9 ft short of the vapour
    // pressure; at 6030 ft the air is 80.9 kPa (27.1 ft of water), so the column parts.
    const remark = (word: string) => table("GRADELINE", 0, summit(word), 6000)[2]?.[4];
    expect(remark("elevation")).toBe("air release");
    expect(remark("elevation above sea level, ft")).toBe("column separation");
    expect(remark("elevation (amsl)")).toBe("column separation");
  });
});
