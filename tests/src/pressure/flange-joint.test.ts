import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Result } from "../../../src/basis/result.ts";
import { flangeClassNamed } from "../../../src/pressure/flange-class.ts";
import { type FlangeJoint, type FlangeJointInput, flangeJoint } from "../../../src/pressure/flange-joint.ts";
import { jointMaterialOf } from "../../../src/pressure/joint-material.ts";
import { pressureMaterialNamed } from "../../../src/pressure/pressure-material.ts";
import { PRESSURE_MATERIALS } from "../../../src/tables/pressure-materials.ts";

const PSI = 6894.757293168361;
const LBF = 4.4482216152605;
const FOOT_POUND = 1.3558179483314;

function good<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.findings));
  return result.value;
}

function codesOf({ findings }: Result<unknown>): readonly string[] {
  return findings.map(({ kind, code }) => `${kind} ${code}`);
}

const material = (name: string): FlangeJointInput["material"] => good(pressureMaterialNamed(name));
const flangeClass = (name: string): FlangeJointInput["flangeClass"] => good(flangeClassNamed(name, "US"));

const ductile: FlangeJointInput = {
  size: "8",
  flangeClass: flangeClass("150"),
  system: "US",
  pressure: 250 * PSI,
  gasket: "fibre 1/16 in",
  material: material("ductile iron"),
  grade: "A193 B7",
  nutFactor: 0.2,
};

