import { printedUnit, type UnitSetName } from "../../../src/basis/quantities.ts";
import { PUMPHEAD, PUMPNPSHR } from "../../catalogue/entries/pump.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { isSlurry } from "../../duty/slurry.ts";
import {
  callOf,
  cell,
  column,
  constant,
  difference,
  greatest,
  handles,
  ifNumber,
  part,
  product,
  ratio,
  sum,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import {
  type ChartFacts,
  type ChartsItem,
  figure,
  type PlanItem,
  type ResultItem,
  type SeriesFacts,
  statement,
} from "../plan.ts";
import { onWater } from "./as-pumped.ts";
import {
  asPumpedPower,
  HEAD_CURVE,
  IN_SERIES,
  MAX_POWER,
  NPSH_CURVE,
  POWER_CURVE,
  SIDE_BY_SIDE,
} from "./drawn-curves.ts";
import {
  asStated,
  type DutyState,
  firstOnSystem,
  isStation,
  NOT_GIVEN,
  ofOnePump,
  outerCases,
  recordOf,
  systemOf,
  whereGiven,
} from "./duty-cases.ts";
import { CROSS, isCrossDrawn } from "./duty-region.ts";
import { stateCell } from "./duty-states.ts";
import { isOneOfOne, MEASURED } from "./field-cells.ts";
import { HEAD, headAskedFor, headToSelect } from "./head.ts";
import { marginVerdict, npshMarginBasis } from "./npsh.ts";
import { PUMP_CURVE } from "./pump.ts";
import { HELD_TO_SUMMIT, hasRoute } from "./route-cells.ts";
import { readCurve } from "./slurry-curve.ts";
import { COMBINED, otherHeadCurve } from "./station-curve.ts";
import {
  headerSystem,
  otherGreatestPowers,
  STATION,
  stationHeadAtDuty,
  stationNames,
  stationRow,
} from "./station-states.ts";

/** Worked cells of this section. */
export const POINT = handles({
  operatingFlow: "flow",
  operatingHead: "head",
  flowOverDuty: "percent",
  headAtDuty: "head",
  headOverDuty: "head",
  operatingEfficiency: "percent",
  operatingPower: "power",
  bestFlowPercent: "percent",
  greatestPower: "power",
  operatingNpshRequired: "head",
  operatingNpshAvailable: "head",
  operatingNpshMargin: "head",
  operatingNpshMarginKept: "head",
  operatingNpshVerdict: null,
  npshRequiredOfCurve: "head",
  npshRequiredOff: "percent",
});

type Record = ReturnType<typeof recordOf>;

/** Where the pump meets the duty as stated, against flow, head and NPSH asked for. */
export function operatingPoint(duty: Duty, { curve }: DutyPump): readonly PlanItem[] {
  const record = recordOf(asStated(duty));
  const hasEfficiency = curve.efficiency !== undefined;
  const hasNpsh = curve.npshRequired !== undefined;
  const rows: readonly ResultItem[] = [
    figure(
      POINT.operatingFlow,
      "Operating flow",
      part(record, "flow"),
      "Where the pumps and the system as stated give the same head; all pumps together.",
      "main",
    ),
    figure(
      POINT.operatingHead,
      "Operating head",
      part(record, "head"),
      "All pumps together, in head of the liquid pumped.",
      "main",
    ),
    figure(
      POINT.flowOverDuty,
      "Flow over the duty",
      product(difference(ratio(POINT.operatingFlow, FIELD.flow), constant(1)), constant(100)),
      "Operating flow less the flow stated, over it. The losses here carry no margin.",
    ),
    figure(
      POINT.headAtDuty,
      "Head of the pumps at the duty flow",
      isStation(asStated(duty), duty)
        ? onWater(duty, stationHeadAtDuty(HEAD.totalHead, [HEAD.staticHead, HEAD.pressureHead]))
        : product(
            callOf(PUMPHEAD, { ...readCurve(duty, "carrier"), flow: ratio(FIELD.flow, SIDE_BY_SIDE) }),
            IN_SERIES,
          ),
      isSlurry(duty)
        ? "With water, read off the curve at the running speed and trim."
        : "Read off the curve at the running speed and trim.",
    ),
    {
      ...figure(
        POINT.headOverDuty,
        isSlurry(duty) ? "Over the equivalent water head" : "Over total head with margin",
        difference(POINT.headAtDuty, headToSelect(duty)),
        "Head of the pumps at the duty flow less the head to select for; below 0 the duty is not met.",
      ),
      badBelow: 0,
    },
    ...(hasEfficiency ? efficiencyRows(record, duty) : []),
    ...(hasNpsh ? npshRows(duty) : []),
  ];
  return [
    { kind: "section", id: "operatingPoint", text: "Operating point" },
    ...rows,
    ...(hasRoute(duty) ? [statement(HELD_TO_SUMMIT)] : []),
    ...(hasEfficiency ? [efficiencyChart(duty)] : []),
    headCharts(duty, hasNpsh),
  ];
}

function efficiencyRows(record: Record, duty: Duty): readonly ResultItem[] {
  const bestFlowPercent = ofOnePump(asStated(duty), duty, "percentOfBestFlow");
  const isTogether = isStation(asStated(duty), duty);
  const ofWhom = isTogether ? "Of the chosen pump." : "Of each pump.";
  return [
    figure(
      POINT.operatingEfficiency,
      "Efficiency",
      whereGiven(record, "efficiency", (figure) => product(figure, constant(100))),
      isTogether
        ? "Of all pumps together: what the liquid takes up over their shaft power."
        : "Of each pump at the operating point.",
    ),
    figure(
      POINT.operatingPower,
      "Shaft power, liquid pumped",
      whereGiven(record, "shaftPower"),
      "All pumps together, with the liquid pumped.",
      "main",
    ),
    figure(
      POINT.bestFlowPercent,
      "Of best efficiency flow (BEP)",
      ifNumber(bestFlowPercent, bestFlowPercent, NOT_GIVEN),
      ofWhom,
    ),
    figure(
      POINT.greatestPower,
      "Greatest shaft power on the curve",
      sum(product(asPumpedPower(duty, part(MAX_POWER, "power")), FIELD.pumpsRunning), ...otherGreatestPowers(duty)),
      "To the end of the curve, extended where its efficiencies end early; all pumps together, with the liquid pumped.",
    ),
  ];
}

function npshRows(duty: Duty): readonly ResultItem[] {
  const normal = asStated(duty);
  const { state, npshRequired } = duty;
  return [
    figure(
      POINT.operatingNpshRequired,
      "NPSH required there",
      stateCell(duty, normal, "npshRequired"),
      isStation(normal, duty) ? "Of the chosen pump at the operating point." : "Of each pump at the operating point.",
    ),
    figure(
      POINT.operatingNpshAvailable,
      "NPSH available there",
      stateCell(duty, normal, "npshAvailable"),
      "At the operating flow, with the source at the level stated.",
    ),
    figure(
      POINT.operatingNpshMargin,
      "NPSH available less required",
      ifNumber(POINT.operatingNpshRequired, stateCell(duty, normal, "npshMargin"), NOT_GIVEN),
      "Held against the margin to keep.",
      "main",
    ),
    figure(
      POINT.operatingNpshMarginKept,
      "NPSH margin to keep there",
      ifNumber(POINT.operatingNpshRequired, stateCell(duty, normal, "npshMarginKept"), NOT_GIVEN),
      `Over NPSH required; ${npshMarginBasis(duty)}.`,
    ),
    figure(
      POINT.operatingNpshVerdict,
      "NPSH margin there",
      ifNumber(
        POINT.operatingNpshMargin,
        marginVerdict(POINT.operatingNpshMargin, POINT.operatingNpshMarginKept),
        "not judged",
      ),
      "The maker's curve may be of 3 % head drop; solids, air and hot liquid require more.",
    ),
    ...(npshRequired === undefined && state.npshRequired === "blank" ? [] : typedNpsh(duty)),
  ];
}

/** NPSH required as typed beside a curve that gives it: the curve decides. */
function typedNpsh(duty: Duty): readonly ResultItem[] {
  const { npshRequiredOfCurve, npshRequiredOff } = POINT;
  const apart = greatest(
    difference(npshRequiredOfCurve, FIELD.npshRequired),
    difference(FIELD.npshRequired, npshRequiredOfCurve),
  );
  return [
    figure(
      npshRequiredOfCurve,
      "NPSH required by the curve at the duty flow",
      callOf(PUMPNPSHR, { ...readCurve(duty, "carrier"), flow: ratio(FIELD.flow, SIDE_BY_SIDE) }),
      "Of each pump. The curve decides; the figure typed is held against it.",
    ),
    figure(
      npshRequiredOff,
      "NPSH required as typed, off the curve by",
      product(ratio(apart, npshRequiredOfCurve), constant(100)),
      "Over that of the curve; above 5 % one of them is not of this pump.",
    ),
  ];
}

const INK = {
  pump: "#0B5A5E",
  system: "#5A6B6D",
  range: "#8A6D1F",
  mark: "#C2410C",
  measured: "#7A1F6D",
  power: "#1F3F8F",
  each: "#3A7D80",
} as const;

/** Efficiency and power as the pumps run, drawn beside the table of the curve. */
function efficiencyChart(duty: Duty): ChartsItem {
  const { unitSet: units } = duty;
  const x = column(POWER_CURVE, ofWhichFlow(duty));
  return {
    kind: "charts",
    beside: PUMP_CURVE,
    charts: [
      {
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
      },
    ],
  };
}

/** Room for the longer key of the chart of heads. */
const HEAD_CHART_EXTRA_ROWS = 4;

function headCharts(duty: Duty, hasNpsh: boolean): ChartsItem {
  const units = duty.unitSet;
  const npsh: ChartFacts = {
    title: `NPSH${ofChosen(duty)}`,
    xTitle: titled("flow", units),
    yTitle: titled("head", units, "NPSH"),
    series: [
      npshSeries(duty, "required", INK.power, true),
      npshSeries(duty, "available", INK.pump, false),
      point(
        "required there",
        isStation(asStated(duty), duty) ? chosenFlow(duty) : POINT.operatingFlow,
        POINT.operatingNpshRequired,
        INK.mark,
      ),
    ],
  };
  return {
    kind: "charts",
    extraRows: HEAD_CHART_EXTRA_ROWS,
    charts: hasNpsh ? [headChart(duty), npsh] : [headChart(duty)],
  };
}

function npshSeries(duty: Duty, name: "required" | "available", color: string, dashed: boolean): SeriesFacts {
  const x = column(NPSH_CURVE, ofWhichFlow(duty));
  return { name, x, y: column(NPSH_CURVE, name), color, dashed };
}

/** Pump and systems: as stated, and at the two ends of the range. */
function headChart(duty: Duty): ChartFacts {
  const units = duty.unitSet;
  const normal = asStated(duty);
  const shown = outerCases(duty);
  const systems = new Set([normal, ...shown].map((one) => firstOnSystem(one, duty)));
  return {
    title: "Head",
    xTitle: titled("flow", units),
    yTitle: titled("head", units),
    series: [
      ...pumpSeries(duty),
      ...[...systems].map((one, i) => ({
        name: `system, ${shortly(one)}`,
        x: column(drawnSystem(one, duty), "flow"),
        y: column(drawnSystem(one, duty), "head"),
        color: i === 0 ? INK.system : INK.range,
        dashed: i > 0,
      })),
      ...shown.map((one) => pointOf(one, one.towards === "most" ? "greatest flow" : "least flow", INK.range)),
      pointOf(normal, "operating point", INK.mark),
      point("duty", FIELD.flow, headAskedFor(duty), INK.power),
      ...crossSeries(duty),
      ...(isOneOfOne(duty) ? [point("measured", FIELD.fieldFlow, MEASURED.fieldHead, INK.measured)] : []),
    ],
  };
}

/** The two bars an acceptance test is judged by, round the guaranteed duty. */
function crossSeries(duty: Duty): readonly SeriesFacts[] {
  if (!isCrossDrawn(duty)) return [];
  const name = `acceptance, grade ${duty.acceptanceGrade?.grade}`;
  const bar = (x: "flow" | "atFlow", y: "head" | "atHead", of: string): SeriesFacts => ({
    name: `${name}, ${of}`,
    x: column(CROSS, x),
    y: column(CROSS, y),
    color: INK.power,
  });
  return [bar("flow", "head", "head"), bar("atFlow", "atHead", "flow")];
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

/** The system that the pumps drawn meet: of unlike ones that of the rows they share. */
export function drawnSystem(one: DutyState, duty: Duty) {
  return isStation(one, duty) ? headerSystem(one) : systemOf(one, duty);
}

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

function pointOf(one: DutyState, name: string, color: string): SeriesFacts {
  const record = recordOf(one);
  return point(name, column(record, "flow"), column(record, "head"), color);
}

function point(name: string, x: SeriesFacts["x"], y: SeriesFacts["y"], color: string): SeriesFacts {
  return { name, x, y, color, pointsOnly: true };
}

function titled(quantity: "flow" | "head", units: UnitSetName, name: string = quantity): string {
  return `${name}, ${printedUnit(quantity, units)}`;
}
