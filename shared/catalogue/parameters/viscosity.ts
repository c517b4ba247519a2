import { readNumber, readWrittenAmount } from "../../../src/basis/quantity-text.ts";
import { andThen, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { toEngine } from "../../../src/basis/units.ts";
import { fromSaybolt, sayboltSeconds } from "../../../src/liquid/saybolt.ts";
import { amountOf, withoutText } from "../../cells/amount-cell.ts";
import { wrongKind } from "../../cells/refused-cell.ts";
import type { SingleParameter } from "../parameter.ts";

/** A viscosity as the reader has it: dynamic, Pa·s, or kinematic, m²/s. */
export interface StatedViscosity {
  readonly kind: "dynamic" | "kinematic";
  readonly value: number;
}

const EXAMPLE = "120 cSt or 108 cP";

/** A plain number is a dynamic viscosity in the unit set; a text may give either kind. */
export const viscosity: SingleParameter<StatedViscosity> = {
  takes: "cell",
  about:
    'Viscosity at pumping temperature: a number is dynamic (cP, mPa·s); a text may be kinematic, such as "120 cSt" or "550 SSU"',
  example: `"120 cSt"`,
  range: "above 0; 1 to 4000 cSt is what the method was made for",
  read: (cell, { name, units }): Result<StatedViscosity> => {
    if (typeof withoutText(cell) === "number") {
      return andThen(amountOf(cell, "dynamicViscosity", units.dynamicViscosity, name), (value) =>
        succeed({ kind: "dynamic", value }),
      );
    }
    if (typeof cell !== "string") return wrongKind(name, cell, `a number or a text such as ${EXAMPLE}`);
    const seconds = sayboltSeconds(cell);
    if (seconds !== undefined) {
      return andThen(readNumber(seconds, name), (number) =>
        andThen(fromSaybolt(number), (value) => succeed({ kind: "kinematic", value })),
      );
    }
    const read = readWrittenAmount(cell, name, EXAMPLE);
    if (!read.ok) return read;
    const { value, unit } = read.value;
    if (unit.dimension === "dynamicViscosity") return succeed({ kind: "dynamic", value: toEngine(value, unit) });
    if (unit.dimension === "kinematicViscosity") return succeed({ kind: "kinematic", value: toEngine(value, unit) });
    const suggestions = [EXAMPLE];
    return fail([{ code: "unit-wrong-kind", kind: "error", subject: name, given: cell.trim(), suggestions }]);
  },
};
