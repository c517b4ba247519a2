import type { Cell } from "../shared/cells/cell.ts";
import { referenceParts, writtenFrom } from "../shared/ports/reference.ts";
import type { PictureSpec, SheetSpec, XYChartSpec, XYSeries } from "../shared/ports/sheet-spec.ts";
import type { GridInside } from "./grid-inside.ts";

/** Draws charts and pictures over the grid. The page has one; the headless grid has none. */
export interface ChartPainter {
  readonly draw: (chart: LiveChart) => void;
  readonly show: (picture: PictureSpec, sheet: string) => void;
}

/** A chart on a sheet of the grid: its ranges follow inserted and deleted rows and columns. */
export interface LiveChart {
  readonly sheet: string;
  /** The spec as it stands now. */
  readonly spec: () => XYChartSpec;
  /** The points of each series; cells that are no numbers are left out. */
  readonly points: () => readonly SeriesPoints[];
  /** Calls back after edits and calculations; the answer unsubscribes. */
  readonly onChange: (callback: () => void) => () => void;
}

export type SeriesPoints = readonly (readonly [x: number, y: number])[];

/** Keeps the ranges of a sheet's charts and pictures as hidden names, which the grid moves along with the cells. */
export function anchorCharts(
  inside: GridInside,
  workbook: string,
  sheet: string,
  sheetName: string,
  { charts = [], pictures = [] }: Pick<SheetSpec, "charts" | "pictures">,
): void {
  for (const [i, { at }] of pictures.entries()) inside.setName(workbook, sheet, sheetName, pictureAnchor(i), at);
  for (const [i, chart] of charts.entries()) {
    const set = (name: string, reference: string): void => {
      const { sheet: on = sheetName, target } = referenceParts(reference);
      inside.setName(workbook, sheet, on, name, target);
    };
    set(anchor(i), chart.at);
    for (const [j, { x, y }] of chart.series.entries()) {
      set(anchor(i, j, "x"), x);
      set(anchor(i, j, "y"), y);
    }
  }
}

/** A chart with the ranges where they stand now. A series whose cells are gone is left out. */
export function anchoredChart(
  inside: GridInside,
  workbook: string,
  sheet: string,
  sheetName: string,
  chart: XYChartSpec,
  index: number,
): XYChartSpec {
  const ranges = new Map(
    inside
      .namesOf(workbook, sheet)
      .map(({ name, range, on }) => [name, range === undefined ? undefined : writtenFrom(sheetName, on, range)]),
  );
  return {
    ...chart,
    at: ranges.get(anchor(index)) ?? chart.at,
    series: chart.series.flatMap((series, j): readonly XYSeries[] => {
      const x = ranges.get(anchor(index, j, "x"));
      const y = ranges.get(anchor(index, j, "y"));
      return x === undefined || y === undefined ? [] : [{ ...series, x, y }];
    }),
  };
}

/** A picture with its range where that stands now; where it stood once its cells are gone. */
export function anchoredPicture(
  inside: GridInside,
  workbook: string,
  sheet: string,
  picture: PictureSpec,
  index: number,
): PictureSpec {
  const anchor = inside.namesOf(workbook, sheet).find(({ name }) => name === pictureAnchor(index));
  return { ...picture, at: anchor?.range ?? picture.at };
}

function pictureAnchor(picture: number): string {
  return `picture ${picture}`;
}

/** No name that a user can give has a space. */
function anchor(chart: number, series?: number, axis?: "x" | "y"): string {
  return series === undefined ? `chart ${chart}` : `chart ${chart} series ${series} ${axis}`;
}

export function isChartAnchor(name: string): boolean {
  return name.includes(" ");
}

/** Pairs two ranges cell by cell, in reading order. */
export function pointsOf(x: readonly (readonly Cell[])[], y: readonly (readonly Cell[])[]): SeriesPoints {
  const ys = y.flat();
  return x.flat().flatMap((value, i): SeriesPoints => {
    const other = ys[i];
    return typeof value === "number" && typeof other === "number" ? [[value, other]] : [];
  });
}
