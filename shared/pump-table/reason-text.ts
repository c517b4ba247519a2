import type { Amount, UnitSetName } from "../../src/basis/quantities.ts";
import type { Reason, ReasonCode, ReasonForCode } from "../../src/pump/selection-reason.ts";
import { findingText } from "../text/finding-text.ts";
import { amountText } from "../text/words.ts";

type ReasonWords = (reason: Reason, say: (amount: Amount | undefined) => string) => string;

const WORDS: Readonly<Record<ReasonCode, ReasonWords>> = {
  "right-at-duty": () => "meets the duty flow exactly",
  "near-best-efficiency": (r, say) => `at ${say(r.found)} of best efficiency flow`,
  "in-preferred-region": (r, say) => `inside the preferred region, at ${say(r.found)} of best efficiency flow`,
  "efficient-here": (r, say) => `${say(r.found)} efficient here, ${say(r.limit)} at best`,
  "npsh-margin-kept": (r, say) => `NPSH margin of ${say(r.found)}`,
  "no-trim": () => "full-diameter impeller",
  "speed-for-each-case": (r, say) =>
    `runs each case at a speed of its own, ${say(r.facts?.["least"])} to ${say(r.facts?.["most"])}`,
  "speed-in-hand": (r, say) => `speed reserve up to ${say(r.found)}`,
  "impeller-in-hand": (r, say) => `impeller reserve up to ${say(r.found)}`,
  "outside-region": (r, say) =>
    `outside the preferred region: ${say(r.found)} of best efficiency flow, where ${say(r.facts?.["least"])} to ${say(r.facts?.["most"])} is preferred`,
  "npsh-margin-below-wanted": (r, say) => `NPSH margin of ${say(r.found)}, where ${say(r.limit)} is wanted`,
  "cannot-start": () => "drooping curve: its shutoff head is below the static head, so it does not start by itself",
  "little-flow": (r, say) =>
    `only ${say(r.found)} of best efficiency flow: ask the maker for the minimum continuous flow`,
  "much-more-than-asked": (r, say) =>
    `gives ${say(r.found)} more flow than asked, over the ${say(r.limit)} usual: slow, trim or throttle it`,
  "more-than-asked": (r, say) => `gives ${say(r.found)} more flow than asked`,
  "speed-lowered": (r, say) => `slowed to ${say(r.found)} from ${say(r.limit)}`,
  "speed-above-curve": (r, say) => `sped up to ${say(r.found)}, above the ${say(r.limit)} of its curve`,
  "impeller-trimmed": (r, say) =>
    `impeller trimmed to ${say(r.found)} from ${say(r.limit)}, which the maker should confirm`,
  "efficiency-not-given": () => "its table gives no efficiency here, so best efficiency and power are not known",
  "npshr-not-given": () => "its table gives no NPSHR at this flow",
  "shutoff-not-given": () =>
    "its curve does not begin at zero flow, so its maximum pressure is not known and not compared with the limit",
  "curve-doubted": () => "its curve gives cause for doubt",
  "peak-at-end-of-curve": () =>
    "its efficiency still rises at the end of its curve, so the true best point is not known",
  "head-too-low": (r, say) => `gives no more than ${say(r.found)} at the flow asked, which takes ${say(r.limit)}`,
  "curve-ends-before": (r, say) => `its curve ends at ${say(r.found)}, before the ${say(r.limit)} asked`,
  "curve-begins-after": (r, say) => `its curve begins at ${say(r.found)}, above the ${say(r.limit)} asked`,
  "point-beyond-curve": (r, say) =>
    `still above the system at ${say(r.found)}, where its curve ends: it would run off it`,
  "far-too-large": (r, say) => `too large: still above the system at ${say(r.found)}, twice the flow asked`,
  "pressure-too-high": (r, say) => `gives ${say(r.found)} against a shut valve, where ${say(r.limit)} is allowed`,
  "npsh-too-high": (r, say) => `requires an NPSH of ${say(r.found)} where ${say(r.limit)} is available`,
  "does-not-fill": (r, say) =>
    `does not fill the line over its summit: its head of ${say(r.found)} at the filling flow is ${say(r.facts?.["short"])} short of the ${say(r.limit)} that takes`,
  "far-below-best": (r, say) => `would run at ${say(r.found)} of best efficiency flow, below ${say(r.limit)}`,
  "outside-its-limits": () => "its curve lies outside its own limits of speed or impeller",
  "curve-not-usable": () => "its curve cannot be used",
};

/** Why a pump ranks where it does or is left out, as a phrase with amounts in the reader's units. */
export function reasonText(reason: Reason, units: UnitSetName): string {
  const words = WORDS[reason.code](reason, (amount) => (amount === undefined ? "?" : amountText(amount, units)));
  const phrase = `${words}${caseText(reason)}`;
  const findings = reason.findings ?? [];
  if (findings.length === 0) return phrase;
  return `${phrase}: ${findings.map((finding) => findingText(finding, units).replace(/\.$/, "")).join(", ")}`;
}

/** Reasons for a pump hold in every case, those against it in one at least. */
const FOR: ReadonlySet<ReasonCode> = new Set<ReasonForCode>([
  "near-best-efficiency",
  "in-preferred-region",
  "efficient-here",
  "npsh-margin-kept",
]);

function caseText({ code, inCase }: Reason): string {
  if (inCase === undefined || code === "right-at-duty") return "";
  return FOR.has(code) ? ` (every case; worst in “${inCase}”)` : ` (in “${inCase}”)`;
}

/** Reasons in a row, as they stand in one cell. */
export function reasonsText(reasons: readonly Reason[], units: UnitSetName): string {
  return reasons.map((reason) => reasonText(reason, units)).join("; ");
}