describe("the joint of a flange", () => {
  /*
   * NPS 8 Class 150, ASME B16.5: eight bolts of 3/4 in, raised face 10.62 in, ring 8.62 × 11 in. By hand, inches and
   * pounds, ASME VIII-1 appendix 2: N = (10.62 − 8.62)/2 = 1, b₀ = 0.5, b = 0.5 √0.5 = 0.353553, G = 10.62 − 0.707107 =
   * 9.912893. H = 0.785398 × 98.26545 × 250 = 19 294.4; 2 b π G m P = 0.707107 × 31.142272 × 687.5 = 15 139.4.
   * Seating: π b G y = 3.141593 × 0.353553 × 9.912893 × 3700 = 40 738.7, which governs.
   * Needed stress 40 738.7/(8 × 0.3345) = 15 223.7 psi; B7 in ductile iron half of 42 000 = 21 000 psi: 7024.5 lb a bolt;
   * T = 0.2 × 0.75 × 7024.5/12 = 87.81 lbf·ft. Contact π/4 (10.62² − 8.62²) = 30.2221 in²: 8 × 7024.5/30.2221 = 1859.4 psi.
   */
  it("in ductile iron comes to what a hand calculation in inches says", () => {
    const joint = good(flangeJoint(ductile));
    expect(joint.bolts).toBe(8);
    expect(joint.boltSize).toBe("3/4");
    expect(joint.gasket.operating / LBF).toBeCloseTo(34_433.8, 0);
    expect(joint.gasket.seating / LBF).toBeCloseTo(40_738.7, 0);
    expect(joint.gasket.needed).toBe(joint.gasket.seating);
    expect(joint.neededStress / PSI).toBeCloseTo(15_223.7, 0);
    expect(joint.stress / PSI).toBeCloseTo(21_000, 6);
    expect(joint.ceiling / PSI).toBeCloseTo(31_500, 6);
    expect(joint.load / LBF).toBeCloseTo(7024.5, 3);
    expect(joint.torque / FOOT_POUND).toBeCloseTo(87.806, 2);
    expect(joint.gasketStress / PSI).toBeCloseTo(1859.4, 0);
    // 7024.5/0.3019 = 23 267.6 psi on the root; 210 × 23.2676/50 = 97.72 lbf·ft.
    expect(joint.referenceTorque / FOOT_POUND).toBeCloseTo(97.72, 1);
  });

  // The same by the metric form of the code, b = 2.52 √b₀ in mm, and Newton-metres from the start.
  it("agrees with a second route in millimetres", () => {
    const joint = good(flangeJoint(ductile));
    const [outside, inside] = [10.62 * 25.4, 8.62 * 25.4];
    const width = 2.52 * Math.sqrt((outside - inside) / 4);
    const diameter = outside - 2 * width;
    expect(joint.gasket.seating / (Math.PI * width * diameter * 25.51)).toBeCloseTo(1, 3);
    // 21 ksi is 144.79 MPa, 0.3345 in² 215.81 mm².
    expect(joint.torque / (0.2 * 0.01905 * 144.79 * 215.81)).toBeCloseTo(1, 4);
  });

  /*
   * NPS 6 Class 150 with rubber of 75 A: b = 0.342783, G = 7.814435, contact 22.3254 in². Needed by pressure: 11 990.2 +
   * 2 × 0.342783 × π × 7.814435 × 250 = 16 197.8 lb, which is 6053 psi on 8 × 0.3345 in². Rubber takes 900 × 22.3254 =
   * 20 092.9 lb: 7508.5 psi, far below the 42 000 psi a B7 stud is usually pulled to.
   */
  it("with rubber is pulled no harder than the rubber stands", () => {
    const joint = flangeJoint({
      ...ductile,
      size: "6",
      gasket: "rubber 75 A or harder",
      material: material("carbon steel"),
    });
    expect(good(joint).gasket.needed / LBF).toBeCloseTo(16_197.8, 0);
    expect(good(joint).neededStress / PSI).toBeCloseTo(6053, 0);
    expect(good(joint).stress / PSI).toBeCloseTo(7508.5, 0);
    expect(good(joint).gasketStress / PSI).toBeCloseTo(900, 6);
    expect(codesOf(joint)).toContain("check bolt-stress-held-by-gasket");
  });

  /*
   * Grey iron, NPS 6 Class 125, fibre at 150 psi: the face is flat, so the ring bears from 6.62 to 8.75 in. N = 1.065,
   * b = 0.5 √0.5325 = 0.364863, G = 8.75 − 0.729726 = 8.020274; seating π b G × 3700 = 34 015 lb, over 8 × 0.3345 in²
   * 12 711 psi, and no more is taken.
   */
  it("in grey iron seats the gasket and stops there", () => {
    const joint = flangeJoint({
      ...ductile,
      size: "6",
      flangeClass: flangeClass("125"),
      material: material("grey iron"),
      pressure: 150 * PSI,
      grade: "A307 B",
    });
    expect(good(joint).gasket.seating / LBF).toBeCloseTo(34_015, 0);
    expect(good(joint).neededStress / PSI).toBeCloseTo(12_711.1, 0);
    expect(good(joint).stress).toBe(good(joint).neededStress);
    expect(good(joint).ceiling).toBe(good(joint).neededStress);
    expect(codesOf(joint)).toEqual([
      "check bolt-load-may-fall-short",
      "check bolt-torque-scatter",
      "check full-face-gasket-not-reckoned",
      "check joint-figures-from-memory",
    ]);
  });

  // Spiral wound on NPS 6 Class 150: seating π × 0.342783 × 7.814435 × 10 000 = 84 152 lb, 31 447 psi on eight 3/4 in bolts.
  it("with a spiral-wound gasket warns on iron and cautions on steel", () => {
    const wound = { ...ductile, size: "6", gasket: "spiral wound" } as const;
    expect(codesOf(flangeJoint(wound))).toContain("limit spiral-wound-as-flat-ring");
    const onSteel = flangeJoint({ ...wound, material: material("WCB") });
    expect(codesOf(onSteel)).toContain("check spiral-wound-as-flat-ring");
    expect(good(onSteel).neededStress / PSI).toBeCloseTo(31_447, 0);
  });

  // ASME B16.42: Class 150 ductile iron holds 250 psi cold.
  it.each([
    [250, false],
    [250.1, true],
  ])("at %d psi warns of the rating: %s", (psi, warns) => {
    expect(codesOf(flangeJoint({ ...ductile, pressure: psi * PSI })).includes("limit pressure-above-rating")).toBe(
      warns,
    );
  });

  it.each([
    ["NPS 22, not in ASME B16.5", { size: "22" }, "flange-size-unknown"],
    ["PN16", { flangeClass: flangeClass("PN16") }, "flange-dimensions-not-held"],
    ["a nut factor below 0.08", { nutFactor: 0.0799 }, "out-of-range"],
    ["a nut factor above 0.40", { nutFactor: 0.4001 }, "out-of-range"],
    ["a pressure below 0", { pressure: -1 }, "out-of-range"],
    ["a pressure that is none", { pressure: Number.NaN }, "not-a-number"],
    ["grey iron in Class 150", { material: material("grey iron") }, "class-not-of-material"],
    ["ductile iron in Class 125", { flangeClass: flangeClass("125") }, "class-not-of-material"],
    ["grade 5 in a bolt above 1 in", { size: "18", grade: "SAE grade 5" }, "out-of-range"],
  ] as const)("is refused for %s", (_, change, code) => {
    const refused = flangeJoint({ ...ductile, ...change });
    expect(refused.ok).toBe(false);
    expect(refused.findings.map((finding) => finding.code)).toContain(code);
  });

  it.each([0.08, 0.4])("takes a nut factor of %d", (nutFactor) => {
    expect(flangeJoint({ ...ductile, nutFactor }).ok).toBe(true);
  });

  it("never needs less load for more pressure, nor pulls less", () => {
    const gaskets = ["rubber below 75 A", "rubber 75 A or harder", "fibre 1/16 in", "spiral wound"] as const;
    const pressures = fc.double({ min: 0, max: 2e6, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...gaskets), pressures, pressures, (gasket, one, other) => {
        const at = (pressure: number): FlangeJoint => good(flangeJoint({ ...ductile, gasket, pressure }));
        const [low, high] = [at(Math.min(one, other)), at(Math.max(one, other))];
        expect(high.gasket.needed).toBeGreaterThanOrEqual(low.gasket.needed);
        expect(high.torque).toBeGreaterThanOrEqual(low.torque);
      }),
    );
  });
});

describe("materials by how hard their bolts may be pulled", () => {
  it.each([
    ["ductile iron", "ductile iron"],
    ["A536", "ductile iron"],
    ["EN-GJS-400-15", "ductile iron"],
    ["grey iron", "grey iron"],
    ["A126 Class A", "grey iron"],
    ["EN-GJL-250", "grey iron"],
    ["WCB", "steel"],
    ["CF8M", "steel"],
    ["duplex", "steel"],
  ])("%s is %s", (name, joint) => {
    expect(jointMaterialOf(material(name))).toBe(joint);
  });

  it("has every material that is iron by name in iron", () => {
    for (const one of PRESSURE_MATERIALS) {
      if (/grey|A126|GJL/.test(one.name)) expect(jointMaterialOf(one)).toBe("grey iron");
      if (/ductile|A395|A536|GJS/.test(one.name)) expect(jointMaterialOf(one)).toBe("ductile iron");
    }
  });
});
