import { describe, expect, it } from "vitest";
import { rangeName } from "../../../shared/calc-sheet/layout/range-name.ts";
import { FIELD_KEYS, FIELDS } from "../../../shared/duty/fields.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { boxOf, rangeOf } from "../../../shared/ports/a1.ts";
import { referenceParts } from "../../../shared/ports/reference.ts";
import type { ListSpec, SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { QUARRY } from "../../support/duty-of.ts";
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
      expect(offered(list, all), key).toEqual(choices);
      count += 1;
    }
    expect(count).toBeGreaterThanOrEqual(1);
    const inputs = new Set(
      sheet.cells.flatMap(({ at, style = "" }) => (sheet.styles[style]?.unlocked === true ? [at] : [])),
    );
    for (const { ref } of sheet.lists ?? []) expect(inputs).toContain(ref);
  });

  it("refuse what is none of them only where nothing else can be read", () => {
    const sheet = sheetsOf(QUARRY).duty;
    const isStrict = (name: string): boolean | undefined =>
      sheet.lists?.find(({ ref }) => ref === sheet.names?.[name])?.strict;
    expect(isStrict("driver")).toBe(true);
    expect(isStrict("aspiration")).toBe(true);
    // A liquid may be described, a material be a specification.
    expect(isStrict("liquid")).toBeUndefined();
    expect(isStrict("casing_material")).toBeUndefined();
  });

  it("leave a flange class and flange sizes as numbers", () => {
    const sheet = sheetsOf(QUARRY).duty;
    const shown = (name: string): unknown => sheet.cells.find(({ at }) => at === sheet.names?.[name])?.v;
    expect(["flange_class", "suction_flange", "discharge_flange"].map(shown)).toEqual([150, 8, 6]);
  });
});
