import { NOZZLECLASSES } from "../../catalogue/entries/nozzle-classes.ts";
import { SUCTIONPRESSURE } from "../../catalogue/entries/suction-pressure.ts";
import { type Duty, type DutyOtherPump, type DutyPump, pumpsInSeries } from "../../duty/duty.ts";
import { pressureOfSG } from "../conversions.ts";
import {
  type Call,
  callOf,
  cell,
  constant,
  type Expression,
  greatest,
  handles,
  ifText,
  join,
  part,
  range,
  spillOf,
  sum,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type ColumnFacts, figure, type PlanItem, spill, type WorkingItem, working } from "../plan.ts";
import {
  caseNozzles,
  greatestDelivery,
  heaviest,
  highestDelivery,
  hottest,
  sourceGivesIn,
  sourceStates,
} from "./case-pressures.ts";
import { SPECIFIC_GRAVITY } from "./drawn-curves.ts";
import { otherCells, otherGreatestHead } from "./other-pump-inputs.ts";
import { highestSource, suctionOver } from "./other-suction.ts";
import { GREATEST, isHighIdleAssumed } from "./pressure-head.ts";
import { SERIES, SERIES_AT_BEST, seriesTable, stageCell, stagesOf } from "./pressure-stages.ts";
import { PUMP } from "./pump.ts";
import { hasRoute, ROUTE } from "./route-cells.ts";

/** Worked cells of the suction pressure. */
export const SUCTION = handles({ suctionPressure: "gaugePressure", sourceGives: "gaugePressure" });

interface Source {
  readonly sourceLevel: Expression;
  readonly pumpLevel: Expression;
}

/** The source at its highest, and the first pump of the set. */
function sourceOf(duty: Duty): Source {
  return {
    sourceLevel: highestSource(duty),
    pumpLevel: stageCell(stagesOf(duty), 1, "level") ?? FIELD.pumpLevel,
  };
}

/** What is to be said of the suction pressure; its figure is worked out beside it, for the bolts are far down a chain. */
export function suctionCall(duty: Duty): Call {
  return callOf(SUCTIONPRESSURE, {
    ...sourceOf(duty),
    sourcePressure: FIELD.sourcePressure,
    SG: SPECIFIC_GRAVITY,
    statedPressure: FIELD.greatestSuctionPressure,
  });
}

/** Pressure at the first suction nozzle with no flow, by the source and as stated. */
export function suctionItems(duty: Duty): readonly PlanItem[] {
  const sources = sourceStates(duty).map((one) => sourceGivesIn(one, duty, sourceOf(duty).pumpLevel));
  const [first] = sources as [Expression];
  const isStated = duty.state.greatestSuctionPressure !== "blank";
  return [
    figure(
      SUCTION.sourceGives,
      "Suction pressure by level",
      sources.length === 1 ? first : greatest(...sources),
      `P + ρ g (highest source level less pump level), at least 0${sources.length === 1 ? "" : "; the largest of all cases"}.`,
    ),
    ...(isStated
      ? [
          figure(
            SUCTION.suctionPressure,
            "Suction pressure counted",
            greatest(SUCTION.sourceGives, FIELD.greatestSuctionPressure),
            "The greater of that and the one stated.",
          ),
        ]
      : []),
  ];
}

/** The pressure that counts at the first suction nozzle. */
function suctionPressureCell({ state }: Duty): Expression {
  return state.greatestSuctionPressure === "blank" ? SUCTION.sourceGives : SUCTION.suctionPressure;
}

/** One row a nozzle, in the order of flow. */
export const CLASSES = spillOf("nozzleClasses", NOZZLECLASSES);
/** The same at the favourable end of what is assumed. */
export const CLASSES_AT_BEST = spillOf("nozzleClassesAtBest", NOZZLECLASSES);

/** Suction and discharge of each stage, as the rows of the nozzles are labelled. */
export function nozzleLabels(duty: Duty): readonly string[] {
  const count = pumpsInSeries(duty);
  if (count === 1) return ["Suction", "Discharge"];
  return Array.from({ length: count }, (_, i) => [`Stage ${i + 1} suction`, `Stage ${i + 1} discharge`]).flat();
}

/** Pressure and class at each nozzle, and what of them is worth a word. */
export function nozzleTables(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const labels = nozzleLabels(duty);
  const isDelivery = duty.state.standingLevel === "blank" && !hasRoute(duty);
  const top = isDelivery ? "delivery level" : "highest level of the line";
  const rows = labels.length + 1;
  return [
    seriesTable(duty, "careful"),
    spill(CLASSES, "Pressure and class at each nozzle", nozzleCall(duty, pump, "careful"), rows),
    ...(isHighIdleAssumed(duty, pump) ? [seriesTable(duty, "atBest")] : []),
    ...(hasAssumed(duty, pump)
      ? [spill(CLASSES_AT_BEST, "The same without what is assumed", nozzleCall(duty, pump, "atBest"), rows)]
      : []),
    ...caseNozzles(duty, {
      count: labels.length,
      at: (end, of, row) => part(end === "careful" ? CLASSES : CLASSES_AT_BEST, of, row),
      suction: suctionPressureCell(duty),
      pumpLevel: sourceOf(duty).pumpLevel,
      hasBest: hasAssumed(duty, pump),
    }),
    firstsSoFar(labels),
    {
      kind: "table",
      key: "nozzles",
      heading: `nozzle pressures; stopped: column to the ${top}`,
      columns: [
        { key: "greatest", label: "maximum", quantity: "gaugePressure" },
        { key: "class", label: "class needed" },
        { key: "running", label: "running", quantity: "gaugePressure" },
        { key: "standing", label: "stopped", quantity: "gaugePressure" },
        { key: "checkFailed", label: "check failed", quantity: "gaugePressure" },
      ],
      rows: labels.map((label, row) => {
        const needed = part(CLASSES, "class", row);
        return {
          label,
          cells: [
            part(CLASSES, "greatest", row),
            ifText(part(CLASSES, "next", row), "", needed, join(needed, constant(", the first"))),
            ...(["running", "standing", "checkFailed"] as const).map((column) => part(CLASSES, column, row)),
          ],
        };
      }),
    },
    ...otherTables(duty, pump),
  ];
}

