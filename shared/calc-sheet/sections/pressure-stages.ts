import type { Quantity } from "../../../src/basis/quantities.ts";
import { SERIES_COLUMNS } from "../../catalogue/parameters/series-pumps.ts";
import { type Duty, pumpsInSeries } from "../../duty/duty.ts";
import type { FieldKey } from "../../duty/fields.ts";
import { holdsCheckValve } from "../../duty/line-questions.ts";
import { type StageFacts, type Stages, stagesRead } from "../../duty/stages.ts";
import { constant, type Expression, type Handle, handle } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type InputItem, type PlanItem, statement, type WorkingColumn, type WorkingItem } from "../plan.ts";
import { otherGreatestHead } from "./other-pump-inputs.ts";
import { GREATEST } from "./pressure-head.ts";
import { inUnitSet } from "./stated-input.ts";

/** The table NOZZLECLASSES takes, and the same at the favourable end of what is assumed of the speed. */
export const SERIES = { key: "seriesPumps" } as const;
export const SERIES_AT_BEST = { key: "seriesPumpsAtBest" } as const;

const NONE: Stages = new Map();

/**
 * What each stage has of its own, the last of them further pumps with their flanges; nothing where pumps do not stand in
 * series, or the box cannot be read.
 */
export function stagesOf(duty: Duty): Stages {
  const { stages = "", unitSet, otherPumps } = duty;
  const count = pumpsInSeries(duty);
  if (count === 1) return NONE;
  const read = stagesRead(stages, "", unitSet);
  const stated = read.ok ? read.value : NONE;
  const flanges = otherPumps.flatMap(({ typed }, i): readonly (readonly [number, StageFacts])[] => {
    const [suctionFlange, dischargeFlange, flangeClass] = [
      typed.suctionSize,
      typed.dischargeSize,
      typed.flangeClass,
    ].map((text) => text.trim());
    const stage = count - otherPumps.length + i + 1;
    const own = {
      ...(suctionFlange && { suctionFlange }),
      ...(dischargeFlange && { dischargeFlange }),
      ...(flangeClass && { flangeClass }),
      ...stated.get(stage),
    };
    return Object.keys(own).length === 0 ? [] : [[stage, own]];
  });
  return flanges.length === 0 ? stated : new Map([...stated, ...flanges]);
}

/** Greatest head of a stage: of the chosen pump, or of the further pump that stands there. */
function greatestHeadOf(duty: Duty, row: number, chosen: Expression): Expression {
  const other = duty.otherPumps[row - (pumpsInSeries(duty) - duty.otherPumps.length)];
  return pumpsInSeries(duty) === 1 || other === undefined ? chosen : otherGreatestHead(other);
}

interface Own {
  readonly label: string;
  readonly quantity?: Quantity;
  /** Absent where it is no matter at closed valve. */
  readonly column?: keyof typeof SERIES_COLUMNS;
  /** The box that holds for all stages. */
  readonly field?: FieldKey;
}

const OWN: Readonly<Record<keyof StageFacts, Own>> = {
  level: { label: "level", quantity: "elevation", column: "elevation", field: "pumpLevel" },
  afterRow: { label: "stands after row of the discharge line" },
  casing: {
    label: "casing MAWP",
    quantity: "gaugePressure",
    column: "casing",
    field: "casingWorkingPressure",
  },
  part: { label: "other component", column: "otherPart", field: "otherPart" },
  partPressure: {
    label: "its maximum working pressure",
    quantity: "gaugePressure",
    column: "otherPressure",
    field: "otherPartPressure",
  },
  suctionFlange: { label: "suction flange size", column: "suctionFlange", field: "suctionFlange" },
  dischargeFlange: { label: "discharge flange size", column: "dischargeFlange", field: "dischargeFlange" },
  material: { label: "flange material", column: "material" },
  flangeClass: { label: "flange class", column: "flangeClass" },
  checkValve: { label: "check valve after it", column: "checkValve" },
};
const KEYS = Object.keys(OWN) as readonly (keyof StageFacts)[];

