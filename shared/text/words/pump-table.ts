import type { PumpTableFindings } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

function pumpsNamed(named: string | undefined, more: number): string {
  return `“${named}”${more === 0 ? "" : ` and ${more} more`}`;
}

export const pumpTableWords: WordsOf<keyof PumpTableFindings> = {
  "table-no-rows": (f, say) => `${f.subject} has no filled rows; give rows of ${say.suggestions()}`,
  "table-heading-missing": (f, say) =>
    `${f.subject} has no heading that names its columns; head them, such as ${say.suggestions()}`,
  "table-column-missing": (f, say) =>
    `${f.subject} has no column “${f.given}”; head one of its columns ${say.suggestions()}`,
  "table-column-repeated": (f) => `${f.subject} is named by more than one heading: “${f.given}”; keep one`,
  "table-column-unread": (f, say) => {
    const others = f.suggestions?.length ? `; other headings it knows are ${say.suggestions()}` : "";
    return `${f.subject} is not read where it is headed “${f.given}”${others}`;
  },
  "table-row-above-heading": (f) => `${f.subject} stands above the heading and is not read`,
  "table-units-disagree": (f) =>
    `${f.subject} gives the unit “${f.given}” but the heading above it says ${f.facts.heading}`,
  "table-curve-repeated": (f) =>
    `${f.subject} begins the same curve of “${f.given}” again, first seen in row ${f.facts.first}; keep the rows of a curve together, or name the other pump apart`,
  "table-pump-repeated": (f) =>
    `${f.subject} lists “${f.given}” again, first seen in row ${f.facts.first}; one row a pump`,
  "table-flow-not-ascending": (f, say) =>
    `${f.subject} is ${say.amount(f.found)} after ${say.amount(f.limit)}; the flows of a curve must rise from row to row`,
  "table-curve-too-short": (f) =>
    `${f.subject}: the curve of “${f.given}” has ${f.facts.points} ${f.facts.points === 1 ? "point" : "points"}; it takes ${f.facts.least} or more`,
  "table-column-too-short": (f) =>
    `${f.subject}: the curve of “${f.given}” gives ${f.facts.column} at ${f.facts.points} of its points; give it at ${f.facts.least} or more, or nowhere`,
  "table-head-does-not-fall": (f, say) =>
    `${f.subject}: the head of “${f.given}” goes from ${say.amount(f.facts.first)} to ${say.amount(f.facts.last)} as the flow rises, and a centrifugal pump's head falls; check that flow and head are not exchanged`,
  "table-head-rises": (f, say) =>
    `${f.subject}: the head of “${f.given}” rises from ${say.amount(f.facts.first)} to ${say.amount(f.found)} before it falls; check the figures`,
  "table-efficiency-unclear": (f) =>
    `${f.subject} is ${f.given}, the largest of its column, and could be a fraction or percent; write efficiencies as 0.78 or as 78`,
  "table-efficiency-mixed": (f) =>
    `${f.subject}: “${f.given}” is ${f.facts.best} % efficient at its best, as the column is in percent; write its efficiencies as 78, not 0.78`,
  "pump-named-twice": (f) => `“${f.given}” is the name of another pump of the station; give each its own`,
  "case-name-long": (f) =>
    `the name of a case has at most ${f.facts.most} letters; this one has ${f.facts.letters}, and the case goes by ${f.subject}`,
  "case-named-twice": (f) => `“${f.given}” is the name of another case; by its place it is called ${f.subject}`,
  "pump-stated-twice": (f) =>
    `${f.subject} differs from another row of “${f.given}”; a pump has one: give two pumps two names`,
  "table-limit-differs": (f, say) =>
    `${f.subject} says ${say.amount(f.found)} where another row of “${f.given}” says ${say.amount(f.facts.first)}; a pump has one`,
  "table-limits-contradict": (f) =>
    `${f.subject}: the ${f.facts.least} of “${f.given}” is more than its ${f.facts.greatest}`,
  "table-pump-not-listed": (f) => `${f.subject} has no row for “${f.given}”, which has curves in ${f.facts.other}`,
  "table-pump-without-curves": (f) => `${f.subject} lists “${f.given}”, which has no curve in ${f.facts.other}`,
  "table-decimal-signs-mixed": (f) =>
    `${f.subject} holds “${f.given}”, with another decimal sign than “${f.facts.other}” in the same column; use one`,
  "table-decimal-comma-read": (f) => `the comma was read as the decimal sign throughout ${f.subject}`,
  "table-unit-assumed": (f) => `${f.subject} states no unit for some columns; they were read as ${f.facts.columns}`,
  "table-findings-left-out": (f) => `${f.subject}: ${f.facts.count} more findings are not shown`,
  "table-second-of-its-kind": (f) =>
    `${f.subject} is a second table of the same kind as ${f.facts.other}; import them one after the other`,
  "table-pumps-again": (f) =>
    `${f.subject} has ${pumpsNamed(f.given, f.facts.more)} again, with the figures of ${f.facts.other}: ranked once`,
  "table-pumps-differ": (f) =>
    `${f.subject} has ${pumpsNamed(f.given, f.facts.more)} with other figures than ${f.facts.other}: both are ranked, that of ${f.subject} with its sheet behind its name`,
  "table-lists-differ": (f) =>
    `${f.subject} states other limits of ${pumpsNamed(f.given, f.facts.more)} than ${f.facts.other}: the narrower count`,
  "rank-filling-not-judged": (f) =>
    `the last row of the ${f.subject} states no level, so the height of the others over the source is not known: whether the pumps fill the line over its summit is not judged`,
  "rank-npsh-not-judged": (f) =>
    `NPSH is not judged: ${f.facts.why}, so compare the NPSHR of each pump with NPSHA at its flow`,
  "rank-liquid-viscous": (f, say) =>
    `the liquid has a viscosity of ${say.amount(f.found)}: curves of water are corrected for it where that changes them`,
  "rank-none-meets": (f) => `no pump of the ${f.subject} meets the duty`,
  "file-not-a-table": (f) =>
    `${f.subject} holds no table of pumps; one row must name its columns, among them pump, flow and head`,
  "file-unreadable": (f) => `${f.subject} cannot be read: ${f.facts.reason}`,
};
