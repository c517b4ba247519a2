import { STANDARD_GRAVITY } from "../basis/constants.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { type Result, succeed } from "../basis/result.ts";

export const clearWaterDutyMethod = {
  cites: [{ source: "karassik-handbook", at: "slurry chapter: head and efficiency ratios" }],
  inputs: {
    flow: { name: "flow", symbol: "Q", quantity: "flow", atLeast: 0 },
    slurryHead: { name: "slurry head", symbol: "H_m", quantity: "head", atLeast: 0 },
    slurryDensity: { name: "slurry density", symbol: "ρ_m", quantity: "density", above: 0 },
    waterEfficiency: { name: "efficiency on water", symbol: "η_w", quantity: "percent", above: 0, atMost: 1 },
    headRatio: { name: "head ratio", symbol: "HR", quantity: "ratio", above: 0, atMost: 1 },
    efficiencyRatio: { name: "efficiency ratio", symbol: "ER", quantity: "ratio", above: 0, atMost: 1 },
  },
} as const satisfies Method<
  "flow" | "slurryHead" | "slurryDensity" | "waterEfficiency" | "headRatio" | "efficiencyRatio"
>;

export interface ClearWaterDutyInputs {
  /** Of the slurry, m³/s. */
  readonly flow: number;
  /** m of slurry. */
  readonly slurryHead: number;
  /** kg/m³ */
  readonly slurryDensity: number;
  /** On water at the same flow, 0 to 1; null where it is not known yet. */
  readonly waterEfficiency: number | null;
  readonly headRatio: number;
  readonly efficiencyRatio: number;
}

export interface ClearWaterDuty {
  /** Head to read the water curve at, m. */
  readonly waterHead: number;
  /** On slurry, W; null without an efficiency. */
  readonly shaftPower: number | null;
}

/**
 * Head to have on the water curve to deliver a slurry head, m, and shaft power on slurry, W. Heads are in metres of
 * what is pumped, so no specific gravity enters them; density enters the power alone.
 * Formula: H_w = H_m/HR, P = ρ_m g Q H_m/(η_w ER)
 * Fails: out-of-range inputs as the method bounds them (ratios above 0 up to 1).
 * Source: Karassik and others, Pump Handbook, slurry chapter.
 */
export function clearWaterDuty(inputs: ClearWaterDutyInputs): Result<ClearWaterDuty> {
  const { flow, slurryHead, slurryDensity, waterEfficiency, headRatio, efficiencyRatio } = inputs;
  const checked = checkInputs(clearWaterDutyMethod, { ...inputs, waterEfficiency: waterEfficiency ?? 1 });
  if (!checked.ok) return checked;
  const hydraulicPower = slurryDensity * STANDARD_GRAVITY * flow * slurryHead;
  return succeed({
    waterHead: slurryHead / headRatio,
    shaftPower: waterEfficiency === null ? null : hydraulicPower / (waterEfficiency * efficiencyRatio),
  });
}
