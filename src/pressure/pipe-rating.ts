import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import type { Pipe } from "../pipework/pipe.ts";
import { HOSE_RULES, type PolyethyleneGrade, type RatingRule } from "../pipework/pipe-make.ts";
import type { Bracket } from "./pipe-bracket.ts";
import { thicknessClassRating } from "./pipe-rating-of-iron.ts";
import { type SteelPipeFacts, steelRating } from "./pipe-rating-of-steel.ts";
import { temperatureFactor } from "./pipe-temperature.ts";
import { isPipeline } from "./steel-pipe-pressure.ts";
import { USUAL_RATINGS, usualRating } from "./usual-rating.ts";

const psi = unitOf("psi").factor;
const megapascal = unitOf("MPa").factor;

export interface PipeRatingInput extends SteelPipeFacts {
  /** Working pressure the maker states, Pa: of hose at 23 °C. */
  readonly statedRating: number | null;
}

export interface PipeRating extends Bracket {
  /** What pressure and surge together may reach, Pa: by a surge of every stop, by a rare one. */
  readonly withSurge: number;
  readonly withRareSurge: number;
  /** Standard that rates the pipe, or the maker. */
  readonly by: string;
}

export const pipeRatingMethod = {
  cites: [
    { source: "asme-b31.3", at: "304.1.2, internal pressure; 302.2.4, rare variations" },
    { source: "asme-b31.4", at: "403.2.1, and 1.1 times it with surge", unverified: true },
    { source: "awwa-m55", at: "pressure class and surge allowances of polyethylene" },
    { source: "iso-4427", at: "PN of PE 80 and PE 100; annex A, temperature", unverified: true },
    { source: "astm-d1785", at: "appendix, pressure ratings of PVC 1120" },
    { source: "awwa-c900", at: "pressure class; short-term rating of 1.6 times it", unverified: true },
    { source: "en-iso-1452", at: "PN; annex A, temperature", unverified: true },
    { source: "awwa-c150", at: "pressure and thickness classes, surge of 100 psi", unverified: true },
    { source: "en-545", at: "PFA, and 1.2 PFA with surge", unverified: true },
    USUAL_RATINGS,
    { source: "en-iso-8029", at: "lay-flat hose, working pressure at 23 and 55 °C" },
  ],
  inputs: {
    temperature: { name: "temperature", quantity: "temperature", above: 0 },
    statedRating: { name: "stated rating", quantity: "gaugePressure", above: 0, atMost: 1e8 },
    allowance: { name: "corrosion allowance", symbol: "c", quantity: "size", atLeast: 0, atMost: 0.05 },
  },
} as const satisfies Method<"temperature" | "statedRating" | "allowance">;

/** The work that rates a pipe by its rule; nothing where its maker does, or a standard that is not cited here. */
export function ratingCitation(rule: RatingRule | undefined): Citation | undefined {
  const source = rule === undefined ? undefined : RATED_BY[rule];
  return pipeRatingMethod.cites.find((cites) => cites.source === source);
}

const RATED_BY: Readonly<Partial<Record<RatingRule, Citation["source"]>>> = {
  "ASME B31.3": "asme-b31.3",
  "ASTM F714": "awwa-m55",
  "ISO 4427": "iso-4427",
  "ASTM D1785": "astm-d1785",
  "AWWA C900": "awwa-c900",
  "EN ISO 1452": "en-iso-1452",
  "AWWA C151 class": "awwa-c150",
  "AWWA C151 thickness": "awwa-c150",
  "EN 545": "en-545",
  "lay-flat hose": "en-iso-8029",
};

/** Design stress of polyethylene on water, Pa: of inch pipe HDS, of ISO 4427 MRS over the factor C of 1.25. */
const POLYETHYLENE_STRESS: Readonly<Record<PolyethyleneGrade, number>> = {
  PE4710: 1000 * psi,
  PE3608: 800 * psi,
  PE3408: 800 * psi,
  PE100: (10 / 1.25) * megapascal,
  PE80: (8 / 1.25) * megapascal,
};
/** Hydrostatic design stress of PVC 1120, Pa. */
const PVC_STRESS = 2000 * psi;

/** What pressure with surge may reach over the rating, for a surge of every stop and for a rare one. Others: the rating. */
const SURGE_FACTORS: Readonly<Partial<Record<RatingRule, readonly [every: number, rare: number]>>> = {
  "ASTM F714": [1.5, 2],
  "ISO 4427": [1.5, 1.5],
  "AWWA C900": [1, 1.6],
  "EN 545": [1.2, 1.2],
  "ASME B31.3": [1, 1.33],
  "ASME B31.4": [1.1, 1.1],
};
/** A C151 class holds this much surge besides, Pa. */
const IRON_SURGE = 100 * psi;

/**
 * Working pressure of a pipe or hose at its wall's temperature, Pa, and what it may reach with surge. What is not stated
 * (grade, seam, corrosion) is taken at both ends; a stated rating caps that of the standard, and takes the place of what is usual
 * of hose and quick couplings, which no standard rates.
 * Formula: PE 2 σ F/(DR − 1); PVC by schedule 2 σ F t/(D − t); steel 2 S E t/(D − 0.8 t); else the printed class × F
 * Fails: pipe-rating-not-held without a standard, a usual and a stated rating; pipe-not-for-pressure of concrete; pipe-specification-mismatch; as `temperatureFactor`
 * and `steelPipePressure`; inputs outside the method's bounds.
 * Warns: pipe-rating-assumed (assumed); as `temperatureFactor`.
 * Source: ASME B31.3; AWWA M55, C900, C150; ISO 4427; ASTM D1785, D2241; EN ISO 1452; EN 545; EN ISO 8029.
 */
