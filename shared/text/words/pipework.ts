import type { PipeworkFindings } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

export const pipeworkWords: WordsOf<keyof PipeworkFindings> = {
  "critical-zone": (f) =>
    `${f.subject} is in the critical zone (Reynolds number ${f.facts.reynolds}): friction may sit anywhere between laminar and turbulent, and the value between the two is used`,
  "size-change-wrong-way": (f, say) =>
    `${f.subject}: the other bore of ${say.amount(f.found)} must be ${f.limit?.side} the pipe's own, ${say.amount(f.limit)}`,
  "fitting-needs-flow": (f) =>
    `${f.subject} has a coefficient that depends on the flow; ask for its head at a flow instead`,
  "fitting-assumed": (f) =>
    `${f.subject}: K = ${f.facts.coefficient} is common practice (${f.facts.range}); use the maker's figure where there is one`,
  "fitting-size-outside-table": (f, say) =>
    `${f.subject} is tabled from ${say.amount(f.facts.least)} to ${say.amount(f.facts.most)}; the nearest size is used for ${say.amount(f.found)}`,
  "fitting-methods-mixed": (f) =>
    `${f.subject} of the 3-K method and of equivalent lengths are in one line; the two differ by about a third, so keep to one`,
  "valve-not-held-open": (f, say) =>
    `${f.subject} may not open fully: the velocity of ${say.amount(f.found)} is below ${say.amount(f.limit)}, so the loss is higher than calculated, and it may chatter and wear`,
  "hazen-williams-for-water": (f, say) =>
    `${f.subject} ${f.facts.coefficient} is of Hazen–Williams, for cold water alone; the liquid has ${say.amount(f.found)} and an SG of ${f.facts.gravity}, or carries solids: name the pipe without C`,
  "hazen-williams-off-cold": (f, say) =>
    `${f.subject} ${f.facts.coefficient} is of Hazen–Williams, made for water of 5 to 25 °C (41 to 77 °F); at ${say.amount(f.found)} the loss is a few per cent other than it says`,
  "share-is-a-date": (f, say) => `${f.subject} has become a date in the sheet (${f.given}); write ${say.suggestions()}`,
  "share-number-unclear": (f, say) =>
    `${f.subject} of ${f.given} is more than the whole flow of the line; write ${say.suggestions()}`,
  "share-each-needs-pumps": (f, say) =>
    `${f.subject} “${f.given}” leaves open how many pumps run; write ${say.suggestions()}`,
  "share-counted-as-runs": (f) =>
    `${f.subject} “${f.given}” is counted as ${f.facts.runs} equal runs side by side, each with a share of the flow; where it is one piece of header, write “header” beside the pipe`,
  "line-climbs-beyond-length": (f, say) =>
    `${f.subject}: a run of ${say.amount(f.limit)} cannot rise or fall by ${say.amount(f.found)}; check the level and the length`,
  "no-size-meets": ({ given, facts }, say) => {
    const { pipe, velocity, gradient } = facts.largest ?? {};
    const largest =
      pipe === undefined
        ? ""
        : `: the largest, ${pipe}, still runs at ${say.amount(velocity)} and loses ${say.amount(gradient)} of its length`;
    return `no size of “${given}” meets the limits${largest}`;
  },
};
