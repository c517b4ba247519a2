import { absolute, addressOf } from "../shared/ports/a1.ts";
import type { CellSpec, SheetSpec, StyleSpec } from "../shared/ports/sheet-spec.ts";
import { inventedPumps } from "../shared/pump-table/library/library.ts";
import { pumpSheets } from "../shared/pump-table/pump-sheets.ts";

/** Sheets of invented pumps, and one that ranks them for an invented duty. */

const INVENTED = "Invented example: nobody makes these pumps, there is no such site, and every figure here is made up.";

const styles = {
  title: { bold: true, size: 15, color: "#1C2733" },
  invented: { italic: true, color: "#7A4D00", wrap: true, valign: "top" },
  head: { bold: true, fill: "#E4ECF2", color: "#1C2733", wrap: true, border: { bottom: "thin" } },
  label: {},
  faint: { color: "#52606D" },
  input: { fill: "#FFF7DC", border: { bottom: "thin" }, unlocked: true },
  number: { fill: "#FFF7DC", numFmt: "#,##0", align: "right", border: { bottom: "thin" }, unlocked: true },
  text: {},
  whole: { numFmt: "#,##0", align: "right" },
  one: { numFmt: "#,##0.0", align: "right" },
  three: { numFmt: "0.000", align: "right" },
} as const satisfies Record<string, StyleSpec>;

type Style = keyof typeof styles;

const [pumps, curves] = pumpSheets({ ...inventedPumps(), note: INVENTED });

/** A row for the heading and one for every pump. */
const RANKING_BOX = { top: 12, left: 0, right: 11, bottom: 12 + inventedPumps().curves.pumps.length };
const COLUMN_STYLES: readonly Style[] = [
  "text",
  "text",
  "whole",
  "one",
  "three",
  "one",
  "one",
  "one",
  "whole",
  "three",
  "text",
  "text",
];

function rankingCells(): readonly CellSpec[] {
  const cells: CellSpec[] = [];
  const table = `'${curves.name}'!${absolute(curves.names?.["pump_table"] ?? "")}`;
  const f = `DUTY.RANKPUMPS(${table},B4,B5,A7:C7,A9:C9,B10)`;
  const spill = `A13:${addressOf(RANKING_BOX.bottom, RANKING_BOX.right)}`;
  for (let row = RANKING_BOX.top; row <= RANKING_BOX.bottom; row += 1) {
    for (let column = RANKING_BOX.left; column <= RANKING_BOX.right; column += 1) {
      const style = row === RANKING_BOX.top ? "head" : (COLUMN_STYLES[column] as Style);
      const at = addressOf(row, column);
      const isFirst = row === RANKING_BOX.top && column === RANKING_BOX.left;
      cells.push(isFirst ? { at, f, spill, style } : { at, style });
    }
  }
  return cells;
}

const value = (at: string, v: string | number, style: Style): CellSpec => ({ at, v, style });

const ranking: SheetSpec = {
  name: "Pump ranking",
  columns: [20, 24, 18, 9, 10, 10, 9, 10, 9, 10, 70, 70],
  rowHeights: { 1: 26, 2: 30 },
  styles,
  cells: [
    value("A1", "Sample sump: pumps for the sump, ranked", "title"),
    value("A2", `${INVENTED} Change any yellow cell. A ranking is no choice: NPSH is not judged here.`, "invented"),
    value("A4", "Flow, US gpm", "label"),
    value("B4", 1200, "number"),
    value("A5", "Static head, ft", "label"),
    value("B5", 76, "number"),
    value("A6", "Suction line: pipe", "faint"),
    value("B6", "length", "faint"),
    value("C6", "fittings", "faint"),
    value("A7", "10in suction hose", "input"),
    value("B7", "24 ft", "input"),
    value("C7", "1 elbow 90 long", "input"),
    value("A8", "Discharge line: pipe", "faint"),
    value("B8", "length", "faint"),
    value("C8", "fittings", "faint"),
    value("A9", "10in HDPE DR17", "input"),
    value("B9", "1350 ft", "input"),
    value("C9", "3 elbow 45, 1 exit", "input"),
    value("A10", "Liquid", "label"),
    value("B10", "water", "input"),
    value("A12", "One formula in A13; the rest spills", "faint"),
    ...rankingCells(),
  ],
  merges: ["A2:J2"],
  gridlines: false,
};

export const SAMPLE_PUMP_SHEETS: readonly SheetSpec[] = [curves, pumps, ranking];
