import { escaped, type Page, table } from "../html.ts";
import { inline } from "../links.ts";
import { USER_TERMS } from "./user-terms.ts";

interface Term {
  readonly names: string;
  readonly symbol: string;
  readonly meaning: string;
}

/** The words of the trade as Dutybook uses them: those of docs/terms.md and those a user asks for. */
export function termsPage(document: string): Page {
  const known = new Set(USER_TERMS.map(({ names }) => names.toLowerCase()));
  const more = termsIn(document).filter(({ names }) => !known.has(names.toLowerCase()));
  const all = [...USER_TERMS, ...more].toSorted((one, other) => one.names.localeCompare(other.names, "en"));
  const rows = all.map(({ names, symbol, meaning }) => [escaped(names), escaped(symbol), inline(meaning)]);
  return {
    file: "terms.html",
    kind: "reference",
    title: "Terms",
    summary: "The words of the trade as Dutybook uses them, with their symbols.",
    words: ["glossary", "definition", "abbreviation", "symbol"],
    main: `<p>Terms and symbols follow ISO 17769-1 and the trade. Heads are of the liquid pumped; pressures are gauge unless they say absolute.</p>\n${table("Terms", ["Term", "Symbol", "What it is"], rows)}`,
  };
}

/** The rows of the table in docs/terms.md: term, symbol, name in code, engine unit, what it is. */
export function termsIn(document: string): readonly Term[] {
  return document
    .split("\n")
    .filter((line) => line.startsWith("|"))
    .slice(2)
    .map((line) => line.split("|").map((cell) => cell.trim()))
    .map(([, names = "", symbol = "", , , meaning = ""]) => ({ names, symbol: symbol === "–" ? "" : symbol, meaning }));
}
