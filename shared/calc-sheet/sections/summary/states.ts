import type { Duty } from "../../../duty/duty.ts";
import { type ColumnOf, cell, type Expression } from "../../expression.ts";
import type { PlanItem, TableColumn, TableItem } from "../../plan.ts";
import { RESULTS } from "../case-results.ts";
import { caseStatesOf, dutyCases } from "../duty-cases.ts";
import { inRegion, REGION } from "../duty-region.ts";

/** As they stand under one another on page 2. */
const LABELS: Readonly<Partial<Record<ColumnOf<typeof REGION>, string>>> = {
  flow: "flow",
  place: "verdict",
  head: "head",
  bestFlowPercent: "of BEP flow",
  npshMargin: "NPSH margin",
};

/** The states and cases of the duty in one table; nothing where there is but the duty as stated. */
export function statesInShort(duty: Duty, items: readonly PlanItem[]): readonly PlanItem[] {
  const region = items.find((item): item is TableItem => item.kind === "table" && item.key === REGION.key);
  if (region === undefined) return [];
  const columns = region.columns
    .filter(({ key }) => Object.hasOwn(LABELS, key))
    .map((column) => ({ ...column, label: LABELS[column.key as ColumnOf<typeof REGION>] as string }));
  const cases = caseStatesOf(duty);
  const hasResults = items.some((item) => item.kind === "table" && item.key === RESULTS.key);
  const at = (row: number, { key }: TableColumn): Expression => {
    const own = cases.indexOf(dutyCases(duty)[row] as (typeof cases)[number]);
    if (key === "place" && own >= 0 && hasResults) return cell(RESULTS, own, "verdict");
    const figure = cell(REGION, row, key as ColumnOf<typeof REGION>);
    return key === "place" ? inRegion(figure) : figure;
  };
  return [
    {
      kind: "section",
      id: "statesInShort",
      text: cases.length === 0 ? "States the pump must cover" : "States and cases the pump must cover",
      summary: "second",
    },
    {
      kind: "table",
      key: "summaryStates",
      heading: "state",
      columns,
      rows: region.rows.map(({ label }, row) => ({ label, cells: columns.map((column) => at(row, column)) })),
    },
  ];
}
