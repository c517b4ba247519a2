import type { Citation } from "../../../src/basis/citation.ts";
import type { Duty } from "../../duty/duty.ts";
import { cell, least, product, ratio } from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { greatestFlow, leastFlow } from "../sections/flow-range.ts";
import { LINES } from "../sections/lines.ts";
import { type Criterion, limitOf } from "./criterion.ts";

const CITE: Citation = {
  source: "practice",
  at: "sewage force mains kept moving, and flushed once a day",
};

/** Whether the liquid is sewage: by the service of its pump or by its name. */
function isSewage({ service, makeUp, texts }: Duty): boolean {
  return service === "trash" || /sewage|wastewater/i.test(`${makeUp ?? ""} ${texts.solidsHardness}`);
}

/** A sewage main is kept clear by velocity, for its solids are in no table. */
export function sewageCriteria(duty: Duty): readonly Criterion[] {
  if (!isSewage(duty)) return [];
  const velocities = duty.dischargeLine.map((_, row) => cell(LINES.dischargeLine, row, "velocity"));
  if (velocities.length === 0) return [];
  const slowest = least(...velocities);
  const facts = { of: "solids", quantity: "velocity", mustBe: "at least", broken: "check", cites: CITE } as const;
  return [
    limitOf({
      ...facts,
      what: "sewage in the slowest discharge run",
      found: product(slowest, ratio(leastFlow(duty), FIELD.flow)),
      limit: FIELD.sewageVelocity,
      when: "minimum flow of the duty",
    }),
    limitOf({
      ...facts,
      what: "sewage flushing the slowest discharge run",
      found: product(slowest, ratio(greatestFlow(duty), FIELD.flow)),
      limit: FIELD.flushVelocity,
      when: "maximum flow of the duty",
    }),
  ];
}
