import type { Finding } from "../../../src/basis/result.ts";
import { boxOf } from "../../ports/a1.ts";
import { RECORD_NAME, type RecordedSheets, type SheetNow, WORKINGS_NAME } from "../../ports/sheet-record.ts";
import { bringBack } from "./bring-back.ts";
import type { BroughtBack } from "./brought-back.ts";
import { PRICES_NAME } from "./prices.ts";
import { type DutyRecord, readRecord, recordIdIn } from "./record.ts";

/** A duty that a workbook holds, as its sheets now state it. */
export interface FoundDuty {
  /** The name of its sheet, or of its estimate where that alone is left. */
  readonly sheet: string;
  readonly record: DutyRecord;
  readonly back: BroughtBack;
}

export interface FoundDuties {
  readonly duties: readonly FoundDuty[];
  /** Sheets that were written for a duty that the workbook does not hold, and why it cannot be had. */
  readonly lost: readonly { readonly sheet: string; readonly findings: readonly Finding[] }[];
}

/** The duties that a workbook holds, in the order of their sheets. */
export function dutiesIn({ records, sheets }: RecordedSheets): FoundDuties {
  const read = records.map(readRecord);
  const known = new Map(read.flatMap((one) => (one.ok ? [[one.value.id, one.value] as const] : [])));
  const broken = read.flatMap((one) => (one.ok ? [] : one.findings));
  const found = sheets.flatMap((sheet) => {
    const id = idOf(sheet);
    return id === undefined ? [] : [{ sheet, id }];
  });
  const lost = found
    .filter(({ sheet, id }) => !known.has(id) && !isWorkings(sheet))
    .map(({ sheet }) => ({ sheet: sheet.name, findings: broken.length > 0 ? broken : [NO_RECORD] }));
  const duties = [...known.values()].flatMap((record): readonly FoundDuty[] => {
    const own = found.filter(({ id }) => id === record.id).map(({ sheet }) => sheet);
    const pages = own.filter((sheet) => !isEstimate(sheet) && !isWorkings(sheet));
    const [estimates, workings] = [own.filter(isEstimate), own.filter(isWorkings)];
    // A sheet copied beside its own is a duty of its own; it shares what was not copied with it.
    return (pages.length > 0 ? pages : estimates.slice(0, 1).map(() => undefined)).map((page, i) => {
      const estimate = estimates[i] ?? estimates.at(-1);
      const working = workings[i] ?? workings.at(-1);
      const present = {
        ...(page && { duty: page }),
        ...(estimate && { estimate }),
        ...(working && { workings: working }),
      };
      return { sheet: (page ?? estimate)?.name ?? "", record, back: bringBack(record, present) };
    });
  });
  const order = (name: string): number => sheets.findIndex((sheet) => sheet.name === name);
  return { duties: duties.sort((a, b) => order(a.sheet) - order(b.sheet)), lost };
}

const NO_RECORD: Finding = {
  code: "duty-unreadable",
  kind: "error",
  subject: "record of the sheet",
  facts: { reason: "the workbook does not hold it: the sheet was copied from another, or a program left it out" },
};

function isEstimate({ names }: SheetNow): boolean {
  return names[PRICES_NAME] !== undefined;
}

function isWorkings({ names }: SheetNow): boolean {
  return names[WORKINGS_NAME] !== undefined;
}

function idOf({ names, at }: SheetNow): string | undefined {
  const range = names[RECORD_NAME];
  if (range === undefined) return undefined;
  const { top, left } = boxOf(range);
  return recordIdIn(at(top, left).value);
}
