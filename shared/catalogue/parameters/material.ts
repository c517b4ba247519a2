import { PRESSURE_MATERIAL_NAMES, pressureMaterialNamed } from "../../../src/pressure/pressure-material.ts";
import type { PressureMaterial } from "../../../src/tables/pressure-materials.ts";
import { type SingleParameter, text } from "../parameter.ts";

/** Material of a casing or flange, by name or by specification. */
export const flangeMaterial: SingleParameter<PressureMaterial> = text(
  {
    about:
      'Material of the flange: "ductile iron", "grey iron", "carbon steel", "316", "316L", "duplex", or by specification, such as "A536", "WCB", "CF8M", "EN-GJS-400-15", "1.4408"',
    example: '"ductile iron"',
    choices: PRESSURE_MATERIAL_NAMES,
  },
  pressureMaterialNamed,
);
