import type { Result } from "../basis/result.ts";

/** What the methods need to know of a liquid at its pumping temperature. */
export interface LiquidState {
  /** kg/m³ */
  readonly density: number;
  /** Pa·s */
  readonly dynamicViscosity: number;
  /** Absolute, Pa. Missing where a described liquid states none; NPSH methods then refuse. */
  readonly vapourPressure?: number;
}

/** A liquid by name or description. `at` answers for a temperature in K and says where it does not hold. */
export interface Liquid {
  /** As the product prints it, such as "water" or "ethylene glycol 40 %". */
  readonly name: string;
  readonly at: (temperature: number) => Result<LiquidState>;
}
