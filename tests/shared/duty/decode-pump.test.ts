import { describe, expect, it } from "vitest";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import {
  type CurvePointText,
  type DutyText,
  EMPTY_PUMP,
  type PumpText,
  placeKey,
} from "../../../shared/duty/duty-text.ts";
import type { FieldKey } from "../../../shared/duty/fields.ts";
import { loadDuty, saveDuty } from "../../../shared/duty/saved.ts";
import { QUARRY } from "../../support/duty-of.ts";

const goodPump = QUARRY.pump as PumpText;

function withPump(change: Partial<PumpText>): DutyText {
  return { ...QUARRY, pump: { ...goodPump, ...change } };
}

function withPoint(row: number, change: Partial<CurvePointText>): DutyText {
  return withPump({ points: goodPump.points.map((point, i) => (i === row ? { ...point, ...change } : point)) });
}

function withField(key: FieldKey, text: string): DutyText {
  return { ...QUARRY, fields: { ...QUARRY.fields, [key]: text } };
}

/** The places that hold an error. */
function wrong(typed: DutyText): readonly string[] {
  const { findings } = decodeDuty(typed);
  return [...findings].flatMap(([place, list]) => (list.some(({ kind }) => kind === "error") ? [place] : []));
}

describe("the selected pump of a duty", () => {
  it("is read in the unit set, its curve as the cell functions read one", () => {
    const pump = decodeDuty(QUARRY).duty.pump;
    // 1750 rpm over 60; 11 in; 1200 US gpm of 231 in³; 76.96 %, as typed in the sample.
    expect(pump?.speed).toBeCloseTo(1750 / 60, 12);
    expect(pump?.impellerDiameter).toBeCloseTo(11 * 0.0254, 12);
    expect(pump?.curve.bestEfficiency?.flow).toBeCloseTo((1200 * 231 * 0.0254 ** 3) / 60, 12);
    expect(pump?.curve.bestEfficiency?.efficiency).toBeCloseTo(0.7696, 12);
    expect([pump?.speedRatio, pump?.trimRatio]).toEqual([0.96, 1]);
  });

  it("lets a unit in the text win over the unit set, and reads a fraction as one", () => {
    const points = [
      { flow: "0", head: "40 m", efficiency: "", npshRequired: "" },
      { flow: "50 L/s", head: "35 m", efficiency: "70 %", npshRequired: "2 m" },
      { flow: "0.1 m3/s", head: "100", efficiency: "0.8", npshRequired: "3 m" },
      { flow: "120 L/s", head: "22 m", efficiency: "75 %", npshRequired: "5 m" },
    ];
    const curve = decodeDuty(withPump({ points })).duty.pump?.curve;
    expect(curve?.points.map(({ flow }) => flow)).toEqual([0, 0.05, 0.1, 0.12].map((flow) => expect.closeTo(flow, 12)));
    expect(curve?.points[2]?.head).toBeCloseTo(30.48, 12);
    expect(curve?.points.map(({ efficiency }) => efficiency)).toEqual([
      undefined,
      expect.closeTo(0.7, 12),
      expect.closeTo(0.8, 12),
      expect.closeTo(0.75, 12),
    ]);
  });

  it("is passed over where nothing was typed of it", () => {
    const { duty, findings } = decodeDuty({ ...QUARRY, pump: EMPTY_PUMP });
    expect(duty.pump).toBeUndefined();
    expect([...findings.keys()].filter((place) => place.startsWith("pump"))).toEqual([]);
  });

  it("passes over blank rows of its curve and still names the row as typed", () => {
    const blank = { flow: "", head: "", efficiency: "", npshRequired: "" };
    const points = [blank, ...goodPump.points];
    expect(decodeDuty(withPump({ points })).duty.pump?.curve.points).toHaveLength(goodPump.points.length);
    const bad = points.map((point, i) => (i === 3 ? { ...point, flow: "10" } : point));
    expect(wrong(withPump({ points: bad }))).toEqual(["pump.points.3.flow"]);
  });

  it.each([
    { why: "a head that is no number", typed: withPoint(2, { head: "high" }), place: "pump.points.2.head" },
    { why: "a formula", typed: withPoint(2, { head: "=1+1" }), place: "pump.points.2.head" },
    { why: "a flow in metres", typed: withPoint(1, { flow: "3 m" }), place: "pump.points.1.flow" },
    { why: "a flow that falls", typed: withPoint(4, { flow: "1" }), place: "pump.points.4.flow" },
    { why: "a head left out", typed: withPoint(3, { head: " " }), place: "pump.points.3.head" },
    { why: "a negative NPSHR", typed: withPoint(3, { npshRequired: "-2" }), place: "pump.points.3.npshRequired" },
    { why: "an efficiency above 100 %", typed: withPoint(3, { efficiency: "170" }), place: "pump.points.3.efficiency" },
    { why: "fractions among percentages", typed: withPoint(3, { efficiency: "0.7" }), place: "pump.points" },
    { why: "two points alone", typed: withPump({ points: goodPump.points.slice(0, 2) }), place: "pump.points" },
    { why: "no points", typed: withPump({ points: [] }), place: "pump.points.0.flow" },
    { why: "a speed of nothing", typed: withPump({ speed: "0" }), place: "pump.speed" },
    { why: "a speed in words", typed: withPump({ speed: "fast" }), place: "pump.speed" },
    { why: "a diameter in hertz", typed: withPump({ impellerDiameter: "50 Hz" }), place: "pump.impellerDiameter" },
    { why: "a tenth of the speed", typed: withPump({ speedRatio: "0.1" }), place: "pump.speedRatio" },
    { why: "a larger impeller", typed: withPump({ trimRatio: "1.1" }), place: "pump.trimRatio" },
  ])("says at its place what is wrong with $why, and nowhere else", ({ typed, place }) => {
    const { duty, isComplete } = decodeDuty(typed);
    expect([isComplete, duty.pump, duty.pumpState]).toEqual([false, undefined, "unreadable"]);
    expect(duty.flow).toBeDefined();
    expect(wrong(typed)).toEqual([place]);
  });

  it.each(["\u0000", "💧".repeat(500), "NaN", "Infinity", "1e400", "1e-400", "__proto__", "<b>", "'; --"])(
    "reads or refuses any text anywhere without throwing: %s",
    (text) => {
      const everywhere: DutyText = {
        ...QUARRY,
        fields: { ...QUARRY.fields, leastStaticHead: text, agedRoughness: text, acceptanceGrade: text },
        pump: {
          name: text,
          speed: text,
          impellerDiameter: text,
          points: [{ flow: text, head: text, efficiency: text, npshRequired: text }, ...goodPump.points],
          speedRatio: text,
          trimRatio: text,
        },
      };
      expect(decodeDuty(everywhere).isComplete).toBe(false);
      expect(wrong(everywhere)).toContain("acceptanceGrade");
    },
  );

  it("has a key of its own for each of its boxes", () => {
    expect(placeKey({ pump: "speed" })).toBe("pump.speed");
    expect(placeKey({ pump: "points", row: 2, column: "head" })).toBe("pump.points.2.head");
  });
});

