import type { ServiceName } from "./services.ts";

// ANSI/HI 14.6-2011, acceptance grades by default where buyer and maker agree on none, by service and shaft power: above
// 10 to 100 kW (13 to 134 hp), and above 100 kW. Read in a pump maker's article of 2015 that prints the table of the 2011
// edition; no second source. "n/a" in print is null here: such pumps are not built so small, and the row of services not
// listed is read. Pumps to 10 kW have tolerances of their own, whatever the service (`acceptance-grades.ts`). Rental,
// bypass and trash pumps are the trade's dewatering pumps: common practice, no source.

export type GradeName = "1B" | "2B" | "3B";

export interface DefaultGrades {
  readonly to100kW: GradeName | null;
  readonly above100kW: GradeName;
}

/** General industry; dewatering, drainage, irrigation; services not listed. */
export const NOT_LISTED = { to100kW: "3B", above100kW: "2B" } as const satisfies DefaultGrades;
const WATER: DefaultGrades = { to100kW: "2B", above100kW: "1B" };
const POWER: DefaultGrades = { to100kW: "1B", above100kW: "1B" };
const PROCESS: DefaultGrades = { to100kW: "2B", above100kW: "2B" };

export const DEFAULT_GRADES: Readonly<Record<ServiceName, DefaultGrades>> = {
  dewatering: NOT_LISTED,
  bypass: NOT_LISTED,
  trash: NOT_LISTED,
  rental: NOT_LISTED,
  drainage: NOT_LISTED,
  irrigation: NOT_LISTED,
  "water and wastewater": WATER,
  "building services": WATER,
  "electric power": POWER,
  "oil and gas": POWER,
  pipeline: POWER,
  "water injection": { to100kW: null, above100kW: "1B" },
  chemical: PROCESS,
  "cooling tower": PROCESS,
  "pulp and paper": PROCESS,
  slurry: { to100kW: "3B", above100kW: "3B" },
  "general industry": NOT_LISTED,
};

/** W, above which the second column of the table is read. */
export const LARGE_PUMP_POWER = 100_000;
