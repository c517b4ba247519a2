import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { callById, constant, type Expression, ifNumber, product, ratio, value } from "../expression.ts";
import type { PlanItem } from "../plan.ts";
import { engine } from "./drive-engine.ts";
import { motor } from "./drive-motor.ts";
import { LIQUID_TAIL } from "./liquid.ts";
import { type RankedList, rankedRow, rankedSpill, remark } from "./package-inputs.ts";
import { clearLiquidOnly } from "./slurry.ts";
import { stated } from "./stated-input.ts";

const NOT_GIVEN = "not given";

/** Driver of each pump: power it must give, rating, and how it is attached. Needs power on the pump's curve. */
export function drive(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  if (pump.curve.efficiency === undefined && pump.curve.power === undefined) return [];
  const { driver } = duty;
  return [
    { kind: "section", id: "drive", text: "Drive" },
    ...stated(duty, "driver", "serviceFactor"),
    {
      kind: "result",
      key: "powerOfOne",
      label: "Shaft power in operation",
      quantity: "power",
      expression: ifNumber(value("operatingPower"), ratio(value("operatingPower"), value("pumpCount")), NOT_GIVEN),
      how: "Of one pump, at the operating point of the duty as stated.",
    },
    {
      kind: "result",
      key: "driverPower",
      label: "Greatest shaft power of one pump",
      quantity: "power",
      expression: { op: "columnGreatest", key: "powerCurve", column: "power", otherwise: NOT_GIVEN },
      how: "Anywhere on its curve as it runs, with the liquid pumped: the driver is then not overloaded.",
    },
    {
      kind: "result",
      key: "powerNeeded",
      label: "Power the driver must be rated for",
      quantity: "power",
      expression: product(value("driverPower"), value("serviceFactor")),
      how: "Greatest shaft power times the service factor.",
    },
    ...clearLiquidOnly(duty, "The power the driver must be rated for"),
    ...(driver === "motor" ? motor(duty, pump) : engine(duty)),
    ...(pump.speed === undefined ? [] : attachment(duty)),
  ];
}

const ARRANGEMENTS: RankedList = {
  key: "arrangements",
  label: "Ways of attaching the driver",
  call: callById("DRIVEARRANGEMENT", value("driver"), value("driverPower"), value("runningSpeed"), ...LIQUID_TAIL),
  rows: 4,
  columns: ["rank", "arrangement", "verdict", "for", "against", "checks"],
};

const SOLIDS_NOT_COUNTED: PlanItem = {
  kind: "statement",
  text: "The solids stated are not counted in this ranking: abrasive liquid wants a bearing frame that carries its own thrust, and a close-coupled motor is for clean liquid.",
};

function attachment(duty: Duty): readonly PlanItem[] {
  return [
    {
      kind: "result",
      key: "shaftTorque",
      label: "Shaft torque",
      quantity: "torque",
      expression: product(ratio(value("driverPower"), value("runningSpeed")), torqueFactor(duty.unitSet)),
      how: "Greatest shaft power / (2 π running speed).",
    },
    ...((duty.solids ?? 0) > 0 ? [SOLIDS_NOT_COUNTED] : []),
    rankedSpill(ARRANGEMENTS),
    ...Array.from({ length: ARRANGEMENTS.rows }, (_, row) =>
      rankedRow(ARRANGEMENTS, row, row === 0 ? "Attachment, best first" : "", {
        name: 1,
        verdict: 2,
        remarks: [
          ["For", 3],
          ["Against", 4],
          ["Check", 5],
        ],
      }),
    ),
    remark("attachmentNotes", "Attachment", ARRANGEMENTS.call),
  ];
}

/** P / (2 π n) in the unit set's own units: 5252 for hp and rpm to lbf·ft, 9549 for kW to N·m. */
function torqueFactor(units: UnitSetName): Expression {
  const { power, speed, torque } = UNIT_SETS[units];
  return constant(power.factor / (2 * Math.PI * speed.factor * torque.factor));
}
