import { printedUnit, UNIT_SETS } from "../../../src/basis/quantities.ts";
import { fromEngine } from "../../../src/basis/units.ts";
import { COURSE_POINTS } from "../../../src/priming/prime-course.ts";
import { HOT_VAPOUR_PRESSURE } from "../../../src/suction/suction-practice.ts";
import { type Duty, isLifted, segmentsOf } from "../../duty/duty.ts";
import type { FieldKey } from "../../duty/fields.ts";
import { FIELDS } from "../../duty/fields.ts";
import { isSizedSlurry } from "../../duty/slurry.ts";
import {
  asShare,
  constant,
  difference,
  type Expression,
  greatest,
  ifAtLeast,
  ifNumber,
  join,
  part,
  product,
  rounded,
  sum,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { byWeight } from "../sections/as-pumped.ts";
import { NOT_GIVEN } from "../sections/duty-cases.ts";
import { LIQUID_FIGURES } from "../sections/liquid.ts";
import { NPSH } from "../sections/npsh.ts";
import { COURSE, isPrimingAskedFor } from "../sections/priming.ts";
import { isNpshLiftKnown, LIFT, npshLiftMargin } from "../sections/priming-lift.ts";
import { runsOf } from "../sections/slurry-lines.ts";
import { wettedDutyOf } from "../sections/wetted-duty.ts";
import { type Criterion, limitOf, openPoint, worded } from "./criterion.ts";

const of = "priming";
const LIFTED = { of, found: NPSH.suctionLift, quantity: "head", mustBe: "at most" } as const;

/** The lift of the duty against the least of what air pump, practice and NPSH allow, and what keeps it from priming. */
export function primingCriteria(duty: Duty): readonly Criterion[] {
  if (duty.suctionLine.length === 0) return [openPoint({ of, what: "suction line", missing: [] })];
  if (!isLifted(duty)) {
    return [worded({ of, state: "pass", what: "flooded at the source level stated, nothing needed" })];
  }
  return [...lifts(duty), ...(isPrimingAskedFor(duty) ? [time(duty)] : []), ...devices(duty)];
}

function lifts(duty: Duty): readonly Criterion[] {
  const assumed = assumedOf(duty, ["airPump", "altitude", "temperature"]);
  const nearest = difference(
    LIFT.greatestPrimingLift,
    greatest(product(LIFT.greatestPrimingLift, asShare(FIELD.liftShareClear)), FIELD.liftClear),
  );
  return [
    limitOf({ ...LIFTED, what: "suction lift, air pump", limit: LIFT.liftByBlankOff, broken: "fail", ...assumed }),
    limitOf({ ...LIFTED, what: "suction lift, practice", limit: LIFT.liftByPractice, broken: "fail", ...assumed }),
    limitOf({
      of,
      what: "vapour pressure of the liquid lifted",
      found: LIQUID_FIGURES.vapourPressure,
      limit: constant(inUnits(HOT_VAPOUR_PRESSURE, "absolutePressure", duty)),
      quantity: "absolutePressure",
      mustBe: "at most",
      broken: "fail",
      why: "no lift of liquid hotter than water at 60 °C (140 °F)",
    }),
    ...byNpsh(duty),
    limitOf({
      ...LIFTED,
      what: "suction lift, near the minimum limit",
      limit: nearest,
      broken: "check",
      when: join(
        FIELD.liftShareClear,
        constant(" % or "),
        rounded(FIELD.liftClear, 2),
        constant(` ${printedUnit("head", duty.unitSet)} kept clear of it`),
      ),
    }),
  ];
}

/** A margin that was typed is a limit; one that was taken is a recommendation, beside the bare NPSH required. */
function byNpsh(duty: Duty): readonly Criterion[] {
  if (!isNpshLiftKnown(duty)) {
    return [openPoint({ of, what: "suction lift by NPSH", missing: duty.pump === undefined ? ["npshRequired"] : [] })];
  }
  const row = { ...LIFTED, what: "suction lift, NPSH" };
  // A pump held shut beside others has no NPSH to go by.
  const lift = ifNumber(LIFT.liftByNpsh, LIFT.liftByNpsh, NOT_GIVEN);
  if (duty.state.npshMargin !== "blank") {
    return [limitOf({ ...row, limit: lift, broken: "fail", when: "with the margin stated" })];
  }
  const bare: Expression = sum(LIFT.liftByNpsh, npshLiftMargin(duty));
  return [
    limitOf({ ...row, limit: bare, broken: "fail", when: "without margin" }),
    limitOf({ ...row, limit: lift, broken: "check", when: "with the margin taken" }),
  ];
}

function time(duty: Duty): Criterion {
  const isBypass = duty.service === undefined || duty.service === "bypass";
  return limitOf({
    of,
    what: "time to prime",
    // Of the course itself: the printed time gives way to words where the lift is above the greatest.
    found: part(COURSE, "time", COURSE_POINTS - 1),
    limit: isBypass ? FIELD.primeTimeBypass : FIELD.primeTimeOther,
    quantity: "duration",
    mustBe: "at most",
    broken: "check",
    when: isBypass ? "bypass" : "dewatering",
    ...assumedOf(duty, ["casingVolume", "airPump"]),
  });
}

/** What keeps the line from priming whatever the lift. */
function devices(duty: Duty): readonly Criterion[] {
  const { suctionLine, dischargeLine } = duty;
  const settling = isSizedSlurry(duty) ? runsOf(duty).filter(({ line }) => line === "suctionLine") : [];
  const hasCheck = dischargeLine.some(({ typed }) => /check|non-?return|\bnrv\b/i.test(typed.fittings));
  return [
    ...(suctionLine.some(({ segment }) => segment?.pipe.collapsible)
      ? [worded({ of, state: "fail", what: "lay-flat hose in the suction line", why: "it collapses under vacuum" })]
      : []),
    ...settling.map((run) =>
      limitOf({
        of,
        what: `${run.label.toLowerCase()} (${run.pipe}) keeps its solids moving`,
        found: part(run.record, "velocity"),
        limit: part(run.record, "limiting"),
        quantity: "velocity",
        mustBe: "at least",
        broken: "fail",
        why: "a suction that settles does not prime again",
      }),
    ),
    // A row that cannot be read may hold one.
    ...(hasCheck || segmentsOf(duty.dischargeLine) === undefined
      ? []
      : [
          worded({
            of,
            state: "check",
            what: "no check valve in the discharge line",
            why: "without one no vacuum forms for the air pump",
          }),
        ]),
    ...(wettedDutyOf(duty).solids !== null
      ? [
          worded({
            of,
            state: ifAtLeast(byWeight(duty), FIELD.settlingSolids, constant("check"), constant("pass")),
            what: join(byWeight(duty), constant(" % solids by weight on a suction lift")),
            why: join(
              constant("from "),
              FIELD.settlingSolids,
              constant(" % a line that stands settles and does not prime again"),
            ),
          }),
        ]
      : []),
  ];
}

/** No better than check where one of these was taken because nothing was stated. */
function assumedOf(
  { state }: Duty,
  keys: readonly FieldKey[],
): Pick<Parameters<typeof limitOf>[0], "atBest" | "assumed"> {
  const taken = keys.filter((key) => state[key] === "assumed").map((key) => FIELDS[key].label.toLowerCase());
  return taken.length === 0 ? {} : { atBest: "check", assumed: taken.join(", ") };
}

function inUnits(value: number, quantity: "absolutePressure", { unitSet }: Duty): number {
  return Number(fromEngine(value, UNIT_SETS[unitSet][quantity]).toPrecision(12));
}
