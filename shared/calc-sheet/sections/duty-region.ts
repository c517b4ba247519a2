import { shaftPower } from "../../../src/pump/shaft-power.ts";
import { SMALL_PUMP_TOLERANCES } from "../../../src/tables/acceptance-grades.ts";
import { PUMPEFFICIENCY } from "../../catalogue/entries/pump.ts";
import type { OPERATINGPOINT } from "../../catalogue/entries/station.ts";
import type { ColumnKeyOf } from "../../catalogue/entry.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { isSlurry } from "../../duty/slurry.ts";
import {
  type ColumnOf,
  callOf,
  cell,
  constant,
  difference,
  type Expression,
  extreme,
  type Handle,
  handles,
  ifAtLeast,
  ifNumber,
  join,
  part,
  product,
  ratio,
  sum,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, inWords, type PlanItem, type ResultItem, statement, type TableColumn, working } from "../plan.ts";
import { IN_SERIES, SIDE_BY_SIDE } from "./drawn-curves.ts";
import {
  asStated,
  type DutyState,
  dutyCases,
  isStation,
  ofOnePump,
  outerCases,
  recordOf,
  whereGiven,
} from "./duty-cases.ts";
import { stateCell } from "./duty-states.ts";
import { headToSelect } from "./head.ts";
import { PUMP } from "./pump.ts";
import { REGION_BAND } from "./pump-figures.ts";
import { readCurve } from "./slurry-curve.ts";
import { type WorstFacts, worstNames, worstTable } from "./worst-states.ts";

/** Worked cells of this section. */
export const DUTY_REGION = handles({
  regionLeastFlow: "flow",
  regionGreatestFlow: "flow",
  regionNpshMargin: "head",
  regionPower: "power",
  dutyMetIn: null,
  leastFlowIn: null,
  greatestFlowIn: null,
  npshMarginIn: null,
  powerIn: null,
  leastShareIn: null,
  greatestShareIn: null,
  guaranteedFlow: "flow",
  guaranteedHead: "head",
  guaranteedEfficiency: "percent",
  acceptedFlowLeast: "flow",
  acceptedFlowMost: "flow",
  acceptedHeadLeast: "head",
  acceptedHeadMost: "head",
  acceptedEfficiency: "percent",
});

/**
 * The cross an acceptance test is judged by, of all pumps together: a bar of head at the duty flow, one of flow at its
 * head, drawn in one stroke through their middle.
 */
export const CROSS = tableOf("acceptanceCross", { flow: "flow", head: "head" });

/** Where the pumps run at the two ends of the range. */
export const RANGE_ENDS = tableOf("rangeEnds", { flow: "flow", head: "head" });

/** Whether the cross may stand beside the curve drawn: of pumps alike, and on the liquid the curve is drawn for. */
export function isCrossDrawn(duty: Duty): boolean {
  return duty.acceptanceGrade !== undefined && !isSlurry(duty) && !isStation(asStated(duty), duty);
}

export const NONE = "none";
/** Where each pump runs inside its preferred region. */
export const INSIDE = "inside";

/** The place of a state where no heading says of what. */
export function inRegion(place: Expression): Expression {
  return join(constant("preferred region: "), place);
}

/** The states the pump must cover, a row each; without the columns its curve gives nothing for. */
export const REGION = tableOf("dutyRegion", {
  flow: "flow",
  place: null,
  head: "head",
  shaftPower: "power",
  bestFlowPercent: "percent",
  npshRequired: "head",
  npshMargin: "head",
});

interface RegionColumn extends TableColumn<ColumnOf<typeof REGION>> {
  readonly cell: (one: DutyState) => Expression;
}

/** Where the pumps run at the ends of the ranges of levels, pipe and their own curve. */
export function dutyRegion(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const cases = dutyCases(duty);
  if (cases.length === 1 || duty.state.acceptanceGrade === "unreadable") return [];
  const columns = columnsOf(duty, pump);
  const hasTolerance = cases.some(({ curve }) => curve.end !== undefined);
  return [
    { kind: "section", id: "region", text: "Operating range" },
    {
      kind: "table",
      key: REGION.key,
      heading: "state",
      columns,
      rows: cases.map((one) => ({ label: one.label, cells: columns.map(({ cell }) => cell(one)) })),
    },
    ...(outerCases(duty).length === 0 ? [] : [rangeEnds(duty)]),
    ...extremes(pump),
    ...worstStates(duty, pump),
    statement(
      `${isStation(asStated(duty), duty) ? "Flow, head and shaft power are those of all pumps together, the other figures those of the selected pump. " : ""}NPSH available is that with the source at the level stated, which should be its lowest; a higher source has more.${hasTolerance ? " The tolerance of flow is not added to that of head: a pump is accepted by either, so one with a steep curve may run a little further out." : ""}`,
    ),
  ];
}

