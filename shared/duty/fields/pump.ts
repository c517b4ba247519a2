import { FLANGE_CLASS_NAMES, flangeClassFor, flangeClassNamed } from "../../../src/pressure/flange-class.ts";
import { pumpCurveMethod } from "../../../src/pump/pump-curve-point.ts";
import { runningPumpMethod } from "../../../src/pump/running-pump.ts";
import { ratingSystem } from "../../catalogue/parameters/class.ts";
import type { CurvePointText, OwnKey, PumpKey } from "../duty-text.ts";
import { amount, named, oneOf, text } from "../field.ts";
import { flangeSize } from "./bolting.ts";
import { IMPELLER, SPEED } from "./bounds.ts";

/** The boxes of the chosen pump, in the order of the pane. */
export const PUMP_BOXES = {
  name: text({ label: "Name", help: "As the pump is called in the table or by its maker." }),
  speed: amount({
    label: "Curve speed",
    quantity: "speed",
    bounds: SPEED,
    help: "Speed the curve below was drawn at.",
  }),
  impellerDiameter: amount({
    label: "Curve impeller diameter",
    quantity: "size",
    bounds: IMPELLER,
    help: "Impeller diameter the curve below was drawn for.",
  }),
  speedRatio: amount({
    label: "Speed ratio",
    quantity: "ratio",
    bounds: runningPumpMethod.inputs.speedRatio,
    whenBlank: 1,
    help: "Speed it runs at over the speed of the curve, 0.2 to 2.5. Faster than the curve only within the maker's limit.",
  }),
  trimRatio: amount({
    label: "Trim ratio",
    quantity: "ratio",
    bounds: runningPumpMethod.inputs.trimRatio,
    whenBlank: 1,
    help: "Impeller diameter it runs with over that of the curve, 0.75 to 1. The rule overstates the cut: trim in steps.",
  }),
};

export const PUMP_KEYS = Object.keys(PUMP_BOXES) as readonly PumpKey[];

/** The boxes a further pump of the station has beside those. */
export const OWN_BOXES = {
  level: amount({
    label: "Its source stands higher by",
    quantity: "head",
    // As far apart as sources of one station may lie: house choice.
    bounds: { atLeast: -1000, atMost: 1000 },
    whenBlank: 0,
    help: "How much higher than the source level of the duty: what it has less to lift. Below 0 where it draws from deeper.",
  }),
  checkValve: oneOf(["yes", "no"], {
    label: "Check valve of its own",
    whenBlank: "yes",
    help: "no where nothing keeps liquid from running back through it.",
  }),
  suctionSize: flangeSize("Suction flange", "Its size, such as NPS 6 or DN 150."),
  dischargeSize: flangeSize("Discharge flange", "Its size, such as NPS 6 or DN 150."),
  flangeClass: named((given, subject, unitSet) => flangeClassNamed(given, ratingSystem(unitSet), subject), {
    label: "Flange class offered",
    choices: FLANGE_CLASS_NAMES,
    inUnitSet: (text, from, to) => flangeClassFor(text, ratingSystem(from), ratingSystem(to)),
    help: "Class of its flanges, such as 150 or PN16; that of the selected pump where left blank.",
  }),
};

export const OWN_KEYS = Object.keys(OWN_BOXES) as readonly OwnKey[];

/** The columns of its curve, as they stand in the pane. A point wants flow and head. */
export const CURVE_POINT = {
  flow: amount({
    label: "flow",
    quantity: "flow",
    bounds: pumpCurveMethod.inputs.flow,
    required: true,
    help: "Flow of the point.",
  }),
  head: amount({
    label: "head",
    quantity: "head",
    bounds: pumpCurveMethod.inputs.head,
    required: true,
    help: "Head at that flow.",
  }),
  efficiency: amount({
    label: "efficiency",
    quantity: "ratio",
    // In per cent or as fractions, one way in all rows: what it may be at most is held against the whole column.
    bounds: { atLeast: 0 },
    help: "75 or 75 %, or fractions in every row.",
  }),
  npshRequired: amount({
    label: "NPSH required",
    quantity: "head",
    bounds: pumpCurveMethod.inputs.npshRequired,
    help: "NPSH the pump needs at that flow.",
  }),
};

export const POINT_COLUMNS = Object.keys(CURVE_POINT) as readonly (keyof CurvePointText)[];
