import { citationText, NOT_VERIFIED, verificationText } from "../../../src/basis/citation.ts";
import { andThen, succeed } from "../../../src/basis/result.ts";
import { toEngine } from "../../../src/basis/units.ts";
import { flangeCheck, lowestFlangeClass } from "../../../src/pressure/flange-check.ts";
import { flangeRating, flangeRatingCites } from "../../../src/pressure/flange-rating.ts";
import { liquidBulkModulus } from "../../../src/pressure/liquid-bulk-modulus.ts";
import { RATING_CURVES, RATING_UNITS, type RatingCurve } from "../../../src/pressure/rating-curves.ts";
import { stagePressure, stagePressureMethod } from "../../../src/pressure/stage-pressure.ts";
import { surge, surgeMethod } from "../../../src/pressure/surge.ts";
import type { RatingSystem } from "../../../src/tables/flange-rating-table.ts";
import { PRESSURE_MATERIALS } from "../../../src/tables/pressure-materials.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { flangeClass, ratingSystem } from "../parameters/class.ts";
import { headTolerance } from "../parameters/head-tolerance.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { flangeMaterial } from "../parameters/material.ts";
import { metalTemperature } from "../parameters/metal-temperature.ts";
import { pipe } from "../parameters/pipe.ts";
import { SG } from "../parameters/specific-gravity.ts";
import { ungradedPump } from "../parameters/ungraded-pump.ts";
import { zeroDoubted } from "../parameters/zero-doubted.ts";

const pressure = zeroDoubted(
  quantity("gaugePressure", {
    about: "Maximum working pressure at the flange",
    example: '250, or "17 bar"',
    range: "0 or more",
  }),
);

const HOW_RATED =
  "Read from the standard the material belongs to, by class or by PN: ductile iron ASME B16.42 or EN 1092-2; grey iron ASME B16.1 (Class 125 and 250) or EN 1092-2; carbon steel, 304, 316, 316L, duplex ASME B16.5 or EN 1092-1; alloy 20 ASME B16.5. White iron, CA6NM, bronze, Ni-resist and titanium are rated by none of them. At a tabulated temperature the tabulated figure; between two, linear and rounded down to 5 psi or 0.1 bar; outside the table, none. Unit set US reads the psi, °F table, SI and METRIC the bar, °C table, which are two tables of the standard and not one converted; EN 1092 is held in bar and ASME B16.1 in psi alone, and is converted with a caution. Grey iron without a size gets the lower of its ratings, that of NPS 14 to 24. Ratings are without shock.";

export const FLANGERATING = defineEntry({
  id: "FLANGERATING",
  group: "Pressure and flanges",
  summary: "Working pressure a flange is rated for, by material, class and temperature",
  method: HOW_RATED,
  cites: flangeRatingCites,
  parameters: { flangeMaterial, flangeClass, metalTemperature },
  answer: { kind: "quantity", name: "rated working pressure", quantity: "gaugePressure" },
  examples: [
    {
      args: ["ductile iron", 150, 300],
      answer: 215,
      within: 1e-9,
      source: "ASME B16.42, Class 150 at 300 °F, read in a reprint",
    },
    {
      args: ["carbon steel", 300, 150, "METRIC"],
      answer: 45.1,
      within: 1e-9,
      source: "ASME B16.5, table 2-1.1, Class 300 at 150 °C, read in a reprint",
    },
    {
      args: ["A126 Class B", "125 NPS 16", 250],
      answer: 125,
      within: 1e-9,
      source: "ASME B16.1, Class 125 of NPS 14 to 24 at 250 °F, read in a reprint",
    },
  ],
  run: ({ flangeMaterial: material, flangeClass, metalTemperature: temperature }, { unitSet }) =>
    andThen(flangeRating({ material, flangeClass, temperature, system: ratingSystem(unitSet) }), (rating) =>
      succeed(rating.pressure),
    ),
});

export const FLANGECLASS = defineEntry({
  id: "FLANGECLASS",
  group: "Pressure and flanges",
  summary: "Lowest flange class that holds a pressure",
  method: `The lowest class of the material's standard whose rating at the temperature is not below the pressure; refused beyond Class 300 and PN40. ${HOW_RATED} Cast iron of EN 1092-2 by its own name, such as EN-GJS-400-15. NOTES holds the trade figure (260 psi for Class 150, 680 psi for Class 300) against the answer; it decides nothing.`,
  cites: flangeRatingCites,
  parameters: { flangeMaterial, pressure, metalTemperature },
  answer: { kind: "text", name: "lowest class" },
  examples: [
    {
      args: ["A395", 255, 70],
      answer: "Class 300",
      source: "ASME B16.42: Class 150 holds 250 psi cold; the trade figure of 260 psi would pass it",
    },
  ],
  run: ({ flangeMaterial: material, pressure, metalTemperature: temperature }, { unitSet }) =>
    andThen(lowestFlangeClass({ material, pressure, temperature, system: ratingSystem(unitSet) }), (rating) =>
      succeed(rating.flangeClass),
    ),
});

