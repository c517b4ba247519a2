import { SUBMERGENCE } from "../../catalogue/entries/submergence.ts";
import type { Duty } from "../../duty/duty.ts";
import {
  type Call,
  callOf,
  cell,
  constant,
  difference,
  type Expression,
  extreme,
  greatest,
  ifAtLeast,
  ifNumber,
  part,
  verdict,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { figure, type PlanItem, remark, spill, working } from "../plan.ts";
import { asStated, caseStatesOf, type DutyState, dutyCases, ofOnePump, recordOf } from "./duty-cases.ts";
import { flowInRow } from "./lines.ts";
import { stated } from "./stated-input.ts";
import { AT_BELL, BELL, bellIn, hasBell, isBellPlaced, SUMP } from "./sump-cells.ts";

/** The states the bell is judged in: without a pump those that state their own flow. */
export function bellStates(duty: Duty): readonly DutyState[] {
  return duty.pump === undefined ? [asStated(duty), ...caseStatesOf(duty)] : dutyCases(duty);
}

/** Flow into one bell: what one run of the first suction row carries. */
export function flowIntoBell(duty: Duty, one: DutyState): Expression {
  if (duty.pump === undefined) return flowInRow(duty, one.lines, "suctionLine", 0, one.flow);
  if (duty.otherPumps.length > 0 && duty.suctionLine[0]?.share === "each") return ofOnePump(one, duty, "flow");
  return flowInRow(duty, one.lines, "suctionLine", 0, part(recordOf(one), "flow"));
}

function levelIn({ suctionLift }: DutyState): Expression {
  return difference(FIELD.pumpLevel, suctionLift);
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
  const states = bellStates(duty);
  const isPlaced = isBellPlaced(duty);
  const columns = BELL.columns.filter(({ key }) => isPlaced || key === "flow" || key === "needed");
  const cells = (one: DutyState, row: number): Readonly<Record<(typeof BELL.columns)[number]["key"], Expression>> => ({
    flow: cell(AT_BELL, row, "flow"),
    verdict: verdict(cell(AT_BELL, row, "water"), part(bellIn(one), "needed"), "enough water", "VORTEX DRAWS AIR"),
    water: cell(AT_BELL, row, "water"),
    needed: part(bellIn(one), "needed"),
    margin: difference(cell(AT_BELL, row, "water"), part(bellIn(one), "needed")),
  });
  const said = [asStated(duty), ...caseStatesOf(duty)];
  return [
    ...stated(duty, "bellDiameter", "bellLevel"),
    working(AT_BELL, "Flow into the bell and water over it", states.length, [
      ["flow", "flow", (row) => flowIntoBell(duty, states[row] as DutyState)],
      ["water", "water", (row) => (isPlaced ? difference(levelIn(states[row] as DutyState), FIELD.bellLevel) : null)],
    ]),
    ...states.map((one, row) => spill(bellIn(one), `Bell, ${one.words}`, bellCall(duty, row))),
    {
      kind: "table",
      key: BELL.key,
      heading: "suction bell",
      columns: columns.map((column) => ({
        ...column,
        label: LABELS[column.key],
        ...(column.key === "margin" && { badBelow: 0 }),
      })),
      rows: states.map((one, row) => ({
        label: one.label,
        cells: columns.map(({ key }) => cells(one, row)[key]),
      })),
    },
    ...(isPlaced ? worst(states) : []),
    ...said.map((one) => {
      const row = states.findIndex(({ key }) => key === one.key);
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
  margin: "in hand",
} as const;

function worst(states: readonly DutyState[]): readonly PlanItem[] {
  const of = (key: "bellThatDoes" | "flowThatDoes" | "margin"): Expression => part(bellIn(states[0] as DutyState), key);
  return [
    {
      ...figure(
        SUMP.bellMargin,
        "Least water in hand over the bell",
        extreme("columnLeast", BELL, "margin", "not known"),
        "Of the rows above; below 0 a vortex draws air into the pump.",
        "main",
      ),
      badBelow: 0,
    },
    figure(
      SUMP.flowThatDoes,
      "Flow the bell stands as stated",
      ifNumber(of("flowThatDoes"), of("flowThatDoes"), "none: the water is no deeper than the bell is wide"),
      "Into this one bell, from the water over it at the source level stated.",
    ),
    figure(
      SUMP.bellThatDoes,
      "Bell that would do as stated",
      ifAtLeast(
        of("margin"),
        constant(0),
        constant("none needed: it has its water"),
        ifNumber(of("bellThatDoes"), of("bellThatDoes"), "no bell would do: less flow, more water or a plate"),
      ),
      "The nearest diameter that needs no more water than there is; else less flow, more water or a vortex plate.",
    ),
  ];
}
