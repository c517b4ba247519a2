import { beforeEach, describe, expect, it } from "vitest";
import { CATALOGUE } from "../../../shared/catalogue/catalogue.ts";
import { HostFault } from "../../../shared/ports/host-fault.ts";
import { functionRepair } from "../../../taskpane/excel/repair-functions.ts";
import { callsUs, liveFormula } from "../../../taskpane/excel/stored-names.ts";
import { repairWords } from "../../../taskpane/pane/repair.ts";
import { type MemorySheet, memorySheet } from "../../support/memory-sheet.ts";
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
  const stored = (argument: number): string => `=_xldudf_DUTY_${id.replaceAll(".", "_")}(${argument})`;
  const typed = (argument: number): string => `=DUTY.${id}(${argument})`;

  beforeEach(() => {
    host = new WorkbookHost();
    const isSetSupported = (set: string, version: string): boolean => host.supports(set, version);
    Object.assign(globalThis, { Excel: host.Excel, Office: { context: { requirements: { isSetSupported } } } });
  });

  /** A sheet with formulas that show an unknown name. */
  function brokenSheet(name: string, cells: Readonly<Record<string, string>>): MemorySheet {
    const sheet = memorySheet(name.toLowerCase(), name);
    Object.assign(sheet.cells, cells);
    for (const formula of Object.values(cells)) host.answers[formula] = "#NAME?";
    host.sheets.push(sheet);
    return sheet;
  }

  it("counts and enters again what shows #NAME? or stands as in a file, and nothing else", async () => {
    expect(id).not.toBe("");
    const [sheet] = host.sheets;
    const formulas = { B2: typed(1), C2: typed(2), D2: stored(3), E2: "=MYNAME" };
    Object.assign(sheet?.cells ?? {}, formulas, { B3: `DUTY.${id}` });
    Object.assign(host.answers, {
      [formulas.B2]: "#NAME?",
      [formulas.C2]: 5,
      [formulas.D2]: 7,
      [formulas.E2]: "#NAME?",
    });
    host.sheets.push(memorySheet("empty", "Empty"));
    expect(await functionRepair.look()).toEqual({ cells: 2, misspelt: [] });
    expect(host.entered).toEqual([]);
    expect(await functionRepair.repair("read before")).toEqual({ repaired: 2, refused: [] });
    expect(sheet?.cells).toEqual({ ...formulas, D2: typed(3), B3: `DUTY.${id}` });
    expect(host.entered).toEqual(["Sheet1!B2", "Sheet1!D2"]);
  });

  it("asks about names that are ours with a slip or without the prefix, and writes them only once told to", async () => {
    host.sheets.length = 0;
    const cells = {
      A1: "=TDH(1,2)",
      A2: "=1+DUTY.TDHH(1)*tdh(2)",
      A3: typed(1),
      A4: "=SUMM(1)",
      A5: '="TDH(1)"&MYNAME',
      A6: "=VELOCTY(1)",
    };
    const sheet = brokenSheet("Duty", cells);
    Object.assign(sheet.cells, { B1: "=PRICE(1)" });
    expect(await functionRepair.look()).toEqual({
      cells: 1,
      misspelt: [
        { written: "tdh", meant: "DUTY.TDH", cells: 2 },
        { written: "DUTY.TDHH", meant: "DUTY.TDH", cells: 1 },
      ],
    });
    await functionRepair.repair("read before");
    expect(host.entered).toEqual(["Duty!A3"]);
    expect(await functionRepair.repair("misspelt")).toEqual({ repaired: 2, refused: [] });
    expect(sheet.cells).toEqual({ ...cells, A1: "=DUTY.TDH(1,2)", A2: "=1+DUTY.TDH(1)*DUTY.TDH(2)", B1: "=PRICE(1)" });
  });

  it("says which sheet is protected, and repairs the others", async () => {
    host.sheets.length = 0;
    brokenSheet("Locked", { A1: stored(1), A2: stored(2) });
    const open = brokenSheet("Open", { A1: stored(3) });
    host.protected.add("Locked");
    const report = await functionRepair.repair("read before");
    expect(report).toEqual({ repaired: 1, refused: [{ sheet: "Locked", cells: 2, isProtected: true }] });
    expect(open.cells).toEqual({ A1: typed(3) });
    expect(repairWords(report)).toBe(
      "1 formula entered again; sheet “Locked” is protected (2 formulas): unprotect it and repeat.",
    );
  });

  it("repairs all of a sheet but the cells that will not take it", async () => {
    // What Excel refuses in one cell, here a formula that it cannot read, ends the whole request.
    const rows = Array.from({ length: 9 }, (_, i) => [`B${i + 1}`, stored(i + 1)] as const);
    const sheet = brokenSheet("Duty", { ...Object.fromEntries(rows), B5: `=SUM((${stored(5).slice(1)}` });
    const report = await functionRepair.repair("read before");
    expect(report).toEqual({ repaired: 8, refused: [{ sheet: "Duty", cells: 1, isProtected: false }] });
    expect([sheet.cells["B4"], sheet.cells["B6"]]).toEqual([typed(4), typed(6)]);
    expect(repairWords(report)).toContain("sheet “Duty” would not take 1 formula");
  });

  it("enters cells one below another together", async () => {
    host.sheets.length = 0;
    const cells = Array.from({ length: 300 }, (_, i) => [`C${i + 1}`, stored(i + 1)] as const);
    brokenSheet("Duty", Object.fromEntries(cells));
    expect((await functionRepair.repair("read before")).repaired).toBe(300);
    const writing = host.kinds.filter((kinds) => kinds.some((kind) => /Formulas 4$/i.test(kind)));
    expect(writing).toHaveLength(1);
    expect(writing[0]?.length).toBeLessThan(10);
  });

  it.each([
    { where: "an Excel that can tell", has: true, entered: ["Duty!A1"] },
    { where: "an older one", has: false, entered: ["Duty!A1", "Duty!A2"] },
  ])("puts no formula into the spill of another, in $where", async ({ has, entered }) => {
    host.sheets.length = 0;
    host.supports = (_, version) => has || version !== "1.12";
    const sheet = memorySheet("duty", "Duty");
    host.sheets.push(sheet);
    // The answer of A1 stands in A1:A2; in A2 Excel shows the formula of A1.
    Object.assign(sheet.cells, { A1: stored(1), B3: "below" });
    host.answers[stored(1)] = [["#NAME?"], ["#NAME?"]];
    host.showsAnchorInSpill = true;
    await functionRepair.repair("read before");
    expect(host.entered).toEqual(entered);
  });

  it("reads what is too large for one answer in parts, and keeps every request within the limit", async () => {
    host.sheets.length = 0;
    const cells = Array.from(
      { length: 400 },
      (_, i) => [`A${i + 1}`, i % 2 === 0 ? stored(i) : "x".repeat(1000)] as const,
    );
    const sheet = memorySheet("data", "Data");
    Object.assign(sheet.cells, Object.fromEntries(cells));
    host.sheets.push(sheet);
    // Read at once, the texts alone are 400 kB.
    host.payload = 200_000;
    expect(await functionRepair.look()).toEqual({ cells: 200, misspelt: [] });
    expect(await functionRepair.repair("read before")).toEqual({ repaired: 200, refused: [] });
    expect(sheet.cells["A399"]).toBe(typed(398));
  });

  it("waits while a cell is being edited", async () => {
    brokenSheet("Duty", { A1: stored(1) });
    host.editCell();
    const repairing = functionRepair.repair("read before");
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(host.entered).toEqual([]);
    host.leaveCell();
    expect((await repairing).repaired).toBe(1);
  });

  it("says in words what Excel failed with", async () => {
    host.fault = { sync: 1, at: "before" };
    await expect(functionRepair.repair("read before")).rejects.toBeInstanceOf(HostFault);
  });
});

describe("the words of a repair", () => {
  it.each([
    { report: { repaired: 0, refused: [] }, words: "No DUTY formula of this workbook needs to be entered again." },
    { report: { repaired: 95, refused: [] }, words: "95 formulas entered again." },
    {
      report: { repaired: 0, refused: [{ sheet: "Data", cells: 1, isProtected: true }] },
      words: "Sheet “Data” is protected (1 formula): unprotect it and repeat.",
    },
  ])("are $words", ({ report, words }) => {
    expect(repairWords(report)).toBe(words);
  });
});
