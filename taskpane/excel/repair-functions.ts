import { rangeOf } from "../../shared/ports/a1.ts";
import type { BrokenFormulas, FunctionRepair, MisspeltName, NotRepaired, RepairReport } from "../pane/repair.ts";
import { type BrokenCell, brokenCells } from "./broken-functions.ts";
import { told } from "./excel-fault.ts";
import { rangeAt } from "./range-at.ts";

export const functionRepair: FunctionRepair = {
  look: () => told(() => Excel.run({ delayForCellEdit: true }, lookForBroken)),
  repair: (which) =>
    told(() => Excel.run({ delayForCellEdit: true }, (context) => repairFunctions(context, which === "misspelt"))),
};

async function lookForBroken(context: Excel.RequestContext): Promise<BrokenFormulas> {
  const sheets = context.workbook.worksheets.load("items/name");
  await context.sync();
  const found: BrokenCell[] = [];
  for (const sheet of sheets.items) for (const cell of await brokenCells(context, sheet)) found.push(cell);
  const names = new Map<string, MisspeltName>();
  for (const { meant } of found) {
    const own = new Map(meant.map((call) => [call.written.toUpperCase(), call]));
    for (const [name, call] of own)
      names.set(name, { written: call.written, meant: call.meant, cells: (names.get(name)?.cells ?? 0) + 1 });
  }
  return { cells: found.filter(({ meant }) => meant.length === 0).length, misspelt: [...names.values()] };
}

/**
 * Enters our formulas again that show an unknown name: Excel does not look the name up again by itself, however often it
 * calculates. Sheet by sheet, so that one that is refused keeps no other from being repaired.
 */
async function repairFunctions(context: Excel.RequestContext, isMisspelt: boolean): Promise<RepairReport> {
  const sheets = context.workbook.worksheets.load("items/name");
  await context.sync();
  const protections = sheets.items.map(({ protection }) => protection.load("protected"));
  await context.sync();
  const refused: NotRepaired[] = [];
  let repaired = 0;
  for (const [i, sheet] of sheets.items.entries()) {
    const broken = (await brokenCells(context, sheet)).filter(({ meant }) => meant.length > 0 === isMisspelt);
    if (broken.length === 0) continue;
    const isProtected = protections[i]?.protected === true;
    const entered = isProtected ? 0 : await enter(context, sheet, runsOf(broken));
    repaired += entered;
    if (entered < broken.length) refused.push({ sheet: sheet.name, cells: broken.length - entered, isProtected });
  }
  return { repaired, refused };
}

/** Letters of formulas entered at once: a request is held to 5 MB. */
const MOST_LETTERS = 500_000;
/** Ranges entered at once. */
const MOST_RUNS = 500;

/** Cells of a column one below another. */
type Run = readonly [BrokenCell, ...BrokenCell[]];

function runsOf(cells: readonly BrokenCell[]): readonly Run[] {
  const runs: [BrokenCell, ...BrokenCell[]][] = [];
  for (const cell of [...cells].sort((a, b) => a.column - b.column || a.row - b.row)) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run !== undefined && last?.column === cell.column && last.row === cell.row - 1) run.push(cell);
    else runs.push([cell]);
  }
  return runs;
}

/** How many cells took their formulas. What is refused together is entered in halves, down to the cell that will not. */
async function enter(context: Excel.RequestContext, sheet: Excel.Worksheet, runs: readonly Run[]): Promise<number> {
  if (runs.length > MOST_RUNS || (runs.length > 1 && lettersOf(runs) > MOST_LETTERS))
    return halves(context, sheet, runs);
  try {
    for (const run of runs) {
      const [{ row, column }] = run;
      const range = rangeAt(sheet, rangeOf({ top: row, left: column, bottom: row + run.length - 1, right: column }));
      range.formulas = run.map(({ formula }) => [formula]);
    }
    await context.sync();
    return runs.reduce((sum, run) => sum + run.length, 0);
  } catch {
    return runs.length === 1 && runs[0]?.length === 1 ? 0 : halves(context, sheet, runs);
  }
}

async function halves(context: Excel.RequestContext, sheet: Excel.Worksheet, runs: readonly Run[]): Promise<number> {
  const parts = runs.length === 1 ? (runs[0] ?? []).map((cell): Run => [cell]) : runs;
  const middle = Math.ceil(parts.length / 2);
  return (await enter(context, sheet, parts.slice(0, middle))) + (await enter(context, sheet, parts.slice(middle)));
}

function lettersOf(runs: readonly Run[]): number {
  return runs.reduce((sum, run) => sum + run.reduce((own, { formula }) => own + formula.length, 0), 0);
}
