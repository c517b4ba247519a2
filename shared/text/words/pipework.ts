import type { PipeworkFindings } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

export const pipeworkWords: WordsOf<keyof PipeworkFindings> = {
  "critical-zone": (f) =>
    `${f.subject} is in the critical zone (Reynolds number ${f.facts.reynolds}): friction may sit anywhere between laminar and turbulent, and the value between the two is used`,
  "size-change-wrong-way": (f, say) =>
    `${f.subject}: the other bore of ${say.amount(f.found)} must be ${f.limit?.side} the pipe's own, ${say.amount(f.limit)}`,
  "fitting-which": (f, say) => `“${f.subject}” can be more than one fitting; write ${say.suggestions()}`,
  "size-change-elsewhere": (f) => `${f.subject} leads from and to other sizes than that of “${f.given}”`,
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
    `${f.subject} ${f.facts.coefficient} is of Hazen–Williams, made for water of 5 to 25 °C (41 to 77 °F); at ${say.amount(f.found)} the loss is a few percent other than it says`,
  "share-is-a-date": (f, say) => `${f.subject} has become a date in the sheet (${f.given}); write ${say.suggestions()}`,
  "share-number-unclear": (f, say) =>
    `${f.subject} of ${f.given} is more than the whole flow of the line; write ${say.suggestions()}`,
  "share-each-needs-pumps": (f, say) =>
    `${f.subject} “${f.given}” leaves open how many pumps run, and of the functions RANKPUMPS and NPSHLIMITFLOW alone divide a line by their number of pumps; write ${say.suggestions()}`,
  "share-counted-as-runs": (f) =>
    `${f.subject} “${f.given}” is counted as ${f.facts.runs} equal runs side by side, each with a share of the flow, twins or one of each pump; where it is one piece of header, write “header” beside the pipe`,
  "share-of-each-assumed": (f) =>
    `each of the ${f.facts.pumps} pumps is taken to have a row like this of its own, with 1/${f.facts.pumps} of the flow; write “each” where that is so, “all” where the row is common to them`,
  "share-of-all-assumed": (f) =>
    `every row of the discharge line is taken to carry the flow of all ${f.facts.pumps} pumps; write “each” for the rows of each pump's branch, “all” for what they share`,
  "share-may-be-header": (f) =>
    `${f.subject} “${f.given}” beside ${f.facts.pumps} pumps is counted as ${f.facts.runs} equal runs side by side; where it is one piece of header behind some of the pumps, write “header” beside the pipe, and where it is each pump's own, “each”`,
  "suction-common-to-pumps": (f) =>
    `this row carries the flow of more than one of the ${f.facts.pumps} pumps, but each pump usually has a suction of its own: write “each” if so; of a common suction, NPSH available falls with every pump that starts`,
  "check-valve-common-to-pumps": (f) =>
    `one check valve carries the flow of all ${f.facts.pumps} pumps, but each pump usually has its own: write “each” for the row of its branch`,
  "level-between-assumed": (f) =>
    `${f.subject} is taken along the length between the levels given; a summit inside the run is not seen`,
  "level-not-at-end": (f, say) =>
    `${f.subject} is ${say.amount(f.found)}, but the ${f.facts.box} is ${say.amount(f.facts.end)}: which is right?`,
  "line-climbs-beyond-length": (f, say) =>
    `${f.subject}: a run of ${say.amount(f.limit)} cannot rise or fall by ${say.amount(f.found)}; check the level and the length`,
  "share-leaves-a-rest": ({ subject, facts: { rows, count, typed, rest } }) => {
    const carries = count === 1 ? `row ${rows} carries` : `rows ${rows} carry`;
    return `${subject}: ${carries} ${typed} of the flow: does the rest, ${rest}, flow in another run beside it? The share is taken as typed; PARALLELRUNS works it out for unlike runs, and what the other run holds and is made of is counted by hand. One of equal runs carries 1/2, 1/3 and so on, and “header” beside a piece of header says so`;
  },
  "rows-side-by-side": (f, say) => {
    const { rows, typed, right, least, most } = f.facts;
    const apart =
      least === undefined ? "" : `; with those typed they would lose ${say.amount(least)} to ${say.amount(most)}`;
    const shares = right === undefined ? "" : ` (about ${right}${apart})`;
    return `${f.subject}: rows ${rows} carry ${typed}, the whole flow together, and are added one behind the other. A line is one path, and what stands side by side is never added: if they stand so, keep one of them with the share that PARALLELRUNS gives it${shares}, and count the others in volumes and quantities by hand. Where they follow one another, as hose and pipe of each pump do, nothing is to be changed; “header” beside a piece of header says so`;
  },
  "run-loses-nothing": (f) =>
    `${f.subject}: number ${f.facts.run} loses no head and would take all of the flow; give it its length and fittings`,
  "runs-of-settling-slurry": (f) =>
    `${f.subject} carries solids that sink: how they and the flow divide is not known, and the slower run may plug`,
  "branch-against-check-valve": (f) =>
    `branch ${f.facts.branch} flows back from its end through its check valve: one that opens towards its end holds it shut, so work it out without this branch`,
  "no-size-meets": ({ given, facts }, say) => {
    const { pipe, velocity, gradient } = facts.largest ?? {};
    const largest =
      pipe === undefined
        ? ""
        : `: the largest, ${pipe}, still runs at ${say.amount(velocity)} and loses ${say.amount(gradient)} of its length`;
    return `no size of “${given}” meets the limits${largest}`;
  },
};
