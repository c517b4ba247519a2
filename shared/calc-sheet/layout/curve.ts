import type { ChartFacts, ChartsItem, CurveItem, SeriesFacts } from "../plan.ts";
import { CHART_ROWS, LABEL, NUMBER, REFERENCE, REMARK, UNIT } from "./columns.ts";
import type { Page } from "./page.ts";
import { placeSpill } from "./tables.ts";

/** A chart over the whole width, what it draws spilled in the workings. */
export function placeCurve(page: Page, curve: CurveItem): void {
  const [x, y] = curve.quantities;
  page.work((workings) => {
    const columns = [
      { key: "x", quantity: x },
      { key: "y", quantity: y },
    ];
    placeSpill(workings, { ...curve, kind: "spill", columns });
  });
  const column = (of: "x" | "y"): SeriesFacts["x"] => ({ op: "column", key: curve.key, column: of });
  const chart: ChartFacts = {
    title: curve.label,
    xTitle: curve.xTitle,
    yTitle: curve.yTitle,
    series: [
      { name: curve.label, x: column("x"), y: column("y"), color: "#0B5A5E" },
      ...curve.marks.map(({ label, x: at, y: of }) => ({
        name: label,
        x: at,
        y: of,
        color: "#C2410C",
        pointsOnly: true,
      })),
    ],
  };
  placeCharts(page, { kind: "charts", charts: [chart] });
}

/** Charts alone: one over the whole width, two side by side, or one to the left of a table above. */
export function placeCharts(page: Page, { charts, beside, extraRows = 0 }: ChartsItem): void {
  const [first, second] = charts;
  if (first === undefined) return;
  if (beside !== undefined) {
    const { top } = page.tableAt(beside.key)?.range ?? { top: page.row };
    page.chart(first, { top, bottom: top + CHART_ROWS - 1, left: LABEL, right: UNIT });
    return;
  }
  const rows = { top: page.row, bottom: page.row + CHART_ROWS + extraRows - 1 };
  page.chart(first, { ...rows, left: NUMBER, right: second === undefined ? REFERENCE : UNIT });
  if (second !== undefined) page.chart(second, { ...rows, left: REMARK, right: REFERENCE });
  page.row += CHART_ROWS + extraRows;
}
