import type { Duty } from "../../duty/duty.ts";
import { FIELD } from "../field-handles.ts";
import { SLURRY_LINES } from "../sections/slurry-lines.ts";
import { isSlurry } from "../sections/slurry-mixture.ts";
import { type Criterion, limitOf, openPoint } from "./criterion.ts";

/** Whether the flow keeps solids moving in every run; nothing where no solids are stated. */
export function solidsCriteria(duty: Duty): readonly Criterion[] {
  if (duty.state.solids === "blank" || duty.solids === 0) return [];
  if (!isSlurry(duty)) {
    const missing = (["medianSize", "solidsGravity"] as const).filter((key) => duty.state[key] === "blank");
    return [openPoint({ of: "solids", what: "velocity that keeps them moving", missing })];
  }
  return [
    limitOf({
      of: "solids",
      what: "duty flow",
      found: FIELD.flow,
      limit: SLURRY_LINES.leastSlurryFlow,
      quantity: "flow",
      mustBe: "at least",
      broken: "check",
    }),
  ];
}
