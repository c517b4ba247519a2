import { andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import type { VerdictState } from "../judgement/verdict.ts";
import type { StandingColumn } from "../tables/constituents.ts";
import { ELASTOMERS } from "../tables/elastomers.ts";
import { SEAL_FACES } from "../tables/seal-faces.ts";
import { metalScreens, oxidiserRule } from "./corrosion.ts";
import { type Judgement, judge, type MaterialVerdict } from "./judgement.ts";
import type { Hardware } from "./line-and-bolts.ts";
import { hardwareStanding, lineOptions } from "./line-and-bolts.ts";
import { isOffered } from "./material-choice.ts";
import { type MaterialOption, optionOf } from "./material-option.ts";
import { castingStanding, hardPartsFor, metalOptions } from "./metal-choice.ts";
import { boltsNamed, elastomersNamed, lineNamed, sealFacesNamed } from "./part-name.ts";
import { sealOptions, sealStanding } from "./seal-choice.ts";
import { elastomerStanding } from "./soft-parts.ts";
import { oneOf, type Standing, spoken, standing, together } from "./standing.ts";
import { checkWettedDuty, type MissingDatum, missingOf, type WettedDuty } from "./wetted-duty.ts";
import { type WettedMetal, wettedMetalNamed } from "./wetted-metal.ts";

/** The wetted parts that a material is stated of. */
export const PART_KINDS = ["casing", "impeller", "seal faces", "elastomer", "bolts", "line"] as const;
export type PartKind = (typeof PART_KINDS)[number];

/** A stated part held against the duty. */
export interface PartJudgement {
  readonly state: VerdictState;
  readonly verdict: MaterialVerdict;
  readonly reasons: readonly Finding[];
  /** Where it stands among the castings; null of other parts. */
  readonly rank: { readonly place: number; readonly of: number } | null;
  /** What suits where it does not, or stands first; null where it is that itself, or nothing is offered. */
  readonly better: string | null;
}

interface Judged {
  readonly stands: Standing;
  readonly ranked: readonly MaterialOption[];
  /** Its own name in that list; empty where it is not among them. */
  readonly own: string;
  readonly matters: readonly MissingDatum[];
}

/** What must be stated for a judgement to rest on nothing assumed. */
const OF_SOFT_PARTS = ["pH", "temperature", "exact make-up and concentration of the liquid"] as const;
const OF_METALS = [...OF_SOFT_PARTS, "chlorides"] as const;
const OF_WORN = [...OF_METALS, "solids by weight"] as const;

/**
 * A stated wetted part against the duty. fail: not suited, whatever the unstated may be. open: what is not stated decides.
 * check: with care, not judged, or suited by an assumed range alone. pass: suits, and what matters is stated.
 * Fails: `name-unknown`; as `checkWettedDuty`.
 * Source: common practice; published corrosion data row by row.
 */
export function judgePart(kind: PartKind, material: string, duty: WettedDuty): Result<PartJudgement> {
  return andThen(checkWettedDuty(duty), () =>
    andThen(judged(kind, material, duty), ({ stands, ranked, own, matters }) => {
      const option = optionOf(material, stands, kind);
      const missing = missingOf(duty).filter((datum) => matters.includes(datum));
      const place = ranked.findIndex((one) => one.material === own);
      const best = ranked.find(isOffered);
      return succeed({
        state: stateOf(stands, missing.length > 0),
        verdict: option.verdict,
        reasons: [...option.reasons, ...option.cautions],
        rank: place < 0 || (kind !== "casing" && kind !== "impeller") ? null : { place: place + 1, of: ranked.length },
        better: best === undefined || best.material === own ? null : best.material,
      });
    }),
  );
}

function stateOf({ worst, best, decides }: Standing, isAssumed: boolean): VerdictState {
  if (worst === "out") return best === "out" ? "fail" : "open";
  if (worst === "unknown") return best !== worst && decides.length > 0 ? "open" : "check";
  return worst === "fine" && !isAssumed ? "pass" : "check";
}

function judged(kind: PartKind, material: string, duty: WettedDuty): Result<Judged> {
  switch (kind) {
    case "casing":
    case "impeller":
      return andThen(wettedMetalNamed(material, kind), (metal) =>
        succeed({
          stands: metalStanding(metal, duty),
          ranked: metalOptions(duty),
          own: metal.is304 ? "" : (metal.casting?.name ?? ""),
          matters: OF_WORN,
        }),
      );
    case "seal faces":
      return andThen(sealFacesNamed(material, kind), (names) => {
        const faces = SEAL_FACES.filter(({ name }) => names.includes(name));
        const stands = oneOf(
          faces.map((one) => sealStanding(one, duty)),
          "what the faces are",
        );
        return succeed({ stands, ranked: sealOptions(duty), own: names[0] ?? "", matters: OF_WORN });
      });
    case "elastomer":
      return andThen(elastomersNamed(material, kind), (names) =>
        succeed({ stands: ofElastomers(names, duty), ranked: [], own: "", matters: OF_SOFT_PARTS }),
      );
    case "bolts":
      return andThen(boltsNamed(material, kind), (hardware) => succeed(ofHardware(hardware, duty, [], OF_METALS)));
    case "line":
      return andThen(lineNamed(material, kind), (line) => {
        if (line.kind === "hose") {
          const stands = ofElastomers(line.elastomers, duty);
          return succeed({ stands, ranked: [], own: "", matters: OF_SOFT_PARTS });
        }
        if (line.kind === "unknown") return succeed(unknownPart(line.name, duty));
        return succeed(ofHardware(line.hardware, duty, lineOptions(duty), OF_METALS));
      });
  }
}

function ofHardware(
  hardware: Hardware,
  duty: WettedDuty,
  ranked: readonly MaterialOption[],
  matters: readonly MissingDatum[],
): Judged {
  return { stands: hardwareStanding(hardware, duty), ranked, own: hardware.name, matters };
}

function ofElastomers(names: readonly string[], duty: WettedDuty): Standing {
  const possible = ELASTOMERS.filter(({ name }) => names.includes(name));
  return oneOf(
    possible.map((one) => elastomerStanding(one, duty)),
    "what the rubber is",
  );
}

function unknownPart(metal: string, duty: WettedDuty): Judged {
  const stands = spoken([judge("unknown", { code: "metal-not-in-table", facts: { metal } })]);
  return { stands, ranked: lineOptions(duty), own: "", matters: OF_METALS };
}

/** Below this pH what is said of 316 is not said of 304. */
const ACID = 4;

function metalStanding(metal: WettedMetal, duty: WettedDuty): Standing {
  const { casting, is304, name } = metal;
  if (casting === null) return spoken([judge("unknown", { code: "metal-not-in-table", facts: { metal: name } })]);
  if (!is304) return castingStanding(casting, duty, hardPartsFor(duty));
  const acid: readonly Judgement[] =
    duty.pH === null || duty.pH < ACID
      ? [judge("unknown", { code: "metal-not-in-table", facts: { metal: name } })]
      : [];
  return together([
    castingStanding(casting, duty, hardPartsFor(duty)),
    standing(casting.id as StandingColumn, duty, metalScreens("304")),
    spoken([...acid, ...oxidiserRule("304", duty.oxidiser)]),
  ]);
}
