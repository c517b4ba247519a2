import type { Amount } from "./quantities.ts";

/**
 * Every finding the engine can raise, by the part that raises it. A code keeps its meaning once released.
 * Its words are in shared/text/words/, one file a part; a code without words does not compile.
 * With each code stand the facts its words need beside subject, amounts and suggestions; null where they need none.
 */

/** Input that cannot be read or lies where the method does not hold. */
export interface InputFindings {
  "not-a-number": null;
  "out-of-range": null;
  "outside-usual-range": null;
  "left-out": null;
  "fewer-than-two": null;
  "wrong-kind": null;
  "unit-missing": null;
  "number-as-text": null;
  "share-read-as": null;
  "share-to-hand-on": null;
  "percent-as-fraction": null;
  "unit-unknown": null;
  "unit-ambiguous": null;
  "unit-wrong-kind": null;
  "number-ambiguous": null;
  "number-read-as": null;
  "text-read-as": { as: string };
  "digits-parted": null;
  "blank-as-zero": { instead: string };
  "text-too-long": { letters: number; most: number };
  "name-unknown": null;
  "choice-unknown": null;
  "shapes-differ": { first: string; firstShape: string; shape: string };
  "not-a-single-value": null;
  "too-many-arguments": { given: number; most: number };
  "zero-may-be-blank": null;
  "gauge-or-absolute": { unit: string };
  "not-a-whole-number": null;
  "beyond-computation": null;
  "answer-implausible": null;
  "sum-pending": null;
  "sum-unread": null;
  "sum-beyond": null;
  "sum-divides-by-zero": null;
  "sum-units-apart": null;
  "sum-bare-beside-unit": null;
  "sum-not-loaded": null;
  "duty-unreadable": { reason: string };
  "field-not-known": null;
  "logo-refused": { reason: string };
  "logo-left-out": null;
  "record-left-out": null;
  "calculates-by-hand": null;
}

/** Liquids and the site. */
export interface LiquidFindings {
  "liquid-frozen": null;
  "liquid-boils-in-the-open": { vapourPressure: Amount; waterBoilsAt: Amount };
  "liquid-hot": null;
  "liquid-figures-fixed": null;
  "liquid-density-unusual": { gravity: number };
  "liquid-part-unread": null;
  "liquid-taken-as": { as: string };
  "liquid-viscosity-of-water": null;
  "liquid-temperature-contradicts": { named: Amount };
  "gravity-of-no-liquid": { least: number; greatest: number };
  "liquid-stated-twice": { what: string };
  "liquid-yields": null;
  "liquid-incomplete": { what: string };
  "glycol-by-volume": null;
  "vapour-pressure-not-stated": null;
  "viscosity-from-saybolt": { seconds: number };
  "altitude-unusual": null;
}

/** Pipe friction, fittings and lines. */
export interface PipeworkFindings {
  "critical-zone": { reynolds: number };
  "size-change-wrong-way": null;
  "fitting-which": null;
  "size-change-elsewhere": null;
  "fitting-needs-flow": null;
  "fitting-assumed": { coefficient: number; range: string };
  "fitting-size-outside-table": { least: Amount; most: Amount };
  "fitting-methods-mixed": null;
  "valve-not-held-open": null;
  "hazen-williams-for-water": { coefficient: number; gravity: number };
  "hazen-williams-off-cold": { coefficient: number; gravity: number };
  "share-is-a-date": null;
  "share-number-unclear": null;
  "share-each-needs-pumps": null;
  "share-counted-as-runs": { runs: number };
  "share-of-each-assumed": { pumps: number };
  "share-of-all-assumed": { pumps: number };
  "share-may-be-header": { runs: number; pumps: number };
  "suction-common-to-pumps": { pumps: number };
  "check-valve-common-to-pumps": { pumps: number };
  "level-between-assumed": null;
  "level-not-at-end": { end: Amount; box: string };
  "line-climbs-beyond-length": null;
  "share-leaves-a-rest": { rows: string; count: number; typed: string; rest: string };
  "rows-side-by-side": { rows: string; typed: string; right?: string; least?: Amount; most?: Amount };
  "run-loses-nothing": { run: number };
  "runs-of-settling-slurry": null;
  "branch-against-check-valve": { branch: number };
  "no-size-meets": { largest?: { readonly pipe: string; readonly velocity: Amount; readonly gradient: Amount } };
}

