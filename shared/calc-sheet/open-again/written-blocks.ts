import * as v from "valibot";

/** A sheet of formulas that is held against them once it is opened again. */
export type HeldSheet = "estimate" | "workings";

/** A table of formulas below its label, which stands in the first column of the sheet. */
export interface WrittenBlock {
  readonly sheet: HeldSheet;
  readonly label: string;
  /** The row of its label, 0-based. */
  readonly top: number;
  readonly formulas: readonly FormulaRun[];
}

/** Formulas one below another: the column, the first of them counted down from the label, how many. */
export type FormulaRun = readonly [across: number, down: number, count: number];

const whole = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1_048_576));

export const writtenBlock = v.object({
  sheet: v.picklist(["estimate", "workings"]),
  label: v.string(),
  top: whole,
  formulas: v.array(v.tuple([whole, whole, whole])),
});

/** Single cells, each by column and rows below the label, in runs. */
export function runsOf(cells: readonly (readonly [across: number, down: number])[]): readonly FormulaRun[] {
  const runs: [number, number, number][] = [];
  for (const [across, down] of [...cells].sort(([a, x], [b, y]) => a - b || x - y)) {
    const last = runs.at(-1);
    if (last !== undefined && last[0] === across && last[1] + last[2] === down) last[2] += 1;
    else runs.push([across, down, 1]);
  }
  return runs;
}
