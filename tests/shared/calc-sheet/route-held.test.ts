import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { workOut } from "../../../shared/calc-sheet/work-out.ts";
import type { CaseText } from "../../../shared/duty/duty-text.ts";
import { pumpOnDuty } from "../../../shared/package/pump-on-duty.ts";
import { dutyOf, type Fields, pumpText } from "../../support/duty-of.ts";
import { judged } from "../../support/judged.ts";
import { readTooEarly } from "../../support/plan-order.ts";

// A bore of 2 m takes no head worth naming at these flows (0.03 m/s): heads are differences of levels, by hand.
const BORE = "ID 2 m rough 0 mm";
const WITHIN = 0.01;

function over(summit: string, head: number, fields: Fields = {}, cases: readonly CaseText[] = []) {
  const rows = [0, 0.5, 1, 1.5, 2].map((of) => [`${1450 * of} gpm`, `${60 + (head - 60) * of} ft`]);
  return dutyOf(
    {
      flow: "1450 gpm",
      sourceLevel: "588 ft",
      pumpLevel: "600 ft",
      deliveryLevel: "625 ft",
      temperature: "70 degF",
      altitude: "600 ft",
      frictionMargin: "0",
      fillingFlow: "100 gpm",
      ...fields,
    },
    {
      suctionLine: [{ pipe: BORE, length: "40 ft", fittings: "" }],
      dischargeLine: [
        { pipe: BORE, length: "500 ft", fittings: "", level: summit },
        { pipe: BORE, length: "500 ft", fittings: "1 exit", level: "625 ft" },
      ],
      pump: pumpText(rows),
      cases,
    },
  );
}

describe("cases of a line that is held to its summit", () => {
  // The pumps give 60 − 6 Q/1450: 54 ft at 1450, 54.62 ft at 1300, 55.86 ft at 1000, 50 ft and a little at 2410 gpm.
  const cases: readonly CaseText[] = [
    // 643 − 587.5 = 55.5 ft over the summit, above the 54 ft there are; 37.5 ft through the full line.
    { name: "Storm", hours: "", fields: { sourceLevel: "587.5 ft" } },
    // 643 − 588 = 55 ft, above 54.62 ft.
    { name: "Half", hours: "", fields: { flow: "1300 gpm" } },
    // 55 ft, below 55.86 ft.
    { name: "Night", hours: "", fields: { flow: "1000 gpm" } },
    // 643 − 625 = 18 ft over the summit; through to the outlet 640 − 625 = 15 ft.
    { name: "Flood", hours: "", fields: { sourceLevel: "625 ft" } },
  ];
  const duty = over("643 ft", 54, {}, cases);
  const plan = dutyPlan(duty);
  const { cells } = workOut(plan);
  const at = (row: number, of: string) => cells.get(`caseResults.${row}.${of}`);

  it("are asked for the head over it", () => {
    [55.5, 55, 55, 18].forEach((head, row) => {
      expect(Math.abs((at(row, "headToSelect") as number) - head), cases[row]?.name).toBeLessThan(WITHIN);
    });
  });

  it("meet the duty where the head verdict passes them, and there alone", () => {
    const below = "BELOW THE DUTY: over the summit";
    expect(cases.map((_, row) => at(row, "verdict"))).toEqual([below, below, "meets the duty", "meets the duty"]);
    expect(cells.get("casesNotMet")).toBe(`Storm: ${below}; Half: ${below}`);
    const words = cases.map(({ name }) => new RegExp(`head at the duty flow, over the summit, ${name}`, "i"));
    expect(words.map((of) => judged(duty, "head", of).map(({ state }) => state))).toEqual([
      ["fail"],
      ["fail"],
      ["pass"],
      ["pass"],
    ]);
  });

  it("stand before what reads them", () => {
    expect(readTooEarly(plan)).toEqual([]);
  });
});

