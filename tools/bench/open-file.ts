import { randomBytes } from "node:crypto";
import { addressOf } from "../../shared/ports/a1.ts";
import type { CellSpec } from "../../shared/ports/sheet-spec.ts";
import { unseenIn } from "../../shared/xlsx/patch/unseen.ts";
import { writeWorkbook } from "../../shared/xlsx/write-workbook.ts";
import { fileOfWorkbook, replaceWorkbook, sheetsOfFile } from "../../workbench/files.ts";
import { headlessGrid } from "../../workbench/headless.ts";
import { openedFile } from "../../workbench/opened-file.ts";

const ROWS = 10_000;
const COLUMNS = 10;
/** Of random text, which packs to three quarters: 50,000 of them make the file about 10 MB. */
const BYTES_A_TEXT = 190;

export interface FileTimes {
  readonly megabytes: number;
  readonly openMs: number;
  readonly downloadMs: number;
}

/**
 * A workbook of 100,000 cells (half texts, a tenth formulas, the rest numbers) opened in the headless grid, one cell
 * changed, and downloaded.
 */
export async function fileTimes(): Promise<FileTimes> {
  const bytes = writeWorkbook({ sheets: [{ name: "Data", columns: [], styles: {}, cells: cells() }] });
  const grid = headlessGrid();
  try {
    let start = performance.now();
    const content = sheetsOfFile(bytes);
    if (!content.ok) throw new Error(content.why);
    unseenIn(bytes);
    await replaceWorkbook(grid, grid.host, content);
    const file = openedFile(grid, grid.host, bytes, content.sheets);
    const openMs = performance.now() - start;

    await grid.host.write({ "Data!A1": 7 });
    start = performance.now();
    const made = await fileOfWorkbook(grid, grid.host, async (_words, until) => until.then(() => true), {
      file,
      choose: async () => undefined,
    });
    const downloadMs = performance.now() - start;
    if (made?.isPatched !== true || made.bytes.length < 0.9 * bytes.length) throw new Error("the file was not patched");
    return { megabytes: bytes.length / 1e6, openMs, downloadMs };
  } finally {
    grid.dispose();
  }
}

function cells(): readonly CellSpec[] {
  return Array.from({ length: ROWS * COLUMNS }, (_, i): CellSpec => {
    const [row, column] = [Math.floor(i / COLUMNS), i % COLUMNS];
    const at = addressOf(row, column);
    if (column === COLUMNS - 1) return { at, f: `A${row + 1}*2`, cached: 2 * row };
    return column % 2 === 1 || column === 2
      ? { at, v: randomBytes(BYTES_A_TEXT).toString("base64") }
      : { at, v: row + column / 7 };
  });
}
