import { describe, expect, it } from "vitest";
import { call } from "../../../shared/catalogue/call.ts";
import { entryNamed } from "../../../shared/catalogue/catalogue.ts";
import type { Entry } from "../../../shared/catalogue/entry.ts";
import type { Argument, Cell } from "../../../shared/cells/cell.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { cell, numberIn, refusal, remarks } from "../../support/cells.ts";

type Rows = readonly (readonly Cell[])[];

/** The falling curve of the interpolation cases, US gpm, ft, fraction, ft. */
const ROWS: Rows = [
  [0, 140, 0, 0],
  [100, 139, 0.34, 5],
  [200, 135, 0.56, 5.5],
  [300, 128, 0.7, 6.5],
  [400, 118, 0.77, 8],
  [500, 105, 0.78, 10.5],
  [600, 88, 0.73, 14],
];
const HEADING = ["flow", "head", "efficiency", "NPSHR"];
const CURVE: Rows = [HEADING, ...ROWS];
/** 60 + Q²/2500 ft with Q in US gpm. */
const SYSTEM: Rows = [
  ["flow", "head"],
  [0, 60],
  [300, 96],
  [600, 204],
];

describe("a pump curve in a range", () => {
  const head = (curve: Argument, units = "US") => numberIn("PUMPHEAD", curve, "150 gpm", null, null, null, units);
  // SciPy's PchipInterpolator, as in the published cases.
  const EXPECTED = 137.436363636;

  it.each([
    { why: "with a heading row", curve: CURVE },
    { why: "without one", curve: ROWS },
    {
      why: "with blank rows, also as zeros",
      curve: [[null, "", null, null], HEADING, ...ROWS.slice(0, 3), [0, 0, 0, 0], ...ROWS.slice(3), ["", "", "", ""]],
    },
    {
      why: "in another order with the reader's own columns",
      curve: [
        ["note", "NPSH required (ft)", "Total head, ft", "Q [gpm]"],
        ...ROWS.map(([flow, head, , npshr]) => ["as tested", npshr, head, flow] as Cell[]),
      ],
    },
    { why: "in capitals", curve: [["FLOW", "HEAD"], ...ROWS.map((row) => row.slice(0, 2))] },
    { why: "of texts with their own units", curve: ROWS.map(([flow, head]) => [`${flow} gpm`, `${head} ft`]) },
  ])("$why", ({ curve }) => {
    expect(head(curve)).toBeCloseTo(EXPECTED, 8);
  });

  it("takes the units of its headings over the unit set", () => {
    const inGallons = [["flow, US gpm", "head, ft"], ...ROWS.map((row) => row.slice(0, 2))];
    expect(head(inGallons, "SI")).toBeCloseTo(EXPECTED * 0.3048, 8);
    const inMetres = [
      ["Q (m³/h)", "H (m)"],
      ...ROWS.map(([flow, h]) => [(flow as number) * 0.2271247, (h as number) * 0.3048]),
    ];
    expect(head(inMetres)).toBeCloseTo(EXPECTED, 4);
  });

  it("reads its own answers back: a spilled system curve, a spilled viscous curve", () => {
    const spilled = cell("VISCOUSCURVE", CURVE, 1750, "1.2 cSt") as Rows;
    expect(head(spilled)).toBeCloseTo(EXPECTED, 8);
    const metric = cell(
      "VISCOUSCURVE",
      CURVE.map((row) => row.slice(0, 3)),
      1750,
      "1.2 cSt",
      null,
      null,
      null,
      null,
      null,
      "SI",
    );
    expect(numberIn("PUMPHEAD", metric as Rows, 30, null, null, null, "US")).toBeCloseTo(
      numberIn("PUMPHEAD", metric as Rows, "30 gpm", null, null, null, "US"),
      10,
    );
  });

  it.each([
    {
      why: "no head column",
      curve: [
        ["flow", "efficiency"],
        [0, 0],
      ],
      says: /#VALUE! Curve has no column “head”; head one of its columns “head”, “h”/,
    },
    {
      why: "a cell that is no number",
      curve: [HEADING, ...ROWS.slice(0, 2), [200, "high", 0.5, 5]],
      says: /Curve row 4: head is not a number: “high”/,
    },
    {
      why: "a missing head",
      curve: [HEADING, ...ROWS.slice(0, 2), [200, null, 0.5, 5]],
      says: /Curve row 4: head is left out or blank/,
    },
    {
      why: "flows that fall",
      curve: [...ROWS].reverse(),
      says: /Curve row 2: flow of 500 US gpm is not above that of the row before, 600 US gpm/,
    },
    {
      why: "an unknown unit",
      curve: [["flow, furlong", "head"], ...ROWS.map((row) => row.slice(0, 2))],
      says: /Curve column “flow” has the unit “furlong”/,
    },
    {
      why: "a unit of another kind",
      curve: [["flow, ft", "head"], ...ROWS.map((row) => row.slice(0, 2))],
      says: /Curve column “flow” was given as “ft”, a unit of another kind/,
    },
    {
      why: "two head columns",
      curve: [["flow", "head", "head, m"], ...ROWS.map((row) => row.slice(0, 3))],
      says: /“head” is named by more than one heading: “head” and “head, m”/,
    },
    {
      why: "a fifth column without heading",
      curve: ROWS.map((row) => [...row, 7]),
      says: /Curve row 1 was given as 7/,
    },
    { why: "two rows", curve: ROWS.slice(0, 2), says: /Curve needs 3 points or more and has 2/ },
    { why: "a single cell", curve: 7, says: /Curve row 1: head is left out/ },
    { why: "a heading alone", curve: [HEADING], says: /Curve has no filled rows; give rows of flow, head/ },
  ])("is refused for $why", ({ curve, says }) => {
    expect(refusal("PUMPHEAD", curve as Argument, 150)).toMatch(says);
  });

  it("hands back an error value in it", () => {
    const broken = call(entryNamed("PUMPHEAD") as never, [[...ROWS, [700, { error: "#DIV/0!" }]], 150]);
    expect(broken.ok ? undefined : broken.error).toEqual({ error: "#DIV/0!" });
  });
});

