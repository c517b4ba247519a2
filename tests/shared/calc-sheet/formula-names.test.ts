import { describe, expect, it } from "vitest";
import { dutyPlan } from "../../../shared/calc-sheet/duty-plan.ts";
import { rangeName } from "../../../shared/calc-sheet/layout/range-name.ts";
import { FIELD_KEYS } from "../../../shared/duty/fields.ts";
import { SAMPLE_DUTIES } from "../../../shared/duty/samples.ts";
import { absolute } from "../../../shared/ports/a1.ts";
import { quotedSheetName } from "../../../shared/ports/sheet-name.ts";
import type { SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { dutyRead } from "../../support/duty-of.ts";
import { sheetsOf } from "../../support/laid-out.ts";

const REFERENCE = /(?<![\w.])(?:('(?:[^']|'')+'|[A-Za-z_][\w.]*)!)?([A-Za-z_$][\w.$]*(?::\$?[A-Z]+\$?\d+)?)(?!\()/g;

/** What a formula refers to, by sheet: addresses and names alike; its texts left out. */
function referencesIn(formula: string, own: string): readonly (readonly [sheet: string, target: string])[] {
  const bare = formula.replace(/"(?:[^"]|"")*"/g, "");
  return [...bare.matchAll(REFERENCE)].map(([, sheet, target = ""]) => [sheet ?? quotedSheetName(own), target]);
}

describe("the formulas of a sheet", () => {
  const duties = SAMPLE_DUTIES.map(({ name, duty }) => ({ name, sheets: sheetsOf(duty).all }));

  it.each(duties)("write the name of a cell or table that has one, on whatever sheet: $name", ({ sheets }) => {
    const named = new Map<string, string>();
    const known = new Set<string>();
    for (const { name: sheet, names = {} } of sheets) {
      for (const [name, range] of Object.entries(names)) {
        named.set(`${quotedSheetName(sheet)}!${absolute(range)}`, name);
        known.add(`${quotedSheetName(sheet)}!${name}`);
      }
    }
    const found = sheets.flatMap(({ name, cells }) => cells.flatMap(({ f }) => (f ? referencesIn(f, name) : [])));
    expect(found.filter(([sheet, target]) => named.has(`${sheet}!${target}`))).toEqual([]);
    const names = found.filter(([, target]) => /^[a-z][a-z_]*$/.test(target));
    expect(names.filter(([sheet, name]) => !known.has(`${sheet}!${name}`))).toEqual([]);
    const used = new Set(names.map(([sheet, name]) => `${sheet}!${name}`));
    for (const name of ["flow", "suction_line", "discharge_line", "static_head"])
      expect([...used].some((one) => one.endsWith(`!${name}`))).toBe(true);
    // From the workings, with the sheet before them.
    const [duty, workings] = [sheets[0], sheets.at(-1)] as [SheetSpec, SheetSpec];
    expect(workings.cells.some(({ f = "" }) => f.includes(`${quotedSheetName(duty.name)}!flow`))).toBe(true);
  });

  it.each(SAMPLE_DUTIES)("have a name of its own for every cell that has one: $name", ({ duty }) => {
    const items = dutyPlan(dutyRead(duty)).items.flatMap((item) => ("key" in item && item.key ? [item.key] : []));
    const names = [...new Set([...items, ...FIELD_KEYS])].map((key) => [rangeName(key), key] as const);
    const first = new Map<string, string>();
    for (const [name, key] of names) {
      expect([name, first.get(name) ?? key]).toEqual([name, key]);
      first.set(name, key);
    }
  });
});

describe("the name of a cell", () => {
  it.each([
    ["flow", "flow"],
    ["staticHead", "static_head"],
    ["verdictOnNPSH", "verdict_on_npsh"],
    ["pump2Speed", "pump2_speed"],
    // A friction loss is no pipe, and a margin on the price no margin on anything else.
    ["dischargePipe", "discharge_pipe_friction"],
    ["margin", "profit_margin"],
    ["years", "years_in_service"],
    ["pH", "liquid_ph"],
  ])("of %s", (key, name) => expect(rangeName(key)).toBe(name));

  // "Names cannot be the same as a cell reference, such as Z$100 or R1C1", nor C, c, R or r: Microsoft, "Names in formulas".
  it.each(["dn150", "ph7", "r", "c", "q1", "r1c1", "xfd10", "TRUE"])("is none of a cell: %s", (key) => {
    expect(rangeName(key)).toBe(`${key.toLowerCase()}_`);
  });

  it.each([...FIELD_KEYS])("is one Excel takes: %s", (key) => {
    expect(rangeName(key)).toMatch(/^[a-z][a-z0-9_]{2,254}$/);
    expect(rangeName(key)).not.toMatch(/^([a-z]{1,3}[0-9]+|true|false)$/);
  });
});
