import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { type WorkedPlan, workOut } from "../../../shared/calc-sheet/work-out.ts";
import type { DutyText, PumpText } from "../../../shared/duty/duty-text.ts";
import { referenceParts } from "../../../shared/ports/reference.ts";
import { dutyRead, dutyText, type Fields, pumpText, QUARRY } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";
import { longestChain } from "../../support/longest-chain.ts";

function worked(typed: DutyText): WorkedPlan["cells"] {
  return workOut(dutyPlan(dutyRead(typed))).cells;
}

/**
 * Case 8-operating-point-001 of tests/published/hydraulics-8-operating-point.csv as a duty: 60 ft of static head, 1200 ft
 * of 5.047 in pipe of 0.00015 ft roughness with K 12, viscosity 1.12213897246e-6 m²/s (here times 998.2 kg/m³). The
 * suction line is so short and wide that it loses nothing.
 */
const PUBLISHED = dutyText(
  {
    liquid: "998.2 kg/m3, 1.120119122310 cP, pv 0.25 psi",
    flow: "450",
    pumpLevel: "0",
    deliveryLevel: "60",
  },
  {
    suctionLine: [{ pipe: "ID 60 in rough 0 in", length: "0.001", fittings: "K 0" }],
    dischargeLine: [{ pipe: "ID 5.047 in rough 0.0018 in", length: "1200", fittings: "K 12" }],
    pump: pumpText([140, 139, 135, 128, 118, 105, 88].map((head, i) => [String(100 * i), String(head)])),
  },
);

function withPump(typed: DutyText, change: Partial<PumpText>): DutyText {
  return { ...typed, pump: { ...(typed.pump as PumpText), ...change } };
}

function withFields(typed: DutyText, fields: Fields): DutyText {
  return { ...typed, fields: { ...typed.fields, ...fields } };
}

