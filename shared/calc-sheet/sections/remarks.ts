import { type Citation, citationText } from "../../../src/basis/citation.ts";
import { acceptanceMethod } from "../../../src/pump/acceptance.ts";
import type { Entry } from "../../catalogue/entry.ts";
import type { Duty } from "../../duty/duty.ts";
import { type Expression, handle, handles, partsOf } from "../expression.ts";
import { type PlanItem, remark, statement } from "../plan.ts";
import { asStated, type DutyState, outerCases } from "./duty-cases.ts";
import { TOTAL_HEAD } from "./head.ts";
import { greatestLiftOf, isLiftKnown, NPSH_AVAILABLE } from "./npsh.ts";
import { operatingPointOf } from "./system-cases.ts";

const NOTES = handles({ totalHeadNotes: null, npshNotes: null, greatestLiftNotes: null });

/** What the main calls remark, live, with reason and source. */
export function findings(duty: Duty): readonly PlanItem[] {
  // What goes wrong between the outermost states shows in them too.
  const { pump } = duty;
  const cases = [asStated(duty), ...outerCases(duty)];
  return [
    { kind: "section", id: "findings", text: "Findings" },
    remark(NOTES.totalHeadNotes, "Total dynamic head", TOTAL_HEAD),
    remark(NOTES.npshNotes, "NPSH available", NPSH_AVAILABLE),
    ...(isLiftKnown(duty) ? [remark(NOTES.greatestLiftNotes, "Greatest suction lift", greatestLiftOf(duty))] : []),
    ...(pump === undefined
      ? []
      : cases.map((one) =>
          remark(handle(`${one.key}Notes`, null), caseLabel(one, duty), operatingPointOf(one, duty, pump)),
        )),
  ];
}

function caseLabel(one: DutyState, duty: Duty): string {
  return one === asStated(duty) ? "Operating point" : `Operating point: ${one.words}`;
}

/** The works behind the functions that these items use, and the tables behind the lines and the grade of a duty. */
export function citedBy(items: readonly PlanItem[], duty?: Duty): readonly Citation[] {
  const called = new Set<Entry>();
  for (const item of items) for (const expression of expressionsOf(item)) gatherCalls(expression, called);
  // BORE rests on every pipe standard there is; only those of the pipes in the lines belong here.
  const entries = [...called].filter(({ id }) => id !== "BORE");
  return [...entries.flatMap(({ cites }) => cites), ...(duty === undefined ? [] : citedByTables(duty))];
}

function citedByTables({ pump, acceptanceGrade, suctionLine, dischargeLine }: Duty): readonly Citation[] {
  return [
    ...(pump === undefined || acceptanceGrade === undefined ? [] : acceptanceMethod.cites),
    ...[...suctionLine, ...dischargeLine].flatMap(({ segment }) =>
      segment === undefined
        ? []
        : [segment.pipe.cites, segment.pipe.roughnessCites, ...segment.fittings.map(({ fitting }) => fitting.cites)],
    ),
  ];
}

/** Each work once; nothing on a sheet that rests on none. */
export function references(cited: readonly Citation[], sheet?: "estimate"): readonly PlanItem[] {
  const lines = [...new Set(cited.map(citationText))].sort();
  if (lines.length === 0) return [];
  return [
    { kind: "section", id: "references", text: "References", ...(sheet && { sheet }) },
    ...lines.map((text) => statement(text)),
  ];
}

function expressionsOf(item: PlanItem): readonly Expression[] {
  switch (item.kind) {
    case "result":
    case "curve":
    case "finding":
    case "spill":
      return [item.expression];
    case "option":
      return [item.name, item.verdict, ...item.remarks.map(({ text }) => text)];
    case "table":
      return item.rows.flatMap(({ cells }) => cells);
    case "working":
      return item.columns.flatMap(({ cells }) => {
        const first = typeof cells === "function" ? cells(0) : cells.spill;
        return first === null ? [] : [first];
      });
    case "line":
      return item.worked.map(({ expression }) => expression((column) => ({ op: "value", key: column })));
    default:
      return [];
  }
}

function gatherCalls(expression: Expression, called: Set<Entry>): void {
  if (expression.op === "call") called.add(expression.entry);
  for (const part of partsOf(expression)) gatherCalls(part, called);
}
