import type { UnitSetName } from "../../src/basis/quantities.ts";
import { figureText } from "./views/figure.ts";
import type { WorkedOut } from "./worked.ts";

/** The state of the duty in a few short texts, for the foot of the pane and for the screen reader. */
export function inBrief({ results, fault, missing, wrong, remarks }: WorkedOut, units: UnitSetName): readonly string[] {
  if (fault !== undefined) return ["Cannot be worked out"];
  if (results === undefined) {
    return [
      ...(wrong.length === 0 ? [] : [`${wrong.length} to correct`]),
      ...(missing.length === 0 ? [] : [`${missing.length} still to give`]),
    ];
  }
  const warnings = remarks.atDuty.filter(({ severity }) => severity !== "caution").length;
  return [
    `Total head ${shortFigure(results.ratedHead, units)}`,
    `NPSHA ${shortFigure(results.npshAvailable, units)}`,
    ...(warnings === 0 ? [] : [warnings === 1 ? "1 warning" : `${warnings} warnings`]),
  ];
}

function shortFigure(worked: Parameters<typeof figureText>[0], units: UnitSetName): string {
  return typeof worked === "number" ? figureText(worked, "head", units) : "not known";
}
