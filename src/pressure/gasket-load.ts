import { checkInputs, type Input, type Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { GASKETS, type GasketName } from "../tables/gaskets.ts";

/** Holes through a gasket that passes the bolts, m. */
export interface GasketHoles {
  readonly boltCircle: number;
  readonly count: number;
  readonly diameter: number;
}

export interface GasketLoadInput {
  readonly gasket: GasketName;
  /** Of the gasket, m. */
  readonly outsideDiameter: number;
  readonly insideDiameter: number;
  /** Diameter of the raised face, m: the ring bears no further out. Left out for a flat face. */
  readonly raisedFace?: number;
  /** Present for a full-face gasket; a ring lies inside the bolts. */
  readonly holes?: GasketHoles;
  /** Working pressure, Pa gauge. */
  readonly pressure: number;
}

export interface GasketLoad {
  /** Diameter at which the gasket load acts, m. */
  readonly loadDiameter: number;
  /** Effective seating width, m. */
  readonly seatingWidth: number;
  /** Area the faces press on, less the holes, m². */
  readonly contactArea: number;
  /** Bolt load that one pascal of pressure asks for, N/Pa. */
  readonly perPascal: number;
  /** Bolt load to hold the pressure and to seat the gasket, N. */
  readonly operating: number;
  readonly seating: number;
  /** The greater of the two. */
  readonly needed: number;
}

const FULL_FACE_RULE = {
  source: "practice",
  at: "full-face gaskets, after a flange maker’s design bulletin: moments of inner and outer ring about the bolt circle",
} as const;

export const gasketLoadMethod = {
  cites: [{ source: "asme-viii-1", at: "mandatory appendix 2, bolt loads", unverified: true }, FULL_FACE_RULE],
  inputs: {
    outsideDiameter: { name: "gasket outside diameter", quantity: "size", above: 0 },
    insideDiameter: { name: "gasket inside diameter", quantity: "size", above: 0 },
    raisedFace: { name: "raised face diameter", quantity: "size", above: 0 },
    boltCircle: { name: "bolt circle", quantity: "size", above: 0 },
    pressure: { name: "pressure", symbol: "P", quantity: "gaugePressure", atLeast: 0 },
  },
} as const satisfies Method<"outsideDiameter" | "insideDiameter" | "raisedFace" | "boltCircle" | "pressure">;

const inch = unitOf("in").factor;
const psi = unitOf("psi").factor;

/** Basic seating width up to which all of it counts, m. */
const NARROW = 0.25 * inch;

/** Where a gasket of unit factors would act, and by how much the part outside the bolts raises its load. */
interface Bearing {
  readonly loadDiameter: number;
  readonly seatingWidth: number;
  readonly contactArea: number;
  readonly leverage: number;
}

/**
 * Least load of all bolts together for a ring gasket inside the bolts or a full-face gasket, N.
 * Formula: W_op = (π/4) G² P + 2 b π G m P λ,  W_seat = π b G y λ.  Ring: λ = 1; b₀ = N/2 with N the width in contact
 *          b = b₀ and G mean to 1/4 in; above, b = 0.5 √b₀ (inches) and G = outside − 2 b
 *          Full face, A outside, B inside, C bolt circle: h = (C−B)(2B+C)/(6(B+C)), h' = (A−C)(2A+C)/(6(A+C))
 *          b = (C−B)/4, G = C − 2 h, λ = 1 + h/h': the outer part holds nothing and must be squeezed too
 * Fails: inputs outside the method's bounds; nothing in contact; bolts outside a full-face gasket.
 * Source: ASME VIII-1, mandatory appendix 2; a flange maker's bulletin for full-face gaskets (both from memory).
 */
export function gasketLoad(input: GasketLoadInput): Result<GasketLoad> {
  const { gasket, outsideDiameter, insideDiameter, pressure, holes } = input;
  const raisedFace = input.raisedFace ?? outsideDiameter;
  const contactOutside = Math.min(outsideDiameter, raisedFace);
  const boltCircle = holes?.boltCircle ?? contactOutside;
  const inputs: Readonly<Record<string, Input>> = {
    ...gasketLoadMethod.inputs,
    insideDiameter: { ...gasketLoadMethod.inputs.insideDiameter, below: Math.min(contactOutside, boltCircle) },
    boltCircle: { ...gasketLoadMethod.inputs.boltCircle, ...(holes && { below: outsideDiameter }) },
  };
  const method = { ...gasketLoadMethod, inputs };
  const values = { outsideDiameter, insideDiameter, raisedFace, boltCircle, pressure };
  return andThen(checkInputs(method, values), () => {
    const { factor, seatingStress } = GASKETS[gasket];
    const { loadDiameter, seatingWidth, contactArea, leverage } =
      holes === undefined ? ring(contactOutside, insideDiameter) : fullFace(outsideDiameter, insideDiameter, holes);
    const squeezed = Math.PI * seatingWidth * loadDiameter * leverage;
    const perPascal = (Math.PI / 4) * loadDiameter ** 2 + 2 * squeezed * factor;
    const operating = perPascal * pressure;
    const seating = squeezed * seatingStress * psi;
    const needed = Math.max(operating, seating);
    return succeed({ loadDiameter, seatingWidth, contactArea, perPascal, operating, seating, needed });
  });
}

function ring(outside: number, inside: number): Bearing {
  const basic = (outside - inside) / 4;
  const isNarrow = basic <= NARROW;
  const seatingWidth = isNarrow ? basic : 0.5 * Math.sqrt(basic / inch) * inch;
  return {
    loadDiameter: isNarrow ? (outside + inside) / 2 : outside - 2 * seatingWidth,
    seatingWidth,
    contactArea: (Math.PI / 4) * (outside ** 2 - inside ** 2),
    leverage: 1,
  };
}

function fullFace(outside: number, inside: number, { boltCircle, count, diameter }: GasketHoles): Bearing {
  const inner = ((boltCircle - inside) * (2 * inside + boltCircle)) / (6 * (inside + boltCircle));
  const outer = ((outside - boltCircle) * (2 * outside + boltCircle)) / (6 * (outside + boltCircle));
  return {
    loadDiameter: boltCircle - 2 * inner,
    seatingWidth: (boltCircle - inside) / 4,
    contactArea: (Math.PI / 4) * (outside ** 2 - inside ** 2 - count * diameter ** 2),
    leverage: 1 + inner / outer,
  };
}

/** Load of all bolts together that a gasket needs at a pressure in Pa, N. */
export function loadAt({ perPascal, seating }: GasketLoad, pressure: number): number {
  return Math.max(perPascal * pressure, seating);
}

/** Greatest pressure that a load of all bolts together in N holds, Pa; 0 where it does not seat the gasket. */
export function sealedBy({ perPascal, seating }: GasketLoad, load: number): number {
  return load < seating * (1 - 1e-9) ? 0 : load / perPascal;
}
