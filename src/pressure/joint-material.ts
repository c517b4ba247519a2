import type { RatedGroup } from "../tables/flange-rating-table.ts";
import type { PressureMaterial } from "../tables/pressure-materials.ts";

/** Flange materials by how hard their bolts may be pulled. */
export type JointMaterial = "steel" | "ductile iron" | "grey iron";

const OF_GROUP: Readonly<Record<RatedGroup, JointMaterial>> = {
  "A395 ductile iron": "ductile iron",
  "EN-GJS-400-15 / 400-18 (LT)": "ductile iron",
  "A126 Class A": "grey iron",
  "A126 Class B": "grey iron",
  "EN-GJL-250": "grey iron",
  "1.1": "steel",
  "1.2": "steel",
  "2.2": "steel",
  "2.3": "steel",
  "2.8": "steel",
};

/** How a material of pressure parts takes bolting, by the group that rates it. */
export function jointMaterialOf({ groups }: PressureMaterial): JointMaterial {
  const group = groups.class ?? groups.PN;
  // Every material has a group in one series; a brittle reading would be the safe one if ever one had none.
  return group === undefined ? "grey iron" : OF_GROUP[group];
}
