import type { Citation } from "../basis/citation.ts";
import { CELSIUS_ZERO } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import { liquidVapourPressure } from "../liquid/saturation.ts";
import { standardAtmosphere } from "../site/atmosphere.ts";
import { ENGINE_POWER_EXPONENTS, type EngineLimit } from "../tables/engine-power-exponents.ts";
import { quickRulePower } from "./engine-quick-rules.ts";

export interface EngineSite {
  /** m above sea level. */
  readonly altitude: number;
  /** Of the air the engine draws, K. */
  readonly airTemperature: number;
}

export interface EngineAdjustmentInput extends EngineSite {
  /** At the reference conditions of ISO 3046-1, W. */
  readonly ratedPower: number;
  readonly limit: EngineLimit;
  /** Of the air on site, 0 to 1; that of the reference, 0.30, where left out. */
  readonly relativeHumidity?: number;
  /** Of what cools the charge air, K; that of the air where left out (air-to-air cooling). */
  readonly chargeCoolant?: number;
  /** Of the engine, 0 to 1; 0.80 where left out, as the standard does. */
  readonly mechanicalEfficiency?: number;
}

export interface EngineAdjustment {
  /** On site, W. */
  readonly power: number;
  /** Ratio of indicated power. */
  readonly k: number;
  /** Factor on the rated power, at most 1. */
  readonly alpha: number;
}

// Reference conditions of ISO 3046-1, from memory: 100 kPa, 298 K (25 °C) for air and charge-air coolant, 30 % humidity.
const REFERENCE_PRESSURE = 100_000;
const REFERENCE_TEMPERATURE = 25 + CELSIUS_ZERO;
const REFERENCE_HUMIDITY = 0.3;
const USUAL_MECHANICAL_EFFICIENCY = 0.8;

export const enginePowerMethod = {
  cites: [
    {
      source: "iso-3046-1",
      at: "power adjustment for ambient conditions; check the edition in force",
      unverified: true,
    },
    { source: "us-standard-atmosphere", at: "pressure by altitude" },
  ],
  inputs: {
    ratedPower: { name: "rated power", symbol: "P r", quantity: "power", above: 0, atMost: 1e8 },
    altitude: { name: "altitude", symbol: "Z", quantity: "elevation", atLeast: -500, atMost: 5000 },
    airTemperature: {
      name: "air temperature",
      symbol: "T x",
      quantity: "temperature",
      atLeast: CELSIUS_ZERO - 40,
      atMost: CELSIUS_ZERO + 60,
    },
    relativeHumidity: { name: "relative humidity", symbol: "φ x", quantity: "ratio", atLeast: 0, atMost: 1 },
    chargeCoolant: {
      name: "charge-air coolant temperature",
      symbol: "T cx",
      quantity: "temperature",
      atLeast: CELSIUS_ZERO - 40,
      atMost: CELSIUS_ZERO + 120,
    },
    mechanicalEfficiency: { name: "mechanical efficiency", symbol: "η m", quantity: "ratio", above: 0.5, atMost: 1 },
  },
} as const satisfies Method<
  "ratedPower" | "altitude" | "airTemperature" | "relativeHumidity" | "chargeCoolant" | "mechanicalEfficiency"
>;

/**
 * Power of an engine on site, W, never more than rated (only the maker can say whether more fuel may be burnt).
 * Formula: P_x = α P_r,  α = min(1, k − 0.7 (1 − k)(1/η_m − 1))
 *          k = ((p_x − a φ_x p_sx)/(p_r − a φ_r p_sr))^m (T_r/T_x)^n (T_cr/T_cx)^q
 * Fails: inputs outside the method's bounds.
 * Source: ISO 3046-1 (from memory); pressure by the US Standard Atmosphere.
 */
export function adjustedEnginePower(input: EngineAdjustmentInput): Result<EngineAdjustment> {
  const {
    ratedPower,
    altitude,
    airTemperature,
    limit,
    relativeHumidity = REFERENCE_HUMIDITY,
    chargeCoolant,
    mechanicalEfficiency = USUAL_MECHANICAL_EFFICIENCY,
  } = input;
  // A coolant that is not stated is as warm as the air, whose own bounds are enough.
  const coolant = chargeCoolant ?? REFERENCE_TEMPERATURE;
  const values = { ratedPower, altitude, airTemperature, relativeHumidity, mechanicalEfficiency };
  return andThen(checkInputs(enginePowerMethod, { ...values, chargeCoolant: coolant }), () =>
    andThen(standardAtmosphere(altitude), (pressure) => {
      const { a, m, n, q } = ENGINE_POWER_EXPONENTS[limit];
      const dry = pressure - a * relativeHumidity * liquidVapourPressure(airTemperature);
      const dryReference = REFERENCE_PRESSURE - a * REFERENCE_HUMIDITY * liquidVapourPressure(REFERENCE_TEMPERATURE);
      const k =
        (dry / dryReference) ** m *
        (REFERENCE_TEMPERATURE / airTemperature) ** n *
        (REFERENCE_TEMPERATURE / (chargeCoolant ?? airTemperature)) ** q;
      const alpha = Math.min(1, k - 0.7 * (1 - k) * (1 / mechanicalEfficiency - 1));
      return succeed({ power: alpha * ratedPower, k, alpha });
    }),
  );
}

