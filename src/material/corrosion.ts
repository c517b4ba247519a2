import { isAtMost } from "../basis/at-most.ts";
import { CELSIUS_ZERO } from "../basis/constants.ts";
import { amount, type Details } from "../basis/result.ts";
import type { Casting } from "../tables/materials-cast.ts";
import { type Judgement, judge } from "./judgement.ts";
import type { Level } from "./level.ts";
import { stainlessScreen } from "./stainless.ts";
import type { Exact, Screens } from "./standing.ts";

const celsius = (reading: number): number => reading + CELSIUS_ZERO;
const milligramsPerLitre = (figure: number): number => figure / 1000;

/** Kinds of metal that a rule treats alike. */
export type Kind = "iron" | "steel" | "white iron" | "304" | "316" | "duplex" | "bronze" | "13Cr";

const KINDS: Readonly<Record<string, Kind>> = {
  DI: "iron",
  DI395: "iron",
  GI: "iron",
  HCWI: "white iron",
  "316C": "316",
  "1B": "duplex",
  "1A": "duplex",
  NAB: "bronze",
  WCB: "steel",
  CA6NM: "13Cr",
};

/** The kind of metal the corrosion rules know a casting by. */
export function kindOf({ id }: Casting): Kind {
  return KINDS[id] as Kind;
}

/** Neutral water, inside which no make-up is needed: pH 6 to 9. */
export const NEUTRAL = [6, 9] as const;

interface PhRange {
  /** Serves freely inside these. */
  readonly free: readonly [number, number];
  /** With care inside these. */
  readonly care: readonly [number, number];
  /** Beyond them on either side. */
  readonly below: Level;
  readonly above: Level;
}

/** What each kind stands of pH: common practice, no source; white iron to 5.5 where sources disagree. */
export const PH_RANGE: Readonly<Record<Kind, PhRange>> = {
  iron: { free: [6, 10], care: [4, 11], below: "out", above: "unknown" },
  steel: { free: [6, 10], care: [4, 11], below: "out", above: "unknown" },
  "white iron": { free: [6.5, 10], care: [5.5, 12], below: "out", above: "out" },
  "304": { free: [4, 12], care: [4, 12], below: "unknown", above: "unknown" },
  "316": { free: [4, 12], care: [4, 12], below: "unknown", above: "unknown" },
  duplex: { free: [4, 12], care: [4, 12], below: "unknown", above: "unknown" },
  bronze: { free: [6, 9], care: [6, 9], below: "unknown", above: "unknown" },
  "13Cr": { free: [6, 9], care: [6, 9], below: "unknown", above: "unknown" },
};

const takenAsPlain = [judge("limited", { code: "make-up-plain" })];

/** The screens of a kind of metal by pH, temperature and chlorides: flowing water, oxidiser below 2 mg/L. */
export function metalScreens(kind: Kind): Screens {
  const heat = (at: Exact): readonly Judgement[] => heatRule(kind, at);
  const pH = (at: Exact): readonly Judgement[] => acidity(kind, at);
  if (kind === "304" || kind === "316" || kind === "duplex") {
    return { pH, heat, chlorides: (at) => stainlessScreen(kind, at), isStainless: true, takenAsPlain };
  }
  return { pH, heat, chlorides: (at) => chlorideRule(kind, at), takenAsPlain };
}

function acidity(kind: Kind, { pH }: Exact): readonly Judgement[] {
  const { free, care, below, above } = PH_RANGE[kind];
  const facts = { pH, least: care[0], greatest: care[1] };
  if (pH < care[0]) return [judge(below, { code: below === "out" ? "ph-too-low" : "ph-beyond-rule", facts })];
  if (pH > care[1]) return [judge(above, { code: above === "out" ? "ph-too-high" : "ph-beyond-rule", facts })];
  const isIron = kind === "iron" || kind === "steel";
  if (pH < free[0]) return [judge("limited", { code: isIron ? "iron-acid-water" : "ph-near-limit", facts })];
  if (pH > free[1]) return [judge("limited", { code: isIron ? "iron-alkaline-water" : "ph-near-limit", facts })];
  const [low, high] = NEUTRAL;
  return pH >= low && pH <= high ? [judge("fine", { code: "ph-neutral", facts })] : [];
}