function columnsOf(duty: Duty, pump: DutyPump): readonly RegionColumn[] {
  const given =
    (of: ColumnKeyOf<typeof OPERATINGPOINT>) =>
    (one: DutyState): Expression =>
      whereGiven(recordOf(one), of, undefined, NONE);
  const ofOne =
    (of: "percentOfBestFlow" | "npshRequired") =>
    (one: DutyState): Expression =>
      ifNumber(ofOnePump(one, duty, of), ofOnePump(one, duty, of), NONE);
  const margin = (one: DutyState): Expression =>
    ifNumber(ofOnePump(one, duty, "npshRequired"), stateCell(duty, one, "npshMargin"), NONE);
  const hasEfficiency = pump.curve.efficiency !== undefined;
  const hasNpsh = pump.curve.npshRequired !== undefined;
  const all: readonly (readonly [is: boolean, key: RegionColumn["key"], label: string, RegionColumn["cell"]])[] = [
    [true, "flow", "flow", given("flow")],
    [true, "head", "head", given("head")],
    [true, "place", "preferred region", (one) => placeOf(one, duty, pump)],
    [hasEfficiency, "shaftPower", "shaft power", given("shaftPower")],
    [hasEfficiency, "bestFlowPercent", "of BEP flow", ofOne("percentOfBestFlow")],
    [hasNpsh, "npshRequired", "NPSH required", ofOne("npshRequired")],
    [hasNpsh, "npshMargin", "NPSH margin", margin],
  ];
  return all
    .filter(([is]) => is)
    .map(([, key, label, cell]) => ({
      ...REGION.columns.find((of) => of.key === key),
      key,
      label,
      cell,
      ...(key === "npshMargin" && { badBelow: 0 }),
    }));
}

/** In words: inside or outside the preferred region. */
function placeOf(one: DutyState, duty: Duty, pump: DutyPump): Expression {
  const record = recordOf(one);
  if (pump.curve.efficiency === undefined) return whereGiven(record, "flow", () => constant("on the curve"));
  const percent = ofOnePump(one, duty, "percentOfBestFlow");
  const outside = constant("OUTSIDE");
  const inside = ifAtLeast(part(REGION_BAND, "most"), percent, constant(INSIDE), outside);
  return ifNumber(percent, ifAtLeast(percent, part(REGION_BAND, "least"), inside, outside), "not known");
}

function extremes({ curve }: DutyPump): readonly ResultItem[] {
  const of = (
    figureOf: Handle,
    label: string,
    op: "columnLeast" | "columnGreatest",
    column: ColumnOf<typeof REGION>,
    arisesIn: Handle,
  ): ResultItem => ({
    ...figure(figureOf, label, extreme(op, REGION, column, "not known"), "In:"),
    arisesIn,
  });
  const { regionLeastFlow, regionGreatestFlow, regionNpshMargin, regionPower } = DUTY_REGION;
  const { leastFlowIn, greatestFlowIn, npshMarginIn, powerIn } = DUTY_REGION;
  return [
    of(regionLeastFlow, "Minimum flow", "columnLeast", "flow", leastFlowIn),
    of(regionGreatestFlow, "Maximum flow", "columnGreatest", "flow", greatestFlowIn),
    ...(curve.npshRequired === undefined
      ? []
      : [{ ...of(regionNpshMargin, "Minimum NPSH margin", "columnLeast", "npshMargin", npshMarginIn), badBelow: 0 }]),
    ...(curve.efficiency === undefined
      ? []
      : [of(regionPower, "Maximum shaft power", "columnGreatest", "shaftPower", powerIn)]),
  ];
}

/** Names the cells of the worst of all states. */
const WORST = "worstOfStates";

/** What is looked at in every state, each with its worst end. */
function lookedAt(
  duty: Duty,
  { curve }: DutyPump,
): readonly (WorstFacts<string> & { readonly handle: Handle; readonly title: string })[] {
  const { leastFlowIn, greatestFlowIn, dutyMetIn, npshMarginIn, powerIn, leastShareIn, greatestShareIn } = DUTY_REGION;
  const states = dutyCases(duty);
  const at = (of: ColumnOf<typeof REGION>) => (row: number) => cell(REGION, row, of);
  const met = (row: number): Expression => {
    const { flow } = states[row] as DutyState;
    return product(ratio(difference(cell(REGION, row, "flow"), flow), flow), constant(100));
  };
  const all = [
    [true, dutyMetIn, "minimum flow over that asked for", "percent", "least", met],
    [true, leastFlowIn, "minimum flow", "flow", "least", at("flow")],
    [true, greatestFlowIn, "maximum flow", "flow", "greatest", at("flow")],
    [curve.npshRequired !== undefined, npshMarginIn, "minimum NPSH margin", "head", "least", at("npshMargin")],
    [curve.efficiency !== undefined, powerIn, "maximum shaft power", "power", "greatest", at("shaftPower")],
    [curve.efficiency !== undefined, leastShareIn, "minimum % of BEP flow", "percent", "least", at("bestFlowPercent")],
    [
      curve.efficiency !== undefined,
      greatestShareIn,
      "maximum % of BEP flow",
      "percent",
      "greatest",
      at("bestFlowPercent"),
    ],
  ] as const;
  return all.flatMap(([is, handle, label, quantity, side, figure]) =>
    is
      ? [
          {
            key: handle.key,
            handle,
            label,
            title: `${label.charAt(0).toUpperCase()}${label.slice(1)} in`,
            quantity,
            side,
            figure,
          },
        ]
      : [],
  );
}

