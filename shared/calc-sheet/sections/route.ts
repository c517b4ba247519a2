import { airValves } from "../../../src/route/air-valves.ts";
import { routeOfLine } from "../../../src/route/route.ts";
import { GRADELINE } from "../../catalogue/entries/grade-line.ts";
import { AIRVALVES, DRAINDOWN, FILLHEAD, FILLTIME } from "../../catalogue/entries/route.ts";
import { type Duty, type DutyPump, isLifted } from "../../duty/duty.ts";
import { stateAsPumped } from "../../duty/slurry.ts";
import { asVacuum, flowThrough, headOf } from "../conversions.ts";
import {
  type Call,
  callOf,
  cell,
  constant,
  difference,
  type Expression,
  greatest,
  ifNumber,
  ifText,
  join,
  least,
  part,
  range,
  ratio,
  spillOf,
  sum,
  verdict,
} from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import type { PackageSection } from "../package-section.ts";
import { figure, type PlanItem, remark, spill } from "../plan.ts";
import { asStated } from "./duty-cases.ts";
import { LINES, shareAsStated } from "./lines.ts";
import { LIQUID_FIGURES } from "./liquid.ts";
import { pipeRuns, ratingSpills } from "./pipe-runs.ts";
import { FILLING, GRADE, hasRoute, ROUTE, SIPHON, SIPHON_SETTINGS } from "./route-cells.ts";
import { profile } from "./route-profile.ts";
import { siphonIn } from "./route-siphons.ts";
import { routeStates } from "./route-states.ts";
import { stated } from "./stated-input.ts";
import { headsTogether, PUMPS_TOGETHER } from "./station-curve.ts";

const DRAIN = spillOf("drainDown", DRAINDOWN);
const VALVES = spillOf("airValves", AIRVALVES);

const LINE = { dischargeLine: range(LINES.dischargeLine), startLevel: FIELD.pumpLevel } as const;
const SYSTEM = {
  ...LINE,
  sourceLevel: FIELD.sourceLevel,
  suctionLine: range(LINES.suctionLine),
  sourcePressure: FIELD.sourcePressure,
} as const;

const GRADE_CALL = callOf(GRADELINE, {
  flow: FIELD.flow,
  route: range(LINES.dischargeLine),
  startLevel: FIELD.pumpLevel,
  outletLevel: FIELD.deliveryLevel,
  outletPressure: FIELD.deliveryPressure,
  altitude: FIELD.altitude,
  ...LIQUID,
  ...SIPHON_SETTINGS,
});
const FILL_CALL = callOf(FILLTIME, { ...SYSTEM, curve: range(PUMPS_TOGETHER), ...LIQUID });
const DRAIN_CALL = callOf(DRAINDOWN, { ...LINE, sourceLevel: FIELD.sourceLevel });

function headToFillAt(flow: Expression): Call {
  return callOf(FILLHEAD, { ...SYSTEM, flow, ...LIQUID });
}

/** The line where it lies: grade line, siphon, filling, draining, air valves. */
export const routeSection: PackageSection = {
  id: "route",
  missing: "State the level at the end of a row of the discharge line: its summits, its low places.",
  caution:
    "Levels are those of the pipe, not of the ground. A summit inside a row is not seen. Fill slowly, let the air out, and keep people away from the outlet until the flow is steady.",
  decidedBy: [],
  isOfPump: true,
  items: (duty) => {
    if (!hasRoute(duty)) return [];
    return [
      ...stated(duty, "outlet", "summitValve"),
      ...stated(duty, "fillingFlow"),
      ...workings(duty),
      ...summit(),
      ...filling(duty),
      ...routeStates(duty, duty.pump),
      ...stopping(duty),
      ...profile(duty, GRADE),
      ...valves(duty),
      remark(ROUTE.gradeNotes, "Grade line", GRADE_CALL),
      remark(ROUTE.siphonNotes, "Siphon credit", siphonIn(asStated(duty))),
      ...(duty.pump === undefined ? [] : [remark(ROUTE.fillNotes, "Filling the line", FILL_CALL)]),
      remark(ROUTE.drainNotes, "Drain-down", DRAIN_CALL),
    ];
  },
};

