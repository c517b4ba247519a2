import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { isCellError, isRange } from "../../../shared/cells/cell.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { casesShown } from "../../../shared/package/cases.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { shownVerdicts } from "../../../shared/package/verdicts.ts";
import { dutyOf, type Fields, pumpText } from "../../support/duty-of.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { judged } from "../../support/judged.ts";
import { publishedCases } from "../../support/published-cases.ts";

function caseOf(id: string) {
  const cases = [...publishedCases("5-sump", "station"), ...publishedCases("5-submergence", "station")];
  const found = cases.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
}

function cellsOf(duty: Duty): (key: string) => unknown {
  const { cells } = workOut(dutyPlan(duty));
  return (key) => cells.get(key);
}

const stateOf = (duty: Duty, subject: string) => shownVerdicts(duty).find((one) => one.subject === subject)?.state;

/** 30 − 0.004 Q² m at L/s, its NPSH required 2 m throughout. */
const PUMP = pumpText(
  Array.from({ length: 41 }, (_, i) => [`${2 * i} L/s`, `${30 - 0.004 * (2 * i) ** 2} m`, "", "2 m"]),
);
/** K V²/2g of 2000 Q² in a bore of 200 mm: 2000 × 2 × 9.80665 × (π/4 × 0.2²)². */
const K = 2000 * 2 * 9.80665 * ((Math.PI / 4) * 0.04) ** 2;

/** 12 m of static head at the start, 0.002 Q² of losses; the pump drowned so that nothing else ends the drawdown. */
function pumpedDown(fields: Fields = {}, change: Partial<DutyText> = {}): Duty {
  return dutyOf(
    {
      flow: "50 L/s",
      sourceLevel: "-5",
      pumpLevel: "-6",
      deliveryLevel: "12",
      sumpPlan: "4 m x 3 m",
      sumpStartLevel: "0",
      sumpStopLevel: "-5",
      ...fields,
    },
    {
      unitSet: "SI",
      suctionLine: [{ pipe: "ID 500 mm rough 0 mm", length: "0.001 m", fittings: "K 0" }],
      dischargeLine: [{ pipe: "ID 200 mm rough 0 mm", length: "0.001 m", fittings: `K ${K}` }],
      pump: PUMP,
      ...change,
    },
  );
}

describe("a sump pumped down by the pump of the duty", () => {
  it("takes the time of the closed form", () => {
    const of = caseOf("s5-sump-012");
    const cell = cellsOf(pumpedDown());
    // 41 points under the interpolant, and the system drawn at 25.
    const relative = (found: unknown, name: string) =>
      Math.abs((found as number) / (of.expected[name]?.value as number) - 1);
    expect(relative(3600 * (cell("drawdownHours") as number), "time")).toBeLessThan(1e-3);
    expect(relative(cell("drawdownFlowAtStart"), "flow_at_start")).toBeLessThan(1e-3);
    expect(relative(cell("drawdownFlowAtEnd"), "flow_at_end")).toBeLessThan(1e-3);
    expect(relative(3600 * (cell("drawdownAtFirstFlow") as number), "constant_flow_at_start (too short)")).toBeLessThan(
      1e-3,
    );
    expect(cell("sumpVolume")).toBeCloseTo(60_000, 6);
    expect(stateOf(pumpedDown(), "sump")).toBe("pass");
  });

  it("goes faster by two pumps than by one, and slower against an inflow", () => {
    const hours = (fields: Fields): number => cellsOf(pumpedDown(fields))("drawdownHours") as number;
    expect(hours({ pumpsRunning: "2" })).toBeLessThan(hours({}));
    expect(hours({ sumpInflow: "10" })).toBeGreaterThan(hours({}));
  });

  it("fails where the inflow holds the level", () => {
    const held = pumpedDown({ sumpInflow: "50" });
    expect(isCellError(cellsOf(held)("drawdownHours") as never)).toBe(true);
    expect(stateOf(held, "sump")).toBe("fail");
    expect(JSON.stringify(shownSection(held, "sump"))).toMatch(/never goes below/);
  });

  // By hand: 54.77 L/s at the start, 4 starts an hour: 900 s × 54.77/4 = 12 324 L of the 60 000.
  it("holds the volume against the starts that the motor stands", () => {
    const four = pumpedDown({ startsPerHour: "4" });
    expect((cellsOf(four)("workingVolumeLeast") as number) / 12_324).toBeCloseTo(1, 3);
    // Q/4V = 54.77/(4 × 60 000) a second.
    expect(cellsOf(four)("startsAtWorst")).toBeCloseTo((3600 * 54.7723) / 240_000, 3);
    expect(judged(four, "sump", /volume/).map(({ state }) => state)).toEqual(["pass"]);
    const small = pumpedDown({ startsPerHour: "4", sumpPlan: "2 m2" });
    expect(judged(small, "sump", /volume/).map(({ state }) => state)).toEqual(["fail"]);
    expect(stateOf(small, "sump")).toBe("fail");
  });

  it("judges NPSH at the level it stops at", () => {
    // Atmosphere 10.3 m and lift of 3 m leave 7 m; of 9 m not the 2 m that the pump asks for.
    const lift = (pumpLevel: string) =>
      judged(pumpedDown({ pumpLevel }), "npsh", /pumped down/).map(({ state }) => state);
    expect(lift("-2")).toEqual(["pass"]);
    expect(lift("4")).toEqual(["fail"]);
  });
});

