import { describe, expect, it } from "vitest";
import { dutyCases } from "../../../shared/calc-sheet/sections/duty-cases.ts";
import { isRange } from "../../../shared/cells/cell.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { CaseText, DutyText } from "../../../shared/duty/duty-text.ts";
import { workedDuty } from "../../../shared/package/worked-duty.ts";
import { dutyText, pumpText, QUARRY } from "../../support/duty-of.ts";
import { readTooEarly } from "../../support/plan-order.ts";

const PUMP = pumpText(
  [
    ["0 gpm", "300 ft", "", "8 ft"],
    ["250 gpm", "295 ft", "50", "8 ft"],
    ["500 gpm", "280 ft", "68", "9 ft"],
    ["750 gpm", "250 ft", "75", "11 ft"],
    ["1000 gpm", "200 ft", "70", "14 ft"],
    ["1300 gpm", "110 ft", "55", "19 ft"],
  ],
  { speed: "1780 rpm", speedRatio: "0.9" },
);

const LINES: Partial<DutyText> = {
  suctionLine: [{ pipe: "10in sch40", length: "20 ft", fittings: "1 entrance flush" }],
  dischargeLine: [{ pipe: "8in sch40", length: "1500 ft", fittings: "1 exit" }],
  pump: PUMP,
};

const FIELDS = { sourcePressure: "1 psi", deliveryPressure: "3 psi", frictionMargin: "5", agedRoughness: "0.02 in" };

function caseOf(name: string, fields: CaseText["fields"] = {}, hours = ""): CaseText {
  return { name, hours, fields };
}

function worked(typed: DutyText) {
  const { duty } = decodeDuty(typed);
  return { duty, ...workedDuty(duty) };
}

/** Every figure of a state: its record, what is asked of it, its NPSH. */
function figuresOf(typed: DutyText, key: string): readonly unknown[] {
  const { duty, worked: plan } = worked(typed);
  const row = dutyCases(duty).findIndex((one) => one.key === key);
  const record = plan.cells.get(`${key}Record`);
  if (record === undefined || !isRange(record)) throw new Error(`${key}: ${JSON.stringify(record)}`);
  const columns = ["headToSelect", "npshRequired", "npshAvailable", "npshMargin", "npshMarginKept", "inletPressure"];
  return [...(record[1] ?? []), ...columns.map((of) => plan.cells.get(`dutyStates.${row}.${of}`))];
}

