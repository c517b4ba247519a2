import type { Quantity } from "../../../src/basis/quantities.ts";
import type { FieldKey } from "../fields.ts";
import { amountsAt, mayBe, type SaidAmount } from "./amounts.ts";
import { FIELD_PHRASES, HEIGHT_PHRASES, OPEN_PHRASES } from "./phrases.ts";
import type { ReadPart, Said } from "./said.ts";
import { COUNT, countIn, LINKING } from "./words.ts";

interface Found {
  readonly length: number;
  readonly amount: SaidAmount;
}

/** Words and then a figure, or a figure and then words. */
function figureBeside(
  text: string,
  { quantity, before, after }: { readonly quantity: Quantity; readonly before?: RegExp; readonly after?: RegExp },
): Found | undefined {
  const words = before?.exec(text)?.[0];
  if (words !== undefined) {
    const start = words.length + (LINKING.exec(text.slice(words.length))?.[0].length ?? 0);
    const amount = amountsAt(text.slice(start)).find((one) => mayBe(one, quantity));
    if (amount !== undefined) return { length: start + amount.text.length, amount };
  }
  if (after === undefined) return undefined;
  for (const amount of amountsAt(text)) {
    if (!mayBe(amount, quantity)) continue;
    const link = /^\s*(?:of )?/i.exec(text.slice(amount.text.length))?.[0].length ?? 0;
    const behind = after.exec(text.slice(amount.text.length + link))?.[0];
    if (behind !== undefined) return { length: amount.text.length + link + behind.length, amount };
  }
  return undefined;
}

const AT = /^(?:at|@)\s+/i;

/** A figure of one box by the words beside it. */
export function fieldPart(text: string): ReadPart | undefined {
  if (/^(?:at )?sea level\b/i.test(text)) {
    const length = /^(?:at )?sea level/i.exec(text)?.[0].length as number;
    return { length, said: { what: "field", key: "altitude", text: "0" } };
  }
  const link = AT.exec(text)?.[0].length ?? 0;
  for (const { key, ...phrase } of FIELD_PHRASES) {
    const found = figureBeside(text.slice(link), phrase);
    if (found === undefined) continue;
    return { length: link + found.length, said: { what: "field", key, text: found.amount.text } };
  }
  return undefined;
}

/** A height or a level by the words beside it. */
export function heightPart(text: string): ReadPart | undefined {
  for (const { kind, ...phrase } of HEIGHT_PHRASES) {
    const found = figureBeside(text, { ...phrase, quantity: "elevation" });
    if (found !== undefined) return { length: found.length, said: { what: "height", kind, amount: found.amount } };
  }
  return undefined;
}

/** A figure whose words leave open what it is of. */
export function openPart(text: string): ReadPart | undefined {
  for (const { remark, instead, ...phrase } of OPEN_PHRASES) {
    const found = figureBeside(text, phrase);
    if (found !== undefined) {
      return { length: found.length, said: { what: "refused", remark, instead: instead(found.amount.text) } };
    }
  }
  return undefined;
}

const FLOW_WORDS = /^(?:flow(?: rate)?|rate|pump(?:ing|s)?|capacity|duty)\b/i;
const EACH = /^,? *(?:each|per pump|a pump|apiece)\b/i;
const ALL = /^,? *(?:in total|total|in all|together|altogether|combined)\b/i;

/** "1000 gpm", "flow 1000", "1,500 gpm each". */
export function flowPart(text: string): ReadPart | undefined {
  const words = FLOW_WORDS.exec(text)?.[0] ?? "";
  const start = words === "" ? 0 : words.length + (LINKING.exec(text.slice(words.length))?.[0].length ?? 0);
  const mayBeBare = /^(?:flow|rate)/i.test(words);
  const amount = amountsAt(text.slice(start)).find((one) =>
    one.unit === undefined ? mayBeBare : one.unit.dimension === "volumeFlow",
  );
  if (amount === undefined) return undefined;
  const end = start + amount.text.length;
  const each = EACH.exec(text.slice(end))?.[0];
  const all = ALL.exec(text.slice(end))?.[0];
  const of = each !== undefined ? "each" : all !== undefined ? "all" : undefined;
  return { length: end + (each ?? all ?? "").length, said: { what: "flow", amount, of } };
}

const PUMPS = new RegExp(
  `^(${COUNT})(?: (?:duty|running|equal|identical|similar))? pumps?(?: running)?(?:,? (?:in |standing in )?(parallel|series))?(?!\\w)`,
  "i",
);
const STANDBY = new RegExp(`^(${COUNT})(?: on)? ?-?(?:stand-?by|spare)(?: pumps?)?(?!\\w)`, "i");
const DUTY = new RegExp(`^(${COUNT}) duty(?! pump)(?!\\w)`, "i");

/** "two pumps in series", "1 standby", "2 duty". */
export function pumpsPart(text: string): ReadPart | undefined {
  const standby = STANDBY.exec(text);
  if (standby !== null) {
    return {
      length: standby[0].length,
      said: { what: "field", key: "pumpsStandby", text: String(countIn(standby[1] as string)) },
    };
  }
  const pumps = PUMPS.exec(text) ?? DUTY.exec(text);
  if (pumps === null) return undefined;
  const arrangement = pumps[2]?.toLowerCase() as "series" | "parallel" | undefined;
  return { length: pumps[0].length, said: { what: "pumps", count: countIn(pumps[1] as string), arrangement } };
}

/** Figures that their unit alone tells. */
export function bareAmountPart(text: string): ReadPart | undefined {
  const link = /^(?:at|@) */i.exec(text)?.[0].length ?? 0;
  const words = /^(?:liquid |water )?temp(?:erature)?\.?(?: of| is|:)? */i.exec(text)?.[0].length ?? 0;
  const start = Math.max(link, words);
  const [amount] = amountsAt(text.slice(start));
  if (amount === undefined) return undefined;
  const length = start + amount.text.length;
  const of = (said: Said): ReadPart => ({ length, said });
  const { unit } = amount;
  if (unit?.dimension === "temperature" || (words > 0 && unit === undefined)) {
    return of({ what: "field", key: "temperature" satisfies FieldKey, text: amount.text });
  }
  const { text: said } = amount;
  switch (unit?.dimension) {
    case "length":
      return of({ what: "length", length: amount });
    case "pressure":
      return of(open("at which end of the line?", [`${said} at delivery`, `${said} at source`]));
    case "ratio":
      return of(open("percent of what? Say solids, fines or margin", []));
    default:
      return undefined;
  }
}

function open(remark: string, instead: readonly string[]): Said {
  return { what: "refused", remark, instead };
}
