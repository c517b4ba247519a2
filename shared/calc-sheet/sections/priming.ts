import { printedUnit, type UnitSetName } from "../../../src/basis/quantities.ts";
import { COURSE_POINTS, RISE_STEPS } from "../../../src/priming/prime-course.ts";
import { type Duty, isLifted } from "../../duty/duty.ts";
import {
  callById,
  columnAt,
  constant,
  difference,
  type Expression,
  ifNumber,
  partAt,
  rangeAt,
  sum,
  value,
  verdict,
} from "../expression.ts";
import type { ChartsItem, OptionItem, PlanItem, ResultItem, SpillItem, WorkingItem } from "../plan.ts";
import { LIQUID_TAIL } from "./liquid.ts";
import { type RankedList, rankedRow, rankedSpill, remark } from "./package-inputs.ts";
import { isSlurry } from "./slurry.ts";
import { stated } from "./stated-input.ts";

const LINE_AND_AIR_PUMP = [
  rangeAt("suctionLine"),
  value("suctionLift"),
  value("airPump"),
  value("casingVolume"),
  value("altitude"),
  ...LIQUID_TAIL,
];

const PRIME_TIME = callById("PRIMETIME", ...LINE_AND_AIR_PUMP);

const METHODS: RankedList = {
  key: "primingMethods",
  label: "Ways of priming",
  call: callById(
    "PRIMINGMETHODS",
    value("suctionLift"),
    rangeAt("suctionLine"),
    value("solids"),
    value("altitude"),
    ...LIQUID_TAIL,
  ),
  rows: 5,
  columns: ["rank", "method", "verdict", "primeTime", "reasons", "needs", "cautions"],
};

/** How a pump above its liquid is primed, how high and how long that takes. Nothing where it is flooded. */
export function priming(duty: Duty): readonly PlanItem[] {
  if (!isLifted(duty)) return [];
  return [
    { kind: "section", id: "priming", text: "Priming", newPage: true },
    ...stated(duty, "airPump", "casingVolume"),
    // Where the solids are worked out, they stand there already.
    ...(isSlurry(duty) ? [] : stated(duty, "solids")),
    ...greatestLift(duty),
    ...course(duty.unitSet),
    ...eductor(duty),
    rankedSpill(METHODS),
    ...Array.from({ length: METHODS.rows }, (_, row) => methodLine(row)),
    remark("primeTimeNotes", "Time to prime", PRIME_TIME),
    ...(duty.sourcePressure === 0 ? [] : [SOURCE_PRESSURE_NOT_COUNTED]),
  ];
}

function methodLine(row: number): OptionItem {
  return rankedRow(METHODS, row, row === 0 ? "Methods, best first" : "", {
    name: 1,
    verdict: 2,
    remarks: [
      ["", 4],
      ["Needs", 5],
      ["Mind", 6],
    ],
  });
}

const SOURCE_PRESSURE_NOT_COUNTED: PlanItem = {
  kind: "statement",
  text: "Lift and time of priming are worked out for a source open to the air. The pressure stated on the source is not counted: a vacuum there takes its head off every lift.",
};

const LIFT_PLACES = { byBlankOff: 0, byPractice: 1, byNpsh: 2, greatest: 3, rules: 4 } as const;

/** Raised by a metre, the pump has a metre less NPSH available and runs at the same flow; blank where NPSH is not known. */
const LIFT_AT_POINT = {
  kind: "result",
  key: "liftByNpsh",
  label: "Lift by NPSH",
  quantity: "head",
  expression: ifNumber(
    value("operatingNpshMargin"),
    sum(value("suctionLift"), difference(value("operatingNpshMargin"), value("npshMargin"))),
    "",
  ),
  how: "At the operating point: lift of the duty, and the NPSH left over the margin wanted.",
} as const satisfies ResultItem;

const OTHER_LIFT = partAt("primingLift", LIFT_PLACES.greatest);
const OTHER_RULE = partAt("primingLift", LIFT_PLACES.rules);
const LEAST_LIFT: Expression = {
  op: "ifNumber",
  of: value(LIFT_AT_POINT.key),
  met: { op: "least", terms: [value(LIFT_AT_POINT.key), OTHER_LIFT] },
  otherwise: OTHER_LIFT,
};
const LEAST_RULE: Expression = {
  op: "ifNumber",
  of: value(LIFT_AT_POINT.key),
  met: {
    op: "atLeast",
    left: value(LIFT_AT_POINT.key),
    right: OTHER_LIFT,
    met: OTHER_RULE,
    otherwise: constant("NPSH"),
  },
  otherwise: OTHER_RULE,
};