export const FLANGECHECK = defineEntry({
  id: "FLANGECHECK",
  group: "Pressure and flanges",
  summary: "Whether a flange class holds a pressure, with rating, margin and flange test ceiling",
  method: `Verdict pass where the pressure is not above the rating, fail otherwise. Margin is what is left of the rating, (rating − pressure)/rating. Test pressure: 1.5 times the rating of cold metal, rounded up to 25 psi or 1 bar, for the flanges alone. ${HOW_RATED} NOTES holds the trade figure (260 psi for Class 150, 680 psi for Class 300) against the answer; it decides nothing.`,
  cites: flangeRatingCites,
  parameters: { flangeMaterial, flangeClass, pressure, metalTemperature },
  answer: {
    kind: "record",
    name: "flange check",
    columns: {
      verdict: { name: "verdict" },
      rating: { name: "rating", quantity: "gaugePressure" },
      margin: { name: "margin", quantity: "percent" },
      testPressure: { name: "flange test ceiling", quantity: "gaugePressure" },
    },
  },
  examples: [
    {
      args: ["WCB", 150, 200, 100],
      part: [1, 3],
      answer: 450,
      within: 1e-9,
      source: `ASME B16.5, 2.6: 1.5 × 285 psi = 427.5 psi, rounded up to 25 psi (${NOT_VERIFIED})`,
    },
    {
      args: ["A395", 150, 255, 70],
      part: [1, 0],
      answer: "fail",
      source: "ASME B16.42: Class 150 holds 250 psi cold",
    },
  ],
  run: ({ flangeMaterial: material, flangeClass, pressure, metalTemperature: temperature }, { unitSet }) =>
    andThen(
      flangeCheck({ material, flangeClass, pressure, temperature, system: ratingSystem(unitSet) }),
      ({ holds, rating, margin, testPressure }) =>
        succeed({ verdict: holds ? "pass" : "fail", rating, margin, testPressure }),
    ),
});

export const NOZZLEPRESSURE = defineEntry({
  id: "NOZZLEPRESSURE",
  group: "Pressure and flanges",
  summary: "Maximum pressure at the suction and discharge nozzle of a pump, alone or as a stage in series",
  method:
    "Suction pressure plus the head at shutoff of every pump before, at SG times 998.2 kg/m³: P = P_s + i ρ g H (1 + tolerance). All stages equal, level and against a shut valve, without friction. Give the maximum suction pressure, the maximum head anywhere on the curve, at the maximum speed (an engine at high idle) and the largest impeller the casing takes. Without a head tolerance that of the default grade for service and power is added (3 to 7 %), and 8 % for a pump to 10 kW (13 hp) or of unknown power. A suction below atmosphere counts as 0. Surge is apart: see SURGE.",
  cites: stagePressureMethod.cites,
  parameters: {
    suctionPressure: quantity("gaugePressure", {
      about: "Maximum pressure at the first suction nozzle",
      example: '15, or "1 bar"',
      range: "above absolute zero",
    }),
    maximumHead: quantity("head", {
      about: "Maximum head of one pump, wherever on its curve",
      range: "above 0",
    }),
    SG: zeroDoubted(SG),
    stage: quantity("ratio", {
      about: "Which of the pumps in series, the first on the suction side being 1",
      example: "2",
      range: "a whole number from 1 to 20",
      whenLeftOut: { value: 1, shown: "1" },
    }),
    headTolerance,
    ...ungradedPump,
  },
  answer: {
    kind: "record",
    name: "nozzle pressures",
    columns: {
      suction: { name: "suction pressure", quantity: "gaugePressure" },
      discharge: { name: "discharge pressure", quantity: "gaugePressure" },
    },
  },
  examples: [
    {
      args: [15, 420, 1.05, 1, 5],
      part: [1, 1],
      answer: 215.7,
      within: 0.5,
      source: "15 psi + 0.4335 psi/ft × 1.05 × 420 ft × 1.05, by hand (water of 1000 kg/m³)",
    },
    {
      args: [5, 300, 1, 2, 0],
      part: [1, 1],
      answer: 265,
      within: 0.6,
      source: "5 psi + 2 × 300 ft at 0.4335 psi/ft, by hand (water of 1000 kg/m³)",
    },
  ],
  run: ({ maximumHead: shutoffHead, SG, ...input }) =>
    andThen(stagePressure({ ...input, shutoffHead, specificGravity: SG }), ({ suction, discharge }) =>
      succeed({ suction, discharge }),
    ),
});

