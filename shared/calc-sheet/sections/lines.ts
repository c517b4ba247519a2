import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { runsOfOnePump, withoutHeader } from "../../../src/pipework/flow-share.ts";
import { FITTINGHEAD, FRICTIONHEAD, REYNOLDS, VELOCITY } from "../../catalogue/entries/pipe-and-friction.ts";
import { BORE } from "../../catalogue/entries/pipe-list.ts";
import { type Duty, type DutySegment, pumpsSideBySide } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import { bareNumber } from "../../duty/read-amount.ts";
import { volumeOfBore } from "../conversions.ts";
import {
  callOf,
  cell,
  constant,
  difference,
  type Expression,
  handles,
  product,
  ratio,
  sum,
  type TableOf,
} from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import {
  figure,
  type LineCell,
  type LineTableItem,
  type LineTableRow,
  type PlanItem,
  type StatedColumn,
  type WorkedColumn,
} from "../plan.ts";
import { hasLevels, hasShares, shareOfEach } from "./line-shares.ts";
import { inUnitSet, waitingFor } from "./stated-input.ts";
import { byArrangement, pumpsOfAll } from "./station.ts";

type WorkedKey = "bore" | "velocity" | "reynolds" | "pipeHead" | "fittingHead" | "water";

const STATED = [
  { key: "pipe", label: "pipe" },
  { key: "length", label: "length", quantity: "length" },
  { key: "fittings", label: "fittings" },
] as const satisfies readonly StatedColumn[];
const SHARE = { key: "share", label: "share of flow" } as const satisfies StatedColumn;
const LEVEL = { key: "level", label: "level at end", quantity: "elevation" } as const satisfies StatedColumn;

type Cells = Parameters<WorkedColumn<WorkedKey>["expression"]>[0];

/** Figures of each row at the flow that one run of it carries. */
function workedColumns(flowIn: (cell: Cells) => Expression, units: UnitSetName): readonly WorkedColumn<WorkedKey>[] {
  return [
    { key: "bore", label: "bore", quantity: "size", expression: (cell) => callOf(BORE, { pipe: cell("pipe") }) },
    {
      key: "velocity",
      label: "velocity",
      quantity: "velocity",
      expression: (cell) => callOf(VELOCITY, { flow: flowIn(cell), pipe: cell("pipe") }),
    },
    {
      key: "reynolds",
      label: "Reynolds number",
      expression: (cell) => callOf(REYNOLDS, { flow: flowIn(cell), pipe: cell("pipe"), ...LIQUID }),
    },
    {
      key: "pipeHead",
      label: "pipe friction",
      quantity: "head",
      expression: (cell) =>
        callOf(FRICTIONHEAD, { flow: flowIn(cell), pipe: cell("pipe"), length: cell("length"), ...LIQUID }),
    },
    {
      key: "fittingHead",
      label: "fittings",
      quantity: "head",
      expression: (cell) =>
        callOf(FITTINGHEAD, { flow: flowIn(cell), pipe: cell("pipe"), fittings: cell("fittings"), ...LIQUID }),
    },
    {
      key: "water",
      label: "volume of one run",
      quantity: "volume",
      expression: (cell) => volumeOfBore(cell("bore"), cell("length"), units),
    },
  ];
}

/** What stands in the workings beside a line of so many columns: the page has room for eight, two of them for fittings. */
function inWorkingsBeside(stated: number): ReadonlySet<WorkedKey> {
  return new Set(stated > STATED.length + 1 ? ["water", "reynolds", "bore"] : ["water", "reynolds"]);
}

function workedOf(duty: Duty, stated: number): readonly WorkedColumn<WorkedKey>[] {
  const flowIn = (cell: Cells): Expression => (hasShares(duty) ? product(FIELD.flow, cell("share")) : FIELD.flow);
  const inWorkings = inWorkingsBeside(stated);
  return workedColumns(flowIn, duty.unitSet).map((column) =>
    inWorkings.has(column.key) ? { ...column, isWorking: true } : column,
  );
}

const COLUMNS = [...STATED, SHARE, LEVEL, ...workedColumns(() => FIELD.flow, "SI")] as const;

/** The two lines of the duty as tables: as ranges they hold what is stated alone. */
export const LINES = {
  suctionLine: { key: "suctionLine", columns: COLUMNS },
  dischargeLine: { key: "dischargeLine", columns: COLUMNS },
} as const satisfies Record<LineKey, TableOf>;

/** Both lines of a state of the duty, their rows those of the lines stated. */
export type LinesOfState = Readonly<Record<LineKey, TableOf>>;

const TITLES: Readonly<Record<LineKey, string>> = { suctionLine: "Suction line", dischargeLine: "Discharge line" };

/** A line as a table: what was stated of each run, and what it does at the stated flow. */
export function lineTable(duty: Duty, key: LineKey): readonly PlanItem[] {
  const label = TITLES[key];
  // A level stands after the share, wherever functions take a line.
  const isLevelled = hasLevels(duty, key);
  const stated = [...STATED, ...(hasShares(duty) || isLevelled ? [SHARE] : []), ...(isLevelled ? [LEVEL] : [])];
  const table: LineTableItem<WorkedKey> = {
    kind: "line",
    key,
    label,
    stated,
    // A line still to be stated has one row, which says so.
    rows:
      duty[key].length === 0
        ? [{ pipe: "", length: "", fittings: NO_FITTINGS, share: 1, level: null }]
        : duty[key].map((_, row) => rowOf(duty, key, row)),
    typed: { of: key, rows: duty[key].map(({ row }) => row) },
    worked: workedOf(duty, stated.length),
  };
  return [{ kind: "section", id: key, text: label }, table, ...volumes(duty, key)];
}

