import { beforeEach, describe, expect, it } from "vitest";
import { excelSelection } from "../../../taskpane/excel/selection.ts";
import { WorkbookHost } from "../../support/workbook-host.ts";

describe("the selected cell of Excel", () => {
  let host: WorkbookHost;

  beforeEach(() => {
    host = new WorkbookHost();
    host.selected = "C7";
    Object.assign(globalThis, { Excel: host.Excel });
  });

  it("is known by sheet and address", async () => {
    expect(await excelSelection.cell()).toBe("Sheet1!C7");
  });

  it("takes a formula where it is blank", async () => {
    expect(await excelSelection.enter("Sheet1!C7", "=DUTY.TDH(1)", false)).toBe(true);
    expect(host.sheets[0]?.cells["C7"]).toBe("=DUTY.TDH(1)");
    expect(host.entered).toEqual(["Sheet1!C7"]);
  });

  it.each(["text", 0, false, "=1+1"])("is left as it is where it holds %s, until it may be replaced", async (held) => {
    Object.assign(host.sheets[0]?.cells ?? {}, { C7: held });
    expect(await excelSelection.enter("Sheet1!C7", "=DUTY.TDH(1)", false)).toBe(false);
    expect(host.sheets[0]?.cells["C7"]).toBe(held);
    expect(host.entered).toEqual([]);
    expect(await excelSelection.enter("Sheet1!C7", "=DUTY.TDH(1)", true)).toBe(true);
    expect(host.sheets[0]?.cells["C7"]).toBe("=DUTY.TDH(1)");
  });

  it("is left as it is where another cell's answer fills it", async () => {
    Object.assign(host.sheets[0]?.cells ?? {}, { C5: "=SPILLS()" });
    host.answers["=SPILLS()"] = [[1], [2], [3]];
    expect(await excelSelection.enter("Sheet1!C7", "=DUTY.TDH(1)", false)).toBe(false);
    expect(host.entered).toEqual([]);
  });

  it("says in words that a sheet is protected", async () => {
    host.protected.add("Sheet1");
    await expect(excelSelection.enter("Sheet1!C7", "=DUTY.TDH(1)", false)).rejects.toThrow(/protected/);
  });
});