/** Total head, system curve and grade line. */
export interface HeadFindings {
  "line-lossless": null;
  "start-head-too-high": null;
  "hose-beyond-vacuum": null;
  "pipe-vacuum-collapses": { atBest: Amount; chainage?: Amount };
  "surface-pressure-atmospheric": null;
  "exit-not-counted": null;
  "exit-counted-twice": { exits: number };
  "exit-in-suction": { exits: number };
  "velocity-high": null;
  "lay-flat-in-suction": null;
  "total-head-not-positive": null;
  "head-leans-on-fall": null;
  "route-too-short": null;
  "chainage-not-increasing": { before: Amount };
  "route-pipe-missing": null;
  "route-outlet-level-missing": null;
  "route-start-level-missing": null;
  "levels-interpolated": { runs: string };
  "outlet-levels-differ": null;
  "route-last-pipe-unused": null;
  "route-exit-midway": { chainage: Amount };
  "route-steep": { chainage: Amount };
  "route-at-sea-level": null;
  "separation-not-judged": null;
  "column-separation": { chainage: Amount };
  "lay-flat-under-vacuum": { chainage: Amount };
  "air-release": { chainage: Amount };
  "siphon-too-high": { chainage: Amount };
  "falling-leg-part-full": { froude: Amount; chainage: Amount };
  "start-head-does-not-fill": { chainage: Amount };
  "filling-takes-more": { chainage: Amount };
  "line-does-not-fill": null;
  "air-valve-on-each-run": { runs: number };
  "throttle-while-filling": null;
  "siphons-on": null;
  "column-separates-on-surge": null;
  "start-head-does-not-deliver": null;
}

/** NPSH available and suction lift. */
export interface SuctionFindings {
  "vapour-pressure-missing": null;
  "npsha-not-positive": null;
  "boils-at-surface": null;
  "lift-beyond-practice": null;
  "suction-liquid-hot": null;
  "inlet-pressure-low": null;
  "suction-lay-flat-collapses": null;
  "flooded-suction-needed": null;
  "npsh-margin-assumed": null;
  "npsh-margin-small": null;
  "npsh-flow-limited": null;
  "npsh-flow-none": { flow: Amount };
}

/** Suction bells and sumps. */
export interface SumpFindings {
  "submergence-short": { short: Amount; bell?: Amount; flow?: Amount };
  "submergence-not-judged": null;
  "bell-velocity-outside": { least: Amount; most: Amount; wanted: Amount };
  "submergence-by-velocity": { needed?: Amount };
  "sump-too-few-levels": null;
  "sump-levels-not-ascending": { before: Amount };
  "sump-not-drawn-down": null;
  "sump-level-held": { inflow: Amount };
  "sump-flow-jumps": null;
  "inflow-taken-as-stopped": null;
  "pump-never-stops": null;
  "sump-short-cycles": null;
  "sump-unreadable": null;
  "bell-clearances": { floorLeast: Amount; floorMost: Amount; backWall: Amount; width: Amount };
}

/** Readings on site, and a pump held against its curve by them. */
export interface FieldFindings {
  "gauge-span-assumed": { span: Amount };
  "gauge-span-missing": null;
  "gauge-read-low": { span: Amount };
  "instrument-assumed": null;
  "velocity-head-left-out": null;
  "suction-size-missing": null;
  "power-factor-missing": null;
  "power-reading-unreadable": null;
  "pump-efficiency-above-one": null;
  "specific-consumption-of-diesel": null;
  "band-of-house": null;
  "field-no-guarantee": null;
  "field-speed-missing": null;
  "field-speed-taken": null;
  "field-one-point": null;
}

/** Names of pipes and hoses. */
export interface PipeFindings {
  "pipe-family-missing": null;
  "pipe-size-missing": null;
  "pipe-roughness-missing": null;
  "pipe-rough-and-c": null;
  "pipe-c-not-roughness": null;
  "aged-roughness-not-of-c": null;
  "pipe-c-stated-twice": { coefficient: number };
  "pipe-class-contradicts": { stated: string; due: string };
  "pipe-material-not-stated": null;
  "bore-is-nominal": { bore: Amount };
  "surface-uncertain": { surface: string; taken: Amount; least: Amount; greatest: Amount };
  "hose-corrugated": { taken: number; least: number; greatest: number };
}

