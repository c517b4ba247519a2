import type { UnitSetName } from "../../../src/basis/quantities.ts";
import { HOSE_RULES } from "../../../src/pipework/pipe-make.ts";
import { hasUsualRating } from "../../../src/pressure/usual-rating.ts";
import { LINEPRESSURES } from "../../catalogue/entries/line-pressures.ts";
import { PIPERATING } from "../../catalogue/entries/pipe-rating.ts";
import { COLLAPSEPRESSURE } from "../../catalogue/entries/take-off.ts";
import type { Duty, DutySegment } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import type { FieldKey } from "../../duty/fields.ts";
import { headOf, pressureOfSG } from "../conversions.ts";
import {
  type Call,
  callOf,
  cell,
  constant,
  difference,
  type Expression,
  greatest,
  handle,
  ifAtLeast,
  join,
  least,
  part,
  product,
  range,
  ratio,
  spillOf,
  sum,
  tableOf,
} from "../expression.ts";
import { FIELD } from "../field-handles.ts";
import { inWords, type PlanItem, spill, working } from "../plan.ts";
import { heaviest, hottest, pressedStates, pressureInState } from "./case-pressures.ts";
import { SPECIFIC_GRAVITY } from "./drawn-curves.ts";
import { asStated, caseStatesOf, type DutyState } from "./duty-cases.ts";
import { hasLevels } from "./line-shares.ts";
import { LINES } from "./lines.ts";
import { CLASSES, nozzleLabels } from "./pressure-nozzles.ts";
import { SIPHON_SETTINGS } from "./route-cells.ts";
import { slackOf, statesAt, worstNames, worstTable } from "./worst-states.ts";

/** A run of pipe or hose of the duty, by its place. */
export interface PipeRun {
  readonly line: LineKey;
  /** In its line, from 0. */
  readonly index: number;
  /** "discharge run 2". */
  readonly place: string;
  readonly stated: DutySegment;
  /** A hose, or pipe that no standard here rates: the maker's figure is needed. */
  readonly isByMaker: boolean;
  /** The last run of its line ends where the line does, so its lowest end is known. */
  readonly isLast: boolean;
}

const SIDES = [
  ["suctionLine", "suction"],
  ["dischargeLine", "discharge"],
] as const satisfies readonly (readonly [LineKey, string])[];

/** The box that rates what no standard does. */
export const HOSE_RATING: Readonly<Record<LineKey, FieldKey & `${string}HoseRating`>> = {
  suctionLine: "suctionHoseRating",
  dischargeLine: "dischargeHoseRating",
};

const runsOf = new WeakMap<Duty, readonly PipeRun[]>();

/** Every run of both lines, in the order of flow. The same duty gives the same list again. */
export function pipeRuns(duty: Duty): readonly PipeRun[] {
  const known = runsOf.get(duty) ?? runsIn(duty);
  runsOf.set(duty, known);
  return known;
}

function runsIn(duty: Duty): readonly PipeRun[] {
  return SIDES.flatMap(([line, side]) =>
    duty[line].map((stated, index) => {
      const rule = stated.segment?.pipe.make?.rule;
      return {
        line,
        index,
        place: `${side} run ${index + 1}`,
        stated,
        isByMaker: stated.segment !== undefined && (rule === undefined || HOSE_RULES.has(rule)),
        isLast: index === duty[line].length - 1,
      };
    }),
  );
}

/** Whether the run can be rated: by its standard, or by the figure that is stated. */
export function isRated(duty: Duty, { line, isByMaker }: PipeRun): boolean {
  return !isByMaker || duty.state[HOSE_RATING[line]] !== "blank";
}

/** Whether all that is known of the run is what such hose or couplings usually hold, at whatever temperature. */
export function isByUsual(duty: Duty, run: PipeRun): boolean {
  const { pipe } = run.stated.segment ?? {};
  return !isRated(duty, run) && pipe !== undefined && hasUsualRating(pipe);
}

