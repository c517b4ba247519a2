import type { Citation } from "../basis/citation.ts";
import { checkInputs, type Method, outOfRange } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { BOLT_GRADES, type BoltGrade, type BoltGradeName } from "../tables/bolt-grades.ts";
import type { NutFactor } from "../tables/nut-factors.ts";
import { largestBolt, strengthOf } from "./bolt-grade.ts";
import { BOLTS, type Bolt, boltOf } from "./bolt-size.ts";
import { boltTorque, referenceTorque } from "./bolt-torque.ts";
import type { JointMaterial } from "./joint-material.ts";

export interface BoltAssemblyInput {
  /** Size of the bolts as the tables name it: "3/4", "M20". */
  readonly boltSize: string;
  readonly bolts: number;
  readonly grade: BoltGradeName;
  readonly flange: JointMaterial;
  /** Load of all bolts together that the working pressure and the gasket need, N; as `gasketLoad` gives it. */
  readonly neededLoad: number;
  /** The same at the test pressure, N: what is to be left where the wrench comes out low. */
  readonly testLoad: number;
  /** Load of all bolts together that crushes the gasket, N. None where left out. */
  readonly crushingLoad?: number;
  /** K: the usual one gives the torque, the ends say how far the load may come out beside it. */
  readonly nutFactor: NutFactor;
  /** Part by which the tightening may miss the load, either way. */
  readonly scatter: number;
}

export interface BoltAssembly {
  /** Stress of a bolt on its tensile area that carries the needed load, Pa. */
  readonly neededStress: number;
  /** Stress taken. */
  readonly stress: number;
  /** Greatest stress the weakest of bolt, flange and gasket allows, Pa. */
  readonly ceiling: number;
  /** Stress that the torque gives at the least nut factor, Pa. */
  readonly stressAtLeastFactor: number;
  /** Of one bolt, N and N·m. */
  readonly load: number;
  readonly torque: number;
  /** Load of all bolts together where the tightening comes out low: at the greatest nut factor, and at the least, N. */
  readonly lowLoad: number;
  readonly lowLoadAtBest: number;
  /** Torque of the reference table at the same load, N·m; nothing for metric bolts, which it does not list. */
  readonly referenceTorque?: number;
}

export const boltAssemblyMethod = {
  cites: [
    {
      source: "practice",
      at: "assembly stress: A193 B7 and stainless 40 to 60 % of yield, SAE grade 5 and ISO 8.8 60 to 70 % of proof, A307 B 20 to 25 ksi; half for ductile-iron flanges",
    },
    {
      source: "practice",
      at: "rubber sheet gaskets are tightened to 600 to 900 psi, fibre sheet to 15 000 psi at most",
    },
    { source: "house", at: "bolts of grey-iron flanges to 25 ksi (172 MPa) at most, whatever their grade" },
  ],
  inputs: { scatter: { name: "torque scatter", quantity: "percent", atLeast: 0, atMost: 0.6 } },
} as const satisfies Method<"scatter">;

const [, CRUSHING_RULE] = boltAssemblyMethod.cites;
const SCATTER_RULE: Citation = { source: "practice", at: "a torque wrench scatters bolt load by 30 % either way" };
const REFERENCE_RULE: Citation = { source: "asme-pcc-1", at: "table 1, reference torques" };

/** Part by which a torque wrench may miss the load, either way. */
export const WRENCH_SCATTER = 0.3;

/** Part of the assembly stress that ductile-iron flanges stand. */
const DUCTILE_PART = 0.5;

/** Bolt stress that grey-iron flanges stand, Pa. */
const GREY_IRON_MOST = 25_000 * unitOf("psi").factor;

/** Nut factors apart by more than this part do not describe the same studs. */
const REFERENCE_AGREES_WITHIN = 0.25;

