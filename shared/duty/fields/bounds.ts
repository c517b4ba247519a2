import { STANDARD_ATMOSPHERE } from "../../../src/basis/constants.ts";
import { motorSpeedMethod } from "../../../src/drive/motor-speed.ts";
import { pumpCurveMethod } from "../../../src/pump/pump-curve-point.ts";
import { systemCurveThroughMethod } from "../../../src/pump/system-curve-through.ts";
import { atmosphereMethod } from "../../../src/site/atmosphere.ts";
import type { Bounds } from "../field.ts";

/** Bounds that several boxes share. Those of a method are its own; the others are house choices: what a slip of the keys passes. */

export const FLOW: Bounds = { above: 0, atMost: pumpCurveMethod.inputs.flow.atMost };
export const STATIC_HEAD: Bounds = systemCurveThroughMethod.inputs.head;
export const SPEED: Bounds = motorSpeedMethod.inputs.speed;
/** Levels are read off the same land as site altitudes. */
export const LEVEL: Bounds = atmosphereMethod.inputs.altitude;

/** No pressure is below none at all; 1000 bar is beyond every flange. House choice. */
const GREATEST_PRESSURE = 1e8;
export const PRESSURE: Bounds = { atLeast: -STANDARD_ATMOSPHERE, atMost: GREATEST_PRESSURE };
/** What a part stands, above the air around it. House choice. */
export const RATED_PRESSURE: Bounds = { above: 0, atMost: GREATEST_PRESSURE };
/** House choice, m. */
export const IMPELLER: Bounds = { above: 0, atMost: 5 };
/** House choice. */
export const MONEY: Bounds = { atLeast: 0 };
