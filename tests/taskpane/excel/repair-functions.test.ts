import { beforeEach, describe, expect, it } from "vitest";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import { repairFunctions } from "../../../taskpane/excel/repair-functions.ts";
import { callsUs, liveFormula } from "../../../taskpane/excel/stored-names.ts";
import { memorySheet } from "../../support/memory-sheet.ts";
import { WorkbookHost } from "../../support/workbook-host.ts";

const IDS = ["NPSHA", "TDH", "CURVE.FIT"];

describe("a stored formula", () => {
  it.each([
    ["=_xldudf_DUTY_NPSHA(A1:B9,2)", "=DUTY.NPSHA(A1:B9,2)"],
    ["=_xldudf_DUTY_CURVE_FIT(A1)", "=DUTY.CURVE.FIT(A1)"],
    ["=SUM(_xldudf_duty_tdh(A1,B1),1)", "=SUM(DUTY.TDH(A1,B1),1)"],
    ["='C:\\x\\TOOLS.XLAM'!_xldudf_DUTY_TDH(1,2)", "=DUTY.TDH(1,2)"],
    ["=[2]!_xldudf_DUTY_TDH(1,2)", "=DUTY.TDH(1,2)"],
    ["=_xldudf_OTHER_TDH(1,2)", "=_xldudf_OTHER_TDH(1,2)"],
    ["=_xldudf_DUTY_UNKNOWN(1)", "=_xldudf_DUTY_UNKNOWN(1)"],
    ['="_xldudf_DUTY_TDH(1)"&_xldudf_DUTY_TDH(1)', '="_xldudf_DUTY_TDH(1)"&DUTY.TDH(1)'],
    ["=DUTY.TDH(1,2)", "=DUTY.TDH(1,2)"],
  ])("%s is typed as %s", (stored, typed) => {
    expect(liveFormula(stored, "DUTY", IDS)).toBe(typed);
  });

  it("is ours or not", () => {
    expect(callsUs("=1+DUTY.TDH(1,2)", "DUTY")).toBe(true);
    expect(callsUs("=_xldudf_DUTY_TDH(1,2)", "DUTY")).toBe(true);
    expect(callsUs("=HEAVYDUTY.TDH(1,2)", "DUTY")).toBe(false);
    expect(callsUs('="=DUTY.TDH(1)"', "DUTY")).toBe(false);
  });
});

describe("the repair of a workbook", () => {
  let host: WorkbookHost;
  const id = CATALOGUE[0]?.id ?? "";

  beforeEach(() => {
    host = new WorkbookHost();
    Object.assign(globalThis, { Excel: host.Excel });
  });

  it("enters again what shows #NAME? or stands as in a file, and nothing else", async () => {
    expect(id).not.toBe("");
    const [sheet] = host.sheets;
    const formulas = {
      B2: `=DUTY.${id}(1)`,
      C2: `=DUTY.${id}(2)`,
      D2: `=_xldudf_DUTY_${id.replaceAll(".", "_")}(3)`,
      E2: "=MYNAME",
    };
    Object.assign(sheet?.cells ?? {}, formulas, { B3: `DUTY.${id}` });
    Object.assign(host.answers, {
      [formulas.B2]: "#NAME?",
      [formulas.C2]: 5,
      [formulas.D2]: 7,
      [formulas.E2]: "#NAME?",
    });
    host.sheets.push(memorySheet("empty", "Empty"));
    expect(await repairFunctions()).toEqual({ repaired: 2, refused: [] });
    expect(sheet?.cells).toEqual({ ...formulas, D2: `=DUTY.${id}(3)`, B3: `DUTY.${id}` });
    expect(host.entered).toEqual(["Sheet1!B2", "Sheet1!D2"]);
  });

  it("names a sheet that would not take it, and repairs the others", async () => {
    const formula = `=DUTY.${id}(1)`;
    host.answers[formula] = "#NAME?";
    Object.assign(host.sheets[0]?.cells ?? {}, { A1: formula });
    const locked = memorySheet("locked", "Locked");
    Object.assign(locked.cells, { A1: formula });
    host.sheets.unshift(locked);
    host.protected.add("Locked");
    expect(await repairFunctions()).toEqual({ repaired: 1, refused: ["Locked"] });
  });
});
