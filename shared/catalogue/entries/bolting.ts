import { andThen, fail, type Result, succeed } from "../../../src/basis/result.ts";
import { unitOf } from "../../../src/basis/units.ts";
import { boltAssemblyCites } from "../../../src/pressure/bolt-assembly.ts";
import { boltThread } from "../../../src/pressure/bolt-thread.ts";
import { boltTorqueMethod } from "../../../src/pressure/bolt-torque.ts";
import { flangeDimensionsCites } from "../../../src/pressure/flange-dimensions.ts";
import { flangeJoint } from "../../../src/pressure/flange-joint.ts";
import { gasketLoadMethod } from "../../../src/pressure/gasket-load.ts";
import { jointStudLength, jointStudLengthMethod, STUD_STEPS } from "../../../src/pressure/stud-length.ts";
import { BOLT_GRADES, type BoltGradeName } from "../../../src/tables/bolts.ts";
import { GASKETS, type GasketName } from "../../../src/tables/gaskets.ts";
import { PRESSURE_MATERIALS, type PressureMaterial } from "../../../src/tables/pressure-materials.ts";
import { defineEntry } from "../entry.ts";
import { choice, type OptionalParameter, quantity, text } from "../parameter.ts";
import { flangeClass, ratingSystem } from "../parameters/class.ts";
import { flangeMaterial as namedMaterial } from "../parameters/material.ts";
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

export const BOLTTORQUE = defineEntry({
  id: "BOLTTORQUE",
  group: "Pressure and flanges",
  summary: "Bolt load and tightening torque of a flange with its flat ring gasket, against a pressure",
  method:
    "Flange, bolts and flat ring gasket by size and class as in FLANGEDIMENSIONS; the ring bears as far out as the raised face, in Class 125 and 250 on its whole width. Load to hold the pressure (π/4) G² P + 2 b π G m P, to seat the gasket π b G y; m, y: rubber below 75 A 0.5, 0; rubber 75 A or harder 1, 200 psi; fibre 1/16 in 2.75, 3700 psi; spiral wound 3, 10 000 psi. Contact width N: b₀ = N/2, b = b₀ and G the mean diameter up to 1/4 in, above it b = 0.5 √b₀ in inches and G the outside less 2 b. The stress taken is the needed one, raised to the least the grade is usually pulled to (B7 42 ksi, SAE grade 5 51, ISO 8.8 52.2, A307 B 20; half in ductile iron), but not past what crushes the gasket (rubber 900 psi, fibre 15 000 psi on the area in contact); in grey iron the needed one alone. NOTES says where a torque wrench 30 % low would leave less than is needed. Greatest stress allowed: B7 63 ksi, 59.5, 60.9, 25; half in ductile iron. Torque T = K D F; reference torque of ASME PCC-1 table 1, plain studs, at the same load. The pressure is held against the rating of cold metal; FLANGECHECK takes the temperature.",
  cites: [
    ...gasketLoadMethod.cites,
    ...boltTorqueMethod.cites,
    ...boltAssemblyCites,
    { source: "asme-pcc-1", at: "table 1, reference torques" },
    ...flangeDimensionsCites,
  ],
  parameters: {
    size: text<string>({ about: "Nominal size of the flange", example: '"6", "NPS 6", "6in" or "DN150"' }, (given) =>
      succeed(given),
    ),
    flangeClass,
    pressure: zeroDoubted(
      quantity("gaugePressure", {
        about: "Greatest pressure the joint must hold",
        example: '250, or "17 bar"',
        range: "0 or more",
      }),
    ),
    gasket: choice(Object.keys(GASKETS) as readonly GasketName[], { about: "Gasket material" }),
    flangeMaterial,
    boltGrade: choice(Object.keys(BOLT_GRADES) as readonly BoltGradeName[], {
      about: "Bolting material",
      whenLeftOut: "A193 B7",
    }),
    nutFactor: quantity("ratio", {
      about: "Nut factor K: 0.16 to 0.20 lubricated, 0.20 to 0.25 as received",
      example: "0.2",
      range: "0.08 to 0.40",
      whenLeftOut: { value: 0.2, shown: "0.2" },
    }),
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
      greatest: { name: "greatest stress allowed", quantity: "stress" },
      load: { name: "load of one bolt", quantity: "force" },
      torque: { name: "torque", quantity: "torque" },
      reference: { name: "reference torque", quantity: "torque" },
      gasketStress: { name: "gasket stress", quantity: "stress" },
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
  ],
  run: ({ size, flangeClass, flangeMaterial: material, boltGrade: grade, ...input }, { unitSet }) =>
    andThen(flangeJoint({ ...input, size, flangeClass, material, grade, system: ratingSystem(unitSet) }), (joint) =>
      succeed({
        bolts: joint.bolts,
        boltSize: `${joint.boltSize} in`,
        operating: joint.gasket.operating,
        seating: joint.gasket.seating,
        needed: joint.gasket.needed,
        neededStress: joint.neededStress,
        stress: joint.stress,
        greatest: joint.ceiling,
        load: joint.load,
        torque: joint.torque,
        reference: joint.referenceTorque,
        gasketStress: joint.gasketStress,
      }),
    ),
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
      whenLeftOut: { value: null, shown: "coarse thread of the inch bolts 1/2 to 1-1/2 in and of M12 to M39" },
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
