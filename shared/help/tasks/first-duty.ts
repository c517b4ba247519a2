import type { Page } from "../html.ts";
import { FIRST_SAMPLE, sampleFigure, sampleVerdicts } from "./sample-figures.ts";
import { numbered, para, points, taskPage, toldTable } from "./told.ts";

const { name, typed } = FIRST_SAMPLE;
const { fields, suctionLine, dischargeLine } = typed;

const LINES = [
  ...suctionLine.map((row) => ["Suction", row] as const),
  ...dischargeLine.map((row) => ["Discharge", row] as const),
];

/** The first duty, told by the first sample and its own figures. */
export const FIRST_DUTY: Page = taskPage({
  file: "first-duty.html",
  title: "Your first duty in five minutes",
  summary: "From the enquiry to total head, NPSH and a selected pump, then the calc sheet.",
  words: ["start", "begin", "tutorial", "TDH", "quick"],
  parts: [
    [
      "The enquiry",
      para(
        `${fields.flow} US gpm out of a quarry sump. Water at level ${fields.sourceLevel} ft, the pump on the bench at ${fields.pumpLevel} ft, the pond at ${fields.deliveryLevel} ft, the site ${fields.altitude} ft above the sea. An invented job: in the pane, “Start from a sample” and “${name}” fills every box at once. By hand it is nine boxes.`,
      ),
    ],
    [
      "Type the duty",
      numbered(
        `[[Liquid and site]]: {liquid} \`${fields.liquid}\`, {temperature} \`${fields.temperature}\`, {altitude} \`${fields.altitude}\`.`,
        `[[Flow, levels and pressures]]: {flow} \`${fields.flow}\`, {sourceLevel} \`${fields.sourceLevel}\`, {pumpLevel} \`${fields.pumpLevel}\`, {deliveryLevel} \`${fields.deliveryLevel}\`. Levels are above any datum, the same for all. A caller who says “lift 12, up 64” gives source 0, pump 12, delivery 76.`,
        "[[Suction line]] and [[Discharge line]]: a row for each run of equal pipe, in the direction of flow:",
      ),
      toldTable(
        "The lines of the sample",
        ["Line", "Pipe", "Length", "Fittings"],
        LINES.map(([line, { pipe, length, fittings }]) => [line, `\`${pipe}\``, length, fittings]),
      ),
      para(
        "A number may carry a unit, `45 L/s` or `12'6\"`; without one it is in the unit set. What a pipe or a fitting is called stands under [pipes](typed-pipes.html) and [fittings](typed-fittings.html).",
      ),
    ],
    [
      "Read the answer",
      points(
        `Total dynamic head ${sampleFigure("totalHead", "head")}; with the margin of ${fields.frictionMargin} % on losses ${sampleFigure("ratedHead", "head")}.`,
        `NPSH available at the duty ${sampleFigure("npshAvailable", "head")}, against ${fields.npshRequired} ft required.`,
        "A box that cannot be read says why beside it; the strip at the foot says what is missing inputs.",
      ),
    ],
    [
      "Select a pump",
      numbered(
        "[[Pump table and ranking]]: “Add the invented library” to try, or read your own: [importing pumps](importing-pumps.html).",
        "Read the ranking: sort it by a heading, open a row for the reasons, mark up to four pumps to compare. “Select” takes a pump with the speed and impeller that meet the duty.",
        `[[Selected pump]]: the sample’s pump, ${typed.pump?.name ?? ""}, runs at ${sampleFigure("operatingFlow", "flow")} and ${sampleFigure("operatingHead", "head")}.`,
      ),
    ],
    [
      "See what holds and what does not",
      para(
        "Each step of the package has a verdict: pass, check, open (something is not stated) or fail. For the sample as it ships:",
      ),
      toldTable(
        "Verdicts of the sample",
        ["Of", "State", "In words"],
        sampleVerdicts().map(({ subject, state, text }) => [subject, state, text]),
      ),
    ],
    [
      "Write the sheet",
      points(
        "[[Calc sheet]] writes it into the workbook: every input in a shaded cell of its own, every result a live formula. [More on the sheet](calc-sheet.html).",
        "Have a competent engineer check it before anything is ordered, built or run.",
      ),
    ],
  ],
});
