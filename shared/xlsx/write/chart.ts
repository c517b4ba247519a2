import { absolute, addressOf, boxOf } from "../../ports/a1.ts";
import { referenceParts } from "../../ports/reference.ts";
import { quotedSheetName } from "../../ports/sheet-name.ts";
import type { XYChartSpec, XYSeries } from "../../ports/sheet-spec.ts";
import { DECLARATION, xmlText } from "../xml-text.ts";
import type { FileCell } from "./file-cells.ts";
import { CHART, DRAWING, RELATIONSHIPS } from "./schemas.ts";
import { fileColor } from "./styles.ts";

/** What a chart reads: the sheet it stands on, by name, and the cells of any sheet, as far as they are known. */
export interface ChartData {
  readonly sheet: string;
  readonly cellsOf: (sheet: string) => ReadonlyMap<string, FileCell> | undefined;
}

interface Axes {
  readonly x: number;
  readonly y: number;
}

const MAIN_AXES: Axes = { x: 100, y: 101 };
const SECOND_AXES: Axes = { x: 300, y: 301 };
const EMU_PER_POINT = 12_700;
const COLORS = ["#1F4E79", "#B5541C", "#3B7A57", "#7A4B8C", "#8C7A1F", "#4F5B66"];

/** An x-y chart bound to its cells, with the figures of the moment kept beside. Points are joined straight: no curve between them is ours to invent. */
export function chartPart(chart: XYChartSpec, data: ChartData): string {
  const first = chart.series.filter(({ secondAxis }) => secondAxis !== true);
  const second = chart.series.filter(({ secondAxis }) => secondAxis === true);
  const fromZero = chart.xFromZero === true;
  const numberOf = (series: XYSeries): number => chart.series.indexOf(series);
  const group = (series: readonly XYSeries[], { x, y }: Axes): string =>
    `<c:scatterChart><c:scatterStyle val="lineMarker"/><c:varyColors val="0"/>${series
      .map((one) => seriesElement(one, numberOf(one), data))
      .join("")}<c:axId val="${x}"/><c:axId val="${y}"/></c:scatterChart>`;
  const plot = [
    group(first, MAIN_AXES),
    second.length === 0 ? "" : group(second, SECOND_AXES),
    axis({ id: MAIN_AXES.x, crosses: MAIN_AXES.y, side: "b", title: chart.xTitle, gridlines: true, fromZero }),
    axis({ id: MAIN_AXES.y, crosses: MAIN_AXES.x, side: "l", title: chart.yTitle, gridlines: true }),
    second.length === 0
      ? ""
      : axis({ id: SECOND_AXES.y, crosses: SECOND_AXES.x, side: "r", title: chart.secondTitle, atFarEnd: true }) +
        axis({ id: SECOND_AXES.x, crosses: SECOND_AXES.y, side: "b", hidden: true, fromZero }),
  ];
  return `${DECLARATION}<c:chartSpace xmlns:c="${CHART}" xmlns:a="${DRAWING}" xmlns:r="${RELATIONSHIPS}"><c:roundedCorners val="0"/><c:chart>${title(
    chart.title,
    { size: 12, bold: true },
  )}<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/>${plot.join("")}</c:plotArea><c:legend><c:legendPos val="b"/><c:overlay val="0"/></c:legend><c:plotVisOnly val="0"/><c:dispBlanksAs val="gap"/></c:chart></c:chartSpace>`;
}

function seriesElement(series: XYSeries, number: number, data: ChartData): string {
  const color = fileColor(series.color ?? (COLORS[number % COLORS.length] as string));
  const solid = `<a:solidFill><a:srgbClr val="${color}"/></a:solidFill>`;
  const line = series.pointsOnly === true ? "<a:noFill/>" : `${solid}${dashOf(series)}<a:round/>`;
  const marker =
    series.markers === true || series.pointsOnly === true ? markerElements(series, solid) : '<c:symbol val="none"/>';
  return `<c:ser><c:idx val="${number}"/><c:order val="${number}"/><c:tx><c:v>${xmlText(series.name)}</c:v></c:tx><c:spPr><a:ln w="${
    (series.thin === true ? THIN : USUAL) * EMU_PER_POINT
  }" cap="rnd">${line}</a:ln></c:spPr><c:marker>${marker}</c:marker>${numbers("xVal", series.x, data)}${numbers(
    "yVal",
    series.y,
    data,
  )}<c:smooth val="0"/></c:ser>`;
}

