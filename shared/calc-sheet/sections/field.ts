import { FIELDCHECK, FIELDREASONS } from "../../catalogue/entries/field-check.ts";
import { FIELDHEAD } from "../../catalogue/entries/field-head.ts";
import { FUELTOWATER, WIRETOWATER } from "../../catalogue/entries/field-power.ts";
import { LINEHEAD } from "../../catalogue/entries/pipe-and-friction.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import {
  type Call,
  callOf,
  cell,
  constant,
  type Expression,
  type Handle,
  ifNumber,
  join,
  part,
  product,
  range,
  sum,
  type TableOf,
  tableOf,
} from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import type { PackageSection } from "../package-section.ts";
import { figure, type OptionItem, type PlanItem, type ResultItem, remark, spill, statement, working } from "../plan.ts";
import { letters } from "../row-letters.ts";
import { SIDE_BY_SIDE } from "./drawn-curves.ts";
import { asStated, isStation, NOT_GIVEN, ofOnePump } from "./duty-cases.ts";
import {
  CHECK,
  ELECTRIC,
  ENGINE,
  FIELD_HEAD,
  hasFieldHead,
  hasMeasuredSpeed,
  hasShaftPower,
  hasSuctionGauge,
  MEASURED,
  powerMeasured,
  REASONS,
} from "./field-cells.ts";
import { LINES } from "./lines.ts";
import { NPSH } from "./npsh.ts";
import { PUMP } from "./pump.ts";
import { readCurve } from "./slurry-curve.ts";
import { stated } from "./stated-input.ts";

const POINT = tableOf("fieldPoint", { flow: "flow", head: "head", power: "power", speed: "speed" });
/** More causes than one reading has signs for. */
const REASON_ROWS = 5;

/** A pump measured while it ran: head, efficiencies, and what its curve says of them. */
export const fieldSection: PackageSection = {
  id: "field",
  missing:
    "State the flow measured and what the discharge gauge read. Height, tap and kind of the suction gauge go with its reading, motor efficiency and meter with the power or the fuel, a speed with that of the selected pump's curve.",
  caution:
    "A running pump has turning parts and pressure behind its taps: guards stay on, cocks are opened slowly and away from the face, and readings at the motor are for trained electricians. Do not run it against a shut valve for a reading longer than it takes.",
  decidedBy: ["driver", "acceptanceGrade"],
  isOfPump: true,
  items: (duty) => {
    if (!hasFieldHead(duty)) return [];
    return [...head(duty), ...plant(duty), ...(duty.pump === undefined ? [] : againstCurve(duty, duty.pump))];
  },
};

function head(duty: Duty): readonly PlanItem[] {
  const call = headCall(duty);
  const of = (handle: Handle, label: string, from: Parameters<typeof part<keyof typeof HOW>>[1], main?: "main") =>
    figure(handle, label, part(FIELD_HEAD, from), HOW[from], main);
  return [
    ...stated(
      duty,
      "fieldFlow",
      "dischargeReading",
      "suctionReading",
      "dischargeGaugeHeight",
      ...(hasSuctionGauge(duty) ? (["suctionGaugeHeight", "suctionTapHeight", "suctionTapPipe"] as const) : []),
      "dischargeTapHeight",
      "dischargeTapPipe",
      "tapLoss",
      "flowMeter",
      "dischargeGauge",
      ...(hasSuctionGauge(duty) ? (["suctionGauge"] as const) : []),
    ),
    ...(hasSuctionGauge(duty)
      ? []
      : [
          figure(
            MEASURED.fieldSuctionLoss,
            "Suction line losses at that flow",
            suctionLoss(duty),
            "No suction gauge is stated: the suction side is that of the source level and these losses.",
          ),
        ]),
    spill(FIELD_HEAD, "Head by gauges", call),
    of(MEASURED.fieldHead, "Head measured", "head", "main"),
    of(MEASURED.fieldHeadOff, "It may be off by", "uncertainty"),
    of(MEASURED.fieldPressurePart, "Of it from pressures", "pressurePart"),
    of(MEASURED.fieldHeightPart, "from heights", "heightPart"),
    of(MEASURED.fieldVelocityPart, "from velocities", "velocityPart"),
    remark(MEASURED.fieldHeadNotes, "Head by gauges", call),
  ];
}

const HOW = {
  head: "(p_d − p_s)/(ρ g) + heights + velocity heads + losses between taps and flanges.",
  uncertainty: "Root of the sum of squares of the readings' own, at two standard deviations.",
  pressurePart: "Difference of the gauges over ρ g.",
  heightPart: "Of the gauges, or of the taps where their lines are full of air.",
  velocityPart: "V²/2g in the pipe at the discharge tap less that at the suction tap.",
} as const;

/** Flow of the whole suction line while one pump gives what was measured, the others as much. */
function suctionLoss(duty: Duty): Expression {
  const together = duty.pump === undefined ? FIELD.fieldFlow : product(FIELD.fieldFlow, SIDE_BY_SIDE);
  return callOf(LINEHEAD, { flow: together, line: range(LINES.suctionLine), ...LIQUID });
}

