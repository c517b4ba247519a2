import { type Cell, isCellError, type Scalar } from "../cells/cell.ts";
import { addressOf, boxOf, rangeOf } from "../ports/a1.ts";
import { referenceParts } from "../ports/reference.ts";
import type { SheetSet } from "../ports/sheet-set.ts";
import type { CellSpec, SheetSpec, StyleSpec, XYChartSpec } from "../ports/sheet-spec.ts";
import { type SheetValues, valuesOf } from "../ports/sheet-values.ts";
import { copyName } from "./layout/sheets.ts";
import { layOut } from "./layout.ts";
import type { CalcSheetPlan } from "./plan.ts";
import { STYLES } from "./styles.ts";
import type { WorkedPlan } from "./work-out.ts";

/**
 * The sheet of a duty as a copy of results for whoever gets it: one protected sheet that rests on no other, every formula
 * as its answer, and said to be a copy of this date. Neither the estimate nor the duty to be opened again goes with it, nor
 * a name or a mark of an input.
 */
export function resultsCopy(plan: CalcSheetPlan, worked: WorkedPlan, date: string): SheetSet {
  const live = layOut(plan, worked);
  const legend = legendOf(date, plan.issue?.revision ?? "");
  return {
    wanted: [copyName(plan)],
    sheets: ([name = ""]) => {
      const sheets = live.sheets(live.wanted);
      const values = new Map(sheets.map((sheet) => [sheet.name, valuesOf(sheet)]));
      const page = printedOf(sheets[live.ids.indexOf("duty")] as SheetSpec);
      return [withFigures(frozen({ ...page, name }, values.get(page.name) ?? new Map(), legend), page.name, values)];
    },
  };
}

/** What of a sheet is printed; the rest is for its estimator. */
function printedOf(page: SheetSpec): SheetSpec {
  const { cells, merges = [], rowHeights = {}, rules = [], print } = page;
  if (print === undefined) return page;
  const { bottom } = boxOf(print.area);
  const isPrinted = (at: string): boolean => boxOf(at).top <= bottom;
  return {
    ...page,
    cells: cells.filter(({ at }) => isPrinted(at)),
    merges: merges.filter(isPrinted),
    rowHeights: Object.fromEntries(Object.entries(rowHeights).filter(([row]) => Number(row) <= bottom + 1)),
    rules: rules.filter(({ ref }) => isPrinted(ref)),
  };
}

/** Where every sheet says how it is to be read. */
const LEGEND = "A2";

function legendOf(date: string, revision: string): string {
  const of = revision.trim() === "" ? "" : `, revision ${revision.trim()}`;
  return `Copy of results, ${date}${of}: nothing here recalculates.`;
}

function frozen({ lists: _, names: __, ...spec }: SheetSpec, values: SheetValues, legend: string): SheetSpec {
  return {
    ...spec,
    styles: Object.fromEntries(Object.entries(spec.styles).map(([key, style]) => [key, withoutMark(style)])),
    cells: spec.cells.map(({ at, style }): CellSpec => {
      const v = at === LEGEND ? legend : scalarOf(values.get(at) ?? null);
      return { at, ...(v === null ? {} : { v }), ...(style === undefined ? {} : { style }) };
    }),
    isProtected: true,
  };
}

/** An error is a text like any other where nothing reckons with it. */
function scalarOf(value: Cell): Scalar {
  return isCellError(value) ? value.error : value;
}

/** Shading and ink of an input say that it may be changed. */
function withoutMark({ unlocked, fill, color, ...style }: StyleSpec): StyleSpec {
  if (unlocked === true) return style;
  return { ...style, ...(fill === undefined ? {} : { fill }), ...(color === undefined ? {} : { color }) };
}

/** Rows above the figures of the charts, and characters of their columns and of the gap before them. */
const FIGURES = { top: 2, width: 12, gap: 3 } as const;

/**
 * The charts with what they draw of other sheets beside the printed page, so that the sheet can be moved and sent alone.
 *
 * @param own what the sheet was called when its charts were written
 */
function withFigures(page: SheetSpec, own: string, values: ReadonlyMap<string, SheetValues>): SheetSpec {
  const columns: number[] = [...page.columns, FIGURES.gap];
  const cells: CellSpec[] = [];
  const placed = new Map<string, string>();
  const first = columns.length;
  const placeOf = (reference: string, head: string): string => {
    const { sheet = own, target } = referenceParts(reference);
    if (sheet === own) return target;
    const known = placed.get(reference);
    if (known !== undefined) return known;
    const column = columns.length;
    columns.push(FIGURES.width);
    cells.push({ at: addressOf(FIGURES.top - 1, column), v: head, style: "figureHead" });
    const { top, left, bottom } = boxOf(target);
    for (let row = top; row <= bottom; row += 1) {
      const value = values.get(sheet)?.get(addressOf(row, left));
      // A chart leaves out what is blank, and draws a text at nought.
      if (typeof value === "number")
        cells.push({ at: addressOf(FIGURES.top + row - top, column), v: value, style: "figure" });
    }
    const to = rangeOf({ top: FIGURES.top, left: column, bottom: FIGURES.top + bottom - top, right: column });
    placed.set(reference, to);
    return to;
  };
  const charts = (page.charts ?? []).map((chart): XYChartSpec => {
    const series = chart.series.map((one) => ({
      ...one,
      x: placeOf(one.x, chart.xTitle),
      y: placeOf(one.y, one.name),
    }));
    return { ...chart, series };
  });
  if (cells.length === 0) return { ...page, charts };
  const title: CellSpec = { at: addressOf(0, first), v: "Figures of the charts", style: "figureHead" };
  return {
    ...page,
    columns,
    styles: { ...page.styles, figure: STYLES.working, figureHead: STYLES.workingLabel },
    cells: [...page.cells, title, ...cells],
    charts,
  };
}
