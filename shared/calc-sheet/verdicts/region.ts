import type { Duty, DutyPump } from "../../duty/duty.ts";
import { constant, part } from "../expression.ts";
import { dutyCases, recordOf } from "../sections/duty-cases.ts";
import { preferredRegionOf } from "../sections/preferred-region.ts";
import { type Criterion, limitOf, openPoint } from "./criterion.ts";

/** Where the pumps run on their curve in every state that the duty covers. */
export function regionCriteria(duty: Duty, pump: DutyPump): readonly Criterion[] {
  if (pump.curve.efficiency === undefined) {
    return [openPoint({ of: "region", what: "best efficiency point: the curve states no efficiency", missing: [] })];
  }
  const { least, most } = preferredRegionOf(pump);
  const ends = [
    ["at most", most],
    ["at least", least],
  ] as const;
  return dutyCases(duty).flatMap((one) =>
    ends.map(([mustBe, share]) =>
      limitOf({
        of: "region",
        what: `flow of best efficiency flow, ${one.label.toLowerCase()}`,
        found: part(recordOf(one), "percentOfBestFlow"),
        limit: constant(100 * share),
        quantity: "percent",
        mustBe,
        broken: "check",
      }),
    ),
  );
}
