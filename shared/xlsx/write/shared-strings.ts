import { LIMITS } from "../../ports/check/limits.ts";
import { cellText, DECLARATION } from "../xml-text.ts";
import type { CellTexts } from "./cell-elements.ts";
import { MAIN } from "./schemas.ts";

/** The texts of a workbook, each once; cells hold their numbers. */
export interface SharedStrings {
  readonly texts: CellTexts;
  readonly part: () => string;
}

const LONGEST = LIMITS.cellText;

export function sharedStrings(): SharedStrings {
  const numbers = new Map<string, number>();
  let uses = 0;
  const numberOf = (text: string): number => {
    uses += 1;
    const known = numbers.get(text);
    if (known !== undefined) return known;
    numbers.set(text, numbers.size);
    return numbers.size - 1;
  };
  return {
    texts: (text) => ({ type: "s", content: `<v>${numberOf(text)}</v>` }),
    part: () =>
      `${DECLARATION}<sst xmlns="${MAIN}" count="${uses}" uniqueCount="${numbers.size}">${[...numbers.keys()]
        .map((text) => `<si>${textElement(text)}</si>`)
        .join("")}</sst>`,
  };
}

/** Each text in its own cell, so that the list of texts of a file stays as it is. It may be one just typed there. */
export const inlineTexts: CellTexts = (text) => ({
  type: "inlineStr",
  content: `<is>${textElement(checked(text))}</is>`,
});

function textElement(text: string): string {
  return `<t${/^\s|\s$|\n/.test(text) ? ' xml:space="preserve"' : ""}>${cellText(text)}</t>`;
}

function checked(text: string): string {
  if (text.length > LONGEST)
    throw new Error(`a cell holds at most ${LONGEST} characters, this text has ${text.length}`);
  return text;
}
