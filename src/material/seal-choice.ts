import { CELSIUS_ZERO } from "../basis/constants.ts";
import { amount } from "../basis/result.ts";
import { SEAL_FACES, SEAL_FACES_CITE, type SealFaces } from "../tables/seal-faces.ts";
import { type Judgement, judge } from "./judgement.ts";
import { severity } from "./level.ts";
import { type MaterialOption, optionOf } from "./material-option.ts";
import { type Exact, type Standing, spoken, standing, together } from "./standing.ts";
import { type Wear, wearOf } from "./wear.ts";
import type { WettedDuty } from "./wetted-duty.ts";

/** Above this the liquid may flash between the faces. */
const FLASHING = 80 + CELSIUS_ZERO;

/** Face pairs, best first, by solids and chemistry: the worse counts. */
export function sealOptions(duty: WettedDuty): readonly MaterialOption[] {
  const wear = wearOf(duty);
  const hot =
    duty.temperature !== null && duty.temperature > FLASHING
      ? [judge("limited", { code: "seal-may-flash", found: amount("temperature", duty.temperature) }).finding]
      : [];
  return SEAL_FACES.map((faces) => ({ faces, stands: sealStanding(faces, duty) }))
    .toSorted((a, b) => severity(a.stands.worst) - severity(b.stands.worst))
    .map(({ faces, stands }) => {
      const option = optionOf(faces.name, stands, "seal faces");
      if (option.verdict === "not suited") return option;
      const flush = faces.standsAbrasion && wear !== "none" ? [judge("limited", { code: "seal-flush" }).finding] : [];
      const dry = judge("limited", { code: "seal-dry-running" }).finding;
      return { ...option, cautions: [...option.cautions, ...flush, ...hot, dry] };
    });
}

const nothing = (): readonly Judgement[] => [];

/** What a pair of seal faces stands of solids and chemistry. */
export function sealStanding(faces: SealFaces, duty: WettedDuty): Standing {
  const pH = (at: Exact): readonly Judgement[] => acidity(faces, at);
  return together([
    solidsRule(faces, wearOf(duty)),
    standing(faces.column, duty, { pH, heat: nothing, chlorides: nothing, takenAsPlain: [] }),
  ]);
}

function acidity({ free, care, beyond }: SealFaces, { pH }: Exact): readonly Judgement[] {
  const facts = { pH, least: free[0], greatest: free[1] };
  const cites = SEAL_FACES_CITE;
  if (pH >= free[0] && pH <= free[1]) return [];
  if (pH >= care[0] && pH <= care[1]) return [judge("limited", { code: "seal-ph", facts, cites })];
  return [judge(beyond, { code: "seal-ph", facts, cites })];
}

function solidsRule({ standsAbrasion }: SealFaces, wear: Wear): Standing {
  const cites = SEAL_FACES_CITE;
  if (wear === "none") {
    return spoken([
      judge(standsAbrasion ? "limited" : "fine", { code: standsAbrasion ? "seal-hard-on-clean" : "seal-clean", cites }),
    ]);
  }
  if (standsAbrasion) {
    const isKnown = wear !== "unstated";
    return spoken([judge(isKnown ? "fine" : "limited", { code: isKnown ? "seal-abrasive" : "seal-hard", cites })]);
  }
  const wears = spoken([judge("out", { code: "seal-carbon-wears", cites })]);
  return wear === "unstated" ? { ...wears, best: "fine", decides: ["solids"] } : wears;
}
