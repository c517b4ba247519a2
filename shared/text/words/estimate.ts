import type { EstimateFindings } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

export const estimateWords: WordsOf<keyof EstimateFindings> = {
  "motor-efficiency-assumed": (f, say) => `no ${f.subject} was given; ${say.amount(f.found)} is taken`,
  "take-off-leaves-out": () =>
    "supports, anchors, drains, vents, gauges, flow meters, containment, paint and labour are not counted; joints before cuts for fittings, and two valves bolted face to face save one",
  "take-off-without-class": () =>
    "no flange class was given, so flanged joints are counted without studs, nuts and gaskets",
  "pipe-mass-not-known": (f) =>
    `the mass of “${f.given}” is not known: its wall or what it is made of is not stated; ask the maker`,
  "bolting-not-held": (f) =>
    `bolting of “${f.given}” is not in the tables (NPS 1/2 to 24, Class 125, 150, 250 and 300)`,
  "rental-rate-above-shorter": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is more than ${f.facts.terms} at the shorter rate, ${say.amount(f.limit)}; check the rates`,
  "thrust-for-caution": () =>
    "indicative only: restrain the bend, and have the restraint designed by a qualified person, for the pressure against a shut valve with surge and test, not for that while running",
  "thrust-by-bore": (f) =>
    `“${f.given}” is taken at its bore; a hose swells, and its coupling is pushed apart over more than that: ask the maker`,
  "collapse-not-held": (f) =>
    `the wall of “${f.given}” or how it buckles is not known here; ask the maker what vacuum it stands`,
  "collapse-rests-on": (f, say) =>
    `${f.subject} rests on a modulus of ${say.amount(f.found)} for that time and temperature; kinks, dents, loads from outside and sun on an empty pipe leave less`,
  "collapse-of-round-pipe": (f, say) =>
    `${f.subject} is that of a wall without dents, modulus ${say.amount(f.found)}; dents and loads from outside leave less`,
  "collapse-too-warm": (f, say) =>
    `polyethylene has no modulus above ${say.amount(f.limit)}, and its wall is at ${say.amount(f.found)}`,
  "collapse-assumed": (f) =>
    `of the vacuum on “${f.given}” not all is stated, so ${f.subject} is taken for ${f.facts.assumed}; state the grade and how long the vacuum lasts`,
};
