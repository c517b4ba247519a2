import { shaftPower } from "../../../src/pump/shaft-power.ts";
import { SMALL_PUMP_TOLERANCES } from "../../../src/tables/acceptance-grades.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { constant, difference, type Expression, ifNumber, partAt, product, ratio, sum, value } from "../expression.ts";
import type { PlanItem, ResultItem, TableColumn, TableItem } from "../plan.ts";
import { type DutyCasePlan, dutyCases, recordKey } from "./duty-cases.ts";
import { npshAvailableAt } from "./npsh.ts";
import { PLACES, whereGiven, withLiquid } from "./operating-point.ts";
import { preferredRegionOf } from "./preferred-region.ts";

const NONE = "none";

interface RegionColumn extends TableColumn {
  readonly cell: (one: DutyCasePlan) => Expression;
}

/** Where the pumps run at the ends of the ranges of levels, pipe and their own curve. */
export function dutyRegion(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const cases = dutyCases(duty);
  if (cases.length === 1) return [];
  const columns = columnsOf(pump);
  const table: TableItem = {
    kind: "table",
    key: "dutyRegion",
    heading: "state",
    columns,
    rows: cases.map((one) => ({ label: one.label, cells: columns.map(({ cell }) => cell(one)) })),
  };
  const hasTolerance = cases.some(({ curve }) => curve !== "drawn");
  return [
    { kind: "section", id: "region", text: "Duty region", newPage: true },
    table,
    ...extremes(pump),
    {
      kind: "statement",
      text: `NPSH available is that with the source at the level stated, which should be its lowest; a higher source has more.${hasTolerance ? " The tolerance of flow is not added to that of head: a pump is accepted by either, so one with a steep curve may run a little further out." : ""}`,
    },
  ];
}

function columnsOf(pump: DutyPump): readonly RegionColumn[] {
  const { curve } = pump;
  const hasEfficiency = curve.efficiency !== undefined;
  return [
    {
      key: "flow",
      label: "flow",
      quantity: "flow",
      cell: (one) => whereGiven(recordKey(one), "flow", undefined, NONE),
    },
    { key: "place", label: "where on the curve", cell: (one) => placeOf(one, pump) },
    {
      key: "head",
      label: "head",
      quantity: "head",
      cell: (one) => whereGiven(recordKey(one), "head", undefined, NONE),
    },
    ...(hasEfficiency
      ? ([
          {
            key: "shaftPower",
            label: "shaft power",
            quantity: "power",
            cell: (one) => whereGiven(recordKey(one), "shaftPower", withLiquid, NONE),
          },
          {
            key: "bestFlowPercent",
            label: "of BEP flow",
            quantity: "percent",
            cell: (one) => whereGiven(recordKey(one), "bestFlowPercent", undefined, NONE),
          },
        ] satisfies readonly RegionColumn[])
      : []),
    ...(curve.npshRequired === undefined
      ? []
      : ([
          {
            key: "npshRequired",
            label: "NPSH required",
            quantity: "head",
            cell: (one) => whereGiven(recordKey(one), "npshRequired", undefined, NONE),
          },
          {
            key: "npshMargin",
            label: "NPSH margin",
            quantity: "head",
            cell: (one) =>
              whereGiven(
                recordKey(one),
                "npshRequired",
                (required) => difference(npshAvailableAt(partAt(recordKey(one), PLACES.flow)), required),
                NONE,
              ),
          },
        ] satisfies readonly RegionColumn[])),
  ];
}

/** In words: inside or outside the preferred region, or past the curve. */
function placeOf(one: DutyCasePlan, pump: DutyPump): Expression {
  const record = recordKey(one);
  const none = "no operating point: see findings";
  if (pump.curve.efficiency === undefined) return whereGiven(record, "flow", () => constant("on the curve"), none);
  const { least, most } = preferredRegionOf(pump);
  const percent = partAt(record, PLACES.bestFlowPercent);
  const outside = constant("OUTSIDE preferred region");
  return ifNumber(
    percent,
    {
      op: "atLeast",
      left: percent,
      right: constant(100 * least),
      met: {
        op: "atLeast",
        left: constant(100 * most),
        right: percent,
        met: constant("in preferred region"),
        otherwise: outside,
      },
      otherwise: outside,
    },
    none,
  );
}

