import type { FUniver } from "@univerjs/core/facade";

/** What was done to sheets that moves their cells, which a patch of the opened file cannot follow. */
export interface StructureLog {
  /** In words, once each; undone steps are not among them. */
  readonly of: (sheet: string) => readonly string[];
  readonly steps: () => Steps;
  readonly stop: () => void;
}

/** By the grid's sheet id. */
export type Steps = Readonly<Record<string, readonly Step[]>>;

interface Step {
  readonly kind: string;
  readonly range: string;
}

const WORDS: Readonly<Record<string, string>> = {
  "insert-row": "rows inserted",
  "remove-rows": "rows deleted",
  "insert-col": "columns inserted",
  "remove-col": "columns deleted",
  "move-rows": "rows moved",
  "move-columns": "columns moved",
  "move-range": "cells moved",
};
const OPPOSITE: Readonly<Record<string, string>> = {
  "insert-row": "remove-rows",
  "remove-rows": "insert-row",
  "insert-col": "remove-col",
  "remove-col": "insert-col",
};
const PREFIX = "sheet.mutation.";

/** @param before what was done before it begins */
export function structureLog(api: FUniver, before: Steps = {}): StructureLog {
  const steps = new Map<string, readonly Step[]>(Object.entries(before));
  const record = (sheet: string, step: Step): void => {
    const done = steps.get(sheet) ?? [];
    const last = done.at(-1);
    // Undo takes the last step back by its opposite.
    const isUndone = last !== undefined && OPPOSITE[last.kind] === step.kind && last.range === step.range;
    steps.set(sheet, isUndone ? done.slice(0, -1) : [...done, step]);
  };
  const listening = api.addEvent(api.Event.CommandExecuted, ({ id, params }) => {
    const kind = id.startsWith(PREFIX) ? id.slice(PREFIX.length) : "";
    if (!(kind in WORDS)) return;
    const { subUnitId, range, from, to } = params as MutationParams;
    const step = { kind, range: rangeKey(range) };
    for (const sheet of new Set([subUnitId, from?.subUnitId, to?.subUnitId]))
      if (sheet !== undefined) record(sheet, step);
  });
  return {
    of: (sheet) => [...new Set((steps.get(sheet) ?? []).map(({ kind }) => WORDS[kind] as string))],
    steps: () => Object.fromEntries(steps),
    stop: () => listening.dispose(),
  };
}

interface MutationParams {
  readonly subUnitId?: string;
  readonly range?: Readonly<Record<"startRow" | "endRow" | "startColumn" | "endColumn", number>>;
  readonly from?: { readonly subUnitId?: string };
  readonly to?: { readonly subUnitId?: string };
}

function rangeKey(range: MutationParams["range"]): string {
  return range === undefined
    ? ""
    : [range.startRow, range.endRow, range.startColumn, range.endColumn].map(String).join(",");
}
