/**
 * A text constant as it must be handed to Excel to stay a text. Excel reads texts as if they were typed: "=A1" would
 * become a formula, "1/2" a date, "007" a number, "true" a truth value. The apostrophe is Excel's own mark for text and
 * is not part of the value. A number format of "@" would do it too, but would turn a number that a user types there
 * later into text.
 */
export function textForExcel(text: string): string {
  const staysText = /^\p{L}[^\d]*$/u.test(text) && !/^(true|false)$/i.test(text.trim());
  return staysText ? text : `'${text}`;
}
