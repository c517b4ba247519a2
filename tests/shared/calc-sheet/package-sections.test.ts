import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { isCellError, isRange } from "../../../shared/cells/cell.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { shownVerdicts } from "../../../shared/package/verdicts.ts";
import { dutyOf, dutyText, type Fields, STRAIGHT_PUMP } from "../../support/duty-of.ts";
import { longestChain } from "../../support/longest-chain.ts";

function duty(fields: Fields, change: Partial<DutyText> = {}): Duty {
  const station = { pumpsRunning: "3", arrangement: "series" } as const;
  return dutyOf({ deliveryLevel: "600", ...station, ...fields }, { pump: STRAIGHT_PUMP, ...change });
}

function cellsOf(of: Duty): ReturnType<typeof workOut>["cells"] {
  return workOut(dutyPlan(of)).cells;
}

describe("drive on the sheet", () => {
  it("sizes a motor for the maximum power on the curve", () => {
    const cells = cellsOf(duty({ driver: "motor" }));
    // Hand calculation at the last point, where the curve takes most: 1000 × 200 × 1.0000 / (3960 × 0.70) = 72.15 hp;
    // with 1.1 in hand 79.4 hp. NEMA MG 1 list: 75, 100.
    expect(cells.get("driverPower")).toBeCloseTo(72.15, 1);
    expect(cells.get("motorRating")).toBeCloseTo(100, 9);
    // 5252.11 × 72.15 hp / 1780 rpm.
    expect(cells.get("shaftTorque")).toBeCloseTo(212.9, 0);
  });

  it("holds an engine's rating on site against the power needed", () => {
    const engine = {
      driver: "engine",
      altitude: "5000",
      airTemperature: "104",
      aspiration: "turbo",
      engineRatingKind: "continuous net",
    };
    const state = (engineRating: string) =>
      shownVerdicts(duty({ ...engine, engineRating })).find(({ subject }) => subject === "driver")?.state;
    expect(state("150")).toBe("pass");
    expect(state("80")).toBe("fail");
  });
});

describe("priming on the sheet", () => {
  it("takes the time of a worked example", () => {
    // tests/published/mechanical-priming.csv, O-P04: 6 in bore, 5 m up and 6 m level, 0.06 m³, 0.0236 m³/s: 18.17 s.
    const cells = cellsOf(
      duty(
        {
          flow: "20",
          pumpLevel: "5",
          deliveryLevel: "20",
          liquid: "998.2 kg/m3, 1 cSt, pv 2.3 kPa",
          airPump: "0.0236 m3/s, blank-off 10 kPa(a)",
          casingVolume: "60",
        },
        {
          unitSet: "SI",
          suctionLine: [{ pipe: "ID 152.4 mm rough 0.045 mm", length: "11", fittings: "" }],
          pump: undefined as never,
        },
      ),
    );
    expect(Math.abs((cells.get("primeTime") as number) / 18.17 - 1)).toBeLessThan(0.01);
  });

  it("is left out where the pump is flooded, and the pane says so by having no such section", () => {
    expect(shownSection(duty({}), "priming")).toBeUndefined();
  });
});

describe("the whole package on one sheet", () => {
  const whole = duty({
    pumpLevel: "8",
    pH: "7.5",
    solids: "2",
    flangeClass: "300",
    driver: "engine",
    engineRating: "150",
  });

  it("has no error in any cell", () => {
    const inError = [...cellsOf(whole)].filter(([, cell]) =>
      isRange(cell) ? cell.flat().some(isCellError) : isCellError(cell),
    );
    expect(inError).toEqual([]);
  });

  it("chains no more than three of our functions", () => {
    expect(longestChain(dutyPlan(whole))).toBeLessThanOrEqual(3);
  });

  it("is shown by the pane in the words of the sheet", () => {
    for (const heading of ["pressure", "drive", "priming", "materials"] as const) {
      const section = shownSection(whole, heading);
      const said = [...(section?.figures ?? []).map(({ text }) => text), ...(section?.statements ?? [])];
      expect(said.length, heading).toBeGreaterThan(1);
      expect(
        said.every((text) => text !== ""),
        heading,
      ).toBe(true);
    }
  });
});

describe("package fields", () => {
  it.each([
    ["casingMaterial", "cheese"],
    ["flangeClass", "900"],
    ["driver", "horse"],
    ["aspiration", "deep"],
    ["airPump", "a lot"],
    ["solidsHardness", "so so"],
    ["pH", "acid"],
  ] as const)("%s “%s” is refused there and nowhere else", (key, text) => {
    const { isComplete, findings } = decodeDuty(dutyText({ deliveryLevel: "60", [key]: text }));
    expect(isComplete).toBe(false);
    const wrong = [...findings].filter(([, list]) => list.some(({ kind }) => kind === "error"));
    expect(wrong.map(([place]) => place)).toEqual([key]);
  });
});
