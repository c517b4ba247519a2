import { NOZZLECLASSES } from "../../catalogue/entries/nozzle-classes.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import { isSlurry } from "../../duty/slurry.ts";
import {
  type Call,
  difference,
  type Expression,
  handles,
  ifNumber,
  part,
  product,
  ratio,
  spillOf,
} from "../expression.ts";
import { CLEAR_LIQUID, FIELD } from "../field-handles.ts";
import { figure, type PlanItem, spill } from "../plan.ts";
import { PUMPED } from "./as-pumped.ts";
import { type DutyState, flushState, NOT_GIVEN, recordOf, whereGiven } from "./duty-cases.ts";
import { HEAD, totalHeadAt } from "./head.ts";
import { POINT } from "./operating-point.ts";

/** The same line and pumps without the solids, with which they are started and flushed. */
export const CLEAR = handles({
  clearTotalHead: "head",
  slurryOverClear: "head",
  flushFlow: "flow",
  flushHead: "head",
  flushPower: "power",
  flushPressure: "gaugePressure",
  clearGreatestPower: "power",
  powerOverWater: "ratio",
});

/** Total head of the clear liquid at the duty flow, beside that of the slurry. */
export function clearHead(): readonly PlanItem[] {
  const head = totalHeadAt(FIELD.flow, CLEAR_LIQUID);
  return [
    figure(CLEAR.clearTotalHead, "Total head, clear liquid", head, "At the flow stated, in head of the clear liquid."),
    figure(
      CLEAR.slurryOverClear,
      "Increase over clear liquid",
      difference(HEAD.totalHead, CLEAR.clearTotalHead),
      "Total head of the slurry less that; each is in head of what flows.",
    ),
  ];
}

/** A power with the slurry, of the same pump at the same flow with the clear liquid. */
export function onClearLiquid(power: Expression): Expression {
  return ratio(
    product(power, PUMPED.clearGravity, PUMPED.efficiencyRatio),
    product(PUMPED.pumpedGravity, PUMPED.headRatio),
  );
}

/** Where the pumps run while the line is started and flushed, and the power they then take. */
export function startAndFlush(duty: Duty): readonly PlanItem[] {
  const { pump } = duty;
  const flush = flushState(duty);
  const over = figure(
    CLEAR.powerOverWater,
    "Power ratio, slurry / water",
    ratio(product(PUMPED.pumpedGravity, PUMPED.headRatio), PUMPED.efficiencyRatio),
    "Of the same pump at the same flow on water of SG 1: SG × head ratio / efficiency ratio.",
  );
  return pump === undefined || flush === undefined ? [over] : [over, ...flushed(flush, pump)];
}

function flushed(flush: DutyState, { curve }: DutyPump): readonly PlanItem[] {
  const record = recordOf(flush);
  const how = "On clear liquid, at the least static head; all pumps together.";
  return [
    figure(CLEAR.flushFlow, "Start and flush: flow at the operating point", part(record, "flow"), how),
    figure(CLEAR.flushHead, "Start and flush: operating head", part(record, "head"), how),
    ...(curve.efficiency === undefined
      ? []
      : [
          figure(CLEAR.flushPower, "Start and flush: shaft power", whereGiven(record, "shaftPower"), how),
          figure(
            CLEAR.clearGreatestPower,
            "Maximum shaft power, clear liquid",
            ifNumber(POINT.greatestPower, onClearLiquid(POINT.greatestPower), NOT_GIVEN),
            "Anywhere on the curve, all pumps together; the driver goes by that on slurry.",
          ),
        ]),
  ];
}

const CLEAR_CLASSES = spillOf("clearNozzles", NOZZLECLASSES);

/** The pressure of the last nozzle while the line is started and flushed: the call of the section with the clear liquid. */
export function flushPressure(duty: Duty, call: Call, nozzles: number): readonly PlanItem[] {
  if (!isSlurry(duty)) return [];
  const gravity = call.entry.parameters.findIndex(([key]) => key === "SG");
  const clear = { ...call, args: call.args.map((arg, place) => (place === gravity ? PUMPED.clearGravity : arg)) };
  return [
    spill(CLEAR_CLASSES, "Pressure at each nozzle, clear liquid", clear, nozzles + 1),
    figure(
      CLEAR.flushPressure,
      "Start and flush: pressure at the last discharge",
      part(CLEAR_CLASSES, "greatest", nozzles - 1),
      "The greater of running and standing with the clear liquid; that with the slurry decides.",
    ),
  ];
}
