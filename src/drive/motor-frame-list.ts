import { NOT_VERIFIED } from "../basis/citation.ts";
import type { Result } from "../basis/result.ts";
import { IEC_FRAMES, IEC_TWO_POLE_SHAFTS } from "../tables/iec-frames.ts";
import { NEMA_FRAMES } from "../tables/nema-frames.ts";
import { NEMA_PUMP_SHAFTS } from "../tables/nema-pump-shafts.ts";
import { ENCLOSURES, ratingsOfFrame } from "./frame-of-rating.ts";
import { flangeFrame, footFrame, pumpMotorFrame } from "./motor-frame.ts";
import { POLES } from "./motor-speed.ts";

/** One row of the list of motor frames; what a kind of frame does not have is missing. Lengths in m. */
export interface MotorFrameRow {
  readonly standard: "NEMA MG 1" | "IEC 60072-1";
  readonly frame: string;
  readonly kind: string;
  readonly shaftHeight?: number;
  readonly holesAcross?: number;
  readonly holesAlong?: number;
  readonly shaftDiameter: number;
  readonly shaftLength: number;
  readonly sealDiameter?: number;
  readonly flange?: string;
  readonly boltCircle?: number;
  readonly spigot?: number;
  /** What has this frame: "enclosed: 4 poles 5 hp". */
  readonly ratings?: string;
  readonly verified: string;
}

/** What has a frame, or any frame of a height, in the printed unit of its series. */
function ratingsText(frames: readonly string[]): { readonly ratings?: string } {
  const found = frames.flatMap(ratingsOfFrame);
  const lists = ENCLOSURES.flatMap((enclosure) => {
    const byPoles = POLES.flatMap((poles) => {
      const of = found.filter((one) => one.enclosure === enclosure && one.poles === poles);
      const ratings = [...new Set(of.map(({ printed }) => printed))].toSorted((a, b) => a - b);
      return ratings.length === 0 ? [] : [`${poles} poles ${ratings.join(", ")}`];
    });
    return byPoles.length === 0 ? [] : [`${enclosure}: ${byPoles.join("; ")}`];
  });
  if (lists.length === 0) return {};
  return { ratings: `${lists.join(". ")}; ${found[0]?.series === "NEMA" ? "hp" : "kW"}` };
}

function made<T>(result: Result<T>, row: (value: T) => MotorFrameRow): readonly MotorFrameRow[] {
  return result.ok ? [row(result.value)] : [];
}

function footRows(): readonly MotorFrameRow[] {
  return NEMA_FRAMES.flatMap(([name]) =>
    made(footFrame(name), ({ frame, directCouplingOnly, ...dimensions }) => ({
      standard: "NEMA MG 1",
      frame,
      kind: directCouplingOnly ? "foot, short shaft: coupling only, no belts" : "foot",
      ...dimensions,
      ...ratingsText([frame]),
      verified: "looked up in a data book, part of it in a second listing; ratings not yet verified",
    })),
  );
}

function pumpRows(): readonly MotorFrameRow[] {
  return NEMA_PUMP_SHAFTS.flatMap(([names]) => names).flatMap((name) =>
    made(
      pumpMotorFrame(name),
      ({ frame, type, shaftDiameter, shaftLength, sealDiameter, boltCircle, rabbet, faceThread }) => ({
        standard: "NEMA MG 1",
        frame,
        kind: type === "JM" ? "close-coupled, short shaft" : "close-coupled, long shaft",
        shaftDiameter,
        shaftLength,
        sealDiameter,
        flange: `C face, ${faceThread}`,
        boltCircle,
        spigot: rabbet,
        verified: frame.startsWith("32")
          ? "inside the limits of an open engineering data book"
          : "looked up in a guide to MG 1",
      }),
    ),
  );
}

/** Lengths of an IEC frame by its letter; small ones have none. */
const IEC_LETTERS = ["", "S", "M", "L"] as const;

function flangeRows(): readonly MotorFrameRow[] {
  const row = (name: string, poles: 2 | 4, kind: string): readonly MotorFrameRow[] =>
    made(flangeFrame(name, poles), (dimensions) => ({
      standard: "IEC 60072-1",
      kind,
      ...dimensions,
      ...ratingsText(IEC_LETTERS.map((letter) => `${name}${letter}`)),
      verified: NOT_VERIFIED,
    }));
  return IEC_FRAMES.flatMap(([height]) => {
    const name = String(height);
    const isSlender = IEC_TWO_POLE_SHAFTS.some(([of]) => of === height);
    return isSlender
      ? [...row(name, 4, "B3, B5, B35: four poles and slower"), ...row(name, 2, "B3, B5, B35: two poles")]
      : row(name, 4, "B3, B5, B35");
  });
}

/** NEMA foot frames, close-coupled pump frames JM and JP, then IEC frames with FF flange, each smallest first. */
export function motorFrameList(): readonly MotorFrameRow[] {
  return [...footRows(), ...pumpRows(), ...flangeRows()];
}
