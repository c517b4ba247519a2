import { quotedSheetName } from "../shared/ports/sheet-name.ts";

/**
 * Changes to formula texts that the grid needs and a user does not see: it knows no sheet-scoped names and no spill
 * mark (A1#). Text in quotes and calls stay as they are.
 */
export interface FormulaChanges {
  /** Name, lower case, to the range it stands for. */
  readonly names?: ReadonlyMap<string, string>;
  /** Lower-case sheet name to the names of that sheet, for those with a sheet before them. */
  readonly namesOn?: ReadonlyMap<string, ReadonlyMap<string, string>>;
  /** Upper-case address of a spilling formula to the range it fills. */
  readonly spills?: ReadonlyMap<string, string>;
  /** Lower-case sheet name to the name the sheet got. */
  readonly sheets?: ReadonlyMap<string, string>;
}

const QUOTED = '"(?:[^"]|"")*"';
const WORD = String.raw`[\p{L}_\\][\p{L}\p{N}_.]*`;
const SHEET = `(?<sheet>'(?:[^']|'')+'|${WORD})!`;
const CELL = String.raw`(?<cell>\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6})(?<mark>#)?(?![\p{L}\p{N}_.(])`;
const TOKEN = new RegExp(
  `(?<text>${QUOTED})|(?:${SHEET})?(?:${CELL}|(?<word>${WORD})(?<call>\\()?)|${SHEET.replace("sheet", "lone")}`,
  "gu",
);

export function changedFormula(formula: string, { names, namesOn, spills, sheets }: FormulaChanges): string {
  return formula.replace(TOKEN, (whole, ...rest) => {
    const { text, sheet, lone, cell, mark, word, call } = rest.at(-1) as Record<string, string | undefined>;
    if (text !== undefined) return whole;
    const given = sheet ?? lone;
    const renamed = given === undefined ? undefined : sheets?.get(bareSheetName(given).toLowerCase());
    const prefix = given === undefined ? "" : `${renamed === undefined ? given : quotedSheetName(renamed)}!`;
    if (cell !== undefined) {
      const spill = mark === undefined ? undefined : spills?.get(cell.replaceAll("$", "").toUpperCase());
      return `${prefix}${spill ?? `${cell}${mark ?? ""}`}`;
    }
    if (word === undefined) return prefix;
    if (call !== undefined) return `${prefix}${word}(`;
    const known = given === undefined ? names : namesOn?.get(bareSheetName(given).toLowerCase());
    return `${prefix}${known?.get(word.toLowerCase()) ?? word}`;
  });
}

/** Ranges and cells of a formula, whole and with their dollar signs. */
const ABSOLUTE = String.raw`\$[A-Za-z]{1,3}\$[1-9]\d{0,6}`;
const PLACED = new RegExp(
  `(?<text>${QUOTED})|(?:${SHEET})?(?<![\\p{L}\\p{N}_.$:])(?<range>${ABSOLUTE}(?::${ABSOLUTE})?)(?![\\p{L}\\p{N}_.(:#])`,
  "gu",
);

/**
 * The way back: an absolute range that has a name is written by it.
 *
 * @param namesOn lower-case sheet name to the names of that sheet, each by its absolute range
 * @param own lower-case name of the sheet the formula stands on
 */
export function namedFormula(
  formula: string,
  namesOn: ReadonlyMap<string, ReadonlyMap<string, string>>,
  own: string,
): string {
  return formula.replace(PLACED, (whole, ...rest) => {
    const { text, sheet, range = "" } = rest.at(-1) as Record<string, string | undefined>;
    if (text !== undefined) return whole;
    const on = sheet === undefined ? own : bareSheetName(sheet).toLowerCase();
    const name = namesOn.get(on)?.get(range.toUpperCase());
    return name === undefined ? whole : `${sheet === undefined ? "" : `${sheet}!`}${name}`;
  });
}

/** "'It''s mine'" as "It's mine". */
export function bareSheetName(written: string): string {
  return written.startsWith("'") ? written.slice(1, -1).replaceAll("''", "'") : written;
}
