import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, type Finding, fail, type Result, succeed } from "../basis/result.ts";

/** The rules a margin is taken by. One is chosen and printed. */
export const MARGIN_RULES = ["non-overloading", "API 610", "engine"] as const;
export type MarginRule = (typeof MARGIN_RULES)[number];

export interface DriverPowerInput {
  /** Shaft power at the rated point with the heaviest liquid, W. */
  readonly powerAtDuty: number;
  /** Greatest shaft power anywhere on the curve with the heaviest liquid, W. */
  readonly greatestPower: number;
  readonly rule: MarginRule;
  /** The pump is accepted to ISO 9906 grade 2 or 3, which lets it take more power than its curve says. */
  readonly testedToGrade2Or3?: boolean;
  /** The liquid carries solids. */
  readonly carriesSolids?: boolean;
  /** Of what stands between driver and pump (belts, gears), 0 to 1; 1 where left out. */
  readonly driveEfficiency?: number;
}

export interface DriverPower {
  /** Least rating of the driver at site conditions, W. */
  readonly required: number;
  /** The factor of the rule on the power it goes by. */
  readonly margin: number;
  readonly rule: MarginRule;
  readonly cites: Citation;
}

export const driverPowerMethod = {
  title: "Power a driver must be rated for",
  cites: [
    { source: "practice", at: "non-overloading: rated for the greatest power anywhere on the curve" },
    { source: "api-610", at: "power margins of motors, from memory; check the edition in force" },
    { source: "iso-9906", at: "power tolerance +8 % in grade 2, +9 % in grade 3 (from memory)" },
  ],
  inputs: {
    powerAtDuty: { name: "shaft power at duty", symbol: "P", quantity: "power", above: 0, atMost: 1e8 },
    greatestPower: { name: "greatest shaft power", symbol: "P max", quantity: "power", above: 0, atMost: 1e8 },
    driveEfficiency: { name: "drive efficiency", symbol: "η", quantity: "ratio", above: 0, atMost: 1 },
  },
} as const satisfies Method<"powerAtDuty" | "greatestPower" | "driveEfficiency">;

/** API 610, power margins of motors, from memory: on the power at the rated point. */
function apiMargin(powerAtDuty: number): number {
  if (powerAtDuty < 22_000) return 1.25;
  return powerAtDuty <= 55_000 ? 1.15 : 1.1;
}

/**
 * Least power a driver must be rated for at its site, W, by one named rule.
 *
 *   non-overloading  P ≥ P_max, and 1.05 P_max for a pump tested to ISO 9906 grade 2 or 3
 *   API 610          P ≥ 1.25 P_duty below 22 kW, 1.15 to 55 kW, 1.10 above
 *   engine           P ≥ P_max, and 1.1 P_max where the liquid carries solids; continuous net power on site
 *
 * each divided by the efficiency of the drive. The service factor of a motor is for short overload and is no margin.
 *
 * Fails where the greatest power is below that at the duty. Cautions where the API 610 rule leaves a driver that the end
 * of the curve overloads.
 */
export function driverPower(input: DriverPowerInput): Result<DriverPower> {
  const { powerAtDuty, greatestPower, rule, driveEfficiency = 1 } = input;
  const checked = checkInputs(driverPowerMethod, { powerAtDuty, greatestPower, driveEfficiency });
  if (!checked.ok) return checked;
  if (greatestPower < powerAtDuty) return fail([belowDuty(greatestPower, powerAtDuty)]);
  const margin = marginOf(input);
  const basis = rule === "API 610" ? powerAtDuty : greatestPower;
  const required = (basis * margin) / driveEfficiency;
  const overloads = required * driveEfficiency < greatestPower;
  return succeed(
    { required, margin, rule, cites: driverPowerMethod.cites[rule === "API 610" ? 1 : 0] },
    overloads ? [overloaded(required * driveEfficiency, greatestPower)] : [],
  );
}

function marginOf({ rule, powerAtDuty, testedToGrade2Or3, carriesSolids }: DriverPowerInput): number {
  switch (rule) {
    case "non-overloading":
      return testedToGrade2Or3 ? 1.05 : 1;
    case "API 610":
      return apiMargin(powerAtDuty);
    case "engine":
      return carriesSolids ? 1.1 : 1;
  }
}

function belowDuty(greatest: number, atDuty: number): Finding {
  return {
    code: "greatest-power-below-duty",
    severity: "error",
    subject: "greatest shaft power",
    found: amount("power", greatest),
    limit: { quantity: "power", value: atDuty, side: "at least" },
  };
}

function overloaded(rated: number, greatest: number): Finding {
  return {
    code: "driver-overloads-at-curve-end",
    severity: "caution",
    subject: "driver",
    found: amount("power", rated),
    limit: { quantity: "power", value: greatest, side: "at least" },
    cites: driverPowerMethod.cites[0],
  };
}
