import { VELOCITY } from "../../catalogue/entries/pipe-and-friction.ts";
import { LINESURGE } from "../../catalogue/entries/pipe-rating.ts";
import type { Duty } from "../../duty/duty.ts";
import { asVacuum, dynamicPressure, pressureOf } from "../conversions.ts";
import {
  callOf,
  cell,
  constant,
  difference,
  type Expression,
  greatest,
  handles,
  ifNumber,
  part,
  product,
  range,
  ratio,
  spillOf,
  sum,
  tableOf,
  verdict,
} from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import type { PackageSection } from "../package-section.ts";
import { figure, type PlanItem, remark, spill, statement, working } from "../plan.ts";
import { asStated, caseStatesOf, type DutyState, flowIn } from "./duty-cases.ts";
import { HEAD } from "./head.ts";
import { flowInRow, LINES } from "./lines.ts";
import { LIQUID_FIGURES } from "./liquid.ts";
import { npshAvailableIn } from "./npsh.ts";
import { POINT } from "./operating-point.ts";
import {
  collapseOf,
  columnPressure,
  isByUsual,
  isCollapseKnown,
  isLevelled,
  isRated,
  LINE_PRESSURES_CALL,
  type PipeRun,
  pipeRuns,
  RUNS,
  ratingOf,
  runTables,
  shortCollapseOf,
  steadyPressure,
  worstPressure,
} from "./pipe-runs.ts";
import { PRESSURE, pressureSection } from "./pressure.ts";
import { nozzleLabels } from "./pressure-nozzles.ts";
import { stated } from "./stated-input.ts";

/** Worked cells of this section. */
export const PIPE = handles({
  worstRun: null,
  worstPressure: "percent",
  suctionVacuum: "vacuum",
  vacuumRunning: "vacuum",
  surgeRun: null,
  surgePressure: "pressureDifference",
  surgeShare: "percent",
  pipeSurgeVerdict: null,
  downSurge: "gaugePressure",
  columnVerdict: null,
  surgeTotal: "gaugePressure",
  surgeVerdict: null,
  surgeNotes: null,
  lineNotes: null,
});

/** Surge of the discharge line: the worst run first, the line second, then each run. */
export const LINE_SURGE = spillOf("lineSurge", LINESURGE);

const STOPPED = callOf(LINESURGE, { flow: FIELD.flow, line: range(LINES.dischargeLine), ...LIQUID });

/** Every run of pipe and hose against the pressure in it, standing and running; vacuum on the suction; surge apart. */
export const pipeSection: PackageSection = {
  id: "pipe",
  missing: "Select a pump: the pressure in the pipe comes of its curve.",
  caution:
    "A hose or coupling above its rating whips: hold each run against the shut valve, and anchor bends and ends.",
  decidedBy: pressureSection.decidedBy,
  isOfPump: true,
  items: (duty) => {
    const { pump } = duty;
    if (pump === undefined || pipeRuns(duty).length === 0) return [];
    return [
      ...stated(duty, "suctionHoseRating", "dischargeHoseRating", "vacuumDuration"),
      ...runTables(duty),
      ...steady(duty),
      ...levelled(duty),
      ...vacuum(duty),
      ...(duty.dischargeLine.length === 0 ? [] : surge(duty)),
    ];
  },
};

function steady(duty: Duty): readonly PlanItem[] {
  const runs = pipeRuns(duty);
  const rated = runs.filter((run) => isRated(duty, run));
  const usual = runs.filter((run) => isByUsual(duty, run));
  const without = runs.filter((run) => !isRated(duty, run) && !isByUsual(duty, run));
  const last = rated.length - 1;
  return [
    ...(rated.length === 0
      ? []
      : [
          {
            kind: "table",
            key: "pipeRunsShown",
            heading: "run; pump at a shut valve or standing",
            columns: [
              { key: "pressure", label: "pressure", quantity: "gaugePressure" },
              { key: "rating", label: "rating", quantity: "gaugePressure" },
              { key: "share", label: "share of it", quantity: "percent" },
              { key: "pipe", label: "pipe" },
              { key: "by", label: "rated by" },
            ],
            rows: rated.map((run, row) => ({
              label: run.place,
              cells: [
                cell(RUNS, row, "pressure"),
                cell(RUNS, row, "rating"),
                cell(RUNS, row, "share"),
                cell(LINES[run.line], run.index, "pipe"),
                part(ratingOf(run), "by"),
              ],
            })),
          } as const,
          figure(PIPE.worstRun, "Steady: worst run", cell(RUNS, last, "worst"), "By the share of its own rating."),
          figure(
            PIPE.worstPressure,
            "Steady: share of its rating",
            cell(RUNS, last, "worstShare"),
            "At most 100 %; flanges, couplings and valves are held apart.",
            "main",
          ),
        ]),
    ...(usual.length === 0
      ? []
      : [
          {
            kind: "table",
            key: "usualRuns",
            heading: "run; what such hose usually holds",
            columns: [
              { key: "pressure", label: "pressure", quantity: "gaugePressure" },
              { key: "least", label: "minimum", quantity: "gaugePressure" },
              { key: "greatest", label: "maximum", quantity: "gaugePressure" },
              { key: "pipe", label: "pipe" },
            ],
            rows: usual.map((run) => ({
              label: run.place,
              cells: [
                steadyPressure(duty, run),
                part(ratingOf(run), "rating"),
                part(ratingOf(run), "atBest"),
                cell(LINES[run.line], run.index, "pipe"),
              ],
            })),
          } as const,
        ]),
    ...without.map(({ place, stated: { typed } }) =>
      statement(
        `What the ${typed.pipe.trim()} of ${place} may carry is not stated, so it is not compared with anything.`,
      ),
    ),
  ];
}