function headCall(duty: Duty): Call {
  const isTyped = (key: "suctionTapPipe" | "dischargeTapPipe"): boolean => duty.state[key] !== "blank";
  const suctionRow = Math.max(0, duty.suctionLine.length - 1);
  const suction = hasSuctionGauge(duty)
    ? {
        suctionReading: FIELD.suctionReading,
        suctionHeight: FIELD.suctionGaugeHeight,
        suctionSize: isTyped("suctionTapPipe") ? FIELD.suctionTapPipe : cell(LINES.suctionLine, suctionRow, "pipe"),
        suctionTapHeight: FIELD.suctionTapHeight,
        suctionGauge: FIELD.suctionGauge,
        lossToFlanges: FIELD.tapLoss,
      }
    : {
        suctionReading: FIELD.sourcePressure,
        suctionHeight: product(constant(-1), NPSH.suctionLift),
        lossToFlanges: sum(FIELD.tapLoss, MEASURED.fieldSuctionLoss),
      };
  return callOf(FIELDHEAD, {
    flow: FIELD.fieldFlow,
    dischargeReading: FIELD.dischargeReading,
    dischargeHeight: FIELD.dischargeGaugeHeight,
    dischargeSize: isTyped("dischargeTapPipe") ? FIELD.dischargeTapPipe : cell(LINES.dischargeLine, 0, "pipe"),
    dischargeTapHeight: FIELD.dischargeTapHeight,
    flowMeter: FIELD.flowMeter,
    dischargeGauge: FIELD.dischargeGauge,
    ...suction,
    ...LIQUID,
  });
}

/** From meter or fuel to the water. */
function plant(duty: Duty): readonly PlanItem[] {
  const from = powerMeasured(duty);
  if (from === undefined) return [];
  const water = {
    flow: FIELD.fieldFlow,
    head: MEASURED.fieldHead,
    flowMeter: FIELD.flowMeter,
    headUncertainty: MEASURED.fieldHeadOff,
    ...LIQUID,
  };
  return from === "fuel"
    ? toWater(duty, ENGINE, {
        inputs: stated(duty, "fieldFuel", "specificConsumption", "powerMeter"),
        title: "Fuel to water",
        call: callOf(FUELTOWATER, {
          ...water,
          fuelFlow: FIELD.fieldFuel,
          specificConsumption: FIELD.specificConsumption,
          fuelMeter: FIELD.powerMeter,
        }),
        efficiency: "Fuel-to-water efficiency",
        of: "fuelToWater",
        how: "Water power over fuel and its lower heating value.",
        criterion: "12.5 water horsepower-hours from a US gallon of diesel are 100 %.",
      })
    : toWater(duty, ELECTRIC, {
        inputs: stated(duty, "fieldPower", "fieldMotorEfficiency", "powerMeter"),
        title: "Wire to water",
        call: callOf(WIRETOWATER, {
          ...water,
          power: FIELD.fieldPower,
          motorEfficiency: FIELD.fieldMotorEfficiency,
          powerMeter: FIELD.powerMeter,
        }),
        efficiency: "Wire-to-water efficiency",
        of: "wireToWater",
        how: "Water power over the power at the meter.",
        criterion: "A good pump of 75 % on a motor of 88 % has 100 %.",
      });
}

/** What meter and fuel have in common. */
type PlantPart = "waterPower" | "ofCriterion" | "shaftPower" | "pumpEfficiency" | "efficiencyUncertainty";

interface PlantWords<C extends string> {
  readonly inputs: readonly PlanItem[];
  readonly title: string;
  readonly call: Call;
  /** What the efficiency is called, its column and how it comes about. */
  readonly efficiency: string;
  readonly of: C;
  readonly how: string;
  readonly criterion: string;
}

function toWater<C extends string>(
  duty: Duty,
  table: TableOf<C | PlantPart>,
  { inputs, title, call, efficiency, of, how, criterion }: PlantWords<C>,
): readonly PlanItem[] {
  return [
    ...inputs,
    spill(table, title, call),
    figure(MEASURED.fieldWaterPower, "Water power", part(table, "waterPower"), "ρ g Q H."),
    figure(MEASURED.fieldPlantEfficiency, efficiency, part(table, of), how, "main"),
    figure(MEASURED.fieldOfCriterion, "Of the Nebraska criterion", part(table, "ofCriterion"), criterion),
    ...ofPump(duty, {
      power: part(table, "shaftPower"),
      efficiency: part(table, "pumpEfficiency"),
      off: part(table, "efficiencyUncertainty"),
    }),
    remark(MEASURED.fieldPlantNotes, title, call),
  ];
}

function ofPump(
  duty: Duty,
  { power, efficiency, off }: Readonly<Record<"power" | "efficiency" | "off", Expression>>,
): readonly PlanItem[] {
  if (!hasShaftPower(duty)) return [];
  return [
    figure(MEASURED.fieldShaftPower, "Shaft power", power, "What the pump takes."),
    figure(MEASURED.fieldPumpEfficiency, "Pump efficiency measured", efficiency, "Water power over shaft power."),
    figure(MEASURED.fieldPumpEfficiencyOff, "It may be off by, of itself", off, "Root of the sum of squares."),
  ];
}

