import { unitOf } from "../basis/units.ts";
import { COPPER_TUBE_B88 } from "../tables/copper-tube-b88.ts";
import {
  DUCTILE_IRON_C151,
  DUCTILE_IRON_PRESSURE_CLASSES,
  DUCTILE_IRON_THICKNESS_CLASSES,
} from "../tables/ductile-iron-pipe-c151.ts";
import { DUCTILE_IRON_EN_545 } from "../tables/ductile-iron-pipe-en-545.ts";
import { nominalInches } from "./nominal-size.ts";
import { inchSize, inDecimals, type PipeFamily, pipeFamily } from "./pipe-family.ts";

const psi = unitOf("psi").factor;
const bar = unitOf("bar").factor;
const millimetre = unitOf("mm").factor;

const LININGS = {
  unlined: { surface: "asphalted iron", linings: 0 },
  "double lined": { surface: "cement lining", linings: 2 },
} as const;

/** Ductile iron pipe by pressure class and special thickness class, cement lined. Source: AWWA C151; lining, C104. */
export function ductileIronFamilies(): readonly PipeFamily[] {
  const columns = [
    ...DUCTILE_IRON_PRESSURE_CLASSES.map((name, column) => ({ name, kind: "pressure class", walls: 2, column })),
    ...DUCTILE_IRON_THICKNESS_CLASSES.map((name, column) => ({ name, kind: "thickness class", walls: 3, column })),
  ] as const;
  return columns.map(({ name, kind, walls, column }) =>
    pipeFamily({
      family: `ductile iron cl${name}`,
      words: ["di", `cl${name}`],
      mayAlsoSay: ["lined", "cement"],
      standard: { source: "awwa-c151", at: `${kind} ${name}; cement-mortar lining of AWWA C104`, unverified: true },
      surface: "cement lining",
      make: {
        material: "ductile iron",
        rule: walls === 2 ? "AWWA C151 class" : "AWWA C151 thickness",
        ...(walls === 2 ? { printedRating: name * psi } : {}),
      },
      conditions: LININGS,
      sizes: DUCTILE_IRON_C151.flatMap((row) => {
        const wall = (walls === 2 ? row[2] : row[3])[column] ?? null;
        const [size, outsideDiameter, , , lining] = row;
        return wall === null ? [] : [inchSize({ size, outsideDiameter, wall, lining }, "with DN")];
      }),
    }),
  );
}

/** Metric ductile iron pipe of class K9 and of the preferred pressure classes, cement lined. Source: EN 545, ISO 2531. */
export function metricDuctileIronFamilies(): readonly PipeFamily[] {
  return ["K9", "C40", "C30", "C25"].map((name) =>
    pipeFamily({
      family: `ductile iron ${name}`,
      words: ["di", name.toLowerCase()],
      mayAlsoSay: ["lined", "cement"],
      standard: { source: "en-545", at: `class ${name}, nominal wall; cement-mortar lining of nominal thickness` },
      surface: "cement lining",
      make: { material: "ductile iron", rule: "EN 545" },
      conditions: { unlined: LININGS.unlined },
      sizes: DUCTILE_IRON_EN_545.flatMap((row) => {
        const [dn, outsideDiameter, preferred, ...walls] = row;
        if (name !== "K9" && name !== preferred) return [];
        const [wall, leastWall, allowable] = name === "K9" ? walls.slice(3, 6) : walls.slice(0, 3);
        const lining = walls[6];
        const inches = nominalInches(dn);
        return [
          {
            size: `DN${dn}`,
            bore: inDecimals(outsideDiameter - 2 * ((wall as number) + lining)) * millimetre,
            outsideDiameter: outsideDiameter * millimetre,
            wall: (wall as number) * millimetre,
            lining: lining * millimetre,
            ...(inches === undefined ? {} : { nominalInches: inches }),
            make: { printedRating: (allowable as number) * bar, leastWall: (leastWall as number) * millimetre },
          } as const,
        ];
      }),
    }),
  );
}

/** Copper tube of types K, L and M. Source: ASTM B88, dimensions. */
export function copperFamilies(): readonly PipeFamily[] {
  return ["K", "L", "M"].map((type, column) =>
    pipeFamily({
      family: `copper ${type}`,
      words: [`copper${type.toLowerCase()}`],
      mayAlsoSay: ["tube"],
      standard: { source: "astm-b88", at: `dimensions, type ${type}` },
      surface: "drawn tube",
      make: { material: "copper" },
      sizes: COPPER_TUBE_B88.flatMap(([size, outsideDiameter, ...walls]) => {
        const wall = walls[column] ?? null;
        return wall === null ? [] : [inchSize({ size, outsideDiameter, wall }, "inches only")];
      }),
    }),
  );
}
