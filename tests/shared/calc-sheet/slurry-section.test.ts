import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { tableCell } from "../../../shared/calc-sheet/expression.ts";
import { VERDICT_TABLE } from "../../../shared/calc-sheet/verdicts/verdict-items.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { isCellError, isRange } from "../../../shared/cells/cell.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { settlingRuns } from "../../../shared/package/settling.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { dutyRead, dutyText, type Fields, pumpText } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";
import { longestChain } from "../../support/longest-chain.ts";
import { remarksIn } from "../../support/section-remarks.ts";

/**
 * The line of 9-slurry-velocity-007 as a duty: 200 mm, 4 m/s, d50 0.4 mm, SG 2.65, 15 % by volume in SG 1 at 1.0034 cSt.
 * 15 % by volume is 0.15 × 2.65/1.2475 = 31.8637275 % by weight.
 */
const PIPE = "ID 200 mm rough 0.045 mm";
const FIELDS: Fields = {
  flow: "0.125663706143592 m3/s",
  pumpLevel: "-2",
  deliveryLevel: "20",
  liquid: "SG 1, 1.0034 cSt, pv 2.3 kPa",
  solids: "31.8637274549",
  solidsGravity: "2.65",
  medianSize: "0.4",
};

/** A curve through round figures, made up for this test: 45 m and 70 % at the duty flow. */
const PUMP = pumpText(
  [
    ["0", "50"],
    ["60", "48", "55"],
    ["0.125663706143592 m3/s", "45", "70"],
    ["180", "38", "64"],
  ],
  { speed: "1000", impellerDiameter: "500" },
);

const typed = (fields: Fields = {}, more: Partial<DutyText> = {}): DutyText =>
  dutyText(
    { ...FIELDS, ...fields },
    {
      unitSet: "SI",
      suctionLine: [{ pipe: PIPE, length: "10", fittings: "" }],
      dischargeLine: [
        { pipe: PIPE, length: "90", fittings: "" },
        { pipe: PIPE, length: "100", fittings: "K 2" },
      ],
      ...more,
    },
  );

const duty = (fields: Fields = {}, more: Partial<DutyText> = {}): Duty => dutyRead(typed(fields, more));

const cellsOf = (of: Duty) => workOut(dutyPlan(of)).cells;

/** The verdict on a subject, by the table in the workings. */
function verdictOf(of: Duty, subject: string): { readonly state: string; readonly text: string } {
  const table = cellsOf(of).get(VERDICT_TABLE.key);
  const row = table !== undefined && isRange(table) ? table.find(([name]) => name === subject) : undefined;
  return { state: String(row?.[1]), text: String(row?.[2]) };
}

it("reads half a per cent of solids as half a per cent", () => {
  // By hand: (0.5/2.65) / (0.5/2.65 + 99.5) = 0.1892685 %.
  expect(cellsOf(duty({ solids: "0.5 %" })).get("pumpedByVolume")).toBeCloseTo(0.1892685, 6);
  const formulas = sheetsOf(typed({ solids: "0.5 %" })).duty.cells.flatMap(({ f }) =>
    f?.includes("with solids") ? [f] : [],
  );
  // The commas of the liquid's own words stay; those of a number in such a country do not.
  expect(formulas[0]).toMatch(
    /^liquid&" with solids "&.*SUBSTITUTE\(solids_by_weight,",","\."\)&" % by weight"&", SG "&SUBSTITUTE/,
  );
});

const HEAD_RATIO = 1 - 0.0385 * 1.65 * (1 + 4 / 2.65) * 0.318637274549 * Math.log(0.4 / 0.0227);

