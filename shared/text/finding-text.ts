import { type Citation, citationText } from "../../src/basis/citation.ts";
import type { FindingCode } from "../../src/basis/finding-code.ts";
import type { UnitSetName } from "../../src/basis/quantities.ts";
import type { Finding, FindingKind } from "../../src/basis/result.ts";
import { spelt, speltAround } from "./spelling.ts";
import { driveWords } from "./words/drive.ts";
import { estimateWords } from "./words/estimate.ts";
import { fieldWords } from "./words/field.ts";
import { headWords } from "./words/head.ts";
import { inputWords } from "./words/input.ts";
import { liquidWords } from "./words/liquid.ts";
import { materialWords } from "./words/materials.ts";
import { pipeWords } from "./words/pipe.ts";
import { pipeworkWords } from "./words/pipework.ts";
import { pressureWords } from "./words/pressure.ts";
import { primingWords } from "./words/priming.ts";
import { pumpWords } from "./words/pump.ts";
import { pumpTableWords } from "./words/pump-table.ts";
import { regionWords } from "./words/region.ts";
import { slurryWords } from "./words/slurry.ts";
import { suctionWords } from "./words/suction.ts";
import { sumpWords } from "./words/sump.ts";
import { tracingWords } from "./words/tracing.ts";
import { type Say, sayIn, type WordsOf } from "./words.ts";

// Every code the engine can raise has its words: a missing one is a compile error.
const WORDS: WordsOf<FindingCode> = {
  ...inputWords,
  ...pipeWords,
  ...pipeworkWords,
  ...liquidWords,
  ...headWords,
  ...suctionWords,
  ...sumpWords,
  ...fieldWords,
  ...pressureWords,
  ...driveWords,
  ...slurryWords,
  ...primingWords,
  ...materialWords,
  ...estimateWords,
  ...pumpWords,
  ...regionWords,
  ...pumpTableWords,
  ...tracingWords,
};

/** As much of a text typed by the reader as a message shows of it. */
const LONGEST_QUOTE = 80;

/** A finding as one sentence, with its amounts in the reader's units, in the spelling of the unit set. */
export function findingText(found: Finding, units: UnitSetName): string {
  const finding = withShortQuotes(found);
  const inWords = WORDS[finding.code] as (finding: Finding, say: Say) => string;
  const words = speltAround(
    inWords(finding, sayIn(units, finding)),
    () => [finding.given ?? "", ...(finding.typed ?? [])],
    units,
  );
  const capital = /^(?:pH|d\d\d)(?!\w)/.test(words) ? words : words.charAt(0).toUpperCase() + words.slice(1);
  const sentence = finding.of === undefined ? capital : `${finding.of}: ${words}`;
  return /[.!?]$/.test(sentence) ? sentence : `${sentence}.`;
}

/** A cell may hold thousands of letters; a message is read in one glance. */
function withShortQuotes(finding: Finding): Finding {
  const { subject, given = "", of = "" } = finding;
  if ([subject, given, of].every(({ length }) => length <= LONGEST_QUOTE)) return finding;
  return {
    ...finding,
    subject: shortened(subject),
    ...(finding.given === undefined ? {} : { given: shortened(given) }),
    ...(finding.of === undefined ? {} : { of: shortened(of) }),
  };
}

function shortened(text: string): string {
  return text.length <= LONGEST_QUOTE ? text : `${text.slice(0, LONGEST_QUOTE - 1)}…`;
}

/** The kinds of finding as a reader meets them. */
export const KIND_NAMES: Readonly<Record<FindingKind, string>> = {
  error: "Error",
  safety: "Safety",
  limit: "Limit",
  check: "Check",
  assumed: "Assumed",
};

/** "Limit: … [source]": a finding as a line of notes. */
export function noteText(finding: Finding, units: UnitSetName): string {
  const source = finding.cites === undefined ? "" : ` [${sourceText(finding.cites, units)}]`;
  return `${KIND_NAMES[finding.kind]}: ${findingText(finding, units)}${source}`;
}

/** Our own words for practice and choices are spelt as all else; what others published, as they do. */
export function sourceText(cites: Citation, units: UnitSetName): string {
  const text = citationText(cites);
  return cites.source === "practice" || cites.source === "house" ? spelt(text, units) : text;
}
