import { PUMPNPSHR } from "../../catalogue/entries/pump.ts";
import { DRAWDOWNTIME, PUMPCYCLE, SUMPVOLUME, WORKINGVOLUME } from "../../catalogue/entries/sump.ts";
import { SYSTEMCURVE } from "../../catalogue/entries/system-and-suction.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { callOf, cell, constant, difference, part, product, range, ratio, spillOf, tableOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import type { PackageSection } from "../package-section.ts";
import { figure, type PlanItem, remark, spill, statement, working } from "../plan.ts";
import { IN_SERIES, SIDE_BY_SIDE, SYSTEM_REACH } from "./drawn-curves.ts";
import { asStated } from "./duty-cases.ts";
import { npshAvailableIn } from "./npsh.ts";
import { PUMP } from "./pump.ts";
import { curveAsPumped, readCurve } from "./slurry-curve.ts";
import { stated } from "./stated-input.ts";
import { suctionBell } from "./suction-bell.ts";
import { DRAWDOWN, hasSump, isDrawnDown, SUMP } from "./sump-cells.ts";
import { systemCurveOf } from "./system-curve.ts";

const PUMPS = tableOf("sumpPumps", { flow: "flow", head: "head" });
const SYSTEM = spillOf("sumpSystem", SYSTEMCURVE);
const CYCLE_AT_WORST = spillOf("cycleAtWorst", PUMPCYCLE);
const CYCLE = spillOf("cycleAtInflow", PUMPCYCLE);
const WORKING = spillOf("workingVolume", WORKINGVOLUME);
const POINTS = 25;
const RATIOS = [PUMP.speedRatio, PUMP.trimRatio] as const;

const LEVELS = { sump: FIELD.sumpPlan, startLevel: FIELD.sumpStartLevel, endLevel: FIELD.sumpStopLevel } as const;

/** The sump pumped down: time, starts, what its lowest level leaves the pump; and the water over the suction bell. */
export const sumpSection: PackageSection = {
  id: "sump",
  missing:
    "State the bell or open end for its water; the plan of the sump and two levels for its volume, and a pump for drawdown and starts.",
  caution:
    "Open water drowns and a sump is a confined space: guard the edge, never work alone over it, test the air and enter only with a permit and an attendant outside. Stop and lock out the pumps before anyone goes near the bell.",
  decidedBy: [],
  isOfPump: true,
  items: (duty) => [...pumpedDown(duty), ...suctionBell(duty)],
};

function pumpedDown(duty: Duty): readonly PlanItem[] {
  if (!hasSump(duty)) return [];
  const { pump } = duty;
  return [
    ...stated(duty, "sumpPlan", "sumpStartLevel", "sumpStopLevel", "sumpInflow", "startsPerHour"),
    figure(SUMP.sumpVolume, "Volume between the levels", callOf(SUMPVOLUME, LEVELS), "Plan over height."),
    ...(pump === undefined
      ? [statement("Select a pump for the time of drawdown.")]
      : isDrawnDown(duty)
        ? [...drawdown(duty, pump), ...starts(duty)]
        : [statement("The time of drawdown is worked out for pumps alike.")]),
  ];
}

