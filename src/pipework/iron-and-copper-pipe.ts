import { COPPER_TUBE_B88 } from "../tables/copper-tube-b88.ts";
import {
  DUCTILE_IRON_C151,
  DUCTILE_IRON_PRESSURE_CLASSES,
  DUCTILE_IRON_THICKNESS_CLASSES,
} from "../tables/ductile-iron-pipe-c151.ts";
import { inchSize, type PipeFamily, pipeFamily } from "./pipe-family.ts";

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
      conditions: {
        unlined: { surface: "asphalted iron", linings: 0 },
        "double lined": { surface: "cement lining", linings: 2 },
      },
      sizes: DUCTILE_IRON_C151.flatMap((row) => {
        const wall = (walls === 2 ? row[2] : row[3])[column] ?? null;
        const [size, outsideDiameter, , , lining] = row;
        return wall === null ? [] : [inchSize({ size, outsideDiameter, wall, lining }, "with DN")];
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
      sizes: COPPER_TUBE_B88.flatMap(([size, outsideDiameter, ...walls]) => {
        const wall = walls[column] ?? null;
        return wall === null ? [] : [inchSize({ size, outsideDiameter, wall }, "inches only")];
      }),
    }),
  );
}
