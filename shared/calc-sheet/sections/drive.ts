import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { callOf, constant, type Expression, product, ratio, value, verdict } from "../expression.ts";
import type { PlanItem } from "../plan.ts";
import { LIQUID_TAIL } from "./liquid.ts";
import { type RankedList, rankedRow, rankedSpill, remark, statedAmount, statedText } from "./package-inputs.ts";

const NOT_GIVEN = "not given";

/** Driver of each pump: power it must give, rating, and how it is attached. Needs power on the pump's curve. */
export function drive(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  if (pump.curve.efficiency === undefined && pump.curve.power === undefined) return [];
  const { driver, serviceFactor } = duty.package;
  return [
    { kind: "section", text: "Drive" },
    ...statedText(duty, "driver", driver),
    ...statedAmount(duty, "serviceFactor", serviceFactor),
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
      how: "Greatest shaft power times the margin on power.",
    },
    ...(driver === "motor" ? motor() : engine(duty)),
    ...(pump.speed === undefined ? [] : attachment(duty)),
  ];
}

const MOTOR = callOf("MOTORSIZE", value("driverPower"), value("serviceFactor"));

function motor(): readonly PlanItem[] {
  return [
    {
      kind: "result",
      key: "motorRating",
      label: "Next standard motor rating",
      quantity: "power",
      expression: MOTOR,
      how: "NEMA list in US units, IEC list otherwise. The motor's own service factor is not used up.",
      main: true,
    },
    remark("motorNotes", "Motor", MOTOR),
  ];
}

const ENGINE = callOf(
  "ENGINEPOWER",
  value("engineRating"),
  value("altitude"),
  value("airTemperature"),
  value("aspiration"),
);

function engine(duty: Duty): readonly PlanItem[] {
  const { engineRating, airTemperature, aspiration, specificConsumption } = duty.package;
  const fuel = callOf(
    "FUELRATE",
    value("driverPower"),
    specificConsumption === undefined ? null : value("specificConsumption"),
  );
  const rated: readonly PlanItem[] =
    engineRating === undefined
      ? [
          {
            kind: "statement",
            text: "The engine's continuous rating is not stated, so it is not held against the site.",
          },
        ]
      : [
          ...statedAmount(duty, "engineRating", engineRating),
          ...statedAmount(duty, "airTemperature", airTemperature),
          ...statedText(duty, "aspiration", aspiration),
          {
            kind: "result",
            key: "enginePower",
            label: "Engine power on site",
            quantity: "power",
            expression: ENGINE,
            how: "Continuous net rating adjusted for altitude and air temperature.",
            main: true,
          },
          {
            kind: "result",
            key: "engineVerdict",
            label: "Engine on site",
            expression: verdict(value("enginePower"), value("powerNeeded"), "carries the power needed", "TOO SMALL"),
            how: "Against the power the driver must be rated for.",
          },
          remark("engineNotes", "Engine", ENGINE),
        ];
  return [
    ...rated,
    ...statedAmount(duty, "specificConsumption", specificConsumption),
    {
      kind: "result",
      key: "fuelRate",
      label: "Fuel at the greatest power",
      quantity: "fuelFlow",
      expression: fuel,
      how: "Diesel; at the duty it is less.",
    },
    remark("fuelNotes", "Fuel", fuel),
  ];
}

const ARRANGEMENTS: RankedList = {
  key: "arrangements",
  label: "Ways of attaching the driver",
  call: callOf("DRIVEARRANGEMENT", value("driver"), value("driverPower"), value("runningSpeed"), ...LIQUID_TAIL),
  rows: 4,
  columns: ["rank", "arrangement", "verdict", "for", "against", "checks"],
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
    rankedSpill(ARRANGEMENTS),
    ...Array.from({ length: ARRANGEMENTS.rows }, (_, row) =>
      rankedRow(ARRANGEMENTS, row, row === 0 ? "Attachment, best first" : "", [
        ["", 1],
        [" (", 2],
        ["). For: ", 3],
        [". Against: ", 4],
        [". Check: ", 5],
      ]),
    ),
    remark("attachmentNotes", "Attachment", ARRANGEMENTS.call),
  ];
}

/** P / (2 π n) in the unit set's own units: 5252 for hp and rpm to lbf·ft, 9549 for kW to N·m. */
function torqueFactor(units: UnitSetName): Expression {
  const { power, speed, torque } = UNIT_SETS[units];
  return constant(power.factor / (2 * Math.PI * speed.factor * torque.factor));
}
