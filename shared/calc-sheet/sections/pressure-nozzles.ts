import { NOZZLECLASSES } from "../../catalogue/entries/nozzle-classes.ts";
import { SERIES_COLUMNS } from "../../catalogue/parameters/series-pumps.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import {
  type Call,
  callOf,
  cell,
  constant,
  type Expression,
  ifText,
  join,
  part,
  range,
  spillOf,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type PlanItem, spill, type WorkingColumn, type WorkingItem, working } from "../plan.ts";
import { SPECIFIC_GRAVITY } from "./drawn-curves.ts";
import { GREATEST } from "./pressure-head.ts";
import { PUMP } from "./pump.ts";

const SERIES = { key: "seriesPumps" } as const;

/** One row a nozzle, in the order of flow. */
export const CLASSES = spillOf("nozzleClasses", NOZZLECLASSES);

/** Suction and discharge of each stage, as the rows of the nozzles are labelled. */
export function nozzleLabels({ arrangement, count }: DutyPump): readonly string[] {
  if (arrangement !== "series" || count === 1) return ["Suction", "Discharge"];
  return Array.from({ length: count }, (_, i) => [`Stage ${i + 1} suction`, `Stage ${i + 1} discharge`]).flat();
}

/** Whether a class is offered or a part stated, so that there is something to hold the pressures against. */
function isHeldAgainst({ state }: Duty): boolean {
  return (["flangeClass", "casingWorkingPressure", "otherPartPressure"] as const).some((key) => state[key] !== "blank");
}

/** Pressure and class at each nozzle, and what of them is worth a word. */
export function nozzleTables(duty: Duty, labels: readonly string[], call: Call): readonly PlanItem[] {
  const top = duty.state.standingLevel === "blank" ? "delivery level" : "standing level";
  const margin = isHeldAgainst(duty) ? (["margin"] as const) : [];
  return [
    seriesTable(duty, labels.length / 2),
    spill(CLASSES, "Pressure and class at each nozzle", call, labels.length + 1),
    firstsSoFar(labels),
    {
      kind: "table",
      key: "nozzles",
      heading: `nozzle; running against a shut valve, standing up to the ${top}`,
      columns: [
        { key: "greatest", label: "greatest pressure", quantity: "gaugePressure" },
        { key: "class", label: "class needed" },
        { key: "running", label: "running", quantity: "gaugePressure" },
        { key: "standing", label: "standing", quantity: "gaugePressure" },
        ...margin.map((key) => ({ key, label: "margin left", quantity: "percent" }) as const),
      ],
      rows: labels.map((label, row) => {
        const needed = part(CLASSES, "class", row);
        return {
          label,
          cells: [
            part(CLASSES, "greatest", row),
            ifText(part(CLASSES, "next", row), "", needed, join(needed, constant(", the first"))),
            ...(["running", "standing", ...margin] as const).map((column) => part(CLASSES, column, row)),
          ],
        };
      }),
    },
  ];
}

/** What NOZZLECLASSES takes: all stages alike, at the level of the pump. */
function seriesTable({ state }: Duty, stages: number): WorkingItem {
  const column = (key: keyof typeof SERIES_COLUMNS, cells: (row: number) => Expression): WorkingColumn => {
    const { name: label, quantity } = SERIES_COLUMNS[key];
    return { key, label, ...(quantity && { quantity }), cells };
  };
  const fields = [
    ["elevation", "pumpLevel"],
    ["casing", "casingWorkingPressure"],
    ["otherPart", "otherPart"],
    ["otherPressure", "otherPartPressure"],
    ["suctionFlange", "suctionFlange"],
    ["dischargeFlange", "dischargeFlange"],
  ] as const;
  // A part without its pressure is not held against anything.
  const isBlank = (field: (typeof fields)[number][1]): boolean =>
    state[field] === "blank" || (field === "otherPart" && state.otherPartPressure === "blank");
  return {
    kind: "working",
    key: SERIES.key,
    label: "Pumps in the order of flow, at their greatest head",
    rows: stages,
    columns: [
      column("pump", (row) => constant(stages === 1 ? "the pump" : `stage ${row + 1}`)),
      column("head", () => GREATEST.greatestHead),
      ...fields.flatMap(([key, field]) => (isBlank(field) ? [] : [column(key, () => FIELD[field])])),
    ],
  };
}

export function nozzleCall({ state }: Duty): Call {
  return callOf(NOZZLECLASSES, {
    pumps: range(SERIES),
    suctionPressure: FIELD.greatestSuctionPressure,
    flangeMaterial: FIELD.casingMaterial,
    flangeClass: FIELD.flangeClass,
    SG: SPECIFIC_GRAVITY,
    ...(state.acceptanceGrade !== "blank" && { headTolerance: PUMP.headToleranceUpper }),
    standingLevel: state.standingLevel === "blank" ? FIELD.deliveryLevel : FIELD.standingLevel,
    standingPressure: FIELD.deliveryPressure,
    metalTemperature: FIELD.temperature,
  });
}

const FIRSTS = tableOf("firstNozzles", { next: null, trade: null });

/**
 * "Stage 2 discharge: …", carried down from the first nozzle that has something to say: a row each, for a formula that
 * asked every nozzle in turn would nest too deeply.
 */
function firstsSoFar(labels: readonly string[]): WorkingItem {
  const firsts = (column: "next" | "trade", unremarkable: string) => (row: number) => {
    const found = part(CLASSES, column, row);
    const said = join(constant(`${labels[row]}: `), found, constant("."));
    const own = ifText(found, unremarkable, constant(""), said);
    if (row === 0) return own;
    const before = cell(FIRSTS, row - 1, column);
    return ifText(before, "", own, before);
  };
  return working(FIRSTS, "First nozzle so far", labels.length, [
    ["next", "to need the next class", firsts("next", "")],
    ["trade", "where the trade figure disagrees", firsts("trade", "agrees")],
  ]);
}

/** What the first nozzle with something to say says; `none` where no one has. */
export function firstOf(labels: readonly string[], column: "next" | "trade", none: string): Expression {
  const last = cell(FIRSTS, labels.length - 1, column);
  return ifText(last, "", constant(none), last);
}