describe("the slurry on the sheet", () => {
  const cells = cellsOf(duty());

  it("is made of what was stated", () => {
    // By hand: 1 + 0.15 × 1.65; 0.15 × 2.65 × 998.2 kg/m³ × 0.125663706 m³/s × 3.6 = 179.5044 t/h.
    expect(cells.get("pumpedGravity")).toBeCloseTo(1.2475, 8);
    expect(cells.get("pumpedByVolume")).toBeCloseTo(15, 8);
    expect(cells.get("drySolids")).toBeCloseTo(0.15 * 2.65 * 998.2 * 0.125663706143592 * 3.6, 6);
    expect(cells.get("liquidAsPumped")).toBe(
      "SG 1, 1.0034 cSt, pv 2.3 kPa with solids 31.8637274549 % by weight, SG 2.65, d50 0.4 mm",
    );
    expect(cells.get("density")).toBeCloseTo(1.2475 * 998.2, 5);
  });

  it("has the published friction in every run, in metres of slurry", () => {
    // 9-slurry-velocity-007: 0.0923887138141 m of water per m; over 1.2475. Clear: 0.0617557562479.
    for (const [row, length] of [10, 90, 100].entries()) {
      const slurry = cells.get(tableCell("slurryFriction", row, "slurryHead"));
      expect(slurry).toBeCloseTo((0.0923887138141 / 1.2475) * length, 6);
      expect(cells.get(tableCell("slurryFriction", row, "liquidHead"))).toBeCloseTo(0.0617557562479 * length, 5);
      expect(cells.get(tableCell("slurryFriction", row, "regime"))).toBe("suspended");
    }
    expect(cells.get("suctionPipe")).toBeCloseTo((0.0923887138141 / 1.2475) * 10, 6);
    expect(cells.get("dischargePipe")).toBeCloseTo((0.0923887138141 / 1.2475) * 190, 5);
  });

  it("adds up to the head of slurry and the head on water by Cave", () => {
    // By hand: 20 m static, 200 m of friction, K 2 at 4²/2g = 0.815772978 m.
    const head = 20 + (0.0923887138141 / 1.2475) * 200 + (2 * 16) / (2 * 9.80665);
    expect(cells.get("totalHead")).toBeCloseTo(head, 5);
    expect(cells.get("headCheck")).toBeCloseTo(0, 9);
    expect(cells.get("headRatio")).toBeCloseTo(HEAD_RATIO, 8);
    expect(cells.get("waterHead")).toBeCloseTo(head / HEAD_RATIO, 5);
    expect(cells.get("powerOverWater")).toBeCloseTo(1.2475, 8);
    // Clear: 0.0617557562479 m per m.
    const clear = 20 + 0.0617557562479 * 200 + (2 * 16) / (2 * 9.80665);
    expect(cells.get("clearTotalHead")).toBeCloseTo(clear, 5);
    expect(cells.get("slurryOverClear")).toBeCloseTo(head - clear, 5);
  });

  it("counts margin, and pressures by the density of the slurry", () => {
    // 5 % of friction and fittings; 98.0665 kPa is 10.018 m of SG 1 at 998.2 kg/m³ and 8.0305 m of slurry.
    const more = cellsOf(duty({ frictionMargin: "5", deliveryPressure: "98.0665" }));
    const losses = (0.0923887138141 / 1.2475) * 200 + (2 * 16) / (2 * 9.80665);
    expect(more.get("marginHead")).toBeCloseTo(0.05 * losses, 5);
    expect(more.get("pressureHead")).toBeCloseTo(10_000 / 998.2 / 1.2475, 5);
    expect(more.get("ratedHead")).toBeCloseTo(20 + 10_000 / 998.2 / 1.2475 + 1.05 * losses, 5);
  });

  it("has the NPSH of the heavier liquid", () => {
    // By hand: (101.325 − 2.3) kPa over 998.2 × 1.2475 × 9.80665 = 8.109 m, + 2 m flooded, − 0.74059 m of suction.
    const surface = 99_025 / (998.2 * 1.2475 * 9.80665);
    expect(cells.get("npshAvailable")).toBeCloseTo(surface + 2 - (0.0923887138141 / 1.2475) * 10, 5);
    const known = cellsOf(duty({ npshRequired: "4", npshMargin: "1" }));
    expect(known.get("npshRequiredOnSlurry")).toBeCloseTo(4 / HEAD_RATIO, 8);
    // 9.368 m available: less 1 m of margin, times the ratio of 0.8543, is 7.149 m on water.
    expect(cellsOf(duty({ npshRequired: "7.14", npshMargin: "1" })).get("npshDifference")).toBeGreaterThan(1);
    expect(cellsOf(duty({ npshRequired: "7.16", npshMargin: "1" })).get("npshDifference")).toBeLessThan(1);
    expect(cells.has("npshRequiredOnSlurry")).toBe(false);
  });

  it("finds the minimum flow from the slowest run, and says so below it", () => {
    // 9-slurry-velocity-001: 150 mm, d50 0.5 mm: V_L = 2.18779769 m/s, design 1.2 times that; V = 4 × (200/150)² = 7.111.
    const narrow = { pipe: "ID 150 mm rough 0.045 mm", length: "50", fittings: "" };
    const one = (flow: string) =>
      cellsOf(duty({ medianSize: "0.5", flow }, { suctionLine: [narrow], dischargeLine: [narrow] }));
    // 1.2 × 2.18779769198 × π/4 × 0.15² = 0.046394 m³/s.
    const least = 1.2 * 2.18779769198 * (Math.PI / 4) * 0.15 ** 2 * 1000;
    expect(one("60").get("leastSlurryFlow")).toBeCloseTo(least, 6);
    expect(one("46.40").get(tableCell("slurrySettling", 0, "verdict"))).toBe("keeps moving");
    expect(one("46.38").get(tableCell("slurrySettling", 0, "verdict"))).toBe("below the design minimum");
    // It stands as a mark on the curve of the system, with the head of the slurry there.
    const charts = dutyPlan(duty()).items.flatMap((item) => (item.kind === "charts" ? item.charts : []));
    const system = charts.find(({ title }) => title === "System curve");
    expect(system?.series.map(({ name }) => name)).toEqual(["system", "duty", "minimum flow"]);
  });

  it("keeps head, NPSH and power where a run settles, its loss that of the flow that just moves it", () => {
    // 400 mm of suction at 1 m/s settle; the discharge carries, as published.
    const wide = { pipe: "ID 400 mm rough 0.045 mm", length: "10", fittings: "" };
    const inOne = cellsOf(duty({}, { suctionLine: [wide], pump: PUMP }));
    expect(inOne.get(tableCell("slurrySettling", 0, "verdict"))).toBe("SETTLES");
    expect(inOne.get(tableCell("slurryFriction", 0, "regime"))).toBe("bed at rest: loss as at deposition");
    expect(inOne.get(tableCell("slurryFriction", 1, "slurryHead"))).toBeCloseTo((0.0923887138141 / 1.2475) * 90, 5);
    expect(inOne.get("dischargePipe")).toBeCloseTo((0.0923887138141 / 1.2475) * 190, 5);
    expect(inOne.get("suctionPipe")).toBeGreaterThan(0);
    for (const key of ["totalHead", "waterHead", "npshAvailable", "operatingPower", "greatestPower"]) {
      expect(inOne.get(key), key).toBeTypeOf("number");
    }
    expect(verdictOf(duty({}, { suctionLine: [wide], pump: PUMP }), "solids")).toMatchObject({ state: "fail" });
  });
});