/** Pump curves, operating points, speed, trim and viscosity. */
export interface PumpFindings {
  "curve-too-few-points": { given: number; least: number };
  "curve-flow-not-ascending": { before: Amount };
  "curve-column-missing": null;
  "curve-shutoff-missing": null;
  "curve-does-not-fall": { last: Amount };
  "curve-droops": { top: Amount; flow: Amount };
  "efficiency-disagrees-with-power": { byPower: Amount };
  "power-below-hydraulic": null;
  "efficiency-read-as-percent": null;
  "efficiency-mixed": { percentRow: string; fractionRow: string };
  "flow-beyond-curve": null;
  "flow-below-curve": null;
  "flow-outside-column": { least: Amount; most: Amount };
  "power-near-shutoff": null;
  "power-at-shutoff-unknown": null;
  "power-extended": { from: Amount; last: Amount; end: Amount };
  "power-rising-at-end": null;
  "power-rising-to-shutoff": null;
  "speed-far-from-curve": null;
  "speed-below-half": { best: Amount; corrected: Amount };
  "speed-raised": { power: Amount; pressure: Amount };
  "npshr-scaled-by-rule": { exponent: string };
  "trim-not-similar": null;
  "trim-deep": null;
  "trim-efficiency-assumed": null;
  "trim-cut-overstated": { least: Amount; most: Amount };
  "trim-beyond-measured": null;
  "duty-above-curve": { flow: Amount; head: Amount; reached: Amount };
  "duty-below-curve": { flow: Amount; head: Amount; reached: Amount };
  "duty-beyond-curve": { flow: Amount; head: Amount; reached: Amount };
  "duty-before-curve": { flow: Amount; head: Amount; reached: Amount };
  "system-out-of-reach": { flow: Amount };
  "operating-point-beyond-curve": null;
  "operating-point-below-curve": null;
  "system-curve-too-short": null;
  "system-curve-falls": null;
  "curves-do-not-overlap": { pumpLeast: Amount; pumpMost: Amount; systemLeast: Amount; systemMost: Amount };
  "does-not-start-alone": { lower: Amount; upper: Amount };
  "several-operating-points": { flows: readonly Amount[] };
  "curves-nearly-touch": { flow: Amount };
  "power-for-water": null;
  "outside-preferred-region": { least: Amount; most: Amount; basis: string };
  "flow-below-minimum": { advice: string };
  "best-efficiency-at-end": null;
  "best-efficiency-unknown": null;
  "one-pump-alone-beyond-curve": null;
  "one-pump-alone-outside-region": { least: Amount; most: Amount; basis: string };
  "figures-of-several-pumps": { pumps: number; arrangement: string; flow: Amount; head: Amount; power?: Amount };
  "series-casing-pressure": null;
  "pump-held-closed": null;
  "pump-near-shut": null;
  "pump-cannot-share": null;
  "pump-flows-back": null;
  "reverse-flow-unknown": null;
  "back-flow-left-blank": null;
  "booster-out-of-order": { least: number; most: number };
  "booster-inlet-low": null;
  "booster-below-atmosphere": null;
  "station-not-reached": { flow: Amount; head: Amount };
  "station-order-matters": { least: Amount; most: Amount };
  "suction-specific-speed-high": { value: number; most: number };
  "viscosity-needs-no-correction": { b: Amount };
  "viscosity-needs-speed": null;
  "viscosity-beyond-method": { b: Amount };
  "viscosity-impeller-not-radial": { value: number; most: number };
  "thermal-flow-not-found": null;
  "rise-by-npsh-not-known": null;
  "specific-heat-of-water": null;
  "specific-heat-assumed": { taken: "water" | "oil"; withoutSolids: boolean };
  "thermal-below-hydraulic": { hydraulic: Amount };
  "shut-in-heats": null;
  "acceptance-too-few-points": { given: number; least: number };
  "acceptance-no-point-near": null;
  "acceptance-curve-ends": null;
  "acceptance-speed-missing": null;
  "acceptance-power-too-small": { least: Amount; most: Amount };
}