/** Each lift the suction is limited by, and the duty's own held against the least of them. */
function greatestLift(duty: Duty): readonly PlanItem[] {
  const isOnCurve = duty.pump?.curve.npshRequired !== undefined;
  // The section on NPSH works the lift at the flow stated out where it can.
  const isStated = duty.npshRequired !== undefined && duty.sourcePressure === 0;
  const isNpshKnown = isOnCurve || isStated;
  // What the operating point leaves is held against the others on the sheet itself: one more call would be a link more.
  const npshLift = isStated && !isOnCurve ? value("greatestLift") : null;
  const call = callById("PRIMINGLIFT", value("airPump"), npshLift, value("altitude"), ...LIQUID_TAIL);
  const spill: SpillItem = {
    kind: "spill",
    key: "primingLift",
    label: "Greatest suction lift",
    expression: call,
    rows: 2,
    columns: [
      { key: "byBlankOff", quantity: "head" },
      { key: "byPractice", quantity: "head" },
      { key: "byNpsh", quantity: "head" },
      { key: "greatest", quantity: "head" },
      { key: "rules" },
    ],
  };
  const lift = (key: string, label: string, place: keyof typeof LIFT_PLACES, how: string): ResultItem => ({
    kind: "result",
    key,
    label,
    quantity: "head",
    expression: partAt("primingLift", LIFT_PLACES[place]),
    how,
  });
  return [
    ...(isOnCurve ? [LIFT_AT_POINT] : []),
    spill,
    lift("liftByBlankOff", "Lift by blank-off", "byBlankOff", "Height at which the air pump moves no more air."),
    lift("liftByPractice", "Lift in practice", "byPractice", "7.6 m (25 ft) less altitude, warmth and weight."),
    ...(isStated && !isOnCurve
      ? [lift("liftByNpsh", "Lift by NPSH", "byNpsh", "Of the section on NPSH, with its margin.")]
      : []),
    {
      ...lift(
        "greatestPrimingLift",
        "Greatest lift, all counted",
        "greatest",
        isNpshKnown ? "The least of them." : "The least of them; NPSH is not judged, for NPSHR is not stated.",
      ),
      ...(isOnCurve ? { expression: LEAST_LIFT } : {}),
      main: true,
    },
    {
      kind: "result",
      key: "liftRule",
      label: "Ruled by",
      expression: isOnCurve ? LEAST_RULE : partAt("primingLift", LIFT_PLACES.rules),
      how: "What has to change for a higher lift.",
    },
    {
      kind: "result",
      key: "liftOfDuty",
      label: "Suction lift of the duty",
      quantity: "head",
      expression: value("suctionLift"),
      how: "Pump level less source level, from the section on NPSH.",
    },
    {
      kind: "result",
      key: "liftVerdict",
      label: "Lift of the duty",
      expression: verdict(
        value("greatestPrimingLift"),
        value("suctionLift"),
        "within the greatest lift",
        "BEYOND THE GREATEST LIFT",
      ),
      how: "Held against the greatest lift. Check it at the lowest level too.",
    },
    remark("primingLiftNotes", "Greatest lift", call),
  ];
}

const COURSE_PLACES = { time: 0, height: 1, vacuum: 2, airLeft: 3 } as const;

