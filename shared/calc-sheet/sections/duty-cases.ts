import { SIPHONCREDIT } from "../../catalogue/entries/route.ts";
import { OPERATINGPOINT } from "../../catalogue/entries/station.ts";
import { SYSTEMCURVE } from "../../catalogue/entries/system-and-suction.ts";
import type { ColumnKeyOf } from "../../catalogue/entry.ts";
import { ages } from "../../duty/aged-pipe.ts";
import { type Duty, type DutyCase, type DutyOtherPump, pumpsSideBySide } from "../../duty/duty.ts";
import { isSlurry } from "../../duty/slurry.ts";
import {
  constant,
  difference,
  type Expression,
  type Handle,
  ifNumber,
  part,
  ratio,
  spillOf,
  type TableOf,
  tableOf,
} from "../expression.ts";
import { CLEAR_LIQUID, FIELD, LIQUID } from "../field-handles.ts";
import { onWater, PUMPED } from "./as-pumped.ts";
import { caseCell } from "./case-inputs.ts";
import { caseStates } from "./case-states.ts";
import { IN_SERIES, SIDE_BY_SIDE, SPECIFIC_GRAVITY, SYSTEM_REACH } from "./drawn-curves.ts";
import { HEAD } from "./head.ts";
import { changesWithPumps } from "./line-shares.ts";
import { LINES, type LinesOfState } from "./lines.ts";
import { LIQUID_FIGURES } from "./liquid.ts";
import { NPSH } from "./npsh.ts";
import { liquidOfDuty, otherAsPumped, otherOnCarrier } from "./other-curves.ts";
import { PUMP, PUMP_CURVE } from "./pump.ts";
import { hasRoute, SIPHON } from "./route-cells.ts";
import { curveAsPumped, curveOnCarrier } from "./slurry-curve.ts";

type CurveTable = typeof PUMP_CURVE;

/** The curve of one pump in a state: as drawn for the liquid, or that with its head at an end of the tolerance. */
export interface StateCurve {
  readonly table: CurveTable;
  readonly drawn: CurveTable;
  readonly end?: "high" | "low";
}

/**
 * A state of the duty: what flows, between which ends, through which lines, by which pumps. Everything that is worked out
 * or judged in it reads these cells and asks no more of where the state comes from.
 */
export interface DutyState {
  /** Names its cells. */
  readonly key: string;
  readonly label: string;
  /** The same within a sentence. */
  readonly words: string;
  /** Flow asked of all pumps together. */
  readonly flow: Handle;
  readonly sourceLevel: Handle;
  readonly deliveryLevel: Handle;
  readonly staticHead: Handle;
  readonly suctionLift: Handle;
  readonly sourcePressure: Handle;
  readonly deliveryPressure: Handle;
  readonly pressureHead: Handle;
  readonly lines: LinesOfState;
  /** Roughness that the pipes of its lines have grown to; of a case, what leaves open whether they have. */
  readonly roughness?: Handle;
  readonly frictionMargin: Handle;
  /** Nobody stated it. */
  readonly isMarginAssumed: boolean;
  readonly liquid: { readonly liquid: Handle; readonly temperature: Handle };
  readonly specificGravity: Handle;
  readonly density: Handle;
  readonly vapourHead: Handle;
  readonly altitude: Handle;
  readonly atmosphere: Handle;
  readonly curve: StateCurve;
  /** The curve without the solids of a slurry, and how a head in the liquid is brought to it. */
  readonly carrier: CurveTable;
  readonly toCarrier: (head: Expression) => Expression;
  /** The curve of a further pump on its liquid. */
  readonly otherCurve: (pump: DutyOtherPump) => CurveTable;
  readonly speedRatio: Handle;
  readonly trimRatio: Handle;
  /** Pumps running, and how many of them share the flow or add their heads. */
  readonly pumps: Expression;
  readonly count: number;
  readonly sideBySide: Expression;
  readonly inSeries: Expression;
  /** The system curve reaches so far. */
  readonly reach: Handle;
  /** Of the system: "as stated", "greatest static head, aged pipe". */
  readonly systemName: string;
  /** In a year, where they are stated. */
  readonly hours?: Handle;
  /** At the speed that gives the flow asked for. */
  readonly isAtOwnSpeed: boolean;
  /** A slurry's line without its solids. */
  readonly isClear: boolean;
  /** One pump of several runs by itself. */
  readonly isAlone: boolean;
  /** The head to select for is asked for in it: the pumps as drawn, all of them. */
  readonly isAsked: boolean;
  /** A line with levels runs full in it wherever it may. */
  readonly isFull: boolean;
  /** Judged for giving much more than the flow asked for: no end of a range. */
  readonly isStated: boolean;
  /** The pumps may give the flow asked for or more. */
  readonly runsOut: boolean;
  /** Towards which end of the flows it lies, where it is a state of the ranges. */
  readonly towards?: "most" | "least";
  /** The source may stand so much higher in it than is counted. */
  readonly higherSource?: Expression;
  /** Where the source is counted to stand, in words after the state's label. */
  readonly sourceWords: string;
  /** What a line with levels asks of the pumps in it. */
  readonly route?: StateRoute;
}

