import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import { quotedSheetName } from "../../shared/ports/sheet-name.ts";
import { fileOfWorkbook, replaceWorkbook, sheetsOfFile } from "../../workbench/files.ts";
import { headlessGrid } from "../../workbench/headless.ts";
import { type OpenedFile, openedFile } from "../../workbench/opened-file.ts";
import { differences, partOfSheet } from "../shared/xlsx/part-differences.ts";
import { partsOf } from "../shared/xlsx/parts.ts";
import { dutyText, STRAIGHT_PUMP } from "../support/duty-of.ts";
import { setOfDuty } from "../support/laid-out.ts";
import { dutiesInFile, fileOf } from "../support/opened-again.ts";

const OTHERS = new Uint8Array(
  readFileSync(fileURLToPath(new URL("../shared/xlsx/workbooks/xlsxwriter-set-up.xlsx", import.meta.url))),
);

const DUTY = dutyText(
  { item: "P-7", revision: "A", directCost: "46000", sourcePressure: "0.5 bar" },
  { pump: STRAIGHT_PUMP },
);
const withFlow = (flow: string, revision = "A"): DutyText => ({ ...DUTY, fields: { ...DUTY.fields, flow, revision } });

const grid = headlessGrid();
afterAll(() => grid.dispose());

async function opened(bytes: Uint8Array): Promise<OpenedFile> {
  const content = sheetsOfFile(bytes);
  if (!content.ok) throw new Error(content.why);
  await replaceWorkbook(grid, grid.host, content);
  return openedFile(grid, grid.host, bytes, content.sheets);
}

async function patched(file: OpenedFile): Promise<Uint8Array> {
  const choose = async (): Promise<never> => {
    throw new Error("asked about what a patch cannot follow");
  };
  const wait = async (_words: string, until: Promise<unknown>): Promise<boolean> => {
    await until;
    return true;
  };
  const made = await fileOfWorkbook(grid, grid.host, wait, { file, choose });
  file.close();
  if (made === undefined) throw new Error("no file was made");
  return made.bytes;
}

const dutiesOf = (bytes: Uint8Array): readonly DutyText[] => dutiesInFile(bytes).map(({ back }) => back.duty);

describe("a duty written into another's workbook that was opened", () => {
  it("comes back from the patched file, whose own parts are byte for byte as they were", async () => {
    const file = await opened(OTHERS);
    const names = await grid.host.addSheets(setOfDuty(DUTY));
    await grid.host.write({ [`${quotedSheetName(names[0] ?? "")}!flow`]: 650 });
    const after = await patched(file);
    expect(dutiesOf(after)).toEqual([withFlow("650")]);
    const { parts, cells } = differences(OTHERS, after);
    expect(cells).toEqual([]);
    const others = parts.filter((part) => /worksheets\/[^/]+\.xml$/.test(part) && part in partsOf(OTHERS));
    expect(others).toEqual([]);
  });

  it("is kept when that file is opened, edited and patched again, beside its next revision", async () => {
    const first = await opened(OTHERS);
    await grid.host.addSheets(setOfDuty(DUTY));
    const once = await patched(first);
    const second = await opened(once);
    await grid.host.addSheets(setOfDuty(withFlow("700", "B")));
    const twice = await patched(second);
    expect(dutiesOf(twice)).toEqual([DUTY, withFlow("700", "B")]);
    for (const part of Object.keys(partsOf(once)).filter((path) => /customXml\/item\d+\.xml$/.test(path))) {
      expect(partsOf(twice)[part], part).toEqual(partsOf(once)[part]);
    }
  });
});

describe("a calc sheet of ours that was opened", () => {
  it("has the edit of its input, and the record of what was written as it was", async () => {
    const bytes = fileOf(DUTY);
    const file = await opened(bytes);
    await grid.host.write({ "'Duty P-7'!flow": 650, "'P-7 estimate'!direct_cost": 47_000 });
    const after = await patched(file);
    const [found] = dutiesInFile(after);
    expect(found?.back.duty).toEqual({
      ...withFlow("650"),
      fields: { ...withFlow("650").fields, directCost: "47000" },
    });
    expect(found?.record.duty.fields.flow).toBe(DUTY.fields.flow);
    const { parts, around } = differences(bytes, after);
    expect(parts.filter((part) => part.startsWith("customXml/"))).toEqual([]);
    expect(parts).toContain(partOfSheet(bytes, "Duty P-7"));
    expect(around).toEqual([]);
  });
});
