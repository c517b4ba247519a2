import Papa from "papaparse";
import { type Result, succeed } from "../../../src/basis/result.ts";
import { columnsNamed } from "../../tables/heading.ts";
import { CURVE_COLUMNS, PUMP_COLUMNS } from "../columns.ts";
import { unreadable } from "./file-text.ts";
import { MOST_CELLS } from "./table-size.ts";

/** Tried in this order: a comma may be a decimal sign beside any of the others. */
const DELIMITERS = [";", "\t", ",", "|"] as const;
const LINES_TRIED = 40;

/**
 * The rows of a CSV text, every cell a text. A first line such as "sep=;" states the delimiter and is no row;
 * otherwise it is the one by which a row names most columns of a pump table.
 */
export function csvRows(text: string, name: string): Result<readonly (readonly string[])[]> {
  const stated = /^"?sep=(.)"?[^\S\r\n]*(?:\r\n|\r|\n|$)/i.exec(text);
  const body = stated === null ? text : text.slice(stated[0].length);
  // Before anything is cut up: a file of nothing but commas has a cell for each.
  const signs = [...DELIMITERS, ...(stated?.[1] === undefined ? [] : [stated[1]])];
  if (signs.some((sign) => countOf(sign, body) > MOST_CELLS))
    return unreadable(name, `it has more than ${MOST_CELLS} cells, the most that are read`);
  const { data, errors } = Papa.parse<string[]>(body, { delimiter: stated?.[1] ?? delimiterOf(body) });
  const quotes = errors.find(({ type }) => type === "Quotes");
  if (quotes !== undefined) return unreadable(name, `a quotation mark does not close in row ${(quotes.row ?? 0) + 1}`);
  return succeed(data);
}

function delimiterOf(body: string): string {
  const named = DELIMITERS.map((delimiter) => {
    const { data } = Papa.parse<string[]>(body, { delimiter, preview: LINES_TRIED });
    return { delimiter, count: Math.max(columnsNamed(data, CURVE_COLUMNS), columnsNamed(data, PUMP_COLUMNS)) };
  });
  return named.reduce((best, one) => (one.count > best.count ? one : best)).delimiter;
}

function countOf(sign: string, text: string): number {
  let count = 0;
  for (let at = text.indexOf(sign); at >= 0; at = text.indexOf(sign, at + 1)) count += 1;
  return count;
}
