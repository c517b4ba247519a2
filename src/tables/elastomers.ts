import type { Citation } from "../basis/citation.ts";
import type { StandingColumn } from "./constituents.ts";

/**
 * Elastomers and soft seal materials for static service: temperatures in °C, what they stand and what they do not.
 *
 * Verified: from memory of hose and seal handbooks; concentration, temperature and time of exposure decide, so ask the
 * maker of the part. `waterLimit` where water and steam are limited below the general figure.
 */
/** "ask": it stands some, by concentration and temperature. */
export type Standing = "stands" | "ask" | "not";

export interface Elastomer {
  readonly name: string;
  readonly column: StandingColumn;
  readonly lowest: number;
  readonly highest: number;
  readonly waterLimit: number;
  readonly standsOil: boolean;
  /** Below pH 4 and above pH 11. */
  readonly strongAcid: Standing;
  readonly strongAlkali: Standing;
  readonly good: string;
  readonly not: string;
}

export const ELASTOMERS_CITE: Citation = { source: "practice", at: "hose and seal handbooks", unverified: true };

export const ELASTOMERS: readonly Elastomer[] = [
  {
    name: "NBR (nitrile)",
    column: "NBR",
    lowest: -30,
    highest: 100,
    waterLimit: 80,
    standsOil: true,
    strongAcid: "not",
    strongAlkali: "ask",
    good: "mineral oil, diesel, water",
    not: "ozone, ketones, strong acid",
  },
  {
    name: "EPDM",
    column: "EPDM",
    lowest: -45,
    highest: 130,
    waterLimit: 130,
    standsOil: false,
    strongAcid: "ask",
    strongAlkali: "ask",
    good: "water, steam, dilute acid and alkali, brine, glycol",
    not: "any oil or fuel",
  },
  {
    name: "FKM",
    column: "FKM",
    lowest: -15,
    highest: 200,
    waterLimit: 100,
    standsOil: true,
    strongAcid: "ask",
    strongAlkali: "not",
    good: "oils, fuels, many acids",
    not: "ketones, amines, alkali, hotter water and steam unless the grade is made for it",
  },
  {
    name: "natural rubber",
    column: "natural rubber",
    lowest: -40,
    highest: 70,
    waterLimit: 70,
    standsOil: false,
    strongAcid: "ask",
    strongAlkali: "ask",
    good: "slurry, fine abrasion",
    not: "oil, ozone",
  },
  {
    name: "PTFE",
    column: "PTFE",
    lowest: -200,
    highest: 200,
    waterLimit: 200,
    standsOil: true,
    strongAcid: "stands",
    strongAlkali: "stands",
    good: "nearly all liquids",
    not: "springing back: it creeps and has no memory",
  },
];
