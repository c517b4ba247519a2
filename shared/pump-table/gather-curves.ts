import type { PumpTableFindings } from "../../src/basis/finding-code.ts";
import { outOfRange } from "../../src/basis/method.ts";
import type { Quantity } from "../../src/basis/quantities.ts";
import { type Draft, type Finding, fail, type Result, succeed } from "../../src/basis/result.ts";
import type { Unit } from "../../src/basis/units.ts";
import { amountOf, withoutText } from "../cells/amount-cell.ts";
import { type Cell, isAbsent, isBlank, isCellError } from "../cells/cell.ts";
import { leftOut, wrongKind } from "../cells/refused-cell.ts";
import type { Heading, Rows } from "../tables/heading.ts";
import { cellPlace, rowNumber, type TablePlace } from "../tables/place.ts";
import { CURVE_COLUMNS, type CurveColumn, LIMIT_COLUMNS, type LimitColumn } from "./columns.ts";
import { type PointFigures, pointFigures } from "./point-figures.ts";

/** A curve while its rows are being read. Figures in engine units. */
export interface GatheredCurve {
  readonly speed: number | undefined;
  readonly diameter: number | undefined;
  readonly firstRow: number;
  /** Its points among the figures, from the first on. */
  readonly from: number;
  count: number;
  isOutOfOrder: boolean;
}

export interface GatheredPump {
  readonly name: string;
  readonly curves: GatheredCurve[];
  readonly limits: { [K in LimitColumn]?: number };
  readonly findings: Finding[];
}

/** A column of figures, where it stands. */
interface AmountColumn<K extends CurveColumn = CurveColumn> {
  readonly key: K;
  readonly at: number;
  readonly quantity: Quantity;
  readonly unit: Unit;
}

/** As many errors of one pump as anybody reads. */
const MOST_FINDINGS = 50;

/** The rows of a table of curves, gathered one after the other, with what is wrong with each. */
export class GatheredCurves {
  readonly pumps: GatheredPump[] = [];
  /** Efficiencies stand as the table has them until the whole column is known. */
  readonly figures: PointFigures;
  readonly #heading: Heading<CurveColumn>;
  readonly #place: TablePlace;
  readonly #columns: Readonly<Partial<Record<CurveColumn, AmountColumn>>>;
  readonly #limits: readonly AmountColumn<LimitColumn>[];
  readonly #pumpByName = new Map<string, GatheredPump>();
  #filled = 0;
  #row: readonly Cell[] = [];
  #index = 0;
  #pump: GatheredPump | undefined;
  #pumpCell: Cell = null;
  #curve: GatheredCurve | undefined;
  #efficiency = { greatest: 0, row: -1, isText: false };

  constructor(
    rows: Rows,
    heading: Heading<CurveColumn>,
    units: Readonly<Partial<Record<CurveColumn, Unit>>>,
    place: TablePlace,
  ) {
    this.#heading = heading;
    this.#place = place;
    const { at, firstRow } = heading;
    const columns = (Object.keys(units) as CurveColumn[]).map((key): AmountColumn => {
      const { quantity } = CURVE_COLUMNS[key] as { quantity: Quantity };
      return { key, quantity, at: at[key] as number, unit: units[key] as Unit };
    });
    this.#columns = Object.fromEntries(columns.map((column) => [column.key, column]));
    this.#limits = columns.filter((one): one is AmountColumn<LimitColumn> =>
      LIMIT_COLUMNS.some((key) => key === one.key),
    );
    this.figures = pointFigures(Math.max(0, rows.length - firstRow));
    for (let index = firstRow; index < rows.length; index += 1) {
      this.#index = index;
      this.#row = rows[index] as readonly Cell[];
      if (this.#findsPump()) this.#readRow();
    }
  }

  /**
   * What a figure of the efficiency column is worth. A column whose greatest figure is at most 1 holds fractions,
   * whatever its heading says, since cells formatted as percent do; one over 1.5 holds per cent. Between the two nobody
   * can tell.
   */
  efficiencyScale(): Result<number> {
    const { greatest, row, isText } = this.#efficiency;
    const subject = this.#placeOf("efficiency", row);
    if (greatest > 100) return fail([outOfRange(subject, "percent", greatest / 100, "at most", 1)]);
    if (greatest > 1.5 || (isText && greatest === 0)) return succeed(0.01);
    if (greatest <= 1 && !isText) return succeed(1);
    return fail([{ code: "table-efficiency-unclear", kind: "error", subject, given: String(greatest) }]);
  }

  /** Whether the row is one of a pump: of the one above, of a new one, or of one met before. */
  #findsPump(): boolean {
    const cell = this.#row[this.#heading.at.pump as number] ?? null;
    const isKnown = this.#pump !== undefined;
    if (isKnown && cell === this.#pumpCell) return true;
    if (isBlank(cell)) {
      // A blank row may arrive as blanks or as zeros.
      if (this.#row.every(isBlank)) return false;
      if (isKnown) return true;
      const subject = this.#placeOf("pump");
      this.#newPump(subject).findings.push(...leftOut(subject, CURVE_COLUMNS.pump.wanted).findings);
      return false;
    }
    this.#curve = undefined;
    if (isCellError(cell) || typeof cell === "boolean") {
      const subject = this.#placeOf("pump");
      this.#newPump(subject).findings.push(...wrongKind(subject, cell, CURVE_COLUMNS.pump.wanted).findings);
      this.#pump = undefined;
      this.#pumpCell = null;
      return false;
    }
    const name = String(cell).trim();
    this.#pump = this.#pumpByName.get(name.toLowerCase()) ?? this.#newPump(name);
    this.#pumpByName.set(name.toLowerCase(), this.#pump);
    this.#pumpCell = cell;
    return true;
  }

  #newPump(name: string): GatheredPump {
    const made: GatheredPump = { name, curves: [], limits: {}, findings: [] };
    this.pumps.push(made);
    return made;
  }

