import { describe, expect, it } from "vitest";
import { type DutyText, EMPTY_DUTY } from "../../../shared/duty/duty-text.ts";
import { fileName } from "../../../taskpane/pane/duty-file.ts";
import { inBrief } from "../../../taskpane/pane/in-brief.ts";
import { workedOut } from "../../../taskpane/pane/worked.ts";
import { dutyText, type Fields } from "../../support/duty-of.ts";

const measured = "ID 200 mm rough 0.045 mm";

const duty = (change: Fields, lines: Partial<DutyText> = {}): DutyText =>
  dutyText(
    { flow: "50", pumpLevel: "3", deliveryLevel: "27", ...change },
    {
      unitSet: "SI",
      suctionLine: [{ pipe: measured, length: "12", fittings: "K 0.9" }],
      dischargeLine: [{ pipe: measured, length: "250", fittings: "K 3, 1 exit" }],
      ...lines,
    },
  );

const names = (points: readonly { readonly name: string }[]): readonly string[] => points.map(({ name }) => name);

describe("an incomplete duty", () => {
  it("names what is missing, in the order of the pane, and calls none of it a mistake", () => {
    const worked = workedOut(EMPTY_DUTY);
    expect(names(worked.missing)).toEqual([
      "Flow",
      "Source liquid level",
      "Pump level",
      "Delivery level",
      "Suction line, row 1: pipe",
      "Discharge line, row 1: pipe",
    ]);
    expect(worked.wrong).toEqual([]);
    expect(worked.at("flow")).toEqual([]);
    expect(inBrief(worked, "SI")).toEqual(["9 open", "6 inputs missing"]);
  });

  it("keeps a mistake to its own box", () => {
    const worked = workedOut(duty({ flow: "12 parsecs", temperature: "warm", sourceLevel: "" }));
    expect(names(worked.wrong)).toEqual(["Liquid temperature", "Flow"]);
    expect(names(worked.missing)).toEqual(["Source liquid level"]);
    expect(worked.at("flow").map(({ code }) => code)).toEqual(["unit-unknown"]);
    expect(worked.at("temperature").map(({ code }) => code)).toEqual(["not-a-number"]);
    expect(worked.at("pumpLevel")).toEqual([]);
    expect(worked.isComplete).toBe(false);
    for (const figure of [worked.results.totalHead, worked.results.npshAvailable, worked.results.density]) {
      expect(figure).toMatchObject({ error: "#N/A" });
    }
    // Atmosphere hangs on the altitude alone.
    expect(worked.results.atmosphere).toBeTypeOf("number");
  });

  it("asks for the rest of a row that was begun", () => {
    const worked = workedOut(duty({}, { dischargeLine: [{ pipe: measured, length: "", fittings: "" }] }));
    expect(names(worked.missing)).toEqual(["Discharge line, row 1: length"]);
  });
});

describe("a complete duty", () => {
  it("has results and nothing missing", () => {
    const worked = workedOut(duty({}));
    expect(worked.missing).toEqual([]);
    expect(worked.wrong).toEqual([]);
    expect(worked.isComplete).toBe(true);
    expect(worked.results.staticHead).toBeCloseTo(27, 9);
  });

  it("shows a row's figures on that row, past blank rows above it", () => {
    const blank = { pipe: "", length: "", fittings: "" };
    const row = { pipe: measured, length: "250", fittings: "1 exit" };
    const worked = workedOut(duty({}, { dischargeLine: [blank, row, blank, row] }));
    expect(worked.segmentAt("dischargeLine", 0)).toBeUndefined();
    expect(worked.segmentAt("dischargeLine", 2)).toBeUndefined();
    // Q / A = 0.05 / (π 0.2² / 4) = 1.5915 m/s.
    expect(worked.segmentAt("dischargeLine", 1)?.velocity).toBeCloseTo(1.591549, 5);
    expect(worked.segmentAt("dischargeLine", 3)?.velocity).toBeCloseTo(1.591549, 5);
  });

  it("tells remarks on the duty from those on other flows of the curve", () => {
    const { remarks } = workedOut(duty({}));
    // 1.59 m/s is under the 2.4 m/s usual of a suction line; one and a half times the flow, 2.39 m/s, is too.
    expect(remarks.onCurve.map(({ code }) => code)).not.toContain("velocity-high");
    const faster = workedOut(duty({ flow: "70" })).remarks;
    // 2.23 m/s at the duty, 3.34 m/s at the end of the curve.
    expect(faster.atDuty.map(({ code }) => code)).not.toContain("velocity-high");
    expect(faster.onCurve.map(({ code }) => code)).toContain("velocity-high");
  });

  it("says each thing once, the gravest first", () => {
    const { remarks } = workedOut(duty({ sourceLevel: "-9" }));
    const texts = remarks.atDuty.map((finding) => JSON.stringify(finding));
    expect(new Set(texts).size).toBe(texts.length);
    const gravity = remarks.atDuty.map(({ kind }) => ["error", "limit", "check"].indexOf(kind));
    expect(gravity).toEqual([...gravity].sort());
    expect(remarks.atDuty.length).toBeGreaterThan(1);
  });

  it("still gives the head of a liquid without a vapour pressure, and counts the errors", () => {
    const worked = workedOut(duty({ liquid: "SG 1.12, 3.5 cP" }));
    const [verdicts, head, suction] = inBrief(worked, "SI");
    expect(verdicts).toMatch(/^\d+ open$/);
    expect(head).toMatch(/^Total head \d+(\.\d+)? m$/);
    expect(suction).toBe("NPSHA not known");
    expect(worked.remarks.atDuty[0]?.kind).toBe("error");
  });

  it("is worked out once for the same typed duty", () => {
    const typed = duty({});
    expect(workedOut(typed)).toBe(workedOut(typed));
  });
});

describe("the name of a saved duty", () => {
  it.each([
    { item: "P-101", project: "x", name: "duty P-101.json" },
    { item: "", project: "Sump / north: 2", name: "duty Sump north 2.json" },
    { item: " ", project: "", name: "duty.json" },
    { item: "../../P?1", project: "", name: "duty .. .. P 1.json" },
  ])("is “$name” for item “$item” of project “$project”", ({ item, project, name }) => {
    expect(fileName(duty({ item, project }))).toBe(name);
  });
});