describe("an efficiency column", () => {
  const withEfficiency = (efficiencies: readonly Cell[], heading = "efficiency"): Rows => [
    ["flow", "head", heading],
    ...efficiencies.map((efficiency, i) => [100 * i, 140 - 10 * i, efficiency]),
  ];
  const read = (curve: Rows) => numberIn("PUMPEFFICIENCY", curve, 200);

  it("of fractions is taken as it is, of percentages with a caution", () => {
    expect(read(withEfficiency([0, 0.5, 0.7, 0.6]))).toBe(0.7);
    expect(read(withEfficiency([0, 50, 70, 60]))).toBe(0.7);
    expect(remarks("PUMPEFFICIENCY", withEfficiency([0, 0.5, 0.7, 0.6]), 200)).toEqual([]);
    expect(remarks("PUMPEFFICIENCY", withEfficiency([0, 50, 70, 60]), 200)).toEqual([
      "check efficiency-read-as-percent",
    ]);
  });

  it("headed in per cent, or of texts, needs no caution", () => {
    expect(read(withEfficiency([0, 50, 70, 60], "efficiency, %"))).toBeCloseTo(0.7, 15);
    expect(read(withEfficiency([0, 0.8, 1.2, 1], "efficiency [%]"))).toBeCloseTo(0.012, 15);
    expect(read(withEfficiency(["0 %", "50 %", "70 %", "60 %"]))).toBeCloseTo(0.7, 15);
    expect(remarks("PUMPEFFICIENCY", withEfficiency([0, 50, 70, 60], "efficiency, %"), 200)).toEqual([]);
  });

  it("of both kinds is refused, and so is one above 1 that is no percentage", () => {
    expect(refusal("PUMPEFFICIENCY", withEfficiency([0, 0.5, 70, 60]), 200)).toMatch(
      /mixes percentages \(curve row 4\) and fractions \(curve row 3\)/,
    );
    expect(refusal("PUMPEFFICIENCY", withEfficiency([0, 0.5, 1.3, 0.6]), 200)).toMatch(/efficiency must be at most 1/);
    expect(refusal("PUMPEFFICIENCY", withEfficiency([0, 50, 101, 60]), 200)).toMatch(/efficiency must be at most 1/);
  });
});

