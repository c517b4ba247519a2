import type { Citation } from "../basis/citation.ts";

/**
 * Absolute roughness of the wetted surface, millimetres: design value, then the range that is found, then source.
 *
 * Verified: Moody's values compared with the table of the open library fluids 1.0.22 (which keeps them in metres,
 * rounded), Idelchik's ranges with the same library's extract of the Handbook of Hydraulic Resistance, 4th edition
 * (tests/slow/pipe-oracle.test.ts). The others are from memory or a choice, as their source says.
 */
export interface Surface {
  readonly design: number;
  readonly least: number;
  readonly greatest: number;
  readonly cites: Citation;
  /** The design value is one of many that the surface may have: the pipe carries a caution. */
  readonly uncertain?: true;
}

const moody = (at: string): Citation => ({ source: "moody-1944", at: `roughness chart, ${at}` });
const idelchik = (at: string): Citation => ({ source: "idelchik", at: `roughness tables, ${at}` });

export const SURFACES = {
  "drawn tube": { design: 0.0015, least: 0.0015, greatest: 0.01, cites: moody("drawn tubing") },
  plastic: { design: 0.0015, least: 0.0015, greatest: 0.01, cites: moody("drawn tubing, as smooth") },
  polyethylene: {
    design: 0.02,
    least: 0.0015,
    greatest: 0.03,
    cites: { source: "ppi-handbook", at: "design roughness 7e-5 ft, weld beads included" },
  },
  steel: { design: 0.045, least: 0.02, greatest: 0.1, cites: moody("commercial steel, 0.00015 ft") },
  "used steel": {
    design: 0.5,
    least: 0.15,
    greatest: 1,
    uncertain: true,
    cites: idelchik("seamless steel, years of operation, generally corroded or small deposits"),
  },
  "old steel": {
    design: 1.5,
    least: 1.2,
    greatest: 1.5,
    uncertain: true,
    cites: idelchik("seamless steel, used water piping"),
  },
  "stainless steel": {
    design: 0.045,
    least: 0.015,
    greatest: 0.045,
    cites: {
      source: "house",
      at: "stainless steel taken as commercial steel, the rough end of the range for pickled pipe",
    },
  },
  "galvanised steel": { design: 0.15, least: 0.1, greatest: 0.18, cites: moody("galvanized iron, 0.0005 ft") },
  "asphalted iron": { design: 0.12, least: 0.1, greatest: 0.15, cites: moody("asphalted cast iron, 0.0004 ft") },
  "cast iron": { design: 0.26, least: 0.25, greatest: 1, cites: moody("cast iron, 0.00085 ft") },
  "old cast iron": {
    design: 1.5,
    least: 1,
    greatest: 1.5,
    uncertain: true,
    cites: idelchik("cast iron, used water mains"),
  },
  "cement lining": {
    design: 0.06,
    least: 0.03,
    greatest: 0.12,
    cites: { source: "practice", at: "cement-mortar lining of ductile-iron pipe" },
  },
  "worn quick-connect": {
    design: 0.5,
    least: 0.3,
    greatest: 1,
    uncertain: true,
    cites: { source: "practice", at: "galvanised quick-connect pipe after years of hire" },
  },
  aluminium: {
    design: 0.01,
    least: 0.0015,
    greatest: 0.1,
    cites: { source: "practice", at: "aluminium irrigation tubing, bare pipe: seam and dents" },
  },
  "aluminium with couplers": {
    design: 0.15,
    least: 0.1,
    greatest: 0.3,
    cites: { source: "nrcs-430", at: "Hazen-Williams C of 130 with couplers each 20 to 40 ft, as a roughness" },
  },
  "lined steel": {
    design: 0.1,
    least: 0.03,
    greatest: 0.3,
    cites: { source: "practice", at: "steel pipe lined with cement mortar" },
  },
  "concrete pipe": {
    design: 0.6,
    least: 0.3,
    greatest: 1.5,
    uncertain: true,
    cites: { source: "practice", at: "reinforced concrete pipe with good joints, within Moody's 0.3 to 3 mm" },
  },
  "concrete pressure pipe": {
    design: 0.3,
    least: 0.1,
    greatest: 0.6,
    cites: { source: "practice", at: "concrete pressure pipe, as Hazen-Williams C of 140", unverified: true },
  },
  concrete: { design: 1, least: 0.3, greatest: 3, uncertain: true, cites: moody("concrete, 0.001 to 0.01 ft") },
  "smooth hose": {
    design: 0.03,
    least: 0.01,
    greatest: 0.05,
    cites: { source: "house", at: "smooth-bore rubber, nitrile and polyurethane hose" },
  },
  "PVC lay-flat": {
    design: 0.05,
    least: 0.01,
    greatest: 0.1,
    cites: { source: "practice", at: "lay-flat hose of PVC: the weave shows through the lining" },
  },
  "fire hose": {
    design: 0.05,
    least: 0.01,
    greatest: 0.3,
    cites: { source: "practice", at: "rubber-lined fire hose at its nominal bore" },
  },
  "corrugated hose": {
    design: 0,
    least: 0,
    greatest: 0,
    cites: { source: "house", at: "corrugated bore: smooth friction factor times 2" },
  },
} as const satisfies Record<string, Surface>;

export type SurfaceName = keyof typeof SURFACES;

/** Friction factor of corrugated-bore hose per that of a smooth bore: taken, least and greatest found. */
export const CORRUGATION_FACTOR = { taken: 2, least: 1.5, greatest: 3 } as const;