  #readRow(): void {
    const { flow: flowColumn, head: headColumn, speed, diameter, npshRequired, power } = this.#columns;
    const flow = this.#amount(flowColumn);
    const head = this.#amount(headColumn);
    const curve = this.#curveAt(
      this.#amount(speed) || this.#curve?.speed,
      this.#amount(diameter) || this.#curve?.diameter,
    );
    for (const column of this.#limits) this.#takeLimit(column, this.#amount(column));
    if (flow === undefined) this.#note(leftOut(this.#placeOf("flow"), "a flow").findings);
    if (head === undefined) this.#note(leftOut(this.#placeOf("head"), "a head").findings);
    const efficiency = this.#efficiencyHere() ?? 0;
    const suction = this.#amount(npshRequired) ?? 0;
    const shaft = this.#amount(power) ?? 0;
    if (flow === undefined || head === undefined || Number.isNaN(flow) || Number.isNaN(head)) return;
    this.#holdOrder(curve, flow);
    const [figures, i] = [this.figures, this.#filled];
    figures.row[i] = this.#index;
    figures.flow[i] = flow;
    figures.head[i] = head;
    figures.efficiency[i] = efficiency;
    figures.npshRequired[i] = suction;
    figures.power[i] = shaft;
    this.#filled += 1;
    curve.count += 1;
  }

  /** The curve of the row above, or a new one. */
  #curveAt(speed: number | undefined, diameter: number | undefined): GatheredCurve {
    const last = this.#curve;
    if (last !== undefined && last.speed === speed && last.diameter === diameter) return last;
    const pump = this.#pump as GatheredPump;
    const known = pump.curves.find((one) => one.speed === speed && one.diameter === diameter);
    if (known !== undefined) {
      const facts = { first: rowNumber(this.#place, known.firstRow) };
      this.#problem("pump", { code: "table-curve-repeated", given: pump.name, facts });
    }
    const isOutOfOrder = known !== undefined;
    const made = { speed, diameter, firstRow: this.#index, from: this.#filled, count: 0, isOutOfOrder };
    this.#curve = made;
    pump.curves.push(made);
    return made;
  }

  #holdOrder(curve: GatheredCurve, flow: number): void {
    const before = curve.count === 0 ? Number.NEGATIVE_INFINITY : (this.figures.flow[this.#filled - 1] as number);
    if (flow > before || curve.isOutOfOrder) return;
    curve.isOutOfOrder = true;
    this.#problem("flow", {
      code: "table-flow-not-ascending",
      found: { quantity: "flow", value: flow },
      limit: { quantity: "flow", value: before, side: "above" },
    });
  }

  /** Nothing where the cell is blank; not a number where it cannot be read. */
  #amount(column: AmountColumn | undefined): number | undefined {
    if (column === undefined) return undefined;
    const cell = this.#row[column.at];
    const value =
      typeof cell === "number" && Number.isFinite(cell) ? cell * column.unit.factor : this.#odd(column, cell);
    if (value !== undefined && value < 0) {
      this.#note([outOfRange(this.#placeOf(column.key), column.quantity, value, "at least", 0)]);
    }
    return value;
  }

  /** A cell that is no plain number. */
  #odd({ key, quantity, unit }: AmountColumn, cell: Cell | undefined): number | undefined {
    if (cell === undefined || isAbsent(cell)) return undefined;
    const read = amountOf(withoutText(cell), quantity, unit, this.#placeOf(key));
    if (read.ok) return read.value;
    this.#note(read.findings);
    return Number.NaN;
  }

  /** As the table has it; percent or fraction is decided by the whole column. */
  #efficiencyHere(): number | undefined {
    const column = this.#columns.efficiency;
    const cell = column === undefined ? null : (this.#row[column.at] ?? null);
    const figure = withoutText(cell);
    if (typeof figure === "number" && Number.isFinite(figure)) {
      if (figure < 0) this.#note([outOfRange(this.#placeOf("efficiency"), "ratio", figure, "at least", 0)]);
      if (figure > this.#efficiency.greatest)
        this.#efficiency = { ...this.#efficiency, greatest: figure, row: this.#index };
      return figure;
    }
    const value = column === undefined ? undefined : this.#odd(column, cell);
    if (value === undefined || Number.isNaN(value)) return value;
    this.#efficiency.isText = true;
    return value * 100;
  }

  #takeLimit({ key, quantity }: AmountColumn<LimitColumn>, value: number | undefined): void {
    const { limits, name } = this.#pump as GatheredPump;
    if (value === undefined || value === 0 || Number.isNaN(value)) return;
    const stated = limits[key];
    limits[key] ??= value;
    if (stated === undefined || stated === value) return;
    const facts = { first: { quantity, value: stated } };
    this.#problem(key, { code: "table-limit-differs", given: name, found: { quantity, value }, facts });
  }

  #placeOf(key: CurveColumn, row = this.#index): string {
    return cellPlace(this.#place, row, this.#heading.at[key] ?? 0, CURVE_COLUMNS[key].name);
  }

  #problem(key: CurveColumn, finding: Draft<keyof PumpTableFindings>): void {
    this.#note([{ ...finding, kind: "error", subject: this.#placeOf(key) }]);
  }

  #note(findings: readonly Finding[]): void {
    const noted = this.#pump?.findings;
    if (noted !== undefined && noted.length < MOST_FINDINGS) noted.push(...findings);
  }
}
