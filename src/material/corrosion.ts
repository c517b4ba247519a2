import { CELSIUS_ZERO } from "../basis/constants.ts";
import { amount, type Details } from "../basis/result.ts";
import type { Casting } from "../tables/materials-cast.ts";
import { chosen, type Judgement, judge, type Level } from "./judgement.ts";
import type { Constituent, WettedDuty } from "./wetted-duty.ts";

const celsius = (reading: number): number => reading + CELSIUS_ZERO;
const milligramsPerLitre = (figure: number): number => figure / 1000;

/** Kinds of metal that a rule treats alike. */
export type Kind = "iron" | "steel" | "white iron" | "316" | "duplex" | "bronze" | "13Cr";

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

/** pH between which a kind may serve with care, and what lies beyond either side. */
export const PH_RANGE: Readonly<Record<Kind, { least: number; greatest: number; below: Level; above: Level }>> = {
  iron: { least: 4, greatest: 11, below: "out", above: "unknown" },
  steel: { least: 4, greatest: 11, below: "out", above: "unknown" },
  "white iron": { least: 5.5, greatest: 12, below: "out", above: "out" },
  "316": { least: 4, greatest: 11, below: "unknown", above: "unknown" },
  duplex: { least: 4, greatest: 11, below: "unknown", above: "unknown" },
  bronze: { least: 6, greatest: 9, below: "unknown", above: "unknown" },
  "13Cr": { least: 6, greatest: 9, below: "unknown", above: "unknown" },
};

/** Every corrosion rule that speaks of a metal in a duty. */
export function corrosionJudgements(casting: Casting, duty: WettedDuty): readonly Judgement[] {
  const kind = kindOf(casting);
  return [
    ...acidity(kind, duty),
    ...temperatureRule(kind, duty),
    ...chlorideRule(kind, casting, duty),
    ...oxidiserRule(kind, duty),
    ...makeUpRules(kind, casting, duty),
  ];
}

function acidity(kind: Kind, { pH, makeUp }: WettedDuty): readonly Judgement[] {
  const { least, greatest, below, above } = PH_RANGE[kind];
  const facts = { pH, least, greatest };
  const [low, high] = NEUTRAL;
  const needsMakeUp =
    makeUp === null && (pH < low || pH > high) ? [judge("limited", { code: "make-up-needed", facts })] : [];
  if (pH < least) return [judge(below, { code: below === "out" ? "ph-too-low" : "ph-beyond-rule", facts })];
  if (pH > greatest) return [judge(above, { code: above === "out" ? "ph-too-high" : "ph-beyond-rule", facts })];
  if (pH < low) {
    if (kind === "iron" || kind === "steel")
      return [judge("limited", { code: "iron-acid-water", facts }), ...needsMakeUp];
    if (kind === "white iron") return [judge("limited", { code: "ph-near-limit", facts }), ...needsMakeUp];
    return needsMakeUp;
  }
  if (pH > high) {
    if (kind === "iron" || kind === "steel")
      return [judge("fine", { code: "iron-alkaline-water", facts }), ...needsMakeUp];
    return needsMakeUp;
  }
  return [judge("fine", { code: "ph-neutral", facts })];
}

/** As far as is known: neutral, and nothing in it but salts and solids. */
function isPlainWater({ pH, makeUp }: WettedDuty): boolean {
  const [low, high] = NEUTRAL;
  return pH >= low && pH <= high && (makeUp === null || makeUp.length === 0);
}

const AERATED = celsius(60);
const STOP = celsius(90);

function temperatureRule(kind: Kind, duty: WettedDuty): readonly Judgement[] {
  const { temperature } = duty;
  if (temperature === null) {
    return [
      isPlainWater(duty)
        ? judge("limited", { code: "temperature-missing" })
        : judge("unknown", { code: "temperature-decides" }),
    ];
  }
  const found = amount("temperature", temperature);
  const over = (limit: number): Details => ({
    found,
    limit: { quantity: "temperature", value: limit, side: "at most" },
  });
  switch (kind) {
    case "iron":
    case "white iron":
    case "13Cr":
    case "bronze":
      if (temperature > STOP) return [judge("unknown", { code: "temperature-stop", ...over(STOP) })];
      if (temperature <= AERATED) return [];
      return [judge("limited", { code: kind === "white iron" ? "thermal-shock" : "aerated-hot", ...over(AERATED) })];
    case "steel":
      return temperature > AERATED ? [judge("limited", { code: "steel-condensate", ...over(AERATED) })] : [];
    case "316":
      return [];
    case "duplex":
      return temperature > EMBRITTLES ? [judge("out", { code: "duplex-embrittles", ...over(EMBRITTLES) })] : [];
  }
}

