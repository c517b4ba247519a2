import type { Duty, DutyOtherPump } from "../../duty/duty.ts";
import { type OwnKey, type PumpKey, placeKey } from "../../duty/duty-text.ts";
import { OWN_BOXES, PUMP_BOXES } from "../../duty/fields/pump.ts";
import { type Expression, extreme, type Handle, handle, product, type TableOf } from "../expression.ts";
import type { InputItem, PlanItem } from "../plan.ts";
import { curveInput, PUMP_CURVE } from "./pump.ts";
import { generalBasis, statedNumber } from "./stated-input.ts";

/** The input cells of a further pump. */
export interface OtherCells {
  readonly name: Handle;
  readonly speed: Handle;
  readonly impellerDiameter: Handle;
  readonly speedRatio: Handle;
  readonly trimRatio: Handle;
  readonly level: Handle;
  readonly checkValve: Handle;
  readonly suctionSize: Handle;
  readonly dischargeSize: Handle;
  readonly flangeClass: Handle;
  readonly curve: TableOf<(typeof PUMP_CURVE)["columns"][number]["key"]>;
}

export function otherCells({ index }: DutyOtherPump): OtherCells {
  const key = (of: string): string => `otherPump${index + 1}${of}`;
  return {
    name: handle(key("Name"), null),
    speed: handle(key("Speed"), "speed"),
    impellerDiameter: handle(key("Diameter"), "size"),
    speedRatio: handle(key("SpeedRatio"), null),
    trimRatio: handle(key("TrimRatio"), null),
    level: handle(key("Level"), "head"),
    checkValve: handle(key("CheckValve"), null),
    suctionSize: handle(key("SuctionSize"), null),
    dischargeSize: handle(key("DischargeSize"), null),
    flangeClass: handle(key("FlangeClass"), null),
    curve: { ...PUMP_CURVE, key: key("Curve") },
  };
}

/** The greatest head of its curve as it runs. */
export function otherGreatestHead(pump: DutyOtherPump): Expression {
  const { curve, speedRatio, trimRatio } = otherCells(pump);
  return product(extreme("columnGreatest", curve, "head", ""), speedRatio, speedRatio, trimRatio, trimRatio);
}

/** Each further pump with its curve, as inputs. */
export function otherPumpInputs(duty: Duty): readonly PlanItem[] {
  return duty.otherPumps.flatMap((pump, i): readonly PlanItem[] => [
    { kind: "section", id: "furtherPump", text: `Further pump ${i + 1}` },
    ...inputsOf(duty, pump),
    curveInput(
      duty,
      pump,
      otherCells(pump).curve,
      "One pump at the speed and impeller of the curve, with water.",
      pump.index,
    ),
  ]);
}

function inputsOf(duty: Duty, pump: DutyOtherPump): readonly InputItem[] {
  const { typed, index, name, level, hasCheckValve } = pump;
  const cells = otherCells(pump);
  const basisOf = (key: PumpKey | OwnKey): string => generalBasis(typed[key]);
  const placeOf = (key: PumpKey | OwnKey): string =>
    placeKey(key in OWN_BOXES ? { own: key as OwnKey, other: index } : { pump: key as PumpKey, other: index });
  const words = (of: Handle, label: string, key: PumpKey | OwnKey, value: string, basis: string): InputItem => {
    return { kind: "input", key: of.key, box: placeOf(key), label, value, basis };
  };
  const number = (of: Handle, label: string, key: PumpKey | OwnKey, value: number | undefined): readonly InputItem[] =>
    value === undefined
      ? []
      : [
          statedNumber(
            {
              key: of.key,
              box: placeOf(key),
              label,
              ...(of.quantity && { quantity: of.quantity }),
              typed: typed[key],
              value,
              basis: basisOf(key),
            },
            duty,
          ),
        ];
  const size = (of: Handle, key: "suctionSize" | "dischargeSize" | "flangeClass"): readonly InputItem[] =>
    typed[key].trim() === "" || duty.arrangement === "series"
      ? []
      : [words(of, OWN_BOXES[key].label, key, typed[key].trim(), "stated")];
  return [
    words(cells.name, "Pump", "name", name, basisOf("name")),
    ...number(cells.speed, PUMP_BOXES.speed.label, "speed", pump.speed),
    ...number(cells.impellerDiameter, PUMP_BOXES.impellerDiameter.label, "impellerDiameter", pump.impellerDiameter),
    ...number(cells.speedRatio, "Speed over that of the curve", "speedRatio", pump.speedRatio),
    ...number(cells.trimRatio, "Impeller over that of the curve", "trimRatio", pump.trimRatio),
    ...number(cells.level, OWN_BOXES.level.label, "level", level),
    words(
      cells.checkValve,
      OWN_BOXES.checkValve.label,
      "checkValve",
      hasCheckValve ? "yes" : "no",
      basisOf("checkValve"),
    ),
    ...size(cells.suctionSize, "suctionSize"),
    ...size(cells.dischargeSize, "dischargeSize"),
    ...size(cells.flangeClass, "flangeClass"),
  ];
}
