import { amount } from "../../../src/basis/result.ts";
import { greatestOf } from "../../../src/numeric/extremes.ts";
import { speedForDuty } from "../../../src/pump/ratio-for-duty.ts";
import { runningPump } from "../../../src/pump/running-pump.ts";
import { POINT } from "../../calc-sheet/sections/operating-point.ts";
import { viscousNeedOf } from "../../calc-sheet/sections/viscous-curve.ts";
import type { Criterion } from "../../catalogue/parameters/criteria.ts";
import { type Duty, pumpsInSeries, pumpsSideBySide } from "../../duty/duty.ts";
import { placeKey } from "../../duty/duty-text.ts";
import { isSlurry } from "../../duty/slurry.ts";
import { amountText } from "../../text/words.ts";
import { workedDuty } from "../worked-duty.ts";
import type { Mend } from "./mend.ts";
import { inEngine } from "./verdict-rows.ts";

/** Upwards, so that the head asked for is reached. */
const STEPS = 1e6;

/** Every row of it is at the duty flow, in one state of levels and pipe or another. */
const AT_DUTY_FLOW = /^head at the duty flow\b/;

/**
 * The speed at which like pumps on a thin clear liquid, of a duty without cases, give the head that is asked for at the duty
 * flow in every state, no faster over that of the curve than the affinity laws are trusted for.
 */
export function speedMends(rows: readonly Criterion[], duty: Duty): readonly Mend[] {
  const { pump, flow } = duty;
  if (pump === undefined || flow === undefined || duty.otherPumps.length > 0 || duty.cases.length > 0) return [];
  // Of a pump from the ranking its line of the selection offers the speed, within the limits of its table.
  if (pump.typed.selectedFor !== undefined) return [];
  if (isSlurry(duty) || viscousNeedOf(duty, pump) !== "none") return [];
  const short = rows
    .filter(({ what }) => AT_DUTY_FLOW.test(what))
    .flatMap(({ found, limit }) =>
      found === undefined || limit === undefined ? [] : [inEngine(limit, "head", duty) - inEngine(found, "head", duty)],
    );
  const most = greatestOf(short);
  const given = workedDuty(duty).figure(POINT.headAtDuty);
  if (short.length === 0 || !(most > 0) || typeof given !== "number") return [];
  const head = given + most;
  const trimmed = runningPump({ curve: pump.curve, speedRatio: 1, trimRatio: pump.trimRatio });
  if (!trimmed.ok) return [];
  const speed = speedForDuty({
    curve: trimmed.value.curve,
    flow: flow / pumpsSideBySide(duty),
    head: head / pumpsInSeries(duty),
  });
  if (!speed.ok || speed.value > 1 + (duty.speedBand ?? 0)) return [];
  const ratio = Math.ceil(speed.value * STEPS) / STEPS;
  if (ratio === pump.speedRatio) return [];
  const label =
    pump.speed === undefined
      ? `Set a speed ratio of ${ratio}`
      : `Set ${amountText(amount("speed", pump.speed * ratio), duty.unitSet)}`;
  return [{ label, place: placeKey({ pump: "speedRatio" }), text: String(ratio) }];
}
