import { leftRunning } from "../../../src/station/pump-stops.ts";
import { PUMPSTOPS } from "../../catalogue/entries/station.ts";
import type { ColumnKeyOf } from "../../catalogue/entry.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { callOf, type Expression, ifNumber, part, spillOf, tableOf } from "../expression.ts";
import { type PlanItem, spill } from "../plan.ts";
import { leastSystem, NOT_GIVEN } from "./duty-cases.ts";
import { pumpsTogether, stationArguments, stationNames } from "./station-states.ts";

/** What the rest does when pumps stop, at the least static head, where they run out furthest. */
export const STOPS = spillOf("pumpStops", PUMPSTOPS);

const SHOWN = tableOf("pumpStopsShown", {
  verdict: null,
  flow: "flow",
  percentOfBestFlow: "percent",
  headLeft: "head",
  flowBack: "flow",
});

/** The stops worth a row, in words: "B stopped", "1 of 3 stopped", "A alone". */
export function stopLabels(duty: Duty): readonly string[] {
  const { pumpsRunning, otherPumps } = duty;
  if (pumpsRunning === undefined || pumpsTogether(duty) === 1) return [];
  const counts = [pumpsRunning, ...otherPumps.map(() => 1)];
  const names = stationNames(duty);
  const isOneKind = otherPumps.length === 0;
  return leftRunning(counts).map((running) => {
    const stopped = counts.map((count, i) => count - (running[i] as number));
    const off = stopped.flatMap((count, i) => (count === 0 ? [] : [i]));
    const [first] = off as [number];
    const isOne = stopped.reduce((sum, count) => sum + count, 0) === 1;
    if (!isOne) return `${isOneKind ? "one" : names[running.findIndex((count) => count > 0)]} alone`;
    const of = counts[first] === 1 ? "" : `1 of ${counts[first]}${isOneKind ? "" : " "}`;
    return `${of}${isOneKind ? "" : names[first]} stopped`.trim();
  });
}

/** What happens when a pump stops, as a table; nothing of a pump by itself. */
export function pumpStops(duty: Duty, _pump: DutyPump): readonly PlanItem[] {
  const labels = stopLabels(duty);
  if (labels.length === 0) return [];
  const given = (key: ColumnKeyOf<typeof PUMPSTOPS>, row: number): Expression =>
    ifNumber(part(STOPS, key, row), part(STOPS, key, row), NOT_GIVEN);
  const columns = [
    { label: "what the rest does", cell: (row: number) => part(STOPS, "verdict", row) },
    { label: "flow", cell: (row: number) => given("flow", row) },
    { label: "of BEP flow", cell: (row: number) => given("percentOfBestFlow", row) },
    { label: "head left at the end of the curve", cell: (row: number) => given("headLeft", row) },
    { label: "flow back without check valve", cell: (row: number) => given("flowBack", row) },
  ];
  const one = leastSystem(duty);
  return [
    spill(STOPS, "When a pump stops", callOf(PUMPSTOPS, stationArguments(one, duty)), labels.length + 1),
    { kind: "section", id: "pumpStops", text: `When a pump stops, ${one.words}` },
    {
      kind: "table",
      key: SHOWN.key,
      heading: "stopped",
      columns: SHOWN.columns.map((column, i) => ({ ...column, label: (columns[i] as (typeof columns)[number]).label })),
      rows: labels.map((label, row) => ({ label, cells: columns.map(({ cell }) => cell(row)) })),
    },
  ];
}