describe("the selected pump on the slurry", () => {
  const cells = cellsOf(duty({}, { pump: PUMP }));
  const head = 20 + (0.0923887138141 / 1.2475) * 200 + (2 * 16) / (2 * 9.80665);

  it("is read on water and takes the power of the slurry", () => {
    // ρ_m g Q H_m/(η ER) at the flow of the duty, 45 m and 70 % on water there: both fall by the same ratio, kW.
    const power = (998.2 * 1.2475 * 9.80665 * 0.125663706143592 * 45) / 0.7 / 1000;
    const point = PUMP.points.map(({ flow }) => flow).indexOf("0.125663706143592 m3/s");
    expect(point).toBe(2);
    const meets = cellsOf(duty({ deliveryLevel: String(20 + 45 * HEAD_RATIO - head) }, { pump: PUMP }));
    expect(meets.get("operatingFlow")).toBeCloseTo(125.663706143592, 1);
    expect((meets.get("operatingPower") as number) / power).toBeCloseTo(1, 4);
    expect((cells.get("greatestPower") as number) / (cells.get("clearGreatestPower") as number)).toBeCloseTo(1.2475, 8);
    // 36.44 m of slurry is 42.66 m on water. The pump has 45 m there, at 96 % of its speed less than 45 × 0.96² = 41.5 m.
    expect(head / HEAD_RATIO).toBeCloseTo(42.66, 2);
    expect(cells.get("headAtDuty")).toBeCloseTo(45, 6);
    expect(cells.get("headOverDuty")).toBeCloseTo(45 - head / HEAD_RATIO, 5);
    // Met, and on the clear liquid it runs out beyond 20 % over the duty flow.
    const met = verdictOf(duty({ frictionMargin: "0" }, { pump: PUMP }), "head");
    expect([met.state, met.text]).toEqual(["check", expect.stringMatching(/start and flush.*20 % over the duty flow/)]);
    const slower = duty({}, { pump: { ...PUMP, speedRatio: "0.96" } });
    expect(verdictOf(slower, "head").state).toBe("fail");
  });

  it("needs its NPSH over the head ratio all along its curve", () => {
    const points = PUMP.points.map((point) => ({ ...point, npshRequired: "4" }));
    const needs = cellsOf(duty({}, { pump: { ...PUMP, points } }));
    expect(needs.get("operatingNpshRequired")).toBeCloseTo(4 / HEAD_RATIO, 8);
  });

  it("is started and flushed with the clear liquid beside it", () => {
    // On clear liquid the same pump gives more flow than on the slurry, and takes less power at each flow.
    expect(cells.get("flushFlow")).toBeGreaterThan(cells.get("operatingFlow") as number);
    expect(cells.get("flushPower")).toBeTypeOf("number");
    const clear = cellsOf(duty({ solids: "0" }, { pump: PUMP }));
    expect(cells.get("flushFlow")).toBeCloseTo(clear.get("operatingFlow") as number, 6);
    expect(cells.get("flushPower")).toBeCloseTo(clear.get("operatingPower") as number, 6);
    expect(cells.get("clearGreatestPower")).toBeCloseTo(clear.get("greatestPower") as number, 6);
  });

  it("is compared with each service class as it runs", () => {
    // π × 0.5 m × 1000/60 = 26.18 m/s and 45 m; from memory class 3: 52 m, 33 and 26 m/s; class 4: 40 m, 28 and 23 m/s.
    expect(cells.get(tableCell("serviceClasses", 0, "tipSpeed"))).toBeCloseTo(26.1799, 3);
    expect([0, 1, 2, 3].map((row) => cells.get(tableCell("serviceClasses", row, "verdict")))).toEqual([
      "within",
      "within",
      "tip speed above for elastomer",
      "head above; tip speed above for elastomer",
    ]);
    const trimmed = cellsOf(duty({}, { pump: { ...PUMP, trimRatio: "0.9" } }));
    expect(trimmed.get(tableCell("serviceClasses", 0, "tipSpeed"))).toBeCloseTo(0.9 * 26.1799, 3);
    // In series each pump has half the head.
    const TWO = { pumpsRunning: "2", arrangement: "series" } as const;
    const two = cellsOf(duty(TWO, { pump: PUMP }));
    expect(two.get(tableCell("serviceClasses", 3, "verdict"))).toBe("head above; tip speed above for elastomer");
    expect(two.get("headAtDuty")).toBeCloseTo(90, 6);
    const slow = { ...PUMP, speedRatio: "0.9" };
    expect(cellsOf(duty(TWO, { pump: slow })).get(tableCell("serviceClasses", 3, "verdict"))).toBe(
      "tip speed above for elastomer",
    );
  });

  it("goes without class or power where its speed or efficiency is not known", () => {
    const points = PUMP.points.map((point) => ({ ...point, efficiency: "" }));
    const plain = cellsOf(duty({}, { pump: { ...PUMP, points, speed: "", impellerDiameter: "" } }));
    expect(plain.has(tableCell("serviceClasses", 0, "verdict"))).toBe(false);
    expect(plain.get("waterHead")).toBeTypeOf("number");
  });
});