describe("cases of a duty", () => {
  it("give the duty as stated, to the last digit, where they state nothing", () => {
    for (const typed of [dutyText(FIELDS, LINES), QUARRY, dutyText({ ...FIELDS, pumpsRunning: "2" }, LINES)]) {
      const same = { ...typed, cases: [caseOf("same")] };
      expect(figuresOf(same, "case1")).toEqual(figuresOf(typed, "normal"));
      expect(figuresOf(same, "normal")).toEqual(figuresOf(typed, "normal"));
    }
  });

  it("give the duty as stated, to the last digit, where they state what it states", () => {
    const typed = dutyText({ ...FIELDS, temperature: "70" }, LINES);
    const said = caseOf("said again", { flow: "600 gpm", sourceLevel: "0", temperature: "70", pumpsRunning: "1" });
    const [own, base] = [figuresOf({ ...typed, cases: [said] }, "case1"), figuresOf(typed, "normal")];
    expect(own.length).toBe(base.length);
    own.forEach((figure, i) => {
      if (typeof figure === "number") expect(Math.abs(figure - Number(base[i]))).toBeLessThan(1e-9 * Math.abs(figure));
      else expect(figure).toEqual(base[i]);
    });
  });

  it.each<[what: string, CaseText["fields"]]>([
    ["flow", { flow: "700 gpm" }],
    ["source level", { sourceLevel: "10 ft" }],
    ["delivery level", { deliveryLevel: "130 ft" }],
    ["pressures", { sourcePressure: "4 psi", deliveryPressure: "9 psi" }],
    ["liquid", { liquid: "sea water" }],
    ["a thick liquid", { liquid: "SG 0.9, 150 cP, pv 0.1 kPa" }],
    ["temperature", { temperature: "120 degF" }],
    ["altitude", { altitude: "5000 ft" }],
    ["margin", { frictionMargin: "20" }],
    [
      "everything",
      { flow: "500 gpm", sourceLevel: "-8 ft", liquid: "sea water", temperature: "90", altitude: "2000 ft" },
    ],
  ])("are solved whole: %s", (_, fields) => {
    const typed = dutyText(FIELDS, LINES);
    const own = figuresOf({ ...typed, cases: [caseOf("one", fields)] }, "case1");
    // The same stated as the duty itself.
    const base = figuresOf({ ...typed, fields: { ...typed.fields, ...(fields as object) } }, "normal");
    own.forEach((figure, i) => {
      if (typeof figure === "number") expect(figure / Number(base[i]), `${i}`).toBeCloseTo(1, 9);
      else expect(figure).toEqual(base[i]);
    });
  });

  it("run as many pumps, and as fast, as they state", () => {
    const typed = dutyText(FIELDS, LINES);
    const [two, slow] = ["2", "1"].map((pumpsRunning) => dutyText({ ...FIELDS, pumpsRunning }, LINES)) as [
      DutyText,
      DutyText,
    ];
    const cases = [caseOf("two", { pumpsRunning: "2" }), caseOf("slow", { speedRatio: "0.8" })];
    const slowed = { ...slow, pump: { ...PUMP, speedRatio: "0.8" } };
    const near = (own: readonly unknown[], base: readonly unknown[]): void =>
      own.slice(0, 3).forEach((figure, i) => {
        // The system curve is drawn over other flows, so the crossing moves by its interpolation.
        expect(Number(figure) / Number(base[i])).toBeCloseTo(1, 4);
      });
    near(figuresOf({ ...typed, cases }, "case1"), figuresOf(two, "normal"));
    near(figuresOf({ ...typed, cases }, "case2"), figuresOf(slowed, "normal"));
  });

  it("flow through aged pipe where they say so, as the aged end of the range does", () => {
    const typed = {
      ...dutyText(FIELDS, LINES),
      cases: [caseOf("old", { pipe: "aged" }), caseOf("new", { pipe: "new" })],
    };
    expect(figuresOf(typed, "case1")).toEqual(figuresOf(typed, "aged"));
    expect(figuresOf(typed, "case2")).toEqual(figuresOf(typed, "normal"));
  });

  it("change places with their results when they change places", () => {
    const cases = [
      caseOf("high", { sourceLevel: "12 ft" }),
      caseOf("warm", { temperature: "100 degF" }, "100"),
      caseOf("old", { pipe: "aged", flow: "500 gpm" }),
      caseOf("two", { pumpsRunning: "2" }),
    ];
    const order = [2, 0, 3, 1];
    const typed = dutyText(FIELDS, LINES);
    const moved = order.map((at) => cases[at] as CaseText);
    order.forEach((at, to) => {
      expect(figuresOf({ ...typed, cases: moved }, `case${to + 1}`)).toEqual(
        figuresOf({ ...typed, cases }, `case${at + 1}`),
      );
    });
    expect(figuresOf({ ...typed, cases: moved }, "normal")).toEqual(figuresOf(typed, "normal"));
  });

  it("run at the speed that gives their flow where the speed is variable", () => {
    const typed = dutyText({ ...FIELDS, speedControl: "variable" }, LINES);
    const cases = [caseOf("little", { flow: "350 gpm" }), caseOf("much", { flow: "650 gpm" })];
    const flows = ["case1", "case2"].map((key) => Number(figuresOf({ ...typed, cases }, key)[0]));
    expect((flows[0] as number) / 350).toBeCloseTo(1, 4);
    expect((flows[1] as number) / 650).toBeCloseTo(1, 4);
  });

  it("stand on the sheet before all that reads them", () => {
    const cases = [
      caseOf("one", { liquid: "sea water", altitude: "3000 ft", sourceLevel: "3 ft", deliveryPressure: "2 psi" }, "10"),
      caseOf("two", { flow: "500 gpm", temperature: "90", pipe: "aged", frictionMargin: "3", pumpsRunning: "2" }),
      caseOf("three", { speedRatio: "0.95", deliveryLevel: "90 ft", sourcePressure: "0" }),
    ];
    for (const typed of [dutyText({ ...FIELDS, speedControl: "variable" }, LINES), QUARRY]) {
      const { pump: _, ...bare } = typed;
      for (const one of [typed, bare]) expect(readTooEarly(worked({ ...one, cases }).plan)).toEqual([]);
    }
  });

  it("name the state in every verdict that one of them decides", () => {
    const typed = dutyText({ ...FIELDS, altitude: "0" }, LINES);
    const { worked: plan } = worked({
      ...typed,
      cases: [caseOf("hot sump", { sourceLevel: "-24 ft", temperature: "150 degF" })],
    });
    const verdicts = plan.cells.get("verdicts");
    if (verdicts === undefined || !isRange(verdicts)) throw new Error("no verdicts");
    const npsh = verdicts.find(([of]) => of === "npsh");
    expect(npsh?.[1]).toBe("fail");
    expect(npsh?.[2]).toContain("hot sump");
  });
});
