import { submergenceMethod } from "../../../src/sump/submergence.ts";
import { workingVolumeMethod } from "../../../src/sump/working-volume.ts";
import type { Duty } from "../../duty/duty.ts";
import { cell, constant, ifError } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { bellRows } from "../sections/suction-bell.ts";
import { BELL, hasBell, hasSump, isBellPlaced, isDrawnDown, SUMP } from "../sections/sump-cells.ts";
import { type Criterion, limitOf, openPoint } from "./criterion.ts";

const of = "sump";
const BELL_RULE = submergenceMethod.cites[0];
const VORTEX = "a vortex draws air into the pump: a wider bell, less flow, more water over it, or a vortex plate";

/** The bell has its water in every state, the sump is drawn down as stated, and leaves bell and pump what they need. */
export function sumpCriteria(duty: Duty): readonly Criterion[] {
  return [...bell(duty), ...pumpedDown(duty)];
}

function bell(duty: Duty): readonly Criterion[] {
  if (!hasBell(duty)) return [];
  if (!isBellPlaced(duty)) return [openPoint({ of, what: "water over the bell", missing: ["bellLevel"] })];
  return bellRows(duty).map(({ when }, row) =>
    limitOf({
      of,
      quantity: "length",
      mustBe: "at least",
      broken: "fail",
      why: VORTEX,
      cites: BELL_RULE,
      what: "water over the suction bell",
      found: cell(BELL, row, "water"),
      limit: cell(BELL, row, "needed"),
      when,
    }),
  );
}

function pumpedDown(duty: Duty): readonly Criterion[] {
  if (!hasSump(duty) || !isDrawnDown(duty)) return [];
  const { pump } = duty;
  const when = "pumped down to the level at which it stops";
  return [
    limitOf({
      of,
      what: "flow at the end of the drawdown against the inflow",
      found: SUMP.drawdownFlowAtEnd,
      limit: FIELD.sumpInflow,
      quantity: "flow",
      mustBe: "at least",
      broken: "fail",
      unanswered: "fail",
      why: ifError(
        { op: "ifNumber", of: SUMP.drawdownFlowAtEnd, met: constant(""), otherwise: constant("") },
        NOT_DOWN,
      ),
    }),
    ...(pump?.curve.npshRequired === undefined
      ? []
      : [
          limitOf({
            of: "npsh",
            what: "NPSH available",
            found: SUMP.stopNpshAvailable,
            limit: SUMP.stopNpshRequired,
            quantity: "head",
            mustBe: "at least",
            broken: "fail",
            when,
            why: "the pump cavitates before the sump is down",
          }),
        ]),
    ...(duty.state.startsPerHour === "blank"
      ? []
      : [
          limitOf({
            of,
            what: "volume between the levels",
            found: SUMP.sumpVolume,
            limit: SUMP.workingVolumeLeast,
            quantity: "volume",
            mustBe: "at least",
            broken: "fail",
            when: "starts stated, inflow of half the pumps' flow",
            why: "the pump starts more often than it stands",
            cites: workingVolumeMethod.cites[0],
          }),
        ]),
  ];
}

const NOT_DOWN = "the level does not come down so far: see its cell";
