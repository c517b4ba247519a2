import { decodeDuty } from "../../shared/duty/decode.ts";
import type { Duty } from "../../shared/duty/duty.ts";
import { dutyFrom } from "../../shared/duty/saved.ts";
import { gatheredFindings } from "../../shared/package/gathered-findings.ts";
import { shownSection } from "../../shared/package/shown-section.ts";
import { type ShownVerdict, shownVerdicts } from "../../shared/package/verdicts.ts";
import { workedDuty } from "../../shared/package/worked-duty.ts";
import { findingText, KIND_NAMES } from "../../shared/text/finding-text.ts";
import type { UnitSetName } from "../../src/basis/quantities.ts";
import type { Finding } from "../../src/basis/result.ts";
import { dutyFigures, type Figure } from "./duty-figures.ts";
import type { SheetFolder } from "./sheet-folder.ts";

interface Placed {
  readonly place: string;
  readonly finding: Finding;
}

function isRecord(data: unknown): data is Readonly<Record<string, unknown>> {
  return typeof data === "object" && data !== null;
}

/** The answer to one line: what a saved duty comes to, or why it cannot be worked out and which boxes are at fault. */
export function dutyAnswer(line: string, sheets: SheetFolder | undefined): object {
  let data: unknown;
  try {
    data = JSON.parse(line);
  } catch {
    return refused("the line is not JSON");
  }
  const { id: given, ...saved }: { readonly id?: unknown } = isRecord(data) ? data : {};
  const id = given === undefined ? {} : { id: given };
  const read = dutyFrom(isRecord(data) ? saved : data);
  if (!read.ok) return { ...id, error: said(read.findings, "US"), at: [] };
  const { unitSet } = read.value;
  const { duty, findings } = decodeDuty(read.value);
  const errors = [...findings].flatMap(([place, here]) =>
    here.filter(({ kind }) => kind === "error").map((finding) => ({ place, finding })),
  );
  const wrong = errors.filter((one) => !isMissing(one));
  if (wrong.length > 0) {
    const text = said(
      wrong.map(({ finding }) => finding),
      unitSet,
    );
    return { ...id, error: text, at: placesOf(wrong) };
  }
  const worked = workedDuty(duty);
  const missing = placesOf(errors);
  const found = gatheredFindings(new Map([["saved duty", read.findings], ...findings]), worked);
  const taken = shownSection(duty, "toConfirm")?.figures ?? [];
  return {
    ...id,
    figures: dutyFigures(worked),
    verdicts: shownVerdicts(duty).map(verdictAnswer),
    findings: [
      ...found
        .filter(({ finding }) => finding.kind !== "error")
        .map(({ finding, at }) => ({
          kind: KIND_NAMES[finding.kind],
          text: findingText(finding, unitSet),
          at: at.join("; "),
        })),
      ...taken.map(({ label, text }) => ({
        kind: KIND_NAMES.assumed,
        text: `${label} was not stated: ${text} is taken.`,
        at: label,
      })),
    ],
    missing,
    ...(sheets === undefined || missing.length > 0 ? {} : { sheet: sheets.write(duty, read.value, nameOf(id, duty)) }),
  };
}

/** The answer to a line that is no duty at all. */
export function refused(reason: string): object {
  return { error: `${reason.charAt(0).toUpperCase()}${reason.slice(1)}.`, at: [] };
}

/** Whether a duty has no answer, or its sheet could not be written. One with boxes still to be given is answered. */
export function isFailure(answer: object): boolean {
  if ("error" in answer) return true;
  return "sheet" in answer && isRecord(answer.sheet) && "error" in answer.sheet;
}

function verdictAnswer({ subject, state, text, found, limit, unit }: ShownVerdict): object {
  const figure = (value: number): Figure => (unit === "" ? { value } : { value, unit });
  return {
    of: subject,
    state,
    text,
    ...(found === undefined ? {} : { found: figure(found) }),
    ...(limit === undefined ? {} : { limit: figure(limit) }),
  };
}

function isMissing({ finding }: Placed): boolean {
  return finding.code === "left-out";
}

function placesOf(found: readonly Placed[]): readonly string[] {
  return [...new Set(found.map(({ place }) => place))];
}

function said(findings: readonly Finding[], units: UnitSetName): string {
  return findings.map((finding) => findingText(finding, units)).join(" ");
}

/** What its workbook is called: by its "id", or by the item or project it is for. */
function nameOf({ id }: { readonly id?: unknown }, { texts }: Duty): string {
  if (typeof id === "string" || typeof id === "number") return String(id);
  return texts.item.trim() || texts.project;
}
