import { beforeEach, describe, expect, it } from "vitest";
import { customerCopy } from "../../../shared/calc-sheet/duty-sheets.ts";
import type { SheetSet } from "../../../shared/ports/sheet-set.ts";
import { addSheets } from "../../../taskpane/excel/add-sheets.ts";
import { excelHost } from "../../../taskpane/excel/excel-host.ts";
import { dutyText, QUARRY } from "../../support/duty-of.ts";
import { setOfDuty } from "../../support/laid-out.ts";
import { WorkbookHost } from "../../support/workbook-host.ts";

const DUTY = dutyText({ directCost: "46001.37", margin: "21.5731", currency: "ZZD" }, QUARRY);
const NO_WAIT = [0, 0];
let host: WorkbookHost;

beforeEach(() => {
  host = new WorkbookHost();
  Object.assign(globalThis, {
    Excel: host.Excel,
    Office: { context: { requirements: { isSetSupported: () => true } } },
  });
});

function copySet(): SheetSet {
  const set = customerCopy(DUTY, "2026-03-09");
  if (!set.ok) throw new Error(JSON.stringify(set.findings));
  return set.value;
}

describe("a copy for the customer in Excel", () => {
  it("joins the live sheets as one protected sheet that has nothing of them", async () => {
    await addSheets(setOfDuty(DUTY), NO_WAIT);
    const records = host.xmlParts.length;
    expect(await addSheets(copySet(), NO_WAIT)).toEqual(["Duty P-101 copy A"]);
    expect(host.sheets.map(({ name }) => name).slice(-2)).toEqual(["P-101 workings", "Duty P-101 copy A"]);
    const copy = host.sheet("Duty P-101 copy A");
    expect([...host.protected]).toEqual([copy.name]);
    expect(host.active).toBe(copy.id);
    expect(Object.values(copy.cells).filter((held) => typeof held === "string" && held.startsWith("="))).toEqual([]);
    expect(copy.cells["A2"]).toBe("Copy of results, 2026-03-09, revision A: nothing here recalculates.");
    expect([copy.names, copy.lists]).toEqual([{}, {}]);
    expect(JSON.stringify(copy)).not.toMatch(/46001|21\.5731|ZZD|Selling price|rofit/);
    // Moved to another workbook, it leaves nothing behind: no series of its charts is on another sheet.
    const drawn = copy.charts.flatMap(({ series }) => series.flatMap(({ x, y }) => [x, y]));
    expect(drawn.length).toBeGreaterThan(10);
    for (const range of drawn) expect(range).toMatch(/^[A-Z]+\d+(:[A-Z]+\d+)?$/);
    for (const { set } of copy.rules) expect(String(set["rule.formula"])).not.toContain("!$");
    expect(copy.set).toMatchObject({ paperSize: "Letter", orientation: "Portrait", printArea: expect.any(String) });
    // It opens no duty again, and the one that stands is still the only one.
    expect(host.xmlParts).toHaveLength(records);
    const { sheets } = await excelHost.recorded();
    expect(sheets.map(({ name }) => name)).not.toContain(copy.name);
  });

  it("takes the next free name, and goes again where it cannot be protected", async () => {
    await addSheets(copySet(), NO_WAIT);
    const before = host.snapshot();
    expect(host.syncs).toHaveLength(3);
    const at = host.kinds[2]?.findIndex((kind) => /protect/i.test(kind)) ?? -1;
    expect(at).toBeGreaterThan(0);
    host.fault = { sync: 6, at };
    await expect(addSheets(copySet(), NO_WAIT)).rejects.toThrow("made to fail");
    host.fault = undefined;
    expect(host.snapshot()).toBe(before);
    expect(await addSheets(copySet(), NO_WAIT)).toEqual(["Duty P-101 copy A (2)"]);
    expect([...host.protected]).toEqual(["Duty P-101 copy A", "Duty P-101 copy A (2)"]);
  });
});
