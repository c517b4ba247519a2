import type { PumpTableFindings } from "../../src/basis/finding-code.ts";
import { outOfRange } from "../../src/basis/method.ts";
import type { Quantity, UnitSet } from "../../src/basis/quantities.ts";
import { readQuantity } from "../../src/basis/quantity-text.ts";
import { type Draft, type Finding, fail, type Result, succeed } from "../../src/basis/result.ts";
import type { Unit } from "../../src/basis/units.ts";
import type { OfferedCurve, OfferedPump, PumpLimits } from "../../src/pump/offered-pump.ts";
import type { PumpCurvePoint } from "../../src/pump/pump-curve-point.ts";
import { type Cell, isAbsent, isCellError } from "../cells/cell.ts";
import { wrongKind } from "../cells/refused-cell.ts";
import { CURVE_COLUMNS, type CurveColumn, LIMIT_COLUMNS, type LimitColumn, USUAL_CURVE_ORDER } from "./columns.ts";
import { curveShapeFindings } from "./curve-shape.ts";
import { type Heading, headingOf } from "./heading.ts";
import { cellPlace, rowNumber, type TablePlace } from "./place.ts";
import { type PointFigures, pointFigures } from "./point-figures.ts";

export type Rows = readonly (readonly Cell[])[];

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

const NEEDED = ["pump", "flow", "head"] as const;
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
export function readCurveTable(rows: Rows, { place, units }: TableReading): Result<CurveTable> {
  const found = headingOf<CurveColumn>(rows, CURVE_COLUMNS, NEEDED, place) ?? usualHeading(rows, place);
  if (!found.ok) return found;
  const heading = found.value;
  const unitOf = (key: CurveColumn): Unit => {
    const { quantity } = CURVE_COLUMNS[key] as { quantity?: Quantity };
    return heading.units[key] ?? units[quantity ?? "ratio"];
  };
  const { figures, pumps, efficiencyScale } = gather(rows, heading, unitOf, place);
  if (pumps.length === 0) {
    return fail([{ code: "table-no-rows", severity: "error", subject: place.name }]);
  }
  if (!efficiencyScale.ok) return efficiencyScale;
  const scale = efficiencyScale.value;
  if (scale !== 1)
    figures.efficiency.forEach((efficiency, i, all) => {
      all[i] = efficiency * scale;
    });
  const read = pumps.map((pump) => finished(pump, figures));
  if (read.some(({ usable }) => usable)) {
    const keys = Object.keys(heading.at) as CurveColumn[];
    return succeed({ pumps: read, units: Object.fromEntries(keys.map((key) => [key, unitOf(key)])) });
  }
  return fail(
    read
      .flatMap(({ findings }) => findings)
      .filter(({ severity }) => severity === "error")
      .slice(0, MOST_FINDINGS),
  );
}

/** The usual order of columns, for a table that begins with figures: a text, then numbers for flow and head. */
function usualHeading(rows: Rows, place: TablePlace): Result<Heading<CurveColumn>> {
  const first = rows.findIndex((row) => !row.every(isAbsent));
  const row = rows[first];
  if (row === undefined) return fail([{ code: "table-no-rows", severity: "error", subject: place.name }]);
  const startsWithFigures = typeof row[0] === "string" && typeof row[3] === "number" && typeof row[4] === "number";
  if (!startsWithFigures || row.length > USUAL_CURVE_ORDER.length) {
    const suggestions = USUAL_CURVE_ORDER.map((key) => CURVE_COLUMNS[key].name);
    return fail([{ code: "table-heading-missing", severity: "error", subject: place.name, suggestions }]);
  }
  const at = Object.fromEntries(USUAL_CURVE_ORDER.slice(0, row.length).map((key, i) => [key, i]));
  return succeed({ at, units: {}, firstRow: first });
}