/** A bell without a pump and without cases: one row. */
function drawnAlone(fields: Fields): Duty {
  return dutyOf({ flow: "1500 gpm", sourceLevel: "2.5 ft", bellDiameter: "12 in", bellLevel: "0", ...fields });
}

describe("a suction bell in a sump pumped down", () => {
  // By hand: 30 − 0.004 Q² = 17 + 0.002 Q² at the stop, Q = √(13/0.006) = 46.55 L/s. A bell of 0.2 m needs there
  // 0.2 + 46.55/(1069 × 0.2^1.5) = 0.687 m and has −5 + 5.6 = 0.6: short of 0.087 m. At the start it has 5.6 m.
  // 0.2485 + 46.55/(1069 × 0.2485^1.5) = 0.600.
  const bell = (fields: Fields): Duty =>
    pumpedDown({ sourceLevel: "0", bellDiameter: "200 mm", bellLevel: "-5.6", ...fields });

  it("is judged, and helped, in the row with the minimum spare water", () => {
    const cell = cellsOf(bell({}));
    expect(cell("bellStates.0.margin")).toBeGreaterThan(4);
    expect(cell("bellStates.1.water")).toBeCloseTo(0.6, 9);
    expect(cell("bellStates.1.margin")).toBeCloseTo(-0.087, 3);
    expect(cell("bellMargin")).toBe(cell("bellStates.1.margin"));
    expect(cell("bellThatDoes")).toBeCloseTo(248.5, 0);
    expect(judged(bell({}), "sump", /suction bell/).map(({ state }) => state)).toEqual(["pass", "fail"]);
  });

  it("is told in which row, of the cases too, on the sheet and in the list of the pane", () => {
    expect(cellsOf(bell({}))("bellMarginIn")).toBe("pumped down");
    // In the deep case the water stands 0.1 m over the bell, less than the 0.6 m of the stop.
    const deep = (sourceLevel: string) =>
      pumpedDown(
        { sourceLevel: "0", bellDiameter: "200 mm", bellLevel: "-5.6" },
        { cases: [{ name: "deep", hours: "", fields: { sourceLevel } }] },
      );
    expect(cellsOf(deep("-5.5"))("bellMarginIn")).toBe("deep");
    expect(cellsOf(deep("0"))("bellMarginIn")).toBe("pumped down");
    expect(casesShown(deep("-5.5"))?.worst).toContainEqual(["Minimum spare water over the suction bell", "deep"]);
    expect(cellsOf(drawnAlone({}))("bellMarginIn")).toBeUndefined();
  });

  it("needs no other where the worst row has its water, and says where none would do", () => {
    // 0.687 m needed of 1.2; of 0.4 m less than any bell needs, 0.336 + 46.55/(1069 × 0.336^1.5) = 0.56 m at the least.
    expect(cellsOf(bell({ bellLevel: "-6.2" }))("bellThatDoes")).toMatch(/none needed/);
    expect(cellsOf(bell({ bellLevel: "-5.4" }))("bellThatDoes")).toMatch(/no bell would do/);
  });
});

