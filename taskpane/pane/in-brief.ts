import type { Worked } from "../../shared/package/head-and-suction.ts";
import type { UnitSetName } from "../../src/basis/quantities.ts";
import type { Finding, FindingKind } from "../../src/basis/result.ts";
import { figureText, isWaiting } from "./views/figure.ts";
import type { WorkedOut } from "./worked.ts";

/** The state of the duty in a few short texts, for the foot of the pane and for the screen reader. */
export function inBrief({ results, missing, wrong, remarks }: WorkedOut, units: UnitSetName): readonly string[] {
  const shown = (label: string, worked: Worked): readonly string[] =>
    isWaiting(worked)
      ? []
      : [`${label} ${typeof worked === "number" ? figureText(worked, "head", units) : "not known"}`];
  return [
    ...shown("Total head", results.ratedHead),
    ...shown("NPSHA", results.npshAvailable),
    ...(wrong.length === 0 ? [] : [`${wrong.length} to correct`]),
    ...(missing.length === 0 ? [] : [`${missing.length} still to give`]),
    ...counted("error", "errors", remarks.atDuty),
    ...counted("safety", "for safety", remarks.atDuty),
    ...counted("limit", "limits", remarks.atDuty),
  ];
}

function counted(kind: FindingKind, several: string, findings: readonly Finding[]): readonly string[] {
  const count = findings.filter((finding) => finding.kind === kind).length;
  return count === 0 ? [] : [count === 1 && kind !== "safety" ? `1 ${kind}` : `${count} ${several}`];
}
