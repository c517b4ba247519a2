import type { Citation } from "../basis/citation.ts";
import { amount, andThen, type Finding, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import type { BoltGradeName } from "../tables/bolts.ts";
import type { RatingSystem } from "../tables/flange-rating-table.ts";
import { GASKETS, type Gasket, type GasketName } from "../tables/gaskets.ts";
import type { PressureMaterial } from "../tables/pressure-materials.ts";
import { type BoltAssembly, boltAssembly } from "./bolt-assembly.ts";
import { flangeCheck } from "./flange-check.ts";
import type { FlangeClass } from "./flange-class.ts";
import { type FlangeDimensions, flangeDimensions } from "./flange-dimensions.ts";
import { flangeSizeNamed } from "./flange-size.ts";
import { type GasketLoad, gasketLoad } from "./gasket-load.ts";
import { type JointMaterial, jointMaterialOf } from "./joint-material.ts";

const psi = unitOf("psi").factor;

export interface FlangeJointInput {
  /** Nominal size as the reader writes it. */
  readonly size: string;
  readonly flangeClass: FlangeClass;
  readonly system: RatingSystem;
  /** Greatest working pressure, Pa gauge. */
  readonly pressure: number;
  readonly gasket: GasketName;
  readonly material: PressureMaterial;
  readonly grade: BoltGradeName;
  readonly nutFactor: number;
}

export interface FlangeJoint extends BoltAssembly {
  readonly bolts: number;
  /** As the table of bolts names it, inches. */
  readonly boltSize: string;
  /** Least load of all bolts together, N. */
  readonly gasket: GasketLoad;
  /** Stress on the gasket in contact as the joint is tightened, before the pressure, Pa. */
  readonly gasketStress: number;
}

const FACING_RULE: Citation = {
  source: "practice",
  at: "a raised face is never clamped against flat-faced grey iron: machine it off, and use a full-face gasket",
};
const FULL_FACE_RULE: Citation = {
  source: "practice",
  at: "grey-iron flanges: full-face soft gasket, low-strength bolts, no more load than seats the gasket",
};
const SPIRAL_RULE: Citation = {
  source: "practice",
  at: "the seating stress of a spiral-wound gasket is too high for most iron flanges",
};

/**
 * Bolt load (N) and torque (N·m) of a flange with the flat ring gasket of its size against a pressure. The ring bears
 * as far out as the raised face; in Class 125 and 250, whose faces are not held, on its whole width.
 * Fails: as `flangeDimensions`, `flangeCheck`, `gasketLoad` and `boltAssembly`.
 * Warns: pressure above the rating of cold metal; spiral-wound gasket on iron; as `boltAssembly`. Cautions:
 * spiral-wound on steel, the facing or full-face gasket, figures from memory.
 * Source: ASME B16.5, B16.42, B16.1; ASME VIII-1, mandatory appendix 2; ASME PCC-1.
 */
export function flangeJoint(input: FlangeJointInput): Result<FlangeJoint> {
  const { size, flangeClass, system, pressure, material, grade, nutFactor } = input;
  const dimensions = flangeDimensions({ size, flangeClass, system });
  if (!dimensions.ok) return dimensions;
  const stated = flangeClass.size ?? flangeSizeNamed(size, system);
  const rated = flangeCheck({
    material,
    flangeClass: { ...flangeClass, ...(stated === undefined ? {} : { size: stated }) },
    temperature: null,
    system,
    pressure,
  });
  if (!rated.ok) return rated;
  const flange = jointMaterialOf(material);
  const above = rated.findings.filter(({ code }) => code === "pressure-above-rating");
  const { bolts, boltSize, raisedFace, gasketOutside, gasketInside } = dimensions.value;
  const load = gasketLoad({
    gasket: input.gasket,
    outsideDiameter: gasketOutside,
    insideDiameter: gasketInside,
    ...(raisedFace === undefined ? {} : { raisedFace }),
    pressure,
  });
  return andThen(load, (gasket) => {
    const { greatestStress }: Gasket = GASKETS[input.gasket];
    const assembled = boltAssembly({
      boltSize,
      bolts,
      holes: bolts,
      grade,
      flange,
      neededLoad: gasket.needed,
      ...(greatestStress === undefined ? {} : { crushingLoad: greatestStress * psi * gasket.contactArea }),
      nutFactor,
      stud: "plain",
    });
    if (!assembled.ok) return assembled;
    const joint = assembled.value;
    const gasketStress = (joint.load * bolts) / gasket.contactArea;
    return succeed({ ...joint, bolts, boltSize, gasket, gasketStress }, [
      ...above,
      ...assembled.findings,
      ...(input.gasket === "spiral wound" ? [spiralWound(flange)] : []),
      flange === "grey iron" ? fullFace() : facing(dimensions.value),
      fromMemory(),
    ]);
  });
}

function spiralWound(flange: JointMaterial): Finding {
  const finding = { code: "spiral-wound-as-flat-ring", subject: "gasket", facts: { flange } } as const;
  return flange === "steel" ? { ...finding, kind: "check" } : { ...finding, kind: "limit", cites: SPIRAL_RULE };
}

function fullFace(): Finding {
  return { code: "full-face-gasket-not-reckoned", kind: "check", subject: "gasket", cites: FULL_FACE_RULE };
}

function facing({ raisedFace, gasketOutside }: FlangeDimensions): Finding {
  return {
    code: "gasket-on-raised-face",
    kind: "check",
    subject: "gasket",
    found: amount("size", Math.min(raisedFace ?? gasketOutside, gasketOutside)),
    cites: FACING_RULE,
  };
}

function fromMemory(): Finding {
  return { code: "joint-figures-from-memory", kind: "check", subject: "torque" };
}
