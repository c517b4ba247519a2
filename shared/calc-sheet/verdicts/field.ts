import type { Duty } from "../../duty/duty.ts";
import { constant, ifText } from "../expression.ts";
import { hasFieldHead, isMeasured, MEASURED } from "../sections/field-cells.ts";
import { type Criterion, openPoint, worded } from "./criterion.ts";

const of = "field";

/** The measured point against its curve: what the readings leave no doubt of, either way. Nothing where nothing was measured. */
export function fieldCriteria(duty: Duty): readonly Criterion[] {
  if (!isMeasured(duty)) return [];
  if (!hasFieldHead(duty)) {
    const missing = (["fieldFlow", "dischargeReading"] as const).filter((key) => duty.state[key] === "blank");
    return [openPoint({ of, what: "measured head", missing })];
  }
  if (duty.pump === undefined) return [worded({ of, state: "open", what: "no pump is selected to compare it with" })];
  const outside = duty.acceptanceGrade === undefined ? "check" : "fail";
  return [
    worded({
      of,
      state: ifText(
        MEASURED.fieldVerdict,
        "within",
        constant("pass"),
        ifText(MEASURED.fieldVerdict, "outside", constant(outside), constant("open")),
      ),
      what: "measured point against the curve",
      why: ifText(
        MEASURED.fieldVerdict,
        "within",
        constant("within the band"),
        ifText(
          MEASURED.fieldVerdict,
          "outside",
          constant("outside the band: see what could explain it"),
          MEASURED.fieldVerdict,
        ),
      ),
    }),
  ];
}