export const ASPIRATIONS = ["natural", "turbo"] as const;
export type Aspiration = (typeof ASPIRATIONS)[number];
/** What the trade calls them too. */
export const ALSO_ASPIRATION: Readonly<Record<string, Aspiration>> = {
  turbocharged: "turbo",
  "turbo-charged": "turbo",
  "turbocharged aftercooled": "turbo",
  "naturally aspirated": "natural",
  na: "natural",
};

export interface EngineSitePowerInput extends EngineSite {
  /** Continuous net rating at the run speed, W. */
  readonly ratedPower: number;
  /** Natural where left out. */
  readonly aspiration: Aspiration | null;
}

/** Rows of ISO 3046-1 that may hold for an engine of which no more is known. The least power is given. */
const LIMITS_OF: Readonly<Record<Aspiration, readonly [EngineLimit, ...EngineLimit[]]>> = {
  natural: ["naturally aspirated, limited by excess air", "naturally aspirated, limited by heat"],
  turbo: ["turbocharged, charge-air cooling"],
};

const LESSER_CHOICE: Citation = {
  source: "house",
  at: "a naturally aspirated engine gets the lesser of the two limits of ISO 3046-1, at 30 % humidity",
};
const COOLANT_CHOICE: Citation = {
  source: "house",
  at: "a turbocharged engine is taken with charge-air cooling whose coolant is as warm as the air (air to air)",
};
const RATING_RULE: Citation = {
  source: "practice",
  at: "pumps are sized on the continuous net rating at run speed; net is 3 % to 8 % below gross",
};

/**
 * Power an engine gives on site, W, never more than rated, by `adjustedEnginePower`: naturally aspirated, the lesser
 * of the limits by excess air and by heat; turbocharged, the row with charge-air cooling.
 * Fails: inputs outside the method's bounds.
 * Warns: cautions on rating, aspiration, limit or coolant taken for granted, and what the quick rule gives.
 * Source: ISO 3046-1 (from memory); choice of limit is this product's.
 */
export function engineSitePower(input: EngineSitePowerInput): Result<number> {
  const { aspiration, ...engine } = input;
  const [first, ...others] = LIMITS_OF[aspiration ?? "natural"];
  return andThen(adjustedEnginePower({ ...engine, limit: first }), (adjusted) => {
    let least = { ...adjusted, limit: first };
    for (const limit of others) {
      const other = adjustedEnginePower({ ...engine, limit });
      if (other.ok && other.value.power < least.power) least = { ...other.value, limit };
    }
    return succeed(least.power, remarks(input, least.power, least.limit));
  });
}

function remarks(input: EngineSitePowerInput, power: number, limit: EngineLimit): readonly Finding[] {
  const subject = "engine power";
  const findings: Finding[] = [
    { code: "engine-rating-assumed", kind: "check", subject: "rated power", cites: RATING_RULE },
  ];
  if (input.aspiration === null) {
    findings.push({ code: "engine-aspiration-assumed", kind: "assumed", subject: "aspiration" });
  }
  if (power >= input.ratedPower) return findings;
  const facts = { limit, share: amount("percent", power / input.ratedPower) };
  findings.push(
    input.aspiration === "turbo"
      ? { code: "engine-charge-coolant-assumed", kind: "assumed", subject, facts, cites: COOLANT_CHOICE }
      : { code: "engine-limit-chosen", kind: "check", subject, facts, cites: LESSER_CHOICE },
  );
  const quick = quickRulePower("naturally aspirated, by altitude", input);
  if (input.aspiration !== "turbo" && quick.ok && quick.value.power < input.ratedPower) {
    const { value } = quick;
    findings.push({
      code: "engine-quick-rule",
      kind: "check",
      subject,
      found: amount("power", value.power),
      facts: { adjusted: amount("power", power) },
      cites: value.cites,
    });
  }
  return findings;
}