/** The cell that names the pipe of a run. */
export function pipeCell({ line, index }: PipeRun): Expression {
  return cell(LINES[line], index, "pipe");
}

/** "discharge run 2, 10in HDPE DR17", live. */
export function nameOfRun(run: PipeRun): Expression {
  return join(constant(`${run.place}, `), pipeCell(run));
}

export function ratingOf({ line, index }: PipeRun) {
  return spillOf(`${line}Rating${index + 1}`, PIPERATING);
}

export function collapseOf({ line, index }: PipeRun) {
  return spillOf(`${line}Collapse${index + 1}`, COLLAPSEPRESSURE);
}

/** Steady pressure in each rated run against its rating, the worst carried down. */
export const RUNS = tableOf("pipeRuns", {
  name: null,
  atPump: "gaugePressure",
  pressure: "gaugePressure",
  rating: "gaugePressure",
  share: "percent",
  worstShare: "percent",
  worst: null,
});

/** Pressure of a column of the liquid as pumped, in the unit set's own units. */
export function columnPressure(height: Expression, units: UnitSetName): Expression {
  return columnPressureOf(height, SPECIFIC_GRAVITY, units);
}

/** The same of a liquid of this SG. */
export function columnPressureOf(height: Expression, specificGravity: Expression, units: UnitSetName): Expression {
  return pressureOfSG(height, specificGravity, units);
}

/** Ratings of the runs that can be rated. */
export function ratingSpills(duty: Duty, runs: readonly PipeRun[]): readonly PlanItem[] {
  return runs
    .filter((run) => isRated(duty, run) || isByUsual(duty, run))
    .map((run) =>
      spill(
        ratingOf(run),
        `Rating of ${run.place}`,
        callOf(PIPERATING, {
          pipe: pipeCell(run),
          temperature: hottest(duty),
          ...(run.isByMaker && isRated(duty, run) && { statedRating: FIELD[HOSE_RATING[run.line]] }),
        }),
      ),
    );
}

/** Ratings and collapse of the runs, the pressures of a line with levels, and the table that holds one against the other. */
export function runTables(duty: Duty): readonly PlanItem[] {
  const runs = pipeRuns(duty);
  const rated = runs.filter((run) => isRated(duty, run));
  const last = nozzleLabels(duty).length - 1;
  return [
    // The route has shown those of a line with levels already.
    ...ratingSpills(
      duty,
      runs.filter((run) => !isLevelled(duty, run)),
    ),
    ...(runs.some((run) => isLevelled(duty, run)) ? linePressures(duty, last) : []),
    ...runs
      .filter((run) => isCollapseKnown(duty, run))
      .flatMap((run) => [
        spill(collapseOf(run), `Collapse of ${run.place}`, collapseCall(duty, run, FIELD.vacuumDuration)),
        ...(isLevelled(duty, run)
          ? [
              spill(
                shortCollapseOf(run),
                `Collapse of ${run.place} within half an hour`,
                collapseCall(duty, run, constant(PASSING)),
              ),
            ]
          : []),
      ]),
    ...(rated.length === 0 ? [] : [runTable(duty, rated, last)]),
  ];
}

/** A vacuum that passes: of a surge, or of a line that drains. */
const PASSING = "0.5 h";

function collapseCall(duty: Duty, run: PipeRun, duration: Expression) {
  return callOf(COLLAPSEPRESSURE, { pipe: pipeCell(run), duration, temperature: hottest(duty) });
}

/** The collapse of a run under a vacuum that passes. */
export function shortCollapseOf({ line, index }: PipeRun) {
  return spillOf(`${line}ShortCollapse${index + 1}`, COLLAPSEPRESSURE);
}

/** The pressures of each run of a discharge line with levels, the duty as stated. */
export const LINE_PRESSURES = spillOf("linePressures", LINEPRESSURES);