/** Points of a line. */
const USUAL = 1.75;
const THIN = 0.75;

/** A cross has no inside to fill. */
function markerElements({ marker = "circle" }: XYSeries, solid: string): string {
  const symbol = marker === "cross" ? "x" : marker;
  const line = `<a:ln w="${marker === "cross" ? 19_050 : 9525}">${solid}</a:ln>`;
  const fill = marker === "cross" ? "<a:noFill/>" : solid;
  return `<c:symbol val="${symbol}"/><c:size val="${MARKER_SIZE}"/><c:spPr>${fill}${line}</c:spPr>`;
}

/** Points. */
const MARKER_SIZE = 8;

function dashOf({ dashed, dotted }: XYSeries): string {
  if (dashed !== true && dotted !== true) return "";
  return `<a:prstDash val="${dotted !== true ? "dash" : dashed === true ? "dashDot" : "sysDot"}"/>`;
}

function numbers(tag: "xVal" | "yVal", reference: string, { sheet: own, cellsOf }: ChartData): string {
  const { sheet = own, target: range } = referenceParts(reference);
  const cells = cellsOf(sheet);
  const { top, left, bottom, right } = boxOf(range);
  const points: string[] = [];
  let count = 0;
  for (let row = top; row <= bottom; row += 1)
    for (let column = left; column <= right; column += 1) {
      const value = cells?.get(addressOf(row, column))?.value;
      if (typeof value === "number") points.push(`<c:pt idx="${count}"><c:v>${value}</c:v></c:pt>`);
      count += 1;
    }
  return `<c:${tag}><c:numRef><c:f>${xmlText(`${quotedSheetName(sheet)}!${absolute(range)}`)}</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val="${count}"/>${points.join("")}</c:numCache></c:numRef></c:${tag}>`;
}

interface AxisSpec {
  readonly id: number;
  readonly crosses: number;
  readonly side: "b" | "l" | "r";
  readonly title?: string | undefined;
  readonly gridlines?: boolean;
  readonly hidden?: boolean;
  readonly atFarEnd?: boolean;
  readonly fromZero?: boolean;
}

function axis({ id, crosses, side, title: words, gridlines, hidden, atFarEnd, fromZero }: AxisSpec): string {
  const lines =
    gridlines === true
      ? '<c:majorGridlines><c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="D9D9D9"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>'
      : "";
  const label = words === undefined ? "" : title(words, { size: 10, bold: false, upright: side !== "b" });
  return `<c:valAx><c:axId val="${id}"/><c:scaling><c:orientation val="minMax"/>${
    fromZero === true ? '<c:min val="0"/>' : ""
  }</c:scaling><c:delete val="${
    hidden === true ? 1 : 0
  }"/><c:axPos val="${side}"/>${lines}${label}<c:numFmt formatCode="General" sourceLinked="0"/><c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="nextTo"/><c:crossAx val="${crosses}"/><c:crosses val="${
    atFarEnd === true ? "max" : "autoZero"
  }"/><c:crossBetween val="midCat"/></c:valAx>`;
}

function title(
  words: string,
  { size, bold, upright }: { readonly size: number; readonly bold: boolean; readonly upright?: boolean },
): string {
  const facts = `sz="${size * 100}" b="${bold ? 1 : 0}"`;
  const body = upright === true ? '<a:bodyPr rot="-5400000" vert="horz"/>' : "<a:bodyPr/>";
  return `<c:title><c:tx><c:rich>${body}<a:lstStyle/><a:p><a:pPr><a:defRPr ${facts}/></a:pPr><a:r><a:rPr lang="en-GB" ${facts}/><a:t>${xmlText(
    words,
  )}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`;
}
