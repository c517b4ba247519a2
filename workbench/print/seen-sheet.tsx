import type { ICellData, IStyleData, Nullable } from "@univerjs/core";
import { renderToStaticMarkup } from "react-dom/server";
import { addressOf, type Box, boxOf } from "../../shared/ports/a1.ts";
import { referenceParts } from "../../shared/ports/reference.ts";
import type { SheetSpec, StyleSpec, XYChartSpec } from "../../shared/ports/sheet-spec.ts";
import { type SheetValues, valuesOf } from "../../shared/ports/sheet-values.ts";
import { ChartPicture } from "../grid-chart.tsx";
import { pointsOf, type SeriesPoints } from "../grid-charts.ts";
import type { Grid, GridHost } from "../grid-host.ts";
import { cellContent } from "../grid-sheet.ts";
import { gridSnapshot } from "../grid-snapshot.ts";
import { styleSpec } from "../grid-style.ts";
import { type Drawing, pictureMarkup, type SeenCell, type SheetToPrint } from "./sheet-to-print.ts";

/** The grid's kinds of content. */
const NUMBER = 2;
const BOOLEAN = 3;

/** The sheet in front as the grid shows it: texts in their number formats, looks with those of rules, charts as they stand. */
export function seenSheet(grid: Grid, host: GridHost): SheetToPrint {
  const workbook = grid.api.getActiveWorkbook();
  if (workbook === null) throw new Error("no workbook is open");
  const front = workbook.getActiveSheet();
  const name = front.getSheetName();
  const specs = gridSnapshot(grid, host);
  const spec = specs.find((one) => one.name === name);
  if (spec === undefined) throw new Error(`the sheet ${name} is gone`);
  const sheet = front.getSheet();
  const { rowData, columnData } = sheet.getConfig();
  const styles = workbook.getWorkbook().getStyles();
  const look = (style: Nullable<string | IStyleData>): StyleSpec => {
    const given = typeof style === "string" ? host.styleOf(style) : undefined;
    const own = given === undefined && style !== null && style !== undefined ? styles.get(style) : undefined;
    return given ?? (own === null || own === undefined ? {} : styleSpec(own));
  };
  const isHidden = (of: Nullable<{ hd?: number }>): boolean => of?.hd === 1;
  return {
    name,
    print: spec.print,
    used: extentOf(spec),
    widthOf: (column) => (isHidden(columnData[column]) ? 0 : front.getColumnWidth(column)),
    heightOf: (row) => (isHidden(rowData[row]) ? 0 : front.getRowHeight(row)),
    cellAt: (row, column) => {
      const cell: Nullable<ICellData> = sheet.getCell(row, column);
      return cell === null || cell === undefined ? undefined : seenCell(cell, look(cell.s));
    },
    merges: (spec.merges ?? []).map(boxOf),
    drawings: [
      ...(spec.charts ?? []).map((chart): Drawing => {
        const points = seriesOf(chart, spec.name, specs);
        return {
          at: boxOf(chart.at),
          markup: (width, height) =>
            renderToStaticMarkup(<ChartPicture spec={chart} points={points} width={width} height={height} />),
        };
      }),
      ...(spec.pictures ?? []).map(
        (picture): Drawing => ({ at: boxOf(picture.at), markup: () => pictureMarkup(picture) }),
      ),
    ],
  };
}

function seenCell(cell: ICellData, style: StyleSpec): SeenCell {
  if (cell.t === BOOLEAN) return { text: cellContent(cell) === true ? "TRUE" : "FALSE", kind: "other", style };
  const content = cellContent(cell);
  if (typeof content === "object" && content !== null) return { text: content.error, kind: "other", style };
  // A number comes as the text it is shown by.
  return {
    text: content === null ? "" : String(cell.p ? content : cell.v),
    kind: cell.t === NUMBER ? "number" : "text",
    style,
  };
}

/** From A1 to the last cell that holds something. */
function extentOf({ cells, charts = [] }: SheetSpec): Box {
  const boxes = [
    ...cells.filter(({ v, f }) => v !== undefined || f !== undefined).map(({ at, spill }) => boxOf(spill ?? at)),
    ...charts.map(({ at }) => boxOf(at)),
  ];
  const last = (side: "bottom" | "right"): number => boxes.reduce((most, box) => Math.max(most, box[side]), 0);
  return { top: 0, left: 0, bottom: last("bottom"), right: last("right") };
}

/** The points of each series, out of the sheets they stand on. */
function seriesOf({ series }: XYChartSpec, own: string, specs: readonly SheetSpec[]): readonly SeriesPoints[] {
  const known = new Map<string, SheetValues>();
  const cellsOf = (reference: string) => {
    const { sheet = own, target } = referenceParts(reference);
    const spec = specs.find(({ name }) => name.toLowerCase() === sheet.toLowerCase());
    const values = known.get(sheet) ?? (spec === undefined ? new Map() : valuesOf(spec));
    known.set(sheet, values);
    const { top, left, bottom, right } = boxOf(target);
    return Array.from({ length: bottom - top + 1 }, (_row, i) =>
      Array.from({ length: right - left + 1 }, (_cell, j) => values.get(addressOf(top + i, left + j)) ?? null),
    );
  };
  return series.map(({ x, y }) => pointsOf(cellsOf(x), cellsOf(y)));
}
