import { andThen, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { boltAssemblyMethod, WRENCH_SCATTER } from "../../../src/pressure/bolt-assembly.ts";
import { BOLT_FINISHES, boltFinishNamed, nutFactorOf } from "../../../src/pressure/bolt-finish.ts";
import { BOLT_GRADE_NAMES, boltGradeNamed } from "../../../src/pressure/bolt-grade.ts";
import { boltSizeText } from "../../../src/pressure/bolt-size.ts";
import { boltThread } from "../../../src/pressure/bolt-thread.ts";
import { boltTorqueMethod } from "../../../src/pressure/bolt-torque.ts";
import { flangeDimensionsCites } from "../../../src/pressure/flange-dimensions.ts";
import { flangeJoint, type JointFacing } from "../../../src/pressure/flange-joint.ts";
import { gasketLoadMethod } from "../../../src/pressure/gasket-load.ts";
import { GASKET_NAMES, gasketNamed } from "../../../src/pressure/gasket-name.ts";
import { jointStudLength, jointStudLengthMethod, STUD_STEPS } from "../../../src/pressure/stud-length.ts";
import type { BoltGradeName } from "../../../src/tables/bolt-grades.ts";
import type { BoltFinish } from "../../../src/tables/nut-factors.ts";
import { PRESSURE_MATERIALS, type PressureMaterial } from "../../../src/tables/pressure-materials.ts";
import { defineEntry } from "../entry.ts";
import { choice, type OptionalParameter, quantity, text } from "../parameter.ts";
import { flangeClass, ratingSystem } from "../parameters/class.ts";
import { flangeMaterial as namedMaterial } from "../parameters/material.ts";
import { metalTemperature } from "../parameters/metal-temperature.ts";
import { share } from "../parameters/share.ts";
import { zeroDoubted } from "../parameters/zero-doubted.ts";

const inch = unitOf("in").factor;

const DUCTILE_IRON = PRESSURE_MATERIALS.find(({ name }) => name === "ductile iron") as PressureMaterial;

const flangeMaterial: OptionalParameter<PressureMaterial> = {
  ...namedMaterial,
  fallback: DUCTILE_IRON,
  whenLeftOut: "ductile iron",
};

/** Allowance for the length of a stud itself, m: as in the rule of ASME B16.5 for like pairs. */
const LENGTH_TOLERANCE = 0.06 * inch;

/** How the faces meet, as a reader says it. */
export const FACINGS: Readonly<Record<string, JointFacing>> = {
  "both flat": "flat",
  "both raised": "raised",
  "raised on flat": "raised on flat",
};
export const FACING_NAMES = ["both flat", "both raised", "raised on flat"] as const;
export const GASKET_SHAPES = ["ring", "full face"] as const;

const facing: OptionalParameter<(typeof FACING_NAMES)[number] | null> = {
  ...choice(FACING_NAMES, { about: "Faces of the two flanges" }),
  fallback: null,
  whenLeftOut: "as the class says (150 RF), else both raised; both flat in grey iron and under a full-face gasket",
};

export const BOLTTORQUE = defineEntry({
  id: "BOLTTORQUE",
  group: "Pressure and flanges",
  summary: "Bolt load and tightening torque of a flange with its flat gasket, and the pressure it seals to",
  method:
    "Flange, bolts and gasket by size and class or PN as in FLANGEDIMENSIONS; a ring bears as far out as the raised face, on flat faces and in Class 125 and 250 on its whole width. Load to hold the pressure (π/4) G² P + 2 b π G m P, to seat the gasket π b G y; m, y: rubber below 75 A 0.5, 0; rubber 75 A or harder 1, 200 psi; fibre 1/16 in 2.75, 3700 psi; spiral wound 3, 10 000 psi. Contact width N: b₀ = N/2, b = b₀ and G the mean diameter up to 1/4 in, above it b = 0.5 √b₀ in inches and G the outside less 2 b. Full face, outside A, inside B, bolt circle C: h = (C−B)(2B+C)/(6(B+C)), h' = (A−C)(2A+C)/(6(A+C)), b = (C−B)/4, G = C − 2 h, and b π G counts 1 + h/h' times. The stress taken is the minimum that still holds the test pressure where the tightening comes out low by the scatter, not below what the grade is usually pulled to (B7 42 ksi, SAE grade 5 51, ISO 8.8 52.2, A307 B 20, stainless 40 % of yield; half in ductile iron), not above what bolt, flange and gasket stand (B7 63 ksi, 59.5, 60.9, 25, 60 % of yield; half in ductile iron; 25 in grey iron; rubber 900 psi, fibre 15 000 psi on the area in contact). No torque, with the reason, where the class does not hold the pressure, for a raised face on flat grey iron, for grey iron with a ring gasket and bolts above 30 ksi yield, for a full-face gasket between raised faces, for low-strength bolts with a hard gasket. Torque T = K D F, K as stated, or usual of the finish; the low side counts its maximum K. Reference torque of ASME PCC-1 table 1, plain studs, at the same load; it lists no metric bolts.",
  cites: [
    ...gasketLoadMethod.cites,
    ...boltTorqueMethod.cites,
    ...boltAssemblyMethod.cites,
    { source: "asme-pcc-1", at: "table 1, reference torques" },
    { source: "asme-b31.3", at: "309.2.3, bolting of grey iron" },
    ...flangeDimensionsCites,
  ],
  parameters: {
    size: text<string>({ about: "Nominal size of the flange", example: '"6", "NPS 6", "6in" or "DN150"' }, (given) =>
      succeed(given),
    ),
    flangeClass,
    pressure: zeroDoubted(
      quantity("gaugePressure", {
        about: "Maximum pressure the joint must hold",
        example: '250, or "17 bar"',
        range: "0 or more",
      }),
    ),
    gasket: text(
      { about: "Gasket material", example: '"fibre 1/16 in" or "EPDM 60 A"', choices: GASKET_NAMES },
      gasketNamed,
    ),
    flangeMaterial,
    boltGrade: text<BoltGradeName | null>(
      {
        about: "Bolting material",
        example: '"A193 B7", "8.8" or "A4-70"',
        choices: BOLT_GRADE_NAMES,
        whenLeftOut: { value: null, shown: '"A193 B7"; in grey iron "A307 B", or "ISO 4.6" in a PN' },
      },
      boltGradeNamed,
    ),
    nutFactor: quantity("ratio", {
      about: "Nut factor K: 0.16 to 0.20 lubricated, 0.20 to 0.25 as received",
      example: "0.2",
      range: "0.08 to 0.40",
      whenLeftOut: { value: null, shown: "0.2, and 0.16 to 0.25 where that decides" },
    }),
    testPressure: zeroDoubted(
      quantity("gaugePressure", {
        about: "Pressure the assembled joint is tested at",
        example: '375, or "25 bar"',
        range: "0 or more",
        whenLeftOut: { value: null, shown: "1.5 times the pressure" },
      }),
    ),
    torqueScatter: share({
      about: "How far the tightening may miss the load, either way",
      example: '30, or "10 %" by a tensioner',
      range: "0 to 60 %",
      whenLeftOut: { value: WRENCH_SCATTER, shown: "30 %, a torque wrench" },
    }),
    gasketShape: choice(GASKET_SHAPES, { about: "A ring inside the bolts, or full face", whenLeftOut: "ring" }),
    facing,
    boltFinish: text<BoltFinish | null>(
      {
        about: "Finish and lubricant of bolts and nuts, which give the nut factor where none is stated",
        example: '"hot-dip galvanised, dry" or "anti-seize"',
        choices: BOLT_FINISHES,
        whenLeftOut: { value: null, shown: "not stated" },
      },
      boltFinishNamed,
    ),
    metalTemperature,
  },
  answer: {
    kind: "record",
    name: "bolt load and torque",
    columns: {
      bolts: { name: "bolts" },
      boltSize: { name: "bolt size" },
      operating: { name: "load to hold the pressure", quantity: "force" },
      seating: { name: "load to seat the gasket", quantity: "force" },
      needed: { name: "load needed", quantity: "force" },
      neededStress: { name: "bolt stress needed", quantity: "stress" },
      stress: { name: "bolt stress taken", quantity: "stress" },
      greatest: { name: "maximum stress allowed", quantity: "stress" },
      load: { name: "load of one bolt", quantity: "force" },
      torque: { name: "torque", quantity: "torque" },
      reference: { name: "reference torque", quantity: "torque" },
      gasketStress: { name: "gasket stress", quantity: "stress" },
      boltGrade: { name: "bolt grade" },
      testPressure: { name: "test pressure", quantity: "gaugePressure" },
      testLoad: { name: "load needed at test", quantity: "force" },
      lowLoad: { name: "load on the low side", quantity: "force" },
      sealsTo: { name: "seals to", quantity: "gaugePressure" },
      sealsToAtBest: { name: "seals to, minimum nut factor", quantity: "gaugePressure" },
      stressAtLeast: { name: "bolt stress, minimum nut factor", quantity: "stress" },
      noTorque: { name: "why no torque" },
    },
  },
  examples: [
    {
      args: ["6", 150, 250, "fibre 1/16 in", "carbon steel"],
      part: [1, 3],
      answer: 31_136.5,
      within: 1,
      source: "ASME VIII-1 appendix 2 by hand in inches: ring 6.62 to 8.5 in, b 0.342783, G 7.814435, π b G × 3700 psi",
    },
    {
      args: ["6", 150, 250, "fibre 1/16 in", "carbon steel"],
      part: [1, 9],
      answer: 175.6,
      within: 0.05,
      source: "T = K D F by hand: 0.2 × 0.75 in × 42 000 psi × 0.3345 in² / 12",
    },
    {
      args: ["8", 125, 150, "rubber below 75 A", "grey iron", "A307 B", 0.2, null, null, "full face", "both flat"],
      part: [1, 16],
      answer: 250,
      within: 0.1,
      source:
        "by hand in inches: G 10.265, h 0.7424, h' 0.4476, W 149.85 lbf a psi; 0.7 × 20 ksi × 8 × 0.3345 in² over it",
    },
  ],
  run: (values, { unitSet }) => {
    const { flangeMaterial: material, boltGrade: grade, nutFactor, boltFinish, gasketShape, ...input } = values;
    const { metalTemperature: temperature, torqueScatter: scatter, facing: faces } = values;
    const joint = flangeJoint({
      ...input,
      material,
      grade,
      temperature,
      scatter,
      isFullFace: gasketShape === "full face",
      facing: faces === null ? null : (FACINGS[faces] ?? null),
      nutFactor: nutFactorOf(nutFactor, boltFinish),
      system: ratingSystem(unitSet),
    });
    return andThen(joint, ({ assembly, gasket, ...found }) =>
      succeed({
        bolts: found.bolts,
        boltSize: boltSizeText(found.boltSize),
        operating: gasket.operating,
        seating: gasket.seating,
        needed: gasket.needed,
        neededStress: assembly?.neededStress,
        stress: assembly?.stress,
        greatest: assembly?.ceiling,
        load: assembly?.load,
        torque: assembly?.torque,
        reference: assembly?.referenceTorque,
        gasketStress: found.gasketStress,
        boltGrade: found.grade,
        testPressure: found.testPressure,
        testLoad: found.testLoad,
        lowLoad: assembly?.lowLoad,
        sealsTo: found.sealsTo,
        sealsToAtBest: found.sealsToAtBest,
        stressAtLeast: assembly?.stressAtLeastFactor,
        noTorque: found.refusal,
      }),
    );
  },
});

export const STUDLENGTH = defineEntry({
  id: "STUDLENGTH",
  group: "Pressure and flanges",
  summary: "Stud length of a joint that is no pair of like flanges, from its parts",
  method:
    "Both flanges, the gasket, what stands between, two nuts of a bolt diameter each, two threads out at each end and 0.06 in (1.5 mm) for the length itself, rounded up to 1/4 in, or to 5 mm for a metric bolt. For iron on steel, wafer valves, blinds, rings and spacers; FLANGEDIMENSIONS has the lengths for two like steel flanges with raised faces. A tapped nozzle is another matter: one bolt diameter of thread in steel, 1.25 to 1.5 in iron.",
  cites: jointStudLengthMethod.cites,
  parameters: {
    flangeThickness: quantity("size", {
      about: "Thickness of one flange at the bolts, its raised face included",
      range: "above 0",
    }),
    otherFlangeThickness: quantity("size", {
      about: "Thickness of the other flange at the bolts, its raised face included",
      range: "above 0",
    }),
    boltDiameter: quantity("size", { about: "Nominal bolt diameter", range: "above 0" }),
    gasketThickness: zeroDoubted(
      quantity("size", {
        about: "Thickness of the gasket, of all of them where there are more",
        range: "0 or more",
        whenLeftOut: { value: 0.125 * inch, shown: "1/8 in (3.2 mm)" },
      }),
    ),
    thicknessBetween: quantity("size", {
      about: "Thickness of what stands between the flanges: wafer valve, blind, ring, spacer",
      range: "0 or more",
      whenLeftOut: { value: 0, shown: "0" },
    }),
    threadPitch: quantity("size", {
      about: "Thread pitch, crest to crest",
      range: "above 0",
      whenLeftOut: { value: null, shown: "coarse thread of the inch bolts 1/2 to 1-1/2 in and of M10 to M52" },
    }),
  },
  answer: { kind: "quantity", name: "stud length", quantity: "size" },
  examples: [
    {
      args: [1.12, 0.94, 0.75, 0.125, 2],
      answer: 6.25,
      within: 1e-9,
      source: "1.12 + 0.94 + 0.125 + 2 + 2 × 0.75 + 4 × 0.1 + 0.06 = 6.145 in, up to 1/4 in, by hand",
    },
  ],
  run: ({ flangeThickness, otherFlangeThickness, thicknessBetween: between, threadPitch, ...input }) => {
    const thread = boltThread(input.boltDiameter);
    const pitch = threadPitch ?? thread?.pitch;
    if (pitch === undefined) return pitchNeeded(input.boltDiameter);
    return jointStudLength({
      ...input,
      between,
      thicknesses: [flangeThickness, otherFlangeThickness],
      pitch,
      tolerance: LENGTH_TOLERANCE,
      step: thread?.step ?? STUD_STEPS.inch,
    });
  },
});

function pitchNeeded(diameter: number): Result<never> {
  const found = { quantity: "size", value: diameter } as const;
  return fail([{ code: "thread-pitch-needed", kind: "error", subject: "bolt diameter", found }]);
}
