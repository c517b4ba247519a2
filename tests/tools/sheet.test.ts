import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import { fieldsOf } from "../../shared/duty/fields.ts";
import { saveDuty } from "../../shared/duty/saved.ts";
import { readWorkbook } from "../../shared/xlsx/read-workbook.ts";
import { dutyText, QUARRY } from "../support/duty-of.ts";
import { started } from "../support/terminal.ts";

const folder = mkdtempSync(join(tmpdir(), "sheet-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function written(duty: DutyText, ...form: readonly string[]) {
  const [from, to] = [join(folder, "duty.json"), join(folder, "out.xlsx")];
  writeFileSync(from, saveDuty(duty));
  const command = started("sheet", from, to, ...form);
  command.end();
  const { code, lines, errors } = await command.ended;
  return { code, lines, errors, read: () => readWorkbook(new Uint8Array(readFileSync(to))) };
}

describe("npm run sheet", () => {
  it.each([
    { item: "P-101A/B", names: ["Duty P-101A B", "P-101A B estimate", "P-101A B workings"] },
    {
      item: "Dewatering pump set number 4",
      names: ["Duty Dewatering pump", "Dewatering pump estimate", "Dewatering pump workings"],
    },
  ])("writes the sheets of the item $item", async ({ item, names }) => {
    const { code, lines, errors, read } = await written(dutyText({ item }, QUARRY));
    expect([code, errors]).toEqual([0, ""]);
    expect(lines.join()).toContain(names.map((name) => `“${name}”`).join(", "));
    const book = read();
    expect(book.ok && book.workbook.sheets.map(({ name }) => name)).toEqual(names);
  });

  it.each(["internal", "customer", "add-in", "values"])("takes any text in the boxes of the job: %s", async (form) => {
    const hostile = `='&<>"]]>\u0001\ud83d${"💧&L&9 ".repeat(80)}\n\t`;
    const job = Object.fromEntries(
      fieldsOf("job").map((key) => [key, key === "paper" || key === "status" ? "" : hostile]),
    );
    const { code, errors, read } = await written(dutyText(job, QUARRY), form);
    expect(errors).not.toMatch(/^\s+at /m);
    expect(code).toBe(0);
    expect(read().ok).toBe(true);
  });

  it("names the results that are errors by their lines, in the file for the customer too", async () => {
    const pump = QUARRY.pump as NonNullable<DutyText["pump"]>;
    const slow = { ...QUARRY, pump: { ...pump, speedRatio: "0.5" } };
    const { code, errors, read } = await written(slow);
    expect(code).toBe(0);
    const book = read();
    const page = book.ok ? book.workbook.sheets[0] : undefined;
    const row = page?.rows.find(({ cells }) => cells[1]?.value === "Flow at the operating point");
    const number = row?.cells[0]?.value;
    expect(number).toMatch(/^\d+\.1$/);
    expect(errors).toMatch(/^Results that are errors:$/m);
    expect(errors.split("\n")).toContainEqual(
      expect.stringMatching(new RegExp(`^ {2}${number} Flow at the operating point: \\S+`)),
    );
    expect(errors).toMatch(/^ {2}“P-101 estimate” 1\.\d+ Fuel in a year, \S+: \S+/m);
    expect((await written(slow, "customer")).errors).toBe(errors);
  });

  it("refuses a word that says neither whom the file is for nor how it is made", async () => {
    const { code, errors } = await written(QUARRY, "supplier");
    expect(code).toBe(2);
    expect(errors).toContain("[internal|customer]");
  });
});
