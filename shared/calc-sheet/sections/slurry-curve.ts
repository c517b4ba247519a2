import type { Duty, DutyPump } from "../../duty/duty.ts";
import { isSlurry } from "../../duty/slurry.ts";
import { type ColumnOf, cell, type Expression, product, range, ratio, type TableOf } from "../expression.ts";
import { CLEAR_LIQUID } from "../field-handles.ts";
import { type ColumnFacts, type PlanItem, working } from "../plan.ts";
import { PUMPED } from "./as-pumped.ts";
import { PUMP, PUMP_CURVE } from "./pump.ts";
import { CHOSEN, type OnWater, onWaterAs, VISCOUS_CURVE, viscousNeedOf } from "./viscous-curve.ts";

type CurveKey = ColumnOf<typeof PUMP_CURVE>;

const SLURRY_CURVE: TableOf<CurveKey> = { ...PUMP_CURVE, key: "slurryCurve" };

/** The curve of one pump on the liquid as pumped: as stated, or brought to the slurry. */
export function curveAsPumped(duty: Duty): TableOf<CurveKey> {
  return isSlurry(duty) ? SLURRY_CURVE : curveOnCarrier(duty);
}

/** The curve of one pump on the liquid without its solids: as stated, with water, or corrected for a viscous one. */
export function curveOnCarrier(duty: Duty): TableOf<CurveKey> {
  return duty.pump !== undefined && viscousNeedOf(duty, duty.pump) !== "none" ? VISCOUS_CURVE : PUMP_CURVE;
}

/** How a curve is read: of one pump as it runs. */
export function readCurve(
  duty: Duty,
  on: "pumped" | "carrier" = "pumped",
): { readonly curve: Expression; readonly speedRatio: Expression; readonly trimRatio: Expression } {
  return {
    curve: range(on === "pumped" ? curveAsPumped(duty) : curveOnCarrier(duty)),
    speedRatio: PUMP.speedRatio,
    trimRatio: PUMP.trimRatio,
  };
}

/** The curve of the chosen pump with water, and the liquid without its solids that a function corrects it for. */
export function onWater(duty: Duty): OnWater {
  const cells = { ...CHOSEN, speedRatio: PUMP.speedRatio };
  return onWaterAs(cells, duty.pump, duty, CLEAR_LIQUID);
}

const LABELS: Readonly<Record<CurveKey, string>> = {
  flow: "flow",
  head: "head",
  efficiency: "efficiency",
  npshRequired: "NPSHR",
};

/** A slurry's curve: where it stands, what it is made of, and what the pump keeps of its head and efficiency. */
export interface OnSlurry {
  /** Whose curve it is, in words. */
  readonly whose: string;
  readonly table: TableOf<CurveKey>;
  readonly carrier: TableOf<CurveKey>;
  readonly headRatio: Expression;
  readonly efficiencyRatio: Expression;
}

function asOnSlurry({ headRatio, efficiencyRatio }: OnSlurry, key: CurveKey, own: Expression): Expression {
  if (key === "head") return product(own, headRatio);
  if (key === "efficiency") return product(own, efficiencyRatio);
  return key === "npshRequired" ? ratio(own, headRatio) : own;
}

/** The curve on the slurry, in head of slurry: head and efficiency times their ratios, NPSH required over the head ratio. */
export function slurryCurve(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  if (!isSlurry(duty)) return [];
  const { headRatio, efficiencyRatio } = PUMPED;
  return slurryCurveOn(pump, {
    whose: "one pump",
    table: SLURRY_CURVE,
    carrier: curveOnCarrier(duty),
    headRatio,
    efficiencyRatio,
  });
}

export function slurryCurveOn({ curve: { points } }: DutyPump, slurry: OnSlurry): readonly PlanItem[] {
  const columns = PUMP_CURVE.columns.filter(
    ({ key }) => key === "flow" || key === "head" || points.some((point) => point[key] !== undefined),
  );
  return [
    working(
      slurry.table,
      `Curve of ${slurry.whose} on the slurry`,
      points.length,
      columns.map(({ key }): ColumnFacts<CurveKey> => {
        const own = (row: number) => cell(slurry.carrier, row, key);
        return [
          key,
          LABELS[key],
          (row) => (points[row]?.[key] === undefined ? null : asOnSlurry(slurry, key, own(row))),
        ];
      }),
    ),
  ];
}
