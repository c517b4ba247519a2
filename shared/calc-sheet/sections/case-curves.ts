import { ASPUMPED } from "../../catalogue/entries/as-pumped.ts";
import type { Duty, DutyCase, DutyPump } from "../../duty/duty.ts";
import { isSlurry } from "../../duty/slurry.ts";
import { callOf, part, ratio, spillOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type PlanItem, spill } from "../plan.ts";
import { caseCell } from "./case-inputs.ts";
import type { DutyState } from "./duty-cases.ts";
import { type OtherLiquid, otherAsPumped, otherCurves } from "./other-curves.ts";
import { PUMP, PUMP_CURVE } from "./pump.ts";
import { type OnSlurry, slurryCurveOn } from "./slurry-curve.ts";
import { CHOSEN, viscousCurveIn, viscousNeedOf } from "./viscous-curve.ts";

/** Whether the liquid of the case, or the speed a viscous one is pumped at, gives the pump a curve of its own. */
function hasOwnCurve(duty: Duty, { given, duty: own }: DutyCase): boolean {
  if (duty.pump === undefined) return false;
  if (given.includes("liquid") || given.includes("temperature")) return true;
  return given.includes("speedRatio") && own.pump !== undefined && viscousNeedOf(own, own.pump) !== "none";
}

const named = (duty: Duty, one: DutyCase, what: string): string => `case${duty.cases.indexOf(one) + 1}${what}`;

/** Without its solids: as stated, with water, or corrected for a viscous liquid. */
function carrierOf(duty: Duty, one: DutyCase): typeof PUMP_CURVE {
  const { pump } = one.duty;
  if (pump === undefined || viscousNeedOf(one.duty, pump) === "none") return PUMP_CURVE;
  return { ...PUMP_CURVE, key: named(duty, one, "ViscousCurve") };
}

function onSlurry(duty: Duty, one: DutyCase): OnSlurry {
  const record = spillOf(named(duty, one, "AsPumped"), ASPUMPED);
  return {
    whose: "one pump",
    table: { ...PUMP_CURVE, key: named(duty, one, "SlurryCurve") },
    carrier: carrierOf(duty, one),
    headRatio: part(record, "headRatio"),
    efficiencyRatio: part(record, "efficiencyRatio"),
  };
}

/** The liquid of the case for further pumps; undefined where it is that of the duty. */
function otherLiquidOf(duty: Duty, one: DutyCase): OtherLiquid | undefined {
  if (!one.given.includes("liquid") && !one.given.includes("temperature")) return undefined;
  const record = spillOf(named(duty, one, "AsPumped"), ASPUMPED);
  return {
    duty: one.duty,
    of: `Case${duty.cases.indexOf(one) + 1}`,
    clear: clearLiquidOf(duty, one),
    headRatio: part(record, "headRatio"),
    efficiencyRatio: part(record, "efficiencyRatio"),
  };
}

function clearLiquidOf(duty: Duty, one: DutyCase): OtherLiquid["clear"] {
  return {
    liquid: caseCell(duty, one, "liquid") ?? FIELD.liquid,
    temperature: caseCell(duty, one, "temperature") ?? FIELD.temperature,
  };
}

/** The curve of the pump in the liquid of the case, and how its head is brought to the curve without solids. */
export function caseCurve(
  duty: Duty,
  one: DutyCase,
  normal: DutyState,
): Pick<DutyState, "curve" | "carrier" | "toCarrier" | "otherCurve"> {
  const { curve, carrier: asNormal, toCarrier } = normal;
  const liquid = otherLiquidOf(duty, one);
  const otherCurve: DutyState["otherCurve"] =
    liquid === undefined ? normal.otherCurve : (pump) => otherAsPumped(pump, liquid);
  if (!hasOwnCurve(duty, one)) return { curve, carrier: asNormal, toCarrier, otherCurve };
  const carrier = carrierOf(duty, one);
  if (!isSlurry(duty))
    return { curve: { table: carrier, drawn: carrier }, carrier, toCarrier: (head) => head, otherCurve };
  const { table, headRatio } = onSlurry(duty, one);
  return { curve: { table, drawn: table }, carrier, toCarrier: (head) => ratio(head, headRatio), otherCurve };
}

/** The curves that the cases have of their own, in the workings. */
export function caseCurves(duty: Duty, pump: DutyPump, states: readonly DutyState[]): readonly PlanItem[] {
  return duty.cases.flatMap((one, row) => {
    const { liquid, speedRatio } = states[row] as DutyState;
    const own = one.duty.pump;
    if (!hasOwnCurve(duty, one) || own === undefined) return [];
    const others = otherLiquidOf(duty, one);
    const viscous = viscousCurveIn(pump, {
      of: CHOSEN,
      table: carrierOf(duty, one),
      answer: named(duty, one, "ViscousAnswer"),
      liquid: clearLiquidOf(duty, one),
      speedRatio: one.given.includes("speedRatio") ? speedRatio : PUMP.speedRatio,
      whose: "one pump",
    });
    return [
      ...(viscousNeedOf(one.duty, own) === "none" ? [] : viscous),
      ...(isSlurry(duty)
        ? [
            spill(
              spillOf(named(duty, one, "AsPumped"), ASPUMPED),
              `Liquid as pumped: ${one.name}`,
              callOf(ASPUMPED, liquid),
            ),
            ...slurryCurveOn(pump, onSlurry(duty, one)),
          ]
        : []),
      ...(others === undefined ? [] : otherCurves(others)),
    ];
  });
}
