import { dutySheets } from "../../shared/calc-sheet/duty-sheets.ts";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import type { SheetSet } from "../../shared/ports/sheet-set.ts";
import { bookOfSet } from "../../shared/xlsx/book-of-set.ts";
import { headlessGrid } from "../../workbench/headless.ts";
import { best } from "./timing.ts";

const ROUNDS = 3;

export interface SheetTimes {
  /** From the duty as typed to the bytes of the file, ms; and of that, to the sheets laid out. */
  readonly fileMs: number;
  readonly laidOutMs: number;
  /** From the duty as typed to the sheets in the grid, calculated, ms. */
  readonly gridMs: number;
}

/** Times to write the sheets of the quarry sample, each time for another flow, so that nothing is known from before. */
export async function sheetTimes(): Promise<SheetTimes> {
  const [quarry] = SAMPLE_DUTIES;
  if (quarry === undefined) throw new Error("the bench has no sample");
  let flow = 1200;
  const laidOut = (): SheetSet => {
    flow += 0.5;
    return sheetsOf({ ...quarry.duty, fields: { ...quarry.duty.fields, flow: String(flow) } });
  };
  const laidOutMs = 1000 * best(() => laidOut().sheets(["Duty", "Estimate", "Workings"]));
  const fileMs = 1000 * best(() => bookOfSet(laidOut()));
  let gridMs = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round += 1) {
    const grid = headlessGrid();
    try {
      const start = performance.now();
      const [name] = await grid.host.addSheets(laidOut());
      gridMs = Math.min(gridMs, performance.now() - start);
      const [[[total]] = [[null]]] = (await grid.host.read([`'${name}'!total_head`])) as [[[unknown]]];
      if (typeof total !== "number") throw new Error("the grid did not calculate");
    } finally {
      grid.dispose();
    }
  }
  return { fileMs, laidOutMs, gridMs };
}

function sheetsOf(typed: DutyText): SheetSet {
  const set = dutySheets(typed);
  if (!set.ok) throw new Error("the bench has a sample that is not complete");
  return set.value;
}
