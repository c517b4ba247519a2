import { CELSIUS_ZERO } from "../basis/constants.ts";
import { amount, type Details } from "../basis/result.ts";
import { ELASTOMERS, ELASTOMERS_CITE, type Elastomer, type Standing as Stands } from "../tables/elastomers.ts";
import { type Judgement, judge } from "./judgement.ts";
import { type Level, severity } from "./level.ts";
import { type MaterialOption, optionOf } from "./material-option.ts";
import { type Exact, overHeat, type Screens, type Standing, spoken, standing, together } from "./standing.ts";
import { TIP_SPEED } from "./tip-speed.ts";
import type { WettedDuty } from "./wetted-duty.ts";

const celsius = (reading: number): number => reading + CELSIUS_ZERO;

/** Rubber linings of slurry pumps: fine round particles, cool, no oil (common practice). */
const LINING = { coarsest: 0.006, cool: celsius(65), hottest: celsius(70) };

const RUBBER_TIPS = { quantity: "velocity", value: TIP_SPEED.rubber, side: "below" } as const;

export const RUBBER_LINING = "natural rubber lining";

/** A lining of natural rubber for the wet end. */
export function rubberLining(duty: WettedDuty): MaterialOption {
  const option = optionOf(RUBBER_LINING, liningStanding(duty), "lining of casing, impeller and suction cover");
  if (option.verdict === "not suited") return option;
  return {
    ...option,
    cautions: [...option.cautions, judge("limited", { code: "lining-tip-speed", limit: RUBBER_TIPS }).finding],
  };
}

/** What a lining of natural rubber stands: the liquid, its heat, and the size of the particles. */
export function liningStanding(duty: WettedDuty): Standing {
  return together([
    overHeat(duty, liningTemperature),
    spoken([sizeRule(duty)]),
    standing("natural rubber", duty, softScreens("ask", "ask")),
    spoken(oilRule(duty, false)),
  ]);
}

function sizeRule({ particleSize, solids }: WettedDuty): Judgement {
  const coarsest = amount("size", LINING.coarsest);
  if (solids === 0) return judge("fine", { code: "wear-none" });
  if (particleSize === null) return judge("unknown", { code: "lining-size-missing", found: coarsest });
  const found = amount("size", particleSize);
  if (particleSize < LINING.coarsest) return judge("fine", { code: "lining-size", found });
  return judge("out", { code: "lining-too-coarse", found, limit: { ...coarsest, side: "below" } });
}

function liningTemperature(temperature: number): readonly Judgement[] {
  const at = (limit: number): Details => ({
    found: amount("temperature", temperature),
    limit: { quantity: "temperature", value: limit, side: "at most" },
  });
  if (temperature > LINING.hottest) return [judge("out", { code: "elastomer-too-hot", ...at(LINING.hottest) })];
  return temperature > LINING.cool ? [judge("limited", { code: "elastomer-near-limit", ...at(LINING.cool) })] : [];
}

/** O-rings, diaphragms, hose and bellows; fewest doubts first, in the order of the table among equals. */
export function elastomerOptions(duty: WettedDuty): readonly MaterialOption[] {
  return ELASTOMERS.map((elastomer) => ({ elastomer, stands: elastomerStanding(elastomer, duty) }))
    .toSorted((a, b) => severity(a.stands.worst) - severity(b.stands.worst))
    .map(({ elastomer, stands }) => {
      const option = optionOf(elastomer.name, stands, "elastomers: O-rings, gaskets, diaphragms, hose, bellows");
      const facts = { good: elastomer.good, not: elastomer.not };
      const about = judge("fine", { code: "elastomer-good-and-not", facts, cites: ELASTOMERS_CITE }).finding;
      return { ...option, reasons: [...option.reasons, about] };
    });
}

/** What an elastomer stands: its heat, the liquid by name or pH, oil. */
export function elastomerStanding(elastomer: Elastomer, duty: WettedDuty): Standing {
  const { strongAcid, strongAlkali, standsOil, column } = elastomer;
  return together([
    overHeat(duty, (temperature) => elastomerTemperature(elastomer, temperature)),
    standing(column, duty, softScreens(strongAcid, strongAlkali)),
    spoken(oilRule(duty, standsOil)),
  ]);
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

/** Oil swells it: where nothing says what is in the liquid, it is not ruled out. A named liquid speaks by its row. */
function oilRule({ makeUp }: WettedDuty, standsOil: boolean): readonly Judgement[] {
  return standsOil || makeUp !== null ? [] : [judge("limited", { code: "oil-not-ruled-out" })];
}

const nothing = (): readonly Judgement[] => [];

function softScreens(acid: Stands, alkali: Stands): Screens {
  return { pH: (at) => strengthRule(at, acid, alkali), heat: nothing, chlorides: nothing, takenAsPlain: [] };
}

/** pH below and above which acid and alkali are strong to elastomers. */
const STRONG = { acid: 4, alkali: 11 } as const;

function strengthRule({ pH }: Exact, acid: Stands, alkali: Stands): readonly Judgement[] {
  if (pH >= STRONG.acid && pH <= STRONG.alkali) return [];
  const levels = { stands: "fine", ask: "unknown", not: "out" } as const;
  const isAcid = pH < STRONG.acid;
  const level: Level = levels[isAcid ? acid : alkali];
  if (level === "fine") return [];
  return [judge(level, { code: isAcid ? "elastomer-acid" : "elastomer-alkali", facts: { pH } })];
}
