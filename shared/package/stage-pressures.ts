import { flangeClassNamed } from "../../src/pressure/flange-class.ts";
import { classesOf, flangeRating } from "../../src/pressure/flange-rating.ts";
import { flangeSizeNamed } from "../../src/pressure/flange-size.ts";
import { pressureMaterialNamed } from "../../src/pressure/pressure-material.ts";
import { exceeds, TRADE_FIGURES } from "../../src/pressure/trade-figure.ts";
import type { FlangeClassName } from "../../src/tables/flange-rating-table.ts";
import { cell } from "../calc-sheet/expression.ts";
import { CLASSES, nozzleLabels } from "../calc-sheet/sections/pressure-nozzles.ts";
import { ratingSystem } from "../catalogue/parameters/class.ts";
import { placeOfPart } from "../catalogue/parameters/series-pumps.ts";
import type { Duty } from "../duty/duty.ts";
import { workedDuty } from "./worked-duty.ts";

/** Pressures at one nozzle, Pa gauge. */
export interface StageNozzle {
  /** As the sheet's table labels it: "Stage 2 discharge". */
  readonly label: string;
  readonly greatest: number;
  /** The column standing on stopped pumps is the greater. */
  readonly isStanding: boolean;
  readonly classNeeded: string;
  /** First in the order of flow to need the next class. */
  readonly isFirst: boolean;
  readonly isAboveOffered: boolean;
  /** Names of the other parts that stand under more than they may carry here. */
  readonly partsExceeded: readonly string[];
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
  if (duty.pump === undefined) return undefined;
  const { worked, figure } = workedDuty(duty);
  const parts = partsOf(duty);
  const classOffered = offeredOf(duty);
  const nozzles: StageNozzle[] = [];
  for (const [row, label] of nozzleLabels(duty.pump).entries()) {
    const pressure = (column: "greatest" | "standing" | "running" | "rating") => figure(cell(CLASSES, row, column));
    const text = (column: "class" | "next") => String(worked.cells.get(cell(CLASSES, row, column).key) ?? "");
    const greatest = pressure("greatest");
    const standing = pressure("standing");
    const running = pressure("running");
    if (typeof greatest !== "number" || typeof standing !== "number" || typeof running !== "number") return undefined;
    const rating = pressure("rating");
    const side = row % 2 === 0 ? "suction" : "discharge";
    nozzles.push({
      label,
      greatest,
      isStanding: exceeds(standing, running),
      classNeeded: text("class"),
      isFirst: text("next") !== "",
      isAboveOffered: typeof rating === "number" && exceeds(greatest, rating),
      partsExceeded: parts
        .filter(({ name, pressure: limit }) => (placeOfPart(name).side ?? side) === side && exceeds(greatest, limit))
        .map(({ name }) => name),
    });
  }
  const most = Math.max(...nozzles.map(({ greatest }) => greatest));
  return { nozzles, lines: [...classLines(duty, classOffered, most), ...parts], classOffered };
}

function partsOf({ casingWorkingPressure, otherPart, otherPartPressure }: Duty): readonly PressureLine[] {
  const part = (name: string, pressure: number | undefined): readonly PressureLine[] =>
    pressure === undefined ? [] : [{ name, pressure, kind: "part" }];
  return [...part("casing", casingWorkingPressure), ...part(otherPart ?? "other part", otherPartPressure)];
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
