import { SUBMERGENCE } from "../../catalogue/entries/submergence.ts";
import { DRAWDOWNTIME } from "../../catalogue/entries/sump.ts";
import type { ColumnKeyOf } from "../../catalogue/entry.ts";
import type { Duty } from "../../duty/duty.ts";
import { handles, spillOf, type TableOf, tableOf } from "../expression.ts";
import type { DutyState } from "./duty-cases.ts";

/** Worked cells of the sump and of the suction bell. */
export const SUMP = handles({
  bellMargin: "length",
  bellMarginIn: null,
  flowThatDoes: "flow",
  bellThatDoes: "size",
  sumpVolume: "volume",
  sumpStatic: "head",
  drawdownHours: "hours",
  drawdownTime: "duration",
  drawdownFlowAtStart: "flow",
  drawdownFlowAtEnd: "flow",
  drawdownAtFirstFlow: "hours",
  stopLift: "head",
  stopNpshAvailable: "head",
  stopNpshRequired: "head",
  workingVolumeLeast: "volume",
  startsAtWorst: null,
  cycleTime: "duration",
  startsAtInflow: null,
  bellNotes: null,
  drawdownNotes: null,
});

/** What stands over the bell and goes into it, a row each: in each state of the duty, and pumped down. */
export const AT_BELL = tableOf("atBell", { flow: "flow", water: "length" });

/** The same as printed, with what the bell needs. */
export const BELL = tableOf("bellStates", {
  flow: "flow",
  verdict: null,
  water: "length",
  needed: "length",
  margin: "length",
});

export const DRAWDOWN = spillOf("drawdown", DRAWDOWNTIME);

/** What the bell needs in a state. */
export function bellIn({ key }: Pick<DutyState, "key">): TableOf<ColumnKeyOf<typeof SUBMERGENCE>> {
  return spillOf(`${key}Bell`, SUBMERGENCE);
}

export function hasBell({ state }: Duty): boolean {
  return state.bellDiameter !== "blank";
}

export function isBellPlaced({ state }: Duty): boolean {
  return state.bellLevel !== "blank";
}

/** Whether a sump is stated to its levels. */
export function hasSump({ state }: Duty): boolean {
  return [state.sumpPlan, state.sumpStartLevel, state.sumpStopLevel].every((each) => each !== "blank");
}

/** Whether its drawdown can be worked out: the pumps are alike, so that one curve of all of them is known. */
export function isDrawnDown(duty: Duty): boolean {
  return hasSump(duty) && duty.pump !== undefined && duty.otherPumps.length === 0;
}
