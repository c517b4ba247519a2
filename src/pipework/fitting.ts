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
  /** The method the coefficient belongs to, where two methods should not meet in one line. */
  readonly method?: "equivalent length" | "3-K";
  /** Check and foot valves: √ρ · V from which the flow holds the disc fully open, √(kg/m³) · m/s. */
  readonly heldOpenFrom?: number;
  /**
   * Loss coefficient on the velocity head in the pipe's own bore, with the fitting's own findings. Fittings of the
   * 3-K method need the Reynolds number in that pipe and fail without it; at rest (0) they give their fully turbulent
   * part, since no head is lost whatever the coefficient.
   */
  readonly lossCoefficient: (pipe: Pipe, reynolds?: number) => Result<number>;
}

export interface CountedFitting {
  readonly fitting: Fitting;
  readonly count: number;
}
