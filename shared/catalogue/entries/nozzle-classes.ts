import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { fail, succeed } from "../../../src/basis/result.ts";
import type { FlangeClass } from "../../../src/pressure/flange-class.ts";
import type { NozzleClass } from "../../../src/pressure/nozzle-class.ts";
import { nozzleSeries, nozzleSeriesMethod } from "../../../src/pressure/nozzle-series.ts";
import { figures } from "../../text/figure.ts";
import { defineEntry } from "../entry.ts";
import { choice, type OptionalParameter, quantity } from "../parameter.ts";
import { flangeClass, ratingSystem } from "../parameters/class.ts";
import { headTolerance } from "../parameters/head-tolerance.ts";
import { flangeMaterial } from "../parameters/material.ts";
import { metalTemperature } from "../parameters/metal-temperature.ts";
import { seriesPumps } from "../parameters/series-pumps.ts";
import { SG } from "../parameters/specific-gravity.ts";
import { ungradedPump } from "../parameters/ungraded-pump.ts";
import { zeroDoubted } from "../parameters/zero-doubted.ts";

const offeredClass: OptionalParameter<FlangeClass | undefined> = {
  ...flangeClass,
  fallback: undefined,
  whenLeftOut: "none offered; the class each nozzle needs is still found",
};

export const NOZZLECLASSES = defineEntry({
  id: "NOZZLECLASSES",
  group: "Pressure and flanges",
  summary: "Maximum pressure and flange class needed at each nozzle of pumps in series, like or unlike",
  method:
    "Running: the suction pressure plus ρ g H of every pump before, at SG times 998.2 kg/m³, each head raised by the head tolerance, less the climb and the head lost to the next pump. Give the maximum head anywhere on each curve, at the maximum speed and the largest impeller; leave the loss between pumps out, for against a shut valve there is none. Standing: the column from the standing level down to the nozzles with the pumps stopped, and the pressure over it; levels count from the same zero as the elevations, and without an elevation column from the pumps. A check valve (“yes” in the column of that name: in the line right after the pump) keeps it off that pump and all before, which then stand under the source alone; failed, it does not, and that case counts unless it is struck. The largest of the cases that count decides, and is named. A suction below atmosphere counts as 0, and so does a column that ends below the nozzle. A pump with a material or class of its own in the table is rated by that. Class needed: the lowest of the material's standard, by class or PN as the one offered is, whose rating at the temperature is not below the pressure; grey iron by the size of the flange, where the table or the class has it. Margin: what is left of the limit, the lowest of flange rating, casing working pressure and other part; an other part whose name begins with suction or discharge stands at that nozzle alone, one “between stages 1 and 2” at the discharge of the first and the suction of the second. Next class: the first nozzle in the order of flow that needs a class above the one offered, or where none is offered above those before it. Trade figure: 260 psi for Class 150, 680 psi for Class 300, compared with the standard; it decides nothing. Flange test ceiling: 1.5 times the cold rating, rounded up, the most that the flange standard allows on the joint. Package test: 1.5 times the lowest cold working pressure of what is tested together, hose and coupling isolated; none where something does not hold, where a casing or class is not stated, or where that is less than 1.25 times the maximum pressure. Without a head tolerance that of the default grade for service and power is added (3 to 7 %), and 8 % for a pump to 10 kW (13 hp) or of unknown power. Surge is apart: see SURGE.",
  cites: nozzleSeriesMethod.cites,
  parameters: {
    pumps: seriesPumps,
    suctionPressure: quantity("gaugePressure", {
      about: "Maximum pressure at the first suction nozzle",
      example: '15, or "1 bar"',
      range: "above absolute zero",
    }),
    flangeMaterial,
    flangeClass: offeredClass,
    SG: zeroDoubted(SG),
    headTolerance,
    standingLevel: quantity("elevation", {
      about: "Top of the liquid that stands on the pumps when they stop, in the datum of the elevations",
      whenLeftOut: { value: null, shown: "no standing column" },
    }),
    standingPressure: quantity("gaugePressure", {
      about: "Pressure at the top of that column",
      example: '30, or "2 bar"',
      range: "above absolute zero",
      whenLeftOut: { value: null, shown: "0, open to the air" },
    }),
    metalTemperature,
    ...ungradedPump,
    checkFailure: choice(["counted", "struck"], {
      about: "Whether a check valve that fails counts as a case",
      whenLeftOut: "counted",
    }),
  },
  answer: {
    kind: "table",
    name: "nozzles",
    columns: {
      pump: { name: "pump" },
      side: { name: "side" },
      running: { name: "running pressure", quantity: "gaugePressure" },
      standing: { name: "standing pressure", quantity: "gaugePressure" },
      greatest: { name: "maximum pressure", quantity: "gaugePressure" },
      class: { name: "class needed" },
      rating: { name: "rating of the class offered", quantity: "gaugePressure" },
      margin: { name: "margin", quantity: "percent" },
      governedBy: { name: "governed by" },
      limit: { name: "limit", quantity: "gaugePressure" },
      next: { name: "next class" },
      trade: { name: "trade figure" },
      test: { name: "flange test ceiling", quantity: "gaugePressure" },
      checkFailed: { name: "check valve failed", quantity: "gaugePressure" },
      case: { name: "case that governs" },
      flange: { name: "flange" },
      offered: { name: "class offered" },
      tolerance: { name: "head tolerance taken" },
      packageTest: { name: "package test pressure", quantity: "gaugePressure" },
      noTest: { name: "why no package test" },
    },
  },
  examples: [
    {
      args: [
        [
          ["pump", "maximum head, ft"],
          ["first", 300],
          ["second", 300],
        ],
        5,
        "ductile iron",
        150,
        1,
        0,
        null,
        null,
        70,
      ],
      part: [4, 4],
      answer: 265,
      within: 0.6,
      source: "5 psi + 2 × 300 ft at 0.4335 psi/ft, by hand (water of 1000 kg/m³)",
    },
    {
      args: [
        [
          ["pump", "maximum head, ft"],
          ["first", 300],
          ["second", 300],
        ],
        5,
        "ductile iron",
        150,
        1,
        0,
        null,
        null,
        70,
      ],
      part: [4, 5],
      answer: "Class 300",
      source: "ASME B16.42: Class 150 holds 250 psi cold, Class 300 640 psi; 265 psi by hand",
    },
  ],
  run: (
    {
      flangeMaterial: material,
      flangeClass: offered,
      SG,
      standingLevel,
      standingPressure,
      metalTemperature: temperature,
      checkFailure,
      ...input
    },
    { unitSet },
  ) => {
    if (standingLevel === null && standingPressure !== null) {
      const suggestions = ["the level at which that pressure stands"];
      return fail([{ code: "left-out", kind: "error", subject: "standing level", suggestions }]);
    }
    const classes = nozzleSeries({
      ...input,
      material,
      temperature,
      specificGravity: SG,
      strikesCheckFailure: checkFailure === "struck",
      system: ratingSystem(unitSet),
      ...(offered === undefined ? {} : { flangeClass: offered }),
      ...(standingLevel === null ? {} : { standing: { top: standingLevel, pressure: standingPressure ?? 0 } }),
    });
    if (!classes.ok) return classes;
    const { nozzles, packageTest, tolerance } = classes.value;
    return succeed(
      nozzles.map((nozzle) => ({
        ...rowOf(nozzle),
        flange: flangeText(nozzle, unitSet),
        tolerance: toleranceText(tolerance),
        packageTest: "none" in packageTest ? undefined : packageTest.pressure,
        noTest: "none" in packageTest ? packageTest.none : undefined,
      })),
      classes.findings,
    );
  },
});