describe("head at the duty flow by the route", () => {
  const words = /head at the duty flow, over the summit/;
  const earned: Fields = { outlet: "submerged", summitValve: "vacuum primer" };

  it("is held against the full line where a siphon is earned, though filling at less flow asks for more", () => {
    // 45 ft at 1450 gpm against 625 − 588 = 37 ft; at 100 gpm 58.97 ft against 640 − 588 = 52 ft.
    const duty = over("640 ft", 45, earned);
    expect(judged(duty, "head", words).map(({ state }) => state)).toEqual(["pass"]);
    expect(judged(duty, "head", /while the line fills/).map(({ state }) => state)).toEqual(["pass"]);
    expect(Math.abs((workOut(dutyPlan(duty)).cells.get("fillHead") as number) - 52)).toBeLessThan(WITHIN);
  });

  it("is held against the summit where none is", () => {
    // 45 ft against 52 ft.
    const [row] = judged(over("640 ft", 45), "head", words);
    expect(row?.state).toBe("fail");
    expect(row?.text).toMatch(/siphon credit not earned\): without a siphon the pumps see the summit/);
  });

  it("does not speak of the summit where the full line is what asks for more", () => {
    // 36 ft against 37 ft.
    for (const [duty, credit] of [
      [over("640 ft", 36, earned), "earned"],
      [over("620 ft", 36), "not needed"],
    ] as const) {
      const [row] = judged(duty, "head", words);
      expect(row?.state).toBe("fail");
      expect(row?.text).toContain(`siphon credit ${credit}): the pumps give less than the duty flow`);
      expect(row?.text).not.toContain("without a siphon");
    }
  });
});

describe("the region of a line that is held to its summit", () => {
  // Best efficiency at 1450 gpm. From 60 ft at no flow to 54 ft at 1450 gpm the pumps give 60 − 6 Q/1450, so 57 ft over
  // the summit, 645 − 588, at 725 gpm: 50 % of it. Running full the line asks for 52 ft, 640 − 588, which they give
  // at 1933 gpm.
  const rows = [0, 0.5, 1, 1.5, 2].map((of) => [
    `${1450 * of} gpm`,
    `${60 - 6 * of} ft`,
    `${[0, 60, 80, 60, 20][2 * of]} %`,
  ]);
  const bypass = (fields: Fields, summit = "645 ft") =>
    dutyOf(
      {
        flow: "700 gpm",
        sourceLevel: "588 ft",
        pumpLevel: "600 ft",
        deliveryLevel: "640 ft",
        temperature: "70 degF",
        altitude: "600 ft",
        frictionMargin: "0",
        fillingFlow: "100 gpm",
        ...fields,
      },
      {
        suctionLine: [{ pipe: BORE, length: "40 ft", fittings: "" }],
        dischargeLine: [
          { pipe: BORE, length: "500 ft", fittings: "", level: summit },
          { pipe: BORE, length: "500 ft", fittings: "1 exit", level: "640 ft" },
        ],
        pump: pumpText(rows, { speed: "1750 rpm" }),
      },
    );
  const words = /over the summit, without a siphon|the line runs full/;

  it("is judged where the pumps run over it", () => {
    const duty = bypass({});
    const { cells } = workOut(dutyPlan(duty));
    expect((cells.get("bestFlowOver") as number) / 50).toBeCloseTo(1, 2);
    const rows = judged(duty, "region", words);
    expect(rows.map(({ state }) => state)).toContain("check");
    expect(rows.find(({ state }) => state === "check")?.text).toMatch(/outside the preferred region|doubted/);
  });

  it("stands beside the operating flow in the pane, where no siphon is earned", () => {
    // 725 gpm of 6.309e-5 m³/s.
    expect((pumpOnDuty(bypass({}))?.flowOverSummit as number) / 0.04574).toBeCloseTo(1, 2);
    expect(pumpOnDuty(bypass({ outlet: "submerged", summitValve: "vacuum primer" }))?.flowOverSummit).toBeUndefined();
  });

  it("is held against the maker's least flow there", () => {
    // 725 gpm over the summit; 1933 gpm through the full line keep it.
    const of = (least: string, fields: Fields = {}) =>
      judged(bypass({ leastPumpFlow: least, ...fields }), "region", words)
        .filter(({ text }) => /maker's least|flow of each pump|runs full/.test(text))
        .map(({ state }) => state);
    expect(of("750 gpm")).toContain("fail");
    expect(of("700 gpm")).not.toContain("fail");
    expect(of("750 gpm", { outlet: "submerged", summitValve: "vacuum primer" })).not.toContain("fail");
  });

  it("is not held against it where the summit lies below the grade line", () => {
    const rows = judged(bypass({}, "610 ft"), "region", words);
    expect(rows.length).toBeGreaterThan(0);
    expect(new Set(rows.map(({ state, text }) => `${state} ${/the line runs full/.test(text)}`))).toEqual(
      new Set(["pass true"]),
    );
  });
});