/** A run whose own levels are known. */
export function isLevelled(duty: Duty, { line }: PipeRun): boolean {
  return line === "dischargeLine" && hasLevels(duty, line);
}

/** The call of it: against a shut valve to the level of the greatest pressure at the discharge. */
export const LINE_PRESSURES_CALL = (duty: Duty, last: number): Call => pressuresIn(asStated(duty), duty, last);

function pressuresIn(one: DutyState, duty: Duty, last: number): Call {
  const nozzles = last + 1;
  const row = pressedStates(duty).indexOf(one);
  const atPump =
    duty.cases.length === 0 ? part(CLASSES, "running", last) : pressureInState(row, last, nozzles, "careful");
  return callOf(LINEPRESSURES, {
    flow: one.flow,
    dischargeLine: range(one.lines.dischargeLine),
    startLevel: FIELD.pumpLevel,
    shutoffLevel: sum(FIELD.pumpLevel, headOf(atPump, one.density, duty.unitSet)),
    outletLevel: one.deliveryLevel,
    outletPressure: one.deliveryPressure,
    altitude: one.altitude,
    ...one.liquid,
    ...SIPHON_SETTINGS,
  });
}

/** Where the pressures of the line stand in a state; cases that do not change them share those of the first alike. */
export function linePressuresOf(one: DutyState, duty: Duty): typeof LINE_PRESSURES {
  return pressuresByState(duty).get(one) ?? LINE_PRESSURES;
}

const placed = new WeakMap<Duty, ReadonlyMap<DutyState, typeof LINE_PRESSURES>>();

/** Asked for each run in each state, found once a duty. */
function pressuresByState(duty: Duty): ReadonlyMap<DutyState, typeof LINE_PRESSURES> {
  const known = placed.get(duty) ?? placesOfPressures(duty);
  placed.set(duty, known);
  return known;
}

function placesOfPressures(duty: Duty): ReadonlyMap<DutyState, typeof LINE_PRESSURES> {
  const byIdentity = new Map([[pressureIdentity(asStated(duty)), LINE_PRESSURES]]);
  return new Map(
    pressedStates(duty).map((one) => {
      const identity = pressureIdentity(one);
      const place = byIdentity.get(identity) ?? spillOf(`${one.key}LinePressures`, LINEPRESSURES);
      byIdentity.set(identity, place);
      return [one, place];
    }),
  );
}

function pressureIdentity(one: DutyState): string {
  const { flow, lines, deliveryPressure, deliveryLevel, altitude, liquid, sourceLevel, sourcePressure, speedRatio } =
    one;
  const cells = [
    flow,
    lines.dischargeLine,
    deliveryPressure,
    deliveryLevel,
    altitude,
    liquid.liquid,
    liquid.temperature,
  ];
  return [...cells, sourceLevel, sourcePressure, speedRatio].map(({ key }) => key).join(" ");
}

/** What decides of a run of a line with levels, of all states. */
const LINE_LIMITS = tableOf("linePressureLimits", {
  running: "gaugePressure",
  shutoff: "gaugePressure",
  standing: "gaugePressure",
  withSurge: "gaugePressure",
  greatest: "gaugePressure",
  least: "gaugePressure",
  hanging: "gaugePressure",
  leastWithSurge: "gaugePressure",
  greatestSlack: "pressureDifference",
  withSurgeSlack: "pressureDifference",
  leastSlack: "pressureDifference",
  hangingSlack: "pressureDifference",
  leastWithSurgeSlack: "pressureDifference",
  greatestIn: null,
  withSurgeIn: null,
  leastIn: null,
  hangingIn: null,
  leastWithSurgeIn: null,
});

/** Without a surge. */
const STEADY = ["running", "shutoff", "standing"] as const;
const GREATEST = [...STEADY, "withSurge"] as const;
const LEAST = ["least", "hanging", "leastWithSurge"] as const;
/** Of which is named in what states they are so. */
const NAMED = ["greatest", "withSurge", ...LEAST] as const;
type LimitColumn = (typeof GREATEST)[number] | (typeof LEAST)[number];

