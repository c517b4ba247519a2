import { cell, type TableOf, tableCell } from "../calc-sheet/expression.ts";
import { CASE_ENERGY, CASE_FUEL, energyRow } from "../calc-sheet/sections/case-energy.ts";
import { CASE_VELOCITIES, CASES_NOT_MET, RESULTS, SPEEDS } from "../calc-sheet/sections/case-results.ts";
import { caseStatesOf } from "../calc-sheet/sections/duty-cases.ts";
import { DUTY_REGION } from "../calc-sheet/sections/duty-region.ts";
import { LEAST_PRESSURE_IN } from "../calc-sheet/sections/pipe-runs.ts";
import { PRESSURE } from "../calc-sheet/sections/pressure.ts";
import { ROUTE } from "../calc-sheet/sections/route-cells.ts";
import { SUMP } from "../calc-sheet/sections/sump-cells.ts";
import type { Duty } from "../duty/duty.ts";
import { type DutyCase, pumpOnDuty } from "./pump-on-duty.ts";
import type { Worked } from "./worked-calculation.ts";
import { type WorkedDuty, workedDuty } from "./worked-duty.ts";

/** A case of the user as the pane shows it; engine units. */
export interface CaseShown extends DutyCase {
  /** "meets the duty", or what is wrong with it; empty where there is an error instead. */
  readonly verdict: string;
  /** Head asked for in it, with the margin on its losses, m. */
  readonly headToSelect: Worked;
  readonly npshAvailable: Worked | undefined;
  readonly leastVelocity: Worked;
  readonly greatestVelocity: Worked;
  /** Over that of the curve; only where any case has a speed of its own. */
  readonly speedRatio: Worked | undefined;
  readonly speedVerdict: string;
  /** In a year, s, and the electricity or fuel of it, J or m³; only where it states its hours. */
  readonly hours: Worked | undefined;
  readonly energy: Worked | undefined;
  readonly fuel: Worked | undefined;
}

export interface CasesShown {
  readonly cases: readonly CaseShown[];
  /** "storm: NPSH SHORT: CAVITATION", or "none". */
  readonly notMet: string;
  /** Which states are the worst, in words: "Least NPSH margin", "summer; sump low". */
  readonly worst: readonly (readonly [what: string, states: string])[];
}

const WORST = [
  ["Minimum flow over that asked for", DUTY_REGION.dutyMetIn],
  ["Minimum flow", DUTY_REGION.leastFlowIn],
  ["Maximum flow", DUTY_REGION.greatestFlowIn],
  ["Minimum NPSH margin", DUTY_REGION.npshMarginIn],
  ["Maximum power", DUTY_REGION.powerIn],
  ["Minimum % of BEP flow", DUTY_REGION.leastShareIn],
  ["Maximum % of BEP flow", DUTY_REGION.greatestShareIn],
  ["Minimum velocity", CASE_VELOCITIES.leastVelocityIn],
  ["Maximum velocity", CASE_VELOCITIES.greatestVelocityIn],
  ["Maximum pressure", PRESSURE.greatestPressureIn],
  ["Minimum pressure along the line", LEAST_PRESSURE_IN],
  ["Minimum head left to fill the line", ROUTE.leastFillIn],
  ["Minimum spare water over the suction bell", SUMP.bellMarginIn],
] as const;

/** The cases beside one another, as the sheet has them; nothing without a case or a pump. */
export function casesShown(duty: Duty): CasesShown | undefined {
  const pump = duty.cases.length === 0 ? undefined : pumpOnDuty(duty);
  if (pump === undefined) return undefined;
  const worked = workedDuty(duty);
  const { figure, figureWhereGiven } = worked;
  const own = pump.cases.slice(pump.cases.length - duty.cases.length);
  return {
    cases: own.map((one, row) => ({
      ...one,
      verdict: textIn(worked, RESULTS, row, "verdict"),
      headToSelect: figure(cell(RESULTS, row, "headToSelect")),
      npshAvailable: figureWhereGiven(cell(RESULTS, row, "npshAvailable")),
      leastVelocity: figure(cell(RESULTS, row, "leastVelocity")),
      greatestVelocity: figure(cell(RESULTS, row, "greatestVelocity")),
      speedRatio: figureWhereGiven(cell(SPEEDS, row, "speedRatio")),
      speedVerdict: textIn(worked, SPEEDS, row, "words"),
      ...running(duty, row, figureWhereGiven),
    })),
    notMet: wordsAt(worked, CASES_NOT_MET.key),
    worst: WORST.flatMap(([what, { key }]) => {
      const states = worked.worked.cells.get(key);
      return typeof states === "string" && states !== "not known" ? [[what, states] as const] : [];
    }),
  };
}

/** By the tables of electricity or fuel, which have a row for each case with hours. */
function running(
  duty: Duty,
  row: number,
  figure: WorkedDuty["figureWhereGiven"],
): Pick<CaseShown, "hours" | "energy" | "fuel"> {
  const at = duty.cases[row]?.hoursState === "blank" ? -1 : energyRow(duty, caseStatesOf(duty)[row]?.key);
  if (at < 0) return { hours: undefined, energy: undefined, fuel: undefined };
  const isElectric = duty.driver === "motor";
  return {
    hours: figure(cell(isElectric ? CASE_ENERGY : CASE_FUEL, at, "hours")),
    energy: isElectric ? figure(cell(CASE_ENERGY, at, "energy")) : undefined,
    fuel: isElectric ? undefined : figure(cell(CASE_FUEL, at, "fuel")),
  };
}

function textIn<C extends string>(worked: WorkedDuty, { key }: TableOf<C>, row: number, of: NoInfer<C>): string {
  return wordsAt(worked, tableCell(key, row, of));
}

function wordsAt({ worked }: WorkedDuty, key: string): string {
  const text = worked.cells.get(key);
  return typeof text === "string" ? text : "";
}
