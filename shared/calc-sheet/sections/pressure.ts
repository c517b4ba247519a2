import type { Duty, DutyPump } from "../../duty/duty.ts";
import { type Call, callOf, type Expression, part, value, verdict } from "../expression.ts";
import type { PlanItem, SpillItem, TableItem } from "../plan.ts";
import { tableCell } from "../work-out.ts";
import { SPECIFIC_GRAVITY } from "./drawn-curves.ts";
import { LIQUID_TAIL } from "./liquid.ts";
import { remark, statedAmount, statedText } from "./package-inputs.ts";

/** Pressure at every nozzle, shut valve, and the flange class each needs; surge apart. */
export function pressureAndFlanges(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const { greatestSuctionPressure, casingMaterial, flangeClass, casingWorkingPressure } = duty.package;
  const stages = Array.from({ length: pump.arrangement === "series" ? pump.count : 1 }, (_, i) => i);
  const last = dischargeOf(stages.length - 1);
  return [
    { kind: "section", text: "Pressure and flanges" },
    ...statedAmount(duty, "greatestSuctionPressure", greatestSuctionPressure),
    ...statedText(duty, "casingMaterial", casingMaterial),
    ...statedText(duty, "flangeClass", flangeClass),
    ...statedAmount(duty, "casingWorkingPressure", casingWorkingPressure),
    {
      kind: "result",
      key: "greatestHead",
      label: "Greatest head of one pump",
      quantity: "head",
      expression: { op: "columnGreatest", key: "headCurve", column: "head", otherwise: "not given" },
      how: "Anywhere on its curve as it runs; a drooping curve has it to the right of zero flow.",
    },
    ...stages.map((stage) => nozzle(stage, duty)),
    stageTable(stages),
    {
      kind: "result",
      key: "classNeeded",
      label: stages.length > 1 ? "Class the last discharge needs" : "Class the discharge needs",
      expression: classFor(last),
      how: "Lowest class of the material's own standard that holds the pressure at liquid temperature.",
      main: true,
    },
    ...(flangeClass === undefined ? [] : offered(last)),
    ...(casingWorkingPressure === undefined
      ? []
      : ([
          {
            kind: "result",
            key: "casingVerdict",
            label: "Casing working pressure",
            expression: verdict(value("casingWorkingPressure"), last, "holds the last discharge", "EXCEEDED"),
            how: "The lowest of flange rating, casing working pressure and weakest part governs.",
          },
        ] satisfies readonly PlanItem[])),
    {
      kind: "result",
      key: "surgePressure",
      label: "Surge if the flow stops at once",
      quantity: "pressureDifference",
      expression: SURGE,
      how: "In the first discharge run; shown apart, and not used to choose the class. Ratings are without shock.",
    },
    remark("nozzleNotes", "Nozzle pressure", nozzleCall(stages.length - 1, duty)),
    remark("classNotes", "Flange class", classFor(last)),
    remark("surgeNotes", "Surge", SURGE),
  ];
}

const SURGE = callOf(
  "SURGE",
  value(tableCell("dischargeLine", 0, "velocity")),
  value(tableCell("dischargeLine", 0, "pipe")),
  ...LIQUID_TAIL,
);

/** "stageARecord": keys become names on the sheet, which hold no digits. */
function recordOf(stage: number): string {
  return `stage${String.fromCharCode(65 + stage)}Record`;
}

function dischargeOf(stage: number): Expression {
  return part(recordOf(stage), 1);
}

function nozzleCall(stage: number, { acceptanceGrade }: Duty): Call {
  return callOf(
    "NOZZLEPRESSURE",
    value("greatestSuctionPressure"),
    value("greatestHead"),
    SPECIFIC_GRAVITY,
    { op: "constant", value: stage + 1 },
    acceptanceGrade === undefined ? null : value("headToleranceUpper"),
  );
}

function nozzle(stage: number, duty: Duty): SpillItem {
  return {
    kind: "spill",
    key: recordOf(stage),
    label: `Nozzle pressures of stage ${stage + 1}`,
    expression: nozzleCall(stage, duty),
    rows: 2,
    columns: [
      { key: "suction", quantity: "gaugePressure" },
      { key: "discharge", quantity: "gaugePressure" },
    ],
  };
}

function classFor(pressure: Expression): Call {
  return callOf("FLANGECLASS", value("casingMaterial"), pressure, value("temperature"));
}

function stageTable(stages: readonly number[]): TableItem {
  return {
    kind: "table",
    key: "stages",
    heading: "stage, all running against a shut valve",
    columns: [
      { key: "discharge", label: "discharge", quantity: "gaugePressure" },
      { key: "class", label: "class its discharge nozzle needs" },
      { key: "suction", label: "suction", quantity: "gaugePressure" },
      { key: "suctionClass", label: "class there" },
    ],
    rows: stages.map((stage) => ({
      label: `Stage ${stage + 1}`,
      cells: [
        dischargeOf(stage),
        classFor(dischargeOf(stage)),
        part(recordOf(stage), 0),
        classFor(part(recordOf(stage), 0)),
      ],
    })),
  };
}

const CHECK = "flangeCheck";

/** The class offered, against the greatest pressure of all. */
function offered(pressure: Expression): readonly PlanItem[] {
  return [
    {
      kind: "spill",
      key: CHECK,
      label: "Class offered",
      expression: callOf("FLANGECHECK", value("casingMaterial"), value("flangeClass"), pressure, value("temperature")),
      rows: 2,
      columns: [
        { key: "verdict" },
        { key: "rating", quantity: "gaugePressure" },
        { key: "margin", quantity: "percent" },
        { key: "test", quantity: "gaugePressure" },
      ],
    },
    {
      kind: "result",
      key: "classVerdict",
      label: "Class offered",
      expression: part(CHECK, 0),
      how: "Against the greatest discharge pressure of all stages.",
      main: true,
    },
    {
      kind: "result",
      key: "classRating",
      label: "Rating of the class offered",
      quantity: "gaugePressure",
      expression: part(CHECK, 1),
      how: "At liquid temperature, linear between printed rows and rounded down.",
    },
    {
      kind: "result",
      key: "classMargin",
      label: "Margin under the rating",
      quantity: "percent",
      expression: part(CHECK, 2),
      how: "(Rating less pressure) / rating.",
    },
    {
      kind: "result",
      key: "testPressure",
      label: "Hydrostatic test of the flanged joint",
      quantity: "gaugePressure",
      expression: part(CHECK, 3),
      how: "1.5 times the cold rating, rounded up; vent high points and keep people clear.",
    },
  ];
}
