import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { tableCell } from "../../../shared/calc-sheet/expression.ts";
import { driveSection } from "../../../shared/calc-sheet/sections/drive.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import { call } from "../../../shared/catalogue/call.ts";
import { entryNamed } from "../../../shared/catalogue/catalogue.ts";
import { type Argument, isCellError, isRange } from "../../../shared/cells/cell.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { powerLadder } from "../../../shared/package/power-ladder.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";
import { dutyOf, type Fields, STRAIGHT_PUMP } from "../../support/duty-of.ts";
import { longestChain } from "../../support/longest-chain.ts";
import { remarksIn } from "../../support/section-remarks.ts";

const duty = (fields: Fields, speed = "1780", unitSet: DutyText["unitSet"] = "US"): Duty =>
  dutyOf({ deliveryLevel: "200 ft", ...fields }, { unitSet, pump: { ...STRAIGHT_PUMP, speed } });

function cellsOf(of: Duty): ReadonlyMap<string, Argument> {
  return workOut(dutyPlan(of)).cells;
}

const figure = (cells: ReadonlyMap<string, Argument>, key: string): number => cells.get(key) as number;

const ENGINE = {
  driver: "engine",
  engineRating: "120",
  engineRatingKind: "continuous net",
  altitude: "0",
  airTemperature: "77",
  aspiration: "turbo",
} as const;

