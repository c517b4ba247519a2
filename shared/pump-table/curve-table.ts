import { append } from "../../src/basis/append.ts";
import type { UnitSet } from "../../src/basis/quantities.ts";
import { type Finding, fail, type Result, succeed } from "../../src/basis/result.ts";
import type { Unit } from "../../src/basis/units.ts";
import type { OfferedCurve, OfferedPump } from "../../src/pump/offered-pump.ts";
import type { PumpCurvePoint } from "../../src/pump/pump-curve-point.ts";
import { withoutText } from "../cells/amount-cell.ts";
import { type Heading, headingOf, noHeading, noRows, type Rows, usualHeading } from "../tables/heading.ts";
import { rowPlace, type TablePlace } from "../tables/place.ts";
import { unitsRead } from "../tables/read-table.ts";
import { CURVE_COLUMNS, type CurveColumn, USUAL_CURVE_ORDER } from "./columns.ts";
import { curveShapeFindings } from "./curve-shape.ts";
import { type GatheredCurve, GatheredCurves, type GatheredPump } from "./gather-curves.ts";
import type { PointFigures } from "./point-figures.ts";
import { limitsContradict } from "./pump-limits.ts";

/** A point of a curve and the row of the table it stands in. */
export interface TablePoint extends PumpCurvePoint {
  readonly row: number;
}

export interface TableCurve extends OfferedCurve {
  readonly points: readonly TablePoint[];
}

/** A pump of the table, with what is wrong or doubtful about its rows. With an error among them it is not usable. */
export interface TablePump extends OfferedPump {
  readonly curves: readonly TableCurve[];
  readonly findings: readonly Finding[];
  readonly usable: boolean;
}

export interface CurveTable {
  /** In the order of the table. */
  readonly pumps: readonly TablePump[];
  /** The unit each column was read in. */
  readonly units: Readonly<Partial<Record<CurveColumn, Unit>>>;
}

interface TableReading {
  readonly place: TablePlace;
  /** Units of columns whose heading states none. */
  readonly units: UnitSet;
}

/** As many errors of one table as anybody reads. */
const MOST_FINDINGS = 50;

/**
 * Reads a table of pump curves: one row a point, the rows of a curve together, flows ascending. The heading names the
 * columns in any order; without one they stand in their usual order. A blank pump, speed or impeller means the one
 * above.
 *
 * A mistake in the rows of one pump makes that pump unusable, and its findings name the cell. The whole table fails
 * where a column is missing, a unit is not known, it has no rows, or no pump of it is usable.
 */
export function readCurveTable(rows: Rows, { place, units: unitSet }: TableReading): Result<CurveTable> {
  const heading = headingOf<CurveColumn>(rows, CURVE_COLUMNS, place) ?? figuresAlone(rows, place);
  if (!heading.ok) return heading;
  const units = unitsRead(heading.value, CURVE_COLUMNS, unitSet);
  const gathered = new GatheredCurves(rows, heading.value, units, place);
  if (gathered.pumps.length === 0) return noRows(CURVE_COLUMNS, place);
  const scale = gathered.efficiencyScale();
  if (!scale.ok) return scale;
  const { efficiency } = gathered.figures;
  for (let i = 0; i < efficiency.length; i += 1) efficiency[i] = (efficiency[i] as number) * scale.value;
  const pumps = gathered.pumps.map((pump) => finished(pump, gathered.figures, place));
  if (pumps.some(({ usable }) => usable)) return succeed({ pumps, units }, heading.findings);
  const errors = pumps.flatMap(({ findings }) => findings.filter(({ kind }) => kind === "error"));
  return fail(errors.slice(0, MOST_FINDINGS));
}

/** The usual order of columns, for a table that begins with a name and figures for flow and head. */
function figuresAlone(rows: Rows, place: TablePlace): Result<Heading<CurveColumn>> {
  const heading = usualHeading<CurveColumn>(rows, CURVE_COLUMNS, place, USUAL_CURVE_ORDER);
  const row = heading.ok ? (rows[heading.value.firstRow] ?? []) : [];
  const isRow =
    typeof row[0] === "string" && [row[3], row[4]].every((cell = null) => typeof withoutText(cell) === "number");
  return !heading.ok || (isRow && row.length <= USUAL_CURVE_ORDER.length) ? heading : noHeading(CURVE_COLUMNS, place);
}

function finished(
  { name, curves, limits, findings: noted }: GatheredPump,
  figures: PointFigures,
  place: TablePlace,
): TablePump {
  const findings = [...noted, ...limitsContradict(limits, place.name, name)];
  // Where rows could not be read they have said so, and the shape of the rest means nothing.
  if (noted.length === 0) {
    for (const { from, count, firstRow } of curves) {
      append(findings, curveShapeFindings(figures, from, from + count - 1, rowPlace(place, firstRow), name));
    }
  }
  const usable = curves.length > 0 && !findings.some(({ kind }) => kind === "error");
  return { name, curves: usable ? curves.map((curve) => offered(curve, figures)) : [], limits, findings, usable };
}

/** A curve whose points are made when somebody asks for them. */
function offered({ speed, diameter, from, count }: GatheredCurve, figures: PointFigures): TableCurve {
  const { flow, head } = figures;
  let made: readonly TablePoint[] | undefined;
  return {
    ...(speed === undefined ? {} : { speed }),
    ...(diameter === undefined ? {} : { diameter }),
    outline: { flow, head, from, to: from + count - 1 },
    get points() {
      made ??= Array.from({ length: count }, (_, i) => pointOf(figures, from + i));
      return made;
    },
  };
}

function pointOf(figures: PointFigures, i: number): TablePoint {
  const { row, flow, head, efficiency, npshRequired, power } = figures;
  return {
    row: row[i] as number,
    flow: flow[i] as number,
    head: head[i] as number,
    efficiency: efficiency[i] as number,
    npshRequired: npshRequired[i] as number,
    power: power[i] as number,
  };
}