/** The region a chosen pump runs in over the ranges of its duty. */
export interface RegionFindings {
  "region-corner-beyond-curve": { where: string };
  "region-corner-not-reached": { where: string };
  "region-corner-outside-preferred": { where: string; least: Amount; most: Amount };
  "region-npsh-short": { flow: Amount };
  "region-npsh-margin-small": { flow: Amount };
}

/** Tables of pumps and their curves, in a sheet or a file. */
export interface PumpTableFindings {
  "table-no-rows": null;
  "table-heading-missing": null;
  "table-column-missing": null;
  "table-column-repeated": null;
  "table-column-unread": null;
  "table-row-above-heading": null;
  "table-units-disagree": { heading: string };
  "table-curve-repeated": { first: number };
  "table-pump-repeated": { first: number };
  "table-flow-not-ascending": null;
  "table-curve-too-short": { points: number; least: number };
  "table-column-too-short": { column: string; points: number; least: number };
  "table-head-does-not-fall": { first: Amount; last: Amount };
  "table-head-rises": { first: Amount };
  "table-efficiency-unclear": null;
  "table-efficiency-mixed": { best: string };
  "pump-stated-twice": null;
  "pump-named-twice": null;
  "case-named-twice": null;
  "case-name-long": { letters: number; most: number };
  "table-limit-differs": { first: Amount };
  "table-limits-contradict": { least: string; greatest: string };
  "table-pump-not-listed": { other: string };
  "table-pump-without-curves": { other: string };
  "table-decimal-signs-mixed": { other: string };
  "table-decimal-comma-read": null;
  "table-unit-assumed": { columns: string };
  "table-findings-left-out": { count: number };
  "table-second-of-its-kind": { other: string };
  "table-pumps-again": { other: string; more: number };
  "table-pumps-differ": { other: string; more: number };
  "table-lists-differ": { other: string; more: number };
  "rank-filling-not-judged": null;
  "rank-npsh-not-judged": { why: string };
  "rank-liquid-viscous": null;
  "rank-none-meets": null;
  "file-not-a-table": null;
  "file-unreadable": { reason: string };
}

/** Slurries: composition, settling, friction and derating. */
export interface SlurryFindings {
  "solids-dense": null;
  "solids-float": null;
  "solids-do-not-settle": null;
  "slurry-figures-too-few": null;
  "slurry-figures-contradict": { due: Amount; first: string; second: string };
  "slurry-impossible": { figure: string };
  "clay-not-newtonian": null;
  "particle-size-doubted": null;
  "particle-fine": null;
  "particle-coarse": { coarse: Amount; factor: number };
  "flow-stratified": null;
  "slurry-not-newtonian": null;
  "deposition-estimates": {
    durand: Amount;
    fine: Amount;
    wasp: Amount;
    oroskarTurian: Amount;
    coarse: Amount;
    design: Amount;
  };
  "bed-in-pipe": null;
  "below-design-velocity": null;
  "fine-slurry-not-turbulent": null;
  "grading-exponent-held": { free: Amount; held: number };
  "derating-too-fine": null;
  "derating-size-unknown": null;
  "fines-contradict-size": { size: Amount; fine: Amount };
  "derating-below-measured": null;
  "derating-scatter": { scatter: number; kazim: Amount };
  "derating-fines-relief": null;
  "derating-large-impeller": null;
  "derating-efficiency-lower": null;
  "derating-by-chart": null;
  "derating-not-in-water": null;
  "npshr-rises": { factor: Amount };
  "service-class-from-memory": null;
  "slurry-as-one-liquid": null;
}

/** The figure the trade goes by beside the rating of the standard. */
export interface TradeFigureFacts {
  readonly figure: Amount;
  readonly of: string;
  readonly standard: string;
  readonly flangeClass: string;
  readonly rating: Amount;
  /** Where it stands, such as "discharge of stage 2". */
  readonly nozzle?: string;
}