const AERATED = celsius(60);
const STOP = celsius(90);
/** 260 °C: duplex loses its toughness with time from here on. */
const EMBRITTLES = celsius(260);

function heatRule(kind: Kind, { temperature }: Exact): readonly Judgement[] {
  const over = (limit: number): Details => ({
    found: amount("temperature", temperature),
    limit: { quantity: "temperature", value: limit, side: "at most" },
  });
  switch (kind) {
    case "304":
    case "316":
      return [];
    case "duplex":
      return temperature > EMBRITTLES ? [judge("out", { code: "duplex-embrittles", ...over(EMBRITTLES) })] : [];
    default:
      if (temperature > STOP) return [judge("unknown", { code: "temperature-stop", ...over(STOP) })];
      if (temperature <= AERATED) return [];
      return [judge("limited", { code: kind === "white iron" ? "thermal-shock" : "aerated-hot", ...over(AERATED) })];
  }
}

/** Chloride of fresh, brackish and salt water, and of sea water, kg/m³ (house choice for irons). */
const FRESH = milligramsPerLitre(250);
const BRACKISH = milligramsPerLitre(1000);
const SALT = milligramsPerLitre(10_000);
const SEA_WATER = milligramsPerLitre(25_000);
const SALT_CHOICE = {
  source: "house",
  at: "fresh water up to 250 mg/L of chloride, brackish from 1000, salt from 10 000; sea water has some 19 000",
} as const;

type Plain = Exclude<Kind, "304" | "316" | "duplex">;

/** From which chloride a metal serves with care, and from which not at all or unjudged. */
const CHLORIDE_RULES: Readonly<Record<Plain, readonly (readonly [most: number, level: Level, code: ChlorideCode])[]>> =
  {
    iron: [
      [SALT, "out", "iron-in-brine"],
      [BRACKISH, "limited", "iron-graphitic"],
    ],
    steel: [
      [SALT, "out", "iron-in-brine"],
      [BRACKISH, "limited", "iron-graphitic"],
    ],
    "white iron": [
      [SALT, "unknown", "white-iron-salt"],
      [BRACKISH, "limited", "white-iron-salt"],
    ],
    bronze: [
      [SEA_WATER, "limited", "bronze-brine"],
      [BRACKISH, "fine", "bronze-sea-water"],
    ],
    "13Cr": [
      [BRACKISH, "out", "chrome-steel-salt"],
      [FRESH, "limited", "chrome-steel-salt"],
    ],
  };
type ChlorideCode =
  | "iron-in-brine"
  | "iron-graphitic"
  | "white-iron-salt"
  | "bronze-brine"
  | "bronze-sea-water"
  | "chrome-steel-salt";

function chlorideRule(kind: Plain, { chlorides }: Exact): readonly Judgement[] {
  const broken = CHLORIDE_RULES[kind].find(([most]) => !isAtMost(chlorides, most));
  if (broken === undefined) return [];
  const [most, level, code] = broken;
  const limit = { quantity: "concentration", value: most, side: "at most" } as const;
  return [judge(level, { code, found: amount("concentration", chlorides), limit, cites: SALT_CHOICE })];
}

/** Free chlorine that 316 bears freely, and at most, kg/m³. */
const LITTLE_OXIDISER = milligramsPerLitre(2);
const MOST_OXIDISER = milligramsPerLitre(5);

/** What a dose of chlorine or another oxidiser means for a metal; duplex bears more than 316, iron is asked about above. */
export function oxidiserRule(kind: Kind, oxidiser: number | null): readonly Judgement[] {
  if (oxidiser === null || oxidiser === 0) return [];
  const found = amount("concentration", oxidiser);
  const limit = { quantity: "concentration", value: MOST_OXIDISER, side: "at most" } as const;
  const isMuch = !isAtMost(oxidiser, MOST_OXIDISER);
  if (kind === "316" || kind === "304") {
    if (isMuch) return [judge("out", { code: "oxidiser-316", found, limit })];
    return isAtMost(oxidiser, LITTLE_OXIDISER) ? [] : [judge("limited", { code: "oxidiser-316", found, limit })];
  }
  if (kind === "duplex") return isMuch ? [judge("limited", { code: "oxidiser-lowers", found })] : [];
  return [judge(isMuch ? "unknown" : "limited", { code: "oxidiser-lowers", found })];
}