/** Where the line of a state lies between its ends, and whether the fall beyond its summit is counted on. */
export interface StateRoute {
  /** Level the source stands at: a range of static heads is one of source levels. */
  readonly sourceLevel: Expression;
  /** What SIPHONCREDIT says of it. */
  readonly siphon: typeof SIPHON;
  /** "yes" where the line runs full at every flow. */
  readonly runsFull: Expression;
}

/** What a state made of the duty itself differs by. */
interface Made {
  readonly key: string;
  readonly label: string;
  readonly levels?: keyof typeof STATIC_HEADS;
  readonly isAged?: boolean;
  readonly end?: "high" | "low";
  readonly isAlone?: true;
  readonly isClear?: true;
  /** A siphon comes by itself, though none is counted on, wherever it may. */
  readonly isFull?: boolean;
}

const STATIC_HEADS = {
  stated: HEAD.staticHead,
  least: FIELD.leastStaticHead,
  greatest: FIELD.greatestStaticHead,
} as const;

const COLUMNS = { pipe: null, length: "length", fittings: null, share: "ratio", level: "elevation" } as const;

/**
 * The lines of a state in which pipe has aged, or other pumps run than stated, under a name of theirs; those stated where
 * neither makes them others.
 */
function linesIn(duty: Duty, isAged: boolean, pumps?: string): LinesOfState {
  const isOther = pumps !== undefined && [...duty.suctionLine, ...duty.dischargeLine].some(changesWithPumps);
  if (!isAged && !isOther) return LINES;
  return linesNamed(isOther ? pumps : "aged");
}

function linesNamed(of: string): LinesOfState {
  return { suctionLine: tableOf(`${of}SuctionLine`, COLUMNS), dischargeLine: tableOf(`${of}DischargeLine`, COLUMNS) };
}

const ENDS = {
  high: { ...PUMP_CURVE, key: "highCurve" },
  low: { ...PUMP_CURVE, key: "lowCurve" },
  clearHigh: { ...PUMP_CURVE, key: "clearHighCurve" },
  clearLow: { ...PUMP_CURVE, key: "clearLowCurve" },
} as const satisfies Readonly<Record<string, CurveTable>>;

function stateOf(duty: Duty, made: Made): DutyState {
  const { key, label, levels = "stated", isAged = false, end, isAlone = false, isClear = false } = made;
  const isFull = made.isFull ?? (isAlone || isClear);
  const drawn = isClear ? curveOnCarrier(duty) : curveAsPumped(duty);
  const towards = isAlone || isClear ? undefined : endOf(made);
  const lines = linesIn(duty, isAged, isAlone ? "alone" : undefined);
  const table = end === undefined ? drawn : ENDS[isClear ? (end === "high" ? "clearHigh" : "clearLow") : end];
  return {
    key,
    label,
    words: label.toLowerCase(),
    flow: FIELD.flow,
    sourceLevel: FIELD.sourceLevel,
    deliveryLevel: FIELD.deliveryLevel,
    staticHead: STATIC_HEADS[levels],
    suctionLift: NPSH.suctionLift,
    sourcePressure: FIELD.sourcePressure,
    deliveryPressure: FIELD.deliveryPressure,
    pressureHead: HEAD.pressureHead,
    lines,
    ...(isAged && { roughness: FIELD.agedRoughness }),
    frictionMargin: FIELD.frictionMargin,
    isMarginAssumed: duty.state.frictionMargin === "assumed",
    liquid: isClear ? CLEAR_LIQUID : LIQUID,
    specificGravity: isClear ? PUMPED.clearGravity : SPECIFIC_GRAVITY,
    density: LIQUID_FIGURES.density,
    vapourHead: NPSH.vapourHead,
    altitude: FIELD.altitude,
    atmosphere: LIQUID_FIGURES.atmosphere,
    curve: { table, drawn, ...(end && { end }) },
    carrier: curveOnCarrier(duty),
    toCarrier: (head) => (isClear ? head : onWater(duty, head)),
    otherCurve: (pump) => (isClear ? otherOnCarrier : otherAsPumped)(pump, liquidOfDuty(duty)),
    speedRatio: PUMP.speedRatio,
    trimRatio: PUMP.trimRatio,
    count: isAlone ? 1 : (duty.pumpsRunning ?? 1),
    pumps: isAlone ? constant(1) : FIELD.pumpsRunning,
    sideBySide: isAlone ? constant(1) : SIDE_BY_SIDE,
    inSeries: isAlone ? constant(1) : IN_SERIES,
    reach: SYSTEM_REACH,
    systemName: systemName(levels, isAged, isClear, isAlone && lines !== LINES),
    isAtOwnSpeed: false,
    isClear,
    isAlone,
    isAsked: end === undefined && !isAlone && key !== FULL,
    isFull,
    isStated: key === "normal" || isClear,
    runsOut: levels !== "greatest" && !isAged && end !== "low",
    ...(towards && { towards }),
    ...(levels === "least" && { higherSource: difference(HEAD.staticHead, FIELD.leastStaticHead) }),
    sourceWords: ", lowest source level",
  };
}

