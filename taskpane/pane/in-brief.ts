import type { Worked } from "../../shared/package/head-and-suction.ts";
import { countsText } from "../../shared/text/verdict-text.ts";
import type { Quantity, UnitSetName } from "../../src/basis/quantities.ts";
import type { WorkedOut } from "./head-worked.ts";
import { figureText, isWaiting } from "./views/figure.ts";

/** The figures a duty is known by, and how many boxes they still wait for: for the head of the pane. */
export function headline({ results, pump, missing, wrong }: WorkedOut, units: UnitSetName): readonly string[] {
  const shown = (label: string, worked: Worked | undefined, quantity: Quantity): readonly string[] =>
    worked === undefined || isWaiting(worked)
      ? []
      : [`${label} ${typeof worked === "number" ? figureText(worked, quantity, units) : "not known"}`];
  return [
    ...shown("Total head", results.ratedHead, "head"),
    ...shown("NPSHA", results.npshAvailable, "head"),
    ...shown("Pump gives", pump?.operatingPoint.flow, "flow"),
    ...shown("takes", pump?.operatingPoint.shaftPower, "power"),
    ...(wrong.length === 0 ? [] : [`${wrong.length} to correct`]),
    ...(missing.length === 0 ? [] : [`${missing.length} ${missing.length === 1 ? "input" : "inputs"} missing`]),
  ];
}

/** The state of the duty in a few short texts, for the screen reader. */
export function inBrief(worked: WorkedOut, units: UnitSetName): readonly string[] {
  const counts = countsText(
    worked.verdicts.map(({ state }) => state),
    ["fail", "open"],
  );
  return [...(counts === "" ? [] : [counts]), ...headline(worked, units)];
}
