import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import { useEffect, useState } from "react";
import type { MarkerShape, XYChartSpec, XYSeries } from "../shared/ports/sheet-spec.ts";
import { greatestOf, leastOf } from "../src/numeric/extremes.ts";
import type { LiveChart, SeriesPoints } from "./grid-charts.ts";

const COLOURS = ["#1F5F8B", "#B4532A", "#4B7F52", "#7A5195", "#8A6D1D", "#5B6770"] as const;
const INK = "#2B3A48";
const FAINT = "#5B6770";
const GRID = "#E3E8ED";

interface PictureProps {
  readonly spec: XYChartSpec;
  readonly points: readonly SeriesPoints[];
  readonly width: number;
  readonly height: number;
}

/** An XY chart: straight lines between points, one or two vertical axes, round numbers at the ticks. */
export function ChartPicture({ spec, points, width, height }: PictureProps) {
  const twoAxes = spec.series.some((series) => series.secondAxis === true);
  const left = 58;
  const right = width - (twoAxes ? 58 : 18);
  const legend = spec.series.length > 1 ? legendPlaces(spec.series, right - left) : [];
  const top = 36 + LEGEND_ROW * ((legend.at(-1)?.row ?? -1) + 1);
  const bottom = height - 46;
  const across = scale(points.flat(), 0, [left, right], spec.xFromZero === true);
  const first = scale(ofAxis(spec, points, false), 1, [bottom, top]);
  const second = scale(ofAxis(spec, points, true), 1, [bottom, top]);
  const columns = Math.max(2, Math.floor((right - left) / 70));
  const rows = Math.max(2, Math.floor((bottom - top) / 42));
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${width} ${height}`}
      width="100%"
      height="100%"
      role="img"
      aria-label={`Chart: ${spec.title}`}
      fontFamily="Arial, sans-serif"
      fontSize="11"
    >
      <title>{spec.title}</title>
      <text x={width / 2} y={20} textAnchor="middle" fontSize="13" fontWeight="bold" fill={INK}>
        {spec.title}
      </text>
      {legend.length > 0 && <Legend places={legend} left={left} />}
      {first.ticks(rows).map((tick) => (
        <g key={tick}>
          <line x1={left} x2={right} y1={first(tick)} y2={first(tick)} stroke={GRID} />
          <text x={left - 7} y={first(tick) + 4} textAnchor="end" fill={FAINT}>
            {first.tickFormat(rows)(tick)}
          </text>
        </g>
      ))}
      {across.ticks(columns).map((tick) => (
        <g key={tick}>
          <line x1={across(tick)} x2={across(tick)} y1={top} y2={bottom} stroke={GRID} />
          <text x={across(tick)} y={bottom + 15} textAnchor="middle" fill={FAINT}>
            {across.tickFormat(columns)(tick)}
          </text>
        </g>
      ))}
      {twoAxes &&
        second.ticks(rows).map((tick) => (
          <text key={tick} x={right + 7} y={second(tick) + 4} fill={FAINT}>
            {second.tickFormat(rows)(tick)}
          </text>
        ))}
      <path d={`M${left} ${top}V${bottom}H${right}${twoAxes ? `V${top}` : ""}`} fill="none" stroke="#8795A1" />
      <text x={(left + right) / 2} y={height - 10} textAnchor="middle" fill={INK}>
        {spec.xTitle}
      </text>
      <AxisTitle x={16} y={(top + bottom) / 2} text={spec.yTitle} />
      {twoAxes && <AxisTitle x={width - 10} y={(top + bottom) / 2} text={spec.secondTitle ?? ""} />}
      {spec.series.map((series, i) => {
        const vertical = series.secondAxis === true ? second : first;
        const placed = (points[i] ?? []).map(([x, y]) => [across(x), vertical(y)] as const);
        return <Series key={series.name} series={series} colour={colourOf(series, i)} placed={placed} />;
      })}
      {points.every((series) => series.length === 0) && (
        <text x={(left + right) / 2} y={(top + bottom) / 2} textAnchor="middle" fill={FAINT}>
          No numbers to draw
        </text>
      )}
    </svg>
  );
}

function Series({
  series,
  colour,
  placed,
}: {
  readonly series: XYSeries;
  readonly colour: string;
  readonly placed: SeriesPoints;
}) {
  const path = line()(placed.map(([x, y]): [number, number] => [x, y])) ?? "";
  return (
    <g data-series={series.name}>
      {series.pointsOnly !== true && (
        <path
          d={path}
          fill="none"
          stroke={colour}
          strokeWidth={widthOf(series)}
          strokeLinejoin="round"
          {...dashesOf(series)}
        />
      )}
      {(series.markers === true || series.pointsOnly === true) &&
        placed.map(([x, y]) => (
          <Marker
            key={`${x} ${y}`}
            shape={series.marker}
            x={x}
            y={y}
            radius={series.pointsOnly === true ? 4.5 : 3}
            colour={colour}
          />
        ))}
    </g>
  );
}

/** Points told apart by their shape. */
function Marker({
  shape = "circle",
  x,
  y,
  radius: r,
  colour,
}: {
  readonly shape: MarkerShape | undefined;
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly colour: string;
}) {
  if (shape === "circle") return <circle cx={x} cy={y} r={r} fill={colour} stroke="#FFFFFF" />;
  const path = {
    square: `M${x - r} ${y - r}h${2 * r}v${2 * r}h${-2 * r}Z`,
    diamond: `M${x} ${y - 1.3 * r}L${x + 1.3 * r} ${y}L${x} ${y + 1.3 * r}L${x - 1.3 * r} ${y}Z`,
    triangle: `M${x} ${y - 1.2 * r}L${x + 1.2 * r} ${y + r}H${x - 1.2 * r}Z`,
    cross: `M${x - r} ${y - r}L${x + r} ${y + r}M${x - r} ${y + r}L${x + r} ${y - r}`,
  }[shape];
  return shape === "cross" ? (
    <path d={path} fill="none" stroke={colour} strokeWidth={2.5} />
  ) : (
    <path d={path} fill={colour} stroke="#FFFFFF" />
  );
}

/** Where an entry of the legend stands, px from its left edge. */
interface LegendPlace {
  readonly item: XYSeries;
  readonly colour: string;
  readonly x: number;
  readonly row: number;
}

const LEGEND_ROW = 18;
/** px of the sample line before a name and of the gap after it, and of a letter as wide as they come on average. */
const LEGEND = { sample: 24, gap: 14, letter: 6 } as const;

/** Entries side by side, those that have no room there in rows below. */
function legendPlaces(series: readonly XYSeries[], room: number): readonly LegendPlace[] {
  let x = 0;
  let row = 0;
  return series.map((item, i) => {
    const width = LEGEND.sample + LEGEND.letter * item.name.length + LEGEND.gap;
    if (x > 0 && x + width > room) {
      x = 0;
      row += 1;
    }
    x += width;
    return { item, colour: colourOf(item, i), x: x - width, row };
  });
}

function Legend({ places, left }: { readonly places: readonly LegendPlace[]; readonly left: number }) {
  return (
    <g>
      {places.map(({ item, colour, x: from, row }) => {
        const x = left + from;
        const y = 37 + LEGEND_ROW * row;
        return (
          <g key={item.name}>
            {item.pointsOnly === true ? (
              <Marker shape={item.marker} x={x + 9} y={y} radius={4} colour={colour} />
            ) : (
              <line x1={x} x2={x + 18} y1={y} y2={y} stroke={colour} strokeWidth={widthOf(item)} {...dashesOf(item)} />
            )}
            <text x={x + 24} y={y + 4} fill={INK}>
              {item.name}
            </text>
          </g>
        );
      })}
    </g>
  );
}

function AxisTitle({ x, y, text }: { readonly x: number; readonly y: number; readonly text: string }) {
  return (
    <text transform={`translate(${x} ${y}) rotate(-90)`} textAnchor="middle" fill={INK}>
      {text}
    </text>
  );
}

function widthOf({ thin }: XYSeries): number {
  return thin === true ? 1 : 2;
}

function colourOf(series: XYSeries, index: number): string {
  return series.color ?? (COLOURS[index % COLOURS.length] as string);
}

function ofAxis(spec: XYChartSpec, points: readonly SeriesPoints[], secondAxis: boolean): SeriesPoints {
  return points.flatMap((series, i) => ((spec.series[i]?.secondAxis === true) === secondAxis ? series : []));
}

/** From zero, unless the values lie far from it beside their own spread and nothing else is asked for. */
function scale(points: SeriesPoints, part: 0 | 1, room: readonly [number, number], fromZero = false) {
  const values = points.map((point) => point[part]);
  const low = values.length === 0 ? 0 : leastOf(values);
  const high = values.length === 0 ? 1 : greatestOf(values);
  const lies = low > 0 ? low > (high - low) * 2 : high < 0 && -high > (high - low) * 2;
  const far = lies && !fromZero;
  const from = far ? low : Math.min(0, low);
  const to = far ? high : Math.max(0, high);
  return scaleLinear()
    .domain(from === to ? [from - 1, to + 1] : [from, to])
    .range([...room])
    .nice();
}

/** The chart as it stands over the grid; drawn anew after each calculation. */
export function ChartView({
  chart,
  width,
  height,
}: {
  readonly chart: LiveChart;
  readonly width: number;
  readonly height: number;
}) {
  const [drawn, setDrawn] = useState(() => ({ spec: chart.spec(), points: chart.points() }));
  useEffect(() => chart.onChange(() => setDrawn({ spec: chart.spec(), points: chart.points() })), [chart]);
  return (
    <div style={FRAME}>
      <ChartPicture {...drawn} width={width} height={height} />
    </div>
  );
}

// Clicks and the wheel go through to the grid beneath.
const FRAME = {
  width: "100%",
  height: "100%",
  boxSizing: "border-box",
  background: "#FFFFFF",
  border: "1px solid #D5DCE2",
  // Of the page: a dark grid has dark charts, paper has none of it.
  filter: "var(--chart-filter, none)",
  pointerEvents: "none",
} as const;

function dashesOf({ dashed, dotted }: Pick<XYSeries, "dashed" | "dotted">): { readonly strokeDasharray?: string } {
  if (dotted === true) return { strokeDasharray: dashed === true ? "7 3 2 3" : "2 3" };
  return dashed === true ? { strokeDasharray: "6 4" } : {};
}
