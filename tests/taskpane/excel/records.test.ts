import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { dutiesIn } from "../../../shared/calc-sheet/open-again/duties-in.ts";
import { addSheets } from "../../../taskpane/excel/add-sheets.ts";
import { excelHost } from "../../../taskpane/excel/excel-host.ts";
import { dutyText } from "../../support/duty-of.ts";
import { setOfDuty } from "../../support/laid-out.ts";
import { WorkbookHost } from "../../support/workbook-host.ts";

let host: WorkbookHost;
const globals = globalThis as { Office?: unknown };

function officeThat(isSetSupported: boolean): void {
  Object.assign(globals, { Office: { context: { requirements: { isSetSupported: () => isSetSupported } } } });
}

beforeEach(() => {
  host = new WorkbookHost();
  Object.assign(globalThis, { Excel: host.Excel });
  officeThat(true);
});
afterEach(() => {
  delete globals.Office;
});

const DUTY = dutyText({ item: "P-7", revision: "B", directCost: "46000", sourcePressure: "0.5 bar" });

describe("a duty on sheets of Excel", () => {
  it("comes back as it was", async () => {
    await addSheets(setOfDuty(DUTY), []);
    const { duties, lost } = dutiesIn(await excelHost.recorded());
    expect(lost).toEqual([]);
    expect(duties.map(({ sheet, back }) => [sheet, back])).toEqual([
      ["Duty P-7", { duty: DUTY, taken: [], remarks: [] }],
    ]);
  });

  it("comes back with what was typed there, and names what is no formula any more", async () => {
    await addSheets(setOfDuty(DUTY), []);
    await excelHost.write({ "'Duty P-7'!flow": 650, "'P-7 estimate'!direct_cost": 47000, "'Duty P-7'!total_head": 50 });
    const [found] = dutiesIn(await excelHost.recorded()).duties;
    expect(found?.back.duty.fields).toEqual({ ...DUTY.fields, flow: "650", directCost: "47000" });
    expect(found?.back.remarks.map(({ kind }) => kind)).toEqual(["overwritten"]);
  });

  it("leaves nothing of itself where a step fails, whichever", async () => {
    const set = setOfDuty(DUTY);
    for (const fault of [
      { sync: 2, at: 5 },
      { sync: 3, at: "before" },
      { sync: 3, at: 3 },
      { sync: 3, at: "after" },
    ] as const) {
      host.syncs.length = 0;
      host.fault = fault;
      await expect(addSheets(set, []), JSON.stringify(fault)).rejects.toThrow();
      host.fault = undefined;
      expect(
        host.sheets.map(({ name }) => name),
        JSON.stringify(fault),
      ).toEqual(["Sheet1"]);
      expect(host.xmlParts, JSON.stringify(fault)).toEqual([]);
    }
  });

  it("is written without its record where Excel keeps none, and is then not offered", async () => {
    officeThat(false);
    await addSheets(setOfDuty(DUTY), []);
    expect(host.xmlParts).toEqual([]);
    expect(excelHost.holdsRecords()).toBe(false);
    expect(await excelHost.recorded()).toEqual({ records: [], sheets: [] });
  });
});
