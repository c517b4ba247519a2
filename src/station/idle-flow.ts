import { brent } from "../numeric/brent.ts";
import { bestPointOf } from "../pump/pump-reading.ts";
import type { RunningPump } from "../pump/running-pump.ts";
import type { StationPump } from "./station-pump.ts";

/**
 * What a pump without a check valve lets back, as a head over the square of a flow, m/(m³/s)²; nothing where its best
 * efficiency point is not known. A screen: the maker's four-quadrant figures decide.
 * Formula: k = H_n/Q_n², the rated flow backwards at the rated head
 * Source: house choice, from the flows backwards of locked radial pumps, 0.6 to 1.2 Q_n (from memory).
 */
export function reverseResistance(pump: RunningPump): number | undefined {
  const best = bestPointOf(pump);
  return best.ok && best.value.flow > 0 ? best.value.head / best.value.flow ** 2 : undefined;
}

/** Flow back through a pump, m³/s, that a head of so much drives, its own rows counted; 0 where it is not known. */
export function flowBack({ pump, ownLoss }: StationPump, head: number): number {
  const resistance = reverseResistance(pump);
  if (resistance === undefined || head <= 0) return 0;
  const most = Math.sqrt(head / resistance);
  if (ownLoss === undefined) return most;
  const end = Math.min(most, ownLoss.mostFlow);
  return brent((flow) => resistance * flow * flow + ownLoss.headAt(flow) - head, ownLoss.leastFlow, end) ?? end;
}
