import { andThen, succeed } from "../../../src/basis/result.ts";
import { boltSizeText } from "../../../src/pressure/bolt-size.ts";
import { flangeDimensions, flangeDimensionsCites } from "../../../src/pressure/flange-dimensions.ts";
import {
  FLANGE_DRILLING_NAMES,
  type FlangeDrilling,
  flangeDrillingNamed,
} from "../../../src/pressure/flange-drilling.ts";
import { jointMaterialOf } from "../../../src/pressure/joint-material.ts";
import type { PressureMaterial } from "../../../src/tables/pressure-materials.ts";
import { defineEntry } from "../entry.ts";
import { type OptionalParameter, type SingleParameter, text } from "../parameter.ts";
import { flangeClass, ratingSystem } from "../parameters/class.ts";
import { flangeMaterial } from "../parameters/material.ts";

/** What a flange is drilled to: a class, or a table of drilling alone. */
const drilling: SingleParameter<FlangeDrilling> = {
  ...flangeClass,
  about:
    'Flange class, such as 150, "Class 150", "PN16", or a table of drilling: "AS 2129 Table D", "AS 2129 Table E", "AS 4087 PN16", "JIS 10K"',
  example: '150, "PN16" or "AS 2129 Table E"',
  choices: FLANGE_DRILLING_NAMES,
  read: (cell, reading) =>
    typeof cell === "string"
      ? flangeDrillingNamed(cell, ratingSystem(reading.unitSet), reading.name)
      : flangeClass.read(cell, reading),
};

const pnMaterial: OptionalParameter<PressureMaterial | null> = {
  ...flangeMaterial,
  fallback: null,
  whenLeftOut: "steel, in a PN; a class has its holes and faces alike in every material",
};

export const FLANGEDIMENSIONS = defineEntry({
  id: "FLANGEDIMENSIONS",
  group: "Pressure and flanges",
  summary: "Dimensions of a flange, its bolting and its gasket",
  method:
    "ASME B16.5 for NPS 1/2 to 24 in Class 150 and 300; there is no NPS 22. EN 1092-1 and -2 for DN15 to 600 in PN6 to PN40. Drilling alone of AS 2129 Tables D and E, AS/NZS 4087 PN 16 and JIS B 2220 10K. Size: NPS 6, 6in or DN150; a bare number is NPS in unit set US and DN in SI and METRIC; write fractions as text, for a spreadsheet reads 1/2 as a date. Steel thickness of a class is without the raised face of 0.06 in (2 mm), that of ductile iron (ASME B16.42, from NPS 1) with it; in a PN every thickness is with it, steel by type 11, plate by type 01. Holes and raised face of a PN go by the material, and DN65 has eight holes in steel and usually four in iron at PN10 and PN16. Stud length and machine-bolt length of a class serve two equal raised-face flanges of steel; stud length of a PN is that of two equal flanges of the material with a gasket of 2 mm, from its parts: for iron on steel, wafer valves, blinds and rings take the real thicknesses. Gasket: flat ring of ASME B16.21 or EN 1514-1, inside the bolts; a full-face gasket has its inside diameter and the flange’s outside diameter, bolt circle and holes. Class 125 and 250 have the drilling of 150 and 300; their other cells stay empty. In SI and METRIC outside diameter, bolt circle and steel thickness of a class are the standard's own millimetres; its bolts stay inch bolts.",
  cites: flangeDimensionsCites,
  parameters: {
    size: text<string>({ about: "Nominal size of the flange", example: '"6", "NPS 6", "6in" or "DN150"' }, (given) =>
      succeed(given),
    ),
    flangeClass: drilling,
    flangeMaterial: pnMaterial,
  },
  answer: {
    kind: "record",
    name: "flange and bolting",
    columns: {
      outside: { name: "flange OD", quantity: "size" },
      circle: { name: "bolt circle", quantity: "size" },
      bolts: { name: "bolts" },
      boltDiameter: { name: "bolt diameter", quantity: "size" },
      holeDiameter: { name: "hole diameter", quantity: "size" },
      raisedFace: { name: "raised face diameter", quantity: "size" },
      steelThickness: { name: "steel flange thickness", quantity: "size" },
      studLength: { name: "stud length", quantity: "size" },
      machineBoltLength: { name: "machine bolt length", quantity: "size" },
      gasketOutside: { name: "gasket OD", quantity: "size" },
      gasketInside: { name: "gasket ID", quantity: "size" },
      ductileThickness: { name: "ductile iron flange thickness", quantity: "size" },
      boltSize: { name: "bolt size" },
      greyThickness: { name: "grey iron flange thickness", quantity: "size" },
      plateThickness: { name: "plate flange thickness", quantity: "size" },
    },
  },
  examples: [
    {
      args: ["6", 150],
      part: [1, 1],
      answer: 9.5,
      within: 1e-9,
      source: "ASME B16.5, Class 150, NPS 6: bolt circle 9.50 in, read in a data book",
    },
    {
      args: ["DN100", 300, null, "SI"],
      part: [1, 2],
      answer: 8,
      within: 0,
      source: "ASME B16.5, Class 300, NPS 4: eight bolts of 3/4 in, read in a data book",
    },
    {
      args: ["DN200", "PN16", "ductile iron", "SI"],
      part: [1, 1],
      answer: 295,
      within: 1e-9,
      source: "EN 1092-2, PN 16, DN 200: bolt circle 295 mm, read in three tables of connecting dimensions",
    },
    {
      args: ["DN150", "AS 4087 PN16", null, "SI"],
      part: [1, 1],
      answer: 235,
      within: 1e-9,
      source: "AS/NZS 4087, PN 16, DN 150: bolt circle 235 mm, read in a chart of flange dimensions",
    },
  ],
  run: ({ size, flangeClass: wanted, flangeMaterial: of }, { unitSet }) => {
    const system = ratingSystem(unitSet);
    const material = of === null ? {} : { material: jointMaterialOf(of) };
    return andThen(flangeDimensions({ size, drilling: wanted, ...material, system }), (flange) =>
      succeed({
        outside: flange.outsideDiameter,
        circle: flange.boltCircle,
        bolts: flange.bolts,
        boltDiameter: flange.boltDiameter,
        holeDiameter: flange.holeDiameter,
        raisedFace: flange.raisedFace,
        steelThickness: flange.steelThickness,
        studLength: flange.studLength,
        machineBoltLength: flange.machineBoltLength,
        gasketOutside: flange.gasketOutside,
        gasketInside: flange.gasketInside,
        ductileThickness: flange.ductileThickness,
        boltSize: boltSizeText(flange.boltSize),
        greyThickness: flange.greyThickness,
        plateThickness: flange.plateThickness,
      }),
    );
  },
});
