import { describe, expect, it } from "vitest";
import { rangeName } from "../../../shared/calc-sheet/layout/range-name.ts";
import { CASE_FIELDS } from "../../../shared/duty/fields/cases.ts";
import { OWN_BOXES } from "../../../shared/duty/fields/pump.ts";
import { FIELD_KEYS, FIELDS } from "../../../shared/duty/fields.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { addressOf, boxOf, rangeOf } from "../../../shared/ports/a1.ts";
import { referenceParts } from "../../../shared/ports/reference.ts";
import type { ListSpec, SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { spelt } from "../../../shared/text/spelling.ts";
import { dutyText, QUARRY, STRAIGHT_PUMP } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";

/** What a list offers: its own names, or the texts of the cells it reads. */
function offered({ items }: ListSpec, sheets: readonly SheetSpec[]): readonly unknown[] {
  if (!("from" in items)) return items;
  const { sheet, target } = referenceParts(items.from);
  const on = sheets.find(({ name }) => name === sheet);
  const { top, bottom, left } = boxOf(target);
  return Array.from({ length: bottom - top + 1 }, (_, i) => {
    const at = rangeOf({ top: top + i, left, bottom: top + i, right: left });
    return on?.cells.find((cell) => cell.at === at)?.v;
  });
}

describe("the drop-downs of a sheet", () => {
  it.each(SAMPLE_DUTIES)("stand at every input that is one of known names, with all of them: $name", ({ duty }) => {
    const { all } = sheetsOf(duty);
    const [sheet] = all as readonly [SheetSpec];
    let count = 0;
    for (const key of FIELD_KEYS) {
      const { choices } = FIELDS[key];
      const at = sheet.names?.[rangeName(key)];
      if (choices === undefined || at === undefined) continue;
      const list = sheet.lists?.find(({ ref }) => ref === at);
      if (list === undefined) throw new Error(`${key} has no list`);
      expect(offered(list, all), key).toEqual(choices.map((name) => spelt(name, duty.unitSet)));
      count += 1;
    }
    expect(count).toBeGreaterThanOrEqual(1);
    const inputs = new Set(
      sheet.cells.flatMap(({ at, style = "" }) => (sheet.styles[style]?.unlocked === true ? [at] : [])),
    );
    for (const { ref } of sheet.lists ?? []) expect(inputs).toContain(ref);
  });

  it("ask about what is none of them only where nothing else can be read, and refuse nothing", () => {
    const sheet = sheetsOf(QUARRY).duty;
    const isAsked = (name: string): boolean | undefined =>
      sheet.lists?.find(({ ref }) => ref === sheet.names?.[name])?.asks;
    expect(sheet.lists?.filter(({ strict }) => strict === true)).toEqual([]);
    expect(isAsked("driver")).toBe(true);
    expect(isAsked("aspiration")).toBe(true);
    // A liquid may be described, a material be a specification.
    expect(isAsked("liquid")).toBeUndefined();
    expect(isAsked("casing_material")).toBeUndefined();
  });

  it("offer the sizes of the pipe of a line, and take any other description", () => {
    const { duty, all } = sheetsOf(QUARRY);
    const { top, left, bottom } = boxOf(duty.names?.["discharge_line"] ?? "");
    const lists = Array.from({ length: bottom - top }, (_, i) =>
      duty.lists?.find(({ ref }) => ref === addressOf(top + i, left)),
    );
    for (const [i, list] of lists.entries()) {
      if (list === undefined) throw new Error(`run ${i + 1} has no list`);
      const names = offered(list, all);
      expect(names).toContain(duty.cells.find(({ at }) => at === addressOf(top + i, left))?.v);
      // ASME B36.10M has 6 and 24 inch pipe in schedule 40.
      for (const name of ["6in sch40", "24in sch40"]) expect(names).toContain(name);
      expect(list.asks).toBeUndefined();
    }
  });

  it("stand in the tables of the cases, and at a further pump", () => {
    const second = {
      ...STRAIGHT_PUMP,
      ...{ name: "second", level: "", checkValve: "no", suctionSize: "NPS 8", dischargeSize: "6", flangeClass: "150" },
    };
    const typed = dutyText(
      {},
      {
        pump: STRAIGHT_PUMP,
        otherPumps: [second],
        cases: [{ name: "aged", hours: "", fields: { pipe: "aged", liquid: "sea water" } }],
      },
    );
    const { duty, all } = sheetsOf({ ...typed, fields: { ...typed.fields, agedRoughness: "0.5 mm" } });
    const at = (name: string): string => duty.names?.[name] ?? "";
    const listAt = (ref: string): ListSpec => {
      const list = duty.lists?.find((one) => one.ref === ref);
      if (list === undefined) throw new Error(`${ref} has no list`);
      return list;
    };
    expect(listAt(at("other_pump1_check_valve"))).toMatchObject({ items: ["yes", "no"], asks: true });
    expect(offered(listAt(at("other_pump1_suction_size")), all)).toEqual(OWN_BOXES.suctionSize.choices);
    expect(offered(listAt(at("other_pump1_flange_class")), all)).toEqual(OWN_BOXES.flangeClass.choices);
    const { top, left } = boxOf(at("cases"));
    expect(offered(listAt(addressOf(top, left + 1)), all)).toEqual(CASE_FIELDS.liquid.choices);
    expect(listAt(addressOf(top, left + 2))).toMatchObject({ items: ["new", "aged"], asks: true });
  });

  it("leave a flange class and flange sizes as numbers", () => {
    const sheet = sheetsOf(QUARRY).duty;
    const shown = (name: string): unknown => sheet.cells.find(({ at }) => at === sheet.names?.[name])?.v;
    expect(["flange_class", "suction_flange", "discharge_flange"].map(shown)).toEqual([150, 8, 6]);
  });
});
