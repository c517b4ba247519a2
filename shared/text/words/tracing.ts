import type { TracingCode } from "../../../src/basis/finding-code.ts";
import type { Words } from "../words.ts";

export const tracingWords: Readonly<Record<TracingCode, Words>> = {
  "tracing-picture-unreadable": (f) =>
    `“${f.given}” cannot be shown as a picture; save the page as PNG or JPEG and open that`,
  "tracing-axis-points-together": (f) => `the two points of the ${f.subject} lie at the same place; set one anew`,
  "tracing-axis-values-equal": (f, say) =>
    `both points of the ${f.subject} state ${say.fact("value")}; they need two different values`,
  "tracing-log-not-positive": (f, say) =>
    `the ${f.subject} is logarithmic and states ${say.fact("value")}; a log axis has only values above 0`,
  "tracing-axes-parallel": (f, say) =>
    `the ${f.subject} and the ${say.fact("other")} meet at only ${say.fact("angle")}°; set both points of each along its own axis`,
  "tracing-axes-skewed": (f, say) =>
    `the ${f.subject} and the ${say.fact("other")} are ${say.fact("angle")}° out of square; check that both points of each lie on one line along the axis`,
  "tracing-axis-points-close": (f, say) =>
    `the two points of the ${f.subject} are only ${say.fact("pixels")} pixels of the picture apart, so a small error in them grows; take points farther apart`,
  "tracing-line-without-axis": (f, say) =>
    `${say.fact("points")} traced of ${f.subject} cannot be read until the ${say.fact("axes")} can`,
  "tracing-beyond-axis-points": (f, say) =>
    `${f.subject}: ${say.fact("points")} more than half the distance between its two points beyond them; take axis points farther apart`,
  "tracing-below-zero": (f, say) =>
    `${f.subject} comes to ${say.fact("value")}, and the pump table takes nothing below 0; select the point and type its amount`,
  "tracing-taken-as-zero": (f, say) =>
    `${f.subject} comes to ${say.fact("value")}, within the error of a click of 0, and is taken as 0`,
  "tracing-flow-repeated": (f, say) =>
    `${f.subject} has two points at a flow of ${say.fact("flow")}; a line has one amount a flow, so remove one`,
  "tracing-efficiency-as-fraction": (f, say) =>
    `the ${f.subject} ends at ${say.fact("value")}; if it is printed as fractions, type 80 for 0.8`,
  "tracing-curve-repeated": (f, say) =>
    `curves ${say.fact("first")} and ${say.fact("second")} are both of “${f.given}” at the same speed and impeller diameter; give each its own`,
  "tracing-curve-unlike": (f, say) =>
    `curve ${say.fact("curve")} of “${f.given}” leaves out the ${f.subject} that another curve of it states; a blank would be read as that of the curve above`,
  "tracing-rows-without-head": (f, say) =>
    `${say.fact("rows")} of “${f.given}” without a head, which the pump table needs in every row; choose “At the flows of the head line” or complete them on the sheet`,
  "tracing-beyond-line": (f, say) =>
    `${f.subject} of “${f.given}” stays blank at ${say.fact("flows")} of the head line beyond its own points`,
  "tracing-read-between": (f) =>
    `${f.subject} of “${f.given}” is read between its traced points at the flows of the head line, by a monotone piecewise cubic`,
};