/** 260 °C: duplex loses its toughness with time from here on. */
const EMBRITTLES = celsius(260);

/** Chloride of water that is still fresh, of brackish water, and of salt water that irons are not offered for. */
const FRESH = milligramsPerLitre(250);
const BRACKISH = milligramsPerLitre(1000);
const SALT = milligramsPerLitre(10_000);
const SALT_CHOICE = chosen(
  "fresh water up to 250 mg/L of chloride, brackish from 1000, salt from 10 000; sea water has some 19 000",
);

function chlorideRule(kind: Kind, casting: Casting, duty: WettedDuty): readonly Judgement[] {
  const { chlorides } = duty;
  if (kind === "316" || kind === "duplex") return stainlessChlorides(kind, casting, duty);
  if (chlorides === null) {
    const level = kind === "13Cr" ? "unknown" : "limited";
    return kind === "bronze" ? [] : [judge(level, { code: "chlorides-missing" })];
  }
  const found = amount("concentration", chlorides);
  const over = (limit: number): Details => ({
    found,
    limit: { quantity: "concentration", value: limit, side: "at most" },
    cites: SALT_CHOICE,
  });
  switch (kind) {
    case "iron":
    case "steel":
      if (chlorides > SALT) return [judge("out", { code: "iron-in-brine", ...over(SALT) })];
      return chlorides > BRACKISH ? [judge("limited", { code: "iron-graphitic", ...over(BRACKISH) })] : [];
    case "white iron":
      return chlorides > BRACKISH ? [judge("limited", { code: "white-iron-salt", ...over(BRACKISH) })] : [];
    case "bronze":
      return chlorides > BRACKISH ? [judge("limited", { code: "bronze-sea-water", ...over(BRACKISH) })] : [];
    case "13Cr":
      if (chlorides > BRACKISH) return [judge("out", { code: "chrome-steel-salt", ...over(BRACKISH) })];
      return chlorides > FRESH ? [judge("limited", { code: "chrome-steel-salt", ...over(FRESH) })] : [];
  }
}

const COLD = celsius(25);
const WARM = celsius(50);
const CRACKING = celsius(60);
const COLD_LIMIT = milligramsPerLitre(1000);
const WARM_LIMIT = milligramsPerLitre(300);

/**
 * Chloride up to which cast 316 serves in flowing neutral water, kg/m³: 1000 mg/L to 25 °C, 300 mg/L at 50 °C and above;
 * in between on a straight line of the logarithm (house choice), which is the lower of the two straight lines.
 */
export function chlorideLimit316(temperature: number): number {
  if (temperature <= COLD) return COLD_LIMIT;
  if (temperature >= WARM) return WARM_LIMIT;
  return COLD_LIMIT * (WARM_LIMIT / COLD_LIMIT) ** ((temperature - COLD) / (WARM - COLD));
}

function stainlessChlorides(kind: "316" | "duplex", casting: Casting, duty: WettedDuty): readonly Judgement[] {
  const { chlorides, temperature } = duty;
  if (chlorides === null) return [judge("unknown", { code: "chlorides-missing" })];
  if (chlorides === 0) return [];
  const found = amount("concentration", chlorides);
  if (temperature === null) {
    const safe = kind === "316" ? WARM_LIMIT : COLD_LIMIT;
    return chlorides > safe ? [judge("unknown", { code: "chlorides-need-temperature", found })] : [];
  }
  const hot = temperature > CRACKING ? [judge("limited", { code: "stress-cracking", ...hotFacts(temperature) })] : [];
  if (kind === "316") {
    const most = chlorideLimit316(temperature);
    const limit = { quantity: "concentration", value: most, side: "at most" } as const;
    const facts = { temperature: amount("temperature", temperature) };
    const level = chlorides > most ? "out" : "fine";
    return [
      judge(level, { code: level === "out" ? "chlorides-beyond-316" : "chlorides-within-316", found, limit, facts }),
      ...hot,
    ];
  }
  return [...duplexChlorides(casting, chlorides, temperature), ...hot];
}

function hotFacts(temperature: number): Details {
  const limit = { quantity: "temperature", value: CRACKING, side: "at most" } as const;
  return { found: amount("temperature", temperature), limit };
}

/** Pitting resistance, at mid composition, from which on cold flowing sea water is borne; warm asks for 40. */
const COLD_SEA_WATER = 32;

