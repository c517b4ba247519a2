import type { FUniver } from "@univerjs/core/facade";
import type {} from "@univerjs/preset-sheets-drawing";
import { boxOf } from "../shared/ports/a1.ts";
import { ChartView } from "./grid-chart.tsx";
import type { ChartPainter } from "./grid-charts.ts";

/** The grid's own row and column headers, px. */
const ROW_HEADER = 46;
const COLUMN_HEADER = 20;

/** Draws charts as SVG over the cells they cover. */
export function pageCharts(api: FUniver): ChartPainter {
  let drawn = 0;
  return {
    draw: (chart) => {
      const sheet = api.getActiveWorkbook()?.getSheetBySheetId(chart.sheet);
      if (sheet === null || sheet === undefined) throw new Error("the sheet of a chart is gone");
      const { top, left, bottom, right } = boxOf(chart.spec().at);
      let x = ROW_HEADER;
      for (let column = 0; column < left; column += 1) x += sheet.getColumnWidth(column);
      let width = 0;
      for (let column = left; column <= right; column += 1) width += sheet.getColumnWidth(column);
      let y = COLUMN_HEADER;
      for (let row = 0; row < top; row += 1) y += sheet.getRowHeight(row);
      let height = 0;
      for (let row = top; row <= bottom; row += 1) height += sheet.getRowHeight(row);

      drawn += 1;
      const key = `chart-${drawn}`;
      api.registerComponent(key, () => <ChartView chart={chart} width={width} height={height} />);
      // By position, not by range: a range wants the sheet rendered already, and is lost when sheets follow quickly.
      const floating = sheet.addFloatDomToPosition(
        {
          componentKey: key,
          allowTransform: false,
          initPosition: { startX: x, endX: x + width, startY: y, endY: y + height },
        },
        key,
      );
      if (floating === null || floating === undefined) throw new Error("the grid took no chart");
    },
  };
}