/** Worked cells of the volumes. */
export const VOLUME = handles({ suctionVolume: "volume", runningVolume: "volume" });

/** What a pump has to draw, and what has to be filled, once both lines are stated. */
function volumes(duty: Duty, line: LineKey): readonly PlanItem[] {
  const { suctionLine, dischargeLine } = duty;
  if (line === "suctionLine" || suctionLine.length === 0 || dischargeLine.length === 0) return [];
  const pumps = pumpsSideBySide(duty);
  const water = (of: LineKey, times: (runs: number, one: DutySegment) => Expression): readonly Expression[] =>
    duty[of].map((one, row) =>
      product(cell(LINES[of], row, "water"), unknownRuns(duty, of, row) ?? times(one.segment?.runs ?? 1, one)),
    );
  return [
    figure(
      VOLUME.suctionVolume,
      "Volume, suction of one pump",
      sum(...water("suctionLine", (runs, { share }) => constant(share === "each" ? 1 : runsOfOnePump(runs, pumps)))),
      pumps === 1
        ? "All its rows: drawn out before it pumps."
        : "Of its own rows, and of those it has in common with others: what the first pump to start draws out, beside the casing.",
    ),
    figure(
      VOLUME.runningVolume,
      "Volume of the lines in use",
      sum(
        ...(["suctionLine", "dischargeLine"] as const).flatMap((of) =>
          water(of, (runs, { share }) =>
            share === "each" ? byArrangement(duty, constant(1), pumpsOfAll(duty)) : constant(runs),
          ),
        ),
      ),
      "All runs in use of both lines, filled before they are full.",
    ),
  ];
}

/** The cell that leaves open how many runs a row is: of its share, or of the pumps that the share is held against. */
function unknownRuns(duty: Duty, line: LineKey, row: number): Expression | undefined {
  const { typed, share } = duty[line][row] as DutySegment;
  if (share === undefined) return cell(LINES[line], row, "share");
  if (line === "dischargeLine" || (typed.share ?? "").trim() === "") return undefined;
  const unread = (["pumpsRunning", "arrangement"] as const).find((key) => duty.state[key] === "unreadable");
  return unread && FIELD[unread];
}

/** The flow in one run of a row at a flow of the whole line. */
export function flowInRow(duty: Duty, lines: LinesOfState, line: LineKey, row: number, flow: Expression): Expression {
  return hasShares(duty) ? product(flow, cell(lines[line], row, "share")) : flow;
}

/** What one run of a row carries of the flow of its line. */
export function shareAsStated(duty: Duty, line: LineKey, row: number): Expression {
  return hasShares(duty) ? cell(LINES[line], row, "share") : constant(1);
}

/** A run without fittings says so: a blank cell would reach the functions as 0 or as nothing, by platform. */
const NO_FITTINGS = "none";

function rowOf(duty: Duty, line: LineKey, row: number): LineTableRow {
  const one = duty[line][row] as DutySegment;
  const { typed, segment, isHeader } = one;
  const plain = bareNumber(typed.length);
  const named = withoutHeader(typed.fittings).text.trim();
  const fittings = [isHeader ? "header" : "", named].filter((words) => words !== "").join(", ");
  return {
    // What cannot be read stands as it was typed, and the functions say what is wrong with it.
    pipe: segment?.pipe.name ?? withoutHeader(typed.pipe).text.trim(),
    length: plain ?? (segment === undefined ? typed.length.trim() : inUnitSet(segment.length, "length", duty)),
    fittings: fittings === "" ? NO_FITTINGS : fittings,
    share: shareCell(duty, one),
    level: levelCell(duty, line, row),
  };
}

function shareCell(duty: Duty, { share }: DutySegment): LineCell {
  if (share === undefined) return waitingFor("Share");
  return share === "each" ? shareOfEach(duty) : share;
}

/** The level of the end of a row: as stated, or along the length between those that are. */
function levelCell(duty: Duty, line: LineKey, row: number): LineCell {
  const rows = duty[line];
  const own = rows[row] as DutySegment;
  const isGiven = ({ typed }: DutySegment): boolean => (typed.level ?? "").trim() !== "";
  if (isGiven(own)) {
    const typed = (own.typed.level ?? "").trim();
    const plain = bareNumber(typed);
    const isWrong = own.wrong.some(({ code }) => code === "line-climbs-beyond-length");
    if (isWrong) return waitingFor("Level at its end");
    return plain ?? (own.segment?.endLevel === undefined ? typed : inUnitSet(own.segment.endLevel, "elevation", duty));
  }
  const before = rows.findLastIndex((one, i) => i < row && isGiven(one));
  const after = rows.findIndex((one, i) => i > row && isGiven(one));
  const [start, end] = ENDS[line];
  const from = before < 0 ? start : cell(LINES[line], before, "level");
  const to = after < 0 ? end : cell(LINES[line], after, "level");
  const lengths = (upTo: number): Expression =>
    sum(...Array.from({ length: upTo - before }, (_, i) => cell(LINES[line], before + 1 + i, "length")));
  if (after < 0 && row === rows.length - 1) return to;
  return sum(from, product(difference(to, from), ratio(lengths(row), lengths(after < 0 ? rows.length - 1 : after))));
}

/** Where a line begins and ends. */
const ENDS = {
  suctionLine: [FIELD.sourceLevel, FIELD.pumpLevel],
  dischargeLine: [FIELD.pumpLevel, FIELD.deliveryLevel],
} as const satisfies Record<LineKey, readonly [Expression, Expression]>;
