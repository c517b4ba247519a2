export type DecimalSign = "." | ",";

/** A number as a file has it: read, readable in two ways, or no number. */
export type WrittenNumber =
  | { readonly kind: "number"; readonly value: number; readonly sign?: DecimalSign }
  /** "1.234": what it is worth by either decimal sign. */
  | { readonly kind: "ambiguous"; readonly values: Readonly<Record<DecimalSign, number>> }
  | { readonly kind: "text" };

const TEXT: WrittenNumber = { kind: "text" };
const OTHER: Readonly<Record<DecimalSign, DecimalSign>> = { ".": ",", ",": "." };

/**
 * Reads a number written by anybody's habit: decimal point or comma, thousands parted by the other sign, by a space
 * or by an apostrophe. `sign` is the decimal sign it gives away. One sign before exactly three digits gives nothing
 * away ("1.234" is 1.234 or 1234) and is told as ambiguous, save after a lone zero ("0.125").
 */
export function readWrittenNumber(text: string): WrittenNumber {
  const match = /^([+-]?)([\d.,'’ \u00a0\u2009\u202f]*\d[.,]?)((?:[eE][+-]?\d{1,3})?)$/.exec(
    text.trim().replace(/^[−–]/, "-"),
  );
  if (match === null) return TEXT;
  const [, minus = "", written = "", exponent = ""] = match;
  const body = withoutSpaces(written);
  if (body === undefined) return TEXT;
  const numberOf = (digits: string): number => Number(`${minus}${digits}${exponent}`);
  const points = body.split(".").length - 1;
  const commas = body.split(",").length - 1;
  if (points === 0 && commas === 0) return { kind: "number", value: numberOf(body) };
  if (points > 0 && commas > 0) return bothSigns(body, numberOf);
  const sign: DecimalSign = points > 0 ? "." : ",";
  if (points + commas > 1) {
    // A decimal sign stands once, so this one parts thousands.
    if (!isGrouped(body, sign)) return TEXT;
    return { kind: "number", value: numberOf(body.replaceAll(sign, "")), sign: OTHER[sign] };
  }
  const asDecimal = numberOf(body.replace(sign, "."));
  if (!/^[1-9]\d{0,2}[.,]\d{3}$/.test(body) || exponent !== "" || written !== body) {
    return { kind: "number", value: asDecimal, sign };
  }
  const asWhole = numberOf(body.replace(sign, ""));
  return {
    kind: "ambiguous",
    values: sign === "." ? { ".": asDecimal, ",": asWhole } : { ",": asDecimal, ".": asWhole },
  };
}

/** "1.234,5" and "1,234.5": the last sign is the decimal one and stands once. */
function bothSigns(body: string, numberOf: (digits: string) => number): WrittenNumber {
  const sign: DecimalSign = body.lastIndexOf(",") > body.lastIndexOf(".") ? "," : ".";
  const [whole = "", part = "", ...more] = body.split(sign);
  if (more.length > 0 || !isGrouped(whole, OTHER[sign])) return TEXT;
  return { kind: "number", value: numberOf(`${whole.replaceAll(OTHER[sign], "")}.${part}`), sign };
}

function isGrouped(body: string, sign: DecimalSign): boolean {
  const [first = "", ...rest] = body.split(sign);
  return /^\d{1,3}$/.test(first) && rest.every((group) => /^\d{3}$/.test(group));
}

/** Takes out spaces and apostrophes where they part thousands; nothing where they stand elsewhere. */
function withoutSpaces(body: string): string | undefined {
  if (/^[\d.,]*$/.test(body)) return body;
  const match = /^(\d{1,3}(?:(['’ \u00a0\u2009\u202f])\d{3})(?:\2\d{3})*)([.,]\d*)?$/.exec(body);
  if (match === null) return undefined;
  return body.replace(/['’ \u00a0\u2009\u202f]/g, "");
}