function extremes({ curve }: DutyPump): readonly ResultItem[] {
  const row = (
    key: string,
    label: string,
    quantity: "flow" | "head" | "power",
    op: "columnLeast" | "columnGreatest",
    column: string,
    how: string,
  ): ResultItem => ({
    kind: "result",
    key,
    label,
    quantity,
    expression: { op, key: "dutyRegion", column, otherwise: "not known" },
    how,
  });
  const how = "Of the rows above, where all have an operating point.";
  return [
    row("regionLeastFlow", "Least flow", "flow", "columnLeast", "flow", how),
    row("regionGreatestFlow", "Greatest flow", "flow", "columnGreatest", "flow", how),
    ...(curve.npshRequired === undefined
      ? []
      : [row("regionNpshMargin", "Least NPSH margin", "head", "columnLeast", "npshMargin", how)]),
    ...(curve.efficiency === undefined
      ? []
      : [row("regionPower", "Greatest shaft power", "power", "columnGreatest", "shaftPower", how)]),
  ];
}

/** What an acceptance test of the grade stated lets pass, with the operating point as the guarantee. */
export function acceptance(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const { acceptanceGrade } = duty;
  if (acceptanceGrade === undefined) return [];
  const band = (
    key: string,
    label: string,
    quantity: "flow" | "head" | "percent",
    of: string,
    tolerance: string,
    how: string,
  ): ResultItem => {
    const accepted = product(value(of), sum(constant(1), ratio(value(tolerance), constant(100))));
    return {
      kind: "result",
      key,
      label,
      quantity,
      expression: quantity === "percent" ? ifNumber(value(of), accepted, NONE) : accepted,
      how,
    };
  };
  const either = "Either the flow at the guaranteed head or the head at the guaranteed flow must lie in its band.";
  return [
    { kind: "section", id: "acceptance", text: `Acceptance to ISO 9906 grade ${acceptanceGrade.grade}` },
    band("acceptedFlowLeast", "Least flow", "flow", "operatingFlow", "flowToleranceLower", either),
    band("acceptedFlowMost", "Greatest flow", "flow", "operatingFlow", "flowToleranceUpper", "At the operating head."),
    band("acceptedHeadLeast", "Least head", "head", "operatingHead", "headToleranceLower", "At the operating flow."),
    band("acceptedHeadMost", "Greatest head", "head", "operatingHead", "headToleranceUpper", "At the operating flow."),
    ...(pump.curve.efficiency === undefined
      ? []
      : [
          band(
            "acceptedEfficiency",
            "Least efficiency",
            "percent",
            "operatingEfficiency",
            "efficiencyTolerance",
            "Where efficiency is guaranteed; a fraction of it, not percentage points.",
          ),
        ]),
    ...smallPump(pump),
  ];
}

/** Small pumps have wider tolerances whatever their grade. */
function smallPump({ curve: { bestEfficiency } }: DutyPump): readonly PlanItem[] {
  if (bestEfficiency === undefined) return [];
  const power = shaftPower({ ...bestEfficiency, specificGravity: 1 });
  if (!power.ok || power.value > SMALL_PUMP_TOLERANCES.mostPower) return [];
  const { flow: flowPercent, head: headPercent } = SMALL_PUMP_TOLERANCES;
  return [
    {
      kind: "statement",
      text: `The standard widens the tolerances of pumps of 1 to 10 kW shaft power to ±${flowPercent} % of flow and ±${headPercent} % of head whatever their grade; write them in above where they apply.`,
    },
  ];
}