describe("reading a pump", () => {
  it("spills over a column of flows and marks the rows off the curve", () => {
    const spilled = cell("PUMPHEAD", CURVE, [[0], [150], [601]]) as Rows;
    expect(spilled[0]?.[0]).toBe(140);
    expect(spilled[1]?.[0]).toBeCloseTo(137.436363636, 8);
    expect(spilled[2]?.[0]).toMatchObject({ error: "#VALUE!" });
  });

  it("takes power with the specific gravity", () => {
    const water = numberIn("PUMPPOWER", CURVE, 300);
    expect(numberIn("PUMPPOWER", CURVE, 300, null, null, 1.2) / water).toBeCloseTo(1.2, 12);
    expect(water).toBeCloseTo(numberIn("SHAFTPOWER", 300, 128, 0.7), 12);
    expect(refusal("PUMPPOWER", CURVE, 300, null, null, 0)).toMatch(/SG must be above 0/);
  });

  it("refuses ratios of 0 and beyond their range by name", () => {
    expect(refusal("PUMPHEAD", CURVE, 300, 0)).toMatch(/Speed ratio must be at least 0.2; 0 was given/);
    expect(refusal("PUMPHEAD", CURVE, 300, 1, 1.1)).toMatch(/Trim ratio must be at most 1; 1.1 was given/);
  });
});

