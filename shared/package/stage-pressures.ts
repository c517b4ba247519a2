import type { Judged } from "../../src/judgement/verdict.ts";
import { greatestOf } from "../../src/numeric/extremes.ts";
import { flangeClassNamed } from "../../src/pressure/flange-class.ts";
import { classesOf, flangeRating } from "../../src/pressure/flange-rating.ts";
import { flangeSizeNamed } from "../../src/pressure/flange-size.ts";
import { pressureMaterialNamed } from "../../src/pressure/pressure-material.ts";
import { exceeds, TRADE_FIGURES } from "../../src/pressure/trade-figure.ts";
import type { FlangeClassName } from "../../src/tables/flange-rating-table.ts";
import { cell } from "../calc-sheet/expression.ts";
import { CLASSES, nozzleLabels } from "../calc-sheet/sections/pressure-nozzles.ts";
import { stagesOf } from "../calc-sheet/sections/pressure-stages.ts";
import { type NozzleCriterion, pressureCriteria } from "../calc-sheet/verdicts/pressure.ts";
import { ratingSystem } from "../catalogue/parameters/class.ts";
import type { Duty } from "../duty/duty.ts";
import { judgedRows } from "./verdicts.ts";
import { workedDuty } from "./worked-duty.ts";

/** Pressures at one nozzle, Pa gauge, and what the verdict makes of them. */
export interface StageNozzle {
  /** As the sheet's table labels it: "Stage 2 discharge". */
  readonly label: string;
  readonly greatest: number;
  /** What its greatest pressure comes of: "closed valve", "pumps stopped", "check valve failed". */
  readonly governs: string;
  readonly classNeeded: string;
  /** First in the order of flow to need the next class. */
  readonly isFirst: boolean;
  /** Class offered there, and its rating for the size of this flange. */
  readonly offered?: string;
  readonly rating?: number;
  /** What does not hold here, "flange" or a part by its name: in any case, or as far as is assumed or a check valve fails. */
  readonly above: readonly { readonly part: string; readonly state: "fail" | "check" }[];
}

/** A pressure that the nozzles are held against, Pa gauge. */
export interface PressureLine {
  readonly name: string;
  readonly pressure: number;
  /** offered: rating of the class offered; class: of another; part: a casing or hose; trade: a check that decides nothing. */
  readonly kind: "offered" | "class" | "part" | "trade";
}

/** Pressure at each nozzle and what it is held against, read off the plan that the sheet is written from. */
export interface StagePressures {
  readonly nozzles: readonly StageNozzle[];
  readonly lines: readonly PressureLine[];
  readonly classOffered: FlangeClassName | undefined;
}

/** Undefined where no pump is chosen or its pressures cannot be worked out. */
export function stagePressures(duty: Duty): StagePressures | undefined {
  const { pump } = duty;
  if (pump === undefined) return undefined;
  const { worked, figure } = workedDuty(duty);
  const judged = judgedRows(duty).filter(({ subject }) => subject === "pressure");
  const criteria = pressureCriteria(duty, pump);
  const nozzles: StageNozzle[] = [];
  for (const [row, label] of nozzleLabels(duty).entries()) {
    const pressure = (column: "greatest" | "rating") => figure(cell(CLASSES, row, column));
    const text = (column: "class" | "next" | "case" | "offered") =>
      String(worked.cells.get(cell(CLASSES, row, column).key) ?? "");
    const greatest = pressure("greatest");
    if (typeof greatest !== "number") return undefined;
    const rating = pressure("rating");
    const offered = text("offered");
    nozzles.push({
      label,
      greatest,
      governs: text("case"),
      classNeeded: text("class"),
      isFirst: text("next") !== "",
      ...(offered !== "" && { offered }),
      ...(typeof rating === "number" && { rating }),
      above: aboveAt(row, criteria, judged),
    });
  }
  const most = greatestOf(nozzles.map(({ greatest }) => greatest));
  const classOffered = offeredOf(duty);
  return { nozzles, lines: [...classLines(duty, classOffered, most), ...partsOf(duty)], classOffered };
}

/** Each part once, by the graver of its judgements at the nozzle. */
function aboveAt(row: number, criteria: readonly NozzleCriterion[], judged: readonly Judged[]): StageNozzle["above"] {
  const states = new Map<string, "fail" | "check">();
  for (const [i, { nozzle, part }] of criteria.entries()) {
    const state = judged[i]?.state;
    if (nozzle !== row || part === undefined || (state !== "fail" && state !== "check")) continue;
    if (states.get(part) !== "fail") states.set(part, state);
  }
  return [...states].map(([part, state]) => ({ part, state }));
}

/** The casing and the other part, of all stages or of one. */
function partsOf(duty: Duty): readonly PressureLine[] {
  const { casingWorkingPressure, otherPart = "other part", otherPartPressure } = duty;
  const line = (name: string, pressure: number | undefined): readonly PressureLine[] =>
    pressure === undefined ? [] : [{ name, pressure, kind: "part" }];
  const own = [...stagesOf(duty)].flatMap(([stage, { casing, part = "other part", partPressure }]) => [
    ...line(`casing, stage ${stage}`, casing),
    ...line(part, partPressure),
  ]);
  return [...line("casing", casingWorkingPressure), ...line(otherPart, otherPartPressure), ...own];
}

function offeredOf({ flangeClass, unitSet }: Duty): FlangeClassName | undefined {
  const named = flangeClass === undefined ? undefined : flangeClassNamed(flangeClass, ratingSystem(unitSet));
  return named?.ok === true ? named.value.name : undefined;
}

/**
 * Ratings at liquid temperature for the size of the discharge flange, up to the first above all pressures, and the trade
 * figures of the same classes. The class offered is always among them.
 */
function classLines(duty: Duty, offered: FlangeClassName | undefined, most: number): readonly PressureLine[] {
  const { casingMaterial, flangeClass, dischargeFlange, temperature = null } = duty;
  if (casingMaterial === undefined) return [];
  const material = pressureMaterialNamed(casingMaterial);
  if (!material.ok) return [];
  const system = ratingSystem(duty.unitSet);
  const named = flangeClass === undefined ? undefined : flangeClassNamed(flangeClass, system);
  const stated = named?.ok === true ? named.value : undefined;
  const size = dischargeFlange === undefined ? stated?.size : flangeSizeNamed(dischargeFlange, system);
  const ratings = classesOf(material.value, stated?.series).flatMap(({ name, series }) => {
    const sized = { name, series, ...(size === undefined ? {} : { size }) };
    const rated = flangeRating({ material: material.value, flangeClass: sized, temperature, system });
    return rated.ok ? [{ name, pressure: rated.value.pressure }] : [];
  });
  const next = ratings.findIndex(({ pressure }) => !exceeds(most, pressure));
  const last = ratings.findIndex(({ name }) => name === offered);
  const seen = next < 0 ? ratings : ratings.slice(0, Math.max(next, last) + 1);
  const trade = new Map(
    seen.flatMap(({ name }) => {
      const figure = TRADE_FIGURES[name];
      return figure === undefined ? [] : [[figure.of, figure.pressure] as const];
    }),
  );
  return [
    ...seen.map((rating): PressureLine => ({ ...rating, kind: rating.name === offered ? "offered" : "class" })),
    ...[...trade].map(([of, pressure]): PressureLine => ({ name: `trade figure, ${of}`, pressure, kind: "trade" })),
  ];
}
