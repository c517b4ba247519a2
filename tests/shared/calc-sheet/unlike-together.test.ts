import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { type WorkedPlan, workOut } from "../../../shared/calc-sheet/work-out.ts";
import type { DutyText, SegmentText } from "../../../shared/duty/duty-text.ts";
import { pumpOnDuty } from "../../../shared/package/pump-on-duty.ts";
import { BYPASS_CURVE, bypass, otherPump } from "../../support/bypass.ts";
import { dutyRead, type Fields, pumpText } from "../../support/duty-of.ts";
import { judged, stateOf } from "../../support/judged.ts";
import { laidOut } from "../../support/laid-out.ts";
import { LEVEE } from "../../support/levee.ts";
import { longestChain } from "../../support/longest-chain.ts";

const cellsOf = (typed: DutyText): WorkedPlan["cells"] => workOut(dutyPlan(dutyRead(typed))).cells;
const number = (cells: WorkedPlan["cells"], key: string): number => {
  const found = cells.get(key);
  if (typeof found !== "number") throw new Error(`${key}: ${JSON.stringify(found)}`);
  return found;
};

const PUMP = pumpText(
  LEVEE.curve.slice(1).map(([flow, head]) => [`${flow}`, `${head}`]),
  { name: "A" },
);
/** 10 ft less than the other everywhere. */
const LOW = pumpText(
  LEVEE.curve.slice(1).map(([flow, head]) => [`${flow}`, `${(head as number) - 10}`]),
  { name: "low" },
);

const row = ([pipe, length, fittings, , level]: readonly unknown[], share = ""): SegmentText => ({
  pipe: String(pipe),
  length: String(length),
  fittings: String(fittings),
  share,
  level: level === undefined || level === null ? "" : String(level),
});

/** The bypass over the levee of case s3-route-001, of pump A and others. */
function levee(fields: Fields, change: Partial<DutyText>, summit: number = LEVEE.summit): DutyText {
  const [branch, ...rest] = LEVEE.discharge(summit) as [readonly unknown[], ...(readonly unknown[])[]];
  return bypass(
    { outlet: "submerged", ...fields },
    {
      suctionLine: LEVEE.suction.map((hose) => row(hose, "each")),
      dischargeLine: [row(branch, "each"), ...rest.map((one) => row(one as readonly unknown[]))],
      pump: PUMP,
      ...change,
    },
  );
}

describe("unlike pumps fill a line over its summit", () => {
  // Case s3-route-001, worked apart from this product: 2607.9 gpm at 59.26 ft of two equal pumps.
  it("as the pair alike does, the second entered by itself", () => {
    const cells = cellsOf(levee({}, { otherPumps: [otherPump(PUMP)] }));
    expect(number(cells, "fillFlow") / 2607.902).toBeCloseTo(1, 3);
    expect(number(cells, "headWhileFilling") / 59.2618).toBeCloseTo(1, 3);
    expect(number(cells, "shutoffOver")).toBeCloseTo(72 - 52, 6);
    expect(cells.get("fills")).toBe("fills");
    const alike = cellsOf(levee({ pumpsRunning: "2" }, {}));
    for (const key of ["toSummit", "toOutlet"]) expect(number(cells, key) / number(alike, key)).toBeCloseTo(1, 3);
    // Held to the summit they run there at all times.
    expect(number(cells, "operatingFlow") / 2607.902).toBeCloseTo(1, 3);
    expect(number(cells, "stationStates.0.head") / 59.2618).toBeCloseTo(1, 3);
  });

  // By a second route, in Python: Colebrook's factor, PCHIP of SciPy and a root over the header's grade give 1380.8 and
  // 820.6 gpm at the header, 56.523 ft, and with own rows at 1100.7 gpm each 57.283 ft. It gives 2607.87 gpm of the pair.
  it("with 2201.4 gpm where the second gives 10 ft less, and judges it", () => {
    const typed = levee({}, { otherPumps: [otherPump(LOW, { name: "low" })] });
    const cells = cellsOf(typed);
    expect(number(cells, "fillFlow") / 2201.352).toBeCloseTo(1, 3);
    expect(number(cells, "headWhileFilling") / 57.28348).toBeCloseTo(1, 3);
    expect(number(cells, "operatingFlow") / 2201.352).toBeCloseTo(1, 3);
    expect([0, 1].map((i) => Math.round(number(cells, `stationStates.${i}.flow`)))).toEqual([1381, 821]);
    expect(stateOf(dutyRead(typed), "head", /over the summit while the line fills/)).toBe("pass");
  });

  it("not at all over a levee higher than the maximum shutoff head of them", () => {
    const high = dutyRead(levee({}, { otherPumps: [otherPump(LOW, { name: "low" })] }, 665));
    const { cells } = workOut(dutyPlan(high));
    expect(number(cells, "shutoffOver")).toBeCloseTo(72 - 77, 6);
    expect(cells.get("fills")).toMatch(/^does not fill/);
    expect(judged(high, "head", /does not fill/).map(({ state }) => state)).toEqual(["fail"]);
  });
});

