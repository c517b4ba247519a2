import { CELSIUS_ZERO } from "../basis/constants.ts";
import { amount, type Details, type Finding } from "../basis/result.ts";
import { ELASTOMERS, ELASTOMERS_CITE, type Elastomer, type Standing } from "../tables/elastomers.ts";
import { SEAL_FACES, SEAL_FACES_CITE, type SealFaces } from "../tables/seal-faces.ts";
import { type Judgement, judge, LEVELS, type Level, verdictOf, worstOf } from "./judgement.ts";
import type { MaterialOption } from "./metal-choice.ts";
import { TIP_SPEED } from "./tip-speed.ts";
import { wearOf } from "./wear.ts";
import type { WettedDuty } from "./wetted-duty.ts";

const celsius = (reading: number): number => reading + CELSIUS_ZERO;

/** Rubber linings of slurry pumps: fine round particles, cool, no oil (common practice). */
const LINING = { coarsest: 0.006, cool: celsius(65), hottest: celsius(70) };

const RUBBER_TIPS = { quantity: "velocity", value: TIP_SPEED.rubber, side: "below" } as const;

export const RUBBER_LINING = "natural rubber lining";

/** A lining of natural rubber for the wet end. */
export function rubberLining(duty: WettedDuty): MaterialOption {
  const { temperature, particleSize } = duty;
  const judgements: readonly Judgement[] = [
    ...liningTemperature(temperature),
    particleSize === null
      ? judge("unknown", { code: "lining-size-missing", found: amount("size", LINING.coarsest) })
      : particleSize < LINING.coarsest
        ? judge("fine", { code: "lining-size", found: amount("size", particleSize) })
        : judge("out", {
            code: "lining-too-coarse",
            found: amount("size", particleSize),
            limit: { quantity: "size", value: LINING.coarsest, side: "below" },
          }),
    ...oilRule(duty, false),
    ...strengthRule(duty, "ask", "ask"),
    ...chemicalRule(duty, "ask", "ask"),
  ];
  const parts = "lining of casing, impeller and suction cover";
  const option = optionOf(RUBBER_LINING, judgements, parts);
  if (option.verdict === "not suited") return option;
  return {
    ...option,
    cautions: [...option.cautions, judge("limited", { code: "lining-tip-speed", limit: RUBBER_TIPS }).finding],
  };
}

function liningTemperature(temperature: number | null): readonly Judgement[] {
  if (temperature === null) return [judge("unknown", { code: "temperature-missing" })];
  const found = amount("temperature", temperature);
  const at = (limit: number): Details => ({
    found,
    limit: { quantity: "temperature", value: limit, side: "at most" },
  });
  if (temperature > LINING.hottest) return [judge("out", { code: "elastomer-too-hot", ...at(LINING.hottest) })];
  return temperature > LINING.cool ? [judge("limited", { code: "elastomer-near-limit", ...at(LINING.cool) })] : [];
}

/** O-rings, diaphragms, hose and bellows; fewest doubts first, in the order of the table among equals. */
export function elastomerOptions(duty: WettedDuty): readonly MaterialOption[] {
  const judged = ELASTOMERS.map((elastomer) => ({ elastomer, judgements: elastomerJudgements(elastomer, duty) }));
  return judged
    .toSorted((a, b) => LEVELS.indexOf(worstOf(a.judgements)) - LEVELS.indexOf(worstOf(b.judgements)))
    .map(({ elastomer, judgements }) => {
      const option = optionOf(elastomer.name, judgements, "elastomers: O-rings, gaskets, diaphragms, hose, bellows");
      const facts = { good: elastomer.good, not: elastomer.not };
      const about = judge("fine", { code: "elastomer-good-and-not", facts, cites: ELASTOMERS_CITE }).finding;
      return { ...option, reasons: [...option.reasons, about] };
    });
}

function elastomerJudgements(elastomer: Elastomer, duty: WettedDuty): readonly Judgement[] {
  const { temperature } = duty;
  const { strongAcid, strongAlkali, standsOil } = elastomer;
  return [
    ...(temperature === null
      ? [judge("unknown", { code: "temperature-missing" })]
      : elastomerTemperature(elastomer, temperature)),
    ...oilRule(duty, standsOil),
    ...strengthRule(duty, strongAcid, strongAlkali),
    ...chemicalRule(duty, strongAcid, strongAlkali),
  ];
}