function workings(duty: Duty): readonly PlanItem[] {
  const { pump, dischargeLine } = duty;
  return [
    spill(GRADE, "Grade line of the discharge line, running full", GRADE_CALL, dischargeLine.length + 2),
    spill(DRAIN, "Drain-down of the discharge line", DRAIN_CALL),
    ...(pump === undefined
      ? []
      : [headsTogether(duty), spill(FILLING, "Filling the line with all pumps that run", FILL_CALL)]),
    ...ratingSpills(
      duty,
      pipeRuns(duty).filter(({ line }) => line === "dischargeLine"),
    ),
  ];
}

function summit(): readonly PlanItem[] {
  return [
    figure(
      ROUTE.summitAt,
      "Governing summit at",
      part(SIPHON, "summit"),
      "Chainage of the largest of level and losses to there: the highest place to fill over.",
    ),
    figure(
      ROUTE.summitPressure,
      "Pressure there, running full",
      part(SIPHON, "pressure"),
      "At the duty flow, by the grade line from the outlet; below 0 a vacuum.",
    ),
    figure(ROUTE.froude, "Froude number of the fall", part(SIPHON, "froude"), "V/√(gD), the lowest of its legs."),
    figure(
      ROUTE.clearing,
      "Froude number that clears it of air",
      part(SIPHON, "clearing"),
      "By its slope, the greater of two rules.",
    ),
    {
      kind: "finding",
      key: ROUTE.siphon.key,
      label: "Siphon credit",
      expression: ifText(
        part(SIPHON, "credit"),
        "not earned",
        join(constant("not earned: "), part(SIPHON, "why")),
        part(SIPHON, "credit"),
      ),
    },
    figure(
      ROUTE.headOver,
      "Head over the summit at the duty flow",
      part(SIPHON, "headHeld"),
      "Level and losses to the summit: what the pump sees as long as no siphon is earned.",
    ),
  ];
}

function filling(duty: Duty): readonly PlanItem[] {
  const { state, pump } = duty;
  const isStated = state.fillingFlow !== "blank";
  return [
    figure(
      ROUTE.fillingLeast,
      "Filling flow to reach",
      isStated ? FIELD.fillingFlow : usualFlow(duty),
      isStated ? "As stated." : "At the filling velocity of the settings, in the largest bore.",
    ),
    figure(
      ROUTE.fillHead,
      "Head to fill at it",
      headToFillAt(ROUTE.fillingLeast),
      "The maximum over the line of level and losses to there, at the flow to reach.",
    ),
    figure(
      ROUTE.headToSelect,
      "Head to select by the route",
      greatest(part(SIPHON, "headToSelect"), ROUTE.fillHead),
      "Over the summit at the duty flow, unless a siphon is earned; and to fill at the flow to reach.",
      "main",
    ),
    ...(pump === undefined ? [] : pumpsFill(duty, pump)),
  ];
}

function pumpsFill(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const hasShutoff = [pump, ...duty.otherPumps].every(({ curve }) => curve.leastFlow === 0);
  const shutoff = hasShutoff ? cell(PUMPS_TOGETHER, 0, "head") : constant(0);
  return [
    ...(hasShutoff
      ? [
          figure(
            ROUTE.shutoffOver,
            "Shutoff head over the summit",
            difference(shutoff, headToFillAt(constant(0))),
            "Pump shutoff less the rise to the summit; below 0 the line does not fill.",
          ),
          figure(
            ROUTE.fills,
            "Filling the line",
            verdict(ROUTE.shutoffOver, constant(0), "fills", "does not fill: the shutoff head is short of the summit"),
            "Of all pumps that run, as they stand.",
          ),
        ]
      : []),
    figure(
      ROUTE.fillFlow,
      "Flow over the summit while filling",
      part(FILLING, "flow"),
      "Where the pumps give the head to the summit at that flow.",
      "main",
    ),
    figure(ROUTE.headWhileFilling, "Head then", part(FILLING, "head"), "Of the pumps at that flow."),
    figure(ROUTE.toSummit, "Time to the summit", part(FILLING, "toSummit"), "Volume over the flow at each place."),
    figure(
      ROUTE.toOutlet,
      "Time to the outlet",
      part(FILLING, "toOutlet"),
      "At the latest: a fall runs ahead of its filling. Time to run full is not promised.",
    ),
  ];
}

