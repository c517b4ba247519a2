import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import { USUAL_METALS } from "./corrosion.ts";
import { judge } from "./judgement.ts";
import { type MaterialOption, metalOptions } from "./metal-choice.ts";
import { elastomerOptions, rubberLining, sealOptions } from "./soft-parts.ts";
import { type Constituent, checkWettedDuty, missingOf, RULES_OF_THUMB, type WettedDuty } from "./wetted-duty.ts";

/** The materials of a pump for a duty, each list best first. */
export interface MaterialChoice {
  /** Metals for casing, impeller, wear parts and sleeve, and the rubber lining after them. */
  readonly wetEnd: readonly MaterialOption[];
  readonly elastomers: readonly MaterialOption[];
  readonly sealFaces: readonly MaterialOption[];
  readonly dryParts: MaterialOption;
}

/** Chloride above which unlike metals eat each other, kg/m³ (house: brackish water). */
const GALVANIC_CHLORIDE = 1;

/**
 * Pump materials for a duty, best first: metals the water allows and the solids leave whole, elastomers, seal faces.
 * Nothing is guessed: what is not known keeps a material from a verdict that hangs on it.
 * Fails: as `checkWettedDuty`.
 * Warns: cautions of `checkWettedDuty`, on first choices, data to ask for, none offered, chemicals, galvanic pairs,
 * the wetted-parts list.
 * Source: common practice.
 */
export function materialChoice(duty: WettedDuty): Result<MaterialChoice> {
  return andThen(checkWettedDuty(duty), () => {
    const choice: MaterialChoice = {
      wetEnd: [...metalOptions(duty), rubberLining(duty)],
      elastomers: elastomerOptions(duty),
      sealFaces: sealOptions(duty),
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

/** The first that may serve for a part; undefined where none is offered. */
export function firstFor(wetEnd: readonly MaterialOption[], part: WettedPart): MaterialOption | undefined {
  return wetEnd.find(({ verdict, parts }) => verdict.startsWith("suits") && parts.includes(part));
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

function chemicalRemarks(constituent: Constituent): readonly Finding[] {
  const remark = { kind: "check", subject: constituent, cites: RULES_OF_THUMB } as const;
  const metals = USUAL_METALS[constituent];
  return [
    ...(metals === undefined ? [] : [{ ...remark, code: "chemical-usual-metal", facts: { metals } } as const]),
    ...(constituent === "hydrogen sulphide" ? [{ ...remark, code: "hydrogen-sulphide-gas" } as const] : []),
  ];
}

function dutyRemarks(duty: WettedDuty, { wetEnd }: MaterialChoice): readonly Finding[] {
  const missing = missingOf(duty);
  const findings: Finding[] = [...firstByPart(wetEnd)];
  if (missing.length > 0) {
    const facts = { missing: missing.join("; ") };
    findings.push({
      code: "material-data-missing",
      kind: "check",
      subject: "material",
      facts,
      cites: RULES_OF_THUMB,
    });
  }
  if (!wetEnd.some(({ verdict }) => verdict === "suits" || verdict === "suits with care")) {
    findings.push({ code: "no-material-given", kind: "check", subject: "material", cites: RULES_OF_THUMB });
  }
  findings.push(...(duty.makeUp ?? []).flatMap(chemicalRemarks));
  if (duty.chlorides !== null && duty.chlorides > GALVANIC_CHLORIDE) {
    const found = amount("concentration", duty.chlorides);
    findings.push({ code: "galvanic-pairs", kind: "check", subject: "chlorides", found, cites: RULES_OF_THUMB });
  }
  findings.push({ code: "wetted-parts-list", kind: "check", subject: "material", cites: RULES_OF_THUMB });
  return findings;
}
