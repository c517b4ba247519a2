import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import { engineLoad, engineLoadMethod, engineNetPower, engineNetPowerMethod, USUAL_LOSS } from "./engine-net-power.ts";
import { ENGINE_QUICK_RULES, quickRulePower } from "./engine-quick-rules.ts";
import { type Aspiration, type EngineSite, enginePowerMethod, engineSitePower } from "./engine-site-power.ts";
import { fuelRate, fuelRateMethod, partLoadFactor, partLoadMethod, usualConsumption } from "./fuel-rate.ts";

export interface EngineOnSiteInput extends EngineSite {
  /** What the pump takes, W. */
  readonly shaftPower: number;
  /** Continuous rating at run speed, W: gross, or net with no losses stated. */
  readonly ratedPower: number;
  /** Share of the rating that fan and accessories take, 0 where the rating is net; 5 % where left out. */
  readonly accessoryLosses: number | null;
  readonly aspiration: Aspiration | null;
  /** Near full load, kg/J; the usual one for an engine of this rating where not known. */
  readonly specificConsumption: number | null;
}

export interface EngineOnSite {
  /** W */
  readonly netPower: number;
  /** W */
  readonly sitePower: number;
  /** Share of the power on site that the pump takes. */
  readonly load: number;
  /** Power on site less what the pump takes, W. */
  readonly spare: number;
  /** Net power by the rule of thumb for fire-pump engines, as a check beside the power on site, W. */
  readonly byQuickRule: number;
  /** Fuel at this load, m³/s; missing where the rule for part load does not reach. */
  readonly fuelRate?: number;
}

export const engineOnSiteMethod = {
  cites: [
    ...enginePowerMethod.cites,
    ...engineNetPowerMethod.cites,
    ...engineLoadMethod.cites,
    ENGINE_QUICK_RULES["fire-pump engine"].cites,
    ...fuelRateMethod.cites,
    ...partLoadMethod.cites,
  ],
  inputs: {
    shaftPower: { ...engineLoadMethod.inputs.shaftPower, above: 0 },
    ratedPower: enginePowerMethod.inputs.ratedPower,
  },
} as const satisfies Method<"shaftPower" | "ratedPower">;

/**
 * Net power and power on site (W), the share of it the pump takes, and the fuel then burnt (m³/s).
 * Formula: net = rated (1 − losses),  on site = α · net,  load = P / on site,  fuel = P b f(load) / ρ
 * Fails: inputs outside the bounds of the methods it cites.
 * Warns: engine too small. Cautions: load below 30 %, part-load fuel, whatever was taken for granted.
 * Source: ISO 3046-1 for α (from memory); common practice; quick check of NFPA 20 (from memory).
 */
export function engineOnSite(input: EngineOnSiteInput): Result<EngineOnSite> {
  const { shaftPower, ratedPower, accessoryLosses, altitude, airTemperature, aspiration } = input;
  return andThen(checkInputs(engineOnSiteMethod, { shaftPower, ratedPower }), () =>
    andThen(netOf(ratedPower, accessoryLosses), (netPower) => {
      const site = { ratedPower: netPower, altitude, airTemperature };
      return andThen(ofGross(engineSitePower({ ...site, aspiration }), accessoryLosses !== 0), (sitePower) =>
        andThen(engineLoad({ shaftPower, sitePower }), (load) =>
          andThen(quickRulePower("fire-pump engine", site), ({ power: byQuickRule }) =>
            andThen(fuelAtLoad(input, load), (rate) =>
              succeed({
                netPower,
                sitePower,
                load,
                spare: sitePower - shaftPower,
                byQuickRule,
                ...(rate !== undefined && { fuelRate: rate }),
              }),
            ),
          ),
        ),
      );
    }),
  );
}

function netOf(ratedPower: number, losses: number | null): Result<number> {
  // A net rating has nothing left to take off, and no usual share to fall short of.
  if (losses === 0) return succeed(ratedPower);
  if (losses !== null) return engineNetPower({ grossPower: ratedPower, lossShare: losses });
  const assumed: Finding = {
    code: "engine-losses-assumed",
    kind: "assumed",
    subject: "fan and accessory losses",
    found: amount("percent", USUAL_LOSS),
    cites: engineNetPowerMethod.cites[0],
  };
  return andThen(engineNetPower({ grossPower: ratedPower }), (net) => succeed(net, [assumed]));
}

/** Says of a rating with losses taken off that it was gross. */
function ofGross(power: Result<number>, isGross: boolean): Result<number> {
  if (!isGross) return power;
  const findings = power.findings.map(
    (finding): Finding =>
      finding.code === "engine-rating-assumed"
        ? { ...finding, kind: "assumed", code: "engine-gross-rating-assumed" }
        : finding,
  );
  return { ...power, findings };
}

function fuelAtLoad(
  { shaftPower, ratedPower, specificConsumption }: EngineOnSiteInput,
  load: number,
): Result<number | undefined> {
  const factor = partLoadFactor(load);
  if (!factor.ok) {
    const found = amount("percent", load);
    return succeed(undefined, [
      { code: "fuel-load-outside", kind: "check", subject: "fuel", found, cites: partLoadMethod.cites[0] },
    ]);
  }
  const atPartLoad: readonly Finding[] =
    factor.value === 1
      ? []
      : [
          {
            code: "fuel-part-load",
            kind: "check",
            subject: "fuel",
            found: amount("percent", load),
            facts: { factor: String(Math.round(factor.value * 100) / 100) },
            cites: partLoadMethod.cites[0],
          },
        ];
  const nearFull =
    specificConsumption === null
      ? andThen(fuelRate({ shaftPower, specificConsumption: usualConsumption(ratedPower) }), (rate) =>
          succeed(rate, [usualOf(ratedPower)]),
        )
      : fuelRate({ shaftPower, specificConsumption });
  return andThen(nearFull, (rate) => succeed(rate * factor.value, atPartLoad));
}

function usualOf(ratedPower: number): Finding {
  return {
    code: "fuel-consumption-assumed",
    kind: "assumed",
    subject: "specific consumption",
    found: amount("specificConsumption", usualConsumption(ratedPower)),
    cites: fuelRateMethod.cites[0],
  };
}
