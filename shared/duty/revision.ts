import type { Quantity, UnitSetName } from "../../src/basis/quantities.ts";
import { spelt } from "../text/spelling.ts";
import {
  type Box,
  boxChanges,
  changed,
  eachBox,
  fieldBox,
  isSameRow,
  type Row,
  rowChanges,
  rowOf,
} from "./box-changes.ts";
import type { Change } from "./change.ts";
import {
  type DutyText,
  type LineKey,
  type OtherPumpText,
  type PumpText,
  SEGMENT_COLUMNS,
  type SegmentText,
} from "./duty-text.ts";
import { CASE_FIELDS, CASE_HOURS, CASE_KEYS } from "./fields/cases.ts";
import { CURVE_POINT, OWN_BOXES, OWN_KEYS, POINT_COLUMNS, PUMP_BOXES, PUMP_KEYS } from "./fields/pump.ts";
import { FIELD_KEYS, FIELDS, type FieldKey, fieldsOf } from "./fields.ts";
import { changedRows } from "./paired-rows.ts";
import { placeLabel } from "./place-label.ts";

/** Of a revision itself: who made it and when is no change of what is calculated. */
const OF_THE_REVISION: readonly FieldKey[] = [
  "revision",
  "date",
  "preparedBy",
  "preparedInitials",
  "preparedOn",
  "checkedBy",
  "checkedInitials",
  "checkedOn",
  "approvedBy",
  "approvedInitials",
  "approvedOn",
];

/**
 * What was typed otherwise in a later state of a duty, in the order of the pane. A number means its unit: 1200 that goes
 * from US gpm to m³/h is a change, 1200 that gets its gpm written beside it is none.
 */
export function dutyChanges(before: DutyText, after: DutyText): readonly Change[] {
  const found = [
    ...changed("Units", before.unitSet, after.unitSet),
    ...FIELD_KEYS.filter((key) => !OF_THE_REVISION.includes(key)).flatMap((key) => fieldChanges(key, before, after)),
    ...changed("Logo", logoWords(before), logoWords(after), before.logo === after.logo),
    ...(["suctionLine", "dischargeLine"] as const).flatMap((line) =>
      rowChanges(lineRows(line, before), lineRows(line, after)),
    ),
    ...pumpChanges(before, after),
    ...otherPumpChanges(before, after),
    ...rowChanges(caseRows(before), caseRows(after)),
  ];
  return found.map((one) => ({ ...one, label: spelt(one.label, after.unitSet) }));
}

function logoWords({ logo }: DutyText): string {
  return logo === undefined ? "" : `a picture of ${Math.ceil((logo.length * 3) / 4 / 1000)} kB`;
}

function fieldChanges(key: FieldKey, before: DutyText, after: DutyText): readonly Change[] {
  const { label, quantity, inUnitSet, isLong } = FIELDS[key];
  const box = ({ fields, unitSet }: DutyText): Box => ({ label, text: fields[key], unitSet, quantity, inUnitSet });
  const basis = (duty: DutyText): string => (duty.basis[key] ?? "").trim();
  const found = isLong
    ? rowChanges(textRows(label, before.fields[key]), textRows(label, after.fields[key]))
    : boxChanges(box(before), box(after));
  const isInternal = fieldsOf("estimate").includes(key);
  return [...found, ...changed(`Basis of ${label}`, basis(before), basis(after))].map((one) => ({
    ...one,
    isInternal,
  }));
}

/** The lines of a text, each by itself; units play no part in them. */
function textRows(label: string, text: string): readonly Row[] {
  return text
    .split("\n")
    .flatMap((line, i) =>
      line.trim() === "" ? [] : [{ label, boxes: [{ label: `line ${i + 1}`, text: line, unitSet: "SI" as const }] }],
    );
}

function lineRows(line: LineKey, duty: DutyText): readonly Row[] {
  return duty[line].flatMap((segment, i) => {
    const boxes = SEGMENT_COLUMNS.map((column) => ({
      label: column,
      text: segment[column] ?? "",
      unitSet: duty.unitSet,
      quantity: SEGMENT_QUANTITIES[column],
    }));
    return rowOf(placeLabel(`${line}.${i}`), boxes);
  });
}

const SEGMENT_QUANTITIES: Readonly<Partial<Record<keyof SegmentText, Quantity>>> = {
  length: "length",
  level: "elevation",
};

