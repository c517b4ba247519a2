import { beforeEach, describe, expect, it } from "vitest";
import { failureText } from "../../../shared/ports/host-fault.ts";
import type { SheetSet } from "../../../shared/ports/sheet-set.ts";
import { excelHost } from "../../../taskpane/excel/excel-host.ts";
import { memorySheet } from "../../support/memory-sheet.ts";
import { sampleSheet } from "../../support/sheet-sample.ts";
import { WorkbookHost } from "../../support/workbook-host.ts";

let host: WorkbookHost;
beforeEach(() => {
  host = new WorkbookHost();
  Object.assign(globalThis, {
    Excel: host.Excel,
    Office: { context: { requirements: { isSetSupported: () => true } } },
  });
  const theirs = memorySheet("theirs", "Theirs");
  theirs.cells["A1"] = 7;
  host.sheets.push(theirs);
});

const two: SheetSet = {
  wanted: ["Duty", "Duty workings"],
  sheets: ([first = "", second = ""]) => [sampleSheet(first), sampleSheet(second)],
  records: ["<mine/>"],
};

/** What the pane would say of a writing during which the reader does something, as a round trip arrives. */
async function writing(trip: number, meanwhile: () => void): Promise<string> {
  host.onSync = (sync) => {
    if (sync === trip) meanwhile();
  };
  return excelHost.addSheets(two).then((names) => `written: ${names.join(", ")}`, failureText);
}

function remove(at: number): void {
  host.sheets.splice(at, 1);
}

const names = (): readonly string[] => host.sheets.map(({ name }) => name);

describe("sheets that are being written into Excel", () => {
  it.each([
    { which: "the first", at: 2 },
    { which: "the second", at: 3 },
  ])("of which the reader deletes $which: the other goes too, all else stands, and it is said", async ({ at }) => {
    const before = host.snapshot();
    const said = await writing(3, () => remove(at));
    expect(said).toMatch(/no longer there\. Nothing was changed in the workbook\..*write the sheets again\.$/);
    expect(host.snapshot()).toBe(before);
  });

  it("while the sheet that was in front goes too: ours are taken away, theirs stands", async () => {
    const said = await writing(3, () => {
      remove(2);
      remove(0);
    });
    expect(said).toContain("Nothing was changed in the workbook.");
    expect(said).not.toContain("by hand");
    expect(names()).toEqual(["Theirs"]);
    expect(host.xmlParts).toEqual([]);
  });

  it("of which the reader protects one: both are taken away again, and it is said what to take off", async () => {
    const before = host.snapshot();
    const said = await writing(3, () => host.protected.add(host.sheets[2]?.name ?? ""));
    host.protected.clear();
    expect(said).toMatch(/protected.*Nothing was changed in the workbook\. Take the protection off/);
    expect(host.snapshot()).toBe(before);
  });

  it("while the reader protects the workbook: what is left is named, and nothing of theirs is touched", async () => {
    const said = await writing(3, () => {
      host.isStructureProtected = true;
    });
    expect(said).toMatch(/protected.*could not be removed again\. Delete the newest sheets by hand/);
    expect(names().slice(0, 2)).toEqual(["Sheet1", "Theirs"]);
    expect(host.sheet("Theirs").cells).toEqual({ A1: 7 });
  });
});
