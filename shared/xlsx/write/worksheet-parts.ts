import type { PictureSpec, SheetSpec } from "../../ports/sheet-spec.ts";
import { bytesOf } from "../../text/base64.ts";
import { chartPart } from "./chart.ts";
import { drawingPart } from "./drawing.ts";
import type { FileCell } from "./file-cells.ts";
import type { FreePath } from "./free-paths.ts";
import type { MediaPart, Part } from "./package.ts";
import { type SheetTables, sheetPart } from "./sheet.ts";

/** A sheet with its cells as the file will hold them. */
export interface SheetInFile {
  readonly spec: SheetSpec;
  readonly cells: ReadonlyMap<string, FileCell>;
}

/** The parts of the sheets, each with its drawing, charts and pictures; the same picture stands in the file once. */
export function worksheetParts(
  sheets: readonly SheetInFile[],
  tables: SheetTables,
  freePath: FreePath,
  shown: number | undefined,
): readonly Part[] {
  const media = new Map<string, MediaPart>();
  const mediaOf = (picture: PictureSpec): MediaPart => {
    const part = media.get(picture.base64) ?? mediaPart(picture, freePath);
    media.set(picture.base64, part);
    return part;
  };
  const bySheet = new Map(sheets.map(({ spec, cells }) => [spec.name.toLowerCase(), cells]));
  const cellsOf = (name: string) => bySheet.get(name.toLowerCase());
  return sheets.map(({ spec, cells }, i): Part => {
    const path = freePath("xl/worksheets/sheet", "xml");
    const charts = (spec.charts ?? []).map(
      (chart): Part => ({
        path: freePath("xl/charts/chart", "xml"),
        type: "chart",
        text: chartPart(chart, { sheet: spec.name, cellsOf }),
      }),
    );
    const drawn = [...charts, ...(spec.pictures ?? []).map(mediaOf)];
    const drawing = (): Part => ({
      path: freePath("xl/drawings/drawing", "xml"),
      type: "drawing",
      text: drawingPart(spec),
      pointsTo: drawn,
    });
    return {
      path,
      type: "worksheet",
      text: sheetPart(spec, cells, tables, i === shown),
      pointsTo: drawn.length > 0 ? [drawing()] : [],
    };
  });
}

function mediaPart({ at, base64, type }: PictureSpec, freePath: FreePath): MediaPart {
  const bytes = bytesOf(base64);
  if (bytes === undefined) throw new Error(`${at}: the picture is no base64 text`);
  return { path: freePath("xl/media/image", type), type, bytes };
}
