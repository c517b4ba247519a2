import type { Duty, DutyPump } from "../../duty/duty.ts";
import { type Call, callById, constant, type Expression, ifNumber, partAt, value } from "../expression.ts";
import type { PlanItem, ResultItem, SpillItem } from "../plan.ts";
import { remark } from "./package-inputs.ts";
import { stated } from "./stated-input.ts";

const RECORD = "motorData";

/** Columns of the record of MOTORDATA, in its order. */
const COLUMNS = [
  { key: "rating", quantity: "power" },
  { key: "frame" },
  { key: "poles" },
  { key: "frequency" },
  { key: "synchronousSpeed", quantity: "speed" },
  { key: "slip", quantity: "percent" },
  { key: "outputFactor", quantity: "ratio" },
  { key: "siteOutput", quantity: "power" },
  { key: "efficiency", quantity: "percent" },
  { key: "current", quantity: "current" },
  { key: "startingCurrent", quantity: "current" },
  { key: "torque", quantity: "torque" },
  { key: "spare", quantity: "power" },
] as const satisfies SpillItem["columns"];

type Part = (typeof COLUMNS)[number]["key"];

function of(key: Part): Expression {
  return partAt(
    RECORD,
    COLUMNS.findIndex((column) => column.key === key),
  );
}

const NOT_HELD = "not held";
const NO_MAINS_MOTOR = "no mains motor";

/** A figure that is left empty where no table holds it. */
function held(key: Part, otherwise: string = NOT_HELD): Expression {
  return ifNumber(of(key), of(key), otherwise);
}

/** The motor that carries the pump on its site. Without the pump's speed, the rating alone. */
export function motor(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  return pump.speed === undefined ? ratingAlone() : wholeMotor(duty);
}

function ratingAlone(): readonly PlanItem[] {
  const rating = callById("MOTORSIZE", value("driverPower"), value("serviceFactor"));
  return [
    {
      kind: "result",
      key: "motorRating",
      label: "Next standard motor rating",
      quantity: "power",
      expression: rating,
      how: "NEMA list in US units, IEC list otherwise; to 1000 m (3300 ft) and 40 °C (104 °F) alone.",
      main: true,
    },
    {
      kind: "statement",
      text: "The speed of the pump's curve is not stated: altitude and hot air, frame, poles, efficiency and current of the motor are not worked out.",
    },
    remark("motorNotes", "Motor", rating),
  ];
}

function wholeMotor(duty: Duty): readonly PlanItem[] {
  const { supplyVoltage } = duty;
  const call: Call = callById(
    "MOTORDATA",
    value("driverPower"),
    value("runningSpeed"),
    value("serviceFactor"),
    null,
    supplyVoltage === undefined ? null : value("supplyVoltage"),
    value("altitude"),
    value("airTemperature"),
  );
  return [
    ...stated(duty, "airTemperature", "supplyVoltage"),
    { kind: "spill", key: RECORD, label: "Motor", expression: call, rows: 2, columns: COLUMNS },
    {
      kind: "result",
      key: "motorRating",
      label: "Next standard motor rating",
      quantity: "power",
      expression: of("rating"),
      how: "Of which enough is left on site. NEMA list in US units, IEC list otherwise; the nameplate's own service factor is not used up.",
      main: true,
    },
    figure(
      "motorOutput",
      "Output of the motor on site",
      "power",
      of("siteOutput"),
      "Rating derated for altitude and air temperature.",
    ),
    figure(
      "motorSpare",
      "Left over the greatest shaft power",
      "power",
      of("spare"),
      "Output on site less shaft power.",
    ),
    {
      kind: "result",
      key: "motorFrame",
      label: "Usual frame",
      expression: { op: "ifText", of: of("frame"), is: "", met: constant(NOT_HELD), otherwise: of("frame") },
      how: "With four poles; the maker's drawing decides.",
    },
    {
      kind: "result",
      key: "motorPoles",
      label: "Poles and supply",
      expression: ifNumber(
        of("poles"),
        { op: "join", terms: [of("poles"), constant(" poles, "), of("frequency"), constant(" Hz")] },
        NO_MAINS_MOTOR,
      ),
      how: "Motor on the mains that runs at the pump's speed; elsewhere a frequency drive, belts, gears or an engine.",
    },
    figure(
      "synchronousSpeed",
      "Synchronous speed",
      "speed",
      held("synchronousSpeed", NO_MAINS_MOTOR),
      "120 × frequency / poles.",
    ),
    figure(
      "motorSlip",
      "Slip at the pump's speed",
      "percent",
      held("slip", NO_MAINS_MOTOR),
      "0.5 % to 2.5 % is usual at full load.",
    ),
    figure(
      "motorEfficiency",
      "Full-load efficiency",
      "percent",
      held("efficiency"),
      "NEMA Premium at 60 Hz, IE3 at 50 Hz; little less to half load.",
    ),
    ...(supplyVoltage === undefined ? [] : currents()),
    figure("motorTorque", "Full-load torque", "torque", held("torque", NO_MAINS_MOTOR), "Rating at the pump's speed."),
    remark("motorNotes", "Motor", call),
  ];
}

function currents(): readonly ResultItem[] {
  return [
    figure(
      "motorCurrent",
      "Full-load current",
      "current",
      held("current"),
      "By the electrical code where it lists the motor, else with a power factor of 0.85. The nameplate wins.",
    ),
    figure(
      "startingCurrent",
      "Greatest starting current",
      "current",
      held("startingCurrent"),
      "Direct on line, 8 times full load; other ways of starting draw less.",
    ),
  ];
}

function figure(
  key: string,
  label: string,
  quantity: NonNullable<ResultItem["quantity"]>,
  expression: Expression,
  how: string,
): ResultItem {
  return { kind: "result", key, label, quantity, expression, how };
}
