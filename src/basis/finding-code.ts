/**
 * Every finding the engine can raise, by the part that raises it. A code keeps its meaning once released.
 * Its words are in shared/text/words/, one file a part; a code without words does not compile.
 */

/** Input that cannot be read or lies where the method does not hold. */
export type InputCode =
  | "not-a-number"
  | "out-of-range"
  | "outside-usual-range"
  | "left-out"
  | "wrong-kind"
  | "unit-missing"
  | "unit-unknown"
  | "unit-ambiguous"
  | "unit-wrong-kind"
  | "number-ambiguous"
  | "name-unknown"
  | "choice-unknown"
  | "shapes-differ"
  | "not-a-single-value"
  | "too-many-arguments"
  | "zero-may-be-blank"
  | "gauge-or-absolute"
  | "not-a-whole-number"
  | "beyond-computation"
  | "duty-unreadable";

/** Liquids and the site. */
export type LiquidCode =
  | "liquid-frozen"
  | "liquid-boils-in-the-open"
  | "liquid-hot"
  | "liquid-figures-fixed"
  | "liquid-density-unusual"
  | "liquid-part-unread"
  | "liquid-stated-twice"
  | "liquid-incomplete"
  | "glycol-by-volume"
  | "vapour-pressure-not-stated"
  | "viscosity-from-saybolt"
  | "altitude-unusual";

/** Pipe friction, fittings and lines. */
export type PipeworkCode =
  | "critical-zone"
  | "size-change-wrong-way"
  | "fitting-needs-flow"
  | "fitting-assumed"
  | "fitting-size-outside-table"
  | "fitting-methods-mixed"
  | "valve-not-held-open"
  | "no-size-meets";

/** Total head, system curve and grade line. */
export type HeadCode =
  | "line-lossless"
  | "exit-not-counted"
  | "exit-counted-twice"
  | "exit-in-suction"
  | "velocity-high"
  | "lay-flat-in-suction"
  | "total-head-not-positive"
  | "route-too-short"
  | "chainage-not-increasing"
  | "route-pipe-missing"
  | "route-last-pipe-unused"
  | "route-exit-midway"
  | "route-steep"
  | "route-at-sea-level"
  | "separation-not-judged"
  | "column-separation"
  | "lay-flat-under-vacuum"
  | "air-release"
  | "siphon-too-high"
  | "falling-leg-part-full"
  | "start-head-does-not-fill"
  | "start-head-does-not-deliver";

/** NPSH available and suction lift. */
export type SuctionCode =
  | "vapour-pressure-missing"
  | "npsha-not-positive"
  | "boils-at-surface"
  | "lift-beyond-practice"
  | "suction-liquid-hot"
  | "inlet-pressure-low"
  | "suction-lay-flat-collapses"
  | "flooded-suction-needed"
  | "npsh-margin-assumed"
  | "npsh-margin-small";

/** Names of pipes and hoses. */
export type PipeCode =
  | "pipe-family-missing"
  | "pipe-size-missing"
  | "pipe-roughness-missing"
  | "bore-is-nominal"
  | "surface-uncertain"
  | "hose-corrugated";

export type FindingCode = PipeCode | InputCode | LiquidCode | HeadCode | SuctionCode | PipeworkCode;