/** Which state each is the worst in; all of them where several are as bad. */
function worstStates(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const facts = lookedAt(duty, pump);
  const names = dutyCases(duty).map(({ label }) => label);
  return [
    ...worstTable({ key: WORST, label: "Worst of all states" }, names, facts),
    ...facts.map(({ key, handle, title }) => ({
      ...inWords(handle, title, worstNames(WORST, key, names.length)),
      isSaidElsewhere: true as const,
    })),
  ];
}

/** What an acceptance test of the grade stated lets pass: of one pump, with the duty it is ordered for as guarantee. */
export function acceptance(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const { acceptanceGrade } = duty;
  if (acceptanceGrade === undefined) return [];
  const accepted = (of: Expression, tolerance: Handle): Expression =>
    product(of, sum(constant(1), ratio(tolerance, constant(100))));
  const { guaranteedFlow: flow, guaranteedHead: head, guaranteedEfficiency: efficiency } = DUTY_REGION;
  const either = "At the guaranteed head; flow or head must lie in its band.";
  const [atHead, atFlow] = ["At the guaranteed head.", "At the guaranteed flow."];
  const onWater = isSlurry(duty) ? ", on water" : "";
  return [
    { kind: "section", id: "acceptance", text: `Acceptance to ISO 9906 grade ${acceptanceGrade.grade}` },
    figure(flow, "Guaranteed flow", ratio(FIELD.flow, SIDE_BY_SIDE), "Of one pump: its share of the flow stated."),
    figure(
      head,
      "Guaranteed head",
      ratio(headToSelect(duty), IN_SERIES),
      `Of one pump: its share of the head to select for${onWater}.`,
    ),
    figure(DUTY_REGION.acceptedFlowLeast, "Minimum flow", accepted(flow, PUMP.flowToleranceLower), either),
    figure(DUTY_REGION.acceptedFlowMost, "Maximum flow", accepted(flow, PUMP.flowToleranceUpper), atHead),
    figure(DUTY_REGION.acceptedHeadLeast, "Minimum head", accepted(head, PUMP.headToleranceLower), atFlow),
    figure(DUTY_REGION.acceptedHeadMost, "Maximum head", accepted(head, PUMP.headToleranceUpper), atFlow),
    ...(pump.curve.efficiency === undefined
      ? []
      : [
          figure(
            efficiency,
            "Efficiency by the curve there",
            product(callOf(PUMPEFFICIENCY, { ...readCurve(duty, "carrier"), flow }), constant(100)),
            `At the guaranteed flow${onWater}.`,
          ),
          figure(
            DUTY_REGION.acceptedEfficiency,
            "Minimum efficiency",
            accepted(efficiency, PUMP.efficiencyTolerance),
            "If guaranteed; a fraction of it, not percentage points.",
          ),
        ]),
    ...(isCrossDrawn(duty) ? [cross()] : []),
    ...smallPump(pump),
  ];
}

function cross(): PlanItem {
  const { guaranteedFlow, guaranteedHead, acceptedFlowLeast, acceptedFlowMost } = DUTY_REGION;
  const { acceptedHeadLeast, acceptedHeadMost } = DUTY_REGION;
  const stroke = [
    [guaranteedFlow, acceptedHeadLeast],
    [guaranteedFlow, acceptedHeadMost],
    [guaranteedFlow, guaranteedHead],
    [acceptedFlowLeast, guaranteedHead],
    [acceptedFlowMost, guaranteedHead],
  ] as const;
  const at = (row: number): (typeof stroke)[number] => stroke[row] as (typeof stroke)[number];
  return working(CROSS, "Acceptance cross, all pumps together", stroke.length, [
    ["flow", "flow", (row) => product(at(row)[0], SIDE_BY_SIDE)],
    ["head", "head", (row) => product(at(row)[1], IN_SERIES)],
  ]);
}

function rangeEnds(duty: Duty): PlanItem {
  const ends = outerCases(duty);
  const of = (column: "flow" | "head") => (row: number) => part(recordOf(ends[row] as DutyState), column);
  return working(RANGE_ENDS, "Ends of the range", ends.length, [
    ["flow", "flow", of("flow")],
    ["head", "head", of("head")],
  ]);
}

/** Small pumps have wider tolerances whatever their grade. */
function smallPump({ curve: { bestEfficiency } }: DutyPump): readonly PlanItem[] {
  if (bestEfficiency === undefined) return [];
  const power = shaftPower({ ...bestEfficiency, specificGravity: 1 });
  if (!power.ok || power.value > SMALL_PUMP_TOLERANCES.mostPower) return [];
  const { flow: flowPercent, head: headPercent } = SMALL_PUMP_TOLERANCES;
  return [
    statement(
      `The standard widens the tolerances of pumps of 1 to 10 kW shaft power to ±${flowPercent} % of flow and ±${headPercent} % of head whatever their grade; write them in above where they apply.`,
    ),
  ];
}