/** Flange ratings, nozzle pressures, flanges, bolting and surge. */
export interface PressureFindings {
  "class-is-a-designation": { name: string };
  "class-by-metric-name": { name: string };
  "class-not-of-material": { material: string; standard: string };
  "material-not-rated": null;
  "material-taken-as": { grade: string; standard: string; isCasing: boolean };
  "material-not-of-standard": { grade: string; standard: string };
  "material-listing-uncertain": { standard: string; group: string };
  "rating-temperature-assumed": null;
  "rating-temperature-outside": {
    standard: string;
    flangeClass: string;
    material: string;
    sizes?: string;
    isOwnLimit: boolean;
  };
  "rating-converted": { standard: string; printed: string };
  "rating-not-verified": { standard: string; flangeClass: string; group: string; howVerified: string };
  "rating-by-size": { flangeClass: string; sizes: string; other?: { readonly sizes: string; readonly rating: Amount } };
  "rating-size-outside": { standard: string; flangeClass: string; sizes: string };
  "grey-iron-flange": null;
  "flange-is-not-casing": null;
  "pressure-above-rating": { flangeClass: string; standard: string };
  "rating-nearly-used": { used: Amount };
  "trade-figure-compared": TradeFigureFacts & { difference: Amount; way: "equal" | "above" | "below" };
  "trade-figure-would-pass": TradeFigureFacts;
  "trade-figure-passed": TradeFigureFacts;
  "beyond-highest-class": { flangeClass: string; standard: string };
  "head-tolerance-assumed": { grade: string; service: string; power?: Amount };
  "head-tolerance-of-grade": null;
  "suction-vacuum-as-zero": null;
  "shutoff-below-duty": null;
  "nozzle-pressure-without-surge": null;
  "later-stage-suction": null;
  "column-ends-below": null;
  "part-out-of-place": { pumps: number };
  "suction-pressure-below-source": null;
  "highest-source-assumed": null;
  "first-nozzle-beyond": { needed: string; offered?: string; standard: string; case: string };
  "part-pressure-exceeded": { part: string; case: string };
  "package-test-pressure": null;
  "no-package-test": { why: string };
  "flange-test-pressure": { flangeClass: string };
  "flange-size-unknown": { standard?: string; named: string; sizes: string };
  "flange-size-twice": { other: string };
  "flange-drilling-alone": { name: string; of: string };
  "flange-mates": { name: string; other: string };
  "flange-mates-pn": { name: string; others?: string };
  "flange-holes-differ": { name: string };
  "flange-rim-differs": null;
  "flange-thickness-changed": null;
  "flange-drilling-only": { name: string };
  "flange-dimensions-from-memory": { what: string };
  "flange-dimensions-converted": null;
  "bolt-grade-assumed": { grade: string };
  "bolt-grade-taken-as": { grade: string };
  "gasket-taken-as": { gasket: string };
  "bolts-short-of-working": null;
  "bolts-short-of-test": null;
  "bolt-stress-held-by-gasket": null;
  "metric-grade-in-inch-bolts": null;
  "spiral-wound-as-flat-ring": { flange: string };
  "full-face-not-held": null;
  "full-face-on-raised-face": null;
  "raised-face-on-flat-iron": null;
  "strong-bolts-on-grey-iron": { grade: string };
  "weak-bolts-on-hard-gasket": { grade: string };
  "iron-facing-assumed": { taken: string };
  "nut-factor-assumed": { low: string; high: string };
  "joint-figures-from-memory": { isVerified: boolean };
  "thread-pitch-needed": null;
  "bolt-torque-scatter": null;
  "nut-factor-far-from-reference": { reference: Amount };
  "stud-length-by-parts": null;
  "surge-modulus-taken": { material: string; least: Amount; greatest: Amount };
  "surge-rigid-wall": null;
  "surge-liquid-modulus-taken": { about: string };
  "surge-anchored-higher": null;
  "surge-is-a-screen": null;
  "line-without-length": null;
  "wave-speed-unusual": null;
  "pipe-rating-not-held": null;
  "pipe-not-for-pressure": null;
  "pipe-rating-assumed": { assumed: string };
  "pipe-specification-mismatch": { specification: string };
  "pipe-too-warm": null;
  "pipe-warm-ask-maker": null;
  "pipe-no-wall-left": null;
  "pipe-wall-thick": null;
}

