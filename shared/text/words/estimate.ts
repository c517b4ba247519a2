import type { EstimateCode } from "../../../src/basis/finding-code.ts";
import type { Words } from "../words.ts";

export const estimateWords: Readonly<Record<EstimateCode, Words>> = {
  "motor-efficiency-assumed": (f, say) => `no ${f.subject} was given; ${say.amount(f.found)} is taken`,
  "take-off-leaves-out": () =>
    "supports, anchors, drains, vents, gauges, flow meters, containment, paint and labour are not counted; joints before cuts for fittings, and two valves bolted face to face save one",
  "take-off-without-class": () =>
    "no flange class was given, so flanged joints are counted without studs, nuts and gaskets",
  "pipe-mass-not-known": (f) =>
    `the mass of “${f.given}” is not known: its wall or what it is made of is not stated; ask the maker`,
  "bolting-not-held": (f) =>
    `bolting of “${f.given}” is not in the tables (NPS 1/2 to 24, Class 125, 150, 250 and 300)`,
};
