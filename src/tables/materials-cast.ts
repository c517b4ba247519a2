import type { Citation } from "../basis/citation.ts";

/**
 * Castings for wetted pump parts: least mechanical properties, hardness, density, magnetic permeability and pitting
 * resistance. Strengths are printed in both unit systems by the specifications and are kept as two figures, not one
 * converted. Density in g/cm³. Null where the specification states nothing.
 *
 * Hardness in Brinell (HB), by condition where there is more than one; the remark says whose figure it is. Pitting
 * resistance %Cr + 3.3 %Mo + 16 %N from the ends of the specified composition, copper and nickel apart.
 *
 * ASTM A536-84 (2019), A395-99, A48-03, A532-10, A743/A351, A890/A995, B148, A216.
 * Verified: each row says which of its figures were looked up in a reprint and which are from memory of the
 * specification; permeability is rough and depends on heat treatment and ferrite. Yield is below tensile strength and
 * ksi × 6.895 agrees with MPa within 1 % in every row. Check against the specification in force before release.
 */
export interface Casting {
  readonly id: string;
  /** As the product prints it. */
  readonly name: string;
  readonly specification: string;
  readonly uns: string;
  readonly tensileKsi: number | null;
  readonly tensileMPa: number | null;
  readonly yieldKsi: number | null;
  readonly yieldMPa: number | null;
  /** Least elongation, %: a number, or the text where it is no figure to count on. */
  readonly elongation: number | string;
  readonly hardness: readonly [HardnessBand, ...HardnessBand[]];
  readonly density: number;
  readonly permeability: Permeability;
  /** Pitting resistance equivalent number; null for metals it does not speak of. */
  readonly pittingResistance: readonly [least: number, greatest: number] | null;
  readonly verified: string;
  readonly cites: Citation;
}

/** HB; null where that side is open. */
export interface HardnessBand {
  readonly condition: string;
  readonly least: number | null;
  readonly greatest: number | null;
  readonly remark: string;
}

/** Relative magnetic permeability: figures where there are any, and the words. */
export interface Permeability {
  readonly least: number | null;
  readonly greatest: number | null;
  readonly text: string;
}