describe("the section as a whole", () => {
  it.each([
    ["no solids", { solids: "" }],
    ["solids of 0", { solids: "0" }],
    ["no SG", { solidsGravity: "" }],
  ])("is left out with %s", (_, change) => {
    const of = duty(change);
    expect(shownSection(of, "slurry")).toBeUndefined();
    expect(settlingRuns(of)).toBeUndefined();
  });

  it("says what the figures are of, and with what the line is flushed", () => {
    const said = remarksIn(duty({}, { pump: PUMP }), "slurry");
    expect(said).toMatch(/on this sheet are those of the slurry/);
    expect(said).toMatch(/started and flushed with the clear liquid/);
    expect(said).toMatch(/flush it before every stop/);
    expect(remarksIn(duty({ medianSize: "" }, { pump: PUMP }), "slurry")).toMatch(/d50 is NOT stated/);
  });

  it("states the solids once, whichever sections there are", () => {
    for (const of of [duty(), duty({ pumpLevel: "3", pH: "7" }), duty({ medianSize: "", pumpLevel: "3", pH: "7" })]) {
      const inputs = dutyPlan(of).items.filter((item) => item.kind === "input" && item.key === "solids");
      expect(inputs).toHaveLength(1);
    }
  });

  it("carries grading and fines into the figures", () => {
    const plain = cellsOf(duty());
    const graded = cellsOf(duty({ coarseSize: "1.6", fines: "20" }));
    // M = 1/ln 4; relief of fines (1 − 0.2)².
    const excess = (0.0923887138141 - 0.0617557562479) * (4 / 2.85176377056) ** (1.7 - 1 / Math.log(4));
    expect(graded.get("dischargePipe")).toBeCloseTo(((0.0617557562479 + excess) / 1.2475) * 190, 5);
    expect(1 - (graded.get("headRatio") as number)).toBeCloseTo(0.64 * (1 - HEAD_RATIO), 8);
    expect(plain.get("headRatio")).toBeLessThan(graded.get("headRatio") as number);
  });

  it("takes more power the more solids there are", () => {
    const powers = ["5", "10", "20", "30"].map((solids) =>
      cellsOf(duty({ solids }, { pump: PUMP })).get("greatestPower"),
    );
    const sorted = powers.toSorted((a, b) => (a as number) - (b as number));
    expect(powers).toEqual(sorted);
    expect(new Set(powers).size).toBe(4);
  });

  it("chains no more than three of our functions and shows no error", () => {
    const whole = duty({ npshRequired: "4", coarseSize: "1", fines: "10", pH: "7" }, { pump: PUMP });
    expect(longestChain(dutyPlan(whole))).toBeLessThanOrEqual(3);
    const inError = [...cellsOf(whole)].filter(([key, cell]) =>
      isRange(cell) ? cell.flat().some(isCellError) : isCellError(cell) && /slurry|pumped|flush|clear/i.test(key),
    );
    expect(inError).toEqual([]);
  });

  it("comes with a sample whose pump carries its slurry", () => {
    const sample = SAMPLE_DUTIES.find(({ name }) => name.includes("slurry"))?.duty as DutyText;
    expect(sheetsOf(sample).duty.cells.length).toBeGreaterThan(100);
    const cells = cellsOf(dutyRead(sample));
    expect(cells.get("headOverDuty")).toBeGreaterThan(0);
    const states = ["head", "npsh", "solids", "driver"].map((of) => verdictOf(dutyRead(sample), of).state);
    // 197.5 of 160 m³/h: a quarter more than asked, and nothing throttles it.
    expect(states).toEqual(["check", "pass", "pass", "pass"]);
  });
});

describe("the runs of the pane", () => {
  it("are those of the sheet, in m/s", () => {
    const runs = settlingRuns(
      duty({ medianSize: "0.5" }, { suctionLine: [{ pipe: "ID 150 mm rough 0.045 mm", length: "5", fittings: "" }] }),
    );
    expect(runs?.map(({ label }) => label)).toEqual(["Suction 1", "Discharge 1", "Discharge 2"]);
    expect(runs?.[0]?.limiting).toBeCloseTo(2.18779769198, 6);
    // 1.2 times that; Oroskar and Turian have 2.384.
    expect(runs?.[0]?.design).toBeCloseTo(1.2 * 2.18779769198, 6);
    expect(runs?.[1]?.velocity).toBeCloseTo(4, 9);
    const us = settlingRuns(duty({ medianSize: "0.5 mm", sourceLevel: "0" }, { unitSet: "US" }));
    expect(us?.[1]?.velocity).toBeCloseTo(4, 9);
  });
});
