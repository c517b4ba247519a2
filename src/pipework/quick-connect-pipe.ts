import { unitOf } from "../basis/units.ts";
import { QUICK_CONNECT_ALUMINIUM, QUICK_CONNECT_STEEL } from "../tables/quick-connect-pipe.ts";
import { inchesOf } from "./nominal-size.ts";
import { inDecimals, type PipeFamily, type PipeSize, pipeFamily } from "./pipe-family.ts";

const inch = unitOf("in").factor;
const millimetre = unitOf("mm").factor;
const psi = unitOf("psi").factor;
const bar = unitOf("bar").factor;

/**
 * Galvanised steel and aluminium pipe with quick couplings: steel by inches or by outside diameter in millimetres, aluminium by
 * inches. Source: common practice; the diameters of steel differ by maker.
 */
export function quickConnectFamilies(): readonly PipeFamily[] {
  return [
    pipeFamily({
      family: "quick-connect galvanised",
      words: ["galvanised", "quickconnect"],
      mayAlsoSay: ["steel", "tube"],
      standard: {
        source: "practice",
        at: "galvanised pipe with lever couplings, wall taken; diameters differ by maker",
      },
      surface: "galvanised steel",
      make: { material: "steel", rule: "quick coupling" },
      conditions: { used: { surface: "worn quick-connect" } },
      sizes: QUICK_CONNECT_STEEL.flatMap(([size, outsideDiameter, , wall, , least, greatest]): readonly PipeSize[] => {
        const facts = {
          nominalInches: inchesOf(size),
          bore: inDecimals(outsideDiameter - 2 * wall) * millimetre,
          outsideDiameter: outsideDiameter * millimetre,
          wall: wall * millimetre,
          make: { leastWall: wall * millimetre, usualRating: [least * bar, greatest * bar] },
        } as const;
        return [
          { size: `${size}in`, onlyIn: "inch", ...facts },
          { size: `${outsideDiameter}mm`, onlyIn: "metric", ...facts },
        ];
      }),
    }),
    pipeFamily({
      family: "quick-connect aluminium",
      words: ["aluminium"],
      mayAlsoSay: ["quickconnect", "irrigation", "tube"],
      standard: {
        source: "practice",
        at: "aluminium irrigation tubing, outside diameter its nominal inches, minimum wall",
      },
      surface: "aluminium with couplers",
      make: { material: "aluminium", rule: "quick coupling" },
      conditions: { bare: { surface: "aluminium" } },
      sizes: QUICK_CONNECT_ALUMINIUM.map(([size, wall, , least, greatest]) => ({
        size: `${size}in`,
        nominalInches: inchesOf(size),
        bore: inDecimals(inchesOf(size) * inch - 2 * wall * millimetre),
        outsideDiameter: inchesOf(size) * inch,
        wall: wall * millimetre,
        make: { leastWall: wall * millimetre, usualRating: [least * psi, greatest * psi] },
      })),
    }),
  ];
}
