import type { Duty } from "../../duty/duty.ts";
import { type Criterion, openPoint } from "./criterion.ts";

/** What the wetted parts stand of the liquid. */
export function materialsCriteria({ state }: Duty): readonly Criterion[] {
  const missing = (["casingMaterial", "pH", "chlorides"] as const).filter((key) => state[key] === "blank");
  return [openPoint({ of: "materials", what: "wetted parts", missing })];
}