export function pipeRating(input: PipeRatingInput): Result<PipeRating> {
  const { pipe, temperature, statedRating, allowance } = input;
  const checked = checkInputs(pipeRatingMethod, {
    temperature,
    statedRating: statedRating ?? 1,
    allowance: allowance ?? 0,
  });
  if (!checked.ok) return checked;
  const { rule } = pipe.make ?? {};
  if (input.specification !== null && rule !== "ASME B31.3" && rule !== "EN 13480-3") {
    return fail([mismatch(pipe, input.specification)]);
  }
  if (rule !== undefined && (HOSE_RULES.has(rule) || rule === "quick coupling")) {
    const usual = usualRating(rule, pipe, temperature, statedRating);
    if (usual === undefined) return fail([notHeld(pipe)]);
    return andThen(usual, (bracket) => {
      const by = statedRating === null ? "common practice" : "maker";
      return succeed(
        rated(bracket, rule, by),
        bracket.assumed === "" ? [] : [taken(pipe, bracket.assumed, USUAL_RATINGS)],
      );
    });
  }
  const own = rule === undefined ? undefined : ownRating(rule, input);
  if (own === undefined) {
    if (statedRating === null) return fail([notHeld(pipe)]);
    return succeed(rated({ careful: statedRating, atBest: statedRating, assumed: "" }, undefined, "maker"));
  }
  // A pipeline is of the pipe of its specification; the standard of the line is another.
  const by = input.specification !== null && isPipeline(input.specification) ? "ASME B31.4" : rule;
  return andThen(own, (bracket) => {
    const isCapped = statedRating !== null && statedRating < bracket.careful;
    const capped = isCapped ? { careful: statedRating, atBest: statedRating, assumed: "" } : bracket;
    const atBest = Math.min(bracket.atBest, statedRating ?? bracket.atBest);
    const assumed = atBest > capped.careful ? bracket.assumed : "";
    return succeed(
      rated({ ...capped, atBest, assumed }, by, by ?? "maker"),
      assumed === "" ? [] : [taken(pipe, assumed)],
    );
  });
}

/** By the standard of the pipe; undefined for hose, which has none. */
function ownRating(rule: RatingRule, input: PipeRatingInput): Result<Bracket> | undefined {
  const { pipe, temperature } = input;
  const { make, outsideDiameter } = pipe;
  const { grade, dimensionRatio, leastWall, printedRating } = make ?? {};
  const derated = (of: Omit<Bracket, "assumed"> & { readonly assumed?: string }): Result<Bracket> =>
    andThen(temperatureFactor(rule, temperature), (factor) =>
      succeed({ careful: of.careful * factor.careful, atBest: of.atBest * factor.atBest, assumed: of.assumed ?? "" }),
    );
  switch (rule) {
    case "ASTM F714":
    case "ISO 4427": {
      if (dimensionRatio === undefined) return undefined;
      const [least, best] = rule === "ISO 4427" ? (["PE80", "PE100"] as const) : (["PE3608", "PE4710"] as const);
      const of = (resin: PolyethyleneGrade): number => (2 * POLYETHYLENE_STRESS[resin]) / (dimensionRatio - 1);
      const assumed = grade === undefined ? `grade ${least}` : "";
      return derated({ careful: of(grade ?? least), atBest: of(grade ?? best), assumed });
    }
    case "ASTM D1785": {
      if (leastWall === undefined || outsideDiameter === undefined) return undefined;
      const pressure = (2 * PVC_STRESS * leastWall) / (outsideDiameter - leastWall);
      return derated({ careful: pressure, atBest: pressure });
    }
    case "AWWA C151 thickness":
      return thicknessClassRating(pipe);
    case "ASME B31.3":
    case "ASME B31.4":
    case "EN 13480-3":
      return steelRating(rule === "EN 13480-3" ? rule : "ASME B31.3", input);
    default:
      return printedRating === undefined ? undefined : derated({ careful: printedRating, atBest: printedRating });
  }
}

function rated(bracket: Bracket, rule: RatingRule | undefined, by: string): PipeRating {
  const { careful } = bracket;
  if (rule === "AWWA C151 class" || rule === "AWWA C151 thickness") {
    return { ...bracket, withSurge: careful + IRON_SURGE, withRareSurge: careful + IRON_SURGE, by };
  }
  const [every, rare] = (rule && SURGE_FACTORS[rule]) ?? [1, 1];
  return { ...bracket, withSurge: every * careful, withRareSurge: rare * careful, by };
}

function notHeld({ name, make }: Pipe): Finding {
  const code = make?.material === "concrete" ? "pipe-not-for-pressure" : "pipe-rating-not-held";
  return { code, kind: "error", subject: "pipe", given: name };
}

function mismatch({ name }: Pipe, specification: string): Finding {
  const facts = { specification };
  return { code: "pipe-specification-mismatch", kind: "error", subject: "specification", given: name, facts };
}

const BRACKET_CHOICE: Citation = {
  source: "house",
  at: "what is not stated of a pipe is taken at its lower and at its upper usual value; the lower decides",
};

function taken({ name }: Pipe, assumed: string, cites: Citation = BRACKET_CHOICE): Finding {
  const facts = { assumed };
  return { code: "pipe-rating-assumed", kind: "assumed", subject: "pipe", given: name, facts, cites };
}
