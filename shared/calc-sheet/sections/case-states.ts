import { ATMOSPHERE, DENSITY, VAPORPRESSURE } from "../../catalogue/entries/liquid-and-site.ts";
import { SPEEDRATIO } from "../../catalogue/entries/pump.ts";
import type { Duty, DutyCase } from "../../duty/duty.ts";
import type { CaseFieldKey } from "../../duty/duty-text.ts";
import { densityOfWater, headOf } from "../conversions.ts";
import {
  type ColumnOf,
  callOf,
  cell,
  constant,
  difference,
  type Expression,
  greatest,
  type Handle,
  part,
  range,
  ratio,
  type TableOf,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { type ColumnFacts, type PlanItem, statement, working } from "../plan.ts";
import { liquidWords } from "./as-pumped.ts";
import { caseCurve } from "./case-curves.ts";
import { caseCell } from "./case-inputs.ts";
import { lastFlowOfAll, lastFlowOnWater, onWaterOf, reachOf } from "./drawn-curves.ts";
import type { DutyState } from "./duty-cases.ts";
import { totalHeadIn, unlessFull } from "./head.ts";
import { PUMP } from "./pump.ts";
import { byArrangement, withOthers } from "./station.ts";

/** What follows from the figures of a case, a row each; a blank cell is that of the duty as stated. */
const FIGURES = tableOf("caseFigures", {
  liquid: null,
  density: "density",
  specificGravity: "ratio",
  vapourHead: "head",
  atmosphere: "absolutePressure",
  staticHead: "head",
  suctionLift: "head",
  pressureHead: "head",
  sideBySide: null,
  inSeries: null,
});

/** What rests on the curve of the pump too. */
const RUNNING = tableOf("caseRunning", { speedRatio: null, reach: "flow" });

type FigureKey = ColumnOf<typeof FIGURES> | ColumnOf<typeof RUNNING>;

/** What a case has to state for each of them to be its own. */
const RESTS_ON: Readonly<Record<FigureKey, readonly CaseFieldKey[]>> = {
  liquid: ["liquid"],
  density: ["liquid", "temperature"],
  specificGravity: ["liquid", "temperature"],
  vapourHead: ["liquid", "temperature"],
  atmosphere: ["altitude"],
  staticHead: ["sourceLevel", "deliveryLevel"],
  suctionLift: ["sourceLevel"],
  pressureHead: ["sourcePressure", "deliveryPressure", "liquid", "temperature"],
  sideBySide: ["pumpsRunning"],
  inSeries: ["pumpsRunning"],
  speedRatio: [],
  reach: ["pumpsRunning", "speedRatio", "liquid", "temperature"],
};

/** Whether the case asks for the speed that gives its flow, or nobody can read that it does not. */
function asksForSpeed(duty: Duty, { given }: DutyCase): boolean {
  return duty.pump !== undefined && duty.speedControl !== "fixed" && !given.includes("speedRatio");
}

/** Whether it runs at that speed: of pumps alike. What unlike ones beside it leave of the flow goes with the speed itself. */
function isAtOwnSpeed(duty: Duty, one: DutyCase): boolean {
  return duty.furtherPumps === 0 && asksForSpeed(duty, one);
}

/** Said where the speed of a case is asked for and not worked out. */
export function speedsNotFound(duty: Duty): readonly PlanItem[] {
  if (duty.furtherPumps === 0 || !duty.cases.some((one) => asksForSpeed(duty, one))) return [];
  return [
    statement(
      "Beside unlike pumps the speed of a case is NOT worked out: the selected pump runs at its own speed ratio in every case that states none. State the speed ratio of the case; SPEEDTABLE gives it beside fixed pumps of the same curve.",
      "caution",
    ),
  ];
}

function ownFigure(duty: Duty, one: DutyCase, key: FigureKey): Handle | undefined {
  const isOfSpeed = key === "speedRatio" || key === "reach";
  const isOwn = RESTS_ON[key].some((field) => one.given.includes(field)) || (isOfSpeed && isAtOwnSpeed(duty, one));
  const row = duty.cases.indexOf(one);
  if (!isOwn) return undefined;
  return isOfSpeed ? cell(RUNNING, row, key) : cell(FIGURES, row, key);
}

/** The cases as states of the duty: what a case does not state is the duty's own cell. */
export function caseStates(
  duty: Duty,
  normal: DutyState,
  flowThrough: (one: DutyCase, row: number) => Pick<DutyState, "lines" | "roughness">,
): readonly DutyState[] {
  return duty.cases.map((one, row) => {
    const stated = (key: CaseFieldKey): Handle | undefined => caseCell(duty, one, key);
    const own = (key: FigureKey): Handle | undefined => ownFigure(duty, one, key);
    const { liquid, temperature } = normal.liquid;
    const hours = caseCell(duty, one, "hours");
    const pumps = stated("pumpsRunning");
    return {
      ...normal,
      key: `case${row + 1}`,
      label: one.name,
      words: one.name,
      systemName: one.name,
      flow: stated("flow") ?? normal.flow,
      sourceLevel: stated("sourceLevel") ?? normal.sourceLevel,
      deliveryLevel: stated("deliveryLevel") ?? normal.deliveryLevel,
      staticHead: own("staticHead") ?? normal.staticHead,
      suctionLift: own("suctionLift") ?? normal.suctionLift,
      sourcePressure: stated("sourcePressure") ?? normal.sourcePressure,
      deliveryPressure: stated("deliveryPressure") ?? normal.deliveryPressure,
      pressureHead: own("pressureHead") ?? normal.pressureHead,
      ...flowThrough(one, row),
      frictionMargin: stated("frictionMargin") ?? normal.frictionMargin,
      isMarginAssumed: normal.isMarginAssumed && stated("frictionMargin") === undefined,
      liquid: { liquid: own("liquid") ?? liquid, temperature: stated("temperature") ?? temperature },
      specificGravity: own("specificGravity") ?? normal.specificGravity,
      density: own("density") ?? normal.density,
      vapourHead: own("vapourHead") ?? normal.vapourHead,
      altitude: stated("altitude") ?? normal.altitude,
      atmosphere: own("atmosphere") ?? normal.atmosphere,
      ...caseCurve(duty, one, normal),
      speedRatio: stated("speedRatio") ?? own("speedRatio") ?? normal.speedRatio,
      pumps: pumps ?? normal.pumps,
      ...(pumps !== undefined && { count: one.duty.pumpsRunning ?? 1 }),
      sideBySide: own("sideBySide") ?? normal.sideBySide,
      inSeries: own("inSeries") ?? normal.inSeries,
      reach: own("reach") ?? normal.reach,
      ...(hours && { hours }),
      isAtOwnSpeed: isAtOwnSpeed(duty, one),
      sourceWords: stated("sourceLevel") === undefined ? normal.sourceWords : "",
    };
  });
}

/** The figures that the cases have of their own, in the workings. */
export function caseFigures(duty: Duty, states: readonly DutyState[]): readonly PlanItem[] {
  const { unitSet } = duty;
  const water = densityOfWater(duty.unitSet);
  const arranged = (series: Expression, parallel: Expression): Expression => byArrangement(duty, series, parallel);
  const made: Readonly<Record<ColumnOf<typeof FIGURES>, (state: DutyState, one: DutyCase) => Expression>> = {
    liquid: (_, one) => liquidWords(duty, caseCell(duty, one, "liquid") ?? FIELD.liquid),
    density: ({ liquid }) => callOf(DENSITY, liquid),
    specificGravity: ({ density }) => ratio(density, water),
    vapourHead: ({ liquid, density }) => headOf(callOf(VAPORPRESSURE, liquid), density, unitSet),
    atmosphere: ({ altitude }) => callOf(ATMOSPHERE, { altitude }),
    staticHead: ({ deliveryLevel, sourceLevel }) => difference(deliveryLevel, sourceLevel),
    suctionLift: ({ sourceLevel }) => difference(FIELD.pumpLevel, sourceLevel),
    pressureHead: ({ deliveryPressure, sourcePressure, density }) =>
      headOf(difference(deliveryPressure, sourcePressure), density, unitSet),
    sideBySide: ({ pumps }) => arranged(constant(1), withOthers(duty, pumps)),
    inSeries: ({ pumps }) => arranged(pumps, constant(1)),
  };
  return ownTable(duty, states, FIGURES, "What follows from each case", made);
}

/** What the line of a case asks for at its flow, without a margin. */
function lineHeadIn(state: DutyState): Expression {
  const through = totalHeadIn(state);
  const { route } = state;
  return route === undefined ? through : unlessFull(route.runsFull, through, part(route.siphon, "headHeld"));
}

/** The speed of a case at its flow, and how far its system curve has to reach. */
export function caseRunning(duty: Duty, states: readonly DutyState[]): readonly PlanItem[] {
  const made: Readonly<Record<ColumnOf<typeof RUNNING>, (state: DutyState, one: DutyCase) => Expression>> = {
    // The impeller as fitted scales as the speed does.
    speedRatio: (state) =>
      duty.state.speedControl === "unreadable"
        ? FIELD.speedControl
        : ratio(
            callOf(SPEEDRATIO, {
              curve: range(state.curve.table),
              flow: ratio(state.flow, state.sideBySide),
              head: ratio(lineHeadIn(state), state.inSeries),
            }),
            state.trimRatio,
          ),
    reach: (state) => {
      // The speed that gives the flow may be any; the system is drawn as far as the stated one goes, and past the flow.
      const ofChosen = lastFlowOnWater(state.isAtOwnSpeed ? PUMP.speedRatio : state.speedRatio);
      const last = lastFlowOfAll(duty, ofChosen, { ...state, otherCurve: onWaterOf });
      return reachOf(state.isAtOwnSpeed ? greatest(last, state.flow) : last);
    },
  };
  return ownTable(duty, states, RUNNING, "Speed of each case", made);
}

/** A row a case, filled where it has a figure of its own; without the columns that no case fills. */
function ownTable<C extends FigureKey>(
  duty: Duty,
  states: readonly DutyState[],
  table: TableOf<C>,
  label: string,
  made: Readonly<Record<C, (state: DutyState, one: DutyCase) => Expression>>,
): readonly PlanItem[] {
  const isFilled = ({ key }: { readonly key: C }): boolean =>
    duty.cases.some((one) => ownFigure(duty, one, key) !== undefined);
  const columns = table.columns.filter(isFilled).map(
    ({ key }): ColumnFacts<C> => [
      key,
      LABELS[key],
      (row) => {
        const one = duty.cases[row] as DutyCase;
        return ownFigure(duty, one, key) === undefined ? null : made[key](states[row] as DutyState, one);
      },
    ],
  );
  return columns.length === 0 ? [] : [working(table, label, duty.cases.length, columns)];
}

const LABELS: Readonly<Record<FigureKey, string>> = {
  liquid: "liquid as pumped",
  density: "density",
  specificGravity: "SG",
  vapourHead: "vapour head",
  atmosphere: "atmosphere",
  staticHead: "static head",
  suctionLift: "suction lift",
  pressureHead: "pressure head",
  sideBySide: "sharing the flow",
  inSeries: "adding heads",
  speedRatio: "speed ratio",
  reach: "system curve, maximum flow",
};
