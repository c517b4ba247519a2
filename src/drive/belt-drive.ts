import { checkInputs, type Method } from "../basis/method.ts";
import { amount, andThen, type Finding, fail, type Result, succeed } from "../basis/result.ts";
import { shaftTorque } from "./shaft-torque.ts";

export interface BeltDriveInput {
  /** Power the pump takes, W. */
  readonly shaftPower: number;
  /** r/s */
  readonly driverSpeed: number;
  /** Pitch diameter of the driver's sheave, m. */
  readonly driverSheave: number;
  /** Pitch diameter of the pump's sheave, m. */
  readonly pumpSheave: number;
  /** Between the two shafts, m. */
  readonly centreDistance: number;
  /** Least pitch diameter the motor's maker or NEMA MG 1 allows on its shaft, m. */
  readonly leastDriverSheave?: number;
  /** Share of speed lost; 1.5 % where left out. */
  readonly slip?: number;
  /** 95 % where left out. */
  readonly efficiency?: number;
}

export interface BeltDrive {
  /** r/s */
  readonly pumpSpeed: number;
  /** m/s */
  readonly beltSpeed: number;
  /** Power the driver gives, W. */
  readonly driverPower: number;
  /** Side pull on the driver's shaft, N: at normal tension, and the least and most of the usual range. */
  readonly shaftPull: number;
  readonly shaftPullRange: readonly [least: number, most: number];
}

/** Shaft pull over the pull of the torque alone. */
const PULL = { least: 1.3, normal: 1.5, most: 1.7 } as const;
/** m/s: sheaves are balanced above the first, cast sheaves do not run above the second. */
export const BELT_SPEEDS = { balanced: 25, most: 35 } as const;
/** Greatest power usually sent through V-belts, W (250 hp). */
export const MOST_BELT_POWER = 185_000;

export const USUAL_BELT_EFFICIENCY = 0.95;

export const beltDriveMethod = {
  cites: [
    { source: "practice", at: "slip 1 % to 2 %, efficiency 93 % to 97 %, pull 1.3 to 1.7 × 2T/d, 35 m/s at most" },
  ],
  inputs: {
    driverSpeed: { name: "driver speed", symbol: "n₁", quantity: "speed", above: 0, atMost: 1000 },
    driverSheave: { name: "driver sheave", symbol: "d₁", quantity: "size", above: 0, atMost: 5 },
    pumpSheave: { name: "pump sheave", symbol: "d₂", quantity: "size", above: 0, atMost: 5 },
    centreDistance: { name: "centre distance", symbol: "C", quantity: "length", above: 0, atMost: 50 },
    leastDriverSheave: { name: "minimum driver sheave", quantity: "size", above: 0, atMost: 5 },
    slip: { name: "slip", quantity: "percent", atLeast: 0, below: 0.1, usual: { atLeast: 0.01, atMost: 0.02 } },
    efficiency: {
      name: "belt efficiency",
      quantity: "percent",
      above: 0.5,
      atMost: 1,
      usual: { atLeast: 0.93, atMost: 0.97 },
    },
  },
} as const satisfies Method<
  "driverSpeed" | "driverSheave" | "pumpSheave" | "centreDistance" | "leastDriverSheave" | "slip" | "efficiency"
>;

/**
 * Pump speed (r/s), belt speed (m/s), driver power (W) and side pull on the driver's shaft (N) of a V-belt drive.
 * Formula: n₂ = n₁ (1 − s) d₁/d₂,  v = π d₁ n₁,  F = 1.5 · 2T/d₁,  T = P₁/(2πn₁),  P₁ = P/η
 * Fails: as the method and `shaftTorque` bound the inputs; sheave below the motor's least; shafts too near; above 35
 * m/s.
 * Warns: cautions above 25 m/s and 185 kW, on an unknown least sheave, slip or efficiency beyond the usual.
 * Source: common practice.
 */
export function beltDrive(input: BeltDriveInput): Result<BeltDrive> {
  const {
    driverSpeed,
    driverSheave,
    pumpSheave,
    centreDistance,
    slip = 0.015,
    efficiency = USUAL_BELT_EFFICIENCY,
  } = input;
  // A least sheave that is not known is held against the bounds as the sheave itself, which has them too.
  const leastDriverSheave = input.leastDriverSheave ?? driverSheave;
  const values = { driverSpeed, driverSheave, pumpSheave, centreDistance, leastDriverSheave, slip, efficiency };
  return andThen(checkInputs(beltDriveMethod, values), () => {
    const errors = geometryErrors(input);
    const beltSpeed = Math.PI * driverSheave * driverSpeed;
    if (beltSpeed > BELT_SPEEDS.most) errors.push(tooFast(beltSpeed, BELT_SPEEDS.most, "error"));
    if (errors.length > 0) return fail(errors);
    const driverPower = input.shaftPower / efficiency;
    return andThen(shaftTorque({ shaftPower: driverPower, speed: driverSpeed }), (torque) => {
      const pull = (2 * torque) / driverSheave;
      return succeed(
        {
          pumpSpeed: (driverSpeed * (1 - slip) * driverSheave) / pumpSheave,
          beltSpeed,
          driverPower,
          shaftPull: PULL.normal * pull,
          shaftPullRange: [PULL.least * pull, PULL.most * pull] as const,
        },
        remarks(input, beltSpeed, driverPower),
      );
    });
  });
}

function geometryErrors(input: BeltDriveInput): Finding[] {
  const { driverSheave, pumpSheave, centreDistance, leastDriverSheave } = input;
  const errors: Finding[] = [];
  if (leastDriverSheave !== undefined && driverSheave < leastDriverSheave) {
    errors.push({
      code: "sheave-too-small",
      kind: "error",
      subject: "driver sheave",
      found: amount("size", driverSheave),
      limit: { quantity: "size", value: leastDriverSheave, side: "at least" },
    });
  }
  const reach = (driverSheave + pumpSheave) / 2;
  if (centreDistance <= reach) {
    errors.push({
      code: "sheaves-overlap",
      kind: "error",
      subject: "centre distance",
      found: amount("length", centreDistance),
      limit: { quantity: "length", value: reach, side: "above" },
    });
  }
  return errors;
}

function tooFast(beltSpeed: number, limit: number, kind: "error" | "check"): Finding {
  return {
    code: "belt-speed-high",
    kind,
    subject: "belt speed",
    found: amount("velocity", beltSpeed),
    limit: { quantity: "velocity", value: limit, side: "at most" },
    cites: beltDriveMethod.cites[0],
  };
}

function remarks(input: BeltDriveInput, beltSpeed: number, driverPower: number): readonly Finding[] {
  const findings: Finding[] = [];
  if (beltSpeed > BELT_SPEEDS.balanced) findings.push(tooFast(beltSpeed, BELT_SPEEDS.balanced, "check"));
  if (driverPower > MOST_BELT_POWER) {
    findings.push({
      code: "belt-power-high",
      kind: "check",
      subject: "belt drive",
      found: amount("power", driverPower),
      limit: { quantity: "power", value: MOST_BELT_POWER, side: "at most" },
      cites: beltDriveMethod.cites[0],
    });
  }
  if (input.leastDriverSheave === undefined) {
    findings.push({ code: "sheave-minimum-unknown", kind: "check", subject: "driver sheave" });
  }
  return findings;
}
