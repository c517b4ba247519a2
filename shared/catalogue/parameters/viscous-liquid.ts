import { andThen, type Result, succeed } from "../../../src/basis/result.ts";
import { kinematicViscosityOf, type Liquid, type LiquidState } from "../../../src/liquid/liquid.ts";
import { LIQUID_NAMES, liquidNamed } from "../../../src/liquid/liquid-name.ts";
import type { PumpCurve } from "../../../src/pump/pump-curve.ts";
import { viscousPumpCurve } from "../../../src/pump/viscous-curve.ts";
import { type OptionalParameter, quantity, text } from "../parameter.ts";
import { temperature as ofLiquid } from "./liquid.ts";

/** The liquid that a curve with water is corrected for; none where left out. */
export function correctedFor(shown: string): OptionalParameter<Liquid | null> {
  return text<Liquid | null>(
    {
      about: "The liquid, without solids: a name or its figures",
      example: '"SG 0.9, 120 cSt"',
      choices: LIQUID_NAMES,
      whenLeftOut: { value: null, shown },
    },
    liquidNamed,
  );
}

/** What a reading of a curve may state of a viscous liquid. */
export const viscousLiquid = {
  curveSpeed: quantity("speed", {
    about: "Curve speed, for a liquid that is corrected for",
    example: "1750",
    range: "above 0",
    whenLeftOut: { value: null, shown: "not needed for a liquid as thin as water" },
  }),
  liquid: correctedFor("water, or the curve is that in the liquid already"),
  temperature: ofLiquid,
} as const;

interface InLiquid {
  readonly curve: PumpCurve;
  readonly speedRatio: number;
  readonly trimRatio: number;
  readonly curveSpeed: number | null;
  readonly liquid: Liquid | null;
  readonly temperature: number;
}

/** The curve in the liquid stated, or as it is given where none is, or no speed to correct it by. */
export function curveInLiquid({
  curve,
  speedRatio,
  trimRatio,
  curveSpeed,
  liquid,
  temperature,
}: InLiquid): Result<PumpCurve> {
  if (liquid === null || curveSpeed === null) return succeed(curve);
  return andThen(liquid.at(temperature), (state: LiquidState) =>
    viscousPumpCurve({
      curve,
      speed: curveSpeed,
      speedRatio,
      trimRatio,
      kinematicViscosity: kinematicViscosityOf(state),
    }),
  );
}
