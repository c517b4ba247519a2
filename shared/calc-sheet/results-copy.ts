import type { SheetSet } from "../ports/sheet-set.ts";
import type { SheetSpec, StyleSpec } from "../ports/sheet-spec.ts";
import type { DutySheets } from "./layout.ts";

export interface CopyFacts {
  /** Of the copy, as it is to be read. */
  readonly date: string;
  /** Of the calculation; may be empty. */
  readonly revision: string;
}

/** A set of which the sheets beyond the first `shown` are there for the charts alone. */
export interface ResultsCopy extends SheetSet {
  readonly shown: number;
}

/**
 * The sheets of a duty as a copy of results: without the estimate and without the marks of inputs, and said to be one. That
 * no formula is left in it is the part of whoever writes it.
 */
export function resultsCopy(set: DutySheets, facts: CopyFacts): ResultsCopy {
  const kept = set.ids.flatMap((id, i) => (id === "estimate" ? [] : [i]));
  return {
    wanted: kept.map((i) => set.wanted[i] as string),
    sheets: (names) => {
      const all = set.sheets(set.wanted.map((name, i) => names[kept.indexOf(i)] ?? name));
      return kept.map((i) => withoutInputs(all[i] as SheetSpec, facts));
    },
    shown: kept.filter((i) => set.ids[i] !== "workings").length,
  };
}

/** Where every sheet says how it is to be read. */
const LEGEND = "A2";

function withoutInputs({ lists: _, ...spec }: SheetSpec, facts: CopyFacts): SheetSpec {
  return {
    ...spec,
    styles: Object.fromEntries(Object.entries(spec.styles).map(([key, style]) => [key, withoutMark(style)])),
    cells: spec.cells.map((cell) => (cell.at === LEGEND ? { ...cell, v: legendOf(facts) } : cell)),
  };
}

function legendOf({ date, revision }: CopyFacts): string {
  const of = revision.trim() === "" ? "" : `, revision ${revision.trim()}`;
  return `Copy of results, ${date}${of}: nothing here recalculates.`;
}

/** Shading and ink of an input say that it may be changed. */
function withoutMark({ unlocked, fill, color, ...style }: StyleSpec): StyleSpec {
  if (unlocked === true) return style;
  return { ...style, ...(fill === undefined ? {} : { fill }), ...(color === undefined ? {} : { color }) };
}
