import type { Result } from "../basis/result.ts";

/** What the methods need to know of a liquid at its pumping temperature. */
export interface LiquidState {
  /** kg/m³ */
  readonly density: number;
  /** Pa·s */
  readonly dynamicViscosity: number;
  /** Absolute, Pa. Missing where a described liquid states none; NPSH methods then refuse. */
  readonly vapourPressure?: number;
  /** Mass fraction of water in the liquid, between the solids of a slurry. Missing where it is another liquid or nobody knows. */
  readonly waterByMass?: number;
  /** Of a slurry, whose density is then that of solids and liquid together; viscosity and vapour pressure are the liquid's. */
  readonly solids?: Solids;
}

/** What a slurry carries, and in what. */
export interface Solids {
  /** Relative to 998.2 kg/m³. */
  readonly specificGravity: number;
  /** Volume fraction of the slurry, above 0. */
  readonly byVolume: number;
  /** d50, m; null where nobody stated it, and neither settling nor the loss in the pump can be told. */
  readonly medianSize: number | null;
  /** d85, m; null for narrowly graded solids. */
  readonly coarseSize: number | null;
  /** Mass fraction of the solids below 75 µm. */
  readonly fines: number;
  /** The liquid between them. */
  readonly carrier: LiquidState;
}

/** What flows between the solids: the liquid itself where there are none. */
export function carrierOf(liquid: LiquidState): LiquidState {
  return liquid.solids?.carrier ?? liquid;
}

/** A liquid by name or description. `at` answers for a temperature in K and says where it does not hold. */
export interface Liquid {
  /** As the product prints it, such as "water" or "ethylene glycol 40 %". */
  readonly name: string;
  /** Temperature written behind its name, K: it stands where none is given, and contradicts another. */
  readonly statedTemperature?: number;
  /** Of a slurry, the liquid between its solids. */
  readonly carrier?: Liquid;
  readonly at: (temperature: number) => Result<LiquidState>;
}

/** m²/s, of the liquid between the solids. */
export function kinematicViscosityOf(liquid: LiquidState): number {
  const { dynamicViscosity, density } = carrierOf(liquid);
  return dynamicViscosity / density;
}
