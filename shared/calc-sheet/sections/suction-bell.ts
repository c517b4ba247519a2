import { SUBMERGENCE } from "../../catalogue/entries/submergence.ts";
import type { Duty } from "../../duty/duty.ts";
import {
  type Call,
  callOf,
  cell,
  constant,
  difference,
  type Expression,
  greatest,
  ifAtLeast,
  ifNumber,
  least,
  part,
  tableOf,
  verdict,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, inWords, type PlanItem, remark, spill, working } from "../plan.ts";
import { asStated, caseStatesOf, type DutyState, dutyCases, flowIn, ofOnePump } from "./duty-cases.ts";
import { flowInRow, LINES } from "./lines.ts";
import { stated } from "./stated-input.ts";
import { AT_BELL, BELL, bellIn, hasBell, isBellPlaced, isDrawnDown, SUMP } from "./sump-cells.ts";
import { worstNames, worstTable } from "./worst-states.ts";

/** The states the bell is judged in: without a pump those that state their own flow. */
function bellStates(duty: Duty): readonly DutyState[] {
  return duty.pump === undefined ? [asStated(duty), ...caseStatesOf(duty)] : dutyCases(duty);
}

/** What the bell is held against, a row each: the states, and the sump pumped down. */
export interface BellRow {
  readonly key: string;
  readonly label: string;
  readonly when: string;
  readonly flow: Expression;
  readonly level: Expression;
}

/** Every row of the bell, the duty as stated first. */
export function bellRows(duty: Duty): readonly BellRow[] {
  const ofStates = bellStates(duty).map((one) => ({
    key: one.key,
    label: one.label,
    when: `${one.words}${one.sourceWords}`,
    flow: flowIntoBell(duty, one),
    level: difference(FIELD.pumpLevel, one.suctionLift),
  }));
  return isDrawnDown(duty) ? [...ofStates, pumpedDown(duty)] : ofStates;
}

/** The level at which pumping stops, with the flow there. */
function pumpedDown(duty: Duty): BellRow {
  return {
    key: "stop",
    label: "pumped down",
    when: "pumped down to the level at which it stops",
    flow: flowInRow(duty, LINES, "suctionLine", 0, SUMP.drawdownFlowAtEnd),
    level: FIELD.sumpStopLevel,
  };
}

/** Flow into one bell: what one run of the first suction row carries. */
function flowIntoBell(duty: Duty, one: DutyState): Expression {
  if (duty.pump === undefined) return flowInRow(duty, one.lines, "suctionLine", 0, one.flow);
  if (duty.otherPumps.length > 0 && duty.suctionLine[0]?.share === "each") return ofOnePump(one, duty, "flow");
  return flowInRow(duty, one.lines, "suctionLine", 0, flowIn(one));
}

function bellCall(duty: Duty, row: number): Call {
  return callOf(SUBMERGENCE, {
    flow: cell(AT_BELL, row, "flow"),
    bellDiameter: FIELD.bellDiameter,
    // A rim above the water has none over it.
    ...(isBellPlaced(duty) && { submergence: greatest(constant(0), cell(AT_BELL, row, "water")) }),
  });
}

