import type { Pipe } from "../../src/pipework/pipe.ts";
import type { Duty } from "./duty.ts";

/** Whether any pipe of the duty grows rougher by the roughness stated. */
export function ages(duty: Duty): boolean {
  const { agedRoughness, suctionLine, dischargeLine } = duty;
  if (agedRoughness === undefined) return duty.state.agedRoughness === "unreadable";
  return [...suctionLine, ...dischargeLine].some(
    ({ segment }) => segment !== undefined && growsRougher(segment.pipe, agedRoughness),
  );
}

/** Hose is replaced rather than left to age; a pipe rougher already, or one that goes by its C, stays as stated. */
export function growsRougher(
  { roughness, frictionMultiplier, hazenWilliams }: Pick<Pipe, "roughness" | "frictionMultiplier" | "hazenWilliams">,
  aged: number,
): boolean {
  return frictionMultiplier === undefined && hazenWilliams === undefined && roughness < aged;
}
