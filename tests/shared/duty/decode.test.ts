import { describe, expect, it } from "vitest";
import { type Decoded, decodeDuty } from "../../../shared/duty/decode.ts";
import { segmentsOf } from "../../../shared/duty/duty.ts";
import { type DutyText, EMPTY_DUTY } from "../../../shared/duty/duty-text.ts";
import type { FieldKey } from "../../../shared/duty/fields.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { loadDuty, saveDuty } from "../../../shared/duty/saved.ts";
import { dutyText, QUARRY } from "../../support/duty-of.ts";

function withField(key: FieldKey, text: string): DutyText {
  return { ...QUARRY, fields: { ...QUARRY.fields, [key]: text } };
}

/** The places that hold an error. */
function wrong(findings: Decoded["findings"]): readonly string[] {
  return [...findings].flatMap(([place, list]) => (list.some(({ kind }) => kind === "error") ? [place] : []));
}

describe("decodeDuty", () => {
  it("reads a plain number in the unit set", () => {
    // 1200 US gpm × 231 in³ / 60 s, NIST SP 811.
    expect(decodeDuty(QUARRY).duty.flow).toBeCloseTo((1200 * 231 * 0.0254 ** 3) / 60, 15);
  });

  it("takes the temperature from the liquid's name where its box is blank, and refuses another at the box", () => {
    const text = (temperature: string) => {
      const typed = withField("liquid", "water 90 F");
      return { ...typed, fields: { ...typed.fields, temperature } };
    };
    const filled = decodeDuty(text("")).duty;
    expect([filled.temperature, filled.state.temperature]).toEqual([expect.closeTo(305.372222, 5), "stated"]);
    expect(decodeDuty(text("90")).duty.temperature).toBeCloseTo(305.372222, 5);
    const refused = decodeDuty(text("68"));
    expect(refused.duty.state.temperature).toBe("unreadable");
    expect(refused.findings.get("temperature")).toMatchObject([{ code: "liquid-temperature-contradicts" }]);
  });

  it("reads thousands with a comma in US units, and says so; in SI it asks", () => {
    const us = decodeDuty(withField("flow", "1,200"));
    expect(us.duty.flow).toBeCloseTo(decodeDuty(withField("flow", "1200")).duty.flow as number, 15);
    expect(us.findings.get("flow")).toMatchObject([{ code: "number-read-as", kind: "check" }]);
    expect(decodeDuty(withField("altitude", "5,500 ft")).duty.altitude).toBeCloseTo(1676.4, 9);
    const si = decodeDuty({ ...withField("flow", "1,200"), unitSet: "SI" });
    expect(si.findings.get("flow")).toMatchObject([{ code: "number-ambiguous", suggestions: ["1200", "1.200"] }]);
    expect(decodeDuty({ ...withField("flow", "1 200"), unitSet: "SI" }).duty.flow).toBeCloseTo(1.2, 12);
  });

  it("lets a unit in the text win over the unit set", () => {
    expect(decodeDuty(withField("flow", "45 L/s")).duty.flow).toBeCloseTo(0.045, 15);
  });

  it.each([
    { key: "flow", text: "12,00x" },
    { key: "flow", text: "0" },
    { key: "flow", text: "-5" },
    { key: "sourceLevel", text: "3 bar" },
    { key: "temperature", text: "hot" },
    { key: "liquid", text: "treacle" },
    { key: "npshRequired", text: "9 gpm" },
  ] as const)("says what is wrong with $key “$text” there and nowhere else", ({ key, text }) => {
    const { isComplete, findings } = decodeDuty(withField(key, text));
    expect(isComplete).toBe(false);
    expect(wrong(findings)).toEqual([key]);
  });

  it("says which cell of a line is wrong", () => {
    const dischargeLine = [QUARRY.dischargeLine[0], { pipe: "10in HDPE DR17", length: "-3", fittings: "1 nonsense" }];
    const { findings } = decodeDuty({ ...QUARRY, dischargeLine: dischargeLine as DutyText["dischargeLine"] });
    expect([...findings.keys()]).toEqual(
      expect.arrayContaining(["dischargeLine.1.length", "dischargeLine.1.fittings"]),
    );
    expect(findings.has("dischargeLine.1.pipe")).toBe(false);
  });

  it("passes over blank line rows", () => {
    const dischargeLine = [{ pipe: "", length: "", fittings: "" }, ...QUARRY.dischargeLine];
    expect(decodeDuty({ ...QUARRY, dischargeLine }).duty.dischargeLine).toHaveLength(QUARRY.dischargeLine.length);
  });

  it("says at each required box and line that it is still to be given", () => {
    const { findings, duty, isComplete } = decodeDuty(EMPTY_DUTY);
    expect(isComplete).toBe(false);
    expect(wrong(findings).toSorted()).toEqual([
      "deliveryLevel",
      "dischargeLine.0.pipe",
      "flow",
      "pumpLevel",
      "sourceLevel",
      "suctionLine.0.pipe",
    ]);
    expect([...findings.values()].flat().every(({ code }) => code === "left-out")).toBe(true);
    expect([duty.flow, duty.state.flow, duty.pump, duty.pumpState]).toEqual([undefined, "blank", undefined, "blank"]);
    expect([duty.liquid?.name, duty.state.liquid, duty.driver]).toEqual(["water", "assumed", "motor"]);
  });

  it("loses nothing else to a box that cannot be read", () => {
    const whole = decodeDuty(QUARRY).duty;
    const { duty, isComplete } = decodeDuty(withField("supplyVoltage", "four hundred"));
    expect([isComplete, duty.supplyVoltage, duty.state.supplyVoltage]).toEqual([false, undefined, "unreadable"]);
    const { texts: _, state, supplyVoltage: __, liquid, pump, ...rest } = duty;
    expect(rest).toEqual(Object.fromEntries(Object.keys(rest).map((key) => [key, whole[key as keyof typeof whole]])));
    expect([liquid?.name, pump?.name]).toEqual([whole.liquid?.name, whole.pump?.name]);
    expect(state).toEqual({ ...whole.state, supplyVoltage: "unreadable" });
  });

  it("keeps the place of a row that cannot be read, with what is wrong", () => {
    const row = { pipe: "10in HDPE DR17", length: "-3", fittings: "1 nonsense" };
    const blank = { pipe: "", length: "", fittings: "" };
    const [first, ...others] = QUARRY.dischargeLine;
    const { duty } = decodeDuty({ ...QUARRY, dischargeLine: [first as typeof row, blank, row, ...others] });
    expect(duty.dischargeLine.map(({ row: at }) => at)).toEqual([0, 2, ...others.map((_, i) => i + 3)]);
    expect(duty.dischargeLine[1]).toMatchObject({ typed: row, segment: undefined });
    expect(duty.dischargeLine[1]?.wrong).toHaveLength(2);
    expect(duty.dischargeLine[0]).toMatchObject({ segment: { pipe: {} }, wrong: [] });
    expect(segmentsOf(duty.dischargeLine)).toBeUndefined();
    expect(segmentsOf(duty.suctionLine)).toHaveLength(QUARRY.suctionLine.length);
    expect(segmentsOf([])).toBeUndefined();
  });

  it("withdraws a value that a rule refuses, and no other", () => {
    const { duty } = decodeDuty(withField("temperature", "15"));
    expect([duty.temperature, duty.state.temperature, duty.liquid?.name]).toEqual([undefined, "unreadable", "water"]);
  });
});

