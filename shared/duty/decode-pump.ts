import { checkInputs, outOfRange } from "../../src/basis/method.ts";
import { type Quantity, UNIT_SETS, type UnitSetName } from "../../src/basis/quantities.ts";
import { readNumber, splitAmount } from "../../src/basis/quantity-text.ts";
import { type Finding, fail, type Result } from "../../src/basis/result.ts";
import { operatingPointMethod } from "../../src/pump/operating-point.ts";
import type { PumpCurve } from "../../src/pump/pump-curve.ts";
import { runningPumpMethod } from "../../src/pump/running-pump.ts";
import { readCurve } from "../catalogue/parameters/curve.ts";
import type { Cell } from "../cells/cell.ts";
import type { DutyPump } from "./duty.ts";
import { CURVE_PLACE, type CurvePointText, type PumpKey, type PumpText, placeKey } from "./duty-text.ts";
import { readAmount } from "./read-amount.ts";

/** Keeps the findings of a reading at its place and hands its value on. */
export type Keep = <T>(place: string, result: Result<T>) => T | undefined;

/** In the order in which a curve without headings is read. */
const COLUMNS = ["flow", "head", "efficiency", "npshRequired"] as const satisfies readonly (keyof CurvePointText)[];

const QUANTITIES = {
  flow: "flow",
  head: "head",
  efficiency: "ratio",
  npshRequired: "head",
} as const satisfies Readonly<Record<keyof CurvePointText, Quantity>>;

/** As the reader of curves calls its columns. */
const COLUMN_NAMES = { flow: "flow", head: "head", efficiency: "efficiency", npshRequired: "NPSHR" } as const;

const CURVE_NAME = "pump curve";

/** Whether nothing was typed of a pump: it is then not chosen. */
export function isBlankPump({
  name,
  speed,
  impellerDiameter,
  points,
  speedRatio,
  trimRatio,
  count,
}: PumpText): boolean {
  return (
    [name, speed, impellerDiameter, speedRatio, trimRatio, count].every((text) => text.trim() === "") &&
    points.every(isBlankPoint)
  );
}

function isBlankPoint(point: CurvePointText): boolean {
  return COLUMNS.every((column) => point[column].trim() === "");
}

/** Reads the chosen pump, its curve as the cell functions read one. Nothing where a box of it is wrong. */
export function decodePump(typed: PumpText, unitSet: UnitSetName, keep: Keep): DutyPump | undefined {
  let complete = true;
  function read<T>(place: string, result: Result<T>): T | undefined {
    if (!result.ok) complete = false;
    return keep(place, result);
  }

  function positive(key: PumpKey, quantity: Quantity, label: string): number | undefined {
    if (typed[key].trim() === "") return undefined;
    const place = placeKey({ pump: key });
    const value = read(place, readAmount(typed[key], quantity, unitSet, label));
    if (value === undefined || value > 0) return value;
    return read(place, fail([outOfRange(label, quantity, value, "above", 0)]));
  }

  function ratio(key: "speedRatio" | "trimRatio"): number {
    if (typed[key].trim() === "") return 1;
    const place = placeKey({ pump: key });
    const { name } = runningPumpMethod.inputs[key];
    const value = read(place, readAmount(typed[key], "ratio", unitSet, name));
    if (value === undefined) return 1;
    const checked = checkInputs(runningPumpMethod, { speedRatio: 1, trimRatio: 1, [key]: value });
    if (!checked.ok) read(place, checked);
    return value;
  }

  function howMany(): number {
    if (typed.count.trim() === "") return 1;
    const place = placeKey({ pump: "count" });
    const pumps = read(place, readNumber(typed.count, "number of pumps"));
    if (pumps === undefined) return 1;
    const checked = checkInputs(operatingPointMethod, { pumps });
    if (!checked.ok) read(place, checked);
    else if (!Number.isInteger(pumps)) {
      const found = { quantity: "ratio", value: pumps } as const;
      read(place, fail([{ code: "not-a-whole-number", severity: "error", subject: "number of pumps", found }]));
    }
    return pumps;
  }

  function curveOf(): PumpCurve | undefined {
    if (typed.points.every(isBlankPoint)) {
      const suggestions = ["three rows or more of flow and head, and where known efficiency and NPSHR"];
      const place = placeKey({ pump: "points", row: 0, column: "flow" });
      return read(place, fail([{ code: "left-out", severity: "error", subject: CURVE_NAME, suggestions }]));
    }
    const cells: Cell[][] = typed.points.map((point, row) =>
      COLUMNS.map((column) => {
        const place = placeKey({ pump: "points", row, column });
        return read(place, cellOf(point[column], QUANTITIES[column], COLUMN_NAMES[column])) ?? null;
      }),
    );
    if (!complete) return undefined;
    const result = readCurve(cells, { name: CURVE_NAME, unitSet, units: UNIT_SETS[unitSet] });
    const byPlace = new Map<string, Finding[]>();
    for (const finding of result.findings) {
      const place = placeOf(finding);
      byPlace.set(place, [...(byPlace.get(place) ?? []), finding]);
    }
    for (const [place, findings] of byPlace) keep(place, { ...result, findings } as Result<PumpCurve>);
    if (!result.ok) complete = false;
    return result.ok ? result.value : undefined;
  }

  const curve = curveOf();
  const speed = positive("speed", "speed", "speed of the curve");
  const impellerDiameter = positive("impellerDiameter", "size", "impeller diameter of the curve");
  const speedRatio = ratio("speedRatio");
  const trimRatio = ratio("trimRatio");
  const count = howMany();
  if (!complete || curve === undefined) return undefined;
  const { arrangement } = typed;
  return { typed, name: typed.name.trim(), speed, impellerDiameter, curve, speedRatio, trimRatio, count, arrangement };
}

/** What a cell would hold: a number in the unit set, or the text with its own unit once it can be read. */
function cellOf(given: string, quantity: Quantity, subject: string): Result<Cell> {
  const text = given.trim();
  if (text === "") return { ok: true, value: null, findings: [] };
  const parts = splitAmount(text);
  if (parts !== undefined && parts.unit === "") return readNumber(parts.number, subject);
  const checked = readAmount(text, quantity, "SI", subject);
  return checked.ok ? { ...checked, value: text } : checked;
}

/** The box a finding of the curve's reader is about: "pump curve row 3: head" is row 2, head. */
function placeOf({ subject }: Finding): string {
  const match = /^pump curve row (\d+)(?:: (.+))?$/.exec(subject);
  if (match === null) return CURVE_PLACE;
  const row = Number(match[1]) - 1;
  const column = COLUMNS.find((key) => COLUMN_NAMES[key] === match[2]) ?? "flow";
  return placeKey({ pump: "points", row, column });
}
