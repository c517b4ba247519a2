import { NOMINAL_DIAMETERS } from "../tables/nominal-diameter.ts";

/** A nominal size as written in the tables, "2-1/2", as a number of inches. */
export function inchesOf(size: string): number {
  return size.split("-").reduce((sum, part) => {
    const [over, under] = part.split("/");
    return sum + Number(over) / Number(under ?? 1);
  }, 0);
}

const dnByInches = new Map(NOMINAL_DIAMETERS.map(([nps, dn]) => [inchesOf(nps), dn]));
const inchesByDn = new Map([...dnByInches].map(([inches, dn]) => [dn, inches]));

/** DN of a nominal pipe size in inches, or nothing where there is none. */
export function nominalDiameter(inches: number): number | undefined {
  return dnByInches.get(inches);
}

/** Nominal pipe size in inches of a DN, or nothing where there is none. */
export function nominalInches(dn: number): number | undefined {
  return inchesByDn.get(dn);
}
