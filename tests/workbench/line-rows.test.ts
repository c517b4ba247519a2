import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { addressOf, boxOf } from "../../shared/ports/a1.ts";
import { quotedSheetName } from "../../shared/ports/sheet-name.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { headlessGrid } from "../../workbench/headless.ts";
import { dutyText } from "../support/duty-of.ts";
import { setOfDuty } from "../support/laid-out.ts";

describe("a run put into a line on the sheet, in the grid", () => {
  const grid = headlessGrid();
  const set = setOfDuty(dutyText({}));
  let sheet: SheetSpec;
  let on = "";
  beforeAll(async () => {
    const names = await grid.host.addSheets(set);
    sheet = set.sheets(names)[0] as SheetSpec;
    on = quotedSheetName(sheet.name);
  });
  afterAll(() => grid.dispose());

  const read = async (what: string): Promise<unknown> => (await grid.host.read([`${on}!${what}`]))[0]?.[0]?.[0];
  const titled = (): string => sheet.cells.find(({ f }) => f?.includes("CHANGED: a run was put into"))?.at ?? "";

  it("is picked up below the last one too, and both check and title say CHANGED", async () => {
    const before = await read("total_head");
    expect(await read("head_check")).toBe(0);
    expect(await read(titled())).toBe("Inputs as written.");
    const { bottom } = boxOf(sheet.names?.["discharge_line"] ?? "");
    // The thin row that ends the line stands at the bottom: what is put in before it stands below the last run.
    grid.api.getActiveWorkbook()?.getSheetByName(sheet.name)?.insertRowsBefore(bottom, 1);
    const { left } = boxOf(sheet.names?.["discharge_line"] ?? "");
    const run = ["4in sch40", 200, "none"].map((v, i) => [`${on}!${addressOf(bottom, left + i)}`, v] as const);
    await grid.host.write(Object.fromEntries(run));
    expect(await read("total_head")).toBeGreaterThan(before as number);
    const check = await read("head_check");
    expect(check).toBeCloseTo((before as number) - ((await read("total_head")) as number), 5);
    const words = boxOf(sheet.cells.find(({ f }) => f?.startsWith("IF(ISNUMBER(head_check),"))?.at ?? "");
    expect(await read(addressOf(words.top + 1, words.left))).toMatch(/^CHANGED: /);
    expect(await read(titled())).toMatch(/^CHANGED: a run was put into/);
    // Its worked cells filled down from the run above: what they read of their own row is one further down.
    const tab = grid.api.getActiveWorkbook()?.getSheetByName(sheet.name);
    const above = sheet.cells.flatMap(({ at, f }) => {
      const { top, left: column } = boxOf(at);
      const isWorked = f !== undefined && top === bottom - 1 && column > left;
      return isWorked ? [{ column, f: tab?.getRange(top, column).getFormula() ?? "" }] : [];
    });
    expect(above.length).toBeGreaterThan(3);
    for (const { column, f } of above) {
      const down = f.replaceAll(new RegExp(`(?<=\\$[A-Z])${bottom}\\b`, "g"), String(bottom + 1));
      tab?.getRange(bottom, column).setValue({ f: down });
    }
    const velocity = await read(addressOf(bottom, above[1]?.column ?? 0));
    expect(velocity).toBeGreaterThan((await read(addressOf(bottom - 1, above[1]?.column ?? 0))) as number);
    expect(await read("head_check")).toBe(0);
    expect(await read(titled())).toMatch(/^CHANGED: a run was put into/);
  });

  it("is as it was again once the row is taken out, and CHANGED where a run of the duty is taken out", async () => {
    const { bottom } = boxOf(sheet.names?.["discharge_line"] ?? "");
    const tab = grid.api.getActiveWorkbook()?.getSheetByName(sheet.name);
    tab?.deleteRows(bottom, 1);
    expect(await read("head_check")).toBe(0);
    expect(await read(titled())).toBe("Inputs as written.");
    // Above the first run, where no range reaches, it is not counted: said all the same.
    const { top } = boxOf(sheet.names?.["discharge_line"] ?? "");
    const head = await read("total_head");
    tab?.insertRowsBefore(top, 1);
    const { left } = boxOf(sheet.names?.["discharge_line"] ?? "");
    await grid.host.write({
      [`${on}!${addressOf(top, left)}`]: "4in sch40",
      [`${on}!${addressOf(top, left + 1)}`]: 200,
    });
    expect(await read("total_head")).toBe(head);
    expect(await read(titled())).toMatch(/^CHANGED: /);
    tab?.deleteRows(top, 1);
    expect(await read(titled())).toBe("Inputs as written.");
    tab?.deleteRows(bottom - 1, 1);
    expect(await read(titled())).toMatch(/^CHANGED: /);
  });
});
