import { basisPlace, textIn, withTextIn } from "../../duty/boxes.ts";
import { decodeDuty } from "../../duty/decode.ts";
import type { DutyText } from "../../duty/duty-text.ts";
import { FIELDS, type FieldKey } from "../../duty/fields.ts";
import { boxOf } from "../../ports/a1.ts";
import type { SheetNow } from "../../ports/sheet-record.ts";
import { findingText } from "../../text/finding-text.ts";
import type { BroughtBack, Remark, TakenOver } from "./brought-back.ts";
import { isAsWritten, textOfCell } from "./cell-text.ts";
import { resultOverwritten, tableOverwritten } from "./overwritten.ts";
import { pricesOn, withPrices } from "./prices.ts";
import type { DutyRecord } from "./record.ts";
import { tablesBack } from "./tables-back.ts";
import { typedOver } from "./typed-over.ts";
import { BASIS_NAME, type InputSheet, type WrittenBox, type WrittenInputs } from "./written-inputs.ts";

/** The sheets of one duty; the estimate and the workings where the workbook has them. */
export type DutySheetsNow = Readonly<Partial<Record<InputSheet | "workings", SheetNow>>>;

/**
 * The duty with all that was changed in the input cells of its sheets: what is as it was written keeps the text that was
 * typed, anything else is taken as it stands. A sheet that is not there says nothing: without the estimate a duty has
 * no prices.
 */
export function bringBack({ duty: open, inputs: ofDuty }: DutyRecord, sheets: DutySheetsNow): BroughtBack {
  const taken: TakenOver[] = [];
  const remarks: Remark[] = [];
  const estimate = sheets.estimate && pricesOn(sheets.estimate);
  if (sheets.estimate !== undefined && estimate === undefined) remarks.push(NO_PRICES);
  let duty = estimate === undefined ? open : withPrices(open, estimate);
  const inputs: WrittenInputs = {
    boxes: [...ofDuty.boxes, ...(estimate?.boxes ?? [])],
    tables: [...ofDuty.tables, ...(estimate?.tables ?? [])],
    results: [...ofDuty.results, ...(estimate?.results ?? [])],
    worked: [...ofDuty.worked, ...(estimate?.worked ?? [])],
    blocks: [...ofDuty.blocks, ...(estimate?.blocks ?? [])],
  };
  const take = (place: string, label: string, text: string): void => {
    const before = textIn(duty, place);
    if (before === text) return;
    duty = withTextIn(duty, place, text);
    taken.push({ place, label, before, after: text });
  };
  for (const box of inputs.boxes) {
    const sheet = sheets[box.sheet];
    if (sheet === undefined) continue;
    const at = placeOf(sheet, box.name);
    if (at === undefined)
      remarks.push({ kind: "gone", text: `${box.label}: its cell was deleted; what was written stays.` });
    else boxBack(sheet, at, box, take, remarks);
  }
  const tables = inputs.tables.filter(({ sheet }) => sheets[sheet] !== undefined);
  const back = tablesBack(duty, tables, (of) => sheets[of] as SheetNow);
  duty = back.duty;
  taken.push(...back.taken);
  remarks.push(...back.remarks);
  const heldAgainst = <W extends { readonly sheet: InputSheet }>(
    written: readonly W[],
    said: (sheet: SheetNow, one: W) => readonly Remark[],
  ): readonly Remark[] =>
    written.flatMap((one) => {
      const sheet = sheets[one.sheet];
      return sheet === undefined ? [] : said(sheet, one);
    });
  remarks.push(...heldAgainst(inputs.results, resultOverwritten), ...heldAgainst(inputs.worked, tableOverwritten));
  for (const of of ["workings", "estimate"] as const) {
    const sheet = sheets[of];
    const blocks = inputs.blocks.filter((block) => block.sheet === of);
    if (sheet !== undefined) remarks.push(...typedOver(sheet, blocks));
  }
  return { duty, taken, remarks: [...remarks, ...unread(duty, taken)] };
}

const NO_PRICES: Remark = {
  kind: "gone",
  text: "What the estimate says of itself was deleted or cannot be read: prices and costs were not taken.",
};

function boxBack(
  sheet: SheetNow,
  at: { readonly row: number; readonly column: number },
  { place, label, written, quantity, basis }: WrittenBox,
  take: (place: string, label: string, text: string) => void,
  remarks: Remark[],
): void {
  const { value, isFormula } = sheet.at(at.row, at.column);
  const isChanged = !isAsWritten(written, value);
  const text = textOfCell(value, place ?? "", quantity);
  if (isChanged && place !== undefined) take(place, label, text);
  if (isChanged && place === undefined) {
    remarks.push({
      kind: "no box",
      text: `${label} is now ${text === "" ? "blank" : text}: no box of the duty holds it, so it was not taken.`,
    });
  }
  if (isFormula && place !== undefined) {
    remarks.push({
      kind: "formula",
      text: `${label} is worked out on the sheet by a formula; its value, ${text}, was taken.`,
    });
  }
  const column = placeOf(sheet, BASIS_NAME)?.column;
  if (basis === undefined || column === undefined) return;
  const { value: said, isFormula: isLive } = sheet.at(at.row, column);
  // A sentence of the sheet about an input that nobody stated is nobody's word.
  if (isLive || isAsWritten(basis, said)) return;
  const words = textOfCell(said, "", undefined);
  if (place !== undefined && Object.hasOwn(FIELDS, place))
    take(basisPlace(place as FieldKey), `Basis of ${label}`, words);
  else
    remarks.push({
      kind: "no box",
      text: `Basis of ${label} is now “${words}”: no box of the duty holds it, so it was not taken.`,
    });
}

/** The first cell of a named range. */
function placeOf({ names }: SheetNow, name: string): { readonly row: number; readonly column: number } | undefined {
  const range = names[name];
  if (range === undefined) return undefined;
  const { top, left } = boxOf(range);
  return { row: top, column: left };
}

/** What was taken over and cannot be read where it now stands. */
function unread(duty: DutyText, taken: readonly TakenOver[]): readonly Remark[] {
  const { findings } = decodeDuty(duty);
  return taken.flatMap(({ place, label, after }) =>
    [...findings]
      .filter(([at]) => place !== undefined && (at === place || at.startsWith(`${place}.`)))
      .flatMap(([, found]) => found)
      .filter(({ kind }) => kind === "error")
      .map((finding): Remark => {
        const given = after === "" ? "blank" : `“${after}”`;
        return {
          kind: "unread",
          text: `${label}, now ${given}, cannot be used: ${findingText(finding, duty.unitSet)}`,
        };
      }),
  );
}
