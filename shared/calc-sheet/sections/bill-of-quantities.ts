import { type TakeOffRow, takeOff } from "../../../src/estimate/take-off.ts";
import { carrying } from "../../../src/pipework/flow-share.ts";
import type { Line } from "../../../src/pipework/line.ts";
import { flangeClassNamed } from "../../../src/pressure/flange-class.ts";
import { TAKEOFF } from "../../catalogue/entries/take-off.ts";
import { ratingSystem } from "../../catalogue/parameters/class.ts";
import { type Duty, pumpsSideBySide, segmentsOf } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import {
  callOf,
  cell,
  constant,
  type Expression,
  handles,
  ifText,
  join,
  part,
  range,
  spillOf,
  sum,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem, remark, spill, statement, type TableItem, working } from "../plan.ts";
import { shareOfEach } from "./line-shares.ts";
import { LINES, type LinesOfState, shareAsStated } from "./lines.ts";
import { stated } from "./stated-input.ts";
import { hasStandby, pumpsInstalled } from "./station.ts";

const BILL = handles({ takeOffNotes: null, pipeMassEmpty: "mass", pipeMassFull: "mass" });

const RECORD = spillOf("takeOff", TAKEOFF);

const COLUMNS = { pipe: null, length: "length", fittings: null, share: "ratio" } as const;
const INSTALLED = {
  suctionLine: tableOf("installedSuctionLine", COLUMNS),
  dischargeLine: tableOf("installedDischargeLine", COLUMNS),
};

/** Whether what is bought differs from what runs: the rows of standby pumps. */
function isOwnLines(duty: Duty): boolean {
  return hasStandby(duty) && [...duty.suctionLine, ...duty.dischargeLine].some(({ share }) => share === "each");
}

function callOn(duty: Duty) {
  const lines: LinesOfState = isOwnLines(duty) ? INSTALLED : LINES;
  return callOf(TAKEOFF, {
    suctionLine: range(lines.suctionLine),
    dischargeLine: range(lines.dischargeLine),
    flangeClass: FIELD.flangeClass,
  });
}

/** A line with a run for each pump installed where each has its own. */
function installedLine(duty: Duty, line: LineKey): PlanItem {
  const rows = duty[line];
  const name = line === "suctionLine" ? "Suction line" : "Discharge line";
  return working(INSTALLED[line], `${name}, for the quantities`, rows.length, [
    ["pipe", "pipe", (row) => cell(LINES[line], row, "pipe")],
    ["length", "length", (row) => cell(LINES[line], row, "length")],
    ["fittings", "fittings", (row) => cell(LINES[line], row, "fittings")],
    [
      "share",
      "share",
      (row) => (rows[row]?.share === "each" ? shareOfEach(duty, pumpsInstalled(duty)) : shareAsStated(duty, line, row)),
    ],
  ]);
}

/** The rows that TAKEOFF gives for the lines as stated, each with its place in the spill. */
type PlacedRow = TakeOffRow & { readonly at: number };

/** Pipe and hose of the two lines by length, live. Nothing until both are stated. */
export function billOfQuantities(duty: Duty): readonly PlanItem[] {
  if (!areLinesStated(duty)) return [];
  const rows = rowsOf(duty);
  const lengths = rows.filter(({ isLength }) => isLength);
  return [
    ...stated(duty, "flangeClass"),
    ...(isOwnLines(duty) ? [installedLine(duty, "suctionLine"), installedLine(duty, "dischargeLine")] : []),
    spill(RECORD, "Bill of quantities", callOn(duty), rows.length + 1),
    ...(lengths.length === 0 ? [] : [pipeTable(lengths)]),
    ...masses(lengths),
    statement(
      "The rows are those of the lines as they were written: the figure of a row that has come, gone or changed place since is CHANGED.",
    ),
    remark(BILL.takeOffNotes, "Quantities", callOn(duty)),
  ];
}

/** What else they are made of, by number, below what is printed. */
export function billOfPieces(duty: Duty): readonly PlanItem[] {
  if (!areLinesStated(duty)) return [];
  const pieces = rowsOf(duty).filter(({ isLength }) => !isLength);
  if (pieces.length === 0) return [];
  return [
    { kind: "section", id: "estimate", text: "Fittings, joints and bolting to order", isUnprinted: true },
    pieceTable(pieces),
  ];
}

function areLinesStated({ suctionLine, dischargeLine }: Duty): boolean {
  return suctionLine.length > 0 && dischargeLine.length > 0;
}

function rowsOf(duty: Duty): readonly PlacedRow[] {
  const { flangeClass, unitSet } = duty;
  const [suction, discharge] = [installed(duty, "suctionLine"), installed(duty, "dischargeLine")];
  if (suction === undefined || discharge === undefined) return [];
  const system = ratingSystem(unitSet);
  const named = flangeClass === undefined ? undefined : flangeClassNamed(flangeClass, system);
  const found = takeOff({
    suctionLine: suction,
    dischargeLine: discharge,
    flangeClass: named?.ok === true ? named.value : null,
    system,
  });
  return found.ok ? found.value.map((row, at) => ({ ...row, at })) : [];
}

/** The segments of a line, those of each pump as many as pumps are installed. */
function installed(duty: Duty, line: LineKey): Line | undefined {
  const { pumpsStandby = 0 } = duty;
  const runs = pumpsSideBySide(duty) + (duty.arrangement === "series" ? 0 : pumpsStandby);
  return segmentsOf(
    duty[line].map((one) =>
      one.share === "each" && one.segment !== undefined
        ? { ...one, segment: { ...one.segment, ...carrying(1 / runs, one.isHeader) } }
        : one,
    ),
  );
}

const LINE_NAMES: Readonly<Record<TakeOffRow["line"], string>> = {
  suction: "Suction",
  discharge: "Discharge",
  both: "Both lines",
};

type Column = (typeof RECORD)["columns"][number]["key"];

/** A row of a printed table: each figure as long as its row is still the one the printed label names. */
function printed(row: PlacedRow, ...columns: readonly Column[]): TableItem["rows"][number] {
  const at = (of: Column): Expression => part(RECORD, of, row.at);
  const name = join(at("line"), constant(", "), at("item"));
  const shown = (of: Column): Expression => {
    if (of === "size") return at(of);
    if ((of === "mass" || of === "filled") && row[of] === undefined) return constant("not known");
    return ifText(name, `${row.line}, ${row.item}`, at(of), constant("CHANGED"));
  };
  return { label: `${LINE_NAMES[row.line]}: ${row.item}`, cells: columns.map(shown) };
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
    rows: rows.map((placed) => printed(placed, "quantity", "size", "order", "mass", "filled")),
  };
}

/** Of all pipe together, where none of it is unknown. */
function masses(rows: readonly PlacedRow[]): readonly PlanItem[] {
  if (rows.length < 2 || rows.some(({ mass }) => mass === undefined)) return [];
  const total = (of: "mass" | "filled"): Expression => sum(...rows.map(({ at }) => part(RECORD, of, at)));
  return [
    figure(
      BILL.pipeMassEmpty,
      "Pipe of both lines, empty",
      total("mass"),
      "Sum of the table, plain pipe alone: fittings, flanges and couplings come on top.",
    ),
    figure(
      BILL.pipeMassFull,
      "Pipe of both lines, full of water",
      total("filled"),
      "Sum of the table. Slurry weighs more: PIPEMASS.",
    ),
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
    rows: rows.map((placed) => printed(placed, "quantity", "size", "order")),
  };
}
