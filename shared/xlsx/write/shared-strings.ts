import { cellText, DECLARATION } from "../xml-text.ts";
import { MAIN } from "./schemas.ts";

/** The texts of a workbook, each once; cells hold their numbers. */
export interface SharedStrings {
  readonly numberOf: (text: string) => number;
  readonly part: () => string;
}

const LONGEST = 32_767;

export function sharedStrings(): SharedStrings {
  const numbers = new Map<string, number>();
  let uses = 0;
  return {
    numberOf: (text) => {
      if (text.length > LONGEST)
        throw new Error(`a cell holds at most ${LONGEST} characters, this text has ${text.length}`);
      uses += 1;
      const known = numbers.get(text);
      if (known !== undefined) return known;
      numbers.set(text, numbers.size);
      return numbers.size - 1;
    },
    part: () =>
      `${DECLARATION}<sst xmlns="${MAIN}" count="${uses}" uniqueCount="${numbers.size}">${[...numbers.keys()]
        .map((text) => `<si><t${/^\s|\s$|\n/.test(text) ? ' xml:space="preserve"' : ""}>${cellText(text)}</t></si>`)
        .join("")}</sst>`,
  };
}
