import { andThen } from "../../../src/basis/result.ts";
import { liquidBulkModulus } from "../../../src/pressure/liquid-bulk-modulus.ts";
import { linePressures, linePressuresMethod } from "../../../src/route/line-pressures.ts";
import { routeOfLine } from "../../../src/route/route.ts";
import { defineEntry } from "../entry.ts";
import { quantity } from "../parameter.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { ROUTE_PLACE } from "../parameters/route-place.ts";
import { SIPHON_LIMITS } from "../parameters/siphon-limits.ts";

const { dischargeLine, startHead, startLevel, outletLevel, outletPressure, altitude } = ROUTE_PLACE;

export const LINEPRESSURES = defineEntry({
  id: "LINEPRESSURES",
  group: "Pressure and flanges",
  summary: "The pressures each run of a line has to stand, at the worse of its ends",
  method:
    "Gauge pressures of the grade lines over the pipe: running (marched back from the outlet where no start head is given); against a shut valve, to the level the pumps hold at shutoff; standing behind the check valve, full to the highest place beyond; at rest where no air is let in, hanging on the outlet; filling, with the front at the governing summit; and the lowest of running and standing. Surge is that of a sudden stop by Joukowsky, the run's own or the share 2 (A1/a1)/(A1/a1 + A2/a2) that a neighbour passes on, a run too short for its own wave taking that of the line. It is a screen, no transient study; where it reaches the vapour pressure a note says so. Ratings are PIPERATING's, collapse COLLAPSEPRESSURE's.",
  cites: linePressuresMethod.cites,
  parameters: {
    flow: quantity("flow", { about: "Flow through the line, running", range: "0 or more" }),
    dischargeLine,
    startLevel,
    startHead,
    shutoffLevel: quantity("elevation", {
      about: "Level to which the pumps hold the line against a shut valve: maximum source level plus shutoff heads",
      whenLeftOut: { value: null, shown: "no shutoff pressure" },
    }),
    fillingFlow: quantity("flow", {
      about: "Flow while the line fills",
      range: "0 or more",
      whenLeftOut: { value: null, shown: "the running flow" },
    }),
    outletLevel,
    outletPressure,
    altitude,
    liquid,
    temperature,
    ...SIPHON_LIMITS,
  },
  unitsBefore: "siphonHeight",
  answer: {
    kind: "table",
    name: "pressures of the line",
    columns: {
      pipe: { name: "pipe" },
      from: { name: "from", quantity: "length" },
      to: { name: "to", quantity: "length" },
      lowest: { name: "lower end", quantity: "elevation" },
      running: { name: "running", quantity: "gaugePressure" },
      shutoff: { name: "shut valve", quantity: "gaugePressure" },
      standing: { name: "standing", quantity: "gaugePressure" },
      hanging: { name: "at rest without air", quantity: "gaugePressure" },
      filling: { name: "filling", quantity: "gaugePressure" },
      surge: { name: "surge", quantity: "pressureDifference" },
      withSurge: { name: "maximum with surge", quantity: "gaugePressure" },
      least: { name: "minimum", quantity: "gaugePressure" },
      leastWithSurge: { name: "minimum with surge", quantity: "gaugePressure" },
    },
  },
  examples: [
    {
      args: [
        0,
        [
          ["18in HDPE DR17", "1000.09799520 ft", null, null, 615],
          ["18in HDPE DR17", "1000.31245118 ft", null, null, 640],
          ["18in HDPE DR17", "1000.16198688 ft", null, null, 622],
          ["18in HDPE DR17", "1200.04166594 ft", null, null, 612],
        ],
        601,
        null,
        660,
        null,
        null,
        null,
        600,
        "water",
        70,
      ],
      part: [1, 5],
      answer: 25.52621209,
      within: 0.003,
      source: "by hand: ρ g (588 + 72 − 601) ft of water at 70 °F",
    },
  ],
  run: ({ liquid: described, temperature: at, dischargeLine: line, startLevel, outletLevel, altitude, ...of }) =>
    andThen(described.at(at), (state) =>
      andThen(liquidBulkModulus(described, at), (bulkModulus) =>
        andThen(routeOfLine({ line, startLevel, outletLevel, altitude }), (route) =>
          linePressures({ ...of, route, liquid: state, bulkModulus, limits: of }),
        ),
      ),
    ),
});