/** A curve while its rows are being read. Figures in engine units. */
interface GatheredCurve {
  readonly speed: number | undefined;
  readonly diameter: number | undefined;
  readonly firstRow: number;
  /** Its points among the figures, from the first on. */
  readonly from: number;
  count: number;
  isOutOfOrder: boolean;
}

interface GatheredPump {
  readonly name: string;
  readonly place: TablePlace;
  readonly curves: GatheredCurve[];
  readonly limits: { [K in LimitColumn]?: number };
  readonly findings: Finding[];
}

interface Gathered {
  readonly figures: PointFigures;
  readonly pumps: readonly GatheredPump[];
  /** What a figure of the efficiency column is worth. */
  readonly efficiencyScale: Result<number>;
}

function gather(
  rows: Rows,
  heading: Heading<CurveColumn>,
  unitOf: (key: CurveColumn) => Unit,
  place: TablePlace,
): Gathered {
  const { at, firstRow } = heading;
  const figures = pointFigures(Math.max(0, rows.length - firstRow));
  let filled = 0;
  const pumps: GatheredPump[] = [];
  const pumpByName = new Map<string, GatheredPump>();
  const efficiencies = { greatest: 0, row: -1, isPercentText: false };
  let pump: GatheredPump | undefined;
  let curve: GatheredCurve | undefined;
  let pumpCell: Cell = null;
  let row: readonly Cell[] = [];
  let index = 0;

  function reader(key: CurveColumn): () => number | undefined {
    const column = at[key];
    if (column === undefined) return () => undefined;
    const { factor } = unitOf(key);
    const { name, quantity } = CURVE_COLUMNS[key] as { name: string; quantity: Quantity };
    return () => {
      const cell = row[column];
      if (typeof cell === "number" && Number.isFinite(cell)) return cell * factor;
      if (cell === undefined || isAbsent(cell)) return undefined;
      const subject = cellPlace(place, index, column, name);
      const read = readOddCell(cell, quantity, subject);
      if (read.ok) return read.value;
      note(read.findings);
      return Number.NaN;
    };
  }
  const note = (findings: readonly Finding[]): void => {
    if (pump !== undefined && pump.findings.length < MOST_FINDINGS) pump.findings.push(...findings);
  };
  const subjectOf = (key: CurveColumn): string => cellPlace(place, index, at[key] ?? 0, CURVE_COLUMNS[key].name);
  const problem = (key: CurveColumn, finding: Draft<keyof PumpTableFindings | "left-out">): void => {
    note([{ ...finding, severity: "error", subject: subjectOf(key) }]);
  };
  const mustBe = (key: CurveColumn, quantity: Quantity, value: number, side: "above" | "at least"): void =>
    note([outOfRange(subjectOf(key), quantity, value, side, 0)]);

  const flowOf = reader("flow");
  const headOf = reader("head");
  const speedOf = reader("speed");
  const diameterOf = reader("diameter");
  const npshOf = reader("npshRequired");
  const powerOf = reader("power");
  const limitsOf = LIMIT_COLUMNS.filter((key) => at[key] !== undefined).map((key) => [key, reader(key)] as const);
  const efficiencyColumn = at.efficiency;
  const pumpColumn = at.pump as number;

  /** As the table has it; percent or fraction is decided by the whole column. */
  function efficiencyOf(): number | undefined {
    const cell = efficiencyColumn === undefined ? undefined : row[efficiencyColumn];
    if (typeof cell === "number" && Number.isFinite(cell)) {
      if (cell > efficiencies.greatest) {
        efficiencies.greatest = cell;
        efficiencies.row = index;
      }
      return cell;
    }
    if (cell === undefined || isAbsent(cell)) return undefined;
    const subject = cellPlace(place, index, efficiencyColumn as number, CURVE_COLUMNS.efficiency.name);
    const read = readOddCell(cell, "percent", subject);
    if (!read.ok) {
      note(read.findings);
      return Number.NaN;
    }
    efficiencies.isPercentText = true;
    return read.value * 100;
  }

  function startPump(cell: Cell): boolean {
    if (isCellError(cell) || typeof cell === "boolean") {
      const subject = cellPlace(place, index, pumpColumn, CURVE_COLUMNS.pump.name);
      const given = cell;
      const unnamed = newPump(subject);
      unnamed.findings.push(...wrongKind(subject, given, "the name of a pump").findings);
      return false;
    }
    const name = String(cell).trim();
    pump = pumpByName.get(name.toLowerCase()) ?? newPump(name);
    pumpByName.set(name.toLowerCase(), pump);
    return true;
  }

  function newPump(name: string): GatheredPump {
    const made: GatheredPump = { name, place, curves: [], limits: {}, findings: [] };
    pumps.push(made);
    return made;
  }

  function startCurve(speed: number | undefined, diameter: number | undefined): GatheredCurve {
    const known = pump?.curves.find((one) => one.speed === speed && one.diameter === diameter);
    if (known !== undefined) {
      problem("pump", {
        code: "table-curve-repeated",
        given: pump?.name ?? "",
        facts: { first: rowNumber(place, known.firstRow) },
      });
    }
    const made: GatheredCurve = {
      speed,
      diameter,
      firstRow: index,
      from: filled,
      count: 0,
      isOutOfOrder: known !== undefined,
    };
    pump?.curves.push(made);
    return made;
  }

  for (index = firstRow; index < rows.length; index += 1) {
    row = rows[index] as readonly Cell[];
    const cell = row[pumpColumn] ?? null;
    const isSamePump = cell === pumpCell && pump !== undefined;
    if (!isSamePump) {
      if (isAbsent(cell) || cell === 0) {
        // A blank row may arrive as blanks or as zeros.
        if (row.every((one) => isAbsent(one) || one === 0)) continue;
        if (pump === undefined) {
          const subject = cellPlace(place, index, pumpColumn, CURVE_COLUMNS.pump.name);
          newPump(subject).findings.push({
            code: "left-out",
            severity: "error",
            subject,
            suggestions: ["the name of the pump"],
          });
          continue;
        }
      } else {
        if (!startPump(cell)) {
          pump = undefined;
          curve = undefined;
          pumpCell = null;
          continue;
        }
        curve = undefined;
        pumpCell = cell;
      }
    }
    const flow = flowOf();
    const head = headOf();
    const speed = speedOf() || curve?.speed;
    const diameter = diameterOf() || curve?.diameter;
    if (curve === undefined || curve.speed !== speed || curve.diameter !== diameter) {
      curve = startCurve(speed, diameter);
      if (speed !== undefined && speed < 0) mustBe("speed", "speed", speed, "above");
      if (diameter !== undefined && diameter < 0) mustBe("diameter", "size", diameter, "above");
    }
    for (const [key, read] of limitsOf) takeLimit(key, read());
    if (flow === undefined) problem("flow", { code: "left-out", suggestions: ["a flow"] });
    if (head === undefined) problem("head", { code: "left-out", suggestions: ["a head"] });
    const efficiency = efficiencyOf();
    const npshRequired = npshOf();
    const power = powerOf();
    if (flow === undefined || head === undefined || Number.isNaN(flow) || Number.isNaN(head)) continue;
    if (flow < 0) mustBe("flow", "flow", flow, "at least");
    if (head < 0) mustBe("head", "head", head, "at least");
    if (npshRequired !== undefined && npshRequired < 0) mustBe("npshRequired", "head", npshRequired, "at least");
    if (power !== undefined && power < 0) mustBe("power", "power", power, "at least");
    if (efficiency !== undefined && efficiency < 0) {
      mustBe("efficiency", "ratio", efficiency, "at least");
    }
    const before = curve.count === 0 ? undefined : figures.flow[filled - 1];
    if (before !== undefined && flow <= before && !curve.isOutOfOrder) {
      curve.isOutOfOrder = true;
      problem("flow", {
        code: "table-flow-not-ascending",
        found: { quantity: "flow", value: flow },
        limit: { quantity: "flow", value: before, side: "above" },
      });
    }
    figures.row[filled] = index;
    figures.flow[filled] = flow;
    figures.head[filled] = head;
    figures.efficiency[filled] = efficiency ?? 0;
    figures.npshRequired[filled] = npshRequired ?? 0;
    figures.power[filled] = power ?? 0;
    filled += 1;
    curve.count += 1;
  }

  function takeLimit(key: LimitColumn, value: number | undefined): void {
    if (pump === undefined || value === undefined || value === 0 || Number.isNaN(value)) return;
    const stated = pump.limits[key];
    if (stated === undefined) pump.limits[key] = value;
    else if (stated !== value) {
      const { quantity } = CURVE_COLUMNS[key];
      problem(key, {
        code: "table-limit-differs",
        given: pump.name,
        found: { quantity, value },
        facts: { first: { quantity, value: stated } },
      });
    }
  }

  const efficiencyAt = cellPlace(place, efficiencies.row, efficiencyColumn ?? 0, CURVE_COLUMNS.efficiency.name);
  return { figures, pumps, efficiencyScale: scaleOf(efficiencies.greatest, efficiencies.isPercentText, efficiencyAt) };
}

