import type { CellSpec, SheetSpec } from "../../shared/ports/sheet-spec.ts";

const STYLES = {
  title: { bold: true, size: 16, color: "#12435C" },
  head: { bold: true, fill: "#DDE7EE", border: { bottom: "medium" }, align: "left", valign: "middle" },
  input: { fill: "#FFF7E0", border: { top: "thin", bottom: "thin", left: "thin", right: "thin" }, unlocked: true },
  answer: { numFmt: "#,##0.0", align: "right" },
  note: { italic: true, wrap: true, indent: 1, color: "#5A6775" },
} as const satisfies SheetSpec["styles"];

/** A calc sheet of usual size, filled by rule: 40 rows of five cells, a spill, a chart, names, lists and rules. */
export function sampleSheet(name = "Duty"): SheetSpec {
  const rows = Array.from({ length: 39 }, (_, i) => i + 2);
  const cells: readonly CellSpec[] = [
    { at: "A1", v: "=not a formula", style: "title" },
    ...["flow", "unit", "value", "note"].map((v, i): CellSpec => ({ at: `${"BCDE"[i]}1`, v, style: "head" })),
    ...rows.flatMap((row): readonly CellSpec[] => [
      { at: `A${row}`, v: `Row ${row}` },
      { at: `B${row}`, v: row * 10, style: "input" },
      { at: `C${row}`, v: row % 2 === 0 ? "US gpm" : "1/2", style: "input" },
      { at: `D${row}`, f: `DUTY.VELOCITY(B${row},"6in sch40")`, style: "answer" },
      { at: `E${row}`, v: row % 3 === 0 ? "- see above" : "@ the pump", style: "note" },
    ]),
    { at: "G2", f: 'DUTY.SYSTEMCURVE(B2,B3,"US")', spill: "G2:H13" },
  ];
  return {
    name,
    columns: [24, 12, 12, 12, 40, 3, 10, 10],
    rowHeights: { 1: 24 },
    styles: STYLES,
    cells,
    merges: ["A41:E41"],
    names: { flow: "B2", unit_set: "C2" },
    lists: [
      { ref: "C2:C40", items: ["US gpm", "L/s", "m³/h"], strict: true, help: "The unit of the flow" },
      { ref: "C3", items: { from: "A2:A9" } },
    ],
    rules: [{ ref: "D2:D40", when: "D2>10", style: { color: "#A4262C", fill: "#FDE7E9", bold: true } }],
    charts: [
      {
        at: "G16:M34",
        title: "System curve",
        xTitle: "Flow, US gpm",
        yTitle: "Head, ft",
        secondTitle: "Efficiency, %",
        series: [
          { name: "System", x: "G3:G13", y: "H3:H13", color: "#12435C" },
          { name: "Duty", x: "B2:B2", y: "D2:D2", pointsOnly: true, color: "#F2A93B" },
          { name: "Efficiency", x: "G3:G13", y: "H3:H13", secondAxis: true, dashed: true, markers: true },
        ],
      },
    ],
    freezeRows: 1,
    gridlines: false,
    print: {
      area: "A1:H41",
      orientation: "landscape",
      titleRows: "1:1",
      breaks: [20],
      header: "&LDuty A&&B&RRev 0",
      footer: "Page &P of &N",
    },
  };
}