function endOf({ levels, isAged, end, isFull }: Made): DutyState["towards"] {
  if (levels === "least" || end === "high" || isFull) return "most";
  return levels === "greatest" || isAged || end === "low" ? "least" : undefined;
}

function systemName(
  levels: keyof typeof STATIC_HEADS,
  isAged: boolean,
  isClear: boolean,
  hasOwnLines: boolean,
): string {
  const ofLevels = levels === "stated" ? undefined : `${levels === "least" ? "minimum" : "maximum"} static head`;
  if (hasOwnLines) return ofLevels === undefined ? "one pump alone" : `${ofLevels}, one pump alone`;
  const head = ofLevels ?? "as stated";
  if (isClear) return `${head}, clear liquid`;
  if (!isAged) return head;
  return levels === "stated" ? "aged pipe" : `${head}, aged pipe`;
}

const kept = new WeakMap<Duty, readonly DutyState[]>();

/**
 * The states worth a row: the duty as stated, the end of each range, and the two outermost with the curve's tolerance; of
 * several side by side the last one running; of a slurry, the line on clear liquid too, where the pumps give most. The same
 * duty gives the same list again.
 */
export function dutyCases(duty: Duty): readonly DutyState[] {
  const known = kept.get(duty) ?? statesOf(duty);
  kept.set(duty, known);
  return known;
}

function statesOf(duty: Duty): readonly DutyState[] {
  const made = [
    ...pumpedStates(duty),
    ...aloneOf(duty),
    ...(isSlurry(duty) && duty.state.acceptanceGrade !== "unreadable" ? [flushOf(duty)] : []),
  ];
  const states = made.map((one) => stateOf(duty, one));
  const [normal] = states as [DutyState];
  const isAgeing = ages(duty);
  const flowThrough = (one: DutyCase, row: number): Pick<DutyState, "lines" | "roughness"> => {
    const { own, given } = one;
    const name = `case${row + 1}`;
    const unread = given.includes("pipe") && own.pipe === undefined ? caseCell(duty, one, "pipe") : undefined;
    if (unread !== undefined) return { lines: linesNamed(name), roughness: unread };
    const isAged = own.pipe === "aged" && isAgeing;
    const lines = linesIn(duty, isAged, given.includes("pumpsRunning") ? name : undefined);
    return { lines, ...(isAged && { roughness: FIELD.agedRoughness }) };
  };
  const all = [...states, ...caseStates(duty, normal, flowThrough)];
  return hasRoute(duty) ? alongRoute(all, states.length) : all;
}

/**
 * The states with what their line asks for. Whether its fall is counted on is found at the flow asked for: of the duty as
 * stated for all states made of it, of each case for itself.
 */
function alongRoute(states: readonly DutyState[], ofDuty: number): readonly DutyState[] {
  const places = new Map<string, typeof SIPHON>();
  const siphons = states.map((one) => {
    const sourceLevel = sourceAgainst(one);
    const { flow, sourcePressure, deliveryPressure, deliveryLevel, altitude, liquid, lines } = one;
    const cells = [flow, sourcePressure, deliveryPressure, deliveryLevel, altitude, liquid.liquid, liquid.temperature];
    const identity = [...cells, lines.suctionLine, lines.dischargeLine].map(({ key }) => key).join(" ");
    const known = `${identity} ${JSON.stringify(sourceLevel)}`;
    const siphon = places.get(known) ?? (places.size === 0 ? SIPHON : spillOf(`${one.key}Siphon`, SIPHONCREDIT));
    places.set(known, siphon);
    return { sourceLevel, siphon };
  });
  return states.map((one, i) => {
    const { sourceLevel, siphon } = siphons[i] as (typeof siphons)[number];
    const decides = i < ofDuty ? SIPHON : siphon;
    return { ...one, route: { sourceLevel, siphon, runsFull: part(decides, one.isFull ? "mayRunFull" : "runsFull") } };
  });
}

