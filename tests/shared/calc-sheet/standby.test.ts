import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import type { Argument } from "../../../shared/cells/cell.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { bypass, otherPump } from "../../support/bypass.ts";
import { dutyRead, type Fields, pumpText, QUARRY } from "../../support/duty-of.ts";

const cellsOf = (typed: DutyText): ReadonlyMap<string, Argument> => workOut(dutyPlan(dutyRead(typed))).cells;

/** Cells of the number of pumps itself, of the take-off and what is said of the price. */
const OF_STANDBY =
  /^(pumpsStandby|pumpsInstalled|takeOff|takeOffNotes|pipeMassEmpty|pipeMassFull|installed\w+Line|pipeQuantities|pieceQuantities|notes|found|assumed)(\.|$)/;

function moved(typed: DutyText, more: Fields): readonly string[] {
  const [base, other] = [
    cellsOf({ ...typed, fields: { ...typed.fields, pumpsStandby: "0" } }),
    cellsOf({ ...typed, fields: { ...typed.fields, ...more } }),
  ];
  const keys = new Set([...base.keys(), ...other.keys()]);
  return [...keys].filter((key) => JSON.stringify(base.get(key)) !== JSON.stringify(other.get(key)));
}

const WEAK = pumpText([
  ["0", "60", "0", "6"],
  ["500", "56", "65 %", "7"],
  ["1500", "40", "60 %", "9"],
]);
const QUARRY_PAIR: DutyText = {
  ...QUARRY,
  fields: { ...QUARRY.fields, pumpsRunning: "2" },
  suctionLine: QUARRY.suctionLine.map((row) => ({ ...row, share: "each" })),
  dischargeLine: QUARRY.dischargeLine.map((row, i) => (i === 0 ? { ...row, share: "each" } : row)),
};
const PRICED = { directCost: "10000", margin: "20", runningHours: "4000", flangeClass: "150" } as const;

describe("more standby pumps", () => {
  it("are said to be in the price", () => {
    const text = JSON.stringify(dutyPlan(dutyRead(bypass({ ...PRICED, pumpsStandby: "1" }))).items);
    expect(text).toContain("standby ones among them");
    expect(JSON.stringify(dutyPlan(dutyRead(bypass(PRICED))).items)).not.toContain("standby ones among them");
  });

  it.each([
    ["a pair of a sample with all its steps", QUARRY_PAIR],
    ["a pair of a bypass", bypass({ pumpsRunning: "2", ...PRICED })],
    ["unlike pumps", bypass(PRICED, { otherPumps: [otherPump(WEAK)] })],
    ["pumps in series", bypass({ pumpsRunning: "2", arrangement: "series", flow: "1500", deliveryLevel: "690" })],
  ] as const)("change the take-off alone, no figure and no verdict: %s", (_, typed) => {
    for (const pumpsStandby of ["1", "3"]) {
      expect(moved(typed, { pumpsStandby }).filter((key) => !OF_STANDBY.test(key))).toEqual([]);
    }
  });

  it("are not the same as more that run", () => {
    expect(moved(bypass({ pumpsRunning: "2" }), { pumpsRunning: "3" })).toContain("operatingFlow");
  });

  /** Net length of pipe or number of pieces by line, item and size. */
  const quantities = (typed: DutyText): Readonly<Record<string, unknown>> => {
    const cells = cellsOf(typed);
    const rows: Record<string, unknown> = {};
    for (let row = 0; cells.has(`takeOff.${row}.item`); row += 1) {
      const name = ["line", "item", "size"].map((of) => cells.get(`takeOff.${row}.${of}`)).join(" ");
      rows[name] = cells.get(`takeOff.${row}.quantity`);
    }
    return rows;
  };
  const station = (fields: Fields, change: Partial<DutyText> = {}): DutyText =>
    bypass(
      { pumpsRunning: "2", ...fields },
      {
        suctionLine: [{ pipe: "12in suction hose", length: "40", fittings: "" }],
        dischargeLine: [
          { pipe: "10in sch40", length: "10", fittings: "1 swing check, 1 gate", share: "each" },
          { pipe: "12in sch40", length: "6", fittings: "header", share: "1/2" },
          { pipe: "14in STD", length: "100", fittings: "", share: "1/2" },
          { pipe: "18in STD", length: "4200", fittings: "4 elbow 45" },
        ],
        ...change,
      },
    );

  // Counted by hand: a run for each pump installed of its own rows, two of twin runs, one of a header and of the main.
  it.each([
    ["0", 2],
    ["1", 3],
    ["2", 4],
  ])("get a suction and a branch each: %s standby beside two running", (pumpsStandby, installed) => {
    const counted = quantities(station({ pumpsStandby }));
    expect(counted["suction hose 12in suction hose"]).toBeCloseTo(40 * installed, 6);
    expect(counted["discharge pipe 10in sch40"]).toBeCloseTo(10 * installed, 6);
    expect(counted["discharge swing check 10in sch40"]).toBe(installed);
    expect(counted["discharge pipe 12in sch40"]).toBeCloseTo(6, 6);
    expect(counted["discharge pipe 14in STD"]).toBeCloseTo(200, 6);
    expect(counted["discharge pipe 18in STD"]).toBeCloseTo(4200, 6);
    expect(counted["discharge elbow 45 18in STD"]).toBe(4);
  });
});