describe("a motor on the sheet", () => {
  // 1000 × 200 / (3960 × 0.70) = 72.15 hp, × 1.1 = 79.37 hp; NEMA list 75, 100; NEC Table 430.250, 100 hp at 460 V:
  // 124 A; 10 CFR 431.25 Table 5, 100 hp, 4 poles: 95.4 %; MG 1 Part 13: 405T; slip 1 − 1780/1800.
  it("has its rating, frame, speed, efficiency and current", () => {
    const cells = cellsOf(duty({ driver: "motor", supplyVoltage: "480" }));
    expect(figure(cells, "driverPower")).toBeCloseTo(72.15, 1);
    expect(figure(cells, "motorRating")).toBeCloseTo(100, 9);
    expect(figure(cells, "motorSpare")).toBeCloseTo(100 - 72.15, 1);
    expect(cells.get("motorFrame")).toBe("405T");
    expect(cells.get("motorPoles")).toBe("4 poles, 60 Hz");
    expect(figure(cells, "synchronousSpeed")).toBeCloseTo(1800, 9);
    expect(figure(cells, "motorSlip")).toBeCloseTo(1.11, 2);
    expect(figure(cells, "motorEfficiency")).toBeCloseTo(95.4, 9);
    expect(figure(cells, "motorCurrent")).toBe(124);
    expect(figure(cells, "startingCurrent")).toBeCloseTo(992, 9);
    // 5252.11 × 100 / 1780 lbf·ft.
    expect(figure(cells, "motorTorque")).toBeCloseTo(295.06, 1);
  });

  // Output factors, common practice: 0.86 at 3000 m, 0.92 at 50 °C; 100 hp leaves 79.1 hp of the 79.37 wanted.
  it("goes to the next rating where the site takes too much", () => {
    const cells = cellsOf(duty({ driver: "motor", altitude: "3000 m", airTemperature: "50 degC" }));
    expect(figure(cells, "motorRating")).toBeCloseTo(125, 9);
    expect(figure(cells, "motorOutput")).toBeCloseTo(125 * 0.86 * 0.92, 6);
    expect(String(cells.get("motorNotes"))).toMatch(/a 100 hp motor would fall short, so 125 hp is taken/);
  });

  it("has no current without a supply, and says what no table holds", () => {
    const cells = cellsOf(duty({ driver: "motor" }, "1600"));
    expect(cells.has("motorCurrent")).toBe(false);
    // A 60 Hz motor slowed by its drive; MG 1 Part 13, 100 hp, four poles.
    expect(cells.get("motorPoles")).toBe("4 poles, 60 Hz");
    expect(cells.get("motorSlip")).toBe("no line-start motor");
    expect(cells.get("motorDrive")).toBe("VFD, slowed");
    expect(cells.get("motorFrame")).toBe("405T");
  });

  // The output factors end at 4000 m; the air of the site is known higher up.
  it("is not called no line-start motor where it is refused", () => {
    const cells = cellsOf(duty({ driver: "motor", altitude: "4300 m" }));
    for (const key of ["motorRating", "motorPoles", "synchronousSpeed", "motorSlip", "motorEfficiency", "motorFrame"]) {
      expect(cells.get(key), key).toMatchObject({
        error: "#VALUE!",
        message: expect.stringMatching(/^Altitude must be at most/),
      });
    }
  });

  it("is a rating alone where the speed of the curve is not stated", () => {
    const of = duty({ driver: "motor", altitude: "3000 m" }, "");
    expect(figure(cellsOf(of), "motorRating")).toBeCloseTo(100, 9);
    expect(cellsOf(of).has("motorFrame")).toBe(false);
    expect(remarksIn(of, "drive")).toMatch(/speed of the pump's curve is not stated: altitude/);
  });
});

describe("an engine on the sheet", () => {
  // Reference conditions of ISO 3046-1: the net power is there whole. 120 hp less 5 %: 114 hp; 72.15/114 = 63.3 %.
  it("has net power, power on site and load", () => {
    const cells = cellsOf(duty({ ...ENGINE, engineRatingKind: "continuous gross", accessoryLosses: "5" }));
    expect(figure(cells, "engineNetPower")).toBeCloseTo(114, 9);
    expect(figure(cells, "enginePower")).toBeCloseTo(114, 9);
    expect(figure(cells, "engineGreatestLoad")).toBeCloseTo(63.29, 1);
    // The pump takes less at its operating point than anywhere on its curve.
    expect(figure(cells, "engineOperatingLoad")).toBeCloseTo((100 * figure(cells, "powerOfOne")) / 114, 6);
    expect(figure(cells, "engineOperatingLoad")).toBeLessThan(figure(cells, "engineGreatestLoad"));
  });

  it("has its power on site by the kind of its rating", () => {
    const on = (more: Fields): number => figure(cellsOf(duty({ ...ENGINE, ...more })), "enginePower");
    expect(on({})).toBeCloseTo(120, 9);
    // 5 % of a gross rating, common practice; what is stated comes off instead.
    expect(on({ engineRatingKind: "continuous gross" })).toBeCloseTo(114, 9);
    expect(on({ engineRatingKind: "continuous gross", accessoryLosses: "3" })).toBeCloseTo(116.4, 9);
    expect(on({ engineRatingKind: "" })).toBeCloseTo(114, 9);
    // What is stated comes off a net rating too.
    expect(on({ accessoryLosses: "8" })).toBeCloseTo(110.4, 9);
  });

  it("says nothing good of a load it cannot carry", () => {
    const small = duty({ ...ENGINE, engineRating: "10" });
    const said = [...cellsOf(small).values()].filter((cell) => typeof cell === "string").join("\n");
    expect(said).not.toMatch(/high enough|carries the power|not overloaded/);
    expect(figure(cellsOf(small), "engineOperatingLoad")).toBeGreaterThan(400);
  });

  it("is not called unrated where its rating cannot be read", () => {
    const read = duty(ENGINE);
    const unread: Duty = { ...read, engineRating: undefined, state: { ...read.state, engineRating: "unreadable" } };
    const items = driveSection.items(unread);
    expect(items.some((item) => item.kind === "result" && item.key === "enginePower")).toBe(true);
    expect(items.filter((item) => item.kind === "statement" && /rating is not stated/.test(item.text))).toEqual([]);
  });

  // By hand at full consumption: 72.15 hp × 0.36 lb/hp-h / 7.0102 lb/US gal = 3.705 US gal/h.
  it("burns most at the maximum power and less in operation", () => {
    const cells = cellsOf(duty({ ...ENGINE, specificConsumption: "0.36" }));
    expect(figure(cells, "fuelRate")).toBeCloseTo(3.705, 2);
    const power = figure(cells, "powerOfOne");
    expect(figure(cells, "operatingFuelRate")).toBeCloseTo((power * 0.36) / 7.0102, 2);
    expect(figure(cells, "operatingFuelRate")).toBeLessThan(figure(cells, "fuelRate"));
  });

  it.each(["US", "SI", "METRIC"] as const)("has the tank hours and sizes that the functions give, in %s", (unitSet) => {
    const tankVolume = "200 gal";
    const cells = cellsOf(
      duty({ ...ENGINE, engineRating: "120 hp", airTemperature: "25 degC", tankVolume }, "1780", unitSet),
    );
    const rate = figure(cells, "operatingFuelRate");
    const answer = (id: string, ...args: readonly Argument[]): unknown => {
      const entry = entryNamed(id);
      if (entry === undefined) throw new Error(id);
      const outcome = call(entry, args);
      return outcome.ok ? outcome.value : outcome.error;
    };
    expect(figure(cells, "tankHours")).toBeCloseTo(
      answer("FUELTANKHOURS", tankVolume, rate, null, null, unitSet) as number,
      6,
    );
    [8, 24, 48].forEach((hours, row) => {
      const size = answer("FUELTANKSIZE", hours, rate, null, null, unitSet) as number;
      expect(figure(cells, tableCell("tankFor", row, "tank")) / size).toBeCloseTo(1, 9);
    });
    // By hand: 200 gal × 0.9 × 0.9 = 162 gal, at 3.785412 L.
    const litres = unitSet === "US" ? 162 : 162 * 3.785411784;
    expect(figure(cells, "tankHours") * rate).toBeCloseTo(litres, 6);
  });

  it.each(["60", "75", "110", "170", "250", "400"])("burns what ENGINELOAD says at any load: %s hp", (engineRating) => {
    const cells = cellsOf(duty({ ...ENGINE, engineRating, altitude: "2000" }));
    for (const [power, rate] of [
      ["driverPower", "fuelRate"],
      ["powerOfOne", "operatingFuelRate"],
    ] as const) {
      const entry = entryNamed("ENGINELOAD") as NonNullable<ReturnType<typeof entryNamed>>;
      const args = [figure(cells, power), Number(engineRating), "0 %", 2000, ...[77, "turbo"], null, "US"];
      const outcome = call(entry, args);
      const [, answer] = outcome.ok ? (outcome.value as unknown as readonly (readonly unknown[])[]) : [];
      expect(answer).toBeDefined();
      const said = answer?.[5];
      if (typeof said === "number") expect(figure(cells, rate) / said).toBeCloseTo(1, 9);
      else expect(cells.get(rate)).toBe("not worked out");
    }
  });

  it("has fuel and tank without a rating too", () => {
    const cells = cellsOf(duty({ driver: "engine", specificConsumption: "0.36", tankVolume: "100" }));
    expect(figure(cells, "fuelRate")).toBeCloseTo(3.705, 2);
    expect(figure(cells, "tankHours")).toBeCloseTo(81 / figure(cells, "operatingFuelRate"), 6);
    expect(cells.has("enginePower")).toBe(false);
  });
});

describe("the drive section whatever drives", () => {
  const drivers: readonly (readonly [string, Duty])[] = [
    ["motor", duty({ driver: "motor", supplyVoltage: "400" })],
    ["motor off the mains", duty({ driver: "motor", supplyVoltage: "415" }, "1600")],
    ["motor without speed", duty({ driver: "motor" }, "")],
    ["motor in SI", duty({ driver: "motor", supplyVoltage: "400" }, "1480", "SI")],
    ["engine", duty({ ...ENGINE, tankVolume: "100" })],
    ["engine unrated", duty({ driver: "engine" })],
    ["engine gross", duty({ ...ENGINE, engineRatingKind: "continuous gross" })],
    ["engine of a standby rating", duty({ ...ENGINE, engineRatingKind: "standby" })],
    ["motor on a generator", duty({ driver: "motor", supply: "generator", generatorApparent: "250" })],
    ["motor through belts", duty({ driver: "motor", transmission: "belts" })],
    ["motor on a drive", duty({ driver: "motor", motorStart: "VFD", leastSpeed: "1500", greatestSpeed: "1790" })],
    ["motor fitted", duty({ driver: "motor", fittedMotor: "75" })],
    ["maximum impeller", duty({ driver: "motor", greatestImpeller: "15" })],
    ["engine too small", duty({ ...ENGINE, engineRating: "30" })],
  ];

  it.each(drivers)("has no error in any cell and no blank figure: %s", (_, of) => {
    const inError = [...cellsOf(of)].filter(([, cell]) =>
      isRange(cell) ? cell.flat().some(isCellError) : isCellError(cell),
    );
    expect(inError).toEqual([]);
    expect(shownSection(of, "drive")?.figures.filter(({ text }) => text === "")).toEqual([]);
  });

  it.each(drivers)("chains no more than three of our functions: %s", (_, of) => {
    expect(longestChain(dutyPlan(of))).toBeLessThanOrEqual(3);
  });
});

describe("the ladder of powers", () => {
  // As above: 72.15 hp, 79.37 hp with the margin, 100 hp of which 0.86 × 0.92 leave too little, so 125 hp.
  it("rises from the pump to its motor on site", () => {
    const ladder = powerLadder(duty({ driver: "motor", altitude: "3000 m", airTemperature: "50 degC" }));
    expect(ladder).toMatchObject({ driver: "motor", unit: "hp" });
    expect(ladder?.greatest).toBeCloseTo(72.15, 1);
    expect(ladder?.needed).toBeCloseTo(79.37, 1);
    expect(ladder?.rated).toBeCloseTo(125, 9);
    expect(ladder?.onSite).toBeCloseTo(98.9, 6);
    expect(ladder?.inOperation).toBeLessThan(72);
  });

  it("ends with the engine on site, and is not there without a rating", () => {
    const ladder = powerLadder(duty({ ...ENGINE, engineRatingKind: "continuous gross", accessoryLosses: "5" }));
    expect(ladder?.rated).toBeCloseTo(120, 9);
    expect(ladder?.onSite).toBeCloseTo(114, 9);
    expect(powerLadder(duty({ driver: "engine" }))).toBeUndefined();
    expect(powerLadder(duty({ driver: "motor" }, ""))?.onSite).toBeCloseTo(100, 9);
  });
});