/** The point against the curve at its speed, and what could explain a difference. */
function againstCurve(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const shared = checkArguments(duty);
  const call = callOf(FIELDCHECK, shared);
  const isExpected = !isStation(asStated(duty), duty);
  const reasons = callOf(FIELDREASONS, {
    ...shared,
    ...(isExpected && { expectedFlow: ofOnePump(asStated(duty), duty, "flow") }),
    ...(powerMeasured(duty) !== undefined && { powerFrom: constant(powerMeasured(duty) as string) }),
    rows: constant(REASON_ROWS),
  });
  const hasSpeed = hasMeasuredSpeed(duty);
  return [
    ...(hasSpeed ? stated(duty, "fieldSpeed") : []),
    ...(duty.state.fieldSpeed !== "blank" && !hasSpeed
      ? [statement("State the speed of the curve, so that the speed measured can be compared with it.")]
      : []),
    working(POINT, "Measured point", 1, [
      ["flow", "flow", () => FIELD.fieldFlow],
      ["head", "head", () => MEASURED.fieldHead],
      ...(hasShaftPower(duty) ? [["power", "shaft power", () => MEASURED.fieldShaftPower] as const] : []),
      ...(hasSpeed ? [["speed", "speed", () => FIELD.fieldSpeed] as const] : []),
    ]),
    spill(CHECK, "Against the curve", call),
    spill(REASONS, "What could explain it", reasons, REASON_ROWS + 1),
    ...deviations(duty, pump),
    figure(MEASURED.fieldVerdict, "Measured point against the curve", part(CHECK, "verdict"), bandWords(duty), "main"),
    ...Array.from(
      { length: REASON_ROWS },
      (_, row): OptionItem => ({
        kind: "option",
        key: `${REASONS.key}Line${letters(row)}`,
        ...(row === 0 && { heading: "What could explain it" }),
        name: part(REASONS, "likely", row),
        verdict: constant(""),
        remarks: [{ label: "To tell", text: part(REASONS, "check", row) }],
      }),
    ),
    remark(MEASURED.fieldCheckNotes, "Field check", call),
    remark(MEASURED.fieldReasonNotes, "What could explain it", reasons),
  ];
}

function bandWords({ acceptanceGrade }: Duty): string {
  const band =
    acceptanceGrade === undefined ? "±5 % of head, a house choice" : `that of grade ${acceptanceGrade.grade}`;
  return `Band ${band}. Within or outside only where the readings leave no doubt; they do not settle a guarantee unless the contract says so.`;
}

function checkArguments(duty: Duty) {
  const { acceptanceGrade } = duty;
  const ofEngine = join(part(ENGINE, "powerUncertainty"), constant(" %"));
  return {
    readings: range(POINT),
    ...readCurve(duty),
    ...(hasMeasuredSpeed(duty) && { curveSpeed: PUMP.curveSpeed }),
    ...(acceptanceGrade !== undefined && { acceptanceGrade: constant(acceptanceGrade.grade) }),
    flowMeter: FIELD.flowMeter,
    headUncertainty: MEASURED.fieldHeadOff,
    ...(hasShaftPower(duty) && { powerMeter: powerMeasured(duty) === "fuel" ? ofEngine : FIELD.powerMeter }),
    ...LIQUID,
  };
}

function deviations(duty: Duty, { curve }: DutyPump): readonly ResultItem[] {
  const where = (from: "flowDeviation" | "efficiencyDeviation" | "efficiencyOpen" | "powerDeviation" | "powerOpen") =>
    ifNumber(part(CHECK, from), part(CHECK, from), NOT_GIVEN);
  const hasPower = hasShaftPower(duty) && curve.efficiency !== undefined;
  const off = "At two standard deviations, with the flow through the slope of the curve and the speed.";
  return [
    figure(
      MEASURED.fieldCurveHead,
      "Head of the curve there",
      part(CHECK, "curveHead"),
      "At the flow and speed measured, with the liquid as pumped.",
    ),
    figure(
      MEASURED.fieldHeadDeviation,
      "Head over the curve",
      part(CHECK, "headDeviation"),
      "Measured over curve, less 1.",
      "main",
    ),
    figure(MEASURED.fieldHeadOpen, "It may be off by", part(CHECK, "headOpen"), off),
    figure(
      MEASURED.fieldFlowDeviation,
      "Flow over the curve",
      where("flowDeviation"),
      "At the head measured; tells more than head on a steep curve.",
    ),
    ...(hasPower
      ? [
          figure(
            MEASURED.fieldEfficiencyDeviation,
            "Efficiency over the curve",
            where("efficiencyDeviation"),
            "Of itself, not points.",
          ),
          figure(MEASURED.fieldEfficiencyOpen, "It may be off by", where("efficiencyOpen"), off),
          figure(
            MEASURED.fieldPowerDeviation,
            "Shaft power over the curve",
            where("powerDeviation"),
            "With the liquid as pumped.",
          ),
          figure(MEASURED.fieldPowerOpen, "It may be off by", where("powerOpen"), off),
        ]
      : []),
  ];
}
