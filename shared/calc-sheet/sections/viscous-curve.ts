import { kinematicViscosityOf } from "../../../src/liquid/liquid.ts";
import { type ViscousNeed, viscousNeed } from "../../../src/pump/viscous-correction.ts";
import { viscousPumpCurve } from "../../../src/pump/viscous-curve.ts";
import { VISCOUSCURVE } from "../../catalogue/entries/pump.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { stateAsPumped } from "../../duty/slurry.ts";
import {
  type ColumnOf,
  callOf,
  cell,
  constant,
  type Expression,
  type Handle,
  part,
  product,
  range,
  ratio,
  spillOf,
  type TableOf,
} from "../expression.ts";
import { CLEAR_LIQUID } from "../field-handles.ts";
import { type ColumnFacts, type PlanItem, spill, working } from "../plan.ts";
import { PUMP, PUMP_CURVE } from "./pump.ts";

type CurveKey = ColumnOf<typeof PUMP_CURVE>;

export const VISCOUS_CURVE: TableOf<CurveKey> = { ...PUMP_CURVE, key: "viscousCurve" };

const CORRECTED = spillOf("viscousCurveAnswer", VISCOUSCURVE);

/** Whether the liquid, without its solids, changes the curve of the pump; nothing where the liquid cannot be read. */
export function viscousNeedOf(duty: Duty, pump: DutyPump): ViscousNeed {
  const state = stateAsPumped(duty);
  if (!state.ok) return "none";
  const { bestEfficiency } = pump.curve;
  // At the slower of both speeds the liquid tells more.
  const speed = pump.speed === undefined ? undefined : pump.speed * Math.min(1, pump.speedRatio);
  return viscousNeed(kinematicViscosityOf(state.value), bestEfficiency, speed);
}

/** The cells a pump is stated in: its curve with water, and the speed and impeller of it. */
export interface StatedCells {
  readonly curve: TableOf<CurveKey>;
  readonly speed: Handle;
  readonly trimRatio: Handle;
}

/** A viscous liquid and the speed it is pumped at, and where the curve in it stands. */
interface Viscous {
  readonly of: StatedCells;
  readonly table: TableOf<CurveKey>;
  readonly answer: string;
  readonly liquid: { readonly liquid: Handle; readonly temperature: Handle };
  readonly speedRatio: Handle;
  /** Whose curve it is, in words. */
  readonly whose: string;
}

/** The cells of the chosen pump. */
export const CHOSEN: StatedCells = { curve: PUMP_CURVE, speed: PUMP.curveSpeed, trimRatio: PUMP.trimRatio };

/** The curve corrected for a viscous liquid, at the speed and impeller of the curve with water beside it. */
export function viscousCurve(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  if (viscousNeedOf(duty, pump) === "none") return [];
  return viscousCurveIn(pump, {
    of: CHOSEN,
    table: VISCOUS_CURVE,
    answer: CORRECTED.key,
    liquid: CLEAR_LIQUID,
    speedRatio: PUMP.speedRatio,
    whose: "one pump",
  });
}

export function viscousCurveIn(
  pump: DutyPump,
  { of, table, answer, liquid, speedRatio, whose }: Viscous,
): readonly PlanItem[] {
  const corrected = spillOf(answer, VISCOUSCURVE);
  const { points, bestEfficiency, npshRequired } = pump.curve;
  const call = callOf(VISCOUSCURVE, {
    curve: range(of.curve),
    // Without a speed the function says what it lacks, and so does all that reads the curve.
    speed: pump.speed === undefined ? constant("") : of.speed,
    speedRatio,
    trimRatio: of.trimRatio,
    ...liquid,
  });
  const column = (key: CurveKey, label: string): ColumnFacts<CurveKey> => [
    key,
    label,
    (row) => (isBlank(key, row, points) ? null : inOwnUnit(key, part(corrected, key, row))),
  ];
  return [
    spill(corrected, `Curve of ${whose} in the viscous liquid, as answered`, call, points.length + 1),
    working(table, `Curve of ${whose} in the viscous liquid`, points.length, [
      column("flow", "flow"),
      column("head", "head"),
      ...(bestEfficiency === undefined ? [] : [column("efficiency", "efficiency")]),
      ...(npshRequired === undefined ? [] : [column("npshRequired", "NPSHR")]),
    ]),
  ];
}

/** The table of a curve holds efficiency in per cent, the function answers a fraction. */
function inOwnUnit(key: CurveKey, of: Expression): Expression {
  return key === "efficiency" ? product(of, constant(100)) : of;
}

/** What keeps the curve from being known in this liquid, in words; nothing where it is known. */
export function viscousOpen(duty: Duty, pump: DutyPump): string | undefined {
  switch (viscousNeedOf(duty, pump)) {
    case "none":
      return undefined;
    case "speed":
      return "speed of the curve not stated: without it the curve cannot be corrected for so thick a liquid";
    case "efficiency":
      return "efficiency of the curve not stated: without it the curve cannot be corrected for so thick a liquid";
    case "correction":
      return isBeyondMethod(duty, pump)
        ? "the liquid is too thick for the method of ANSI/HI 9.6.7: ask the maker for a test"
        : undefined;
  }
}

function isBeyondMethod(duty: Duty, { curve, speed, speedRatio, trimRatio }: DutyPump): boolean {
  const state = stateAsPumped(duty);
  if (!state.ok || speed === undefined) return false;
  const kinematicViscosity = kinematicViscosityOf(state.value);
  const corrected = viscousPumpCurve({ curve, speed, speedRatio, trimRatio, kinematicViscosity });
  return corrected.findings.some(({ code }) => code === "viscosity-beyond-method");
}

/** Head in the viscous liquid over that with water at best efficiency: the standard's ratio of flows is the same. */
export function viscousHeadRatio(
  duty: Duty,
  pump: DutyPump,
  { curve, answer } = { curve: PUMP_CURVE, answer: CORRECTED.key },
): Expression | undefined {
  if (viscousNeedOf(duty, pump) === "none") return undefined;
  const last = pump.curve.points.length - 1;
  return ratio(part(spillOf(answer, VISCOUSCURVE), "flow", last), cell(curve, last, "flow"));
}

function isBlank(key: CurveKey, row: number, points: DutyPump["curve"]["points"]): boolean {
  return (key === "efficiency" || key === "npshRequired") && points[row]?.[key] === undefined;
}

/** How a function reads a curve with water that it corrects for a thick liquid itself, so as not to wait for it. */
export interface OnWater {
  readonly curve: Expression;
  readonly speedRatio: Expression;
  readonly trimRatio: Expression;
  readonly curveSpeed?: Expression;
  readonly liquid?: Expression;
  readonly temperature?: Expression;
}

export function onWaterAs(
  { curve, speed, speedRatio, trimRatio }: StatedCells & { readonly speedRatio: Handle },
  pump: DutyPump | undefined,
  duty: Duty,
  liquid: Viscous["liquid"],
): OnWater {
  const isThick = pump !== undefined && viscousNeedOf(duty, pump) !== "none";
  return {
    curve: range(curve),
    speedRatio,
    trimRatio,
    // Without a speed the function says what it lacks.
    ...(isThick && { ...liquid, curveSpeed: pump.speed === undefined ? constant("") : speed }),
  };
}