/**
 * Stress and torque to take for a bolted joint, the ceiling of the weakest of bolt, flange and gasket, and what is left
 * where the tightening comes out low; Pa, N and N·m. Taken: the least that leaves the test load on the low side of the
 * scatter, not below what the grade is usually assembled to, not above the ceiling; at the high side no bolt yields.
 * Formula: S = W_test/((1 − s) n A), within the usual and the ceiling; T = K D F; low side (1 − s) n F K/K_high
 * Fails: unknown bolt size; one too large for its grade; scatter outside 0 to 60 %; as `boltTorque`.
 * Warns: cautions on scatter, a stress the gasket holds down, nut factor far from the reference, metric grade in inch
 * bolts.
 * Source: common practice; reference torques of ASME PCC-1, table 1.
 */
export function boltAssembly(input: BoltAssemblyInput): Result<BoltAssembly> {
  const { boltSize, bolts, grade, flange, neededLoad, testLoad, crushingLoad, nutFactor, scatter } = input;
  const bolt = boltOf(boltSize);
  if (bolt === undefined) {
    const suggestions = BOLTS.map(({ size }) => size);
    return fail([{ code: "name-unknown", kind: "error", subject: "bolt size", given: boltSize, suggestions }]);
  }
  const strength = strengthOf(grade, bolt);
  if (strength === undefined) {
    return fail([outOfRange(`bolt diameter of ${grade}`, "size", bolt.diameter, "at most", largestBolt(grade))]);
  }
  return andThen(checkInputs(boltAssemblyMethod, { scatter }), () => {
    const tensile = bolts * bolt.tensileArea;
    const part = flange === "ductile iron" ? DUCTILE_PART : 1;
    const ofFlange = flange === "grey iron" ? GREY_IRON_MOST : Number.POSITIVE_INFINITY;
    const ofBolts = Math.min(strength.greatest * part, strength.yields / (1 + scatter), ofFlange);
    const ofGasket = crushingLoad === undefined ? Number.POSITIVE_INFINITY : crushingLoad / tensile;
    const ceiling = Math.min(ofBolts, ofGasket);
    const usual = Math.min(strength.least * part, ofBolts);
    const wanted = Math.max(neededLoad, testLoad) / tensile / (1 - scatter);
    const stress = Math.min(Math.max(usual, wanted), ceiling);
    const load = stress * bolt.tensileArea;
    return andThen(boltTorque({ nutFactor: nutFactor.typical, diameter: bolt.diameter, load }), (torque) => {
      const reference = referenceTorque(boltSize, load / bolt.rootArea, "plain");
      const low = (1 - scatter) * load * bolts * nutFactor.typical;
      const assembly: BoltAssembly = {
        neededStress: neededLoad / tensile,
        stress,
        ceiling,
        stressAtLeastFactor: (stress * nutFactor.typical) / nutFactor.low,
        load,
        torque,
        lowLoad: low / nutFactor.high,
        lowLoadAtBest: low / nutFactor.low,
        ...(reference !== undefined && { referenceTorque: reference }),
      };
      return succeed(assembly, [
        ...(ofGasket < usual ? [heldByGasket(stress, usual)] : []),
        ...factorRemarks(torque, reference),
        ...metricRemarks(grade, bolt),
        scatterRemark(scatter),
      ]);
    });
  });
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

function metricRemarks(grade: BoltGradeName, { isMetric }: Bolt): readonly Finding[] {
  const of: BoltGrade = BOLT_GRADES[grade];
  if (of.isMetric !== true || isMetric) return [];
  return [{ code: "metric-grade-in-inch-bolts", kind: "check", subject: "bolt grade", given: grade }];
}

function factorRemarks(torque: number, reference: number | undefined): readonly Finding[] {
  if (reference === undefined || reference === 0) return [];
  if (Math.abs(torque / reference - 1) <= REFERENCE_AGREES_WITHIN) return [];
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

function scatterRemark(scatter: number): Finding {
  const found = amount("percent", scatter);
  return { code: "bolt-torque-scatter", kind: "check", subject: "torque", found, cites: SCATTER_RULE };
}
