import { splitAmount } from "../../../src/basis/quantity-text.ts";
import { andThen, succeed } from "../../../src/basis/result.ts";
import { unitNamed } from "../../../src/basis/units.ts";
import { pipeNamed } from "../../../src/pipework/pipe-name.ts";
import { amountOf } from "../../cells/amount-cell.ts";
import type { OptionalParameter } from "../parameter.ts";

/** The bore of a pipe at a tap, m: by the name of the pipe, or measured. Null where left out. */
export function tapBore(about: string, shown: string): OptionalParameter<number | null> {
  return {
    takes: "cell",
    about,
    quantity: "size",
    range: "above 0",
    example: '"8 in sch40", or its bore, 7.981',
    fallback: null,
    whenLeftOut: shown,
    read: (cell, { name, units }) =>
      typeof cell === "string" && isPipe(cell)
        ? andThen(pipeNamed(cell, name), ({ bore }) => succeed(bore))
        : amountOf(cell, "size", units.size, name),
  };
}

/** More than a number with a unit of length. */
function isPipe(text: string): boolean {
  const parts = splitAmount(text);
  if (parts === undefined) return true;
  return parts.unit !== "" && unitNamed(parts.unit) === undefined;
}
