import { UNIT_SETS } from "../../../src/basis/quantities.ts";
import { USUAL_BELT_EFFICIENCY } from "../../../src/drive/belt-drive.ts";
import { LEAST_ENGINE_LOAD, USUAL_LOSS } from "../../../src/drive/engine-net-power.ts";
import { PART_LOAD } from "../../../src/drive/fuel-rate.ts";
import { TANK_SPANS, tankTimeMethod, USUAL_RESERVE, USUAL_USABLE_SHARE } from "../../../src/drive/fuel-tank.ts";
import { ASSUMED_MOTOR_EFFICIENCY, USUAL_CONVERTER_EFFICIENCY } from "../../../src/estimate/energy-cost.ts";
import { VACUUM_FACTOR } from "../../../src/estimate/pipe-collapse.ts";
import { NEARLY_USED } from "../../../src/pressure/flange-check.ts";
import { FILLING_VELOCITY } from "../../../src/route/filling.ts";
import { siphonLimitsMethod, USUAL_SIPHON } from "../../../src/route/grade-point.ts";
import { RHEOLOGY_SIZE } from "../../../src/slurry/deposition-velocity.ts";
import { MOST_RESPONSE } from "../../../src/station/speed-table.ts";
import { type AmountField, amount, type Bounds, percent } from "../field.ts";

/** Where what a blank setting stands for comes from. */
const PRACTICE = "Common practice, no source.";
const HOUSE = "Choice of this program.";

/** House choices: what a slip of the keys passes. */
const SHARE: Bounds = { atLeast: 0, atMost: 1 };
const LARGE_SHARE: Bounds = { above: 0, atMost: 1 };
const MORE: Bounds = { atLeast: 0, atMost: 10 };
const TIMES: Bounds = { atLeast: 1, atMost: 100 };
/** Of the rating of an engine: what ENGINELOAD takes. */
const LOSSES: Bounds = { atLeast: 0, below: 0.5 };
const VELOCITY: Bounds = { above: 0, atMost: 30 };
/** A year. */
const HOURS: Bounds = { above: 0, atMost: 8784 * 3600 };

const DEGREE = Math.PI / 180;
const SLOPE: Bounds = { atLeast: 0, atMost: 90 * DEGREE };
const FOOT = UNIT_SETS.US.velocity.factor;

function tankSpan(label: string, span: number): AmountField {
  return amount({
    label,
    quantity: "hours",
    bounds: HOURS,
    whenBlank: span,
    help: "A tank is listed for it.",
    usual: PRACTICE,
  });
}

/**
 * Figures of judgement that the formulas of the sheet rest on and that no standard, maker or customer has stated. Each
 * stands for what is usual until somebody states another; the sheet prints those that it uses.
 */