/** In the place of a class, of a material that no flange standard held here rates. */
const NOT_RATED = "not rated";

function rowOf(nozzle: NozzleClass) {
  const { pump, side, running, standing, greatest, rating, margin, weakest, testPressure } = nozzle;
  const { highestClass } = nozzle;
  const needed = nozzle.classNeeded ?? (highestClass === undefined ? NOT_RATED : `beyond ${highestClass}`);
  return {
    pump,
    side,
    running,
    standing,
    greatest,
    class: needed,
    rating,
    margin,
    governedBy: weakest?.name,
    limit: weakest?.workingPressure,
    next: nozzle.isFirstToNeed ? `first to need ${nozzle.classNeeded ?? `a class ${needed}`}` : null,
    trade: tradeText(nozzle),
    test: testPressure,
    checkFailed: nozzle.checkFailed,
    case: nozzle.governs,
    offered: nozzle.flangeClass?.name,
  };
}

/** "NPS 16 grey iron"; a flange whose size nobody stated by its material. */
function flangeText({ size, material }: NozzleClass, unitSet: UnitSetName): string {
  if (size === undefined) return material.name;
  const named = ratingSystem(unitSet) === "US" && size.nps !== undefined ? `NPS ${size.nps}` : `DN${size.dn}`;
  return `${named} ${material.name}`;
}

/** "7 %, grade 3B by default" */
function toleranceText({ tolerance, grade }: { readonly tolerance: number; readonly grade?: string }): string {
  const share = `${figures(tolerance * 100)} %`;
  return grade === undefined ? share : `${share}, ${grade} by default`;
}

function tradeText({ trade }: NozzleClass): string {
  if (trade === undefined) return "no trade figure";
  const { verdict, flangeClass: of } = trade;
  if (verdict === "agrees") return "agrees";
  if (verdict === "would pass") return `DISAGREES: it would pass ${of}, the standard does not`;
  return `DISAGREES: it would not pass ${of}, the standard does`;
}
