import type { RatedGroup } from "../tables/flange-rating-table.ts";
import type { PressureMaterial } from "../tables/pressure-materials.ts";

/** Flange materials by how hard their bolts may be pulled. */
export type JointMaterial = "steel" | "ductile iron" | "grey iron";

const OF_GROUP: Readonly<Record<RatedGroup, JointMaterial>> = {
  "A395 ductile iron": "ductile iron",
  "EN-GJS-400-15 / 400-18 (LT)": "ductile iron",
  "EN-GJS-500-7 / 600-3": "ductile iron",
  "A126 Class A": "grey iron",
  "A126 Class B": "grey iron",
  "EN-GJL-250": "grey iron",
  "1.1": "steel",
  "1.2": "steel",
  "2.1": "steel",
  "2.2": "steel",
  "2.3": "steel",
  "2.8": "steel",
  "3.17": "steel",
  "3E0": "steel",
  "10E0": "steel",
  "11E0": "steel",
  "12E0": "steel",
  "13E0": "steel",
  "14E0": "steel",
  "15E0": "steel",
  "16E0": "steel",
};

/** How a material of pressure parts takes bolting, by the group that rates it. */
export function jointMaterialOf({ groups }: PressureMaterial): JointMaterial {
  const group = groups.class ?? groups.PN;
  // Of a material that nothing rates a brittle reading is the safe one.
  return group === undefined ? "grey iron" : OF_GROUP[group];
}
