import { nearestNames } from "../basis/nearest.ts";
import { fail, type Result, succeed } from "../basis/result.ts";
import { unitOf } from "../basis/units.ts";
import { IEC_FRAMES, IEC_TWO_POLE_SHAFTS } from "../tables/iec-frames.ts";
import { NEMA_FRAMES } from "../tables/nema-frames.ts";
import { NEMA_PUMP_SHAFTS } from "../tables/nema-pump-shafts.ts";

const INCH = unitOf("in").factor;
const MILLIMETRE = unitOf("mm").factor;

/** What a foot-mounted motor is set and coupled by. Lengths in m. */
export interface FootFrame {
  readonly frame: string;
  readonly shaftHeight: number;
  readonly holesAcross: number;
  readonly holesAlong: number;
  readonly shaftDiameter: number;
  readonly shaftLength: number;
  /** Short shaft: for a coupling only, never for belts. */
  readonly directCouplingOnly: boolean;
}

/** The face and shaft a close-coupled pump is bolted to. Lengths in m. */
export interface PumpMotorFrame {
  readonly frame: string;
  /** JM: short shaft, rotating seal on the shaft. JP: long shaft, packing or double seal. */
  readonly type: "JM" | "JP";
  /** At the impeller. */
  readonly shaftDiameter: number;
  /** Behind the impeller, where the seal sits. */
  readonly sealDiameter: number;
  readonly innerDiameter: number;
  readonly shaftLength: number;
  readonly EQ: number;
  readonly ET: number;
  readonly boltCircle: number;
  readonly rabbet: number;
  readonly faceThread: string;
}

/** The flange and shaft of an IEC motor. Lengths in m. */
export interface FlangeFrame {
  readonly frame: string;
  readonly shaftHeight: number;
  readonly flange: string;
  readonly boltCircle: number;
  readonly spigot: number;
  readonly shaftDiameter: number;
  readonly shaftLength: number;
}

function unknown(given: string, names: readonly string[]): Result<never> {
  const suggestions = nearestNames(given, names);
  return fail([{ code: "name-unknown", kind: "error", subject: "motor frame", given, suggestions }]);
}

/** A NEMA T or TS frame by its name, in upper or lower case. Fails for any other name. */
export function footFrame(name: string): Result<FootFrame> {
  const wanted = name.trim().toUpperCase();
  const row = NEMA_FRAMES.find(([frame]) => frame === wanted);
  if (row === undefined) {
    return unknown(
      name,
      NEMA_FRAMES.map(([frame]) => frame),
    );
  }
  const [frame, D, twoE, twoF, U, NW] = row;
  return succeed({
    frame,
    shaftHeight: D * INCH,
    holesAcross: twoE * INCH,
    holesAlong: twoF * INCH,
    shaftDiameter: U * INCH,
    shaftLength: NW * INCH,
    directCouplingOnly: frame.endsWith("TS"),
  });
}

/** A NEMA JM or JP frame by its name, in upper or lower case. Fails for any other name. */
export function pumpMotorFrame(name: string): Result<PumpMotorFrame> {
  const wanted = name.trim().toUpperCase();
  const row = NEMA_PUMP_SHAFTS.find(([frames]) => frames.includes(wanted));
  if (row === undefined) {
    return unknown(
      name,
      NEMA_PUMP_SHAFTS.flatMap(([frames]) => frames),
    );
  }
  const [, U, EL, EM, EQ, ET, AH, AJ, AK, faceThread] = row;
  return succeed({
    frame: wanted,
    type: wanted.endsWith("JM") ? "JM" : "JP",
    shaftDiameter: U * INCH,
    sealDiameter: EL * INCH,
    innerDiameter: EM * INCH,
    shaftLength: AH * INCH,
    EQ: EQ * INCH,
    ET: ET * INCH,
    boltCircle: AJ * INCH,
    rabbet: AK * INCH,
    faceThread,
  });
}

/** An IEC frame by its shaft height, such as "160" or "160M"; two-pole shafts are smaller from 225. Fails for others. */
export function flangeFrame(name: string, poles: number): Result<FlangeFrame> {
  const height = /^\s*(\d+)\s*[SML]?\s*$/i.exec(name)?.[1];
  const row = IEC_FRAMES.find(([frame]) => String(frame) === height);
  if (row === undefined) {
    return unknown(
      name,
      IEC_FRAMES.map(([frame]) => String(frame)),
    );
  }
  const [frame, flange, boltCircle, spigot, diameter, length] = row;
  const slender = poles === 2 ? IEC_TWO_POLE_SHAFTS.find(([of]) => of === frame) : undefined;
  return succeed({
    frame: String(frame),
    shaftHeight: frame * MILLIMETRE,
    flange,
    boltCircle: boltCircle * MILLIMETRE,
    spigot: spigot * MILLIMETRE,
    shaftDiameter: (slender?.[1] ?? diameter) * MILLIMETRE,
    shaftLength: (slender?.[2] ?? length) * MILLIMETRE,
  });
}
