import type { MaterialFindings } from "../basis/finding-code.ts";
import { amount, type Draft, type Finding } from "../basis/result.ts";
import type { StandingColumn } from "../tables/constituents.ts";
import { CASTINGS, type Casting } from "../tables/materials-cast.ts";
import { kindOf, metalScreens, oxidiserRule } from "./corrosion.ts";
import { judge } from "./judgement.ts";
import { severity } from "./level.ts";
import { type MaterialOption, optionOf } from "./material-option.ts";
import { type Standing, spoken, standing, together } from "./standing.ts";
import { TIP_SPEED } from "./tip-speed.ts";
import { type HardParts, hardestLeast, type Wear, WHITE_IRON, wearJudgements, wearOf } from "./wear.ts";
import type { WettedDuty } from "./wetted-duty.ts";

/** Among metals that stand a duty alike: irons first, then by price (common practice); white iron where it is needed. */
const USUAL_ORDER = ["DI", "DI395", "GI", "WCB", "CA6NM", "316C", "1B", "1A", "NAB", "HCWI"];

interface Judged {
  readonly casting: Casting;
  readonly stands: Standing;
}

/** What a casting stands of a duty: corrosion by what it may be, then wear; the worse counts. */
export function castingStanding(casting: Casting, duty: WettedDuty, hardParts: HardParts): Standing {
  const kind = kindOf(casting);
  return together([
    spoken(wearJudgements(casting, duty, hardParts)),
    standing(casting.id as StandingColumn, duty, metalScreens(kind)),
    spoken(oxidiserRule(kind, duty.oxidiser)),
  ]);
}

/** Whether wear parts of hardened iron may be advised: only where white iron itself suits, with care at worst. */
export function hardPartsFor(duty: WettedDuty): HardParts {
  const whiteIron = CASTINGS.find(({ id }) => id === WHITE_IRON) as Casting;
  const { worst } = castingStanding(whiteIron, duty, "the same metal");
  return worst === "fine" || worst === "limited" ? "white iron" : "the same metal";
}

/**
 * The cast metals, best first: by the level at the worst that the duty may mean, so that nothing rises for an input left
 * out. Not judged but perhaps ruled out stands with what is ruled out, by how many liquids rule it out. Among equals the
 * harder comes first where solids wear severely, else the fewer cautions, then the more usual.
 */
export function metalOptions(duty: WettedDuty): readonly MaterialOption[] {
  const wear = wearOf(duty);
  const hardParts = hardPartsFor(duty);
  const judged = CASTINGS.map((casting): Judged => ({ casting, stands: castingStanding(casting, duty, hardParts) }));
  return judged.toSorted(orderFor(wear)).map(({ casting, stands }) => {
    const option = optionOf(casting.name, stands, partsFor(casting, wear));
    if (option.verdict === "not suited") return option;
    return { ...option, cautions: [...option.cautions, ...standingCautions(casting, wear)] };
  });
}

/** Between with care and not judged. */
const AFTER_CARE = 1.5;

function orderFor(wear: Wear): (a: Judged, b: Judged) => number {
  const isSevere = wear === "severe";
  const cautions = ({ stands }: Judged): number => stands.judgements.filter(({ level }) => level === "limited").length;
  const usual = ({ casting }: Judged): number => USUAL_ORDER.indexOf(casting.id);
  // White iron is no choice for its own sake where its hardness is not needed: it comes after all that may serve.
  const tier = ({ casting, stands }: Judged): number => {
    const level = severity(stands.worst);
    return !isSevere && casting.id === WHITE_IRON && level < severity("unknown") ? AFTER_CARE : level;
  };
  const isRuledOut = ({ stands }: Judged): number => Number(stands.best === "out");
  return (a, b) =>
    tier(a) - tier(b) ||
    isRuledOut(a) - isRuledOut(b) ||
    a.stands.ruledOutBy - b.stands.ruledOutBy ||
    (isSevere ? hardestLeast(b.casting) - hardestLeast(a.casting) : cautions(a) - cautions(b)) ||
    usual(a) - usual(b);
}

/** What a metal serves for, by how hard the solids wear. */
function partsFor(casting: Casting, wear: Wear): string {
  const kind = kindOf(casting);
  const isIron = kind === "iron" || kind === "steel";
  if (kind === "white iron") {
    if (wear === "severe") return "wet end: casing liner, impeller, wear parts";
    return wear === "moderate" ? "wear parts, impeller" : "wear parts";
  }
  if (wear === "severe") return isIron ? "outer casing behind a hard liner" : "wet end where white iron cannot serve";
  const body = wear === "moderate" ? "casing, impeller" : "casing, impeller, wear parts";
  return isIron ? body : `${body}, shaft sleeve`;
}

const WHITE_IRON_TIPS = {
  least: amount("velocity", TIP_SPEED.whiteIron.least),
  greatest: amount("velocity", TIP_SPEED.whiteIron.greatest),
};

/** What must be said of a material wherever it is chosen. */
function standingCautions(casting: Casting, wear: Wear): readonly Finding[] {
  const say = (draft: Draft<keyof MaterialFindings>): Finding => judge("limited", draft).finding;
  switch (kindOf(casting)) {
    case "white iron":
      return [
        say({ code: "white-iron-brittle" }),
        say(
          wear === "severe"
            ? { code: "white-iron-tip-speed", facts: WHITE_IRON_TIPS }
            : { code: "wear-hardness-not-needed" },
        ),
      ];
    case "iron":
      return casting.id === "GI" ? [say({ code: "grey-iron-brittle" })] : [];
    case "bronze":
      return [say({ code: "bronze-velocity" })];
    case "duplex":
      return [say({ code: "magnet-test", found: amount("ratio", casting.permeability.greatest ?? 0) })];
    case "316":
      return [say({ code: "stainless-stagnant" })];
    default:
      return [];
  }
}
