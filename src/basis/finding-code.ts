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

/** Pump curves, operating points, speed, trim and viscosity. */
export type PumpCode =
  | "curve-too-few-points"
  | "curve-flow-not-ascending"
  | "curve-column-missing"
  | "curve-column-repeated"
  | "curve-shutoff-missing"
  | "curve-does-not-fall"
  | "curve-droops"
  | "efficiency-disagrees-with-power"
  | "power-below-hydraulic"
  | "efficiency-read-as-percent"
  | "efficiency-mixed"
  | "efficiency-not-fraction"
  | "flow-beyond-curve"
  | "flow-below-curve"
  | "flow-outside-column"
  | "power-near-shutoff"
  | "power-at-shutoff-unknown"
  | "speed-far-from-curve"
  | "speed-below-half"
  | "speed-raised"
  | "npshr-scaled-by-rule"
  | "trim-not-similar"
  | "trim-deep"
  | "trim-efficiency-assumed"
  | "trim-cut-overstated"
  | "trim-beyond-measured"
  | "duty-above-curve"
  | "duty-below-curve"
  | "duty-beyond-curve"
  | "system-out-of-reach"
  | "operating-point-beyond-curve"
  | "operating-point-below-curve"
  | "system-curve-too-short"
  | "system-curve-falls"
  | "curves-do-not-overlap"
  | "does-not-start-alone"
  | "several-operating-points"
  | "curves-nearly-touch"
  | "power-for-water"
  | "outside-preferred-region"
  | "flow-below-minimum"
  | "best-efficiency-at-end"
  | "best-efficiency-unknown"
  | "one-pump-alone-beyond-curve"
  | "one-pump-alone-outside-region"
  | "figures-of-several-pumps"
  | "series-casing-pressure"
  | "pump-held-closed"
  | "parallel-pumps-hunt"
  | "suction-specific-speed-high"
  | "viscosity-needs-no-correction"
  | "viscosity-beyond-method"
  | "viscosity-impeller-not-radial"
  | "fit-degree-too-high"
  | "thermal-flow-not-found"
  | "acceptance-power-too-small";

/** Tables of pumps and their curves, in a sheet or a file. */
export type PumpTableCode =
  | "table-no-rows"
  | "table-heading-missing"
  | "table-column-missing"
  | "table-column-repeated"
  | "table-units-disagree"
  | "table-curve-repeated"
  | "table-pump-repeated"
  | "table-flow-not-ascending"
  | "table-curve-too-short"
  | "table-column-too-short"
  | "table-head-does-not-fall"
  | "table-head-rises"
  | "table-efficiency-unclear"
  | "table-efficiency-mixed"
  | "table-limit-differs"
  | "table-limits-contradict"
  | "table-pump-not-listed"
  | "table-pump-without-curves"
  | "table-decimal-signs-mixed"
  | "table-decimal-comma-read"
  | "table-unit-assumed"
  | "table-findings-left-out"
  | "table-second-of-its-kind"
  | "rank-npsh-not-judged"
  | "rank-liquid-viscous"
  | "rank-none-meets"
  | "file-not-a-table"
  | "file-unreadable";

/** Slurries: composition, settling, friction and derating. */
export type SlurryCode =
  | "percent-may-be-fraction"
  | "solids-dense"
  | "solids-float"
  | "solids-do-not-settle"
  | "slurry-figures-too-few"
  | "slurry-figures-contradict"
  | "slurry-impossible"
  | "clay-not-newtonian"
  | "particle-size-doubted"
  | "particle-fine"
  | "particle-coarse"
  | "flow-stratified"
  | "deposition-estimates"
  | "bed-in-pipe"
  | "below-design-velocity"
  | "grading-exponent-held"
  | "derating-too-fine"
  | "fines-contradict-size"
  | "derating-below-measured"
  | "derating-scatter"
  | "derating-fines-relief"
  | "derating-large-impeller"
  | "derating-efficiency-lower"
  | "npshr-rises"
  | "service-class-exceeded";

/** Flange ratings, nozzle pressures, flanges, bolting and surge. */
export type PressureCode =
  | "class-is-a-designation"
  | "class-by-metric-name"
  | "class-not-of-material"
  | "material-taken-as"
  | "material-not-of-standard"
  | "material-listing-uncertain"
  | "rating-temperature-assumed"
  | "rating-temperature-outside"
  | "rating-converted"
  | "rating-not-verified"
  | "rating-by-size"
  | "rating-size-outside"
  | "grey-iron-flange"
  | "flange-is-not-casing"
  | "pressure-above-rating"
  | "rating-nearly-used"
  | "trade-figure-compared"
  | "trade-figure-would-pass"
  | "trade-figure-passed"
  | "beyond-highest-class"
  | "head-tolerance-assumed"
  | "head-tolerance-of-grade"
  | "percent-as-fraction"
  | "suction-vacuum-as-zero"
  | "shutoff-head-guessed"
  | "shutoff-below-duty"
  | "shutoff-not-on-curve"
  | "nozzle-pressure-without-surge"
  | "later-stage-suction"
  | "flange-size-unknown"
  | "flange-size-twice"
  | "flange-dimensions-not-held"
  | "flange-drilling-alone"
  | "flange-mates"
  | "flange-dimensions-from-memory"
  | "flange-dimensions-converted"
  | "bolts-differ"
  | "bolt-stress-above-yield"
  | "bolt-stress-above-ceiling"
  | "bolt-stress-below-needed"
  | "bolt-torque-scatter"
  | "nut-factor-far-from-reference"
  | "stud-length-by-parts"
  | "surge-modulus-taken"
  | "surge-rigid-wall"
  | "surge-liquid-modulus-taken"
  | "surge-anchored-higher"
  | "surge-is-a-screen"
  | "wave-speed-unusual";

/** Curves traced from a picture. */
export type TracingCode =
  | "tracing-picture-unreadable"
  | "tracing-axis-points-together"
  | "tracing-axis-values-equal"
  | "tracing-log-not-positive"
  | "tracing-axes-parallel"
  | "tracing-axes-skewed"
  | "tracing-axis-points-close"
  | "tracing-line-without-axis"
  | "tracing-beyond-axis-points"
  | "tracing-below-zero"
  | "tracing-flow-repeated"
  | "tracing-efficiency-as-fraction"
  | "tracing-curve-repeated"
  | "tracing-curve-unlike"
  | "tracing-rows-without-head"
  | "tracing-beyond-line"
  | "tracing-read-between";

export type FindingCode =
  | TracingCode
  | SlurryCode
  | PumpTableCode
  | PumpCode
  | PipeCode
  | InputCode
  | LiquidCode
  | HeadCode
  | SuctionCode
  | PipeworkCode
  | PressureCode;
