import { outOfRange } from "../../../src/basis/method.ts";
import { andThen, fail, type Result, succeed } from "../../../src/basis/result.ts";
import type { FieldPoint } from "../../../src/field/field-check.ts";
import { INSTRUMENT_EXAMPLES, type Uncertainty, uncertaintyNamed } from "../../../src/field/uncertainty.ts";
import type { Measured } from "../../../src/tables/field-instruments.ts";
import { amountOf, withoutText } from "../../cells/amount-cell.ts";
import { readTable } from "../../tables/read-table.ts";
import { type OptionalParameter, type RangeParameter, text } from "../parameter.ts";
import { share } from "./share.ts";

/** What a reading was taken with. Null where left out. */
export function instrument(of: Measured, about: string, shown: string): OptionalParameter<Uncertainty | null> {
  const [first, second] = INSTRUMENT_EXAMPLES[of];
  const named = text<Uncertainty | null>(
    { about, example: `"${first}", or "${second}"`, whenLeftOut: { value: null, shown } },
    (given, name) => uncertaintyNamed(given, of, name),
  );
  const ofReading = share({ about });
  // A cell formatted in percent holds a bare fraction.
  return {
    ...named,
    read: (cell, context) =>
      typeof withoutText(cell) === "number"
        ? andThen(ofReading.read(cell, context), (part) => succeed<Uncertainty>({ kind: "part", part }))
        : named.read(cell, context),
  };
}

/** Of a head: an amount in the unit set, or a share of it as a text. Null where left out. */
export const headUncertainty: OptionalParameter<Uncertainty | null> = {
  takes: "cell",
  about: "How far the head may be off at two standard deviations, as FIELDHEAD gives it",
  quantity: "head",
  example: '1.2, or "1.5 %"',
  range: "0 or more",
  fallback: null,
  whenLeftOut: "2 % of it, two bourdon gauges (house choice)",
  read: (cell, { name, units }) => {
    if (typeof cell === "string" && cell.includes("%")) return uncertaintyNamed(cell, "flow", name);
    return andThen(amountOf(cell, "head", units.head, name), (amount) =>
      amount < 0
        ? fail([outOfRange(name, "head", amount, "at least", 0)])
        : succeed<Uncertainty>({ kind: "amount", amount }),
    );
  },
};

const COLUMNS = {
  flow: { name: "flow", also: ["q"], quantity: "flow", needed: true },
  head: { name: "head", also: ["total head", "tdh"], quantity: "head", needed: true },
  power: { name: "shaft power", also: ["power"], quantity: "power" },
  speed: { name: "speed", also: ["n", "pump speed", "measured speed"], quantity: "speed", byUnit: true },
} as const;

type Point = Omit<FieldPoint, "speedRatio"> & { readonly speed: number | null };

/** What was measured, the least flow first; r/s where the speed was measured too. */
export interface FieldReadings {
  readonly points: readonly Point[];
}

export const fieldReadings: RangeParameter<FieldReadings> = {
  takes: "range",
  about:
    "What was measured, a row each setting of the valve, headed flow, head, and where measured shaft power (with the liquid as pumped), speed; without a header row in that order",
  example: "a range headed flow | head | shaft power | speed",
  read: (cells, { name, units }) =>
    andThen(
      readTable(cells, COLUMNS, { place: { name }, units, order: ["flow", "head", "power", "speed"] }),
      ({ rows }) =>
        succeed({
          points: rows
            .map(({ values: { flow, head, power = null, speed = null } }) => ({ flow, head, shaftPower: power, speed }))
            .sort((one, other) => one.flow - other.flow),
        }),
    ),
};

/** Each point with its speed over that of the curve: its own where it was measured, else the ratio stated. */
export function atTheirSpeed(
  { points }: FieldReadings,
  curveSpeed: number | null,
  speedRatio: number,
): Result<readonly FieldPoint[]> {
  if (curveSpeed !== null && !(curveSpeed > 0))
    return fail([outOfRange("curve speed", "speed", curveSpeed, "above", 0)]);
  if (curveSpeed === null && points.some(({ speed }) => speed !== null)) {
    return fail([{ code: "field-speed-missing", kind: "error", subject: "curve speed" }]);
  }
  return succeed(
    points.map(({ speed, ...point }) => ({
      ...point,
      speedRatio: speed === null || curveSpeed === null ? speedRatio : speed / curveSpeed,
    })),
  );
}
