import { cell } from "../calc-sheet/expression.ts";
import { GRADE, hasRoute, ROUTE, SIPHON } from "../calc-sheet/sections/route-cells.ts";
import { PROFILE } from "../calc-sheet/sections/route-profile.ts";
import type { Duty } from "../duty/duty.ts";
import { workedDuty } from "./worked-duty.ts";

/** A place of the line: m, m, Pa. */
export interface RoutePlace {
  readonly chainage: number;
  readonly level: number;
  readonly grade: number;
  readonly pressure: number;
  /** The lowest grade at which a siphon may still be counted on there. */
  readonly vacuumLimit: number;
  /** What the grade line says of it: "below atmosphere". */
  readonly remark: string;
}

/** The line along its chainage as the sheet has it, with what is made of its summit. */
export interface RouteLine {
  readonly places: readonly RoutePlace[];
  /** Level of the pipe plus its rating as a head, at both ends of each run that is rated, m. */
  readonly ratings: readonly { readonly from: readonly [number, number]; readonly to: readonly [number, number] }[];
  readonly summit: number | undefined;
  /** "not earned: outlet not sealed" */
  readonly siphon: string;
  /** "fills"; empty where no pump is chosen. */
  readonly fills: string;
  /** m³/s */
  readonly fillFlow: number | undefined;
}

/** Undefined where the duty has no levels or they cannot be worked out. */
export function routeLine(duty: Duty): RouteLine | undefined {
  if (!hasRoute(duty)) return undefined;
  const { worked, figure } = workedDuty(duty);
  const number = (of: Parameters<typeof figure>[0]): number | undefined => {
    const found = figure(of);
    return typeof found === "number" ? found : undefined;
  };
  const text = (key: string): string => {
    const found = worked.cells.get(key);
    return typeof found === "string" ? found : "";
  };
  const runs = duty.dischargeLine.length;
  const places: RoutePlace[] = [];
  for (let row = 0; row <= runs; row += 1) {
    const of = Math.max(0, 2 * row - 1);
    const chainage = number(cell(GRADE, row, "chainage"));
    const level = number(cell(GRADE, row, "elevation"));
    const grade = number(cell(GRADE, row, "hydraulicGrade"));
    const pressure = number(cell(GRADE, row, "pressure"));
    const vacuumLimit = number(cell(PROFILE, of, "vacuum"));
    if (chainage === undefined || level === undefined || grade === undefined) return undefined;
    if (pressure === undefined || vacuumLimit === undefined) return undefined;
    places.push({ chainage, level, grade, pressure, vacuumLimit, remark: text(cell(GRADE, row, "remark").key) });
  }
  const ratings = Array.from({ length: runs }, (_, i) => {
    const end = (row: number): readonly [number, number] | undefined => {
      const at = number(cell(PROFILE, row, "chainage"));
      const rating = number(cell(PROFILE, row, "rating"));
      return at === undefined || rating === undefined ? undefined : [at, rating];
    };
    const [from, to] = [end(2 * i), end(2 * i + 1)];
    return from === undefined || to === undefined ? [] : [{ from, to }];
  }).flat();
  return {
    places,
    ratings,
    summit: number(cell(SIPHON, 0, "summit")),
    siphon: text(ROUTE.siphon.key),
    fills: text(ROUTE.fills.key),
    fillFlow: number(ROUTE.fillFlow),
  };
}
