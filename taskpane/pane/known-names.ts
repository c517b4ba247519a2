import { spelt } from "../../shared/text/spelling.ts";
import type { UnitSetName } from "../../src/basis/quantities.ts";
import { FITTING_FORMS } from "../../src/pipework/fitting-forms.ts";
import { fittingNamed } from "../../src/pipework/fitting-name.ts";
import { KNOWN_FITTINGS } from "../../src/pipework/known-fittings.ts";
import { allPipes } from "../../src/pipework/pipe-name.ts";
import { type NameList, nameList } from "./names.ts";

// Searched at every keystroke, so made ready once.
const FITTINGS = [...KNOWN_FITTINGS.map(({ fitting }) => fitting.name), ...FITTING_FORMS.map(({ example }) => example)];
const BRITISH_FITTINGS = nameList(FITTINGS);
const AMERICAN_FITTINGS = speltList(FITTINGS);
const INCHES_FIRST = speltList(pipesBy("inch", "metric"));
const METRIC_FIRST = nameList(pipesBy("metric", "inch"));

export function fittingsFor(units: UnitSetName): NameList {
  return units === "US" ? AMERICAN_FITTINGS : BRITISH_FITTINGS;
}

/** Every pipe by both its names, those of the reader's own sizes first. */
export function pipesFor(units: UnitSetName): NameList {
  return units === "US" ? INCHES_FIRST : METRIC_FIRST;
}

/** Whether a text is a whole fitting and not the beginning of one. */
export function isFittingName(text: string): boolean {
  return text !== "" && fittingNamed(text).ok;
}

function pipesBy(first: "inch" | "metric", second: "inch" | "metric"): readonly string[] {
  return [...new Set([...allPipes(first), ...allPipes(second)].map(({ name }) => name))];
}

function speltList(names: readonly string[]): NameList {
  return nameList(names.map((name) => spelt(name, "US")));
}
