import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { DRIVEARRANGEMENT } from "../../catalogue/entries/drive.ts";
import type { Duty } from "../../duty/duty.ts";
import { callOf, constant, type Expression, handles, part, product, ratio, spillOf } from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import type { PackageSection } from "../package-section.ts";
import { figure, type PlanItem, remark, spill, statement } from "../plan.ts";
import { engine } from "./drive-engine.ts";
import { motor } from "./drive-motor.ts";
import { POWER, POWERS } from "./drive-power.ts";
import { PUMP } from "./pump.ts";
import { rankedOptions } from "./ranked-options.ts";
import { stated } from "./stated-input.ts";

const DRIVE = handles({ shaftTorque: "torque", attachmentNotes: null });

/** Driver of each pump: power it must give, rating, and how it is attached. Needs power on the pump's curve. */
export const driveSection: PackageSection = {
  id: "drive",
  title: "Drive",
  missing: "Choose a pump whose curve gives efficiency or power.",
  caution:
    "Guard every turning part, lock out before work, and keep exhaust and hot surfaces away from people and fuel.",
  decidedBy: ["driver"],
  isOfPump: true,
  items: (duty) => {
    const { driver, pump } = duty;
    if (pump?.curve.efficiency === undefined) return [];
    return [
      ...stated(duty, "driver", "serviceFactor"),
      ...POWERS,
      ...(driver === "motor" ? motor(duty, pump) : engine(duty)),
      ...(pump.speed === undefined ? [] : attachment(duty)),
    ];
  },
};

const ARRANGEMENTS = spillOf("arrangements", DRIVEARRANGEMENT);
const ARRANGED = callOf(DRIVEARRANGEMENT, {
  driver: FIELD.driver,
  shaftPower: POWER.driverPower,
  speed: PUMP.runningSpeed,
  ...LIQUID,
});
const ROWS = 4;

const SOLIDS_NOT_COUNTED = statement(
  "The solids stated are not counted in this ranking: abrasive liquid wants a bearing frame that carries its own thrust, and a close-coupled motor is for clean liquid.",
);

function attachment({ solids, state, unitSet }: Duty): readonly PlanItem[] {
  return [
    figure(
      DRIVE.shaftTorque,
      "Shaft torque",
      product(ratio(POWER.driverPower, PUMP.runningSpeed), torqueFactor(unitSet)),
      "Greatest shaft power / (2 π running speed).",
    ),
    ...(state.solids === "blank" || solids === 0 ? [] : [SOLIDS_NOT_COUNTED]),
    spill(ARRANGEMENTS, "Ways of attaching the driver", ARRANGED, ROWS + 1),
    ...rankedOptions(ARRANGEMENTS, "arrangement", "Attachment, best first", ROWS, (row) => [
      { label: "For", text: part(ARRANGEMENTS, "for", row) },
      { label: "Against", text: part(ARRANGEMENTS, "against", row) },
      { label: "Check", text: part(ARRANGEMENTS, "checks", row) },
    ]),
    remark(DRIVE.attachmentNotes, "Attachment", ARRANGED),
  ];
}

/** P / (2 π n) in the unit set's own units: 5252 for hp and rpm to lbf·ft, 9549 for kW to N·m. */
function torqueFactor(units: UnitSetName): Expression {
  const { power, speed, torque } = UNIT_SETS[units];
  return constant(power.factor / (2 * Math.PI * speed.factor * torque.factor));
}
