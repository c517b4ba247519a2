import type { FindingCode } from "../../../src/basis/finding-code.ts";
import type { Duty, DutySegment } from "../../duty/duty.ts";
import { type LineKey, placeKey } from "../../duty/duty-text.ts";
import { fittingsIn } from "./fittings-in.ts";
import type { Mend, Mender } from "./mend.ts";

/** What clears a finding of the calculation that the fittings of one row answer. */
export const OF_LINES: { readonly [C in FindingCode]?: Mender<C> } = {
  "exit-not-counted": (_, { duty }) => {
    const last = duty.dischargeLine.at(-1);
    if (last === undefined) return [];
    const before = last.typed.fittings.trim().replace(/[,;]$/, "");
    return [mend("Add 1 exit", "dischargeLine", last, before === "" ? "1 exit" : `${before}, 1 exit`)];
  },
  "exit-counted-twice": ({ facts }, { duty }) =>
    leftAt("dischargeLine", duty).flatMap(({ row, exits, without }) =>
      exits === facts.exits
        ? [mend("Keep 1 exit", "dischargeLine", row, [...without, "1 exit"].join(", "))]
        : exits === facts.exits - 1
          ? [mend(`Take the exit out of row ${row.row + 1}`, "dischargeLine", row, without.join(", "))]
          : [],
    ),
  "exit-in-suction": ({ facts }, { duty }) =>
    leftAt("suctionLine", duty).flatMap(({ row, exits, without }) =>
      exits === facts.exits ? [mend("Take the exit out", "suctionLine", row, without.join(", "))] : [],
    ),
};

interface RowWithExits {
  readonly row: DutySegment;
  readonly exits: number;
  /** Its other fittings, as typed. */
  readonly without: readonly string[];
}

function leftAt(line: LineKey, duty: Duty): readonly RowWithExits[] {
  return duty[line].flatMap((row) => {
    const pieces = fittingsIn(row.typed.fittings, duty.unitSet);
    const exits = pieces.reduce((sum, piece) => sum + piece.exits, 0);
    return exits === 0
      ? []
      : [{ row, exits, without: pieces.filter((piece) => piece.exits === 0).map(({ text }) => text) }];
  });
}

function mend(label: string, line: LineKey, { row }: DutySegment, text: string): Mend {
  return { label, place: placeKey({ line, row, column: "fittings" }), text };
}