function pumpChanges(before: DutyText, after: DutyText): readonly Change[] {
  if (before.pump === undefined || after.pump === undefined) {
    const words = ({ pump }: DutyText): string => (pump === undefined ? "" : pumpWords(pump));
    return changed("Pump", words(before), words(after), before.pump === after.pump);
  }
  return [
    ...eachBox(pumpBoxes("Pump", before.pump, before.unitSet), pumpBoxes("Pump", after.pump, after.unitSet)),
    ...curveChanges("Pump curve", { ...before, pump: before.pump }, { ...after, pump: after.pump }),
  ];
}

function pumpWords({ name, points }: PumpText): string {
  return `${name.trim() === "" ? "without a name" : name.trim()}, ${points.length} points`;
}

function pumpBoxes(of: string, pump: PumpText, unitSet: UnitSetName): readonly Box[] {
  return PUMP_KEYS.map((key) => fieldBox(`${of}: ${PUMP_BOXES[key].label}`, PUMP_BOXES[key], pump[key], unitSet));
}

interface OfPump {
  readonly pump: PumpText;
  readonly unitSet: UnitSetName;
}

/** Its points one by one; of a curve without a point of the other, that alone. */
function curveChanges(label: string, before: OfPump, after: OfPump): readonly Change[] {
  const rows = ({ pump, unitSet }: OfPump): readonly Row[] =>
    pump.points.flatMap((point, i) => {
      const boxes = POINT_COLUMNS.map((column) =>
        fieldBox(CURVE_POINT[column].label, CURVE_POINT[column], point[column], unitSet),
      );
      return rowOf(`${label}, point ${i + 1}`, boxes);
    });
  const [one, other] = [rows(before), rows(after)];
  if (one.some((row) => other.some((next) => isSameRow(row, next)))) return rowChanges(one, other);
  const count = (points: readonly Row[]): string => (points.length === 0 ? "" : `${points.length} points`);
  return one.length + other.length === 0
    ? []
    : [
        {
          label,
          before: count(one),
          after: other.length === 0 ? "" : `${count(other)}, none of them as before`,
          isInternal: false,
        },
      ];
}

function otherPumpChanges(before: DutyText, after: DutyText): readonly Change[] {
  const rows = ({
    otherPumps = [],
    unitSet,
  }: DutyText): readonly { readonly boxes: readonly Box[]; readonly of: OtherPumpText }[] =>
    otherPumps.map((pump, i) => {
      const label = `Further pump ${i + 1}`;
      const own = OWN_KEYS.map((key) =>
        fieldBox(`${label}: ${OWN_BOXES[key].label}`, OWN_BOXES[key], pump[key], unitSet),
      );
      return { boxes: [...pumpBoxes(label, pump, unitSet), ...own], of: pump };
    });
  const [one, other] = [rows(before), rows(after)];
  const curves = (i: number, j: number): readonly Change[] => {
    const [was, is] = [one[i]?.of, other[j]?.of];
    if (was === undefined || is === undefined) return [];
    return curveChanges(
      `Further pump ${j + 1} curve`,
      { pump: was, unitSet: before.unitSet },
      { pump: is, unitSet: after.unitSet },
    );
  };
  const boxes = (i: number, j: number): readonly Change[] => eachBox(one[i]?.boxes ?? [], other[j]?.boxes ?? []);
  const pairs = changedRows(one.length, other.length, (i, j) => boxes(i, j).length + curves(i, j).length === 0);
  return pairs.flatMap(({ before: i, after: j }) => {
    if (i !== undefined && j !== undefined) return [...boxes(i, j), ...curves(i, j)];
    const [was, is] = [one[i ?? -1]?.of, other[j ?? -1]?.of];
    const label = `Further pump ${(j ?? i ?? 0) + 1}`;
    return changed(label, was === undefined ? "" : pumpWords(was), is === undefined ? "" : pumpWords(is), false);
  });
}

function caseRows({ cases = [], unitSet }: DutyText): readonly Row[] {
  return cases.flatMap((one, i) => {
    const boxes = [
      { label: "Name", text: one.name, unitSet },
      fieldBox(CASE_HOURS.label, CASE_HOURS, one.hours, unitSet),
      ...CASE_KEYS.map((key) => fieldBox(CASE_FIELDS[key].label, CASE_FIELDS[key], one.fields[key] ?? "", unitSet)),
    ];
    return rowOf(placeLabel(`cases.${i}`), boxes);
  });
}