/** A pressure of a run with levels: of the state in which it is worst. */
export function worstPressure(duty: Duty, run: PipeRun, of: LimitColumn): Expression {
  return duty.cases.length === 0 ? part(LINE_PRESSURES, of, run.index) : cell(LINE_LIMITS, run.index, of);
}

/** ", storm": the states in which it is so; nothing where there are no cases. */
export function worstPressureIn(
  duty: Duty,
  run: PipeRun,
  of: "withSurge" | (typeof LEAST)[number] | "greatest",
): Expression {
  if (duty.cases.length === 0) return constant("");
  return join(constant(", "), cell(LINE_LIMITS, run.index, `${of}In`));
}

function lineLimits(duty: Duty): readonly PlanItem[] {
  if (duty.cases.length === 0) return [];
  const states = pressedStates(duty);
  const places = states.map((one) => linePressuresOf(one, duty));
  // Each is read for the worst of all and for the states that have it.
  const columns = [...GREATEST, ...LEAST];
  const read = duty.dischargeLine.map(
    (_, row) => new Map(columns.map((column) => [column, places.map((place) => part(place, column, row))])),
  );
  const of = (column: LimitColumn, row: number): readonly Expression[] =>
    read[row]?.get(column) as readonly Expression[];
  const labels = states.map(({ label }) => label);
  const steady = (row: number): readonly Expression[] =>
    places.map((_, i) => greatest(...STEADY.map((column) => of(column, row)[i] as Expression)));
  const statesIn = (
    row: number,
    figures: readonly Expression[],
    column: (typeof NAMED)[number],
    side: "least" | "greatest",
  ): Expression =>
    statesAt(labels, figures, cell(LINE_LIMITS, row, column), side, cell(LINE_LIMITS, row, `${column}Slack`));
  return [
    working(LINE_LIMITS, "Pressures of the discharge line, the worst of all states", duty.dischargeLine.length, [
      ...GREATEST.map((column) => [column, column, (row: number) => greatest(...of(column, row))] as const),
      [
        "greatest",
        "maximum without surge",
        (row) => greatest(...STEADY.map((column) => cell(LINE_LIMITS, row, column))),
      ],
      ...LEAST.map((column) => [column, column, (row: number) => least(...of(column, row))] as const),
      ...NAMED.map(
        (column) =>
          [
            `${column}Slack`,
            `rounding of ${column}`,
            (row: number) => slackOf(cell(LINE_LIMITS, row, column)),
          ] as const,
      ),
      ["greatestIn", "maximum in", (row) => statesIn(row, steady(row), "greatest", "greatest")],
      ["withSurgeIn", "with surge in", (row) => statesIn(row, of("withSurge", row), "withSurge", "greatest")],
      ...LEAST.map(
        (column) =>
          [`${column}In`, `${column} in`, (row: number) => statesIn(row, of(column, row), column, "least")] as const,
      ),
    ]),
  ];
}

const ALONG = "pressureAlong";

/** In which state the least pressure along the line is least. */
function leastAlong(duty: Duty): readonly PlanItem[] {
  const states = pressedStates(duty);
  const rows = duty.dischargeLine.map((_, row) => row);
  const fact = {
    key: "least",
    label: "minimum pressure along the line",
    quantity: "gaugePressure",
    side: "least",
    figure: (state: number): Expression => cell(LEAST_ALONG, state, "least"),
  } as const;
  const names = states.map(({ label }) => label);
  return [
    working(LEAST_ALONG, "Minimum pressure along the line in each state", states.length, [
      [
        "least",
        "least",
        (state) => {
          const parts = rows.map((row) => part(linePressuresOf(states[state] as DutyState, duty), "least", row));
          return parts.length === 1 ? (parts[0] as Expression) : least(...parts);
        },
      ],
    ]),
    ...worstTable({ key: ALONG, label: "Minimum pressure along the line" }, names, [fact]),
    inWords(LEAST_PRESSURE_IN, "Minimum pressure along the line in", worstNames(ALONG, fact.key, names.length)),
  ];
}

