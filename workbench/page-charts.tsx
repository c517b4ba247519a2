import type { FUniver } from "@univerjs/core/facade";
import type { FWorksheet } from "@univerjs/preset-sheets-core";
import type {} from "@univerjs/preset-sheets-drawing";
import type { ReactElement } from "react";
import { boxOf } from "../shared/ports/a1.ts";
import { fitted, type Size } from "../shared/ports/picture-fit.ts";
import { ChartView } from "./grid-chart.tsx";
import type { ChartPainter } from "./grid-charts.ts";

/** The grid's own row and column headers, px. */
const ROW_HEADER = 46;
const COLUMN_HEADER = 20;

/** Draws charts as SVG over the cells they cover, and pictures in their corner of them. */
export function pageCharts(api: FUniver): ChartPainter {
  let drawn = 0;

  const sheetOf = (id: string): FWorksheet => {
    const sheet = api.getActiveWorkbook()?.getSheetBySheetId(id);
    if (sheet === null || sheet === undefined) throw new Error("the sheet of a chart is gone");
    return sheet;
  };

  /** Puts something over the sheet. By position, not by range: a range wants the sheet rendered already, and is lost when sheets follow quickly. */
  const float = (sheet: FWorksheet, { x, y, width, height }: Place, view: () => ReactElement): void => {
    drawn += 1;
    const key = `chart-${drawn}`;
    api.registerComponent(key, view);
    const floating = sheet.addFloatDomToPosition(
      {
        componentKey: key,
        allowTransform: false,
        initPosition: { startX: x, endX: x + width, startY: y, endY: y + height },
      },
      key,
    );
    if (floating === null || floating === undefined) throw new Error("the grid took no chart");
  };

  return {
    draw: (chart) => {
      const sheet = sheetOf(chart.sheet);
      const place = placeOf(sheet, chart.spec().at);
      float(sheet, place, () => <ChartView chart={chart} width={place.width} height={place.height} />);
    },
    show: (picture, id) => {
      const sheet = sheetOf(id);
      const room = placeOf(sheet, picture.at);
      const source = `data:image/${picture.type};base64,${picture.base64}`;
      float(sheet, { ...room, ...fitted(picture, room) }, () => (
        <img src={source} alt={picture.altText} style={WHOLE} />
      ));
    },
  };
}

// Clicks and the wheel go through to the grid beneath.
const WHOLE = {
  display: "block",
  width: "100%",
  height: "100%",
  // The grid takes a few pixels off either side.
  objectFit: "contain",
  objectPosition: "left top",
  pointerEvents: "none",
} as const;

/** Pixels from the corner of the grid. */
interface Place extends Size {
  readonly x: number;
  readonly y: number;
}

function placeOf(sheet: FWorksheet, range: string): Place {
  const { top, left, bottom, right } = boxOf(range);
  let x = ROW_HEADER;
  for (let column = 0; column < left; column += 1) x += sheet.getColumnWidth(column);
  let width = 0;
  for (let column = left; column <= right; column += 1) width += sheet.getColumnWidth(column);
  let y = COLUMN_HEADER;
  for (let row = 0; row < top; row += 1) y += sheet.getRowHeight(row);
  let height = 0;
  for (let row = top; row <= bottom; row += 1) height += sheet.getRowHeight(row);
  return { x, y, width, height };
}
