import { addressOf, boxOf } from "../shared/ports/a1.ts";
import type { CellSpec, SheetSpec, StyleSpec } from "../shared/ports/sheet-spec.ts";
import { SAMPLE_PUMP_SHEETS } from "./sample-pumps.ts";

/**
 * What the workbench opens on: cell functions typed into cells, US and metric side by side. The site and all its
 * figures are invented, and the sheet says so.
 */

const styles = {
  title: { bold: true, size: 15, color: "#1C2733" },
  invented: { italic: true, color: "#7A4D00", wrap: true, valign: "top" },
  head: { bold: true, fill: "#E4ECF2", color: "#1C2733", border: { bottom: "thin" } },
  headRight: { bold: true, fill: "#E4ECF2", color: "#1C2733", align: "right", border: { bottom: "thin" } },
  label: {},
  input: { fill: "#FFF7DC", border: { bottom: "thin" }, unlocked: true },
  inputNumber: { fill: "#FFF7DC", numFmt: "#,##0", align: "right", border: { bottom: "thin" }, unlocked: true },
  two: { numFmt: "#,##0.00", align: "right" },
  twoMetric: { numFmt: "#,##0.00", align: "right" },
  answer: { bold: true, numFmt: "#,##0.00", align: "right", fill: "#EAF4EC" },
  whole: { numFmt: "#,##0", align: "right" },
  text: { align: "right" },
  faint: { color: "#52606D" },
  unit: { color: "#52606D", indent: 1 },
  wrapped: { wrap: true, valign: "top", color: "#52606D" },
} as const satisfies Record<string, StyleSpec>;

type Style = keyof typeof styles;

const value = (at: string, v: string | number, style: Style): CellSpec => ({ at, v, style });
const formula = (at: string, f: string, style: Style): CellSpec => ({ at, f, style });

/** A spilling formula; its answers do not bring a number format with them, so every cell of the range gets one. */
function spilled(f: string, spill: string, styleOf: (row: number, column: number) => Style): readonly CellSpec[] {
  const { top, left, bottom, right } = boxOf(spill);
  const cells: CellSpec[] = [];
  for (let row = top; row <= bottom; row += 1) {
    for (let column = left; column <= right; column += 1) {
      const style = styleOf(row - top, column - left);
      const at = addressOf(row, column);
      cells.push(row === top && column === left ? { at, f, spill, style } : { at, style });
    }
  }
  return cells;
}

/** A line of headings; later columns are right-aligned over numbers. */
function headings(row: number, texts: readonly string[]): readonly CellSpec[] {
  return texts.map((text, i) => ({
    at: `${"ABCDEF"[i]}${row}`,
    ...(text === "" ? {} : { v: text }),
    style: i === 1 || i === 3 ? "headRight" : "head",
  }));
}

interface Input {
  readonly label: string;
  readonly amount: number;
  readonly units: readonly [us: string, metric: string];
  readonly about: string;
}

const inputs: readonly Input[] = [
  { label: "Temperature of the water", amount: 60, units: ["°F", "°C"], about: "Typed in US units" },
  { label: "Flow", amount: 1200, units: ["US gpm", "m³/h"], about: "Metric column: INUNITS converts" },
  { label: "Static head", amount: 82, units: ["ft", "m"], about: "Sump level to outfall" },
  { label: "Static suction lift", amount: 14, units: ["ft", "m"], about: "Sump level to pump" },
  { label: "Altitude of the site", amount: 1450, units: ["ft", "m"], about: "Sets the air pressure" },
];

function inputRows(first: number): readonly CellSpec[] {
  return inputs.flatMap(({ label, amount, units: [us, metric], about }, i) => {
    const row = first + i;
    return [
      value(`A${row}`, label, "label"),
      value(`B${row}`, amount, "inputNumber"),
      value(`C${row}`, us, "unit"),
      formula(`D${row}`, `DUTY.INUNITS(B${row}&" ${us}","${metric}")`, "twoMetric"),
      value(`E${row}`, metric, "unit"),
      value(`F${row}`, about, "faint"),
    ];
  });
}

interface Result {
  readonly label: string;
  /** The call for a column; `units` is the last argument with its comma, or nothing. */
  readonly call: (column: "B" | "D", units: string) => string;
  readonly units: readonly [us: string, metric: string];
  readonly about: string;
  readonly style?: Style;
}

const results: readonly Result[] = [
  {
    label: "Density",
    call: (column, units) => `DUTY.DENSITY($B$6,${column}7${units})`,
    units: ["lb/ft³", "kg/m³"],
    about: "DENSITY(liquid, temperature)",
  },
  {
    label: "Velocity in the steel pipe",
    call: (column, units) => `DUTY.VELOCITY(${column}8,$A$17${units})`,
    units: ["ft/s", "m/s"],
    about: "VELOCITY(flow, pipe)",
  },
  {
    label: "Friction head of the polyethylene pipe",
    call: (column, units) => `DUTY.FRICTIONHEAD(${column}8,$A$18,$B$18,$B$6,${column}7${units})`,
    units: ["ft", "m"],
    about: "FRICTIONHEAD(flow, pipe, length, …)",
  },
  {
    label: "Loss of the whole discharge line",
    call: (column, units) => `DUTY.LINEHEAD(${column}8,$A$17:$C$18,$B$6,${column}7${units})`,
    units: ["ft", "m"],
    about: "LINEHEAD(flow, line, …): the line is a range",
  },
  {
    label: "Total dynamic head",
    call: (column, units) => `DUTY.TDH(${column}8,${column}9,$A$15:$C$15,$A$17:$C$18,,,$B$6,${column}7${units})`,
    units: ["ft", "m"],
    about: "TDH(flow, static head, suction, discharge, …)",
    style: "answer",
  },
  {
    label: "NPSH available",
    call: (column, units) => `DUTY.NPSHA(${column}8,${column}10,$A$15:$C$15,${column}11,,$B$6,${column}7${units})`,
    units: ["ft", "m"],
    about: "NPSHA(flow, suction lift, suction line, …)",
    style: "answer",
  },
];

