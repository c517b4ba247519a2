import type { Citation } from "../basis/citation.ts";
import { outOfRange } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { BOLT_GRADES, type BoltGrade, type BoltGradeName, INCH_BOLTS } from "../tables/bolts.ts";
import { boltAreas, boltTorque, REFERENCE_STRESS, referenceTorque } from "./bolt-torque.ts";
import type { JointMaterial } from "./joint-material.ts";

const inch = unitOf("in").factor;
const ksi = 1000 * unitOf("psi").factor;

export interface BoltAssemblyInput {
  /** Size of the bolts as the tables name it, inches: "3/4". */
  readonly boltSize: string;
  readonly bolts: number;
  /** Number the flange is drilled for. */
  readonly holes: number;
  readonly grade: BoltGradeName;
  readonly flange: JointMaterial;
  /** Least load of all bolts together, N; as `gasketLoad` gives it. */
  readonly neededLoad: number;
  /** Load of all bolts together that crushes the gasket, N. None where left out. */
  readonly crushingLoad?: number;
  readonly nutFactor: number;
  readonly stud: "plain" | "coated";
  /** Wanted stress on the tensile area, Pa. The least that does where left out. */
  readonly targetStress?: number;
}

export interface BoltAssembly {
  /** Stress of a bolt on its tensile area that carries the needed load, Pa. */
  readonly neededStress: number;
  /** Stress taken. */
  readonly stress: number;
  /** Greatest stress the weakest of bolt, flange and gasket allows, Pa. */
  readonly ceiling: number;
  /** Of one bolt, N and N·m. */
  readonly load: number;
  readonly torque: number;
  /** Torque of the reference table at the same load, N·m. */
  readonly referenceTorque: number;
}

export const boltAssemblyCites: readonly [Citation, ...Citation[]] = [
  {
    source: "practice",
    at: "assembly stress: A193 B7 40 to 60 % of yield, SAE grade 5 and ISO 8.8 60 to 70 % of proof, A307 B 20 to 25 ksi; half for ductile-iron flanges; grey iron no more than seats the gasket",
  },
  { source: "practice", at: "rubber sheet gaskets are tightened to 600 to 900 psi, fibre sheet to 15 000 psi at most" },
];
const [CEILING_RULE, CRUSHING_RULE] = boltAssemblyCites as readonly [Citation, Citation];
const SCATTER_RULE: Citation = { source: "practice", at: "a torque wrench scatters bolt load by 30 % either way" };
const REFERENCE_RULE: Citation = { source: "asme-pcc-1", at: "table 1, reference torques" };

/** Part of the assembly stress that ductile-iron flanges stand. */
const DUCTILE_PART = 0.5;

/** Part by which a torque wrench may miss the load, either way. */
const SCATTER = 0.3;

/** Nut factors apart by more than this part do not describe the same studs. */
const REFERENCE_AGREES_WITHIN = 0.25;

/**
 * Stress and torque to take for a bolted joint, what each bolt needs, and the ceiling of the weakest of bolt, flange
 * and gasket; Pa, N and N·m. Without a target: what is needed, raised to the least the grade is assembled to (half in
 * ductile iron, not in grey iron) as far as the gasket stands it.
 * Fails: unknown bolt size; one too large for its grade; bolts unlike the holes; as `boltTorque`; stress past yield.
 * Warns: stress above the ceiling, below the needed. Cautions: scatter, short load, gasket, nut factor, metric grade.
 * Source: common practice; reference torques of ASME PCC-1, table 1.
 */