function duplexChlorides(casting: Casting, chlorides: number, temperature: number): readonly Judgement[] {
  if (chlorides <= BRACKISH) return [];
  const found = amount("concentration", chlorides);
  const [least, greatest] = casting.pittingResistance ?? [0, 0];
  const facts = { pitting: `${least} to ${greatest}`, temperature: amount("temperature", temperature) };
  const limit = { quantity: "temperature", value: COLD, side: "at most" } as const;
  if (chlorides <= SALT) {
    return temperature <= COLD ? [] : [judge("limited", { code: "duplex-brackish-warm", found, facts, limit })];
  }
  const isCold = temperature <= COLD && (least + greatest) / 2 >= COLD_SEA_WATER;
  return [
    judge(isCold ? "limited" : "out", {
      code: isCold ? "duplex-sea-water-cold" : "duplex-sea-water-warm",
      found,
      facts,
      limit,
    }),
  ];
}

/** Hypochlorite that 316 bears, kg/m³. */
const OXIDISER_LIMIT = milligramsPerLitre(5);

function oxidiserRule(kind: Kind, { oxidiser }: WettedDuty): readonly Judgement[] {
  if (oxidiser === null || oxidiser === 0) return [];
  const found = amount("concentration", oxidiser);
  const limit = { quantity: "concentration", value: OXIDISER_LIMIT, side: "at most" } as const;
  if (kind === "316") {
    return [judge(oxidiser > OXIDISER_LIMIT ? "out" : "limited", { code: "oxidiser-316", found, limit })];
  }
  return [
    judge(kind === "duplex" ? "limited" : oxidiser > OXIDISER_LIMIT ? "unknown" : "limited", {
      code: "oxidiser-lowers",
      found,
    }),
  ];
}

/** What each chemical means for each kind; a kind not named is not judged for that chemical. */
const CHEMICAL_RULES: Readonly<
  Record<Exclude<Constituent, "caustic" | "hydrogen sulphide">, Partial<Record<Kind, Level>>>
> = {
  "sulphuric acid": { duplex: "limited", iron: "out", steel: "out", "white iron": "out", "13Cr": "out", bronze: "out" },
  "hydrochloric acid": { "316": "out", iron: "out", steel: "out", "white iron": "out", "13Cr": "out", bronze: "out" },
  "nitric acid": { "316": "limited", bronze: "out", iron: "out", steel: "out", "white iron": "out" },
  "hydrofluoric acid": {
    iron: "out",
    steel: "out",
    "white iron": "out",
    "316": "out",
    duplex: "out",
    bronze: "out",
    "13Cr": "out",
  },
  ammonia: {
    bronze: "out",
    iron: "fine",
    steel: "fine",
    "316": "fine",
    duplex: "fine",
    "white iron": "fine",
    "13Cr": "fine",
  },
  oil: {
    iron: "fine",
    steel: "fine",
    "white iron": "fine",
    "316": "fine",
    duplex: "fine",
    bronze: "fine",
    "13Cr": "fine",
  },
};

/** What the trade takes for an acid, in its own words; some of it is not among the castings here. */
export const USUAL_METALS: Partial<Record<Constituent, string>> = {
  "sulphuric acid": "CD4MCu or the alloy 20 family at middling strength",
  "nitric acid": "stainless of the 304L kind",
};

/** Caustic above this asks for stress relieved steel or nickel. */
const HOT_CAUSTIC = celsius(50);

function makeUpRules(kind: Kind, casting: Casting, { makeUp, temperature }: WettedDuty): readonly Judgement[] {
  return (makeUp ?? []).flatMap((constituent): readonly Judgement[] => {
    const facts = { constituent };
    if (constituent === "caustic") {
      if (kind === "bronze") return [judge("unknown", { code: "chemical-not-judged", facts })];
      const isHot = temperature === null || temperature > HOT_CAUSTIC;
      return [judge("limited", isHot ? { code: "caustic-hot" } : { code: "chemical-with-care", facts })];
    }
    if (constituent === "hydrogen sulphide") return [sour(kind, casting)];
    const level = CHEMICAL_RULES[constituent][kind] ?? "unknown";
    if (level === "fine") return [];
    const code = { limited: "chemical-with-care", unknown: "chemical-not-judged", out: "chemical-rules-out" } as const;
    return [judge(level, { code: code[level], facts })];
  });
}

function sour(kind: Kind, { id }: Casting): Judgement {
  const cites = { source: "iso-15156", at: "hardness and material limits for sour service" } as const;
  const isRuledOut = kind === "bronze" || kind === "white iron" || id === "GI";
  return judge(isRuledOut ? "out" : "limited", { code: isRuledOut ? "sour-ruled-out" : "sour-hardness", cites });
}
