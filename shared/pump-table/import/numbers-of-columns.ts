import type { Finding } from "../../../src/basis/result.ts";
import { type DecimalSign, readWrittenNumber } from "../../../src/basis/written-number.ts";
import type { Cell } from "../../cells/cell.ts";
import type { Columns } from "../../tables/column.ts";
import type { Heading } from "../../tables/heading.ts";
import { cellPlace, type TablePlace } from "../../tables/place.ts";

interface Written {
  readonly row: number;
  readonly text: string;
  readonly sign: DecimalSign | undefined;
  /** By either decimal sign; the same twice where only one reading is possible. */
  readonly values: Readonly<Record<DecimalSign, number>>;
  readonly isAmbiguous: boolean;
}

interface ReadColumn {
  readonly column: number;
  readonly name: string;
  readonly written: readonly Written[];
  readonly signs: ReadonlySet<DecimalSign>;
}

/**
 * The same rows with the figures of number columns as numbers. A figure that can be read in two ways goes by the
 * decimal sign of its column; in a column that gives none away, by that of the file, if its other columns agree;
 * otherwise it is refused. So is a column that mixes decimal signs. Texts stay as they are.
 */
export function withNumbers<K extends string>(
  rows: readonly (readonly Cell[])[],
  { at, firstRow }: Heading<K>,
  columns: Columns<K>,
  place: TablePlace,
): { readonly rows: readonly (readonly Cell[])[]; readonly findings: readonly Finding[] } {
  const read = (Object.entries(at) as [K, number][])
    .filter(([key]) => columns[key].quantity !== undefined)
    .map(([key, column]) => readColumn(rows, firstRow, column, columns[key].name));
  const ofFile = new Set(read.flatMap(({ signs }) => [...signs]));
  const findings: Finding[] = [];
  const figures = new Map<number, Map<number, number>>();
  const byComma: string[] = [];
  for (const { column, name, written, signs } of read) {
    const place_ = (row: number): string => cellPlace(place, row, column, name);
    if (signs.size > 1) findings.push(mixedSigns(written, place_));
    const sign = only(signs) ?? (signs.size === 0 ? only(ofFile) : undefined);
    const values = new Map<number, number>();
    for (const { row, text, isAmbiguous, values: both } of written) {
      if (!isAmbiguous) values.set(row, both["."]);
      else if (sign !== undefined) values.set(row, both[sign]);
      else if (signs.size === 0) findings.push(ambiguous(place_(row), text, both));
    }
    if (sign === "," && written.some(({ sign: own, isAmbiguous }) => own === "," || isAmbiguous)) byComma.push(name);
    figures.set(column, values);
  }
  if (byComma.length > 0) {
    const subject = `${place.name} (${byComma.join(", ")})`;
    findings.push({ code: "table-decimal-comma-read", kind: "check", subject });
  }
  const converted = rows.map((row, i) => {
    if (i < firstRow) return row;
    return row.map((cell, column) => figures.get(column)?.get(i) ?? cell);
  });
  return { rows: converted, findings };
}

function readColumn(rows: readonly (readonly Cell[])[], firstRow: number, column: number, name: string): ReadColumn {
  const written: Written[] = [];
  const signs = new Set<DecimalSign>();
  for (let row = firstRow; row < rows.length; row += 1) {
    const text = rows[row]?.[column];
    if (typeof text !== "string") continue;
    const number = readWrittenNumber(text);
    if (number.kind === "text") continue;
    if (number.kind === "ambiguous") {
      written.push({ row, text, sign: undefined, values: number.values, isAmbiguous: true });
      continue;
    }
    const { value, sign } = number;
    if (sign !== undefined) signs.add(sign);
    written.push({ row, text, sign, values: { ".": value, ",": value }, isAmbiguous: false });
  }
  return { column, name, written, signs };
}

function only<T>(values: ReadonlySet<T>): T | undefined {
  return values.size === 1 ? [...values][0] : undefined;
}

/** Names the first figure whose sign is the rarer one of its column. */
function mixedSigns(written: readonly Written[], placeOf: (row: number) => string): Finding {
  const first = (sign: DecimalSign): Written => written.find((one) => one.sign === sign) as Written;
  const count = (sign: DecimalSign): number => written.filter((one) => one.sign === sign).length;
  const [rare, usual] = count(",") < count(".") ? ([",", "."] as const) : ([".", ","] as const);
  return {
    code: "table-decimal-signs-mixed",
    kind: "error",
    subject: placeOf(first(rare).row),
    given: first(rare).text.trim(),
    facts: { other: first(usual).text.trim() },
  };
}

function ambiguous(subject: string, given: string, values: Readonly<Record<DecimalSign, number>>): Finding {
  const suggestions = [values[","], values["."]].map(String);
  return { code: "number-ambiguous", kind: "error", subject, given: given.trim(), suggestions };
}