/** Curves traced from a picture. */
export interface TracingFindings {
  "tracing-picture-unreadable": null;
  "tracing-axis-points-together": null;
  "tracing-axis-values-equal": { value: string };
  "tracing-log-not-positive": { value: string };
  "tracing-axes-parallel": { other: string; angle: string };
  "tracing-axes-skewed": { other: string; angle: string };
  "tracing-axis-points-close": { pixels: string };
  "tracing-line-without-axis": { points: string; axes: string };
  "tracing-beyond-axis-points": { points: string };
  "tracing-below-zero": { value: string };
  "tracing-taken-as-zero": { value: string };
  "tracing-flow-repeated": { flow: string };
  "tracing-efficiency-as-fraction": { value: string };
  "tracing-curve-repeated": { first: number; second: number };
  "tracing-curve-unlike": { curve: number };
  "tracing-rows-without-head": { rows: string };
  "tracing-beyond-line": { flows: string };
  "tracing-read-between": null;
}

/** Costs and quantities of an estimate. */
export interface EstimateFindings {
  "motor-efficiency-assumed": null;
  /** What a bill of quantities does not count. */
  "take-off-leaves-out": null;
  "take-off-without-class": null;
  "pipe-mass-not-known": null;
  "bolting-not-held": null;
  "rental-rate-above-shorter": { terms: string };
  "thrust-for-caution": null;
  "thrust-by-bore": null;
  "collapse-not-held": null;
  "collapse-rests-on": null;
  "collapse-of-round-pipe": null;
  "collapse-too-warm": null;
  "collapse-assumed": { assumed: string };
}

/** Priming: time, lift and choice of method. */
export interface PrimingFindings {
  "line-shorter-than-lift": null;
  "priming-line-falls": null;
  "priming-no-air": null;
  "lift-above-atmosphere": null;
  "lift-above-vapour": null;
  "never-primes": null;
  "leak-exceeds-air-pump": { capacity: Amount };
  "flooded-no-priming": null;
  "air-pump-part-unread": null;
  "blank-off-ambiguous": null;
  "priming-front-fast": null;
  "priming-one-run": { runs: number };
  "priming-profile-assumed": null;
  "blank-off-assumed": { better: Amount; time?: Amount };
  "casing-not-counted": null;
  "priming-vapour-unknown": null;
  "priming-vapour-counted": null;
  "priming-npsh-not-judged": null;
  "priming-lift-blank-off-assumed": { better: Amount; lift: Amount };
  "priming-lift-negative": { rule: string };
  "eductor-by-practice": null;
  "eductor-power-rough": { usual: Amount };
  "prime-liquid-hot": null;
  "prime-lift-beyond": { rule: string };
  "prime-lift-within": { rule: string };
  "prime-lift-near": { rule: string };
  "prime-slurry-settles": null;
  "prime-by-gravity": null;
  "prime-not-needed": null;
  "prime-needs-gate-and-vent": null;
  "prime-lowest-level": null;
  "prime-time-short": { capacity: Amount };
  "prime-time-long": { capacity: Amount; bypass: Amount };
  "prime-time-very-long": { capacity: Amount; dewatering: Amount };
  "prime-dry-long-lines": null;
  "prime-dry-passes-solids": null;
  "prime-needs-air-pump": null;
  "prime-needs-larger-air-pump": { time: Amount };
  "prime-needs-discharge-check": null;
  "prime-float-valve": null;
  "prime-float-stringy": null;
  "prime-blank-off-varies": { better: Amount };
  "prime-hazardous-area": null;
  "prime-self-short-line": null;
  "prime-self-long-line": null;
  "prime-self-solids": null;
  "prime-self-needs": null;
  "prime-self-cautions": null;
  "prime-eductor-no-moving-parts": null;
  "prime-eductor-motive-air": { nozzle: Amount; pressure: Amount };
  "prime-eductor-cautions": null;
  "prime-foot-valve-clogs": null;
  "prime-foot-valve-cheap": null;
  "prime-foot-valve-needs": null;
  "prime-foot-valve-cautions": null;
  "prime-submerged-no-priming": null;
  "prime-submerged-needs": null;
  "prime-hot-needs": null;
  "prime-submerged-cautions": null;
}

/** A motor as its standard names it. */
export interface MotorFacts {
  readonly series: string;
  readonly rating: Amount;
  readonly poles: number;
  readonly frequency: number;
}

