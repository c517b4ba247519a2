import { expect, it } from "vitest";
import type { SheetSpec } from "../../../shared/ports/sheet-spec.ts";
import { type FileHost, fileHost } from "../../../shared/xlsx/file-host.ts";
import { readWorkbook } from "../../../shared/xlsx/read-workbook.ts";
import { partsOf } from "./parts.ts";
import { SAMPLE } from "./sample-sheet.ts";

const REF = "'Duty 1 & 2''s'!";

async function hostWithSample(): Promise<FileHost> {
  const host = fileHost({ title: "Sample" });
  await host.addSheet(SAMPLE);
  return host;
}

it("takes the next free name for a second sheet and leaves the first alone", async () => {
  const host = await hostWithSample();
  const before = await host.read([`${REF}A1:E20`]);
  expect(await host.addSheet({ ...SAMPLE, name: "DUTY 1 & 2's" })).toBe("DUTY 1 & 2's (2)");
  expect(await host.sheetNames()).toEqual(["Duty 1 & 2's", "DUTY 1 & 2's (2)"]);
  expect(await host.read([`${REF}A1:E20`])).toEqual(before);
});

it("reads cells, ranges, names, answers and spilled answers", async () => {
  const host = await hostWithSample();
  expect(await host.read([`${REF}B3`, `${REF}duty_flow`, `${REF}$B$5:B6`, `${REF}D13:E15`, `${REF}E40`])).toEqual([
    [[42.5]],
    [[42.5]],
    [[2.28], [4.56]],
    [
      ["flow, L/s", "head, m"],
      [0, 12],
      [40, 30.5],
    ],
    [[null]],
  ]);
});

it("shows no answer to inputs that have changed, and saves none", async () => {
  const host = await hostWithSample();
  await host.write({ [`${REF}duty_flow`]: 50 });
  expect(await host.read([`${REF}B3`])).toEqual([[[50]]]);
  expect((await host.read([`${REF}B6`]))[0]?.[0]?.[0]).toMatchObject({ error: "#N/A" });
  const parts = partsOf(host.save("add-in"));
  expect(parts["xl/worksheets/sheet1.xml"]).toContain("<f>2*B5</f></c>");
  expect(parts["xl/workbook.xml"]).toContain('fullCalcOnLoad="1"');
});

it("keeps the answers where a write changes nothing", async () => {
  const host = await hostWithSample();
  await host.write({ [`${REF}B3`]: 42.5 });
  expect(await host.read([`${REF}B6`])).toEqual([[[4.56]]]);
});

it("writes text as text", async () => {
  const host = await hostWithSample();
  await host.write({ [`${REF}B4`]: "=B3" });
  const outcome = readWorkbook(host.save("add-in"));
  const cells = outcome.ok ? outcome.workbook.sheets[0]?.rows.flatMap((row) => row.cells) : [];
  expect(cells?.find(({ row, column }) => row === 3 && column === 1)).toMatchObject({ value: "=B3" });
  expect(cells?.find(({ row, column }) => row === 3 && column === 1)?.formula).toBeUndefined();
});

it.each([
  [`${REF}B5`, "holds a formula"],
  [`${REF}E14`, "holds a formula"],
  [`${REF}A1:A2`, "not one cell"],
  ["Nowhere!A1", "no sheet"],
  ["A1", "names its sheet"],
])("does not write to %s, nor anything beside it", async (ref, words) => {
  const host = await hostWithSample();
  await expect(host.write({ [`${REF}B3`]: 1, [ref]: 2 })).rejects.toThrow(words);
  expect(await host.read([`${REF}B3`])).toEqual([[[42.5]]]);
});

it("keeps no half-written sheet", async () => {
  const host = fileHost();
  const broken: SheetSpec = { ...SAMPLE, cells: [...SAMPLE.cells, { at: "A1", v: "again" }] };
  await expect(host.addSheet(broken)).rejects.toThrow("twice");
  expect(await host.sheetNames()).toEqual([]);
});
