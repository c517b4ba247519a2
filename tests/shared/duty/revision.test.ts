import { describe, expect, it } from "vitest";
import { changeText } from "../../../shared/duty/change.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import { type DutyText, EMPTY_CASE, EMPTY_OTHER_PUMP, EMPTY_REVISION } from "../../../shared/duty/duty-text.ts";
import { FIELD_KEYS, FIELDS, fieldsOf } from "../../../shared/duty/fields.ts";
import { dutyChanges } from "../../../shared/duty/revision.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { resultChanges, verdictChanges } from "../../../shared/package/result-changes.ts";
import { spelt } from "../../../shared/text/spelling.ts";
import { convertNumbers } from "../../../taskpane/pane/convert-numbers.ts";
import { dutyText, pumpText, QUARRY } from "../../support/duty-of.ts";
import { TYPICAL } from "../../support/hostile-places.ts";
import { GIF, WIDE_PNG } from "../../support/pictures.ts";

function said(before: DutyText, after: DutyText): readonly string[] {
  return dutyChanges(before, after).map(changeText);
}

describe("what was typed otherwise", () => {
  const BASE = dutyText();

  it.each(SAMPLE_DUTIES)("is nothing for a duty and itself: $name", ({ duty }) => {
    expect(dutyChanges(duty, structuredClone(duty))).toEqual([]);
  });

  it.each(SAMPLE_DUTIES)("is the unit set alone where every number was converted: $name", ({ duty }) => {
    const other = duty.unitSet === "US" ? "SI" : "US";
    expect(said(duty, convertNumbers(duty, other))).toEqual([`Units: ${duty.unitSet}, now ${other}`]);
  });

  it("is each number where the unit set alone was changed", () => {
    expect(said(dutyText({ flow: "600" }), dutyText({ flow: "600" }, { unitSet: "SI" }))).toContain(
      "Flow: 600 US gpm, now 600 L/s",
    );
  });

  it("says a field that was changed, given or taken out", () => {
    expect(said(BASE, dutyText({ flow: "700" }))).toEqual(["Flow: 600 gpm, now 700 US gpm"]);
    expect(said(BASE, dutyText({ temperature: "80" }))).toEqual(["Liquid temperature: now 80 °F"]);
    expect(said(dutyText({ liquid: "sea water" }), BASE)).toEqual(["Liquid: sea water, now blank"]);
    // The unit written beside the same number is no change.
    expect(said(dutyText({ flow: "600" }), dutyText({ flow: " 600 gpm" }))).toEqual([]);
    // Nor is the same amount in another unit; what cannot be read is compared as it stands.
    expect(said(dutyText({ sourceLevel: "1 m" }), dutyText({ sourceLevel: "100 cm" }))).toEqual([]);
    expect(said(dutyText({ flow: "many" }), dutyText({ flow: "more" }))).toEqual(["Flow: many, now more"]);
  });

  it("finds a change in any field but those of the revision itself", () => {
    const own = [
      "revision",
      "date",
      "preparedBy",
      "preparedInitials",
      "preparedOn",
      "checkedBy",
      "checkedInitials",
      "checkedOn",
      "approvedBy",
      "approvedInitials",
      "approvedOn",
    ];
    for (const key of FIELD_KEYS) {
      const [one, other] = TYPICAL[key];
      const found = dutyChanges(dutyText({ [key]: one }), dutyText({ [key]: other }));
      expect([key, found.length]).toEqual([key, own.includes(key) ? 0 : 1]);
      expect(found.every(({ label }) => label.startsWith(spelt(FIELDS[key].label, "US")))).toBe(true);
      expect(found.every(({ isInternal }) => isInternal === fieldsOf("estimate").includes(key))).toBe(true);
    }
  });

  it("says the basis of a figure, and keeps that of a price inside the firm", () => {
    const changes = dutyChanges(BASE, { ...BASE, basis: { flow: "survey", directCost: "quotation" } });
    expect(changes.map(changeText)).toEqual(["Basis of Flow: now survey", "Basis of Direct cost: now quotation"]);
    expect(changes.map(({ isInternal }) => isInternal)).toEqual([false, true]);
  });

  it("says what is excluded line by line", () => {
    const [before, after] = ["Cables\nCivil works", "Cables\nTransport\nCivil works on site"];
    expect(said(dutyText({ exclusions: before }), dutyText({ exclusions: after }))).toEqual([
      "Excluded: line 2: Civil works, now Transport",
      "Excluded: now Civil works on site",
    ]);
  });

  it("says a logo that came, changed or went", () => {
    const [with1, with2] = [WIDE_PNG, GIF].map((logo) => ({ ...BASE, logo })) as [DutyText, DutyText];
    expect(said(BASE, with1)).toEqual(["Logo: now a picture of 2 kB"]);
    expect(said(with1, with2)).toEqual(["Logo: a picture of 2 kB, now a picture of 1 kB"]);
    expect(said(with2, BASE)).toEqual(["Logo: a picture of 1 kB, now blank"]);
  });

  it("says rows of a line that were changed, put in or taken out, and not those that moved on", () => {
    const [a, b, c] = ["6in sch40", "8in sch40", "10in sch40"].map((pipe) => ({ pipe, length: "20", fittings: "" }));
    const line = (...rows: readonly (typeof a)[]): DutyText =>
      dutyText({}, { dischargeLine: rows as DutyText["dischargeLine"] });
    expect(said(line(a, b, c), line(a, c))).toEqual(["Discharge line, row 2: 8in sch40, length 20 ft, now blank"]);
    expect(said(line(a, c), line(a, b, c))).toEqual(["Discharge line, row 2: now 8in sch40, length 20 ft"]);
    expect(said(line(a, b), line(a, { ...b, length: "30", share: "1/2" } as typeof b))).toEqual([
      "Discharge line, row 2: length: 20 ft, now 30 ft",
      "Discharge line, row 2: share: now 1/2",
    ]);
    // A blank row is none, but counts where the others are called by their number.
    const blank = { pipe: "", length: "", fittings: "" };
    expect(said(line(a, b), line(a, blank, b))).toEqual([]);
    expect(said(line(a), line(a, blank, b))).toEqual(["Discharge line, row 3: now 8in sch40, length 20 ft"]);
  });

  it("says the pump that was chosen, dropped or changed, and its points", () => {
    const rows = [
      ["0", "60"],
      ["100", "50"],
      ["200", "30"],
    ];
    const of = (points: readonly (readonly string[])[], change = {}): DutyText =>
      dutyText({}, { pump: pumpText(points, { name: "Invented 1", ...change }) });
    expect(said(BASE, of(rows))).toEqual(["Pump: now Invented 1, 3 points"]);
    expect(said(of(rows), BASE)).toEqual(["Pump: Invented 1, 3 points, now blank"]);
    expect(said(of(rows), of(rows, { trimRatio: "0.95" }))).toEqual(["Pump: Trim ratio: now 0.95"]);
    expect(
      said(
        of(rows),
        of([
          ["0", "60"],
          ["100", "51", "70"],
          ["200", "30"],
        ]),
      ),
    ).toEqual(["Pump curve, point 2: head: 50 ft, now 51 ft", "Pump curve, point 2: efficiency: now 70"]);
    expect(said(of(rows), of([...rows, ["250", "10"]]))).toEqual(["Pump curve, point 4: now 250 US gpm, head 10 ft"]);
    expect(
      said(
        of(rows),
        of(
          [
            ["0", "90"],
            ["300", "40"],
          ],
          { name: "Invented 2" },
        ),
      ),
    ).toEqual(["Pump: Name: Invented 1, now Invented 2", "Pump curve: 3 points, now 2 points, none of them as before"]);
  });

  it("says further pumps, cases and their boxes", () => {
    const other = {
      ...EMPTY_OTHER_PUMP,
      name: "Invented 3",
      points: pumpText([
        ["0", "60"],
        ["9", "50"],
      ]).points,
    };
    const withPumps = (...otherPumps: NonNullable<DutyText["otherPumps"]>): DutyText => dutyText({}, { otherPumps });
    expect(said(BASE, withPumps(other))).toEqual(["Further pump 1: now Invented 3, 2 points"]);
    expect(said(withPumps(other), withPumps({ ...other, level: "2" }))).toEqual([
      "Further pump 1: Its source stands higher by: now 2 ft",
    ]);
    const higher = {
      ...other,
      points: pumpText([
        ["0", "66"],
        ["9", "50"],
      ]).points,
    };
    expect(said(withPumps(other), withPumps(higher))).toEqual([
      "Further pump 1 curve, point 1: head: 60 ft, now 66 ft",
    ]);
    expect(said(withPumps(other, higher), withPumps(higher))).toEqual([
      "Further pump 1: Invented 3, 2 points, now blank",
    ]);
    const storm = { ...EMPTY_CASE, name: "Storm", fields: { flow: "900" } };
    const withCases = (...cases: NonNullable<DutyText["cases"]>): DutyText => dutyText({}, { cases });
    expect(said(BASE, withCases(storm))).toEqual(["Case 1: now Storm, Flow 900 US gpm"]);
    expect(said(withCases(storm), withCases({ ...storm, hours: "200", fields: { flow: "950" } }))).toEqual([
      "Case 1: Hours a year: now 200 h",
      "Case 1: Flow: 900 US gpm, now 950 US gpm",
    ]);
  });

  it("leaves out the history itself", () => {
    expect(said(BASE, { ...BASE, revisions: [{ ...EMPTY_REVISION, revision: "A" }] })).toEqual([]);
  });
});