/** Motors, engines and how they are attached. */
export interface DriveFindings {
  "motor-margin-small": null;
  "motor-rating-secondary": { next: Amount };
  "motor-is-large-machine": null;
  "motor-power-beyond-ratings": { isOnSite: boolean };
  "speed-above-synchronous": null;
  "motor-efficiency-not-tabulated": null;
  "motor-current-not-tabulated": { voltage: number; voltages: string };
  "motor-raised-for-site": { share: Amount; plain: Amount; taken: Amount };
  "motor-derated-on-site": { share: Amount };
  "motor-cool-air-credit": null;
  "motor-service-factor-credit": null;
  "motor-too-small": { isWithinFactor: boolean };
  "motor-speed-not-mains": MotorFacts;
  "motor-other-supply-fits": MotorFacts;
  "motor-below-base-speed": null;
  "motor-above-base-speed": null;
  "motor-large-on-drive": null;
  "motor-through-belts": null;
  "motor-high-voltage": null;
  "generator-sizing-figure": null;
  "locked-rotor-assumed": null;
  "code-letter-assumed": { letter: string };
  "code-letter-open": null;
  "speed-range-empty": null;
  "speed-flows-alone": null;
  "speed-affinity-doubted": null;
  "speed-turndown-wide": null;
  "motor-speed-synchronous": null;
  "frequency-drive-derated": null;
  "motor-frame-usual": { basis: "standard" | "usual" };
  "motor-frame-packed": { frame: string; packedAs: string };
  "motor-frame-not-held": MotorFacts;
  "motor-efficiency-other-supply": MotorFacts;
  "motor-efficiency-not-held": MotorFacts;
  "motor-class-higher-due": null;
  "motor-current-by-code": { column: Amount };
  "motor-current-not-known": null;
  "motor-power-factor-assumed": null;
  "motor-starting-current": { direct: string; starDelta: string; soft: string; drive: string };
  "engine-rating-assumed": null;
  "engine-gross-rating-assumed": null;
  "engine-losses-assumed": null;
  "engine-aspiration-assumed": null;
  "engine-charge-coolant-assumed": { limit: string; share: Amount };
  "engine-limit-chosen": { limit: string; share: Amount };
  "engine-quick-rule": { adjusted: Amount };
  "engine-load-low": null;
  "engine-too-small": null;
  "fuel-consumption-assumed": null;
  "fuel-part-load": { factor: string };
  "fuel-load-outside": null;
  "housing-mismatch": { engine: string; engineCircle: string; pump: string; pumpCircle: string };
  "flywheel-unusual-for-housing": { size: string; housing: string; usual: string };
  "sheave-too-small": null;
  "sheaves-overlap": null;
  "sheave-minimum-unknown": null;
  "belt-speed-high": null;
  "belt-power-high": null;
  "drive-ranking-chosen": null;
}

/** What a named liquid is taken to mean, and what its row says beside the verdicts. */
interface TakenAs {
  readonly pH: string;
  readonly chlorides: Amount;
  readonly hottest: Amount;
  readonly governs: string;
  readonly conditions: string;
  readonly betterMetal: string;
}

/** The particles, how many times as hard as the metal they are, and what wear parts may be of. */
interface WearFacts {
  readonly particle: string;
  readonly ratio: number;
  readonly hardParts: "white iron" | "the same metal";
}

