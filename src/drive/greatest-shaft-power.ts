import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import { leastBetween } from "../numeric/golden-section.ts";
import { shaftPowerAtFlow } from "../pump/pump-reading.ts";
import type { RunningPump } from "../pump/running-pump.ts";

export interface GreatestShaftPowerInput {
  readonly pump: RunningPump;
  /** Density of the heaviest liquid the pump will ever meet, kg/m³. */
  readonly density: number;
  /** Flow at the duty, m³/s. */
  readonly dutyFlow: number;
}

export interface GreatestShaftPower {
  /** W */
  readonly atDuty: number;
  /** Greatest anywhere the curve can be read, W. */
  readonly greatest: number;
  /** Where it is greatest, m³/s. */
  readonly flow: number;
}

/** Readings of the curve between which the greatest is closed in on. */
const STEPS = 64;

/**
 * Shaft power at the duty and the greatest anywhere on the curve, with the heaviest liquid.
 *
 *   P_max = max over Q of ρ g Q H / η, or of the power column
 *
 * The greatest is looked for at 65 places from one end of the curve to the other and closed in on between neighbours.
 * A curve of efficiencies says nothing of the power near shutoff; the search then starts at the first efficiency given.
 *
 * Fails where the power at the duty cannot be read. Cautions where the greatest stands at the last point of the curve: a
 * pump that runs out beyond it takes more.
 */
export function greatestShaftPower(input: GreatestShaftPowerInput): Result<GreatestShaftPower> {
  const { pump, density, dutyFlow } = input;
  return andThen(shaftPowerAtFlow(pump, dutyFlow, density), (atDuty) => {
    const power = (flow: number): number => {
      const read = shaftPowerAtFlow(pump, flow, density);
      return read.ok ? read.value : 0;
    };
    const from = firstReadable(pump);
    const step = (pump.mostFlow - from) / STEPS;
    let best = { flow: dutyFlow, greatest: atDuty };
    for (let i = 0; i <= STEPS; i += 1) {
      const flow = i === STEPS ? pump.mostFlow : from + i * step;
      const greatest = power(flow);
      if (greatest > best.greatest) best = { flow, greatest };
    }
    if (best.flow > from && best.flow < pump.mostFlow) {
      const flow = leastBetween(
        (at) => -power(at),
        Math.max(from, best.flow - step),
        Math.min(pump.mostFlow, best.flow + step),
      );
      const greatest = power(flow);
      if (greatest > best.greatest) best = { flow, greatest };
    }
    return succeed({ atDuty, ...best }, best.flow === pump.mostFlow ? [greatestAtEnd(best.greatest)] : []);
  });
}

/** The first flow whose power is known from a figure, not from the line of efficiency to zero. */
function firstReadable({ curve, leastFlow, flowFactor }: RunningPump): number {
  if (curve.power !== undefined || curve.efficiency === undefined) return leastFlow;
  const { x, y } = curve.efficiency;
  const first = x.findIndex((_, i) => (y[i] as number) > 0);
  return Math.max(leastFlow, (x[Math.max(0, first)] as number) * flowFactor);
}

function greatestAtEnd(greatest: number): Finding {
  return {
    code: "power-greatest-at-curve-end",
    severity: "caution",
    subject: "shaft power",
    found: amount("power", greatest),
  };
}
