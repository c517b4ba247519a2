import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import type { Constituent } from "./constituent.ts";
import { judge, RULES_OF_THUMB } from "./judgement.ts";
import { boltOptions, lineOptions } from "./line-and-bolts.ts";
import type { MaterialOption } from "./material-option.ts";
import { metalOptions } from "./metal-choice.ts";
import { sealOptions } from "./seal-choice.ts";
import { elastomerOptions, rubberLining } from "./soft-parts.ts";
import { meaningsOf } from "./standing.ts";
import { checkWettedDuty, missingOf, type WettedDuty } from "./wetted-duty.ts";

/** The materials of a pump for a duty, each list best first. */
export interface MaterialChoice {
  /** Metals for casing, impeller, wear parts and sleeve, and the rubber lining after them. */
  readonly wetEnd: readonly MaterialOption[];
  readonly elastomers: readonly MaterialOption[];
  readonly sealFaces: readonly MaterialOption[];
  readonly bolts: readonly MaterialOption[];
  readonly lines: readonly MaterialOption[];
  readonly dryParts: MaterialOption;
}

/** Chloride above which dissimilar metals corrode each other, kg/m³ (house: brackish water). */
const GALVANIC_CHLORIDE = 1;

/**
 * Pump materials for a duty, best first: metals the liquid allows and the solids leave whole, elastomers, seal faces,
 * bolts, lines. What is not known is taken as the worst it may be, and nothing that hangs on it is offered.
 * Fails: as `checkWettedDuty`.
 * Warns: dangers of a named liquid; as `checkWettedDuty`; what a name is taken as, and values outside it; first choices;
 * data to ask for; none offered; galvanic pairs; the wetted-parts list.
 * Source: common practice; published corrosion data row by row.
 */
export function materialChoice(duty: WettedDuty): Result<MaterialChoice> {
  return andThen(checkWettedDuty(duty), () => {
    const choice: MaterialChoice = {
      wetEnd: [...metalOptions(duty), rubberLining(duty)],
      elastomers: elastomerOptions(duty),
      sealFaces: sealOptions(duty),
      bolts: boltOptions(duty),
      lines: lineOptions(duty),
      dryParts: DRY_PARTS,
    };
    return succeed(choice, dutyRemarks(duty, choice));
  });
}

const DRY_PARTS: MaterialOption = {
  material: "standard material",
  verdict: "left standard",
  parts: "bearing frame, base, coupling, guards, driver",
  reasons: [judge("fine", { code: "dry-parts" }).finding],
  cautions: [judge("limited", { code: "dry-parts-spray" }).finding],
};

/** Whether a material is offered: only what suits, freely or with care. */
export function isOffered({ verdict }: MaterialOption): boolean {
  return verdict === "suits" || verdict === "suits with care";
}

/** The first that may serve for a part; undefined where none is offered. */
export function firstFor(wetEnd: readonly MaterialOption[], part: WettedPart): MaterialOption | undefined {
  return wetEnd.find((option) => isOffered(option) && option.parts.includes(part));
}

const PARTS = ["casing", "impeller", "wear parts", "shaft sleeve"] as const;
type WettedPart = (typeof PARTS)[number];

/** The first choice of each part; a part that none is offered for is left out. */
function firstByPart(wetEnd: readonly MaterialOption[]): readonly Finding[] {
  const choices = PARTS.flatMap((part) => {
    const first = firstFor(wetEnd, part);
    return first === undefined ? [] : [`${part} ${first.material}`];
  });
  if (choices.length === 0) return [];
  const facts = { choices: choices.join("; ") };
  return [{ code: "first-by-part", kind: "check", subject: "material", facts, cites: RULES_OF_THUMB }];
}

/** Every row that a duty names, each once. */
export function rowsNamed(duty: WettedDuty): readonly Constituent[] {
  return [...new Set((duty.makeUp?.named ?? []).flatMap((one) => meaningsOf(one, duty)))];
}

/** What a name is taken as, what it does to people, and what was stated outside it. */
function nameRemarks(row: Constituent, duty: WettedDuty): readonly Finding[] {
  const { name: subject, cites } = row;
  const { pH, chlorides, temperature } = duty;
  const facts = {
    pH: row.pH[0] === row.pH[1] ? `${row.pH[0]}` : `${row.pH[0]} to ${row.pH[1]}`,
    chlorides: amount("concentration", row.chlorides[1]),
    hottest: amount("temperature", row.hottest),
    governs: row.governs,
    conditions: row.conditions,
    betterMetal: row.betterMetal,
  };
  const outside: readonly string[] = row.isAdded
    ? []
    : [
        ...(pH !== null && (pH < row.pH[0] || pH > row.pH[1]) ? [`pH ${pH}`] : []),
        ...(chlorides !== null && (chlorides < row.chlorides[0] || chlorides > row.chlorides[1]) ? ["chloride"] : []),
        ...(temperature !== null && temperature > row.hottest ? ["temperature"] : []),
      ];
  const isTaken = !row.isAdded && (pH === null || chlorides === null || temperature === null);
  return [
    ...dangerOf(row),
    ...(outside.length > 0
      ? [
          {
            code: "constituent-outside",
            kind: "check",
            subject,
            facts: { ...facts, outside: outside.join(" and ") },
            cites,
          } as const,
        ]
      : []),
    { code: "constituent-taken-as", kind: isTaken ? "assumed" : "check", subject, facts, cites } as const,
  ];
}

function dangerOf({ name: subject, danger, cites }: Constituent): readonly Finding[] {
  if (danger === "") return [];
  const gas: readonly Finding[] = /H2S/.test(danger)
    ? [{ code: "hydrogen-sulphide-gas", kind: "safety", subject, cites: RULES_OF_THUMB }]
    : [];
  return [{ code: "constituent-danger", kind: "safety", subject, facts: { danger }, cites }, ...gas];
}

function dutyRemarks(duty: WettedDuty, { wetEnd }: MaterialChoice): readonly Finding[] {
  const missing = missingOf(duty);
  const findings: Finding[] = [...rowsNamed(duty).flatMap((row) => nameRemarks(row, duty)), ...firstByPart(wetEnd)];
  if (missing.length > 0) {
    const facts = { missing: missing.join("; ") };
    findings.push({ code: "material-data-missing", kind: "check", subject: "material", facts, cites: RULES_OF_THUMB });
  }
  if (!wetEnd.some(isOffered)) {
    const facts = { missing: missing.length === 0 ? "" : missing.join(", ") };
    findings.push({ code: "no-material-given", kind: "check", subject: "material", facts, cites: RULES_OF_THUMB });
  }
  if (duty.chlorides !== null && duty.chlorides > GALVANIC_CHLORIDE) {
    const found = amount("concentration", duty.chlorides);
    findings.push({ code: "galvanic-pairs", kind: "check", subject: "chlorides", found, cites: RULES_OF_THUMB });
  }
  findings.push({ code: "wetted-parts-list", kind: "check", subject: "material", cites: RULES_OF_THUMB });
  return findings;
}
