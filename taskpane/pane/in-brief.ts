import type { UnitSetName } from "../../src/basis/quantities.ts";
import type { Finding, Severity } from "../../src/basis/result.ts";
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
  return [
    `Total head ${shortFigure(results.ratedHead, units)}`,
    `NPSHA ${shortFigure(results.npshAvailable, units)}`,
    ...counted("error", remarks.atDuty),
    ...counted("warning", remarks.atDuty),
  ];
}

function counted(kind: Severity, findings: readonly Finding[]): readonly string[] {
  const count = findings.filter(({ severity }) => severity === kind).length;
  return count === 0 ? [] : [count === 1 ? `1 ${kind}` : `${count} ${kind}s`];
}

function shortFigure(worked: Parameters<typeof figureText>[0], units: UnitSetName): string {
  return typeof worked === "number" ? figureText(worked, "head", units) : "not known";
}