/** A static head of its range is that of another source level: the careful end, as its summit stays where it is. */
function sourceAgainst({ staticHead, sourceLevel, deliveryLevel }: DutyState): Expression {
  const isOfRange = [STATIC_HEADS.least, STATIC_HEADS.greatest].some(({ key }) => key === staticHead.key);
  return isOfRange ? difference(deliveryLevel, staticHead) : sourceLevel;
}

/** The duty as stated. */
export function asStated(duty: Duty): DutyState {
  return dutyCases(duty)[0] as DutyState;
}

/** The cases of the user, in their order. */
export function caseStatesOf(duty: Duty): readonly DutyState[] {
  return dutyCases(duty).slice(dutyCases(duty).length - duty.cases.length);
}

/** The line started and flushed without the solids of its slurry. */
export function flushState(duty: Duty): DutyState | undefined {
  return dutyCases(duty).find(({ isClear }) => isClear);
}

/** Pumps side by side start and stop one by one: the one left runs out furthest at the least static head. */
function aloneOf(duty: Duty): readonly Made[] {
  const { state, acceptanceGrade } = duty;
  const isKnown = state.arrangement !== "unreadable" && state.acceptanceGrade !== "unreadable";
  if (duty.pump === undefined || !isKnown || pumpsSideBySide(duty) === 1) return [];
  const hasLeast = state.leastStaticHead !== "blank";
  const isHigh = (acceptanceGrade?.head[1] ?? 0) > 0;
  const label = `One pump alone${hasLeast ? ", minimum static head" : ""}${isHigh ? ", upper tolerance" : ""}`;
  return [{ key: "alone", label, ...(hasLeast && LEAST), ...(isHigh && HIGH), isAlone: true }];
}

/** The duty as stated, at its least static head, with a siphon that comes by itself. */
export const FULL = "full";
const AS_STATED: Made = { key: "normal", label: "As stated" };
const LEAST = { levels: "least" } as const;
const HIGH = { end: "high" } as const;

function flushOf({ state, acceptanceGrade }: Duty): Made {
  const hasLeast = state.leastStaticHead !== "blank";
  return {
    key: "flush",
    label: `${hasLeast ? "Minimum static head" : "As stated"}, start and flush on clear liquid`,
    ...(hasLeast && LEAST),
    ...((acceptanceGrade?.head[1] ?? 0) > 0 && HIGH),
    isClear: true,
  };
}

function pumpedStates(duty: Duty): readonly Made[] {
  const { state, acceptanceGrade } = duty;
  const hasLeast = state.leastStaticHead !== "blank";
  const hasGreatest = state.greatestStaticHead !== "blank";
  const isAged = ages(duty);
  const greatest = hasGreatest ? ({ levels: "greatest" } as const) : {};
  const [lower, upper] = acceptanceGrade?.head ?? [0, 0];
  const leastWords = hasLeast ? "Minimum static head" : "As stated";
  const isFull = hasRoute(duty);
  const highWords = isFull ? `${leastWords}, line running full` : leastWords;
  const greatestWords = `${hasGreatest ? "Maximum static head" : "As stated"}${isAged ? ", aged pipe" : ""}`;
  return [
    AS_STATED,
    ...(hasLeast ? [{ key: "least", label: "Minimum static head", ...LEAST }] : []),
    ...(hasGreatest ? [{ key: "greatest", label: "Maximum static head", ...greatest }] : []),
    ...(isAged ? [{ key: "aged", label: "Aged pipe", isAged }] : []),
    ...(isAged && hasGreatest
      ? [{ key: "greatestAged", label: "Maximum static head, aged pipe", ...greatest, isAged }]
      : []),
    ...(isFull ? [{ key: FULL, label: highWords, ...(hasLeast && LEAST), isFull }] : []),
    ...(upper > 0
      ? [{ key: "upper", label: `${highWords}, upper tolerance`, ...(hasLeast && LEAST), ...HIGH, isFull }]
      : []),
    ...(lower < 0
      ? [{ key: "lower", label: `${greatestWords}, lower tolerance`, ...greatest, isAged, end: "low" } as const]
      : []),
  ];
}

