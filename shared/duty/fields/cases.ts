import { unitOf } from "../../../src/basis/units.ts";
import type { CaseFieldKey } from "../duty-text.ts";
import { amount, type Field, oneOf } from "../field.ts";
import { levels } from "./levels.ts";
import { liquid } from "./liquid.ts";
import { PUMP_BOXES } from "./pump.ts";
import { station } from "./station.ts";

/** What holds for all cases of a duty. */
export const cases = {
  speedControl: oneOf(["fixed", "variable"], {
    label: "Speed in the cases",
    whenBlank: "fixed",
    also: { vfd: "variable", vsd: "variable" },
    help: "fixed: at the speed ratio of the pump. variable: each case at the speed that gives its flow; the ratio of the pump is then the maximum.",
  }),
};

const { whenBlank: _, ...speedRatio } = PUMP_BOXES.speedRatio;

/** The boxes of a case, in the order of pane and sheet; a blank one is as in the duty itself. */
export const CASE_FIELDS: Readonly<Record<CaseFieldKey, Field>> = {
  flow: levels.flow,
  sourceLevel: levels.sourceLevel,
  deliveryLevel: levels.deliveryLevel,
  sourcePressure: levels.sourcePressure,
  deliveryPressure: levels.deliveryPressure,
  liquid: liquid.liquid,
  temperature: liquid.temperature,
  altitude: liquid.altitude,
  pipe: oneOf(["new", "aged"], {
    label: "Pipe",
    help: "new: as the lines state it. aged: as rough as stated under the range the pump must cover.",
  }),
  frictionMargin: levels.frictionMargin,
  pumpsRunning: station.pumpsRunning,
  speedRatio,
};

export const CASE_KEYS = Object.keys(CASE_FIELDS) as readonly CaseFieldKey[];

/** A year, s: hours beyond it are not of one year. */
export const MOST_HOURS = 8760 * unitOf("h").factor;

/** Hours of the case in a year. Those of all cases need not fill the year. */
export const CASE_HOURS = amount({
  label: "Hours a year",
  quantity: "hours",
  bounds: { atLeast: 0, atMost: MOST_HOURS },
  help: "Hours in a year that the pumps run in this case, for the energy. Hours that do not add up to a year are not filled up.",
});
