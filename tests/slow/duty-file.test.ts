import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { customerCopy } from "../../shared/calc-sheet/duty-sheets.ts";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import { addressOf, boxOf } from "../../shared/ports/a1.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import type { ReadCell } from "../../shared/xlsx/read/workbook-content.ts";
import { readWorkbook } from "../../shared/xlsx/read-workbook.ts";
import { sheetsOf } from "../support/laid-out.ts";
import { converted, dotsOfColor, pagesOf } from "../support/libreoffice.ts";

// The terminal command's file, opened by LibreOffice: the sheet a recipient without the add-in gets to see.

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
const FILES = ["quarry-sump", "wash-header", "harbour-bypass"] as const;
const folder = mkdtempSync(join(tmpdir(), "duty-file-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function written(name: string, form: "internal" | "customer"): Uint8Array {
  const out = join(folder, `${name}-${form}.xlsx`);
  const duty = join(ROOT, "shared", "duty", "samples", `${name}.json`);
  execFileSync(process.execPath, ["tools/run.mjs", "sheet", duty, out, form], { cwd: ROOT });
  return new Uint8Array(readFileSync(out));
}

function sheetsIn(name: (typeof FILES)[number]): readonly SheetSpec[] {
  return sheetsOf(typedIn(name)).all;
}

function typedIn(name: (typeof FILES)[number]): DutyText {
  return (SAMPLE_DUTIES[FILES.indexOf(name)] as (typeof SAMPLE_DUTIES)[number]).duty;
}

/** The sheet of a copy for the customer. */
function copied(name: (typeof FILES)[number]): SheetSpec {
  const set = customerCopy(typedIn(name), "2026-01-02");
  if (!set.ok) throw new Error(JSON.stringify(set.findings));
  return set.value.sheets(set.value.wanted)[0] as SheetSpec;
}

/** Every worked number of the sheets, by sheet and address; spilled ones by the address of each cell. */
function answers(name: (typeof FILES)[number]): ReadonlyMap<string, number> {
  const numbers = new Map<string, number>();
  for (const sheet of sheetsIn(name))
    for (const { at, f, cached } of sheet.cells) {
      if (f === undefined) continue;
      const { top, left } = boxOf(at);
      const rows = (Array.isArray(cached) ? cached : [[cached]]) as readonly (readonly unknown[])[];
      rows.forEach((row, i) => {
        row.forEach((cell, j) => {
          if (typeof cell === "number") numbers.set(`${sheet.name}!${addressOf(top + i, left + j)}`, cell);
        });
      });
    }
  return numbers;
}

/** What a file holds, by sheet and address. */
function cellsOf(file: Uint8Array): ReadonlyMap<string, ReadCell> {
  const book = readWorkbook(file);
  if (!book.ok) throw new Error(book.refusal.message);
  return new Map(
    book.workbook.sheets.flatMap(({ name, rows }) =>
      rows.flatMap(({ cells }) => cells.map((cell) => [`${name}!${addressOf(cell.row, cell.column)}`, cell] as const)),
    ),
  );
}

describe.each(FILES)("the file of %s", (name) => {
  it("keeps every formula, read back as a user types it, with its answer beside it", () => {
    const cells = cellsOf(written(name, "internal"));
    const formulas = sheetsIn(name).flatMap((sheet) =>
      sheet.cells.flatMap(({ at, f }) => (f === undefined ? [] : [{ at: `${sheet.name}!${at}`, f }])),
    );
    expect(formulas.length).toBeGreaterThan(30);
    for (const { at, f } of formulas) expect(cells.get(at)?.formula, at).toBe(f);
    for (const [at, answer] of answers(name)) expect(cells.get(at)?.value, at).toBe(answer);
  });

  it("opens in LibreOffice with its answers kept, all columns on the page, and its chart drawn", async () => {
    const pdf = await converted(written(name, "customer"), "pdf");
    const { count, text } = await pagesOf(pdf);
    expect(count).toBeGreaterThanOrEqual(2);
    // A column over the edge, or a page higher than paper, would print pages beside those the sheet breaks itself.
    expect(count).toBe((copied(name).print?.breaks?.length ?? 0) + 1);
    for (const words of [
      "Total dynamic head",
      "NPSH available",
      "System curve",
      "References",
      "Cautions",
      "fittings",
    ]) {
      expect(text).toContain(words);
    }
    expect(text).not.toMatch(/#NAME\?|#VALUE!|#REF!|Err:\d/);
    const heads = [...answers(name).values()].filter((answer) => answer > 1 && answer < 1000);
    const printed = heads.filter((answer) => text.includes(answer.toFixed(1)));
    expect(printed.length).toBeGreaterThan(5);
    const accents = await Promise.all(
      Array.from({ length: count }, (_, page) => dotsOfColor(pdf, page + 1, "#C2410C")),
    );
    expect(Math.max(...accents)).toBeGreaterThan(5);
  });

  it("still holds every answer after LibreOffice has saved it again", async () => {
    const cells = cellsOf(await converted(written(name, "customer"), "xlsx"));
    expect([...cells.values()].filter(({ formula }) => formula !== undefined)).toEqual([]);
    const copy = copied(name);
    const numbers = copy.cells.flatMap(({ at, v }) => (typeof v === "number" ? [[at, v] as const] : []));
    expect(numbers.length).toBeGreaterThan(100);
    for (const [at, answer] of numbers) {
      const found = cells.get(`${copy.name}!${at}`)?.value as number;
      expect(Math.abs(found - answer), `${at}: ${found} against ${answer}`).toBeLessThan(
        1e-9 * Math.max(1, Math.abs(answer)),
      );
    }
  });
});
