import { describe, expect, it } from "vitest";
import { dutyPlan, fieldsNotUsed } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import type { Argument } from "../../../shared/cells/cell.ts";
import type { CaseText, DutyText } from "../../../shared/duty/duty-text.ts";
import { dutyRead, dutyText, type Fields, pumpText } from "../../support/duty-of.ts";
import { expectPublished } from "../../support/expect-published.ts";
import { type PublishedCase, publishedCases } from "../../support/published-cases.ts";

const [SPEEDS, ENERGY] = publishedCases("7-cases", "station") as [PublishedCase, PublishedCase];

/** 41 points of H = 72 − 18 (Q/1550)² and η = 0.78 (2x − x²), gpm and ft. */
const PUMP = pumpText(
  Array.from({ length: 41 }, (_, i) => {
    const x = (50 * i) / 1550;
    const efficiency = 78 * (2 * x - x * x);
    return [`${50 * i} gpm`, `${72 - 18 * x * x} ft`, efficiency > 0 ? String(efficiency) : "", ""];
  }),
);

/** 27 ft at 1500 gpm, as a K alone: V = Q/A with 231 in³ a gallon, 2 g = 64.3481 ft/s². */
const VELOCITY = (1500 * 231) / 1728 / 60 / ((Math.PI / 4) * (10 / 12) ** 2);
const K = (27 * 64.3481) / VELOCITY ** 2;

const NAMES = ["dry", "wet", "storm"] as const;
const FLOWS = [600, 1100, 1500] as const;
const HOURS = [6000, 2000, 300] as const;
const CASES: readonly CaseText[] = NAMES.map((name, i) => ({
  name,
  hours: String(HOURS[i]),
  fields: { flow: `${FLOWS[i]} gpm` },
}));

function typed(fields: Fields = {}, cases: readonly CaseText[] = CASES): DutyText {
  return dutyText(
    {
      flow: "1100 gpm",
      sourceLevel: "0",
      pumpLevel: "0",
      deliveryLevel: "20 ft",
      temperature: "20 degC",
      speedControl: "variable",
      driver: "motor",
      driveEfficiency: "96",
      ...fields,
    },
    {
      suctionLine: [{ pipe: "ID 10 in rough 0.002 mm", length: "0.001 ft", fittings: "" }],
      dischargeLine: [{ pipe: "ID 10 in rough 0.002 mm", length: "0.001 ft", fittings: `K ${K}` }],
      pump: PUMP,
      cases,
    },
  );
}

function cellsOf(text: DutyText): ReadonlyMap<string, Argument> {
  return workOut(dutyPlan(dutyRead(text))).cells;
}

const numberAt = (cells: ReadonlyMap<string, Argument>, key: string): number => {
  const found = cells.get(key);
  if (typeof found !== "number") throw new Error(`${key} is ${JSON.stringify(found)}`);
  return found;
};

describe("cases at the speeds that give their flows", () => {
  it("run as the published case says", () => {
    const cells = cellsOf(typed());
    const sampled = { ...SPEEDS, tolerance: { value: { rel: 2e-4 } } };
    NAMES.forEach((name, row) => {
      expectPublished(numberAt(cells, `caseSpeeds.${row}.speedRatio`), `speed_ratio_${name}`, sampled);
      const region = Number([...cells.keys()].filter((key) => /^dutyRegion\.\d+\.head$/.test(key)).length) - 3 + row;
      expectPublished(numberAt(cells, `dutyRegion.${region}.head`), `head_${name}`, sampled);
    });
  });

  it("are told where the static head pins the speed, where the flow is too little, and where more speed is needed", () => {
    // By the closed form (144 r²)/(2 Q² (18/1550² + 27/1500²)) 1 % of speed makes 26.5 % of flow at 200 gpm, 3.9 at 600.
    const at = (flow: string, fields: CaseText["fields"] = {}, pump = PUMP): Argument => {
      const cases: readonly CaseText[] = [{ name: "one", hours: "", fields: { flow, ...fields } }];
      return workOut(dutyPlan(dutyRead({ ...typed({}, cases), pump }))).cells.get("caseSpeeds.0.words") ?? null;
    };
    const bare = { ...PUMP, points: PUMP.points.map((point) => ({ ...point, efficiency: "" })) };
    expect(at("600 gpm")).toBe("within its range");
    expect(at("200 gpm", {}, bare)).toMatch(/^PINNED BY THE STATIC HEAD/);
    expect(at("200 gpm")).toBe("BELOW THE MINIMUM SHARE OF BEP FLOW");
    expect(at("1500 gpm", { deliveryLevel: "40 ft" })).toMatch(/^ABOVE THE SPEED STATED/);
  });
});

