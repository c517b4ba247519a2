import { printedUnit, type UnitSetName } from "../../../src/basis/quantities.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import {
  callById,
  columnAt,
  constant,
  difference,
  type Expression,
  ifNumber,
  partAt,
  product,
  rangeAt,
  ratio,
  value,
  verdict,
} from "../expression.ts";
import type { ChartFacts, ChartsItem, PlanItem, ResultItem, SeriesFacts } from "../plan.ts";
import { IN_SERIES, SIDE_BY_SIDE, SPECIFIC_GRAVITY } from "./drawn-curves.ts";
import { type DutyCasePlan, dutyCases, outerCases, recordKey, systemKey } from "./duty-cases.ts";
import { marginVerdict, npshAvailableAt } from "./npsh.ts";

/** Places of the record of OPERATINGPOINT. */
export const PLACES = { flow: 0, head: 1, efficiency: 2, shaftPower: 3, npshRequired: 4, bestFlowPercent: 5 } as const;

export const NOT_GIVEN = "not given";

/** A figure of a record that the curve may not give there. */
export function whereGiven(
  record: string,
  of: keyof typeof PLACES,
  then: (figure: Expression) => Expression = (figure) => figure,
  otherwise = NOT_GIVEN,
): Expression {
  const figure = partAt(record, PLACES[of]);
  return ifNumber(figure, then(figure), otherwise);
}

/** Shaft power of the record is with water. */
export function withLiquid(power: Expression): Expression {
  return product(power, SPECIFIC_GRAVITY);
}

/** Where the pump meets the duty as stated, against flow, head and NPSH asked for. */
export function operatingPoint(duty: Duty, { curve }: DutyPump): readonly PlanItem[] {
  const record = "normalRecord";
  const hasEfficiency = curve.efficiency !== undefined;
  const hasNpsh = curve.npshRequired !== undefined;
  const rows: readonly ResultItem[] = [
    {
      kind: "result",
      key: "operatingFlow",
      label: "Operating flow",
      quantity: "flow",
      expression: partAt(record, PLACES.flow),
      how: "Where the pumps and the system as stated give the same head; all pumps together.",
      main: true,
    },
    {
      kind: "result",
      key: "operatingHead",
      label: "Operating head",
      quantity: "head",
      expression: partAt(record, PLACES.head),
      how: "All pumps together, in head of the liquid pumped.",
      main: true,
    },
    {
      kind: "result",
      key: "flowOverDuty",
      label: "Flow over the duty",
      quantity: "percent",
      expression: product(difference(ratio(value("operatingFlow"), value("flow")), constant(1)), constant(100)),
      how: "Operating flow less the flow stated, over it. The losses here carry no margin.",
    },
    {
      kind: "result",
      key: "headAtDuty",
      label: "Head of the pumps at the duty flow",
      quantity: "head",
      expression: product(
        callById(
          "PUMPHEAD",
          rangeAt("pumpCurve"),
          ratio(value("flow"), SIDE_BY_SIDE),
          value("speedRatio"),
          value("trimRatio"),
        ),
        IN_SERIES,
      ),
      how: "Read off the curve at the running speed and trim.",
    },
    {
      kind: "result",
      key: "headOverDuty",
      label: "Over total head with margin",
      quantity: "head",
      expression: difference(value("headAtDuty"), value("ratedHead")),
      how: "Head of the pumps at the duty flow less the head to select for.",
    },
    {
      kind: "result",
      key: "headVerdict",
      label: "Head at the duty flow",
      expression: verdict(value("headOverDuty"), constant(0), "meets the duty", "BELOW THE DUTY"),
      how: "With the margin on losses counted.",
    },
    ...(hasEfficiency ? efficiencyRows(record) : []),
    ...(hasNpsh ? npshRows(record) : []),
  ];
  return [
    { kind: "section", id: "operatingPoint", text: "Operating point" },
    ...rows,
    ...(hasEfficiency ? [efficiencyChart(duty.unitSet)] : []),
    headCharts(duty, hasNpsh),
  ];
}

function efficiencyRows(record: string): readonly ResultItem[] {
  return [
    {
      kind: "result",
      key: "operatingEfficiency",
      label: "Efficiency",
      quantity: "percent",
      expression: whereGiven(record, "efficiency", (figure) => product(figure, constant(100))),
      how: "Of each pump at the operating point.",
    },
    {
      kind: "result",
      key: "operatingPower",
      label: "Shaft power, liquid pumped",
      quantity: "power",
      expression: whereGiven(record, "shaftPower", withLiquid),
      how: "All pumps together: that with water times the specific gravity of the liquid pumped.",
      main: true,
    },
    {
      kind: "result",
      key: "bestFlowPercent",
      label: "Of best efficiency flow (BEP)",
      quantity: "percent",
      expression: whereGiven(record, "bestFlowPercent"),
      how: "Of each pump.",
    },
    {
      kind: "result",
      key: "greatestPower",
      label: "Greatest shaft power on the curve",
      quantity: "power",
      expression: { op: "columnGreatest", key: "powerCurve", column: "powerTogether", otherwise: NOT_GIVEN },
      how: "Of 25 flows from the first efficiency given to the last; all pumps together, with the liquid pumped.",
    },
  ];
}