export const CASTINGS: readonly Casting[] = [
  {
    id: "DI",
    name: "ductile iron",
    specification: "ASTM A536 Gr 65-45-12",
    uns: "F33100",
    tensileKsi: 65,
    tensileMPa: 448,
    yieldKsi: 45,
    yieldMPa: 310,
    elongation: 12,
    hardness: [
      { condition: "as supplied", least: 156, greatest: 217, remark: "band of SAE J434 D4512; not required by A536" },
    ],
    density: 7.1,
    permeability: { least: null, greatest: 2100, text: "2100 at most (annealed, ferritic)" },
    pittingResistance: null,
    verified: "strength and hardness looked up",
    cites: { source: "astm-a536", at: "grade 65-45-12, tensile requirements" },
  },
  {
    id: "DI395",
    name: "ductile iron, pressure grade",
    specification: "ASTM A395 Gr 60-40-18",
    uns: "F32800",
    tensileKsi: 60,
    tensileMPa: 414,
    yieldKsi: 40,
    yieldMPa: 276,
    elongation: 18,
    hardness: [{ condition: "as supplied", least: 143, greatest: 187, remark: "requirement of A395" }],
    density: 7.1,
    permeability: { least: null, greatest: 2100, text: "2100 at most" },
    pittingResistance: null,
    verified: "looked up; the grade that the ratings of ASME B16.42 assume",
    cites: { source: "astm-a395", at: "grade 60-40-18, tensile and hardness requirements" },
  },
  {
    id: "GI",
    name: "grey iron",
    specification: "ASTM A48 Class 30B",
    uns: "F12101",
    tensileKsi: 30,
    tensileMPa: 207,
    yieldKsi: null,
    yieldMPa: null,
    elongation: "below 1",
    hardness: [{ condition: "as supplied", least: 174, greatest: 210, remark: "typical" }],
    density: 7.15,
    permeability: { least: null, greatest: 800, text: "800 at most" },
    pittingResistance: null,
    verified: "strength and hardness looked up; no yield point, brittle",
    cites: { source: "astm-a48", at: "class 30, test bar B" },
  },
  {
    id: "HCWI",
    name: "high-chrome white iron",
    specification: "ASTM A532 Class III Type A",
    uns: "F45009",
    tensileKsi: null,
    tensileMPa: null,
    yieldKsi: null,
    yieldMPa: null,
    elongation: "about 0",
    hardness: [
      { condition: "as cast", least: 450, greatest: null, remark: "requirement" },
      { condition: "hardened level 1", least: 600, greatest: null, remark: "requirement" },
      { condition: "hardened level 2", least: 650, greatest: null, remark: "requirement" },
      { condition: "annealed", least: null, greatest: 400, remark: "requirement, softened for machining" },
    ],
    density: 7.7,
    permeability: { least: 10, greatest: 100, text: "tens to about 100, by retained austenite (rough)" },
    pittingResistance: null,
    verified: "hardness and composition (25 % Cr) looked up; no tensile requirement in the specification",
    cites: { source: "astm-a532", at: "class III type A, tables 1 and 2" },
  },
  {
    id: "316C",
    name: "cast 316 stainless",
    specification: "ASTM A743/A744/A351 CF8M",
    uns: "J92900",
    tensileKsi: 70,
    tensileMPa: 485,
    yieldKsi: 30,
    yieldMPa: 205,
    elongation: 30,
    hardness: [{ condition: "as supplied", least: 140, greatest: 170, remark: "typical" }],
    density: 7.9,
    permeability: { least: 1, greatest: 2.5, text: "1.0 to 2.5 with 5 to 15 % ferrite (rough)" },
    pittingResistance: [24.6, 30.9],
    verified: "from memory; Cr 18 to 21, Mo 2.0 to 3.0, N not specified",
    cites: { source: "astm-a743", at: "grade CF8M" },
  },
  {
    id: "1B",
    name: "cast duplex CD4MCuN",
    specification: "ASTM A890/A995 Gr 1B",
    uns: "J93372",
    tensileKsi: 100,
    tensileMPa: 690,
    yieldKsi: 70,
    yieldMPa: 485,
    elongation: 16,
    hardness: [{ condition: "as supplied", least: 220, greatest: 265, remark: "typical" }],
    density: 7.8,
    permeability: { least: 30, greatest: 50, text: "30 to 50 (rough; ferromagnetic)" },
    pittingResistance: [31.7, 38.1],
    verified:
      "strength and composition looked up, nitrogen band from memory: Cr 24.5 to 26.5, Mo 1.7 to 2.3, N 0.10 to 0.25",
    cites: { source: "astm-a890", at: "grade 1B (CD4MCuN)" },
  },
  {
    id: "1A",
    name: "cast duplex CD4MCu",
    specification: "ASTM A890 Gr 1A",
    uns: "J93370",
    tensileKsi: 100,
    tensileMPa: 690,
    yieldKsi: 70,
    yieldMPa: 485,
    elongation: 16,
    hardness: [{ condition: "as supplied", least: 230, greatest: 260, remark: "typical" }],
    density: 7.8,
    permeability: { least: 30, greatest: 50, text: "30 to 50 (rough)" },
    pittingResistance: [30.3, 33.9],
    verified: "pitting resistance of 32 at mid composition looked up in an open database; the rest from memory",
    cites: { source: "astm-a890", at: "grade 1A (CD4MCu)" },
  },
  {
    id: "NAB",
    name: "nickel-aluminium bronze",
    specification: "ASTM B148 C95800",
    uns: "C95800",
    tensileKsi: 85,
    tensileMPa: 585,
    yieldKsi: 35,
    yieldMPa: 240,
    elongation: 15,
    hardness: [{ condition: "as supplied", least: 159, greatest: 159, remark: "typical" }],
    density: 7.64,
    permeability: { least: 1.05, greatest: 1.5, text: "1.05 to 1.5 (rough)" },
    pittingResistance: null,
    verified: "from memory",
    cites: { source: "astm-b148", at: "alloy C95800" },
  },
  {
    id: "WCB",
    name: "cast carbon steel",
    specification: "ASTM A216 Gr WCB",
    uns: "J03002",
    tensileKsi: 70,
    tensileMPa: 485,
    yieldKsi: 36,
    yieldMPa: 250,
    elongation: 22,
    hardness: [{ condition: "as supplied", least: 137, greatest: 187, remark: "usual band" }],
    density: 7.85,
    permeability: { least: 400, greatest: null, text: "400 to over 1000 (rough)" },
    pittingResistance: null,
    verified: "from memory (tensile 70 to 95 ksi)",
    cites: { source: "astm-a216", at: "grade WCB" },
  },
  {
    id: "CA6NM",
    name: "cast 13Cr-4Ni",
    specification: "ASTM A743 Gr CA6NM",
    uns: "J91540",
    tensileKsi: 110,
    tensileMPa: 755,
    yieldKsi: 80,
    yieldMPa: 550,
    elongation: 15,
    hardness: [{ condition: "as supplied", least: 240, greatest: 285, remark: "typical" }],
    density: 7.7,
    permeability: { least: null, greatest: null, text: "ferromagnetic" },
    pittingResistance: null,
    verified: "from memory",
    cites: { source: "astm-a743", at: "grade CA6NM" },
  },
];
