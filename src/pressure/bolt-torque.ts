import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { BOLT_GRADES, type BoltGradeName, INCH_BOLTS, REFERENCE_TORQUES } from "../tables/bolts.ts";

const inch = unitOf("in").factor;
const ksi = 1000 * unitOf("psi").factor;
const footPound = unitOf("lbf·ft").factor;

/** Root stress of the reference torques. */
const REFERENCE_STRESS = 50 * ksi;

export interface BoltTorqueInput {
  /** K; about 0.16 to 0.20 lubricated, 0.20 to 0.25 as received. */
  readonly nutFactor: number;
  /** Nominal, m. */
  readonly diameter: number;
  /** Of one bolt, N. */
  readonly load: number;
}

export const boltTorqueMethod = {
  title: "Tightening torque of a bolt",
  cites: [{ source: "asme-pcc-1", at: "torque T = K D F" }],
  inputs: {
    nutFactor: { name: "nut factor", symbol: "K", quantity: "ratio", atLeast: 0.08, atMost: 0.4 },
    diameter: { name: "bolt diameter", symbol: "D", quantity: "size", above: 0 },
    load: { name: "bolt load", symbol: "F", quantity: "force", atLeast: 0 },
  },
} as const satisfies Method<keyof BoltTorqueInput>;

/** Torque of one bolt, N·m: T = K D F. A torque wrench scatters the load by some 30 % either way. */
export function boltTorque(input: BoltTorqueInput): Result<number> {
  return andThen(checkInputs(boltTorqueMethod, input), () => succeed(input.nutFactor * input.diameter * input.load));
}

/** Tensile stress area and root area of an inch bolt of the table, m². */
export function boltAreas(size: string): { readonly tensile: number; readonly root: number } | undefined {
  const row = INCH_BOLTS.find(([name]) => name === size);
  return row === undefined ? undefined : { tensile: row[4] * inch ** 2, root: row[5] * inch ** 2 };
}

/** Torque of the reference table at a root stress in Pa, N·m; nothing for a size it does not list. */
export function referenceTorque(size: string, rootStress: number, stud: "plain" | "coated"): number | undefined {
  const row = REFERENCE_TORQUES.find(([name]) => name === size);
  if (row === undefined) return undefined;
  return (stud === "plain" ? row[1] : row[2]) * footPound * (rootStress / REFERENCE_STRESS);
}

/** Flange materials by how hard their bolts may be pulled. */
export type JointMaterial = "steel" | "ductile iron" | "grey iron";

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
  /** Greatest stress the weaker of bolt and flange allows, Pa. */
  readonly ceiling: number;
  /** Of one bolt, N and N·m. */
  readonly load: number;
  readonly torque: number;
  /** Torque of the reference table at the same load, N·m. */
  readonly referenceTorque: number;
}

const CEILING_RULE: Citation = {
  source: "practice",
  at: "assembly stress: A193 B7 40 to 60 % of yield, SAE grade 5 and ISO 8.8 60 to 70 % of proof, A307 B 20 to 25 ksi; half for ductile-iron flanges; grey iron no more than seats the gasket",
};
const SCATTER_RULE: Citation = { source: "practice", at: "a torque wrench scatters bolt load by 30 % either way" };
const REFERENCE_RULE: Citation = { source: "asme-pcc-1", at: "table 1, reference torques" };

/** Part of the assembly stress that ductile-iron flanges stand. */
const DUCTILE_PART = 0.5;

/** Nut factors apart by more than this part do not describe the same studs. */
const REFERENCE_AGREES_WITHIN = 0.25;

/**
 * Assembly of a bolted joint: the stress each bolt needs, the stress and torque to take, and the ceiling of the weaker
 * of bolt and flange.
 *
 * Without a target the stress is the needed one, raised to the least the grade is assembled to (half of it in ductile
 * iron); in grey iron the needed one alone. Fails for an unknown bolt size, bolts that are not as many as the holes, a
 * nut factor outside 0.08 to 0.40, and a stress past the yield of the bolt. Warns above the ceiling and below what is
 * needed; cautions on scatter, and where the nut factor is far from that of the reference table.
 */
