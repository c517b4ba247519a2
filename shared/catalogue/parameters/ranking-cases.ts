import { outOfRange } from "../../../src/basis/method.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { pumpedLiquidNamed } from "../../../src/slurry/slurry-liquid-name.ts";
import { type ReadColumns, type RowValues, readTable, type TableRow, textCell } from "../../tables/read-table.ts";
import type { RangeParameter } from "../parameter.ts";

/** As many cases as are ranked for at once: as many as a duty has. House choice. */
const MOST_CASES = 12;

const COLUMNS = {
  name: { name: "case", also: ["name", "state", "case name"] },
  flow: { name: "flow", also: ["q", "flow asked"], quantity: "flow", byUnit: true },
  staticHead: { name: "static head", also: ["static", "head"], quantity: "head" },
  suctionLift: { name: "suction lift", also: ["lift"], quantity: "head" },
  altitude: { name: "altitude", also: ["elevation of the site"], quantity: "elevation" },
  sourcePressure: { name: "source pressure", also: [], quantity: "gaugePressure" },
  deliveryPressure: { name: "delivery pressure", also: [], quantity: "gaugePressure" },
  liquid: { name: "liquid", also: [], read: textCell('"water"', pumpedLiquidNamed) },
  temperature: { name: "temperature", also: ["liquid temperature"], quantity: "temperature" },
} as const satisfies ReadColumns;

/** What a case states over the duty of the other arguments; what it leaves blank is as there. */
export type StatedCase = RowValues<typeof COLUMNS> & { readonly name: string };

export const rankingCases: RangeParameter<readonly StatedCase[]> & { readonly whenLeftOut: string } = {
  takes: "range",
  about:
    "Other cases of the duty, a row each, up to 12: case (its name), flow, static head, suction lift, altitude, source pressure, delivery pressure, liquid, temperature; a blank is as in the other arguments",
  example: "a range headed case | flow | static head",
  whenLeftOut: "the duty of the other arguments alone",
  fallback: [],
  read: (cells, { name, units }): Result<readonly StatedCase[]> =>
    andThen(
      readTable(cells, COLUMNS, { place: { name }, units, order: ["name", "flow", "staticHead"] }),
      ({ rows }) => {
        if (rows.length > MOST_CASES) return fail([outOfRange(name, "ratio", rows.length, "at most", MOST_CASES)]);
        return succeed(
          rows.map(({ values }, i) => ({ ...values, name: values.name ?? `case ${i + 1}` })),
          rows.flatMap(zerosDoubted),
        );
      },
    ),
};

/** Columns where a blank cell that arrives as 0 would state another case. */
const ZERO_MATTERS = ["staticHead", "suctionLift", "altitude", "sourcePressure", "deliveryPressure"] as const;

function zerosDoubted({ values, placeOf }: TableRow<typeof COLUMNS>): readonly Finding[] {
  return ZERO_MATTERS.filter((key) => values[key] === 0).map((key) => ({
    code: "zero-may-be-blank",
    kind: "check",
    subject: placeOf(key),
  }));
}