describe("the water over a suction bell", () => {
  const drawn = (fields: Fields): Duty =>
    dutyOf(
      { flow: "1500 gpm", sourceLevel: "2.5 ft", pumpLevel: "-2 ft", deliveryLevel: "60 ft", ...fields },
      {
        suctionLine: [{ pipe: "12in suction hose", length: "20 ft", fittings: "K 0" }],
        dischargeLine: [{ pipe: "10in sch40", length: "500 ft", fittings: "1 exit" }],
      },
    );

  it("agrees with the published rule, says what is short and what would do", () => {
    const of = caseOf("s5-submergence-007");
    const duty = drawn({ bellDiameter: "12 in", bellLevel: "0" });
    const cell = cellsOf(duty);
    expectPublished(12 * (cell("bellStates.0.needed") as number), "S", of);
    expectPublished(12 * (cell("bellStates.0.water") as number), "available", of);
    expect(cell("bellMargin")).toBeCloseTo((30 - 32.71244) / 12, 4);
    expectPublished(cell("bellThatDoes") as number, "least bell diameter that would do (S = 30 in)", of);
    expectPublished(cell("flowThatDoes") as number, "flow that would do at 12 in", of);
    expect(stateOf(duty, "sump")).toBe("fail");
    expect(shownVerdicts(duty).find(({ subject }) => subject === "sump")?.text).toMatch(/vortex/);
  });

  it("passes under enough water, is open without a level, and says nothing without a bell", () => {
    expect(stateOf(drawn({ bellDiameter: "15 in", bellLevel: "0" }), "sump")).toBe("pass");
    const open = drawn({ bellDiameter: "12 in" });
    expect(stateOf(open, "sump")).toBe("open");
    expect(cellsOf(open)("bellStates.0.water")).toBeUndefined();
    expect(stateOf(drawn({}), "sump")).toBeUndefined();
    expect(shownSection(drawn({}), "sump")).toBeUndefined();
  });

  it("shows a rim above the water as short by all of it", () => {
    const dry = drawn({ bellDiameter: "12 in", bellLevel: "3 ft" });
    expect(cellsOf(dry)("bellStates.0.water")).toBeCloseTo(-0.5, 9);
    expect(stateOf(dry, "sump")).toBe("fail");
  });

  it("counts what one run of the first row carries, and the lowest level of all cases", () => {
    const cases = [{ name: "storm", hours: "", fields: { sourceLevel: "4 ft", flow: "1500 gpm" } }];
    const low = [{ name: "dry", hours: "", fields: { sourceLevel: "1 ft", flow: "1500 gpm" } }];
    const of = (change: Partial<DutyText>, share = "all"): Duty =>
      dutyOf(
        {
          flow: "1500 gpm",
          sourceLevel: "2.5 ft",
          pumpLevel: "-2 ft",
          deliveryLevel: "60 ft",
          bellDiameter: "15 in",
          bellLevel: "0",
        },
        {
          suctionLine: [{ pipe: "12in suction hose", length: "20 ft", fittings: "K 0", share }],
          ...change,
        },
      );
    expect(stateOf(of({ cases }), "sump")).toBe("pass");
    expect(stateOf(of({ cases: low }), "sump")).toBe("fail");
    expect(cellsOf(of({}, "1/2"))("bellStates.0.flow")).toBeCloseTo(750, 9);
  });
});

describe("the section of the sump on the sheet", () => {
  it("has no error in any cell", () => {
    const whole = pumpedDown({ bellDiameter: "500 mm", bellLevel: "-7", startsPerHour: "4", sumpInflow: "10" });
    const inError = [...workOut(dutyPlan(whole)).cells].filter(([, cell]) =>
      isRange(cell) ? cell.flat().some(isCellError) : isCellError(cell),
    );
    expect(inError).toEqual([]);
    expect(stateOf(whole, "sump")).toBe("pass");
  });
});
