import { SLURRYLINE } from "../../catalogue/entries/slurry-duty.ts";
import type { Duty } from "../../duty/duty.ts";
import type { LineKey } from "../../duty/duty-text.ts";
import {
  callOf,
  cell,
  constant,
  greatest,
  handle,
  handles,
  ifAtLeast,
  ifNumber,
  part,
  product,
  ratio,
  spillOf,
  verdict,
} from "../expression.ts";
import { FIELD, LIQUID } from "../field-handles.ts";
import { figure, type PlanItem, remark, spill, type TableItem } from "../plan.ts";
import { letters } from "../row-letters.ts";
import { LINES } from "./lines.ts";
import { NOT_GIVEN } from "./operating-point.ts";
import { SLURRY } from "./slurry-mixture.ts";

export const SLURRY_LINES = handles({ leastSlurryFlow: "flow", slurryVerdict: null });

export const SETTLING = {
  kind: "table",
  key: "slurrySettling",
  heading: "velocity in each run",
  columns: [
    { key: "velocity", label: "velocity", quantity: "velocity" },
    { key: "verdict", label: "solids" },
    { key: "limiting", label: "limiting", quantity: "velocity" },
    { key: "over", label: "over limiting", quantity: "ratio" },
    { key: "design", label: "to design for", quantity: "velocity" },
  ],
} as const satisfies Omit<TableItem, "rows">;

export const FRICTION = {
  kind: "table",
  key: "slurryFriction",
  heading: "pipe friction in each run",
  columns: [
    { key: "slurryGradient", label: "gradient, slurry", quantity: "percent" },
    { key: "regime", label: "solids travel as" },
    { key: "liquidGradient", label: "gradient, clear", quantity: "percent" },
    { key: "slurryHead", label: "head, slurry", quantity: "head" },
    { key: "liquidHead", label: "head, clear", quantity: "head" },
  ],
} as const satisfies Omit<TableItem, "rows">;

type SlurryRun = ReturnType<typeof runsOf>[number];

const NAMES: Readonly<Record<LineKey, string>> = { suctionLine: "Suction", dischargeLine: "Discharge" };

/** The runs of both lines in the order of flow; a line still to be stated has one row, as its table. */
export function runsOf(duty: Duty) {
  return (["suctionLine", "dischargeLine"] as const).flatMap((line) =>
    Array.from({ length: Math.max(1, duty[line].length) }, (_, row) => ({
      label: `${NAMES[line]} ${row + 1}`,
      line,
      row,
      record: spillOf(`slurry${NAMES[line]}${letters(row)}`, SLURRYLINE),
      call: callOf(SLURRYLINE, {
        flow: FIELD.flow,
        pipe: cell(LINES[line], row, "pipe"),
        d50: FIELD.medianSize,
        solidsSG: FIELD.solidsGravity,
        solidsByVolume: SLURRY.solidsByVolume,
        d85: FIELD.coarseSize,
        ...LIQUID,
      }),
    })),
  );
}

/** Each run against settling, the least flow that keeps all of them clear, and the friction of the slurry. */
export function slurryRuns(duty: Duty): readonly PlanItem[] {
  const runs = runsOf(duty);
  return [
    ...runs.map(({ record, label, call }) => spill(record, `Slurry in ${label.toLowerCase()}`, call)),
    {
      ...SETTLING,
      rows: runs.map(({ label, record }) => {
        const [velocity, limiting] = [part(record, "velocity"), part(record, "limiting")];
        const settles = ifAtLeast(velocity, limiting, part(record, "verdict"), constant("SETTLES"));
        return { label, cells: [velocity, settles, limiting, part(record, "over"), part(record, "design")] };
      }),
    },
    figure(
      SLURRY_LINES.leastSlurryFlow,
      "Least flow to design for",
      product(
        FIELD.flow,
        greatest(...runs.map(({ record }) => ratio(part(record, "design"), part(record, "velocity")))),
      ),
      "Where the slowest run reaches its velocity to design for. Upward slopes to 30° need up to 30 % more.",
      "main",
    ),
    figure(
      SLURRY_LINES.slurryVerdict,
      "Solids in the lines",
      verdict(FIELD.flow, SLURRY_LINES.leastSlurryFlow, "every run keeps moving", "A RUN IS TOO SLOW"),
      "At the flow stated. Hold the least flow the pump can come to against it too.",
    ),
    { ...FRICTION, rows: runs.map(frictionIn) },
    ...runs.map(({ record, label, line, row, call }) => {
      const at = duty[line][row];
      const pipe = at?.segment?.pipe.name ?? at?.typed.pipe.trim() ?? "";
      return remark(handle(`${record.key}Notes`, null), `${label}: ${pipe}`, call);
    }),
  ];
}

function frictionIn({ label, line, row, record }: SlurryRun): TableItem["rows"][number] {
  const gradient = part(record, "slurryGradient");
  const head = product(ratio(gradient, constant(100)), cell(LINES[line], row, "length"));
  return {
    label,
    cells: [
      ifNumber(gradient, gradient, "none"),
      part(record, "regime"),
      part(record, "liquidGradient"),
      ifNumber(gradient, head, NOT_GIVEN),
      cell(LINES[line], row, "pipeHead"),
    ],
  };
}
