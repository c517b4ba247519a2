import type { MaterialFindings } from "../basis/finding-code.ts";
import { amount, type Draft, type Finding } from "../basis/result.ts";
import { CASTINGS, type Casting } from "../tables/materials-cast.ts";
import { corrosionJudgements, kindOf, PH_RANGE } from "./corrosion.ts";
import { type Judgement, judge, LEVELS, type Level, type MaterialVerdict, verdictOf, worstOf } from "./judgement.ts";
import { TIP_SPEED } from "./tip-speed.ts";
import { hardestLeast, type Wear, wearJudgements, wearOf } from "./wear.ts";
import type { WettedDuty } from "./wetted-duty.ts";

/** One line of the answer: a material, what it may serve for in this duty, and why. */
export interface MaterialOption {
  readonly material: string;
  readonly verdict: MaterialVerdict;
  readonly parts: string;
  readonly reasons: readonly Finding[];
  readonly cautions: readonly Finding[];
}

/** Common use first: among metals a duty leaves equal, the earlier is the usual choice. */
const USUAL_ORDER = ["DI", "DI395", "GI", "WCB", "316C", "1B", "1A", "NAB", "CA6NM", "HCWI"];

/** Towards the ends of the pH scale, where iron is not offered, the usual choice is 316 or duplex. */
const PH_END_ORDER = ["316C", "1B", "1A", "DI", "DI395", "GI", "WCB", "NAB", "CA6NM", "HCWI"];

interface Judged {
  readonly casting: Casting;
  readonly corrosion: Level;
  readonly wear: Level;
  readonly judgements: readonly Judgement[];
}

/**
 * The cast metals, best first. Corrosion decides which may serve; among those, where solids are few or soft, the fewer
 * doubts and the more usual come first; where they wear severely (or might), the harder, at the ends of the pH scale
 * after 316 and duplex. More solids therefore never bring a softer metal to the front.
 */
export function metalOptions(duty: WettedDuty): readonly MaterialOption[] {
  const wear = wearOf(duty);
  const judged = CASTINGS.map((casting): Judged => {
    const corrosion = corrosionJudgements(casting, duty);
    const worn = wearJudgements(casting, duty);
    return {
      casting,
      corrosion: worstOf(corrosion),
      wear: worstOf(worn),
      judgements: [...worn, ...corrosion],
    };
  });
  return judged.toSorted(orderFor(wear, duty.pH)).map((one) => optionOf(one, wear));
}

function orderFor(wear: Wear, pH: number): (a: Judged, b: Judged) => number {
  const { least, greatest } = PH_RANGE.iron;
  const isPHEnd = pH < least || pH > greatest;
  const order = isPHEnd ? PH_END_ORDER : USUAL_ORDER;
  const endTier = ({ casting }: Judged): number => (isPHEnd && !["316", "duplex"].includes(kindOf(casting)) ? 1 : 0);
  const usual = ({ casting }: Judged): number => order.indexOf(casting.id);
  if (wear === "severe" || wear === "undecided") {
    return (a, b) =>
      severeTier(a) - severeTier(b) ||
      endTier(a) - endTier(b) ||
      hardestLeast(b.casting) - hardestLeast(a.casting) ||
      usual(a) - usual(b);
  }
  return (a, b) => mildTier(a) - mildTier(b) || usual(a) - usual(b);
}

/** A metal that wear alone rules out (white iron broken by coarse particles) counts as ruled out. */
function tier({ corrosion, wear }: Judged): number {
  return wear === "out" ? LEVELS.indexOf("out") : LEVELS.indexOf(corrosion);
}

/** White iron is no choice for its own sake where its hardness is not needed: it comes after all that may serve. */
function mildTier(one: Judged): number {
  return kindOf(one.casting) === "white iron" ? Math.max(LEVELS.indexOf("unknown"), tier(one)) : tier(one);
}

/** With severe wear, what corrosion allows with care stands beside what it allows freely. */
function severeTier(one: Judged): number {
  return Math.max(LEVELS.indexOf("limited"), tier(one));
}

function optionOf({ casting, judgements }: Judged, wear: Wear): MaterialOption {
  const level = worstOf(judgements);
  const of = (...levels: readonly Level[]): readonly Finding[] =>
    judgements.filter((one) => levels.includes(one.level)).map(({ finding }) => finding);
  if (level === "out") {
    return { material: casting.name, verdict: "not suited", parts: "", reasons: of("out"), cautions: [] };
  }
  return {
    material: casting.name,
    verdict: verdictOf(level),
    parts: partsFor(casting, wear),
    reasons: of("unknown", "fine"),
    cautions: [...of("limited"), ...standingCautions(casting, wear)],
  };
}

/** What a metal serves for, by how hard the solids wear. */
function partsFor(casting: Casting, wear: Wear): string {
  const kind = kindOf(casting);
  const isIron = kind === "iron" || kind === "steel";
  const severe = wear === "severe" || wear === "undecided";
  if (kind === "white iron") {
    if (severe) return "wet end: casing liner, impeller, wear parts";
    return wear === "moderate" ? "wear parts, impeller" : "wear parts";
  }
  if (severe) return isIron ? "outer casing behind a hard liner" : "wet end where white iron cannot serve";
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
        ...(wear === "severe" ? [say({ code: "white-iron-tip-speed", facts: WHITE_IRON_TIPS })] : []),
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
