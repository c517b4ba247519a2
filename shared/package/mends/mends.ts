import type { FindingCode } from "../../../src/basis/finding-code.ts";
import type { UnitSetName } from "../../../src/basis/quantities.ts";
import type { Finding } from "../../../src/basis/result.ts";
import type { VerdictSubject } from "../../../src/judgement/verdict.ts";
import { textIn, withTextIn } from "../../duty/boxes.ts";
import { type Decoded, decodeDuty } from "../../duty/decode.ts";
import type { DutyText } from "../../duty/duty-text.ts";
import { spelt } from "../../text/spelling.ts";
import type { FoundAt, Mend, Mender } from "./mend.ts";
import { OF_BOXES } from "./of-boxes.ts";
import { OF_LINES } from "./of-lines.ts";
import { mendsOfSuggestions } from "./of-suggestions.ts";
import { mendsOfVerdict } from "./of-verdicts.ts";

/** As many as are offered beside one finding, and as are tried for them. */
const MOST_MENDS = 4;
const MOST_TRIED = 8;

/** The mends of the findings of one duty. */
export interface Mends {
  /** Of a finding that stands at a box. */
  readonly at: (place: string, finding: Finding) => readonly Mend[];
  /** Of a finding that the calculation made. */
  readonly of: (finding: Finding) => readonly Mend[];
  /** Of a verdict that does not pass. */
  readonly ofVerdict: (subject: VerdictSubject) => readonly Mend[];
}

/** What clears the findings of a duty, each tried before it is offered. */
export function mendsFor(typed: DutyText, decoded: Decoded): Mends {
  const { duty } = decoded;
  return {
    at: (place, finding) => {
      const offered = candidates(finding, { place, text: textIn(typed, place), typed, duty });
      return offered.length === 0 ? offered : thatClear(offered, place, finding, typed, decoded);
    },
    of: (finding) => {
      const own = OF_LINES[finding.code] as Mender<FindingCode> | undefined;
      return own?.(finding, { place: "", text: "", typed, duty }) ?? [];
    },
    ofVerdict: (subject) => mendsOfVerdict(subject, duty),
  };
}

/** Trying one takes as long as reading a duty does, so what was found is kept while the same is said of the same text. */
const tried = new Map<string, readonly Mend[]>();
const MOST_KEPT = 100;

function thatClear(
  offered: readonly Mend[],
  place: string,
  finding: Finding,
  typed: DutyText,
  decoded: Decoded,
): readonly Mend[] {
  const key = JSON.stringify([typed.unitSet, place, finding, offered]);
  const known = tried.get(key);
  if (known !== undefined) return known;
  const clears = clearing(place, finding, typed, decoded);
  const found: Mend[] = [];
  for (const mend of offered) {
    // Two texts of one label say the same: the first that clears the finding is taken.
    if (found.length < MOST_MENDS && found.every(({ label }) => label !== mend.label) && clears(mend)) found.push(mend);
  }
  if (tried.size >= MOST_KEPT) tried.delete(tried.keys().next().value as string);
  tried.set(key, found);
  return found;
}

/** Whether a text takes the finding away and brings no error in its place. */
function clearing(place: string, finding: Finding, typed: DutyText, decoded: Decoded): (mend: Mend) => boolean {
  const same = JSON.stringify(finding);
  // A sum that is refused is no finding of the duty as read.
  const isCounted = (decoded.findings.get(place) ?? []).some((one) => JSON.stringify(one) === same);
  const most = errorsIn(decoded) - (finding.kind === "error" && isCounted ? 1 : 0);
  return ({ place: box, text }) => {
    const after = decodeDuty(withTextIn(typed, box, text));
    const left = after.findings.get(place) ?? [];
    const isGone = left.every((one) => JSON.stringify(one) !== same && (isCounted || one.kind !== "error"));
    return isGone && errorsIn(after) <= most;
  };
}

function candidates(finding: Finding, at: FoundAt): readonly Mend[] {
  const own = OF_BOXES[finding.code] as Mender<FindingCode> | undefined;
  const all = [
    ...(own?.(finding, at) ?? []),
    ...(finding.suggestions === undefined ? [] : mendsOfSuggestions(speltFor(finding, at.typed.unitSet), at)),
  ];
  return all
    .filter(({ place, text }, i) => all.findIndex((one) => one.place === place && one.text === text) === i)
    .slice(0, MOST_TRIED);
}

/** Names that would do, as the reader spells them. */
function speltFor(finding: Finding, units: UnitSetName): Finding {
  const suggestions = finding.suggestions?.map((name) => spelt(name, units));
  return { ...finding, suggestions } as Finding;
}

/** A sum that is put into a box is worked out behind it. */
function errorsIn({ findings }: Decoded): number {
  return [...findings.values()].flat().filter(({ kind, code }) => kind === "error" && code !== "sum-pending").length;
}
