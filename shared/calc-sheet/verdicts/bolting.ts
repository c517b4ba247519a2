import type { Duty } from "../../duty/duty.ts";
import { type Criterion, openPoint } from "./criterion.ts";

/** Whether the bolts seal each flange at its greatest pressure and at test. */
export function boltingCriteria({ state }: Duty): readonly Criterion[] {
  const missing = (["suctionFlange", "dischargeFlange", "gasket", "boltGrade"] as const).filter(
    (key) => state[key] === "blank",
  );
  return [openPoint({ of: "bolting", what: "flange joints", missing })];
}