/** Pressure and class at the nozzles of a further pump that stands side by side with the chosen one. */
export function otherClasses({ index }: Pick<DutyOtherPump, "index">) {
  return spillOf(`otherPump${index + 1}Classes`, NOZZLECLASSES);
}

/** Further pumps side by side, each at its own greatest head and with its own flanges. */
export function pumpsAbreast({ arrangement, otherPumps }: Duty): readonly DutyOtherPump[] {
  return arrangement === "series" ? [] : otherPumps;
}

function otherTables(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const pumps = pumpsAbreast(duty);
  if (pumps.length === 0) return [];
  return [
    ...pumps.flatMap((other) => {
      const series = otherSeries(other);
      const call = nozzleCall(duty, pump, "careful", series, otherSuction(duty, other));
      return [series, spill(otherClasses(other), `Pressure and class at the nozzles of ${other.name}`, call, 3)];
    }),
    {
      kind: "table",
      key: "otherNozzles",
      heading: "nozzle pressures of the further pumps at closed valve",
      columns: [
        { key: "greatest", label: "maximum", quantity: "gaugePressure" },
        { key: "class", label: "class needed" },
        { key: "rating", label: "rating", quantity: "gaugePressure" },
      ],
      rows: pumps.flatMap((other) =>
        ["suction", "discharge"].map((side, row) => ({
          label: `${other.name}, ${side}`,
          cells: (["greatest", "class", "rating"] as const).map((key) => part(otherClasses(other), key, row)),
        })),
      ),
    },
  ];
}

/** Pressure at its suction: that of the duty, over or under it by what its own source gives. */
function otherSuction(duty: Duty, other: DutyOtherPump): Expression {
  const over = pressureOfSG(suctionOver(duty, other), heaviest(duty), duty.unitSet);
  return greatest(constant(0), sum(suctionPressureCell(duty), over));
}

/** The one row that NOZZLECLASSES takes of a further pump. */
function otherSeries(other: DutyOtherPump): WorkingItem {
  const cells = otherCells(other);
  const { suctionSize, dischargeSize, flangeClass } = other.typed;
  const own = (text: string, key: string, of: Expression): readonly ColumnFacts<string>[] =>
    text.trim() === "" ? [] : [[key, key, () => of]];
  const table = tableOf(`otherPump${other.index + 1}Series`, { pump: null, head: "head" });
  return working<string>(table, `${other.name} at its maximum head`, 1, [
    ["pump", "pump", () => cells.name],
    ["head", "maximum head", () => otherGreatestHead(other)],
    ["elevation", "elevation", () => FIELD.pumpLevel],
    ...own(suctionSize, "suction flange", cells.suctionSize),
    ...own(dischargeSize, "discharge flange", cells.dischargeSize),
    ...own(flangeClass, "flange class", cells.flangeClass),
  ]);
}

/** Whether an assumed figure raises the pressures, so that they have a favourable end as well. */
export function hasAssumed(duty: Duty, pump: DutyPump): boolean {
  return duty.state.acceptanceGrade === "blank" || isHighIdleAssumed(duty, pump);
}

/** The call at the careful end of what is assumed, or at its favourable end: no tolerance, no high idle. */
export function nozzleCall(
  duty: Duty,
  pump: DutyPump,
  end: "careful" | "atBest",
  series: { readonly key: string } = end === "atBest" && isHighIdleAssumed(duty, pump) ? SERIES_AT_BEST : SERIES,
  suctionPressure = suctionPressureCell(duty),
): Call {
  const { state } = duty;
  const isBest = end === "atBest";
  return callOf(NOZZLECLASSES, {
    pumps: range(series),
    suctionPressure,
    flangeMaterial: FIELD.casingMaterial,
    flangeClass: FIELD.flangeClass,
    SG: heaviest(duty),
    ...toleranceArguments(state.acceptanceGrade === "blank", isBest),
    standingLevel: standingLevel(duty),
    standingPressure: greatestDelivery(duty),
    metalTemperature: hottest(duty),
    checkFailure: FIELD.checkFailure,
  });
}

/** The highest level of the line that stays full: as stated, else that of its route, else that of the delivery. */
function standingLevel(duty: Duty): Expression {
  if (duty.state.standingLevel !== "blank") return FIELD.standingLevel;
  return hasRoute(duty) ? ROUTE.standingLevel : highestDelivery(duty);
}

function toleranceArguments(
  isUngraded: boolean,
  isBest: boolean,
): { readonly headTolerance?: Expression; readonly service?: Expression; readonly shaftPower?: Expression } {
  if (!isUngraded) return { headTolerance: PUMP.headToleranceUpper };
  return isBest ? { headTolerance: constant("0 %") } : { service: FIELD.service, shaftPower: GREATEST.powerOfPoints };
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
