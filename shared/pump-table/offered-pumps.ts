import type { OfferedPump } from "../../src/pump/offered-pump.ts";
import type { CurveTable } from "./curve-table.ts";
import { limitsOf, type PumpList } from "./pump-list.ts";

/** The usable pumps of a table, with the limits the list states before those of their rows. */
export function offeredPumps({ pumps }: CurveTable, list?: PumpList): readonly OfferedPump[] {
  const listed = new Map(list?.pumps.map((pump) => [pump.name.toLowerCase(), pump]));
  return pumps
    .filter(({ usable }) => usable)
    .map(({ name, curves, limits }) => {
      const stated = listed.get(name.toLowerCase());
      return { name, curves, limits: stated === undefined ? limits : { ...limits, ...limitsOf(stated) } };
    });
}
