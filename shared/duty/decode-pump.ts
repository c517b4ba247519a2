import type { UnitSetName } from "../../src/basis/quantities.ts";
import { type Finding, fail } from "../../src/basis/result.ts";
import { type PumpCurve, pumpCurve } from "../../src/pump/pump-curve.ts";
import { orderErrors, pointErrors } from "../../src/pump/pump-curve-checks.ts";
import type { PumpCurvePoint } from "../../src/pump/pump-curve-point.ts";
import { withEfficiencyAsFraction } from "../catalogue/parameters/curve.ts";
import { decodeField, type Keep, leftOut } from "./decode-field.ts";
import type { DutyOtherPump, DutyPump } from "./duty.ts";
import {
  type CurvePointText,
  curvePlace,
  type OtherPumpText,
  type OwnKey,
  type PumpKey,
  type PumpText,
  placeKey,
} from "./duty-text.ts";
import type { Field } from "./field.ts";
import { CURVE_POINT, OWN_BOXES, POINT_COLUMNS, PUMP_BOXES } from "./fields/pump.ts";

const CURVE_NAME = "pump curve";

/** What was typed of a further pump; nothing where it cannot be read. */
function decodeOtherPump(
  typed: OtherPumpText,
  unitSet: UnitSetName,
  keep: Keep,
  index: number,
): DutyOtherPump | undefined {
  const pump = decodePump(typed, unitSet, keep, index);
  const own = <T>(key: OwnKey, field: Field<T>): T | undefined =>
    keep(placeKey({ own: key, other: index }), decodeField(field, typed[key], unitSet));
  const level = own("level", OWN_BOXES.level);
  const checkValve = own("checkValve", OWN_BOXES.checkValve);
  const names = (["suctionSize", "dischargeSize", "flangeClass"] as const).map((key) => {
    return typed[key].trim() === "" || own(key, OWN_BOXES[key]) !== undefined;
  });
  if (pump === undefined || level === undefined || checkValve === undefined || names.includes(false)) return undefined;
  return { ...pump, typed, index, level, hasCheckValve: checkValve === "yes" };
}

/**
 * The further pumps, those of which nothing was typed left out; undefined where one of them cannot be read, or has the
 * name of another pump, by which the sheet tells them apart.
 */
export function decodeOtherPumps(
  typed: readonly OtherPumpText[],
  chosen: string,
  unitSet: UnitSetName,
  keep: Keep,
): readonly DutyOtherPump[] | undefined {
  const names = new Set([chosen.trim().toLowerCase()]);
  let isWhole = true;
  const read = typed.flatMap((one, index): readonly DutyOtherPump[] => {
    if (isBlankPump(one)) return [];
    const pump = decodeOtherPump(one, unitSet, keep, index);
    const name = nameOfOther(one, index).toLowerCase();
    if (names.has(name)) {
      const place = placeKey({ pump: "name", other: index });
      const twice: Finding = { code: "pump-named-twice", kind: "error", subject: "pump", given: one.name.trim() };
      keep(place, fail([twice]));
    }
    isWhole &&= pump !== undefined && !names.has(name);
    names.add(name);
    return pump === undefined ? [] : [{ ...pump, name: nameOfOther(one, index) }];
  });
  return isWhole ? read : undefined;
}

/** What the sheet calls a further pump. */
function nameOfOther({ name }: OtherPumpText, index: number): string {
  return name.trim() === "" ? `further pump ${index + 1}` : name.trim();
}

/** Whether nothing was typed of a pump: it is then not chosen. */
export function isBlankPump({ points, selectedFor: _, ...boxes }: PumpText): boolean {
  return Object.values(boxes).every((text) => text.trim() === "") && points.every(isBlankPoint);
}

export function isBlankPoint(point: CurvePointText): boolean {
  return POINT_COLUMNS.every((column) => point[column].trim() === "");
}

/** Reads the chosen pump, its curve as the cell functions read one. Nothing where a box of it is wrong. */
export function decodePump(typed: PumpText, unitSet: UnitSetName, keep: Keep, other?: number): DutyPump | undefined {
  let isWrong = false;
  const note: Keep = (place, result) => {
    isWrong ||= !result.ok;
    return keep(place, result);
  };
  const box = <T>(pump: PumpKey, field: Field<T>): T | undefined =>
    note(placeKey({ pump, other }), decodeField(field, typed[pump], unitSet));
  const curve = decodeCurve(typed.points, unitSet, note, other);
  const name = box("name", PUMP_BOXES.name) ?? "";
  const speed = box("speed", PUMP_BOXES.speed);
  const impellerDiameter = box("impellerDiameter", PUMP_BOXES.impellerDiameter);
  const speedRatio = box("speedRatio", PUMP_BOXES.speedRatio);
  const trimRatio = box("trimRatio", PUMP_BOXES.trimRatio);
  if (isWrong || curve === undefined || speedRatio === undefined || trimRatio === undefined) return undefined;
  return { typed, name, speed, impellerDiameter, curve, speedRatio, trimRatio };
}

function decodeCurve(
  typed: readonly CurvePointText[],
  unitSet: UnitSetName,
  keep: Keep,
  other: number | undefined,
): PumpCurve | undefined {
  let isWrong = false;
  const note: Keep = (place, result) => {
    isWrong ||= !result.ok;
    return keep(place, result);
  };
  const placeOf = (row: number, column: keyof CurvePointText): string =>
    placeKey({ pump: "points", row, column, other });
  const filled = typed.flatMap((texts, row) => (isBlankPoint(texts) ? [] : [{ texts, row }]));
  const labels = filled.map(({ row }) => `${CURVE_NAME} row ${row + 1}`);
  if (filled.length === 0) {
    const wanted = "three rows or more of flow and head, and where known efficiency and NPSH required";
    return note(placeOf(0, "flow"), leftOut(CURVE_NAME, wanted));
  }
  const rows = filled.map(({ texts, row }, i) => {
    const figures: { -readonly [K in keyof PumpCurvePoint]?: number } = {};
    for (const column of POINT_COLUMNS) {
      const field = CURVE_POINT[column];
      const subject = `${labels[i]}: ${field.label}`;
      const figure = note(placeOf(row, column), decodeField(field, texts[column], unitSet, subject));
      if (figure !== undefined) figures[column] = figure;
    }
    return figures;
  });
  if (isWrong) return undefined;
  const points = note(
    curvePlace(other),
    withEfficiencyAsFraction(rows as readonly PumpCurvePoint[], labels, CURVE_NAME),
  );
  if (points === undefined) return undefined;
  for (const [i, { row }] of filled.entries()) {
    // Each figure keeps its own bounds: what is left is efficiency, over the whole column and at zero flow.
    const wrong = pointErrors(points.slice(i, i + 1), labels.slice(i));
    if (wrong.length > 0) note(placeOf(row, "efficiency"), fail(wrong));
    const outOfOrder = i === 0 ? [] : orderErrors(points.slice(i - 1, i + 1), labels.slice(i - 1));
    if (outOfOrder.length > 0) note(placeOf(row, "flow"), fail(outOfOrder));
  }
  return isWrong ? undefined : note(curvePlace(other), pumpCurve({ points, subject: CURVE_NAME, labels }));
}
