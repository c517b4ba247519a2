import type { FlangeSize } from "./flange-size.ts";

/** Dimensions of a flange and of its joint with one like it, m. Nothing where the standard has none. */
export interface FlangeDimensions {
  readonly size: FlangeSize;
  readonly outsideDiameter: number;
  readonly boltCircle: number;
  readonly bolts: number;
  /** Nominal size as the table of bolts names it, "3/4" or "M20", and the diameter of that. */
  readonly boltSize: string;
  readonly boltDiameter: number;
  readonly holeDiameter: number;
  readonly raisedFace?: number;
  /** Least thickness of steel: of a class without the raised face, of a PN (type 11) with it. */
  readonly steelThickness?: number;
  /** Of a plate flange, EN 1092-1 type 01 or slip-on of JIS. */
  readonly plateThickness?: number;
  /** Least thickness of ductile and of grey iron with the raised face. */
  readonly ductileThickness?: number;
  readonly greyThickness?: number;
  readonly studLength?: number;
  readonly machineBoltLength?: number;
  /** Of the ring inside the bolts; a full-face gasket has the same inside diameter and the flange's outside. */
  readonly gasketOutside?: number;
  readonly gasketInside?: number;
}
