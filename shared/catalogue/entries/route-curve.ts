import { andThen } from "../../../src/basis/result.ts";
import { gradeAtOutlet, routeOfLine } from "../../../src/route/route.ts";
import { routeCurve, routeCurveMethod } from "../../../src/route/route-curve.ts";
import { defineEntry } from "../entry.ts";
import { choice, quantity } from "../parameter.ts";
import { lineOrNothing } from "../parameters/line-or-nothing.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { ROUTE_PLACE } from "../parameters/route-place.ts";

const { dischargeLine, startLevel, outletLevel, sourceLevel, sourcePressure, outletPressure } = ROUTE_PLACE;

export const ROUTECURVE = defineEntry({
  id: "ROUTECURVE",
  group: "System and suction",
  summary: "Head that a line over summits requires from zero flow to the maximum, as a table",
  method:
    "At evenly spaced flows, both ends included: the total head through the full line (TDH), from the source to the outlet or the liquid over it. Where the line is not known to run full, no less than the head that carries the flow over every place of it (FILLHEAD): without siphon credit the pumps see the summit at all times, and run where their curve crosses this one. A summit below the grade line changes nothing. SIPHONCREDIT says whether the fall beyond it may be counted on.",
  cites: routeCurveMethod.cites,
  parameters: {
    sourceLevel,
    suctionLine: lineOrNothing("The suction line, from the liquid to the pump"),
    dischargeLine,
    startLevel,
    maximumFlow: quantity("flow", { about: "Flow of the last row of the table", range: "above 0" }),
    numberOfPoints: quantity("ratio", {
      about: "How many rows, zero and the maximum flow among them",
      example: "11",
      range: "a whole number from 2 to 200",
      whenLeftOut: { value: 11, shown: "11" },
    }),
    runsFull: choice(["no", "yes"], {
      about: "Whether the fall beyond the summit is counted on, so that the line runs full at every flow",
      whenLeftOut: "no",
    }),
    outletLevel,
    sourcePressure,
    outletPressure,
    liquid,
    temperature,
  },
  answer: {
    kind: "table",
    name: "system curve",
    columns: {
      flow: { name: "flow", quantity: "flow" },
      head: { name: "head", quantity: "head" },
    },
  },
  examples: [
    {
      args: [
        0,
        [["ID 2 m rough 0 mm", 0.001]],
        [
          ["ID 300 mm rough 0.05 mm", 100.498756211, null, null, 10],
          ["ID 300 mm rough 0.05 mm", 200.159936051, "1 exit", null, 2],
        ],
        0,
        20,
        2,
        null,
        null,
        null,
        null,
        "water",
        null,
        "SI",
      ],
      part: [2, 1],
      answer: 10.02654736,
      within: 0.001,
      source: "level and Colebrook friction to the summit in Python, apart from this product",
    },
  ],
  run: ({ maximumFlow: greatestFlow, numberOfPoints: points, runsFull, outletPressure, liquid, temperature, ...of }) =>
    andThen(liquid.at(temperature), (state) =>
      andThen(routeOfLine({ line: of.dischargeLine, ...of, altitude: null }), (route) =>
        routeCurve({
          ...of,
          staticHead: (of.outletLevel ?? gradeAtOutlet(route, 0)) - of.sourceLevel,
          deliveryPressure: outletPressure,
          route,
          greatestFlow,
          points,
          runsFull: runsFull === "yes",
          liquid: state,
        }),
      ),
    ),
});
