import type { PumpFindings } from "../../../src/basis/finding-code.ts";
import type { Finding } from "../../../src/basis/result.ts";
import type { Say, WordsOf } from "../words.ts";

export const pumpWords: WordsOf<keyof PumpFindings> = {
  "curve-too-few-points": (f) => `${f.subject} needs ${f.facts.least} points or more and has ${f.facts.given}`,
  "curve-flow-not-ascending": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is not above that of the row before, ${say.amount(f.facts.before)}; sort the rows by flow`,
  "curve-column-missing": (f) =>
    f.kind === "error"
      ? `the curve gives no ${f.subject}; add a column headed “${f.subject}”`
      : `the curve gives no ${f.subject}, so that part of the answer is left empty`,
  "curve-shutoff-missing": (f, say) =>
    `${f.subject} has no head at zero flow; it is not read below its first point, ${say.amount(f.found)}`,
  "curve-does-not-fall": (f, say) =>
    `the head of ${f.subject} rises from ${say.amount(f.found)} at its first point to ${say.amount(f.facts.last)} at its last; give the curve to flows where the head falls, and check that flow and head are not swapped`,
  "curve-droops": (f, say) =>
    `${f.subject} droops: its head of ${say.amount(f.found)} at the first point rises to ${say.amount(f.facts.top)} at ${say.amount(f.facts.flow)}; such a pump may hunt against a flat system curve or beside other pumps`,
  "efficiency-disagrees-with-power": (f, say) =>
    `${f.subject} gives an efficiency of ${say.amount(f.found)}, but its flow, head and power with water give ${say.amount(f.facts.byPower)}; check the figures and the liquid they were taken with`,
  "power-below-hydraulic": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is less than the flow and head of that row carry off, ${say.amount(f.limit)}; check the figures and their units`,
  "efficiency-read-as-percent": (f) => `the figures of ${f.subject} are above 1.5 and are read as percentages`,
  "efficiency-mixed": (f) =>
    `${f.subject} mixes percentages (${f.facts.percentRow}) and fractions (${f.facts.fractionRow}); write all of them one way`,
  "flow-beyond-curve": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is beyond the end of the curve, ${say.amount(f.limit)} at this speed and trim; a curve is not extended`,
  "flow-below-curve": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is below the first point of the curve, ${say.amount(f.limit)} at this speed and trim; add the head at zero flow`,
  "flow-outside-column": (f, say) =>
    `the curve gives ${f.subject} from ${say.amount(f.facts.least)} to ${say.amount(f.facts.most)} at this speed and trim, not at ${say.amount(f.found)}`,
  "power-near-shutoff": (f, say) =>
    `power at ${say.amount(f.found)}, below the first efficiency given (${say.amount(f.limit)}), rests on efficiency falling to zero at zero flow; a power column is surer`,
  "power-extended": (f, say) =>
    `efficiency is given from ${say.amount(f.facts.from)} to ${say.amount(f.facts.last)} alone; beyond, to ${say.amount(f.facts.end)}, ${f.subject} is extended along the line of the last two: ask the maker for the whole curve`,
  "power-rising-at-end": (f, say) =>
    `${f.subject} still rises at ${say.amount(f.found)}, the end of the curve: a pump that runs out beyond it takes more`,
  "power-rising-to-shutoff": (f, say) =>
    `${f.subject} is highest at ${say.amount(f.found)}, the first flow at which the curve gives it, and may be greater below: ask the maker for the power at zero flow`,
  "power-at-shutoff-unknown": () =>
    "power at zero flow cannot be worked out from efficiency; add a column “power” to the curve",
  "speed-far-from-curve": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is more than 20 % from the speed of the curve; the affinity laws hold less well so far from it`,
  "speed-below-half": (f, say) =>
    `${f.subject} of ${say.amount(f.found)}: below half speed efficiency falls, from ${say.amount(f.facts.best)} at its best to some ${say.amount(f.facts.corrected)}; the figures do not count that`,
  "speed-raised": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} runs the pump faster than its curve: power goes up ${say.amount(f.facts.power)} times and pressure ${say.amount(f.facts.pressure)} times; ask the maker for the maximum speed and check casing, shaft and driver`,
  "npshr-scaled-by-rule": (f) =>
    `${f.subject} is scaled with speed to the power ${f.facts.exponent}; measured exponents lie between 1.3 and 2`,
  "trim-not-similar": (f, say) =>
    `${f.subject} of ${say.amount(f.found)}: a trimmed impeller is not similar to the full one; take the maker's trimmed curve where there is one, and keep above its minimum diameter`,
  "trim-deep": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is a deeper cut than 80 % of the diameter, and impellers of specific speed above 60 (N_s 3000) are cut no further than 90 %`,
  "trim-efficiency-assumed": (f, say) =>
    `${f.subject} of ${say.amount(f.found)}: efficiency is taken one point lower for each 5 % of trim below 90 %`,
  "trim-cut-overstated": (f, say) =>
    `calculated trims remove too much: cut to between ${say.amount(f.facts.least)} and ${say.amount(f.facts.most)} of the diameter first, some 0.80 to 0.85 of the calculated cut, and test`,
  "trim-beyond-measured": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is below the smallest impeller measured, ${say.amount(f.limit)}`,
  "duty-above-curve": (f, say) =>
    `no ${f.subject} up to ${say.amount(f.limit)} lifts the curve to ${say.amount(f.facts.head)} at ${say.amount(f.facts.flow)}; it reaches ${say.amount(f.facts.reached)}`,
  "duty-below-curve": (f, say) =>
    `no ${f.subject} down to ${say.amount(f.limit)} brings the curve down to ${say.amount(f.facts.head)} at ${say.amount(f.facts.flow)}; it still gives ${say.amount(f.facts.reached)}`,
  "duty-beyond-curve": (f, say) =>
    `${say.amount(f.facts.head)} at ${say.amount(f.facts.flow)} lies beyond the end of the curve at any ${f.subject}; at ${say.amount(f.limit)}, where the curve ends there, it still gives ${say.amount(f.facts.reached)}`,
  "duty-before-curve": (f, say) =>
    `${say.amount(f.facts.head)} at ${say.amount(f.facts.flow)} lies before the first point of the curve; at a ${f.subject} of ${say.amount(f.limit)}, where the curve begins there, it gives no more than ${say.amount(f.facts.reached)}; add the head at zero flow`,
  "system-out-of-reach": (f, say) =>
    `the pump cannot reach the system head at any flow: at the nearest, ${say.amount(f.facts.flow)}, it is ${say.amount(f.found)} of head short`,
  "operating-point-beyond-curve": (f, say) =>
    `the pump runs off the end of its curve: at ${say.amount(f.limit)}, the last flow given, it still has ${say.amount(f.found)} of head more than the system requires`,
  "operating-point-below-curve": (f, say) =>
    `the operating point lies below the first flow given, ${say.amount(f.limit)}, where the pump is ${say.amount(f.found)} of head short; add the rows from zero flow`,
  "system-curve-too-short": (f, say) =>
    `the system curve ends at ${say.amount(f.limit)}, where the pump still has ${say.amount(f.found)} of head more than it requires; give it to a greater flow`,
  "system-curve-falls": (f) =>
    `the head of the system curve falls with flow at ${f.subject}; a system of pipes requires more head at more flow`,
  "curves-do-not-overlap": (f, say) =>
    `the system curve runs from ${say.amount(f.facts.systemLeast)} to ${say.amount(f.facts.systemMost)} and the pump curve from ${say.amount(f.facts.pumpLeast)} to ${say.amount(f.facts.pumpMost)}; give both over the same flows`,
  "does-not-start-alone": (f, say) =>
    `the pump gives ${say.amount(f.found)} at zero flow against ${say.amount(f.limit)} in the system: it cannot establish flow from rest, and the lower crossing at ${say.amount(f.facts.lower)} is unstable; the answer is the upper one`,
  "several-operating-points": (f, say) =>
    `the curves cross more than once, at ${crossingFlows(f, say)}; the answer is the highest stable crossing, and the pump may settle at a lower one or hunt`,
  "curves-nearly-touch": (f, say) =>
    `the curves nearly touch at ${say.amount(f.facts.flow)}, ${say.amount(f.found)} of head apart: a small error in either adds or removes an operating point there`,
  "power-for-water": () =>
    "shaft power is for water (specific gravity 1); multiply it by the specific gravity of the liquid",
  "outside-preferred-region": (f, say) =>
    `the pump runs at ${say.amount(f.found)} of its best efficiency flow, outside the preferred operating region of ${say.amount(f.facts.least)} to ${say.amount(f.facts.most)} (${f.facts.basis})`,
  "flow-below-minimum": (f, say) =>
    `the pump runs at ${say.amount(f.found)} of its best efficiency flow, below ${say.amount(f.limit)}: ${f.facts.advice}`,
  "best-efficiency-at-end": (f, say) =>
    `the efficiency still rises at its last point, ${say.amount(f.found)}; the best efficiency flow may lie beyond`,
  "best-efficiency-unknown": () =>
    "the curve gives neither efficiency nor power, so the best efficiency flow and the operating region are not judged",
  "one-pump-alone-beyond-curve": (f, say) =>
    `one pump running alone on this system runs off the end of its curve, ${say.amount(f.limit)}; check its power, NPSH and motor`,
  "one-pump-alone-outside-region": (f, say) =>
    `one pump running alone on this system runs at ${say.amount(f.found)} of its best efficiency flow, outside the preferred operating region of ${say.amount(f.facts.least)} to ${say.amount(f.facts.most)} (${f.facts.basis})`,
  "figures-of-several-pumps": (f, say) =>
    `flow, head and shaft power are those of ${f.facts.pumps} pumps in ${f.facts.arrangement} together; each gives ${say.amount(f.facts.flow)} at ${say.amount(f.facts.head)}${f.facts.power === undefined ? "" : ` and takes ${say.amount(f.facts.power)}`}; efficiency, NPSHR and % of BEP flow are those of one`,
  "series-casing-pressure": () =>
    "in series the later pump takes the pressure of the earlier ones on top of its own: check its casing, seal and flanges, and that the first never runs dry of suction",
  "pump-held-closed": (f, say) =>
    `the ${f.subject} is held shut: its shutoff head at the header lies ${say.amount(f.found)} below the ${say.amount(f.limit)} there, so its check valve stays closed, it pumps nothing and heats`,
  "pump-near-shut": (f, say) =>
    `the ${f.subject} hunts: its shutoff head at the header lies only ${say.amount(f.found)} below the ${say.amount(f.limit)} there, so it comes in and drops out with any change of level`,
  "pump-cannot-share": (f, say) =>
    `the ${f.subject} hunts: it opens its check valve and has no steady share at a header of ${say.amount(f.limit)} against its maximum of ${say.amount(f.found)}, for its curve droops`,
  "pump-flows-back": (f, say) =>
    `liquid flows back through the ${f.subject}, some ${say.amount(f.found)} by a screen: it has no check valve; fit one, and do not start it while it turns backwards`,
  "reverse-flow-unknown": (f) =>
    `the flow back through the ${f.subject} is not known, for its curve gives no best efficiency point; it has no check valve`,
  "back-flow-left-blank": (f) =>
    `what would flow back through the ${f.subject}, should its check valve fail, is left blank: its curve gives no efficiency, so its best efficiency point is not known`,
  "booster-out-of-order": (f, say) =>
    f.facts.most === 0
      ? `the first ${f.subject} stands at the end of the suction line, not after row ${say.amount(f.found)} of the discharge line`
      : `a ${f.subject} after row ${say.amount(f.found)} does not follow the one before it: take a row from ${f.facts.least} to ${f.facts.most} of the discharge line`,
  "booster-inlet-low": (f, say) =>
    `the ${f.subject} has ${say.amount(f.found)} at its inlet, less than the ${say.amount(f.limit)} to keep there: place it lower or nearer, or let the pump before it give more`,
  "booster-below-atmosphere": (f, say) =>
    `the ${f.subject} has a vacuum of ${say.amount(f.found)} at its inlet: air is drawn in at joints, hose may collapse, and it must be primed; place it lower or nearer, and keep ${say.amount(f.limit)} there`,
  "station-not-reached": (f, say) =>
    `all ${f.subject} could run together at ${say.amount(f.facts.flow)} and ${say.amount(f.facts.head)}, but starting one after the other does not reach it: start the last against a closed discharge valve and open that slowly`,
  "station-order-matters": (f, say) =>
    `the order in which the ${f.subject} start decides what they give, from ${say.amount(f.facts.least)} to ${say.amount(f.facts.most)}; the answer is for the order given`,
  "suction-specific-speed-high": (f) =>
    `suction specific speed of ${f.facts.value} is above ${f.facts.most}: the range of stable flow is narrow`,
  "viscosity-needs-no-correction": (f, say) =>
    `the viscosity is too low to change the curve (parameter B of ${say.amount(f.facts.b)}, at most 1); the curve is returned as for water`,
  "viscosity-needs-speed": () =>
    "the speed of the curve is not stated, without which the curve cannot be corrected for so thick a liquid",
  "viscosity-beyond-method": (f, say) =>
    `the liquid is too viscous for the method: parameter B is ${say.amount(f.facts.b)} and must be below 40; ask the maker for a test`,
  "viscosity-impeller-not-radial": (f) =>
    `specific speed of ${f.facts.value} is above ${f.facts.most}: the viscosity correction was made for radial impellers`,
  "thermal-flow-not-found": (f, say) =>
    `at the best efficiency flow the liquid already warms by ${say.amount(f.found)}, more than the ${say.amount(f.limit)} allowed`,
  "rise-by-npsh-not-known": () =>
    "the vapour pressure of the liquid is one figure for all temperatures, so the rise that NPSH allows is not known: the stated rise alone counts",
  "specific-heat-of-water": (f, say) => `no specific heat is stated; that of water, ${say.amount(f.found)}, is taken`,
  "specific-heat-assumed": (f, say) =>
    `no specific heat is stated; ${say.amount(f.found)} is taken, ${HEAT_TAKEN[f.facts.taken]}${f.facts.withoutSolids ? ", its solids counted for nothing" : ""}: a liquid that holds more heat warms more slowly; state its own where it is known`,
  "thermal-below-hydraulic": (f, say) =>
    `heating allows ${say.amount(f.found)}, but the flow in the pump itself does not: no maker's minimum is stated, and below ${say.amount(f.facts.hydraulic)} continuous running is doubted`,
  "shut-in-heats": (f, say) =>
    `a pump shut in warms by ${say.amount(f.found)} a minute: its liquid boils and the casing may burst; open a bypass or stop it at once`,
  "acceptance-too-few-points": (f) =>
    `a test of this grade takes ${f.facts.least} points or more; with ${f.facts.given} it cannot be judged`,
  "acceptance-no-point-near": () =>
    "no point was measured between 0.9 and 1.1 of the guaranteed flow: measure there, for the verdict rests on the line drawn between the points",
  "acceptance-curve-ends": (f, say) =>
    `the measured points end at ${say.amount(f.limit)}, before the tolerance bars: measure to a greater flow`,
  "acceptance-speed-missing": (f) =>
    `${f.subject} is missing: state the speed of every point and the rated speed, or neither where the test ran at the rated speed`,
  "acceptance-power-too-small": (f, say) =>
    `the wider tolerances are for shaft powers from ${say.amount(f.facts.least)} to ${say.amount(f.facts.most)}; ${say.amount(f.found)} was given`,
};

const HEAT_TAKEN = {
  water: "that of the water in the liquid alone",
  oil: "that of petroleum oil, for the liquid is not known to be water",
} as const;

/** "200 US gpm, 450 US gpm and 520 US gpm" */
function crossingFlows({ facts }: Finding<"several-operating-points">, say: Say): string {
  const flows = facts.flows.map(say.amount);
  return `${flows.slice(0, -1).join(", ")} and ${flows.at(-1)}`;
}
