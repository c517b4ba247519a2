import { all, andThen, type Result, succeed } from "../../../src/basis/result.ts";
import type { CountedFitting, Fitting } from "../../../src/pipework/fitting.ts";
import { fittingNamed, fittingsNamed, wholeCount } from "../../../src/pipework/fitting-name.ts";
import { withoutHeader } from "../../../src/pipework/flow-share.ts";
import { type Cell, isAbsent } from "../../cells/cell.ts";
import { wrongKind } from "../../cells/refused-cell.ts";
import { type RangeParameter, type Reading, type SingleParameter, text } from "../parameter.ts";

const EXAMPLE = '"2 elbow 90 long, 1 gate, 1 swing check, 1 exit"';

/** One fitting by its name. */
export const fitting: SingleParameter<Fitting> = text(
  { about: "Name of a fitting as FITTINGS lists it, or a figure such as K 3.2 or Cv 1000", example: '"elbow 90 long"' },
  oneFitting,
);

function oneFitting(given: string, name: string): Result<Fitting> {
  const one = fittingNamed(given, name);
  if (one.ok || !/\d/.test(given)) return one;
  const counted = fittingsNamed(given, name);
  const [first] = counted.ok && counted.value.length === 1 ? counted.value : [];
  if (first === undefined) return one;
  return wrongKind(name, given, `one fitting without a number, such as “${first.fitting.name}”`);
}

/** Fittings with counts: one text, or two columns of fitting and count. */
export const fittings: RangeParameter<readonly CountedFitting[]> = {
  takes: "range",
  about: "Fittings with counts as one text, or a range of two columns, fitting and count",
  example: EXAMPLE,
  read: (cells, reading) =>
    andThen(all(cells.map((row, i) => fittingsOfRow(row, i, cells.length, reading))), (rows) => succeed(rows.flat())),
};

/** The fittings of a row: a text with counts in it, or one fitting with its count beside it. Blank rows have none. */
function fittingsOfRow(
  row: readonly Cell[],
  index: number,
  rows: number,
  { name }: Reading,
): Result<readonly CountedFitting[]> {
  const subject = rows === 1 ? name : `${name} row ${index + 1}`;
  const [first = null, second = null, ...rest] = row;
  const extra = rest.find((cell) => !isAbsent(cell));
  if (extra !== undefined) return wrongKind(subject, extra, "two columns, fitting and count");
  if (isAbsent(first)) {
    return isAbsent(second) || second === 0 ? succeed([]) : wrongKind(subject, second, "the fitting beside its count");
  }
  if (typeof first !== "string") return wrongKind(subject, first, `a text such as ${EXAMPLE}`);
  if (index === 0 && /^fittings?\b/i.test(first.trim()) && isHeading(second)) return succeed([]);
  if (isAbsent(second)) return fittingsBesideHeader(first, subject);
  if (typeof second !== "number" && typeof second !== "string") return wrongKind(subject, second, "a whole number");
  if (Number.isNaN(Number(second))) return wrongKind(`count in ${subject}`, second, "a whole number");
  return andThen(wholeCount(Number(second), `count in ${subject}`), (count) =>
    andThen(fittingNamed(first, subject), (one) => succeed([{ fitting: one, count }])),
  );
}

/** The fittings a text names; “header” says of its row that it is a piece of header, and is none of them. */
function fittingsBesideHeader(given: string, subject: string): Result<readonly CountedFitting[]> {
  const { text: named, isHeader } = withoutHeader(given);
  return isHeader && named === "" ? succeed([]) : fittingsNamed(named, subject);
}

function isHeading(cell: Cell): boolean {
  return isAbsent(cell) || (typeof cell === "string" && !/\d/.test(cell));
}