export const settings = {
  lossMargin: percent({
    label: "Margin on losses, none stated",
    bounds: MORE,
    whenBlank: 0.1,
    help: "Of all losses, off the head judged.",
    usual: PRACTICE,
  }),
  flowInHand: percent({
    label: "Flow over the duty, at most",
    bounds: MORE,
    whenBlank: 0.2,
    help: "More has to be throttled.",
    usual: PRACTICE,
  }),
  speedBand: percent({
    label: "Speed off that of the curve",
    bounds: LARGE_SHARE,
    whenBlank: 0.2,
    help: "Affinity laws hold within it.",
    usual: PRACTICE,
  }),
  deepTrimSpeed: amount({
    label: "N_s of the deeper trim, to",
    quantity: "ratio",
    bounds: { above: 0, atMost: 20_000 },
    whenBlank: 3000,
    help: "Specific speed, US units.",
    usual: "From memory.",
  }),
  deepestTrim: amount({
    label: "Minimum trim ratio, radial",
    quantity: "ratio",
    bounds: LARGE_SHARE,
    whenBlank: 0.8,
    help: "Up to that specific speed.",
    usual: "From memory.",
  }),
  deepestMixedTrim: amount({
    label: "Minimum trim ratio, others",
    quantity: "ratio",
    bounds: LARGE_SHARE,
    whenBlank: 0.9,
    help: "Above that, or where not known.",
    usual: "From memory.",
  }),
  viscousHead: amount({
    label: "Minimum head ratio, viscous",
    quantity: "ratio",
    bounds: LARGE_SHARE,
    whenBlank: 0.8,
    help: "Less leaves little of the pump.",
    usual: HOUSE,
  }),
  npshOff: percent({
    label: "NPSH required off the curve",
    bounds: MORE,
    whenBlank: 0.05,
    help: "More: typed of another pump.",
    usual: HOUSE,
  }),
  atmosphereOff: percent({
    label: "Off one atmosphere by",
    bounds: SHARE,
    whenBlank: 0.03,
    help: "So near, it may be absolute.",
    usual: HOUSE,
  }),
  speedOfLaws: percent({
    label: "Minimum share of the speed",
    bounds: LARGE_SHARE,
    whenBlank: 0.5,
    help: "Affinity laws fail below it.",
    usual: PRACTICE,
  }),
  turndown: amount({
    label: "Turndown of a motor",
    quantity: "ratio",
    bounds: TIMES,
    whenBlank: 10,
    help: "Of speed, fan-cooled.",
    usual: PRACTICE,
  }),
  lowFlow: percent({
    label: "Minimum share of BEP flow",
    bounds: SHARE,
    whenBlank: 0.3,
    help: "Less is not run for long.",
    usual: HOUSE,
  }),
  mostResponse: amount({
    label: "Flow response that hunts",
    quantity: "ratio",
    bounds: TIMES,
    whenBlank: MOST_RESPONSE,
    help: "Flow % per speed %; more hunts.",
    usual: HOUSE,
  }),
  fillingVelocity: amount({
    label: "Filling velocity",
    quantity: "velocity",
    bounds: VELOCITY,
    whenBlank: FILLING_VELOCITY,
    help: "In the largest bore.",
    usual: "AWWA M51, from memory.",
  }),
  siphonHeight: amount({
    label: "Siphon height at sea level",
    quantity: "head",
    bounds: siphonLimitsMethod.inputs.siphonHeight,
    whenBlank: USUAL_SIPHON.siphonHeight,
    help: "Over it no siphon is counted on.",
    usual: HOUSE,
  }),
  siphonHeightLoss: amount({
    label: "Siphon height lost with altitude",
    quantity: "ratio",
    bounds: siphonLimitsMethod.inputs.siphonHeightLoss,
    whenBlank: USUAL_SIPHON.siphonHeightLoss,
    help: "Of it, per 1000 of altitude.",
    usual: HOUSE,
  }),
  siphonPressure: amount({
    label: "Minimum pressure of a siphon",
    quantity: "absolutePressure",
    bounds: siphonLimitsMethod.inputs.siphonPressure,
    whenBlank: USUAL_SIPHON.siphonPressure,
    help: "Absolute; below it air comes out.",
    usual: HOUSE,
  }),
  ratingUsed: percent({
    label: "Share of a rating used",
    bounds: LARGE_SHARE,
    whenBlank: NEARLY_USED,
    help: "More: little is left.",
    usual: HOUSE,
  }),
  jointTest: amount({
    label: "Test over working pressure",
    quantity: "ratio",
    bounds: TIMES,
    whenBlank: 1.5,
    help: "Without a package test.",
    usual: "As the standards test pumps.",
  }),
  lastingVacuum: amount({
    label: "Factor on a lasting vacuum",
    quantity: "ratio",
    bounds: TIMES,
    whenBlank: VACUUM_FACTOR,
    help: "Collapse pressure over it.",
    usual: PRACTICE,
  }),
  passingVacuum: amount({
    label: "Factor on a passing vacuum",
    quantity: "ratio",
    bounds: TIMES,
    whenBlank: 1.5,
    help: "Collapse pressure over it.",
    usual: PRACTICE,
  }),
  droopHighIdle: percent({
    label: "High idle of an engine, droop",
    bounds: SHARE,
    whenBlank: 0.1,
    help: "Over running speed.",
    usual: PRACTICE,
  }),
  isochronousHighIdle: percent({
    label: "High idle, isochronous",
    bounds: SHARE,
    whenBlank: 0.01,
    help: "Over running speed.",
    usual: PRACTICE,
  }),
  powerTolerance: percent({
    label: "Power tolerance, no grade",
    bounds: SHARE,
    whenBlank: 0.09,
    help: "Widest grade with both signs.",
    usual: HOUSE,
  }),
  beltEfficiency: percent({
    label: "Efficiency of belts",
    bounds: LARGE_SHARE,
    whenBlank: USUAL_BELT_EFFICIENCY,
    help: "Of the motor's output.",
    usual: PRACTICE,
  }),
  converterEfficiency: percent({
    label: "Efficiency of a VFD",
    bounds: LARGE_SHARE,
    whenBlank: USUAL_CONVERTER_EFFICIENCY,
    help: "Of what the drive draws.",
    usual: PRACTICE,
  }),
  motorEfficiencyUsual: percent({
    label: "Motor efficiency, none held",
    bounds: LARGE_SHARE,
    whenBlank: ASSUMED_MOTOR_EFFICIENCY,
    help: "At full load.",
    usual: PRACTICE,
  }),
  setMotorEfficiency: percent({
    label: "Motor efficiency, generator",
    bounds: LARGE_SHARE,
    whenBlank: 0.92,
    help: "Where none is held.",
    usual: HOUSE,
  }),
  fanLossesUsual: percent({
    label: "Fan, other losses, usual",
    bounds: LOSSES,
    whenBlank: USUAL_LOSS,
    help: "Of a gross rating, none stated.",
    usual: PRACTICE,
  }),
  fanLossesLeast: percent({
    label: "Minimum fan, other losses",
    bounds: LOSSES,
    whenBlank: 0.03,
    help: "Of a gross rating, at best.",
    usual: PRACTICE,
  }),
  lightLoad: percent({
    label: "Minimum load of an engine",
    bounds: SHARE,
    whenBlank: LEAST_ENGINE_LOAD,
    help: "Below it for long: wet stacking.",
    usual: PRACTICE,
  }),
  fuelAtLowLoad: amount({
    label: "Consumption at 40 % load",
    quantity: "ratio",
    bounds: TIMES,
    whenBlank: PART_LOAD[1][1],
    help: "Over that from half load up.",
    usual: PRACTICE,
  }),
  fuelAtQuarterLoad: amount({
    label: "Consumption at 25 % load",
    quantity: "ratio",
    bounds: TIMES,
    whenBlank: PART_LOAD[0][1],
    help: "Over that from half load up.",
    usual: PRACTICE,
  }),
  tankUsable: percent({
    label: "Usable share of a fuel tank",
    bounds: tankTimeMethod.inputs.usableShare,
    whenBlank: USUAL_USABLE_SHARE,
    help: "Of its volume.",
    usual: PRACTICE,
  }),
  tankReserve: percent({
    label: "Reserve in a fuel tank",
    bounds: tankTimeMethod.inputs.reserve,
    whenBlank: USUAL_RESERVE,
    help: "Of what can be drawn.",
    usual: PRACTICE,
  }),
  tankShort: tankSpan("Fuel tank, short span", TANK_SPANS[0]),
  tankMedium: tankSpan("Fuel tank, medium span", TANK_SPANS[1]),
  tankLong: tankSpan("Fuel tank, long span", TANK_SPANS[2]),
  liftShareClear: percent({
    label: "Lift kept clear, share",
    bounds: SHARE,
    whenBlank: 0.05,
    help: "Of the maximum lift.",
    usual: HOUSE,
  }),
  liftClear: amount({
    label: "Lift kept clear, height",
    quantity: "head",
    bounds: { atLeast: 0, atMost: 10 },
    whenBlank: 0.3,
    help: "Or so much, if that is more.",
    usual: HOUSE,
  }),
  primeTimeBypass: amount({
    label: "Longest time to prime, bypass",
    quantity: "duration",
    bounds: { above: 0, atMost: 86_400 },
    whenBlank: 300,
    help: "Or where no service is stated.",
    usual: PRACTICE,
  }),
  primeTimeOther: amount({
    label: "Longest time to prime",
    quantity: "duration",
    bounds: { above: 0, atMost: 86_400 },
    whenBlank: 600,
    help: "On any other service.",
    usual: PRACTICE,
  }),
  settlingSolids: percent({
    label: "Solids that settle in a lift",
    bounds: LARGE_SHARE,
    whenBlank: 0.2,
    help: "By weight; none primes again.",
    usual: PRACTICE,
  }),
  rheologySize: amount({
    label: "Finest d50, Newtonian",
    quantity: "size",
    bounds: { above: 0, atMost: 0.01 },
    whenBlank: RHEOLOGY_SIZE,
    help: "Finer: ask for its rheology.",
    usual: HOUSE,
  }),
  slopeFrom: amount({
    label: "Slope that settles sooner, from",
    quantity: "angle",
    bounds: SLOPE,
    whenBlank: 15 * DEGREE,
    help: "Of a line that climbs.",
    usual: PRACTICE,
  }),
  riserSlope: amount({
    label: "Slope of a riser, above",
    quantity: "angle",
    bounds: SLOPE,
    whenBlank: 60 * DEGREE,
    help: "Steeper, it lifts its solids.",
    usual: PRACTICE,
  }),
  slopeVelocity: amount({
    label: "Velocity on such a slope",
    quantity: "ratio",
    bounds: TIMES,
    whenBlank: 1.3,
    help: "Over that of level pipe.",
    usual: PRACTICE,
  }),
  riserFactor: amount({
    label: "Riser over settling velocity",
    quantity: "ratio",
    bounds: TIMES,
    whenBlank: 2,
    help: "Of the largest particles.",
    usual: PRACTICE,
  }),
  passageFactor: amount({
    label: "Passage over hard solids",
    quantity: "ratio",
    bounds: TIMES,
    whenBlank: 3,
    help: "Of the impeller, over size.",
    usual: PRACTICE,
  }),
  sewageVelocity: amount({
    label: "Sewage kept moving at",
    quantity: "velocity",
    bounds: VELOCITY,
    whenBlank: 2 * FOOT,
    help: "In the slowest discharge run.",
    usual: PRACTICE,
  }),
  flushVelocity: amount({
    label: "Sewage main flushed at",
    quantity: "velocity",
    bounds: VELOCITY,
    whenBlank: 3.5 * FOOT,
    help: "Once a day.",
    usual: PRACTICE,
  }),
} as const;
