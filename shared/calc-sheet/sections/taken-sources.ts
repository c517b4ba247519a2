import type { Citation, SourceKey } from "../../../src/basis/citation.ts";
import { CELSIUS_ZERO } from "../../../src/basis/constants.ts";
import { describedLiquidMethod } from "../../../src/liquid/described-liquid.ts";
import { rowsNamed } from "../../../src/material/material-choice.ts";
import { pipeRatingMethod, ratingCitation } from "../../../src/pressure/pipe-rating.ts";
import type { Duty } from "../../duty/duty.ts";
import { wettedDutyOf } from "./wetted-duty.ts";

/** What a duty states that decides which works its functions go by. */
interface Branches {
  readonly isMotor: boolean;
  readonly isSixtyHertz: boolean;
  /** Flanges by inch classes, or by PN. */
  readonly isByClass: boolean;
  readonly isGreyIron: boolean;
  /** Names of the liquids of all states. */
  readonly liquids: readonly string[];
  readonly isBelowFreezing: boolean;
  readonly rating: ReadonlySet<SourceKey>;
  readonly materials: ReadonlySet<string>;
  readonly isSour: boolean;
  readonly isWithNamedConstituents: boolean;
}

type Taken = (of: Branches) => boolean;

const isWater = (name: string): boolean => /^(sea )?water\b/i.test(name);
const ofMotor: Taken = ({ isMotor }) => isMotor;
const ofEngine: Taken = ({ isMotor }) => !isMotor;
const atSixty: Taken = ({ isMotor, isSixtyHertz }) => isMotor && isSixtyHertz;
const atFifty: Taken = ({ isMotor, isSixtyHertz }) => isMotor && !isSixtyHertz;
const byClass: Taken = ({ isByClass }) => isByClass;
const byPn: Taken = ({ isByClass }) => !isByClass;
const ofSeaWater: Taken = ({ liquids }) => liquids.some((name) => /^sea ?water\b/i.test(name));
const ofWater: Taken = ({ liquids }) => liquids.some(isWater);
const isListed = (name: string): boolean => isWater(name) || /glycol|brine/i.test(name);
const [FIGURES_STATED] = describedLiquidMethod.cites;
const ofPlastic: Taken = ({ materials }) => materials.has("HDPE") || materials.has("PVC");

/** Works that a function goes by in one of its cases alone; any other is taken wherever its function is. */
const TAKEN: Readonly<Partial<Record<SourceKey, Taken>>> = {
  "iapws-if97": ofWater,
  "iapws-r12-08": ofWater,
  "sharqawy-2010": ofSeaWater,
  "nayar-2016": ofSeaWater,
  "melinder-2010": ({ liquids }) => liquids.some((name) => /glycol/i.test(name)),
  "murphy-koop-2005": ({ liquids, isBelowFreezing }) => isBelowFreezing && liquids.some(isWater),
  "nema-mg1": atSixty,
  "nfpa-70": atSixty,
  "cfr-10-431": atSixty,
  "iec-60072-1": atFifty,
  "iec-60034-30-1": atFifty,
  "en-50347": atFifty,
  "si-2021-745": atFifty,
  "iec-60034-1": ofMotor,
  "iso-3046-1": ofEngine,
  "nfpa-20": ofEngine,
  "en-590": ofEngine,
  "sae-j617": ofEngine,
  "sae-j620": ofEngine,
  "asme-b16.1": ({ isByClass, isGreyIron }) => isByClass && isGreyIron,
  "asme-b16.42": ({ isByClass, isGreyIron }) => isByClass && !isGreyIron,
  "asme-b16.5": byClass,
  "asme-b16.21": byClass,
  "en-1092-1": byPn,
  "en-1092-2": byPn,
  "en-1514-1": byPn,
  // Drillings that the dimensions are held against; no duty is laid out by them.
  "as-2129": () => false,
  "as-4087": () => false,
  "jis-b-2220": () => false,
  "ppi-handbook": ofPlastic,
  "astm-f1216": ofPlastic,
  "iso-15156": ({ isSour }) => isSour,
  "corrosion-data": ({ isWithNamedConstituents }) => isWithNamedConstituents,
  ...Object.fromEntries(
    pipeRatingMethod.cites.map(({ source }): [SourceKey, Taken] => [source, ({ rating }) => rating.has(source)]),
  ),
  practice: () => true,
  house: () => true,
  stated: () => false,
};

/** Whether a duty takes the branch for which a function cites a work. */
export function takenBy(duty: Duty): (cites: Citation) => boolean {
  const of = branchesOf(duty);
  return (cites) => (cites === FIGURES_STATED ? !of.liquids.every(isListed) : (TAKEN[cites.source]?.(of) ?? true));
}

function branchesOf(duty: Duty): Branches {
  const { driver, unitSet, flangeClass, casingMaterial, temperature, supplyFrequency, texts } = duty;
  const makes = [...duty.suctionLine, ...duty.dischargeLine].flatMap(({ segment }) => segment?.pipe.make ?? []);
  const states = [duty, ...duty.cases.map((one) => one.duty)];
  const rows = rowsNamed(wettedDutyOf(duty));
  return {
    isMotor: driver !== "engine",
    isSixtyHertz: supplyFrequency === undefined ? unitSet === "US" : supplyFrequency.startsWith("60"),
    isByClass: flangeClass === undefined ? unitSet === "US" : !/^PN/i.test(flangeClass),
    isGreyIron: /gr[ea]y iron/i.test(casingMaterial ?? texts.casingMaterial),
    liquids: states.map(({ liquid }) => liquid?.name ?? texts.liquid),
    isBelowFreezing: states.some((one) => (one.temperature ?? temperature ?? CELSIUS_ZERO) < CELSIUS_ZERO),
    rating: new Set(makes.flatMap(({ rule }) => ratingCitation(rule)?.source ?? [])),
    materials: new Set(makes.map(({ material }) => material)),
    isSour: rows.some(({ danger }) => danger.includes("H2S")),
    isWithNamedConstituents: rows.length > 0,
  };
}
