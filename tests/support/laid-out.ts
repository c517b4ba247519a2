import { dutySheets } from "../../shared/calc-sheet/duty-sheets.ts";
import { layOut } from "../../shared/calc-sheet/layout.ts";
import type { CalcSheetPlan } from "../../shared/calc-sheet/plan.ts";
import type { WorkedPlan } from "../../shared/calc-sheet/work-out.ts";
import type { DutyText } from "../../shared/duty/duty-text.ts";
import type { SheetSet } from "../../shared/ports/sheet-set.ts";
import type { SheetSpec } from "../../shared/ports/sheet-spec.ts";

/** The sheets of a duty under the names they want; the estimate where there is one. */
export interface LaidOut {
  readonly duty: SheetSpec;
  readonly estimate: SheetSpec | undefined;
  readonly workings: SheetSpec;
  readonly all: readonly SheetSpec[];
}

export function laidOut(plan: CalcSheetPlan, worked: WorkedPlan): LaidOut {
  return under(layOut(plan, worked));
}

export function sheetsOf(typed: DutyText): LaidOut {
  return under(setOfDuty(typed));
}

export function setOfDuty(typed: DutyText): SheetSet {
  const set = dutySheets(typed);
  if (!set.ok) throw new Error(JSON.stringify(set.findings));
  return set.value;
}

/** Several sets as one, to be added and calculated at once; and the sheets of each of them under the names given. */
export function together(
  sets: readonly SheetSet[],
): SheetSet & { readonly each: (names: readonly string[]) => readonly (readonly SheetSpec[])[] } {
  const each = (names: readonly string[]): readonly (readonly SheetSpec[])[] => {
    let first = 0;
    return sets.map((set) => {
      first += set.wanted.length;
      return set.sheets(names.slice(first - set.wanted.length, first));
    });
  };
  return { wanted: sets.flatMap(({ wanted }) => wanted), sheets: (names) => each(names).flat(), each };
}

function under(set: SheetSet): LaidOut {
  const all = set.sheets(set.wanted);
  const ending = (end: RegExp): SheetSpec | undefined => all.find(({ name }) => end.test(name));
  const [duty] = all;
  const workings = ending(/workings$/i) ?? all.at(-1);
  if (duty === undefined || workings === undefined) throw new Error("a duty without a sheet");
  return { duty, estimate: ending(/estimate$/i), workings, all };
}
