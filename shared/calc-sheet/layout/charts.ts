import type { ChartsItem } from "../plan.ts";
import { CHART_ROW_HEIGHT, CHART_ROWS, divided, type Stretch } from "./columns.ts";
import type { Page } from "./page.ts";

/** Rows of a chart that is as tall as there is room. */
const FILLING_ROWS = 12;

/** Charts: one over the whole width, or two side by side. */
export function placeCharts(page: Page, { charts, fillsPage }: ChartsItem): void {
  const count = fillsPage ? FILLING_ROWS : CHART_ROWS;
  const parts = divided(charts.map(() => 1));
  charts.forEach((chart, i) => {
    const [left, right] = parts[i] as Stretch;
    page.chart(chart, { top: page.row, bottom: page.row + count - 1, left, right });
  });
  if (fillsPage) {
    page.fill(count);
    return;
  }
  for (let i = 0; i < count; i += 1) page.height(CHART_ROW_HEIGHT, page.row + i);
  page.row += count;
}
