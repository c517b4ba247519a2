import { FIELDS } from "./fields.ts";
import type { SavedDuty, SavedDuty1 } from "./saved-schema.ts";

/**
 * A duty of version 1, in which every row of a line carried the flow of all pumps: its suction rows still do, so that its
 * figures stay.
 */
export function fromVersion1({ pump: chosen, ...duty }: SavedDuty1): SavedDuty {
  if (chosen === undefined) return duty;
  const { count, arrangement, ...pump } = chosen;
  const isSeries = arrangement === "series";
  const { fields, suctionLine } = duty;
  return {
    ...duty,
    pump,
    fields: { ...fields, pumpsRunning: count, ...(isSeries && { arrangement }) },
    suctionLine: isSeries || isOne(count) ? suctionLine : suctionLine.map((row) => ({ ...row, share: "all" })),
  };
}

function isOne(count: string): boolean {
  const typed = count.trim();
  if (typed === "") return true;
  const read = FIELDS.pumpsRunning.read(typed, "SI", "");
  return read.ok && read.value === 1;
}
