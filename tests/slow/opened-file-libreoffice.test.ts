import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, it } from "vitest";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { patchedWith, specsOf, withCells } from "../shared/xlsx/patch/patching.ts";
import { allConverted } from "../support/libreoffice.ts";

const FOLDER = fileURLToPath(new URL("../shared/xlsx/workbooks/", import.meta.url));
const FILES = readdirSync(FOLDER).filter((name) => name.endsWith(".xlsx"));

const ADDED: SheetSpec = {
  name: "Added",
  columns: [20],
  styles: { head: { bold: true, fill: "#EEEEEE", numFmt: "0.00" } },
  cells: [
    { at: "A1", v: "Added here", style: "head" },
    { at: "A2", f: "6*7", cached: 42, style: "head" },
  ],
  names: { answer: "A2" },
};

const AT = "J40";
const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(`${FOLDER}${name}`));

// An outside reader: LibreOffice loads the patched file without repair and saves what it understood of it.
describe("the workbooks of other programs, patched and opened in LibreOffice", () => {
  let before: readonly (readonly SheetSpec[])[];
  let after: readonly (readonly SheetSpec[])[];
  beforeAll(async () => {
    const patched = FILES.map((name) =>
      patchedWith(bytesOf(name), (sheet) => withCells(sheet, { at: AT, v: 4321.25 }), { added: [ADDED] }),
    );
    before = (await allConverted(FILES.map(bytesOf), "xlsx")).map(specsOf);
    after = (await allConverted(patched, "xlsx")).map(specsOf);
  });

  it.each(FILES)("%s has the changed cell, the new sheet, and the other cells as it had them", (name) => {
    const i = FILES.indexOf(name);
    const [was, is] = [before[i] ?? [], after[i] ?? []];
    expect(is.map((sheet) => sheet.name)).toEqual([...was.map((sheet) => sheet.name), "Added"]);
    expect(is[0]?.cells.find(({ at }) => at === AT)?.v).toBe(4321.25);
    expect(held(is[0])).toEqual(held(was[0]));
    const added = is.at(-1);
    expect(added?.cells.find(({ at }) => at === "A2")).toMatchObject({ f: "6*7", cached: 42 });
    expect(added?.names).toMatchObject({ answer: "A2" });
  });
});

/** What the other cells hold; but for one that answers with the name of the file. */
function held(sheet: SheetSpec | undefined): readonly unknown[] {
  return (sheet?.cells ?? [])
    .filter(({ at, v, f }) => at !== AT && (v !== undefined || (f !== undefined && !f.startsWith("CELL("))))
    .map(({ style: _, ...rest }) => rest);
}
