import { specificSpeed } from "../../../src/pump/specific-speed.ts";
import type { DutyPump } from "../../duty/duty.ts";

/** Specific speed of the chosen pump, rpm, m³/s and m, as of one stage; nothing where its speed or best point is not stated. */
export function specificSpeedOf({ speed, curve: { bestEfficiency } }: DutyPump): number | undefined {
  if (speed === undefined || bestEfficiency === undefined) return undefined;
  const { flow, head } = bestEfficiency;
  const found = specificSpeed({ speed, flow, head, convention: "SI" });
  return found.ok ? found.value : undefined;
}
