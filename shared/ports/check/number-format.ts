import { LIMITS } from "./limits.ts";

/** At most four: of positive and negative numbers, nought, texts. */
const MOST_SECTIONS = 4;

/** The codes of ISO/IEC 29500-1, 18.8.31: letters but those of dates stand in quotes or behind a backslash. */
const TOKEN =
  /^(?:"[^"]*"|\\.|_.|\*.|\[[^\]]*\]|General|AM\/PM|A\/P|E[-+]|[dmyhsbeg]+|[0#?.,%/@]|[-+()$:!^&'~{}<>= ]|[^\p{ASCII}])/iu;

/** Whether Excel takes it as a number format. */
export function isNumberFormat(code: string): boolean {
  if (code === "" || code.length > LIMITS.numberFormat) return false;
  let sections = 1;
  for (let rest = code; rest !== ""; ) {
    const token = rest.startsWith(";") ? ";" : TOKEN.exec(rest)?.[0];
    if (token === undefined) return false;
    if (token === ";") sections += 1;
    rest = rest.slice(token.length);
  }
  return sections <= MOST_SECTIONS;
}
