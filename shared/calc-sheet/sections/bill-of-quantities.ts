import { type TakeOffRow, takeOff } from "../../../src/estimate/take-off.ts";
import { flangeClassNamed } from "../../../src/pressure/flange-class.ts";
import { ratingSystem } from "../../catalogue/parameters/class.ts";
import { type Duty, segmentsOf } from "../../duty/duty.ts";
import { callById, constant, type Expression, partAt, rangeAt, sum, value } from "../expression.ts";
import type { PlanItem, SpillItem, TableItem } from "../plan.ts";
import { remark } from "./package-inputs.ts";
import { stated } from "./stated-input.ts";

const RECORD = "takeOff";

/** Columns of TAKEOFF, in its order. */
const COLUMNS = [
  { key: "line" },
  { key: "item" },
  { key: "size" },
  { key: "quantity" },
  { key: "order" },
  { key: "unit" },
  { key: "mass", quantity: "mass" },
  { key: "filled", quantity: "mass" },
  { key: "remark" },
] as const satisfies SpillItem["columns"];

function of(row: number, key: (typeof COLUMNS)[number]["key"]): Expression {
  return partAt(
    RECORD,
    COLUMNS.findIndex((column) => column.key === key),
    row,
  );
}

/** The rows that TAKEOFF gives for the lines as stated, each with its place in the spill. */
interface PlacedRow {
  readonly row: TakeOffRow;
  readonly at: number;
}

const ROWS_SAID =
  "The rows are those of the lines as written. Where a line on this sheet is changed so that rows come, go or change place, the figure beside them is CHANGED: write the sheet anew. Pieces and remarks stand beside the page.";

/** Bill of quantities of the two lines, live; pipe and hose by length, the rest by number. */
export function billOfQuantities(duty: Duty, above: readonly PlanItem[]): readonly PlanItem[] {
  const { flangeClass } = duty;
  const rows = rowsOf(duty);
  const lengths = rows.filter(({ row }) => row.isLength);
  const pieces = rows.filter(({ row }) => !row.isLength);
  const isStated = above.some((item) => item.kind === "input" && item.key === "flangeClass");
  const call = callById(
    "TAKEOFF",
    rangeAt("suctionLine"),
    rangeAt("dischargeLine"),
    flangeClass === undefined ? null : value("flangeClass"),
  );
  return [
    ...(isStated ? [] : stated(duty, "flangeClass")),
    {
      kind: "spill",
      key: RECORD,
      label: "Bill of quantities",
      expression: call,
      rows: rows.length + 1,
      columns: COLUMNS,
    },
    ...(lengths.length === 0 ? [] : [pipeTable(lengths)]),
    ...masses(lengths),
    pieceTable(pieces),
    { kind: "statement", text: ROWS_SAID },
    remark("takeOffNotes", "Quantities", call),
  ];
}

function rowsOf(duty: Duty): readonly PlacedRow[] {
  const system = ratingSystem(duty.unitSet);
  const { flangeClass } = duty;
  const named = flangeClass === undefined ? undefined : flangeClassNamed(flangeClass, system);
  const suctionLine = segmentsOf(duty.suctionLine);
  const dischargeLine = segmentsOf(duty.dischargeLine);
  if (suctionLine === undefined || dischargeLine === undefined) return [];
  const found = takeOff({
    suctionLine,
    dischargeLine,
    flangeClass: named?.ok === true ? named.value : null,
    system,
  });
  return found.ok ? found.value.map((row, at) => ({ row, at })) : [];
}

const LINES: Readonly<Record<TakeOffRow["line"], string>> = {
  suction: "Suction",
  discharge: "Discharge",
  both: "Both lines",
};

function labelOf({ line, item }: TakeOffRow): string {
  return `${LINES[line]}: ${item}`;
}

/** A figure of a row, as long as that row is still the one its printed label names. */
function held({ row, at }: PlacedRow, figure: Expression): Expression {
  return {
    op: "ifText",
    of: { op: "join", terms: [of(at, "line"), constant(", "), of(at, "item")] },
    is: `${row.line}, ${row.item}`,
    met: figure,
    otherwise: constant("CHANGED"),
  };
}

function pipeTable(rows: readonly PlacedRow[]): TableItem {
  return {
    kind: "table",
    key: "pipeQuantities",
    heading: "pipe and hose",
    columns: [
      { key: "length", label: "length", quantity: "length" },
      { key: "size", label: "size" },
      { key: "order", label: "to order", quantity: "length" },
      { key: "mass", label: "mass", quantity: "mass" },
      { key: "filled", label: "full of water", quantity: "mass" },
    ],
    rows: rows.map((placed) => ({
      label: labelOf(placed.row),
      cells: [
        held(placed, of(placed.at, "quantity")),
        of(placed.at, "size"),
        held(placed, of(placed.at, "order")),
        placed.row.mass === undefined ? constant("not known") : held(placed, of(placed.at, "mass")),
        placed.row.filled === undefined ? constant("not known") : held(placed, of(placed.at, "filled")),
      ],
    })),
  };
}

/** Of all pipe together, where none of it is unknown. */
function masses(rows: readonly PlacedRow[]): readonly PlanItem[] {
  if (rows.length < 2 || rows.some(({ row }) => row.mass === undefined)) return [];
  return [
    {
      kind: "result",
      key: "pipeMassEmpty",
      label: "Pipe of both lines, empty",
      quantity: "mass",
      expression: sum(...rows.map(({ at }) => of(at, "mass"))),
      how: "Sum of the table, plain pipe alone: fittings, flanges and couplings come on top.",
    },
    {
      kind: "result",
      key: "pipeMassFull",
      label: "Pipe of both lines, full of water",
      quantity: "mass",
      expression: sum(...rows.map(({ at }) => of(at, "filled"))),
      how: "Sum of the table. Slurry weighs more: PIPEMASS.",
    },
  ];
}

function pieceTable(rows: readonly PlacedRow[]): TableItem {
  return {
    kind: "table",
    key: "pieceQuantities",
    heading: "fittings, joints and bolting",
    columns: [
      { key: "number", label: "number" },
      { key: "size", label: "size" },
      { key: "order", label: "to order" },
    ],
    rows: rows.map((placed) => ({
      label: labelOf(placed.row),
      cells: [held(placed, of(placed.at, "quantity")), of(placed.at, "size"), held(placed, of(placed.at, "order"))],
    })),
  };
}
