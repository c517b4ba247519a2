import type { Citation } from "../basis/citation.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { BOLT_GRADES, type BoltGrade, type BoltGradeName } from "../tables/bolt-grades.ts";
import type { RatingSystem } from "../tables/flange-rating-table.ts";
import { GASKETS, type Gasket, type GasketName } from "../tables/gaskets.ts";
import type { NutFactor } from "../tables/nut-factors.ts";
import type { PressureMaterial } from "../tables/pressure-materials.ts";
import { type BoltAssembly, boltAssembly } from "./bolt-assembly.ts";
import { boltOf } from "./bolt-size.ts";
import { flangeCheck } from "./flange-check.ts";
import type { Facing, FlangeClass } from "./flange-class.ts";
import { flangeDimensions } from "./flange-dimensions.ts";
import type { FlangeDimensions } from "./flange-facts.ts";
import { type GasketLoad, gasketLoad, loadAt, sealedBy } from "./gasket-load.ts";
import { type JointMaterial, jointMaterialOf } from "./joint-material.ts";
import { isRated } from "./pressure-material.ts";

const psi = unitOf("psi").factor;

/** How the two faces of a joint meet. */
export type JointFacing = Facing | "raised on flat";

export interface FlangeJointInput {
  /** Nominal size as the reader writes it. */
  readonly size: string;
  readonly flangeClass: FlangeClass;
  readonly system: RatingSystem;
  /** Greatest working pressure, Pa gauge. */
  readonly pressure: number;
  /** Pressure the assembled joint is tested at, Pa gauge; 1.5 times the working one where not stated. */
  readonly testPressure: number | null;
  /** Of the metal, K; null for ambient. */
  readonly temperature: number | null;
  readonly gasket: GasketName;
  /** A ring inside the bolts, or out to the rim with holes for them. */
  readonly isFullFace: boolean;
  /** Both faces; as the material has them where not stated. */
  readonly facing: JointFacing | null;
  readonly material: PressureMaterial;
  /** B7, in grey iron a grade of low strength, where not stated. */
  readonly grade: BoltGradeName | null;
  readonly nutFactor: NutFactor;
  /** Part by which the tightening may miss the load, either way. */
  readonly scatter: number;
}

export interface FlangeJoint {
  readonly bolts: number;
  /** As the table of bolts names it: "3/4" of an inch, "M20". */
  readonly boltSize: string;
  readonly grade: BoltGradeName;
  readonly gasket: GasketLoad;
  readonly testPressure: number;
  /** Load of all bolts together that the test needs, N. */
  readonly testLoad: number;
  /** Why no torque is given; then there is no assembly. */
  readonly refusal?: string;
  readonly assembly?: BoltAssembly;
  /** Stress on the gasket in contact as the joint is tightened, before the pressure, Pa. */
  readonly gasketStress?: number;
  /** Pressure that the joint seals to where the tightening comes out low, Pa gauge; at the least nut factor too. */
  readonly sealsTo?: number;
  readonly sealsToAtBest?: number;
}

const FACING_RULE: Citation = {
  source: "practice",
  at: "a raised face is never clamped against flat-faced grey iron: machine it off, and use a full-face gasket",
};
const LOW_STRENGTH_RULE: Citation = {
  source: "asme-b31.3",
  at: "309.2.3: bolting of grey iron, low strength unless both faces are flat with a full-face gasket",
};
const SOFT_RULE: Citation = {
  source: "asme-b16.5",
  at: "5.3 and 5.4: low-strength bolting up to Class 300, with soft gaskets of group Ia",
};
const SPIRAL_RULE: Citation = {
  source: "practice",
  at: "the seating stress of a spiral-wound gasket is too high for most iron flanges",
};
const SEALING_RULE: Citation = { source: "asme-viii-1", at: "mandatory appendix 2, bolt loads", unverified: true };
const TEST_RULE: Citation = {
  source: "house",
  at: "a joint is tightened to hold its test on the low side of the wrench",
};

/** Test pressure over working pressure where none is stated, as the pump standards test. */
const USUAL_TEST = 1.5;

/**
 * Bolt load (N) and torque (N·m) of a flange with the flat gasket of its size, to hold a working pressure and its test
 * where the tightening comes out low. A ring bears as far out as the raised face; on flat faces, and in Class 125 and 250,
 * whose faces are not held, on its whole width. No torque where a refusal stands.
 * Fails: as `flangeDimensions`, `flangeCheck`, `gasketLoad`, `boltAssembly`; a full-face gasket in Class 250 and 300.
 * Warns: no torque: pressure above the rating, no rating held, raised face on flat grey iron, ring gasket with strong
 * bolts on grey iron, full-face gasket between raised faces, low-strength bolts with a hard gasket; low side below the
 * working pressure; spiral-wound gasket on iron. Cautions: low side below the test, facing assumed, from memory.
 * Source: ASME B16.5, B16.42, B16.1, B31.3; EN 1092, EN 1514-1; ASME VIII-1, mandatory appendix 2; ASME PCC-1.
 */
