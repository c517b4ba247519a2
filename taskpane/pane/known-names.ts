import type { UnitSetName } from "../../src/basis/quantities.ts";
import { FITTING_FORMS } from "../../src/pipework/fitting-forms.ts";
import { fittingNamed } from "../../src/pipework/fitting-name.ts";
import { KNOWN_FITTINGS } from "../../src/pipework/known-fittings.ts";
import { allPipes } from "../../src/pipework/pipe-name.ts";
import { type NameList, nameList } from "./names.ts";

// Searched at every keystroke, so made ready once.
export const FITTINGS = nameList([
  ...KNOWN_FITTINGS.map(({ fitting }) => fitting.name),
  ...FITTING_FORMS.map(({ example }) => example),
]);
const INCHES_FIRST = pipesBy("inch", "metric");
const METRIC_FIRST = pipesBy("metric", "inch");

/** Every pipe by both its names, those of the reader's own sizes first. */
export function pipesFor(units: UnitSetName): NameList {
  return units === "US" ? INCHES_FIRST : METRIC_FIRST;
}

/** Whether a text is a whole fitting and not the beginning of one. */
export function isFittingName(text: string): boolean {
  return text !== "" && fittingNamed(text).ok;
}

function pipesBy(first: "inch" | "metric", second: "inch" | "metric"): NameList {
  return nameList([...new Set([...allPipes(first), ...allPipes(second)].map(({ name }) => name))]);
}