/** Flow at which the widest bore fills at the usual velocity. */
function usualFlow(duty: Duty): Expression {
  const flows = duty.dischargeLine.map((_, row) => {
    const bore = cell(LINES.dischargeLine, row, "bore");
    return ratio(flowThrough(bore, FIELD.fillingVelocity, duty.unitSet), shareAsStated(duty, "dischargeLine", row));
  });
  return flows.length === 1 ? (flows[0] as Expression) : greatest(...flows);
}

function stopping({ unitSet }: Duty): readonly PlanItem[] {
  return [
    figure(ROUTE.lineVolume, "Volume of the line", part(DRAIN, "volume"), "Of all its runs."),
    figure(
      ROUTE.runsOut,
      "Runs out after a stop",
      part(DRAIN, "runsOut"),
      "From beyond the last summit, with air let in there.",
    ),
    figure(
      ROUTE.runsBack,
      "Runs back without a check valve",
      part(DRAIN, "runsBack"),
      "Through the pump into the source, down to its level.",
    ),
    figure(
      ROUTE.standingLevel,
      "Level the line stands to",
      sum(FIELD.pumpLevel, part(DRAIN, "standingHead")),
      "With the check valve shut: the highest place of the line, not the outlet.",
    ),
    figure(
      ROUTE.hangingVacuum,
      "Vacuum at the highest place after a stop",
      asVacuum(
        greatest(
          constant(0),
          least(
            ratio(
              difference(ROUTE.standingLevel, FIELD.deliveryLevel),
              headOf(constant(1), LIQUID_FIGURES.density, unitSet),
            ),
            LIQUID_FIGURES.atmosphere,
          ),
        ),
        unitSet,
      ),
      "Where no valve lets air in: what hangs on the outlet.",
    ),
  ];
}

/** As many places as there are when the sheet is written. */
function valves(duty: Duty): readonly PlanItem[] {
  const call = callOf(AIRVALVES, {
    ...LINE,
    summitValve: FIELD.summitValve,
    lifted: constant(isLifted(duty) ? "yes" : "no"),
    ...LIQUID,
  });
  const places = placesOf(duty);
  return [
    spill(VALVES, "Air and vacuum valves", call, places + 1),
    {
      kind: "table",
      key: "airValvesShown",
      heading: "air and vacuum valves, to quote from; the maker sizes them",
      columns: [
        { key: "chainage", label: "chainage", quantity: "length" },
        { key: "elevation", label: "level", quantity: "elevation" },
        { key: "valve", label: "valve" },
        { key: "inflow", label: "air in", quantity: "flow" },
        { key: "orifice", label: "orifice, 5 psi", quantity: "size" },
      ],
      rows: Array.from({ length: places }, (_, row) => ({
        label: `valve ${row + 1}`,
        cells: [
          ...(["chainage", "elevation", "valve"] as const).map((of) => part(VALVES, of, row)),
          // Nothing falls away from a valve behind the pump.
          ...(["inflow", "orifice"] as const).map((of) => ifNumber(part(VALVES, of, row), part(VALVES, of, row), "–")),
        ],
      })),
    },
  ];
}

function placesOf(duty: Duty): number {
  const { pumpLevel: startLevel, deliveryLevel, summitValve = "none", dischargeLine } = duty;
  const line = dischargeLine.flatMap(({ segment }) => segment ?? []);
  const liquid = stateAsPumped(duty);
  if (startLevel === undefined || line.length < dischargeLine.length || !liquid.ok) return 0;
  const route = routeOfLine({ line, startLevel, outletLevel: deliveryLevel ?? null, altitude: null });
  if (!route.ok) return 0;
  const found = airValves(route.value, liquid.value, { summitValve, isLifted: isLifted(duty) });
  return found.ok ? found.value.length : 0;
}
