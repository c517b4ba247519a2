import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { fittings } from "../../catalogue/parameters/fittings.ts";

/** A piece of a list of fittings as typed. */
export interface TypedFitting {
  readonly text: string;
  /** Exits it counts. */
  readonly exits: number;
}

/** "2 elbow, 1 exit" taken apart. */
export function fittingsIn(typed: string, unitSet: UnitSetName): readonly TypedFitting[] {
  return typed
    .split(/[,;\n]/)
    .map((text) => text.trim())
    .filter((text) => text !== "")
    .map((text) => {
      const read = fittings.read([[text]], { name: "fittings", unitSet, units: UNIT_SETS[unitSet] });
      const counted = read.ok ? read.value : [];
      return { text, exits: counted.reduce((sum, { fitting, count }) => sum + (fitting.isExit ? count : 0), 0) };
    });
}
