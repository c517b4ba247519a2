import { describe, expect, it } from "vitest";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { CaseText } from "../../../shared/duty/duty-text.ts";
import { loadDuty, saveDuty } from "../../../shared/duty/saved.ts";
import { findingText } from "../../../shared/text/finding-text.ts";
import { dutyText } from "../../support/duty-of.ts";

const caseOf = (fields: CaseText["fields"], hours = "", name = "storm"): CaseText => ({ name, hours, fields });

function decoded(...cases: readonly CaseText[]) {
  const { duty, findings, isComplete } = decodeDuty({ ...dutyText(), cases });
  return { duty, isComplete, codes: [...findings].map(([place, all]) => [place, ...all.map(({ code }) => code)]) };
}

describe("cases as typed", () => {
  it("are read by the rules of the duty's own boxes", () => {
    const { duty, isComplete } = decoded(caseOf({ flow: "700", sourceLevel: "2 m", temperature: "90" }, "1200"));
    const [one] = duty.cases;
    expect(isComplete).toBe(true);
    expect(one?.name).toBe("storm");
    expect(one?.duty.flow).toBeCloseTo(700 * 6.30901964e-5, 9);
    expect(one?.duty.sourceLevel).toBe(2);
    expect(one?.duty.temperature).toBeCloseTo(305.372, 3);
    expect(one?.hours).toBe(1200 * 3600);
    // What it does not state is the duty's own.
    expect(one?.duty.deliveryLevel).toBe(duty.deliveryLevel);
  });

  it("have no name of their own but their place, and are told apart", () => {
    const { duty, codes, isComplete } = decoded(
      caseOf({ flow: "700" }, "", ""),
      caseOf({}, "", "wet"),
      caseOf({}, "5", "Wet"),
    );
    expect(duty.cases.map(({ name }) => name)).toEqual(["Case 1", "wet (2)", "Wet (3)"]);
    for (const row of [1, 2]) expect(codes).toContainEqual([`cases.${row}.name`, "case-named-twice"]);
    expect(isComplete).toBe(true);
  });

  it("have a name of 60 letters at most, and go by their place with a longer one", () => {
    const fits = decoded(caseOf({ flow: "700" }, "", "x".repeat(60)));
    expect([fits.isComplete, fits.duty.cases[0]?.name]).toEqual([true, "x".repeat(60)]);
    const long = decoded(caseOf({ flow: "700" }, "", "x".repeat(61)));
    expect(long.codes).toContainEqual(["cases.0.name", "case-name-long"]);
    expect([long.isComplete, long.duty.cases[0]?.name]).toEqual([false, "Case 1"]);
    expect(long.duty.cases[0]?.duty.flow).toBeCloseTo(700 * 6.30901964e-5, 9);
    const { findings } = decodeDuty({ ...dutyText(), cases: [caseOf({}, "5", "x".repeat(61))] });
    expect(findings.get("cases.0.name")?.map((found) => findingText(found, "US"))).toEqual([
      "The name of a case has at most 60 letters; this one has 61, and the case goes by Case 1.",
    ]);
  });

  it("are left out where nothing was typed", () => {
    expect(decoded(caseOf({}, "", ""), caseOf({ flow: " " }, " ", " ")).duty.cases).toEqual([]);
  });

  it.each<[CaseText, string, string]>([
    [caseOf({ flow: "abc" }), "cases.0.flow", "not-a-number"],
    [caseOf({ flow: "-5" }), "cases.0.flow", "out-of-range"],
    [caseOf({ temperature: "900 degF" }), "cases.0.temperature", "out-of-range"],
    [caseOf({ liquid: "ammonia" }), "cases.0.liquid", "name-unknown"],
    [caseOf({ pipe: "aged" }), "cases.0.pipe", "left-out"],
    [caseOf({ speedRatio: "3" }), "cases.0.speedRatio", "out-of-range"],
    [caseOf({ pumpsRunning: "1.5" }), "cases.0.pumpsRunning", "not-a-whole-number"],
    [caseOf({}, "8761"), "cases.0.hours", "out-of-range"],
    [caseOf({}, "-1"), "cases.0.hours", "out-of-range"],
  ])("say at their own box what cannot be read: %j", (one, place, code) => {
    const { codes, isComplete, duty } = decoded(one);
    expect(codes).toContainEqual([place, code]);
    expect(isComplete).toBe(false);
    // One wrong box leaves the duty as it is.
    expect(duty.flow).toBeDefined();
  });

  it("hold no more hours than a year has, all together", () => {
    expect(decoded(caseOf({}, "5000"), caseOf({}, "3760")).isComplete).toBe(true);
    const { codes, duty } = decoded(caseOf({}, "5000"), caseOf({}, "3761"));
    expect(codes).toContainEqual(["cases.1.hours", "out-of-range"]);
    expect(duty.cases.map(({ hoursState }) => hoursState)).toEqual(["stated", "unreadable"]);
  });

  it("are twelve at most", () => {
    const many = Array.from({ length: 13 }, (_, i) => caseOf({ flow: "700" }, "", `case ${i}`));
    expect(decoded(...many.slice(0, 12)).isComplete).toBe(true);
    expect(decoded(...many).codes).toContainEqual(["cases.12.name", "out-of-range"]);
  });

  it("are saved and read back letter for letter", () => {
    const typed = { ...dutyText(), cases: [caseOf({ flow: " 700 gpm", pipe: "aged" }, "12"), caseOf({}, "", "")] };
    const loaded = loadDuty(saveDuty(typed));
    expect(loaded.ok && loaded.value).toEqual(typed);
  });

  it("say what a saved case holds that is not known", () => {
    const json = saveDuty({ ...dutyText(), cases: [caseOf({ flow: "7" })] }).replace('"flow": "7"', '"flwo": "7"');
    const loaded = loadDuty(json);
    expect(loaded.findings).toMatchObject([{ code: "field-not-known", subject: "case 1", given: "flwo" }]);
  });
});
