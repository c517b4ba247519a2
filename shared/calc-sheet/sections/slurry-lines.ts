import type { Duty } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import {
  type Call,
  callById,
  constant,
  type Expression,
  ifNumber,
  partAt,
  product,
  ratio,
  tableCell,
  value,
  verdict,
} from "../expression.ts";
import type { PlanItem, SpillItem, TableItem } from "../plan.ts";
import { LIQUID_TAIL } from "./liquid.ts";
import { remark } from "./package-inputs.ts";

export const SETTLING_TABLE = "slurrySettling";
export const FRICTION_TABLE = "slurryFriction";

export const NOT_GIVEN = "not given";

/** Columns of SLURRYLINE, in its order. */
const COLUMNS = [
  { key: "velocity", quantity: "velocity" },
  { key: "limiting", quantity: "velocity" },
  { key: "over", quantity: "ratio" },
  { key: "design", quantity: "velocity" },
  { key: "verdict" },
  { key: "regime" },
  { key: "liquidGradient", quantity: "percent" },
  { key: "slurryGradient", quantity: "percent" },
] as const satisfies SpillItem["columns"];

/** One run of either line. */
export interface SlurryRun {
  /** "Suction 1" */
  readonly label: string;
  readonly line: LineKey;
  readonly row: number;
  readonly record: string;
}

/** The runs of both lines in the order of flow. */
export function runsOf(duty: Duty): readonly SlurryRun[] {
  const of = (line: LineKey, name: string): readonly SlurryRun[] =>
    duty[line].map((_, row) => ({
      label: `${name} ${row + 1}`,
      line,
      row,
      // Names on a sheet hold no digits, so that none looks like a cell address.
      record: `slurry${name}${letters(row)}`,
    }));
  return [...of("suctionLine", "Suction"), ...of("dischargeLine", "Discharge")];
}

/** A, B … Z, AA, AB … */
function letters(row: number): string {
  const last = String.fromCharCode(65 + (row % 26));
  return row < 26 ? last : letters(Math.floor(row / 26) - 1) + last;
}

/** Each run against settling, the least flow that keeps all of them clear, and the friction of the slurry. */
export function slurryRuns(duty: Duty): readonly PlanItem[] {
  const runs = runsOf(duty);
  return [
    ...runs.map((run) => recordOf(run, duty)),
    settlingTable(runs),
    {
      kind: "result",
      key: "leastSlurryFlow",
      label: "Least flow to design for",
      quantity: "flow",
      expression: product(value("flow"), {
        op: "greatest",
        terms: runs.map((run) => ratio(of(run, "design"), of(run, "velocity"))),
      }),
      how: "Where the slowest run reaches its velocity to design for. Upward slopes to 30° need up to 30 % more.",
      main: true,
    },
    {
      kind: "result",
      key: "slurryVerdict",
      label: "Solids in the lines",
      expression: verdict(value("flow"), value("leastSlurryFlow"), "every run keeps moving", "A RUN IS TOO SLOW"),
      how: "At the flow stated. Hold the least flow the pump can come to against it too.",
    },
    frictionTable(runs),
    ...runs.map((run) => remark(`${run.record}Notes`, `${run.label}: ${pipeName(run, duty)}`, callFor(run, duty))),
  ];
}

function pipeName({ line, row }: SlurryRun, duty: Duty): string {
  const at = duty[line][row];
  return at?.segment?.pipe.name ?? at?.typed.pipe.trim() ?? "";
}

function callFor({ line, row }: SlurryRun, duty: Duty): Call {
  return callById(
    "SLURRYLINE",
    value("flow"),
    value(tableCell(line, row, "pipe")),
    value("medianSize"),
    value("solidsGravity"),
    value("solidsByVolume"),
    duty.coarseSize === undefined ? null : value("coarseSize"),
    ...LIQUID_TAIL,
  );
}

function recordOf(run: SlurryRun, duty: Duty): SpillItem {
  return {
    kind: "spill",
    key: run.record,
    label: `Slurry in ${run.label.toLowerCase()}`,
    expression: callFor(run, duty),
    rows: 2,
    columns: COLUMNS,
  };
}

/** A figure of a run's record. */
function of({ record }: SlurryRun, key: (typeof COLUMNS)[number]["key"]): Expression {
  return partAt(
    record,
    COLUMNS.findIndex((column) => column.key === key),
  );
}

function settlingTable(runs: readonly SlurryRun[]): TableItem {
  return {
    kind: "table",
    key: SETTLING_TABLE,
    heading: "velocity in each run",
    columns: [
      { key: "velocity", label: "velocity", quantity: "velocity" },
      { key: "verdict", label: "solids" },
      { key: "limiting", label: "limiting", quantity: "velocity" },
      { key: "over", label: "over limiting", quantity: "ratio" },
      { key: "design", label: "to design for", quantity: "velocity" },
    ],
    rows: runs.map((run) => ({
      label: run.label,
      cells: [
        of(run, "velocity"),
        {
          op: "atLeast",
          left: of(run, "velocity"),
          right: of(run, "limiting"),
          met: of(run, "verdict"),
          otherwise: constant("SETTLES"),
        },
        of(run, "limiting"),
        of(run, "over"),
        of(run, "design"),
      ],
    })),
  };
}

function frictionTable(runs: readonly SlurryRun[]): TableItem {
  return {
    kind: "table",
    key: FRICTION_TABLE,
    heading: "pipe friction in each run",
    columns: [
      { key: "slurryGradient", label: "gradient, slurry", quantity: "percent" },
      { key: "regime", label: "solids travel as" },
      { key: "liquidGradient", label: "gradient, clear", quantity: "percent" },
      { key: "slurryHead", label: "head, slurry", quantity: "head" },
      { key: "liquidHead", label: "head, clear", quantity: "head" },
    ],
    rows: runs.map((run) => {
      const { line, row } = run;
      const gradient = of(run, "slurryGradient");
      const length = value(tableCell(line, row, "length"));
      return {
        label: run.label,
        cells: [
          ifNumber(gradient, gradient, "none"),
          of(run, "regime"),
          of(run, "liquidGradient"),
          ifNumber(gradient, product(ratio(gradient, constant(100)), length), NOT_GIVEN),
          value(tableCell(line, row, "pipeHead")),
        ],
      };
    }),
  };
}
