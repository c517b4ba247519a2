import { amount, type Finding, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import type { Pipe } from "../pipework/pipe.ts";
import { WALL_MATERIALS, type WallMaterialName } from "../tables/elastic-moduli.ts";
import type { PipeWall } from "./wave-speed.ts";

const gigapascal = unitOf("GPa").factor;

/** What a pipe is made of; nothing for hose and for a bare roughness. */
export function wallMaterialOf({ make }: Pipe): WallMaterialName | undefined {
  return make === undefined || make.material === "hose" ? undefined : make.material;
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
