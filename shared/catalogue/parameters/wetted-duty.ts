import { readQuantity } from "../../../src/basis/quantity-text.ts";
import { amount, andThen, type Result, succeed } from "../../../src/basis/result.ts";
import { type OptionalParameter, quantity } from "../parameter.ts";
import { zeroDoubted } from "./zero-doubted.ts";

/** Of whatever is left out: nothing stands in its place. */
export const NOT_STATED = { value: null, shown: "not stated: nothing that hangs on it is judged" } as const;

const PARTS_PER_MILLION = /^([\d.,eE+]+)\s*(?:ppm|mg\/kg)$/i;

/** What is dissolved in water: often stated in ppm by mass, which in water is mg/L. */
export function dissolved(facts: {
  readonly about: string;
  readonly example: string;
  readonly range: string;
}): OptionalParameter<number | null> {
  const concentration = quantity("concentration", { ...facts, whenLeftOut: NOT_STATED });
  return zeroDoubted({
    ...concentration,
    read: (cell, reading): Result<number | null> => {
      const figure = typeof cell === "string" ? PARTS_PER_MILLION.exec(cell.trim())?.[1] : undefined;
      if (figure === undefined) return concentration.read(cell, reading);
      return andThen(readQuantity(`${figure} mg/L`, "concentration", reading.name), (value) =>
        succeed(value, [
          {
            code: "chlorides-by-mass",
            kind: "check",
            subject: reading.name,
            given: String(cell),
            found: amount("concentration", value),
          },
        ]),
      );
    },
  });
}
