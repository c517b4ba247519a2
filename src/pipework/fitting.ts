import type { Citation } from "../basis/citation.ts";
import type { Result } from "../basis/result.ts";
import type { Pipe } from "./pipe.ts";

/** A fitting, valve, entrance or exit whose loss is K · V²/2g in the bore of the pipe it belongs to. */
export interface Fitting {
  /** As the product prints it, such as "elbow 90 long"; `fittingNamed` reads it back. */
  readonly name: string;
  /** Where the liquid leaves the line into a vessel, a sump or the open: the velocity head, lost once. */
  readonly isExit: boolean;
  readonly cites: Citation;
  /** Loss coefficient on the velocity head in the pipe's own bore, with the fitting's own findings. */
  readonly lossCoefficient: (pipe: Pipe) => Result<number>;
}

export interface CountedFitting {
  readonly fitting: Fitting;
  readonly count: number;
}