/** Water the bell needs in each state against what there is; nothing without a bell. */
export function suctionBell(duty: Duty): readonly PlanItem[] {
  if (!hasBell(duty)) return [];
  const rows = bellRows(duty);
  const isPlaced = isBellPlaced(duty);
  const columns = BELL.columns.filter(({ key }) => isPlaced || key === "flow" || key === "needed");
  const cells = (one: BellRow, row: number): Readonly<Record<(typeof BELL.columns)[number]["key"], Expression>> => ({
    flow: cell(AT_BELL, row, "flow"),
    verdict: verdict(cell(AT_BELL, row, "water"), part(bellIn(one), "needed"), "enough water", "VORTEX DRAWS AIR"),
    water: cell(AT_BELL, row, "water"),
    needed: part(bellIn(one), "needed"),
    margin: difference(cell(AT_BELL, row, "water"), part(bellIn(one), "needed")),
  });
  const said = [asStated(duty), ...caseStatesOf(duty)];
  return [
    ...stated(duty, "bellDiameter", "bellLevel"),
    working(AT_BELL, "Flow into the bell and water over it", rows.length, [
      ["flow", "flow", (row) => (rows[row] as BellRow).flow],
      ["water", "water", (row) => (isPlaced ? difference((rows[row] as BellRow).level, FIELD.bellLevel) : null)],
    ]),
    ...rows.map((one, row) => spill(bellIn(one), `Bell, ${one.label}`, bellCall(duty, row))),
    {
      kind: "table",
      key: BELL.key,
      heading: "suction bell",
      columns: columns.map((column) => ({
        ...column,
        label: LABELS[column.key],
        ...(column.key === "margin" && { badBelow: 0 }),
      })),
      rows: rows.map((one, row) => ({
        label: one.label,
        cells: columns.map(({ key }) => cells(one, row)[key]),
      })),
    },
    // Without its tolerance the states are not all known, nor the worst of them.
    ...(isPlaced && duty.state.acceptanceGrade !== "unreadable" ? worst(rows) : []),
    ...said.map((one) => {
      const row = rows.findIndex(({ key }) => key === one.key);
      return remark(
        { ...SUMP.bellNotes, key: `${one.key}BellNotes` },
        `Suction bell, ${one.words}`,
        bellCall(duty, row),
      );
    }),
  ];
}

const LABELS = {
  flow: "flow into it",
  verdict: "verdict",
  water: "water over it",
  needed: "needed",
  margin: "margin",
} as const;

/** The least water in hand and the bell that would do with it, carried down the rows. */
const WORST_BELL = tableOf("worstBell", { margin: "length", bell: "size" });

function worst(rows: readonly BellRow[]): readonly PlanItem[] {
  const flowThatDoes = part(bellIn(rows[0] as BellRow), "flowThatDoes");
  const bellOf = (row: number): Expression => {
    const bell = part(bellIn(rows[row] as BellRow), "bellThatDoes");
    return ifNumber(bell, bell, NO_BELL);
  };
  const margin = (row: number): Expression => cell(BELL, row, "margin");
  const before = (row: number, of: "margin" | "bell"): Expression => cell(WORST_BELL, row - 1, of);
  return [
    working(WORST_BELL, "Minimum spare water, carried down", rows.length, [
      ["margin", "margin", (row) => (row === 0 ? margin(0) : least(before(row, "margin"), margin(row)))],
      [
        "bell",
        "bell that would do",
        (row) =>
          row === 0 ? bellOf(0) : ifAtLeast(margin(row), before(row, "margin"), before(row, "bell"), bellOf(row)),
      ],
    ]),
    {
      ...figure(
        SUMP.bellMargin,
        "Minimum spare water over the bell",
        cell(WORST_BELL, rows.length - 1, "margin"),
        "Of the rows above; below 0 a vortex draws air into the pump.",
        "main",
      ),
      badBelow: 0,
    },
    ...(rows.length === 1 ? [] : worstIn(rows)),
    figure(
      SUMP.flowThatDoes,
      "Flow the bell stands as stated",
      ifNumber(flowThatDoes, flowThatDoes, "none: the water is no deeper than the bell is wide"),
      "Into this one bell, from the water over it at the source level stated.",
    ),
    figure(
      SUMP.bellThatDoes,
      "Bell that would do",
      ifAtLeast(
        SUMP.bellMargin,
        constant(0),
        constant("none needed: it has its water"),
        cell(WORST_BELL, rows.length - 1, "bell"),
      ),
      "In the row with the minimum spare water: the nearest diameter that needs no more water than there is; else less flow, more water or a vortex plate.",
    ),
  ];
}

const WORST_IN = "worstBellRow";

/** Which of the rows have the least water in hand; a row without a figure is not sure. */
function worstIn(rows: readonly BellRow[]): readonly PlanItem[] {
  const names = rows.map(({ label }) => label);
  const figureOf = (row: number): Expression => cell(BELL, row, "margin");
  const fact = { key: "margin", label: "spare water", quantity: "length", side: "least", figure: figureOf } as const;
  return [
    ...worstTable({ key: WORST_IN, label: "Minimum spare water over the bell" }, names, [fact]),
    inWords(SUMP.bellMarginIn, "Minimum spare water over the bell in", worstNames(WORST_IN, fact.key, names.length)),
  ];
}

const NO_BELL = "no bell would do: less flow, more water or a plate";
