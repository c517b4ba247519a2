import { flangeClassNamed } from "../../../src/pressure/flange-class.ts";
import { NO_RATING } from "../../../src/pressure/flange-joint.ts";
import { jointMaterialOf } from "../../../src/pressure/joint-material.ts";
import { isRated, pressureMaterialNamed } from "../../../src/pressure/pressure-material.ts";
import { ratingSystem } from "../../catalogue/parameters/class.ts";
import type { Duty } from "../../duty/duty.ts";
import { constant, type Expression, ifNumber, ifText, join, part } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { BOLTING, type Flange, pressureAt, statedFlanges } from "../sections/bolting.ts";
import { type Criterion, limitOf, openPoint, worded } from "./criterion.ts";

const OF = "bolting";

/** Whether the bolts seal each flange on the low side of the tightening, at its greatest pressure and at test. */
export function boltingCriteria(duty: Duty): readonly Criterion[] {
  const { state } = duty;
  const isWorked = state.gasket !== "blank" && state.flangeClass !== "blank";
  // Where a joint is worked out, the material taken for its bolts is judged with it.
  const isJudged = isWorked && statedFlanges(duty).length > 0;
  const open = (["suctionFlange", "dischargeFlange", "gasket", "boltGrade", "flangeClass"] as const).filter(
    (key) => state[key] === "blank" && !(isJudged && key === "boltGrade"),
  );
  return [
    ...(open.length > 0 ? [openPoint({ of: OF, what: "flange joints", missing: open })] : []),
    ...(isWorked ? statedFlanges(duty).flatMap((flange) => jointCriteria(duty, flange)) : []),
  ];
}

function jointCriteria(duty: Duty, flange: Flange): readonly Criterion[] {
  const { joint, label } = flange;
  const what = label.toLowerCase();
  const why = part(joint, "noTorque");
  const tightened = (of: "sealsTo" | "sealsToAtBest" | "stress" | "stressAtLeast" | "greatest"): Expression =>
    ifNumber(part(joint, of), part(joint, of), "no torque is given");
  const isFactorStated = duty.state.nutFactor !== "blank";
  const taken = materialsTaken(duty, flange);
  const assumed = [...(isFactorStated ? [] : ["nut factor"]), ...(taken.length > 0 ? ["material"] : [])];
  const when = (words: string) => join(constant(words), ...taken);
  const sealing = {
    of: OF,
    what: `${what} joint`,
    found: tightened("sealsTo"),
    ...(!isFactorStated && { foundAtBest: tightened("sealsToAtBest") }),
    ...(assumed.length > 0 && { assumed: assumed.join(", ") }),
    ...(taken.length > 0 && { atBest: "check" as const }),
    quantity: "gaugePressure",
    mustBe: "at least",
  } as const;
  return [
    worded({
      of: OF,
      state: ifText(why, "", constant("pass"), ifText(why, NO_RATING, constant("open"), constant("fail"))),
      what: `${what} torque`,
      why: ifText(why, "", constant("given"), why),
    }),
    limitOf({ ...sealing, limit: pressureAt(duty, flange), broken: "fail", when: when("tightened on the low side") }),
    limitOf({
      ...sealing,
      limit: BOLTING.jointTestPressure,
      broken: "check",
      when: when("at test, tightened on the low side"),
      why: "tighten again for the test, or test lower",
    }),
    ...(isFactorStated
      ? []
      : [
          limitOf({
            of: OF,
            what: `${what} bolt stress`,
            found: tightened("stressAtLeast"),
            foundAtBest: tightened("stress"),
            limit: tightened("greatest"),
            quantity: "stress",
            mustBe: "at most",
            broken: "check",
            when: "at the least nut factor",
            assumed: "nut factor",
          }),
        ]),
    ...(isFacingAssumed(duty)
      ? [worded({ of: OF, state: "check", what: `${what} faces`, why: "assumed: state whether flat or raised" })]
      : []),
  ];
}

/** What a joint rests on that nobody stated: ", A193 B7 bolts taken", ", ductile iron taken". */
function materialsTaken({ state }: Duty, { joint }: Flange): readonly Expression[] {
  return [
    ...(state.boltGrade === "blank" ? [constant(", "), part(joint, "boltGrade"), constant(" bolts taken")] : []),
    ...(state.casingMaterial === "assumed" ? [constant(", "), FIELD.casingMaterial, constant(" taken")] : []),
  ];
}

/** Iron flanges are flat or raised, and nobody says which. */
function isFacingAssumed({ state, casingMaterial, flangeClass, unitSet }: Duty): boolean {
  if (state.facing !== "blank" || casingMaterial === undefined || flangeClass === undefined) return false;
  const material = pressureMaterialNamed(casingMaterial);
  const named = flangeClassNamed(flangeClass, ratingSystem(unitSet));
  if (!material.ok || !isRated(material.value) || (named.ok && named.value.facing !== undefined)) return false;
  return jointMaterialOf(material.value) !== "steel";
}
