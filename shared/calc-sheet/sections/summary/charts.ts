import { printedUnit, type UnitSetName } from "../../../../src/basis/quantities.ts";
import type { Duty, DutyPump } from "../../../duty/duty.ts";
import { cell, column } from "../../expression.ts";
import { FIELD } from "../../field-handles.ts";
import type { ChartFacts, PlanItem, SeriesFacts } from "../../plan.ts";
import { HEAD_CURVE, NPSH_CURVE, POWER_CURVE } from "../drawn-curves.ts";
import { asStated, type DutyState, firstOnSystem, isStation, outerCases, recordOf } from "../duty-cases.ts";
import { CROSS, isCrossDrawn, RANGE_ENDS } from "../duty-region.ts";
import { isOneOfOne, MEASURED } from "../field-cells.ts";
import { headAskedFor, headOfLine } from "../head.ts";
import { POINT, PREFERRED } from "../operating-point.ts";
import { minimumFlowMark } from "../slurry-lines.ts";
import { COMBINED, otherHeadCurve } from "../station-curve.ts";
import { drawnSystem, STATION, stationNames, stationRow } from "../station-states.ts";
import { SYSTEM_CURVE } from "../system-curve.ts";
import type { Standing } from "./standing.ts";

/** Pump, system and duty over the whole width; of a duty without a pump, the system alone. */
export function headChart(duty: Duty, stands: Standing): PlanItem {
  return {
    kind: "charts",
    fillsPage: true,
    charts: [duty.pump === undefined ? systemAlone(duty) : pumpOnSystem(duty, stands)],
  };
}

/** NPSH, efficiency and power as the pumps run, side by side; nothing the curve does not give. */
export function furtherCharts(duty: Duty, { curve }: DutyPump): readonly PlanItem[] {
  const charts = [
    ...(curve.npshRequired === undefined ? [] : [npshChart(duty)]),
    ...(curve.efficiency === undefined ? [] : [efficiencyChart(duty)]),
  ];
  return charts.length === 0 ? [] : [{ kind: "charts", charts }];
}

const INK = {
  pump: "#0B5A5E",
  system: "#5A6B6D",
  range: "#8A6D1F",
  mark: "#C2410C",
  measured: "#7A1F6D",
  power: "#1F3F8F",
  each: "#3A7D80",
  region: "#4F5B66",
} as const;

function efficiencyChart(duty: Duty): ChartFacts {
  const { unitSet: units } = duty;
  const x = column(POWER_CURVE, ofWhichFlow(duty));
  return {
    title: `Efficiency and shaft power${ofChosen(duty)}`,
    xTitle: titled("flow", units),
    yTitle: "efficiency, %",
    secondTitle: `shaft power, ${printedUnit("power", units)}`,
    series: [
      { name: "efficiency", x, y: column(POWER_CURVE, "percent"), color: INK.pump },
      {
        name: "shaft power",
        x,
        y: column(POWER_CURVE, isStation(asStated(duty), duty) ? "power" : "powerTogether"),
        color: INK.power,
        dashed: true,
        secondAxis: true,
      },
    ],
    xFromZero: true,
  };
}

function npshChart(duty: Duty): ChartFacts {
  const units = duty.unitSet;
  return {
    title: `NPSH${ofChosen(duty)}`,
    xTitle: titled("flow", units),
    yTitle: titled("head", units, "NPSH"),
    xFromZero: true,
    series: [
      npshSeries(duty, "required", INK.power, true),
      npshSeries(duty, "available", INK.pump, false),
      point(
        "required there",
        isStation(asStated(duty), duty) ? chosenFlow(duty) : POINT.operatingFlow,
        POINT.operatingNpshRequired,
        INK.mark,
        "circle",
      ),
    ],
  };
}

function npshSeries(duty: Duty, name: "required" | "available", color: string, dashed: boolean): SeriesFacts {
  const x = column(NPSH_CURVE, ofWhichFlow(duty));
  return { name, x, y: column(NPSH_CURVE, name), color, dashed };
}

function systemAlone(duty: Duty): ChartFacts {
  const { unitSet: units } = duty;
  return {
    title: "System curve",
    xTitle: titled("flow", units),
    yTitle: titled("head", units),
    xFromZero: true,
    series: [
      { name: "system", x: column(SYSTEM_CURVE, "flow"), y: column(SYSTEM_CURVE, "head"), color: INK.pump },
      point("duty", FIELD.flow, headOfLine(duty), INK.mark, "diamond"),
      ...minimumFlowMark(duty).map(({ label, x, y }) => point(label, x, y, INK.range, "triangle")),
    ],
  };
}

/** Rows of a system curve that reach 5 % past the end of the curve of the pumps: the rest would leave the chart half empty. */
const ROWS_OF_SYSTEM = 22;