function drawdown(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const curve = curveAsPumped(duty);
  const call = callOf(DRAWDOWNTIME, {
    ...LEVELS,
    curve: range(PUMPS),
    systemCurve: range(SYSTEM),
    inflow: FIELD.sumpInflow,
  });
  return [
    figure(
      SUMP.sumpStatic,
      "Static head at the start",
      difference(FIELD.deliveryLevel, FIELD.sumpStartLevel),
      "Delivery level less the level at which pumping starts; it grows as the level falls.",
    ),
    working(PUMPS, "Head of all pumps together", pump.curve.points.length, [
      ["flow", "flow", (row) => product(cell(curve, row, "flow"), ...RATIOS, SIDE_BY_SIDE)],
      ["head", "head", (row) => product(cell(curve, row, "head"), ...RATIOS, ...RATIOS, IN_SERIES)],
    ]),
    spill(
      SYSTEM,
      "System with the sump at its start level",
      systemCurveOf({ ...asStated(duty), staticHead: SUMP.sumpStatic, upTo: SYSTEM_REACH, points: POINTS }),
      POINTS + 1,
    ),
    spill(DRAWDOWN, "Drawdown", call),
    figure(
      SUMP.drawdownHours,
      "Time to pump it down",
      part(DRAWDOWN, "hours"),
      "Area over flow less inflow, level by level: the flow falls as the level does. Add the time to prime and to fill the line.",
      "main",
    ),
    figure(SUMP.drawdownTime, "The same in seconds", part(DRAWDOWN, "time"), "For a sump that a pump empties often."),
    figure(SUMP.drawdownFlowAtStart, "Flow at the start", part(DRAWDOWN, "flowAtStart"), "Of all pumps."),
    figure(SUMP.drawdownFlowAtEnd, "Flow at the end", part(DRAWDOWN, "flowAtEnd"), "Of all pumps."),
    figure(
      SUMP.drawdownAtFirstFlow,
      "Time at the first flow throughout",
      ratio(part(DRAWDOWN, "timeAtFirstFlow"), constant(3600)),
      "Too short; a common shortcut.",
    ),
    ...atTheStop(duty, pump),
    remark(SUMP.drawdownNotes, "Drawdown", call),
  ];
}

/** What the level at which pumping stops leaves to the pump. */
function atTheStop(duty: Duty, { curve }: DutyPump): readonly PlanItem[] {
  if (curve.npshRequired === undefined) return [];
  return [
    figure(
      SUMP.stopLift,
      "Suction lift at the stop",
      difference(FIELD.pumpLevel, FIELD.sumpStopLevel),
      "Pump level less the level at which pumping stops.",
    ),
    figure(
      SUMP.stopNpshAvailable,
      "NPSH available at the stop",
      npshAvailableIn({ ...asStated(duty), suctionLift: SUMP.stopLift }, SUMP.drawdownFlowAtEnd),
      "At the flow there.",
    ),
    figure(
      SUMP.stopNpshRequired,
      "NPSH required at the stop",
      callOf(PUMPNPSHR, { ...readCurve(duty), flow: ratio(SUMP.drawdownFlowAtEnd, SIDE_BY_SIDE) }),
      "Of each pump, at the flow there.",
    ),
  ];
}

/** How often the pumps start; all of them together, which asks for the most volume. */
function starts(duty: Duty): readonly PlanItem[] {
  const flow = SUMP.drawdownFlowAtStart;
  const cycle = { volume: SUMP.sumpVolume, flow };
  const isFed = duty.state.sumpInflow === "unreadable" || (duty.sumpInflow ?? 0) > 0;
  return [
    ...(duty.state.startsPerHour === "blank"
      ? []
      : [
          spill(
            WORKING,
            "Working volume",
            callOf(WORKINGVOLUME, { groupFlows: flow, startsPerHour: FIELD.startsPerHour }),
          ),
          figure(
            SUMP.workingVolumeLeast,
            "Minimum volume for the starts stated",
            part(WORKING, "volume"),
            "A quarter of the flow times the time between starts; all pumps that run start together.",
          ),
        ]),
    spill(CYCLE_AT_WORST, "Cycle at worst", callOf(PUMPCYCLE, { ...cycle, inflow: ratio(flow, constant(2)) })),
    figure(
      SUMP.startsAtWorst,
      "Starts an hour at worst",
      part(CYCLE_AT_WORST, "startsPerHour"),
      "At an inflow of half the pumps' flow.",
    ),
    ...(isFed
      ? [
          spill(CYCLE, "Cycle at the inflow stated", callOf(PUMPCYCLE, { ...cycle, inflow: FIELD.sumpInflow })),
          figure(SUMP.cycleTime, "Cycle at the inflow stated", part(CYCLE, "cycle"), "From start to start."),
          figure(SUMP.startsAtInflow, "Starts an hour then", part(CYCLE, "startsPerHour"), "At the inflow stated."),
        ]
      : []),
  ];
}
