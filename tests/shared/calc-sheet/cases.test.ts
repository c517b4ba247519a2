import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dutyCases } from "../../../shared/calc-sheet/sections/duty-cases.ts";
import { POINT } from "../../../shared/calc-sheet/sections/operating-point.ts";
import { isRange } from "../../../shared/cells/cell.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { CaseFieldKey, CaseText, DutyText } from "../../../shared/duty/duty-text.ts";
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

const caseRow = (key: string): number => Number(/^case(\d+)$/.exec(key)?.[1] ?? Number.NaN) - 1;

/** Every figure of a state: its record, what is asked of it, its NPSH, the head at the flow asked for. */
function figuresOf(typed: DutyText, key: string): readonly unknown[] {
  const { duty, worked: plan } = worked(typed);
  const row = dutyCases(duty).findIndex((one) => one.key === key);
  const record = plan.cells.get(`${key}Record`);
  if (record === undefined || !isRange(record)) throw new Error(`${key}: ${JSON.stringify(record)}`);
  const columns = ["headToSelect", "npshRequired", "npshAvailable", "npshMargin", "npshMarginKept", "inletPressure"];
  // Of the duty itself the head at its flow stands with its operating point.
  const headAtFlow = plan.cells.get(key === "normal" ? POINT.headAtDuty.key : `caseResults.${caseRow(key)}.headAtFlow`);
  return [...(record[1] ?? []), ...columns.map((of) => plan.cells.get(`dutyStates.${row}.${of}`)), headAtFlow];
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

  const OVERRIDES: Readonly<Record<CaseFieldKey, readonly [string, string]>> = {
    flow: ["700 gpm", "450 gpm"],
    sourceLevel: ["10 ft", "-3 ft"],
    deliveryLevel: ["130 ft", "90 ft"],
    sourcePressure: ["4 psi", "0"],
    deliveryPressure: ["9 psi", "0"],
    liquid: ["sea water", "SG 0.9, 150 cP, pv 0.1 kPa"],
    temperature: ["120 degF", "40 degF"],
    altitude: ["5000 ft", "0"],
    pipe: ["aged", "new"],
    frictionMargin: ["20", "0"],
    pumpsRunning: ["2", "1"],
    speedRatio: ["0.8", "0.95"],
  };

  /** The duty with what a case states in the place of its own. */
  function restated(typed: DutyText, fields: CaseText["fields"]): DutyText {
    const { pipe, speedRatio, ...others } = fields;
    const rough = (line: DutyText["suctionLine"]) =>
      line.map((segment) => ({ ...segment, pipe: `${segment.pipe}${pipe === "aged" ? " rough 0.02 in" : ""}` }));
    return {
      ...typed,
      fields: { ...typed.fields, ...others },
      suctionLine: rough(typed.suctionLine),
      dischargeLine: rough(typed.dischargeLine),
      ...(speedRatio !== undefined && { pump: { ...PUMP, speedRatio } }),
    };
  }

  /** Rows that are each pump's own, so that other pumps running change the lines. */
  const SHARED: Partial<DutyText> = {
    ...LINES,
    suctionLine: [{ pipe: "8in sch40", length: "30 ft", fittings: "1 entrance flush", share: "each" }],
    dischargeLine: [
      { pipe: "8in sch40", length: "60 ft", fittings: "1 swing check", share: "each" },
      { pipe: "8in sch40", length: "1500 ft", fittings: "1 exit" },
    ],
  };

  function expectSolvedWhole(typed: DutyText, fields: CaseText["fields"]): void {
    const own = figuresOf({ ...typed, cases: [caseOf("one", fields)] }, "case1");
    const base = figuresOf(restated(typed, fields), "normal");
    own.forEach((figure, i) => {
      const what = `${JSON.stringify(fields)}, figure ${i}: ${figure} for ${base[i]}`;
      if (typeof figure !== "number") expect(figure, what).toEqual(base[i]);
      else expect(Math.abs(figure - Number(base[i])), what).toBeLessThanOrEqual(1e-9 * Math.abs(figure));
    });
  }

  it.each(Object.entries(OVERRIDES))("are solved whole, as the duty stated so is: %s", (key, texts) => {
    for (const pumpsRunning of ["1", "2"]) {
      const typed = dutyText({ ...FIELDS, pumpsRunning }, SHARED);
      for (const text of texts) expectSolvedWhole(typed, { [key]: text });
    }
  });

  it("are solved whole whatever they state together", () => {
    const any = fc.record(
      Object.fromEntries(Object.entries(OVERRIDES).map(([key, texts]) => [key, fc.constantFrom(...texts)])),
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(any, fc.constantFrom("1", "2"), (fields, pumpsRunning) =>
        expectSolvedWhole(dutyText({ ...FIELDS, pumpsRunning }, SHARED), fields),
      ),
      { numRuns: 12 },
    );
  });

  it("flow through aged pipe where they say so, as the aged end of the range does", () => {
    const typed = {
      ...dutyText(FIELDS, LINES),
      cases: [caseOf("old", { pipe: "aged" }), caseOf("new", { pipe: "new" })],
    };
    // The head at the flow asked for is worked out for the duty and its cases alone.
    expect(figuresOf(typed, "case1").slice(0, -1)).toEqual(figuresOf(typed, "aged").slice(0, -1));
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

describe("verdicts beside a refused box", () => {
  it("stay verdicts where an end of the range lies within the static head stated", () => {
    const { duty } = decodeDuty(dutyText({ sourceLevel: "0" }, QUARRY));
    expect(isRange(workedDuty(duty).worked.cells.get("verdicts") ?? null)).toBe(true);
  });
});
