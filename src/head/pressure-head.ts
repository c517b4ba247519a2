import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { andThen, fail, type Result, succeed } from "../basis/result.ts";

export const pressureHeadMethod = {
  cites: [{ source: "white-fluid-mechanics", at: "ch. 2, hydrostatic pressure: p = ρ g h" }],
  inputs: {
    // Below nothing there is no pressure: a vacuum is at most the atmosphere, taken at sea level.
    pressure: { name: "pressure", symbol: "p", quantity: "gaugePressure", atLeast: -STANDARD_ATMOSPHERE },
    density: { name: "density", symbol: "ρ", quantity: "density", above: 0 },
  },
} as const satisfies Method<"pressure" | "density">;

/**
 * Head of a liquid that stands under a gauge pressure [m]; negative for a vacuum.
 * Formula: h = p/(ρ g)
 * Fails: a vacuum of more than one standard atmosphere; a density not above 0.
 * Source: White, Fluid Mechanics, ch. 2.
 */
export function headOfPressure(pressure: number, density: number): Result<number> {
  return andThen(checkInputs(pressureHeadMethod, { pressure, density }), () =>
    succeed(pressure / (density * STANDARD_GRAVITY)),
  );
}

/**
 * Gauge pressure under a head of liquid [Pa]; negative for a head below the gauge. Fails and cites as `headOfPressure`.
 * Formula: p = ρ g h
 */
export function pressureOfHead(head: number, density: number): Result<number> {
  return andThen(checkInputs(pressureHeadMethod, { pressure: 0, density }), () => {
    if (!Number.isFinite(head)) return fail([{ code: "not-a-number", kind: "error", subject: "head" }]);
    const least = -STANDARD_ATMOSPHERE / (density * STANDARD_GRAVITY);
    if (head < least) return fail([outOfRange("head", "head", head, "at least", least)]);
    return succeed(density * STANDARD_GRAVITY * head);
  });
}
