import type { Duty, DutyOtherPump } from "../../duty/duty.ts";
import { isSlurry } from "../../duty/slurry.ts";
import { type Expression, extreme, type Handle, product, type TableOf } from "../expression.ts";
import { CLEAR_LIQUID } from "../field-handles.ts";
import type { PlanItem } from "../plan.ts";
import { PUMPED } from "./as-pumped.ts";
import { otherCells } from "./other-pump-inputs.ts";
import type { PUMP_CURVE } from "./pump.ts";
import { slurryCurveOn } from "./slurry-curve.ts";
import { type OnWater, onWaterAs, viscousCurveIn, viscousHeadRatio, viscousNeedOf } from "./viscous-curve.ts";

type CurveTable = TableOf<(typeof PUMP_CURVE)["columns"][number]["key"]>;

/** A liquid that further pumps run on: that of the duty, or of a case that has its own. */
export interface OtherLiquid {
  /** The duty as it is on that liquid. */
  readonly duty: Duty;
  /** Stands in the names of the tables: nothing for the duty's own. */
  readonly of: "" | `Case${number}`;
  readonly clear: { readonly liquid: Handle; readonly temperature: Handle };
  readonly headRatio: Expression;
  readonly efficiencyRatio: Expression;
}

/** The liquid of the duty. */
export function liquidOfDuty(duty: Duty): OtherLiquid {
  const { headRatio, efficiencyRatio } = PUMPED;
  return { duty, of: "", clear: CLEAR_LIQUID, headRatio, efficiencyRatio };
}

/** The curve of a further pump on a liquid without its solids: as stated, with water, or corrected for a viscous one. */
export function otherOnCarrier(pump: DutyOtherPump, { duty, of }: OtherLiquid): CurveTable {
  const { curve } = otherCells(pump);
  return viscousNeedOf(duty, pump) === "none" ? curve : named(pump, `${of}ViscousCurve`);
}

/** The curve of a further pump on a liquid as pumped: as stated, or brought to the slurry. */
export function otherAsPumped(pump: DutyOtherPump, liquid: OtherLiquid): CurveTable {
  return isSlurry(liquid.duty) ? named(pump, `${liquid.of}SlurryCurve`) : otherOnCarrier(pump, liquid);
}

/** The curves of all further pumps on a liquid, in the workings. */
export function otherCurves(liquid: OtherLiquid): readonly PlanItem[] {
  const { duty, of, clear, headRatio, efficiencyRatio } = liquid;
  return duty.otherPumps.flatMap((pump) => {
    const cells = otherCells(pump);
    const carrier = otherOnCarrier(pump, liquid);
    const whose = pump.name;
    const viscous =
      viscousNeedOf(duty, pump) === "none"
        ? []
        : viscousCurveIn(pump, {
            of: cells,
            table: carrier,
            answer: named(pump, `${of}ViscousAnswer`).key,
            liquid: clear,
            speedRatio: cells.speedRatio,
            whose,
          });
    const table = otherAsPumped(pump, liquid);
    const slurry = isSlurry(duty) ? slurryCurveOn(pump, { whose, table, carrier, headRatio, efficiencyRatio }) : [];
    return [...viscous, ...slurry];
  });
}

/** The curve of a further pump with water, and the liquid without its solids that a function corrects it for. */
export function otherOnWater(pump: DutyOtherPump, { duty, clear }: OtherLiquid): OnWater {
  return onWaterAs(otherCells(pump), pump, duty, clear);
}

/** Head of a further pump in the viscous liquid of the duty over that with water; undefined where it is not viscous. */
export function otherViscousHeadRatio(duty: Duty, pump: DutyOtherPump): Expression | undefined {
  const { curve } = otherCells(pump);
  return viscousHeadRatio(duty, pump, { curve, answer: named(pump, "ViscousAnswer").key });
}

function named(pump: DutyOtherPump, of: string): CurveTable {
  return { ...otherCells(pump).curve, key: `otherPump${pump.index + 1}${of}` };
}

/** The last flow of a further pump as it runs, by its curve on some liquid. */
export function otherLastFlow(pump: DutyOtherPump, curve: CurveTable): Expression {
  const { speedRatio, trimRatio } = otherCells(pump);
  return product(extreme("columnGreatest", curve, "flow", ""), speedRatio, trimRatio);
}
