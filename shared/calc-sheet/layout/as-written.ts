import { addressOf, rangeOf } from "../../ports/a1.ts";
import { tableCell } from "../expression.ts";
import type { InputSheet } from "../open-again/written-inputs.ts";
import { LINES } from "../sections/lines.ts";
import { WHOLE } from "./columns.ts";
import type { InputBook } from "./input-book.ts";
import { afterOf, belowOf, headsOf } from "./line.ts";
import { changedKey, type FormulaText, type Page } from "./page.ts";

/** The cell that counts the inputs of a sheet that are not as they were written. */
const CHANGED = { duty: "inputsChanged", estimate: "pricesChanged" } as const satisfies Record<InputSheet, string>;

/** The cell that counts the lines with another number of rows: what is worked out of single runs does not know of it. */
const RUNS = "runsChanged";
const RUNS_SAID =
  "CHANGED: a run was put into a line or taken out of it. Fill its worked cells down from the row above; take the sheet’s in the pane and write it again.";

const WHERE = { duty: "in the workings", estimate: "below" } as const satisfies Record<InputSheet, string>;

/** Letters of a revision that are said: a text in a formula holds 255. */
const LONGEST_REVISION = 24;

/** A live line under the title of a sheet: whether its inputs are those it was written with. */
export function placeInputState(page: Page, of: InputSheet, revision: string): void {
  const named = revision
    .replace(/[\s\p{Control}]+/gu, " ")
    .trim()
    .slice(0, LONGEST_REVISION);
  const since = named === "" ? "the sheet" : `revision ${named}`;
  const said = ` changed since ${since} was written: see “Inputs as written” ${WHERE[of]}.`.replaceAll('"', '""');
  page.merged(...WHOLE, {
    f: (textOf) => {
      const count = textOf({ op: "value", key: CHANGED[of] });
      const runs = of === "duty" ? `IF(${textOf({ op: "value", key: RUNS })}>0,"${RUNS_SAID}",` : "";
      return `${runs}IF(${count}=0,"Inputs as written.",${count}&IF(${count}=1," input"," inputs")&"${said}")${runs === "" ? "" : ")"}`;
    },
    cached: "Inputs as written.",
    style: "inputState",
  });
  const ref = addressOf(page.row, WHOLE[0]);
  page.rule({ ref, when: `LEFT(${ref},7)="CHANGED"`, style: { color: "#B3261E", bold: true } });
  page.next();
}

/** What was written into each input, held against what stands there now. */
export function placeAsWritten(workings: Page, of: InputSheet, { cells, ranges }: InputBook): void {
  workings.beginBlock("Inputs as written", 3);
  ["input", "as written", "changed"].forEach((v, i) => {
    workings.put(i, { v, style: i === 0 ? "workingText" : "workingHead" });
  });
  workings.row += 1;
  const top = workings.row;
  for (const { sheet, key, label, written } of cells) {
    if (sheet !== of) continue;
    workings.keep(changedKey(key), 2);
    placeRow(workings, label, written, (textOf) => textOf({ op: "value", key }));
  }
  const lines: string[] = [];
  for (const { sheet, key, label, rows } of ranges) {
    if (sheet !== of) continue;
    const isLine = Object.hasOwn(LINES, key);
    if (isLine) lines.push(addressOf(workings.row, 2));
    placeRow(workings, label, rows, (textOf) => `ROWS(${textOf({ op: "range", key })})`);
    if (!isLine) continue;
    // A run put in above the first stands outside the range, under its heads.
    lines.push(addressOf(workings.row, 2));
    placeRow(workings, `${label} down to the first run`, 1, (textOf) => {
      const row = (at: string): string => `ROW(${textOf({ op: "value", key: at })})`;
      return `${row(tableCell(key, 0, "pipe"))}-${row(headsOf(key))}`;
    });
    // And one put in below the row that ends the line, or typed there.
    lines.push(addressOf(workings.row, 2));
    placeRow(workings, `${label} down to what stands below it`, 2, (textOf) => {
      const row = (at: string): string => `ROW(${textOf({ op: "value", key: at })})`;
      return `${row(afterOf(key))}-${row(headsOf(key))}-ROWS(${textOf({ op: "range", key })})`;
    });
    lines.push(addressOf(workings.row, 2));
    placeRow(
      workings,
      `${label}: typed below its last row`,
      0,
      (textOf) => `COUNTA(${textOf({ op: "value", key: belowOf(key) })})`,
    );
  }
  const counted = { top, left: 2, bottom: workings.row - 1, right: 2 };
  if (of === "duty") {
    workings.put(0, { v: "lines with runs put in or taken out", style: "workingText" });
    workings.put(2, { f: () => `SUM(${lines.join(",")})`, cached: 0, style: "working" });
    workings.name(RUNS, 2);
    workings.row += 1;
  }
  workings.put(0, { v: "changed in all", style: "workingText" });
  workings.put(2, { f: () => `SUM(${rangeOf(counted)})`, cached: 0, style: "working" });
  workings.name(CHANGED[of], 2);
  workings.row += 2;
}

function placeRow(workings: Page, label: string, written: string | number | boolean | null, now: FormulaText): void {
  const was = addressOf(workings.row, 1);
  workings.put(0, { v: label, style: "workingText" });
  workings.put(1, { v: written, style: "workingText" });
  workings.put(2, {
    // As texts: a blank cell equals 0 and "".
    f: (textOf) => `IF(IFERROR(EXACT(${now(textOf)}&"",${was}&""),FALSE),0,1)`,
    cached: 0,
    style: "working",
  });
  workings.row += 1;
}
