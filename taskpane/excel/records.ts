import { referenceParts } from "../../shared/ports/reference.ts";
import { RECORD_NAME, RECORD_NAMESPACE, type RecordedSheets, type SheetNow } from "../../shared/ports/sheet-record.ts";
import { cellOf } from "./cell-value.ts";

/** Whether this Excel keeps XML with a workbook: that came with ExcelApi 1.5, and what a name stands for with 1.7. */
export function holdsRecords(): boolean {
  return Office.context.requirements.isSetSupported("ExcelApi", "1.7");
}

/** Adds the records of sheets; with the same sync as that. */
export function addRecords(context: Excel.RequestContext, records: readonly string[]): void {
  if (records.length === 0 || !holdsRecords()) return;
  for (const record of records) context.workbook.customXmlParts.add(record);
}

/** The records a workbook held at the next sync. */
export type KeptRecords = Excel.CustomXmlPartScopedCollection;

/** Nothing where this Excel keeps none. */
export function keptRecords(context: Excel.RequestContext): KeptRecords | undefined {
  return holdsRecords() ? context.workbook.customXmlParts.getByNamespace(RECORD_NAMESPACE).load("items/id") : undefined;
}

/** Takes away the records that were not there then. */
export async function removeNewRecords(
  context: Excel.RequestContext,
  standing: KeptRecords | undefined,
): Promise<void> {
  const before = new Set(standing?.items.map(({ id }) => id));
  const now = standing === undefined ? undefined : keptRecords(context);
  await context.sync();
  const added = now?.items.filter(({ id }) => !before.has(id)) ?? [];
  for (const part of added) part.delete();
  if (added.length > 0) await context.sync();
}

/** What the workbook holds of duties, in three round trips. */
export async function recordedSheets(context: Excel.RequestContext): Promise<RecordedSheets> {
  if (!holdsRecords()) return { records: [], sheets: [] };
  const sheets = context.workbook.worksheets.load("items/name");
  const parts = await ownParts(context);
  const marks = sheets.items.map((sheet) => sheet.names.getItemOrNullObject(RECORD_NAME).load("name"));
  await context.sync();
  const marked = sheets.items.filter((_, i) => marks[i]?.isNullObject === false);
  const read = marked.map((sheet) => ({
    name: sheet.name,
    named: sheet.names.load("items/name,items/formula"),
    used: sheet.getUsedRange().load("values,valueTypes,formulas,rowIndex,columnIndex"),
  }));
  await context.sync();
  return { records: parts.map(({ xml }) => xml), sheets: read.map(sheetNow) };
}

async function ownParts(
  context: Excel.RequestContext,
): Promise<readonly { readonly part: Excel.CustomXmlPart; readonly xml: string }[]> {
  const parts = context.workbook.customXmlParts.getByNamespace(RECORD_NAMESPACE).load("items/id");
  await context.sync();
  const texts = parts.items.map((part) => part.getXml());
  await context.sync();
  return parts.items.map((part, i) => ({ part, xml: texts[i]?.value ?? "" }));
}

interface ReadSheet {
  readonly name: string;
  readonly named: Excel.NamedItemCollection;
  readonly used: Excel.Range;
}

function sheetNow({ name, named, used }: ReadSheet): SheetNow {
  const names = named.items.flatMap((item): readonly (readonly [string, string])[] => {
    const { target } = referenceParts(String(item.formula).replace(/^=/, ""));
    return RANGE.test(target) ? [[item.name, target.replaceAll("$", "")]] : [];
  });
  const { values, valueTypes, formulas, rowIndex, columnIndex } = used;
  return {
    name,
    names: Object.fromEntries(names),
    at: (row, column) => {
      const [i, j] = [row - rowIndex, column - columnIndex];
      const formula: unknown = formulas[i]?.[j];
      return {
        value: values[i] === undefined ? null : cellOf(values[i]?.[j] ?? "", valueTypes[i]?.[j] ?? "Empty"),
        isFormula: typeof formula === "string" && formula.startsWith("="),
      };
    },
  };
}

const RANGE = /^\$?[A-Z]{1,3}\$?[1-9]\d{0,6}(:\$?[A-Z]{1,3}\$?[1-9]\d{0,6})?$/;
