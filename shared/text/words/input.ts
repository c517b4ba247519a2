import type { InputFindings } from "../../../src/basis/finding-code.ts";
import type { WordsOf } from "../words.ts";

export const inputWords: WordsOf<keyof InputFindings> = {
  "not-a-number": (f) =>
    f.given === undefined ? `${f.subject} is not a number` : `${f.subject} is not a number: “${f.given}”`,
  "out-of-range": (f, say) =>
    `${f.subject} must be ${f.limit?.side} ${say.amount(f.limit)}; ${say.amount(f.found)} was given`,
  "outside-usual-range": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is outside the range the method was made for (${f.limit?.side} ${say.amount(f.limit)})`,
  "left-out": (f, say) => `${f.subject} is left out or blank; give ${say.suggestions()}`,
  "fewer-than-two": (f, say) => `at least two ${f.subject} are needed; give ${say.suggestions()}`,
  "wrong-kind": (f, say) => `${f.subject} was given as ${f.given}; give ${say.suggestions()}`,
  "unit-missing": (f, say) =>
    `${f.subject} is the text “${f.given}” without a unit; add one, such as ${say.suggestions()}, or enter it as a number`,
  "number-as-text": (f, say) =>
    `${f.subject} is the text “${f.given}” without a unit; it was read as ${say.amount(f.found)}`,
  "share-read-as": (f, say) => {
    const otherwise = f.suggestions === undefined ? "" : `; write ${say.suggestions()} if that is meant`;
    return `${f.subject}: ${f.given} is read as ${say.amount(f.found)}${otherwise}`;
  },
  "share-to-hand-on": (f, say) =>
    `${f.subject}: ${say.amount(f.found)} stands here without its sign, and another function would read so small a number as a fraction; hand it on as a text, with & " %" behind it`,
  "percent-as-fraction": (f, say) =>
    `${f.subject} is in percent: write ${say.suggestions()}; ${f.given} would be less than 1 %`,
  "unit-unknown": (f, say) => `${f.subject} has the unit “${f.given}”, which is not known; use ${say.suggestions()}`,
  "unit-ambiguous": (f, say) => `${f.subject}: “${f.given}” can mean several units; write ${say.suggestions()}`,
  "unit-wrong-kind": (f, say) =>
    `${f.subject} was given as “${f.given}”, a unit of another kind; use ${say.suggestions()}`,
  "number-ambiguous": (f, say) => `${f.subject}: “${f.given}” can be read in two ways; write ${say.suggestions()}`,
  "number-read-as": (f, say) => `${f.subject}: “${f.given}” is read as ${say.amount(f.found)}`,
  "text-read-as": (f) => `${f.subject}: “${f.given}” is read as ${f.facts.as}`,
  "digits-parted": (f) =>
    `${f.subject}: the digits of “${f.given}” are parted otherwise than in threes; write the number without blanks or apostrophes`,
  "blank-as-zero": (f) =>
    `${f.subject} was given as 0, which is what Excel on the desktop hands over for a blank cell; ${f.facts.instead}`,
  "text-too-long": (f) =>
    `${f.subject} is a text of ${f.facts.letters} letters; at most ${f.facts.most} are read, so shorten it or share it out over several rows`,
  "name-unknown": (f, say) => {
    const near = f.suggestions?.length ? `; the nearest known: ${say.suggestions()}` : "";
    const otherwise = f.otherwise === undefined ? "" : `; ${near === "" ? "" : "or "}${f.otherwise}`;
    return `${f.subject} “${f.given}” is not known${near}${otherwise}`;
  },
  "choice-unknown": (f, say) => `${f.subject} “${f.given}” is not one of the choices; use ${say.suggestions()}`,
  "shapes-differ": (f) =>
    `${f.subject} is a range of ${f.facts.shape} cells but ${f.facts.first} is ${f.facts.firstShape}; give equal shapes or a single value`,
  "not-a-single-value": (f) =>
    `${f.subject} must be a single value here, since the answer itself spills; give one cell`,
  "zero-may-be-blank": (f) =>
    `${f.subject} was given as 0, which a blank cell can also arrive as; check that 0 is meant`,
  "gauge-or-absolute": (f, say) =>
    `${f.subject} “${f.given}” and “${f.facts.unit}” count pressure from different zeros or do not say which; write both as gauge or both as absolute, such as ${say.suggestions()}`,
  "too-many-arguments": (f) => `${f.subject} takes at most ${f.facts.most} arguments; ${f.facts.given} were given`,
  "duty-unreadable": (f) => `the ${f.subject} cannot be read: ${f.facts.reason}`,
  "logo-left-out": (f) =>
    `the sheets are written without the ${f.subject}: this Excel is older than pictures on sheets`,
  "record-left-out": (f) =>
    `the sheets cannot be opened again: this Excel is older than what keeps the ${f.subject} with them; “Save duty” keeps it as a file`,
  "calculates-by-hand": (f) =>
    `${f.subject} calculates by hand: press F9 after each change, or set Formulas, Calculation Options to Automatic; until then a sheet shows old answers beside new inputs`,
  "logo-refused": (f) => `the ${f.subject} is not taken: ${f.facts.reason}`,
  "field-not-known": (f, say) => {
    const near = f.suggestions?.length ? `; the nearest known: ${say.suggestions()}` : "";
    return `“${f.given}” (${f.subject}) is known to nothing here: it is kept with the duty and used for nothing${near}`;
  },
  "not-a-whole-number": (f, say) => `${f.subject} must be a whole number; ${say.amount(f.found)} was given`,
  "sum-pending": (f) => `${f.subject}: “${f.given}” is a sum that is not worked out yet`,
  "sum-unread": (f) =>
    `${f.subject}: “${f.given}” cannot be worked out in a sum; figures with or without units, + - * / ^ and brackets can`,
  "sum-beyond": (f) =>
    `${f.subject}: the sum is too long or comes to too much (“${f.given}”); powers up to 6 and 200 letters will do`,
  "sum-divides-by-zero": (f) => `${f.subject}: the sum divides by zero (“${f.given}”)`,
  "sum-units-apart": (f) =>
    `${f.subject}: the units of the sum do not come to one amount${f.given ? ` (“${f.given}”)` : ""}; write a unit behind each figure that is added, or one behind brackets around all, such as “(98+12)/2 ft”`,
  "sum-bare-beside-unit": (f, say) =>
    `${f.subject}: “${f.given}” stands beside figures in another unit than that of the box; write ${say.suggestions()}`,
  "sum-not-loaded": (f) =>
    `${f.subject}: “${f.given}” cannot be worked out here, for a part of the program did not load; write what it comes to`,
  "answer-implausible": (f, say) =>
    `${f.subject} of ${say.amount(f.found)} is far beyond anything met with pumps (${f.limit?.side} ${say.amount(f.limit)}, a house choice); check the units and the size of the inputs`,
  "beyond-computation": (f) => `${f.subject} is beyond what can be computed; check the size of the inputs`,
};
