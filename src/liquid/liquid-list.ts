import type { Citation } from "../basis/citation.ts";
import { DESCRIPTION_EXAMPLE, describedLiquidMethod } from "./described-liquid.ts";
import { GLYCOLS, glycolFreezingPoint, glycolMethod } from "./glycol.ts";
import { seaWaterMethod } from "./sea-water.ts";
import { DIESEL_FIGURES, TRADE_WATERS } from "./trade-liquid.ts";
import { waterMethod } from "./water.ts";

/** One line of the list of liquids. */
export interface ListedLiquid {
  /** A text that `liquidNamed` reads. */
  readonly name: string;
  /** What else may be written. */
  readonly forms: string;
  /** Where its figures hold, K; missing for a description, which holds wherever its figures do. */
  readonly lowestTemperature?: number;
  readonly highestTemperature?: number;
  readonly cites: readonly [Citation, ...Citation[]];
}

const GLYCOL_STRENGTHS = [20, 30, 40, 50];

/** Every liquid known by name, some ready strengths of glycol, and the description of any other. */
export const LISTED_LIQUIDS: readonly ListedLiquid[] = [
  {
    name: "water",
    forms: "clean fresh water",
    ...rangeOf(waterMethod.inputs.temperature),
    cites: waterMethod.cites,
  },
  ...TRADE_WATERS.map((name) => ({
    name,
    forms: 'taken as water, and said to be; with its SG or density where it has one, "mine water SG 1.05"',
    ...rangeOf(waterMethod.inputs.temperature),
    cites: waterMethod.cites,
  })),
  {
    name: "sea water",
    forms: '35 g/kg where not stated; "sea water 38 g/kg" or "sea water 3.8 %", up to 260 g/kg',
    ...rangeOf(seaWaterMethod.inputs.temperature),
    cites: seaWaterMethod.cites,
  },
  ...GLYCOLS.flatMap((glycol) =>
    GLYCOL_STRENGTHS.map((percent) => ({
      name: `${glycol} ${percent} %`,
      forms: "any strength by weight up to 60 %",
      ...rangeOf({ ...glycolMethod.inputs.temperature, atLeast: glycolFreezingPoint(glycol, percent / 100) }),
      cites: glycolMethod.cites,
    })),
  ),
  {
    name: "brine 10 %",
    forms: "salt by weight, any strength up to 26 %: taken as sea water of it",
    ...rangeOf(seaWaterMethod.inputs.temperature),
    cites: seaWaterMethod.cites,
  },
  {
    name: "diesel",
    forms: `taken as ${DIESEL_FIGURES} at every temperature`,
    cites: [{ source: "en-590", at: "density and viscosity", unverified: true }],
  },
  {
    name: DESCRIPTION_EXAMPLE,
    forms:
      "any liquid: density or SG, viscosity (cP, mPa·s, cSt, SSU; water's where left out), and absolute vapour pressure where known",
    cites: describedLiquidMethod.cites,
  },
];

function rangeOf({ atLeast, atMost }: { readonly atLeast?: number; readonly atMost?: number }): Partial<ListedLiquid> {
  return {
    ...(atLeast === undefined ? {} : { lowestTemperature: atLeast }),
    ...(atMost === undefined ? {} : { highestTemperature: atMost }),
  };
}