function resultRows(first: number): readonly CellSpec[] {
  return results.flatMap(({ label, call, units: [us, metric], about, style = "two" }, i) => {
    const row = first + i;
    return [
      value(`A${row}`, label, "label"),
      formula(`B${row}`, call("B", ""), style),
      value(`C${row}`, us, "unit"),
      formula(`D${row}`, call("D", ',"METRIC"'), style),
      value(`E${row}`, metric, "unit"),
      value(`F${row}`, about, "faint"),
    ];
  });
}

const flows = [400, 600, 800, 1000, 1200, 1400, 1600, 1800];

const dutyNotes: SheetSpec = {
  name: "Duty notes",
  columns: [33, 13, 10, 13, 9, 40],
  rowHeights: { 1: 26, 2: 32, 28: 48 },
  styles,
  cells: [
    value("A1", "Sample sump: dewatering, duty notes", "title"),
    value(
      "A2",
      "Invented example: there is no such site, and every figure here is made up. Change any yellow cell. Check results against local codes and with a licensed engineer before anything is built on them.",
      "invented",
    ),
    ...headings(4, ["What is known", "US", "", "Metric", "", "How"]),
    value("A5", "Site", "label"),
    value("B5", "Quarry A, invented", "faint"),
    value("A6", "Liquid", "label"),
    value("B6", "water", "input"),
    ...inputRows(7),
    ...headings(13, ["The lines", "", "", "", "", ""]),
    value("A14", "Suction line: pipe", "faint"),
    value("B14", "length", "faint"),
    value("C14", "fittings", "faint"),
    value("A15", "10in suction hose", "input"),
    value("B15", "24 ft", "input"),
    value("C15", "1 elbow 90 long", "input"),
    value("A16", "Discharge line: pipe", "faint"),
    value("B16", "length", "faint"),
    value("C16", "fittings", "faint"),
    value("A17", "8in sch40", "input"),
    value("B17", "40 ft", "input"),
    value("C17", "1 swing check, 1 gate, 2 elbow 90 long", "input"),
    value("A18", "10in HDPE DR17", "input"),
    value("B18", "1350 ft", "input"),
    value("C18", "3 elbow 45, 1 exit", "input"),
    ...headings(20, ["What follows", "US", "", "Metric", "", "Function in the cell"]),
    ...resultRows(21),
    value("A27", 'NOTES("NPSHA", …): what the NPSH figures rest on', "faint"),
    formula("A28", 'DUTY.NOTES("NPSHA",B8,B10,A15:C15,B11,,B6,B7)', "wrapped"),
    ...headings(30, [
      "A whole column at once",
      "Velocity",
      "",
      "Friction",
      "",
      "Formulas in B32 and D32; the rest spills",
    ]),
    value("A31", "flow, US gpm", "faint"),
    value("B31", "ft/s", "text"),
    value("D31", "ft", "text"),
    ...flows.map((flow, i) => value(`A${32 + i}`, flow, "inputNumber")),
    ...spilled("DUTY.VELOCITY(A32:A39,A17)", "B32:B39", () => "two"),
    ...spilled("DUTY.FRICTIONHEAD(A32:A39,A18,B18,B6,B7)", "D32:D39", () => "two"),
    ...headings(41, ["System curve", "", "", "", "", "SYSTEMCURVE in A42 spills the table"]),
    ...spilled("DUTY.SYSTEMCURVE(B9,A15:C15,A17:C18,1800,11,,B6,B7)", "A42:B53", (row, column) =>
      row === 0 ? "headRight" : column === 0 ? "whole" : "two",
    ),
    ...headings(55, ["A refusal and its reason", "", "", "", "", "Select B56, read the line below the grid"]),
    value("A56", "Velocity in a pipe no table holds", "label"),
    formula("B56", 'DUTY.VELOCITY(B8,"8in sch41")', "text"),
  ],
  merges: ["A2:F2", "C15:F15", "C17:F17", "C18:F18", "A28:F28"],
  lists: [{ ref: "B6", items: ["water", "sea water", "ethylene glycol 40 %", "propylene glycol 30 %"] }],
  charts: [
    {
      at: "C42:F54",
      title: "System curve and duty point",
      xTitle: "Flow, US gpm",
      yTitle: "Head, ft",
      series: [
        { name: "System curve", x: "A43:A53", y: "B43:B53", color: "#1F5F8B" },
        { name: "Duty", x: "B8", y: "B25", color: "#B4532A", pointsOnly: true },
      ],
    },
  ],
  gridlines: false,
};

export const SAMPLE_SHEETS: readonly SheetSpec[] = [dutyNotes, ...SAMPLE_PUMP_SHEETS];
