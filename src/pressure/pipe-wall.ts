import { amount, type Finding, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import type { Pipe } from "../pipework/pipe.ts";
import { WALL_MATERIALS, type WallMaterialName } from "../tables/elastic-moduli.ts";
import type { PipeWall } from "./wave-speed.ts";

const gigapascal = unitOf("GPa").factor;

/** Families of pipe by the words their names begin with. */
const FAMILY_MATERIALS: readonly (readonly [family: RegExp, material: WallMaterialName])[] = [
  [/^sch\d+S$/, "stainless steel"],
  [/^(?:sch\d+|STD|XS|XXS|EN10220)/, "steel"],
  [/^PVC /, "PVC"],
  [/^HDPE /, "HDPE"],
  [/^ductile iron /, "ductile iron"],
  [/^copper /, "copper"],
];

/** Surfaces a measured pipe may name, which tell what it is made of. The longer come first. */
const SURFACE_MATERIALS: readonly (readonly [surface: string, material: WallMaterialName])[] = [
  ["stainless steel", "stainless steel"],
  ["galvanised steel", "steel"],
  ["steel", "steel"],
  ["asphalted iron", "ductile iron"],
  ["cast iron", "cast iron"],
  ["cement lining", "ductile iron"],
  ["plastic", "PVC"],
  ["polyethylene", "HDPE"],
  ["concrete", "concrete"],
];

/** What a pipe is made of, by its family or by the surface in its name. Nothing for hose and for a bare roughness. */
export function wallMaterialOf({ family, name }: Pipe): WallMaterialName | undefined {
  if (family !== "measured") return FAMILY_MATERIALS.find(([words]) => words.test(family))?.[1];
  return SURFACE_MATERIALS.find(([surface]) => name.endsWith(` ${surface}`))?.[1];
}

/**
 * The wall of a pipe as surge sees it; nothing where wall or material is not known: the wave then runs as in a rigid
 * pipe, faster than in any real one.
 * Warns: cautions on the modulus taken and on a rigid wall.
 */
export function wallOf(pipe: Pipe): Result<PipeWall | undefined> {
  const material = wallMaterialOf(pipe);
  if (material === undefined || pipe.wall === undefined) return succeed(undefined, [rigid(pipe)]);
  const { modulus, least, greatest, poisson, cites } = WALL_MATERIALS[material];
  const taken = modulus * gigapascal;
  const facts = {
    material,
    least: amount("stress", least * gigapascal),
    greatest: amount("stress", greatest * gigapascal),
  };
  const found = amount("stress", taken);
  const caution: Finding = { code: "surge-modulus-taken", kind: "assumed", subject: "pipe", found, facts, cites };
  return succeed({ bore: pipe.bore, thickness: pipe.wall, modulus: taken, poisson }, [caution]);
}

function rigid({ name }: Pipe): Finding {
  return {
    code: "surge-rigid-wall",
    kind: "check",
    subject: "pipe",
    given: name,
    cites: { source: "house", at: "rigid wall where the wall or its material is not known, the upper bound of surge" },
  };
}
