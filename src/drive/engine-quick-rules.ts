import type { Citation } from "../basis/citation.ts";
import { CELSIUS_ZERO } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";

/** A loss in straight lines: so much of the rating for each step above a datum. */
export interface QuickRule {
  /** Share of the rating lost per m above the altitude, m. */
  readonly altitude: { readonly from: number; readonly perMetre: number };
  /** Share of the rating lost per K above the air temperature, K. */
  readonly air?: { readonly from: number; readonly perKelvin: number };
  readonly cites: Citation;
}

const FOOT = unitOf("ft").factor;
const FAHRENHEIT = unitOf("°F").factor;

/** Rules of thumb for a check beside the maker's curve; they do not replace it. */
export const ENGINE_QUICK_RULES = {
  "naturally aspirated, by altitude": {
    altitude: { from: 500 * FOOT, perMetre: 0.03 / (1000 * FOOT) },
    cites: { source: "agricultural-engineering", at: "3 % for each 1000 ft above 500 ft" },
  },
  "fire-pump engine": {
    altitude: { from: 300 * FOOT, perMetre: 0.03 / (1000 * FOOT) },
    air: { from: 25 + CELSIUS_ZERO, perKelvin: 0.01 / (10 * FAHRENHEIT) },
    cites: {
      source: "nfpa-20",
      at: "3 % for each 1000 ft above 300 ft, 1 % for each 10 °F above 77 °F",
      unverified: true,
    },
  },
  "mine approval, naturally aspirated": {
    altitude: { from: 305, perMetre: 0.01 / 100 },
    cites: { source: "practice", at: "US mine approvals: fuel rate 1 % for each 100 m above 305 m" },
  },
  "mine approval, turbocharged lean": {
    altitude: { from: 1000, perMetre: 0.01 / 100 },
    cites: { source: "practice", at: "US mine approvals: fuel rate 1 % for each 100 m above 1000 m" },
  },
} as const satisfies Record<string, QuickRule>;

export type QuickRuleName = keyof typeof ENGINE_QUICK_RULES;

export interface QuickRuleInput {
  /** W */
  readonly ratedPower: number;
  /** m */
  readonly altitude: number;
  /** K */
  readonly airTemperature: number;
}

export const quickRuleMethod = {
  cites: [
    ENGINE_QUICK_RULES["naturally aspirated, by altitude"].cites,
    ENGINE_QUICK_RULES["fire-pump engine"].cites,
    ENGINE_QUICK_RULES["mine approval, naturally aspirated"].cites,
  ],
  inputs: {
    ratedPower: { name: "rated power", symbol: "P r", quantity: "power", above: 0, atMost: 1e8 },
    altitude: { name: "altitude", symbol: "Z", quantity: "elevation", atLeast: -500, atMost: 5000 },
    airTemperature: { name: "air temperature", quantity: "temperature", atLeast: 233.15, atMost: 333.15 },
  },
} as const satisfies Method<keyof QuickRuleInput>;

/**
 * Power that a rule of thumb leaves of the rating, W, never more than rated, and the source of the rule.
 * Fails: inputs outside the method's bounds.
 */
export function quickRulePower(
  name: QuickRuleName,
  input: QuickRuleInput,
): Result<{ readonly power: number; readonly cites: Citation }> {
  const { ratedPower, altitude, airTemperature } = input;
  const checked = checkInputs(quickRuleMethod, { ratedPower, altitude, airTemperature });
  if (!checked.ok) return checked;
  const rule: QuickRule = ENGINE_QUICK_RULES[name];
  const byAltitude = rule.altitude.perMetre * Math.max(0, altitude - rule.altitude.from);
  const byAir = rule.air === undefined ? 0 : rule.air.perKelvin * Math.max(0, airTemperature - rule.air.from);
  return succeed({ power: ratedPower * (1 - byAltitude - byAir), cites: rule.cites });
}