it("chains no more than three functions where unlike pumps fill a route", () => {
  const typed = levee({}, { otherPumps: [otherPump(LOW, { name: "low" })] });
  expect(longestChain(dutyPlan(dutyRead(typed)))).toBeLessThanOrEqual(3);
});

describe("the curve of unlike pumps, drawn", () => {
  const typed = bypass({}, { otherPumps: [otherPump(LOW, { name: "low" }), otherPump(BYPASS_CURVE, { name: "C" })] });
  const duty = dutyRead(typed);
  const plan = dutyPlan(duty);
  const worked = workOut(plan);

  it("is on the sheet for all together and for each, told apart by dashes", () => {
    const charts = laidOut(plan, worked).duty.charts ?? [];
    const head = charts.find(({ title }) => title === "Head of pump and system");
    const lines = (head?.series ?? []).filter(({ pointsOnly }) => pointsOnly !== true).slice(0, 4);
    expect(lines.map(({ name, dashed = false, dotted = false }) => [name, dashed, dotted])).toEqual([
      ["all pumps, at the header", false, false],
      ["A", true, false],
      ["low", false, true],
      ["C", true, true],
    ]);
    expect(charts.map(({ title }) => title)).toEqual(
      expect.arrayContaining(["NPSH of A, over its own flow", "Efficiency and shaft power of A, over its own flow"]),
    );
  });

  it("meets the system drawn at the operating point, on the sheet as in the pane", () => {
    const shown = pumpOnDuty(duty);
    const at = (points: readonly { readonly flow: number; readonly value: number }[], flow: number): number => {
      const after = points.findIndex((point) => point.flow > flow);
      const [low, high] = [points[after - 1], points[after]] as [(typeof points)[0], (typeof points)[0]];
      return low.value + ((flow - low.flow) / (high.flow - low.flow)) * (high.value - low.value);
    };
    const { flow, head } = shown?.operatingPoint ?? {};
    expect(at(shown?.head ?? [], flow as number) / (head as number)).toBeCloseTo(1, 2);
    expect(at(shown?.systemCurves[0]?.points ?? [], flow as number) / (head as number)).toBeCloseTo(1, 2);
    expect(shown?.pumps.map(({ name }) => name)).toEqual(["A", "low", "C"]);
    // 72, 62 and 72 ft at shutoff.
    for (const [i, feet] of [72, 62, 72].entries()) {
      expect(shown?.pumps[i]?.head[0]?.value).toBeCloseTo(feet * 0.3048, 6);
    }
    expect(shown?.chosenFlow).toBeCloseTo((number(worked.cells, "stationStates.0.flow") * 3.785411784e-3) / 60, 6);
  });

  it("of pumps in series adds their heads, for shutoff too", () => {
    const series = dutyRead(
      bypass(
        { arrangement: "series", flow: "1500", deliveryLevel: "690" },
        { otherPumps: [otherPump(LOW, { name: "low" })] },
      ),
    );
    expect(pumpOnDuty(series)?.head[0]?.value).toBeCloseTo(134 * 0.3048, 6);
    // 102 ft to lift: more than the 72 ft of either, less than the 134 ft of both.
    expect(stateOf(series, "head", /shutoff head/)).toBe("pass");
  });
});
