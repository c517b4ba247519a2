import type {
  CaseText,
  CurvePointText,
  DutyText,
  LineKey,
  OtherPumpText,
  OwnKey,
  Place,
  PumpText,
  SegmentText,
} from "../../shared/duty/duty-text.ts";
import type { Field } from "../../shared/duty/field.ts";
import { CASE_FIELDS, CASE_KEYS } from "../../shared/duty/fields/cases.ts";
import {
  CURVE_POINT,
  OWN_BOXES,
  OWN_KEYS,
  POINT_COLUMNS,
  PUMP_BOXES,
  PUMP_KEYS,
} from "../../shared/duty/fields/pump.ts";
import { FIELD_KEYS, FIELDS } from "../../shared/duty/fields.ts";
import { bareNumber } from "../../shared/duty/read-amount.ts";
import { type Quantity, UNIT_SETS, type UnitSetName } from "../../src/basis/quantities.ts";
import { fromEngine, toEngine } from "../../src/basis/units.ts";

/** Figures a converted number keeps: there and back again gives what was typed. */
const FIGURES = 6;

/**
 * The boxes that hold a number without a unit which another unit set would read differently. A text with its own
 * unit means the same in every unit set.
 */
export function numbersThatDiffer(duty: DutyText, unitSet: UnitSetName): readonly Place[] {
  const differs = (text: string, quantity: Quantity): boolean =>
    UNIT_SETS[duty.unitSet][quantity] !== UNIT_SETS[unitSet][quantity] && bareNumber(text) !== undefined;
  const fields = FIELD_KEYS.filter((key) => {
    const { quantity, inUnitSet } = FIELDS[key];
    const text = duty.fields[key];
    if (inUnitSet !== undefined) return inUnitSet(text, duty.unitSet, unitSet) !== text;
    return quantity !== undefined && differs(text, quantity);
  }).map((field): Place => ({ field }));
  const lengths = (["suctionLine", "dischargeLine"] as const).flatMap((line) =>
    duty[line].flatMap(({ length, level = "" }, row): readonly Place[] => [
      ...(differs(length, "length") ? [{ line, row, column: "length" } as const] : []),
      ...(differs(level, "elevation") ? [{ line, row, column: "level" } as const] : []),
    ]),
  );
  const others = (duty.otherPumps ?? []).flatMap((pump, other) => [
    ...pumpNumbers(pump, differs, other),
    ...OWN_KEYS.filter((own) => ownIn(own, pump[own], duty.unitSet, unitSet) !== pump[own]).map(
      (own): Place => ({ own, other }),
    ),
  ]);
  const cases = (duty.cases ?? []).flatMap((one, i) =>
    CASE_KEYS.filter((key) => {
      const { quantity } = CASE_FIELDS[key];
      return quantity !== undefined && differs(one.fields[key] ?? "", quantity);
    }).map((box): Place => ({ case: i, box })),
  );
  const chosen = duty.pump === undefined ? [] : pumpNumbers(duty.pump, differs);
  return [...fields, ...lengths, ...chosen, ...others, ...cases];
}

function pumpNumbers(
  pump: PumpText,
  differs: (text: string, quantity: Quantity) => boolean,
  other?: number,
): readonly Place[] {
  const boxes = PUMP_KEYS.filter((key) => {
    const { quantity }: Field = PUMP_BOXES[key];
    return quantity !== undefined && differs(pump[key], quantity);
  });
  const cells = pump.points.flatMap((point, row) =>
    POINT_COLUMNS.filter((column) => differs(point[column], CURVE_POINT[column].quantity)).map(
      (column): Place => ({ pump: "points", row, column, other }),
    ),
  );
  return [...boxes.map((box): Place => ({ pump: box, other })), ...cells];
}

/**
 * The same duty in another unit set: plain numbers converted to six figures, flange sizes to their pair of NPS and DN,
 * every other text as it is.
 */
export function convertNumbers(duty: DutyText, unitSet: UnitSetName): DutyText {
  const converted = (text: string, quantity: Quantity): string => numberIn(text, quantity, duty.unitSet, unitSet);
  const fields = Object.fromEntries(
    FIELD_KEYS.map((key) => {
      const { quantity, inUnitSet } = FIELDS[key];
      const text = duty.fields[key];
      if (inUnitSet !== undefined) return [key, inUnitSet(text, duty.unitSet, unitSet)];
      return [key, quantity === undefined ? text : converted(text, quantity)];
    }),
  ) as DutyText["fields"];
  const rows = (line: LineKey): readonly SegmentText[] =>
    duty[line].map(({ level, ...segment }) => ({
      ...segment,
      length: converted(segment.length, "length"),
      ...(level !== undefined && { level: converted(level, "elevation") }),
    }));
  const lines = { suctionLine: rows("suctionLine"), dischargeLine: rows("dischargeLine") };
  const otherPumps = duty.otherPumps?.map((pump): OtherPumpText => {
    const own = Object.fromEntries(OWN_KEYS.map((key) => [key, ownIn(key, pump[key], duty.unitSet, unitSet)]));
    return { ...convertPump(pump, converted), ...(own as Record<OwnKey, string>) };
  });
  return {
    ...duty,
    unitSet,
    fields,
    ...lines,
    ...(duty.pump && { pump: convertPump(duty.pump, converted) }),
    ...(otherPumps && { otherPumps }),
    ...(duty.cases && { cases: duty.cases.map((one) => convertCase(one, converted)) }),
  };
}

function convertCase(one: CaseText, converted: (text: string, quantity: Quantity) => string): CaseText {
  const fields = CASE_KEYS.flatMap((key): readonly (readonly [string, string])[] => {
    const text = one.fields[key];
    const { quantity } = CASE_FIELDS[key];
    return text === undefined ? [] : [[key, quantity === undefined ? text : converted(text, quantity)]];
  });
  return { ...one, fields: Object.fromEntries(fields) };
}

function numberIn(text: string, quantity: Quantity, before: UnitSetName, after: UnitSetName): string {
  const value = bareNumber(text);
  const from = UNIT_SETS[before][quantity];
  const to = UNIT_SETS[after][quantity];
  if (value === undefined || from === to) return text;
  return String(Number(fromEngine(toEngine(value, from), to).toPrecision(FIGURES)));
}

/** A box that a further pump alone has, in another unit set. */
function ownIn(key: OwnKey, text: string, before: UnitSetName, after: UnitSetName): string {
  const { quantity, inUnitSet }: Field = OWN_BOXES[key];
  if (inUnitSet !== undefined) return inUnitSet(text, before, after);
  return quantity === undefined ? text : numberIn(text, quantity, before, after);
}

function convertPump(pump: PumpText, converted: (text: string, quantity: Quantity) => string): PumpText {
  const boxes = Object.fromEntries(
    PUMP_KEYS.map((key) => {
      const { quantity }: Field = PUMP_BOXES[key];
      return [key, quantity === undefined ? pump[key] : converted(pump[key], quantity)];
    }),
  );
  const points = pump.points.map(
    (point): CurvePointText =>
      Object.fromEntries(
        POINT_COLUMNS.map((column) => [column, converted(point[column], CURVE_POINT[column].quantity)]),
      ) as unknown as CurvePointText,
  );
  return { ...pump, ...boxes, points };
}
