import { GRADELINE } from "../../catalogue/entries/grade-line.ts";
import { FILLTIME, SIPHONCREDIT } from "../../catalogue/entries/route.ts";
import type { Duty } from "../../duty/duty.ts";
import { handles, spillOf } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { hasLevels } from "./line-shares.ts";

/** Worked cells of the route. */
export const ROUTE = handles({
  fillingLeast: "flow",
  fillHead: "head",
  summitAt: "length",
  summitPressure: "gaugePressure",
  froude: "ratio",
  clearing: "ratio",
  siphon: null,
  headOver: "head",
  headToSelect: "head",
  fills: null,
  fillFlow: "flow",
  headWhileFilling: "head",
  shutoffOver: "head",
  leastFillIn: null,
  lineVolume: "volume",
  toSummit: "duration",
  toOutlet: "duration",
  runsOut: "volume",
  runsBack: "volume",
  standingLevel: "elevation",
  hangingVacuum: "vacuum",
  gradeNotes: null,
  siphonNotes: null,
  fillNotes: null,
  drainNotes: null,
});

/** What stands beside a figure of a line with levels that rests on its system. */
export const HELD_TO_SUMMIT =
  "Where no siphon is earned the pumps see the summit of the line at all times, and run where they give the head to it. Should a siphon come by itself they run further out: the states in which the line runs full say how far.";

export const GRADE = spillOf("gradeLine", GRADELINE);
export const SIPHON = spillOf("siphonCredit", SIPHONCREDIT);

/** Beyond which no siphon is counted on, anywhere on the sheet. */
export const SIPHON_SETTINGS = {
  siphonHeight: FIELD.siphonHeight,
  siphonHeightLoss: FIELD.siphonHeightLoss,
  siphonPressure: FIELD.siphonPressure,
};

export const FILLING = spillOf("filling", FILLTIME);
/** Whether the duty says where its discharge line lies. */
export function hasRoute(duty: Duty): boolean {
  return hasLevels(duty, "dischargeLine");
}
