import type { FindingCode } from "../../../src/basis/finding-code.ts";
import { type Amount, printedUnit, UNIT_SETS } from "../../../src/basis/quantities.ts";
import type { Finding } from "../../../src/basis/result.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import type { Duty } from "../../duty/duty.ts";
import type { DutyText } from "../../duty/duty-text.ts";

/** One text in one box that clears a finding. */
export interface Mend {
  /** What a button says that does it: "Add 1 exit". */
  readonly label: string;
  /** The box, by the key of its place. */
  readonly place: string;
  readonly text: string;
}

/** Where a finding was made. */
export interface FoundAt {
  /** The box it stands at; blank where it was made of the calculation. */
  readonly place: string;
  /** What stands in that box. */
  readonly text: string;
  readonly typed: DutyText;
  readonly duty: Duty;
}

/** What may clear a finding of a code, the best first. */
export type Mender<C extends FindingCode> = (finding: Finding<C>, at: FoundAt) => readonly Mend[];

/** Figures of an amount put into a box: as many as a number keeps that is converted to another unit set. */
const FIGURES = 6;

/** An amount as a box takes it, in the unit of its set. */
export function amountInBox({ quantity, value }: Amount, { unitSet }: Pick<Duty, "unitSet">): string {
  const number = String(Number(fromEngine(value, UNIT_SETS[unitSet][quantity]).toPrecision(FIGURES)));
  const unit = printedUnit(quantity, unitSet);
  return unit === "" ? number : `${number} ${unit}`;
}
