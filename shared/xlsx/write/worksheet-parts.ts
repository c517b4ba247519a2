import type { SheetSpec } from "../../ports/sheet-spec.ts";
import { chartPart } from "./chart.ts";
import { drawingPart } from "./drawing.ts";
import type { FileCell } from "./file-cells.ts";
import type { FreePath } from "./free-paths.ts";
import type { Part } from "./package.ts";
import { type SheetTables, sheetPart } from "./sheet.ts";

/** A sheet with its cells as the file will hold them. */
export interface SheetInFile {
  readonly spec: SheetSpec;
  readonly cells: ReadonlyMap<string, FileCell>;
}

/** The parts of the sheets, each with its drawing and charts. */
export function worksheetParts(
  sheets: readonly SheetInFile[],
  tables: SheetTables,
  freePath: FreePath,
  shown: number | undefined,
): readonly Part[] {
  return sheets.map(({ spec, cells }, i): Part => {
    const path = freePath("xl/worksheets/sheet", "xml");
    const charts = (spec.charts ?? []).map(
      (chart): Part => ({
        path: freePath("xl/charts/chart", "xml"),
        type: "chart",
        text: chartPart(chart, { sheet: spec.name, cells }),
      }),
    );
    const drawing = (): Part => ({
      path: freePath("xl/drawings/drawing", "xml"),
      type: "drawing",
      text: drawingPart(spec.charts ?? []),
      pointsTo: charts,
    });
    return {
      path,
      type: "worksheet",
      text: sheetPart(spec, cells, tables, i === shown),
      pointsTo: charts.length > 0 ? [drawing()] : [],
    };
  });
}