/** The outermost states towards the greatest flow and towards the least, where the ranges have any width. */
export function outerCases(duty: Duty): readonly DutyState[] {
  const outermost = (end: DutyState["towards"]) => dutyCases(duty).findLast(({ towards }) => towards === end);
  return [outermost("most"), outermost("least")].filter((one) => one !== undefined);
}

/** The state whose system lets the pumps, as drawn, run out furthest. */
export function leastSystem(duty: Duty): DutyState {
  const drawn = ({ towards, curve }: DutyState): boolean => towards === "most" && curve.end === undefined;
  return dutyCases(duty).findLast(drawn) ?? asStated(duty);
}

/** What the levels of the line add to the system of a state. */
export function routeIdentity({ route }: DutyState): string {
  return route === undefined ? "" : JSON.stringify([route.sourceLevel, route.runsFull]);
}

/** What makes the system of a state, by its cells. */
function systemIdentity(one: DutyState): string {
  const { staticHead, sourcePressure, deliveryPressure, lines, liquid, reach } = one;
  const cells = [staticHead, sourcePressure, deliveryPressure, liquid.liquid, liquid.temperature, reach];
  const keys = [...cells, lines.suctionLine, lines.dischargeLine].map(({ key }) => key).join(" ");
  return `${keys} ${routeIdentity(one)}`;
}

const firsts = new WeakMap<readonly DutyState[], ReadonlyMap<string, DutyState>>();

/** The first state of those on the same system: its curve is worked out once. */
export function firstOnSystem(one: DutyState, duty: Duty): DutyState {
  const states = dutyCases(duty);
  const known = firsts.get(states) ?? new Map(states.toReversed().map((state) => [systemIdentity(state), state]));
  firsts.set(states, known);
  return known.get(systemIdentity(one)) ?? one;
}

/** The system curve a state is on. */
export function systemOf(one: DutyState, duty: Duty): TableOf<ColumnKeyOf<typeof SYSTEMCURVE>> {
  return spillOf(`${firstOnSystem(one, duty).key}System`, SYSTEMCURVE);
}

/** Whether a state is one of unlike pumps together: its record has a row for all, and a row a pump after it. */
export function isStation({ isAlone }: DutyState, { otherPumps }: Duty): boolean {
  return otherPumps.length > 0 && !isAlone;
}

/** A figure of one pump of a station, the chosen one first; a text where it does not pump, or its curve gives none. */
export function ofStationPump(one: DutyState, of: PumpFigure, pump: number): Expression {
  const found = part(recordOf(one), of, pump + 1);
  return ifNumber(found, found, NOT_GIVEN);
}

type PumpFigure = "flow" | "efficiency" | "shaftPower" | "npshRequired" | "percentOfBestFlow";

/** A figure of one pump, the chosen one, in a state. */
export function ofOnePump(one: DutyState, duty: Duty, of: PumpFigure): Expression {
  if (isStation(one, duty)) return ofStationPump(one, of, 0);
  const all = part(recordOf(one), of);
  if (of === "flow") return ratio(all, one.sideBySide);
  return of === "shaftPower" ? ratio(all, one.pumps) : all;
}

/** Where the operating point of a state stands. */
export function recordOf({ key }: Pick<DutyState, "key">): TableOf<ColumnKeyOf<typeof OPERATINGPOINT>> {
  return spillOf(`${key}Record`, OPERATINGPOINT);
}

/** The flow a state runs at: one at its own speed, where that is known, runs at the flow it asks for, and nothing has to wait for its record. */
export function flowIn(one: DutyState): Expression {
  return one.isAtOwnSpeed ? ifNumber(one.speedRatio, one.flow, NOT_GIVEN) : part(recordOf(one), "flow");
}

/** The same of one pump. */
export function flowOfOne(one: DutyState, duty: Duty): Expression {
  return one.isAtOwnSpeed ? ratio(flowIn(one), one.sideBySide) : ofOnePump(one, duty, "flow");
}

export const NOT_GIVEN = "not given";

/** A figure of a record that the curve may not give there. */
export function whereGiven(
  record: ReturnType<typeof recordOf>,
  of: ColumnKeyOf<typeof OPERATINGPOINT>,
  then: (figure: Expression) => Expression = (figure) => figure,
  otherwise = NOT_GIVEN,
): Expression {
  const found = part(record, of);
  return ifNumber(found, then(found), otherwise);
}