describe("what comes out otherwise", () => {
  const QUARRY_READ = decodeDuty(QUARRY).duty;
  const changedBy = (fields: Partial<DutyText["fields"]>) =>
    decodeDuty({ ...QUARRY, fields: { ...QUARRY.fields, ...fields } }).duty;

  it("is nothing for the same duty", () => {
    const again = decodeDuty(QUARRY).duty;
    expect([...resultChanges(QUARRY_READ, again), ...verdictChanges(QUARRY_READ, again)]).toEqual([]);
  });

  it("says a head that rises with the level of delivery, foot for foot", () => {
    const found = resultChanges(QUARRY_READ, changedBy({ deliveryLevel: "184" }));
    const total = found.find(({ label }) => label === "Total dynamic head");
    const [before = Number.NaN, after = Number.NaN] = [total?.before, total?.after].map((text) =>
      Number.parseFloat(text ?? ""),
    );
    // 174 ft before, and the losses are those of the same flow. Printed to four figures.
    expect(after - before).toBeCloseTo(10, 1);
    expect(total?.after.endsWith(" ft")).toBe(true);
    expect(found.some(({ label }) => label === "NPSH available")).toBe(false);
  });

  it("says both in the units of the later state", () => {
    const metric = decodeDuty(convertNumbers(QUARRY, "SI")).duty;
    // The same water to six figures: where a figure is printed otherwise, it is by its last.
    for (const { before, after } of resultChanges(QUARRY_READ, metric)) {
      expect(Number.parseFloat(after) / Number.parseFloat(before)).toBeCloseTo(1, 2);
    }
  });

  it("keeps prices inside the firm", () => {
    const found = resultChanges(QUARRY_READ, changedBy({ directCost: "50000" }));
    expect(found.length).toBeGreaterThan(0);
    expect(found.every(({ isInternal }) => isInternal)).toBe(true);
  });

  it("says a verdict of another state, by its sentence", () => {
    const ofHead = (fields: Partial<DutyText["fields"]>) =>
      verdictChanges(QUARRY_READ, changedBy(fields)).find(({ label }) => label === "Head");
    // With no other state of the system to hold than the one stated.
    const alone = ofHead({ leastStaticHead: "", greatestStaticHead: "", agedRoughness: "" });
    expect(alone?.before).toMatch(/^Fails: head at the duty flow/);
    expect(alone?.after).toMatch(/^Passes: /);
    // Failing for another reason is another verdict; failing by another figure is none.
    const far = { deliveryLevel: "140", leastStaticHead: "", greatestStaticHead: "", agedRoughness: "" };
    expect(ofHead(far)?.after).toMatch(/^Fails: operating flow/);
    expect(ofHead({ greatestStaticHead: "81" })).toBeUndefined();
  });

  it("says so where a figure could not be worked out any more", () => {
    const found = resultChanges(QUARRY_READ, changedBy({ liquid: "water with a word too many" }));
    expect(found.find(({ label }) => label === "Total dynamic head")).toMatchObject({ after: "not worked out" });
  });
});