export const SURGE = defineEntry({
  id: "SURGE",
  group: "Pressure and flanges",
  summary: "Pressure rise where the velocity in a pipe changes suddenly",
  method:
    "Joukowsky, Δp = ρ a ΔV, with the wave speed of Korteweg, a = √(K/ρ)/√(1 + K D/(E e)), for a line free to lengthen; NOTES gives the figure for one anchored throughout, some 2 % more in iron and 8 % in PVC. E, GPa: steel 207, stainless 193, ductile iron 170, copper 120, PVC 2.8, HDPE 1.1, concrete 35. Below a bore of ten walls the thick-wall form is used; a cement lining is not counted. A pipe or hose whose wall or material is not known is taken as rigid, the upper bound. K of water by temperature, 2.19 GPa at 20 °C; of a described liquid that of water. Free air is not counted. The whole of it arises only where the flow changes within 2 L/a. A screen, no transient study.",
  cites: surgeMethod.cites,
  parameters: {
    velocityChange: quantity("velocity", {
      about: "Change of velocity: the whole velocity where the flow stops, more where it turns round",
      range: "0 to 100 m/s (328 ft/s)",
    }),
    pipe: pipe("Pipe or hose; a measured one with its wall and what it is made of"),
    liquid,
    temperature,
  },
  answer: { kind: "quantity", name: "pressure rise", quantity: "pressureDifference" },
  examples: [
    {
      args: [1.5, "OD 415 mm wall 7.5 mm asphalted iron", "998.2 kg/m3, 1.002 cP", null, "METRIC"],
      answer: 17.0748535099,
      within: 1e-6,
      source: "Joukowsky and Korteweg, E 170 GPa, K 2.19 GPa, bore 400 mm, worked apart from this product",
    },
  ],
  run: ({ velocityChange, pipe, liquid, temperature }) =>
    andThen(liquid.at(temperature), (state) =>
      andThen(liquidBulkModulus(liquid, temperature), (bulkModulus) =>
        andThen(surge({ velocityChange, pipe, liquid: state, bulkModulus }), ({ pressureChange }) =>
          succeed(pressureChange),
        ),
      ),
    ),
});

export const FLANGERATINGS = defineEntry({
  id: "FLANGERATINGS",
  group: "Lists",
  summary: "Every flange rating the add-in knows, with source and how it was verified",
  method:
    "One row a tabulated figure: the materials that FLANGERATING reads it for, the standard and its group, class, sizes, temperature and rating. The first row of a class holds down to -20 °F (-29 °C), or -10 °C in EN 1092. Unit set US lists the psi, °F tables, SI and METRIC the bar, °C tables; a standard held in one of them alone is listed in both, and its last column says what it was printed in. Dimensions and bolting: see FLANGEDIMENSIONS.",
  cites: flangeRatingCites,
  parameters: {},
  answer: {
    kind: "table",
    name: "flange ratings",
    columns: {
      materials: { name: "materials" },
      standard: { name: "standard" },
      group: { name: "group" },
      class: { name: "class" },
      sizes: { name: "sizes" },
      temperature: { name: "temperature", quantity: "temperature" },
      rating: { name: "rating", quantity: "gaugePressure" },
      howVerified: { name: "how verified" },
      source: { name: "source", isTitle: true },
      printedIn: { name: "printed in" },
    },
  },
  examples: [
    {
      args: [],
      part: [1, 6],
      answer: 250,
      within: 1e-9,
      source: "ASME B16.42, Class 150 to 100 °F, the first row of the first table",
    },
  ],
  run: (_, { unitSet }) => succeed(curvesFor(ratingSystem(unitSet)).flatMap(rowsOf)),
});

/** The tables a reader looks at: those in his system, and those of a standard that has no other. */
function curvesFor(system: RatingSystem): readonly RatingCurve[] {
  return RATING_CURVES.filter(
    (curve) =>
      curve.system === system ||
      !RATING_CURVES.some(
        (other) =>
          other.group === curve.group && other.flangeClass === curve.flangeClass && other.system !== curve.system,
      ),
  );
}

function rowsOf({ standard, group, flangeClass: name, sizes, system, howVerified, points }: RatingCurve) {
  const { temperature: degree, pressure: unit } = RATING_UNITS[system];
  const materials = PRESSURE_MATERIALS.filter(({ groups }) => Object.values(groups).includes(group));
  const names = materials.map((material) => material.name).join(", ");
  const source = citationText({ source: standard.source, at: "pressure-temperature ratings" });
  return points.map(([temperature, rating]) => ({
    materials: names,
    standard: standard.name,
    group,
    class: name,
    sizes: sizes.name,
    temperature: toEngine(temperature, degree),
    rating: toEngine(rating, unit),
    howVerified: verificationText(howVerified),
    source,
    printedIn: `${unit.symbol}, ${degree.symbol}`,
  }));
}