/** A number with its own unit; refuses any other text, an error value, and TRUE or FALSE. */
function readOddCell(cell: Cell, quantity: Quantity, subject: string): Result<number> {
  if (typeof cell === "string") return readQuantity(cell, quantity, subject);
  return wrongKind(subject, cell, "a number");
}

/**
 * A column whose greatest figure is at most 1 holds fractions, whatever its heading says, since cells formatted as
 * percent do; one over 1.5 holds per cent. Between the two nobody can tell.
 */
function scaleOf(greatest: number, isPercentText: boolean, subject: string): Result<number> {
  if (greatest > 100) {
    return fail([outOfRange(subject, "percent", greatest / 100, "at most", 1)]);
  }
  if (greatest > 1.5 || (isPercentText && greatest === 0)) return succeed(0.01);
  if (greatest > 1 || isPercentText) {
    const given = String(greatest);
    return fail([{ code: "table-efficiency-unclear", severity: "error", subject, given }]);
  }
  return succeed(1);
}

function finished(pump: GatheredPump, figures: PointFigures): TablePump {
  const { name, place, limits, curves } = pump;
  const findings = [...pump.findings, ...limitFindings(pump)];
  // Where rows could not be read they have said so, and the shape of the rest means nothing.
  if (pump.findings.length === 0) {
    for (const { from, count, firstRow } of curves) {
      const subject = `${place.name} row ${rowNumber(place, firstRow)}`;
      findings.push(...curveShapeFindings(figures, from, from + count - 1, subject, name));
    }
  }
  const usable = curves.length > 0 && !findings.some(({ severity }) => severity === "error");
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

function limitFindings({ name, place, limits }: GatheredPump): readonly Finding[] {
  return limitsContradict(limits).map(([least, greatest]) => ({
    code: "table-limits-contradict",
    severity: "error",
    subject: place.name,
    given: name,
    facts: { least: CURVE_COLUMNS[least].name, greatest: CURVE_COLUMNS[greatest].name },
  }));
}

const LIMIT_PAIRS = [
  ["leastSpeed", "greatestSpeed"],
  ["leastImpeller", "greatestImpeller"],
] as const satisfies readonly (readonly [LimitColumn, LimitColumn])[];

/** Pairs of limits whose least is more than their greatest. */
export function limitsContradict(limits: PumpLimits): readonly (readonly [LimitColumn, LimitColumn])[] {
  return LIMIT_PAIRS.filter(
    ([least, greatest]) => (limits[least] ?? 0) > (limits[greatest] ?? Number.POSITIVE_INFINITY),
  );
}
