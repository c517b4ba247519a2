import { type Kind, kindOf, NEUTRAL, PH_RANGE } from "../../src/material/corrosion.ts";
import type { MaterialVerdict } from "../../src/material/judgement.ts";
import { firstFor, isOffered, materialChoice } from "../../src/material/material-choice.ts";
import { FEW_SOLIDS, MANY_SOLIDS } from "../../src/material/wear.ts";
import { missingOf, wettedDutyMethod } from "../../src/material/wetted-duty.ts";
import { CASTINGS } from "../../src/tables/materials-cast.ts";
import { wettedDutyOf } from "../calc-sheet/sections/wetted-duty.ts";
import type { Duty } from "../duty/duty.ts";
import { spelt } from "../text/spelling.ts";

/** A stretch of pH within a stretch of solids by weight, a fraction. */
export interface MapBox {
  readonly pH: readonly [from: number, to: number];
  readonly solids: readonly [from: number, to: number];
}

/** Where the trade's rule of thumb names a material, by pH and solids alone. */
export interface MapRegion {
  readonly key: "ends" | "iron" | "alkaline" | "undecided" | "white-iron";
  /** Boxes above one another, lowest first. */
  readonly boxes: readonly [MapBox, ...MapBox[]];
  /** What it says, a line each, where its label has room: in this box of its own. */
  readonly lines: readonly string[];
  readonly labelled: MapBox;
  /** The kinds of metal it means; none where pH and solids do not decide. */
  readonly kinds: readonly Kind[];
}

export const MOST_SOLIDS: number = wettedDutyMethod.inputs.solids.below;
const LEAST_PH = wettedDutyMethod.inputs.pH.atLeast;
export const MOST_PH: number = wettedDutyMethod.inputs.pH.atMost;
const FEW = [0, FEW_SOLIDS] as const;
const SOME = [FEW_SOLIDS, MANY_SOLIDS] as const;
const MANY = [MANY_SOLIDS, MOST_SOLIDS] as const;
const [IRON_LEAST, IRON_MOST] = PH_RANGE.iron.care;
const [WHITE_LEAST, WHITE_MOST] = PH_RANGE["white iron"].care;
const [, NEUTRAL_MOST] = NEUTRAL;

const ACID: MapBox = { pH: [LEAST_PH, IRON_LEAST], solids: SOME };
const ALKALI: MapBox = { pH: [IRON_MOST, MOST_PH], solids: FEW };
const IRON: MapBox = { pH: [IRON_LEAST, NEUTRAL_MOST], solids: FEW };
const ALKALINE: MapBox = { pH: [NEUTRAL_MOST, IRON_MOST], solids: FEW };
const UNDECIDED: MapBox = { pH: [IRON_LEAST, WHITE_MOST], solids: SOME };
const HARD: MapBox = { pH: [WHITE_LEAST, WHITE_MOST], solids: MANY };

/** The whole map, in common practice without a source; its limits are those that the ranking goes by. */
export const MAP_REGIONS: readonly MapRegion[] = [
  {
    key: "ends",
    boxes: [{ pH: ACID.pH, solids: FEW }, ACID, { pH: [LEAST_PH, WHITE_LEAST], solids: MANY }],
    lines: ["liquid", "decides"],
    labelled: ACID,
    kinds: [],
  },
  { key: "iron", boxes: [IRON], lines: ["ductile iron", "if soft"], labelled: IRON, kinds: ["iron"] },
  { key: "alkaline", boxes: [ALKALINE], lines: ["iron,", "ask"], labelled: ALKALINE, kinds: ["iron"] },
  {
    key: "ends",
    boxes: [ALKALI, { pH: [WHITE_MOST, MOST_PH], solids: SOME }, { pH: [WHITE_MOST, MOST_PH], solids: MANY }],
    lines: ["liquid", "decides"],
    labelled: ALKALI,
    kinds: [],
  },
  {
    key: "undecided",
    boxes: [UNDECIDED],
    lines: ["hardness decides:", "iron or high-chrome"],
    labelled: UNDECIDED,
    kinds: [],
  },
  { key: "white-iron", boxes: [HARD], lines: ["high-chrome", "white iron"], labelled: HARD, kinds: ["white iron"] },
];

/** What the map says at a place; a limit belongs to the side the ranking puts it on. */
export function regionAt(pH: number, solids: number): MapRegion | undefined {
  const row = solids < FEW_SOLIDS ? FEW : solids <= MANY_SOLIDS ? SOME : MANY;
  const inner = ({ key }: MapRegion): boolean => key !== "ends";
  const holds = (region: MapRegion): boolean =>
    region.boxes.some(({ pH: [from, to], solids: [least] }) => least === row[0] && pH >= from && pH <= to);
  return MAP_REGIONS.find((region) => inner(region) && holds(region)) ?? MAP_REGIONS.find(holds);
}

/** A case on the map. */
export interface SolidsMap {
  readonly pH: number;
  /** By weight; null where none were stated, and the case is a line. */
  readonly solids: number | null;
  /** The metal that all stated data rank first; undefined where none can be named until more is stated. */
  readonly first: string | undefined;
  readonly verdict: MaterialVerdict;
  /** The first for wear parts, where that is another. */
  readonly wearParts: string | undefined;
  /** Whether the first is what the map says there; undefined where the map leaves it open or the place is not known. */
  readonly agrees: boolean | undefined;
  /** What the map leaves the place to, where it does. */
  readonly leftTo: "the hardness of the particles" | "the liquid";
  readonly missing: readonly string[];
}

/** The duty on the map; undefined where its pH is not stated or it cannot be judged. */
export function solidsMap(duty: Duty): SolidsMap | undefined {
  const wetted = wettedDutyOf(duty);
  const { pH, solids } = wetted;
  if (pH === null) return undefined;
  const ranked = materialChoice(wetted);
  if (!ranked.ok) return undefined;
  const { wetEnd } = ranked.value;
  const [best] = wetEnd;
  if (best === undefined) return undefined;
  const words = (text: string): string => spelt(text, duty.unitSet);
  const casting = CASTINGS.find(({ name }) => name === best.material);
  const region = solids === null ? undefined : regionAt(pH, solids);
  const kinds = region?.kinds ?? [];
  const wearParts = firstFor(wetEnd, "wear parts")?.material;
  return {
    pH,
    solids,
    first: isOffered(best) ? words(best.material) : undefined,
    verdict: best.verdict,
    wearParts: wearParts === undefined || wearParts === best.material ? undefined : words(wearParts),
    agrees: kinds.length === 0 || casting === undefined ? undefined : kinds.includes(kindOf(casting)),
    leftTo: region?.key === "undecided" ? "the hardness of the particles" : "the liquid",
    missing: missingOf(wetted).map(words),
  };
}
