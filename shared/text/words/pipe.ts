import type { PipeFindings } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

export const pipeWords: WordsOf<keyof PipeFindings> = {
  "pipe-family-missing": (f, say) =>
    `${f.subject} “${f.given}” is a nominal size without a family, which leaves its bore open; write ${say.suggestions()}`,
  "pipe-size-missing": (f, say) =>
    `${f.subject} “${f.given}” names a family without a size; write it in full, such as ${say.suggestions()}`,
  "pipe-rough-and-c": (f, say) =>
    `${f.subject} “${f.given}” states a roughness and a C of Hazen–Williams; one law counts, so write ${say.suggestions()}`,
  "pipe-c-not-roughness": (f) =>
    `${f.subject} “${f.given}” states a C of Hazen–Williams, which this method cannot use; name the pipe without C`,
  "aged-roughness-not-of-c": (f) =>
    `${f.subject} does not count for “${f.given}”, which goes by its C and stays as stated; the aged end of it is another C`,
  "pipe-c-stated-twice": (f) =>
    `${f.subject} “${f.given}” states another C than the ${f.facts.coefficient} given; state one of them`,
  "pipe-roughness-missing": (f, say) => `${f.subject} “${f.given}” states no roughness; write ${say.suggestions()}`,
  "pipe-class-contradicts": (f, say) =>
    `${f.subject} “${f.given}” contradicts itself: a pipe so named is ${f.facts.due}, not ${f.facts.stated}; write ${say.suggestions()}`,
  "pipe-material-not-stated": (f, say) =>
    f.kind === "error"
      ? `${f.subject} “${f.given}” does not say what it is made of; write ${say.suggestions()}`
      : `${f.subject} “${f.given}” does not say what it is made of; it is taken as ${say.suggestions()}, which alone is made in this size and ratio`,
  "bore-is-nominal": (f, say) =>
    `${f.subject}: the bore given equals a nominal size; if it is one, ${say.suggestions()} has a bore of ${say.amount(f.facts.bore)}`,
  "surface-uncertain": (f, say) =>
    `${f.subject}: ${f.facts.surface} is taken with a roughness of ${say.amount(f.facts.taken)}; ${say.amount(f.facts.least)} to ${say.amount(f.facts.greatest)} is found; state “rough” and an amount where it is known`,
  "hose-corrugated": (f) =>
    `${f.subject}: a corrugated bore is taken with ${f.facts.taken} times the friction of a smooth one; ${f.facts.least} to ${f.facts.greatest} times is found; ask for the measured loss of this hose`,
};
