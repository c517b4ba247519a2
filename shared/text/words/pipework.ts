import type { PipeworkCode } from "../../../src/basis/finding-code.ts";
import type { Words } from "../words.ts";

export const pipeworkWords: Readonly<Record<PipeworkCode, Words>> = {
  "critical-zone": (f, say) =>
    `${f.subject} is in the critical zone (Reynolds number ${say.fact("reynolds")}): friction may sit anywhere between laminar and turbulent, and the value between the two is used`,
  "size-change-wrong-way": (f, say) =>
    `${f.subject}: the other bore of ${say.amount(f.found)} must be ${f.limit?.side} the pipe's own, ${say.amount(f.limit)}`,
  "fitting-needs-flow": (f) =>
    `${f.subject} has a coefficient that depends on the flow; ask for its head at a flow instead`,
  "fitting-assumed": (f, say) =>
    `${f.subject}: K = ${say.fact("coefficient")} is common practice (${say.fact("range")}); use the maker's figure where there is one`,
  "fitting-size-outside-table": (f, say) =>
    `${f.subject} is tabled from ${say.fact("least")} to ${say.fact("most")}; the nearest size is used for ${say.amount(f.found)}`,
  "fitting-methods-mixed": (f) =>
    `${f.subject} of the 3-K method and of equivalent lengths are in one line; the two differ by about a third, so keep to one`,
  "valve-not-held-open": (f, say) =>
    `${f.subject} is not held fully open: the velocity of ${say.amount(f.found)} is below ${say.amount(f.limit)}, so it loses more than counted and wears`,
  "no-size-meets": (f, say) =>
    `no size of “${f.given}” meets the limits: the largest, ${say.fact("largest")}, still runs at ${say.fact("velocity")} and loses ${say.fact("gradient")} of its length`,
};
