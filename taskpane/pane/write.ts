import type { FoundDuty } from "../../shared/calc-sheet/open-again/duties-in.ts";
import { failureText } from "../../shared/ports/host-fault.ts";
import type { SheetHost } from "../../shared/ports/sheet-host.ts";
import { findingText } from "../../shared/text/finding-text.ts";
import { part } from "../part.ts";
import type { PaneContext } from "./context.ts";
import { today } from "./today.ts";

/**
 * Writes the duty on sheets of its own.
 *
 * @param standing the sheet that the duty is a new revision of
 */
export async function write(
  { state, send, readSheets }: PaneContext,
  host: SheetHost,
  standing: FoundDuty | undefined,
): Promise<void> {
  send({ type: "writing", writing: { kind: "writing" } });
  try {
    // The pane loads what lays sheets out when one is asked for.
    const [{ nextIssue }, { dutySheets }] = await part(
      Promise.all([import("../../shared/package/next-issue.ts"), import("../../shared/calc-sheet/duty-sheets.ts")]),
    );
    const issue = standing && nextIssue(standing.back.duty, state.duty, today());
    const set = dutySheets(issue?.duty ?? state.duty, crypto.randomUUID(), host.holdsRecords());
    if (set.ok) {
      const sheets = await host.addSheets(set.value);
      if (issue === undefined) send({ type: "writing", writing: { kind: "written", sheets } });
      else send({ type: "issued", sheets, issue });
      await readSheets();
    } else {
      const reason = set.findings.map((finding) => findingText(finding, state.duty.unitSet)).join(" ");
      send({ type: "writing", writing: { kind: "failed", reason: `${reason} Nothing was changed in the workbook.` } });
    }
  } catch (error) {
    send({ type: "writing", writing: { kind: "failed", reason: failureText(error) } });
  }
}
