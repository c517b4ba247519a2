import { type Box, rangeOf } from "../../ports/a1.ts";
import type { XYChartSpec } from "../../ports/sheet-spec.ts";
import type { ChartFacts, ChartsItem, CurveItem, SeriesFacts } from "../plan.ts";
import { CHART_ROWS, LABEL, LAST, LINE_HEIGHT, REMARK, UNIT } from "./columns.ts";
import type { Page } from "./page.ts";

/** A spilled table of two columns with its chart to the left. */
export function placeCurve(page: Page, curve: CurveItem): void {
  const top = page.row;
  const bottom = top + curve.rows - 1;
  const range = { top, left: REMARK, bottom, right: REMARK + 1 };
  page.keepSpill(curve.key, { range, top: top + 1, bottom, columns: { x: REMARK, y: REMARK + 1 } });
  curve.quantities.forEach((quantity, i) => {
    const style = page.numberStyle(quantity);
    for (let row = 1; row < curve.rows; row += 1) page.put(REMARK + i, { style }, top + row);
  });
  page.put(REMARK + 1, { style: "tableHead" });
  page.spill(range, curve.expression, curve.key, "tableHead");
  page.height(LINE_HEIGHT * 2);
  const column = (of: "x" | "y"): SeriesFacts["x"] => ({ op: "column", key: curve.key, column: of });
  const chart: ChartFacts = {
    title: curve.label,
    xTitle: curve.xTitle,
    yTitle: curve.yTitle,
    series: [
      { name: curve.label, x: column("x"), y: column("y"), color: "#0B5A5E" },
      ...curve.marks.map(({ label, x, y }) => ({
        name: label,
        x,
        y,
        color: "#C2410C",
        pointsOnly: true,
      })),
    ],
  };
  page.chart(() => chartSpec(page, chart, { top, left: LABEL, bottom: top + CHART_ROWS - 1, right: UNIT }));
  page.row += CHART_ROWS;
}

/** Charts alone: one over the whole width, two side by side, or one to the left of a table above. */
export function placeCharts(page: Page, { charts, beside, extraRows = 0 }: ChartsItem): void {
  const [first, second] = charts;
  if (first === undefined) return;
  if (beside !== undefined) {
    const { top } = page.tableAt(beside.key)?.range ?? { top: page.row };
    page.chart(() => chartSpec(page, first, { top, bottom: top + CHART_ROWS - 1, left: LABEL, right: UNIT }));
    return;
  }
  const rows = { top: page.row, bottom: page.row + CHART_ROWS + extraRows - 1 };
  page.chart(() => chartSpec(page, first, { ...rows, left: LABEL, right: second === undefined ? LAST : UNIT }));
  if (second !== undefined) page.chart(() => chartSpec(page, second, { ...rows, left: REMARK, right: LAST }));
  page.row += CHART_ROWS + extraRows;
}

function chartSpec(page: Page, chart: ChartFacts, box: Box): XYChartSpec {
  const { series, ...titles } = chart;
  return {
    at: rangeOf(box),
    ...titles,
    series: series.flatMap(({ x, y, ...rest }) => {
      const [xs, ys] = [page.seriesRange(x), page.seriesRange(y)];
      if (xs === undefined || ys === undefined) return [];
      return [{ ...rest, ...(rest.pointsOnly === true ? { markers: true } : {}), x: xs, y: ys }];
    }),
  };
}
