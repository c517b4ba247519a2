import { isAbsent } from "../../cells/cell.ts";
import { addressOf } from "../../ports/a1.ts";
import type { SheetNow } from "../../ports/sheet-record.ts";
import type { Remark } from "./brought-back.ts";
import { textOfCell } from "./cell-text.ts";
import type { WrittenBlock } from "./written-blocks.ts";

/** How many are named; the others are counted. */
const NAMED = 5;
/** House choice: how far a block is looked for above and below its place. */
const REACH = 200;

/**
 * What is said of the formulas of a sheet that hold something else now, all in one sentence; and of blocks that cannot be
 * held against them, for rows were put into them or taken out.
 */
export function typedOver(sheet: SheetNow, blocks: readonly WrittenBlock[]): readonly Remark[] {
  const found: string[] = [];
  const moved: string[] = [];
  const shifts = shiftsOf(sheet, blocks);
  blocks.forEach((block, i) => {
    const shift = shifts[i];
    if (shift === undefined || (shifts[i + 1] ?? shift) !== shift) {
      moved.push(`“${block.label}”`);
      return;
    }
    for (const { row, across } of cellsOf(block, shift)) {
      const { value, isFormula } = sheet.at(row, across);
      if (isFormula) continue;
      const now = isAbsent(value) ? "is empty" : `holds ${textOfCell(value, "", undefined)}`;
      found.push(`${addressOf(row, across)}, of “${block.label}”, ${now}`);
    }
  });
  const all = found.length === 1 ? "A formula was" : `${found.length} formulas were`;
  return [
    ...(found.length === 0
      ? []
      : [remark(`${all} typed over on “${sheet.name}”: ${listed(found)}. Not taken: all is worked out again.`)]),
    ...(moved.length === 0
      ? []
      : [
          remark(
            `Rows were put in or taken out on “${sheet.name}”, at ${listed(moved)}: whether its formulas stand cannot be told. Nothing there was taken.`,
          ),
        ]),
  ];
}

function remark(text: string): Remark {
  return { kind: "overwritten", text };
}

function listed(all: readonly string[]): string {
  const rest = all.length - NAMED;
  return [...all.slice(0, NAMED), ...(rest > 0 ? [`and ${rest} more`] : [])].join("; ");
}

/**
 * How many rows further down each block stands than it was written; nothing for one that is not found. A label may stand
 * twice, as the heading of its section too: the place that has most of the formulas is the block's.
 */
function shiftsOf(sheet: SheetNow, blocks: readonly WrittenBlock[]): readonly (number | undefined)[] {
  let shift = 0;
  return blocks.map((block) => {
    let best: { readonly by: number; readonly standing: number } | undefined;
    for (const by of outwardsFrom(shift)) {
      if (block.top + by < 0 || sheet.at(block.top + by, 0).value !== block.label) continue;
      const standing = standingAt(sheet, block, by);
      if (best === undefined || standing > best.standing) best = { by, standing };
      if (standing === countOf(block)) break;
    }
    shift = best?.by ?? shift;
    return best?.by;
  });
}

function outwardsFrom(shift: number): readonly number[] {
  return Array.from({ length: 2 * REACH + 1 }, (_, i) => shift + (i % 2 === 0 ? -i / 2 : (i + 1) / 2));
}

function countOf({ formulas }: WrittenBlock): number {
  return formulas.reduce((sum, [, , count]) => sum + count, 0);
}

function standingAt(sheet: SheetNow, block: WrittenBlock, by: number): number {
  return cellsOf(block, by).filter(({ row, across }) => sheet.at(row, across).isFormula).length;
}

function cellsOf(
  { top, formulas }: WrittenBlock,
  by: number,
): readonly { readonly row: number; readonly across: number }[] {
  return formulas.flatMap(([across, down, count]) =>
    Array.from({ length: count }, (_, i) => ({ row: top + by + down + i, across })),
  );
}
