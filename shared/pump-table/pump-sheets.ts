import type { Quantity } from "../../src/basis/quantities.ts";
import { fromEngine, type Unit, unitOf } from "../../src/basis/units.ts";
import { greatestOf } from "../../src/numeric/extremes.ts";
import type { Scalar } from "../cells/cell.ts";
import { addressOf, rangeOf } from "../ports/a1.ts";
import { rowHeight } from "../ports/column-room.ts";
import type { SheetHost } from "../ports/sheet-host.ts";
import { setOf } from "../ports/sheet-set.ts";
import type { CellSpec, SheetSpec, StyleSpec } from "../ports/sheet-spec.ts";
import type { TableColumn } from "../tables/column.ts";
import { CURVE_COLUMNS, LIMIT_COLUMNS, PUMP_COLUMNS, type PumpColumn, USUAL_CURVE_ORDER } from "./columns.ts";
import type { CurveTable } from "./curve-table.ts";
import type { ListedPump, PumpList } from "./pump-list.ts";

/** What the two sheets are made of: an import, or a table read from a sheet. */
export interface PumpSheetsInput {
  readonly curves: CurveTable;
  readonly list?: PumpList;
  /** One line under each title, such as where the figures come from. */
  readonly note: string;
}

type KeyedColumns<K extends string> = readonly (readonly [key: K, column: TableColumn])[];
type Units<K extends string> = Readonly<Partial<Record<K, Unit>>>;

/** Row of the heading, 0-based: under a title, a note and a blank row. */
const HEADING_ROW = 3;
const LIST_NAME = "Pumps";
const CURVES_NAME = "Pump curves";

const STYLES = {
  title: { bold: true, size: 15, color: "#0B5A5E", valign: "middle" },
  note: { italic: true, size: 9, color: "#5A6B6D" },
  head: { bold: true, size: 9, color: "#0B5A5E", wrap: true, valign: "bottom", border: { bottom: "thin" } },
  text: { fill: "#FFF7DC", color: "#1F3F8F", unlocked: true },
} as const satisfies Record<string, StyleSpec>;

/** As many decimals as any figure of a column asks for, to this many: a format of optional ones ends in a bare point. */
const MOST_DECIMALS = 4;

function figureStyle(decimals: number): StyleSpec {
  const numFmt = decimals === 0 ? "#,##0" : `#,##0.${"0".repeat(decimals)}`;
  return { fill: "#FFF7DC", color: "#1F3F8F", align: "right", numFmt, unlocked: true };
}

function decimalsIn(values: readonly Scalar[]): number {
  const needed = values.map((value) => {
    if (typeof value !== "number") return 0;
    for (let decimals = 0; decimals < MOST_DECIMALS; decimals += 1) {
      if (Number(value.toFixed(decimals)) === value) return decimals;
    }
    return MOST_DECIMALS;
  });
  return Math.max(0, greatestOf(needed));
}

/**
 * The sheets “Pumps” and “Pump curves”, in the units the tables were read in. The range under each heading has a name
 * of its sheet, pump_list and pump_table. Without a list, the pumps are listed by name with the limits of their curves.
 */
export function pumpSheets({ curves, list, note }: PumpSheetsInput): readonly [pumps: SheetSpec, curves: SheetSpec] {
  return [pumpListSheet(curves, list, note), curveSheet(curves, note)];
}

/** Adds both sheets and answers with the names they got; a sheet that is there stays as it is. */
export function addPumpSheets(host: SheetHost, input: PumpSheetsInput): Promise<readonly string[]> {
  return host.addSheets(setOf(...pumpSheets(input)));
}

function curveSheet({ pumps, units }: CurveTable, note: string): SheetSpec {
  const columns = USUAL_CURVE_ORDER.map((key) => [key, CURVE_COLUMNS[key] as TableColumn] as const);
  const rows = pumps.flatMap(({ name, curves }) =>
    curves.flatMap(({ speed, diameter, points }) =>
      points.map(({ flow, head, efficiency, npshRequired, power }) => {
        const figures = { speed, diameter, flow, head, efficiency, npshRequired, power };
        return columns.map(([key, column]) => {
          if (key === "pump") return name;
          // 0 stands for a figure not given, save for flow, head, and the efficiency at no flow.
          const isFigure = key === "flow" || key === "head" || (key === "efficiency" && flow === 0);
          const value = figures[key];
          return value === undefined || (value === 0 && !isFigure) ? null : shown(value, column, units[key]);
        });
      }),
    ),
  );
  return tableSheet(CURVES_NAME, "pump_table", note, columns, units, rows);
}