describe("energy of the cases", () => {
  it("is that of the published case, by hours, in all, and by volume", () => {
    const cells = cellsOf(typed());
    NAMES.forEach((name, row) => {
      expectPublished(numberAt(cells, `caseEnergy.${row}.energy`), `kWh_${name}`, ENERGY);
    });
    expectPublished(numberAt(cells, "caseEnergy.3.energy"), "kWh_total", ENERGY);
    expectPublished(numberAt(cells, "caseEnergy.3.volume"), "volume", ENERGY);
    expectPublished(numberAt(cells, "caseEnergy.3.perVolume"), "kWh_per_million_gal", ENERGY);
    expect(numberAt(cells, "caseEnergy.3.hours")).toBe(8300);
  });

  it("makes the cost of running", () => {
    const cells = cellsOf(typed({ tariff: "0.12", runningHours: "5000" }));
    expect(numberAt(cells, "energyOfYear")).toBe(numberAt(cells, "caseEnergy.3.energy"));
    expect(numberAt(cells, "runningCost")).toBeCloseTo(0.12 * numberAt(cells, "caseEnergy.3.energy"), 6);
  });

  it("does not take the hours of the duty too, and says so", () => {
    const duty = dutyRead(typed({ runningHours: "5000" }));
    const found = fieldsNotUsed(duty, dutyPlan(duty).items).find(({ key }) => key === "runningHours");
    expect(found?.reason).toMatch(/cases say how long/);
  });

  it("does not fill up the year, and names what has no hours", () => {
    const [dry, wet] = CASES as [CaseText, CaseText];
    const duty = dutyRead(typed({}, [dry, { ...wet, hours: "" }]));
    const { items } = dutyPlan(duty);
    const cells = workOut(dutyPlan(duty)).cells;
    expect(numberAt(cells, "caseEnergy.1.hours")).toBe(6000);
    expect(numberAt(cells, "caseEnergy.1.energy")).toBe(numberAt(cells, "caseEnergy.0.energy"));
    expect(JSON.stringify(items)).toContain("Without hours, and not counted: wet.");
  });

  it("gives no total where a case has no operating point, or would need more speed than there is", () => {
    const [dry] = CASES as [CaseText];
    const far: CaseText = { name: "far", hours: "10", fields: { deliveryLevel: "200 ft" } };
    const high: CaseText = { name: "high", hours: "10", fields: { deliveryLevel: "70 ft" } };
    const totalOf = (fields: Fields, one: CaseText) =>
      workOut(dutyPlan(dutyRead(typed(fields, [dry, one])))).cells.get("caseEnergy.2.energy");
    expect(typeof totalOf({ speedControl: "fixed" }, far)).not.toBe("number");
    expect(totalOf({}, high)).toBe("not worked out");
    expect(typeof totalOf({}, { ...high, fields: { deliveryLevel: "25 ft" } })).toBe("number");
  });

  it("counts what belts and a variable-frequency drive lose where nothing is stated", () => {
    const share = (fields: Fields): number =>
      numberAt(cellsOf(typed({ driveEfficiency: "", ...fields })), "driveEfficiencyTaken");
    // 96 % for the drive, which the varying speed asks for, and 95 % for belts: common practice.
    expect(share({})).toBeCloseTo(96, 9);
    expect(share({ transmission: "belts" })).toBeCloseTo(91.2, 9);
    expect(share({ speedControl: "fixed" })).toBe(100);
    expect(share({ speedControl: "fixed", motorStart: "VFD" })).toBeCloseTo(96, 9);
  });

  it("is fuel where an engine drives", () => {
    const engine = {
      driver: "engine",
      driveEfficiency: "",
      specificConsumption: "0.38 lb/hp-h",
      fuelPrice: "3.90 per US gal",
    };
    const cells = cellsOf(typed(engine));
    NAMES.forEach((_, row) => {
      const burnt = numberAt(cells, `caseFuel.${row}.rate`) * (HOURS[row] as number);
      expect(numberAt(cells, `caseFuel.${row}.fuel`)).toBeCloseTo(burnt, 6);
    });
    // By hand: η 0.78 (2x − x²) with x = 1500/(0.94176 × 1550), P = 1500 × 47/(3960 η) hp, 0.38 lb/hp-h, 7.07 lb a gallon.
    const x = 1500 / (0.9417584 * 1550);
    const power = (1500 * 47) / 3960 / (0.78 * (2 * x - x * x));
    expect(numberAt(cells, "caseFuel.2.rate") / ((power * 0.38) / 7.07)).toBeCloseTo(1, 1);
    const total = [0, 1, 2].reduce((sum, row) => sum + numberAt(cells, `caseFuel.${row}.fuel`), 0);
    expect(numberAt(cells, "fuelOfYear")).toBeCloseTo(total, 6);
    expect(numberAt(cells, "runningCost")).toBeCloseTo(3.9 * total, 4);
  });

  // By hand as above: 22.84 hp at 1500 gpm and 5.46 hp at 600 gpm, at sea level and 77 °F, where ISO 3046-1 takes nothing off.
  // Common practice: × 1.1 at 40 % load and × 1 from 50 %, so × 1.05 at 45 %; below 25 % the rule says nothing.
  it("is fuel at part load where the engine is rated, by the settings", () => {
    const engine = {
      driver: "engine",
      driveEfficiency: "",
      engineRating: `${22.84 / 0.45} hp`,
      engineRatingKind: "continuous net",
      aspiration: "turbo",
      airTemperature: "77 degF",
      specificConsumption: "0.38 lb/hp-h",
    } as const;
    const full = (22.84 * 0.38) / 7.0102;
    const cells = cellsOf(typed(engine));
    expect(numberAt(cells, "caseFuel.2.load")).toBeCloseTo(45, 1);
    expect(numberAt(cells, "caseFuel.2.rate") / full).toBeCloseTo(1.05, 2);
    expect(numberAt(cells, "caseFuel.2.fuel") / numberAt(cells, "caseFuel.2.rate")).toBeCloseTo(300, 9);
    expect(numberAt(cells, "caseFuel.0.load")).toBeCloseTo((45 * 5.464) / 22.84, 1);
    expect(cells.get("caseFuel.0.rate")).toBe("not worked out");
    expect(cells.get("fuelOfYear")).toBe("not worked out");
    const more = cellsOf(typed({ ...engine, fuelAtLowLoad: "1.4" }));
    expect(numberAt(more, "caseFuel.2.rate") / full).toBeCloseTo(1.2, 2);
    const high = cellsOf(
      typed(engine, [
        ...CASES.slice(0, 2),
        { ...(CASES[2] as CaseText), fields: { flow: "1500 gpm", altitude: "6000 ft" } },
      ]),
    );
    expect(numberAt(high, "caseFuel.2.load")).toBeGreaterThan(50);
    expect(numberAt(high, "caseFuel.2.rate") / full).toBeCloseTo(1, 2);
  });
});
