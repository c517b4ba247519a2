import * as v from "valibot";
import type { DutyText } from "../../duty/duty-text.ts";
import { FIELD_KEYS } from "../../duty/fields.ts";
import { boxOf } from "../../ports/a1.ts";
import type { SheetNow } from "../../ports/sheet-record.ts";
import { isInternal } from "../sections/estimate.ts";
import { inputsOn, NO_INPUTS, type WrittenInputs, writtenInputs } from "./written-inputs.ts";

/**
 * Prices and costs as typed. They travel on the sheet of the estimate alone, so that a workbook without it, which may go
 * to anybody, holds none of them.
 */
export interface Prices {
  readonly fields: Texts;
  readonly basis: Texts;
}

const INTERNAL: ReadonlySet<string> = new Set(FIELD_KEYS.filter(isInternal));
const KNOWN: ReadonlySet<string> = new Set(FIELD_KEYS);

type Texts = Readonly<Record<string, string>>;

/** The duty without its prices and costs, and these. A field that nobody knows may be a price: it goes where they go. */
export function withoutPrices(duty: DutyText): { readonly open: DutyText; readonly prices: Prices } {
  const isPriced = [...INTERNAL].some((key) => (duty.fields as Texts)[key] !== "");
  const goes = (key: string): boolean => INTERNAL.has(key) || (isPriced && !KNOWN.has(key));
  const chosen = (texts: Texts, isChosen: (key: string, text: string) => boolean): Texts =>
    Object.fromEntries(Object.entries(texts).filter(([key, text]) => isChosen(key, text)));
  const stays = (key: string): boolean => !goes(key);
  const blanked = Object.entries(duty.fields).map(([key, text]) => [key, INTERNAL.has(key) ? "" : text]);
  const fields: DutyText["fields"] = Object.fromEntries(
    blanked.filter(([key = ""]) => stays(key) || INTERNAL.has(key)),
  );
  return {
    open: { ...duty, fields, basis: chosen(duty.basis, stays) },
    prices: { fields: chosen(duty.fields, (key, text) => goes(key) && text !== ""), basis: chosen(duty.basis, goes) },
  };
}

/** The duty with them again. */
export function withPrices(duty: DutyText, { fields, basis }: Prices): DutyText {
  return { ...duty, fields: { ...duty.fields, ...fields }, basis: { ...duty.basis, ...basis } };
}

/** The name of the cells of the estimate that hold its part of the record. */
export const PRICES_NAME = "estimate_record";

/** What fits into one cell (Excel takes 32,767 letters) and leaves room for marks. */
const LONGEST = 30_000;

/** The part of the record that the estimate holds, one text a cell. */
export function pricesTexts(prices: Prices, inputs: WrittenInputs): readonly string[] {
  const all = JSON.stringify({ ...prices, ...inputsOn("estimate", inputs) });
  return Array.from({ length: Math.ceil(all.length / LONGEST) }, (_, i) => all.slice(i * LONGEST, (i + 1) * LONGEST));
}

const texts = v.record(v.string(), v.string());
const priced = v.object({ fields: texts, basis: texts, ...writtenInputs.entries });

/** What an estimate holds; nothing where its cells were deleted or cannot be read. */
export function pricesOn({ names, at }: SheetNow): (Prices & WrittenInputs) | undefined {
  const range = names[PRICES_NAME];
  if (range === undefined) return undefined;
  const { top, left, bottom } = boxOf(range);
  const cells = Array.from({ length: bottom - top + 1 }, (_, i) => String(at(top + i, left).value ?? ""));
  let data: unknown;
  try {
    data = JSON.parse(cells.join(""));
  } catch {
    return undefined;
  }
  const parsed = v.safeParse(priced, data);
  if (!parsed.success) return undefined;
  const own = (all: Texts): Texts =>
    Object.fromEntries(Object.entries(all).filter(([key]) => INTERNAL.has(key) || !KNOWN.has(key)));
  return { ...NO_INPUTS, ...parsed.output, fields: own(parsed.output.fields), basis: own(parsed.output.basis) };
}