export function boltAssembly(input: BoltAssemblyInput): Result<BoltAssembly> {
  const { boltSize, bolts, holes, grade, flange, neededLoad, crushingLoad, nutFactor, stud, targetStress } = input;
  const areas = boltAreas(boltSize);
  const atReference = referenceTorque(boltSize, REFERENCE_STRESS, stud);
  const row = INCH_BOLTS.find(([name]) => name === boltSize);
  if (areas === undefined || atReference === undefined || row === undefined) {
    const suggestions = INCH_BOLTS.map(([name]) => name);
    return fail([{ code: "name-unknown", kind: "error", subject: "bolt size", given: boltSize, suggestions }]);
  }
  if (bolts !== holes || !Number.isInteger(bolts) || bolts < 1) {
    const facts = { bolts, holes };
    return fail([{ code: "bolts-differ", kind: "error", subject: "bolts", facts }]);
  }
  const ofGrade: BoltGrade = BOLT_GRADES[grade];
  const [, , inches] = row;
  if (ofGrade.largest !== undefined && inches > ofGrade.largest)
    return fail([outOfRange(`bolt diameter of ${grade}`, "size", inches * inch, "at most", ofGrade.largest * inch)]);
  const tensile = bolts * areas.tensile;
  const neededStress = neededLoad / tensile;
  const part = flange === "ductile iron" ? DUCTILE_PART : 1;
  const ofBolt = ofGrade.greatest * ksi * part;
  const ofFlange = flange === "grey iron" ? Math.min(neededStress, ofBolt) : ofBolt;
  const ofGasket = crushingLoad === undefined ? Number.POSITIVE_INFINITY : crushingLoad / tensile;
  const ceiling = Math.min(ofFlange, ofGasket);
  const usual = flange === "grey iron" ? neededStress : ofGrade.least * ksi * part;
  const stress = targetStress ?? Math.max(neededStress, Math.min(usual, ofGasket));
  const load = stress * areas.tensile;
  return andThen(boltTorque({ nutFactor, diameter: inches * inch, load }), (torque) => {
    if (stress > ofGrade.yields * ksi) return fail([aboveYield(stress, ofGrade.yields * ksi, grade)]);
    const reference = referenceTorque(boltSize, load / areas.root, stud) as number;
    return succeed({ neededStress, stress, ceiling, load, torque, referenceTorque: reference }, [
      ...stressRemarks(stress, neededStress, ceiling, ofGasket < ofFlange ? "gasket" : flange),
      ...shortfall(stress, neededStress),
      ...(targetStress === undefined && ofGasket < usual ? [heldByGasket(stress, usual)] : []),
      ...factorRemarks(torque, reference),
      ...(grade === "ISO 8.8" ? [metricGrade(grade)] : []),
      { code: "bolt-torque-scatter", kind: "check", subject: "torque", cites: SCATTER_RULE },
    ]);
  });
}

/** A stress equal to a limit but for rounding has not passed it. */
const ROUNDING = 1e-9;

function aboveYield(found: number, limit: number, grade: BoltGradeName): Finding {
  return {
    code: "bolt-stress-above-yield",
    kind: "error",
    subject: "bolt stress",
    found: amount("stress", found),
    limit: { quantity: "stress", value: limit, side: "at most" },
    facts: { grade },
  };
}

function stressRemarks(
  stress: number,
  needed: number,
  ceiling: number,
  weakest: JointMaterial | "gasket",
): readonly Finding[] {
  const found = amount("stress", stress);
  const findings: Finding[] = [];
  if (stress > ceiling * (1 + ROUNDING)) {
    findings.push({
      code: "bolt-stress-above-ceiling",
      kind: "limit",
      subject: "bolt stress",
      found,
      limit: { quantity: "stress", value: ceiling, side: "at most" },
      facts: { weakest },
      cites: weakest === "gasket" ? CRUSHING_RULE : CEILING_RULE,
    });
  }
  if (stress < needed * (1 - ROUNDING)) {
    findings.push({
      code: "bolt-stress-below-needed",
      kind: "limit",
      subject: "bolt stress",
      found,
      limit: { quantity: "stress", value: needed, side: "at least" },
      cites: { source: "asme-viii-1", at: "mandatory appendix 2, bolt loads" },
    });
  }
  return findings;
}

/** Enough by the book, but not where the wrench comes out low. */
function shortfall(stress: number, needed: number): readonly Finding[] {
  const low = stress * (1 - SCATTER);
  if (stress < needed * (1 - ROUNDING) || low >= needed) return [];
  return [
    {
      code: "bolt-load-may-fall-short",
      kind: "check",
      subject: "bolt stress",
      found: amount("stress", low),
      limit: { quantity: "stress", value: needed, side: "at least" },
      cites: SCATTER_RULE,
    },
  ];
}

function heldByGasket(stress: number, usual: number): Finding {
  return {
    code: "bolt-stress-held-by-gasket",
    kind: "check",
    subject: "bolt stress",
    found: amount("stress", stress),
    limit: { quantity: "stress", value: usual, side: "at least" },
    cites: CRUSHING_RULE,
  };
}

function metricGrade(grade: BoltGradeName): Finding {
  return { code: "metric-grade-in-inch-bolts", kind: "check", subject: "bolt grade", given: grade };
}

function factorRemarks(torque: number, reference: number): readonly Finding[] {
  if (reference === 0 || Math.abs(torque / reference - 1) <= REFERENCE_AGREES_WITHIN) return [];
  return [
    {
      code: "nut-factor-far-from-reference",
      kind: "check",
      subject: "nut factor",
      found: amount("torque", torque),
      facts: { reference: amount("torque", reference) },
      cites: REFERENCE_RULE,
    },
  ];
}
