import type { TracingFindings } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

export const tracingWords: WordsOf<keyof TracingFindings> = {
  "tracing-picture-unreadable": (f) =>
    `“${f.given}” cannot be shown as a picture; save the page as PNG or JPEG and open that`,
  "tracing-axis-points-together": (f) => `the two points of the ${f.subject} lie at the same place; set one again`,
  "tracing-axis-values-equal": (f) =>
    `both points of the ${f.subject} state ${f.facts.value}; they need two different values`,
  "tracing-log-not-positive": (f) =>
    `the ${f.subject} is logarithmic and states ${f.facts.value}; a log axis has only values above 0`,
  "tracing-axes-parallel": (f) =>
    `the ${f.subject} and the ${f.facts.other} meet at only ${f.facts.angle}°; set both points of each along its own axis`,
  "tracing-axes-skewed": (f) =>
    `the ${f.subject} and the ${f.facts.other} are ${f.facts.angle}° out of square; check that both points of each lie on one line along the axis`,
  "tracing-axis-points-close": (f) =>
    `the two points of the ${f.subject} are only ${f.facts.pixels} pixels of the picture apart, so a small error in them grows; take points farther apart`,
  "tracing-line-without-axis": (f) =>
    `${f.facts.points} traced of ${f.subject} cannot be read until the ${f.facts.axes} can`,
  "tracing-beyond-axis-points": (f) =>
    `${f.subject}: ${f.facts.points} more than half the distance between its two points beyond them; take axis points farther apart`,
  "tracing-below-zero": (f) =>
    `${f.subject} comes to ${f.facts.value}, and the pump table takes nothing below 0; select the point and type its amount`,
  "tracing-taken-as-zero": (f) =>
    `${f.subject} comes to ${f.facts.value}, within the error of a click of 0, and is taken as 0`,
  "tracing-flow-repeated": (f) =>
    `${f.subject} has two points at a flow of ${f.facts.flow}; a line has one amount a flow, so remove one`,
  "tracing-efficiency-as-fraction": (f) =>
    `the ${f.subject} ends at ${f.facts.value}; if it is printed as fractions, type 80 for 0.8`,
  "tracing-curve-repeated": (f) =>
    `curves ${f.facts.first} and ${f.facts.second} are both of “${f.given}” at the same speed and impeller diameter; give each its own`,
  "tracing-curve-unlike": (f) =>
    `curve ${f.facts.curve} of “${f.given}” leaves out the ${f.subject} that another curve of it states; a blank would be read as that of the curve above`,
  "tracing-rows-without-head": (f) =>
    `${f.facts.rows} of “${f.given}” without a head, which the pump table needs in every row; choose “At the flows of the head line” or complete them on the sheet`,
  "tracing-beyond-line": (f) =>
    `${f.subject} of “${f.given}” stays blank at ${f.facts.flows} of the head line beyond its own points`,
  "tracing-read-between": (f) =>
    `${f.subject} of “${f.given}” is read between its traced points at the flows of the head line, by a monotone piecewise cubic`,
};
