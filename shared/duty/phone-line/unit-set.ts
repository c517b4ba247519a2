import { partsThousands } from "../../../src/basis/customary.ts";
import {
  QUANTITIES,
  type Quantity,
  UNIT_SET_NAMES,
  UNIT_SETS,
  type UnitSetName,
} from "../../../src/basis/quantities.ts";
import type { Unit } from "../../../src/basis/units.ts";

/** What the units of a sentence say of the set they are of. */
export interface UnitsSaid {
  /** The one set all are of. */
  readonly set: UnitSetName | undefined;
  /** Whether a figure without a unit may be read in that set, or else in the set of the duty. */
  readonly isBareClear: boolean;
}

const ALL = Object.keys(QUANTITIES) as readonly Quantity[];

/** The unit sets a unit is of; none says nothing. */
function setsOf(unit: Unit): readonly UnitSetName[] {
  const own = UNIT_SET_NAMES.filter((name) => ALL.some((quantity) => UNIT_SETS[name][quantity] === unit));
  if (own.length === 0 && partsThousands(unit)) return ["US"];
  return own;
}

/** The set that every unit is of: a unit of several sets goes with any of them. */
export function unitsSaid(units: readonly Unit[], present: UnitSetName): UnitsSaid {
  const telling = units.map(setsOf).filter((sets) => sets.length > 0 && sets.length < UNIT_SET_NAMES.length);
  if (telling.length === 0) return { set: undefined, isBareClear: true };
  const shared = UNIT_SET_NAMES.filter((name) => telling.every((sets) => sets.includes(name)));
  if (shared.length === 1) return { set: shared[0], isBareClear: true };
  return { set: undefined, isBareClear: shared.includes(present) };
}
