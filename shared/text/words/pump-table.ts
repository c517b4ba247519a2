import type { PumpTableCode } from "../../../src/basis/finding-code.ts";
import type { Words } from "../words.ts";

export const pumpTableWords: Readonly<Record<PumpTableCode, Words>> = {
  "table-no-rows": (f) => `${f.subject} has no rows of figures`,
  "table-heading-missing": (f, say) =>
    `${f.subject} has no heading that names its columns; head them, such as ${say.suggestions()}`,
  "table-column-missing": (f, say) =>
    `${f.subject} has no column “${f.given}”; head one of its columns ${say.suggestions()}`,
  "table-column-repeated": (f, say) =>
    `${f.subject} heads a second column of the same kind as ${say.fact("other")}; rename one of them`,
  "table-units-disagree": (f, say) =>
    `${f.subject} gives the unit “${f.given}” but the heading above it says ${say.fact("heading")}`,
  "table-curve-repeated": (f, say) =>
    `${f.subject} begins the same curve of “${f.given}” again, first seen in row ${say.fact("first")}; keep the rows of a curve together, or name the other pump apart`,
  "table-pump-repeated": (f, say) =>
    `${f.subject} lists “${f.given}” again, first seen in row ${say.fact("first")}; one row a pump`,
  "table-flow-not-ascending": (f, say) =>
    `${f.subject} is ${say.amount(f.found)} after ${say.amount(f.limit)}; the flows of a curve must rise from row to row`,
  "table-curve-too-short": (f, say) =>
    `${f.subject}: the curve of “${f.given}” has ${say.fact("points")} ${say.fact("points") === "1" ? "point" : "points"}; it takes ${say.fact("least")} or more`,
  "table-column-too-short": (f, say) =>
    `${f.subject}: the curve of “${f.given}” gives ${say.fact("column")} at ${say.fact("points")} of its points; give it at ${say.fact("least")} or more, or nowhere`,
  "table-head-does-not-fall": (f, say) =>
    `${f.subject}: the head of “${f.given}” goes from ${say.fact("first")} to ${say.fact("last")} as the flow rises, and a centrifugal pump's head falls; check that flow and head are not exchanged`,
  "table-head-rises": (f, say) =>
    `${f.subject}: the head of “${f.given}” rises from ${say.fact("first")} to ${say.amount(f.found)} before it falls; check the figures`,
  "table-efficiency-unclear": (f) =>
    `${f.subject} is ${f.given}, the greatest of its column, and could be a fraction or per cent; write efficiencies as 0.78 or as 78`,
  "table-efficiency-mixed": (f, say) =>
    `${f.subject}: “${f.given}” is ${say.fact("best")} % efficient at its best, as the column is in per cent; write its efficiencies as 78, not 0.78`,
  "table-limit-differs": (f, say) =>
    `${f.subject} says ${say.amount(f.found)} where another row of “${f.given}” says ${say.fact("first")}; a pump has one`,
  "table-limits-contradict": (f, say) =>
    `${f.subject}: the ${say.fact("least")} of “${f.given}” is more than its ${say.fact("greatest")}`,
  "table-pump-not-listed": (f, say) =>
    `${f.subject} has no row for “${f.given}”, which has curves in ${say.fact("other")}`,
  "table-pump-without-curves": (f, say) =>
    `${f.subject} lists “${f.given}”, which has no curve in ${say.fact("other")}`,
  "table-decimal-signs-mixed": (f, say) =>
    `${f.subject} holds “${f.given}”, with another decimal sign than “${say.fact("other")}” in the same column; use one`,
  "table-decimal-comma-read": (f) => `the comma was read as the decimal sign throughout ${f.subject}`,
  "table-unit-assumed": (f, say) =>
    `${f.subject} states no unit for some columns; they were read as ${say.fact("columns")}`,
  "table-findings-left-out": (f, say) => `${f.subject}: ${say.fact("count")} more findings are not shown`,
  "table-second-of-its-kind": (f, say) =>
    `${f.subject} is a second table of the same kind as ${say.fact("other")}; import them one after the other`,
  "rank-npsh-not-judged": () =>
    "NPSH is not judged: the suction lift and the altitude are no arguments here, so hold the NPSHR of each pump against NPSHA at its flow",
  "rank-liquid-viscous": (f, say) =>
    `the liquid has a viscosity of ${say.amount(f.found)}, and the curves are those for water; correct them with VISCOUSCURVE above ${say.amount(f.limit)}`,
  "rank-none-meets": (f) => `no pump of the ${f.subject} meets the duty`,
  "file-not-a-table": (f) =>
    `${f.subject} holds no table of pumps; one row must name its columns, among them pump, flow and head`,
  "file-unreadable": (f, say) => `${f.subject} cannot be read: ${say.fact("reason")}`,
};
