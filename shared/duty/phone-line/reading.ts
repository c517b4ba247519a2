import type { Quantity, UnitSetName } from "../../../src/basis/quantities.ts";
import type { Finding, Result } from "../../../src/basis/result.ts";
import { amount } from "../../../src/basis/result.ts";
import { findingText } from "../../text/finding-text.ts";
import { spelt, speltAround } from "../../text/spelling.ts";
import { amountText } from "../../text/words.ts";
import { FIELDS, type FieldKey } from "../fields.ts";
import { overSurface } from "../surface-pressure.ts";
import type { FilledBox } from "./phone-line.ts";

/** What becomes of a part: boxes that it fills, or why it fills none. */
export type Outcome =
  | { readonly boxes: readonly FilledBox[]; readonly remarks: readonly string[] }
  | { readonly refused: string; readonly instead: readonly string[] };

/** A refusal in words, with those of its suggestions that would do. */
export function refusedBy(
  findings: readonly Finding[],
  unitSet: UnitSetName,
  wouldDo: (text: string) => boolean,
): Extract<Outcome, { readonly refused: string }> {
  const errors = findings.filter(({ kind }) => kind === "error");
  return {
    refused: errors.map((finding) => findingText(finding, unitSet)).join(" "),
    instead: errors
      .flatMap(({ suggestions = [] }) => suggestions.map((one) => spelt(unquoted(one), unitSet)))
      .filter(wouldDo),
  };
}

function unquoted(suggestion: string): string {
  return /^[“"](.*)[”"]$/.exec(suggestion)?.[1] ?? suggestion;
}

export function remarksOf(findings: readonly Finding[], unitSet: UnitSetName): readonly string[] {
  return findings.map((finding) => findingText(finding, unitSet));
}

/** A text said of a field, read as its box reads it. */
export function fieldOutcome(key: FieldKey, text: string, unitSet: UnitSetName, said: string): Outcome {
  const field = FIELDS[key];
  const readAs = (typed: string): Result<unknown> =>
    overSurface(key, typed, unitSet, undefined) ?? field.read(typed, unitSet, field.label);
  const read = readAs(text);
  if (!read.ok) {
    const { refused, instead } = refusedBy(read.findings, unitSet, (other) => readAs(other).ok);
    return { refused, instead: said.includes(text) ? instead.map((other) => said.replace(text, other)) : [] };
  }
  const shown = valueText(read.value, field.quantity, unitSet, text);
  const box = { label: spelt(field.label, unitSet), text, value: speltAround(shown, () => [text], unitSet) };
  return { boxes: [box], remarks: remarksOf(read.findings, unitSet) };
}

export function valueText(value: unknown, quantity: Quantity | undefined, unitSet: UnitSetName, text: string): string {
  if (typeof value === "number" && quantity !== undefined) return amountText(amount(quantity, value), unitSet);
  if (typeof value === "object" && value !== null && "name" in value) return String(value.name);
  return typeof value === "string" ? value : text;
}
