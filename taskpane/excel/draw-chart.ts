import { referenceParts } from "../../shared/ports/reference.ts";
import type { MarkerShape, XYChartSpec, XYSeries } from "../../shared/ports/sheet-spec.ts";

/** A chart just added, with the series Excel guessed for it. */
export interface StartedChart {
  readonly chart: Excel.Chart;
  readonly guessed: Excel.ChartSeriesCollection;
  readonly spec: XYChartSpec;
}

/** Adds the chart in its place. Excel makes series of its own from the source; how many is known after the next sync. */
export function startChart(sheet: Excel.Worksheet, spec: XYChartSpec): StartedChart {
  const first = spec.series[0];
  if (first === undefined) throw new Error(`the chart “${spec.title}” has no series`);
  const chart = sheet.charts.add("XYScatterLinesNoMarkers", rangeAt(sheet, first.y), "Columns");
  const [from, to] = spec.at.split(":");
  chart.setPosition(from as string, to);
  return { chart, guessed: chart.series.load("count"), spec };
}

/** Puts our series in place of the guessed ones, and titles. */
export function finishChart(sheet: Excel.Worksheet, { chart, guessed, spec }: StartedChart): void {
  const surplus = guessed.count;
  const ranges = new Map<string, Excel.Range>();
  const at = (reference: string): Excel.Range => {
    const range = ranges.get(reference) ?? rangeAt(sheet, reference);
    ranges.set(reference, range);
    return range;
  };
  for (const series of spec.series) drawSeries(at, chart.series.add(series.name), series);
  for (let i = surplus - 1; i >= 0; i -= 1) chart.series.getItemAt(i).delete();
  chart.title.text = spec.title;
  chart.axes.categoryAxis.title.text = spec.xTitle;
  chart.axes.valueAxis.title.text = spec.yTitle;
  if (spec.secondTitle !== undefined && spec.series.some(({ secondAxis }) => secondAxis === true)) {
    chart.axes.getItem("Value", "Secondary").title.text = spec.secondTitle;
  }
  if (spec.xFromZero === true) chart.axes.categoryAxis.minimum = 0;
  chart.legend.visible = spec.series.length > 1;
  chart.legend.position = "Bottom";
}

const MARKERS = {
  circle: "Circle",
  square: "Square",
  diamond: "Diamond",
  triangle: "Triangle",
  cross: "X",
} as const satisfies Record<MarkerShape, Excel.ChartSeries["markerStyle"]>;

/** Points. */
const MARKER_SIZE = 8;
const THIN = 0.75;

function drawSeries(at: (reference: string) => Excel.Range, drawn: Excel.ChartSeries, spec: XYSeries): void {
  const pointsOnly = spec.pointsOnly === true;
  const markers = pointsOnly || spec.markers === true;
  drawn.chartType = pointsOnly ? "XYScatter" : markers ? "XYScatterLines" : "XYScatterLinesNoMarkers";
  drawn.setXAxisValues(at(spec.x));
  drawn.setValues(at(spec.y));
  drawn.markerStyle = markers ? MARKERS[spec.marker ?? "circle"] : "None";
  if (markers) drawn.markerSize = MARKER_SIZE;
  if (spec.secondAxis === true) drawn.axisGroup = "Secondary";
  if (spec.color !== undefined) {
    if (!pointsOnly) drawn.format.line.color = spec.color;
    if (markers) {
      drawn.markerBackgroundColor = spec.color;
      drawn.markerForegroundColor = spec.color;
    }
  }
  if (pointsOnly) return;
  if (spec.thin === true) drawn.format.line.weight = THIN;
  if (spec.dotted === true) drawn.format.line.lineStyle = spec.dashed === true ? "DashDot" : "Dot";
  else if (spec.dashed === true) drawn.format.line.lineStyle = "Dash";
}

/** A range of the chart's own sheet, or of the one it names. */
function rangeAt(sheet: Excel.Worksheet, reference: string): Excel.Range {
  const { sheet: name, target } = referenceParts(reference);
  return (name === undefined ? sheet : sheet.context.workbook.worksheets.getItem(name)).getRange(target).untrack();
}
