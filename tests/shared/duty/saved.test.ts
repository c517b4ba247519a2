import { describe, expect, it } from "vitest";
import type { DutyText } from "../../../shared/duty/duty-text.ts";
import { withoutNotKnown } from "../../../shared/duty/not-known.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { dutyFrom, loadDuty, saveDuty } from "../../../shared/duty/saved.ts";
import harbourBypass from "./version-1/harbour-bypass.json" with { type: "json" };
import quarrySump from "./version-1/quarry-sump.json" with { type: "json" };
import sandTailings from "./version-1/sand-tailings.json" with { type: "json" };
import washHeader from "./version-1/wash-header.json" with { type: "json" };

/** In the order of the samples. */
const VERSION_1 = [quarrySump, washHeader, harbourBypass, sandTailings];

function loaded(data: unknown): DutyText {
  const found = dutyFrom(data);
  if (!found.ok) throw new Error(JSON.stringify(found.findings));
  return found.value;
}

describe("a duty of version 1", () => {
  it.each(VERSION_1.map((saved, i) => ({ saved, i })))("opens as the sample of today: $i", ({ saved, i }) => {
    const typed = loaded(saved);
    expect(typed).toEqual(SAMPLE_DUTIES[i]?.duty);
    expect(loaded(JSON.parse(saveDuty(typed)))).toEqual(typed);
  });

  /** The quarry with several of its pump. */
  const several = (count: string, arrangement: string): DutyText =>
    loaded({ ...quarrySump, pump: { ...quarrySump.pump, count, arrangement } });

  it("keeps the number of its pumps and how they stand", () => {
    const { pumpsRunning, pumpsStandby, arrangement } = several("3", "series").fields;
    expect([pumpsRunning, pumpsStandby, arrangement]).toEqual(["3", "", "series"]);
    expect(several("two", "parallel").fields.pumpsRunning).toBe("two");
  });

  it("keeps the flow of all pumps in its suction where they stand side by side", () => {
    const shares = (count: string, arrangement: string) =>
      several(count, arrangement).suctionLine.map(({ share }) => share);
    expect(shares("2", "parallel")).toEqual(["all"]);
    for (const [count, arrangement] of [
      ["", "parallel"],
      ["1", "parallel"],
      ["2", "series"],
    ] as const) {
      expect(shares(count, arrangement)).toEqual([undefined]);
    }
    expect(several("2", "parallel").dischargeLine.map(({ share }) => share)).toEqual([undefined, undefined]);
  });

  it("is refused with a pump that has no number", () => {
    const { count: _, ...pump } = quarrySump.pump;
    const found = dutyFrom({ ...quarrySump, pump });
    expect(found.findings[0]).toMatchObject({ code: "duty-unreadable", kind: "error" });
  });
});

describe("a saved duty", () => {
  it("keeps share and level of a row, and opens without them", () => {
    const [first] = SAMPLE_DUTIES as readonly [(typeof SAMPLE_DUTIES)[number]];
    const row = { pipe: "8in sch40", length: "20", fittings: "", share: "1/2", level: "95 ft" };
    const typed = { ...first.duty, dischargeLine: [row, { pipe: "8in sch40", length: "20", fittings: "" }] };
    const found = loadDuty(saveDuty(typed));
    expect(found.ok && found.value).toEqual(typed);
  });

  it.each([
    ["length", 'its “dischargeLine.0.length” is the number 30; write it as text, "30"'],
    ["level", 'its “dischargeLine.0.level” is the number 30; write it as text, "30"'],
  ])("with a bare number for its %s says to write it as text", (key, reason) => {
    const [first] = SAMPLE_DUTIES as readonly [(typeof SAMPLE_DUTIES)[number]];
    const saved = JSON.parse(saveDuty(first.duty));
    saved.dischargeLine[0][key] = 30;
    const found = loadDuty(JSON.stringify(saved));
    expect(found.findings).toMatchObject([{ code: "duty-unreadable", kind: "error", facts: { reason } }]);
    saved.dischargeLine[0][key] = "30";
    expect(loadDuty(JSON.stringify(saved)).ok).toBe(true);
  });

  it("with a bare number for a field says to write it as text", () => {
    const [first] = SAMPLE_DUTIES as readonly [(typeof SAMPLE_DUTIES)[number]];
    const saved = JSON.parse(saveDuty(first.duty));
    saved.fields.flow = 1200;
    const reason = 'its “fields.flow” is the number 1200; write it as text, "1200"';
    expect(loadDuty(JSON.stringify(saved)).findings[0]?.facts).toEqual({ reason });
  });
});

describe("what a saved duty holds that nothing here reads", () => {
  const [first] = SAMPLE_DUTIES as readonly [(typeof SAMPLE_DUTIES)[number]];
  const saved = JSON.parse(saveDuty(first.duty));
  saved.fields.sorceLevel = "95 ft";
  saved.basis.colour = "RAL";
  saved.settings = { share: "0.8", list: [1, null] };
  saved.dischargeLine[1].lining = "rubber";
  saved.pump.points[0].noise = "80 dB";
  saved.pump.maker = "own";
  const typed = loaded(saved);

  it("is said, one by one, with where it stands and the nearest that is known", () => {
    const { findings } = dutyFrom(saved);
    expect(new Set(findings.map(({ code }) => code))).toEqual(new Set(["field-not-known"]));
    expect(findings.map(({ subject, given }) => `${subject}: ${given}`).toSorted()).toEqual([
      "basis: colour",
      "discharge line, row 2: lining",
      "pump, curve point 1: noise",
      "pump: maker",
      "saved duty: settings",
      "saved duty: sorceLevel",
    ]);
    expect(findings.find(({ given }) => given === "sorceLevel")?.suggestions).toContain("sourceLevel");
  });

  it("is saved again with all else, a row's with its row", () => {
    expect(JSON.parse(saveDuty(typed))).toEqual({ ...saved, fields: { ...typed.fields, sorceLevel: "95 ft" } });
    const [one, other] = typed.dischargeLine;
    const turned = { ...typed, dischargeLine: [other, one] } as DutyText;
    expect(JSON.parse(saveDuty(turned)).dischargeLine[0].lining).toBe("rubber");
  });

  it("goes once it is taken out, and nothing else with it", () => {
    expect(withoutNotKnown(typed)).toEqual(first.duty);
    expect(withoutNotKnown(first.duty)).toEqual(first.duty);
  });
});