function npshRows(record: string): readonly ResultItem[] {
  return [
    {
      kind: "result",
      key: "operatingNpshRequired",
      label: "NPSH required there",
      quantity: "head",
      expression: whereGiven(record, "npshRequired"),
      how: "Of each pump at the operating point.",
    },
    {
      kind: "result",
      key: "operatingNpshAvailable",
      label: "NPSH available there",
      quantity: "head",
      expression: npshAvailableAt(value("operatingFlow")),
      how: "At the operating flow, with the source at the level stated.",
    },
    {
      kind: "result",
      key: "operatingNpshMargin",
      label: "NPSH available less required",
      quantity: "head",
      expression: ifNumber(
        value("operatingNpshRequired"),
        difference(value("operatingNpshAvailable"), value("operatingNpshRequired")),
        NOT_GIVEN,
      ),
      how: "Held against the margin wanted.",
      main: true,
    },
    {
      kind: "result",
      key: "operatingNpshVerdict",
      label: "NPSH margin there",
      expression: { ...ifNumber(value("operatingNpshMargin"), marginVerdict("operatingNpshMargin"), "not judged") },
      how: "The maker's curve may be of 3 % head drop; solids, air and hot liquid ask for more.",
    },
  ];
}

const INK = { pump: "#0B5A5E", system: "#5A6B6D", range: "#8A6D1F", mark: "#C2410C", power: "#1F3F8F" } as const;

/** Efficiency and power as the pumps run, drawn beside the table of the curve. */
function efficiencyChart(units: UnitSetName): ChartsItem {
  const x = columnAt("powerCurve", "together");
  return {
    kind: "charts",
    beside: { key: "pumpCurve" },
    charts: [
      {
        title: "Efficiency and shaft power",
        xTitle: titled("flow", units),
        yTitle: "efficiency, %",
        secondTitle: `shaft power, ${printedUnit("power", units)}`,
        series: [
          { name: "efficiency", x, y: columnAt("powerCurve", "percent"), color: INK.pump },
          {
            name: "shaft power",
            x,
            y: columnAt("powerCurve", "powerTogether"),
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
    title: "NPSH",
    xTitle: titled("flow", units),
    yTitle: titled("head", units, "NPSH"),
    series: [
      npshSeries("required", INK.power, true),
      npshSeries("available", INK.pump, false),
      point("required there", value("operatingFlow"), value("operatingNpshRequired"), INK.mark),
    ],
  };
  return {
    kind: "charts",
    extraRows: HEAD_CHART_EXTRA_ROWS,
    charts: hasNpsh ? [headChart(duty), npsh] : [headChart(duty)],
  };
}

function npshSeries(name: "required" | "available", color: string, dashed: boolean): SeriesFacts {
  const x = columnAt("npshCurve", "together");
  return { name, x, y: columnAt("npshCurve", name), color, dashed };
}

/** Short, so that the key of the chart leaves it room. */
const SHORT_HEADS = { staticHead: "as stated", leastStaticHead: "least", greatestStaticHead: "greatest" } as const;
const LARGEST: ReadonlySet<DutyCasePlan["key"]> = new Set(["upper", "least"]);

/** Pump and systems: as stated, and at the two ends of the range. */
function headChart(duty: Duty): ChartFacts {
  const units = duty.unitSet;
  const cases = dutyCases(duty);
  const shown = outerCases(duty);
  const systems = new Map([...cases.slice(0, 1), ...shown].map((one) => [systemKey(one), one]));
  return {
    title: "Head",
    xTitle: titled("flow", units),
    yTitle: titled("head", units),
    series: [
      {
        name: "pumps",
        x: columnAt("headCurve", "together"),
        y: columnAt("headCurve", "headTogether"),
        color: INK.pump,
      },
      ...[...systems].map(([table, one], i) => ({
        name: `system, ${SHORT_HEADS[one.staticHead]}${one.pipe === "aged" ? ", aged" : ""}`,
        x: columnAt(table, "flow"),
        y: columnAt(table, "head"),
        color: i === 0 ? INK.system : INK.range,
        dashed: i > 0,
      })),
      ...shown.map((one) => pointOf(one, LARGEST.has(one.key) ? "greatest flow" : "least flow", INK.range)),
      pointOf(cases[0] as DutyCasePlan, "operating point", INK.mark),
      point("duty", value("flow"), value("ratedHead"), INK.power),
    ],
  };
}

function pointOf(one: DutyCasePlan, name: string, color: string): SeriesFacts {
  const table = recordKey(one);
  return point(name, columnAt(table, "flow"), columnAt(table, "head"), color);
}

function point(name: string, x: SeriesFacts["x"], y: SeriesFacts["y"], color: string): SeriesFacts {
  return { name, x, y, color, pointsOnly: true };
}

function titled(quantity: "flow" | "head", units: UnitSetName, name: string = quantity): string {
  return `${name}, ${printedUnit(quantity, units)}`;
}