/** Pump and systems: as stated, and at the two ends of the range. */
function pumpOnSystem(duty: Duty, stands: Standing): ChartFacts {
  const units = duty.unitSet;
  const normal = asStated(duty);
  const outer = outerCases(duty);
  const systems = new Set([normal, ...outer].map((one) => firstOnSystem(one, duty)));
  const isWhole = isStation(normal, duty);
  return {
    title: "Head of pump and system",
    xTitle: titled("flow", units),
    yTitle: titled("head", units),
    xFromZero: true,
    series: [
      ...pumpSeries(duty),
      ...[...systems].map((one) => ({
        name: `system, ${shortly(one)}`,
        x: column(drawnSystem(one, duty), "flow"),
        y: column(drawnSystem(one, duty), "head"),
        ...(isWhole ? {} : { rows: ROWS_OF_SYSTEM }),
        ...lineOf(one, duty),
      })),
      ...(stands({ op: "value", key: PREFERRED.key })
        ? [
            {
              name: "preferred region",
              x: column(PREFERRED, "flow"),
              y: column(PREFERRED, "head"),
              color: INK.region,
              thin: true,
            },
          ]
        : []),
      ...(stands({ op: "value", key: RANGE_ENDS.key })
        ? [point("ends of the range", column(RANGE_ENDS, "flow"), column(RANGE_ENDS, "head"), INK.range, "square")]
        : []),
      pointOf(normal, "operating point", INK.mark, "circle"),
      point("duty", FIELD.flow, headAskedFor(duty), INK.power, "diamond"),
      ...crossSeries(duty),
      ...(isOneOfOne(duty) ? [point("measured", FIELD.fieldFlow, MEASURED.fieldHead, INK.measured, "cross")] : []),
    ],
  };
}

/** The system as stated is dashed, its band dotted towards the least of it and dashed and dotted towards the greatest. */
function lineOf(one: DutyState, duty: Duty): Pick<SeriesFacts, "color" | "dashed" | "dotted"> {
  const isOf = (state: DutyState): boolean => firstOnSystem(state, duty) === one;
  if (isOf(asStated(duty))) return { color: INK.system, dashed: true };
  const isLeast = outerCases(duty).some((state) => state.towards === "most" && isOf(state));
  return { color: INK.range, dotted: true, ...(isLeast ? {} : { dashed: true }) };
}

/** The cross an acceptance test is judged by, round the guaranteed duty. */
function crossSeries(duty: Duty): readonly SeriesFacts[] {
  if (!isCrossDrawn(duty)) return [];
  return [
    {
      name: `acceptance, grade ${duty.acceptanceGrade?.grade}`,
      x: column(CROSS, "flow"),
      y: column(CROSS, "head"),
      color: INK.power,
      thin: true,
      dotted: true,
    },
  ];
}

/** Pumps alike together; of unlike ones all at their header, and each by itself, told apart by its dashes. */
function pumpSeries(duty: Duty): readonly SeriesFacts[] {
  const { pump: color } = INK;
  if (!isStation(asStated(duty), duty)) {
    return [{ name: "pumps", x: column(HEAD_CURVE, "together"), y: column(HEAD_CURVE, "headTogether"), color }];
  }
  const [chosen] = stationNames(duty);
  const each = [
    { name: chosen as string, x: column(HEAD_CURVE, "each"), y: column(HEAD_CURVE, "head") },
    ...duty.otherPumps.map((pump) => {
      const drawn = otherHeadCurve(pump);
      return { name: pump.name, x: column(drawn, "flow"), y: column(drawn, "head") };
    }),
  ];
  return [
    { name: "all pumps, at the header", x: column(COMBINED, "flow"), y: column(COMBINED, "head"), color },
    ...each.map((one, i) => ({ ...one, color: INK.each, ...DASHES[i % DASHES.length] })),
  ];
}

const DASHES = [{ dashed: true }, { dotted: true }, { dashed: true, dotted: true }] as const;

/** Figures of one pump over the flow of all alike, or over its own beside unlike ones. */
function ofWhichFlow(duty: Duty): "each" | "together" {
  return isStation(asStated(duty), duty) ? "each" : "together";
}

function ofChosen(duty: Duty): string {
  return isStation(asStated(duty), duty) ? ` of ${stationNames(duty)[0]}, over its own flow` : "";
}

function chosenFlow(duty: Duty): SeriesFacts["x"] {
  return cell(STATION, stationRow(duty, asStated(duty), 0), "flow");
}

/** The key of the chart has little room. */
function shortly({ systemName }: DutyState): string {
  return systemName.replaceAll(/ static head| pipe/g, "");
}

type Shape = NonNullable<SeriesFacts["marker"]>;

function pointOf(one: DutyState, name: string, color: string, marker: Shape): SeriesFacts {
  const record = recordOf(one);
  return point(name, column(record, "flow"), column(record, "head"), color, marker);
}

function point(name: string, x: SeriesFacts["x"], y: SeriesFacts["y"], color: string, marker: Shape): SeriesFacts {
  return { name, x, y, color, pointsOnly: true, marker };
}

function titled(quantity: "flow" | "head", units: UnitSetName, name: string = quantity): string {
  return `${name}, ${printedUnit(quantity, units)}`;
}
