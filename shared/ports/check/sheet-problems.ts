import { validSheetName } from "../sheet-name.ts";
import type { SheetSpec } from "../sheet-spec.ts";
import { heldProblems } from "./held.ts";
import { meantProblems } from "./meant.ts";
import { OUR_FAULT, refuse, type Say, type SheetProblem } from "./problem.ts";

/**
 * What keeps sheets of ours from being written, by whatever route: asked before any host is touched.
 *
 * @param standing names of the sheets beside them, which their formulas may read
 */
export function sheetProblems(sheets: readonly SheetSpec[], standing: readonly string[] = []): readonly SheetProblem[] {
  const names = new Set([...sheets.map(({ name }) => name), ...standing].map((name) => name.toLowerCase()));
  return gathered(sheets, (spec, say) => {
    heldProblems(spec, say);
    meantProblems(spec, names, say);
  });
}

/** Throws a HostFault that says what is wrong, where and what would do. */
export function checkSheets(sheets: readonly SheetSpec[], standing: readonly string[] = []): void {
  refuse(sheetProblems(sheets, standing));
}

/** The same for sheets that a user has edited: only what no file can hold keeps them from being written. */
export function checkHeld(sheets: readonly SheetSpec[]): void {
  refuse(gathered(sheets, heldProblems));
}

function gathered(sheets: readonly SheetSpec[], look: (spec: SheetSpec, say: Say) => void): readonly SheetProblem[] {
  const problems: SheetProblem[] = [];
  const used = new Set<string>();
  for (const spec of sheets) {
    const { name: sheet } = spec;
    const say: Say = (at, what, remedy) => {
      problems.push({ sheet, ...(at === undefined ? {} : { at }), what, remedy });
    };
    if (validSheetName(sheet) !== sheet) say(undefined, `"${sheet}" cannot be the name of a sheet`, OUR_FAULT);
    if (used.has(sheet.toLowerCase())) say(undefined, `two sheets are named "${sheet}"`, OUR_FAULT);
    used.add(sheet.toLowerCase());
    look(spec, say);
  }
  return problems;
}