export function flangeJoint(input: FlangeJointInput): Result<FlangeJoint> {
  const { size, flangeClass, system, material } = input;
  const flange = jointMaterialOf(material);
  // What is to be said of the dimensions, FLANGEDIMENSIONS says.
  const drilled = flangeDimensions({ size, drilling: flangeClass, material: flange, system });
  if (!drilled.ok) return drilled;
  const dimensions = drilled.value;
  const facing = facingOf(input, flange);
  const grade = input.grade ?? usualGrade(flange, dimensions);
  return andThen(bearingOf(input, dimensions, facing), (gasket) =>
    andThen(rated(input, dimensions), (above) => {
      const refused = refusalOf({ input, flange, facing, grade, isAbove: above.length > 0 });
      const remarks = [...above, ...refused.findings, ...facingRemarks(input, flange, facing)];
      const testPressure = input.testPressure ?? USUAL_TEST * input.pressure;
      const testLoad = loadAt(gasket, testPressure);
      const { bolts, boltSize } = dimensions;
      const joint: FlangeJoint = { bolts, boltSize, grade, gasket, testPressure, testLoad };
      if (refused.refusal !== undefined) return succeed({ ...joint, refusal: refused.refusal }, remarks);
      return assembled(input, joint, flange, remarks);
    }),
  );
}

/** Load that the gasket asks for, by its shape and the faces it lies on. */
function bearingOf(input: FlangeJointInput, dimensions: FlangeDimensions, facing: JointFacing): Result<GasketLoad> {
  const { gasket, isFullFace, flangeClass, pressure } = input;
  const { raisedFace, gasketOutside = 0, gasketInside = 0, outsideDiameter, boltCircle, bolts } = dimensions;
  if (!isFullFace) {
    const onRaised = facing !== "flat" && raisedFace !== undefined;
    const ring = { gasket, outsideDiameter: gasketOutside, insideDiameter: gasketInside, pressure };
    return gasketLoad({ ...ring, ...(onRaised && { raisedFace }) });
  }
  if (flangeClass.name === "Class 250" || flangeClass.name === "Class 300") {
    const given = flangeClass.name;
    return fail([{ code: "full-face-not-held", kind: "error", subject: "gasket shape", given }]);
  }
  const holes = { boltCircle, count: bolts, diameter: dimensions.holeDiameter };
  return gasketLoad({ gasket, outsideDiameter, insideDiameter: gasketInside, holes, pressure });
}

/** The faces stated, else those of the class ("150 RF"), else as such a flange is usually made. */
function facingOf({ facing, flangeClass, isFullFace }: FlangeJointInput, flange: JointMaterial): JointFacing {
  return facing ?? flangeClass.facing ?? (isFullFace || flange === "grey iron" ? "flat" : "raised");
}

function usualGrade(flange: JointMaterial, { boltSize }: FlangeDimensions): BoltGradeName {
  if (flange !== "grey iron") return "A193 B7";
  return boltOf(boltSize)?.isMetric === true ? "ISO 4.6" : "A307 B";
}

/** What is to be said where the class does not hold the pressure at this temperature. */
function rated(input: FlangeJointInput, { size }: FlangeDimensions): Result<readonly Finding[]> {
  const { material, flangeClass, temperature, system, pressure } = input;
  if (!isRated(material)) return succeed([]);
  const held = flangeCheck({ material, flangeClass: { ...flangeClass, size }, temperature, system, pressure });
  if (!held.ok) return held;
  return succeed(held.findings.filter(({ code }) => code === "pressure-above-rating"));
}

interface Asked {
  readonly input: FlangeJointInput;
  readonly flange: JointMaterial;
  readonly facing: JointFacing;
  readonly grade: BoltGradeName;
  readonly isAbove: boolean;
}

interface Refusal {
  readonly refusal?: string;
  readonly findings: readonly Finding[];
}