function elastomerTemperature({ lowest, waterLimit }: Elastomer, temperature: number): readonly Judgement[] {
  const found = amount("temperature", temperature);
  if (temperature < celsius(lowest)) {
    const limit = { quantity: "temperature", value: celsius(lowest), side: "at least" } as const;
    return [judge("out", { code: "elastomer-too-cold", found, limit })];
  }
  const limit = { quantity: "temperature", value: celsius(waterLimit), side: "at most" } as const;
  const level = temperature > celsius(waterLimit) ? "out" : "fine";
  return [judge(level, { code: level === "out" ? "elastomer-too-hot" : "elastomer-within", found, limit })];
}

function oilRule({ makeUp }: WettedDuty, standsOil: boolean): readonly Judgement[] {
  if (standsOil) return [];
  if (makeUp === null) return [judge("limited", { code: "oil-not-ruled-out" })];
  return makeUp.includes("oil") ? [judge("out", { code: "elastomer-oil" })] : [];
}

/** Named chemicals whose strength the pH does not tell: acids and caustic are asked about, a base rules out FKM. */
function chemicalRule({ makeUp }: WettedDuty, acid: Standing, alkali: Standing): readonly Judgement[] {
  return (makeUp ?? []).flatMap((constituent): readonly Judgement[] => {
    const facts = { constituent };
    const isBase = constituent === "caustic" || constituent === "ammonia";
    if (isBase && alkali === "not") return [judge("out", { code: "chemical-rules-out", facts })];
    const isAsked =
      constituent === "caustic" ? alkali !== "stands" : constituent.endsWith(" acid") && acid !== "stands";
    return isAsked ? [judge("unknown", { code: "chemical-not-judged", facts })] : [];
  });
}

/** pH below and above which acid and alkali are strong to elastomers. */
const STRONG = { acid: 4, alkali: 11 } as const;

function strengthRule({ pH }: WettedDuty, acid: Standing, alkali: Standing): readonly Judgement[] {
  if (pH >= STRONG.acid && pH <= STRONG.alkali) return [];
  const levels = { stands: "fine", ask: "unknown", not: "out" } as const;
  const isAcid = pH < STRONG.acid;
  const level: Level = levels[isAcid ? acid : alkali];
  return level === "fine"
    ? []
    : [judge(level, { code: isAcid ? "elastomer-acid" : "elastomer-alkali", facts: { pH } })];
}

/** Above this the liquid may flash between the faces. */
const FLASHING = celsius(80);

/** Face pairs: hard faces on abrasive liquid, carbon on clean. */
export function sealOptions(duty: WettedDuty): readonly MaterialOption[] {
  const wear = wearOf(duty);
  const judged = SEAL_FACES.map((faces) => ({ faces, judgements: sealJudgements(faces, wear) }));
  const hot =
    duty.temperature !== null && duty.temperature > FLASHING
      ? [judge("limited", { code: "seal-may-flash", found: amount("temperature", duty.temperature) }).finding]
      : [];
  return judged
    .toSorted((a, b) => LEVELS.indexOf(worstOf(a.judgements)) - LEVELS.indexOf(worstOf(b.judgements)))
    .map(({ faces, judgements }) => {
      const option = optionOf(faces.name, judgements, "seal faces");
      if (option.verdict === "not suited") return option;
      const flush = faces.standsAbrasion && wear !== "none" ? [judge("limited", { code: "seal-flush" }).finding] : [];
      return {
        ...option,
        cautions: [...option.cautions, ...flush, ...hot, judge("limited", { code: "seal-dry-running" }).finding],
      };
    });
}

function sealJudgements({ standsAbrasion }: SealFaces, wear: ReturnType<typeof wearOf>): readonly Judgement[] {
  const cites = SEAL_FACES_CITE;
  if (wear === "none") {
    return [
      judge(standsAbrasion ? "limited" : "fine", { code: standsAbrasion ? "seal-hard-on-clean" : "seal-clean", cites }),
    ];
  }
  if (standsAbrasion) return [judge("fine", { code: "seal-abrasive", cites })];
  return [
    judge(wear === "unstated" ? "unknown" : "out", {
      code: wear === "unstated" ? "wear-unstated" : "seal-carbon-wears",
      cites,
    }),
  ];
}

function optionOf(material: string, judgements: readonly Judgement[], parts: string): MaterialOption {
  const level = worstOf(judgements);
  const of = (...levels: readonly Level[]): readonly Finding[] =>
    judgements.filter((one) => levels.includes(one.level)).map(({ finding }) => finding);
  if (level === "out") return { material, verdict: "not suited", parts: "", reasons: of("out"), cautions: [] };
  return { material, verdict: verdictOf(level), parts, reasons: of("unknown", "fine"), cautions: of("limited") };
}