/** Materials of wetted parts: properties and choice. */
export interface MaterialFindings {
  "chlorides-by-mass": null;
  "hardness-unreadable": null;
  "particle-beyond-passage": null;
  "particle-near-passage": { passage: Amount };
  "casting-taken-as": { specification: string };
  "casting-from-memory": { verified: string; specification: string };
  "property-not-stated": { material: string; specification: string };
  "hardness-of-condition": { condition: string };
  "permeability-rough": null;
  "material-data-missing": { missing: string };
  "make-up-contradicts": null;
  "first-by-part": { choices: string };
  "no-material-given": { missing: string };
  "hydrogen-sulphide-gas": null;
  "galvanic-pairs": null;
  "wetted-parts-list": null;
  "not-judged-state": { decides: string };
  "make-up-plain": null;
  "constituent-taken-as": TakenAs;
  "constituent-outside": TakenAs & { outside: string };
  "constituent-danger": { danger: string };
  "constituent-hotter": { constituent: string };
  "constituent-stands": { constituent: string };
  "chemical-with-care": { constituent: string };
  "chemical-not-judged": { constituent: string };
  "chemical-rules-out": { constituent: string };
  "ph-neutral": { pH: number };
  "ph-too-low": { pH: number; least: number };
  "ph-too-high": { pH: number; greatest: number };
  "ph-beyond-rule": { pH: number; least: number; greatest: number };
  "ph-near-limit": { pH: number; least: number; greatest: number };
  "iron-acid-water": { pH: number };
  "iron-alkaline-water": { pH: number };
  "temperature-stop": null;
  "aerated-hot": null;
  "thermal-shock": null;
  "duplex-embrittles": null;
  "iron-in-brine": null;
  "iron-graphitic": null;
  "white-iron-salt": null;
  "bronze-sea-water": null;
  "bronze-brine": null;
  "chrome-steel-salt": null;
  "chlorides-within": { temperature: Amount; pH: number };
  "chlorides-beyond": { temperature: Amount; pH: number };
  "stainless-too-hot": null;
  "stress-cracking": null;
  "duplex-brackish-cold": null;
  "duplex-sea-water-cold": null;
  "oxidiser-316": null;
  "oxidiser-lowers": null;
  "wear-none": null;
  "wear-light": WearFacts;
  "wear-moderate": WearFacts;
  "wear-severe": WearFacts;
  "wear-unstated": WearFacts;
  "wear-hardness-not-needed": null;
  "white-iron-breaks": null;
  "white-iron-brittle": null;
  "white-iron-tip-speed": { least: Amount; greatest: Amount };
  "grey-iron-brittle": null;
  "bronze-velocity": null;
  "magnet-test": null;
  "stainless-stagnant": null;
  "lining-size-missing": null;
  "lining-size": null;
  "lining-too-coarse": null;
  "lining-tip-speed": null;
  "elastomer-within": null;
  "elastomer-near-limit": null;
  "elastomer-too-hot": null;
  "elastomer-too-cold": null;
  "oil-not-ruled-out": null;
  "elastomer-acid": { pH: number };
  "elastomer-alkali": { pH: number };
  "elastomer-good-and-not": { good: string; not: string };
  "seal-clean": null;
  "seal-hard": null;
  "seal-ph": { pH: number; least: number; greatest: number };
  "seal-hard-on-clean": null;
  "seal-abrasive": null;
  "seal-carbon-wears": null;
  "seal-flush": null;
  "seal-may-flash": null;
  "seal-dry-running": null;
  "plastic-too-hot": null;
  "metal-not-in-table": { metal: string };
  "dry-parts": null;
  "dry-parts-spray": null;
}

export interface FactsOf
  extends InputFindings,
    LiquidFindings,
    PipeworkFindings,
    HeadFindings,
    SuctionFindings,
    SumpFindings,
    FieldFindings,
    PipeFindings,
    PumpFindings,
    RegionFindings,
    PumpTableFindings,
    SlurryFindings,
    PressureFindings,
    TracingFindings,
    EstimateFindings,
    PrimingFindings,
    DriveFindings,
    MaterialFindings {}

export type FindingCode = keyof FactsOf;
/** Codes without facts. */
export type PlainCode = { [C in FindingCode]: FactsOf[C] extends null ? C : never }[FindingCode];
export type FactsCode = Exclude<FindingCode, PlainCode>;

/** Of the codes with facts, those that may be raised as a limit or for safety. One of another does not compile. */
export type WarningCode =
  | "constituent-danger"
  | "column-separation"
  | "lay-flat-under-vacuum"
  | "strong-bolts-on-grey-iron"
  | "weak-bolts-on-hard-gasket"
  | "spiral-wound-as-flat-ring"
  | "pressure-above-rating"
  | "material-not-of-standard"
  | "first-nozzle-beyond"
  | "part-pressure-exceeded"
  | "motor-too-small"
  | "trade-figure-would-pass"
  | "does-not-start-alone"
  | "pipe-vacuum-collapses"
  | "station-not-reached"
  | "station-order-matters"
  | "several-operating-points"
  | "submergence-short"
  | "npsh-flow-none"
  | "region-npsh-short"
  | "flow-below-minimum";