function pumpListSheet({ pumps, units }: CurveTable, list: PumpList | undefined, note: string): SheetSpec {
  const columns = Object.entries(PUMP_COLUMNS) as unknown as KeyedColumns<PumpColumn>;
  const limitUnits = Object.fromEntries(LIMIT_COLUMNS.flatMap((key) => (units[key] ? [[key, units[key]]] : [])));
  const read: PumpList = list ?? {
    pumps: pumps.map(({ name, limits }): ListedPump => ({ name, ...limits })),
    units: limitUnits,
  };
  const rows = read.pumps.map((pump) =>
    columns.map(([key, column]): Scalar => {
      if (key === "pump") return pump.name;
      const value = pump[key];
      if (value === undefined) return null;
      return typeof value === "number" ? shown(value, column, read.units[key]) : value;
    }),
  );
  return tableSheet(LIST_NAME, "pump_list", note, columns, read.units, rows);
}

/** A figure in its unit, without the dust of having been converted to the engine's and back. */
function shown(value: number, column: TableColumn, unit: Unit | undefined): number {
  return Number(fromEngine(value, unitFor(column, unit)).toPrecision(12));
}

/** Efficiencies are written in per cent; other figures in the unit they were read in. */
function unitFor({ quantity }: TableColumn, unit: Unit | undefined): Unit {
  if (quantity === "percent") return unitOf("%");
  return unit ?? ENGINE_UNITS[quantity as keyof typeof ENGINE_UNITS];
}

/** Where a table had no such column, nothing is written in it, and its heading takes these. */
const ENGINE_UNITS = {
  speed: unitOf("rpm"),
  size: unitOf("mm"),
  flow: unitOf("m³/h"),
  head: unitOf("m"),
  power: unitOf("kW"),
  gaugePressure: unitOf("bar(g)"),
} as const satisfies Partial<Record<Quantity, Unit>>;

function tableSheet<K extends string>(
  name: string,
  rangeName: string,
  note: string,
  columns: KeyedColumns<K>,
  units: Units<K>,
  rows: readonly (readonly Scalar[])[],
): SheetSpec {
  const heading = columns.map(([key, column]) =>
    column.quantity === undefined ? column.name : `${column.name}, ${unitFor(column, units[key]).symbol}`,
  );
  const cells: CellSpec[] = [
    { at: "A1", v: name, style: "title" },
    { at: "A2", v: note, style: "note" },
    ...heading.map((text, column): CellSpec => ({ at: addressOf(HEADING_ROW, column), v: text, style: "head" })),
  ];
  const figures = columns.map((_, column) => figureStyle(decimalsIn(rows.map((row) => row[column] ?? null))));
  const widths = columns.map(([key, { quantity }]) => (key === "pump" ? 24 : quantity === undefined ? 18 : 12));
  for (const [i, row] of rows.entries()) {
    for (const [column, value] of row.entries()) {
      const at = addressOf(HEADING_ROW + 1 + i, column);
      const style = columns[column]?.[1].quantity === undefined ? "text" : `figure ${column}`;
      cells.push(value === null ? { at, style } : { at, v: value, style });
    }
  }
  const box = { top: HEADING_ROW, left: 0, bottom: HEADING_ROW + rows.length, right: columns.length - 1 };
  return {
    name,
    columns: widths,
    rowHeights: { [HEADING_ROW + 1]: rowHeight(heading, widths, STYLES.head) },
    styles: { ...STYLES, ...Object.fromEntries(figures.map((style, column) => [`figure ${column}`, style])) },
    cells,
    names: { [rangeName]: rangeOf(box) },
    freezeRows: HEADING_ROW + 1,
    print: {
      area: rangeOf({ ...box, top: 0 }),
      orientation: "landscape",
      titleRows: `${HEADING_ROW + 1}:${HEADING_ROW + 1}`,
    },
  };
}