function ownCell(stage: number, key: keyof StageFacts): Handle {
  return handle(`stage${stage}${key[0]?.toUpperCase()}${key.slice(1)}`, OWN[key].quantity ?? null);
}

/** The cell of a figure of one stage: its own, or that of all. */
export function stageCell(stages: Stages, stage: number, key: keyof StageFacts): Expression | undefined {
  if (stages.get(stage)?.[key] !== undefined) return ownCell(stage, key);
  const { field } = OWN[key];
  return field && FIELD[field];
}

/** What a stage has of its own, an input cell each. */
export function stageInputs(duty: Duty): readonly PlanItem[] {
  const count = pumpsInSeries(duty);
  return [...stagesOf(duty)].flatMap(([stage, facts]): readonly PlanItem[] => {
    if (stage > count) {
      return [
        statement(`Stage ${stage} is stated, but only ${count} pumps stand in series: what it says is NOT used.`),
      ];
    }
    return KEYS.flatMap((key): readonly InputItem[] => {
      const value = facts[key];
      if (value === undefined) return [];
      const { label, quantity } = OWN[key];
      return [
        {
          kind: "input",
          key: ownCell(stage, key).key,
          of: "stages",
          label: `Stage ${stage}: ${label}`,
          ...(quantity && { quantity }),
          value: typeof value === "number" ? inUnitSet(value, quantity ?? "ratio", duty) : value,
          basis: "stated",
        },
      ];
    });
  });
}

const CHECK = handle("checkValve", null);

/** Whether a check valve stands in the discharge line. */
export function hasCheckValve({ dischargeLine }: Duty): boolean {
  return dischargeLine.some(holdsCheckValve);
}

export function checkValveInput(duty: Duty): InputItem {
  const value = hasCheckValve(duty) ? "yes" : "no";
  return { kind: "input", key: CHECK.key, label: "Check valve in the line", value, basis: "by its fittings" };
}

/** What NOZZLECLASSES takes: a row a stage, at the greatest head. */
export function seriesTable(duty: Duty, end: "careful" | "atBest"): WorkingItem {
  const { state } = duty;
  const count = pumpsInSeries(duty);
  const stages = stagesOf(duty);
  const column = (key: keyof typeof SERIES_COLUMNS, cells: (row: number) => Expression | null): WorkingColumn => {
    const { name: label, quantity } = SERIES_COLUMNS[key];
    return { key, label, ...(quantity && { quantity }), cells };
  };
  const lastCheck = (row: number): Expression => (row === count - 1 ? CHECK : constant("no"));
  const columns = KEYS.flatMap((key): readonly WorkingColumn[] => {
    const { column: of, field } = OWN[key];
    if (of === undefined) return [];
    const hasOwn = [...stages].some(([stage, facts]) => stage <= count && facts[key] !== undefined);
    if (key === "checkValve") {
      return [column(of, (row) => stageCell(stages, row + 1, key) ?? lastCheck(row))];
    }
    // A part without its pressure is compared with nothing.
    const isBlank = field === undefined || state[field] === "blank" || isUnrated(duty, key);
    if (isBlank && !hasOwn) return [];
    return [
      column(of, (row) => {
        const isOwn = stages.get(row + 1)?.[key] !== undefined;
        return isBlank && !isOwn ? null : (stageCell(stages, row + 1, key) ?? null);
      }),
    ];
  });
  const isBest = end === "atBest";
  return {
    kind: "working",
    key: isBest ? SERIES_AT_BEST.key : SERIES.key,
    label: `Pumps in the order of flow, at their maximum head${isBest ? " without what is assumed" : ""}`,
    rows: count,
    columns: [
      column("pump", (row) => constant(count === 1 ? "the pump" : `stage ${row + 1}`)),
      column("head", (row) => greatestHeadOf(duty, row, isBest ? GREATEST.headAtBest : GREATEST.greatestHead)),
      ...columns,
    ],
  };
}

function isUnrated({ state }: Duty, key: keyof StageFacts): boolean {
  return key === "part" && state.otherPartPressure === "blank";
}
