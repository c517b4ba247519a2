import type { FieldFindings } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

export const fieldWords: WordsOf<keyof FieldFindings> = {
  "gauge-span-assumed": (f, say) =>
    `nothing is stated of the ${f.subject}; it is taken to be good to ${say.amount(f.found)}, 1 % of a span of ${say.amount(f.facts.span)}`,
  "gauge-span-missing": (f) =>
    `${f.subject} “${f.given}” needs the span of its scale, such as “${f.given} 60 psi” or “${f.given} 4 bar”`,
  "gauge-read-low": (f, say) =>
    `the ${f.subject} reads ${say.amount(f.found)}, less than a tenth of its span of ${say.amount(f.facts.span)}; a gauge of a smaller span would be surer`,
  "instrument-assumed": (f, say) =>
    `nothing is stated of how the ${f.subject} was measured; it is taken to be good to ${say.amount(f.found)}`,
  "velocity-head-left-out": () =>
    "no pipe size is stated at the discharge tap, so the change of velocity head is left out; in a small pump that may be a tenth of its head",
  "suction-size-missing": (f, say) =>
    `no pipe size is stated at the suction tap, so the velocity there counts as nothing and the velocity heads add ${say.amount(f.found)}`,
  "power-factor-missing": (f) =>
    `${f.subject} “${f.given}” needs the power factor, such as “pf 0.86”: amps alone, or those of a nameplate, are no power`,
  "power-reading-unreadable": (f, say) =>
    `${f.subject} “${f.given}” is not a power that is known; write it as ${say.suggestions()}`,
  "pump-efficiency-above-one": (f, say) =>
    `${f.subject} comes to ${say.amount(f.found)}, which no pump has: check flow, power and the efficiencies of what drives it`,
  "specific-consumption-of-diesel": (f) =>
    `a specific consumption is read for diesel alone, whose density is known here; leave it out for ${f.given}`,
  "band-of-house": (f, say) =>
    `no grade of acceptance is stated; the pump is compared with a band of ±${say.amount(f.found)} of head, this product's own choice`,
  "field-no-guarantee": (f) =>
    `the band is that of grade ${f.given}; readings on site do not settle a guarantee unless the contract says so`,
  "field-speed-missing": (f) => `${f.subject} is missing: a measured speed is compared with it`,
  "field-speed-taken": (f, say) =>
    `no speed was measured; ${say.amount(f.found)} of the speed of the curve is taken, good to 1 %; a slower motor looks like a worn pump`,
  "field-one-point": () =>
    "one reading leaves several causes open; a second at another setting of the valve would part them",
};
