import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { dutiesIn, type FoundDuty } from "../../shared/calc-sheet/open-again/duties-in.ts";
import { quotedSheetName } from "../../shared/ports/sheet-name.ts";
import { fileOfWorkbook, replaceWorkbook, sheetsOfFile } from "../../workbench/files.ts";
import { headlessGrid } from "../../workbench/headless.ts";
import { dutyText, STRAIGHT_PUMP } from "../support/duty-of.ts";
import { setOfDuty } from "../support/laid-out.ts";

const DUTY = dutyText(
  { item: "P-7", date: "2026-01-02", revision: "A", checkedBy: "ab", directCost: "46000", sourcePressure: "0.5 bar" },
  { pump: STRAIGHT_PUMP, cases: [{ name: "high water", hours: "", fields: { sourceLevel: "3 m" } }] },
);

const grid = headlessGrid();
const { host } = grid;
let names: readonly string[] = [];
beforeAll(async () => {
  names = await host.addSheets(setOfDuty(DUTY));
});
afterAll(() => grid.dispose());

async function found(): Promise<readonly FoundDuty[]> {
  const { duties, lost } = dutiesIn(await host.recorded());
  expect(lost).toEqual([]);
  return duties;
}

const on = (name: string): string => `${quotedSheetName(names[0] ?? "")}!${name}`;

async function stateLine(): Promise<unknown> {
  return (await host.read([on("A3")]))[0]?.[0]?.[0];
}

describe("a duty on the sheets of the workbench", () => {
  it("comes back as it was, and its sheet says that nothing was changed", async () => {
    const [one] = await found();
    expect(one?.back).toEqual({ duty: DUTY, taken: [], remarks: [] });
    expect(await stateLine()).toBe("Inputs as written.");
  });

  it("comes back with what was typed there, and its sheet counts it", async () => {
    await host.write({ [on("flow")]: 650, [on("checked_by")]: "cd" });
    const [one] = await found();
    expect(one?.back.duty.fields).toEqual({ ...DUTY.fields, flow: "650", checkedBy: "cd" });
    expect(await stateLine()).toMatch(/^2 inputs changed since revision A was written/);
  });

  it("survives a download that is opened again, and the change with it", async () => {
    const made = await fileOfWorkbook(grid, host, async () => true);
    const opened = sheetsOfFile(made?.bytes ?? new Uint8Array());
    if (!opened.ok) throw new Error(opened.why);
    await replaceWorkbook(grid, host, opened);
    const [one, ...others] = await found();
    expect(others).toEqual([]);
    expect(one?.back.duty.fields).toEqual({ ...DUTY.fields, flow: "650", checkedBy: "cd" });
    await host.write({ [on("flow")]: "600 gpm" });
    expect((await found())[0]?.back.taken.map(({ place }) => place)).toEqual(["checkedBy"]);
  });

  it("keeps two duties apart in one workbook", async () => {
    await host.addSheets(setOfDuty({ ...DUTY, fields: { ...DUTY.fields, item: "P-8", flow: "500 gpm" } }));
    expect((await found()).map(({ sheet, back }) => [sheet, back.duty.fields.item])).toEqual([
      ["Duty P-7", "P-7"],
      ["Duty P-8", "P-8"],
    ]);
  });
});
