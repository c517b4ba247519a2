import type { Worked } from "../../shared/package/head-and-suction.ts";
import { countsText } from "../../shared/text/verdict-text.ts";
import type { UnitSetName } from "../../src/basis/quantities.ts";
import { figureText, isWaiting } from "./views/figure.ts";
import type { WorkedOut } from "./worked.ts";

/** The state of the duty in a few short texts, for the foot of the pane and for the screen reader. */
export function inBrief({ results, missing, wrong, verdicts }: WorkedOut, units: UnitSetName): readonly string[] {
  const shown = (label: string, worked: Worked): readonly string[] =>
    isWaiting(worked)
      ? []
      : [`${label} ${typeof worked === "number" ? figureText(worked, "head", units) : "not known"}`];
  const counts = countsText(
    verdicts.map(({ state }) => state),
    ["fail", "open"],
  );
  return [
    ...(counts === "" ? [] : [counts]),
    ...shown("Total head", results.ratedHead),
    ...shown("NPSHA", results.npshAvailable),
    ...(wrong.length === 0 ? [] : [`${wrong.length} to correct`]),
    ...(missing.length === 0 ? [] : [`${missing.length} still to give`]),
  ];
}
