import type { Citation } from "../basis/citation.ts";
import type { PipeMake } from "./pipe-make.ts";

/** A pipe or hose as the methods see it. Lengths in m. */
export interface Pipe {
  /** As the product prints it, such as "6in sch40"; `pipeNamed` reads it back. */
  readonly name: string;
  /** Family the size belongs to, such as "sch40" or "HDPE DR17"; "measured" for a bore typed in. */
  readonly family: string;
  /** True inside diameter, inside the lining where there is one. */
  readonly bore: number;
  /** Absolute roughness of the design surface, and where it comes from. */
  readonly roughness: number;
  readonly roughnessCites: Citation;
  readonly cites: Citation;
  /** Left out of a bore with a bare roughness. */
  readonly make?: PipeMake;
  readonly outsideDiameter?: number;
  /** Nominal wall of metal pipe, mean wall of plastic pipe. Without the lining. */
  readonly wall?: number;
  /** Thickness of a cement-mortar lining. bore = outsideDiameter − 2 (wall + lining). */
  readonly lining?: number;
  /** Nominal size in inches, where the family has one. Fitting rules that go by size read this. */
  readonly nominalInches?: number;
  /** Multiplies the friction factor of the smooth bore (corrugated hose). 1 where left out. */
  readonly frictionMultiplier?: number;
  /** C of Hazen–Williams, where the pipe's friction goes by it: "8in sch40 C 120". Its roughness then counts for nothing. */
  readonly hazenWilliams?: number;
  /** Lay-flat hose collapses under vacuum and may not be used for suction or fall below atmosphere. */
  readonly collapsible?: boolean;
}