describe("the selected pump on the sheet", () => {
  // The sheet draws the system through 25 points, so it meets the exact crossing to some 1e-6 of it.
  it.each([
    { count: "1", flow: 454.321804342, head: 111.36399038, why: "one pump, case 001" },
    { count: "2", flow: 535.755269667, head: 130.565100126, why: "two in parallel, case 002" },
  ])("runs where a published case found elsewhere says: $why", ({ count, flow, head }) => {
    const cells = worked(withFields(PUBLISHED, { pumpsRunning: count }));
    expect(Math.abs((cells.get("operatingFlow") as number) / flow - 1)).toBeLessThan(2e-6);
    expect(Math.abs((cells.get("operatingHead") as number) / head - 1)).toBeLessThan(2e-6);
  });

  /*
   * By hand: lossless lines of a laminar trickle aside, a system of 30 m at every flow meets H = 50 − 0.01 Q² (L/s) at
   * Q = √2000 L/s; at 30 m less 10 at √3000. The curve has a point at each. Efficiency 0.8 at √2000 and 1000 kg/m³:
   * P = 1000 × 9.80665 × 0.0447214 × 30 / 0.8 = 16.4466 kW.
   */
  const BY_HAND = dutyText(
    {
      liquid: "1000 kg/m3, 1 mPa.s, pv 2 kPa",
      flow: "40",
      pumpLevel: "1",
      deliveryLevel: "30",
      leastStaticHead: "20",
      npshMargin: "1",
    },
    {
      unitSet: "SI",
      suctionLine: [{ pipe: "ID 5000 mm rough 0 mm", length: "0.001", fittings: "K 0" }],
      dischargeLine: [{ pipe: "ID 5000 mm rough 0 mm", length: "0.001", fittings: "K 0" }],
      pump: pumpText([
        ["0", "50", "", "2"],
        ["20", "46", "50", "2.4"],
        [String(Math.sqrt(2000)), "30", "80", "3"],
        [String(Math.sqrt(3000)), "20", "72", "3.5"],
        ["60", "14", "65", "4"],
      ]),
    },
  );

  it("takes flow, power and NPSH margin worked by hand", () => {
    const cells = worked(BY_HAND);
    const shown = (key: string): number => cells.get(key) as number;
    expect(shown("operatingFlow")).toBeCloseTo(Math.sqrt(2000), 5);
    expect(shown("flowOverDuty")).toBeCloseTo(100 * (Math.sqrt(2000) / 40 - 1), 4);
    expect(shown("operatingEfficiency")).toBeCloseTo(80, 4);
    expect(shown("operatingPower")).toBeCloseTo(16.4466, 3);
    // NPSH available: (101 325 − 2000) / (1000 × 9.80665) − 1 = 9.128331 m.
    expect(shown("operatingNpshAvailable")).toBeCloseTo(9.128331, 5);
    expect(shown("operatingNpshMargin")).toBeCloseTo(6.128331, 4);
    expect(cells.get("operatingNpshVerdict")).toBe("keeps the margin");
    expect(shown("dutyRegion.1.flow")).toBeCloseTo(Math.sqrt(3000), 5);
    expect(shown("regionGreatestFlow")).toBe(shown("dutyRegion.1.flow"));
    expect(shown("regionNpshMargin")).toBeCloseTo(9.128331 - 3.5, 4);
  });

  it("widens the region by the tolerance of the head", () => {
    const cells = worked({ ...BY_HAND, fields: { ...BY_HAND.fields, acceptanceGrade: "2B" } });
    // A curve 5 % higher meets 20 m where this one gives 20/1.05 m. The guarantee is the duty, 40 L/s at 30 m.
    const upper = cells.get("dutyRegion.2.flow") as number;
    expect(upper).toBeGreaterThan(Math.sqrt(3000));
    expect(cells.get("dutyRegion.2.head")).toBeCloseTo(20, 5);
    expect(cells.get("acceptedHeadMost")).toBeCloseTo(31.5, 4);
    expect(cells.get("acceptedFlowLeast")).toBeCloseTo(0.92 * 40, 9);
    expect(cells.get("acceptedEfficiency")).toBeCloseTo(0.95 * (cells.get("guaranteedEfficiency") as number), 9);
  });

  it("keeps the error where a state has no operating point, in its row and in every extreme", () => {
    const cells = worked({ ...BY_HAND, fields: { ...BY_HAND.fields, leastStaticHead: "5" } });
    for (const key of ["dutyRegion.1.flow", "dutyRegion.1.place", "regionGreatestFlow", "regionLeastFlow"]) {
      const { message } = cells.get(key) as { readonly message?: string };
      expect(message, key).toContain("runs off the end of its curve");
    }
    expect(String(cells.get("leastNotes"))).toContain("runs off the end of its curve");
  });

  it("grows pipes rougher that are smoother than the aged roughness, hose and rougher ones not", () => {
    const typed: DutyText = {
      ...QUARRY,
      dischargeLine: [
        { pipe: "8in sch40", length: "250", fittings: "1 exit" },
        { pipe: "ID 200 mm steel", length: "250", fittings: "" },
        { pipe: "8in sch40 rough 0.002 in", length: "250", fittings: "" },
        { pipe: "8in sch40 rough 0.02 in", length: "250", fittings: "" },
      ],
    };
    const cells = worked(typed);
    const aged = [0, 1, 2, 3].map((row) => cells.get(`agedDischargeLine.${row}.pipe`));
    expect(aged).toEqual([
      "8in sch40 rough 0.01 in",
      "ID 200 mm rough 0.01 in",
      "8in sch40 rough 0.01 in",
      "8in sch40 rough 0.02 in",
    ]);
    expect(cells.get("agedSystem.24.head")).toBeGreaterThan(cells.get("normalSystem.24.head") as number);
    expect(cells.get("agedSystem.0.head")).toBe(cells.get("normalSystem.0.head"));
  });

  it("leaves out what the curve does not give", () => {
    const cells = worked(PUBLISHED);
    for (const key of ["operatingEfficiency", "operatingPower", "operatingNpshRequired", "greatestPower"]) {
      expect(cells.has(key), key).toBe(false);
    }
    expect(worked(QUARRY).has("operatingPower")).toBe(true);
  });

  it("runs pumps in series through the same flow", () => {
    const cells = worked(withFields(BY_HAND, { pumpsRunning: "2", arrangement: "series" }));
    // Two in series meet 30 m where each gives 15, between the last two points of the curve; the system does not change.
    const flow = cells.get("operatingFlow") as number;
    expect(flow).toBeGreaterThan(Math.sqrt(3000));
    expect(flow).toBeLessThan(60);
    // Drawn to the end of the curve: 60 L/s at twice 14 m.
    expect(cells.get("headCurve.24.together")).toBeCloseTo(60, 9);
    expect(cells.get("headCurve.24.headTogether")).toBeCloseTo(28, 9);
    expect(cells.get("headAtDuty")).toBeCloseTo(2 * (worked(BY_HAND).get("headAtDuty") as number), 9);
  });

  it.each([
    { why: "the sample", typed: QUARRY },
    { why: "no efficiency and no NPSHR", typed: PUBLISHED },
    {
      why: "pumps in parallel, slowed and trimmed",
      typed: withFields(withPump(QUARRY, { trimRatio: "0.9" }), { pumpsRunning: "2" }),
    },
    { why: "an unnamed pump", typed: withPump(QUARRY, { name: "", speed: "", impellerDiameter: "" }) },
    { why: "a text for a formula", typed: withPump(QUARRY, { name: '=HYPERLINK("x")' }) },
  ])("chains no more than three functions and lays every item out: $why", ({ typed }) => {
    const longest = longestChain(dutyPlan(dutyRead(typed)));
    expect(longest).toBeGreaterThan(1);
    expect(longest).toBeLessThanOrEqual(3);
    const cells = sheetsOf(typed).all.flatMap((sheet) => sheet.cells);
    expect(cells.some(({ f }) => f?.startsWith("DUTY.OPERATINGPOINT("))).toBe(true);
    expect(cells.some(({ f }) => f?.includes("HYPERLINK"))).toBe(false);
  });

  it("writes the curve as input cells under headings with their units", () => {
    const { cells, names = {} } = sheetsOf(QUARRY).duty;
    const range = names["pump_curve"] as string;
    const [column, row] = [range.slice(0, 1), Number(/\d+/.exec(range)?.[0])];
    expect(cells.find(({ at }) => at === `${column}${row}`)?.v).toBe("flow, US gpm");
    expect(cells.find(({ at }) => at === `${column}${row + 2}`)?.v).toBe(300);
    expect(cells.find(({ at }) => at === names["operating_flow"])?.f).toMatch(/^IF\(ISERROR\(/);
  });

  it("changes nothing on the sheet of a duty without a pump", () => {
    const { pump: _, ...rest } = QUARRY;
    const { charts = [], cells, print } = sheetsOf(rest).duty;
    expect(charts.map(({ title }) => title)).not.toContain("Head of pump and system");
    expect(cells.some(({ f }) => f?.includes("OPERATINGPOINT"))).toBe(false);
    expect(print?.breaks?.length).toBeLessThan(sheetsOf(QUARRY).duty.print?.breaks?.length ?? 0);
  });

  it("draws its charts from ranges that hold figures", () => {
    const { duty, all } = sheetsOf(QUARRY);
    const { charts = [] } = duty;
    const titles = charts.map(({ title }) => title);
    expect(titles).toEqual(expect.arrayContaining(["Head of pump and system", "Efficiency and shaft power", "NPSH"]));
    for (const { x, y } of charts.flatMap(({ series }) => series)) {
      for (const range of [x, y]) {
        const { sheet = duty.name, target } = referenceParts(range);
        const cells = all.find(({ name }) => name === sheet)?.cells ?? [];
        const first = target.split(":")[0] as string;
        const known = cells.some(
          ({ at, v, f, spill }) =>
            (at === first && (v !== undefined || f !== undefined)) || (spill !== undefined && within(first, spill)),
        );
        expect(known, range).toBe(true);
      }
    }
  });
});

function within(cell: string, box: string): boolean {
  const parts = (of: string): readonly [number, number] => {
    const [, letters = "", row = ""] = /^([A-Z]+)(\d+)$/.exec(of) ?? [];
    return [[...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0), Number(row)];
  };
  const [from = "", to = from] = box.split(":");
  const [[c, r], [left, top], [right, bottom]] = [parts(cell), parts(from), parts(to)];
  return c >= left && c <= right && r >= top && r <= bottom;
}
