import type { Citation } from "../basis/citation.ts";
import { amount, type Finding } from "../basis/result.ts";
import { SMALL_PUMP_TOLERANCES } from "../tables/acceptance-grades.ts";
import { DEFAULT_GRADES, LARGE_PUMP_POWER, NOT_LISTED } from "../tables/default-grades.ts";
import type { ServiceName } from "../tables/services.ts";
import { headToleranceOf } from "./greatest-head.ts";

/** What is known of a pump that is bought to no acceptance grade. */
export interface UngradedPump {
  /** Nothing where it is not one of the table. */
  readonly service?: ServiceName | null;
  /** Greatest shaft power, W; nothing where it is not known. */
  readonly shaftPower?: number | null;
}

export interface DefaultTolerance {
  /** Head over that of the curve, a fraction. */
  readonly tolerance: number;
  /** "grade 3B", or what stands in its place for a small pump. */
  readonly grade: string;
}

/**
 * How far the head of a pump may come out above its curve where no acceptance grade is agreed: the default grade of its
 * service and power, a fraction. Up to 10 kW, and where the power is not known, the wider tolerance of small pumps.
 * Source: ANSI/HI 14.6, default grades; ISO 9906, table 8 and 4.4.2.
 */
export function defaultTolerance({ service = null, shaftPower = null }: UngradedPump): DefaultTolerance {
  const { mostPower, head } = SMALL_PUMP_TOLERANCES;
  if (shaftPower === null || shaftPower <= mostPower) return { tolerance: head / 100, grade: "a pump to 10 kW" };
  const grades = service === null ? NOT_LISTED : DEFAULT_GRADES[service];
  const grade = shaftPower > LARGE_PUMP_POWER ? grades.above100kW : (grades.to100kW ?? NOT_LISTED.to100kW);
  return { tolerance: headToleranceOf(grade) as number, grade: `grade ${grade}` };
}

const DEFAULT_RULE: Citation = {
  source: "ansi-hi-14.6",
  at: "default acceptance grades by service and power",
  unverified: true,
};

/** Said where nobody stated how far the head may come out above the curve. */
export function toleranceAssumed(pump: UngradedPump): Finding {
  const { tolerance, grade } = defaultTolerance(pump);
  const { service = null, shaftPower = null } = pump;
  return {
    code: "head-tolerance-assumed",
    kind: "assumed",
    subject: "head tolerance",
    found: amount("percent", tolerance),
    facts: {
      grade,
      service: service ?? "a service that is not listed",
      ...(shaftPower !== null && { power: amount("power", shaftPower) }),
    },
    cites: DEFAULT_RULE,
  };
}