describe("a saved duty", () => {
  it.each(SAMPLE_DUTIES)("comes back as it was: $name", ({ duty }) => {
    const loaded = loadDuty(saveDuty(duty));
    expect(loaded.ok && loaded.value).toEqual(duty);
  });

  it.each([
    ["not JSON", "flow=3"],
    ["another file", '{"name":"x"}'],
    ["a later version", saveDuty(QUARRY).replace('"version": 2', '"version": 99')],
    ["a wrong unit set", saveDuty(QUARRY).replace('"US"', '"IMPERIAL"')],
  ])("is refused with a reason: %s", (_, text) => {
    const loaded = loadDuty(text);
    expect(loaded.ok).toBe(false);
    expect(loaded.findings[0]).toMatchObject({ code: "duty-unreadable", kind: "error" });
  });

  it("without a field that came later still loads", () => {
    const { curveFlow: _, ...fields } = QUARRY.fields;
    const loaded = loadDuty(JSON.stringify({ ...JSON.parse(saveDuty(QUARRY)), fields }));
    expect(loaded.ok && loaded.value.fields.curveFlow).toBe("");
  });
});

describe("a box compared with others", () => {
  it("refuses a temperature the liquid does not hold, at the temperature box", () => {
    // 15 °F is −9.4 °C: below the freezing point of water.
    const { isComplete, findings } = decodeDuty({
      ...QUARRY,
      fields: { ...QUARRY.fields, liquid: "water", temperature: "15" },
    });
    expect(isComplete).toBe(false);
    expect(wrong(findings)).toEqual(["temperature"]);
    expect(findings.get("temperature")).toMatchObject([{ kind: "error", found: { quantity: "temperature" } }]);
    expect(decodeDuty(withField("temperature", "60")).isComplete).toBe(true);
  });

  it.each([
    ["frictionMargin", "-50"],
    ["frictionMargin", "0.1"],
    ["accessoryLosses", "0.05"],
    ["npshMargin", "-5"],
    ["casingWorkingPressure", "-5"],
    ["serviceFactor", "0.1"],
    ["serviceFactor", "10 %"],
    ["curveFlow", "1199"],
  ] as const)("refuses a %s of %s there and nowhere else", (key, text) => {
    const { isComplete, findings } = decodeDuty(withField(key, text));
    expect(isComplete).toBe(false);
    expect(wrong(findings)).toEqual([key]);
  });

  it("takes a system curve that ends at the flow", () => {
    expect(decodeDuty(withField("curveFlow", "1200")).isComplete).toBe(true);
  });

  it("says what was stated and what was assumed", () => {
    const fields = { ...QUARRY.fields, temperature: "", curveFlow: "", altitude: "850", npshRequired: "" };
    const { duty } = decodeDuty({ ...QUARRY, fields });
    expect(duty.temperature).toBe(293.15);
    // One and a half times 1200 US gpm.
    expect(duty.curveFlow).toBeCloseTo((1800 * 231 * 0.0254 ** 3) / 60, 12);
    const { temperature, curveFlow, altitude, npshRequired } = duty.state;
    expect([temperature, curveFlow, altitude, npshRequired]).toEqual(["assumed", "assumed", "stated", "blank"]);
  });
});