/** Why a joint gets no torque, with what would do; the gravest first. */
function refusalOf({ input, flange, facing, grade, isAbove }: Asked): Refusal {
  const { material, isFullFace, gasket } = input;
  const { isLowStrength }: BoltGrade = BOLT_GRADES[grade];
  const { isSoft }: Gasket = GASKETS[gasket];
  const none = { kind: "limit", subject: "torque" } as const;
  if (!isRated(material)) {
    const given = material.name;
    return {
      refusal: NO_RATING,
      findings: [{ code: "material-not-rated", kind: "check", subject: "material", given }],
    };
  }
  if (isAbove) return { refusal: "the class does not hold the pressure", findings: [] };
  if (facing === "raised on flat" && flange === "grey iron") {
    const refusal = "raised face against flat grey iron";
    return { refusal, findings: [{ code: "raised-face-on-flat-iron", ...none, cites: FACING_RULE }] };
  }
  if (isFullFace && facing !== "flat") {
    const refusal = "full-face gasket between raised faces";
    return { refusal, findings: [{ code: "full-face-on-raised-face", ...none, cites: FACING_RULE }] };
  }
  if (flange === "grey iron" && !isFullFace && isLowStrength !== true) {
    const refusal = `grey iron, ring gasket, ${grade} bolts`;
    return {
      refusal,
      findings: [{ code: "strong-bolts-on-grey-iron", ...none, facts: { grade }, cites: LOW_STRENGTH_RULE }],
    };
  }
  if (isLowStrength === true && !isSoft) {
    const refusal = `${gasket} gasket, ${grade} bolts of low strength`;
    return { refusal, findings: [{ code: "weak-bolts-on-hard-gasket", ...none, facts: { grade }, cites: SOFT_RULE }] };
  }
  return { findings: [] };
}

/** In the place of a torque, of a material that no flange standard held here rates: not a failure, but open. */
export const NO_RATING = "no rating held for the material";

function facingRemarks(input: FlangeJointInput, flange: JointMaterial, facing: JointFacing): readonly Finding[] {
  const subject = "faces";
  if (facing === "raised on flat" && flange === "ductile iron") {
    return [{ code: "raised-face-on-flat-iron", kind: "check", subject, cites: FACING_RULE }];
  }
  if (flange === "steel" || !isRated(input.material) || input.facing !== null || input.flangeClass.facing !== undefined)
    return [];
  return [{ code: "iron-facing-assumed", kind: "assumed", subject, facts: { taken: facing }, cites: FACING_RULE }];
}

function assembled(
  input: FlangeJointInput,
  joint: FlangeJoint,
  flange: JointMaterial,
  remarks: readonly Finding[],
): Result<FlangeJoint> {
  const { gasket, bolts, boltSize, grade, testPressure, testLoad } = joint;
  const { greatestStress, isVerified }: Gasket = GASKETS[input.gasket];
  const assembly = boltAssembly({
    boltSize,
    bolts,
    grade,
    flange,
    neededLoad: gasket.needed,
    testLoad,
    ...(greatestStress !== undefined && { crushingLoad: greatestStress * psi * gasket.contactArea }),
    nutFactor: input.nutFactor,
    scatter: input.scatter,
  });
  return andThen(assembly, (tightened) => {
    const sealsTo = sealedBy(gasket, tightened.lowLoad);
    const found: FlangeJoint = {
      ...joint,
      assembly: tightened,
      gasketStress: (tightened.load * bolts) / gasket.contactArea,
      sealsTo,
      sealsToAtBest: sealedBy(gasket, tightened.lowLoadAtBest),
    };
    return succeed(found, [
      ...sealRemarks(sealsTo, input.pressure, testPressure),
      ...remarks,
      ...(input.gasket === "spiral wound" ? [spiralWound(flange)] : []),
      ...(input.grade === null ? [gradeAssumed(grade)] : []),
      ...(input.nutFactor.low < input.nutFactor.high ? [factorAssumed(input.nutFactor)] : []),
      fromMemory(isVerified),
    ]);
  });
}

/** Equal but for rounding is held. */
const ROUNDING = 1e-9;

function sealRemarks(sealsTo: number, working: number, test: number): readonly Finding[] {
  const isShortOf = (pressure: number): boolean => sealsTo < pressure * (1 - ROUNDING);
  const found = amount("gaugePressure", sealsTo);
  const limitOf = (value: number) => ({ quantity: "gaugePressure", value, side: "at least" }) as const;
  const joint = { subject: "joint", found } as const;
  if (isShortOf(working)) {
    return [{ code: "bolts-short-of-working", kind: "limit", ...joint, limit: limitOf(working), cites: SEALING_RULE }];
  }
  if (!isShortOf(test)) return [];
  return [{ code: "bolts-short-of-test", kind: "check", ...joint, limit: limitOf(test), cites: TEST_RULE }];
}

function spiralWound(flange: JointMaterial): Finding {
  const finding = { code: "spiral-wound-as-flat-ring", subject: "gasket", facts: { flange } } as const;
  return flange === "steel" ? { ...finding, kind: "check" } : { ...finding, kind: "limit", cites: SPIRAL_RULE };
}

function gradeAssumed(grade: BoltGradeName): Finding {
  return { code: "bolt-grade-assumed", kind: "assumed", subject: "bolt grade", facts: { grade } };
}

function factorAssumed({ low, typical, high }: NutFactor): Finding {
  const facts = { low: String(low), high: String(high) };
  return { code: "nut-factor-assumed", kind: "assumed", subject: "nut factor", found: amount("ratio", typical), facts };
}

function fromMemory(isVerified: boolean): Finding {
  return { code: "joint-figures-from-memory", kind: "check", subject: "torque", facts: { isVerified } };
}