describe("the range of a duty", () => {
  // The sample's static head is 174 − 98 = 76 ft.
  it.each([
    { key: "leastStaticHead", text: "76" },
    { key: "greatestStaticHead", text: "76" },
    { key: "leastStaticHead", text: "-10" },
    { key: "acceptanceGrade", text: "grade 1u" },
    { key: "agedRoughness", text: "0.3 mm" },
  ] as const)("takes a $key of $text", ({ key, text }) => {
    expect(wrong(withField(key, text))).toEqual([]);
  });

  it.each([
    { key: "leastStaticHead", text: "76.01" },
    { key: "greatestStaticHead", text: "75.99" },
    { key: "agedRoughness", text: "0" },
    { key: "agedRoughness", text: "4" },
    { key: "acceptanceGrade", text: "4Z" },
  ] as const)("refuses a $key of $text", ({ key, text }) => {
    expect(wrong(withField(key, text))).toEqual([key]);
  });

  it("takes the levels of a duty in metres to a rounding", () => {
    const fields = { sourceLevel: "0.1", deliveryLevel: "0.3", leastStaticHead: "0.2", greatestStaticHead: "0.2" };
    const typed = { ...QUARRY, unitSet: "SI" as const, fields: { ...QUARRY.fields, ...fields } };
    expect(wrong(typed).filter((place) => place.endsWith("StaticHead"))).toEqual([]);
  });
});

describe("a saved duty with a pump", () => {
  it("comes back as it was", () => {
    const loaded = loadDuty(saveDuty(QUARRY));
    expect(loaded.ok && loaded.value.pump).toEqual(goodPump);
  });

  it("saved before there were pumps still loads", () => {
    const { pump: _, ...before } = JSON.parse(saveDuty(QUARRY)) as Record<string, unknown>;
    const loaded = loadDuty(JSON.stringify(before));
    expect(loaded.ok && "pump" in loaded.value).toBe(false);
    expect(loaded.ok).toBe(true);
  });

  it.each([
    ["points that are no rows", { points: "many" }],
    ["a number for a text", { speed: 1750 }],
  ])("is refused with %s", (_, change) => {
    const saved = JSON.parse(saveDuty(QUARRY)) as { readonly pump: object };
    const loaded = loadDuty(JSON.stringify({ ...saved, pump: { ...saved.pump, ...change } }));
    expect(loaded.findings[0]).toMatchObject({ code: "duty-unreadable", kind: "error" });
  });
});
