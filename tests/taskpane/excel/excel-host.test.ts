import { beforeEach, describe, expect, it } from "vitest";
import { failureText, HostFault } from "../../../shared/ports/host-fault.ts";
import { excelFault } from "../../../taskpane/excel/excel-fault.ts";
import { excelHost } from "../../../taskpane/excel/excel-host.ts";
import { referenceOf } from "../../../taskpane/excel/reference.ts";
import { memorySheet } from "../../support/memory-sheet.ts";
import { WorkbookHost } from "../../support/workbook-host.ts";

let host: WorkbookHost;

beforeEach(() => {
  host = new WorkbookHost();
  const duty = memorySheet("duty", "Bypass duty's");
  Object.assign(duty.cells, { A1: "flow", B1: 1200, B2: true, B3: "=DUTY.TDH(B1)", B4: "=B9" });
  Object.assign(duty.names, { flow: "B1" });
  host.sheets.push(duty);
  host.answers["=DUTY.TDH(B1)"] = 84.5;
  host.answers["=B9"] = "#REF!";
  Object.assign(globalThis, { Excel: host.Excel });
});

describe("the workbook read and written through Excel's own library", () => {
  it("lists its sheets", async () => {
    expect(await excelHost.sheetNames()).toEqual(["Sheet1", "Bypass duty's"]);
  });

  it("reads ranges and names in one round trip, blanks and errors as what they are", async () => {
    const read = await excelHost.read(["'Bypass duty''s'!A1:B4", "'Bypass duty''s'!flow", "Sheet1!C3"]);
    expect(read).toEqual([
      [
        ["flow", 1200],
        [null, true],
        [null, 84.5],
        [null, { error: "#REF!" }],
      ],
      [[1200]],
      [[null]],
    ]);
    expect(host.syncs).toHaveLength(1);
  });

  it.each<{ what: string; call: () => Promise<unknown>; answer: unknown }>([
    { what: "names of sheets", call: () => excelHost.sheetNames(), answer: ["Sheet1", "Bypass duty's"] },
    { what: "cells", call: () => excelHost.read(["'Bypass duty''s'!flow"]), answer: [[[1200]]] },
    { what: "duties", call: () => excelHost.recorded(), answer: { records: [], sheets: [] } },
    { what: "the way it calculates", call: () => excelHost.calculatesByHand?.() ?? Promise.reject(), answer: false },
  ])("waits with reading $what while a cell is being edited", async ({ call, answer }) => {
    Object.assign(globalThis, { Office: { context: { requirements: { isSetSupported: () => true } } } });
    host.editCell();
    const reading = call();
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(host.syncs).toHaveLength(0);
    host.leaveCell();
    expect(await reading).toEqual(answer);
    Reflect.deleteProperty(globalThis, "Office");
  });

  it.each([
    { mode: "Manual", byHand: true },
    { mode: "AutomaticExceptTables", byHand: false },
    { mode: "Automatic", byHand: false },
  ] as const)("tells whether it calculates by hand: $mode", async ({ mode, byHand }) => {
    host.calculationMode = mode;
    expect(await excelHost.calculatesByHand?.()).toBe(byHand);
  });

  it("writes input cells in two round trips, texts as texts", async () => {
    await excelHost.write({
      "'Bypass duty''s'!flow": "=1+1",
      "'Bypass duty''s'!$A$1": null,
      "Sheet1!A1": 0,
      "Sheet1!A2": false,
      "Sheet1!A3": "45 L/s",
    });
    expect(host.sheet("Bypass duty's").cells).toMatchObject({ B1: "=1+1" });
    expect(host.sheet("Bypass duty's").cells["A1"]).toBeUndefined();
    expect(host.sheet("Sheet1").cells).toEqual({ A1: 0, A2: false, A3: "45 L/s" });
    expect(host.syncs).toHaveLength(2);
  });

  it("rejects for a sheet or name that is not there, and for a number that is none", async () => {
    await expect(excelHost.read(["Nowhere!A1"])).rejects.toThrow("no longer there");
    await expect(excelHost.write({ "Sheet1!speed": 1 })).rejects.toThrow("no longer there");
    await expect(excelHost.write({ "Sheet1!A1": Number.POSITIVE_INFINITY })).rejects.toThrow("cannot hold Infinity");
  });

  it("leaves every cell as it was where one cannot be written, texts and formulas too", async () => {
    Object.assign(host.sheet("Sheet1").cells, { A1: "=no formula", A2: "007", A3: 5, A4: "=A3*2", A5: true });
    const values = { "Sheet1!A1": 1, "Sheet1!A2": 2, "Sheet1!A3": 3, "Sheet1!A4": 4, "Sheet1!A5": 5, "Sheet1!A6": 6 };
    await excelHost.write(values);
    const actions = host.syncs.at(-1) ?? 0;
    expect(actions).toBeGreaterThanOrEqual(6);
    const before = { A1: "=no formula", A2: "007", A3: 5, A4: "=A3*2", A5: true };
    for (const sync of [1, 2])
      for (const at of ["before", "after", ...Array.from({ length: actions }, (_, i) => i)] as const) {
        const { cells } = host.sheet("Sheet1");
        for (const key of Object.keys(cells)) delete cells[key];
        Object.assign(cells, before);
        host.syncs.length = 0;
        host.fault = { sync, at };
        const done = excelHost.write(values);
        if (sync === 1 && typeof at === "number") await done.catch(() => undefined);
        else await expect(done, `${sync} ${at}`).rejects.toBeInstanceOf(HostFault);
        if (
          await done.then(
            () => false,
            () => true,
          )
        )
          expect(cells, `${sync} ${at}`).toEqual(before);
      }
  });

  it.each([
    ["sheetNames", () => excelHost.sheetNames()],
    ["read", () => excelHost.read(["Sheet1!A1"])],
    ["recorded", () => excelHost.recorded()],
  ] as const)("says in words what went wrong and what would do, and changes nothing: %s", async (_, call) => {
    Object.assign(globalThis, { Office: { context: { requirements: { isSetSupported: () => true } } } });
    await call();
    const syncs = host.syncs.length;
    const before = host.snapshot();
    for (let sync = 1; sync <= syncs; sync += 1)
      for (const at of ["before", 0, "after"] as const) {
        host.syncs.length = 0;
        host.fault = { sync, at };
        const said = await call().then(() => "", failureText);
        expect(said).toMatch(/^Excel stopped: .+\. Nothing was changed in the workbook\. Try it once more; .+\.$/);
        expect(host.snapshot()).toBe(before);
      }
  });

  it.each([
    ["AccessDenied", /protected.+Nothing was changed.+Take the protection off/],
    ["InvalidOperationInCellEditMode", /is being edited.+Nothing was changed.+Press Enter or Esc/],
    ["ItemAlreadyExists", /Nothing was changed.+next free name/],
    ["RequestPayloadSizeLimitExceeded", /larger than.+Nothing was changed.+desktop/],
  ])("says what would do for %s", (code, words) => {
    expect(failureText(excelFault(Object.assign(new Error("refused"), { code })))).toMatch(words);
  });

  it("calls back on calculation and edits until told to stop", async () => {
    let calls = 0;
    const stop = excelHost.onCalculated(() => {
      calls += 1;
    });
    await host.settled();
    expect(calls).toBe(0);
    await host.raise("onCalculated");
    expect(calls).toBe(1);
    await host.raise("onChanged");
    expect(calls).toBe(2);
    stop();
    await host.settled();
    await host.raise("onCalculated");
    expect(calls).toBe(2);
    expect(host.watched()).toEqual([]);
  });
});

describe("a reference", () => {
  it.each([
    ["Duty!B3", { sheet: "Duty", target: "B3", isName: false }],
    ["Duty!$B$3:C9", { sheet: "Duty", target: "$B$3:C9", isName: false }],
    ["'It''s (2)'!flow", { sheet: "It's (2)", target: "flow", isName: true }],
    ["'a!b'!A1", { sheet: "a!b", target: "A1", isName: false }],
    ["Duty!unit_set", { sheet: "Duty", target: "unit_set", isName: true }],
  ])("%s is taken apart", (text, parts) => {
    expect(referenceOf(text)).toEqual(parts);
  });

  it.each(["B3", "'Duty!B3", "!B3", "Duty!"])("%s is refused", (text) => {
    expect(() => referenceOf(text)).toThrow("not a reference");
  });
});
