import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { Result } from "../../../src/basis/result.ts";
import { FLANGE_CLASS_NAMES, type FlangeClass, flangeClassNamed } from "../../../src/pressure/flange-class.ts";
import type { RatingSystem } from "../../../src/tables/flange-rating-table.ts";
import { wrongKind } from "../../cells/refused-cell.ts";
import type { SingleParameter } from "../parameter.ts";

/** Whose tables a reader of this unit set looks at: psi and °F, or bar and °C. */
export function ratingSystem(unitSet: UnitSetName): RatingSystem {
  return unitSet === "US" ? "US" : "SI";
}

const EXAMPLE = '150, "Class 150" or "PN16"';

/** Flange class. A size may follow it, for grey iron: "125 NPS 8". */
export const flangeClass: SingleParameter<FlangeClass> = {
  takes: "cell",
  about:
    'Flange class: 150, "Class 150", "PN16"; grey iron is rated by size, which may follow the class: "125 NPS 8", "125 DN200"',
  example: EXAMPLE,
  choices: FLANGE_CLASS_NAMES,
  read: (cell, { name, unitSet }): Result<FlangeClass> => {
    if (typeof cell !== "string" && typeof cell !== "number")
      return wrongKind(name, cell, `a class such as ${EXAMPLE}`);
    return flangeClassNamed(String(cell), ratingSystem(unitSet), name);
  },
};