const LEAST_ALONG = tableOf("leastAlongTheLine", { least: "gaugePressure" });
export const LEAST_PRESSURE_IN = handle("leastLinePressureIn", null);

function linePressures(duty: Duty, last: number): readonly PlanItem[] {
  const rows = duty.dischargeLine.length + 1;
  const own = new Map(caseStatesOf(duty).map((one) => [linePressuresOf(one, duty).key, one]));
  own.delete(LINE_PRESSURES.key);
  return [
    spill(LINE_PRESSURES, "Pressures of the discharge line, run by run", LINE_PRESSURES_CALL(duty, last), rows),
    ...[...own.values()].map((one) =>
      spill(
        linePressuresOf(one, duty),
        `Pressures of the discharge line, ${one.words}`,
        pressuresIn(one, duty, last),
        rows,
      ),
    ),
    ...lineLimits(duty),
    ...(duty.cases.length === 0 ? [] : leastAlong(duty)),
  ];
}

/** A run whose wall is known, where it may come under vacuum: on suction, or where levels say so. Hose is its maker's. */
export function isCollapseKnown(duty: Duty, run: PipeRun): boolean {
  const pipe = run.stated.segment?.pipe;
  return (
    (run.line === "suctionLine" || isLevelled(duty, run)) &&
    pipe?.wall !== undefined &&
    pipe.make !== undefined &&
    pipe.make.material !== "copper"
  );
}

/** Suction pipe sees what the first suction nozzle does, discharge pipe the last discharge nozzle. */
function pressureAtPump({ line }: PipeRun, last: number): Expression {
  return part(CLASSES, "greatest", line === "suctionLine" ? 0 : last);
}

/** Steady pressure at the lowest end of a run. */
export function steadyPressure(duty: Duty, run: PipeRun, last = nozzleLabels(duty).length - 1): Expression {
  if (isLevelled(duty, run)) {
    return duty.cases.length === 0
      ? greatest(...STEADY.map((of) => part(LINE_PRESSURES, of, run.index)))
      : cell(LINE_LIMITS, run.index, "greatest");
  }
  const far = run.line === "suctionLine" ? FIELD.sourceLevel : FIELD.deliveryLevel;
  const drop = difference(FIELD.pumpLevel, least(FIELD.pumpLevel, far));
  return sum(pressureAtPump(run, last), columnPressureOf(drop, heaviest(duty), duty.unitSet));
}

function runTable(duty: Duty, rated: readonly PipeRun[], last: number): PlanItem {
  const run = (row: number): PipeRun => rated[row] as PipeRun;
  const share = (row: number): Expression => cell(RUNS, row, "share");
  return working(RUNS, "Pressure in each run of pipe against its rating", rated.length, [
    ["name", "run", (row) => nameOfRun(run(row))],
    ["atPump", "at the pump's level", (row) => pressureAtPump(run(row), last)],
    ["pressure", "at its lowest end", (row) => steadyPressure(duty, run(row), last)],
    ["rating", "rating", (row) => part(ratingOf(run(row)), "rating")],
    [
      "share",
      "share of the rating",
      (row) => product(ratio(cell(RUNS, row, "pressure"), cell(RUNS, row, "rating")), constant(100)),
    ],
    [
      "worstShare",
      "maximum so far",
      (row) => (row === 0 ? share(row) : greatest(share(row), cell(RUNS, row - 1, "worstShare"))),
    ],
    [
      "worst",
      "worst so far",
      (row) =>
        row === 0
          ? cell(RUNS, row, "name")
          : ifAtLeast(share(row), cell(RUNS, row, "worstShare"), cell(RUNS, row, "name"), cell(RUNS, row - 1, "worst")),
    ],
  ]);
}