/** The pressures of a discharge line with levels, run by run, and what its walls stand of vacuum. */
function levelled(duty: Duty): readonly PlanItem[] {
  const runs = pipeRuns(duty).filter((run) => isLevelled(duty, run));
  if (runs.length === 0) return [];
  const known = runs.filter((run) => isCollapseKnown(duty, run));
  return [
    {
      kind: "table",
      key: "linePressuresShown",
      heading: "run; steady at its lower end, with the surge of a sudden stop, and lowest at its higher end",
      columns: [
        { key: "running", label: "running", quantity: "gaugePressure" },
        { key: "shutoff", label: "shut valve", quantity: "gaugePressure" },
        { key: "standing", label: "standing", quantity: "gaugePressure" },
        { key: "withSurge", label: "with surge", quantity: "gaugePressure" },
        { key: "least", label: "minimum", quantity: "gaugePressure" },
      ],
      rows: runs.map((run) => ({
        label: run.place,
        cells: (["running", "shutoff", "standing", "withSurge", "least"] as const).map((of) =>
          worstPressure(duty, run, of),
        ),
      })),
    },
    ...(known.length === 0
      ? []
      : [
          {
            kind: "table",
            key: "lineVacuum",
            heading: "run; pressure at rest without air, with a down-surge, and the vacuum at which it buckles",
            columns: [
              { key: "hanging", label: "at rest", quantity: "gaugePressure" },
              { key: "leastWithSurge", label: "with surge", quantity: "gaugePressure" },
              { key: "lasting", label: "lasting", quantity: "vacuum" },
              { key: "passing", label: "half an hour", quantity: "vacuum" },
            ],
            rows: known.map((run) => ({
              label: run.place,
              cells: [
                worstPressure(duty, run, "hanging"),
                worstPressure(duty, run, "leastWithSurge"),
                asVacuum(part(collapseOf(run), "pressure"), duty.unitSet),
                asVacuum(part(shortCollapseOf(run), "pressure"), duty.unitSet),
              ],
            })),
          } as const,
        ]),
    remark(PIPE.lineNotes, "Pressures of the line", LINE_PRESSURES_CALL(duty, nozzleLabels(duty).length - 1)),
  ];
}

/** Vacuum at the pump inlet at a flow in a state: what the atmosphere presses on the suction pipe. */
function vacuumAt(one: DutyState, duty: Duty, flow: Expression): Expression {
  const last = duty.suctionLine.length - 1;
  const { suctionLine } = one.lines;
  const velocity = callOf(VELOCITY, {
    flow: flowInRow(duty, one.lines, "suctionLine", last, flow),
    pipe: cell<string>(suctionLine, last, "pipe"),
  });
  const { density, atmosphere, vapourHead } = one;
  const inlet = difference(
    pressureOf(sum(npshAvailableIn(one, flow), vapourHead), density, duty.unitSet),
    dynamicPressure(density, velocity, duty.unitSet),
  );
  return asVacuum(greatest(constant(0), difference(atmosphere, inlet)), duty.unitSet);
}

/** The same at the flow that the pumps run to. */
export function suctionVacuumIn(one: DutyState, duty: Duty): Expression {
  return cell(VACUUMS, caseStatesOf(duty).indexOf(one), "vacuum");
}

/** Vacuum in the suction line in each case. */
const VACUUMS = tableOf("caseVacuums", { vacuum: "vacuum" });

function caseVacuums(duty: Duty): readonly PlanItem[] {
  const states = caseStatesOf(duty);
  if (states.length === 0) return [];
  const vacuumOf = (row: number): Expression => {
    const one = states[row] as DutyState;
    return vacuumAt(one, duty, flowIn(one));
  };
  return [working(VACUUMS, "Vacuum in the suction line, each case", states.length, [["vacuum", "vacuum", vacuumOf]])];
}

