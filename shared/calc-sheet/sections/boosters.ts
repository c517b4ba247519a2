import { BOOSTERS as BOOSTERS_ENTRY } from "../../catalogue/entries/boosters.ts";
import { type Duty, type DutyPump, pumpsInSeries } from "../../duty/duty.ts";
import { callOf, cell, constant, type Expression, ifNumber, part, range, spillOf, tableOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type ColumnFacts, type PlanItem, spill, statement, type WorkingItem, working } from "../plan.ts";
import { leastSystem, NOT_GIVEN, recordOf } from "./duty-cases.ts";
import { liquidOfDuty, otherAsPumped } from "./other-curves.ts";
import { otherCells } from "./other-pump-inputs.ts";
import { stageCell, stageInputs, stagesOf } from "./pressure-stages.ts";
import { PUMP } from "./pump.ts";
import { curveAsPumped } from "./slurry-curve.ts";

const PLACED = tableOf("boosterPumps", {
  pump: null,
  flow: "flow",
  head: "head",
  npshRequired: "head",
  speedRatio: null,
  trimRatio: null,
  level: "elevation",
  afterRow: null,
});

/** Pressures of the pumps in series while they run, a row each in the order of flow. */
export const BOOSTERS = spillOf("boosters", BOOSTERS_ENTRY);

/** Whether pumps in series stand along the line, and not all at its beginning. */
export function hasBoosters(duty: Duty): boolean {
  const stages = [...stagesOf(duty).values()];
  return pumpsInSeries(duty) > 1 && stages.some(({ level, afterRow }) => level !== undefined || afterRow !== undefined);
}

/** What each pump of a series finds at its inlet where it stands, running at the greatest flow of the ranges. */
export function boosters(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  if (!hasBoosters(duty)) return [];
  const one = leastSystem(duty);
  const count = pumpsInSeries(duty);
  const call = callOf(BOOSTERS_ENTRY, {
    curve: range(PLACED),
    flow: part(recordOf(one), "flow"),
    sourceLevel: FIELD.sourceLevel,
    suctionLine: range(one.lines.suctionLine),
    dischargeLine: range(one.lines.dischargeLine),
    sourcePressure: one.sourcePressure,
    altitude: one.altitude,
    ...one.liquid,
  });
  const shown = tableOf("boostersShown", {
    head: "head",
    inletPressure: "gaugePressure",
    outletPressure: "gaugePressure",
    npshAvailable: "head",
    npshRequired: "head",
    verdict: null,
  });
  const labels = ["head", "gauge at its inlet", "gauge at its outlet", "NPSHA", "NPSHR", "inlet"];
  const cellOf = (key: (typeof shown)["columns"][number]["key"], row: number): Expression => {
    const found = part(BOOSTERS, key, row);
    return key === "npshRequired" ? ifNumber(found, found, NOT_GIVEN) : found;
  };
  return [
    { kind: "section", id: "boosters", text: `Pumps along the line, ${one.words}` },
    ...stageInputs(duty).filter(({ kind }) => kind === "input"),
    placedPumps(duty, pump, count),
    spill(BOOSTERS, "Pumps along the line, running", call, count + 1),
    {
      kind: "table",
      key: shown.key,
      heading: "stage",
      columns: shown.columns.map((column, i) => ({ ...column, label: labels[i] as string })),
      rows: Array.from({ length: count }, (_, row) => ({
        label: `Stage ${row + 1}`,
        cells: shown.columns.map(({ key }) => cellOf(key, row)),
      })),
    },
    statement(
      "Start the first pump first, and stop it last: a booster that runs alone draws its line empty, and the line may collapse or the booster run dry. A pressure switch at the inlet of each booster stops it.",
      "caution",
    ),
  ];
}

function placedPumps(duty: Duty, pump: DutyPump, count: number): WorkingItem {
  const alike = count - duty.otherPumps.length;
  const stages = stagesOf(duty);
  const rows = Array.from({ length: count }, (_, stage) => {
    const other = duty.otherPumps[stage - alike];
    const { curve } = other ?? pump;
    return curve.points.map((_, row) => ({ stage, other, row }));
  }).flat();
  const at = (i: number) => rows[i] as (typeof rows)[number];
  const figureOf = (i: number, key: "flow" | "head" | "npshRequired"): Expression | null => {
    const { other, row } = at(i);
    if ((other ?? pump).curve.points[row]?.[key] === undefined) return null;
    return cell(other === undefined ? curveAsPumped(duty) : otherAsPumped(other, liquidOfDuty(duty)), row, key);
  };
  const first = (i: number, of: (row: (typeof rows)[number]) => Expression | null): Expression | null =>
    at(i).row === 0 ? of(at(i)) : null;
  const hasNpsh = [pump, ...duty.otherPumps].some(({ curve }) => curve.npshRequired !== undefined);
  const facts: readonly ColumnFacts<(typeof PLACED)["columns"][number]["key"]>[] = [
    ["pump", "pump", (i) => first(i, ({ stage }) => constant(`stage ${stage + 1}`))],
    ["flow", "flow", (i) => figureOf(i, "flow")],
    ["head", "head", (i) => figureOf(i, "head")],
    ...(hasNpsh ? [["npshRequired", "NPSHR", (i: number) => figureOf(i, "npshRequired")] as const] : []),
    [
      "speedRatio",
      "speed ratio",
      (i) => first(i, ({ other }) => (other === undefined ? PUMP.speedRatio : otherCells(other).speedRatio)),
    ],
    [
      "trimRatio",
      "trim ratio",
      (i) => first(i, ({ other }) => (other === undefined ? PUMP.trimRatio : otherCells(other).trimRatio)),
    ],
    ["level", "level", (i) => first(i, ({ stage }) => stageCell(stages, stage + 1, "level") ?? FIELD.pumpLevel)],
    ["afterRow", "after row", (i) => first(i, ({ stage }) => stageCell(stages, stage + 1, "afterRow") ?? constant(0))],
  ];
  return working(PLACED, "Pumps in series where they stand", rows.length, facts);
}
