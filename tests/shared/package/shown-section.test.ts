import { describe, expect, it } from "vitest";
import { dutyPlan, fieldsNotUsed } from "../../../shared/calc-sheet/duty-plan.ts";
import { placed, waitsFor } from "../../../shared/calc-sheet/package-section.ts";
import { driveSection } from "../../../shared/calc-sheet/sections/drive.ts";
import { decodeDuty } from "../../../shared/duty/decode.ts";
import type { Duty } from "../../../shared/duty/duty.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { shownSection } from "../../../shared/package/shown-section.ts";

const [QUARRY] = SAMPLE_DUTIES;

function quarry(fields: Readonly<Record<string, string>>): Duty {
  const typed = QUARRY?.duty as (typeof SAMPLE_DUTIES)[number]["duty"];
  return decodeDuty({ ...typed, fields: { ...typed.fields, ...fields } }).duty;
}

const textsOf = (duty: Duty, id: "pressure" | "drive"): ReadonlyMap<string, string> =>
  new Map(shownSection(duty, id)?.figures.map(({ label, text }) => [label, text]));

describe("a section of a duty with a box that cannot be read", () => {
  it("shows a dash for what waits for the box, names it once, and shows the rest", () => {
    const cold = quarry({ temperature: "15" });
    const shown = shownSection(cold, "pressure");
    expect(shown?.waits).toEqual(["Liquid temperature"]);
    expect(textsOf(cold, "pressure").get("Maximum, discharge")).toBe("–");
    // The head of the curve is in head of whatever is pumped: 125.7 ft stands in the sample's curve at no flow.
    expect(textsOf(cold, "pressure").get("Without high idle assumed")).toBe("125.7 ft");
    const [table] = shown?.tables ?? [];
    expect(new Set(table?.rows.flatMap(({ cells }) => cells))).toEqual(new Set(["–"]));
    expect(table?.faults).toEqual([]);
  });

  it("blanks the verdict on the driver alone where its service factor is refused", () => {
    const figures = textsOf(quarry({ serviceFactor: "10 %" }), "drive");
    expect(figures.get("Required driver power")).toBe("–");
    expect(figures.get("Maximum power of one pump")).toBe("45.7 hp");
  });

  it("is withheld where the box decides what it works out", () => {
    const unknown = quarry({ driver: "oxen" });
    expect(waitsFor(driveSection, unknown)).toEqual(["Driver"]);
    expect(placed(driveSection, unknown)).toEqual([]);
    expect(shownSection(unknown, "drive")).toBeUndefined();
    expect(shownSection(unknown, "priming")).toBeDefined();
  });
});

it("lists a part named where no pump is selected, with what it needs", () => {
  const typed = QUARRY?.duty as (typeof SAMPLE_DUTIES)[number]["duty"];
  const { pump: _, ...others } = typed;
  const { duty } = decodeDuty({ ...others, fields: { ...typed.fields, otherPart: "discharge hose" } });
  const found = fieldsNotUsed(duty, dutyPlan(duty).items).find(({ key }) => key === "otherPart");
  expect(found?.reason).toMatch(/^Select a pump/);
});
