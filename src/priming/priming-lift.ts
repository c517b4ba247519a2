import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, fail, type Result, succeed } from "../basis/result.ts";
import { GREATEST_PRACTICAL_LIFT, HOT_VAPOUR_PRESSURE } from "../suction/suction-practice.ts";
import { type AirPump, airDraw } from "./air-pump.ts";
import { blankOffLift, leakExceedsAirPump, vapourShare } from "./prime-time.ts";

export interface PrimingLiftInput {
  readonly airPump: AirPump;
  /** Absolute pressure of the air on site, Pa. */
  readonly atmosphericPressure: number;
  /** kg/m³ */
  readonly density: number;
  /** Absolute, Pa. */
  readonly vapourPressure: number;
  /** Greatest lift that leaves the pump its NPSH, m (`greatestSuctionLift`); null where flow and NPSHR are not known. */
  readonly npshLift: number | null;
}

/** "hot liquid": none is lifted that is hotter than water at 60 °C. */
export type LiftRule = "blank-off" | "practice" | "NPSH" | "hot liquid";

export interface PrimingLift {
  /** Height the air pump can hold the liquid at, m. */
  readonly byBlankOff: number;
  /** Height that priming reaches in practice, m. Negative where the pump must be flooded. */
  readonly byPractice: number;
  /** Height at which the pump still has its NPSH, m; null where not known. */
  readonly byNpsh: number | null;
  /** The least of them, m. Negative where the pump must be flooded. */
  readonly greatest: number;
  readonly rules: LiftRule;
}

export const primingLiftMethod = {
  cites: [
    { source: "practice", at: "7.62 m (25 ft) of cold water at sea level, less altitude, vapour pressure and weight" },
  ],
  inputs: {
    freeAir: { name: "air pump capacity", quantity: "freeAirFlow", above: 0 },
    blankOff: { name: "blank-off pressure", quantity: "absolutePressure", atLeast: 0, below: STANDARD_ATMOSPHERE },
    leak: { name: "leak", quantity: "freeAirFlow", atLeast: 0 },
    atmosphericPressure: { name: "atmospheric pressure", symbol: "p_a", quantity: "absolutePressure", above: 0 },
    density: { name: "density", symbol: "ρ", quantity: "density", above: 0 },
    vapourPressure: { name: "vapour pressure", symbol: "p_v", quantity: "absolutePressure", atLeast: 0 },
  },
} as const satisfies Method<"freeAir" | "blankOff" | "leak" | "atmosphericPressure" | "density" | "vapourPressure">;

/** Water at 20 °C (IAPWS R7-97: 998.206 kg/m³, 2339.3 Pa), each rounded up, that it has the whole of the 25 ft. */
const COLD_WATER = { density: 998.21, vapourPressure: 2339.4 };

/**
 * Greatest suction lift by each rule, m, and the one that rules. What primes need not pump: the lift by NPSH is given.
 * Formula: blank-off (p_a − p_e)/(ρ g); practice
 *          [7.62 m ρ₀ g − (p₀ − p_a) − (p_v − p_v,20)]/(ρ g), at SG below 1 as at 1; none above the vapour pressure at 60 °C
 * Fails: out-of-range inputs as the method bounds them; leak-exceeds-air-pump.
 * Source: common practice.
 */
export function primingLift(input: PrimingLiftInput): Result<PrimingLift> {
  const { airPump, atmosphericPressure, density, vapourPressure, npshLift } = input;
  return andThen(checkInputs(primingLiftMethod, { ...input, ...airPump }), () => {
    const draw = airDraw(airPump, atmosphericPressure, vapourShare(vapourPressure));
    const byBlankOff = blankOffLift(draw, density);
    if (byBlankOff <= 0 && airPump.leak > 0) return fail([leakExceedsAirPump(airPump)]);
    const byPractice = liftInPractice(atmosphericPressure, density, vapourPressure);
    const rules: readonly (readonly [LiftRule, number])[] = [
      ["practice", byPractice],
      ["blank-off", byBlankOff],
      ...(npshLift === null ? [] : [["NPSH", npshLift] as const]),
      ...(vapourPressure > HOT_VAPOUR_PRESSURE ? [["hot liquid", 0] as const] : []),
    ];
    const [rule, greatest] = rules.reduce((least, one) => (one[1] < least[1] ? one : least));
    return succeed({ byBlankOff, byPractice, byNpsh: npshLift, greatest, rules: rule });
  });
}

/**
 * A lift of cold water at sea level, less what altitude, vapour pressure and a heavier liquid take off, m. The head lost is
 * counted in the liquid, and a lighter one than cold water gains nothing.
 */
function liftInPractice(atmosphericPressure: number, density: number, vapourPressure: number): number {
  const thinAir = STANDARD_ATMOSPHERE - atmosphericPressure;
  const warmth = Math.max(0, vapourPressure - COLD_WATER.vapourPressure);
  const cold = GREATEST_PRACTICAL_LIFT * COLD_WATER.density * STANDARD_GRAVITY;
  const held = (cold - thinAir - warmth) / (density * STANDARD_GRAVITY);
  return Math.min(held, GREATEST_PRACTICAL_LIFT - thinAir / (density * STANDARD_GRAVITY));
}