describe("OPERATINGPOINT", () => {
  /** Arrangement, SG, speed of the curve and losses of own rows. */
  const BLANK = [null, null, null, null];
  const OUT = [
    "flow",
    "head",
    "efficiency",
    "shaft power",
    "NPSHR",
    "% of BEP flow",
    "pumps running",
    "what it does",
    "pump",
  ];

  it("spills names over values", () => {
    const [names, values] = cell("OPERATINGPOINT", CURVE, SYSTEM) as Rows;
    expect(names?.map((name) => String(name).split(",")[0])).toEqual(OUT);
    const [flow, head, efficiency, power, , best] = values as readonly number[] as [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    expect(head).toBeCloseTo(60 + flow ** 2 / 2500, 9);
    expect(head).toBeCloseTo(numberIn("PUMPHEAD", CURVE, flow), 9);
    expect(power).toBeCloseTo(numberIn("SHAFTPOWER", flow, head, efficiency), 9);
    expect(best).toBeCloseTo(flow / 5, 9);
  });

  it("agrees in US and SI units to 1e-12", () => {
    const [, us] = cell("OPERATINGPOINT", CURVE, SYSTEM, 0.95, 0.97, 2) as Rows;
    const metres = (rows: Rows): Rows =>
      rows.map((row, i) =>
        i === 0 ? row : row.map((cell, j) => (j === 0 ? `${cell} gpm` : j === 2 ? cell : `${cell} ft`)),
      );
    const [, si] = cell("OPERATINGPOINT", metres(CURVE), metres(SYSTEM), 0.95, 0.97, 2, ...BLANK, "SI") as Rows;
    const perUnit = [0.0630901964, 0.3048, 1, 0.74569987158227, 0.3048, 1];
    for (const [i, factor] of perUnit.entries()) {
      expect((si?.[i] as number) / ((us?.[i] as number) * factor) - 1).toBeLessThanOrEqual(1e-12);
      expect((si?.[i] as number) / ((us?.[i] as number) * factor) - 1).toBeGreaterThanOrEqual(-1e-12);
    }
  });

  // 1.2 times the weight takes 1.2 times the power.
  it("gives the power with the liquid whose SG is stated", () => {
    const powerOf = (...rest: readonly (number | null)[]) =>
      Number((cell("OPERATINGPOINT", CURVE, SYSTEM, null, null, null, null, ...rest) as Rows)[1]?.[3]);
    expect(powerOf(1.2) / powerOf()).toBeCloseTo(1.2, 12);
    expect(refusal("OPERATINGPOINT", CURVE, SYSTEM, null, null, null, null, 1050)).toMatch(/at most 25/);
  });

  it("leaves cells empty for what the curve does not give", () => {
    const bare = CURVE.map((row) => row.slice(0, 2));
    const [, values] = cell("OPERATINGPOINT", bare, SYSTEM) as Rows;
    expect(values?.slice(2)).toEqual(["", "", "", "", 1, "runs", ""]);
  });

  it("says of pumps together what each gives, and its power only where that is known", () => {
    const bare = CURVE.map((row) => row.slice(0, 2));
    const said = (curve: Argument): string => {
      const found = call(entryNamed("OPERATINGPOINT") as Entry, [curve, SYSTEM, null, null, 2]);
      const together = found.findings.find(({ code }) => code === "figures-of-several-pumps");
      return together === undefined ? "" : findingText(together, "US");
    };
    expect(said(bare)).toMatch(/each gives .* gpm at .* ft; efficiency/);
    expect(said(CURVE)).toMatch(/each gives .* gpm at .* ft and takes .* hp; efficiency/);
  });

  it("refuses in words what has no answer", () => {
    const flat: Rows = [
      [0, 0],
      [600, 10],
    ];
    expect(refusal("OPERATINGPOINT", CURVE, flat)).toMatch(
      /runs off the end of its curve: at 600 US gpm, the last flow given, it still has 78 ft of head more/,
    );
    expect(
      refusal("OPERATINGPOINT", CURVE, [
        [0, 150],
        [600, 200],
      ]),
    ).toMatch(/cannot reach the system head.*10 ft of head short/);
    expect(
      refusal("OPERATINGPOINT", CURVE, [
        [0, 10],
        [300, 20],
      ]),
    ).toMatch(/system curve ends at 300 US gpm/);
    expect(refusal("OPERATINGPOINT", CURVE, SYSTEM, null, null, 1.5)).toMatch(/Number of pumps must be a whole number/);
    expect(refusal("OPERATINGPOINT", CURVE, SYSTEM, null, null, 2, "abreast")).toMatch(
      /“parallel” or “series”|"parallel" or "series"/,
    );
  });
});

describe("a system curve in a range", () => {
  const at = (rows: Rows): number => (cell("OPERATINGPOINT", CURVE, rows) as Rows)[1]?.[0] as number;
  const CLOSED: Rows = [
    ["flow", "head"],
    [0, 0],
    [300, 60],
    [600, 240],
  ];

  it("keeps the first row of a closed loop, no flow and no head, with a caution", () => {
    // Q²/1500 ft by hand: the points lie on it, so the answer does.
    const flow = at(CLOSED);
    expect(numberIn("PUMPHEAD", CURVE, flow)).toBeCloseTo(flow ** 2 / 1500, 9);
    expect(at(CLOSED.slice(1))).toBe(flow);
    expect(remarks("OPERATINGPOINT", CURVE, CLOSED)).toContain("check zero-may-be-blank");
    expect(remarks("OPERATINGPOINT", CURVE, SYSTEM)).not.toContain("check zero-may-be-blank");
  });

  it("passes over blank rows wherever they stand, as nothing or as zeros", () => {
    const blanks: Rows = [
      [null, null],
      ["flow", "head"],
      [0, 0],
      [0, 60],
      ["", ""],
      [300, 96],
      [0, 0],
      [600, 204],
      [0, 0],
    ];
    expect(at(blanks)).toBe(at(SYSTEM));
    expect(at([["flow", "head"], ["", ""], ...SYSTEM.slice(1)])).toBe(at(SYSTEM));
  });
});

describe("SHAFTPOWER", () => {
  it("takes an efficiency as a fraction or in percent", () => {
    expect(numberIn("SHAFTPOWER", 1000, 100, "75 %")).toBe(numberIn("SHAFTPOWER", 1000, 100, 0.75));
    expect(numberIn("SHAFTPOWER", 1000, 100, 75)).toBe(numberIn("SHAFTPOWER", 1000, 100, 0.75));
    expect(refusal("SHAFTPOWER", 1000, 100, 101)).toMatch(/Efficiency must be at most 100 %; 101 % was given/);
    expect(refusal("SHAFTPOWER", 1000, 100, 0)).toMatch(/Efficiency must be above 0 %/);
  });
});

describe("VISCOUSCURVE", () => {
  it("takes a plain number as dynamic viscosity in the unit set, a text as either", () => {
    const best = (viscosity: Argument, sg: number) =>
      (cell("VISCOUSCURVE", CURVE, 1750, viscosity, sg) as Rows)[6]?.[0];
    // 90 cP at SG 0.9 is 90/(0.9 · 0.9982) = 100.18 cSt.
    expect(best(90, 0.9)).toBe(best("90 cP", 0.9));
    expect(best(90, 0.9) as number).toBeCloseTo(best(`${90 / (0.9 * 0.9982)} cSt`, 0.9) as number, 9);
    expect(refusal("VISCOUSCURVE", CURVE, 1750, "90 ft")).toMatch(
      /Viscosity was given as “90 ft”, a unit of another kind/,
    );
    expect(best("90", 0.9)).toBe(best(90, 0.9));
    // 550 SSU is 0.22 · 550 − 135/550 = 120.7545 mm²/s.
    expect(best("550 SSU", 0.9) as number).toBeCloseTo(best("120.754545454545 cSt", 0.9) as number, 9);
    expect(remarks("VISCOUSCURVE", CURVE, 1750, "550 SSU")).toContain("check viscosity-from-saybolt");
    expect(remarks("VISCOUSCURVE", CURVE, 1750, "90")).toContain("check number-as-text");
  });

  it("takes the liquid by its name in their place, and asks for one of both", () => {
    const stated = cell("VISCOUSCURVE", CURVE, 1750, "100 cSt", 0.9) as Rows;
    const named = cell("VISCOUSCURVE", CURVE, 1750, null, null, null, null, "SG 0.9, 100 cSt", 68) as Rows;
    expect(named.length).toBe(stated.length);
    stated.slice(1).forEach((row, i) => {
      row.forEach((figure, j) => {
        const other = named[i + 1]?.[j];
        if (typeof figure === "number") expect((other as number) - figure).toBeCloseTo(0, 8);
        else expect(other).toBe(figure);
      });
    });
    expect(refusal("VISCOUSCURVE", CURVE, 1750)).toMatch(
      /Viscosity is left out or blank; give "120 cSt" or the liquid/,
    );
  });

  it("is what PUMPMAXPOWER reads of a curve with water and a thick liquid", () => {
    const thick = cell("VISCOUSCURVE", CURVE, 1750, "100 cSt", 0.9) as Rows;
    const read = (of: Rows) => of.map((row) => row.slice(0, 3));
    const apart = cell("PUMPMAXPOWER", read(thick), null, null, 0.9) as Rows;
    const asked = [CURVE, null, null, 0.9, null] as const;
    const once = cell("PUMPMAXPOWER", ...asked, 1750, "SG 0.9, 100 cSt", 68) as Rows;
    const water = cell("PUMPMAXPOWER", ...asked) as Rows;
    expect(once[1]?.[0] as number).toBeCloseTo(apart[1]?.[0] as number, 8);
    expect(once[1]?.[0] as number).toBeGreaterThan(1.05 * (water[1]?.[0] as number));
  });

  it("leaves power at shutoff empty and the shutoff head alone", () => {
    const [, shutoff] = cell("VISCOUSCURVE", CURVE, 1750, "200 cSt") as Rows;
    expect(shutoff).toEqual([0, 140, 0, "", ""]);
  });
});

describe("heating by the specific heat of the liquid", () => {
  // 20 kW of losses at every flow: 20 kW/(998.2 kg/m³ · c_p · 1 K), c_p of water 4184 J/(kg·K), of oil 1884.
  const LOSSES: Rows = [
    ["flow", "head", "power"],
    [0, 100, 20],
    [5, 100, 24.894499015],
    [10, 100, 29.78899803],
    [20, 100, 39.57799606],
    [40, 90, 55.240392908],
  ];
  const leastFlow = (liquid: string, specificHeat: string | null = null) =>
    (
      cell("MINTHERMALFLOW", LOSSES, "1 K difference", null, liquid, null, specificHeat, null, null, "SI") as Rows
    )[1]?.[0];

  it("takes that of oil for diesel, which is warm sooner, unless one is stated", () => {
    expect(leastFlow("sewage")).toBeCloseTo(4.789, 2);
    expect(leastFlow("diesel")).toBeCloseTo(10.635, 2);
    expect(leastFlow("diesel", "4.184 kJ/(kg·K)")).toBeCloseTo(4.789, 2);
    expect(remarks("SHUTOFFHEATING", 30, 60, 300, "diesel", null, null, "SI")).toContain(
      "assumed specific-heat-assumed",
    );
  });
});
