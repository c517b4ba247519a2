import { SAMPLE_DUTIES } from "../../shared/duty/samples.ts";
import type { SheetSet } from "../../shared/ports/sheet-set.ts";
import { setOf } from "../../shared/ports/sheet-set.ts";
import { inventedPumps } from "../../shared/pump-table/library/library.ts";
import { pumpSheets } from "../../shared/pump-table/pump-sheets.ts";
import { setOfDuty } from "./laid-out.ts";
import { PRINTED_DUTIES } from "./printed-duties.ts";

/** A set of sheets as it is written every day, made when it is asked for. */
export interface RealSet {
  readonly name: string;
  readonly made: () => SheetSet;
  /** Between 0 and 1, another for each: what a test takes of it that cannot take all. */
  readonly share: number;
}

const LONGEST = PRINTED_DUTIES.filter(({ name }) => name.startsWith("24 runs"));

/** The duties that come with the program, a long one, and the invented pumps. */
export const REAL_SETS: readonly RealSet[] = [
  ...[...SAMPLE_DUTIES, ...LONGEST].map(({ name, duty }) => ({ name, made: () => setOfDuty(duty) })),
  { name: "the invented pumps", made: () => setOf(...pumpSheets({ ...inventedPumps(), note: "Invented." })) },
].map((set, i, all) => ({ ...set, share: i / (all.length - 1) }));
