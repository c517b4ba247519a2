import { SPECIFIC_GRAVITY_REFERENCE, STANDARD_GRAVITY } from "../../../src/basis/constants.ts";
import { UNIT_SETS, type UnitSetName } from "../../../src/basis/quantities.ts";
import { HOSE_RULES } from "../../../src/pipework/pipe-make.ts";
import { LINEPRESSURES } from "../../catalogue/entries/line-pressures.ts";
import { PIPERATING } from "../../catalogue/entries/pipe-rating.ts";
import { COLLAPSEPRESSURE } from "../../catalogue/entries/take-off.ts";
import type { Duty, DutySegment } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import type { FieldKey } from "../../duty/fields.ts";
import {
  type Call,
  callOf,
  cell,
  constant,
  difference,
  type Expression,
  greatest,
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
import { FIELD, LIQUID } from "../field-handles.ts";
import { type PlanItem, spill, working } from "../plan.ts";
import { SPECIFIC_GRAVITY } from "./drawn-curves.ts";
import { pressureHead } from "./head.ts";
import { hasLevels } from "./line-shares.ts";
import { LINES } from "./lines.ts";
import { LIQUID_FIGURES } from "./liquid.ts";
import { CLASSES, nozzleLabels } from "./pressure-nozzles.ts";

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

/** Every run of both lines, in the order of flow. */
export function pipeRuns(duty: Duty): readonly PipeRun[] {
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
  const { gaugePressure, head } = UNIT_SETS[units];
  const factor = (SPECIFIC_GRAVITY_REFERENCE * STANDARD_GRAVITY * head.factor) / gaugePressure.factor;
  return product(height, SPECIFIC_GRAVITY, constant(factor));
}

/** Ratings of the runs that can be rated. */
export function ratingSpills(duty: Duty, runs: readonly PipeRun[]): readonly PlanItem[] {
  return runs
    .filter((run) => isRated(duty, run))
    .map((run) =>
      spill(
        ratingOf(run),
        `Rating of ${run.place}`,
        callOf(PIPERATING, {
          pipe: pipeCell(run),
          temperature: FIELD.temperature,
          ...(run.isByMaker && { statedRating: FIELD[HOSE_RATING[run.line]] }),
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
    ...(runs.some((run) => isLevelled(duty, run)) ? [linePressures(duty, last)] : []),
    ...runs
      .filter((run) => isCollapseKnown(duty, run))
      .flatMap((run) => [
        spill(collapseOf(run), `Collapse of ${run.place}`, collapseCall(run, FIELD.vacuumDuration)),
        ...(isLevelled(duty, run)
          ? [
              spill(
                shortCollapseOf(run),
                `Collapse of ${run.place} within half an hour`,
                collapseCall(run, constant(PASSING)),
              ),
            ]
          : []),
      ]),
    ...(rated.length === 0 ? [] : [runTable(duty, rated, last)]),
  ];
}

/** A vacuum that passes: of a surge, or of a line that drains. */
const PASSING = "0.5 h";

function collapseCall(run: PipeRun, duration: Expression) {
  return callOf(COLLAPSEPRESSURE, { pipe: pipeCell(run), duration, temperature: FIELD.temperature });
}

/** The collapse of a run under a vacuum that passes. */
export function shortCollapseOf({ line, index }: PipeRun) {
  return spillOf(`${line}ShortCollapse${index + 1}`, COLLAPSEPRESSURE);
}

/** The pressures of each run of a discharge line with levels. */
export const LINE_PRESSURES = spillOf("linePressures", LINEPRESSURES);

/** A run whose own levels are known. */
export function isLevelled(duty: Duty, { line }: PipeRun): boolean {
  return line === "dischargeLine" && hasLevels(duty, line);
}

/** The call of it: against a shut valve to the level of the greatest pressure at the discharge. */
export const LINE_PRESSURES_CALL = (duty: Duty, last: number): Call =>
  callOf(LINEPRESSURES, {
    flow: FIELD.flow,
    dischargeLine: range(LINES.dischargeLine),
    startLevel: FIELD.pumpLevel,
    shutoffLevel: sum(
      FIELD.pumpLevel,
      pressureHead(part(CLASSES, "running", last), LIQUID_FIGURES.density, duty.unitSet),
    ),
    outletPressure: FIELD.deliveryPressure,
    altitude: FIELD.altitude,
    ...LIQUID,
  });

function linePressures(duty: Duty, last: number): PlanItem {
  return spill(
    LINE_PRESSURES,
    "Pressures of the discharge line, run by run",
    LINE_PRESSURES_CALL(duty, last),
    duty.dischargeLine.length + 1,
  );
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

function runTable(duty: Duty, rated: readonly PipeRun[], last: number): PlanItem {
  const run = (row: number): PipeRun => rated[row] as PipeRun;
  const share = (row: number): Expression => cell(RUNS, row, "share");
  return working(RUNS, "Pressure in each run of pipe against its rating", rated.length, [
    ["name", "run", (row) => nameOfRun(run(row))],
    // Suction pipe sees what the first suction nozzle does, discharge pipe the last discharge nozzle.
    ["atPump", "at the pump's level", (row) => part(CLASSES, "greatest", run(row).line === "suctionLine" ? 0 : last)],
    [
      "pressure",
      "at its lowest end",
      (row) => {
        const { index } = run(row);
        if (isLevelled(duty, run(row))) {
          return greatest(
            ...(["running", "shutoff", "standing"] as const).map((of) => part(LINE_PRESSURES, of, index)),
          );
        }
        const far = run(row).line === "suctionLine" ? FIELD.sourceLevel : FIELD.deliveryLevel;
        const drop = difference(FIELD.pumpLevel, least(FIELD.pumpLevel, far));
        return sum(cell(RUNS, row, "atPump"), columnPressure(drop, duty.unitSet));
      },
    ],
    ["rating", "rating", (row) => part(ratingOf(run(row)), "rating")],
    [
      "share",
      "share of the rating",
      (row) => product(ratio(cell(RUNS, row, "pressure"), cell(RUNS, row, "rating")), constant(100)),
    ],
    [
      "worstShare",
      "greatest so far",
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
