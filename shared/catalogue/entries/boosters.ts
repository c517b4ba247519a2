import { all, andThen, type Result, succeed } from "../../../src/basis/result.ts";
import { runningPump } from "../../../src/pump/running-pump.ts";
import { standardAtmosphere } from "../../../src/site/atmosphere.ts";
import {
  type BoosterPressures,
  boosterPressures,
  boostersMethod,
  LEAST_BOOSTER_INLET,
  type PlacedPump,
} from "../../../src/station/boosters.ts";
import { defineEntry } from "../entry.ts";
import { liquid, temperature } from "../parameters/liquid.ts";
import { ROUTE_PLACE } from "../parameters/route-place.ts";
import { speedRatio, trimRatio } from "../parameters/running-pump.ts";
import { type StatedPump, stationCurves } from "../parameters/station-curves.ts";
import { gaugeOf, surfacePressure } from "../parameters/surface-pressure.ts";
import { altitude, dischargeLine, flow, suctionLine } from "./system-and-suction.ts";

interface Stated {
  readonly curve: readonly StatedPump[];
  readonly sourceLevel: number;
  readonly speedRatio: number;
  readonly trimRatio: number;
}

/** Alike ones of one row stand one behind the other in one place. */
function placed(stated: Stated): Result<readonly PlacedPump[]> {
  const pumps = stated.curve.map((of): Result<readonly PlacedPump[]> => {
    const { name, curve, speedRatio = stated.speedRatio, trimRatio = stated.trimRatio, count = 1 } = of;
    const { level = stated.sourceLevel, afterRow = 0 } = of;
    return andThen(runningPump({ curve, speedRatio, trimRatio }), (pump) =>
      succeed(
        Array.from({ length: count }, (_, i) => ({
          name: count === 1 ? name : `${name} ${i + 1}`.trim(),
          pump,
          level,
          afterRow,
        })),
      ),
    );
  });
  return andThen(all(pumps), (read) => succeed(read.flat()));
}

/** In words what an inlet is worth. */
function verdictOf({ inletPressure, npshAvailable, npshRequired }: BoosterPressures, isFirst: boolean): string {
  if (npshAvailable !== null && npshRequired !== null && npshAvailable < npshRequired) return "below NPSH required";
  if (isFirst) return "first pump";
  if (inletPressure < 0) return "inlet below atmosphere";
  return inletPressure < LEAST_BOOSTER_INLET ? "inlet below 0.3 bar gauge" : "inlet kept";
}

export const BOOSTERS = defineEntry({
  id: "BOOSTERS",
  group: "Pump",
  summary: "Pressures at the inlet and outlet of pumps in series where they stand along a line",
  method:
    "The grade line from the source through each pump: level and pressure of the source, plus the heads of the pumps passed, less the losses of the rows between. Head over a nozzle is the grade less its level; a gauge in the pipe reads it without the velocity head. In the range of curves level is that of the pump itself, that of the source where left out, and “after row” says behind which row of the discharge line it stands, 0 or blank at the end of the suction line. Where boosters stand changes no flow: take that of OPERATINGPOINT in series. A booster is to keep 0.3 bar (4.4 psi) gauge at its inlet, a house choice, and its NPSH; leave a row out of the range for a booster stopped and by-passed. NPSH available is empty where the liquid is described without a vapour pressure. Casings are judged with a shut valve, at no flow: see NOZZLECLASSES.",
  cites: boostersMethod.cites,
  parameters: {
    curve: stationCurves,
    flow,
    sourceLevel: ROUTE_PLACE.sourceLevel,
    suctionLine,
    dischargeLine,
    sourcePressure: surfacePressure,
    altitude,
    liquid,
    temperature,
    speedRatio,
    trimRatio,
  },
  answer: {
    kind: "table",
    name: "boosters",
    columns: {
      pump: { name: "pump" },
      head: { name: "head of the pump", quantity: "head" },
      lossBefore: { name: "head lost before it", quantity: "head" },
      inletHead: { name: "head at its inlet", quantity: "head" },
      outletHead: { name: "head at its outlet", quantity: "head" },
      inletPressure: { name: "gauge at its inlet", quantity: "gaugePressure" },
      outletPressure: { name: "gauge at its outlet", quantity: "gaugePressure" },
      npshAvailable: { name: "NPSHA", quantity: "head" },
      npshRequired: { name: "NPSHR", quantity: "head" },
      verdict: { name: "inlet" },
    },
  },
  examples: [
    {
      args: [
        [
          ["pump", "flow", "head", "level", "after row"],
          ["first", 0, 64, 0, null],
          [null, 200, 52.8, null, null],
          [null, 300, 38.8, null, null],
          ["booster", 0, 64, 45, 1],
          [null, 200, 52.8, null, null],
          [null, 300, 38.8, null, null],
        ],
        200,
        0,
        [[null, null, null]],
        [
          ["ID 202.7 mm rough 0 mm", "0.000001 m", "K 2"],
          ["ID 202.7 mm rough 0 mm", "0.000001 m", "K 2"],
        ],
        null,
        null,
        null,
        null,
        null,
        null,
        "METRIC",
      ],
      part: [2, 3],
      answer: 7.4978,
      within: 1e-3,
      source: "by hand: 52.8 − 45 − 2 V²/2g with 1.7216 m/s, 0.15112 m",
    },
  ],
  run: ({ sourcePressure, altitude, liquid, temperature, ...rest }) =>
    andThen(placed(rest), (pumps) =>
      andThen(standardAtmosphere(altitude), (atmosphericPressure) =>
        andThen(liquid.at(temperature), (state) =>
          andThen(
            boosterPressures({
              pumps,
              flow: rest.flow,
              sourceLevel: rest.sourceLevel,
              sourcePressure: gaugeOf(sourcePressure, atmosphericPressure),
              atmosphericPressure,
              suctionLine: rest.suctionLine,
              dischargeLine: rest.dischargeLine,
              liquid: state,
            }),
            (rows) =>
              succeed(
                rows.map((row, i) => ({
                  ...row,
                  pump: row.name,
                  verdict: verdictOf(row, i === 0),
                })),
              ),
          ),
        ),
      ),
    ),
});