/** How much air is drawn, how long that takes and how the water rises meanwhile. */
function course(units: UnitSetName): readonly PlanItem[] {
  const spill: SpillItem = {
    kind: "spill",
    key: "primeCourse",
    label: "Course of the priming",
    expression: callById("PRIMECURVE", ...LINE_AND_AIR_PUMP),
    rows: COURSE_POINTS + 1,
    columns: [
      { key: "time", quantity: "duration" },
      { key: "height", quantity: "head" },
      { key: "vacuum", quantity: "pressureDifference" },
      { key: "airLeft", quantity: "volume" },
      { key: "stage" },
    ],
  };
  return [
    spill,
    {
      kind: "result",
      key: "airVolume",
      label: "Air to draw",
      quantity: "volume",
      expression: partAt("primeCourse", COURSE_PLACES.airLeft),
      how: "All of the suction line, and the casing and chamber.",
    },
    {
      kind: "result",
      key: "riseTime",
      label: "Until the lift is gained",
      quantity: "duration",
      expression: partAt("primeCourse", COURSE_PLACES.time, RISE_STEPS),
      how: "With the water rising in the line; the rest goes on level run and casing.",
    },
    {
      kind: "result",
      key: "primeTime",
      label: "Time to prime",
      quantity: "duration",
      expression: PRIME_TIME,
      how: "Until the casing is full. Add 5 to 20 s for separator and priming valve (common practice).",
      main: true,
    },
    blankOffLine,
    risingWaterChart(units),
  ];
}

/** The two ends of the line drawn at the blank-off lift. */
const blankOffLine: WorkingItem = {
  kind: "working",
  key: "blankOffLine",
  label: "Blank-off lift, drawn",
  rows: 2,
  columns: [
    {
      key: "time",
      label: "time",
      quantity: "duration",
      cells: (row) => (row === 0 ? constant(0) : partAt("primeCourse", COURSE_PLACES.time, COURSE_POINTS - 1)),
    },
    { key: "height", label: "height", quantity: "head", cells: () => value("liftByBlankOff") },
  ],
};

function risingWaterChart(units: UnitSetName): ChartsItem {
  return {
    kind: "charts",
    charts: [
      {
        title: "Water in the suction line while it is primed",
        xTitle: `time, ${printedUnit("duration", units)}`,
        yTitle: `height over the liquid, ${printedUnit("head", units)}`,
        series: [
          {
            name: "water",
            x: columnAt("primeCourse", "time"),
            y: columnAt("primeCourse", "height"),
            color: "#0B5A5E",
          },
          {
            name: "blank-off lift",
            x: columnAt("blankOffLine", "time"),
            y: columnAt("blankOffLine", "height"),
            color: "#C2410C",
            dashed: true,
          },
        ],
      },
    ],
  };
}

/** Compressed air for an eductor; nothing until nozzle and pressure are both stated. */
function eductor(duty: Duty): readonly PlanItem[] {
  const { eductorNozzle, motivePressure } = duty;
  if (eductorNozzle === undefined || motivePressure === undefined) return [];
  const call = callById("EDUCTORAIR", value("eductorNozzle"), value("motivePressure"), null, value("altitude"));
  const figure = (
    key: string,
    label: string,
    quantity: "freeAirFlow" | "power" | "pressureDifference",
    place: number,
    how: string,
  ): ResultItem => ({ kind: "result", key, label, quantity, expression: partAt("eductorRecord", place), how });
  return [
    ...stated(duty, "eductorNozzle", "motivePressure"),
    {
      kind: "spill",
      key: "eductorRecord",
      label: "Eductor",
      expression: call,
      rows: 2,
      columns: [
        { key: "motiveAir", quantity: "freeAirFlow" },
        { key: "powerLeast", quantity: "power" },
        { key: "powerMost", quantity: "power" },
        { key: "drawnLeast", quantity: "freeAirFlow" },
        { key: "drawnMost", quantity: "freeAirFlow" },
        { key: "vacuumLeast", quantity: "pressureDifference" },
        { key: "vacuumMost", quantity: "pressureDifference" },
      ],
    },
    {
      ...figure("motiveAir", "Motive air", "freeAirFlow", 0, "Choked nozzle; air at 15 °C and one atmosphere."),
      main: true,
    },
    figure("eductorPowerLeast", "Compressor power, from", "power", 1, "Common practice: 5 ft³/min a horsepower."),
    figure("eductorPowerMost", "Compressor power, to", "power", 2, "Common practice: 4 ft³/min a horsepower."),
    figure("airDrawnLeast", "Air drawn, from", "freeAirFlow", 3, "Common practice: 0.2 of the motive air."),
    figure("airDrawnMost", "Air drawn, to", "freeAirFlow", 4, "Common practice: 0.5 of it, at 10 to 20 inHg."),
    figure("eductorVacuum", "Vacuum reached", "pressureDifference", 5, "Common practice: 25 inHg at sea level."),
    remark("eductorNotes", "Eductor", call),
  ];
}