export function boltAssembly(input: BoltAssemblyInput): Result<BoltAssembly> {
  const { boltSize, bolts, holes, grade, flange, neededLoad, nutFactor, stud, targetStress } = input;
  const areas = boltAreas(boltSize);
  const atFifty = referenceTorque(boltSize, REFERENCE_STRESS, stud);
  const row = INCH_BOLTS.find(([name]) => name === boltSize);
  if (areas === undefined || atFifty === undefined || row === undefined) {
    const suggestions = INCH_BOLTS.map(([name]) => name);
    return fail([{ code: "name-unknown", severity: "error", subject: "bolt size", given: boltSize, suggestions }]);
  }
  if (bolts !== holes || !Number.isInteger(bolts) || bolts < 1) {
    const facts = { bolts, holes };
    return fail([{ code: "bolts-differ", severity: "error", subject: "bolts", facts }]);
  }
  const neededStress = neededLoad / (bolts * areas.tensile);
  const { least, greatest, yields } = BOLT_GRADES[grade];
  const part = flange === "ductile iron" ? DUCTILE_PART : 1;
  const ceiling = flange === "grey iron" ? Math.min(neededStress, greatest * ksi) : greatest * ksi * part;
  const usual = flange === "grey iron" ? neededStress : Math.max(neededStress, least * ksi * part);
  const stress = targetStress ?? usual;
  const diameter = row[2] * inch;
  const load = stress * areas.tensile;
  return andThen(boltTorque({ nutFactor, diameter, load }), (torque) => {
    if (stress > yields * ksi) return fail([aboveYield(stress, yields * ksi, grade)]);
    const reference = referenceTorque(boltSize, load / areas.root, stud) as number;
    return succeed({ neededStress, stress, ceiling, load, torque, referenceTorque: reference }, [
      ...stressRemarks(stress, neededStress, ceiling, flange),
      ...factorRemarks(torque, reference),
      { code: "bolt-torque-scatter", severity: "caution", subject: "torque", cites: SCATTER_RULE },
    ]);
  });
}

/** A stress equal to a limit but for rounding has not passed it. */
const ROUNDING = 1e-9;

function aboveYield(found: number, limit: number, grade: BoltGradeName): Finding {
  return {
    code: "bolt-stress-above-yield",
    severity: "error",
    subject: "bolt stress",
    found: amount("stress", found),
    limit: { quantity: "stress", value: limit, side: "at most" },
    facts: { grade },
  };
}

function stressRemarks(stress: number, needed: number, ceiling: number, flange: JointMaterial): readonly Finding[] {
  const found = amount("stress", stress);
  const facts = { flange };
  const findings: Finding[] = [];
  if (stress > ceiling * (1 + ROUNDING)) {
    const limit = { quantity: "stress", value: ceiling, side: "at most" } as const;
    findings.push({
      code: "bolt-stress-above-ceiling",
      severity: "warning",
      subject: "bolt stress",
      found,
      limit,
      facts,
      cites: CEILING_RULE,
    });
  }
  if (stress < needed * (1 - ROUNDING)) {
    const limit = { quantity: "stress", value: needed, side: "at least" } as const;
    const cites: Citation = { source: "asme-viii-1", at: "mandatory appendix 2, bolt loads" };
    findings.push({
      code: "bolt-stress-below-needed",
      severity: "warning",
      subject: "bolt stress",
      found,
      limit,
      cites,
    });
  }
  return findings;
}

function factorRemarks(torque: number, reference: number): readonly Finding[] {
  if (reference === 0 || Math.abs(torque / reference - 1) <= REFERENCE_AGREES_WITHIN) return [];
  const facts = { reference: amount("torque", reference) };
  const found = amount("torque", torque);
  return [
    {
      code: "nut-factor-far-from-reference",
      severity: "caution",
      subject: "nut factor",
      found,
      facts,
      cites: REFERENCE_RULE,
    },
  ];
}
