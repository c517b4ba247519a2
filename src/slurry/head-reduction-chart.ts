import { checkInputs, type Method } from "../basis/method.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import { doNotSettle, PACKED, SOLIDS_SG } from "./solids.ts";

export const headReductionMethod = {
  cites: [{ source: "karassik-handbook", at: "slurry chapter: solids effect; exponent 0.65", unverified: true }],
  inputs: {
    chartReduction: { name: "head reduction of the chart", symbol: "R_H", quantity: "percent", atLeast: 0, below: 1 },
    solidsSG: SOLIDS_SG,
    fines: { name: "fines", symbol: "X", quantity: "percent", atLeast: 0, below: 1 },
    solidsByVolume: { name: "solids by volume", symbol: "C_v", quantity: "percent", atLeast: 0, below: PACKED },
  },
} as const satisfies Method<"chartReduction" | "solidsSG" | "fines" | "solidsByVolume">;

/** What the chart stands for. */
const CHART = { solidsSG: 2.65, solidsByVolume: 0.15 };

export interface HeadReductionInputs {
  /** 1 − HR read at the impeller diameter and d50, for solids of SG 2.65 at 15 % by volume. */
  readonly chartReduction: number;
  readonly solidsSG: number;
  /** Mass fraction of the solids below 75 µm. */
  readonly fines: number;
  /** Volume fraction. */
  readonly solidsByVolume: number;
}

export interface HeadReduction {
  readonly densityFactor: number;
  readonly finesFactor: number;
  /** 1 − HR at 15 % by volume. */
  readonly atChartConcentration: number;
  /** 1 − HR of the slurry. */
  readonly reduction: number;
}

/**
 * Head reduction 1 − HR of a slurry from a reading of the handbook's chart, which is not held here.
 * Formula: R_H = R_H,chart ((S_s − 1)/1.65)^0.65 (1 − X)² C_v/0.15
 * Fails: out-of-range inputs as the method bounds them; solids-do-not-settle; a reduction of the whole head.
 * Source: Karassik and others, Pump Handbook, slurry chapter (exponent from memory).
 */
export function headReduction(inputs: HeadReductionInputs): Result<HeadReduction> {
  const checked = checkInputs(headReductionMethod, { ...inputs });
  if (!checked.ok) return checked;
  const { chartReduction, solidsSG, fines, solidsByVolume } = inputs;
  if (solidsSG <= 1) return fail([doNotSettle(solidsSG, 1)]);
  const densityFactor = ((solidsSG - 1) / (CHART.solidsSG - 1)) ** 0.65;
  const finesFactor = (1 - fines) ** 2;
  const atChartConcentration = chartReduction * densityFactor * finesFactor;
  const reduction = (atChartConcentration * solidsByVolume) / CHART.solidsByVolume;
  const whole = checkInputs(
    {
      ...headReductionMethod,
      inputs: { reduction: { ...headReductionMethod.inputs.chartReduction, name: "head reduction" } },
    },
    { reduction },
  );
  return whole.ok ? succeed({ densityFactor, finesFactor, atChartConcentration, reduction }) : whole;
}
