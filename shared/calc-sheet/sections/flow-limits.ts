import { MINTHERMALFLOW, NPSHLIMITFLOW } from "../../catalogue/entries/flow-limits.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import {
  type Call,
  callOf,
  constant,
  type Expression,
  greatest,
  handles,
  ifText,
  part,
  product,
  range,
  spillOf,
} from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import { figure, type PlanItem, remark, spill, statement } from "../plan.ts";
import { SIDE_BY_SIDE } from "./drawn-curves.ts";
import { asStated, isStation } from "./duty-cases.ts";
import { LINES } from "./lines.ts";
import { NPSH } from "./npsh.ts";
import { readCurve } from "./slurry-curve.ts";
import { stated } from "./stated-input.ts";

/** Worked cells of this section. */
export const LIMITS = handles({
  npshRunsOut: "flow",
  npshKeptTo: "flow",
  thermalFlow: "flow",
  hydraulicFlow: "flow",
  leastFlowGoverns: "flow",
  npshLimitNotes: null,
  thermalNotes: null,
});

const RUNS_OUT = spillOf("npshLimit", NPSHLIMITFLOW);
const KEPT_TO = spillOf("npshKept", NPSHLIMITFLOW);
const THERMAL = spillOf("thermalMinimum", MINTHERMALFLOW);

/** Between which flows the pumps can run: up to where NPSH runs out, down to what heating and hydraulics allow. */
export function flowLimits(duty: Duty, { curve }: DutyPump): readonly PlanItem[] {
  const items = [
    ...(curve.npshRequired === undefined || isStation(asStated(duty), duty) ? [] : byNpsh(duty)),
    ...(curve.bestEfficiency === undefined ? [] : byHeating(duty)),
  ];
  if (items.length === 0) return [];
  return [
    { kind: "section", id: "flowLimits", text: "Limits of flow" },
    ...items,
    ...(duty.cases.length === 0 ? [] : [statement(OF_THE_DUTY)]),
  ];
}

const OF_THE_DUTY =
  "These limits, heating among them, are judged for the duty as stated, not in each case: a case with another liquid, temperature, source level or number of pumps has limits of its own.";

function npshLimit(duty: Duty, margin: { readonly NPSHMargin?: Expression }): Call {
  return callOf(NPSHLIMITFLOW, {
    ...readCurve(duty),
    suctionLift: NPSH.suctionLift,
    suctionLine: range(LINES.suctionLine),
    ...margin,
    altitude: FIELD.altitude,
    sourcePressure: FIELD.sourcePressure,
    numberOfPumps: SIDE_BY_SIDE,
    ...LIQUID,
  });
}

function byNpsh(duty: Duty): readonly PlanItem[] {
  const isStated = duty.state.npshMargin !== "blank";
  const runsOut = npshLimit(duty, { NPSHMargin: constant(0) });
  return [
    spill(RUNS_OUT, "Flow by NPSH, no margin", runsOut),
    spill(KEPT_TO, "Flow by NPSH with its margin", npshLimit(duty, isStated ? { NPSHMargin: FIELD.npshMargin } : {})),
    figure(
      LIMITS.npshRunsOut,
      "NPSH runs out at",
      limitIn(RUNS_OUT),
      "All pumps: available meets required; head falls off beyond.",
    ),
    figure(
      LIMITS.npshKeptTo,
      "NPSH margin is kept up to",
      limitIn(KEPT_TO),
      isStated
        ? "Of all pumps, with the margin required."
        : "Of all pumps, with the greater of 1.0 m (3.28 ft) and 0.3 of NPSH required.",
    ),
    remark(LIMITS.npshLimitNotes, "Flow by NPSH", runsOut),
  ];
}

/** The flow at which it ends, or in words where NPSH suffices at all flows of the curve or at none. */
function limitIn(of: typeof RUNS_OUT): Expression {
  const endsBy = part(of, "endsBy");
  const none = ifText(endsBy, "NPSH at every flow", constant("no flow has enough"), part(of, "most"));
  return ifText(endsBy, "end of the curve", constant("beyond the curve"), none);
}

function byHeating(duty: Duty): readonly PlanItem[] {
  const call = callOf(MINTHERMALFLOW, { ...readCurve(duty), ...LIQUID });
  const isStated = duty.state.leastPumpFlow !== "blank";
  return [
    ...(isStated ? stated(duty, "leastPumpFlow") : []),
    spill(THERMAL, "Minimum flow of one pump", call),
    figure(
      LIMITS.thermalFlow,
      "Minimum flow by heating, each",
      part(THERMAL, "flow"),
      "8 K (14.4 °F) in one pass; less is allowed if NPSH is short.",
    ),
    figure(
      LIMITS.hydraulicFlow,
      "Minimum flow, hydraulics, each",
      isStated ? FIELD.leastPumpFlow : part(THERMAL, "hydraulic"),
      isStated ? "As the maker states it." : "30 % of BEP flow, doubted below; ask the maker.",
    ),
    figure(
      LIMITS.leastFlowGoverns,
      "Minimum flow of all that run",
      product(greatest(LIMITS.thermalFlow, LIMITS.hydraulicFlow), SIDE_BY_SIDE),
      "The greater of the two, for each pump that shares the flow.",
    ),
    remark(LIMITS.thermalNotes, "Minimum flow by heating", call),
  ];
}