function vacuum(duty: Duty): readonly PlanItem[] {
  if (duty.suctionLine.length === 0) return [];
  const known = pipeRuns(duty).filter((run) => run.line === "suctionLine" && isCollapseKnown(duty, run));
  return [
    ...caseVacuums(duty),
    figure(
      PIPE.suctionVacuum,
      "Vacuum in the suction line",
      vacuumAt(asStated(duty), duty, FIELD.flow),
      "Atmosphere less pressure at the pump inlet, as stated.",
    ),
    figure(
      PIPE.vacuumRunning,
      "Vacuum at the operating flow",
      vacuumAt(asStated(duty), duty, POINT.operatingFlow),
      "The same at the flow the pump runs to.",
    ),
    ...(known.length === 0
      ? []
      : [
          {
            kind: "table",
            key: "suctionCollapse",
            heading: "run; vacuum at which it buckles, 3 % out of round, for the time the vacuum lasts",
            columns: [
              { key: "pressure", label: "collapse", quantity: "vacuum" },
              { key: "atBest", label: "at best", quantity: "vacuum" },
              { key: "assumed", label: "assumed" },
            ],
            rows: known.map((run) => ({
              label: run.place,
              cells: [
                asVacuum(part(collapseOf(run), "pressure"), duty.unitSet),
                asVacuum(part(collapseOf(run), "atBest"), duty.unitSet),
                part(collapseOf(run), "assumed"),
              ],
            })),
          } as const,
        ]),
  ];
}

/** Surge with its own lines: it fails nothing by itself, it asks for a study. */
function surge(duty: Duty): readonly PlanItem[] {
  const { state, unitSet } = duty;
  const shares = pipeRuns(duty)
    .filter((run) => isRated(duty, run))
    .flatMap((run, row) => (run.line === "dischargeLine" ? [surgeShareOf(duty, run, row)] : []));
  const losses = sum(HEAD.dischargePipe, HEAD.dischargeFittings);
  const lift = sum(difference(FIELD.deliveryLevel, FIELD.pumpLevel), losses);
  return [
    spill(LINE_SURGE, "Surge of the discharge line", STOPPED, duty.dischargeLine.length + 3),
    figure(
      PIPE.surgeRun,
      "Worst run for surge",
      part(LINE_SURGE, "of"),
      "Runs whose wave is back at once count through the line.",
    ),
    figure(
      PIPE.surgePressure,
      "Surge if the flow stops at once",
      part(LINE_SURGE, "pressure"),
      "Of that run, by its own wave speed.",
    ),
    ...(shares.length === 0
      ? []
      : [
          figure(
            PIPE.surgeShare,
            "Full surge, share of limit",
            shares.length === 1 ? (shares[0] as Expression) : greatest(...shares),
            "Pressure and surge at once, over what the pipe may reach.",
          ),
          figure(
            PIPE.pipeSurgeVerdict,
            "Full surge, pipe",
            verdict(constant(100), PIPE.surgeShare, "within the limit", NEEDS_STUDY),
            "A screen: it tells where a surge study is needed.",
          ),
        ]),
    figure(
      PIPE.surgeTotal,
      "Full surge at the discharge",
      sum(PRESSURE.greatestPressure, PIPE.surgePressure),
      "As if both came at once.",
    ),
    ...(state.flangeClass === "blank"
      ? []
      : [
          figure(
            PIPE.surgeVerdict,
            "Full surge, flange",
            ifNumber(
              PRESSURE.classRating,
              verdict(PRESSURE.classRating, PIPE.surgeTotal, "within the rating", NEEDS_STUDY),
              "not rated",
            ),
            "Flange ratings are without shock; surge does not choose the class.",
          ),
        ]),
    figure(
      PIPE.downSurge,
      "Lowest pressure at a stop",
      difference(sum(FIELD.deliveryPressure, columnPressure(lift, unitSet)), PIPE.surgePressure),
      "Running pressure less the surge.",
    ),
    figure(
      PIPE.columnVerdict,
      "Column after a stop",
      verdict(
        sum(PIPE.downSurge, LIQUID_FIGURES.atmosphere),
        LIQUID_FIGURES.vapourPressure,
        "stays whole at the pump",
        `may part: ${NEEDS_STUDY}`,
      ),
      "Against vapour pressure; summits are lower still.",
    ),
    remark(PIPE.surgeNotes, "Surge", STOPPED),
  ];
}

const NEEDS_STUDY = "needs a surge study";

/** Pressure and surge in a run over what it may reach with a surge of every stop, in percent; its row among those rated. */
function surgeShareOf(duty: Duty, run: PipeRun, row: number): Expression {
  const both = isLevelled(duty, run)
    ? worstPressure(duty, run, "withSurge")
    : sum(cell(RUNS, row, "pressure"), PIPE.surgePressure);
  return product(ratio(both, part(ratingOf(run), "withSurge")), constant(100));
}
