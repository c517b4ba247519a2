import { checkInputs, type Method } from "../basis/method.ts";
import { andThen, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { GASKETS, type GasketName } from "../tables/gaskets.ts";

export interface GasketLoadInput {
  readonly gasket: GasketName;
  /** Of the ring, m. */
  readonly outsideDiameter: number;
  readonly insideDiameter: number;
  /** Diameter of the raised face, m: the ring bears no further out. Left out for a flat face. */
  readonly raisedFace?: number;
  /** Working pressure, Pa gauge. */
  readonly pressure: number;
}

export interface GasketLoad {
  /** Diameter at which the gasket load acts, m. */
  readonly loadDiameter: number;
  /** Effective seating width, m. */
  readonly seatingWidth: number;
  /** Area the faces press on, m². */
  readonly contactArea: number;
  /** Bolt load to hold the pressure and to seat the gasket, N. */
  readonly operating: number;
  readonly seating: number;
  /** The greater of the two. */
  readonly needed: number;
}

export const gasketLoadMethod = {
  cites: [{ source: "asme-viii-1", at: "mandatory appendix 2, bolt loads", unverified: true }],
  inputs: {
    outsideDiameter: { name: "gasket outside diameter", quantity: "size", above: 0 },
    insideDiameter: { name: "gasket inside diameter", quantity: "size", above: 0 },
    raisedFace: { name: "raised face diameter", quantity: "size", above: 0 },
    pressure: { name: "pressure", symbol: "P", quantity: "gaugePressure", atLeast: 0 },
  },
} as const satisfies Method<"outsideDiameter" | "insideDiameter" | "raisedFace" | "pressure">;

const inch = unitOf("in").factor;
const psi = unitOf("psi").factor;

/** Basic seating width up to which all of it counts, m. */
const NARROW = 0.25 * inch;

/**
 * Least load of all bolts together for a ring gasket inside the bolts, N (a full-face gasket asks for more).
 * Formula: W_op = (π/4) G² P + 2 b π G m P,  W_seat = π b G y;  b₀ = N/2 with N the width in contact
 *          b = b₀ and G mean to 1/4 in; above, b = 0.5 √b₀ (inches) and G = outside − 2 b
 * Fails: inputs outside the method's bounds; nothing in contact.
 * Source: ASME VIII-1, mandatory appendix 2 (from memory).
 */
export function gasketLoad(input: GasketLoadInput): Result<GasketLoad> {
  const { gasket, outsideDiameter, insideDiameter, pressure } = input;
  const raisedFace = input.raisedFace ?? outsideDiameter;
  const contactOutside = Math.min(outsideDiameter, raisedFace);
  const { insideDiameter: inside } = gasketLoadMethod.inputs;
  const method = {
    ...gasketLoadMethod,
    inputs: { ...gasketLoadMethod.inputs, insideDiameter: { ...inside, below: contactOutside } },
  };
  return andThen(checkInputs(method, { outsideDiameter, insideDiameter, raisedFace, pressure }), () => {
    const { factor, seatingStress } = GASKETS[gasket];
    const width = (contactOutside - insideDiameter) / 2;
    const basic = width / 2;
    const isNarrow = basic <= NARROW;
    const seatingWidth = isNarrow ? basic : 0.5 * Math.sqrt(basic / inch) * inch;
    const loadDiameter = isNarrow ? (contactOutside + insideDiameter) / 2 : contactOutside - 2 * seatingWidth;
    const end = (Math.PI / 4) * loadDiameter ** 2 * pressure;
    const operating = end + 2 * seatingWidth * Math.PI * loadDiameter * factor * pressure;
    const seating = Math.PI * seatingWidth * loadDiameter * seatingStress * psi;
    const contactArea = (Math.PI / 4) * (contactOutside ** 2 - insideDiameter ** 2);
    const needed = Math.max(operating, seating);
    return succeed({ loadDiameter, seatingWidth, contactArea, operating, seating, needed });
  });
}
