import { SPEED_RATIO_RANGE } from "../../../src/pump/running-pump.ts";
import { PUMPHEAD } from "../../catalogue/entries/pump.ts";
import { SPEEDTABLE } from "../../catalogue/entries/speed-table.ts";
import type { Duty, DutyPump } from "../../duty/duty.ts";
import {
  type Call,
  type ColumnOf,
  callOf,
  cell,
  constant,
  type Expression,
  greatest,
  handle,
  handles,
  ifAtLeast,
  ifError,
  ifNumber,
  ifText,
  join,
  least,
  part,
  product,
  range,
  ratio,
  spillOf,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { inWords, type PlanItem, spill, statement, type TableColumn, type TableItem } from "../plan.ts";
import { speedsNotFound } from "./case-states.ts";
import { isSpeedRangePlaced } from "./drive.ts";
import {
  asStated,
  caseStatesOf,
  type DutyState,
  dutyCases,
  isStation,
  recordOf,
  systemOf,
  whereGiven,
} from "./duty-cases.ts";
import { INSIDE, inRegion, NONE, REGION } from "./duty-region.ts";
import { stateCell } from "./duty-states.ts";
import { changesWithPumps, hasShares } from "./line-shares.ts";
import { LINES } from "./lines.ts";
import { POINT } from "./operating-point.ts";
import { PUMP } from "./pump.ts";
import { listed, MARK, worstNames, worstTable } from "./worst-states.ts";

/** The cases of the user beside one another: what is asked for, whether it is met, and what else is looked at. */
export const RESULTS = tableOf("caseResults", {
  headAtFlow: "head",
  verdict: null,
  headToSelect: "head",
  efficiency: "percent",
  npshAvailable: "head",
  leastVelocity: "velocity",
  greatestVelocity: "velocity",
});

type ResultKey = ColumnOf<typeof RESULTS>;

/** Head of the pumps at the flow asked for, on the curve without solids; at the speed stated where a state has its own. */
export function headAtFlow(one: DutyState, duty: Duty): Expression {
  const row = caseStatesOf(duty).indexOf(one);
  return row < 0 ? POINT.headAtDuty : cell(RESULTS, row, "headAtFlow");
}

function headAtFlowIn(one: DutyState, duty: Duty): Expression {
  const { flow, sideBySide, inSeries, carrier, trimRatio, isAtOwnSpeed } = one;
  const speedRatio = isAtOwnSpeed ? asStated(duty).speedRatio : one.speedRatio;
  const call = callOf(PUMPHEAD, { curve: range(carrier), flow: ratio(flow, sideBySide), speedRatio, trimRatio });
  return product(call, inSeries);
}

/** The cases beside one another, after the states of the duty. */
export function caseResults(duty: Duty, pump: DutyPump): readonly PlanItem[] {
  const states = caseStatesOf(duty);
  if (states.length === 0 || duty.state.acceptanceGrade === "unreadable") return [];
  const columns = columnsOf(duty, pump);
  const table: TableItem = {
    kind: "table",
    key: RESULTS.key,
    heading: "case",
    columns,
    rows: states.map((one) => ({ label: one.label, cells: columns.map(({ fill }) => fill(one)) })),
  };
  return [
    { kind: "section", id: "caseResults", text: "Cases beside one another" },
    table,
    notMet(states),
    ...velocities(states),
    ...speedsNotFound(duty),
    ...speeds(duty, pump),
  ];
}

/** The cases that fall short, each with what is wrong with it; one that cannot be judged is not sure. */
function notMet(states: readonly DutyState[]): PlanItem {
  const found = states.map(({ label }, row): Expression => {
    const verdict = ifError(cell(RESULTS, row, "verdict"), NOT_SURE);
    return ifText(verdict, MEETS, constant(""), join(constant(`${MARK}${label}: `), verdict));
  });
  const all = join(...found);
  return inWords(CASES_NOT_MET, "Cases that do not meet the duty", ifText(all, "", constant("none"), listed(all)));
}

const VELOCITIES = "caseVelocities";

/** Which case flows slowest, where solids settle, and which fastest. */
function velocities(states: readonly DutyState[]): readonly PlanItem[] {
  const names = states.map(({ label }) => label);
  const looked = [
    { key: "leastVelocity", side: "least", handle: CASE_VELOCITIES.leastVelocityIn, title: "Minimum velocity in" },
    {
      key: "greatestVelocity",
      side: "greatest",
      handle: CASE_VELOCITIES.greatestVelocityIn,
      title: "Maximum velocity in",
    },
  ] as const;
  const facts = looked.map(({ key, side }) => ({
    key,
    label: `${side} velocity`,
    quantity: "velocity" as const,
    side,
    figure: (row: number) => cell(RESULTS, row, key),
  }));
  return [
    ...worstTable({ key: VELOCITIES, label: "Velocities of the cases" }, names, facts),
    ...looked.map(({ key, handle: of, title }) => inWords(of, title, worstNames(VELOCITIES, key, names.length))),
  ];
}

export const CASE_VELOCITIES = handles({ leastVelocityIn: null, greatestVelocityIn: null });

/** In words: which cases do not meet the duty, and why. */
export const CASES_NOT_MET = handle("casesNotMet", null);
const MEETS = "meets the duty";
const NOT_SURE = "not sure";

interface ResultColumn extends TableColumn<ResultKey> {
  readonly fill: (one: DutyState) => Expression;
}

function columnsOf(duty: Duty, pump: DutyPump): readonly ResultColumn[] {
  const hasNpsh = pump.curve.npshRequired !== undefined;
  const flow = (one: DutyState): Expression => part(recordOf(one), "flow");
  const all: readonly (readonly [is: boolean, key: ResultKey, label: string, fill: ResultColumn["fill"]])[] = [
    [
      true,
      "headAtFlow",
      "head of the pumps",
      // Of unlike pumps the operating flow is compared, and this is where they run.
      (one) => (isStation(one, duty) ? part(recordOf(one), "head") : headAtFlowIn(one, duty)),
    ],
    [true, "verdict", "verdict", (one) => verdictOn(one, duty, pump)],
    [true, "headToSelect", "head asked for", (one) => stateCell(duty, one, "headToSelect")],
    [
      pump.curve.efficiency !== undefined,
      "efficiency",
      "efficiency",
      (one) => whereGiven(recordOf(one), "efficiency", (figure) => product(figure, constant(100)), NONE),
    ],
    [hasNpsh, "npshAvailable", "NPSH available", (one) => stateCell(duty, one, "npshAvailable")],
    [true, "leastVelocity", "minimum velocity", (one) => velocityIn(one, duty, flow(one), least)],
    [true, "greatestVelocity", "maximum velocity", (one) => velocityIn(one, duty, flow(one), greatest)],
  ];
  return all
    .filter(([is]) => is)
    .map(([, key, label, fill]) => ({ ...RESULTS.columns.find((of) => of.key === key), key, label, fill }));
}

/** What is wrong with a case, the gravest first: head, NPSH, region. */
function verdictOn(one: DutyState, duty: Duty, { curve }: DutyPump): Expression {
  const place = cell(REGION, dutyCases(duty).indexOf(one), "place");
  const meets = constant(MEETS);
  const region = curve.efficiency === undefined ? meets : ifText(place, INSIDE, meets, inRegion(place));
  const [margin, kept] = [stateCell(duty, one, "npshMargin"), stateCell(duty, one, "npshMarginKept")];
  const short = ifAtLeast(margin, constant(0), constant("NPSH BELOW THE MARGIN"), constant("NPSH SHORT: CAVITATION"));
  const npsh =
    curve.npshRequired === undefined
      ? region
      : ifNumber(stateCell(duty, one, "npshRequired"), ifAtLeast(margin, kept, region, short), "NPSH not known");
  const below = belowIn(one);
  const head = cell(RESULTS, caseStatesOf(duty).indexOf(one), "headAtFlow");
  if (isStation(one, duty)) return ifAtLeast(part(recordOf(one), "flow"), one.flow, npsh, below);
  return ifAtLeast(head, stateCell(duty, one, "headToSelect"), npsh, below);
}

/** Where no siphon is earned it is the summit that the pumps fall short of. */
function belowIn({ route }: DutyState): Expression {
  const below = constant("BELOW THE DUTY");
  if (route === undefined) return below;
  return ifText(part(route.siphon, "credit"), "not earned", constant("BELOW THE DUTY: over the summit"), below);
}

/** The least or greatest velocity in any run of both lines, at a flow of all pumps together. */
function velocityIn(
  { lines }: DutyState,
  duty: Duty,
  flow: Expression,
  of: (...terms: readonly Expression[]) => Expression,
): Expression {
  const runs = (["suctionLine", "dischargeLine"] as const).flatMap((line) =>
    Array.from({ length: Math.max(1, duty[line].length) }, (_, row) => {
      const stated = cell(LINES[line], row, "velocity");
      const segment = duty[line][row];
      if (lines === LINES || segment === undefined || !changesWithPumps(segment) || !hasShares(duty)) return stated;
      return product(stated, ratio(cell<string>(lines[line], row, "share"), cell(LINES[line], row, "share")));
    }),
  );
  return product(of(...runs), ratio(flow, FIELD.flow));
}

export const SPEEDS = tableOf("caseSpeeds", { speedRatio: "ratio", words: null, speed: "speed" });

/** The speed of each case, where any has its own. */
function speeds(duty: Duty, { speed }: DutyPump): readonly PlanItem[] {
  const states = caseStatesOf(duty);
  const normal = asStated(duty);
  if (states.every(({ speedRatio }) => speedRatio === normal.speedRatio)) return [];
  const columns = SPEEDS.columns
    .filter(({ key }) => key !== "speed" || speed !== undefined)
    .map((of) => ({ ...of, label: SPEED_LABELS[of.key] }));
  return [
    ...states
      .filter((one) => isResponseKnown(one, duty))
      .map((one) => spill(responseOf(one), `Speed table, ${one.words}`, responseCall(one, duty))),
    {
      kind: "table",
      key: SPEEDS.key,
      heading: "speed of each case",
      columns,
      rows: states.map((one) => ({
        label: one.label,
        cells: [
          one.speedRatio,
          speedWords(one, duty),
          ...(speed === undefined ? [] : [product(PUMP.curveSpeed, one.speedRatio)]),
        ],
      })),
    },
    ...(duty.speedControl === "variable" && states.some(({ isAtOwnSpeed }) => isAtOwnSpeed)
      ? [
          statement(
            "Each case runs at the speed that gives its flow: r² H(Q/r) is the head its system requires, without the margin on losses. Against a static head the flow does not go with the speed. Head is judged at the speed stated, the maximum.",
          ),
        ]
      : []),
  ];
}

const SPEED_LABELS: Readonly<Record<ColumnOf<typeof SPEEDS>, string>> = {
  speedRatio: "speed over that of the curve",
  words: "judged",
  speed: "speed",
};

const responseOf = ({ key }: DutyState) => spillOf(`${key}SpeedTable`, SPEEDTABLE);

/** Of pumps alike that share the flow at the speed that gives it. */
function isResponseKnown(one: DutyState, duty: Duty): boolean {
  return one.isAtOwnSpeed && duty.arrangement !== "series";
}

/** How the flow answers to the speed, whatever speeds there are. */
function responseCall(one: DutyState, duty: Duty): Call {
  return callOf(SPEEDTABLE, {
    flow: one.flow,
    curve: range(one.curve.table),
    systemCurve: range(systemOf(one, duty)),
    numberOfPumps: one.sideBySide,
    maximumSpeedRatio: constant(SPEED_RATIO_RANGE.most),
    SG: one.specificGravity,
  });
}

/** Beyond the range of speeds a case is throttled or run on and off. */
function speedWords(one: DutyState, duty: Duty): Expression {
  const percent = part(recordOf(one), "percentOfBestFlow");
  const low = constant("BELOW THE MINIMUM SHARE OF BEP FLOW");
  const within = constant("within its range");
  const response = part(responseOf(one), "response");
  const pinned = constant("PINNED BY THE STATIC HEAD: the control hunts");
  const steady = isResponseKnown(one, duty)
    ? ({
        op: "ifNumber",
        of: response,
        met: ifAtLeast(FIELD.mostResponse, response, within, pinned),
        otherwise: within,
      } as const)
    : within;
  const flows: Expression = {
    op: "ifNumber",
    of: percent,
    met: ifAtLeast(percent, FIELD.lowFlow, steady, low),
    otherwise: steady,
  };
  const below = constant("BELOW THE MINIMUM SPEED: throttle, or on and off");
  const isRanged = duty.state.leastSpeed !== "blank" && duty.pump?.speed !== undefined && isSpeedRangePlaced(duty);
  const slow = isRanged ? ifAtLeast(product(PUMP.curveSpeed, one.speedRatio), FIELD.leastSpeed, flows, below) : flows;
  const above = constant("ABOVE THE SPEED STATED: the flow is not reached");
  return one.isAtOwnSpeed ? ifAtLeast(asStated(duty).speedRatio, one.speedRatio, slow, above) : slow;
}
