import type { Cell } from "../../shared/cells/cell.ts";
import { addressOf, boxOf } from "../../shared/ports/a1.ts";
import type { SheetHost } from "../../shared/ports/sheet-host.ts";
import { freeSheetNames } from "../../shared/ports/sheet-name.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";
import { fileCells } from "../../shared/xlsx/write/file-cells.ts";

/** A host that keeps sheets as a file would hold them. It takes no edits and never calculates. */
export function keptSheets(): SheetHost {
  const sheets: SheetSpec[] = [];
  return {
    kind: "workbench",
    addSheets: async (set) => {
      const names = freeSheetNames(
        set.wanted,
        sheets.map((sheet) => sheet.name),
      );
      sheets.push(...set.sheets(names));
      return names;
    },
    sheetNames: async () => sheets.map(({ name }) => name),
    read: async (references) =>
      references.map((reference) => {
        const [, name = "", range = ""] = /^'?(.*?)'?!(.*)$/.exec(reference) ?? [];
        const sheet = sheets.find((one) => one.name === name);
        if (sheet === undefined) throw new Error(`there is no sheet "${name}"`);
        const { top, left, bottom, right } = boxOf(sheet.names?.[range] ?? range);
        const cells = fileCells(sheet);
        return Array.from({ length: bottom - top + 1 }, (_row, i) =>
          Array.from(
            { length: right - left + 1 },
            (_cell, j): Cell => cells.get(addressOf(top + i, left + j))?.value ?? null,
          ),
        );
      }),
    write: async () => {
      throw new Error("kept sheets take no edits");
    },
    onCalculated: () => () => {},
    holdsPictures: () => true,
    holdsRecords: () => true,
    recorded: async () => ({ records: [], sheets: [] }),
  };
}
