import { CURVE_COLUMNS, PUMP_COLUMNS } from "../../pump-table/columns.ts";
import type { Page } from "../html.ts";
import { caution, numbered, para, points, taskPage, toldTable } from "./told.ts";

interface ReadColumn {
  readonly name: string;
  readonly also?: readonly string[];
  readonly needed?: true;
}

function columnRows(columns: Readonly<Record<string, ReadColumn>>): readonly (readonly string[])[] {
  return Object.values(columns).map(({ name, also = [], needed }) => [
    name,
    also.join("; "),
    needed === true ? "needed" : "",
  ]);
}

const COLUMN_HEAD = ["Column", "May also be headed", ""];

export const CALC_SHEET: Page = taskPage({
  file: "calc-sheet.html",
  title: "The calc sheet",
  summary: "What stands where, what may be changed, how it is opened again and sent.",
  words: ["print", "customer", "revision", "#NAME?", "sheet"],
  parts: [
    [
      "What stands where",
      points(
        "The summary with the verdicts first, then the inputs and the steps in the order of the job, findings and references last.",
        "Shaded cells are inputs: change one and everything that depends on it recalculates. Everything else is a formula.",
        "Beside an input: its basis, or “assumed” where nothing was stated. Beside a result: how it comes about and its source.",
        "Prices and costs stand on an estimate sheet of their own, for nobody outside.",
      ),
    ],
    [
      "Change and write again",
      numbered(
        "A value: change the shaded cell.",
        "A run of pipe: insert a row between two others of the line and fill its worked cells down. The sheet says CHANGED until it is written again.",
        "The pane notices: “Take the sheet’s” fills the boxes from the cells, “Keep the pane’s” writes the next revision on sheets of its own.",
      ),
    ],
    [
      "Send it",
      points(
        "“For the customer” writes one sheet with every formula frozen at its answer: no prices, no duty to be opened again, nothing that recalculates.",
        "To print, use Print in Excel or in the workbench: paper, page ends and heads stand in the sheet.",
      ),
    ],
    [
      "Where it is opened without Dutybook",
      para(
        "Formulas then show #NAME?. Nothing is lost: the figures come back where the add-in is loaded. Send a copy for the customer instead. [More on errors](errors.html).",
      ),
      caution(
        "A sheet is an aid to estimating. A competent engineer, licensed where the law requires, must check it before anything is ordered, built or run.",
      ),
    ],
  ],
});

export const IMPORTING: Page = taskPage({
  file: "importing-pumps.html",
  title: "Importing your pumps",
  summary: "Curves and limits from the sheets of the workbook, a CSV or an .xlsx file.",
  words: ["csv", "xlsx", "library", "catalogue", "curve data", "headings"],
  parts: [
    [
      "How",
      numbered(
        "One row a point of a curve, the columns in any order, each with a heading; a unit may stand in it: `flow, m³/h`.",
        "[[Pump table and ranking]]: “Read the workbook” takes every sheet that has these headings; “Import files” reads CSV and .xlsx.",
        "A pump that stands on two sheets is ranked once where the figures agree, and otherwise once for each sheet; either is told.",
        "A file is read whole or not at all: every mistake is listed with its cell. On a sheet a pump with a mistake is set apart, and the others are ranked. A number that can be read in two ways is refused, not guessed.",
      ),
    ],
    ["Curves", toldTable("Columns of the curves", COLUMN_HEAD, columnRows(CURVE_COLUMNS))],
    [
      "A list of the pumps, where there is one",
      para("One row a pump, with its limits of speed, impeller and pressure."),
      toldTable("Columns of the list", COLUMN_HEAD, columnRows(PUMP_COLUMNS)),
    ],
    [
      "Then",
      points(
        "The ranking takes every pump that reaches the duty, by its curve or at another speed or trim, and says of each one left out why. RANKPUMPS does the same in cells.",
        "No curve in figures? [Trace the printed one](tracing.html).",
      ),
    ],
  ],
});

export const TRACING: Page = taskPage({
  file: "tracing.html",
  title: "Tracing a printed curve",
  summary: "From a picture of a curve to rows a pump can be ranked by.",
  words: ["digitise", "picture", "scan", "graph", "image"],
  parts: [
    [
      "How",
      numbered(
        "[[Trace a curve]]: open a picture or paste one. It stays on this machine.",
        "Set two points on each axis, as far apart as the print allows, and type the printed value of each in the box beside it; below the picture stand the unit of the axis and whether it is even or logarithmic.",
        "Choose the line to trace (head, efficiency, NPSHR or power) and click along it; arrow keys move a point, with Alt by tenths of a pixel.",
        "Read the rows beside the picture, put them right, and use the curve on the duty or write it to a sheet; “Read the workbook” then ranks the pump.",
      ),
    ],
    [
      "What makes it good",
      points(
        "A flat, unskewed picture: a photograph taken aslant puts every point off.",
        "Shutoff head as a point of its own: without it pressures against a shut valve are not known.",
        "State the speed, the impeller diameter and whose sheet it is: kind, year and page stand beside the rows.",
      ),
      caution("A traced curve is as good as the print. Have the manufacturer’s certified curve before an order."),
    ],
  ],
});
