import { ASPUMPED } from "../../catalogue/entries/as-pumped.ts";
import { SLURRYCLASS } from "../../catalogue/entries/slurry-duty.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { callOf, type Expression, handle, part, product, ratio, spillOf } from "../expression.ts";
import { LIQUID } from "../field-handles.ts";
import { type PlanItem, remark, spill } from "../plan.ts";
import { onWater } from "./as-pumped.ts";
import { IN_SERIES } from "./drawn-curves.ts";
import { asStated, isStation } from "./duty-cases.ts";
import { POINT } from "./operating-point.ts";
import { otherCells } from "./other-pump-inputs.ts";
import { PUMP } from "./pump.ts";
import { stationHeadOf } from "./station-states.ts";

/** A pump that the slurry goes through: how its cells and lines are told from those of others. */
interface OnSlurry {
  readonly pump: DutyPump;
  readonly key: string;
  readonly of: string;
  readonly impeller: Expression;
  readonly speed: Expression;
  /** At the duty flow, of one pump, with water. */
  readonly head: Expression;
}

/** What the slurry does to pumps known on water, and the class of service each is for. */
export function slurryOnThePump(duty: Duty): readonly PlanItem[] {
  const pumps = pumpsOf(duty);
  if (pumps.length === 0) return [remark(handle("slurryDutyNotes", null), NOTES, callOf(ASPUMPED, LIQUID))];
  return pumps.flatMap((one) => {
    const { pump, key, of, impeller } = one;
    const hasImpeller = pump.impellerDiameter !== undefined;
    const call = callOf(ASPUMPED, { ...LIQUID, ...(hasImpeller && { impellerDiameter: impeller }) });
    return [
      remark(handle(`slurryDutyNotes${key}`, null), `${NOTES}${of}`, call),
      ...(pump.speed !== undefined && hasImpeller ? serviceClasses(one) : []),
    ];
  });
}

const NOTES = "Head and power on slurry";

function pumpsOf(duty: Duty): readonly OnSlurry[] {
  const { pump, otherPumps } = duty;
  if (pump === undefined) return [];
  const isSeveral = isStation(asStated(duty), duty);
  const headOf = (i: number): Expression => onWater(duty, stationHeadOf(i));
  const chosen: OnSlurry = {
    pump,
    key: "",
    of: isSeveral ? ", selected pump" : "",
    impeller: PUMP.runningDiameter,
    speed: PUMP.runningSpeed,
    head: isSeveral ? headOf(0) : ratio(POINT.headAtDuty, IN_SERIES),
  };
  const others = otherPumps.map((other, i): OnSlurry => {
    const { speed, speedRatio, impellerDiameter, trimRatio } = otherCells(other);
    return {
      pump: other,
      key: `Other${other.index + 1}`,
      of: `, ${other.name}`,
      impeller: product(impellerDiameter, trimRatio),
      speed: product(speed, speedRatio),
      head: headOf(i + 1),
    };
  });
  return [chosen, ...others];
}

const CLASSES = ["1, light", "2, medium", "3, heavy", "4, very heavy"] as const;

const CLASS_COLUMNS = [
  { key: "tipSpeed", label: "tip speed", quantity: "velocity" },
  { key: "verdict", label: "this pump at the duty flow" },
  { key: "head", label: "maximum head", quantity: "head" },
  { key: "metal", label: "tip speed, metal", quantity: "velocity" },
  { key: "elastomer", label: "elastomer", quantity: "velocity" },
] as const;

function serviceClasses({ key, of, head, impeller, speed }: OnSlurry): readonly PlanItem[] {
  const service = spillOf(`slurryService${key}`, SLURRYCLASS);
  const served = callOf(SLURRYCLASS, { headPerStage: head, impellerDiameter: impeller, speed });
  return [
    spill(service, `Slurry service classes${of}`, served, CLASSES.length + 1),
    {
      kind: "table",
      key: `serviceClasses${key}`,
      heading: `service class${of}`,
      columns: CLASS_COLUMNS,
      rows: CLASSES.map((label, row) => ({
        label,
        cells: CLASS_COLUMNS.map(({ key: column }) => part(service, column, row)),
      })),
    },
    remark(handle(`slurryServiceNotes${key}`, null), `Service class${of}`, served),
  ];
}
