import type { Duty, DutyPump } from "../../duty/duty.ts";
import {
  type Call,
  callById,
  constant,
  difference,
  type Expression,
  ifNumber,
  orElse,
  partAt,
  product,
  rangeAt,
  ratio,
  value,
  verdict,
} from "../expression.ts";
import type { PlanItem, ResultItem, SpillItem, TableItem } from "../plan.ts";
import { IN_SERIES, SIDE_BY_SIDE, SPECIFIC_GRAVITY } from "./drawn-curves.ts";
import { LIQUID_TAIL } from "./liquid.ts";
import { remark } from "./package-inputs.ts";
import { NOT_GIVEN } from "./slurry-lines.ts";

/** Columns of SLURRYDUTY, in its order. */
const COLUMNS = [
  { key: "headRatio" },
  { key: "efficiencyRatio" },
  { key: "waterHead", quantity: "head" },
  { key: "gravity" },
  { key: "powerOverWater" },
  { key: "shaftPower", quantity: "power" },
] as const satisfies SpillItem["columns"];

const RECORD = "slurryDuty";

/** What the slurry asks of a pump on its curves for water; of the chosen one where there is one. */
export function slurryOnThePump(duty: Duty): readonly PlanItem[] {
  const { pump } = duty;
  const call = callFor(duty);
  return [
    ...(hasEfficiency(pump) ? [waterEfficiency] : []),
    { kind: "spill", key: RECORD, label: "Slurry on the pump", expression: call, rows: 2, columns: COLUMNS },
    ...ratios(duty),
    ...(pump === undefined ? [] : againstThePump(pump)),
    remark("slurryDutyNotes", "Head and power on slurry", call),
    ...(pump?.speed === undefined || pump.impellerDiameter === undefined ? [] : service),
  ];
}

function hasEfficiency(pump: DutyPump | undefined): boolean {
  return pump?.curve.efficiency !== undefined;
}

/** The ratios stand without a head, so where it is not known the call goes on with none. */
const HEAD: Expression = {
  op: "ifNumber",
  of: value("slurryHead"),
  met: value("slurryHead"),
  otherwise: constant(0),
};

function callFor({ pump, fines }: Duty): Call {
  const efficiency = value("slurryWaterEfficiency");
  return callById(
    "SLURRYDUTY",
    value("flow"),
    HEAD,
    value("medianSize"),
    value("solidsGravity"),
    value("solidsByVolume"),
    fines === undefined ? null : value("fines"),
    pump?.impellerDiameter === undefined ? null : value("runningDiameter"),
    // A flow beyond the curve has no efficiency; the head to choose by stands all the same.
    hasEfficiency(pump) ? orElse(efficiency, value("flow"), "") : null,
    null,
    ...LIQUID_TAIL,
  );
}

function at(key: (typeof COLUMNS)[number]["key"]): Expression {
  return partAt(
    RECORD,
    COLUMNS.findIndex((column) => column.key === key),
  );
}

/** A figure that needs the head of the slurry, which a bed in a run leaves open. */
function whereKnown(then: Expression): Expression {
  return ifNumber(value("slurryHead"), then, NOT_GIVEN);
}

const waterEfficiency: ResultItem = {
  kind: "result",
  key: "slurryWaterEfficiency",
  label: "Efficiency on water at the duty flow",
  quantity: "ratio",
  expression: callById(
    "PUMPEFFICIENCY",
    rangeAt("pumpCurve"),
    ratio(value("flow"), SIDE_BY_SIDE),
    value("speedRatio"),
    value("trimRatio"),
  ),
  how: "Of each pump, read off its curve at the flow stated.",
};

