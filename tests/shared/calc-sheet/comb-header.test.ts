import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { BYPASS_CURVE, bypass, otherPump } from "../../support/bypass.ts";
import { dutyRead } from "../../support/duty-of.ts";

/** Three pumps on a comb header: the path of the far one, through both pieces of header. */
const comb = (change: Partial<DutyText>, pumpsRunning: string): DutyText =>
  bypass(
    { pumpsRunning, flow: "3000" },
    {
      suctionLine: [{ pipe: "ID 12 in rough 0.03 mm", length: "40", fittings: "K 0.64", share: "each" }],
      dischargeLine: [
        { pipe: "ID 10 in rough 0.045 mm", length: "10", fittings: "K 2", share: "each" },
        { pipe: "ID 12 in rough 0.045 mm", length: "8", fittings: "header, K 0.5", share: "1/3" },
        { pipe: "ID 14 in rough 0.045 mm", length: "8", fittings: "header, K 0.5", share: "2/3" },
        { pipe: "ID 18 in rough 0.045 mm", length: "400", fittings: "1 exit" },
      ],
      ...change,
    },
  );
const ALIKE = comb({}, "3");
const APART = comb({ otherPumps: ["B", "C"].map((name) => otherPump(BYPASS_CURVE, { name })) }, "1");

// By hand: Colebrook-White by fixed point, water at 70 °F, 1.0522e-5 ft²/s.
const gpm = 0.00222800925926;
const lost = (flow: number, inches: number, length: number, K: number, rough: number): number => {
  const bore = inches / 12;
  const velocity = (flow * gpm) / ((Math.PI / 4) * bore ** 2);
  let x = 8;
  for (let i = 0; i < 50; i += 1) {
    x = -2 * Math.log10(rough / 25.4 / inches / 3.7 + (2.51 * x) / ((velocity * bore) / 1.0522e-5));
  }
  return (((length / bore) * x ** -2 + K) * velocity ** 2) / (2 * 32.17405);
};
const rows = (each: number, header: number, next: number, all: number): number =>
  lost(each, 12, 40, 0.64, 0.03) +
  lost(each, 10, 10, 2, 0.045) +
  lost(header, 12, 8, 0.5, 0.045) +
  lost(next, 14, 8, 0.5, 0.045) +
  lost(all, 18, 400, 1, 0.045);

const cellsOf = (typed: DutyText): ((key: string) => unknown) => {
  const { cells } = workOut(dutyPlan(dutyRead(typed)));
  return (key) => cells.get(key);
};

describe("rows of a comb header", () => {
  it.each([
    ["alike", ALIKE],
    ["each entered by itself", APART],
  ])("lose head at what is behind them, along the path of the far pump: %s", (_, typed) => {
    const total = cellsOf(typed)("totalHead") as number;
    expect((total - 24) / rows(1000, 1000, 2000, 3000)).toBeCloseTo(1, 3);
  });

  it.each([
    ["alike", ALIKE],
    ["each entered by itself", APART],
  ])("carry the whole of one pump left alone: %s", (_, typed) => {
    const cell = cellsOf(typed);
    for (const row of [0, 1, 2, 3]) expect(cell(`aloneDischargeLine.${row}.share`), String(row)).toBe(1);
  });
});