describe("a pressure on a surface", () => {
  const read = (sourcePressure: string, altitude = "") =>
    decodeDuty(dutyText({ sourcePressure, altitude, deliveryPressure: "" }));

  // By hand: 12 psia is 2.696 psi below the 14.696 psia of sea level; at 5000 ft the air is 12.228 psia (US standard atmosphere).
  it("may be absolute by its text, and is counted from the air of the site", () => {
    const psi = 6894.757293168;
    expect((read("12 psia").duty.sourcePressure as number) / psi).toBeCloseTo(-2.696, 3);
    expect((read("12 psia", "5000 ft").duty.sourcePressure as number) / psi).toBeCloseTo(-0.228, 2);
    expect((read("0.83 bar(a)").duty.sourcePressure as number) / 1e5).toBeCloseTo(0.83 - 1.01325, 9);
    expect(read("12 psia").isComplete).toBe(true);
    expect(read("-1 psia").duty.state.sourcePressure).toBe("unreadable");
  });

  it("of one atmosphere of gauge is doubted, and of an absolute one is not", () => {
    const codes = (text: string) => (read(text).findings.get("sourcePressure") ?? []).map(({ code }) => code);
    expect(codes("14.7 psi")).toContain("surface-pressure-atmospheric");
    expect(codes("101.3 kPa")).toContain("surface-pressure-atmospheric");
    expect(codes("14.7 psia")).toEqual([]);
    expect(codes("10 psi")).toEqual([]);
  });
});