function ratios({ pump, npshRequired }: Duty): readonly ResultItem[] {
  return [
    {
      kind: "result",
      key: "headRatio",
      label: "Head ratio, slurry over water",
      quantity: "ratio",
      expression: at("headRatio"),
      how: "By Cave, with relief for fines where stated; tests scatter by 0.1.",
    },
    {
      kind: "result",
      key: "efficiencyRatio",
      label: "Efficiency ratio",
      quantity: "ratio",
      expression: at("efficiencyRatio"),
      how: "Taken equal to the head ratio.",
    },
    {
      kind: "result",
      key: "clearWaterHead",
      label: "Head to choose the pump by",
      quantity: "head",
      expression: whereKnown(at("waterHead")),
      how: "Total head of the slurry over the head ratio: the head of its curve for water.",
      main: true,
    },
    {
      kind: "result",
      key: "powerOverWater",
      label: "Power over that on water",
      quantity: "ratio",
      expression: at("powerOverWater"),
      how: "Of the same pump at the same flow on water of SG 1: SG × head ratio / efficiency ratio.",
    },
    ...(hasEfficiency(pump)
      ? [
          {
            kind: "result",
            key: "slurryPower",
            label: "Shaft power on slurry",
            quantity: "power",
            expression: whereKnown(ifNumber(value("slurryWaterEfficiency"), at("shaftPower"), NOT_GIVEN)),
            how: "ρ_m g Q H_m/(η ER), all pumps, at the flow and head of the slurry stated; not the greatest on the curve.",
            main: true,
          } as const,
          {
            kind: "result",
            key: "slurryGreatestPower",
            label: "Greatest shaft power on slurry",
            quantity: "power",
            expression: ifNumber(
              value("greatestPower"),
              product(ratio(value("greatestPower"), SPECIFIC_GRAVITY), at("powerOverWater")),
              NOT_GIVEN,
            ),
            how: "Greatest on the curve on water times power over water, all pumps: size the driver by it.",
          } as const,
        ]
      : []),
    ...(npshRequired === undefined ? [] : npshOnSlurry),
  ];
}

const npshOnSlurry: readonly ResultItem[] = [
  {
    kind: "result",
    key: "slurryNpshRequired",
    label: "NPSH required on slurry",
    quantity: "head",
    expression: ratio(value("npshRequired"), value("headRatio")),
    how: "The figure stated over the head ratio: a caution of this product, no source.",
  },
  {
    kind: "result",
    key: "slurryNpshVerdict",
    label: "NPSH margin, slurry",
    expression: ifNumber(
      value("slurryNpshAvailable"),
      verdict(
        difference(value("slurryNpshAvailable"), value("slurryNpshRequired")),
        value("npshMargin"),
        "meets the margin wanted",
        "BELOW THE MARGIN WANTED",
      ),
      NOT_GIVEN,
    ),
    how: "NPSH available on slurry less required, held against the margin wanted.",
  },
];

function againstThePump({ impellerDiameter }: DutyPump): readonly ResultItem[] {
  return [
    {
      kind: "result",
      key: "slurryHeadVerdict",
      label: "Chosen pump on the slurry",
      expression: ifNumber(
        value("clearWaterHead"),
        verdict(value("headAtDuty"), value("clearWaterHead"), "meets the slurry duty", "BELOW THE SLURRY DUTY"),
        NOT_GIVEN,
      ),
      how: `Its head at the duty flow on water against the head to choose by.${impellerDiameter === undefined ? " State its impeller: large ones lose less efficiency." : ""}`,
    },
  ];
}

const SERVICE_COLUMNS = [
  { key: "class" },
  { key: "service" },
  { key: "head", quantity: "head" },
  { key: "metal", quantity: "velocity" },
  { key: "elastomer", quantity: "velocity" },
  { key: "tipSpeed", quantity: "velocity" },
  { key: "verdict" },
] as const satisfies SpillItem["columns"];

const SERVICE = callById(
  "SLURRYCLASS",
  ratio(value("headAtDuty"), IN_SERIES),
  value("runningDiameter"),
  value("runningSpeed"),
);

const CLASSES = ["1, light", "2, medium", "3, heavy", "4, very heavy"] as const;

function serviceAt(row: number, key: (typeof SERVICE_COLUMNS)[number]["key"]): Expression {
  return partAt(
    "slurryService",
    SERVICE_COLUMNS.findIndex((column) => column.key === key),
    row,
  );
}

const service: readonly PlanItem[] = [
  {
    kind: "spill",
    key: "slurryService",
    label: "Slurry service classes",
    expression: SERVICE,
    rows: CLASSES.length + 1,
    columns: SERVICE_COLUMNS,
  },
  {
    kind: "table",
    key: "serviceClasses",
    heading: "service class",
    columns: [
      { key: "tipSpeed", label: "tip speed", quantity: "velocity" },
      { key: "verdict", label: "this pump at the duty flow" },
      { key: "head", label: "greatest head", quantity: "head" },
      { key: "metal", label: "tip speed, metal", quantity: "velocity" },
      { key: "elastomer", label: "elastomer", quantity: "velocity" },
    ],
    rows: CLASSES.map((label, row) => ({
      label,
      cells: (["tipSpeed", "verdict", "head", "metal", "elastomer"] as const).map((key) => serviceAt(row, key)),
    })),
  } satisfies TableItem,
  remark("slurryServiceNotes", "Service class", SERVICE),
];
